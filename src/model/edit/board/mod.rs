//! Edits of one board by hand.
//!
//! Whatever is meant, the order the person made is what the board shows afterwards: every edit
//! works out the wanted order first and then writes placements that give it (see `arrange.rs`).

mod content;
mod restore;

use std::collections::BTreeSet;
use std::sync::Arc;

use super::arrange::{arrange, keep};
use super::session::{find, find_mut};
use super::{BoardEdit, Made, Refused, fresh};
use crate::model::board::{self, Rows};
use crate::model::club::Club;
use crate::model::hand::{Asked, Content, HandChanges};
use crate::model::ids::{OwnId, ParticipantId, SessionId, SlotId, StepRef};
use crate::model::limits;
use crate::model::session::Session;

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
    if let BoardEdit::All(edits) = edit {
        let mut made = Made::Nothing;
        for edit in edits {
            made = apply(club, id, who, edit)?;
        }
        return Ok(made);
    }
    let before = session.hand_of(who).cloned().unwrap_or_default();
    let rows = board::rows(club, &session, who, &before);
    let mut desk = Desk {
        order: board::order(&rows, &before),
        club,
        session: &session,
        who,
        rows,
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
    who: ParticipantId,
    /// What stands on it before the edit.
    rows: Rows,
    /// In which order.
    order: Vec<StepRef>,
    hand: HandChanges,
}

