//! A large-print board that runs from left to right or from right to left: lines of steps along a
//! rope, each with its number and ring on the rope, the picture below and the words below that.

use std::cmp::Reverse;
use std::ops::Range;

use super::desk::{Desk, Person};
use super::large_frames::Sizes;
use super::large_step::{Drawing, RING, goes_on};
use super::large_words::{Places, Said, has_plate};
use super::strips::Part;
use super::writer::{Everyone, PageWriter};
use super::{ink, shapes, strand};
use crate::model::manner::Run;
use crate::page::Item;
use crate::units::{Length, Point, Rect};

/// From the top of a line to the rope, and from there to what is seen.
const ROPE_Y: Length = Length::um(14_000);
const SEEN_Y: Length = Length::um(22_500);
/// Between picture and words.
const WORDS_GAP: Length = Length::um(2_500);
/// Below a line, for the run of the rope back to the next.
const RETURN: Length = Length::um(8_000);
/// White between two steps of a line.
const GAP: Length = Length::um(5_000);
/// Smallest pictures.
const SMALLEST: Length = Length::um(24_000);
/// Most steps in a line, and how many are wanted at least where the board has them.
const MOST: usize = 6;
const WANTED: usize = 3;
/// Letters may be smaller by so much where that saves lines: a line of two is hardly a line.
const LETTERS: f64 = 0.85;
/// Most white that is added to each line to fill a page.
const MOST_EXTRA: Length = Length::um(10_000);
/// Middle of the peg and of the ring, from the middle of a step.
const PEG_X: Length = Length::um(-6_500);
const RING_X: Length = Length::um(5_500);

/// Lines of steps.
pub(super) struct Across {
    pub said: Said,
    /// Side of the pictures.
    pub side: Length,
    run: Run,
    columns: usize,
    /// Most lines of a page.
    lines: usize,
    /// Height of a line, with the run back.
    pitch: Length,
}

impl Across {
    /// As many steps in a line as the letters allow, then the fewest pages, then the largest
    /// pictures; as large as is asked. None where no line fits.
    pub fn best(
        desk: &Desk<'_>,
        person: &Person<'_>,
        parts: &[Part],
        room: Rect,
        sizes: Sizes,
    ) -> Option<Self> {
        let longest = parts.iter().map(|p| p.steps.len()).max()?;
        let least = sizes.picture.unwrap_or(SMALLEST);
        let most = sizes.letters;
        let ways: Vec<Self> = (1..=longest.min(MOST))
            .flat_map(|columns| Self::with(desk, person, room, columns, (least, most)))
            .collect();
        let at_once = person.who.manner.reach.steps().unwrap_or(WANTED);
        let wanted = longest.min(WANTED).min(at_once);
        let over = |way: &Self| way.said.labels.overfull.len();
        let clear = ways.iter().map(over).min()?;
        let good = |way: &&Self| over(way) == clear && way.columns >= wanted;
        let letters = |way: &Self| way.said.labels.size;
        let best = ways.iter().filter(good).map(letters).max();
        let large = best.unwrap_or(Length::ZERO).scale(LETTERS);
        let rank = |way: &Self| {
            let pages: usize = parts.iter().map(|p| way.pages(&p.steps).len()).sum();
            let short = wanted.saturating_sub(way.columns);
            let small = letters(way) < large;
            (over(way), short, small, pages, Reverse(way.side))
        };
        ways.into_iter().min_by_key(rank)
    }

