//! Pieces on sheets against instances of the literature with known bounds and best known values,
//! against small cases whose answer follows from an argument, and against capacities of grids.

use std::fs;

use daystrand::layout::grid::{MARGIN, capacity};
use daystrand::layout::packing::{Piece, Room, bound, pack};
use daystrand::model::club::Paper;
use daystrand::units::{Length, Size};

use super::grid::{TOUCHING, WITH_GAPS};
use crate::layout::packing::{piece, room, sound};

/// A line of the file, which names its sources.
struct Instance {
    name: String,
    room: Size,
    pieces: Vec<Size>,
    /// Lower bounds: by area, not turned, turned.
    least: [usize; 3],
    /// Best known: any not turned, any turned, three-stage not turned, three-stage turned.
    known: [usize; 4],
}

fn instances() -> Vec<Instance> {
    let path = "/tests/cases/packing/instances.txt";
    let file = fs::read_to_string(format!("{}{path}", env!("CARGO_MANIFEST_DIR"))).unwrap();
    let lines = file
        .lines()
        .filter(|l| !l.starts_with('#') && !l.is_empty());
    lines.map(instance).collect()
}

fn instance(line: &str) -> Instance {
    let fields: Vec<&str> = line.split(';').collect();
    let size = |text: &str| {
        let (w, h) = text.split_once('x').unwrap();
        Size::mm(w.parse().unwrap(), h.parse().unwrap())
    };
    let numbers: Vec<usize> = fields[2..9].iter().map(|f| f.parse().unwrap()).collect();
    Instance {
        name: fields[0].to_owned(),
        room: size(fields[1]),
        pieces: fields[9].split(' ').map(size).collect(),
        least: numbers[..3].try_into().unwrap(),
        known: numbers[3..].try_into().unwrap(),
    }
}

/// Packs an instance, checks all that must hold, and tells how many sheets it took.
fn sheets(instance: &Instance, may_turn: bool) -> usize {
    let all = instance.pieces.iter();
    let pieces: Vec<Piece> = all.map(|&size| Piece { size, may_turn }).collect();
    let room = Room {
        size: instance.room,
        gap: Length::ZERO,
    };
    let packing = pack(&pieces, &room);
    sound::check(&pieces, &room, &packing);
    let ours = bound(&pieces, &room);
    let taken = packing.sheets.len();
    let (least, known) = if may_turn {
        (instance.least[2], instance.known[1].min(instance.known[3]))
    } else {
        (instance.least[1], instance.known[0].min(instance.known[2]))
    };
    let name = &instance.name;
    assert!(
        taken >= least,
        "{name}: {taken} sheets, but {least} are needed"
    );
    assert!(
        ours >= instance.least[0],
        "{name}: our bound {ours} is below that by area"
    );
    assert!(
        ours <= known,
        "{name}: our bound {ours}, but {known} sheets are enough"
    );
    taken
}

/// How much more than the sum of the best known values three stages need, in per cent.
fn excess(may_turn: bool, known: usize) -> (usize, usize, f64) {
    let all = instances();
    assert_eq!(all.len(), 24);
    let taken: usize = all.iter().map(|i| sheets(i, may_turn)).sum();
    let best: usize = all.iter().map(|i| i.known[known]).sum();
    (taken, best, (taken as f64 / best as f64 - 1.0) * 100.0)
}

/// At most one per cent is our choice; three would be fair for a simple way.
#[test]
fn instances_of_the_literature_when_pieces_may_be_turned() {
    let (taken, best, excess) = excess(true, 1);
    assert!(
        excess <= 1.0,
        "{taken} sheets, best known {best}: {excess:.2} % more"
    );
}

#[test]
fn instances_of_the_literature_when_pieces_may_not_be_turned() {
    let (taken, best, excess) = excess(false, 2);
    assert!(
        excess <= 1.0,
        "{taken} sheets, best known {best}: {excess:.2} % more"
    );
}

