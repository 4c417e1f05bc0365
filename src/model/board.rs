//! A board: what one participant's day looks like, derived from the timetable and the hand changes.

use std::collections::{BTreeMap, BTreeSet};

use super::club::Club;
use super::hand::{Content, HandChanges};
use super::ids::{ActivityId, PartId, ParticipantId, SlotId, StepRef, SymbolId};
use super::session::{Session, Slot};

/// One participant's visual schedule for one session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Board {
    /// Whose it is.
    pub participant: ParticipantId,
    /// The steps in order, those of "not today" among them.
    pub steps: Vec<Step>,
}

impl Board {
    /// Where a step stands, counted from zero.
    pub fn position(&self, step: StepRef) -> Option<usize> {
        self.steps.iter().position(|s| s.at == step)
    }

    /// How many steps differ from the timetable.
    pub fn differences(&self) -> usize {
        self.steps.iter().filter(|s| s.differs()).count()
    }
}

/// One item on a board.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// What it came from; also its name for edits.
    pub at: StepRef,
    /// The activity it shows, if it is one; the club may not know it (see [`UNKNOWN_ACTIVITY`]).
    pub activity: Option<ActivityId>,
    /// The picture.
    pub symbol: SymbolId,
    /// The words under the picture.
    pub label: String,
    /// The part of the day.
    pub part: PartId,
    /// Minutes, for timetable steps.
    pub minutes: Option<u32>,
    /// How it differs from the timetable.
    pub state: StepState,
    /// Whether it stands elsewhere than in the timetable.
    pub moved: bool,
    /// Whether its words were changed by hand.
    pub relabelled: bool,
}

impl Step {
    /// Whether anything about it differs from the timetable.
    pub fn differs(&self) -> bool {
        self.moved || self.relabelled || self.state != StepState::AsTimetable
    }
}

/// How a step differs from the timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StepState {
    /// It does not.
    AsTimetable,
    /// It stands in for something else, whose words these are.
    Swapped {
        /// The words of the timetable's activity.
        instead_of: String,
    },
    /// It is the participant's own.
    Own,
    /// It is in the timetable and not done today; it stays visible.
    NotToday,
}

/// The words of a step whose activity is not in the club. No edit leads there; a check can find
/// such a step by its activity, which the club does not know.
pub const UNKNOWN_ACTIVITY: &str = "Unknown activity";

/// The board of a participant. Pure: the same club and session give the same board. Every row of
/// the timetable and every own step stands on it exactly once.
pub fn derive(club: &Club, session: &Session, who: ParticipantId) -> Board {
    let none = HandChanges::default();
    let hand = session.hand_of(who).unwrap_or(&none);
    let order = order(&session.timetable, hand);
    let slots: BTreeMap<SlotId, &Slot> = session.timetable.iter().map(|s| (s.id, s)).collect();
    let moved = moved(&session.timetable, hand, &order);
    let mut steps: Vec<Step> = Vec::with_capacity(order.len());
    for at in order {
        let before = steps.last().map(|s| s.part);
        let step = match at {
            StepRef::Slot(id) => slots.get(&id).map(|slot| slot_step(club, slot, hand)),
            StepRef::Own(id) => hand.own.get(&id).map(|c| own_step(club, at, c, before)),
        };
        steps.extend(step.map(|s| relabel(s, hand)));
    }
    for step in &mut steps {
        step.moved = moved.contains(&step.at);
    }
    settle_leading_own_steps(club, &mut steps);
    Board {
        participant: who,
        steps,
    }
}

/// The order of a board: the timetable's, then each placement in turn. An own step that was never
/// placed stands at the end; a step named twice stands once.
pub(crate) fn order(timetable: &[Slot], hand: &HandChanges) -> Vec<StepRef> {
    let placed: BTreeSet<StepRef> = hand.placed.iter().map(|p| p.step).collect();
    let slots: BTreeSet<SlotId> = timetable.iter().map(|s| s.id).collect();
    let mut done: BTreeSet<StepRef> = BTreeSet::new();
    let mut order: Vec<StepRef> = timetable
        .iter()
        .map(|s| StepRef::Slot(s.id))
        .filter(|s| !placed.contains(s) && done.insert(*s))
        .collect();
    for p in &hand.placed {
        let known = match p.step {
            StepRef::Slot(id) => slots.contains(&id),
            StepRef::Own(id) => hand.own.contains_key(&id),
        };
        if known && done.insert(p.step) {
            let anchor = p
                .after
                .iter()
                .filter(|a| done.contains(a))
                .find_map(|a| order.iter().position(|o| o == a));
            order.insert(anchor.map_or(0, |i| i + 1), p.step);
        }
    }
    let lost = hand.own.keys().map(|id| StepRef::Own(*id));
    order.extend(lost.filter(|s| !done.contains(s)));
    order
}

