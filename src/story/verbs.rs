//! English verbs in the present: with "I", with "you", and with a name.

use crate::model::people::Voice;

/// Verbs whose forms follow no rule: as written by a club, with I, with you, with a name.
const IRREGULAR: [(&str, [&str; 3]); 21] = [
    ("be", ["am", "are", "is"]),
    ("am", ["am", "are", "is"]),
    ("are", ["am", "are", "is"]),
    ("is", ["am", "are", "is"]),
    ("was", ["was", "were", "was"]),
    ("were", ["was", "were", "was"]),
    ("have", ["have", "have", "has"]),
    ("has", ["have", "have", "has"]),
    ("had", ["had", "had", "had"]),
    ("do", ["do", "do", "does"]),
    ("does", ["do", "do", "does"]),
    ("did", ["did", "did", "did"]),
    ("go", ["go", "go", "goes"]),
    ("quiz", ["quiz", "quiz", "quizzes"]),
    ("don’t", ["don’t", "don’t", "doesn’t"]),
    ("doesn’t", ["don’t", "don’t", "doesn’t"]),
    ("haven’t", ["haven’t", "haven’t", "hasn’t"]),
    ("hasn’t", ["haven’t", "haven’t", "hasn’t"]),
    ("wasn’t", ["wasn’t", "weren’t", "wasn’t"]),
    ("isn’t", ["am not", "aren’t", "isn’t"]),
    ("aren’t", ["am not", "aren’t", "isn’t"]),
];

/// Verbs that are the same with everyone.
const SAME: [&str; 20] = [
    "can",
    "may",
    "will",
    "might",
    "could",
    "should",
    "would",
    "shall",
    "must",
    "ought",
    "cannot",
    "can’t",
    "won’t",
    "couldn’t",
    "shouldn’t",
    "wouldn’t",
    "mustn’t",
    "didn’t",
    "hadn’t",
    "needn’t",
];

/// Short verbs in -ed and -ing that are not a past or a participle.
const BASE_ED_ING: [&str; 14] = [
    "wed", "shed", "shred", "embed", "bring", "sing", "ring", "swing", "string", "sting", "fling",
    "cling", "spring", "wring",
];

/// A verb as it stands with "I", "you" or a name. The club writes it as with "I"; a past form or a
/// participle is left alone. A capital at its start is kept.
pub(super) fn conjugate(word: &str, voice: Voice) -> String {
    let end = word.trim_end_matches(|c: char| !c.is_alphanumeric()).len();
    let (verb, tail) = word.split_at(end);
    let lower = verb.to_lowercase().replace('\'', "’");
    let column = match voice {
        Voice::I => 0,
        Voice::You => 1,
        Voice::Name => 2,
    };
    let irregular = IRREGULAR.iter().find(|(base, _)| *base == lower);
    let said = match irregular {
        Some((_, forms)) => forms[column].to_owned(),
        None if column < 2 || is_fixed(&lower) => verb.to_owned(),
        None => format!("{}{}", stem(verb, &lower), ending(&lower)),
    };
    let capital = verb.chars().next().is_some_and(char::is_uppercase);
    let said = match said.chars().next() {
        Some(first) if capital => first.to_uppercase().chain(said.chars().skip(1)).collect(),
        _ => said,
    };
    said + tail
}

fn is_fixed(lower: &str) -> bool {
    let past = lower.ends_with("ed") && !lower.ends_with("eed") && lower.len() > 3;
    let doing = lower.ends_with("ing") && lower.len() > 4;
    lower.is_empty() || SAME.contains(&lower) || (past || doing) && !BASE_ED_ING.contains(&lower)
}

/// The verb without the -y that turns into -i.
fn stem<'a>(verb: &'a str, lower: &str) -> &'a str {
    if consonant_before(lower, 'y') {
        &verb[..verb.len() - 1]
    } else {
        verb
    }
}

fn ending(lower: &str) -> &'static str {
    let hisses = ["s", "x", "z", "ch", "sh"]
        .iter()
        .any(|e| lower.ends_with(e));
    if consonant_before(lower, 'y') {
        "ies"
    } else if consonant_before(lower, 'o') || (hisses && lower != "stomach") {
        "es"
    } else {
        "s"
    }
}

/// Whether the verb ends in this letter with a consonant before it.
fn consonant_before(lower: &str, last: char) -> bool {
    let mut back = lower.chars().rev();
    back.next() == Some(last)
        && back
            .next()
            .is_some_and(|c| c.is_alphabetic() && !"aeiou".contains(c))
}
