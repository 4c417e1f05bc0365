//! Pieces on sheets: what holds whatever the pieces are, the cuts, and the order of equal pieces.

mod order;
pub mod sound;
mod trimmer;

use daystrand::layout::packing::{Piece, Room, bound, pack};
use daystrand::units::{Length, Size};
use proptest::prelude::*;

/// A piece from millimetres.
pub fn piece(w: f64, h: f64, may_turn: bool) -> Piece {
    Piece {
        size: Size::mm(w, h),
        may_turn,
    }
}

/// A room from millimetres.
pub fn room(w: f64, h: f64, gap: f64) -> Room {
    Room {
        size: Size::mm(w, h),
        gap: Length::mm(gap),
    }
}

fn any_pieces() -> impl Strategy<Value = Vec<Piece>> {
    let size = (1..900_i64, 1..900_i64).prop_map(|(w, h)| (w * 100, h * 100));
    let sizes = prop::collection::vec((size, any::<bool>()), 1..8);
    let piece = |((w, h), may_turn)| Piece {
        size: Size::new(Length::um(w), Length::um(h)),
        may_turn,
    };
    (
        sizes,
        prop::collection::vec(any::<prop::sample::Index>(), 1..40),
    )
        .prop_map(move |(sizes, chosen)| chosen.iter().map(|i| piece(*i.get(&sizes))).collect())
}

fn any_room() -> impl Strategy<Value = Room> {
    let gap = prop_oneof![Just(0), 0..80_i64];
    (300..1900_i64, 300..1900_i64, gap).prop_map(|(w, h, gap)| Room {
        size: Size::new(Length::um(w * 100), Length::um(h * 100)),
        gap: Length::um(gap * 100),
    })
}

proptest! {
    #![proptest_config(crate::chance::cases(150))]

    #[test]
    fn every_piece_has_its_place_and_can_be_cut_out(pieces in any_pieces(), room in any_room()) {
        let packing = pack(&pieces, &room);
        sound::check(&pieces, &room, &packing);
        prop_assert!(packing.sheets.len() >= bound(&pieces, &room));
        for sheet in &packing.sheets {
            trimmer::take_apart(sheet);
        }
        prop_assert_eq!(pack(&pieces, &room), packing, "packed again");
    }

    #[test]
    fn equal_pieces_take_no_more_sheets_than_a_grid(
        (w, h, n) in (20..900_i64, 20..900_i64, 1..60_usize),
        may_turn in any::<bool>(),
        room in any_room(),
    ) {
        let size = Size::new(Length::um(w * 100), Length::um(h * 100));
        let pieces = vec![Piece { size, may_turn }; n];
        let packing = pack(&pieces, &room);
        sound::check(&pieces, &room, &packing);
        let along = |side: Length, piece: Length| (side + room.gap).times(piece + room.gap);
        let grid = |s: Size| along(room.size.w, s.w) * along(room.size.h, s.h);
        let most = grid(size).max(if may_turn { grid(size.turned()) } else { 0 });
        if most == 0 {
            prop_assert_eq!(packing.too_large.len(), n);
        } else {
            prop_assert!(packing.sheets.len() <= n.div_ceil(usize::try_from(most).unwrap()));
        }
    }

    #[test]
    fn the_bound_is_at_least_that_by_area(pieces in any_pieces(), room in any_room()) {
        // By area, with the gap a part of pieces and room.
        let grown = |w: Length, h: Length| (w + room.gap).to_um() * (h + room.gap).to_um();
        let fitting = |p: &&Piece| {
            let inside = |s: Size| s.w <= room.size.w && s.h <= room.size.h;
            inside(p.size) || p.may_turn && inside(p.size.turned())
        };
        let area: i64 = pieces.iter().filter(fitting).map(|p| grown(p.size.w, p.size.h)).sum();
        let sheet = grown(room.size.w, room.size.h);
        let least = usize::try_from((area + sheet - 1) / sheet).unwrap();
        prop_assert!(bound(&pieces, &room) >= least);
    }
}

#[test]
fn nothing_and_what_is_no_size_need_no_sheet() {
    let room = room(100.0, 100.0, 3.0);
    assert_eq!(pack(&[], &room), Default::default());
    assert_eq!(bound(&[], &room), 0);
    let odd = [
        piece(0.0, 10.0, true),
        piece(10.0, -1.0, false),
        piece(101.0, 50.0, true),
        piece(50.0, 100.0, true),
    ];
    let packing = pack(&odd, &room);
    assert_eq!(packing.too_large, [0, 1, 2]);
    assert_eq!(packing.sheets.len(), 1);
    let no_room = Room {
        size: Size::default(),
        ..room
    };
    assert_eq!(pack(&odd, &no_room).too_large, [0, 1, 2, 3]);
}

#[test]
fn lengths_at_the_end_of_the_world_do_no_harm() {
    let huge = Length::um(i64::MAX);
    let any = Piece {
        size: Size::square(huge),
        may_turn: true,
    };
    let room = Room {
        size: Size::square(huge),
        gap: huge,
    };
    let packing = pack(&[any, piece(10.0, 10.0, true)], &room);
    assert_eq!(packing.too_large, [0]);
    assert_eq!(packing.sheets.len(), 1);
}

/// Two pieces longer than half of the room both ways cannot share a sheet, whichever way they lie.
#[test]
fn the_bound_counts_big_pieces() {
    let big = [
        piece(51.0, 60.0, true),
        piece(80.0, 55.0, true),
        piece(70.0, 51.0, false),
    ];
    let small = [piece(20.0, 20.0, true); 3];
    assert_eq!(
        bound(&[&big[..], &small].concat(), &room(100.0, 100.0, 0.0)),
        3
    );
    // By area alone it would be two; with half of the room exactly, two do share one.
    let half = [piece(50.0, 100.0, true); 4];
    assert_eq!(bound(&half, &room(100.0, 100.0, 0.0)), 2);
    assert_eq!(bound(&half, &room(100.0, 100.0, 1.0)), 4);
}
