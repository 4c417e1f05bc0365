//! Where the places of a base board lie along the rope, and what stands in each: from top to bottom,
//! from left to right, or from right to left.

use super::desk::Desk;
use super::shapes::{self, dashes, fastener, rounded};
use super::words::{TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{forms, ink, strand};
use crate::model::board::{Step, StepState};
use crate::model::manner::{Finishing, Form, Run};
use crate::page::{Item, Source};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Least white between two places side by side.
const GAP: Length = Length::um(4_000);
/// Rows: from the top of a row to the rope, and from the rope to the places.
const PART: Length = Length::um(7_200);
const HANG: Length = Length::um(4_000);
/// Rows: for the run of the rope back to the next row.
const RETURN: Length = Length::um(6_500);
/// Columns: from the left edge to the rope and to the places.
const ROPE_X: Length = Length::um(6_000);
const PLACE_X: Length = Length::um(14_500);
/// Columns: above each place, for the name of a part of the day.
const ABOVE: Length = Length::um(8_500);
/// Columns: below the last place, for the loose ends of the rope.
const END: Length = Length::um(7_000);
/// Letters in a place, which the tile covers.
const LABEL_PT: f64 = 12.0;
/// Letters of "First" and "Then", and the width they may take.
const ORDER_PT: f64 = 18.0;
const ORDER_ROOM: Length = Length::um(20_000);
/// Radius of a ring to tick beside a peg.
const TICK_RING: Length = Length::um(3_800);

/// How places follow one another in a room.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ways {
    pub run: Run,
    /// Size of a place.
    pub place: Size,
    /// How many stand side by side at most.
    pub columns: usize,
    /// How many stand one below the other at most.
    pub lines: usize,
}

/// One place on the rope, and where all that belongs to it stands.
#[derive(Clone, Copy, Debug)]
pub(super) struct Slot {
    pub place: Rect,
    pub peg: Point,
    /// The middle of a ring to tick.
    pub ring: Point,
    /// The knot and the name of a part of the day that begins here.
    pub knot: Point,
    pub name: Point,
    pub name_room: Length,
    /// The right end of "First" and "Then".
    pub order: Point,
}

/// What is said at a place.
pub(super) struct Said {
    pub number: usize,
    pub words: String,
    /// "First", "Then".
    pub order: Option<&'static str>,
}

impl Ways {
    /// None where not even one place fits.
    pub fn new(run: Run, room: Rect, place: Size) -> Option<Self> {
        let columns = match run {
            Run::Down => (room.w + GAP).times(PLACE_X + place.w + GAP),
            _ => (room.w - strand::TURN * 2 + GAP).times(place.w + GAP),
        };
        let columns = usize::try_from(columns).ok().filter(|&c| c > 0)?;
        Some(Self {
            run,
            place,
            columns,
            lines: 1,
        })
    }

    /// The most lines of places that so many steps may take.
    pub fn most_lines(self, steps: usize) -> usize {
        match self.run {
            Run::Down => steps,
            _ => steps.div_ceil(self.columns),
        }
    }

    fn pitch_y(self) -> Length {
        match self.run {
            Run::Down => ABOVE + self.place.h,
            _ => PART + HANG + self.place.h + RETURN,
        }
    }

    /// Height of so many lines of places.
    pub fn height(self, lines: usize) -> Length {
        let last = match self.run {
            Run::Down => END,
            _ => -RETURN,
        };
        self.pitch_y() * lines as i64 + last
    }

    /// Columns and lines of places on a page that holds so many, for boards that run down: as few
    /// columns as the room leaves.
    fn down(self, steps: usize) -> (usize, usize) {
        let columns = steps.div_ceil(self.lines).clamp(1, self.columns);
        (columns, steps.div_ceil(columns).max(1))
    }

    /// The places of a page, and where they end.
    pub fn slots(self, room: Rect, steps: usize) -> (Vec<Slot>, Length) {
        if self.run == Run::Down {
            let (columns, lines) = self.down(steps);
            let slot = |k: usize| self.slot_down(room, columns, (k / lines, k % lines));
            let all = (0..steps).map(slot).collect();
            return (all, room.y + self.height(lines));
        }
        let slots = (0..steps).map(|k| self.slot_across(room, k)).collect();
        let lines = steps.div_ceil(self.columns);
        (slots, room.y + self.height(lines))
    }

    fn column_x(self, room: Rect, columns: usize, column: usize) -> Length {
        let width = PLACE_X + self.place.w;
        let pitch = (room.w / columns as i64).min(width + GAP * 4).max(width);
        let used = pitch * (columns as i64 - 1) + width;
        room.x + (room.w - used) / 2 + pitch * column as i64
    }

