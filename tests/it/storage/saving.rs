//! Saving on the disk of this computer.

use std::fs;
use std::path::{Path, PathBuf};

use daystrand::model::club::Club;
use daystrand::storage::{KEPT, changed_elsewhere, earlier_copies, load, save};

use crate::model::random;

fn named(name: &str) -> Club {
    Club {
        name: name.into(),
        ..random::start()
    }
}

fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).unwrap();
    let mut names: Vec<String> = entries
        .map(|e| e.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn the_last_copies_are_kept_and_open() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    for i in 0..9 {
        let saved = save(&path, &named(&format!("Club {i}"))).unwrap();
        assert_eq!(saved.notes, Vec::<String>::new());
    }
    assert_eq!(
        names(dir.path()),
        ["Lagoon (earlier copies)", "Lagoon.daystrand"]
    );
    let copies = earlier_copies(&path);
    assert_eq!(names(&copies).len(), KEPT);
    assert_eq!(load(&path).unwrap().club.name, "Club 8");
    for number in 1..=KEPT {
        let copy = copies.join(format!("Lagoon {number}.daystrand"));
        assert_eq!(
            load(&copy).unwrap().club.name,
            format!("Club {}", 8 - number)
        );
    }
}

#[test]
fn saving_the_same_again_changes_nothing() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    save(&path, &named("A")).unwrap();
    save(&path, &named("A")).unwrap();
    assert_eq!(names(dir.path()), ["Lagoon.daystrand"]);
}

#[test]
fn a_change_from_elsewhere_is_seen() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    let mine = save(&path, &named("Mine")).unwrap().stamp;
    assert_eq!(load(&path).unwrap().stamp, mine);
    assert!(!changed_elsewhere(&path, &mine));
    save(&path, &named("Theirs")).unwrap();
    assert!(changed_elsewhere(&path, &mine));
    fs::remove_file(&path).unwrap();
    assert!(!changed_elsewhere(&path, &mine));
}

#[test]
fn what_must_not_be_replaced_is_not() {
    let dir = tempfile::tempdir().unwrap();
    let said = |path: &Path| save(path, &named("A")).unwrap_err();
    let place = dir.path().display();

    let folder = dir.path().join("Reeds.daystrand");
    fs::create_dir(&folder).unwrap();
    let error = said(&folder);
    assert_eq!(
        error.sentence,
        format!("“Reeds.daystrand” was not written: a folder of that name is in {place}.")
    );
    assert!(error.hint.contains("Nothing is lost"));
    assert!(folder.is_dir());

    let missing = dir.path().join("no/such/A.daystrand");
    let sentence = said(&missing).sentence;
    assert!(sentence.ends_with("/no/such is not there."), "{sentence}");

    let kept = dir.path().join("Kept.daystrand");
    save(&kept, &named("Old")).unwrap();
    let mut mode = fs::metadata(&kept).unwrap().permissions();
    mode.set_readonly(true);
    fs::set_permissions(&kept, mode).unwrap();
    assert!(said(&kept).sentence.ends_with("it is marked as read-only."));
    assert_eq!(load(&kept).unwrap().club.name, "Old");

    assert!(said(Path::new("/")).sentence.contains("no name for a file"));
    let long = dir.path().join(format!("{}.daystrand", "x".repeat(300)));
    assert!(said(&long).sentence.contains("the disk does not take it"));
    assert_eq!(names(dir.path()).len(), 2, "nothing is left behind");
}

#[cfg(unix)]
#[test]
fn a_link_stays_a_link_and_permissions_stay() {
    use std::os::unix::fs::PermissionsExt as _;
    let dir = tempfile::tempdir().unwrap();
    let real: PathBuf = dir.path().join("shared").join("Lagoon.daystrand");
    fs::create_dir(real.parent().unwrap()).unwrap();
    save(&real, &named("Old")).unwrap();
    fs::set_permissions(&real, fs::Permissions::from_mode(0o640)).unwrap();
    let link = dir.path().join("Lagoon.daystrand");
    std::os::unix::fs::symlink(&real, &link).unwrap();
    save(&link, &named("New")).unwrap();
    assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
    assert_eq!(load(&real).unwrap().club.name, "New");
    assert_eq!(
        fs::metadata(&real).unwrap().permissions().mode() & 0o777,
        0o640
    );
}

#[test]
fn a_damaged_file_points_to_its_earlier_copies() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    save(&path, &named("Old")).unwrap();
    save(&path, &named("New")).unwrap();
    let content = fs::read(&path).unwrap();
    fs::write(&path, &content[..content.len() / 2]).unwrap();
    let error = load(&path).unwrap_err();
    assert!(error.sentence.contains("is cut off"), "{error}");
    assert!(
        error
            .hint
            .ends_with("Earlier copies are in the folder “Lagoon (earlier copies)”."),
        "{error}"
    );
}
