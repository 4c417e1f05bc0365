//! Orders ("must", "have to") and words without exceptions ("always", "everyone must").

use super::{Remark, RemarkKind, Teller, quoted};
use crate::story::measure::tokens::Tokens;

const DUTIES: [&str; 15] = [
    "must",
    "mustn't",
    "should",
    "shouldn't",
    "shall",
    "ought to",
    "ought",
    "have to",
    "has to",
    "need to",
    "needs to",
    "supposed to",
    "had better",
    "have got to",
    "expected to",
];

const ABSOLUTES: [(&str, &str); 14] = [
    ("always", "usually"),
    ("never", "not often"),
    ("every time", "most times"),
    ("all the time", "most of the time"),
    ("forever", "for now"),
    ("definitely", "probably"),
    ("certainly", "probably"),
    ("for sure", "probably"),
    ("completely", "mostly"),
    ("totally", "mostly"),
    ("no matter what", "most of the time"),
    ("impossible", "hard"),
    ("100 percent", "mostly"),
    ("at all times", "most of the time"),
];

/// Words that make a rule or a mind of "everyone"; "Everyone sits in a ring" only tells.
const RULING: [&str; 16] = [
    "must", "will", "should", "has", "have", "needs", "need", "always", "likes", "like", "loves",
    "love", "knows", "know", "enjoys", "enjoy",
];

pub(super) fn look(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all = duties(tokens, teller);
    all.extend(absolutes(tokens, teller));
    all.extend(everyone(tokens));
    all
}

fn duties(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all: Vec<Remark> = Vec::new();
    for duty in DUTIES {
        let last = duty.split(' ').count() - 1;
        for i in tokens.find(duty) {
            // "If I need to go" is a need, not an order; "ought to" is found once.
            let need = duty.starts_with("need") && i >= 2 && tokens.in_condition(i - 1);
            let again = all.iter().any(|r| r.at.start == tokens.all[i].at.start);
            // "I do not have to" and "Nobody has to" free from a duty.
            let before = tokens.before(i);
            let free = ["not", "never", "nobody"].contains(&before)
                || before.ends_with("n't")
                || before == "one" && i >= 2 && tokens.before(i - 1) == "no";
            if need || again || free {
                continue;
            }
            let why = "It is an order; a story tells what happens and what one can try.";
            let better = try_it(tokens, i, i + last + 1, teller);
            all.push(Remark::on(tokens, RemarkKind::Duty, (i, i + last), why).better(better));
        }
    }
    all
}

/// "I must wait" as "I can try to wait".
fn try_it(tokens: &Tokens<'_>, from: usize, verb: usize, teller: &Teller<'_>) -> String {
    let negative = tokens.word(from).ends_with("n't") || tokens.word(verb) == "not";
    let rest = tokens.rest(verb);
    if negative || rest.is_empty() || from == 0 {
        return format!("Say what one can do: “{} can …”.", teller.subject());
    }
    let stop = (verb..tokens.all.len())
        .find(|&n| n > verb && ["and", "but", "because"].contains(&tokens.word(n)));
    let to = stop.map_or(tokens.all.len() - 1, |n| n - 1);
    let start = (0..from)
        .rev()
        .take_while(|&n| !["and", "but", "because"].contains(&tokens.word(n)))
        .last()
        .unwrap_or(from - 1);
    let subject = match &tokens.text[tokens.span(start, from - 1)] {
        "You" | "you" => teller.subject(),
        other => other,
    };
    let does = &tokens.text[tokens.span(verb, to)];
    format!(
        "Say it as something to try: {}",
        quoted(&format!("{subject} can try to {does}"))
    )
}

fn absolutes(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all = Vec::new();
    for (absolute, softer) in ABSOLUTES {
        let last = absolute.split(' ').count() - 1;
        for i in tokens.find(absolute) {
            let why = "It says that there is no exception, and one day there is.";
            let on = Remark::on(tokens, RemarkKind::Absolute, (i, i + last), why);
            all.push(on.better(softened(tokens, (i, i + last), softer, teller)));
        }
    }
    all
}

/// The sentence with the softer word, or as something to try.
fn softened(
    tokens: &Tokens<'_>,
    (from, to): (usize, usize),
    softer: &str,
    teller: &Teller<'_>,
) -> String {
    let word = &tokens.text[tokens.span(from, to)];
    if tokens.word(from) == "never" {
        return "Say what usually happens, or what one can do.".to_owned();
    }
    // "I will always sit still."
    if from >= 2 && tokens.before(from) == "will" && from + 1 < tokens.all.len() {
        let does = tokens.rest(to + 1);
        let who = teller.subject();
        return format!(
            "Say it as something to try: {}",
            quoted(&format!("{who} can try to {does}"))
        );
    }
    if from == 0 {
        return format!("Say “{softer}”, or what one can do.");
    }
    let before = &tokens.text[..tokens.all[from].at.start];
    let after = &tokens.text[tokens.all[to].at.end..];
    format!(
        "Say “{softer}” in place of “{word}”: {}",
        quoted(&format!("{before}{softer}{after}"))
    )
}

/// "Everyone must …", "All children love …".
fn everyone(tokens: &Tokens<'_>) -> Vec<Remark> {
    let nouns = [
        "children",
        "kids",
        "people",
        "of",
        "boys",
        "girls",
        "swimmers",
        "participants",
    ];
    let found = (0..tokens.all.len()).filter_map(|i| {
        let subject = match tokens.word(i) {
            "everyone" | "everybody" | "nobody" => i,
            "no" if tokens.word(i + 1) == "one" => i + 1,
            "every" if ["child", "kid", "person"].contains(&tokens.word(i + 1)) => i + 1,
            "all" if nouns.contains(&tokens.word(i + 1)) => {
                if tokens.word(i + 1) == "of" {
                    i + 2
                } else {
                    i + 1
                }
            }
            _ => return None,
        };
        // "Nobody has to" frees from a rule.
        let none = tokens.word(i) == "nobody" || tokens.word(i) == "no";
        let free = none && ["has", "have", "needs", "need"].contains(&tokens.word(subject + 1));
        if free || !RULING.contains(&tokens.word(subject + 1)) {
            return None;
        }
        let why = "It speaks for everyone, and people differ.";
        let on = Remark::on(tokens, RemarkKind::Absolute, (i, subject + 1), why);
        Some(on.better("Say “many people” or “some people”, or say who."))
    });
    found.collect()
}
