//! Length, ideas, long words, shortened words, figures of speech.

use super::{Remark, RemarkKind, Teller};
use crate::story::measure::syllables::syllables;
use crate::story::measure::tokens::Tokens;

/// Words in a sentence at most: common guidance for easy-to-read text.
const MOST_WORDS: usize = 15;
/// From here on a word is long.
const LONG_WORD: usize = 4;

/// Linking words, more than one of which hints at two ideas.
const LINKING: [&str; 6] = ["and", "but", "because", "although", "though", "which"];

/// Long words that everyone hears every day; "usually" is one that stories need.
const EVERYDAY: [&str; 9] = [
    "usually",
    "everybody",
    "anybody",
    "activity",
    "activities",
    "january",
    "february",
    "television",
    "especially",
];

pub(super) fn look(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all = Vec::new();
    all.extend(long(tokens));
    all.extend(two_ideas(tokens));
    all.extend(hard_words(tokens, teller));
    all.extend(shortened(tokens, teller));
    all.extend(figurative(tokens));
    all
}

fn long(tokens: &Tokens<'_>) -> Option<Remark> {
    let count = tokens.all.len();
    (count > MOST_WORDS).then(|| {
        let why = format!("{count} words are a lot to hold in mind; up to 15 are easier.");
        let cuts = [
            "because", "and", "but", "so", "before", "after", "when", "until", "which",
        ];
        let middle = count / 2;
        let cut = (3..count - 1)
            .filter(|&i| cuts.contains(&tokens.word(i)))
            .min_by_key(|i| i.abs_diff(middle));
        let better = match cut {
            Some(i) => format!(
                "End a sentence before “{}” and begin a new one.",
                tokens.word(i)
            ),
            None => "Say it in two sentences.".to_owned(),
        };
        Remark::on(tokens, RemarkKind::Long, (0, count - 1), &why).better(better)
    })
}

fn two_ideas(tokens: &Tokens<'_>) -> Option<Remark> {
    let links: Vec<_> = (1..tokens.all.len())
        .filter(|&i| LINKING.contains(&tokens.word(i)) || is_so(tokens, i))
        .collect();
    let (Some(&first), Some(&last)) = (links.first(), links.last()) else {
        return None;
    };
    let why = "More than one linking word hints at more than one idea.";
    let better = format!(
        "See whether “{}” can begin a sentence of its own.",
        tokens.rest(last + 1)
    );
    (first < last)
        .then(|| Remark::on(tokens, RemarkKind::TwoIdeas, (first, last), why).better(better))
}

/// "so" between two clauses, not "so loud".
fn is_so(tokens: &Tokens<'_>, i: usize) -> bool {
    let subjects = [
        "i", "you", "we", "they", "it", "he", "she", "that", "my", "the",
    ];
    tokens.word(i) == "so" && subjects.contains(&tokens.word(i + 1))
}

fn hard_words(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let is_hard = |i: usize| {
        let token = &tokens.all[i];
        let longest = token.word.split('-').map(syllables).max().unwrap_or(0);
        // A capital within a sentence is a name, which has no easier word.
        let is_name = i > 0 && tokens.text[token.at.clone()].starts_with(char::is_uppercase)
            || teller
                .name
                .to_lowercase()
                .split_whitespace()
                .any(|n| n == token.word);
        longest >= LONG_WORD
            && !is_name
            && !token
                .word
                .contains(|c: char| c.is_ascii_digit() || c == '.')
            && !EVERYDAY.contains(&token.word.as_str())
    };
    (0..tokens.all.len())
        .filter(|&i| is_hard(i))
        .map(|i| {
            let why = "A word of four or more syllables may be new to someone.";
            let better = format!(
                "Use a shorter word, or say in the next sentence what “{}” means.",
                tokens.word(i)
            );
            Remark::on(tokens, RemarkKind::HardWord, (i, i), why).better(better)
        })
        .collect()
}

/// Shortened words and what they stand for.
const SHORT: [(&str, &str); 11] = [
    ("e.g", "for example"),
    ("eg", "for example"),
    ("i.e", "that is"),
    ("ie", "that is"),
    ("etc", "and more"),
    ("approx", "about"),
    ("asap", "soon"),
    ("vs", "against"),
    ("mins", "minutes"),
    ("hrs", "hours"),
    ("info", "information"),
];

