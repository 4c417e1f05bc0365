//! What changed on the board that is shown, in a sentence for whoever hears the window: "Dig moved
//! before Snack, 3 of 7".

use egui::accesskit::Live;
use egui::{Id, Rect, Role, Sense, Ui, WidgetInfo, vec2};

use crate::model::board::{Board, StepState};
use crate::model::edit::and_more;
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
        ([i, ..], []) => Some(format!(
            "{} added, {} of {}",
            and_more(&now[*i].label, fresh.len()),
            i + 1,
            now.len()
        )),
        ([], [line, ..]) => Some(format!("{} taken off", and_more(&line.label, gone.len()))),
        ([i], [line]) => Some(format!("{} in place of {}", now[*i].label, line.label)),
        _ => Some(format!("The board changed. It has {} steps", now.len())),
    }
}

/// Steps that went elsewhere together: as few as can be, with the chosen one among them if that can
/// be.
fn moved(before: &[Line], now: &[Line], chosen: Option<StepRef>) -> Option<String> {
    let order = |list: &[Line]| list.iter().map(|l| l.at).collect::<Vec<_>>();
    let (old, new) = (order(before), order(now));
    if old == new {
        return None;
    }
    let together = |block: &&[StepRef]| {
        let part = |all: &[StepRef], within: bool| -> Vec<StepRef> {
            let kept = all.iter().filter(|s| block.contains(s) == within);
            kept.copied().collect()
        };
        part(&old, true) == **block && part(&old, false) == part(&new, false)
    };
    let found = (1..new.len()).find_map(|n| {
        let all: Vec<&[StepRef]> = new.windows(n).filter(together).collect();
        let chosen = all.iter().find(|b| chosen.is_some_and(|c| b.contains(&c)));
        chosen.or(all.first()).map(|b| (b[0], n))
    });
    let Some((first, n)) = found else {
        return Some("The steps are in another order".to_owned());
    };
    let i = new.iter().position(|at| *at == first)?;
    let (what, count) = (and_more(&now[i].label, n), now.len());
    Some(match now.get(i + n) {
        Some(next) => format!("{what} moved before {}, {} of {count}", next.label, i + 1),
        None => format!("{what} moved to the end, {} of {count}", i + 1),
    })
}

/// What changed in a step; of several that changed in the same way, how many.
fn changed(before: &[Line], now: &[Line]) -> Option<String> {
    let all: Vec<(&Line, &Line)> = before.iter().zip(now).filter(|(a, b)| a != b).collect();
    let (old, new) = all.first()?;
    let way = |(a, b): &(&Line, &Line)| (a.off, b.off);
    let alike = all.iter().filter(|c| way(c) == (old.off, new.off)).count();
    let what = and_more(&new.label, alike);
    Some(match (old.off, new.off) {
        (false, true) => format!("{what}: not today"),
        (true, false) => format!("{what}: today after all"),
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
    fn what_happened_to_several_steps_is_said_with_how_many() {
        let (before, now) = (board("a b c d e"), board("a d b c e"));
        let says = |i: usize| said(&before, &now, Some(before[i].at));
        assert_eq!(says(3).as_deref(), Some("d moved before b, 2 of 5"));
        assert_eq!(
            heard("a b c d e", "c d a b e").as_deref(),
            Some("c and 1 more moved before a, 1 of 5")
        );
        // Steps that stood apart come to stand together.
        assert_eq!(
            heard("a b c d e", "b d e a c").as_deref(),
            Some("a and 1 more moved to the end, 4 of 5")
        );
        assert_eq!(
            heard("a b c", "a x y b c").as_deref(),
            Some("x and 1 more added, 2 of 5")
        );
        assert_eq!(
            heard("a b c", "b").as_deref(),
            Some("a and 1 more taken off")
        );
        let (before, mut now) = (board("a b c"), board("a b c"));
        now[0].off = true;
        now[2].off = true;
        assert_eq!(
            said(&before, &now, None).as_deref(),
            Some("a and 1 more: not today")
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
