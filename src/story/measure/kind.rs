//! What a sentence of a story does: describe, tell how others see it, affirm, or direct.
//!
//! A rule on words, so it can err; the story's writer sees what it found and decides.

use super::tokens::Tokens;
use crate::model::people::Voice;

/// Kinds of sentence, as published guidance on social narratives tells them apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Who, where, when, what, why: "My helper is there."
    Describing,
    /// What someone thinks, feels, knows or likes: "Many people like the sea."
    Perspective,
    /// Why it matters, that it is all right: "This is important."
    Affirming,
    /// What the reader can do or try: "I can ask for a break."
    Directing,
}

impl Kind {
    /// All of them, in the order they are listed.
    pub const ALL: [Self; 4] = [
        Self::Describing,
        Self::Perspective,
        Self::Affirming,
        Self::Directing,
    ];

    /// In a word.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Describing => "Describing",
            Self::Perspective => "Perspective",
            Self::Affirming => "Affirming",
            Self::Directing => "Directing",
        }
    }

    /// The kind of one sentence in a story told in this voice about someone of this name.
    pub fn of(sentence: &str, voice: Voice, name: &str) -> Self {
        let tokens = Tokens::read(sentence);
        if is_order(&tokens) || coaches(&tokens, voice, name) {
            Self::Directing
        } else if affirms(&tokens) {
            Self::Affirming
        } else if tells_of_minds(&tokens, name) {
            Self::Perspective
        } else {
            Self::Describing
        }
    }
}

/// Verbs an order begins with.
const ORDERS: &str = " ask be breathe bring build choose climb close come copy count dig do drink \
    dry eat find float follow get give go help hold jump keep kick leave let lie lift listen look \
    make meet move open paddle pick play point pour press pull push put raise remember rest rinse \
    roll run say show sing sit smile splash squeeze stand stay step stop stretch swim take tap tell \
    throw touch try turn use wait walk wash watch wave wear write ";

/// Words that show that the word at the start was the name of something, not an order.
const FINITE: [&str; 20] = [
    "is", "are", "was", "were", "may", "can", "might", "will", "has", "have", "comes", "come",
    "goes", "starts", "begins", "ends", "helps", "feels", "takes", "means",
];

/// Words that begin a clause within a sentence.
const CLAUSE: [&str; 10] = [
    "that", "which", "who", "when", "until", "if", "because", "where", "while", "and",
];

/// "Walk on the sand.", "Do not run.", "Please wait."
fn is_order(tokens: &Tokens<'_>) -> bool {
    let polite = ["please", "then", "now", "first", "always", "next"];
    let start = (0..tokens.all.len()).find(|&i| !polite.contains(&tokens.word(i)));
    let Some(start) = start else {
        return false;
    };
    let first = tokens.word(start);
    if ["don't", "never", "let's"].contains(&first) {
        return true;
    }
    // "Run is not today": here "run" is the words on a tile.
    let own_clause = (start + 1..tokens.all.len())
        .map(|i| tokens.word(i))
        .take_while(|w| !CLAUSE.contains(w));
    let named = own_clause.into_iter().any(|w| FINITE.contains(&w));
    ORDERS.contains(&format!(" {first} ")) && !named
}

/// "I can …", "I will try …", "You can …", "Noor can …", "We can …".
fn coaches(tokens: &Tokens<'_>, voice: Voice, name: &str) -> bool {
    let named: Vec<_> = tokens
        .named(name)
        .into_iter()
        .map(|(_, last)| last)
        .collect();
    (0..tokens.all.len()).any(|i| {
        let subject = match tokens.word(i) {
            "i" | "you" | "we" | "i'll" | "you'll" => true,
            "he" | "she" => voice == Voice::Name,
            _ => named.contains(&i),
        };
        subject && !in_clause(tokens, i) && directs(tokens, i)
    })
}

/// "… knows that I can swim", "… when I can go": told, not asked of anyone.
fn in_clause(tokens: &Tokens<'_>, i: usize) -> bool {
    let asked = ["what", "how", "whether"];
    let before = tokens.before(i);
    (CLAUSE.contains(&before) && before != "and" || asked.contains(&before))
        && !tokens.all[i].after_break
}

