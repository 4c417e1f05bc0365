//! What symbols are called and how they are found: labels in each language, words, wrong letters.

use std::collections::BTreeMap;

use daystrand::model::ids::SymbolId;
use daystrand::model::language::Language;
use daystrand::symbols::lexicon::{Lexicon, faults, lexicon, lexicons};
use daystrand::symbols::library::library;

fn english() -> &'static Lexicon {
    lexicon(&Language::default())
}

fn labels(words: &str) -> Vec<&'static str> {
    let found = english().search(words).into_iter();
    found.map(|s| english().label(&s.id)).collect()
}

#[test]
fn nothing_typed_shows_all_in_index_order() {
    let all: Vec<&SymbolId> = library().all().iter().map(|s| &s.id).collect();
    let found: Vec<&SymbolId> = english().search("  ").iter().map(|s| &s.id).collect();
    assert_eq!(found, all);
    assert!(!all.is_empty());
    assert_eq!(english().search_marks("").len(), library().marks().len());
}

#[test]
fn every_symbol_is_found_first_by_its_own_label() {
    for words in lexicons() {
        for s in library().all() {
            let label = words.label(&s.id);
            for typed in [label.to_owned(), label.to_uppercase()] {
                let found = words.search(&typed);
                assert_eq!(found.first().map(|f| &f.id), Some(&s.id), "{typed}");
            }
            for word in words.words(&s.id) {
                let found = words.search(word);
                assert!(found.iter().any(|f| f.id == s.id), "{} by {word}", s.id);
            }
        }
    }
}

#[test]
fn all_words_must_fit_and_accents_and_case_do_not_matter() {
    assert_eq!(labels("time sand")[0], "Sand time");
    assert!(labels("Sand time zzqx").is_empty());
    assert_eq!(labels("s\u{e1}nd ti\u{301}me"), labels("sand time"));
}

/// A letter wrong, missing, too many or swapped with its neighbour still finds; a word that is
/// right finds only what it says. Common slips of the hand, made up for this test.
#[test]
fn a_slip_of_the_hand_still_finds() {
    let slips = [
        ("suncreen", "Sunscreen"),
        ("sunscrene", "Sunscreen"),
        ("towle", "Towel"),
        ("bcuket", "Bucket"),
        ("toliet", "Toilet"),
        ("finishd", "Finished"),
        ("life jaket", "Life jacket"),
        ("stre", "Stretch"),
        ("splahs", "Splash"),
    ];
    for (typed, wanted) in slips {
        assert_eq!(labels(typed).first(), Some(&wanted), "{typed}");
    }
    assert!(labels("xylophone").is_empty());
    assert!(!labels("hat").contains(&"Hot"));
}

/// Endings of English words do not matter.
#[test]
fn endings_do_not_matter() {
    for (typed, wanted) in [
        ("towels", "Towel"),
        ("digging", "Dig"),
        ("splashing", "Splash"),
        ("waiting", "Wait"),
        ("buckets", "Bucket"),
    ] {
        assert_eq!(labels(typed).first(), Some(&wanted), "{typed}");
    }
}

#[test]
fn whole_words_come_before_starts_and_labels_before_synonyms() {
    assert_eq!(labels("stop")[0], "Stop");
    assert_eq!(labels("wait")[0], "Wait");
    assert_eq!(labels("dry")[0], "Dry");
    assert_eq!(labels("towel")[0], "Towel");
}

#[test]
fn labels_are_words_a_child_knows() {
    let mut wrong: Vec<String> = faults().to_vec();
    for words in lexicons() {
        let tag = &words.language;
        let mut taken: BTreeMap<String, &SymbolId> = BTreeMap::new();
        for s in library().all() {
            let label = words.label(&s.id);
            let known = label != s.id.as_str();
            let capital = label
                .chars()
                .next()
                .is_some_and(|c| c.is_uppercase() || c.is_numeric());
            let plain = label.trim() == label && !label.contains(['\'', '"']);
            if !known || !capital || label.chars().count() > 26 || !plain {
                wrong.push(format!("{tag}, {}: label {label:?}", s.id));
            }
            if let Some(other) = taken.insert(label.to_lowercase(), &s.id) {
                wrong.push(format!("{tag}: {other} and {} are both {label:?}", s.id));
            }
            let n = words.words(&s.id).len();
            if n < 5 {
                wrong.push(format!("{tag}, {}: {n} words to find it by", s.id));
            }
        }
        for group in library().groups() {
            if words.group(group).is_empty() {
                wrong.push(format!("{tag}: no name for {group}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Words that the trade asks to avoid on labels (common practice): vague, or said of behaviour.
#[test]
fn labels_keep_clear_of_vague_words() {
    let avoid = [
        "free time",
        "transition",
        "regulate",
        "behave",
        "good sitting",
        "special",
    ];
    for words in lexicons() {
        for s in library().all() {
            let label = words.label(&s.id).to_lowercase();
            assert!(!avoid.iter().any(|a| label.contains(a)), "{label}");
        }
    }
}

#[test]
fn english_comes_in_three_countries() {
    let tags: Vec<&str> = lexicons().iter().map(|l| l.language.tag()).collect();
    assert_eq!(tags, ["en-GB", "en-AU", "en-US"]);
    let label = |tag: &str, id: &str| {
        lexicon(&Language::new(tag))
            .label(&SymbolId::new(id))
            .to_owned()
    };
    let differ = |tag: &str| {
        let all = library().all().iter();
        all.filter(|s| label(tag, s.id.as_str()) != label("en-GB", s.id.as_str()))
            .count()
    };
    assert!(differ("en-US") > 0);
    // What is not said there is said as in Britain, and is still found by the British word.
    assert_eq!(label("en-US", "toilet"), label("en-GB", "toilet"));
    for tag in ["en-AU", "en-US"] {
        let words = lexicon(&Language::new(tag));
        for s in library().all() {
            let british = english().label(&s.id);
            assert!(
                words.search(british).iter().any(|f| f.id == s.id),
                "{tag} {british}"
            );
        }
    }
}

#[test]
fn an_unknown_language_gets_the_nearest() {
    let of = |tag: &str| lexicon(&Language::new(tag)).language.tag();
    assert_eq!(of("en-NZ"), "en-GB");
    assert_eq!(of("EN-us"), "en-US");
    assert_eq!(of("de"), "en-GB");
    assert_eq!(of(""), "en-GB");
}
