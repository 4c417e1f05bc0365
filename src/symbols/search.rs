//! Finding a symbol by the words someone types.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// The words of one symbol, made ready to compare.
#[derive(Clone, Debug, Default)]
pub(super) struct Words {
    label: Vec<String>,
    synonyms: Vec<Vec<String>>,
    group: Vec<String>,
    shows: Vec<String>,
}

/// A word that was typed, and how it may be taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Typed {
    word: String,
    /// The word without an English ending, such as `wave` for `waves`.
    stems: Vec<String>,
    /// How many letters may be wrong.
    slips: usize,
}

/// How well a word fits, smaller is better: the whole label, its start, a synonym, and so on. A
/// word with wrong letters comes after all others.
const SLIP: u32 = 10;

/// Makes typed words ready: one that fits no symbol by its start may have letters wrong.
pub(super) fn typed<'a, I>(wanted: &[String], all: impl Fn() -> I) -> Vec<Typed>
where
    I: Iterator<Item = &'a Words>,
{
    let ready = |word: &String| {
        let mut t = Typed {
            stems: stems(word),
            word: word.clone(),
            slips: 0,
        };
        if !all().any(|w| w.rank_one(&t).is_some()) {
            // Short words with a letter wrong are other words.
            t.slips = match word.chars().count() {
                0..=3 => 0,
                4..=6 => 1,
                _ => 2,
            };
        }
        t
    };
    wanted.iter().map(ready).collect()
}

impl Words {
    pub(super) fn new(label: &str, synonyms: &[String], group: &str, shows: &str) -> Self {
        Self {
            label: split(label),
            synonyms: synonyms.iter().map(|s| split(s)).collect(),
            group: split(group),
            shows: split(shows),
        }
    }

    /// How well all of the wanted words fit, 0 best; none when one of them does not.
    pub(super) fn rank(&self, wanted: &[Typed]) -> Option<u32> {
        let same = |words: &[String]| words.iter().eq(wanted.iter().map(|t| &t.word));
        if wanted.is_empty() || same(&self.label) {
            return Some(0);
        }
        if self.synonyms.iter().any(|s| same(s)) && wanted.len() > 1 {
            return Some(1);
        }
        wanted.iter().map(|w| self.rank_one(w).map(|r| r + 1)).sum()
    }

    /// Of two that fit as well, the one that says less is meant.
    pub(super) fn long(&self) -> usize {
        self.label.len()
    }

    fn rank_one(&self, wanted: &Typed) -> Option<u32> {
        self.rank_word(&wanted.word)
            .or_else(|| self.rank_stems(&wanted.stems))
            .or_else(|| self.rank_slips(wanted))
    }

    fn rank_word(&self, wanted: &str) -> Option<u32> {
        let starts = |words: &[String]| words.iter().any(|w| w.starts_with(wanted));
        let first = |words: &[String]| words.first().is_some_and(|w| w.starts_with(wanted));
        let whole = |words: &[String]| words.iter().any(|w| w == wanted);
        if self.label.len() == 1 && whole(&self.label) {
            Some(0)
        } else if whole(&self.label) {
            Some(1)
        } else if first(&self.label) {
            Some(2)
        } else if self.synonyms.iter().any(|s| s.len() == 1 && s[0] == wanted) {
            Some(3)
        } else if starts(&self.label) {
            Some(4)
        } else if self.synonyms.iter().any(|s| first(s)) {
            Some(5)
        } else if self.synonyms.iter().any(|s| starts(s)) {
            Some(6)
        } else if starts(&self.group) {
            Some(7)
        } else if starts(&self.shows) {
            Some(8)
        } else {
            None
        }
    }

    fn rank_stems(&self, stems: &[String]) -> Option<u32> {
        let whole = |words: &[String]| words.iter().any(|w| stems.contains(w));
        if whole(&self.label) {
            Some(3)
        } else if self.synonyms.iter().any(|s| whole(s)) {
            Some(6)
        } else {
            whole(&self.shows).then_some(9)
        }
    }

    /// The word with the fewest wrong letters among label and synonyms, compared with as much of
    /// it as was typed.
    fn rank_slips(&self, wanted: &Typed) -> Option<u32> {
        if wanted.slips == 0 {
            return None;
        }
        let whole_label = if self.label.len() == 1 { 0 } else { 2 };
        let in_label = self.label.iter().map(|w| (whole_label, w));
        let all = in_label.chain(self.synonyms.iter().flatten().map(|w| (4, w)));
        let rank = |(place, word): (u32, &String)| {
            let (slips, start) = slips(&wanted.word, word)?;
            let rank = SLIP * slips as u32 + place + if start { 1 } else { 0 };
            (slips <= wanted.slips).then_some(rank)
        };
        all.filter_map(rank).min()
    }
}

/// Letters wrong, missing, too many or swapped between what was typed and the word or a start of it,
/// and whether it was a start; none when they begin differently.
fn slips(typed: &str, word: &str) -> Option<(usize, bool)> {
    let (mut a, mut b) = (typed.chars(), word.chars());
    let (first, second) = ((a.next(), a.next()), (b.next(), b.next()));
    // The first letter is hardly ever wrong unless swapped; letting it be would find too much.
    if first.0 != second.0 && first != (second.1, second.0) {
        return None;
    }
    let n = typed.chars().count();
    let start = |n: usize| word.chars().take(n).collect::<String>();
    let of_start = [n.saturating_sub(1), n, n + 1].map(|n| strsim::osa_distance(typed, &start(n)));
    let whole = strsim::osa_distance(typed, word);
    let start = of_start.into_iter().min()?;
    Some((start.min(whole), start < whole))
}

/// What the word may be without an English ending: waves, boxes, swimming, taking, jumped.
fn stems(word: &str) -> Vec<String> {
    let mut all = Vec::new();
    let mut keep = |stem: &str| {
        if stem.chars().count() >= 3 {
            all.push(stem.to_owned());
        }
    };
    for end in ["s", "es"] {
        word.strip_suffix(end).into_iter().for_each(&mut keep);
    }
    for end in ["ing", "ed"] {
        let Some(cut) = word.strip_suffix(end) else {
            continue;
        };
        keep(cut);
        keep(&format!("{cut}e"));
        let mut last = cut.chars().rev();
        if let (Some(x), Some(y)) = (last.next(), last.next())
            && x == y
        {
            keep(&cut[..cut.len() - x.len_utf8()]);
        }
    }
    all
}

/// The words of a text without case, accents and punctuation.
pub(super) fn split(text: &str) -> Vec<String> {
    let plain: String = text
        .nfkd()
        .filter(|c| !is_combining_mark(*c) && *c != '\'' && *c != '\u{2019}')
        .flat_map(char::to_lowercase)
        .collect();
    plain
        .split(|c: char| !c.is_alphanumeric())
        .filter(|w| !w.is_empty())
        .map(str::to_owned)
        .collect()
}
