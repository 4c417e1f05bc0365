//! Words said aloud: with which program, never through a shell, and never needed.

use daystrand::workbench::command::{Command, GoingThrough};
use daystrand::workbench::voice::{Saying, Silence, Voice, saying};

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
        silence: None,
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
        silence: None,
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

/// What sends words to a voice of its own is not stopped when it gives way: the next words do that,
/// and stopping it would lose them. Silence is asked for only where no words follow.
#[cfg(unix)]
#[test]
fn a_voice_of_its_own_is_silenced_only_where_no_words_follow() {
    let folder = tempfile::tempdir().expect("a folder");
    let mark = folder.path().join("silenced");
    let says = |program, arguments: &[&str]| Saying {
        program,
        arguments: arguments.iter().map(|a| (*a).to_owned()).collect(),
        input: None,
        silence: Some(Silence {
            program: "touch",
            arguments: vec![mark.display().to_string()],
        }),
    };
    let from = std::time::Instant::now();
    let mut voice = Voice::default();
    voice.start(&says("sleep", &["600"]));
    voice.start(&says("sleep", &["600"]));
    assert!(!mark.exists(), "the next words cut it short");
    voice.hush();
    assert!(mark.exists(), "silenced, and waited for");
    voice.start(&says("true", &[]));
    drop(voice);
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
