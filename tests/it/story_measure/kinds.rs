//! Kinds of sentence, labelled by hand.

use daystrand::model::people::Voice;
use daystrand::story::measure::Kind::{self, Affirming, Describing, Directing, Perspective};

const TABLE: [(Kind, Voice, &str); 72] = [
    // Who, where, when, what, why.
    (Describing, Voice::I, "We meet at the flags."),
    (Describing, Voice::I, "My helper is there."),
    (Describing, Voice::I, "My helper can help me."),
    (Describing, Voice::I, "The water may feel cold."),
    (Describing, Voice::I, "Sand may feel rough, wet or warm."),
    (Describing, Voice::I, "I walk to the water with my helper."),
    (Describing, Voice::I, "I will go to the beach on Sunday."),
    (Describing, Voice::I, "I can hear the waves."),
    (Describing, Voice::I, "I can see the flags."),
    (Describing, Voice::I, "I may get wet."),
    (Describing, Voice::I, "Splash is not today."),
    (Describing, Voice::I, "Run is not today."),
    (Describing, Voice::I, "Walk to the water is not today."),
    (Describing, Voice::I, "It starts at 9:30."),
    (Describing, Voice::I, "Everyone sits on mats in a ring."),
    (Describing, Voice::I, "It keeps the sun off my face."),
    (Describing, Voice::I, "My helper can show me when I can go."),
    (Describing, Voice::I, "The weather is fine."),
    (Describing, Voice::I, "The trainer moves like a crab."),
    (
        Describing,
        Voice::You,
        "You walk to the water with your helper.",
    ),
    (Describing, Voice::You, "Your helper holds the board."),
    (
        Describing,
        Voice::Name,
        "Noor walks to the water with their helper.",
    ),
    (Describing, Voice::Name, "Noor’s helper can help them."),
    (Describing, Voice::Name, "A trusted grown-up collects Noor."),
    // What someone thinks, feels, knows, likes, expects.
    (Perspective, Voice::I, "My helper likes it when I ask."),
    (Perspective, Voice::I, "Many people like the sea."),
    (
        Perspective,
        Voice::I,
        "Some children feel nervous at first.",
    ),
    (Perspective, Voice::I, "The trainer knows that I can swim."),
    (Perspective, Voice::I, "My group may be happy to see me."),
    (
        Perspective,
        Voice::I,
        "The lifeguard wants to know where we are.",
    ),
    (Perspective, Voice::I, "I may feel cold."),
    (Perspective, Voice::I, "I’m happy today."),
    (
        Perspective,
        Voice::I,
        "People in my group enjoy different things.",
    ),
    (Perspective, Voice::I, "Other swimmers expect a clear path."),
    (
        Perspective,
        Voice::You,
        "Your family hopes that it goes well.",
    ),
    (Perspective, Voice::Name, "Noor may feel tired."),
    (
        Perspective,
        Voice::Name,
        "The helpers think that breaks are useful.",
    ),
    // Why it matters, that it is all right.
    (Affirming, Voice::I, "This is important."),
    (Affirming, Voice::I, "That is okay."),
    (Affirming, Voice::I, "That’s okay."),
    (Affirming, Voice::I, "It helps everyone."),
    (Affirming, Voice::I, "It is okay to feel scared."),
    (Affirming, Voice::I, "Asking for help is a good idea."),
    (Affirming, Voice::I, "This is a good way to cool down."),
    (Affirming, Voice::I, "Breaks are okay."),
    (Affirming, Voice::You, "It is fine to watch."),
    (Affirming, Voice::Name, "Waiting keeps everyone together."),
    // What the reader can do or try.
    (Directing, Voice::I, "I can ask for a break."),
    (Directing, Voice::I, "I can also pass."),
    (Directing, Voice::I, "Then I can look at my plan again."),
    (Directing, Voice::I, "I will try to wait."),
    (Directing, Voice::I, "I’ll try to wait."),
    (Directing, Voice::I, "I try to sit still."),
    (Directing, Voice::I, "I will sit with my helper."),
    (
        Directing,
        Voice::I,
        "If I need a break, I can sit on my towel.",
    ),
    (Directing, Voice::I, "When the whistle blows, I can stop."),
    (Directing, Voice::I, "I can come back when I am ready."),
    (Directing, Voice::I, "I can show the tile I like best."),
    (Directing, Voice::I, "I must not run."),
    (Directing, Voice::I, "I have to wear shoes."),
    (Directing, Voice::I, "We can ask the trainer."),
    (Directing, Voice::I, "Walk on the sand."),
    (Directing, Voice::I, "Please wait at the line."),
    (Directing, Voice::I, "Do not run."),
    (Directing, Voice::I, "Look at the tile that is red."),
    (Directing, Voice::You, "You can ask for help."),
    (Directing, Voice::You, "You may choose a tile."),
    (Directing, Voice::You, "You should listen."),
    (Directing, Voice::Name, "Noor can ask for help."),
    (Directing, Voice::Name, "Noor will try to wait."),
    (Directing, Voice::Name, "Noor tries to wait."),
    (Directing, Voice::Name, "Then she can rest."),
];

#[test]
fn sentences_labelled_by_hand() {
    let wrong: Vec<_> = TABLE
        .iter()
        .map(|(kind, voice, sentence)| (Kind::of(sentence, *voice, "Noor"), kind, sentence))
        .filter(|(found, wanted, _)| found != *wanted)
        .collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_name_of_two_words_is_a_subject_too() {
    let kind = Kind::of("Ana Lee can ask for help.", Voice::Name, "Ana Lee");
    assert_eq!(kind, Directing);
    // Without a name nothing is taken for one.
    assert_eq!(Kind::of("Noor can help me.", Voice::I, ""), Describing);
}

#[test]
fn every_kind_has_a_word_of_its_own() {
    let mut labels = Kind::ALL.map(Kind::label).to_vec();
    labels.sort_unstable();
    labels.dedup();
    assert_eq!(labels.len(), 4);
}
