//! A board: what one participant's day looks like, derived from the timetable and the hand changes.

use std::collections::BTreeMap;

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
    /// The activity it shows, if it is one of the club's.
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

/// The board of a participant. Pure: the same club and session give the same board.
pub fn derive(club: &Club, session: &Session, who: ParticipantId) -> Board {
    let none = HandChanges::default();
    let hand = session.hand_of(who).unwrap_or(&none);
    let order = order(&session.timetable, hand);
    let mut steps: Vec<Step> = Vec::with_capacity(order.len());
    let slots: BTreeMap<SlotId, &Slot> = session.timetable.iter().map(|s| (s.id, s)).collect();
    for at in order {
        let before = steps.last().map(|s| s.part);
        let step = match at {
            StepRef::Slot(id) => slots.get(&id).map(|slot| slot_step(club, slot, hand)),
            StepRef::Own(id) => hand.own.get(&id).map(|c| own_step(club, at, c, before)),
        };
        steps.extend(step.map(|s| relabel(s, hand)));
    }
    settle_leading_own_steps(&mut steps, session);
    Board {
        participant: who,
        steps,
    }
}

/// The order of a board: the timetable's, then each placement in turn.
fn order(timetable: &[Slot], hand: &HandChanges) -> Vec<StepRef> {
    let placed = |step: StepRef| hand.placed.iter().any(|p| p.step == step);
    let mut order: Vec<StepRef> = timetable
        .iter()
        .map(|s| StepRef::Slot(s.id))
        .filter(|s| !placed(*s))
        .collect();
    for p in &hand.placed {
        let known = match p.step {
            StepRef::Slot(id) => timetable.iter().any(|s| s.id == id),
            StepRef::Own(id) => hand.own.contains_key(&id),
        };
        if known {
            let anchor = p
                .after
                .iter()
                .find_map(|a| order.iter().position(|o| o == a));
            order.insert(anchor.map_or(0, |i| i + 1), p.step);
        }
    }
    order
}

fn slot_step(club: &Club, slot: &Slot, hand: &HandChanges) -> Step {
    let at = StepRef::Slot(slot.id);
    let activity = club.activity(slot.activity);
    let label = activity.map_or_else(String::new, |a| a.label.clone());
    let symbol = activity.map_or_else(|| SymbolId::new(""), |a| a.symbol.clone());
    let mut step = Step {
        at,
        activity: Some(slot.activity),
        symbol,
        label: label.clone(),
        part: slot.part,
        minutes: Some(slot.minutes),
        state: StepState::AsTimetable,
        moved: hand.placed.iter().any(|p| p.step == at),
        relabelled: false,
    };
    if let Some(content) = hand.replaced.get(&slot.id) {
        show(&mut step, club, content);
        step.state = StepState::Swapped { instead_of: label };
    }
    if hand.not_today.contains(&slot.id) {
        step.state = StepState::NotToday;
    }
    step
}

fn own_step(club: &Club, at: StepRef, content: &Content, before: Option<PartId>) -> Step {
    let part = before.unwrap_or(PartId(0));
    let mut step = Step {
        at,
        activity: None,
        symbol: content.symbol.clone(),
        label: String::new(),
        part,
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
    step.activity = activity.map(|a| a.id);
    step.symbol = activity.map_or_else(|| content.symbol.clone(), |a| a.symbol.clone());
    step.label = activity.map_or_else(|| content.label.clone(), |a| a.label.clone());
}

fn relabel(mut step: Step, hand: &HandChanges) -> Step {
    if let Some(label) = hand.labels.get(&step.at) {
        step.relabelled = *label != step.label;
        step.label.clone_from(label);
    }
    step
}

/// Own steps before the first timetable step belong to the part that follows them.
fn settle_leading_own_steps(steps: &mut [Step], session: &Session) {
    let first = steps.iter().position(|s| matches!(s.at, StepRef::Slot(_)));
    let part = first
        .map(|i| steps[i].part)
        .or_else(|| session.timetable.first().map(|s| s.part))
        .unwrap_or(PartId(0));
    let leading = first.unwrap_or(steps.len());
    for step in &mut steps[..leading] {
        step.part = part;
    }
}