    /// The ways to have so many steps in a line: for each number of lines on a page one.
    fn with(
        desk: &Desk<'_>,
        person: &Person<'_>,
        room: Rect,
        columns: usize,
        (least, most): (Length, Option<Length>),
    ) -> Vec<Self> {
        let width = (room.w - strand::TURN * 2) / columns as i64 - GAP;
        let free = room.h - SEEN_Y - RETURN;
        let places = |height: Length| Places {
            narrow: width,
            whole: width,
            whole_height: free,
            height,
            most,
        };
        if width < SMALLEST || free < least {
            return Vec::new();
        }
        let besides = Said::of(desk, person, &places(free)).besides();
        let said = Said::of(desk, person, &places(free - least - WORDS_GAP - besides));
        let steps = &person.board.steps;
        let highest = |plate: bool| {
            let which = (0..steps.len()).filter(|&i| has_plate(&steps[i]) == plate);
            which.map(|i| said.height(i)).max()
        };
        let (with, without) = (highest(true), highest(false));
        let way = |lines: usize| {
            let body = room.h / lines as i64 - SEEN_Y - RETURN;
            let side = with.map_or(least, |words| (body - WORDS_GAP - words).min(width));
            let used = with.map_or(Length::ZERO, |words| side + WORDS_GAP + words);
            let used = used.max(without.unwrap_or(Length::ZERO));
            (side >= least && used <= body).then(|| Self {
                said: said.clone(),
                side,
                run: person.who.manner.run,
                columns,
                lines,
                pitch: SEEN_Y + used + RETURN,
            })
        };
        (1..=steps.len().div_ceil(columns)).map_while(way).collect()
    }

    /// Whether some steps fit one page.
    pub fn holds(&self, steps: &Range<usize>) -> bool {
        steps.len().div_ceil(self.columns) <= self.lines
    }

    /// Page by page, what stands in each line; lines as even as can be.
    pub fn pages(&self, steps: &Range<usize>) -> Vec<Vec<Range<usize>>> {
        let n = steps.len();
        let lines = n.div_ceil(self.columns);
        let begins = |line: usize| steps.start + (n * line).div_ceil(lines);
        let all: Vec<_> = (0..lines).map(|l| begins(l)..begins(l + 1)).collect();
        all.chunks(self.lines.max(1)).map(<[_]>::to_vec).collect()
    }

    /// White to add to each line of a page.
    pub fn spare(&self, room: Rect, lines: usize) -> Length {
        let lines = lines.max(1) as i64;
        ((room.h - self.pitch * lines) / lines).clamp(Length::ZERO, MOST_EXTRA)
    }

    /// The lines of a page, with `extra` white for each, and on which page it goes on.
    pub fn draw(
        &self,
        drawing: &Drawing<'_>,
        (room, extra): (Rect, Length),
        shares: &[Range<usize>],
        next: Option<usize>,
        page: &mut PageWriter<Everyone>,
    ) {
        let pitch = self.pitch + extra;
        // Where no line of the page is full, its steps stand further apart.
        let columns = shares.iter().map(Range::len).max().unwrap_or(1);
        page.artifact(self.rope(drawing, (room, pitch), shares));
        for (line, share) in shares.iter().enumerate() {
            let top = room.y + pitch * line as i64;
            for (place, i) in share.clone().enumerate() {
                let cell = self.cell(Rect { y: top, ..room }, columns, place);
                if i == share.start || self.begins_part(drawing, i) {
                    self.part(drawing, (i, share.end), cell, page);
                }
                self.step(drawing, i, cell, page);
            }
        }
        if let Some(next) = next {
            let y = room.y + pitch * shares.len() as i64 - RETURN + Length::mm(0.8);
            let words = goes_on(next);
            page.paragraph(
                None,
                match self.run {
                    Run::RightToLeft => words.left(Point::new(room.x, y), ink::SOFT),
                    _ => words.right(Point::new(room.right(), y), ink::SOFT),
                },
            );
        }
    }

    fn begins_part(&self, drawing: &Drawing<'_>, i: usize) -> bool {
        i == 0 || drawing.step(i - 1).part != drawing.step(i).part
    }

