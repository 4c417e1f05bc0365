//! What the program never claims: all text that it can show or print, and the README, is looked
//! through for words that would say that something is safe, enough, legal, current or correct.
//!
//! The list of claims is common practice for planning tools near water: their guidance tells and
//! compares, and people decide. Sentences put together from pieces while the program runs are seen
//! only piece by piece here, and whole in `printed`.

mod allowed;
mod claims;
mod literals;
mod marks;
mod printed;

use std::fs;
use std::path::{Path, PathBuf};

use allowed::ALLOWED;
use claims::{CLAIMS, Claim};

/// One piece of text with its place.
struct Text {
    file: String,
    line: usize,
    words: String,
}

fn files_in(dir: &Path, endings: &[&str], into: &mut Vec<PathBuf>) {
    let entries = fs::read_dir(dir).unwrap();
    let mut entries: Vec<_> = entries.map(|e| e.unwrap().path()).collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            files_in(&path, endings, into);
        } else if path
            .extension()
            .is_some_and(|e| endings.iter().any(|w| e == *w))
        {
            into.push(path);
        }
    }
}

/// All text that the program can show or print, and what is told about it.
fn all_text() -> Vec<Text> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut files = vec![root.join("README.md")];
    files_in(&root.join("src"), &["rs"], &mut files);
    files_in(
        &root.join("assets"),
        &["css", "js", "json", "html", "md"],
        &mut files,
    );
    files_in(&root.join("assets").join("help"), &["txt"], &mut files);
    for folder in ["labels", "index"] {
        files_in(&root.join("icons-src").join(folder), &["json"], &mut files);
    }
    let mut all = Vec::new();
    for path in files {
        let source = fs::read_to_string(&path).unwrap();
        let name = path.strip_prefix(root).unwrap().to_str().unwrap();
        let file = name.replace('\\', "/");
        all.extend(
            pieces(&file, &source)
                .into_iter()
                .map(|(line, words)| Text {
                    file: file.clone(),
                    line,
                    words,
                }),
        );
    }
    all
}

/// What is written in a file: strings of a program, paragraphs of anything else.
fn pieces(file: &str, source: &str) -> Vec<(usize, String)> {
    if file.ends_with(".rs") || file.ends_with(".json") {
        return literals::of(source);
    }
    let lines = source.lines().enumerate();
    lines.map(|(i, line)| (i + 1, line.to_owned())).collect()
}

/// The sentences of a piece of text.
fn sentences(text: &str) -> Vec<String> {
    let mut all = vec![String::new()];
    let mut chars = text.chars().peekable();
    while let Some(c) = chars.next() {
        all.last_mut().unwrap().push(c);
        let ends = matches!(c, '.' | '!' | '?') && chars.peek().is_none_or(|n| n.is_whitespace());
        if ends || c == '\n' {
            all.push(String::new());
        }
    }
    let trim = |s: &String| {
        s.trim_matches(|c: char| c.is_whitespace() || "-*#|>".contains(c))
            .to_owned()
    };
    all.iter().map(trim).filter(|s| !s.is_empty()).collect()
}

/// The words of a sentence in small letters; hyphens, braces and other marks part them.
fn words_of(sentence: &str) -> Vec<String> {
    let plain = sentence.to_lowercase().replace('’', "'");
    plain
        .split(|c: char| !c.is_alphanumeric() && c != '\'')
        .map(|w| w.trim_matches('\'').to_owned())
        .filter(|w| !w.is_empty())
        .collect()
}

/// One place of a pattern: what may stand there, in words, and whether it may be missing.
struct Place {
    choices: Vec<Vec<&'static str>>,
    optional: bool,
}

fn places(pattern: &'static str) -> Vec<Place> {
    let place = |written: &'static str| {
        let must = written.strip_suffix('?');
        let choices = must.unwrap_or(written).split('|');
        Place {
            choices: choices.map(|c| c.split('-').collect()).collect(),
            optional: must.is_some(),
        }
    };
    pattern.split_whitespace().map(place).collect()
}

fn begins_with(words: &[String], pattern: &[Place]) -> bool {
    let Some((first, rest)) = pattern.split_first() else {
        return true;
    };
    let fits = |choice: &Vec<&str>| {
        let there = words
            .iter()
            .zip(choice)
            .all(|(word, wanted)| word == wanted);
        words.len() >= choice.len() && there && begins_with(&words[choice.len()..], rest)
    };
    first.choices.iter().any(fits) || (first.optional && begins_with(words, rest))
}