/// Room 10 by 10; sheets when pieces may not be turned, and when they may. By argument:
/// areas fill a sheet exactly or exceed it, or two pieces over half of the room exclude each other.
#[test]
fn small_cases_with_a_known_answer() {
    type Sizes = &'static [(f64, f64)];
    let cases: [(&str, Sizes, usize, usize); 6] = [
        ("four quarters", &[(5.0, 5.0); 4], 1, 1),
        ("and one more", &[(5.0, 5.0); 5], 2, 2),
        ("more than half", &[(6.0, 6.0); 3], 3, 3),
        ("full length", &[(10.0, 6.0); 2], 2, 2),
        // Turned, all four lie in a pinwheel, which no cut from edge to edge parts.
        ("4 x (6,4)", &[(6.0, 4.0); 4], 2, 2),
        (
            "two full sheets",
            &[(6.0, 10.0), (4.0, 10.0), (10.0, 5.0), (10.0, 5.0)],
            2,
            2,
        ),
    ];
    for (name, sizes, straight, turned) in cases {
        for (may_turn, wanted) in [(false, straight), (true, turned)] {
            let pieces: Vec<Piece> = sizes.iter().map(|s| piece(s.0, s.1, may_turn)).collect();
            let packing = pack(&pieces, &room(10.0, 10.0, 0.0));
            sound::check(&pieces, &room(10.0, 10.0, 0.0), &packing);
            assert_eq!(
                packing.sheets.len(),
                wanted,
                "{name}, may be turned: {may_turn}"
            );
        }
    }
}

/// Five pieces that fill a sheet only as a pinwheel, which takes no guillotine cut.
#[test]
fn a_pinwheel_takes_two_sheets() {
    let sizes = [(3.0, 2.0), (2.0, 3.0), (3.0, 2.0), (2.0, 3.0), (1.0, 1.0)];
    let pieces = sizes.map(|(w, h)| piece(w, h, false));
    assert_eq!(pack(&pieces, &room(5.0, 5.0, 0.0)).sheets.len(), 2);
    assert_eq!(
        bound(&pieces, &room(5.0, 5.0, 0.0)),
        1,
        "without cuts one is enough"
    );
}

/// So many squares take one sheet, and one more takes two.
fn holds(room: &Room, side: Length, tiles: usize) {
    let tile = Piece {
        size: Size::square(side),
        may_turn: true,
    };
    for (n, wanted) in [(tiles, 1), (tiles + 1, 2)] {
        let pieces = vec![tile; n];
        let packing = pack(&pieces, room);
        sound::check(&pieces, room, &packing);
        assert_eq!(packing.sheets.len(), wanted, "{n} of {side:?} in {room:?}");
        assert_eq!(bound(&pieces, room), wanted, "{n} of {side:?} in {room:?}");
    }
}

fn within(paper: Size, margin: Length, gap: Length) -> Room {
    let size = Size::new(paper.w - margin * 2, paper.h - margin * 2);
    Room { size, gap }
}

#[test]
fn sheets_hold_as_many_squares_as_the_grid() {
    for (paper, margin, tile, gap, columns, rows) in WITH_GAPS {
        let room = within(paper.size(), Length::mm(margin), Length::mm(gap));
        holds(
            &room,
            Length::mm(tile),
            usize::try_from(columns * rows).unwrap(),
        );
    }
    for (side, a4, letter) in TOUCHING {
        for (paper, tiles) in [(Paper::A4, a4), (Paper::Letter, letter)] {
            holds(
                &within(paper.size(), MARGIN, Length::ZERO),
                Length::mm(side),
                tiles,
            );
        }
    }
}

/// Laminating pouches of usual size (common practice): A4 216 by 303 mm, Letter 9 by 11.5 inches.
/// Finished tiles are the printed square and 4 mm of film around it, touching, without margin.
/// Printed side in mm; tiles in an A4 pouch, in a Letter pouch.
const IN_POUCHES: [(f64, usize, usize); 12] = [
    (30.0, 35, 42),
    (40.0, 24, 24),
    (45.0, 20, 20),
    (50.0, 15, 15),
    (55.0, 12, 12),
    (60.0, 12, 12),
    (65.0, 8, 12),
    (70.0, 6, 6),
    (75.0, 6, 6),
    (80.0, 6, 6),
    (90.0, 6, 4),
    (100.0, 4, 4),
];

#[test]
fn pouches_hold_as_many_finished_tiles_as_the_grid() {
    for (side, a4, letter) in IN_POUCHES {
        for (pouch, tiles) in [
            (Size::mm(216.0, 303.0), a4),
            (Size::mm(228.6, 292.1), letter),
        ] {
            let finished = Length::mm(side + 8.0);
            let (columns, rows) = capacity(pouch, Length::ZERO, finished, Length::ZERO);
            assert_eq!(usize::try_from(columns * rows), Ok(tiles), "{side} mm");
            holds(&within(pouch, Length::ZERO, Length::ZERO), finished, tiles);
        }
    }
}
