//! A trimmer on the desk: the cuts of a sheet are made one after the other on paper.

use daystrand::layout::packing::{
    Cut, Direction, PackedSheet, Piece, Placed, Room, Stack, Strip, cuts, pack,
};
use daystrand::units::{Length, Point, Rect, Size};

use super::{piece, room};

/// Paper around the room, so that its border is something to cut.
const MARGIN: Length = Length::um(10_000);

/// Makes the cuts of a sheet. Fails unless each goes from edge to edge of the papers it goes
/// through, parts or frees a piece, spoils none, and every piece is a paper by itself in the end.
pub fn take_apart(sheet: &PackedSheet) -> Vec<Cut> {
    let all = cuts(sheet);
    let size = Size::new(sheet.room.w + MARGIN * 2, sheet.room.h + MARGIN * 2);
    let mut papers = vec![Rect::new(Point::new(-MARGIN, -MARGIN), size)];
    let pieces: Vec<Rect> = sheet.pieces().map(|p| p.at).collect();
    for cut in &all {
        make(cut, sheet, &mut papers, &pieces);
    }
    for piece in &pieces {
        assert!(
            papers.contains(piece),
            "{piece:?} is not cut out: {papers:?}"
        );
    }
    assert!(
        all.is_sorted_by_key(|c| c.stage),
        "one step after the other"
    );
    all
}

fn make(cut: &Cut, sheet: &PackedSheet, papers: &mut Vec<Rect>, pieces: &[Rect]) {
    let way = if cut.from.y == cut.to.y {
        Direction::Across
    } else {
        Direction::Down
    };
    let odd = cut.stage % 2 == 1;
    assert_eq!(way == sheet.first, odd, "{cut:?} goes the wrong way");
    let (at, mut from, mut to) = match way {
        Direction::Across => (cut.from.y, cut.from.x, cut.to.x),
        Direction::Down => (cut.from.x, cut.from.y, cut.to.y),
    };
    assert!(from < to, "{cut:?}");
    if cut.stage == 1 {
        from -= MARGIN;
        to += MARGIN;
    }
    let (mut first, mut last, mut useful) = (to, from, false);
    for paper in std::mem::take(papers) {
        let (begin, end, left, right) = ends(paper, way);
        let through = begin < at && at < end && left < to && from < right;
        if !through {
            papers.push(paper);
            continue;
        }
        assert!(
            from <= left && right <= to,
            "{cut:?} stops inside of {paper:?}"
        );
        (first, last) = (first.min(left), last.max(right));
        useful |= pieces.iter().any(|p| paper.encloses(*p));
        papers.extend(halves(paper, way, at));
    }
    assert!(useful, "{cut:?} cuts nothing");
    assert_eq!(
        (first, last),
        (from, to),
        "{cut:?} begins or ends where no paper is"
    );
    for p in pieces {
        assert!(
            papers.iter().any(|paper| paper.encloses(*p)),
            "{cut:?} spoils {p:?}"
        );
    }
}

/// Begin and end across the cut, then along it.
fn ends(r: Rect, way: Direction) -> (Length, Length, Length, Length) {
    match way {
        Direction::Across => (r.y, r.bottom(), r.x, r.right()),
        Direction::Down => (r.x, r.right(), r.y, r.bottom()),
    }
}

fn halves(r: Rect, way: Direction, at: Length) -> [Rect; 2] {
    match way {
        Direction::Across => [
            Rect { h: at - r.y, ..r },
            Rect {
                y: at,
                h: r.bottom() - at,
                ..r
            },
        ],
        Direction::Down => [
            Rect { w: at - r.x, ..r },
            Rect {
                x: at,
                w: r.right() - at,
                ..r
            },
        ],
    }
}

fn only(pieces: &[Piece], room: &Room) -> PackedSheet {
    let mut packing = pack(pieces, room);
    assert_eq!(packing.sheets.len(), 1);
    packing.sheets.remove(0)
}

#[test]
fn a_grid_takes_as_many_cuts_as_it_has_lines() {
    for (columns, rows) in [(3, 4), (1, 1), (1, 5), (6, 1), (2, 2), (4, 6)] {
        let grid = vec![piece(20.0, 20.0, true); columns * rows];
        let room = room(20.0 * columns as f64 + 7.0, 20.0 * rows as f64 + 3.0, 0.0);
        let sheet = only(&grid, &room);
        assert_eq!(
            take_apart(&sheet).len(),
            (columns + 1) + (rows + 1),
            "{columns} x {rows}"
        );
    }
}

