//! What stands on a board before anything is moved by hand: the rows of the timetable with standing
//! changes and changes by hand in them, what comes instead of what is not today, and the steps that
//! stand beside them.

use std::collections::BTreeSet;

use super::{By, Step, StepState, UNKNOWN_ACTIVITY, shown};
use crate::model::club::Club;
use crate::model::hand::{Content, HandChanges};
use crate::model::ids::{ActivityId, PartId, ParticipantId, SlotId, StepRef, SymbolId};
use crate::model::session::{Session, Slot};
use crate::model::standing::{Beside, Side, Standing, StandingStep};

/// All steps but own ones, in the order of the timetable.
pub(crate) struct Rows {
    pub rows: Vec<Row>,
    /// Rows of the timetable that are not on the board.
    pub left_out: Vec<SlotId>,
    /// Rows for whoever waits, where this participant does not.
    pub spare: Vec<SlotId>,
}

/// A step and what it stands beside.
pub(crate) struct Row {
    pub step: Step,
    /// The row of the timetable it goes along with.
    pub beside: Option<StepRef>,
    /// On which side of it.
    pub side: Side,
}

/// The rows of a participant's board.
pub(crate) fn rows(club: &Club, session: &Session, who: ParticipantId, hand: &HandChanges) -> Rows {
    let none = Standing::default();
    let person = club.participant(who);
    let maker = Maker {
        club,
        session,
        hand,
        standing: person.map_or(&none, |p| &p.standing),
    };
    let (slots, spare) = session.rows_of(who);
    let mut left_out = Vec::new();
    let mut pairs: Vec<Pair> = Vec::with_capacity(slots.len());
    for slot in slots {
        match maker.pair(slot) {
            Some(pair) => pairs.push(pair),
            None => left_out.push(slot.id),
        }
    }
    Rows {
        rows: maker.with_standing_steps(pairs),
        left_out,
        spare,
    }
}

/// A row of the timetable and what comes instead of it.
struct Pair {
    slot: SlotId,
    main: Step,
    instead: Option<Step>,
}

struct Maker<'a> {
    club: &'a Club,
    session: &'a Session,
    hand: &'a HandChanges,
    standing: &'a Standing,
}

