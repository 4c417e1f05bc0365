//! Edits of one board by hand.
//!
//! Whatever is meant, the order the person made is what the board shows afterwards: every edit
//! works out the wanted order first and then writes placements that give it (see [`arrange`]).

use std::sync::Arc;

use super::session::{find, find_mut};
use super::{BoardEdit, Made, Refused, fresh, shift};
use crate::model::board;
use crate::model::club::Club;
use crate::model::hand::{Content, HandChanges, Placement};
use crate::model::ids::{OwnId, ParticipantId, SessionId, StepRef};
use crate::model::limits;
use crate::model::session::{Session, Slot};

pub(super) fn apply(
    club: &mut Club,
    id: SessionId,
    who: ParticipantId,
    edit: &BoardEdit,
) -> Result<Made, Refused> {
    let session = Arc::clone(find(club, id)?);
    if club.participant(who).is_none() {
        return Err(Refused::gone("participant"));
    }
    let before = session.hand_of(who).cloned().unwrap_or_default();
    let mut desk = Desk {
        club,
        session: &session,
        order: board::order(&session.timetable, &before),
        hand: before.clone(),
    };
    let made = desk.change(edit)?;
    let after = desk.hand;
    if after != before {
        let hand = &mut Arc::make_mut(find_mut(club, id)?).hand;
        if after.is_empty() {
            hand.remove(&who);
        } else {
            hand.insert(who, after);
        }
    }
    Ok(made)
}

/// One board while it is changed.
struct Desk<'a> {
    club: &'a mut Club,
    session: &'a Session,
    /// The order of its steps before the edit.
    order: Vec<StepRef>,
    hand: HandChanges,
}

impl Desk<'_> {
    fn change(&mut self, edit: &BoardEdit) -> Result<Made, Refused> {
        match edit {
            BoardEdit::Insert(content, at) => return self.insert(content, *at),
            BoardEdit::Move(step, to) => self.put(*step, *to)?,
            BoardEdit::Replace(step, content) => self.replace(*step, content)?,
            BoardEdit::Relabel(step, words) => self.relabel(*step, words)?,
            BoardEdit::TakeOff(step) => self.take_off(*step)?,
            BoardEdit::Restore(step) => self.restore(*step)?,
            BoardEdit::RestoreAll => self.hand = HandChanges::default(),
        }
        Ok(Made::Nothing)
    }

    fn insert(&mut self, content: &Content, at: usize) -> Result<Made, Refused> {
        let content = self.checked(content)?;
        let own = self.hand.own.len() + 1;
        limits::count("own steps on this board", own, limits::SLOTS)?;
        let id = OwnId(fresh(self.club)?);
        self.hand.own.insert(id, content);
        let mut wanted = self.order.clone();
        wanted.insert(at.min(wanted.len()), StepRef::Own(id));
        self.arrange(&wanted, Some(StepRef::Own(id)));
        Ok(Made::Own(id))
    }

    fn put(&mut self, step: StepRef, to: usize) -> Result<(), Refused> {
        let from = self.position(step)?;
        let mut wanted = self.order.clone();
        shift(&mut wanted, from, to);
        if wanted != self.order {
            self.arrange(&wanted, Some(step));
        }
        Ok(())
    }

    /// New content comes with its own words, and is there to be done.
    fn replace(&mut self, step: StepRef, content: &Content) -> Result<(), Refused> {
        self.position(step)?;
        let content = self.checked(content)?;
        match step {
            StepRef::Own(id) => {
                self.hand.own.insert(id, content);
            }
            StepRef::Slot(id) => {
                let own = self.session.slot(id).map(|s| s.activity);
                if content.activity.is_some() && content.activity == own {
                    self.hand.replaced.remove(&id);
                } else {
                    self.hand.replaced.insert(id, content);
                }
                self.hand.not_today.remove(&id);
            }
        }
        self.hand.labels.remove(&step);
        Ok(())
    }

    /// The step's own words, or none at all, take the change back.
    fn relabel(&mut self, step: StepRef, words: &str) -> Result<(), Refused> {
        self.position(step)?;
        let words = limits::tidy_line(words);
        limits::text("The label", &words)?;
        if let StepRef::Own(id) = step
            && let Some(content) = self.hand.own.get_mut(&id)
            && content.activity.is_none()
        {
            // Nothing but these words says what the step is.
            limits::filled("The label", &words)?;
            content.label = words;
            self.hand.labels.remove(&step);
            return Ok(());
        }
        let own = board::own_words(self.club, self.session, &self.hand, step);
        if words.is_empty() || own.as_deref() == Some(&*words) {
            self.hand.labels.remove(&step);
        } else {
            self.hand.labels.insert(step, words);
        }
        Ok(())
    }

    fn take_off(&mut self, step: StepRef) -> Result<(), Refused> {
        self.position(step)?;
        match step {
            StepRef::Slot(id) => {
                self.hand.not_today.insert(id);
            }
            StepRef::Own(_) => {
                let mut wanted = self.order.clone();
                wanted.retain(|s| *s != step);
                self.hand.forget(step);
                self.arrange(&wanted, None);
            }
        }
        Ok(())
    }

    /// A timetable step goes back before the next one that was not moved; nothing else moves. Of an
    /// own step only its words go back: all else about it is its own.
    fn restore(&mut self, step: StepRef) -> Result<(), Refused> {
        let from = self.position(step)?;
        self.hand.labels.remove(&step);
        let StepRef::Slot(id) = step else {
            return Ok(());
        };
        self.hand.replaced.remove(&id);
        self.hand.not_today.remove(&id);
        if !self.is_placed(step) {
            return Ok(());
        }
        self.hand.placed.retain(|p| p.step != step);
        let mut wanted = self.order.clone();
        wanted.remove(from);
        let rows = &self.session.timetable;
        let next = rows
            .iter()
            .skip_while(|s| s.id != id)
            .skip(1)
            .map(|s| StepRef::Slot(s.id))
            .find(|s| !self.is_placed(*s));
        let to = next.and_then(|n| wanted.iter().position(|s| *s == n));
        wanted.insert(to.unwrap_or(wanted.len()), step);
        self.arrange(&wanted, Some(step));
        Ok(())
    }

    fn position(&self, step: StepRef) -> Result<usize, Refused> {
        let at = self.order.iter().position(|s| *s == step);
        at.ok_or_else(|| Refused::gone("step"))
    }

    fn is_placed(&self, step: StepRef) -> bool {
        self.hand.placed.iter().any(|p| p.step == step)
    }

    fn checked(&self, content: &Content) -> Result<Content, Refused> {
        let mut content = limits::tidy_content(content);
        if let Some(id) = content.activity {
            let Some(activity) = self.club.activity(id) else {
                return Err(Refused::gone("activity"));
            };
            content.label.clone_from(&activity.label);
            content.symbol.clone_from(&activity.symbol);
        }
        limits::content(&content)?;
        Ok(content)
    }

    fn arrange(&mut self, wanted: &[StepRef], touched: Option<StepRef>) {
        arrange(&self.session.timetable, &mut self.hand, wanted, touched);
    }
}

