//! A small picture of a sheet or a pouch with its tiles and numbered cuts.

use crate::layout::desk::Person;
use crate::layout::frame::picture;
use crate::layout::ink;
use crate::layout::making::{Arranged, Laying, Making};
use crate::layout::packing::Cut;
use crate::layout::shapes::{Look, circle, line, rounded};
use crate::layout::words::Words;
use crate::page::Item;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Room around the picture for the numbers of cuts that come out of it.
pub(super) const AROUND: Length = Length::um(7_000);
/// Radius of the plate of a number.
const PLATE: Length = Length::um(2_300);

/// Height that a picture takes at a width, numbers included.
pub(super) fn height(of: &Arranged, width: Length) -> Length {
    (width - AROUND * 2).scale(of.size.h.to_mm() / of.size.w.to_mm()) + AROUND * 2
}

/// The width at which two pictures stand one below the other in a height, if that is less.
pub(super) fn width_for_two(of: &Arranged, most: Length, room: Length) -> Length {
    let inside = room / 2 - AROUND * 2;
    most.min(inside.scale(of.size.w.to_mm() / of.size.h.to_mm()) + AROUND * 2)
}

/// From the paper to the picture.
struct Small {
    at: Point,
    scale: f64,
}

impl Small {
    fn point(&self, p: Point) -> Point {
        self.at.moved(p.x.scale(self.scale), p.y.scale(self.scale))
    }

    fn rect(&self, r: Rect) -> Rect {
        let (a, b) = (
            self.point(r.origin()),
            self.point(Point::new(r.right(), r.bottom())),
        );
        Rect::new(a, Size::new(b.x - a.x, b.y - a.y))
    }
}

/// The picture, its top left corner at `corner`. With `film`, tiles are drawn within it.
pub(super) fn draw(
    people: &[Person<'_>],
    making: &Making,
    (of, sheet): (&Arranged, &Laying),
    (corner, width): (Point, Length),
    film: Length,
) -> Vec<Item> {
    let inside = width - AROUND * 2;
    let small = Small {
        at: corner.moved(AROUND, AROUND),
        scale: inside.to_mm() / of.size.w.to_mm(),
    };
    let paper = small.rect(Rect::new(Point::default(), of.size));
    let edge = Look::line(ink::SEAL_EDGE, ink::THIN).on(ink::PAPER);
    let mut items = vec![rounded(paper, Length::ZERO, edge)];
    for &(piece, at) in &sheet.places {
        let wanted = making.piece(piece);
        let tile = small.rect(at.shrink(film));
        items.push(rounded(tile, Length::ZERO, Look::filled(ink::SEAL)));
        let number = Words::line(
            &wanted.number.to_string(),
            &Style::bold(Length::pt(7.0)),
            tile.w,
        );
        let side = tile.w.min(tile.h).scale(0.4).min(Length::mm(7.0));
        if wanted.key.whose.is_some() && side + number.height() < tile.h {
            let all = side + number.height();
            let corner = Point::new(tile.center().x - side / 2, tile.center().y - all / 2);
            let mark = Rect::new(corner, Size::square(side));
            items.push(picture(&people[wanted.person].mark, mark));
            items.extend(number.centred(Point::new(tile.center().x, mark.bottom()), ink::SOFT));
        } else {
            items.extend(number.amid(tile.center(), ink::SOFT));
        }
    }
    for (i, cut) in sheet.cuts.iter().enumerate() {
        items.extend(draw_cut(&small, cut, i + 1, paper, sheet.block));
    }
    items
}

/// A cut with its number: outside the paper where it begins at the edge of all tiles, else where it
/// begins.
fn draw_cut(small: &Small, cut: &Cut, number: usize, paper: Rect, block: Rect) -> Vec<Item> {
    let (mut from, mut to) = (small.point(cut.from), small.point(cut.to));
    let down = cut.from.x == cut.to.x;
    let plate = match down {
        true if cut.from.y == block.y => {
            from.y = paper.y - AROUND + PLATE * 2;
            from.moved(Length::ZERO, -PLATE)
        }
        false if cut.from.x == block.x => {
            from.x = paper.x - AROUND + PLATE * 2;
            from.moved(-PLATE, Length::ZERO)
        }
        _ => from.moved((to.x - from.x).scale(0.12), (to.y - from.y).scale(0.12)),
    };
    if down && cut.to.y == block.bottom() {
        to.y = paper.bottom();
    } else if !down && cut.to.x == block.right() {
        to.x = paper.right();
    }
    let mut items = vec![line(from, to, ink::INK, Length::um(350))];
    let look = Look::line(ink::INK, ink::THIN).on(ink::PAPER);
    items.push(circle(plate, PLATE, look));
    let words = Words::line(
        &number.to_string(),
        &Style::bold(Length::pt(7.5)),
        Length::mm(9.0),
    );
    items.extend(words.amid(plate, ink::INK));
    items
}
