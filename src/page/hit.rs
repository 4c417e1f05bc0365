//! What lies under a place on a page.

use super::{Block, Item, Page, Source};
use crate::units::path::Seg;
use crate::units::{Length, Point, Rect};

/// How far letters reach above and below their baseline, as parts of the letter size. Generous, so
/// that a click beside a letter counts.
const ABOVE: f64 = 1.0;
const BELOW: f64 = 0.4;

/// What the uppermost block with a source under this place shows.
pub fn hit(page: &Page, at: Point) -> Option<Source> {
    page.blocks
        .iter()
        .rev()
        .filter(|b| b.source.is_some())
        .find(|b| block_box(b).is_some_and(|r| r.contains(at)))
        .and_then(|b| b.source)
}

/// All places where something is shown, as the smallest rectangle around each of its blocks.
pub fn places(page: &Page, what: Source) -> Vec<Rect> {
    page.blocks
        .iter()
        .filter(|b| b.source == Some(what))
        .filter_map(block_box)
        .collect()
}

/// The smallest rectangle around a block's items, lines without their width.
pub fn block_box(block: &Block) -> Option<Rect> {
    block.items.iter().filter_map(item_box).reduce(union)
}

/// The smallest rectangle around an item; around the control points of its curves.
pub fn item_box(item: &Item) -> Option<Rect> {
    match item {
        Item::Text { at, line, .. } => {
            let size = line.runs.iter().map(|(_, r)| r.size).max()?;
            let above = size.scale(ABOVE);
            let h = above + size.scale(BELOW);
            Some(Rect {
                x: at.x,
                y: at.y - above,
                w: line.width,
                h,
            })
        }
        Item::Symbol { rect, .. } => Some(rect.middle_square()),
        Item::Shape { path, .. } => {
            let mut points = path.segs.iter().flat_map(|s| match *s {
                Seg::Move(p) | Seg::Line(p) => vec![p],
                Seg::Cubic(a, b, p) => vec![a, b, p],
                Seg::Close => Vec::new(),
            });
            let first = points.next()?;
            let (mut min, mut max) = (first, first);
            for p in points {
                min = Point::new(min.x.min(p.x), min.y.min(p.y));
                max = Point::new(max.x.max(p.x), max.y.max(p.y));
            }
            Some(Rect {
                x: min.x,
                y: min.y,
                w: max.x - min.x,
                h: max.y - min.y,
            })
        }
    }
}

/// The smallest rectangle around two.
pub fn union(a: Rect, b: Rect) -> Rect {
    let (x, y): (Length, Length) = (a.x.min(b.x), a.y.min(b.y));
    Rect {
        x,
        y,
        w: a.right().max(b.right()) - x,
        h: a.bottom().max(b.bottom()) - y,
    }
}
