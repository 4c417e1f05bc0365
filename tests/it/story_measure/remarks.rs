//! Remarks: what is found, where, why, what is offered; and what is left alone.

use daystrand::model::people::Voice;
use daystrand::story::measure::RemarkKind::{self, *};
use daystrand::story::measure::{Teller, look};

use super::{I, kinds, remarks, teller};

/// A sentence, what is found in it in the order of its words, and words the first remark offers.
const FOUND: [(&str, &[RemarkKind], &str); 60] = [
    // Absolute
    (
        "My helper is always there.",
        &[Absolute],
        "“My helper is usually there.”",
    ),
    ("I never run.", &[Absolute, Negative], "usually happens"),
    ("Every time I come, it is loud.", &[Absolute], "most times"),
    (
        "Everyone must sit on the mats.",
        &[Absolute, Duty],
        "many people",
    ),
    ("Everyone likes the waves.", &[Absolute], "many people"),
    ("All children love water.", &[Absolute], "some people"),
    ("No one will run.", &[Absolute, Negative], "some people"),
    // Negative
    ("There are no waves.", &[Negative], "what there is"),
    (
        "Don’t shout at the dog.",
        &[Negative],
        "“I can speak softly.”",
    ),
    (
        "I can't touch the crab.",
        &[Negative],
        "“I can look at the crab.”",
    ),
    ("I go without my bag.", &[Negative], "what is there"),
    ("The trainer is not loud.", &[Negative], "Say what happens"),
    ("I do not have to swim.", &[Negative], "“I can …”"),
    (
        "I cannot go without my helper.",
        &[DoubleNegative],
        "“I can go with my helper.”",
    ),
    ("It is not unkind.", &[DoubleNegative], "“It is kind.”"),
    (
        "No running on the rocks.",
        &[Negative],
        "“I can walk on the rocks.”",
    ),
    ("Nobody has to swim.", &[Negative], "what there is"),
    (
        "I never have to go alone.",
        &[Absolute, Negative],
        "usually happens",
    ),
    // Promise
    (
        "My helper will be there.",
        &[Promise],
        "“My helper is usually there.”",
    ),
    (
        "My coach will help me.",
        &[Promise],
        "“My coach can help me.”",
    ),
    (
        "The lifeguards will be there.",
        &[Promise],
        "“The lifeguards are usually there.”",
    ),
    (
        "The waves will be small and I can jump.",
        &[Promise],
        "“The waves may be small or big.”",
    ),
    (
        "The weather is going to be warm.",
        &[Promise],
        "“The weather may be warm or cool.”",
    ),
    ("It will rain.", &[Promise], "“It may rain.”"),
    (
        "It will be sunny.",
        &[Promise],
        "“It may be sunny or cloudy.”",
    ),
    (
        "There will be shells.",
        &[Promise],
        "“There may be shells.”",
    ),
    (
        "We will see dolphins.",
        &[Promise],
        "“We may see dolphins.”",
    ),
    ("They’ll wait for me.", &[Promise], "may happen"),
    ("The dog will not bite.", &[Promise, Negative], "may happen"),
    (
        "The water is safe.",
        &[Promise],
        "“A helper stays beside me.”",
    ),
    ("I promise.", &[Promise], "usually happens"),
    (
        "Ana’s helper will hold the board.",
        &[Promise],
        "“Ana’s helper can hold the board.”",
    ),
    // Feeling
    ("I love the waves.", &[Feeling], "“I may like the waves.”"),
    ("I am happy.", &[Feeling], "“I may feel happy.”"),
    (
        "I’m scared.",
        &[Feeling],
        "“I may feel scared. I can ask for help.”",
    ),
    (
        "Today I will feel proud.",
        &[Feeling],
        "“I may feel proud.”",
    ),
    (
        "We enjoy the water.",
        &[Feeling],
        "“I may enjoy the water.”",
    ),
    ("Swimming is fun.", &[Feeling], "Say what happens"),
    // Duty
    (
        "I have to wear shoes.",
        &[Duty],
        "“I can try to wear shoes.”",
    ),
    ("I should listen.", &[Duty], "“I can try to listen.”"),
    ("I ought to wait.", &[Duty], "“I can try to wait.”"),
    (
        "I need to wait and listen.",
        &[Duty],
        "“I can try to wait.”",
    ),
    ("I mustn’t go.", &[Negative, Duty], "“I can wait.”"),
    ("I have got to wait.", &[Duty], "“I can try to wait.”"),
    ("You’re in the boat.", &[SecondPerson], "“I’m”"),
    // Figurative
    ("Swimming is a piece of cake.", &[Figurative], "“easy”"),
    ("Today we make a splash.", &[Figurative], "“have a go”"),
    ("I have butterflies in my tummy.", &[Figurative], "nervous"),
    ("Swimming is a breeze.", &[Figurative], "“is easy”"),
    ("I can be as brave as a lion.", &[Figurative], "“brave”"),
    // Abbreviation
    ("I wear my PFD.", &[Abbreviation], "“PFD”"),
    (
        "We bring hats, e.g. sun hats.",
        &[Abbreviation],
        "“for example”",
    ),
    ("We bring hats, etc.", &[Abbreviation], "“and more”"),
    // HardWord
    ("The supervisor waits.", &[HardWord], "“supervisor”"),
    // Judging
    ("Good children listen.", &[Judging], "being good"),
    (
        "I swim better than the others.",
        &[Judging],
        "without the others",
    ),
    (
        "Big boys don’t cry.",
        &[Judging, Negative],
        "without the others",
    ),
    ("If I am good, I get a shell.", &[Judging], "being good"),
    (
        "I can sit like the other children.",
        &[Judging],
        "without the others",
    ),
    ("Then I am in trouble.", &[Judging], "otherwise"),
];