    /// Where a step of a line stands that begins at the top of a room.
    fn cell(&self, room: Rect, columns: usize, place: usize) -> Rect {
        let w = (room.w - strand::TURN * 2) / columns.max(1) as i64;
        let x = room.x + strand::TURN + w * place as i64;
        let x = match self.run {
            Run::RightToLeft => room.center().x * 2 - x - w,
            _ => x,
        };
        Rect {
            x,
            y: room.y,
            w,
            h: self.pitch,
        }
    }

    fn rope(
        &self,
        drawing: &Drawing<'_>,
        (room, pitch): (Rect, Length),
        shares: &[Range<usize>],
    ) -> Vec<Item> {
        let (left, right) = (room.x + strand::TURN, room.right() - strand::TURN);
        let top = |line: usize| room.y + pitch * line as i64;
        let heights: Vec<Length> = (0..shares.len()).map(|l| top(l) + ROPE_Y).collect();
        let returns: Vec<Length> = (1..shares.len()).map(|l| top(l) - RETURN / 2).collect();
        let mut rope = strand::through_rows(left, right, &heights, &returns);
        if shares.first().is_some_and(|s| s.start == 0) {
            rope.extend(strand::beginning(Point::new(left, room.y + ROPE_Y)));
        }
        let end = heights.last().copied().unwrap_or(room.y);
        let all = drawing.person.board.steps.len();
        rope.extend(if shares.last().is_some_and(|s| s.end == all) {
            strand::stopper_right(Point::new(right - Length::mm(2.0), end))
        } else {
            strand::arrow_right(Point::new(right + Length::mm(3.0), end))
        });
        match self.run {
            Run::RightToLeft => shapes::mirrored(rope, room.center().x),
            _ => rope,
        }
    }

    /// The knot and the name of a part of the day, above all steps of the line that belong to it.
    fn part(
        &self,
        drawing: &Drawing<'_>,
        (step, end): (usize, usize),
        cell: Rect,
        page: &mut PageWriter<Everyone>,
    ) {
        let later = (step + 1..end).take_while(|&i| !self.begins_part(drawing, i));
        let width = cell.w * (1 + later.count() as i64) - Length::mm(4.0);
        let words = drawing.part_name(step, width);
        let inset = Length::mm(5.0);
        let rope = cell.y + ROPE_Y;
        let (knot, words) = match self.run {
            Run::RightToLeft => (
                Point::new(cell.right() - inset, rope),
                words.right(
                    Point::new(cell.right() - Length::mm(2.0), cell.y),
                    ink::SOFT,
                ),
            ),
            _ => (
                Point::new(cell.x + inset, rope),
                words.left(Point::new(cell.x + Length::mm(2.0), cell.y), ink::SOFT),
            ),
        };
        page.artifact(strand::knot(knot));
        page.heading(2, words);
    }

    fn step(
        &self,
        drawing: &Drawing<'_>,
        index: usize,
        cell: Rect,
        page: &mut PageWriter<Everyone>,
    ) {
        let middle = Point::new(cell.center().x, cell.y + ROPE_Y);
        let toward = match self.run {
            Run::RightToLeft => -1,
            _ => 1,
        };
        let peg = middle.moved(PEG_X * toward, Length::ZERO);
        let ring = middle.moved(RING_X * toward, Length::ZERO);
        debug_assert!(ring.y + RING < cell.y + SEEN_Y);
        drawing.marks(index, ring, peg, page);
        let seen = Rect {
            x: middle.x - self.side / 2,
            y: cell.y + SEEN_Y,
            w: self.side,
            h: self.side,
        };
        drawing.plate(index, seen, page);
        let top = match has_plate(drawing.step(index)) {
            true => seen.bottom() + WORDS_GAP,
            false => seen.y,
        };
        let mut words = strand::peg_number(peg, index + 1);
        let (inks, top) = (drawing.inks(index), Point::new(middle.x, top));
        words.extend(
            self.said
                .put(index, top, inks, |w, at, ink| w.centred(at, ink)),
        );
        page.paragraph(drawing.source(index), words);
    }
}
