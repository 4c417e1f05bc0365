//! Equal pieces in the order of the list, sheet by sheet or through the stack.

use daystrand::layout::packing::{Order, PackedSheet, Packing, Piece, hand_out, pack};
use proptest::prelude::*;

use super::{any_pieces, any_room, piece, room, sound};

fn numbers(sheet: &PackedSheet) -> Vec<usize> {
    sheet.pieces().map(|p| p.piece).collect()
}

#[test]
fn a_grid_is_filled_in_the_order_of_the_list() {
    let pieces = [piece(50.0, 50.0, true); 10];
    let packing = pack(&pieces, &room(100.0, 100.0, 0.0));
    let all: Vec<_> = packing.sheets.iter().map(numbers).collect();
    assert_eq!(all, [vec![0, 1, 2, 3], vec![4, 5, 6, 7], vec![8, 9]]);
    let second = packing.sheets[0].pieces().nth(1).unwrap();
    assert_eq!(
        (second.at.x.to_mm(), second.at.y.to_mm()),
        (50.0, 0.0),
        "row by row"
    );
}

#[test]
fn through_the_stack_each_pile_is_in_order() {
    let pieces = [piece(50.0, 50.0, true); 14];
    let mut packing = pack(&pieces, &room(100.0, 100.0, 0.0));
    hand_out(&mut packing, &pieces, Order::ThroughTheStack);
    let all: Vec<_> = packing.sheets.iter().map(numbers).collect();
    // Three full sheets lie on each other; the last one is divided otherwise and cut by itself.
    assert_eq!(
        all,
        [
            vec![0, 3, 6, 9],
            vec![1, 4, 7, 10],
            vec![2, 5, 8, 11],
            vec![12, 13]
        ]
    );
    hand_out(&mut packing, &pieces, Order::SheetBySheet);
    assert_eq!(packing, pack(&pieces, &room(100.0, 100.0, 0.0)));
}

#[test]
fn sizes_are_not_confused() {
    let (large, small) = (piece(50.0, 50.0, false), piece(50.0, 25.0, false));
    let pieces: Vec<Piece> = (0..12)
        .map(|i| if i % 3 == 0 { large } else { small })
        .collect();
    let mut packing = pack(&pieces, &room(50.0, 100.0, 0.0));
    assert_eq!(packing.sheets.len(), 4);
    for order in [Order::SheetBySheet, Order::ThroughTheStack] {
        hand_out(&mut packing, &pieces, order);
        sound::check(&pieces, &room(50.0, 100.0, 0.0), &packing);
    }
}

/// Numbers of equal pieces, in the order they lie, go up.
fn in_order(packing: &Packing, pieces: &[Piece]) -> bool {
    let all: Vec<usize> = packing.sheets.iter().flat_map(numbers).collect();
    all.iter().enumerate().all(|(i, &a)| {
        let later = all[i + 1..].iter();
        later.filter(|&&b| pieces[a] == pieces[b]).all(|&b| a < b)
    })
}

proptest! {
    #![proptest_config(crate::chance::cases(60))]

    #[test]
    fn nothing_moves_but_the_numbers(pieces in any_pieces(), room in any_room()) {
        let packing = pack(&pieces, &room);
        prop_assert!(in_order(&packing, &pieces));
        let mut through = packing.clone();
        hand_out(&mut through, &pieces, Order::ThroughTheStack);
        sound::check(&pieces, &room, &through);
        let at = |p: &Packing| -> Vec<_> {
            p.sheets.iter().flat_map(|s| s.pieces().map(|p| p.at).collect::<Vec<_>>()).collect()
        };
        prop_assert_eq!(at(&through), at(&packing));
        hand_out(&mut through, &pieces, Order::SheetBySheet);
        prop_assert_eq!(through, packing);
    }
}
