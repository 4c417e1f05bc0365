//! Values and examples of published guidance on easy-to-read text and social narratives.

use daystrand::story::measure::RemarkKind::{self, *};
use daystrand::story::measure::{page_length, words};

use super::{kinds, remarks};

fn better(sentence: &str, kind: RemarkKind) -> String {
    let all = remarks(sentence);
    let found = all.iter().find(|r| r.kind == kind);
    found
        .unwrap_or_else(|| panic!("no {kind:?} in {sentence}: {all:?}"))
        .better
        .clone()
}

/// UK Government, Accessible communication formats: "no more than ten to 15 words".
#[test]
fn more_than_15_words_are_long() {
    let sunscreen = "Put on your hat before you go into the sun because the sun is strong today.";
    assert_eq!(words(sunscreen).len(), 16);
    assert!(kinds(sunscreen).contains(&Long));
    assert!(better(sunscreen, Long).contains("before “because”"));
    let fifteen = "I put on my hat before I go into the sun with Mum and Dad.";
    assert_eq!(words(fifteen).len(), 15);
    assert!(!kinds(fifteen).contains(&Long));
}

/// W3C Note "Making Content Usable for People with Cognitive and Learning Disabilities", 29 April
/// 2021: more than one linking word hints at more than one point.
#[test]
fn two_linking_words_hint_at_two_ideas() {
    let walk = "We walk to the flags and we wait for the coach and we swim.";
    assert_eq!(words(walk).len(), 14);
    assert_eq!(kinds(walk), [TwoIdeas]);
    assert!(better(walk, TwoIdeas).contains("“we swim”"));
}

/// The same note's own example of a double negative.
#[test]
fn time_is_not_unlimited() {
    let time = "Time is not unlimited.";
    assert!(kinds(time).contains(&DoubleNegative));
    assert!(!kinds(time).contains(&Negative));
    assert!(better(time, DoubleNegative).contains("“Time is limited.”"));
}

/// Common practice of those who write such stories: nothing is promised, no feeling is guessed,
/// nothing ordered, and what can be done is said.
#[test]
fn scared_and_must_not_run() {
    let found = kinds("I will not be scared and I must not run.");
    let count = |kind| found.iter().filter(|k| **k == kind).count();
    assert_eq!(count(Negative), 2);
    assert_eq!(count(Feeling), 1);
    assert_eq!(count(Duty), 1);
    assert_eq!(found.len(), 4);
}

#[test]
fn what_one_can_do_is_left_alone() {
    assert_eq!(kinds("I can walk with my helper."), []);
}

#[test]
fn a_calm_sea_is_a_promise() {
    let sea = "The sea will be calm.";
    assert_eq!(kinds(sea), [Promise]);
    assert!(better(sea, Promise).contains("“The sea may be calm or wavy.”"));
    assert_eq!(kinds("The sea may be calm or wavy."), []);
}

/// Later criteria for social narratives, from memory: "usually" in place of "always", no orders.
#[test]
fn always_and_orders() {
    assert_eq!(kinds("I will always sit still."), [Absolute]);
    assert_eq!(kinds("Do not run."), [Negative]);
    assert!(better("Do not run.", Negative).contains("“I can walk.”"));
    assert!(better("Do not run on the sand.", Negative).contains("“I can walk on the sand.”"));
    assert_eq!(kinds("You must wait."), [SecondPerson, Duty]);
}

/// One to three sentences on a page: common practice in printed stories.
#[test]
fn a_page_of_four_sentences_is_told() {
    for short in 0..=3 {
        assert_eq!(page_length(short), None);
    }
    let remark = page_length(4).unwrap();
    assert!(remark.why.contains("4 sentences"));
    assert!(remark.better.ends_with('.'));
}