/// The timetable steps put elsewhere by hand: those with another one on the wrong side of them.
fn moved(timetable: &[Slot], hand: &HandChanges, order: &[StepRef]) -> BTreeSet<StepRef> {
    if hand.placed.is_empty() {
        return BTreeSet::new();
    }
    let row: BTreeMap<StepRef, usize> = timetable
        .iter()
        .enumerate()
        .map(|(i, s)| (StepRef::Slot(s.id), i))
        .collect();
    let rows: Vec<(StepRef, usize)> = order
        .iter()
        .filter_map(|s| row.get(s).map(|i| (*s, *i)))
        .collect();
    let crossed = |at: usize| {
        let own = rows[at].1;
        rows[..at].iter().any(|(_, i)| *i > own) || rows[at..].iter().any(|(_, i)| *i < own)
    };
    rows.iter()
        .enumerate()
        .filter(|(at, (s, _))| hand.placed.iter().any(|p| p.step == *s) && crossed(*at))
        .map(|(_, (s, _))| *s)
        .collect()
}

/// What a step says when its words were not changed by hand.
pub(crate) fn own_words(
    club: &Club,
    session: &Session,
    hand: &HandChanges,
    at: StepRef,
) -> Option<String> {
    let step = match at {
        StepRef::Slot(id) => slot_step(club, session.slot(id)?, hand),
        StepRef::Own(id) => own_step(club, at, hand.own.get(&id)?, None),
    };
    Some(step.label)
}

fn slot_step(club: &Club, slot: &Slot, hand: &HandChanges) -> Step {
    let activity = club.activity(slot.activity);
    let label = activity.map_or_else(|| UNKNOWN_ACTIVITY.to_owned(), |a| a.label.clone());
    let symbol = activity.map_or_else(|| SymbolId::new(""), |a| a.symbol.clone());
    let mut step = Step {
        at: StepRef::Slot(slot.id),
        activity: Some(slot.activity),
        symbol,
        label: label.clone(),
        part: slot.part,
        minutes: Some(slot.minutes),
        state: StepState::AsTimetable,
        moved: false,
        relabelled: false,
    };
    // The timetable may have come round to what was put in by hand: then nothing differs.
    if let Some(content) = hand.replaced.get(&slot.id)
        && content.activity != Some(slot.activity)
    {
        show(&mut step, club, content);
        step.state = StepState::Swapped { instead_of: label };
    }
    if hand.not_today.contains(&slot.id) {
        step.state = StepState::NotToday;
    }
    step
}

/// An own step belongs to the part of the step before it.
fn own_step(club: &Club, at: StepRef, content: &Content, before: Option<PartId>) -> Step {
    let mut step = Step {
        at,
        activity: None,
        symbol: content.symbol.clone(),
        label: String::new(),
        part: before.unwrap_or(PartId(0)),
        minutes: None,
        state: StepState::Own,
        moved: false,
        relabelled: false,
    };
    show(&mut step, club, content);
    step
}

/// Puts other content on a step; a club's activity keeps following the club's words and picture.
fn show(step: &mut Step, club: &Club, content: &Content) {
    let activity = content.activity.and_then(|id| club.activity(id));
    step.activity = content.activity;
    step.symbol = activity.map_or_else(|| content.symbol.clone(), |a| a.symbol.clone());
    step.label = activity.map_or_else(|| content.label.clone(), |a| a.label.clone());
    if step.label.is_empty() {
        UNKNOWN_ACTIVITY.clone_into(&mut step.label);
    }
}

fn relabel(mut step: Step, hand: &HandChanges) -> Step {
    if let Some(label) = hand.labels.get(&step.at) {
        step.relabelled = *label != step.label;
        step.label.clone_from(label);
    }
    step
}

/// Own steps before the first timetable step belong to the part that follows them; on a board of
/// own steps alone, to the usual part of the first that is an activity, or to the first of the day.
fn settle_leading_own_steps(club: &Club, steps: &mut [Step]) {
    let first = steps.iter().position(|s| matches!(s.at, StepRef::Slot(_)));
    let usual = || {
        let mut activities = steps.iter().filter_map(|s| club.activity(s.activity?));
        activities.next().map(|a| a.part)
    };
    let part = first
        .map(|i| steps[i].part)
        .or_else(usual)
        .or_else(|| club.parts.first().map(|p| p.id))
        .unwrap_or(PartId(0));
    let leading = first.unwrap_or(steps.len());
    for step in &mut steps[..leading] {
        step.part = part;
    }
}
