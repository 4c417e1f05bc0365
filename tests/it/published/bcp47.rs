//! Language tags: RFC 5646 (September 2009, part of BCP 47), the examples of appendix A, the
//! grammar of section 2.1 and the list of irregular tags in it. Texts from memory.

use daystrand::model::language::{LONGEST, Language};

fn is_tag(tag: &str) -> bool {
    Language::new(tag).is_tag()
}

/// Appendix A, in its order.
const EXAMPLES: [&str; 37] = [
    // A language alone, and a grandfathered tag.
    "de",
    "fr",
    "ja",
    "i-enochian",
    // Language and script.
    "zh-Hant",
    "zh-Hans",
    "sr-Cyrl",
    "sr-Latn",
    // Extended languages and the same as languages.
    "zh-cmn-Hans-CN",
    "cmn-Hans-CN",
    "zh-yue-HK",
    "yue-HK",
    // Language, script, region.
    "zh-Hans-CN",
    "sr-Latn-RS",
    // Language and variants.
    "sl-rozaj",
    "sl-rozaj-biske",
    "sl-nedis",
    // Language, region, variant.
    "de-CH-1901",
    "sl-IT-nedis",
    // Language, script, region, variant.
    "hy-Latn-IT-arevela",
    // Language and region.
    "de-DE",
    "en-US",
    "es-419",
    // Private use at the end.
    "de-CH-x-phonebk",
    "az-Arab-x-AZE-derbend",
    // Private use alone, and values of the registry for private use.
    "x-whatever",
    "qaa-Qaaa-QM-x-southern",
    "de-Qaaa",
    "sr-Latn-QM",
    "sr-Qaaa-RS",
    // Extensions.
    "en-US-u-islamcal",
    "zh-CN-a-myext-x-private",
    "en-a-myext-b-another",
    // Of section 2.1.1: capital and small letters are the same.
    "mn-Cyrl-MN",
    "MN-cYRL-mn",
    "mN-cYrL-Mn",
    "EN-ca-X-Ca",
];

#[test]
fn the_examples_of_the_standard_are_tags() {
    for tag in EXAMPLES {
        assert!(is_tag(tag), "{tag}");
    }
}

/// The three invalid tags at the end of appendix A, with its reasons.
#[test]
fn the_invalid_examples_of_the_standard_are_none() {
    for (tag, why) in [
        ("de-419-DE", "two regions"),
        ("a-DE", "one letter in the place of the language"),
        ("ar-a-aaa-b-bbb-a-ccc", "the extension a twice"),
    ] {
        assert!(!is_tag(tag), "{tag}: {why}");
    }
}

/// Section 2.1, "irregular": tags that do not follow the rest of the grammar.
#[test]
fn grandfathered_tags_are_tags_and_others_like_them_are_not() {
    let irregular = "en-GB-oed i-ami i-bnn i-default i-enochian i-hak i-klingon i-lux i-mingo \
        i-navajo i-pwn i-tao i-tay i-tsu sgn-BE-FR sgn-BE-NL sgn-CH-DE";
    let regular = "art-lojban cel-gaulish no-bok no-nyn zh-guoyu zh-hakka zh-min zh-min-nan \
        zh-xiang";
    let mut seen = 0;
    for tag in irregular
        .split_whitespace()
        .chain(regular.split_whitespace())
    {
        assert!(is_tag(tag), "{tag}");
        assert!(is_tag(&tag.to_uppercase()), "{tag}");
        seen += 1;
    }
    assert_eq!(seen, 17 + 9);
    for tag in ["i", "i-reed", "i-default-x-a", "sgn-BE-DE", "en-GB-oed-x-a"] {
        assert!(!is_tag(tag), "{tag}");
    }
}

/// Section 2.1, one rule of the grammar after the other: a tag that just follows it and one that
/// just does not.
#[test]
fn each_rule_of_the_grammar_has_its_bounds() {
    for (rule, inside, outside) in [
        ("language, shortest", "ab", "a"),
        ("language, longest", "abcdefgh", "abcdefghi"),
        ("language, letters only", "abcde", "abc1e"),
        (
            "extended language, at most three",
            "ab-cde-fgh-ijk",
            "ab-cde-fgh-ijk-lmn",
        ),
        ("extended language, of three letters", "ab-cde", "ab-c2e"),
        (
            "extended language, not behind four letters",
            "abc-def",
            "abcd-efg",
        ),
        ("script, of four letters", "ab-Cdef", "ab-Cde1"),
        ("script, at most one", "ab-Cdef", "ab-Cdef-Ghij"),
        ("region, of two letters", "ab-CD", "ab-C1"),
        ("region, of three digits", "ab-001", "ab-01"),
        ("region, behind the script", "ab-Cdef-GH", "ab-GH-Cdef"),
        ("variant, from five signs", "ab-cdef1", "ab-cde1"),
        ("variant, of four from a digit", "ab-1cde", "ab-1cd"),
        (
            "variant, at most eight signs",
            "ab-cdefghij",
            "ab-cdefghijk",
        ),
        ("variant, each once", "ab-1901-1902", "ab-1901-1901"),
        (
            "variant, each once in any case",
            "ab-abcde-abcdf",
            "ab-abcde-ABCDE",
        ),
        ("extension, with something", "ab-c-de", "ab-c"),
        (
            "extension, with something each",
            "ab-c-de-f-gh",
            "ab-c-f-gh",
        ),
        ("extension, from two signs", "ab-c-de-fg", "ab-c-d-ef"),
        ("extension, by a digit too", "ab-1-de", "ab-1"),
        ("extension, each once", "ab-c-de-f-de", "ab-c-de-C-de"),
        ("private use, with something", "ab-x-c", "ab-x"),
        (
            "private use, twice the same",
            "ab-x-c-c-x",
            "ab-x-abcdefghi",
        ),
        ("private use alone", "x-c-d", "x"),
        ("nothing between hyphens", "ab-x-c-d", "ab-x-c--d"),
        ("no hyphen at either end", "ab", "ab-"),
        ("hyphens and no other line", "ab-CD", "ab_CD"),
        ("ASCII alone", "ab-x-e", "ab-x-é"),
        ("no blanks", "ab", " ab"),
    ] {
        assert!(is_tag(inside), "{rule}: {inside}");
        assert!(!is_tag(outside), "{rule}: {outside}");
    }
    assert!(!is_tag("") && !is_tag("-"));
}

/// Section 4.4.1: a program that has a bound holds 35 characters at least.
#[test]
fn a_tag_of_thirty_five_characters_is_held() {
    let fits = "abc-def-ghi-jkl-Mnop-QR-12345-67890";
    assert_eq!((fits.len(), LONGEST), (35, 35));
    assert!(is_tag(fits));
    assert!(!is_tag("abc-def-ghi-jkl-Mnop-QR-12345-678901"));
}
