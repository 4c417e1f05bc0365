//! The program itself, as a shell runs it.

use std::process::{Command, Output};

use tempfile::tempdir;

fn daystrand(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_daystrand"))
        .args(words)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .output()
        .unwrap()
}

#[test]
fn the_program_answers_with_exit_codes() {
    let help = daystrand(&["--help"]);
    assert_eq!(help.status.code(), Some(0));
    assert!(
        String::from_utf8(help.stdout)
            .unwrap()
            .contains("Usage: daystrand")
    );
    let wrong = daystrand(&["check", "nowhere.daystrand"]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(wrong.stdout.is_empty());
    let line = String::from_utf8(wrong.stderr).unwrap();
    assert!(
        line.starts_with("daystrand: ") && line.lines().count() == 1,
        "{line}"
    );
}

#[cfg(all(unix, not(target_os = "macos")))]
#[test]
fn without_a_display_there_is_no_window_and_it_says_so() {
    let open = daystrand(&[]);
    assert_eq!(open.status.code(), Some(2));
    assert!(
        String::from_utf8(open.stderr)
            .unwrap()
            .contains("no display")
    );
}

#[test]
fn sheets_are_printed_from_a_shell() {
    let dir = tempdir().unwrap();
    let file = super::demo_file(dir.path());
    let out = dir.path().join("out");
    let words = [
        "print",
        &file,
        "--session",
        "2027-06-12",
        "--for",
        "leaf",
        "--sheet",
        "cards",
    ];
    let printed = daystrand(&[&words[..], &["--to", out.to_str().unwrap()]].concat());
    assert_eq!(printed.status.code(), Some(0), "{printed:?}");
    assert_eq!(super::names(&out), ["2027-06-12-leaf-cards.pdf"]);
}
