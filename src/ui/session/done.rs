//! What was done, step by step, after a session: one press a step, and what was chosen where there
//! was a choice.

use egui::{Role, Ui};

use crate::model::board::{Board, Step, shown};
use crate::model::club::Club;
use crate::model::ids::ParticipantId;
use crate::model::record::Record;
use crate::ui::icons::Icon;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::form::row;
use crate::ui::widgets::words;

/// What parts the words of several choices.
const BETWEEN: &str = "; ";

/// Shows the steps of a board and changes the record by what is pressed.
pub fn show(ui: &mut Ui, club: &Club, board: &Board, next: &mut Record) {
    let who = board.participant;
    let steps: Vec<&Step> = board.done().collect();
    words::soft(
        ui,
        "What was done. Press a step once for done, again for changed on the day.",
    );
    row(ui, |ui| {
        let whole = steps.iter().all(|s| marked(next, s).is_some());
        let all = Button::new(("record-all", who), "All as planned");
        if all.icon(Icon::Tick).enabled(!whole).show(ui).clicked() {
            let open = steps.iter().filter(|s| !next.changed.contains(&s.at));
            let open: Vec<_> = open.map(|s| s.at).collect();
            next.done.extend(open);
        }
        for step in &steps {
            one(ui, who, step, next);
        }
    });
    let options: Vec<String> = steps
        .iter()
        .flat_map(|s| &s.options)
        .map(|o| shown(club, o).label)
        .collect();
    if options.is_empty() {
        return;
    }
    words::soft(ui, "What was chosen. Press it, or write it below.");
    row(ui, |ui| {
        for (i, option) in options.iter().enumerate() {
            let on = chosen(&next.chose).any(|c| c == option);
            let b = Button::new(("record-chose", who, i), option).role(Role::CheckBox);
            if b.weight(Weight::Chosen(on)).show(ui).clicked() {
                next.chose = toggled(&next.chose, option);
            }
        }
    });
}

/// Whether a step is marked, and whether as changed.
fn marked(record: &Record, step: &Step) -> Option<bool> {
    let changed = record.changed.contains(&step.at);
    (changed || record.done.contains(&step.at)).then_some(changed)
}

fn one(ui: &mut Ui, who: ParticipantId, step: &Step, next: &mut Record) {
    let label = match marked(next, step) {
        None => step.label.clone(),
        Some(false) => format!("{}: done", step.label),
        Some(true) => format!("{}: changed", step.label),
    };
    let b = Button::new(("record-step", who, step.at), &label);
    let b = match marked(next, step) {
        None => b.weight(Weight::Chosen(false)),
        Some(false) => b.weight(Weight::Chosen(true)).icon(Icon::Tick),
        Some(true) => b.weight(Weight::Chosen(true)).icon(Icon::Swap),
    };
    if b.show(ui).clicked() {
        match marked(next, step) {
            None => {
                next.done.insert(step.at);
            }
            Some(false) => {
                next.done.remove(&step.at);
                next.changed.insert(step.at);
            }
            Some(true) => {
                next.changed.remove(&step.at);
            }
        }
    }
}

fn chosen(text: &str) -> impl Iterator<Item = &str> {
    text.split(BETWEEN.trim())
        .map(str::trim)
        .filter(|c| !c.is_empty())
}

/// The choices with this one added, or taken away when it was there.
fn toggled(text: &str, option: &str) -> String {
    let was = chosen(text).any(|c| c == option);
    let kept = chosen(text).filter(|c| *c != option);
    let new = (!was).then_some(option);
    kept.chain(new).collect::<Vec<_>>().join(BETWEEN)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_choice_is_added_and_taken_away() {
        assert_eq!(toggled("", "Kite"), "Kite");
        assert_eq!(toggled("Kite", "Ball"), "Kite; Ball");
        assert_eq!(toggled("Kite; Ball", "Kite"), "Ball");
        assert_eq!(toggled("the red one;Ball", "Ball"), "the red one");
    }
}
