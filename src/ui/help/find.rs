//! Finding words on all pages of the help: without case and accents, each word anywhere in a line.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use super::text::Page;

/// A line that has the words looked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hit {
    /// The place of its page.
    pub page: usize,
    /// The place of the line on it; none is the title.
    pub line: Option<usize>,
}

/// Words without case and accents.
pub fn plain(text: &str) -> String {
    let letters = text.nfkd().filter(|c| !is_combining_mark(*c));
    letters.flat_map(char::to_lowercase).collect()
}

/// The words that were typed, ready to be looked for.
pub fn wanted(typed: &str) -> Vec<String> {
    plain(typed).split_whitespace().map(str::to_owned).collect()
}

/// The lines that have all of the words, titles first, then in the order of the pages; none while
/// nothing is looked for.
pub fn all(pages: &[Page], wanted: &[String]) -> Vec<Hit> {
    if wanted.is_empty() {
        return Vec::new();
    }
    let has = |words: &str| {
        let words = plain(words);
        wanted.iter().all(|w| words.contains(w.as_str()))
    };
    let mut hits: Vec<Hit> = Vec::new();
    for (page, p) in pages.iter().enumerate() {
        if has(p.title) {
            hits.push(Hit { page, line: None });
        }
    }
    for (page, p) in pages.iter().enumerate() {
        let lines = p.lines.iter().enumerate();
        let lines = lines.filter(|(_, l)| has(&l.what.words()));
        hits.extend(lines.map(|(line, _)| Hit {
            page,
            line: Some(line),
        }));
    }
    hits
}

#[cfg(test)]
mod tests {
    use super::super::text::pages;
    use super::*;

    fn found(typed: &str) -> Vec<Hit> {
        all(pages(), &wanted(typed))
    }

    #[test]
    fn case_and_accents_do_not_matter_and_all_words_must_be_there() {
        let one = found("Laminätor");
        assert!(!one.is_empty());
        assert_eq!(one, found("LAMINATOR"));
        assert_eq!(one, found("hot laminator"));
        assert_eq!(found("laminator zebra"), []);
        assert_eq!(found("  "), []);
    }

    #[test]
    fn titles_come_first() {
        let first = found("print")[0];
        assert_eq!(pages()[first.page].title, "Print");
        assert_eq!(first.line, None);
    }
}