#[test]
fn a_grid_with_gaps_is_cut_on_both_sides_of_a_gap() {
    let sheet = only(&[piece(20.0, 20.0, false); 12], &room(75.0, 100.0, 5.0));
    let cuts = take_apart(&sheet);
    assert_eq!(cuts.len(), 2 * 3 + 2 * 4);
    let inner = cuts.iter().filter(|c| c.stage == 2);
    assert!(inner.clone().count() > 0);
    assert!(
        inner
            .clone()
            .all(|c| c.from.y == Length::ZERO && c.to.y == Length::mm(95.0))
    );
}

#[test]
fn the_lines_of_a_grid_go_through_the_whole_block() {
    let sheet = only(&[piece(45.0, 45.0, true); 24], &room(190.0, 277.0, 0.0));
    for cut in take_apart(&sheet) {
        let (dx, dy) = (cut.to.x - cut.from.x, cut.to.y - cut.from.y);
        let whole = [
            (Length::mm(190.0), Length::ZERO),
            (Length::ZERO, Length::mm(270.0)),
        ];
        let whole_down = [
            (Length::mm(180.0), Length::ZERO),
            (Length::ZERO, Length::mm(277.0)),
        ];
        assert!(
            whole.contains(&(dx, dy)) || whole_down.contains(&(dx, dy)),
            "{cut:?}"
        );
    }
}

/// A broad piece and beside it two rows of two, below them one that is narrower: all four steps.
#[test]
fn a_mixed_sheet_falls_apart_into_its_pieces() {
    let pieces = [
        piece(60.0, 80.0, false),
        piece(30.0, 40.0, false),
        piece(30.0, 40.0, false),
        piece(30.0, 40.0, false),
        piece(25.0, 40.0, false),
        piece(120.0, 20.0, false),
    ];
    let sheet = only(&pieces, &room(120.0, 100.0, 0.0));
    let all = take_apart(&sheet);
    let of = |stage: u8| all.iter().filter(|c| c.stage == stage).count();
    // One cut through both stacks of small ones, one trim.
    assert_eq!((of(3), of(4)), (1, 1), "{all:#?}");
    assert_eq!(of(1) + of(2), 3 + 4, "{all:#?}");
}

/// Strips of touching pieces as deep as their strip: depth, widths.
fn by_hand(size: Size, strips: &[(f64, &[f64])]) -> PackedSheet {
    let (mut y, mut piece) = (Length::ZERO, 0);
    let strip = |(depth, widths): &(f64, &[f64])| {
        let (mut x, depth) = (Length::ZERO, Length::mm(*depth));
        let stack = |w: &f64| {
            let at = Rect::new(Point::new(x, y), Size::new(Length::mm(*w), depth));
            x += at.w;
            piece += 1;
            let placed = Placed {
                piece: piece - 1,
                at,
                turned: false,
            };
            Stack {
                at,
                pieces: vec![placed],
            }
        };
        let stacks = widths.iter().map(stack).collect();
        let at = Rect::new(Point::new(Length::ZERO, y), Size::new(size.w, depth));
        y += depth;
        Strip { at, stacks }
    };
    PackedSheet {
        room: size,
        first: Direction::Across,
        strips: strips.iter().map(strip).collect(),
    }
}

#[test]
fn one_cut_goes_through_neighbours_only() {
    let strips: [(f64, &[f64]); 3] = [
        (30.0, &[80.0]),
        (20.0, &[50.0, 50.0]),
        (10.0, &[40.0, 40.0]),
    ];
    let all = take_apart(&by_hand(Size::mm(100.0, 60.0), &strips));
    // The left edge is common to all three; 80 is one of the first and the last, not of the middle.
    assert_eq!(all.iter().filter(|c| c.stage == 2).count(), 1 + 1 + 2 + 2);
    let strips: [(f64, &[f64]); 3] = [
        (30.0, &[80.0]),
        (20.0, &[40.0, 40.0]),
        (10.0, &[40.0, 40.0]),
    ];
    let all = take_apart(&by_hand(Size::mm(100.0, 60.0), &strips));
    assert_eq!(all.iter().filter(|c| c.stage == 2).count(), 1 + 1 + 1);
}