impl Maker<'_> {
    /// Nothing when the participant has no part in this row.
    fn pair(&self, slot: &Slot) -> Option<Pair> {
        let at = StepRef::Slot(slot.id);
        let group = self.hand.with_group.contains(&slot.id);
        let by_hand = self.hand.replaced.get(&at);
        if by_hand.is_none() && !group && self.standing.left_out.contains(&slot.activity) {
            return None;
        }
        let mut main = self.plain(slot);
        let usual = main.label.clone();
        let always = self.standing.swaps.get(&slot.activity).filter(|_| !group);
        let swap = by_hand.map(|c| (c, By::Hand));
        if let Some((content, by)) = swap.or(always.map(|c| (c, By::Standing))) {
            // The timetable may have come round to what was put in by hand: then nothing differs.
            if content.activity != Some(slot.activity) {
                show(&mut main, shown(self.club, content));
                main.state = StepState::Swapped { instead_of: usual };
                main.by = by;
                main.options.clear();
            }
        }
        if let Some(options) = self.hand.choices.get(&at) {
            main.options = options.iter().map(|o| shown(self.club, o)).collect();
            main.by = By::Hand;
        }
        let instead = self.call_off(slot, &mut main);
        Some(Pair {
            slot: slot.id,
            main,
            instead,
        })
    }

    fn plain(&self, slot: &Slot) -> Step {
        let activity = self.club.activity(slot.activity);
        let label = activity.map_or_else(|| UNKNOWN_ACTIVITY.to_owned(), |a| a.label.clone());
        let symbol = activity.map_or_else(|| SymbolId::new(""), |a| a.symbol.clone());
        Step {
            minutes: Some(self.session.minutes_of(slot)),
            options: self.options(&slot.options),
            activity: Some(slot.activity),
            ..Step::plain(StepRef::Slot(slot.id), symbol, label, slot.part)
        }
    }

    /// The group's options with the participant's standing changes in them.
    fn options(&self, options: &[Content]) -> Vec<Content> {
        let out = |c: &&Content| {
            c.activity
                .is_some_and(|a| self.standing.left_out.contains(&a))
        };
        let swapped = |c: &Content| {
            let swap = c.activity.and_then(|a| self.standing.swaps.get(&a));
            shown(self.club, swap.unwrap_or(c))
        };
        options.iter().filter(|c| !out(c)).map(swapped).collect()
    }

    /// Marks a step as not today where it is, and says what comes instead.
    fn call_off(&self, slot: &Slot, main: &mut Step) -> Option<Step> {
        let at = StepRef::Slot(slot.id);
        let (content, by) = if let Some(instead) = self.hand.not_today.get(&at) {
            (instead.clone(), By::Hand)
        } else {
            let off = slot.off?;
            let concerned = main.activity == Some(slot.activity)
                || self.in_water(Some(slot.activity)) && self.in_water(main.activity);
            if !concerned {
                return None;
            }
            let content = off.instead.map(|id| self.content_of(id));
            (content, main.by)
        };
        let of = main.label.clone();
        main.state = StepState::NotToday;
        main.by = by;
        main.options.clear();
        let at = StepRef::Instead(slot.id);
        let by_hand = self.hand.replaced.get(&at);
        let (content, by) = match by_hand {
            Some(content) => (shown(self.club, content), By::Hand),
            None => self.as_standing(&content?, by)?,
        };
        let mut instead = Step {
            activity: content.activity,
            state: StepState::Instead { of },
            by,
            ..Step::plain(at, content.symbol, content.label, slot.part)
        };
        if let Some(options) = self.hand.choices.get(&at) {
            instead.options = options.iter().map(|o| shown(self.club, o)).collect();
        }
        Some(instead)
    }

    /// What comes instead follows the standing changes too, unless it was put there by hand.
    fn as_standing(&self, content: &Content, by: By) -> Option<(Content, By)> {
        if by == By::Hand {
            return Some((shown(self.club, content), by));
        }
        if content
            .activity
            .is_some_and(|a| self.standing.left_out.contains(&a))
        {
            return None;
        }
        let swap = content.activity.and_then(|a| self.standing.swaps.get(&a));
        Some(match swap {
            Some(swap) => (shown(self.club, swap), By::Standing),
            None => (shown(self.club, content), by),
        })
    }

    fn content_of(&self, id: ActivityId) -> Content {
        shown(
            self.club,
            &Content {
                activity: Some(id),
                symbol: SymbolId::new(""),
                label: String::new(),
            },
        )
    }

    fn in_water(&self, activity: Option<ActivityId>) -> bool {
        activity.is_some_and(|id| self.club.in_water(id))
    }

    /// Puts the standing steps beside what they belong to.
    fn with_standing_steps(&self, pairs: Vec<Pair>) -> Vec<Row> {
        let ends = self.ends_of_parts(&pairs);
        let mut rows = Vec::with_capacity(pairs.len() + self.standing.own.len());
        for pair in pairs {
            let anchor = StepRef::Slot(pair.slot);
            let part = pair.main.part;
            let mut before = Vec::new();
            let mut after = Vec::new();
            for own in &self.standing.own {
                let Some(beside) = self.belongs(own, &pair, &ends) else {
                    continue;
                };
                let row = Row {
                    step: self.standing_step(own, beside, part),
                    beside: Some(anchor),
                    side: own.side,
                };
                // What belongs to a whole part stands outside of what belongs to one row of it.
                match (own.side, beside) {
                    (Side::Before, None) => before.insert(0, row),
                    (Side::Before, Some(_)) => before.push(row),
                    (Side::After, Some(_)) => {
                        let inner = after.iter().take_while(|r: &&Row| beside_row(r)).count();
                        after.insert(inner, row);
                    }
                    (Side::After, None) => after.push(row),
                }
            }
            rows.append(&mut before);
            rows.push(Row {
                step: pair.main,
                beside: None,
                side: Side::After,
            });
            rows.extend(pair.instead.map(|step| Row {
                step,
                beside: Some(anchor),
                side: Side::After,
            }));
            rows.append(&mut after);
        }
        rows
    }

    /// The first and last row of each part of the day; rows that were moved by hand only where a
    /// part has no others.
    fn ends_of_parts(&self, pairs: &[Pair]) -> BTreeSet<(PartId, Side, SlotId)> {
        let mut ends = BTreeSet::new();
        let parts: BTreeSet<PartId> = pairs.iter().map(|p| p.main.part).collect();
        for part in parts {
            let all: Vec<SlotId> = pairs
                .iter()
                .filter(|p| p.main.part == part)
                .map(|p| p.slot)
                .collect();
            let still: Vec<SlotId> = all
                .iter()
                .copied()
                .filter(|s| !self.hand.is_placed(StepRef::Slot(*s)))
                .collect();
            let rows = if still.is_empty() { &all } else { &still };
            ends.extend(rows.first().map(|s| (part, Side::Before, *s)));
            ends.extend(rows.last().map(|s| (part, Side::After, *s)));
        }
        ends
    }

    /// Whether a standing step stands beside this row, and whether beside it alone.
    fn belongs(
        &self,
        own: &StandingStep,
        pair: &Pair,
        ends: &BTreeSet<(PartId, Side, SlotId)>,
    ) -> Option<Option<SlotId>> {
        let mains = (pair.main.state != StepState::NotToday).then_some(&pair.main);
        let mut done = mains.into_iter().chain(&pair.instead);
        match own.beside {
            Beside::Activity(id) => done
                .any(|s| s.activity == Some(id))
                .then_some(Some(pair.slot)),
            Beside::Water => done
                .any(|s| self.in_water(s.activity))
                .then_some(Some(pair.slot)),
            Beside::Part(part) => ends.contains(&(part, own.side, pair.slot)).then_some(None),
        }
    }

    fn standing_step(&self, own: &StandingStep, beside: Option<SlotId>, part: PartId) -> Step {
        let at = StepRef::Standing(own.id, beside);
        let mut by = By::Standing;
        let content = match self.hand.replaced.get(&at) {
            Some(content) => {
                by = By::Hand;
                content
            }
            None => &own.content,
        };
        let content = shown(self.club, content);
        let not_today = self.hand.not_today.contains_key(&at);
        let options = self.hand.choices.get(&at).map_or(&[][..], |o| o);
        Step {
            activity: content.activity,
            state: if not_today {
                StepState::NotToday
            } else {
                StepState::Own
            },
            by: if not_today { By::Hand } else { by },
            options: options.iter().map(|o| shown(self.club, o)).collect(),
            support: own.support,
            ..Step::plain(at, content.symbol, content.label, part)
        }
    }
}

fn beside_row(row: &Row) -> bool {
    matches!(row.step.at, StepRef::Standing(_, Some(_)))
}

fn show(step: &mut Step, content: Content) {
    step.activity = content.activity;
    step.symbol = content.symbol;
    step.label = content.label;
}
