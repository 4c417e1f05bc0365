//! The same thing called by two words across a story.

use crate::story::measure::tokens::Tokens;

/// Words that are mostly used for one and the same thing. Helper and trainer stand apart, since
/// many clubs have both; so do tile and card, which are different things on the day.
const GROUPS: [&[&str]; 20] = [
    &[
        "helper",
        "assistant",
        "volunteer",
        "supporter",
        "support worker",
        "aide",
    ],
    &["coach", "trainer", "instructor", "teacher"],
    &["sea", "ocean"],
    &[
        "toilet", "loo", "bathroom", "restroom", "washroom", "lavatory",
    ],
    &["mum", "mummy", "mother", "mom", "mommy"],
    &["dad", "daddy", "father"],
    &["grown-up", "adult"],
    &["children", "kids"],
    &[
        "sunscreen",
        "sun cream",
        "suncream",
        "sunblock",
        "sun lotion",
    ],
    &[
        "ear muffs",
        "earmuffs",
        "ear defenders",
        "headphones",
        "ear protectors",
    ],
    &[
        "life jacket",
        "lifejacket",
        "life vest",
        "buoyancy aid",
        "buoyancy vest",
    ],
    &["swim top", "rash vest", "rash top", "swim shirt"],
    &[
        "swimsuit",
        "swimming costume",
        "bathers",
        "bathing suit",
        "swimwear",
    ],
    &["water shoes", "aqua shoes", "beach shoes", "reef shoes"],
    &["group", "team", "crew"],
    &["plan", "schedule", "timetable"],
    &[
        "quiet place",
        "quiet corner",
        "calm corner",
        "quiet area",
        "calm space",
        "quiet room",
    ],
    &["spade", "shovel"],
    &["bucket", "pail"],
    &["lifeguard", "lifesaver"],
];

/// The same thing under two or more words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TwoWords {
    /// The words found, the most used first, else in the order of the story.
    pub words: Vec<String>,
    /// Why someone may trip over it, one sentence.
    pub why: String,
    /// A better way, one sentence.
    pub better: String,
}

/// Where a story may call one thing by two words.
pub fn two_words(sentences: &[&str]) -> Vec<TwoWords> {
    let read: Vec<_> = sentences.iter().map(|s| Tokens::read(s)).collect();
    GROUPS
        .iter()
        .filter_map(|group| {
            // Each with how often and where first.
            let mut used: Vec<_> = group
                .iter()
                .map(|&term| (term, places(&read, term)))
                .filter(|(_, places)| !places.is_empty())
                .collect();
            used.sort_by_key(|(_, places)| (std::cmp::Reverse(places.len()), places[0]));
            let ([(first, _), (second, _), ..], words) = (
                used.as_slice(),
                used.iter().map(|(t, _)| (*t).to_owned()).collect(),
            ) else {
                return None;
            };
            Some(TwoWords {
                words,
                why: format!("“{first}” and “{second}” may be read as two different things."),
                better: format!("If they are the same, say “{first}” every time."),
            })
        })
        .collect()
}

/// Sentence and word of each use, in the singular, the plural or with an ’s.
fn places(read: &[Tokens<'_>], term: &str) -> Vec<(usize, usize)> {
    let same = |word: &str, wanted: &str| {
        let bare = word
            .strip_suffix("'s")
            .or(word.strip_suffix('\''))
            .unwrap_or(word);
        let plural = bare
            .strip_suffix("es")
            .is_some_and(|w| w == wanted && w.ends_with("ch"));
        bare == wanted || bare.strip_suffix('s') == Some(wanted) || plural
    };
    let mut all = Vec::new();
    for (s, tokens) in read.iter().enumerate() {
        for i in 0..tokens.all.len() {
            let mut parts = term.split(' ').enumerate();
            if parts.all(|(n, part)| same(tokens.word(i + n), part)) {
                all.push((s, i));
            }
        }
    }
    all
}
