//! Promises about sea, weather, animals and people; "safe"; guesses at feelings.

use super::{Remark, RemarkKind, Teller, quoted};
use crate::story::measure::kind::is_feeling;
use crate::story::measure::tokens::Tokens;

const NATURE: &str = " sea water ocean lake river wave waves wind sun rain weather sky tide sand \
    air day pool boat board animal animals fish crab crabs dog dogs bird birds seagull seagulls \
    dolphin dolphins jellyfish shark sharks stingers seal seals turtle turtles horse horses bees \
    seaweed shells ";

const PEOPLE: &str = " helper helpers coach coaches trainer trainers leader leaders volunteer \
    volunteers everyone everybody someone somebody people person children kids friend friends group \
    team family mum mummy dad daddy mother father teacher lifeguard lifeguards grown-up grown-ups \
    they he she nobody ";

const ANIMALS: &str = " animals fish crab crabs dolphin dolphins turtle turtles seal seals bird \
    birds whale whales jellyfish shells waves ";

/// What something may be, with its other side.
const SIDES: [(&str, &str); 18] = [
    ("calm", "wavy"),
    ("flat", "wavy"),
    ("warm", "cool"),
    ("cold", "warm"),
    ("small", "big"),
    ("big", "small"),
    ("gentle", "strong"),
    ("sunny", "cloudy"),
    ("hot", "cool"),
    ("dry", "wet"),
    ("soft", "rough"),
    ("quiet", "loud"),
    ("clear", "cloudy"),
    ("clean", "sandy"),
    ("shallow", "deep"),
    ("still", "windy"),
    ("nice", "windy"),
    ("good", "windy"),
];

fn among(list: &str, word: &str) -> bool {
    !word.is_empty() && list.contains(&format!(" {word} "))
}

pub(super) fn look(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let mut all: Vec<_> = (0..tokens.all.len())
        .filter_map(|i| future(tokens, i).or_else(|| safe(tokens, i, teller)))
        .collect();
    all.extend(feelings(tokens, teller));
    all
}

/// "I promise", "The sea will be calm.", "My helper will be there.", "We will see dolphins."
fn future(tokens: &Tokens<'_>, i: usize) -> Option<Remark> {
    let word = tokens.word(i);
    if ["promise", "promises", "guarantee", "guaranteed"].contains(&word) {
        let why = "Nobody can promise how the day goes.";
        let on = Remark::on(tokens, RemarkKind::Promise, (i, i), why);
        return Some(on.better("Say what usually happens."));
    }
    let short = word.strip_suffix("'ll");
    // Where the verb stands: behind "they’ll", behind "will", behind "is going to".
    let verb = match tokens.word(i + 1) {
        _ if short.is_some() => i + 1,
        "will" | "won't" => i + 2,
        "is" | "are" if tokens.stands(i + 2, "going to") => i + 4,
        _ => return None,
    };
    let subject = short.unwrap_or(word);
    if verb >= tokens.all.len() || !cannot_be_known(tokens, subject, verb) {
        return None;
    }
    let why = "Sea, weather, animals and people can turn out otherwise.";
    let to = last_of_clause(tokens, verb);
    let owners = ["the", "my", "your", "their", "our", "a"];
    let owned = owners.contains(&tokens.before(i)) || tokens.before(i).ends_with("'s");
    let from = if owned { i - 1 } else { i };
    let on = Remark::on(tokens, RemarkKind::Promise, (from, to), why);
    let negative = tokens.word(i + 1) == "won't" || tokens.word(verb) == "not";
    Some(on.better(if short.is_some() || negative {
        "Say what may happen, and what helps then.".to_owned()
    } else {
        let who = &tokens.text[tokens.span(from, i)];
        format!(
            "Say what is possible: {}",
            quoted(&possible(tokens, subject, who, (verb, to)))
        )
    }))
}

/// Whether it is sea, weather, animals or other people that the verb tells of.
fn cannot_be_known(tokens: &Tokens<'_>, subject: &str, verb: usize) -> bool {
    let finds = ["see", "find", "catch", "meet"].contains(&tokens.word(verb))
        && (verb + 1..verb + 4).any(|n| among(ANIMALS, tokens.word(n)));
    match subject {
        "there" => true,
        "it" => it_is_weather(tokens, verb),
        "i" | "we" | "you" => finds,
        _ => among(NATURE, subject) || among(PEOPLE, subject),
    }
}

fn it_is_weather(tokens: &Tokens<'_>, verb: usize) -> bool {
    let weather = ["rain", "snow", "storm"].contains(&tokens.word(verb));
    let state = tokens.word(verb + 1);
    let side = SIDES
        .iter()
        .any(|(s, other)| *s == state || *other == state);
    weather || tokens.word(verb) == "be" && side
}

/// The last word of the clause that a verb stands in.
fn last_of_clause(tokens: &Tokens<'_>, verb: usize) -> usize {
    let links = ["and", "but", "so", "because", "when", "if", "then"];
    let ends = |&i: &usize| links.contains(&tokens.word(i)) || tokens.all[i].after_break;
    let end = (verb + 1..tokens.all.len()).find(ends);
    end.unwrap_or(tokens.all.len()) - 1
}

