//! A large-print board that runs from top to bottom: a row for each step along an upright rope, with
//! the picture before the words.

use std::ops::Range;

use super::balance::{Row, columns_needed, height, share_out};
use super::desk::{Desk, Person};
use super::large_frames::Sizes;
use super::large_step::{Drawing, RING, goes_on};
use super::large_words::{Places, Said, has_plate};
use super::shapes::line;
use super::strips::Part;
use super::writer::{Everyone, PageWriter};
use super::{ink, strand};
use crate::units::{Length, Point, Rect};

/// Height of the name of a part of the day.
const PART: Length = Length::um(12_000);
/// Least white between two rows.
const GAP: Length = Length::um(5_000);
/// Most white that is added between rows to fill a page.
const MOST_EXTRA: Length = Length::um(7_000);
/// Left free below the rows for the loose ends of the rope.
const END: Length = Length::um(5_000);
/// From the left edge of a column: middle of the peg, the rope, left edge of the pictures.
const PEG_X: Length = Length::um(4_500);
const ROPE_X: Length = Length::um(13_000);
const PICTURE_X: Length = Length::um(23_000);
/// Between picture and words.
const WORDS_GAP: Length = Length::um(6_000);
/// Between two columns.
const COLUMN_GAP: Length = Length::um(12_000);

/// Rows in columns.
pub(super) struct Down {
    pub said: Said,
    /// Side of the pictures.
    pub side: Length,
    columns: usize,
    /// Height of a column.
    height: Length,
    rows: Vec<Row>,
}

impl Down {
    /// With the largest pictures that do not cost letters or pages; as large as
    /// is asked.
    pub fn best(
        desk: &Desk<'_>,
        person: &Person<'_>,
        parts: &[Part],
        (room, columns): (Rect, usize),
        sizes: Sizes,
    ) -> Self {
        let column = columns_in(room, columns)[0];
        // Few steps at once may be seen from afar.
        let share = match person.who.manner.reach.steps() {
            Some(_) => 0.42,
            None => 0.27,
        };
        let usual = Length::mm((column.w.to_mm() * 0.135).clamp(18.0, 34.0));
        let smallest = sizes.picture.unwrap_or(usual);
        let letters = sizes.letters;
        let half = (column.w - PICTURE_X - WORDS_GAP) / 2;
        let most = column
            .w
            .scale(share)
            .min(half)
            .min(column.h.scale(0.4))
            .max(smallest);
        let base = Self::with(desk, person, (room, columns), (smallest, letters));
        let costs_nothing = |larger: &Self| {
            larger.needed(parts) == base.needed(parts)
                && larger.said.labels.size == base.said.labels.size
                && larger.said.labels.overfull == base.said.labels.overfull
        };
        // In a frame that holds no strip nothing is to be gained.
        if sizes.picture.is_some() && !parts.iter().any(|p| base.holds(&p.steps)) {
            return base;
        }
        let mut side = most;
        while side > smallest {
            let larger = Self::with(desk, person, (room, columns), (side, letters));
            if costs_nothing(&larger) {
                return larger;
            }
            side -= Length::mm(2.0);
        }
        base
    }

    fn with(
        desk: &Desk<'_>,
        person: &Person<'_>,
        (room, columns): (Rect, usize),
        (side, most): (Length, Option<Length>),
    ) -> Self {
        let column = columns_in(room, columns)[0];
        let said = Said::of(
            desk,
            person,
            &Places {
                narrow: column.w - PICTURE_X - side - WORDS_GAP,
                whole: column.w - PICTURE_X,
                whole_height: column.h.scale(0.4),
                height: column.h.scale(0.4),
                most,
            },
        );
        let steps = &person.board.steps;
        let row = |i: usize| {
            let seen = if has_plate(&steps[i]) { side } else { RING * 2 };
            Row {
                height: seen.max(said.height(i)) + GAP,
                begins_part: i == 0 || steps[i - 1].part != steps[i].part,
            }
        };
        Self {
            rows: (0..steps.len()).map(row).collect(),
            said,
            side,
            columns,
            height: column.h,
        }
    }

    /// How many columns the rows take.
    fn needed(&self, parts: &[Part]) -> usize {
        let of = |p: &Part| columns_needed(&self.rows[p.steps.clone()], self.height, PART);
        parts.iter().map(of).sum()
    }

    /// Whether some steps fit one column.
    pub fn holds(&self, steps: &Range<usize>) -> bool {
        height(&self.rows[steps.clone()], PART) <= self.height
    }

    /// Page by page, what stands in each column.
    pub fn pages(&self, steps: &Range<usize>) -> Vec<Vec<Range<usize>>> {
        let from = steps.start;
        let shares = share_out(&self.rows[steps.clone()], self.height, PART);
        let shares: Vec<_> = shares
            .into_iter()
            .map(|s| from + s.start..from + s.end)
            .collect();
        shares.chunks(self.columns).map(<[_]>::to_vec).collect()
    }

