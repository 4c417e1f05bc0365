//! Several strips on one page, each in a frame of its own: frames of one size, cut apart or folded
//! on dashed lines, each with whose it is, which strip it is and a place for the pointer.

use super::desk::{Desk, Person};
use super::frame::draw_mark;
use super::ink;
use super::shapes::{Look, shape};
use super::strips::{self, Strip};
use super::words::{TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// White inside the edge of a frame.
const PAD: Length = Length::um(3_000);
/// Height of a frame's heading with a line below it, and letters of that.
const TITLE: Length = Length::um(14_500);
const BELOW_PT: f64 = 12.0;
/// Below the head of a frame.
const BELOW: Length = Length::um(2_000);
/// Between heading and pointer where they stand side by side, and the least room for a heading.
const GAP: Length = Length::um(4_000);
const LEAST_TITLE: Length = Length::um(42_000);

/// How many frames stand on a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Frames {
    pub across: usize,
    pub down: usize,
}

impl Frames {
    /// All ways to have several on a page, those with the most frames first.
    pub fn several() -> Vec<Self> {
        let ways = (1..=3).flat_map(|across| (1..=4).map(move |down| Self { across, down }));
        let mut ways: Vec<Self> = ways.filter(|f| f.len() > 1).collect();
        ways.sort_by_key(|f| (std::cmp::Reverse(f.len()), f.across));
        ways
    }

    pub const fn len(self) -> usize {
        self.across * self.down
    }

    /// The frame with a number on a page, in reading order.
    pub fn frame(self, content: Rect, index: usize) -> Rect {
        let w = content.w / self.across as i64;
        let h = content.h / self.down as i64;
        let (column, line) = (index % self.across, index / self.across);
        let corner = content.origin().moved(w * column as i64, h * line as i64);
        Rect::new(corner, Size::new(w, h))
    }
}

/// Heading and place for the pointer of a frame, and the room below them.
#[derive(Clone, Copy, Debug)]
pub(super) struct Inside {
    title: Rect,
    pointer: Rect,
    pub room: Rect,
}

/// The inside of a frame; none where a pointer does not fit.
pub(super) fn inside(frame: Rect, person: &Person<'_>, seal: Length) -> Option<Inside> {
    let all = frame.shrink(PAD);
    let pointer = strips::pointer_place(person.who.tile_size(), seal);
    let beside = all.w >= pointer.w + GAP + LEAST_TITLE;
    if pointer.w > all.w {
        return None;
    }
    let corner = match beside {
        true => Point::new(all.right() - pointer.w, all.y),
        false => Point::new(all.x, all.y + TITLE),
    };
    let pointer = Rect::new(corner, pointer);
    let title = Rect {
        w: match beside {
            true => pointer.x - GAP - all.x,
            false => all.w,
        },
        h: match beside {
            true => pointer.h,
            false => TITLE,
        },
        ..all
    };
    let top = pointer.bottom().max(title.bottom()) + BELOW;
    let room = Rect {
        y: top,
        h: all.bottom() - top,
        ..all
    };
    (room.h > Length::ZERO).then_some(Inside {
        title,
        pointer,
        room,
    })
}

/// Mark, heading with the parts of the day below, and place for the pointer.
pub(super) fn draw_head(
    person: &Person<'_>,
    (strip, parts): (&Strip, &str),
    inside: &Inside,
    page: &mut PageWriter<Everyone>,
) {
    let title = inside.title;
    let plate = Rect::new(title.origin(), Size::square(Length::mm(9.0)));
    draw_mark(page, plate, &person.mark, &person.mark_words);
    let x = plate.right() + Length::mm(3.0);
    let style = Style::bold(Length::pt(18.0));
    let lines = if title.h > TITLE { 2 } else { 1 };
    let room = title.right() - x;
    let words = Words::wrapped(&strip.title(), &style, room, TIGHT, lines);
    let one = Length::pt(18.0).scale(TIGHT);
    let at = Point::new(x, plate.center().y - one / 2);
    page.heading(2, words.left(at, ink::INK));
    let y = at.y + words.height() + Length::mm(0.6);
    let style = Style::regular(Length::pt(BELOW_PT));
    let free = (title.bottom() - y).times(style.size.scale(TIGHT));
    let lines = usize::try_from(free).unwrap_or(1).clamp(1, 3);
    let parts = Words::wrapped(parts, &style, room, TIGHT, lines);
    page.paragraph(None, parts.left(Point::new(x, y), ink::SOFT));
    strips::draw_pointer_place(inside.pointer, page);
}

/// Dashes around some frames, to cut or to fold along. Where two frames meet, the dashes of both
/// begin at one end and lie on each other.
pub(super) fn draw_cuts(frames: &[Rect], page: &mut PageWriter<Everyone>) {
    let dashes = Look::line(ink::HATCH, ink::THIN).dashed(Length::mm(2.4), Length::mm(2.0));
    let edges = |r: &Rect| {
        let p = Point::new;
        let corners = [
            (p(r.x, r.y), p(r.right(), r.y)),
            (p(r.x, r.bottom()), p(r.right(), r.bottom())),
            (p(r.x, r.y), p(r.x, r.bottom())),
            (p(r.right(), r.y), p(r.right(), r.bottom())),
        ];
        let segs = corners.map(|(a, b)| [Seg::Move(a), Seg::Line(b)]);
        let path = Path {
            segs: segs.into_iter().flatten().collect(),
        };
        shape(path, dashes)
    };
    page.artifact(frames.iter().map(edges).collect());
}

/// Which strips of some stand on one page: "strips 3 to 6".
pub(super) fn which(first: usize, last: usize) -> String {
    match last - first {
        0 => format!("strip {}", first + 1),
        1 => format!("strips {} and {}", first + 1, last + 1),
        _ => format!("strips {} to {}", first + 1, last + 1),
    }
}

/// How large things stand, where that is not left open: what is seen no smaller, letters no larger.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sizes {
    pub picture: Option<Length>,
    pub letters: Option<Length>,
}

/// The smallest pictures in a frame: half as large as the participant's tiles at least.
pub(super) fn least_picture(desk: &Desk<'_>, person: &Person<'_>) -> Length {
    let most = desk.request.paper.size().w.scale(0.3);
    person.who.tile.scale(0.5).min(most).max(Length::mm(26.0))
}
