//! Sentences that follow a voice: `{I} {walk} to the water with {my} helper.` becomes "I walk … my",
//! "You walk … your" or "Noor walks … Noor’s".
//!
//! In braces stand pronouns of the participant (`I`, `me`, `my`, `mine`, `myself`) and verbs whose
//! subject is the participant. All else stays as it was written. A word in braces at the start of a
//! sentence gets a capital. Braces that do not close, or hold nothing, stay as they are.
//!
//! Words that fit one age only have others beside them: `{grown-up|family}` holds what is said to a
//! child, to a teenager and to an adult; the last one given holds for the rest. Such a choice is a
//! verb of the participant where it follows `{I}` at once, else it stays as it was written.

use super::verbs;
use super::when::hold_together;
use crate::model::people::{Age, Participant, Voice};
use crate::model::telling::Pronouns;

/// One who is spoken of, in one voice and in words for their age.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Speaker {
    voice: Voice,
    name: String,
    style: Age,
    pronouns: Pronouns,
}

impl Speaker {
    /// A participant in the voice their family chose; without a name it is "I".
    pub fn of(who: &Participant) -> Self {
        Self::new(who.voice, &who.name)
            .with_style(who.figure.age)
            .with_pronouns(who.telling.pronouns.clone())
    }

    /// A voice and a name, in words for a child.
    pub fn new(voice: Voice, name: &str) -> Self {
        let name = name.trim().to_owned();
        let voice = match voice {
            Voice::Name if name.is_empty() => Voice::I,
            voice => voice,
        };
        let style = Age::Child;
        let pronouns = Pronouns::default();
        Self {
            voice,
            name,
            style,
            pronouns,
        }
    }

    /// The same with the pronouns a family gave.
    pub fn with_pronouns(self, pronouns: Pronouns) -> Self {
        Self { pronouns, ..self }
    }

    /// The same in words for another age.
    pub fn with_style(self, style: Age) -> Self {
        Self { style, ..self }
    }

    /// A sentence in this voice.
    pub fn say(&self, template: &str) -> String {
        self.say_all(template, &[])
    }

    /// The same, with `word` put as it is where the template has `{}`.
    pub fn say_with(&self, template: &str, word: &str) -> String {
        self.say_all(template, &[word])
    }

    /// The same with several words, in order.
    pub fn say_all(&self, template: &str, words: &[&str]) -> String {
        let mut telling = Telling {
            speaker: self,
            out: String::with_capacity(template.len() + 16),
            named: false,
            after_i: false,
        };
        let mut words = words.iter();
        let mut rest = template;
        while let Some(open) = rest.find('{') {
            let (before, from_open) = rest.split_at(open);
            telling.plain(before);
            let close = from_open[1..].find(['{', '}']).map(|i| i + 1);
            rest = match close.filter(|&i| from_open.as_bytes()[i] == b'}') {
                Some(1) => {
                    telling.plain(words.next().map_or("{}", |w| w));
                    &from_open[2..]
                }
                Some(end) => {
                    telling.braced(&from_open[1..end]);
                    &from_open[end + 1..]
                }
                None => {
                    telling.plain("{");
                    &from_open[1..]
                }
            };
        }
        telling.plain(rest);
        hold_together(&telling.out)
    }

    /// Who the story is for.
    pub fn introduce(&self, name: &str) -> String {
        match self.voice {
            Voice::I => format!("My name is {name}."),
            Voice::You => format!("Your name is {name}."),
            Voice::Name => format!("This is the plan for {name}."),
        }
    }
}

/// Places of the forms of a pronoun.
const SUBJECT: usize = 0;
const OBJECT: usize = 1;
const POSSESSIVE: usize = 2;
const ALONE: usize = 3;
const REFLEXIVE: usize = 4;

/// A sentence while it is put together.
struct Telling<'a> {
    speaker: &'a Speaker,
    out: String,
    /// Whether the name was said in this sentence, so that "their" is clear.
    named: bool,
    /// Whether the braces before were `{I}`, with nothing but a space since.
    after_i: bool,
}