/// The clause as something possible: "The sea may be calm or wavy".
fn possible(tokens: &Tokens<'_>, subject: &str, who: &str, (verb, to): (usize, usize)) -> String {
    let rest = if verb < to {
        format!(" {}", &tokens.text[tokens.span(verb + 1, to)])
    } else {
        String::new()
    };
    let state = tokens.word(verb + 1);
    let side = SIDES.iter().find(|(s, _)| *s == state && verb + 1 == to);
    let does = &tokens.text[tokens.span(verb, verb)];
    match side {
        Some((state, other)) if does == "be" => format!("{who} may be {state} or {other}"),
        _ if among(PEOPLE, subject) && does == "be" => {
            let plural = subject.ends_with('s') && subject != "coaches"
                || ["they", "people", "children", "coaches"].contains(&subject);
            format!("{who} {} usually{rest}", if plural { "are" } else { "is" })
        }
        _ if among(PEOPLE, subject) => format!("{who} can {does}{rest}"),
        _ => format!("{who} may {does}{rest}"),
    }
}

/// The word safe, which promises what nobody can.
fn safe(tokens: &Tokens<'_>, i: usize, teller: &Teller<'_>) -> Option<Remark> {
    let why = "Nobody can promise that something is safe.";
    let done = quoted(&format!("A helper stays beside {}", teller.object()));
    ["safe", "safest", "harmless"]
        .contains(&tokens.word(i))
        .then(|| {
            Remark::on(tokens, RemarkKind::Promise, (i, i), why)
                .better(format!("Say what is done, such as {done}"))
        })
}

/// Verbs of liking, as they are with "I" or a name.
const LIKING: [&str; 10] = [
    "love", "loves", "like", "likes", "enjoy", "enjoys", "hate", "hates", "adore", "adores",
];

/// Feelings that need no help.
const PLEASANT: [&str; 8] = [
    "happy", "glad", "pleased", "proud", "excited", "calm", "curious", "relaxed",
];

fn feelings(tokens: &Tokens<'_>, teller: &Teller<'_>) -> Vec<Remark> {
    let named = tokens.named(teller.name.trim());
    let mut all = Vec::new();
    for i in 0..tokens.all.len() {
        let (first, last) = match tokens.word(i) {
            "i" | "you" | "we" | "i'm" | "you're" | "we're" | "i'll" | "you'll" => (i, i),
            _ => match named.iter().find(|(from, _)| *from == i) {
                Some(&place) => place,
                None => continue,
            },
        };
        // "If I am tired", "the tile I like best" are no guesses.
        if tokens.in_condition(first) || !tokens.begins_clause(first) {
            continue;
        }
        if let Some(found) = guess(tokens, (first, last), teller) {
            all.push(found);
        }
    }
    for i in tokens.find("fun") {
        let why = "What is fun for one may be hard for another, or on another day.";
        all.push(
            Remark::on(tokens, RemarkKind::Feeling, (i, i), why)
                .better("Say what happens, and let the reader find out how it feels."),
        );
    }
    all
}

/// "I will not be scared", "Noor loves the waves", "I’m happy".
fn guess(
    tokens: &Tokens<'_>,
    (first, last): (usize, usize),
    teller: &Teller<'_>,
) -> Option<Remark> {
    let between = [
        "will", "won't", "not", "am", "are", "is", "be", "feel", "feels", "get", "very", "so",
        "really", "also", "always", "never", "don't", "doesn't", "aren't", "isn't", "going", "to",
        "usually", "all", "too",
    ];
    let at = (last + 1..tokens.all.len()).find(|&n| !between.contains(&tokens.word(n)))?;
    let word = tokens.word(at);
    let liking = LIKING.contains(&word);
    // "I scared the bird" has no "am" before it.
    let being = is_feeling(word) && (at > last + 1 || tokens.word(last).contains('\''));
    if !liking && !being {
        return None;
    }
    let why = "Feelings differ from day to day, and nobody else can know them.";
    let remark = Remark::on(tokens, RemarkKind::Feeling, (first, at), why);
    let who = teller.subject();
    Some(remark.better(if being {
        felt(who, word)
    } else {
        let liked = match word.strip_suffix('s').unwrap_or(word) {
            "love" | "adore" => "like",
            other => other,
        };
        let what = &tokens.text[tokens.all[at].at.end..last_byte(tokens, at)];
        let may = format!("{who} may {liked}{what}");
        format!("Say it as possible: {}", quoted(&may))
    }))
}

/// A feeling as one that may come, with what helps where it is needed.
fn felt(who: &str, feeling: &str) -> String {
    let may = format!("{who} may feel {feeling}");
    if PLEASANT.contains(&feeling) {
        return format!("Say it as possible: {}", quoted(&may));
    }
    let helps = quoted(&format!("{may}. {who} can ask for help"));
    format!("Say how it may feel and what helps: {helps}")
}

/// Where the clause with a verb ends, in bytes.
fn last_byte(tokens: &Tokens<'_>, verb: usize) -> usize {
    tokens.all[last_of_clause(tokens, verb)].at.end
}