/// Whether the words behind a subject say what to do.
fn directs(tokens: &Tokens<'_>, subject: usize) -> bool {
    let filler = ["also", "then", "just", "usually", "always", "now", "not"];
    let next = |from: usize| {
        (from..tokens.all.len())
            .find(|&i| !filler.contains(&tokens.word(i)))
            .unwrap_or(tokens.all.len())
    };
    let verb = if tokens.word(subject).ends_with("'ll") {
        "will"
    } else {
        ""
    };
    let at = if verb.is_empty() {
        next(subject + 1)
    } else {
        subject
    };
    let modal = if verb.is_empty() {
        tokens.word(at)
    } else {
        verb
    };
    let main = tokens.word(next(at + 1));
    match modal {
        "can" | "could" => !["see", "hear", "smell", "feel"].contains(&main),
        "must" | "mustn't" | "should" | "shouldn't" | "shall" | "ought" | "can't" | "cannot" => {
            true
        }
        "have" | "has" | "need" | "needs" => main == "to",
        "try" | "tries" => true,
        "may" | "might" => ["try", "ask", "choose"].contains(&main),
        "will" | "won't" => ![
            "go", "come", "meet", "see", "be", "have", "get", "arrive", "hear", "feel", "need",
            "like", "love", "enjoy",
        ]
        .contains(&main),
        _ => false,
    }
}

/// What affirms behind "this", "that" or "it".
const AFFIRMS_IT: &str = "is good|is great|is kind|is helpful|is normal|is all right|is fine|\
    is very important|is a good|is right|helps|makes it easier";

/// What affirms wherever it stands.
const AFFIRMS: &str = "is important|are important|is okay|is ok|is also okay|are okay|is fine too|\
    it's okay|it's ok|it's fine|it's good|it's all right|that's okay|that's ok|that's fine|\
    that's all right|a good idea|good choice|keeps everyone|helps everyone|helps us all|\
    both are fine|is allowed|are allowed";

/// "This is important.", "That is okay.", "It helps everyone."
fn affirms(tokens: &Tokens<'_>) -> bool {
    let stands = |phrases: &str| phrases.split('|').any(|p| !tokens.find(p).is_empty());
    let first = [
        "this", "that", "it", "asking", "waiting", "trying", "watching",
    ];
    stands(AFFIRMS) || first.contains(&tokens.word(0)) && stands(AFFIRMS_IT)
}

/// People whose thoughts and feelings a story may tell.
const PEOPLE: &str = " i you we they i'm you're we're they're he she people person everyone everybody someone somebody \
    others other child children kids friend friends helper helpers coach coaches trainer trainers \
    leader leaders volunteer volunteers group team family families mum dad mother father parents \
    teacher lifeguard lifeguards grown-up grown-ups swimmers surfers ";

const MIND: &str = " think thinks thought feel feels felt know knows knew like likes liked love \
    loves enjoy enjoys expect expects hope hopes want wants believe believes wonder wonders \
    understand understands worry worries mind minds prefer prefers wish wishes ";

const FEELINGS: &str = " happy glad pleased proud excited worried nervous scared afraid sad calm \
    curious surprised upset angry shy bored tired relaxed unhappy cross frightened anxious ";

/// Whether a word is feeling something, as in "happy".
pub(super) fn is_feeling(word: &str) -> bool {
    !word.is_empty() && FEELINGS.contains(&format!(" {word} "))
}

/// "My helper likes it when I ask.", "Some people are happy."
fn tells_of_minds(tokens: &Tokens<'_>, name: &str) -> bool {
    let named: Vec<_> = tokens
        .named(name)
        .into_iter()
        .map(|(_, last)| last)
        .collect();
    let is = |list: &str, i: usize| {
        let word = tokens.word(i);
        !word.is_empty() && list.contains(&format!(" {word} "))
    };
    let being = [
        "am", "is", "are", "be", "was", "were", "feel", "feels", "get", "gets",
    ];
    let person = |i: usize| is(PEOPLE, i) || named.contains(&i);
    (0..tokens.all.len()).filter(|&i| person(i)).any(|i| {
        let is_being = |b: usize| being.contains(&tokens.word(b));
        (i + 1..i + 4).any(|v| {
            let feels = is_feeling(tokens.word(v))
                && (tokens.word(i).contains('\'') || (i + 1..v).any(is_being));
            feels || is(MIND, v) && !compares(tokens, v)
        })
    })
}

/// "like" that compares: "It looks like sand", "moves like a crab", "like in a boat".
fn compares(tokens: &Tokens<'_>, i: usize) -> bool {
    let alike = [
        "look", "looks", "sound", "sounds", "feel", "feels", "is", "are", "move", "moves", "walk",
        "walks", "jump", "jumps", "sit", "sits", "swim", "swims",
    ];
    tokens.word(i) == "like" && (alike.contains(&tokens.before(i)) || tokens.word(i + 1) == "in")
}