fn shortened(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let capitals = |text: &str| {
        let letters = text.chars().filter(|c| c.is_alphabetic()).count();
        let upper = text
            .chars()
            .all(|c| c.is_uppercase() || c == '.' || c.is_ascii_digit());
        upper && (2..=6).contains(&letters) && !["OK", "TV"].contains(&text)
    };
    // A sentence all in capitals has no initials, and is not for us to read.
    let shouts = !tokens.text.contains(char::is_lowercase);
    let times = ["a.m", "p.m", "am", "pm"];
    let found = (0..tokens.all.len()).filter_map(|i| {
        let text = &tokens.text[tokens.all[i].at.clone()];
        let word = tokens.word(i);
        let why = "Someone may not know what the short form stands for.";
        let on = || Remark::on(tokens, RemarkKind::Abbreviation, (i, i), why);
        if let Some((_, whole)) = SHORT.iter().find(|(s, _)| *s == word) {
            return Some(on().better(format!("Write “{whole}” in place of “{text}”.")));
        }
        let initials = capitals(text) && !shouts && !times.contains(&word) && text != teller.name;
        initials.then(|| on().better(format!("Write the words that “{text}” stands for.")))
    });
    found.collect()
}

/// Figures of speech and what they mean.
const FIGURES: [(&str, &str); 41] = [
    ("make a splash", "have a go"),
    ("makes a splash", "has a go"),
    ("piece of cake", "easy"),
    ("butterflies in my", "I feel nervous"),
    ("butterflies in your", "you feel nervous"),
    ("butterflies in their", "they feel nervous"),
    ("fly by", "go fast"),
    ("flies by", "goes fast"),
    ("time flies", "time seems short"),
    ("is a breeze", "is easy"),
    ("be a breeze", "be easy"),
    ("over the moon", "happy"),
    ("under the weather", "ill"),
    ("cats and dogs", "hard rain"),
    ("on top of the world", "happy"),
    ("hold your horses", "wait"),
    ("hold my horses", "wait"),
    ("keep an eye on", "watch"),
    ("keeps an eye on", "watches"),
    ("eyes peeled", "look"),
    ("all ears", "listening"),
    ("jump for joy", "happy"),
    ("full of beans", "lively"),
    ("get the hang of", "learn"),
    ("hit the beach", "go to the beach"),
    ("hit the water", "go into the water"),
    ("hit the waves", "go into the waves"),
    ("catch some rays", "sit in the sun"),
    ("let off steam", "move about"),
    ("a blast", "a good time"),
    ("chill out", "rest"),
    ("hang out", "be together"),
    ("break the ice", "say hello"),
    ("plain sailing", "easy"),
    ("smooth sailing", "easy"),
    ("fish out of water", "new here"),
    ("a sea of", "many"),
    ("can't wait", "happy to come"),
    ("break a leg", "good luck"),
    ("in a nutshell", "in short"),
    ("have a whale of a time", "have a good time"),
];

/// "A bird may fly by" and "I make a splash with my hands" are meant as they stand.
fn word_for_word(tokens: &Tokens<'_>, figure: &str, last: usize) -> bool {
    let flies = [
        "bird", "birds", "gull", "gulls", "seagull", "seagulls", "kite", "kites", "plane",
    ];
    match figure {
        "fly by" | "flies by" => tokens.all.iter().any(|t| flies.contains(&t.word.as_str())),
        "make a splash" | "makes a splash" => ["with", "in"].contains(&tokens.word(last + 1)),
        _ => false,
    }
}

/// Comparisons of size or amount may be meant word for word: "as big as a ball".
const MEASURED: [&str; 14] = [
    "big", "small", "long", "tall", "high", "wide", "heavy", "loud", "soon", "much", "many", "far",
    "often", "well",
];

fn figurative(tokens: &Tokens<'_>) -> Vec<Remark> {
    let why = "Someone may take these words as they stand.";
    let mut all: Vec<_> = FIGURES
        .iter()
        .flat_map(|(figure, plain)| {
            let last = figure.split(' ').count() - 1;
            let meant = move |i: &usize| !word_for_word(tokens, figure, i + last);
            tokens.find(figure).into_iter().filter(meant).map(move |i| {
                Remark::on(tokens, RemarkKind::Figurative, (i, i + last), why)
                    .better(format!("Say plainly what is meant, such as “{plain}”."))
            })
        })
        .collect();
    // "as brave as a lion"
    for i in tokens.find("as") {
        let article = ["a", "an", "the"].contains(&tokens.word(i + 3));
        let like = tokens.word(i + 2) == "as" && article && !tokens.word(i + 4).is_empty();
        if like && !MEASURED.contains(&tokens.word(i + 1)) {
            let better = format!("Say only “{}”.", tokens.word(i + 1));
            all.push(Remark::on(tokens, RemarkKind::Figurative, (i, i + 4), why).better(better));
        }
    }
    all
}
