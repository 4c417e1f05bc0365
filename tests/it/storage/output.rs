//! Files for printing and preferences.

use std::fs;
use std::path::{Path, PathBuf};

use daystrand::storage::output::{OutputFolder, safe_name};
use daystrand::storage::preferences::{
    GoingThrough, Preferences, RECENT, Scanning, Theme, usual_path,
};
use proptest::prelude::*;

#[test]
fn sheets_are_written_into_a_new_folder_each_under_its_own_name() {
    let dir = tempfile::tempdir().unwrap();
    let folder = dir.path().join("prints/2026-05-02");
    let mut out = OutputFolder::open(&folder).unwrap();
    let first = out.write("Tiles: star", "pdf", b"one").unwrap();
    let second = out.write("tiles? STAR", "pdf", b"two").unwrap();
    let third = out.write("Tiles- star", "png", b"three").unwrap();
    let name = |p: &Path| p.file_name().unwrap().to_str().unwrap().to_owned();
    assert_eq!(name(&first), "Tiles- star.pdf");
    assert_eq!(name(&second), "tiles- STAR 2.pdf");
    assert_eq!(name(&third), "Tiles- star.png");
    assert_eq!(fs::read(&first).unwrap(), b"one");
    // The next print replaces them.
    let mut again = OutputFolder::open(&folder).unwrap();
    assert_eq!(again.write("Tiles: star", "pdf", b"new").unwrap(), first);
    assert_eq!(fs::read(&first).unwrap(), b"new");
    assert_eq!(fs::read_dir(&folder).unwrap().count(), 3);
}

#[test]
fn what_is_in_the_way_is_said() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("sheets");
    fs::write(&file, b"x").unwrap();
    let said = |p: &Path| OutputFolder::open(p).unwrap_err().sentence;
    assert_eq!(said(&file), "“sheets” is a file, not a folder.");
    assert!(said(&file.join("deeper")).contains("was not written"));
    fs::create_dir(dir.path().join("Tiles.pdf")).unwrap();
    let mut out = OutputFolder::open(dir.path()).unwrap();
    let error = out.write("Tiles", "pdf", b"x").unwrap_err();
    assert_eq!(
        error.sentence,
        "“Tiles.pdf” was not written: a folder has that name."
    );
    assert!(file.is_file());
}

/// Device names from Microsoft's "Naming Files, Paths, and Namespaces"; the rest are the characters
/// it reserves.
#[test]
fn names_are_safe_on_every_system() {
    for (wish, name) in [
        ("Board star", "Board star"),
        ("a/b\\c:d*e?f\"g<h>i|j", "a-b-c-d-e-f-g-h-i-j"),
        ("../../etc/passwd", "-..-etc-passwd"),
        (" . ", "sheet"),
        ("", "sheet"),
        ("con", "_con"),
        ("LPT1.old", "_LPT1.old"),
        ("COM²", "_COM²"),
        ("Console", "Console"),
        ("tab\there.", "tab here"),
        ("Ünïcødé 水", "Ünïcødé 水"),
    ] {
        assert_eq!(safe_name(wish), name);
    }
}

proptest! {
    #![proptest_config(crate::chance::cases(256))]

    #[test]
    fn any_name_stays_in_its_folder(wish in "\\PC{0,200}") {
        let name = safe_name(&wish);
        prop_assert!(!name.is_empty() && name.len() <= 160);
        let path = PathBuf::from(&name);
        prop_assert_eq!(path.components().count(), 1);
        prop_assert_eq!(path.file_name().and_then(|n| n.to_str()), Some(&*name));
        prop_assert!(!name.ends_with(['.', ' ']));
    }
}

#[test]
fn preferences_come_back() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("new/folder/preferences.json");
    assert_eq!(Preferences::load(&path), Preferences::default());
    let mut p = Preferences {
        last_folder: Some("/prints".into()),
        theme: Theme::HighContrast,
        zoom_percent: 150,
        together: GoingThrough {
            scanning: Scanning::TwoSwitches,
            pace_ms: 1200,
            voice: true,
            night: true,
        },
        ..Preferences::default()
    };
    for i in 0..15 {
        p.opened(Path::new(&format!("/clubs/{i}.daystrand")));
    }
    p.opened(Path::new("/clubs/10.daystrand"));
    p.gone(Path::new("/clubs/14.daystrand"));
    assert_eq!(p.recent.len(), RECENT - 1);
    assert_eq!(p.recent[0], Path::new("/clubs/10.daystrand"));
    p.save(&path).unwrap();
    assert_eq!(Preferences::load(&path), p);
}

#[test]
fn broken_preferences_are_as_on_the_first_day_and_each_on_its_own() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("preferences.json");
    for content in ["", "{", "[]", "null", "\u{0}\u{1}"] {
        fs::write(&path, content).unwrap();
        assert_eq!(Preferences::load(&path), Preferences::default());
    }
    fs::write(
        &path,
        r#"{"zoom_percent": 9000, "theme": "dark", "recent": [1, "/a"], "new": {},
            "together": {"pace_ms": 1, "scanning": "by eye", "night": true, "voice": 3}}"#,
    )
    .unwrap();
    let p = Preferences::load(&path);
    assert_eq!((p.zoom_percent, p.theme), (100, Theme::Dark));
    let night = GoingThrough {
        night: true,
        ..GoingThrough::default()
    };
    assert_eq!(p.together, night);
    assert_eq!(p.recent, [Path::new("/a")]);
    let error = p.save(&path.join("below")).unwrap_err();
    assert!(error.sentence.contains("was not written"), "{error}");
    assert!(usual_path().is_none_or(|p| p.ends_with("daystrand/preferences.json")));
}