    fn slot_down(self, room: Rect, columns: usize, (column, line): (usize, usize)) -> Slot {
        let x = self.column_x(room, columns, column);
        let y = room.y + self.pitch_y() * line as i64;
        let corner = Point::new(x + PLACE_X, y + ABOVE);
        let place = Rect::new(corner, self.place);
        let peg = Point::new(x + ROPE_X, place.center().y);
        Slot {
            place,
            peg,
            ring: peg.moved(Length::ZERO, strand::PEG.h + Length::mm(1.5)),
            knot: Point::new(peg.x, y + Length::mm(4.5)),
            name: Point::new(place.x, y + Length::mm(1.6)),
            name_room: self.place.w,
            order: Point::new(place.right(), y + Length::mm(0.8)),
        }
    }

    fn slot_across(self, room: Rect, k: usize) -> Slot {
        let (left, right) = (room.x + strand::TURN, room.right() - strand::TURN);
        let pitch = (right - left) / self.columns as i64;
        let x = left + pitch * (k % self.columns) as i64;
        let x = match self.run {
            Run::RightToLeft => room.center().x * 2 - x - pitch,
            _ => x,
        };
        let y = room.y + self.pitch_y() * (k / self.columns) as i64;
        let rope_y = y + PART;
        let corner = Point::new(x + (pitch - self.place.w) / 2, rope_y + HANG);
        let place = Rect::new(corner, self.place);
        let peg = Point::new(place.center().x, rope_y);
        Slot {
            place,
            peg,
            ring: peg.moved(strand::PEG.w + Length::mm(1.0), Length::ZERO),
            knot: Point::new(x + Length::mm(5.0), rope_y),
            name: Point::new(x + Length::mm(2.0), y - Length::mm(1.3)),
            name_room: pitch - Length::mm(4.0),
            order: Point::new(place.right() - Length::mm(1.0), y + Length::mm(0.4)),
        }
    }

    /// The rope of a page with so many places; `ends` says whether the board begins and ends here.
    pub fn rope(self, room: Rect, steps: usize, ends: (bool, bool)) -> Vec<Item> {
        match self.run {
            Run::Down => self.rope_down(room, steps, ends),
            Run::LeftToRight => self.rope_across(room, steps, ends),
            Run::RightToLeft => {
                shapes::mirrored(self.rope_across(room, steps, ends), room.center().x)
            }
        }
    }

    /// Beside the beginning and the end of the rope of a page with so many places: where it says which
    /// page is laid on.
    pub fn joins(self, room: Rect, steps: usize) -> [Point; 2] {
        let aside = Length::mm(5.2);
        if self.run == Run::Down {
            let (columns, lines) = self.down(steps);
            let last = steps.div_ceil(lines).clamp(1, columns) - 1;
            let here = steps - last * lines;
            let x = |column| self.column_x(room, columns, column) + ROPE_X - aside;
            return [
                Point::new(x(0), room.y + Length::mm(2.0)),
                Point::new(
                    x(last),
                    room.y + self.pitch_y() * here as i64 - Length::mm(4.0),
                ),
            ];
        }
        let rows = steps.div_ceil(self.columns) as i64;
        let (left, right) = (room.x + strand::TURN, room.right() - strand::TURN);
        let end = room.y + self.pitch_y() * (rows - 1) + PART;
        let both = [
            Point::new(left - aside, room.y + PART),
            Point::new(right, end - aside),
        ];
        match self.run {
            Run::RightToLeft => both.map(|p| Point::new(room.center().x * 2 - p.x, p.y)),
            _ => both,
        }
    }

    fn rope_down(self, room: Rect, steps: usize, (begins, ends): (bool, bool)) -> Vec<Item> {
        let (columns, lines) = self.down(steps);
        let mut items = Vec::new();
        for column in 0..columns.min(steps.div_ceil(lines)) {
            let x = self.column_x(room, columns, column) + ROPE_X;
            let here = (steps - column * lines).min(lines);
            let bottom = room.y + self.pitch_y() * here as i64 + Length::mm(0.5);
            let top = Point::new(x, room.y - Length::mm(1.5));
            items.extend(strand::straight(top, Point::new(x, bottom)));
            if begins && column == 0 {
                items.extend(strand::beginning(top));
            }
            items.extend(if ends && steps <= (column + 1) * lines {
                strand::stopper_below(Point::new(x, bottom))
            } else {
                strand::arrow_down(Point::new(x, bottom + Length::mm(1.0)))
            });
        }
        items
    }

