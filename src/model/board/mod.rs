//! A board: what one participant's day looks like, derived from the timetable, then the standing
//! changes, then what was changed by hand for this session. Each of the three stays as it is and
//! can be changed alone.
//!
//! `rows` says what stands on the board before anything was moved, `order` where it stands.

mod order;
mod rows;

use std::collections::BTreeMap;

use super::club::Club;
use super::hand::{Content, HandChanges};
use super::ids::{ActivityId, PartId, ParticipantId, SlotId, StepRef, SymbolId};
use super::manner::Form;
use super::people::Participant;
use super::session::Session;

pub(crate) use order::order;
pub(crate) use rows::{Row, Rows, rows};

/// One participant's visual schedule for one session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Board {
    /// Whose it is.
    pub participant: ParticipantId,
    /// The steps in order, those of "not today" among them.
    pub steps: Vec<Step>,
    /// Rows of the timetable this participant has no part in, by a standing change.
    pub left_out: Vec<SlotId>,
    /// Changes by hand about steps that are not on the board now.
    pub waiting: Vec<StepRef>,
}

impl Board {
    /// Where a step stands, counted from zero.
    pub fn position(&self, step: StepRef) -> Option<usize> {
        self.steps.iter().position(|s| s.at == step)
    }

    /// How many steps differ from the timetable, rows that are left out among them.
    pub fn differences(&self) -> usize {
        self.steps.iter().filter(|s| s.differs()).count() + self.left_out.len()
    }

    /// Every activity that is done or can be chosen.
    pub fn activities(&self) -> impl Iterator<Item = ActivityId> {
        self.done().flat_map(|s| {
            let options = s.options.iter().filter_map(|o| o.activity);
            s.activity.into_iter().chain(options)
        })
    }

    /// The steps that are done, without those of "not today".
    pub fn done(&self) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(|s| s.state != StepState::NotToday)
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
    /// What made it differ.
    pub by: By,
    /// Whether it stands elsewhere than in the timetable.
    pub moved: bool,
    /// Whether its words were changed by hand.
    pub relabelled: bool,
    /// What can be chosen here, if it is a choice.
    pub options: Vec<Content>,
    /// In what form the participant understands it.
    pub form: Form,
    /// The real thing that stands for it, for steps in the form of an object.
    pub thing: String,
    /// Whether it is a support shown as a step.
    pub support: bool,
}

impl Step {
    /// A step as the timetable has it, in the usual form, with nothing further about it.
    pub fn plain(at: StepRef, symbol: SymbolId, label: String, part: PartId) -> Self {
        Self {
            at,
            activity: None,
            symbol,
            label,
            part,
            minutes: None,
            state: StepState::AsTimetable,
            by: By::Timetable,
            moved: false,
            relabelled: false,
            options: Vec::new(),
            form: Form::default(),
            thing: String::new(),
            support: false,
        }
    }

    /// Whether anything about it differs from the timetable.
    pub fn differs(&self) -> bool {
        self.moved || self.relabelled || self.by != By::Timetable
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
    /// It comes instead of what is not today, whose words these are.
    Instead {
        /// The words of what is not today.
        of: String,
    },
}

/// Who says that a step is as it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum By {
    /// The timetable, for everyone.
    Timetable,
    /// A standing change of the participant.
    Standing,
    /// A change by hand for this session.
    Hand,
}

/// The words of a step whose activity is not in the club. No edit leads there; a check can find
/// such a step by its activity, which the club does not know.
pub const UNKNOWN_ACTIVITY: &str = "Unknown activity";

