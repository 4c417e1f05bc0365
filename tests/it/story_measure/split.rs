//! Sentences and words as a person counts them.

use daystrand::story::measure::{sentences, words};

#[test]
fn sentences_end_where_a_person_ends_them() {
    let cases: [(&str, &[&str]); 17] = [
        (
            "I can stop. My coach will help me.",
            &["I can stop.", "My coach will help me."],
        ),
        (
            "Stop. Look. Listen to the coach.",
            &["Stop.", "Look.", "Listen to the coach."],
        ),
        (
            "It starts at 9.30 a.m. today. Bring a hat.",
            &["It starts at 9.30 a.m. today.", "Bring a hat."],
        ),
        (
            "It starts at 9 a.m. We walk.",
            &["It starts at 9 a.m.", "We walk."],
        ),
        ("It costs 3.50 today.", &["It costs 3.50 today."]),
        ("Mr. Reed waits. I wave.", &["Mr. Reed waits.", "I wave."]),
        (
            "I bring things, e.g. a hat. I wave.",
            &["I bring things, e.g. a hat.", "I wave."],
        ),
        (
            "I bring a hat, a towel, etc. on the day.",
            &["I bring a hat, a towel, etc. on the day."],
        ),
        (
            "I say “Stop.” Then I wait.",
            &["I say “Stop.”", "Then I wait."],
        ),
        (
            "Is it my turn? Yes! I jump …",
            &["Is it my turn?", "Yes!", "I jump …"],
        ),
        ("Wait... Now go.", &["Wait...", "Now go."]),
        (
            "My Saturday\nWe walk\n\nWe swim.",
            &["My Saturday", "We walk", "We swim."],
        ),
        (
            "1. Walk to the flag. 2. Wait.",
            &["1. Walk to the flag.", "2. Wait."],
        ),
        ("no capital. here either.", &["no capital.", "here either."]),
        ("It ends at 11:00. We go.", &["It ends at 11:00.", "We go."]),
        ("  ", &[]),
        ("… – !", &[]),
    ];
    for (text, wanted) in cases {
        assert_eq!(sentences(text), wanted, "{text}");
    }
}

#[test]
fn words_lose_the_signs_around_them_and_keep_those_within() {
    let cases: [(&str, &[&str]); 9] = [
        (
            "The well-being check is at 9.30 a.m. today.",
            &[
                "The",
                "well-being",
                "check",
                "is",
                "at",
                "9.30",
                "a.m.",
                "today",
            ],
        ),
        ("I don’t run, I walk.", &["I", "don’t", "run", "I", "walk"]),
        ("We're at the flags!", &["We're", "at", "the", "flags"]),
        (
            "“Stop”, says Noor’s helper (softly).",
            &["Stop", "says", "Noor’s", "helper", "softly"],
        ),
        (
            "Sand – wet or dry—is here…",
            &["Sand", "wet", "or", "dry", "is", "here"],
        ),
        ("5\u{a0}minutes", &["5", "minutes"]),
        (
            "It is 9 a.m., so we go.",
            &["It", "is", "9", "a.m.", "so", "we", "go"],
        ),
        ("- and -", &["and"]),
        ("", &[]),
    ];
    for (sentence, wanted) in cases {
        assert_eq!(words(sentence), wanted, "{sentence}");
    }
}
