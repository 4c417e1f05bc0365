//! The same thing under two words.

use daystrand::story::measure::two_words;

/// The words of each thing that is called by more than one.
fn found(sentences: &[&str]) -> Vec<Vec<String>> {
    two_words(sentences).into_iter().map(|t| t.words).collect()
}

#[test]
fn the_word_used_most_is_offered() {
    let all = two_words(&[
        "My helper is there.",
        "The volunteer shows me the sea.",
        "My helper’s hand is warm.",
    ]);
    assert_eq!(all.len(), 1);
    assert_eq!(all[0].words, ["helper", "volunteer"]);
    assert_eq!(
        all[0].better,
        "If they are the same, say “helper” every time."
    );
}

#[test]
fn plurals_and_words_of_two_parts_are_known() {
    let pairs: [[&str; 2]; 9] = [
        ["The helpers wave.", "A volunteer waves."],
        ["The coaches wave.", "The trainer waves."],
        ["I look at the sea.", "The ocean may be loud."],
        ["I go to the toilet.", "The bathroom is behind the tent."],
        ["I go home with Mum.", "My mother drives."],
        ["I put on sunscreen.", "Sun cream may feel cold."],
        ["I wear ear muffs.", "My headphones are blue."],
        ["I put on a life jacket.", "The buoyancy aid is red."],
        ["My group waits.", "The team sings."],
    ];
    for pair in pairs {
        assert_eq!(found(&pair).len(), 1, "{pair:?}");
        assert_eq!(found(&pair[..1]).len(), 0, "{pair:?}");
    }
}

/// Things that differ: a tile and a card, a helper and a trainer, sand and shore.
#[test]
fn different_things_may_have_different_words() {
    let story = [
        "The tile shows a picture.",
        "I can show a card.",
        "My helper waits, and the trainer counts.",
        "The sea is beside the pool.",
        "I can grow a plant.",
    ];
    assert_eq!(found(&story), Vec::<Vec<String>>::new());
    assert_eq!(found(&[]), Vec::<Vec<String>>::new());
}
