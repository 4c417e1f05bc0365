//! Where the steps of a board stand: the timetable's order, then each placement by hand in turn.
//! What stands beside a row goes along with it.

use std::collections::{BTreeMap, BTreeSet};

use super::{Row, Rows};
use crate::model::hand::HandChanges;
use crate::model::ids::StepRef;
use crate::model::standing::Side;

/// The order of a board. An own step that was never placed stands at the end; a step named twice
/// stands once.
pub(crate) fn order(rows: &Rows, hand: &HandChanges) -> Vec<StepRef> {
    let placed: BTreeSet<StepRef> = hand.placed.iter().map(|p| p.step).collect();
    let known: BTreeSet<StepRef> = rows.rows.iter().map(|r| r.step.at).collect();
    let goes_along = |row: &&Row| {
        !placed.contains(&row.step.at) && row.beside.is_some_and(|b| placed.contains(&b))
    };
    let mut order: Vec<StepRef> = rows
        .rows
        .iter()
        .filter(|r| !placed.contains(&r.step.at) && !goes_along(r))
        .map(|r| r.step.at)
        .collect();
    let mut done: BTreeSet<StepRef> = order.iter().copied().collect();
    for p in &hand.placed {
        let there = match p.step {
            StepRef::Own(id) => hand.own.contains_key(&id),
            step => known.contains(&step),
        };
        if !there || !done.insert(p.step) {
            continue;
        }
        let anchor = p
            .after
            .iter()
            .filter(|a| done.contains(a))
            .find_map(|a| order.iter().position(|o| o == a));
        let at = anchor.map_or(0, |i| i + 1);
        let along = |side: Side| {
            let with = rows.rows.iter().filter(goes_along);
            with.filter(move |r| r.beside == Some(p.step) && r.side == side)
                .map(|r| r.step.at)
        };
        let group: Vec<StepRef> = along(Side::Before)
            .chain([p.step])
            .chain(along(Side::After))
            .collect();
        done.extend(&group);
        order.splice(at..at, group);
    }
    let lost = hand.own.keys().map(|id| StepRef::Own(*id));
    order.extend(lost.filter(|s| !done.contains(s)));
    order
}

/// The rows put elsewhere by hand: those with another one on the wrong side of them. What stands
/// beside a row and no longer does is moved too.
pub(super) fn moved(rows: &Rows, hand: &HandChanges, order: &[StepRef]) -> BTreeSet<StepRef> {
    if hand.placed.is_empty() {
        return BTreeSet::new();
    }
    let place: BTreeMap<StepRef, usize> = rows
        .rows
        .iter()
        .filter(|r| r.beside.is_none())
        .enumerate()
        .map(|(i, r)| (r.step.at, i))
        .collect();
    let shown: Vec<(StepRef, usize)> = order
        .iter()
        .filter_map(|s| place.get(s).map(|i| (*s, *i)))
        .collect();
    let crossed = |at: usize| {
        let own = shown[at].1;
        shown[..at].iter().any(|(_, i)| *i > own) || shown[at..].iter().any(|(_, i)| *i < own)
    };
    let slots = shown
        .iter()
        .enumerate()
        .filter(|(at, (s, _))| hand.is_placed(*s) && crossed(*at))
        .map(|(_, (s, _))| *s);
    let beside = rows.rows.iter().filter(|r| {
        hand.is_placed(r.step.at) && r.beside.is_some_and(|b| !along(rows, order, r.step.at, b))
    });
    slots.chain(beside.map(|r| r.step.at)).collect()
}

/// Whether a step still stands beside its row, with nothing between them but what belongs there.
fn along(rows: &Rows, order: &[StepRef], step: StepRef, row: StepRef) -> bool {
    let place = |s: StepRef| order.iter().position(|o| *o == s);
    let (Some(a), Some(b)) = (place(step), place(row)) else {
        return false;
    };
    let belongs = |s: &StepRef| {
        let found = rows.rows.iter().find(|r| r.step.at == *s);
        found.is_some_and(|r| r.beside == Some(row)) || *s == row
    };
    order[a.min(b)..=a.max(b)].iter().all(belongs)
}
