//! Words said aloud by the system's own voice: speech-dispatcher on Linux, `say` on macOS, the speech
//! of Windows. Off unless someone wants it, never required; a system without a voice is told of once
//! and then left alone. The only place that starts other programs, but for the folder that `ui/app/carry.rs` opens.
//!
//! Words are never part of a command line that a shell reads: each is one argument behind `--`, or
//! comes in over standard input.

use std::io::Write as _;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use crate::model::language::Language;

/// Longest words that are said, in bytes; more than a page of a story.
const LONGEST: usize = 2000;

/// What reads its standard input aloud on Windows. A fixed text: words are not part of it.
const WINDOWS: &str = "[Console]::InputEncoding = [Text.Encoding]::UTF8; \
     Add-Type -AssemblyName System.Speech; \
     (New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak([Console]::In.ReadToEnd())";

/// So long it may take to be silenced; then the window goes on.
const SILENCED: Duration = Duration::from_millis(300);

/// The voice, and what it is saying.
#[derive(Debug, Default)]
pub struct Voice {
    saying: Option<(Child, Option<Silence>)>,
    /// What gave way and ends by itself.
    ending: Vec<Child>,
    missing: bool,
}

/// A program that silences the voice of another program, which speaks on when what sent it the words
/// is stopped.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Silence {
    /// The program.
    pub program: &'static str,
    /// Its arguments.
    pub arguments: Vec<String>,
}

/// A program that says some words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Saying {
    /// The program.
    pub program: &'static str,
    /// Its arguments.
    pub arguments: Vec<String>,
    /// What comes in over its standard input, if anything.
    pub input: Option<String>,
    /// What silences it. Such words give way to further ones without being silenced.
    pub silence: Option<Silence>,
}

impl Voice {
    /// Says words; what is being said gives way. Nothing happens on a system without a voice.
    pub fn say(&mut self, words: &str, language: &Language) {
        if let Some(saying) = saying(std::env::consts::OS, words, language.primary()) {
            self.start(&saying);
        }
    }

    /// Starts a program that says something.
    pub fn start(&mut self, saying: &Saying) {
        match &saying.silence {
            Some(_) => self.give_way(),
            None => self.hush(),
        }
        if self.missing {
            return;
        }
        let words = saying.input.as_deref();
        match begin(saying.program, &saying.arguments, words) {
            Ok(child) => self.saying = Some((child, saying.silence.clone())),
            Err(_) => self.missing = true,
        }
    }

    /// What is being said is cut short by the next words. To stop what sent the words would lose the
    /// next ones too (seen with speech-dispatcher 0.11.4).
    fn give_way(&mut self) {
        self.ending.retain_mut(|c| matches!(c.try_wait(), Ok(None)));
        if let Some((mut child, _)) = self.saying.take()
            && !self.has_ended(&mut child)
        {
            self.ending.push(child);
        }
    }

    /// Whether it has; one that failed says that there is no voice.
    fn has_ended(&mut self, child: &mut Child) -> bool {
        let Ok(Some(ended)) = child.try_wait() else {
            return false;
        };
        // It is there, but cannot speak.
        self.missing |= !ended.success();
        true
    }

    /// Stops saying.
    pub fn hush(&mut self) {
        let Some((mut child, silence)) = self.saying.take() else {
            return;
        };
        if self.has_ended(&mut child) {
            return;
        }
        match silence {
            Some(silence) => {
                silenced(&silence);
                self.ending.push(child);
            }
            None => stop(child),
        }
    }

    /// Whether it was found that there is no voice.
    pub const fn is_missing(&self) -> bool {
        self.missing
    }
}

impl Drop for Voice {
    fn drop(&mut self) {
        self.hush();
        self.ending.drain(..).for_each(stop);
    }
}

/// Already ended is as good as stopped; either way nothing of it stays behind.
fn stop(mut child: Child) {
    drop(child.kill());
    drop(child.wait());
}

fn silenced(silence: &Silence) {
    let Ok(mut child) = begin(silence.program, &silence.arguments, None) else {
        return;
    };
    // Words that come next must not be silenced too.
    let begun = Instant::now();
    while matches!(child.try_wait(), Ok(None)) && begun.elapsed() < SILENCED {
        std::thread::sleep(Duration::from_millis(5));
    }
    stop(child);
}

fn begin(program: &str, arguments: &[String], input: Option<&str>) -> std::io::Result<Child> {
    let stdin = match input {
        Some(_) => Stdio::piped(),
        None => Stdio::null(),
    };
    let mut child = Command::new(program)
        .args(arguments)
        .stdin(stdin)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()?;
    if let (Some(mut pipe), Some(input)) = (child.stdin.take(), input) {
        // At most a few kilobytes, which a pipe holds. A program that does not read says nothing.
        drop(pipe.write_all(input.as_bytes()));
    }
    Ok(child)
}

/// What says some words on a system, named as in `std::env::consts::OS`; nothing without words.
/// Commands and options from memory of each system's manual.
pub fn saying(system: &str, words: &str, language: &str) -> Option<Saying> {
    let words = plain(words);
    if words.is_empty() {
        return None;
    }
    let text = |all: &[&str]| all.iter().map(|a| (*a).to_owned()).collect::<Vec<_>>();
    Some(match system {
        "macos" => Saying {
            program: "say",
            arguments: text(&["-f", "-"]),
            input: Some(words),
            silence: None,
        },
        "windows" => Saying {
            program: "powershell",
            arguments: text(&["-NoProfile", "-NonInteractive", "-Command", WINDOWS]),
            input: Some(words),
            silence: None,
        },
        _ => Saying {
            program: "spd-say",
            arguments: text(&["--wait", "--language", language, "--", &words]),
            input: None,
            silence: Some(Silence {
                program: "spd-say",
                arguments: text(&["-S"]),
            }),
        },
    })
}

/// Words without signs that steer a terminal or a voice, cut off where they are too long.
fn plain(words: &str) -> String {
    let mut kept = String::new();
    for c in words.trim().chars() {
        let c = if c.is_control() { ' ' } else { c };
        if kept.len() + c.len_utf8() > LONGEST {
            break;
        }
        kept.push(c);
    }
    kept
}
