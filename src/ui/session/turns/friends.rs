//! Pairs who want to be together in turns.

use std::collections::BTreeSet;

use egui::{Id, Ui};

use crate::model::ids::ParticipantId;
use crate::ui::desk::Desk;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::choose::select;
use crate::ui::widgets::form::row;
use crate::ui::widgets::words;

/// Shows the pairs, and two lists to add one.
pub fn show(
    ui: &mut Ui,
    desk: &Desk<'_>,
    chosen: &mut [Option<ParticipantId>; 2],
    friends: &mut BTreeSet<(ParticipantId, ParticipantId)>,
) {
    words::heading(ui, "Friends who want to be together", 17.0);
    let club = desk.view.club;
    let name = |id: ParticipantId| club.participant(id).map_or("", |p| p.name.trim());
    if !friends.is_empty() {
        row(ui, |ui| {
            for pair in friends.clone() {
                let both = format!("{} and {}", name(pair.0), name(pair.1));
                let label = format!("{both} ×");
                let gone = format!("{both}: no longer named as friends");
                let b = Button::new(("turns-friends", pair), &label).name(&gone);
                if b.tip(&gone).show(ui).clicked() {
                    friends.remove(&pair);
                }
            }
        });
    }
    row(ui, |ui| {
        for (side, label) in ["One of two friends", "The other one"].iter().enumerate() {
            let other = chosen[1 - side];
            let all = desk.view.boards.iter().map(|b| b.0);
            let all: Vec<ParticipantId> = all.filter(|id| Some(*id) != other).collect();
            let names: Vec<String> = all.iter().map(|id| name(*id).to_owned()).collect();
            let now = chosen[side].and_then(|id| all.iter().position(|a| *a == id));
            let id = Id::unique(("turns-friend", side));
            if let Some(i) = select(ui, id, label, &names, now, 190.0) {
                chosen[side] = all.get(i).copied();
            }
        }
    });
    if let [Some(a), Some(b)] = *chosen {
        friends.insert((a.min(b), a.max(b)));
        *chosen = [None, None];
    }
}
