//! After the session: what was seen of each participant, and what was seen last time.

use egui::{Id, Rect, Ui, vec2};

use super::{SessionState, beforehand, done};
use crate::model::board;
use crate::model::edit::Edit;
use crate::model::people::Participant;
use crate::model::privacy::Guarded;
use crate::model::record::{Record, Used};
use crate::model::session::Session;
use crate::plan::since::{last_record, since};
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::{segments_here, select};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row, scroll, sheet};
use crate::ui::widgets::words;

/// Widest the field gets in which someone is looked for.
const FIND: f32 = 420.0;
/// So far from what is seen sheets are laid out, so that the Tab key gets to them.
const NEAR: f32 = 500.0;

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let Some(session) = desk.view.session else {
        words::body(ui, "Add a session first.");
        return;
    };
    let at = rect.with_max_x(rect.left() + FIND.min(rect.width()));
    let below = state
        .find
        .above(ui, Id::unique("find-record"), at, desk.view.boards.len());
    let rect = rect.with_min_y(below.top());
    scroll(ui, "afterwards", rect, |ui| {
        ui.set_max_width(ui.available_width().min(980.0));
        words::soft(
            ui,
            "Facts, not judgements; only you see them. They come up when the next session is made.",
        );
        for (who, _) in desk.view.boards {
            let person = desk.view.club.participant(*who);
            if let Some(person) = person.filter(|p| state.find.shows(p)) {
                in_sight(ui, desk, state, session, person);
                ui.add_space(10.0);
            }
        }
        ui.add_space(16.0);
    });
}

/// A sheet that is near what is seen; elsewhere the room that it took when it was last seen, or that
/// another one took.
fn in_sight(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut SessionState,
    session: &Session,
    person: &Participant,
) {
    let width = ui.available_width();
    let key = (session.id, person.id);
    let same = |(w, height): &(f32, f32)| (*w == width).then_some(*height);
    let known = state.heights.get(&key).and_then(same);
    let guess = || state.heights.values().find_map(same);
    let top = ui.cursor().min;
    if let Some(height) = known.or_else(guess) {
        let place = Rect::from_min_size(top, vec2(width, height));
        if !ui.is_rect_visible(place.expand(NEAR)) {
            ui.allocate_space(vec2(width, height));
            return;
        }
    }
    let shown = ui.scope(|ui| sheet(ui, |ui| one(ui, desk, session, person)));
    let height = shown.response.rect.height();
    state.heights.insert(key, (width, height));
}

fn one(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session, person: &Participant) {
    words::heading(ui, &format!("{} ({})", person.name, person.mark), 18.0);
    last_time(ui, desk, session, person);
    let none = Record::default();
    let now = session
        .records
        .get(&person.id)
        .map_or(&none, Guarded::for_owner);
    let boards = desk.view.boards.iter();
    let board = boards.clone().find(|(id, _)| *id == person.id);
    beforehand::show(ui, board.map(|(_, b)| b.as_ref()), now);
    let mut next = now.clone();
    let id = |what: &str| Id::unique(("record", person.id, what));
    row(ui, |ui| {
        block(ui, "The board was used", 660.0, theme::CONTROL, |ui| {
            let mut names = vec!["Not looked at"];
            names.extend(Used::ALL.map(Used::label));
            let at = now
                .used
                .and_then(|u| Used::ALL.iter().position(|x| *x == u));
            let name = format!("used-{}", person.id);
            if let Some(i) = segments_here(ui, &name, &names, at.map_or(0, |i| i + 1)) {
                next.used = i.checked_sub(1).map(|i| Used::ALL[i]);
            }
        });
        block(ui, "Favourite, as shown", 220.0, theme::CONTROL, |ui| {
            let all = &desk.view.club.activities;
            let mut names = vec!["None was shown".to_owned()];
            names.extend(all.iter().map(|a| a.label.clone()));
            let at = now
                .favourite
                .and_then(|f| all.iter().position(|a| a.id == f));
            let at = Some(at.map_or(0, |i| i + 1));
            if let Some(i) = select(ui, id("favourite"), "Favourite", &names, at, 216.0) {
                next.favourite = i.checked_sub(1).map(|i| all[i].id);
            }
        });
    });
    let mut boards = desk.view.boards.iter();
    if let Some((_, board)) = boards.find(|(id, _)| *id == person.id) {
        done::show(ui, desk.view.club, board, &mut next);
    }
    row(ui, |ui| {
        block(ui, "What was chosen", 300.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let f = Field::new(id("chose"), "What was chosen", &now.chose);
            if let Some(text) = f.show(ui, desk.drafts, width) {
                next.chose = text;
            }
        });
        block(
            ui,
            "What to change next time",
            520.0,
            theme::CONTROL,
            |ui| {
                let width = ui.available_width();
                let f = Field::new(id("next"), "What to change next time", &now.next_time);
                if let Some(text) = f.show(ui, desk.drafts, width) {
                    next.next_time = text;
                }
            },
        );
    });
    if next != *now {
        desk.edit(Edit::Record(session.id, person.id, next));
    }
}

/// What is new on the board, and what was written down last time.
fn last_time(ui: &mut Ui, desk: &Desk<'_>, session: &Session, person: &Participant) {
    let club = desk.view.club;
    let mut boards = desk.view.boards.iter();
    let board = boards.find(|(id, _)| *id == person.id);
    let found = board.and_then(|(_, b)| since(club, session, b));
    match found {
        None => words::soft(ui, "Comes for the first time."),
        Some(s) if s.new.is_empty() => words::soft(ui, "Nothing on the board is new."),
        Some(s) => words::soft(ui, &format!("New on the board: {}.", s.new.join(", "))),
    }
    let Some((last, record)) = last_record(club, session, person.id) else {
        return;
    };
    let used = record
        .used
        .map(|u| format!("board used: {}", u.label().to_lowercase()));
    let favourite = record.favourite.and_then(|f| club.activity(f));
    let favourite = favourite.map(|a| format!("favourite: {}", a.label));
    let chose = Some(&record.chose).filter(|t| !t.is_empty());
    let chose = chose.map(|t| format!("chose: {t}"));
    let was = board::derive(club, last, person.id);
    let changed = was.steps.iter().filter(|s| record.changed.contains(&s.at));
    let changed: Vec<&str> = changed.map(|s| s.label.as_str()).collect();
    let changed = (!changed.is_empty()).then(|| format!("changed: {}", changed.join(", ")));
    let change = Some(record.next_time.clone()).filter(|t| !t.is_empty());
    let all: Vec<String> = [used, favourite, chose, changed, change]
        .into_iter()
        .flatten()
        .collect();
    let date = crate::ui::dates::short(last.date);
    words::soft(ui, &format!("Last time, {date}: {}", all.join("; ")));
}
