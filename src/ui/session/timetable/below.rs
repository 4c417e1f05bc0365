//! The activities below the timetable: added after the chosen row, put in place of one, or offered as
//! a choice in it.

use egui::{Rect, Ui};

use super::super::SessionState;
use crate::model::edit::TimetableEdit;
use crate::model::hand::Content;
use crate::model::ids::SlotId;
use crate::model::session::{Session, Slot};
use crate::ui::desk::Desk;
use crate::ui::tray::{self, Pick, Tray};

/// The activities of the club below the list.
pub fn activities(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let Some(session) = desk.view.session else {
        return;
    };
    let items = tray::activities(desk.view.club, &state.tray);
    let at = state
        .slot
        .and_then(|s| session.timetable.iter().position(|x| x.id == s));
    let label = |slot: &Slot| {
        desk.view
            .club
            .activity(slot.activity)
            .map_or("", |a| a.label.as_str())
    };
    let does = match (state.swap, at) {
        _ if state.offer.is_some() => "Pick what can be chosen; again takes it out".to_owned(),
        (Some(_), _) => "Pick what takes its place".to_owned(),
        (None, Some(i)) => format!(
            "Enter adds after {} {}",
            i + 1,
            label(&session.timetable[i])
        ),
        (None, None) => "Drag one up, or press Enter".to_owned(),
    };
    let own = items.len();
    let shown = Tray {
        name: "activity-tray",
        items,
        own,
        eager: state.swap.is_some() || state.offer.is_some(),
        does,
        figure: Default::default(),
    };
    let picked = shown.show(ui, desk, &mut state.tray, rect);
    let swap = state.swap.or(state.slot);
    if let (Some(Pick::Add(c) | Pick::Swap(c)), Some(slot)) = (&picked, state.offer) {
        offer(desk, session, slot, c);
        return;
    }
    match (picked, swap) {
        (Some(Pick::Add(c)), _) if state.swap.is_none() => {
            let place = at.map_or(session.timetable.len(), |i| i + 1);
            if let Some(activity) = c.activity {
                desk.timetable(TimetableEdit::Insert(activity, place));
            }
        }
        (Some(Pick::Add(c) | Pick::Swap(c)), Some(slot)) => {
            if let Some(activity) = c.activity {
                desk.timetable(TimetableEdit::Replace(slot, activity));
            }
            state.swap = None;
            state.tray.search.clear();
            state.focus_slot = true;
        }
        _ => {}
    }
}

/// Adds something to what can be chosen in a row, or takes it out again.
fn offer(desk: &mut Desk<'_>, session: &Session, slot: SlotId, content: &Content) {
    let now = session.slot(slot).map_or(&[][..], |s| &s.options);
    let mut next = now.to_vec();
    if now.contains(content) {
        next.retain(|o| o != content);
    } else {
        next.push(content.clone());
    }
    desk.timetable(TimetableEdit::Options(slot, next));
}
