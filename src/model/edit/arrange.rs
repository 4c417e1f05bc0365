//! The order that a person made, as placements that give exactly it.

use crate::model::board::{self, Rows};
use crate::model::hand::{HandChanges, Placement};
use crate::model::ids::StepRef;

/// Rewrites the placements so that the board shows exactly the wanted order.
///
/// Steps without a placement stand among each other as in the timetable, or go along with a row
/// that has one. Every other step gets a placement, in the order of the board, behind all that
/// stands before it. When one is taken up its neighbour before is already there, so it lands right
/// behind it: the order comes out as wanted, whatever it is. Steps moved earlier keep their
/// placement; those that were touched lose it when they are back among the unmoved ones where the
/// timetable has them. Placements of steps that are not on the board now are kept.
pub(super) fn arrange(
    rows: &Rows,
    hand: &mut HandChanges,
    wanted: &[StepRef],
    touched: &[StepRef],
) {
    let waiting = waiting(hand, wanted);
    let mut still: Vec<StepRef> = rows
        .rows
        .iter()
        .map(|r| r.step.at)
        .filter(|s| !hand.is_placed(*s) || touched.contains(s))
        .collect();
    let alone = |still: &[StepRef], s: StepRef| {
        let row = rows.rows.iter().find(|r| r.step.at == s);
        row.is_some_and(|r| r.beside.is_none_or(|b| still.contains(&b)))
    };
    let in_order = |still: &[StepRef]| {
        let counted: Vec<StepRef> = still.iter().copied().filter(|s| alone(still, *s)).collect();
        wanted.iter().filter(|s| counted.contains(s)).eq(&counted)
    };
    if !in_order(&still) {
        still.retain(|s| !touched.contains(s));
    }
    place(hand, wanted, &still, &waiting);
    if board::order(rows, hand) != wanted {
        // Something that goes along with a moved row would stand elsewhere: it is placed itself.
        let kept = still.clone();
        still.retain(|s| alone(&kept, *s));
        place(hand, wanted, &still, &waiting);
    }
    if board::order(rows, hand) != wanted {
        still.retain(|s| matches!(s, StepRef::Slot(_)));
        place(hand, wanted, &still, &waiting);
    }
    debug_assert_eq!(board::order(rows, hand), wanted);
}

/// Has the board show the wanted order where rows that are not moved are now others.
pub(super) fn keep(rows: &Rows, hand: &mut HandChanges, wanted: &[StepRef]) {
    if board::order(rows, hand) == wanted {
        return;
    }
    let slots = rows.rows.iter().map(|r| r.step.at);
    let still = |s: &StepRef| matches!(s, StepRef::Slot(_)) && !hand.is_placed(*s);
    let still: Vec<StepRef> = slots.filter(still).collect();
    let waiting = waiting(hand, wanted);
    place(hand, wanted, &still, &waiting);
}

fn place(hand: &mut HandChanges, wanted: &[StepRef], still: &[StepRef], waiting: &[Placement]) {
    let mut before: Vec<StepRef> = Vec::with_capacity(wanted.len());
    hand.placed.clear();
    for step in wanted {
        if !still.contains(step) {
            hand.placed.push(Placement {
                step: *step,
                after: before.iter().rev().copied().collect(),
            });
        }
        before.push(*step);
    }
    hand.placed.extend(waiting.iter().cloned());
}

/// Placements of steps that are not on the board now.
fn waiting(hand: &HandChanges, wanted: &[StepRef]) -> Vec<Placement> {
    let there = |p: &&Placement| !wanted.contains(&p.step);
    hand.placed.iter().filter(there).cloned().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::board::{Row, Step};
    use crate::model::hand::Content;
    use crate::model::ids::{OwnId, PartId, SlotId, StandingId, SymbolId};
    use crate::model::standing::Side;

    fn row(at: StepRef, beside: Option<StepRef>, side: Side) -> Row {
        let step = Step::plain(at, SymbolId::new(""), String::new(), PartId(0));
        Row { step, beside, side }
    }

    fn orders(all: &[StepRef]) -> Vec<Vec<StepRef>> {
        let mut orders = vec![vec![]];
        for _ in 0..all.len() {
            orders = orders
                .iter()
                .flat_map(|o: &Vec<StepRef>| {
                    all.iter().filter(|s| !o.contains(s)).map(|s| {
                        let mut longer = o.clone();
                        longer.push(*s);
                        longer
                    })
                })
                .collect();
        }
        orders
    }

    /// Every order of the steps comes out as wanted from every first move, one step after another
    /// put where it belongs as a person would.
    fn all_can_be_made(rows: &Rows, hand: &HandChanges, all: &[StepRef]) {
        for order in &orders(all) {
            let mut hand = hand.clone();
            for (to, step) in order.iter().enumerate() {
                let mut wanted = board::order(rows, &hand);
                wanted.retain(|s| s != step);
                wanted.insert(to, *step);
                arrange(rows, &mut hand, &wanted, &[*step]);
                assert_eq!(board::order(rows, &hand), wanted);
            }
            assert_eq!(&board::order(rows, &hand), order);
        }
    }

    fn hand_with_own() -> HandChanges {
        let mut hand = HandChanges::default();
        let content = Content {
            activity: None,
            symbol: SymbolId::new(""),
            label: "Quiet".into(),
        };
        hand.own.insert(OwnId(9), content);
        hand
    }

    #[test]
    fn every_order_of_rows_and_an_own_step_can_be_made() {
        let slots: Vec<StepRef> = (0..4).map(|i| StepRef::Slot(SlotId(i))).collect();
        let rows = Rows {
            rows: slots.iter().map(|s| row(*s, None, Side::After)).collect(),
            left_out: Vec::new(),
            spare: Vec::new(),
        };
        let all: Vec<StepRef> = slots.into_iter().chain([StepRef::Own(OwnId(9))]).collect();
        assert_eq!(orders(&all).len(), 120);
        all_can_be_made(&rows, &hand_with_own(), &all);
    }

    #[test]
    fn every_order_can_be_made_where_steps_stand_beside_rows() {
        let (a, b) = (StepRef::Slot(SlotId(0)), StepRef::Slot(SlotId(1)));
        let before = StepRef::Standing(StandingId(5), Some(SlotId(1)));
        let after = StepRef::Standing(StandingId(6), Some(SlotId(1)));
        let instead = StepRef::Instead(SlotId(0));
        let rows = Rows {
            rows: vec![
                row(a, None, Side::After),
                row(instead, Some(a), Side::After),
                row(before, Some(b), Side::Before),
                row(b, None, Side::After),
                row(after, Some(b), Side::After),
            ],
            left_out: Vec::new(),
            spare: Vec::new(),
        };
        let own = StepRef::Own(OwnId(9));
        all_can_be_made(
            &rows,
            &hand_with_own(),
            &[a, b, before, after, instead, own],
        );
    }
}