    /// White that some rows leave, shared among them.
    pub fn spare(&self, share: &Range<usize>) -> Length {
        let used = height(&self.rows[share.clone()], PART);
        ((self.height - used) / share.len().max(1) as i64).clamp(Length::ZERO, MOST_EXTRA)
    }

    /// The columns of a page, with `extra` white for each row, and on which page it goes on.
    pub fn draw(
        &self,
        drawing: &Drawing<'_>,
        (room, extra): (Rect, Length),
        shares: &[Range<usize>],
        next: Option<usize>,
        page: &mut PageWriter<Everyone>,
    ) {
        let columns = columns_in(room, self.columns);
        for (i, (share, column)) in shares.iter().zip(&columns).enumerate() {
            let next = next.filter(|_| i + 1 == shares.len());
            self.column(drawing, (*column, extra), share, next, page);
        }
    }

    fn column(
        &self,
        drawing: &Drawing<'_>,
        (column, extra): (Rect, Length),
        share: &Range<usize>,
        next: Option<usize>,
        page: &mut PageWriter<Everyone>,
    ) {
        let rope_x = column.x + ROPE_X;
        let used = height(&self.rows[share.clone()], PART) + extra * share.len() as i64;
        let (top, bottom) = (column.y, column.y + used);
        let last = share.end == self.rows.len();
        let end = if last {
            bottom - Length::mm(1.0)
        } else {
            bottom
        };
        let mut rope = strand::straight(Point::new(rope_x, top), Point::new(rope_x, end));
        if share.start == 0 {
            rope.extend(strand::beginning(Point::new(rope_x, top)));
        }
        rope.extend(if last {
            strand::stopper_below(Point::new(rope_x, end))
        } else {
            strand::arrow_down(Point::new(rope_x, end + Length::mm(1.0)))
        });
        page.artifact(rope);
        let mut y = top;
        for i in share.clone() {
            if i == share.start || self.rows[i].begins_part {
                part(drawing, i, column, y, page);
                y += PART;
            }
            let row = Rect {
                y,
                h: self.rows[i].height + extra,
                ..column
            };
            self.row(drawing, i, row, page);
            y = row.bottom();
        }
        if let Some(next) = next {
            let at = Point::new(column.x + PICTURE_X, end - Length::mm(0.5));
            page.paragraph(None, goes_on(next).left(at, ink::SOFT));
        }
    }

    fn row(&self, drawing: &Drawing<'_>, index: usize, row: Rect, page: &mut PageWriter<Everyone>) {
        let middle = row.center().y;
        let ring = Point::new(row.x + ROPE_X, middle);
        let peg = Point::new(row.x + PEG_X, middle);
        drawing.marks(index, ring, peg, page);
        let plate = Rect {
            x: row.x + PICTURE_X,
            y: middle - self.side / 2,
            w: self.side,
            h: self.side,
        };
        drawing.plate(index, plate, page);
        let x = if has_plate(drawing.step(index)) {
            plate.right() + WORDS_GAP
        } else {
            plate.x
        };
        let top = Point::new(x, middle - self.said.height(index) / 2);
        let mut words = strand::peg_number(peg, index + 1);
        let inks = drawing.inks(index);
        words.extend(
            self.said
                .put(index, top, inks, |w, at, ink| w.left(at, ink)),
        );
        page.paragraph(drawing.source(index), words);
    }
}

fn columns_in(room: Rect, columns: usize) -> Vec<Rect> {
    let n = columns.max(1) as i64;
    let w = (room.w - COLUMN_GAP * (n - 1)) / n;
    let column = |i: i64| Rect {
        x: room.x + (w + COLUMN_GAP) * i,
        w,
        h: room.h - END,
        ..room
    };
    (0..n).map(column).collect()
}

/// The knot and the name of a part of the day, with a line to the end of the column.
fn part(
    drawing: &Drawing<'_>,
    step: usize,
    column: Rect,
    y: Length,
    page: &mut PageWriter<Everyone>,
) {
    let middle = y + PART / 2;
    page.artifact(strand::knot(Point::new(column.x + ROPE_X, middle)));
    let x = column.x + PICTURE_X;
    let words = drawing.part_name(step, column.right() - x);
    page.heading(2, words.left_of_middle(Point::new(x, middle), ink::SOFT));
    let from = x + words.width() + Length::mm(4.0);
    if from < column.right() - Length::mm(8.0) {
        let (a, b) = (Point::new(from, middle), Point::new(column.right(), middle));
        page.artifact(vec![line(a, b, ink::RULE, ink::THIN)]);
    }
}
