//! One step as the timetable has it again: its words, what it shows, and its place.

use super::Desk;
use crate::model::board;
use crate::model::edit::Refused;
use crate::model::ids::StepRef;

impl Desk<'_> {
    /// A timetable step goes back before the next one that was not moved; nothing else moves. Of an
    /// own step only its words go back: all else about it is its own.
    pub(super) fn restore(&mut self, step: StepRef) -> Result<(), Refused> {
        let from = self.position(step)?;
        self.hand.labels.remove(&step);
        self.hand.choices.remove(&step);
        if matches!(step, StepRef::Own(_)) {
            return Ok(());
        }
        self.hand.replaced.remove(&step);
        self.hand.not_today.remove(&step);
        let mut group = self.group(step, from);
        let row = |s: &StepRef| self.rows.rows.iter().position(|r| r.step.at == *s);
        // What went along with it goes back with it, wherever it stands now.
        let along = self.rows.rows.iter().filter(|r| {
            let at = r.step.at;
            r.beside == Some(step) && !self.hand.is_placed(at) && !group.contains(&at)
        });
        let along: Vec<StepRef> = along.map(|r| r.step.at).collect();
        group.extend(along);
        group.sort_by_key(row);
        if let StepRef::Slot(id) = step {
            self.hand.forget_beside(id);
            self.hand.with_group.remove(&id);
            self.asked_about(id, true);
        }
        if !group.iter().any(|s| self.hand.is_placed(*s)) {
            return Ok(());
        }
        self.hand.placed.retain(|p| !group.contains(&p.step));
        let mut wanted = self.order.clone();
        wanted.retain(|s| !group.contains(s));
        let rows = &self.rows.rows;
        // What goes along with a row that was moved stands elsewhere itself.
        let there = |r: &&board::Row| {
            let at = r.step.at;
            let along = r.beside.is_some_and(|b| self.hand.is_placed(b));
            !group.contains(&at) && !self.hand.is_placed(at) && !along
        };
        let next = rows
            .iter()
            .skip_while(|r| r.step.at != step)
            .skip(1)
            .find(there)
            .map(|r| r.step.at);
        let to = self.beside_row(step, &wanted);
        let to = to.or_else(|| next.and_then(|n| wanted.iter().position(|s| *s == n)));
        let to = to.unwrap_or(wanted.len());
        wanted.splice(to..to, group.iter().copied());
        self.settle_beside_parts(&mut wanted);
        self.arrange(&wanted, &group);
        Ok(())
    }

    /// Where a step that belongs beside a row goes when that row is on the board, wherever it stands
    /// now: among what belongs there too, in the order of the rows.
    fn beside_row(&self, step: StepRef, order: &[StepRef]) -> Option<usize> {
        let place = |s: StepRef| self.rows.rows.iter().position(|r| r.step.at == s);
        let own = place(step)?;
        let row = self.rows.rows[own].beside?;
        let at = order.iter().position(|s| *s == row)?;
        let between = |s: &&StepRef, from: usize, to: usize| {
            let there = place(**s);
            there.is_some_and(|i| from < i && i < to && self.rows.rows[i].beside == Some(row))
        };
        let of_row = place(row)?;
        Some(if own < of_row {
            let nearer = order[..at].iter().rev();
            at - nearer.take_while(|s| between(s, own, of_row)).count()
        } else {
            let nearer = order[at + 1..].iter();
            at + 1 + nearer.take_while(|s| between(s, of_row, own)).count()
        })
    }

    /// What stands beside a part of the day stands where its first or last row is now, unless it
    /// was moved by hand.
    fn settle_beside_parts(&self, wanted: &mut Vec<StepRef>) {
        let rows = board::rows(self.club, self.session, self.who, &self.hand);
        let still: Vec<StepRef> = rows
            .rows
            .iter()
            .map(|r| r.step.at)
            .filter(|s| !self.hand.is_placed(*s))
            .collect();
        for (i, step) in still.iter().enumerate().rev() {
            if !matches!(step, StepRef::Standing(_, None)) {
                continue;
            }
            wanted.retain(|s| s != step);
            let next = still[i + 1..].iter().find(|s| wanted.contains(s));
            let at = next.and_then(|n| wanted.iter().position(|s| s == n));
            wanted.insert(at.unwrap_or(wanted.len()), *step);
        }
    }
}
