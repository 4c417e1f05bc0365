//! What changed on the board that is shown, in a sentence for whoever hears the window: "Dig moved
//! before Snack, 3 of 7".

use egui::accesskit::Live;
use egui::{Id, Rect, Role, Sense, Ui, WidgetInfo, vec2};

use crate::model::board::{Board, StepState};
use crate::model::ids::{ParticipantId, SessionId, StepRef};
use crate::workbench::view::View;

/// A step as it was heard last.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Line {
    at: StepRef,
    label: String,
    off: bool,
}

/// The board that was there a moment ago, and what was said since.
#[derive(Debug, Default)]
pub struct Told {
    of: Option<(SessionId, ParticipantId)>,
    /// Which state of the club was looked at.
    revision: u64,
    lines: Vec<Line>,
    says: String,
}

fn lines(board: &Board) -> Vec<Line> {
    let line = |s: &crate::model::board::Step| Line {
        at: s.at,
        label: s.label.clone(),
        off: s.state == StepState::NotToday,
    };
    board.steps.iter().map(line).collect()
}

impl Told {
    /// Notices what changed since the club was looked at last.
    fn look(&mut self, view: &View<'_>) {
        let of = view.session.zip(view.participant);
        let of = of.map(|(s, p)| (s.id, p.id));
        if (of, view.revision) == (self.of, self.revision) {
            return;
        }
        let now = view.board().map(lines).unwrap_or_default();
        if of != self.of {
            self.says.clear();
        } else if let Some(says) = said(&self.lines, &now, view.step) {
            self.says = says;
        }
        (self.of, self.revision, self.lines) = (of, view.revision, now);
    }

    /// Notices what changed and says it where only a screen reader finds it.
    pub fn follow(&mut self, ui: &Ui, view: &View<'_>, corner: Rect) {
        self.look(view);
        let place = Rect::from_min_size(corner.min, vec2(1.0, 1.0));
        let r = ui.interact(place, Id::unique("board-told"), Sense::hover());
        // A change of the name is what is announced over AT-SPI.
        let says = match self.says.as_str() {
            "" => "Board: nothing changed yet".to_owned(),
            says => format!("Board: {says}"),
        };
        r.widget_info(|| WidgetInfo::labeled(Role::Status, true, &says));
        ui.ctx().accesskit_node_builder(r.id, |node| {
            node.set_live(Live::Polite);
            node.set_value(says.as_str());
        });
    }
}

/// What became of the steps, if one thing did; of two that changed places the one that is chosen is
/// said to have moved.
fn said(before: &[Line], now: &[Line], chosen: Option<StepRef>) -> Option<String> {
    let place = |list: &[Line], at: StepRef| list.iter().position(|l| l.at == at);
    let fresh: Vec<usize> = (0..now.len())
        .filter(|i| place(before, now[*i].at).is_none())
        .collect();
    let gone: Vec<&Line> = before
        .iter()
        .filter(|l| place(now, l.at).is_none())
        .collect();
    match (fresh.as_slice(), gone.as_slice()) {
        ([], []) => moved(before, now, chosen).or_else(|| changed(before, now)),
        ([i], []) => Some(format!(
            "{} added, {} of {}",
            now[*i].label,
            i + 1,
            now.len()
        )),
        ([], [line]) => Some(format!("{} taken off", line.label)),
        ([i], [line]) => Some(format!("{} in place of {}", now[*i].label, line.label)),
        _ => Some(format!("The board changed. It has {} steps", now.len())),
    }
}

fn moved(before: &[Line], now: &[Line], chosen: Option<StepRef>) -> Option<String> {
    let order = |list: &[Line], without: StepRef| -> Vec<StepRef> {
        list.iter()
            .map(|l| l.at)
            .filter(|a| *a != without)
            .collect()
    };
    let alone = |at: &StepRef| order(before, *at) == order(now, *at);
    let differs = before.iter().zip(now).any(|(a, b)| a.at != b.at);
    if !differs {
        return None;
    }
    let first = chosen.filter(alone);
    let at = first.or_else(|| now.iter().map(|l| l.at).find(alone));
    let Some(i) = at.and_then(|at| now.iter().position(|l| l.at == at)) else {
        return Some("The steps are in another order".to_owned());
    };
    let (label, count) = (&now[i].label, now.len());
    Some(match now.get(i + 1) {
        Some(next) => format!("{label} moved before {}, {} of {count}", next.label, i + 1),
        None => format!("{label} moved to the end, {count} of {count}"),
    })
}

fn changed(before: &[Line], now: &[Line]) -> Option<String> {
    let (old, new) = before.iter().zip(now).find(|(a, b)| a != b)?;
    Some(match (old.off, new.off) {
        (false, true) => format!("{}: not today", new.label),
        (true, false) => format!("{}: today after all", new.label),
        _ => format!("{} is now {}", old.label, new.label),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ids::SlotId;

    fn board(words: &str) -> Vec<Line> {
        let line = |w: &str| Line {
            at: StepRef::Slot(SlotId(w.bytes().map(u32::from).sum())),
            label: w.trim_end_matches('-').to_owned(),
            off: w.ends_with('-'),
        };
        words.split(' ').map(line).collect()
    }

    fn heard(before: &str, now: &str) -> Option<String> {
        said(&board(before), &board(now), None)
    }

    #[test]
    fn what_happened_to_one_step_is_said_with_where_it_stands() {
        assert_eq!(heard("a b c d", "a b c d"), None);
        assert_eq!(
            heard("a b c d", "a c d b").as_deref(),
            Some("b moved to the end, 4 of 4")
        );
        assert_eq!(
            heard("a b c d", "d a b c").as_deref(),
            Some("d moved before a, 1 of 4")
        );
        assert_eq!(
            heard("a b c", "a x b c").as_deref(),
            Some("x added, 2 of 4")
        );
        assert_eq!(heard("a b c", "a c").as_deref(), Some("b taken off"));
        assert_eq!(heard("a b c", "a x c").as_deref(), Some("x in place of b"));
        assert_eq!(
            heard("a b c d", "d c b a").as_deref(),
            Some("The steps are in another order")
        );
    }

    #[test]
    fn of_two_that_changed_places_the_chosen_one_moved() {
        let (before, now) = (board("a b c"), board("a c b"));
        let says = |i: usize| said(&before, &now, Some(before[i].at));
        assert_eq!(says(1).as_deref(), Some("b moved to the end, 3 of 3"));
        assert_eq!(says(2).as_deref(), Some("c moved before b, 2 of 3"));
    }

    #[test]
    fn words_and_not_today_are_said() {
        let (mut now, before) = (board("a b c"), board("a b c"));
        now[1].off = true;
        assert_eq!(said(&before, &now, None).as_deref(), Some("b: not today"));
        assert_eq!(
            said(&now, &before, None).as_deref(),
            Some("b: today after all")
        );
        now[1].off = false;
        "round seats".clone_into(&mut now[1].label);
        assert_eq!(
            said(&before, &now, None).as_deref(),
            Some("b is now round seats")
        );
    }
}
