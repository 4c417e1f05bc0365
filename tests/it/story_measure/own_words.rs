//! The program's own sentences raise no remark, in no voice; those of the demo club neither.

use std::sync::Arc;

use daystrand::model::club::Club;
use daystrand::model::people::Voice;
use daystrand::model::telling::Depth;
use daystrand::story::measure::{Balance, Counts, Teller, look, two_words};
use daystrand::story::{Story, tell_for};

use crate::fixture;
use crate::story::{PICTURES, one_activity};

/// Every story of a club in every voice, with the teller's voice and name.
fn stories(club: &Club) -> Vec<(Voice, String, Story)> {
    let mut all = Vec::new();
    for who in &club.participants {
        for session in &club.sessions {
            for voice in Voice::ALL {
                let mut who = (**who).clone();
                who.voice = voice;
                let story = tell_for(club, session, &who);
                all.push((voice, who.name.clone(), story));
            }
        }
    }
    all
}

/// The demo club, all with sentences and nothing by hand.
fn told() -> Club {
    let mut club = fixture::club();
    for p in &mut club.participants {
        Arc::make_mut(p).telling.depth = Depth::Short;
    }
    fixture::session_mut(&mut club).stories.clear();
    club
}

fn found_in(club: &Club) -> Vec<String> {
    let mut found = Vec::new();
    for (voice, name, story) in stories(club) {
        let teller = Teller { voice, name: &name };
        let sentences: Vec<_> = story.sentences().map(str::to_owned).collect();
        for sentence in &sentences {
            for remark in look(sentence, &teller) {
                found.push(format!(
                    "{voice:?}: {sentence} {:?} {}",
                    remark.kind, remark.words
                ));
            }
        }
        let texts: Vec<_> = sentences.iter().map(|s| s.as_str()).collect();
        found.extend(two_words(&texts).iter().map(|t| format!("{:?}", t.words)));
    }
    found.sort();
    found.dedup();
    found
}

/// Words under a picture that speak of "me" stay as the club wrote them in every voice; a sentence
/// that names such a tile is told in two voices, and that is so.
fn names_a_tile_of_mine(label: &str) -> bool {
    label
        .split(' ')
        .any(|w| matches!(w.to_lowercase().as_str(), "my" | "me"))
}

#[test]
fn sentences_for_known_pictures_raise_no_remark() {
    for (symbol, label) in PICTURES {
        let mut club = one_activity(symbol, label);
        if names_a_tile_of_mine(label) {
            continue;
        }
        // A name, so that all three voices are told.
        Arc::make_mut(&mut club.participants[0]).name = "Noor".into();
        let found = found_in(&club);
        assert!(found.is_empty(), "{label}: {found:#?}");
    }
}

#[test]
fn stories_of_the_demo_club_raise_no_remark() {
    let found = found_in(&told());
    assert!(found.is_empty(), "{found:#?}");
}

/// Flesch's two easiest bands, in every voice.
#[test]
fn stories_of_the_demo_club_are_easy_to_read() {
    for (voice, name, story) in stories(&told()) {
        let sentences: Vec<_> = story.sentences().map(str::to_owned).collect();
        let counts = Counts::of(&sentences);
        let ease = counts.reading_ease().unwrap();
        assert!(ease >= 80.0, "{voice:?} {name} {counts:?}");
        assert!(counts.words_per_sentence().is_some_and(|w| w < 10.0));
    }
}

/// Gray and Garand (1993) and later editions: at least two sentences that describe for each that
/// directs. What the program tells keeps to it, for someone who reads too.
#[test]
fn stories_of_the_demo_club_describe_more_than_they_direct() {
    for depth in [Depth::Short, Depth::Full] {
        let mut club = told();
        for p in &mut club.participants {
            Arc::make_mut(p).telling.depth = depth;
        }
        for (voice, name, story) in stories(&club) {
            let teller = Teller { voice, name: &name };
            let sentences: Vec<_> = story.sentences().collect();
            let balance = Balance::of(&sentences, &teller);
            assert!(balance.keeps_later_rule(), "{voice:?} {name} {balance:?}");
        }
    }
}
