//! The balance of describing and coaching sentences in a story.
//!
//! Two rules have been published for stories of this kind. The earlier one (usually given to Gray
//! and Garand, 1993) asks for two to five describing sentences for each that coaches; later
//! handbooks only for at least two. A story that coaches nowhere keeps both. The count is a help
//! for the writer; it makes no story conform to anybody's scheme.

use super::kind::Kind;
use super::split;
use super::wording::Teller;

/// Describing sentences for each coaching one, at least: both rules.
const LEAST: f64 = 2.0;
/// At most, by the earlier rule.
const MOST: f64 = 5.0;

/// How many sentences describe and how many coach.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Balance {
    /// Describing, perspective and affirming sentences.
    pub describing: usize,
    /// Sentences that say what to do or to try.
    pub directing: usize,
}

impl Balance {
    /// Counts the sentences of texts; each text may hold several.
    pub fn of<S: AsRef<str>>(texts: &[S], teller: &Teller<'_>) -> Self {
        let mut balance = Self::default();
        for sentence in texts.iter().flat_map(|t| split::sentences(t.as_ref())) {
            match Kind::of(sentence, teller.voice, teller.name) {
                Kind::Directing => balance.directing += 1,
                Kind::Describing | Kind::Perspective | Kind::Affirming => balance.describing += 1,
            }
        }
        balance
    }

    /// Describing sentences for each that coaches; none where none coaches.
    pub fn ratio(&self) -> Option<f64> {
        (self.directing > 0).then(|| self.describing as f64 / self.directing as f64)
    }

    /// Whether the later rule is kept: at least two for each.
    pub fn keeps_later_rule(&self) -> bool {
        self.ratio().is_none_or(|r| r >= LEAST)
    }

    /// Whether the earlier rule is kept: two to five for each.
    pub fn keeps_earlier_rule(&self) -> bool {
        self.ratio().is_none_or(|r| (LEAST..=MOST).contains(&r))
    }

    /// What there is to say about it, one sentence each: the counts first, then what the rules note.
    pub fn notes(&self) -> Vec<String> {
        if *self == Self::default() {
            return Vec::new();
        }
        let describe = match self.describing {
            0 => "No sentence describes".to_owned(),
            1 => "1 sentence describes".to_owned(),
            n => format!("{n} sentences describe"),
        };
        let direct = match self.directing {
            0 => "none says what to do".to_owned(),
            1 => "1 says what to do".to_owned(),
            n => format!("{n} say what to do"),
        };
        let mut notes = vec![format!("{describe}, {direct}.")];
        if !self.keeps_later_rule() {
            let wanted = 2 * self.directing - self.describing;
            let more = if wanted == 1 {
                "1 more that tells what happens would do.".to_owned()
            } else {
                format!("{wanted} more that tell what happens would do.")
            };
            notes.push(format!(
                "Guidance asks for at least 2 that describe for each that says what to do; {more}"
            ));
        } else if !self.keeps_earlier_rule() {
            notes.push(
                "That is more than 5 for each, the most an early rule names; later ones name no \
                 upper end."
                    .to_owned(),
            );
        }
        notes
    }
}
