//! What is asked of turns: which rows, how many at each at once, how long and how many turns, what
//! those do who wait, who wants to be together.

use egui::{Id, Rect, Ui, pos2, vec2};

use super::{TurnsState, friends, working};
use crate::model::club::Club;
use crate::model::ids::ActivityId;
use crate::model::session::{Session, Slot};
use crate::model::turns::Station;
use crate::plan::clock::{Clock, clock};
use crate::plan::turns::Asked;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{select, tick_at};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, column, row};
use crate::ui::widgets::steps::{Steps, stepper};
use crate::ui::widgets::words;
use crate::workbench::turns::Told;

/// From this width on, rows and numbers stand side by side.
const WIDE: f32 = 900.0;
/// Most turns in the list.
const TURNS: u32 = 12;

/// Shows it.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TurnsState,
    session: &Session,
    told: &Told,
) {
    let Some(mut asked) = state.draft.as_ref().map(|d| d.asked.clone()) else {
        return;
    };
    let width = ui.available_width();
    if width < WIDE {
        rows(ui, desk, session, &mut asked, told);
        ui.add_space(10.0);
        numbers(ui, desk, state, &mut asked);
    } else {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = 28.0;
            let left = (width * 0.52).min(680.0);
            column(ui, left, |ui| rows(ui, desk, session, &mut asked, told));
            column(ui, width - left - 28.0, |ui| {
                numbers(ui, desk, state, &mut asked);
            });
        });
    }
    if let Some(draft) = &mut state.draft {
        draft.asked = asked;
    }
}

/// The rows of the timetable, to be ticked, with how many can be at each.
fn rows(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session, asked: &mut Asked, told: &Told) {
    words::heading(ui, "Which rows are done in turns", 18.0);
    words::soft(
        ui,
        "They are put together where the first of them stands. At each row it can be said how many \
         are there at once.",
    );
    for sentence in &told.room {
        words::body(ui, sentence);
    }
    let times = clock(session, &desk.view.club.rules);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 2.0;
        let waits = session.turns.as_ref().map(|t| t.waits.clone());
        let waits = waits.unwrap_or_default();
        for slot in session.timetable.iter().filter(|s| !waits.contains(&s.id)) {
            one_row(ui, desk, slot, &times, asked);
        }
    });
    // In the order of the timetable, however they were ticked.
    let place = |s: &Station| session.timetable.iter().position(|r| r.id == s.slot);
    asked.rows.sort_by_key(place);
}

fn one_row(ui: &mut Ui, desk: &mut Desk<'_>, slot: &Slot, times: &Clock, asked: &mut Asked) {
    let Some(activity) = desk.view.club.activity(slot.activity) else {
        return;
    };
    let label = activity.label.trim();
    let wet = activity.in_water;
    let at = asked.rows.iter().position(|s| s.slot == slot.id);
    let wide = ui.available_width();
    let (_, rect) = ui.allocate_space(vec2(wide, theme::CONTROL));
    let field = Rect::from_min_max(pos2(rect.right() - 132.0, rect.top()), rect.max);
    let wave = Rect::from_min_max(pos2(field.left() - 34.0, rect.top()), field.left_bottom());
    let tick = rect.with_max_x(wave.left());
    let time = times.row(slot.id);
    let time = time.map_or_else(String::new, |r| format!("{}–{}", r.from, r.to));
    let said = if wet {
        format!("{label}, in the water")
    } else {
        label.to_owned()
    };
    let id = Id::unique(("turns-row", slot.id));
    if tick_at(ui, id, tick, at.is_some(), &said, &time).clicked() {
        match at {
            Some(i) => drop(asked.rows.remove(i)),
            None => asked.rows.push(Station {
                slot: slot.id,
                capacity: None,
            }),
        }
    }
    if wet {
        let ink = theme::of(ui.ctx()).col.ink;
        let at = icons::square(wave.center(), 22.0);
        icons::paint(ui.painter(), Icon::Wave, at, ink);
    }
    let Some(station) = at.and_then(|i| asked.rows.get_mut(i)) else {
        return;
    };
    let name = format!("How many at {label} at once");
    let shown = station.capacity.map_or_else(String::new, |n| n.to_string());
    let hint = if wet { "as above" } else { "no limit" };
    let f = Field::new(Id::unique(("turns-most", slot.id)), &name, &shown).hint(hint);
    let unit = if shown.is_empty() { "" } else { "at once" };
    if let Some(typed) = f.unit(unit).show_at(ui, desk.drafts, field) {
        station.capacity = typed.trim().parse().ok().filter(|n| *n > 0);
    }
}

/// Minutes, turns, waiting, friends, and the button.
fn numbers(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TurnsState, asked: &mut Asked) {
    row(ui, |ui| {
        block(ui, "Minutes of a turn", 180.0, theme::CONTROL, |ui| {
            let steps = Steps {
                id: Id::unique("turns-minutes"),
                label: "Minutes of a turn",
                unit: "min",
                range: 1..=240,
                step: 1,
            };
            if let Some(m) = stepper(ui, desk.drafts, &steps, asked.minutes) {
                asked.minutes = m;
            }
        });
        block(ui, "How many turns", 220.0, theme::CONTROL, |ui| {
            let mut names = vec!["As few as possible".to_owned()];
            names.extend((1..=TURNS).map(|n| match n {
                1 => "1 turn".to_owned(),
                n => format!("{n} turns"),
            }));
            let now = asked.turns.map_or(0, |n| n as usize);
            let id = Id::unique("turns-count");
            if let Some(i) = select(ui, id, "How many turns", &names, Some(now), 216.0) {
                asked.turns = u32::try_from(i).ok().filter(|n| *n > 0);
            }
        });
    });
    block(ui, "Whoever waits in a turn", 420.0, theme::CONTROL, |ui| {
        waiting(ui, desk.view.club, &mut asked.waiting);
    });
    friends::show(ui, desk, &mut state.friend, &mut asked.friends);
    ui.add_space(8.0);
    if working(ui, desk) {
        return;
    }
    let b = Button::new("turns-work", "Work it out").weight(Weight::Main);
    let b = b.height(theme::MAIN).enabled(!asked.rows.is_empty());
    if b.show(ui).clicked() {
        if let Some(draft) = &mut state.draft {
            draft.asked = asked.clone();
        }
        state.work(desk);
    }
    if asked.rows.is_empty() {
        words::soft(ui, "Tick at least one row.");
    }
}

fn waiting(ui: &mut Ui, club: &Club, waiting: &mut Option<ActivityId>) {
    let mut names = vec!["Nothing on the board".to_owned()];
    names.extend(club.activities.iter().map(|a| a.label.clone()));
    let now = waiting.and_then(|id| club.activities.iter().position(|a| a.id == id));
    let now = Some(now.map_or(0, |i| i + 1));
    let width = ui.available_width();
    let id = Id::unique("turns-waiting");
    if let Some(i) = select(ui, id, "Whoever waits in a turn", &names, now, width) {
        *waiting = i.checked_sub(1).map(|i| club.activities[i].id);
    }
}