impl Telling<'_> {
    fn plain(&mut self, text: &str) {
        self.out.push_str(text);
        self.after_i &= text == " ";
        let within = [". ", "! ", "? "].iter().any(|e| text.contains(e));
        if within || ends_sentence(text) {
            self.named = false;
        }
    }

    /// Words in braces: pronouns, and the first other word as a verb; of several for different
    /// ages, those for this one.
    fn braced(&mut self, words: &str) {
        let mut verb_done = words.contains('|') && !self.after_i;
        let words = self.for_age(words);
        for (i, word) in words.split_whitespace().enumerate() {
            if i > 0 {
                self.out.push(' ');
            }
            let at_start = starts_sentence(&self.out);
            let (said, is_name) = match self.pronoun(word) {
                Some(said) => said,
                None if verb_done => (word.to_owned(), false),
                None => {
                    verb_done = true;
                    (verbs::conjugate(word, self.speaker.voice), false)
                }
            };
            let capital = !is_name && (at_start || is_capital(word) && word != "I");
            self.out
                .push_str(&if capital { capitalised(&said) } else { said });
        }
        self.after_i = words.trim().eq_ignore_ascii_case("i");
    }

    /// The words between bars that are for the speaker's age.
    fn for_age<'w>(&self, words: &'w str) -> &'w str {
        let style = Age::ALL.iter().position(|a| *a == self.speaker.style);
        let choices = words.split('|').take(style.unwrap_or_default() + 1);
        choices.last().unwrap_or(words).trim()
    }

    /// The pronoun in this voice, and whether it is the name itself, which is never touched.
    fn pronoun(&mut self, word: &str) -> Option<(String, bool)> {
        let name = &self.speaker.name;
        let lower = word.to_lowercase();
        let (form, of) = match lower.as_str() {
            "i" => (["I", "you"], SUBJECT),
            "me" => (["me", "you"], OBJECT),
            "my" => (["my", "your"], POSSESSIVE),
            "mine" => (["mine", "yours"], ALONE),
            "myself" => (["myself", "yourself"], REFLEXIVE),
            "i'm" | "i’m" => (["I’m", "you’re"], SUBJECT),
            _ => return None,
        };
        Some(match self.speaker.voice {
            Voice::I => (form[0].to_owned(), false),
            Voice::You => (form[1].to_owned(), false),
            Voice::Name => {
                let again = std::mem::replace(&mut self.named, true);
                let said = |of: usize| (self.speaker.pronouns.forms()[of].clone(), false);
                // "They" could be taken for the group: then the name is said again.
                let clear = again && !self.speaker.pronouns.is_plural();
                match (lower.as_str(), of) {
                    ("i", _) if clear => said(SUBJECT),
                    ("i", _) => (name.clone(), true),
                    (_, SUBJECT) if clear => (format!("{} is", said(SUBJECT).0), false),
                    (_, SUBJECT) => (format!("{name} is"), true),
                    (_, REFLEXIVE) => said(REFLEXIVE),
                    _ if again => said(of),
                    (_, OBJECT) => (name.clone(), true),
                    _ => (format!("{name}’s"), true),
                }
            }
        })
    }
}

/// Whether what comes next begins a sentence.
fn starts_sentence(so_far: &str) -> bool {
    let before = so_far.trim_end();
    before.is_empty()
        || (before.len() < so_far.len() && ends_sentence(before))
        || before.ends_with('\n')
}

fn ends_sentence(text: &str) -> bool {
    let text = text.trim_end().trim_end_matches(['"', '”', '’', ')']);
    text.ends_with(['.', '!', '?'])
}

fn is_capital(word: &str) -> bool {
    word.chars().next().is_some_and(char::is_uppercase)
}

/// With a capital at the beginning.
pub fn capitalised(word: &str) -> String {
    let mut chars = word.chars();
    match chars.next() {
        Some(first) => first.to_uppercase().chain(chars).collect(),
        None => String::new(),
    }
}