/// The board of a participant. Pure: the same club and session give the same board. Every row of
/// the timetable stands on it exactly once or is named as left out, and every own step stands on it
/// exactly once.
pub fn derive(club: &Club, session: &Session, who: ParticipantId) -> Board {
    let none = HandChanges::default();
    let hand = session.hand_of(who).unwrap_or(&none);
    let rows = rows(club, session, who, hand);
    let order = order(&rows, hand);
    let moved = order::moved(&rows, hand, &order);
    let waiting = waiting(&rows, hand);
    let left_out = rows.left_out;
    let mut known: BTreeMap<StepRef, Step> = rows
        .rows
        .into_iter()
        .map(|row| (row.step.at, row.step))
        .collect();
    let mut steps: Vec<Step> = Vec::with_capacity(order.len());
    for at in order {
        let before = steps.last().map(|s| s.part);
        let step = match at {
            StepRef::Own(id) => hand
                .own
                .get(&id)
                .map(|c| own_step(club, at, c, before, hand)),
            _ => known.remove(&at),
        };
        steps.extend(step.map(|s| relabel(s, hand)));
    }
    let person = club.participant(who);
    for step in &mut steps {
        step.moved = moved.contains(&step.at);
        if let Some(person) = person {
            put_in_form(club, person, step);
        }
    }
    settle_leading_own_steps(club, &mut steps);
    Board {
        participant: who,
        steps,
        left_out,
        waiting,
    }
}

/// What a step says when its words were not changed by hand.
pub(crate) fn own_words(
    club: &Club,
    session: &Session,
    who: ParticipantId,
    hand: &HandChanges,
    at: StepRef,
) -> Option<String> {
    if let StepRef::Own(id) = at {
        return Some(shown(club, hand.own.get(&id)?).label);
    }
    let rows = rows(club, session, who, hand);
    let row = rows.rows.into_iter().find(|r| r.step.at == at)?;
    Some(row.step.label)
}

/// Steps that a change by hand is about and that are not on the board.
fn waiting(rows: &Rows, hand: &HandChanges) -> Vec<StepRef> {
    let there = |at: &StepRef| match at {
        StepRef::Own(id) => hand.own.contains_key(id),
        _ => rows.rows.iter().any(|r| r.step.at == *at),
    };
    hand.touched().into_iter().filter(|s| !there(s)).collect()
}

/// An own step belongs to the part of the step before it.
fn own_step(
    club: &Club,
    at: StepRef,
    content: &Content,
    before: Option<PartId>,
    hand: &HandChanges,
) -> Step {
    let content = shown(club, content);
    let options = hand.choices.get(&at).map_or(&[][..], |o| o);
    let part = before.unwrap_or(PartId(0));
    Step {
        activity: content.activity,
        state: StepState::Own,
        by: By::Hand,
        options: options.iter().map(|o| shown(club, o)).collect(),
        ..Step::plain(at, content.symbol, content.label, part)
    }
}

/// Content as it is shown; a club's activity keeps following the club's words and picture.
pub fn shown(club: &Club, content: &Content) -> Content {
    let activity = content.activity.and_then(|id| club.activity(id));
    let mut shown = activity.map_or_else(
        || content.clone(),
        |a| Content {
            activity: Some(a.id),
            symbol: a.symbol.clone(),
            label: a.label.clone(),
        },
    );
    if shown.label.is_empty() {
        UNKNOWN_ACTIVITY.clone_into(&mut shown.label);
    }
    shown
}

fn relabel(mut step: Step, hand: &HandChanges) -> Step {
    if let Some(label) = hand.labels.get(&step.at) {
        step.relabelled = *label != step.label;
        step.label.clone_from(label);
    }
    step
}

/// The thing that stands for a step is the participant's own, or else the activity's, or else what
/// the words say. A photograph that the club has is seen like any picture; only for one that it does
/// not have a place is left.
fn put_in_form(club: &Club, person: &Participant, step: &mut Step) {
    let manner = &person.manner;
    step.form = manner.form_of(step.activity);
    if step.form == Form::Photograph {
        let seen = club.seen_by(person, &step.symbol);
        let photo = club.own_picture(&seen).and_then(|p| p.photo());
        if photo.is_some() {
            step.form = Form::Drawing;
        }
    }
    if step.form == Form::Object {
        let usual = step.activity.and_then(|id| club.activity(id));
        let usual = usual.map(|a| a.thing.as_str()).filter(|t| !t.is_empty());
        let thing = manner.thing_of(step.activity).or(usual);
        thing.unwrap_or(&step.label).clone_into(&mut step.thing);
    }
}

/// Own steps before the first timetable step belong to the part that follows them; on a board of
/// own steps alone, to the usual part of the first that is an activity, or to the first of the day.
fn settle_leading_own_steps(club: &Club, steps: &mut [Step]) {
    let first = steps.iter().position(|s| !matches!(s.at, StepRef::Own(_)));
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
