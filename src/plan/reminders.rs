//! When something is due by the club's own minutes: sunscreen, drinks, a new look at the place, the
//! wait after thunder. Times only: whether anyone goes into the water is decided by people.

use std::iter;

use super::clock::Moment;

/// The club's minutes for sunscreen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sunscreen {
    /// So many minutes before the start.
    pub before: u32,
    /// Again after so many minutes.
    pub again: u32,
}

impl Default for Sunscreen {
    /// As health services commonly ask for: 20 minutes before, again every two hours.
    fn default() -> Self {
        Self {
            before: 20,
            again: 120,
        }
    }
}

impl Sunscreen {
    /// When it is applied for a session.
    pub const fn first(self, start: Moment) -> Moment {
        start.before(self.before)
    }

    /// When it is due again: after the club's minutes, or with the first time after it was applied
    /// that anyone leaves the water, if that is earlier.
    pub fn again_by(self, applied: Moment, leaves_water: &[Moment]) -> Moment {
        let leaving = leaves_water.iter().copied().filter(|out| *out > applied);
        let by_minutes = applied.after(self.again);
        leaving.min().map_or(by_minutes, |out| out.min(by_minutes))
    }

    /// Every time from the first one to the end of a session.
    pub fn all(
        self,
        start: Moment,
        end: Moment,
        leaves_water: &[Moment],
    ) -> impl Iterator<Item = Moment> {
        let next = move |applied: &Moment| {
            let again = self.again_by(*applied, leaves_water);
            // No minutes between two times would never come to the end.
            (again > *applied && again <= end).then_some(again)
        };
        iter::successors(Some(self.first(start)), next)
    }
}

/// When a drink is offered within a session: every so many minutes from the start, before the end.
/// Never where the club gives no minutes.
pub fn drinks(start: Moment, end: Moment, every: u32) -> impl Iterator<Item = Moment> {
    let next = move |last: &Moment| {
        let next = last.after(every);
        (next > *last && next < end).then_some(next)
    };
    iter::successors(next(&start), next)
}

/// How long ago someone last looked at the water, the weather and the place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LastLook {
    /// Nobody has, as far as was written down.
    None,
    /// There was one.
    At {
        /// When.
        last: Moment,
        /// How many minutes ago.
        minutes: u32,
        /// Whether that is longer than the club's minutes.
        older: bool,
    },
}

/// The last look before a moment, or at it, against the club's minutes. Looks come in any order.
pub fn last_look(looks: &[Moment], at: Moment, limit: u32) -> LastLook {
    let before = looks.iter().copied().filter(|look| *look <= at);
    before.max().map_or(LastLook::None, |last| {
        let minutes = at.since(last);
        LastLook::At {
            last,
            minutes,
            older: minutes > limit,
        }
    })
}

/// The end of the club's wait after the last thunder or flash: each new one begins it anew. Entries
/// come in any order; nothing where none was heard. Weather services ask for 30 minutes. That the
/// wait is over says nothing about the weather.
pub fn return_not_before(heard: &[Moment], minutes: u32) -> Option<Moment> {
    heard.iter().max().map(|last| last.after(minutes))
}
