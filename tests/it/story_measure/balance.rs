//! The balance of describing and coaching sentences, by both published rules.
//!
//! Two to five describing sentences for each coaching one: usually given to Gray and Garand, Focus
//! on Autistic Behavior 8(1), 1993, as later reviews quote it. At least two for each: later
//! handbooks, from memory.

use daystrand::story::measure::Balance;

use super::I;

/// Describing, directing, whether the later and the earlier rule are kept.
const TABLE: [(usize, usize, bool, bool); 7] = [
    (2, 1, true, true),
    (3, 2, false, false),
    (9, 3, true, true),
    (5, 1, true, true),
    (6, 1, true, false),
    (5, 0, true, true),
    (0, 1, false, false),
];

#[test]
fn both_rules() {
    for (describing, directing, later, earlier) in TABLE {
        let balance = Balance {
            describing,
            directing,
        };
        assert_eq!(balance.keeps_later_rule(), later, "{balance:?}");
        assert_eq!(balance.keeps_earlier_rule(), earlier, "{balance:?}");
        let notes = balance.notes();
        assert_eq!(
            notes.len(),
            if later && earlier { 1 } else { 2 },
            "{notes:?}"
        );
        assert!(notes.iter().all(|n| n.ends_with('.')), "{notes:?}");
    }
}

#[test]
fn the_ratio_is_plain_division() {
    let ratio = |describing, directing| {
        Balance {
            describing,
            directing,
        }
        .ratio()
    };
    assert_eq!(ratio(3, 2), Some(1.5));
    assert_eq!(ratio(9, 3), Some(3.0));
    assert_eq!(ratio(0, 1), Some(0.0));
    assert_eq!(ratio(5, 0), None);
}

#[test]
fn notes_say_the_counts_and_what_would_help() {
    let notes = |describing, directing| {
        Balance {
            describing,
            directing,
        }
        .notes()
        .join(" ")
    };
    assert_eq!(notes(5, 0), "5 sentences describe, none says what to do.");
    assert_eq!(notes(2, 1), "2 sentences describe, 1 says what to do.");
    assert_eq!(
        notes(3, 2),
        "3 sentences describe, 2 say what to do. Guidance asks for at least 2 that describe for \
         each that says what to do; 1 more that tells what happens would do."
    );
    assert!(notes(0, 1).starts_with("No sentence describes, 1 says what to do."));
    assert!(notes(0, 1).contains("2 more that tell"));
    assert!(notes(6, 1).contains("more than 5"));
    assert_eq!(notes(0, 0), "");
}

#[test]
fn perspective_and_affirming_sentences_count_as_describing() {
    let story = [
        "I walk to the water with my helper. The water may feel cold.",
        "My helper likes to know how I am. That is okay.",
        "I can point to Stop.",
    ];
    let balance = Balance::of(&story, &I);
    assert_eq!((balance.describing, balance.directing), (4, 1));
}

/// The originator of one kind of story holds marks; the program claims no conformity.
#[test]
fn notes_name_no_scheme() {
    for (describing, directing, ..) in TABLE {
        let notes = Balance {
            describing,
            directing,
        }
        .notes()
        .join(" ")
        .to_lowercase();
        for word in ["social", "gray", "conform", "™"] {
            assert!(!notes.contains(word), "{notes}");
        }
    }
}
