//! The club's songs and chants: title, words, and the activity in which each is sung.

use std::sync::Arc;

use egui::{Id, Ui, vec2};

use super::parts::long_field;
use crate::model::edit::Edit;
use crate::model::song::Song;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::select;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;

/// Shows the list with all that can be changed.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>) {
    words::heading(ui, "Songs and chants", 20.0);
    words::soft(
        ui,
        "Printed in large letters on the words sheet, for families.",
    );
    let all = &desk.view.club.songs;
    for (i, song) in all.iter().enumerate() {
        one(ui, desk, song, (i, all.len()));
        ui.add_space(10.0);
    }
    if Button::new("song-add", "Add a song")
        .icon(Icon::Plus)
        .show(ui)
        .clicked()
    {
        desk.edit(Edit::AddSong(Song::new(&format!("Song {}", all.len() + 1))));
    }
}

fn one(ui: &mut Ui, desk: &mut Desk<'_>, song: &Arc<Song>, place: (usize, usize)) {
    let mut next = Song::clone(song);
    let id = |what: &str| Id::unique(("song", song.id, what));
    row(ui, |ui| {
        block(ui, "Title", 300.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let label = format!("Title of {}", song.title);
            let f = Field::new(id("title"), &label, &song.title);
            if let Some(title) = f.show(ui, desk.drafts, width) {
                next.title = title;
            }
        });
        block(ui, "Sung in", 220.0, theme::CONTROL, |ui| {
            let activities = &desk.view.club.activities;
            let mut names = vec!["No activity".to_owned()];
            names.extend(activities.iter().map(|a| a.label.clone()));
            let at = activities.iter().position(|a| Some(a.id) == song.activity);
            let at = at.map_or(0, |i| i + 1);
            let (width, label) = (ui.available_width(), "Activity in which it is sung");
            if let Some(i) = select(ui, id("activity"), label, &names, Some(at), width) {
                next.activity = i.checked_sub(1).map(|i| activities[i].id);
            }
        });
        block(ui, "", 160.0, theme::CONTROL, |ui| {
            buttons(ui, desk, song, place);
        });
    });
    let width = ui.available_width();
    words::soft(ui, "Words, line by line; an empty line ends a verse");
    let label = format!("Words of {}", song.title);
    if let Some(text) = long_field(ui, desk, (id("words"), &label), &song.words, (4, width)) {
        next.words = text;
    }
    if next != **song {
        desk.edit(Edit::ChangeSong(next));
    }
}

fn buttons(ui: &mut Ui, desk: &mut Desk<'_>, song: &Song, (i, n): (usize, usize)) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing = vec2(6.0, 6.0);
        let small = |ui: &mut Ui, what: &str, icon: Icon, enabled: bool| {
            let name = format!("{what}: {}", song.title);
            let b = Button::new(("song", song.id, what), &name)
                .icon_only(icon)
                .enabled(enabled)
                .weight(Weight::Quiet);
            b.show(ui).clicked()
        };
        let up = small(ui, "Earlier", Icon::Up, i > 0);
        let down = small(ui, "Later", Icon::Down, i + 1 < n);
        let bin = small(ui, "Remove", Icon::Bin, true);
        if up {
            desk.edit(Edit::MoveSong(song.id, i - 1));
        }
        if down {
            desk.edit(Edit::MoveSong(song.id, i + 1));
        }
        if bin {
            desk.edit(Edit::RemoveSong(song.id));
        }
    });
}
