//! What is said as what is not: "don’t", "without", "not unlimited".

use super::{Remark, RemarkKind, Teller, quoted};
use crate::story::measure::tokens::Tokens;

const NEGATIVES: [&str; 14] = [
    "not", "no", "never", "cannot", "can't", "don't", "without", "nothing", "nobody", "none",
    "nor", "neither", "nowhere", "no-one",
];

/// Words in un- that are no opposites of another word.
const NOT_OPPOSITE: [&str; 18] = [
    "under",
    "until",
    "unless",
    "uncle",
    "union",
    "unique",
    "unit",
    "united",
    "uniform",
    "universe",
    "understand",
    "understands",
    "underneath",
    "underwater",
    "undress",
    "unpack",
    "untie",
    "unfold",
];

/// What to do instead of what is often forbidden; `~` where the rest of the sentence follows.
const INSTEAD: [(&str, &str); 24] = [
    ("run", "walk~"),
    ("shout", "speak softly"),
    ("scream", "speak softly"),
    ("yell", "speak softly"),
    ("go", "wait"),
    ("leave", "stay with {my} group"),
    ("push", "keep {my} hands by {my} side"),
    ("hit", "keep {my} hands by {my} side"),
    ("kick", "keep {my} feet on the ground"),
    ("throw", "hold~"),
    ("touch", "look at~"),
    ("grab", "ask for~"),
    ("take", "ask for~"),
    ("forget", "remember~"),
    ("talk", "listen~"),
    ("interrupt", "wait for {my} turn"),
    ("jump", "stand~"),
    ("climb", "stay on the ground"),
    ("stand", "sit~"),
    ("move", "stay still~"),
    ("splash", "move the water slowly"),
    ("drink", "drink from {my} bottle"),
    ("worry", "ask {my} helper"),
    ("cry", "ask for a break"),
];

pub(super) fn look(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all = Vec::new();
    let mut until = 0;
    for i in 0..tokens.all.len() {
        if i < until || !is_negative(tokens, i) {
            continue;
        }
        match second(tokens, i) {
            Some(other) => {
                all.push(double(tokens, i, other));
                until = other + 1;
            }
            None => {
                let why = "It says what does not happen, and leaves open what does.";
                let better = instead(tokens, i, teller);
                all.push(Remark::on(tokens, RemarkKind::Negative, (i, i), why).better(better));
            }
        }
    }
    all
}

fn is_negative(tokens: &Tokens<'_>, i: usize) -> bool {
    let word = tokens.word(i);
    // The plan's own necessary words: "Splash is not today."
    let not_today = word == "not" && tokens.word(i + 1) == "today";
    // "I can say no", "yes or no": the word itself is meant.
    let meant = ["say", "says", "said", "saying", "mean", "means", "or"];
    let said = word == "no" && (meant.contains(&tokens.before(i)) || tokens.word(i + 1) == "or");
    (NEGATIVES.contains(&word) || word.ends_with("n't")) && !not_today && !said
}

/// A second negative of the same clause: "not unlimited", "can’t do nothing".
fn second(tokens: &Tokens<'_>, first: usize) -> Option<usize> {
    let links = ["and", "but", "or", "because", "so", "if", "when", "nor"];
    (first + 1..tokens.all.len())
        .take_while(|&i| !links.contains(&tokens.word(i)) && !tokens.all[i].after_break)
        .find(|&i| is_negative(tokens, i) || i <= first + 2 && opposite(tokens.word(i)).is_some())
}

/// The word that an un- or im- turns round.
fn opposite(word: &str) -> Option<&str> {
    if word == "impossible" {
        return Some("possible");
    }
    let bare = word.strip_prefix("un")?;
    (bare.len() >= 4 && !NOT_OPPOSITE.contains(&word) && !word.starts_with("under")).then_some(bare)
}

fn double(tokens: &Tokens<'_>, first: usize, other: usize) -> Remark {
    let why = "Two negatives in one clause take an extra step to understand.";
    let remark = Remark::on(tokens, RemarkKind::DoubleNegative, (first, other), why);
    match opposite(tokens.word(other)) {
        // "Time is not unlimited" is "Time is limited".
        Some(bare) if tokens.word(first) == "not" => {
            let before = &tokens.text[..tokens.all[first].at.start];
            let between = &tokens.text[tokens.all[first].at.end..tokens.all[other].at.start];
            let after = &tokens.text[tokens.all[other].at.end..];
            let said = format!("{before}{}{bare}{after}", between.trim_start());
            remark.better(format!("Say it without them: {}", quoted(&said)))
        }
        // "I cannot go without my helper" is "I can go with my helper".
        _ if ["cannot", "can't"].contains(&tokens.word(first))
            && tokens.word(other) == "without" =>
        {
            let before = &tokens.text[..tokens.all[first].at.start];
            let between = &tokens.text[tokens.all[first].at.end..tokens.all[other].at.start];
            let after = &tokens.text[tokens.all[other].at.end..];
            let said = format!("{before}can{between}with{after}");
            remark.better(format!("Say it without them: {}", quoted(&said)))
        }
        _ => remark.better("Say what is so, with neither of the two words."),
    }
}

/// Whether a word is this verb, or its -ing: "No running".
fn forms(word: &str, verb: &str) -> bool {
    let doubled = || verb.chars().last().map(|c| format!("{verb}{c}"));
    word == verb
        || word
            .strip_suffix("ing")
            .is_some_and(|w| w == verb || Some(w) == doubled().as_deref())
}

/// What can be said in place of a negative.
fn instead(tokens: &Tokens<'_>, i: usize, teller: &Teller<'_>) -> String {
    let (who, own) = (teller.subject(), teller.own());
    let found = INSTEAD
        .iter()
        .find(|(verb, _)| forms(tokens.word(i + 1), verb));
    let Some((_, way)) = found else {
        return match tokens.word(i) {
            "without" => "Say what is there, or what one does.".to_owned(),
            "no" | "nothing" | "none" | "nobody" | "no-one" => "Say what there is.".to_owned(),
            _ => format!("Say what happens, or what one can do: “{who} can …”."),
        };
    };
    let clause: Vec<_> = (i + 2..tokens.all.len())
        .take_while(|&n| {
            !["and", "but", "or", "because"].contains(&tokens.word(n)) && !tokens.all[n].after_break
        })
        .collect();
    let rest = match (clause.first(), clause.last()) {
        (Some(&from), Some(&to)) => format!(" {}", &tokens.text[tokens.span(from, to)]),
        _ => String::new(),
    };
    let rest = rest.replace(" your ", &format!(" {own} "));
    let way = way.replace('~', &rest).replace("{my}", own);
    format!(
        "Say what one can do: {}",
        quoted(&format!("{who} can {way}"))
    )
}
