//! What every packing must keep, found out from the rectangles alone.

use daystrand::layout::packing::{Direction, PackedSheet, Packing, Piece, Room};
use daystrand::units::{Length, Point, Rect, Size};

/// Fails unless every piece lies on one sheet, whole, apart from others and so that three steps of
/// cuts part it from them; or is rightly called too large.
pub fn check(pieces: &[Piece], room: &Room, packing: &Packing) {
    let mut seen = vec![0; pieces.len()];
    for &i in &packing.too_large {
        seen[i] += 1;
        assert!(!fits(&pieces[i], room), "piece {i} would fit a sheet");
    }
    assert!(packing.too_large.is_sorted());
    for sheet in &packing.sheets {
        assert!(sheet.pieces().next().is_some(), "an empty sheet");
        assert_eq!(sheet.room, room.size);
        for p in sheet.pieces() {
            seen[p.piece] += 1;
            let size = pieces[p.piece].size;
            assert!(
                !p.turned || pieces[p.piece].may_turn,
                "{p:?} may not lie on its side"
            );
            let lies = if p.turned { size.turned() } else { size };
            assert_eq!(p.at.size(), lies, "{p:?} is {size:?}");
            let whole = Rect::new(Point::default(), room.size);
            assert!(whole.encloses(p.at), "{p:?} is not within {whole:?}");
        }
        apart(sheet, room.gap);
        nested(sheet);
        let at: Vec<Rect> = sheet.pieces().map(|p| p.at).collect();
        let parted = parts(&at, sheet.first, 3);
        assert!(parted, "more than three steps to part {at:?}");
    }
    assert!(seen.iter().all(|&n| n == 1), "times placed: {seen:?}");
}

fn fits(piece: &Piece, room: &Room) -> bool {
    let inside = |s: Size| s.w <= room.size.w && s.h <= room.size.h;
    let size = piece.size;
    let any = size.w > Length::ZERO && size.h > Length::ZERO;
    any && (inside(size) || piece.may_turn && inside(size.turned()))
}

fn apart(sheet: &PackedSheet, gap: Length) {
    let all: Vec<_> = sheet.pieces().collect();
    for (i, a) in all.iter().enumerate() {
        let around = Rect::new(
            a.at.origin().moved(-gap, -gap),
            Size::new(a.at.w + gap * 2, a.at.h + gap * 2),
        );
        for b in &all[i + 1..] {
            assert!(
                !around.overlaps(b.at),
                "{a:?} and {b:?} are nearer than {gap:?}"
            );
        }
    }
}

/// Strips lie in the sheet, stacks in their strip, pieces in their stack.
fn nested(sheet: &PackedSheet) {
    let whole = Rect::new(Point::default(), sheet.room);
    let mut strips = Vec::new();
    for strip in &sheet.strips {
        assert!(whole.encloses(strip.at));
        let (length, full) = match sheet.first {
            Direction::Across => (strip.at.w, whole.w),
            Direction::Down => (strip.at.h, whole.h),
        };
        assert_eq!(length, full, "a strip goes from edge to edge");
        strips.push(strip.at);
        for stack in &strip.stacks {
            assert!(strip.at.encloses(stack.at), "{:?} {:?}", strip.at, stack.at);
            assert!(stack.pieces.iter().all(|p| stack.at.encloses(p.at)));
        }
        let stacks: Vec<Rect> = strip.stacks.iter().map(|s| s.at).collect();
        assert!(parts(&stacks, sheet.first.other(), 1));
    }
    assert!(parts(&strips, sheet.first, 1));
}

/// Whether cuts from edge to edge, `steps` times one way and then the other, part all rectangles
/// from each other. To cut wherever that is possible never does harm: it makes smaller parts.
pub fn parts(all: &[Rect], way: Direction, steps: u8) -> bool {
    if all.len() < 2 {
        return true;
    }
    if steps == 0 {
        return false;
    }
    let ends = |r: &Rect| match way {
        Direction::Across => (r.y, r.bottom()),
        Direction::Down => (r.x, r.right()),
    };
    let mut sorted = all.to_vec();
    sorted.sort_by_key(|r| ends(r));
    let mut groups: Vec<Vec<Rect>> = Vec::new();
    let mut reach = Length::um(i64::MIN);
    for r in sorted {
        let (from, to) = ends(&r);
        match groups.last_mut() {
            Some(group) if from < reach => group.push(r),
            _ => groups.push(vec![r]),
        }
        reach = reach.max(to);
    }
    groups.iter().all(|g| parts(g, way.other(), steps - 1))
}

#[test]
fn a_pinwheel_cannot_be_parted() {
    let mm = Rect::mm;
    let pinwheel = [
        mm(0.0, 0.0, 3.0, 2.0),
        mm(3.0, 0.0, 2.0, 3.0),
        mm(2.0, 3.0, 3.0, 2.0),
        mm(0.0, 2.0, 2.0, 3.0),
        mm(2.0, 2.0, 1.0, 1.0),
    ];
    for way in [Direction::Across, Direction::Down] {
        assert!(!parts(&pinwheel, way, 9));
    }
    // Two columns, the left one of two rows, the upper one of two columns: three steps down, four
    // steps across.
    let nested = [
        mm(0.0, 0.0, 1.0, 1.0),
        mm(1.0, 0.0, 1.0, 1.0),
        mm(0.0, 1.0, 2.0, 1.0),
        mm(2.0, 0.0, 1.0, 2.0),
    ];
    assert!(parts(&nested, Direction::Down, 3));
    assert!(!parts(&nested, Direction::Down, 2));
    assert!(!parts(&nested, Direction::Across, 3));
    assert!(parts(&nested, Direction::Across, 4));
}
