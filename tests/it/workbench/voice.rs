//! Words said aloud: with which program, never through a shell, and never needed.

use daystrand::workbench::command::{Command, GoingThrough};
use daystrand::workbench::voice::{Saying, Voice, saying};

use super::demo;

/// What a shell would take for orders.
const NASTY: &str = "--help; $(reboot) `reboot` && reboot | 'x' \"y\" > /dev/sda\nreboot";

#[test]
fn words_are_one_argument_behind_the_options_or_come_in_over_the_input() {
    for system in ["linux", "macos", "windows", "freebsd"] {
        let plain = NASTY.replace('\n', " ");
        let said = saying(system, NASTY, "en").expect("something to say");
        assert!(!["sh", "bash", "cmd"].contains(&said.program), "{system}");
        match &said.input {
            Some(input) => {
                assert_eq!(*input, plain, "{system}");
                assert!(
                    said.arguments.iter().all(|a| !a.contains("reboot")),
                    "{system}"
                );
            }
            None => {
                let n = said.arguments.len();
                assert_eq!(said.arguments[n - 2], "--", "{system}");
                assert_eq!(said.arguments[n - 1], plain, "{system}");
                assert!(
                    said.arguments[..n - 1]
                        .iter()
                        .all(|a| !a.contains("reboot"))
                );
            }
        }
    }
}

#[test]
fn nothing_is_said_without_words_and_not_too_many() {
    assert_eq!(saying("linux", " \n ", "en"), None);
    let long = "é".repeat(5000);
    let said = saying("macos", &long, "fr")
        .expect("words")
        .input
        .expect("input");
    assert!(said.len() <= 2000 && long.starts_with(&said));
}

#[test]
fn a_system_without_a_voice_is_told_of_once_and_does_no_harm() {
    let nobody = Saying {
        program: "daystrand-no-such-program",
        arguments: Vec::new(),
        input: Some("hello".into()),
    };
    let mut voice = Voice::default();
    assert!(!voice.is_missing());
    voice.start(&nobody);
    assert!(voice.is_missing());
    voice.start(&nobody);
    voice.hush();
}

#[cfg(unix)]
#[test]
fn what_is_being_said_gives_way_and_stops_when_asked() {
    // Programs that read what comes in, and that last for a while.
    let with = |program, arguments: &[&str], input: Option<&str>| Saying {
        program,
        arguments: arguments.iter().map(|a| (*a).to_owned()).collect(),
        input: input.map(str::to_owned),
    };
    let mut voice = Voice::default();
    let from = std::time::Instant::now();
    voice.start(&with("sleep", &["600"], None));
    voice.start(&with("cat", &[], Some("hello")));
    voice.start(&with("sleep", &["600"], None));
    voice.hush();
    assert!(!voice.is_missing());
    assert!(from.elapsed().as_secs() < 60, "nobody waits for its end");
}

#[test]
fn nothing_is_said_unless_someone_wants_it() {
    let mut bench = demo();
    assert!(!bench.view().together.voice, "off at first");
    drop(bench.handle(Command::Say("Sunscreen".into())));
    assert!(!bench.view().mute, "nothing was tried");
    let slow = GoingThrough {
        pace_ms: 99_999_999,
        ..GoingThrough::default()
    };
    drop(bench.handle(Command::SetGoingThrough(slow)));
    assert_eq!(bench.view().together.pace_ms, 10_000);
}
