//! Words said aloud by the system's own voice: speech-dispatcher on Linux, `say` on macOS, the speech
//! of Windows. Off unless someone wants it, never required; a system without a voice is told of once
//! and then left alone. The only place that starts other programs, but for the folder that `ui/app/carry.rs` opens.
//!
//! Words are never part of a command line that a shell reads: each is one argument behind `--`, or
//! comes in over standard input.

use std::io::Write as _;
use std::process::{Child, Command, Stdio};

use crate::model::language::Language;

/// Longest words that are said, in bytes; more than a page of a story.
const LONGEST: usize = 2000;

/// What reads its standard input aloud on Windows. A fixed text: words are not part of it.
const WINDOWS: &str = "[Console]::InputEncoding = [Text.Encoding]::UTF8; \
     Add-Type -AssemblyName System.Speech; \
     (New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak([Console]::In.ReadToEnd())";

/// The voice, and what it is saying.
#[derive(Debug, Default)]
pub struct Voice {
    saying: Option<Child>,
    missing: bool,
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
        self.hush();
        if self.missing {
            return;
        }
        match begin(saying) {
            Ok(child) => self.saying = Some(child),
            Err(_) => self.missing = true,
        }
    }

    /// Stops saying.
    pub fn hush(&mut self) {
        if let Some(mut child) = self.saying.take() {
            if let Ok(Some(ended)) = child.try_wait() {
                // It is there, but cannot speak.
                self.missing |= !ended.success();
                return;
            }
            // Already ended is as good as stopped; either way nothing of it stays behind.
            drop(child.kill());
            drop(child.wait());
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
    }
}

fn begin(saying: &Saying) -> std::io::Result<Child> {
    let stdin = match saying.input {
        Some(_) => Stdio::piped(),
        None => Stdio::null(),
    };
    let mut child = Command::new(saying.program)
        .args(&saying.arguments)
        .stdin(stdin)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()?;
    if let (Some(mut pipe), Some(input)) = (child.stdin.take(), &saying.input) {
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
        },
        "windows" => Saying {
            program: "powershell",
            arguments: text(&["-NoProfile", "-NonInteractive", "-Command", WINDOWS]),
            input: Some(words),
        },
        _ => Saying {
            program: "spd-say",
            arguments: text(&["--wait", "--language", language, "--", &words]),
            input: None,
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
