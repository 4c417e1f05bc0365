//! Pictures in a club file and in its earlier copies.

use std::fs;
use std::path::Path;

use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, apply};
use daystrand::model::picture::{Made, PhotoKind, Picture};
use daystrand::storage::{earlier_copies, from_bytes, load, save, to_bytes};

use crate::fixture;
use crate::model::random_pictures::{drawing, photo};

fn with(club: &Club, picture: Picture) -> Club {
    apply(club, &Edit::AddPicture(picture)).unwrap().0
}

fn towel(tone: u8) -> Picture {
    Picture::new("Towel", Made::Photo(photo(PhotoKind::Jpeg, [64, 48], tone)))
}

#[test]
fn a_photograph_used_often_is_in_the_file_once() {
    let mut club = fixture::without_pictures();
    for _ in 0..10 {
        club = with(&club, towel(7));
    }
    club = with(&club, towel(8));
    club = with(&club, Picture::new("Sign", Made::Drawing(drawing(50))));
    let path = Path::new("Club.daystrand");
    let bytes = to_bytes(path, &club).unwrap();
    let text = String::from_utf8(bytes.clone()).unwrap();
    assert_eq!(text.matches("\"base64\"").count(), 2);
    let loaded = from_bytes(path, &bytes).unwrap();
    assert_eq!(loaded.notes, Vec::<String>::new());
    assert_eq!(loaded.club, club);
    assert_eq!(to_bytes(path, &loaded.club).unwrap(), bytes);
}

#[test]
fn a_damaged_photograph_is_said() {
    let club = with(&fixture::without_pictures(), towel(7));
    let path = Path::new("Club.daystrand");
    let text = String::from_utf8(to_bytes(path, &club).unwrap()).unwrap();
    let at = text.find("\"base64\": \"").unwrap() + 40;
    let mut bytes = text.into_bytes();
    bytes[at] = if bytes[at] == b'A' { b'B' } else { b'A' };
    let said = from_bytes(path, &bytes).unwrap_err();
    assert!(
        said.sentence
            .contains("photographs, number 1: it is damaged"),
        "{said:?}"
    );
}

/// Every file of a club that holds some bytes.
fn holding(path: &Path, needle: &str) -> Vec<String> {
    let mut files = vec![path.to_path_buf()];
    if let Ok(all) = fs::read_dir(earlier_copies(path)) {
        files.extend(all.map(|f| f.unwrap().path()));
    }
    files.retain(|f| fs::read_to_string(f).unwrap().contains(needle));
    let name = |f: &std::path::PathBuf| f.file_name().unwrap().to_string_lossy().into_owned();
    files.iter().map(name).collect()
}

#[test]
fn a_removed_picture_goes_from_the_file_and_from_every_copy() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    let one = with(&with(&fixture::without_pictures(), towel(7)), towel(9));
    let needles = [0, 1].map(|i| one.pictures[i].hash().to_owned());
    // Several copies that hold both.
    for name in ["A", "B", "C", "D"] {
        let saved = save(
            &path,
            &Club {
                name: name.into(),
                ..one.clone()
            },
        )
        .unwrap();
        assert_eq!(saved.told, None);
    }
    assert_eq!(holding(&path, &needles[0]).len(), 4);
    let (less, _) = apply(&one, &Edit::RemovePicture(one.pictures[0].id)).unwrap();
    let saved = save(&path, &less).unwrap();
    assert_eq!(saved.notes, Vec::<String>::new());
    assert!(saved.told.unwrap().contains("gone from the file"));
    assert_eq!(holding(&path, &needles[0]), Vec::<String>::new());
    // The other picture is where it was, and every copy opens.
    assert_eq!(holding(&path, &needles[1]).len(), 5);
    for copy in fs::read_dir(earlier_copies(&path)).unwrap() {
        assert_eq!(
            load(&copy.unwrap().path()).unwrap().notes,
            Vec::<String>::new()
        );
    }
    // Said once.
    let again = save(
        &path,
        &Club {
            name: "E".into(),
            ..less
        },
    )
    .unwrap();
    assert_eq!(again.told, None);
}

#[test]
fn a_copy_that_cannot_be_changed_is_named() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    let one = with(&fixture::without_pictures(), towel(7));
    save(&path, &one).unwrap();
    save(
        &path,
        &Club {
            name: "B".into(),
            ..one.clone()
        },
    )
    .unwrap();
    let copy = earlier_copies(&path).join("Lagoon 1.daystrand");
    fs::remove_file(&copy).unwrap();
    fs::write(&copy, "{ \"format\": \"daystrand-club\", \"pictures\"").unwrap();
    let (less, _) = apply(&one, &Edit::RemovePicture(one.pictures[0].id)).unwrap();
    let saved = save(&path, &less).unwrap();
    assert!(
        saved.notes[0].contains("“Lagoon 2.daystrand”"),
        "{:?}",
        saved.notes
    );
    assert_eq!(saved.told, None);
}
