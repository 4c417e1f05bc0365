//! Changes of the words and numbers of a drawing.

use super::dice::Dice;
use super::mutate::bytes;

/// Words put in anywhere: what drawings are made of, and what readers stumble over.
const WORDS: [&str; 40] = [
    "<g>",
    "</g>",
    "<g transform='scale(1e6)'>",
    "<g transform='scale(0)'>",
    "<use href='#a'/>",
    "<path d='M0 0A1 1 0 1 1 9 9'/>",
    "<rect width='9' height='9'/>",
    " id='a'",
    " id=\"c\"",
    " clip-path='url(#c)'",
    " mask='url(#m)'",
    " filter='url(#f)'",
    " fill='url(#g)'",
    " opacity='.5'",
    " stroke='red'",
    " stroke-dasharray='1 0 2'",
    " stroke-width='1e5'",
    " transform='rotate(45)'",
    " viewBox='0 0 1e-5 9'",
    " viewBox='-9 -9 0 9'",
    " width='100%'",
    " height='1e-30'",
    " d='M0,0L'",
    "0",
    "-1",
    "1e7",
    "1e-7",
    "NaN",
    "9999999",
    "0.0000001",
    "%",
    "em",
    "mm",
    "<!--",
    "]]>",
    "&amp;",
    "<marker id='m'><path d='M0 0h9'/></marker>",
    " marker-mid='url(#m)'",
    " display='none'",
    "<pattern id='g' width='9' height='9'><circle r='4'/></pattern>",
];

/// Whether a letter is part of a word or a number.
fn is_word(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || matches!(byte, b'.' | b'-' | b'#')
}

/// The words of a text, as places.
fn words(text: &[u8]) -> Vec<(usize, usize)> {
    let (mut at, mut words) = (0, Vec::new());
    while at < text.len() {
        let end = at + text[at..].iter().take_while(|b| is_word(**b)).count();
        if end > at {
            words.push((at, end));
        }
        at = end + 1;
    }
    words
}

/// A drawing of some originals, changed.
pub fn change(originals: &[Vec<u8>], dice: &mut Dice) -> Vec<u8> {
    let mut file = dice.one(originals).clone();
    if dice.below(6) == 0 {
        bytes(&mut file, originals, dice);
        return file;
    }
    for _ in 0..=dice.below(5) {
        let places = words(&file);
        if places.is_empty() {
            break;
        }
        let (from, to) = *dice.one(&places);
        let other: &Vec<u8> = dice.one(originals);
        match dice.below(6) {
            0 => {
                file.splice(from..to, dice.one(&WORDS).bytes());
            }
            1 => {
                let word: &str = WORDS[dice.below(WORDS.len())];
                fitting(&mut file, word, dice);
            }
            2 => {
                let (a, b) = *dice.one(&words(other));
                file.splice(from..to, other[a..b].iter().copied());
            }
            3 => tag_from(&mut file, other, dice),
            4 => {
                let (a, b) = *dice.one(&places);
                let word = file[a..b].to_vec();
                file.splice(from..to, word);
            }
            _ => {
                file.drain(from..to);
            }
        }
    }
    file
}

/// A word where it may stand: tags between tags, attributes in tags, the rest for another word.
fn fitting(file: &mut Vec<u8>, word: &str, dice: &mut Dice) {
    let ends = |text: &[u8]| -> Vec<usize> {
        let marks = text.iter().enumerate().filter(|(_, b)| **b == b'>');
        marks.map(|(at, _)| at).collect()
    };
    let places = ends(file);
    if places.is_empty() {
        return;
    }
    let end = *dice.one(&places);
    let closed = usize::from(end > 0 && file[end - 1] == b'/');
    if word.starts_with('<') {
        file.splice(end + 1..end + 1, word.bytes());
    } else if word.starts_with(' ') {
        file.splice(end - closed..end - closed, word.bytes());
    } else {
        let words = words(file);
        if !words.is_empty() {
            let (from, to) = *dice.one(&words);
            file.splice(from..to, word.bytes());
        }
    }
}

/// A whole tag of another drawing, put before one of this.
fn tag_from(file: &mut Vec<u8>, other: &[u8], dice: &mut Dice) {
    let starts = |text: &[u8]| -> Vec<usize> {
        let marks = text.iter().enumerate().filter(|(_, b)| **b == b'<');
        marks.map(|(at, _)| at).collect()
    };
    let (here, there) = (starts(file), starts(other));
    if here.is_empty() || there.is_empty() {
        return;
    }
    let (to, from) = (*dice.one(&here), *dice.one(&there));
    let length = other[from..]
        .iter()
        .position(|b| *b == b'>')
        .map_or(0, |end| end + 1);
    file.splice(to..to, other[from..from + length].iter().copied());
}
