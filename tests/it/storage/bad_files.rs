//! Bad files as data: `tests/cases/files/*.daystrand` (or `.bytes`), each with a `.txt` of the same
//! name that holds the sentences, or the notes when it opens.

use std::fs;
use std::path::{Path, PathBuf};

use daystrand::storage::{from_bytes, load};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/files")
}

fn answer(path: &Path) -> String {
    let content = fs::read(path).unwrap();
    match from_bytes(Path::new("a.daystrand"), &content) {
        Ok(loaded) => {
            let notes: String = loaded.notes.iter().map(|n| format!("{n}\n")).collect();
            format!("opened\n{notes}")
        }
        Err(error) => format!("{}\n{}\n", error.sentence, error.hint),
    }
}

#[test]
fn every_bad_file_gets_its_sentence() {
    let mut files: Vec<PathBuf> = fs::read_dir(folder())
        .unwrap()
        .map(|e| e.unwrap().path())
        .filter(|p| p.extension().is_some_and(|e| e != "txt"))
        .collect();
    files.sort();
    assert!(files.len() > 20, "too few cases found");
    let mut wrong = Vec::new();
    for path in files {
        let said = answer(&path);
        let expected = path.with_extension("txt");
        if std::env::var_os("UPDATE_GOLDEN").is_some() {
            fs::write(&expected, &said).unwrap();
        } else if fs::read_to_string(&expected).ok().as_ref() != Some(&said) {
            wrong.push(format!("{}:\n{said}", path.display()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn what_is_no_file_at_all_is_said() {
    let dir = tempfile::tempdir().unwrap();
    let said = |path: &Path| load(path).unwrap_err().sentence;
    let place = dir.path().display();
    let missing = dir.path().join("Lagoon.daystrand");
    assert_eq!(
        said(&missing),
        format!("“Lagoon.daystrand” is not in {place}.")
    );
    assert_eq!(
        said(Path::new("never-made.daystrand")),
        "“never-made.daystrand” is not in this folder."
    );
    let folder = dir.path().join("Reeds.daystrand");
    fs::create_dir(&folder).unwrap();
    assert_eq!(
        said(&folder),
        "“Reeds.daystrand” is a folder, not a club file."
    );
    let inside = folder.join("deeper").join("A.daystrand");
    assert!(said(&inside).contains("is not in "));
    if cfg!(unix) {
        assert_eq!(
            said(Path::new("/dev/null")),
            "“null” is not an ordinary file."
        );
    }
}

/// Neither time nor memory is given to a file that is far too large; a sparse file costs no disk.
#[test]
fn a_huge_file_is_not_read() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Huge.daystrand");
    fs::File::create(&path).unwrap().set_len(1 << 40).unwrap();
    let said = load(&path).unwrap_err().sentence;
    assert_eq!(
        said,
        "“Huge.daystrand” is larger than any club file can be."
    );
}

/// Brackets within brackets, deeper than any stack.
#[test]
fn a_deep_file_is_refused() {
    for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
        let deep = format!("{}1{}", open.repeat(200_000), close.repeat(200_000));
        let inside =
            format!("{{\"format\": \"daystrand-club\", \"version\": 1, \"name\": {deep}}}");
        for text in [deep, inside] {
            from_bytes(Path::new("a.daystrand"), text.as_bytes()).unwrap_err();
        }
    }
}
