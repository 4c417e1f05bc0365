//! The club's songs: typed where the club is, one field one edit, undone like everything.

use daystrand::ui::app::App;
use daystrand::ui::people::Pane;
use daystrand::workbench::command::Place;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;

use super::{click, press, type_words, window_of};

type Window = Harness<'static, App>;

/// The pane of the club, in a window so high that all of it is seen.
fn club() -> Window {
    let mut h = window_of(Vec2::new(1100.0, 5200.0));
    press(&mut h, Modifiers::COMMAND, Key::Num2);
    assert_eq!(h.state().bench().view().place, Place::People);
    h.state_mut().state_mut().people.pane = Pane::Club;
    h.run();
    h
}

fn titles(h: &Window) -> Vec<String> {
    let songs = &h.state().bench().view().club.songs;
    songs.iter().map(|s| s.title.clone()).collect()
}

/// Puts words in place of those in a field.
fn type_over(h: &mut Window, field: &str, words: &str) {
    click(h, field);
    press(h, Modifiers::COMMAND, Key::A);
    type_words(h, words);
    // Another field takes the keyboard: what was typed is kept.
    press(h, Modifiers::NONE, Key::Tab);
}

#[test]
fn a_song_is_added_typed_moved_removed_and_brought_back() {
    let mut h = club();
    assert_eq!(titles(&h), ["Hello at the reeds"]);
    click(&mut h, "Add a song");
    assert_eq!(titles(&h), ["Hello at the reeds", "Song 2"]);
    type_over(&mut h, "Words of Song 2", "Row.\n\nHome.");
    let song = h.state().bench().view().club.songs[1].clone();
    assert_eq!(song.verses(), [["Row."], ["Home."]]);
    click(&mut h, "Earlier: Song 2");
    assert_eq!(titles(&h), ["Song 2", "Hello at the reeds"]);
    click(&mut h, "Remove: Song 2");
    assert_eq!(titles(&h), ["Hello at the reeds"]);
    for left in [2, 2, 2, 1] {
        press(&mut h, Modifiers::COMMAND, Key::Z);
        assert_eq!(titles(&h).len(), left);
    }
}
