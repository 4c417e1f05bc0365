//! Where a line may end: Unicode Standard Annex #14.

use std::fs;

use daystrand::text::line_ends;
use proptest::prelude::*;

/// Unicode's own test cases for version 15.1, as far as they concern scripts that the bundled
/// fonts have; the file names its source and terms.
#[test]
fn unicode_line_break_test() {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/cases/published/unicode/line-break.txt"
    );
    let file = fs::read_to_string(path).unwrap();
    let mut cases = 0;
    for case in file
        .lines()
        .filter(|l| !l.starts_with('#') && !l.is_empty())
    {
        let (mut text, mut expected) = (String::new(), Vec::new());
        for word in case.split_whitespace() {
            match word {
                "÷" => expected.push(text.len()),
                "×" => {}
                hex => {
                    let code = u32::from_str_radix(hex, 16).unwrap();
                    text.push(char::from_u32(code).unwrap());
                }
            }
        }
        assert_eq!(line_ends(&text), expected, "{case}");
        cases += 1;
    }
    assert_eq!(cases, 3459);
}

/// Worked out with the package unicode-linebreak 0.1.5 (Unicode 15.0) and checked by hand.
#[test]
fn line_ends_of_words_as_they_stand_on_labels() {
    let table: [(&str, &[usize]); 11] = [
        ("Sun-safe hat (UV 8).", &[4, 9, 13, 17, 20]),
        ("10 % off", &[3, 5, 8]),
        ("Let’s go—now", &[8, 10, 13, 16]),
        ("word\u{A0}word", &[10]),
        ("a\u{AD}b", &[3, 4]),
        ("sun\u{2011}safe", &[10]),
        ("7:30 am", &[5, 7]),
        ("Rock\u{200B}pool", &[7, 11]),
        ("e\u{301}te\u{301} 👨\u{200D}👩\u{200D}👧 🇳🇿", &[8, 27, 35]),
        (
            "We can’t swim. Mr. Sand is 3.5 m away.",
            &[3, 11, 17, 21, 26, 29, 33, 35, 40],
        ),
        ("", &[]),
    ];
    for (text, ends) in table {
        assert_eq!(line_ends(text), ends, "{text:?}");
    }
}

/// French sets blanks inside quotation marks (rules LB15a and LB15b of Unicode 15.1).
#[test]
fn a_quotation_mark_stays_with_its_words() {
    let text = "dis « oui » vite";
    let lines: Vec<_> = line_ends(text)
        .windows(2)
        .map(|w| text[w[0]..w[1]].trim_end())
        .collect();
    assert_eq!(lines, ["« oui »", "vite"]);
}

proptest! {
    #![proptest_config(crate::chance::cases(256))]

    /// Rules LB2, LB3, LB7 and LB9 hold for any text: never at the beginning, always at the end,
    /// never before a blank (except behind an end of line), never before a combining mark that
    /// has a letter.
    #[test]
    fn the_first_rules_hold_for_any_text(text in "[a-zé «»“”’0-9.,%\u{301}\u{AD}\n-]{1,40}") {
        let ends = line_ends(&text);
        prop_assert_eq!(ends.last(), Some(&text.len()));
        for at in &ends[..ends.len() - 1] {
            prop_assert!(*at > 0);
            let before = text[..*at].chars().next_back();
            let after = text[*at..].chars().next();
            prop_assert!(after != Some(' ') || before == Some('\n'));
            if before.is_some_and(char::is_alphanumeric) {
                prop_assert_ne!(after, Some('\u{301}'));
            }
        }
    }
}
