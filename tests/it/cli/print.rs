//! `print`: the sheets that were asked for, for those who were asked for.

use std::fs;

use tempfile::{TempDir, tempdir};

use super::*;

/// A folder with the demo club's file and a place for sheets.
fn desk() -> (TempDir, String, String) {
    let dir = tempdir().unwrap();
    let file = demo_file(dir.path());
    let out = dir.path().join("out").to_str().unwrap().to_owned();
    (dir, file, out)
}

fn printed(more: &[&str]) -> Vec<String> {
    let (_dir, file, out) = desk();
    let mut words = vec!["print", &file, "--to", &out, "--session", "2027-06-12"];
    words.extend(more);
    let listed = run(&words).done();
    let written = names(Path::new(&out));
    let lines: Vec<_> = listed.lines().collect();
    assert_eq!(lines.len(), written.len(), "every file is listed");
    for name in &written {
        assert!(lines.iter().any(|l| l.ends_with(name.as_str())), "{name}");
    }
    written
}

#[test]
fn by_mark_by_name_and_for_all() {
    for who in ["leaf", "Noor", "noor", "NOOR,leaf"] {
        assert_eq!(
            printed(&["--for", who, "--sheet", "cards"]),
            ["2027-06-12-leaf-cards.pdf"]
        );
    }
    let both = printed(&["--for", "leaf,Tavi", "--sheet", "cards,story"]);
    // Cards of several lie on common sheets.
    let names = ["boat-story", "cards", "leaf-story"];
    assert_eq!(both, names.map(|n| format!("2027-06-12-{n}.pdf")));
    assert_eq!(printed(&["--for", "all", "--sheet", "story"]).len(), 8);
    assert_eq!(printed(&["--sheet", "session"]).len(), 1);
}

#[test]
fn every_sheet_and_kind_of_file() {
    let all = printed(&["--for", "kite"]);
    // Four of their own, thirteen about all.
    assert_eq!(all.len(), 17, "{all:?}");
    let words = [
        "--for",
        "kite",
        "--sheet",
        "story,cards",
        "--format",
        "text,pdf,html",
    ];
    let files = printed(&words);
    assert_eq!(files.iter().filter(|f| f.ends_with(".pdf")).count(), 2);
    assert_eq!(files.iter().filter(|f| f.ends_with(".txt")).count(), 1);
    let html: Vec<_> = files.iter().filter(|f| f.ends_with(".html")).collect();
    assert_eq!(html.len(), 1, "of the story alone: {html:?}");
    assert!(html[0].ends_with("2027-06-12-kite-story.html"));
}

#[test]
fn paper_turn_and_ink_are_followed() {
    let (_dir, file, out) = desk();
    let page = |more: &[&str]| {
        let mut words = vec!["print", &file, "--to", &out, "--session", "2027-06-12"];
        words.extend(["--for", "leaf", "--sheet", "large-print"]);
        words.extend(more);
        drop(run(&words).done());
        fs::read(Path::new(&out).join("2027-06-12-leaf-large-print.pdf")).unwrap()
    };
    let size = |pdf: &[u8]| {
        let doc = lopdf::Document::load_mem(pdf).unwrap();
        let (_, id) = doc.get_pages().into_iter().next().unwrap();
        let media = doc.get_dictionary(id).unwrap().get(b"MediaBox").unwrap();
        let sides: Vec<f32> = media
            .as_array()
            .unwrap()
            .iter()
            .map(|n| n.as_float().unwrap())
            .collect();
        ((sides[2] - sides[0]).round(), (sides[3] - sides[1]).round())
    };
    // In points of 1/72 in: A4 is 595.28 by 841.89 (ISO 216), Letter 612 by 792.
    assert_eq!(
        size(&page(&["--paper", "letter", "--turn", "portrait"])),
        (612.0, 792.0)
    );
    assert_eq!(
        size(&page(&["--paper", "Letter", "--turn", "landscape"])),
        (792.0, 612.0)
    );
    assert_eq!(size(&page(&["--turn", "portrait"])), (595.0, 842.0));
    let colour = page(&[]);
    assert_eq!(colour, page(&["--ink", "colour"]));
    assert_ne!(colour, page(&["--ink", "grey"]));
}

#[test]
fn who_or_when_cannot_be_told_is_said() {
    let (_dir, file, out) = desk();
    let cases: [(&[&str], &str, &str); 5] = [
        (
            &["--session", "2027-06-12", "--for", "Mila"],
            "called Mila",
            "kite or star",
        ),
        (
            &["--session", "2027-06-12", "--for", "Otto"],
            "“Otto”",
            "kite, boat, leaf",
        ),
        (
            &["--session", "2027-06-19", "--for", "fish"],
            "Jonas does not come",
            "People",
        ),
        (
            &["--session", "2027-06-20"],
            "2027-06-20",
            "2027-06-12, 2027-06-19 or 2027-06-26",
        ),
        (
            &[],
            "more than one session",
            "--session: 2027-06-12, 2027-06-19 or 2027-06-26",
        ),
    ];
    for (more, sentence, hint) in cases {
        let mut words = vec!["print", &file, "--to", &out];
        words.extend(more);
        let line = run(&words).wrong();
        assert!(
            line.contains(sentence) && line.contains(hint),
            "{more:?}: {line}"
        );
    }
    assert!(!Path::new(&out).exists(), "nothing was written");
}

#[test]
fn two_sessions_on_one_day_are_told_apart_by_their_start() {
    let dir = tempdir().unwrap();
    let mut club = daystrand::workbench::demo::club();
    let day = club.sessions[0].date;
    std::sync::Arc::make_mut(&mut club.sessions[1]).date = day;
    let file = saved(dir.path(), &club);
    let out = dir.path().join("out");
    let (file, out) = (file.to_str().unwrap(), out.to_str().unwrap());
    let with = |when: &str| {
        run(&[
            "print",
            file,
            "--to",
            out,
            "--sheet",
            "session",
            "--session",
            when,
        ])
    };
    let line = with("2027-06-12").wrong();
    assert!(
        line.contains("2027-06-12T09:30, 2027-06-12T10:00 or"),
        "{line}"
    );
    drop(with("2027-06-12T10:00").done());
}

#[test]
fn a_folder_that_cannot_be_made_is_said() {
    let (dir, file, _) = desk();
    let taken = dir.path().join("taken");
    fs::write(&taken, "mine").unwrap();
    let words = [
        "print",
        &file,
        "--to",
        taken.to_str().unwrap(),
        "--session",
        "2027-06-12",
    ];
    let line = run(&words).wrong();
    assert!(line.contains("taken"), "{line}");
    assert_eq!(fs::read(&taken).unwrap(), b"mine");
}