/// Rewrites the placements so that the board shows exactly the wanted order.
///
/// Steps without a placement are timetable steps, and stand among each other as in the timetable.
/// Every other step gets a placement, in the order of the board, behind all that stands before it.
/// When one is taken up its neighbour before is already there, so it lands right behind it: the
/// order comes out as wanted, whatever it is. Steps moved earlier keep their placement; the one
/// that was touched loses it when it is back among the unmoved ones where the timetable has it.
fn arrange(
    timetable: &[Slot],
    hand: &mut HandChanges,
    wanted: &[StepRef],
    touched: Option<StepRef>,
) {
    let mut still: Vec<StepRef> = timetable
        .iter()
        .map(|s| StepRef::Slot(s.id))
        .filter(|s| !hand.placed.iter().any(|p| p.step == *s) || touched == Some(*s))
        .collect();
    if let Some(step @ StepRef::Slot(_)) = touched
        && !wanted.iter().filter(|s| still.contains(s)).eq(&still)
    {
        still.retain(|s| *s != step);
    }
    let mut before: Vec<StepRef> = Vec::with_capacity(wanted.len());
    hand.placed.clear();
    for step in wanted {
        if !still.contains(step) {
            hand.placed.push(Placement {
                step: *step,
                after: before.iter().rev().copied().collect(),
            });
        }
        before.push(*step);
    }
    debug_assert_eq!(board::order(timetable, hand), wanted);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ids::{ActivityId, PartId, SlotId, SymbolId};

    fn slot(id: u32) -> Slot {
        Slot {
            id: SlotId(id),
            activity: ActivityId(0),
            part: PartId(0),
            minutes: 5,
        }
    }

    /// Every order of five steps, one of them own, comes out as wanted from every first move.
    #[test]
    fn every_order_can_be_made() {
        let rows: Vec<Slot> = (0..4).map(slot).collect();
        let mut hand = HandChanges::default();
        let content = Content {
            activity: None,
            symbol: SymbolId::new(""),
            label: "Quiet".into(),
        };
        hand.own.insert(OwnId(9), content);
        let all: Vec<StepRef> = (0..4)
            .map(|i| StepRef::Slot(SlotId(i)))
            .chain([StepRef::Own(OwnId(9))])
            .collect();
        let mut orders = vec![vec![]];
        for _ in 0..all.len() {
            orders = orders
                .iter()
                .flat_map(|o: &Vec<StepRef>| {
                    all.iter().filter(|s| !o.contains(s)).map(|s| {
                        let mut longer = o.clone();
                        longer.push(*s);
                        longer
                    })
                })
                .collect();
        }
        assert_eq!(orders.len(), 120);
        for order in &orders {
            let mut hand = hand.clone();
            // One step after another is put where it belongs, as a person would.
            for (to, step) in order.iter().enumerate() {
                let mut wanted = board::order(&rows, &hand);
                wanted.retain(|s| s != step);
                wanted.insert(to, *step);
                arrange(&rows, &mut hand, &wanted, Some(*step));
                assert_eq!(board::order(&rows, &hand), wanted);
            }
            assert_eq!(&board::order(&rows, &hand), order);
        }
    }
}
