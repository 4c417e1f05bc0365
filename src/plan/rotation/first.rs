//! The first plan that keeps every limit, or why there is none.

use super::colouring::balanced;
use super::most::most_in_water;
use super::ready::Ready;
use super::reasons::{Reason, bad_wishes, fewest_turns, reasons, water_visits};
use super::search::{Verdict, search};
use super::{Effort, NotFound, Paired, Progress, Rotation};

/// How many turns more than numbers ask for are tried, where their number is free.
const MORE_TURNS: usize = 6;

/// More turns than these are not tried.
const MOST_TURNS: usize = 1_000;

/// What became of it.
pub(super) enum First {
    Found(Start),
    Impossible(Vec<Reason>),
    NotFound(NotFound),
}

/// A plan to begin with.
pub(super) struct Start {
    pub turns: usize,
    /// Whether fewer turns are proved not to be enough.
    pub fewest: bool,
    pub rows: Vec<Vec<Option<usize>>>,
}

pub(super) fn first(
    rotation: &Rotation,
    paired: Option<Paired>,
    effort: &Effort,
    progress: &mut Progress,
) -> First {
    let bad = bad_wishes(rotation);
    if !bad.is_empty() {
        return First::Impossible(bad);
    }
    let least = fewest_turns(rotation);
    if rotation.turns.or(least).is_some_and(|n| n > MOST_TURNS) {
        return not_found(0, Tried::Open, Vec::new());
    }
    if let Some(turns) = rotation.turns {
        return match with(rotation, paired, turns, effort, progress) {
            Tried::Found(rows) => First::Found(Start {
                turns,
                fewest: least == Some(turns),
                rows,
            }),
            Tried::None(reasons) => First::Impossible(reasons),
            tried => not_found(turns, tried, Vec::new()),
        };
    }
    let Some(least) = least else {
        return First::Impossible(reasons(rotation, None, turns_for_each(rotation)));
    };
    fewest(rotation, paired, least, effort, progress)
}

/// So many turns that every visit could have one of its own.
fn turns_for_each(rotation: &Rotation) -> usize {
    let people = rotation.participants.iter();
    let visits: usize = people.clone().map(|p| p.wishes.len()).sum();
    let fixed = people.flat_map(|p| &p.fixed).map(|v| v.turn + 1).max();
    let listed = match &rotation.water {
        super::Water::Each(list) => list.len(),
        _ => 0,
    };
    visits.max(listed) + fixed.unwrap_or(0)
}

/// Tries more and more turns.
fn fewest(
    rotation: &Rotation,
    paired: Option<Paired>,
    least: usize,
    effort: &Effort,
    progress: &mut Progress,
) -> First {
    let mut proved = true;
    let mut known = Vec::new();
    for turns in least..=least + MORE_TURNS {
        match with(rotation, paired, turns, effort, progress) {
            Tried::Found(rows) => {
                return First::Found(Start {
                    turns,
                    fewest: proved,
                    rows,
                });
            }
            Tried::None(reasons) if reasons.iter().any(whatever_turns) => {
                return First::Impossible(reasons);
            }
            Tried::None(reasons) => known = reasons,
            Tried::Stopped => return not_found(turns, Tried::Stopped, Vec::new()),
            Tried::Open => {
                proved = false;
                known = Vec::new();
            }
        }
    }
    not_found(least + MORE_TURNS, Tried::Open, known)
}

/// Whether more turns do not help.
fn whatever_turns(reason: &Reason) -> bool {
    matches!(
        reason,
        Reason::FixedNotWished { .. }
            | Reason::FixedTwice { .. }
            | Reason::FixedStationFull { .. }
            | Reason::FixedWaterFull { .. }
            | Reason::FixedNotPaired { .. }
    )
}

fn not_found(turns: usize, tried: Tried, reasons: Vec<Reason>) -> First {
    First::NotFound(NotFound {
        turns,
        reasons,
        stopped: matches!(tried, Tried::Stopped),
    })
}

enum Tried {
    Found(Vec<Vec<Option<usize>>>),
    None(Vec<Reason>),
    Open,
    Stopped,
}

/// One number of turns: by the theorem where it holds, else by searching.
fn with(
    rotation: &Rotation,
    paired: Option<Paired>,
    turns: usize,
    effort: &Effort,
    progress: &mut Progress,
) -> Tried {
    let reasons = reasons(rotation, paired, turns);
    if !reasons.is_empty() {
        return Tried::None(reasons);
    }
    let start = balanced(rotation, turns);
    let fixed = rotation.participants.iter().any(|p| !p.fixed.is_empty());
    if let (Some(rows), false, None) = (&start, fixed, paired)
        && same_water(rotation, turns)
    {
        return Tried::Found(rows.clone());
    }
    let limit = most_in_water(rotation, paired, turns);
    let (visits, most) = (water_visits(rotation), limit.iter().sum());
    if visits > most {
        return Tried::None(vec![Reason::WaterFull { visits, most }]);
    }
    let mut ready = Ready::new(rotation, paired, effort.weights, turns);
    ready.limit = limit;
    let hint = start.unwrap_or_else(|| vec![Vec::new(); rotation.participants.len()]);
    match search(&ready, &hint, effort.search, progress) {
        Verdict::Found(rows) => Tried::Found(rows),
        Verdict::None => Tried::None(vec![Reason::AllTried]),
        Verdict::Open => Tried::Open,
        Verdict::Stopped => Tried::Stopped,
    }
}

/// Whether even the turn with the least water leaves room for an even share of its visits.
fn same_water(rotation: &Rotation, turns: usize) -> bool {
    let least = (0..turns).map(|t| rotation.water.limit(t)).min();
    least.is_none_or(|least| least.saturating_mul(turns) >= water_visits(rotation))
}
