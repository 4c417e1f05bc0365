//! Quotation marks and apostrophes are those of a printed page, everywhere alike.

use super::all_text;

/// What reads words that someone typed, or writes for a program, has the marks of a keyboard.
const KEYBOARDS: [&str; 5] = [
    "src/cli/completion/",
    "src/cli/manual.rs",
    "src/cli/table.rs",
    "src/story/measure/",
    "src/ui/dialogs/asked.rs",
];

/// An apostrophe behind a letter, or behind what is put in, and before a letter.
fn has_keyboards_apostrophe(words: &str) -> bool {
    let signs: Vec<char> = words.chars().collect();
    signs.windows(3).any(|w| {
        let before = w[0].is_alphabetic() || w[0] == '}';
        before && w[1] == '\'' && w[2].is_alphabetic()
    })
}

/// Words for people: more than one, and no drawing, page or table of a format.
fn is_for_people(words: &str) -> bool {
    words.contains(' ') && !words.contains(['<', '=', '/'])
}

#[test]
fn apostrophes_and_quotation_marks_are_those_of_print() {
    let mut texts = all_text();
    texts.retain(|t| t.file.starts_with("src/") || t.file.starts_with("assets/help/"));
    let of_keyboards = |file: &str| KEYBOARDS.iter().any(|k| file.starts_with(k));
    let wrong: Vec<String> = texts
        .iter()
        .filter(|t| !of_keyboards(&t.file) && is_for_people(&t.words))
        .filter(|t| has_keyboards_apostrophe(&t.words) || t.words.contains('"'))
        .map(|t| format!("{}:{} {}", t.file, t.line, t.words))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    for file in KEYBOARDS {
        let mut here = texts.iter().filter(|t| t.file.starts_with(file));
        assert!(here.any(|t| t.words.contains(['\'', '"'])), "{file}");
    }
}
