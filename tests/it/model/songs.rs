//! Songs: added, changed, moved, removed; one typed text is one step for undo.

use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, Made, apply};
use daystrand::model::history::History;
use daystrand::model::ids::{ActivityId, SongId};
use daystrand::model::song::Song;

use super::random;

fn after(club: &Club, edit: Edit) -> Club {
    apply(club, &edit).unwrap().0
}

fn titles(club: &Club) -> Vec<&str> {
    club.songs.iter().map(|s| s.title.as_str()).collect()
}

#[test]
fn songs_are_added_changed_moved_and_removed() {
    let club = random::start();
    let (club, made) = apply(&club, &Edit::AddSong(Song::new(" One "))).unwrap();
    let Made::Song(one) = made else {
        panic!("{made:?}");
    };
    let club = after(&club, Edit::AddSong(Song::new("Two")));
    assert_eq!(titles(&club), ["One", "Two"]);
    let words = Song {
        id: one,
        words: "\r\n Row,\r\nrow.\n\n \nHome.  \n".into(),
        activity: Some(club.activities[1].id),
        ..Song::new("One")
    };
    let club = after(&club, Edit::ChangeSong(words));
    let song = club.song(one).unwrap();
    assert_eq!(song.verses(), [vec!["Row,", "row."], vec!["Home."]]);
    let club = after(&club, Edit::MoveSong(one, 9));
    assert_eq!(titles(&club), ["Two", "One"]);
    let gone = after(&club, Edit::RemoveSong(one));
    assert_eq!(titles(&gone), ["Two"]);
    for edit in [
        Edit::RemoveSong(one),
        Edit::MoveSong(one, 0),
        Edit::ChangeSong(Song {
            id: one,
            ..Song::new("One")
        }),
    ] {
        assert!(apply(&gone, &edit).is_err(), "{edit:?}");
    }
}

#[test]
fn a_song_without_a_title_or_in_an_unknown_activity_is_refused() {
    let club = random::start();
    assert!(apply(&club, &Edit::AddSong(Song::new("  "))).is_err());
    let lost = Song {
        activity: Some(ActivityId(9_999)),
        ..Song::new("One")
    };
    assert!(apply(&club, &Edit::AddSong(lost)).is_err());
    let long = Song {
        words: "a".repeat(10_001),
        ..Song::new("One")
    };
    assert!(apply(&club, &Edit::AddSong(long)).is_err());
}

#[test]
fn a_song_outlives_the_activity_it_was_sung_in() {
    let club = random::start();
    let unused = Edit::AddActivity((*club.activities[0]).clone());
    let (club, made) = apply(&club, &unused).unwrap();
    let Made::Activity(id) = made else {
        panic!("{made:?}");
    };
    let song = Song {
        activity: Some(id),
        ..Song::new("One")
    };
    let club = after(&club, Edit::AddSong(song));
    let club = after(&club, Edit::RemoveActivity(id));
    assert_eq!(club.songs[0].activity, None);
    assert_eq!(daystrand::model::invariants::check(&club), [""; 0]);
}

#[test]
fn typing_the_words_is_one_step_for_undo() {
    let mut history = History::new(random::start());
    history.apply(&Edit::AddSong(Song::new("One"))).unwrap();
    let id: SongId = history.club().songs[0].id;
    for words in ["R", "Ro", "Row"] {
        let typed = Song {
            id,
            words: words.into(),
            ..Song::new("One")
        };
        history.apply(&Edit::ChangeSong(typed)).unwrap();
    }
    assert_eq!(history.club().songs[0].words, "Row");
    history.undo();
    assert_eq!(history.club().songs[0].words, "");
    history.undo();
    assert!(history.club().songs.is_empty());
}