impl Desk<'_> {
    fn change(&mut self, edit: &BoardEdit) -> Result<Made, Refused> {
        match edit {
            BoardEdit::Insert(content, at) => return self.insert(content, *at),
            BoardEdit::Move(steps, to) => self.put(steps, *to)?,
            BoardEdit::Replace(step, content) => self.replace(*step, content)?,
            BoardEdit::Relabel(step, words) => self.relabel(*step, words)?,
            BoardEdit::TakeOff(step) => self.take_off(*step)?,
            BoardEdit::NotToday(step, instead) => self.not_today(*step, instead.as_ref())?,
            BoardEdit::DoToday(step) => self.do_today(*step)?,
            BoardEdit::Dry(part) => self.dry(*part),
            BoardEdit::Offer(step, options) => self.offer(*step, options)?,
            BoardEdit::WithGroup(slot, with) => self.with_group(*slot, *with)?,
            BoardEdit::Settle(asked, keep) => return self.settle(asked, *keep),
            BoardEdit::LetGo(step) => self.let_go(*step)?,
            BoardEdit::Restore(step) => self.restore(*step)?,
            BoardEdit::RestoreAll => self.hand = HandChanges::default(),
            // Each of them is applied to the board that the one before made.
            BoardEdit::All(_) => {}
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
        self.arrange(&wanted, &[StepRef::Own(id)]);
        Ok(Made::Own(id))
    }

    /// What stands beside a row goes along when the row is moved.
    fn put(&mut self, steps: &[StepRef], to: usize) -> Result<(), Refused> {
        let mut places = BTreeSet::new();
        for step in steps {
            places.insert(self.position(*step)?);
        }
        let mut group: Vec<StepRef> = Vec::new();
        for at in places {
            for s in self.group(self.order[at], at) {
                if !group.contains(&s) {
                    group.push(s);
                }
            }
        }
        let mut wanted = self.order.clone();
        wanted.retain(|s| !steps.contains(s));
        let to = to.min(wanted.len());
        let next = wanted[to..].iter().find(|s| !group.contains(s)).copied();
        wanted.retain(|s| !group.contains(s));
        let at = next.and_then(|n| wanted.iter().position(|s| *s == n));
        let at = at.unwrap_or(wanted.len());
        wanted.splice(at..at, group.iter().copied());
        if wanted != self.order {
            self.arrange(&wanted, &group);
        }
        Ok(())
    }

    /// A row with what stands beside it in one piece; anything else alone.
    fn group(&self, step: StepRef, at: usize) -> Vec<StepRef> {
        let belongs = |s: &StepRef| {
            let row = self.rows.rows.iter().find(|r| r.step.at == *s);
            row.is_some_and(|r| r.beside == Some(step))
        };
        let before = self.order[..at].iter().rev().take_while(|s| belongs(s));
        let after = self.order[at + 1..].iter().take_while(|s| belongs(s));
        let first = at - before.count();
        self.order[first..=at + after.count()].to_vec()
    }

    fn with_group(&mut self, slot: SlotId, with: bool) -> Result<(), Refused> {
        if self.session.slot(slot).is_none() {
            return Err(Refused::gone("row of the timetable"));
        }
        if with {
            self.hand.with_group.insert(slot);
        } else {
            self.hand.with_group.remove(&slot);
        }
        Ok(())
    }

    fn settle(&mut self, asked: &Asked, keep: bool) -> Result<Made, Refused> {
        let at = self.hand.asked.iter().position(|a| a == asked);
        let Some(at) = at else {
            return Err(Refused::gone("question"));
        };
        let asked = self.hand.asked.remove(at);
        match asked {
            Asked::RowGone {
                shown,
                options,
                after,
                ..
            } if keep => {
                let before = after.iter().find_map(|a| self.position(*a).ok());
                let made = self.insert(&shown, before.map_or(0, |b| b + 1))?;
                if let (Made::Own(id), false) = (made, options.is_empty()) {
                    self.hand.choices.insert(StepRef::Own(id), options);
                }
                return Ok(made);
            }
            Asked::OtherWords { slot, words, .. } if keep => {
                self.hand.labels.insert(StepRef::Slot(slot), words);
            }
            Asked::OtherActivity { slot, .. } if !keep => {
                let step = StepRef::Slot(slot);
                self.hand.replaced.remove(&step);
                self.hand.replaced.remove(&StepRef::Instead(slot));
                self.hand.not_today.remove(&step);
                self.hand.choices.remove(&step);
            }
            _ => {}
        }
        Ok(Made::Nothing)
    }

    /// Takes back what is asked about a row; `all` also what is asked about its words.
    fn asked_about(&mut self, slot: SlotId, all: bool) {
        self.hand.asked.retain(|a| match a {
            Asked::OtherActivity { slot: s, .. } => *s != slot,
            Asked::OtherWords { slot: s, .. } => !all || *s != slot,
            Asked::RowGone { .. } => true,
        });
    }

    fn let_go(&mut self, step: StepRef) -> Result<(), Refused> {
        if self.order.contains(&step) || !self.hand.touched().contains(&step) {
            return Err(Refused::gone("change"));
        }
        self.hand.forget(step);
        Ok(())
    }

    fn position(&self, step: StepRef) -> Result<usize, Refused> {
        let at = self.order.iter().position(|s| *s == step);
        at.ok_or_else(|| Refused::gone("step"))
    }

    fn checked(&self, content: &Content) -> Result<Content, Refused> {
        checked(self.club, content)
    }

    /// The wanted order speaks of the steps that are there after the change.
    fn arrange(&mut self, wanted: &[StepRef], touched: &[StepRef]) {
        let rows = board::rows(self.club, self.session, self.who, &self.hand);
        let there: BTreeSet<StepRef> = rows.rows.iter().map(|r| r.step.at).collect();
        let mut wanted: Vec<StepRef> = wanted
            .iter()
            .copied()
            .filter(|s| matches!(s, StepRef::Own(_)) || there.contains(s))
            .collect();
        // A step that came back with the change stands where the rows have it.
        let missing: Vec<StepRef> = board::order(&rows, &self.hand)
            .into_iter()
            .filter(|s| !wanted.contains(s))
            .collect();
        for step in missing {
            let row = rows.rows.iter().position(|r| r.step.at == step);
            let before = row.and_then(|i| {
                let earlier = rows.rows[..i].iter().rev();
                earlier
                    .map(|r| r.step.at)
                    .find_map(|s| wanted.iter().position(|w| *w == s))
            });
            wanted.insert(before.map_or(0, |b| b + 1), step);
        }
        arrange(&rows, &mut self.hand, &wanted, touched);
        // What stands beside a part of the day may stand elsewhere now that a row was moved.
        let rows = board::rows(self.club, self.session, self.who, &self.hand);
        keep(&rows, &mut self.hand, &wanted);
    }
}

/// Content made tidy, with the words and picture of the club's activity if it is one.
pub(super) fn checked(club: &Club, content: &Content) -> Result<Content, Refused> {
    let mut content = limits::tidy_content(content);
    if let Some(id) = content.activity {
        let Some(activity) = club.activity(id) else {
            return Err(Refused::gone("activity"));
        };
        content = Content::of(activity);
    }
    limits::content(&content)?;
    Ok(content)
}