    fn rope_across(self, room: Rect, steps: usize, (begins, ends): (bool, bool)) -> Vec<Item> {
        let rows = steps.div_ceil(self.columns);
        let top = |row: usize| room.y + self.pitch_y() * row as i64;
        let (left, right) = (room.x + strand::TURN, room.right() - strand::TURN);
        let heights: Vec<Length> = (0..rows).map(|r| top(r) + PART).collect();
        let back = |row: usize| top(row + 1) - RETURN.scale(0.65);
        let returns: Vec<Length> = (0..rows.saturating_sub(1)).map(back).collect();
        let end = heights.last().copied().unwrap_or(room.y);
        let mut rope = strand::through_rows(left, right, &heights, &returns);
        if begins {
            rope.extend(strand::beginning(Point::new(left, room.y + PART)));
        }
        rope.extend(if ends {
            strand::stopper_right(Point::new(right, end))
        } else {
            strand::arrow_right(Point::new(right + Length::mm(3.0), end))
        });
        rope
    }
}

/// The knot and the name of a part of the day.
pub(super) fn draw_part(
    desk: &Desk<'_>,
    step: &Step,
    said: &Said,
    slot: &Slot,
    page: &mut PageWriter<Everyone>,
) {
    page.artifact(strand::knot(slot.knot));
    let name = desk.club.part(step.part).map_or("", |p| p.name.as_str());
    let style = Style::bold(Length::pt(12.0));
    let order = said.order.map_or(Length::ZERO, |_| ORDER_ROOM);
    let words = Words::line(name, &style, slot.name_room - order);
    page.heading(2, words.left(slot.name, ink::SOFT));
}

/// The words in a place, which the tile covers; words that are alone stand large.
pub(super) fn place_words(step: &Step, said: &str, place: Size) -> Words {
    let room = place.w - Length::mm(4.0);
    let words = match step.state {
        StepState::NotToday => format!("{} (not today)", step.label.trim()),
        _ => said.to_owned(),
    };
    // Below the fastener, or beside it where a picture's frame takes the middle.
    let below = Rect::new(
        Point::default(),
        Size::new(room, place.h / 2 - Length::mm(6.0)),
    );
    match step.form {
        _ if step.state == StepState::NotToday => {}
        Form::Word => return forms::words_alone(&words, below, (LABEL_PT, 22.0), true),
        Form::Sentence => return forms::words_alone(&words, below, (LABEL_PT, 16.0), false),
        _ => {}
    }
    let style = Style::regular(Length::pt(LABEL_PT));
    Words::wrapped(&words, &style, room, TIGHT, 2)
}

/// One place on the rope.
pub(super) fn draw_place(
    (finishing, dot): (Finishing, Length),
    step: &Step,
    said: &Said,
    slot: &Slot,
    page: &mut PageWriter<Everyone>,
) {
    let place = slot.place;
    let side = place.w.min(place.h);
    let source = Some(Source::Step(step.at));
    let not_today = step.state == StepState::NotToday;
    let mut items = vec![rounded(place, side.scale(0.08), dashes().on(ink::PAPER))];
    items.extend(strand::peg(slot.peg));
    items.extend(strand::peg_number(slot.peg, said.number));
    if finishing == Finishing::Tick && !not_today {
        items.push(strand::ring(slot.ring, TICK_RING));
    }
    let mut words = place_words(step, &said.words, place.size());
    let mut thing = Words::default();
    if step.form == Form::Object && !not_today {
        let style = Style::regular(Length::pt(LABEL_PT));
        let room = place.w - Length::mm(4.0);
        thing = Words::wrapped(&forms::object_words(&step.thing), &style, room, TIGHT, 2);
        words.cut |= thing.cut;
    }
    let top = place.bottom() - Length::mm(2.0) - words.height() - thing.height();
    let seen = Rect {
        y: place.y + Length::mm(3.0),
        h: top - place.y - Length::mm(5.0),
        ..place.shrink(Length::mm(3.0))
    };
    if !not_today && seen.h > Length::mm(12.0) {
        match step.form {
            Form::Photograph => items.extend(forms::photo_frame(seen, false)),
            Form::Object => items.extend(forms::object_place(seen)),
            _ => {}
        }
    }
    items.extend(fastener(place.center(), dot));
    let today = if not_today { ", not today" } else { "" };
    let alt = format!("Place for tile {}: {}{today}", said.number, step.label);
    page.figure(source, alt, items);
    let at = Point::new(place.center().x, top);
    let mut lines = words.centred(at, ink::SOFT);
    let below = Point::new(at.x, top + words.height());
    lines.extend(thing.centred(below, ink::SOFT));
    if let Some(order) = said.order {
        let style = Style::bold(Length::pt(ORDER_PT));
        let order = Words::line(order, &style, ORDER_ROOM);
        lines.extend(order.right(slot.order, ink::INK));
    }
    page.paragraph(source, lines);
}
