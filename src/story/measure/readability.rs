//! How hard a text is to read, by two published formulas on three counts.
//!
//! Reading ease: R. Flesch, "A new readability yardstick", Journal of Applied Psychology 32(3),
//! 1948. School grade: Kincaid, Fishburne, Rogers and Chissom, Navy Research Branch Report 8-75,
//! 1975. Both were made for longer prose; short stories go beyond 100 and below grade 0, and the
//! numbers here are left as they come. Only their wording stops at the ends.

use super::split;
use super::syllables::syllables;

/// What the formulas count.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Words.
    pub words: usize,
    /// Sentences.
    pub sentences: usize,
    /// Syllables of all words.
    pub syllables: usize,
}

impl Counts {
    /// Counts texts; each may hold several sentences.
    pub fn of<S: AsRef<str>>(texts: &[S]) -> Self {
        let sentences = texts.iter().flat_map(|t| split::sentences(t.as_ref()));
        let mut counts = Self::default();
        for sentence in sentences {
            let words = split::words(sentence);
            counts.sentences += 1;
            counts.words += words.len();
            counts.syllables += words.into_iter().map(syllables).sum::<usize>();
        }
        counts
    }

    /// Words in a sentence on average; none for no text.
    pub fn words_per_sentence(&self) -> Option<f64> {
        ratio(self.words, self.sentences)
    }

    /// Syllables in a word on average; none for no text.
    pub fn syllables_per_word(&self) -> Option<f64> {
        ratio(self.syllables, self.words)
    }

    /// Flesch's reading ease: the higher, the easier. May be above 100 or below 0.
    pub fn reading_ease(&self) -> Option<f64> {
        let (sentence, word) = (self.words_per_sentence()?, self.syllables_per_word()?);
        Some(206.835 - 1.015 * sentence - 84.6 * word)
    }

    /// The school grade in the United States for which a text is made, by Flesch and Kincaid. May
    /// be below 0.
    pub fn grade(&self) -> Option<f64> {
        let (sentence, word) = (self.words_per_sentence()?, self.syllables_per_word()?);
        Some(0.39 * sentence + 11.8 * word - 15.59)
    }

    /// The reading ease in words, by Flesch's bands; all above 90 is the easiest, all below 30 the
    /// hardest.
    pub fn band(&self) -> Option<&'static str> {
        const BANDS: [(f64, &str); 6] = [
            (90.0, "very easy to read"),
            (80.0, "easy to read"),
            (70.0, "fairly easy to read"),
            (60.0, "neither easy nor hard to read"),
            (50.0, "fairly hard to read"),
            (30.0, "hard to read"),
        ];
        let ease = self.reading_ease()?;
        let band = BANDS.iter().find(|(from, _)| ease >= *from);
        Some(band.map_or("very hard to read", |(_, words)| words))
    }
}

fn ratio(part: usize, whole: usize) -> Option<f64> {
    (part > 0 && whole > 0).then(|| part as f64 / whole as f64)
}
