//! A small picture of a sheet or a pouch with its tiles and numbered cuts.

use crate::layout::desk::Person;
use crate::layout::frame::picture;
use crate::layout::ink;
use crate::layout::making::{Laying, Making, Wanted};
use crate::layout::packing::Cut;
use crate::layout::shapes::{Look, circle, line, rounded};
use crate::layout::words::Words;
use crate::model::club::Rules;
use crate::page::Item;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Room around the picture for the numbers of cuts that come out of it.
pub(super) const AROUND: Length = Length::um(10_500);
/// Radius of the plate of a number.
const PLATE: Length = Length::um(2_300);

/// Height that a picture takes at a width, numbers included.
pub(super) fn height(size: Size, width: Length) -> Length {
    (width - AROUND * 2).scale(size.h.to_mm() / size.w.to_mm()) + AROUND * 2
}

/// The width at which two pictures stand one below the other in a height, or one alone where two would
/// be too small to read.
pub(super) fn width_in(size: Size, most: Length, room: Length) -> Length {
    const READABLE: Length = Length::um(60_000);
    let wide = |high: Length| high.scale(size.w.to_mm() / size.h.to_mm()) + AROUND * 2;
    let two = wide(room / 2 - AROUND * 2);
    let one = wide(room - AROUND * 2);
    most.min(if two >= READABLE { two } else { one })
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

/// The picture, its top left corner at `corner`. With the rules of the film, the paper is drawn within it.
pub(super) fn draw(
    people: &[Person<'_>],
    making: &Making,
    sheet: &Laying,
    (corner, width): (Point, Length),
    film: Option<&Rules>,
) -> Vec<Item> {
    let inside = width - AROUND * 2;
    let small = Small {
        at: corner.moved(AROUND, AROUND),
        scale: inside.to_mm() / sheet.size.w.to_mm(),
    };
    let paper = small.rect(Rect::new(Point::default(), sheet.size));
    let edge = Look::line(ink::SEAL_EDGE, ink::THIN).on(ink::PAPER);
    let mut items = vec![rounded(paper, Length::ZERO, edge)];
    let mut taken = Vec::new();
    for &(piece, at) in &sheet.places {
        let paper = film.map_or(at, |rules| making.paper_in(piece, at, rules));
        let tile = small.rect(paper);
        draw_tile(people, making.piece(piece), tile, (&mut items, &mut taken));
    }
    let all: Vec<Drawn> = sheet
        .cuts
        .iter()
        .map(|c| drawn(&small, c, paper, sheet.block))
        .collect();
    items.extend(
        all.iter()
            .map(|d| line(d.from, d.to, ink::INK, Length::um(350))),
    );
    for (i, cut) in all.iter().enumerate() {
        items.extend(number(cut, i + 1, &mut taken));
    }
    items
}

/// A tile with its mark and its number.
fn draw_tile(
    people: &[Person<'_>],
    wanted: &Wanted,
    tile: Rect,
    (items, taken): (&mut Vec<Item>, &mut Vec<Rect>),
) {
    items.push(rounded(tile, Length::ZERO, Look::filled(ink::SEAL)));
    let style = Style::bold(Length::pt(7.0));
    let number = Words::line(&wanted.number.to_string(), &style, tile.w);
    let side = tile.w.min(tile.h).scale(0.4).min(Length::mm(7.0));
    let has_mark = wanted.key.whose.is_some() && side + number.height() < tile.h;
    let side = if has_mark { side } else { Length::ZERO };
    let top = tile.center().y - (side + number.height()) / 2;
    let middle = tile.center().x;
    let mark = Rect::new(Point::new(middle - side / 2, top), Size::square(side));
    if has_mark {
        items.push(picture(&people[wanted.person].mark, mark));
        taken.push(mark);
    }
    if number.cut {
        return;
    }
    items.extend(number.centred(Point::new(middle, mark.bottom()), ink::SOFT));
    let corner = Point::new(middle - number.width() / 2, mark.bottom());
    taken.push(Rect::new(
        corner,
        Size::new(number.width(), number.height()),
    ));
}

/// A cut as it is drawn, and where its number may stand, the best place first.
struct Drawn {
    from: Point,
    to: Point,
    places: Vec<Point>,
}

/// The number of a cut outside the paper where it begins at the edge of all tiles, in the first row
/// that is free; else along the cut.
fn drawn(small: &Small, cut: &Cut, paper: Rect, block: Rect) -> Drawn {
    let (mut from, mut to) = (small.point(cut.from), small.point(cut.to));
    let down = cut.from.x == cut.to.x;
    let rows = [PLATE + Length::mm(0.6), PLATE * 3 + Length::mm(0.8)];
    let along = |part: f64| from.moved((to.x - from.x).scale(part), (to.y - from.y).scale(part));
    let mut places: Vec<Point> = Vec::new();
    if down && cut.from.y == block.y {
        places.extend(rows.map(|row| Point::new(from.x, paper.y - row)));
    } else if !down && cut.from.x == block.x {
        places.extend(rows.map(|row| Point::new(paper.x - row, from.y)));
    }
    places.extend([0.1, 0.22, 0.36, 0.5, 0.64, 0.78, 0.9].map(along));
    if down && cut.from.y == block.y {
        from.y = paper.y;
    } else if !down && cut.from.x == block.x {
        from.x = paper.x;
    }
    if down && cut.to.y == block.bottom() {
        to.y = paper.bottom();
    } else if !down && cut.to.x == block.right() {
        to.x = paper.right();
    }
    Drawn { from, to, places }
}

/// A number on its plate at the first place that is free; where there is none, as on a sheet of very many
/// small tiles, the order of the others tells it.
fn number(cut: &Drawn, number: usize, taken: &mut Vec<Rect>) -> Vec<Item> {
    let plate = |at: &Point| Rect::new(at.moved(-PLATE, -PLATE), Size::square(PLATE * 2));
    let is_free = |at: &&Point| taken.iter().all(|t| !t.overlaps(plate(at)));
    let Some(&at) = cut.places.iter().find(is_free) else {
        return Vec::new();
    };
    taken.push(plate(&at));
    let look = Look::line(ink::INK, ink::THIN).on(ink::PAPER);
    let words = Words::line(
        &number.to_string(),
        &Style::bold(Length::pt(7.5)),
        Length::mm(9.0),
    );
    let mut items = vec![circle(at, PLATE, look)];
    items.extend(words.amid(at, ink::INK));
    items
}
