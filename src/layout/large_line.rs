//! The lines of a large-print board that runs across, drawn: the rope with its runs back, the names
//! of parts of the day above it, and the steps that hang from it.

use std::ops::Range;

use super::large_across::{Across, RETURN, SEEN_Y, WORDS_GAP};
use super::large_step::{Drawing, goes_on};
use super::large_words::has_plate;
use super::writer::{Everyone, PageWriter};
use super::{ink, shapes, strand};
use crate::model::manner::Run;
use crate::page::Item;
use crate::units::{Length, Point, Rect};

/// Middle of the peg and of the ring, from the middle of a step.
const PEG_X: Length = Length::um(-6_500);
const RING_X: Length = Length::um(5_500);

impl Across {
    /// The lines of a page, with `extra` white for each, and on which page it goes on.
    pub fn draw(
        &self,
        drawing: &Drawing<'_>,
        (room, extra): (Rect, Length),
        shares: &[Range<usize>],
        next: Option<usize>,
        page: &mut PageWriter<Everyone>,
    ) {
        let pitch = self.pitch() + extra;
        // Where no line of the page is full, its steps stand further apart.
        let columns = shares.iter().map(Range::len).max().unwrap_or(1);
        page.artifact(self.rope(drawing, (room, pitch), shares));
        for (line, share) in shares.iter().enumerate() {
            let top = room.y + pitch * line as i64;
            for (place, i) in share.clone().enumerate() {
                let cell = self.cell(Rect { y: top, ..room }, columns, place);
                if i == share.start || begins_part(drawing, i) {
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
            h: self.pitch(),
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
        let heights: Vec<Length> = (0..shares.len()).map(|l| top(l) + self.rope).collect();
        let returns: Vec<Length> = (1..shares.len()).map(|l| top(l) - RETURN / 2).collect();
        let mut rope = strand::through_rows(left, right, &heights, &returns);
        if shares.first().is_some_and(|s| s.start == 0) {
            rope.extend(strand::beginning(Point::new(left, room.y + self.rope)));
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
        let later = (step + 1..end).take_while(|&i| !begins_part(drawing, i));
        let width = cell.w * (1 + later.count() as i64) - Length::mm(4.0);
        let words = drawing.part_name(step, width);
        let inset = Length::mm(5.0);
        let rope = cell.y + self.rope;
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
        // In a frame its heading names the parts.
        if self.named {
            page.heading(2, words);
        }
    }

    fn step(
        &self,
        drawing: &Drawing<'_>,
        index: usize,
        cell: Rect,
        page: &mut PageWriter<Everyone>,
    ) {
        let middle = Point::new(cell.center().x, cell.y + self.rope);
        let toward = match self.run {
            Run::RightToLeft => -1,
            _ => 1,
        };
        let peg = middle.moved(PEG_X * toward, Length::ZERO);
        let ring = middle.moved(RING_X * toward, Length::ZERO);
        drawing.marks(index, ring, peg, page);
        let seen = Rect {
            x: middle.x - self.side / 2,
            y: cell.y + self.rope + SEEN_Y,
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

fn begins_part(drawing: &Drawing<'_>, i: usize) -> bool {
    i == 0 || drawing.step(i - 1).part != drawing.step(i).part
}