#[test]
fn what_is_found_and_what_is_offered() {
    for (sentence, wanted, offered) in FOUND {
        assert_eq!(kinds(sentence), wanted, "{sentence}");
        let first = &remarks(sentence)[0];
        assert!(
            first.better.contains(offered),
            "{sentence}: {}",
            first.better
        );
    }
}

/// The other side of each rule.
const LEFT_ALONE: [&str; 48] = [
    "Splash is not today.",
    "Walk to the water is not today.",
    "Everyone sits on mats in a ring.",
    "Everyone carries something small.",
    "All the tiles are on the board.",
    "All my tiles are on the board.",
    "It helps everyone.",
    "I can ask at any time.",
    "The always-there cards are red.",
    "I can say no.",
    "I can shake my head for yes or no.",
    "My helper is usually there.",
    "My helper can help me.",
    "The sea may be calm or wavy.",
    "The waves may be small or big.",
    "It may rain.",
    "I will go to the beach on Sunday.",
    "The safety card is red.",
    "I may like the waves.",
    "I may feel cold.",
    "I can feel the sand.",
    "If I am scared, I can ask for help.",
    "When I feel tired, I can rest.",
    "I would like a break.",
    "I can tell my helper that I feel sad.",
    "My coach knows me.",
    "I can show the tile I like best.",
    "My helper likes it when I ask.",
    "I look like a crab.",
    "If I need to go, I can point to Toilet.",
    "I need help.",
    "My name is Noor.",
    "I can say “You can help me.”",
    "I make a splash with my hands.",
    "A bird may fly by.",
    "A breeze may feel cool.",
    "The ball is as big as a melon.",
    "Butterflies sit in the grass.",
    "It starts at 9.30 a.m. at the flags.",
    "It starts at 9 AM.",
    "OK is on the card.",
    "We usually do this activity.",
    "We meet at Reedwater Lagoon in February.",
    "I can swim better than before.",
    "I unpack my bag under the tree.",
    "I walk and wait until it is my turn.",
    "The song is so loud.",
    "",
];

#[test]
fn what_is_left_alone() {
    for sentence in LEFT_ALONE {
        assert_eq!(remarks(sentence), [], "{sentence}");
    }
}

