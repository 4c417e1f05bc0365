//! Which of several equal pieces lies in which of their places.

use std::collections::BTreeMap;

use super::kinds::key;
use super::{PackedSheet, Packing, Piece};

/// In which order pieces of equal size are handed out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Order {
    /// As given, through one sheet after the other: for sheets that are cut one by one.
    #[default]
    SheetBySheet,
    /// As given, through the stack: sheets that are divided alike are cut lying on each other, and
    /// after cutting the pieces of a pile follow each other from the top sheet down; then comes the
    /// next pile.
    ThroughTheStack,
}

/// Places of pieces that are equal (same sides, and both or neither may be turned) are
/// interchangeable; this fills them in the order of the list. Nothing moves but the numbers.
pub fn hand_out(packing: &mut Packing, pieces: &[Piece], order: Order) {
    let mut waiting: BTreeMap<_, Vec<usize>> = BTreeMap::new();
    for placed in packing.sheets.iter().flat_map(PackedSheet::pieces) {
        waiting
            .entry(key(&pieces[placed.piece]))
            .or_default()
            .push(placed.piece);
    }
    for list in waiting.values_mut() {
        // The next one is taken from the end.
        list.sort_unstable_by(|a, b| b.cmp(a));
    }
    let mut rest = &mut packing.sheets[..];
    while let Some(top) = rest.first() {
        let alike = match order {
            Order::SheetBySheet => 1,
            Order::ThroughTheStack => rest.iter().take_while(|s| alike(top, s, pieces)).count(),
        };
        let (group, others) = rest.split_at_mut(alike);
        rest = others;
        for slot in 0..group[0].pieces().count() {
            for sheet in &mut *group {
                let Some(placed) = sheet.pieces_mut().nth(slot) else {
                    continue;
                };
                let piece = waiting
                    .get_mut(&key(&pieces[placed.piece]))
                    .and_then(Vec::pop);
                if let Some(piece) = piece {
                    placed.piece = piece;
                    placed.turned = placed.at.size() != pieces[piece].size;
                }
            }
        }
    }
}

/// Whether two sheets are divided alike for equal pieces.
fn alike(a: &PackedSheet, b: &PackedSheet, pieces: &[Piece]) -> bool {
    let equal = |(p, q): (&super::Placed, &super::Placed)| {
        p.at == q.at && key(&pieces[p.piece]) == key(&pieces[q.piece])
    };
    a.first == b.first
        && a.strips.len() == b.strips.len()
        && a.strips.iter().zip(&b.strips).all(|(s, t)| {
            s.at == t.at && s.stacks.len() == t.stacks.len() && {
                let mut stacks = s.stacks.iter().zip(&t.stacks);
                stacks.all(|(s, t)| s.at == t.at && s.pieces.len() == t.pieces.len())
            }
        })
        && a.pieces().zip(b.pieces()).all(equal)
}