/// The claims, ready to look for.
struct Scanner(Vec<(&'static Claim, Vec<Vec<Place>>)>);

impl Scanner {
    fn new() -> Self {
        let read = |claim: &'static Claim| claim.patterns.iter().map(|p| places(p)).collect();
        Self(CLAIMS.iter().map(|claim| (claim, read(claim))).collect())
    }

    /// What a sentence claims.
    fn claims(&self, sentence: &str) -> Vec<&'static str> {
        let words = words_of(sentence);
        let said = |p: &Vec<Place>| (0..words.len()).any(|i| begins_with(&words[i..], p));
        let made = self
            .0
            .iter()
            .filter(|(_, patterns)| patterns.iter().any(said));
        made.map(|(claim, _)| claim.what).collect()
    }
}

fn is_allowed(file: &str, sentence: &str) -> bool {
    ALLOWED.iter().any(|(f, s, _)| *f == file && *s == sentence)
}

#[test]
fn nothing_that_is_shown_or_printed_makes_a_claim_that_is_not_ours() {
    let all = all_text();
    assert!(all.len() > 5_000, "too little text found: {}", all.len());
    let scanner = Scanner::new();
    let mut found = Vec::new();
    for text in &all {
        for sentence in sentences(&text.words) {
            if is_allowed(&text.file, &sentence) {
                continue;
            }
            for claim in scanner.claims(&sentence) {
                found.push(format!("{}:{}: {claim}: {sentence}", text.file, text.line));
            }
        }
    }
    assert!(found.is_empty(), "say it otherwise:\n{}", found.join("\n"));
}

/// Every way in which a pattern can be said.
fn spoken(pattern: &[Place]) -> Vec<String> {
    let Some((first, rest)) = pattern.split_first() else {
        return vec![String::new()];
    };
    let rest = spoken(rest);
    let mut all: Vec<String> = Vec::new();
    for choice in &first.choices {
        all.extend(rest.iter().map(|r| format!("{} {r}", choice.join(" "))));
    }
    if first.optional {
        all.extend(rest);
    }
    all
}

/// Each phrase of each claim is found where a program could hold it: in a string, a raw string, a
/// string that goes on in the next line, and in a table of words.
#[test]
fn every_phrase_is_found_in_a_sample() {
    let scanner = Scanner::new();
    for (claim, patterns) in &scanner.0 {
        for phrase in patterns.iter().flat_map(|p| spoken(p)) {
            for (file, sample) in samples_of(phrase.trim()) {
                let pieces = pieces(file, &sample);
                let all = pieces.iter().flat_map(|(_, words)| sentences(words));
                let hit = all
                    .flat_map(|s| scanner.claims(&s))
                    .any(|c| c == claim.what);
                assert!(hit, "{}: not found in {sample}", claim.what);
            }
        }
    }
}

fn samples_of(phrase: &str) -> [(&'static str, String); 5] {
    let capital = phrase[..1].to_uppercase() + &phrase[1..];
    let broken = phrase.replacen(' ', " \\\n    ", 1);
    let quoted = format!("let a = '\"'; say(\"Today, {phrase}: so we say.\");");
    [
        ("a.rs", quoted),
        (
            "a.rs",
            format!("const A: &str = r#\"{capital} \"here\"\"#;"),
        ),
        ("a.rs", format!("let a: &'a str = \"One. We {broken}!\";")),
        ("a.json", format!("{{\"label\": \"{capital}\"}}")),
        ("a.md", format!("- **{}**", phrase.replace(' ', "-"))),
    ]
}

/// Whole sentences, as someone might write them in good faith.
#[test]
fn claims_in_everyday_words_are_found() {
    let samples = [
        "The sea is safe today.",
        "Safe to swim: all checks passed.",
        "All checks are done, you are good to go.",
        "Conditions OK.",
        "All-clear at 10:42.",
        "There are enough watchers.",
        "Supervision is sufficient.",
        "This plan complies with the code.",
        "The legal ratio is 1:5.",
        "The forecast is up to date.",
        "Carmen is qualified on 15 November.",
        "A picture schedule prevents drowning.",
        "Roll them onto their side.",
        "Tiles are non-toxic and waterproof for ever.",
        "No toy standard is broken.",
        "The translation is correct.",
        "Noor will understand the story.",
        "{name} understands.",
    ];
    for sample in samples {
        assert!(!Scanner::new().claims(sample).is_empty(), "{sample}");
    }
}

#[test]
fn what_claims_nothing_is_left_alone() {
    let samples = [
        "Water safety",
        "First aid",
        "Waterproof paper, cut once",
        "Certificate seen by Carmen on 1 October 2025, expires on 22 November 2025.",
        "Not complete: no named watcher.",
        "UV index 3: the guide asks for sun protection.",
        "Wind 5, fresh breeze.",
        "Last thunder 10:12, the club's 30 minutes end at 10:42.",
        "Not yet seen",
    ];
    for sample in samples {
        let found = Scanner::new().claims(sample);
        assert!(found.is_empty(), "{sample}: {found:?}");
    }
    let comment = "// is safe\n/* all clear /* safe */ safe */ let c = '\"'; // \"safe\"\n";
    assert!(pieces("a.rs", comment).is_empty());
}

/// A sentence that is gone or has changed must be looked at anew.
#[test]
fn every_allowed_sentence_is_there_and_would_be_found() {
    let all = all_text();
    for (file, sentence, why) in ALLOWED {
        let here = all.iter().filter(|t| t.file == *file);
        let there = here
            .flat_map(|t| sentences(&t.words))
            .any(|s| s == *sentence);
        assert!(there, "{file} does not say: {sentence}");
        assert!(
            !Scanner::new().claims(sentence).is_empty(),
            "needs no leave: {sentence}"
        );
        assert!(why.split_whitespace().count() > 3, "no reason: {sentence}");
    }
}
