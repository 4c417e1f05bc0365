//! The cuts of a sheet in the order to make them.
//!
//! First all cuts across the whole sheet, then the second cuts, the third and the trimming. Parts
//! that are divided at the same place are not cut one by one: strips that lie next to each other
//! stay in place (or are laid on each other against the fence) and one cut goes through all of them
//! that have an edge there; likewise stacks of one strip that have an edge at the same depth, and
//! pieces of one stack that end at the same width. So `c` columns and `r` rows of equal pieces that
//! touch are `(c + 1) + (r + 1)` cuts: each goes through the whole block, or the whole sheet.
//!
//! No edge is cut twice, and no cut is left out: pieces at the border of the room are cut there too,
//! for the margin is around them. A first cut goes from one side of the room to the other; whoever
//! draws it carries it on through the margins. Every other cut ends at edges that are cut by then.
//! With a gap between pieces both of its sides are cut.

use crate::units::{Length, Point, Rect};

use super::{Direction, PackedSheet, Stack, Strip};

/// A straight cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cut {
    /// 1 makes strips, 2 makes stacks, 3 makes pieces, 4 trims pieces.
    pub stage: u8,
    /// Its left or upper end.
    pub from: Point,
    /// Its right or lower end.
    pub to: Point,
}

/// Places where something is to be cut, and the stretch there: from, to.
struct Edges {
    at: Vec<Length>,
    from: Length,
    to: Length,
}

/// The cuts that take a sheet apart into its pieces.
pub fn cuts(sheet: &PackedSheet) -> Vec<Cut> {
    let way = sheet.first;
    let mut cuts = Vec::new();
    let length = match way {
        Direction::Across => sheet.room.w,
        Direction::Down => sheet.room.h,
    };
    let strips = sheet.strips.iter().flat_map(|s| ends(deep(way, s.at)));
    let whole = Edges {
        at: strips.collect(),
        from: Length::ZERO,
        to: length,
    };
    lines(1, way, &[whole], &mut cuts);
    let second: Vec<_> = sheet.strips.iter().map(|s| across_strip(way, s)).collect();
    lines(2, way.other(), &second, &mut cuts);
    for strip in &sheet.strips {
        let third: Vec<_> = strip.stacks.iter().map(|s| across_stack(way, s)).collect();
        lines(3, way, &third, &mut cuts);
    }
    for stack in sheet.strips.iter().flat_map(|s| &s.stacks) {
        lines(4, way.other(), &trims(way, stack), &mut cuts);
    }
    cuts
}

fn across_strip(way: Direction, strip: &Strip) -> Edges {
    let (from, to) = deep(way, strip.at);
    let at = strip.stacks.iter().flat_map(|s| ends(along(way, s.at)));
    Edges {
        at: at.collect(),
        from,
        to,
    }
}

fn across_stack(way: Direction, stack: &Stack) -> Edges {
    let (from, to) = along(way, stack.at);
    let edges = ends(deep(way, stack.at));
    let at = stack.pieces.iter().flat_map(|p| ends(deep(way, p.at)));
    // The edges of the strip are cut already.
    let at = at.filter(|e| !edges.contains(e)).collect();
    Edges { at, from, to }
}

fn trims(way: Direction, stack: &Stack) -> Vec<Edges> {
    let edge = along(way, stack.at).1;
    let trim = |at: Rect| {
        let end = along(way, at).1;
        let (from, to) = deep(way, at);
        let at = if end < edge { vec![end] } else { Vec::new() };
        Edges { at, from, to }
    };
    stack.pieces.iter().map(|p| trim(p.at)).collect()
}

/// One cut for each place in each run of neighbours that have an edge there: run by run, each from
/// the left or from the top.
fn lines(stage: u8, way: Direction, parts: &[Edges], cuts: &mut Vec<Cut>) {
    let mut found: Vec<(usize, Length, Length, Length)> = Vec::new();
    let mut open: Vec<(usize, Length)> = Vec::new();
    for (i, part) in parts.iter().enumerate() {
        let mut at = part.at.clone();
        at.sort_unstable();
        at.dedup();
        let begun = |at: &Length| open.iter().find(|o| o.1 == *at);
        let now: Vec<_> = at
            .iter()
            .map(|a| begun(a).map_or((i, *a), |o| *o))
            .collect();
        for (start, at) in &now {
            if *start == i {
                found.push((i, *at, part.from, part.to));
            } else if let Some(line) = found.iter_mut().rev().find(|f| (f.0, f.1) == (*start, *at))
            {
                line.3 = part.to;
            }
        }
        open = now;
    }
    cuts.extend(found.into_iter().map(|(_, at, from, to)| {
        let point = |along: Length| match way {
            Direction::Across => Point::new(along, at),
            Direction::Down => Point::new(at, along),
        };
        Cut {
            stage,
            from: point(from),
            to: point(to),
        }
    }));
}

fn ends((from, to): (Length, Length)) -> [Length; 2] {
    [from, to]
}

fn along(way: Direction, r: Rect) -> (Length, Length) {
    match way {
        Direction::Across => (r.x, r.right()),
        Direction::Down => (r.y, r.bottom()),
    }
}

fn deep(way: Direction, r: Rect) -> (Length, Length) {
    along(way.other(), r)
}
