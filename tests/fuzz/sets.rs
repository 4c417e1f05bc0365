//! Sets of pictures and activities: changed in their words, numbers and bytes, read and taken in.

use std::fs;
use std::path::Path;
use std::sync::Arc;

use daystrand::intake::{Taken, take};
use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, apply};
use daystrand::model::ids::SymbolId;
use daystrand::model::picture::{Drawing, Made, Photo, PhotoKind, Picture};
use daystrand::model::profile::PhotoConsent;
use daystrand::model::set::{Holds, Meeting, meetings, of_club};
use daystrand::storage::set;
use daystrand::workbench::demo;

use super::dice::Dice;
use super::mutate::bytes;
use super::targets::{Outcome, Step};

/// What may stand where another value stood.
const VALUES: [&str; 22] = [
    "null",
    "true",
    "0",
    "-1",
    "1",
    "4294967295",
    "4294967296",
    "1e308",
    "0.5",
    "\"\"",
    "\" \"",
    "\"own-1\"",
    "\"own-99999999999\"",
    "\"towel\"",
    "\"\\u0000\"",
    "\"\\uD800\"",
    "\"2026-02-30\"",
    "[]",
    "{}",
    "[[[[[[[[]]]]]]]]",
    "\"<svg/>\"",
    "\"group\"",
];

/// A value of JSON: a string with its quotes, a number or a word.
fn values(text: &[u8]) -> Vec<(usize, usize)> {
    let (mut at, mut found) = (0, Vec::new());
    while at < text.len() {
        let rest = &text[at..];
        let length = match rest[0] {
            b'"' => {
                let mut end = 1;
                while end < rest.len() && rest[end] != b'"' {
                    end += if rest[end] == b'\\' { 2 } else { 1 };
                }
                (end + 1).min(rest.len())
            }
            b if b.is_ascii_alphanumeric() || b == b'-' => rest
                .iter()
                .take_while(|b| b.is_ascii_alphanumeric() || matches!(b, b'-' | b'.' | b'+'))
                .count(),
            _ => {
                at += 1;
                continue;
            }
        };
        found.push((at, at + length));
        at += length;
    }
    found
}

/// A set of some originals, changed.
pub fn change(originals: &[Vec<u8>], dice: &mut Dice) -> Vec<u8> {
    let mut file = dice.one(originals).clone();
    if dice.below(6) == 0 {
        bytes(&mut file, originals, dice);
        return file;
    }
    for _ in 0..=dice.below(3) {
        let places = values(&file);
        if places.is_empty() {
            return file;
        }
        let (from, to) = *dice.one(&places);
        let put: Vec<u8> = match dice.below(4) {
            0 => {
                let (a, b) = *dice.one(&places);
                file[a..b].to_vec()
            }
            1 if to - from < 200 => {
                let mut long = vec![b'"'];
                long.extend(std::iter::repeat_n(b'a', dice.below(5000)));
                long.push(b'"');
                long
            }
            _ => dice.one(&VALUES).as_bytes().to_vec(),
        };
        file.splice(from..to, put);
    }
    file
}

/// A photograph of one colour.
fn photo(file: &str) -> Option<Made> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/pictures");
    match take(file, &fs::read(path.join(file)).ok()?) {
        Ok(Taken::Photo(photo)) => {
            let bytes = photo.kept().bytes;
            let kind = match bytes.first() {
                Some(0xFF) => PhotoKind::Jpeg,
                _ => PhotoKind::Png,
            };
            Some(Made::Photo(Arc::new(Photo::new(kind, photo.size(), bytes))))
        }
        _ => None,
    }
}

/// Sets of the first club with pictures in it.
pub fn originals() -> Vec<Vec<u8>> {
    let mut club = demo::starter();
    let mut made: Vec<Made> = ["rgb8.png", "baseline-420.jpg"]
        .into_iter()
        .filter_map(photo)
        .collect();
    let text = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 240\">\n<path \
                d=\"M20 20h90v90h-90z\" fill=\"#16323A\"/>\n</svg>\n";
    made.push(Made::Drawing(Arc::new(Drawing::new(text))));
    for (name, made) in ["Ramp", "Towel", "Sign"].iter().zip(made) {
        let picture = Picture {
            consent: PhotoConsent::ClubMedia,
            words: vec![format!("our {name}")],
            stands_for: Some(SymbolId::new("towel")),
            ..Picture::new(name, made)
        };
        if let Ok((next, _)) = apply(&club, &Edit::AddPicture(picture)) {
            club = next;
        }
    }
    let path = Path::new("A set.daystrand-set");
    let sets = Holds::ALL.map(|holds| set::to_bytes(path, &of_club(&club, holds).0));
    sets.into_iter().filter_map(Result::ok).collect()
}

/// Reads a set and takes it into a club, in each way there is.
pub fn bring(file: &[u8], step: &mut Step) -> Outcome {
    let path = Path::new("A set.daystrand-set");
    let read = set::from_bytes(path, file);
    step("read");
    let set = match read {
        Ok(set) => Arc::new(set),
        Err(error) => {
            assert!(
                !error.sentence.is_empty() && error.hint.ends_with('.'),
                "{error:?}"
            );
            return Outcome::Refused;
        }
    };
    let mut club = Club::default();
    for meeting in [
        Meeting::KeepOurs,
        Meeting::KeepBoth,
        Meeting::TakeTheirs,
        Meeting::KeepOurs,
    ] {
        meetings(&club, &set);
        let edit = Edit::TakeSet(Arc::clone(&set), meeting);
        if let Ok((next, _)) = apply(&club, &edit) {
            club = next;
        }
        step("take in");
    }
    Outcome::Set
}
