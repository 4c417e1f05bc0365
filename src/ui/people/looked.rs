//! Which points of the check list the club looks at.

use egui::{Id, Ui};

use super::PeopleState;
use super::parts::Fold;
use crate::model::care::Care;
use crate::model::looks::LookGroup;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::tick_at;
use crate::ui::widgets::words;

/// Shows the points by their groups and puts what was changed into `next`.
pub fn show(ui: &mut Ui, desk: &Desk<'_>, state: &mut PeopleState, next: &mut Care) {
    words::heading(ui, "What is looked at", 20.0);
    words::soft(
        ui,
        "Before a session and again during it. Take the tick from what your club does not look at.",
    );
    let now = &desk.view.club.rules.care.not_looked_at;
    for group in LookGroup::ALL {
        let all: Vec<_> = group.looks().collect();
        let left_out: Vec<&str> = all
            .iter()
            .filter(|l| now.contains(l))
            .map(|l| l.label())
            .collect();
        let gist = match left_out.as_slice() {
            [] => String::new(),
            some => format!("Not looked at: {}", some.join("; ")),
        };
        let open = state.looks_open.contains(&group);
        let fold = Fold {
            id: Id::unique(("looked-at", group.label())),
            title: group.label(),
            filled: (all.len() - left_out.len(), all.len()),
            gist: &gist,
            open,
        };
        if fold.show(ui) {
            if open {
                state.looks_open.remove(&group);
            } else {
                state.looks_open.insert(group);
            }
        }
        if !open {
            continue;
        }
        for look in all {
            let on = !now.contains(&look);
            let size = egui::vec2(ui.available_width(), theme::CONTROL);
            let (_, rect) = ui.allocate_space(size);
            let id = Id::unique(("looks-at", look.word()));
            if tick_at(ui, id, rect, on, look.label(), "").clicked() {
                if on {
                    next.not_looked_at.insert(look);
                } else {
                    next.not_looked_at.remove(&look);
                }
            }
        }
    }
}
