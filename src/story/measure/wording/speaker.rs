//! Who is spoken of and to: one voice in the whole story.

use super::{Remark, RemarkKind, Teller};
use crate::model::people::Voice;
use crate::story::measure::tokens::Tokens;

const YOU: [&str; 8] = [
    "you", "your", "yours", "yourself", "you're", "you'll", "you've", "you'd",
];
const I: [&str; 9] = [
    "i", "me", "my", "mine", "myself", "i'm", "i'll", "i've", "i'd",
];

pub(super) fn look(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all = Vec::new();
    for (i, token) in tokens.all.iter().enumerate() {
        if in_quotes(tokens.text, token.at.start) {
            continue;
        }
        let word = token.word.as_str();
        let kind = match teller.voice {
            Voice::I | Voice::Name if YOU.contains(&word) => RemarkKind::SecondPerson,
            Voice::You | Voice::Name if I.contains(&word) => RemarkKind::MixedVoice,
            _ => continue,
        };
        let why = match kind {
            RemarkKind::SecondPerson => "It tells the reader what to do, like an order.".to_owned(),
            _ => format!("The rest of the story says {}.", voice_words(teller)),
        };
        let better = format!(
            "Write “{}” in place of “{}”.",
            own_form(word, teller),
            &tokens.text[token.at.clone()]
        );
        all.push(Remark::on(tokens, kind, (i, i), &why).better(better));
    }
    if teller.voice != Voice::Name {
        all.extend(names(tokens, teller));
    }
    all
}

/// The participant’s name in a story told with "I" or "you".
fn names(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let found = tokens
        .named(teller.name.trim())
        .into_iter()
        .filter(|(from, _)| {
            // "My name is Noor", "I am Noor".
            let introduced = ["is", "am", "i'm", "called", "are", "you're", "for"];
            !introduced.contains(&tokens.before(*from))
        });
    found
        .map(|place| {
            let why = format!("The rest of the story says {}.", voice_words(teller));
            let word = if teller.voice == Voice::I { "I" } else { "you" };
            Remark::on(tokens, RemarkKind::MixedVoice, place, &why).better(format!(
                "Write “{word}” in place of “{}”.",
                teller.name.trim()
            ))
        })
        .collect()
}

fn voice_words(teller: &Teller<'_>) -> String {
    match teller.voice {
        Voice::I => "“I” and “my”".to_owned(),
        Voice::You => "“you” and “your”".to_owned(),
        Voice::Name if teller.name.trim().is_empty() => "the name".to_owned(),
        Voice::Name => format!("“{}”", teller.name.trim()),
    }
}

/// The word in the voice of the story.
fn own_form(word: &str, teller: &Teller<'_>) -> String {
    let (bare, short) = word.split_once('\'').unwrap_or((word, ""));
    let name = match teller.name.trim() {
        "" => "the name",
        name => name,
    };
    match (teller.voice, bare) {
        (Voice::I, _) if short == "re" => "I’m".to_owned(),
        (Voice::I, _) if !short.is_empty() => format!("I’{short}"),
        (Voice::You, _) if short == "m" => "you’re".to_owned(),
        (Voice::You, _) if !short.is_empty() => format!("you’{short}"),
        (Voice::Name, _) if ["m", "re"].contains(&short) => format!("{name} is"),
        (Voice::Name, _) if short == "ve" => format!("{name} has"),
        (Voice::Name, _) if short == "ll" => format!("{name} will"),
        (Voice::I, "you") => "I” or “me".to_owned(),
        (Voice::I, "your") => "my".to_owned(),
        (Voice::I, "yours") => "mine".to_owned(),
        (Voice::I, _) => "myself".to_owned(),
        (Voice::You, "my") => "your".to_owned(),
        (Voice::You, "mine") => "yours".to_owned(),
        (Voice::You, "myself") => "yourself".to_owned(),
        (Voice::You, _) => "you".to_owned(),
        (Voice::Name, "my" | "your" | "mine" | "yours") => format!("{name}’s” or “their"),
        (Voice::Name, "myself" | "yourself") => "themselves".to_owned(),
        (Voice::Name, _) => name.to_owned(),
    }
}

/// Whether a byte stands in quotation marks: what is said there may have a voice of its own.
fn in_quotes(text: &str, at: usize) -> bool {
    let before = &text[..at];
    let curly = before.matches('“').count() > before.matches('”').count();
    let straight = before.matches('"').count() % 2 == 1;
    curly || straight
}
