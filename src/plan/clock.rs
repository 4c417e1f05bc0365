//! When each slot of a timetable begins and ends, with the club's minutes between two slots.
//!
//! All times are what a clock at the place shows; a change to or from summer time in the same
//! night is not looked at.

use std::fmt;

use jiff::civil::Time;

use crate::model::club::Rules;
use crate::model::ids::{PartId, ParticipantId, SlotId};
use crate::model::session::Session;
use crate::model::turns::Turns;

const MINUTES_PER_HOUR: u32 = 60;
const MINUTES_PER_DAY: u32 = 24 * MINUTES_PER_HOUR;

/// A moment, in whole minutes after the midnight with which the session's day began.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Moment(u32);

impl Moment {
    /// A time of the session's day; seconds are dropped.
    pub fn at(time: Time) -> Self {
        let part = |n: i8| u32::from(n.unsigned_abs());
        Self(part(time.hour()) * MINUTES_PER_HOUR + part(time.minute()))
    }

    /// So many minutes later.
    pub const fn after(self, minutes: u32) -> Self {
        Self(self.0.saturating_add(minutes))
    }

    /// So many minutes earlier, not before the midnight it counts from.
    pub const fn before(self, minutes: u32) -> Self {
        Self(self.0.saturating_sub(minutes))
    }

    /// Minutes from an earlier moment to this one; zero if that one is later.
    pub const fn since(self, earlier: Self) -> u32 {
        self.0.saturating_sub(earlier.0)
    }

    /// Hour from 0 to 23, as a clock shows it.
    pub const fn hour(self) -> u32 {
        self.0 / MINUTES_PER_HOUR % 24
    }

    /// Minute from 0 to 59.
    pub const fn minute(self) -> u32 {
        self.0 % MINUTES_PER_HOUR
    }

    /// How many midnights lie between the start of the session's day and this moment.
    pub const fn days_later(self) -> u32 {
        self.0 / MINUTES_PER_DAY
    }
}

impl fmt::Display for Moment {
    /// As `09:30`, whichever day it is.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.hour(), self.minute())
    }
}

/// When one slot begins and ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// Which slot.
    pub slot: SlotId,
    /// Its part of the day.
    pub part: PartId,
    /// When it begins.
    pub from: Moment,
    /// When it ends; the next one begins after the club's minutes between two slots.
    pub to: Moment,
}

/// The times of a session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clock {
    /// When the session begins.
    pub start: Moment,
    /// When the last slot ends; the start if there is none.
    pub end: Moment,
    /// When the minutes that the club gives a session are over.
    pub limit: Moment,
    /// The slots in order. Rows done in turns all last from the first turn to the last.
    pub rows: Vec<Row>,
    /// When each turn begins and ends, where rows are done in turns.
    pub turns: Vec<(Moment, Moment)>,
}

/// The times of a session under a club's rules.
pub fn clock(session: &Session, rules: &Rules) -> Clock {
    let start = Moment::at(session.start);
    let mut rows: Vec<Row> = Vec::with_capacity(session.timetable.len());
    let mut turns: Vec<(Moment, Moment)> = Vec::new();
    for slot in &session.timetable {
        let between = |last: &Row| last.to.after(rules.transition_minutes);
        let mut from = rows.last().map_or(start, between);
        let mut to = from.after(slot.minutes);
        if let Some(plan) = session.turns.as_ref().filter(|t| t.has(slot.id)) {
            if turns.is_empty() {
                turns = times_of_turns(from, plan, rules.transition_minutes);
            }
            from = turns.first().map_or(from, |t| t.0);
            to = turns.last().map_or(from, |t| t.1);
        }
        rows.push(Row {
            slot: slot.id,
            part: slot.part,
            from,
            to,
        });
    }
    Clock {
        start,
        end: rows.last().map_or(start, |last| last.to),
        limit: start.after(rules.session_minutes),
        rows,
        turns,
    }
}

fn times_of_turns(start: Moment, plan: &Turns, between: u32) -> Vec<(Moment, Moment)> {
    let begins = |n: u32| start.after(n.saturating_mul(plan.minutes.saturating_add(between)));
    let turn = |n: u32| (begins(n), begins(n).after(plan.minutes));
    (0..plan.count).map(turn).collect()
}

impl Clock {
    /// From the start to the end, in minutes.
    pub const fn minutes(&self) -> u32 {
        self.end.since(self.start)
    }

    /// Minutes beyond the session's minutes.
    pub const fn overrun(&self) -> u32 {
        self.end.since(self.limit)
    }

    /// Minutes left over before the session's minutes are over.
    pub const fn slack(&self) -> u32 {
        self.limit.since(self.end)
    }

    /// When a participant is at a slot: in their turn, where it is done in turns.
    pub fn visit(&self, session: &Session, who: ParticipantId, slot: SlotId) -> Option<Row> {
        let row = *self.row(slot)?;
        let turn = session.turns.as_ref().filter(|t| t.has(slot));
        let Some(turns) = turn else {
            return Some(row);
        };
        let (from, to) = *self.turns.get(turns.turn_of(who, slot)?)?;
        Some(Row { from, to, ..row })
    }

    /// The times of a slot.
    pub fn row(&self, slot: SlotId) -> Option<&Row> {
        self.rows.iter().find(|r| r.slot == slot)
    }

    /// The slots at the end that share the last one's part of the day.
    pub fn closing(&self) -> &[Row] {
        let Some(last) = self.rows.last() else {
            return &[];
        };
        let apart = self.rows.iter().rposition(|r| r.part != last.part);
        &self.rows[apart.map_or(0, |i| i + 1)..]
    }

    /// When the closing part has to begin so that the session ends within its minutes. Not before
    /// the session's start, however long the closing part is.
    pub fn latest_closing(&self) -> Option<Moment> {
        let first = self.closing().first()?;
        let needed = self.end.since(first.from);
        Some(self.limit.before(needed).max(self.start))
    }
}
