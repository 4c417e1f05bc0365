//! Why a file was not taken, in words for the person who brought it.

use std::fmt;

/// Longest part of a file's name that is repeated, in letters.
const LONGEST_NAME: usize = 60;

/// A file that was not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// One sentence: which file, and what is wrong with it.
    pub what: String,
    /// One sentence: what to do.
    pub hint: String,
}

impl Refusal {
    pub(super) fn new(name: &str, why: Why) -> Self {
        Self {
            what: format!("“{}” {}.", shown(name), why.what),
            hint: why.hint.to_owned(),
        }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.what, self.hint)
    }
}

impl std::error::Error for Refusal {}

/// The name of a file as a message repeats it: without the folders, on one line, not endless.
fn shown(name: &str) -> String {
    let last = name.rsplit(['/', '\\']).next().unwrap_or_default();
    let plain: String = last.chars().filter(|c| !c.is_control()).collect();
    if plain.trim().is_empty() {
        return "The file".to_owned();
    }
    if plain.chars().count() <= LONGEST_NAME {
        return plain;
    }
    let head: String = plain.chars().take(LONGEST_NAME - 20).collect();
    let mut tail: Vec<char> = plain.chars().rev().take(18).collect();
    tail.reverse();
    format!("{head}…{}", tail.into_iter().collect::<String>())
}

/// The same before the file's name is known: what follows the name, and what to do.
#[derive(Clone, Debug)]
pub(super) struct Why {
    what: String,
    hint: &'static str,
}

impl Why {
    pub fn new(what: impl Into<String>, hint: &'static str) -> Self {
        Self {
            what: what.into(),
            hint,
        }
    }

    pub fn cut_off() -> Self {
        Self::new(
            "breaks off before the picture ends",
            "Copy or download it once more.",
        )
    }

    pub fn damaged() -> Self {
        Self::new(
            "is damaged and cannot be read",
            "Copy it once more, or open it in another program and save it again.",
        )
    }
}

/// Why a file is none of those that are read, with a word for kinds people often bring.
pub(super) fn unknown(bytes: &[u8]) -> Why {
    const SAVE: &str = "Open it in another program, save it as JPEG or PNG, and bring that.";
    let kind = match bytes {
        [b'G', b'I', b'F', b'8', ..] => "a GIF picture",
        [b'B', b'M', ..] => "a BMP picture",
        [b'I', b'I', 42, 0, ..] | [b'M', b'M', 0, 42, ..] => "a TIFF or camera raw picture",
        [0x1F, 0x8B, ..] | [b'P', b'K', 3, 4, ..] => "a packed file",
        [b'%', b'P', b'D', b'F', ..] => "a PDF document",
        [_, _, _, _, b'f', b't', b'y', b'p', rest @ ..] => match rest.get(..4) {
            Some(b"heic" | b"heix" | b"mif1" | b"msf1" | b"hevc") => "a HEIC picture",
            Some(b"avif" | b"avis") => "an AVIF picture",
            _ => "a film",
        },
        _ => {
            return Why::new(
                "is not a picture in JPEG, PNG, WebP or SVG",
                "Choose a photograph or a drawing in one of these formats.",
            );
        }
    };
    Why::new(format!("is {kind}, which is not read"), SAVE)
}