#[test]
fn each_voice_keeps_to_itself() {
    let cases: [(Voice, &str, &[RemarkKind]); 12] = [
        (Voice::I, "You can ask.", &[SecondPerson]),
        (Voice::I, "I put on your hat.", &[SecondPerson]),
        (Voice::I, "Noor walks to the water.", &[MixedVoice]),
        (Voice::I, "I walk to the water.", &[]),
        (Voice::You, "You walk with your helper.", &[]),
        (Voice::You, "You wait and I walk.", &[MixedVoice]),
        (Voice::You, "Noor walks to the water.", &[MixedVoice]),
        (Voice::You, "Your name is Noor.", &[]),
        (Voice::Name, "Noor walks with their helper.", &[]),
        (Voice::Name, "My helper is there.", &[MixedVoice]),
        (Voice::Name, "You can ask.", &[SecondPerson]),
        (Voice::Name, "This is the plan for Noor.", &[]),
    ];
    for (voice, sentence, wanted) in cases {
        let found: Vec<_> = look(sentence, &teller(voice))
            .into_iter()
            .map(|r| r.kind)
            .collect();
        assert_eq!(found, wanted, "{voice:?}: {sentence}");
    }
}

#[test]
fn offers_speak_in_the_voice_of_the_story() {
    let offer = |voice, sentence: &str| look(sentence, &teller(voice))[0].better.clone();
    assert!(offer(Voice::You, "Do not run.").contains("“You can walk.”"));
    assert!(offer(Voice::Name, "Do not run.").contains("“Noor can walk.”"));
    assert!(offer(Voice::Name, "Noor loves the waves.").contains("“Noor may like the waves.”"));
    assert!(offer(Voice::You, "It is safe.").contains("“A helper stays beside you.”"));
    let nameless = Teller {
        voice: Voice::Name,
        name: " ",
    };
    assert!(
        look("Do not run.", &nameless)[0]
            .better
            .contains("“I can walk.”")
    );
}

#[test]
fn a_remark_knows_where_its_words_stand() {
    for (sentence, ..) in FOUND {
        for remark in remarks(sentence) {
            assert_eq!(remark.words, sentence[remark.at.clone()], "{sentence}");
            for text in [&remark.why, &remark.better] {
                assert!(text.ends_with(['.', '”']), "{text}");
                assert!(text.starts_with(char::is_uppercase), "{text}");
            }
        }
    }
}

/// A text of two sentences is looked at one by one, and ranges are those of the text.
#[test]
fn a_text_of_several_sentences() {
    let text = "“Not now.”  Mum waits – the sea will be calm. The sea will be calm.";
    let all = look(text, &I);
    assert_eq!(
        all.iter().map(|r| r.kind).collect::<Vec<_>>(),
        [Negative, Promise, Promise]
    );
    for remark in &all {
        assert_eq!(remark.words, text[remark.at.clone()]);
    }
    assert!(all[1].at.end < all[2].at.start);
}

#[test]
fn odd_texts_do_no_harm() {
    let odd = [
        "…",
        "“”",
        "’",
        "as",
        "as a",
        "not",
        "never",
        "will",
        "is going to",
        "the sea will",
        "I",
        "i'll",
        "must",
        "all of",
        "no one",
        "İ ŞİİR",
        "ẞ’ ’s",
        "😀 not 😀",
        "DON’T RUN",
        "not not not",
        "e.g.",
        "don’t",
        "have to",
        "I’m",
    ];
    for text in odd {
        for voice in Voice::ALL {
            for name in ["", "Noor", "I", "😀"] {
                for remark in look(text, &Teller { voice, name }) {
                    assert_eq!(remark.words, text[remark.at.clone()]);
                }
            }
        }
    }
}

#[test]
fn every_kind_has_words_of_its_own() {
    let mut labels = RemarkKind::ALL.map(RemarkKind::label).to_vec();
    labels.sort_unstable();
    labels.dedup();
    assert_eq!(labels.len(), RemarkKind::ALL.len());
}
