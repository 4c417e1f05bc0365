//! Where everything stands, for a size of window, how much is shown and which way it runs. Pure
//! geometry: worked out from left to right and mirrored for a board that runs the other way.

mod stretch;
#[cfg(test)]
mod tests;

use egui::{Pos2, Rect, Vec2, pos2, vec2};

use crate::model::manner::Run;
use stretch::{alone, list, many, pair, triple};

/// Below this height a window is low: everything is closer together.
const LOW: f32 = 560.0;
/// Below this width it is narrow.
const NARROW: f32 = 900.0;
/// Least side of a small tile.
const SMALL: f32 = 58.0;
/// Least height of a step in a list.
const ROW: f32 = 54.0;
/// Height of the adult's row with the words to say below it.
const ROW_HIGH: f32 = 80.0;
/// From the rope to the top of a card.
pub const HANG: f32 = 14.0;
/// Least side of anything that can be pressed.
pub const LEAST: f32 = crate::ui::theme::CONTROL;

/// How a step that comes is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Coming {
    /// A large card on the rope.
    Card(Rect),
    /// A small tile below.
    Small(Rect),
    /// Picture and words side by side, in a list from top to bottom.
    Row(Rect),
}

impl Coming {
    /// Where it is.
    pub const fn rect(self) -> Rect {
        match self {
            Self::Card(r) | Self::Small(r) | Self::Row(r) => r,
        }
    }
}

/// Where everything stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Places {
    /// All of it.
    pub window: Rect,
    /// Whether the window is low.
    pub low: bool,
    /// Whether it runs from right to left.
    pub mirrored: bool,
    /// Height of the rope.
    pub rope_y: f32,
    /// Between the rope and the finished place, beside the cards that are always there.
    pub stage: Rect,
    /// The card that is now.
    pub now: Rect,
    /// What comes, as much of it as there is room for.
    pub coming: Vec<Coming>,
    /// The heading over the card that is now.
    pub head_now: Rect,
    /// The heading over what comes.
    pub head_next: Rect,
    /// The finished place.
    pub finished: Rect,
    /// The panel of the cards that are always there.
    pub bar: Rect,
    /// Each of these cards.
    pub cards: Vec<Rect>,
    /// Whether their words stand beside the picture.
    pub words_beside: bool,
    /// The ring to leave by.
    pub leave: Rect,
    /// What opens the adult's row.
    pub fold: Rect,
    /// The adult's row while it is open.
    pub row: Rect,
}

/// What the places are for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// How many steps come.
    pub coming: usize,
    /// How many cards are always there.
    pub cards: usize,
    /// Which way it runs.
    pub run: Run,
    /// Whether the adult's row is open: everything makes room for it.
    pub row: bool,
    /// Whether there is a finished place; without one the stage goes down to the edge.
    pub finished: bool,
}

impl Places {
    /// The places in a window.
    pub fn of(window: Rect, wanted: Wanted) -> Self {
        let low = window.height() < LOW;
        let narrow = window.width() < NARROW;
        let edge = if low { 8.0 } else { 14.0 };
        let (bar, cards, words_beside) = bar(window, edge, wanted.cards);
        let left = window.left() + if narrow { 16.0 } else { 32.0 };
        let right = bar.left() - if narrow { 12.0 } else { 24.0 };
        let above = window.top() + if wanted.row { ROW_HIGH } else { 0.0 };
        let rope_y = above
            + match (low, wanted.row) {
                (true, false) => 58.0,
                (true, true) => 40.0,
                _ => (window.height() * 0.115).max(72.0) - if wanted.row { 14.0 } else { 0.0 },
            };
        let deep = (window.height() * 0.235).clamp(88.0, 200.0);
        let bottom = window.bottom() - edge;
        let finished = Rect::from_min_max(pos2(left, bottom - deep), pos2(right, bottom));
        let gap = if low { 8.0 } else { 20.0 };
        let deepest = if wanted.finished {
            finished.top() - gap
        } else {
            bottom - 6.0
        };
        let stage = Rect::from_min_max(pos2(left, rope_y + HANG), pos2(right, deepest));
        let (now, coming) = match wanted.coming {
            0 => (alone(stage), Vec::new()),
            1 => pair(stage, wanted.run),
            2 => triple(stage, wanted.run),
            n if wanted.run == Run::Down => list(stage, n),
            n => many(stage, n),
        };
        let top = window.top() + if low { 4.0 } else { 8.0 };
        let leave = Rect::from_min_size(pos2(right - LEAST, top), Vec2::splat(LEAST));
        let fold = leave.translate(vec2(-LEAST - 6.0, 0.0));
        let row = Rect::from_min_max(pos2(left, top), pos2(fold.left() - 6.0, top + LEAST));
        let head_top = if wanted.row { above } else { top };
        let ends = if wanted.row { right } else { fold.left() - 8.0 };
        let head = |from: f32, to: f32| {
            Rect::from_min_max(pos2(from, head_top), pos2(to.max(from), rope_y - 10.0))
        };
        let next_left = coming.first().map_or(ends, |c| c.rect().left()).min(ends);
        let mut places = Self {
            window,
            low,
            mirrored: false,
            rope_y,
            stage,
            now,
            head_now: head(now.left(), next_left - 8.0),
            head_next: head(next_left, ends),
            coming,
            finished,
            bar,
            cards,
            words_beside,
            leave,
            fold,
            row,
        };
        if wanted.run == Run::RightToLeft {
            places.mirror();
        }
        places
    }

    fn mirror(&mut self) {
        let w = self.window;
        self.mirrored = true;
        let rects = [
            &mut self.stage,
            &mut self.now,
            &mut self.head_now,
            &mut self.head_next,
            &mut self.finished,
            &mut self.bar,
            &mut self.leave,
            &mut self.fold,
            &mut self.row,
        ];
        for r in rects.into_iter().chain(&mut self.cards) {
            *r = flipped(w, *r);
        }
        for c in &mut self.coming {
            *c = match *c {
                Coming::Card(r) => Coming::Card(flipped(w, r)),
                Coming::Small(r) => Coming::Small(flipped(w, r)),
                Coming::Row(r) => Coming::Row(flipped(w, r)),
            };
        }
    }

    /// The place of the `i`-th of so many finished tiles, in a stretch of the finished place: side by
    /// side where they can be, over one another where not.
    pub fn slot(&self, stretch: Rect, i: usize, count: usize) -> Rect {
        let n = count.max(1) as f32;
        let high = stretch.height().max(SMALL.min(stretch.height()));
        let side = ((stretch.width() - 8.0 * (n - 1.0)) / n).clamp(SMALL.min(high), high);
        let step = (side + 8.0).min((stretch.width() - side) / (n - 1.0).max(1.0));
        let top = stretch.center().y - side / 2.0;
        let r = Rect::from_min_size(
            pos2(stretch.left() + i as f32 * step, top),
            Vec2::splat(side),
        );
        if self.mirrored {
            flipped(stretch, r)
        } else {
            r
        }
    }

    /// Places of things to choose from: the board's own large, beside one another; the others low
    /// and wide below.
    pub fn options(&self, own: usize, others: usize) -> Vec<Rect> {
        let gap = if self.low { 10.0 } else { 22.0 };
        let s = self.stage;
        let low = if others == 0 {
            0.0
        } else {
            (s.height() * 0.22).clamp(LEAST, 96.0)
        };
        let room = s.height() - if others == 0 { 0.0 } else { low + gap };
        let n = own.max(1) as f32;
        let side = room.min((s.width() - gap * (n - 1.0)) / n);
        let mut all = row_of(s.center().x, s.top(), vec2(side, side), gap, own);
        let m = others.max(1) as f32;
        let wide = ((s.width() - gap * (m - 1.0)) / m).min(low * 3.6);
        let top = s.top() + side + gap;
        all.extend(row_of(s.center().x, top, vec2(wide, low), gap, others));
        if self.mirrored {
            let about = s.center().x;
            for r in &mut all {
                let mid = pos2(2.0 * about - r.center().x, r.center().y);
                *r = Rect::from_center_size(mid, r.size());
            }
        }
        all
    }

    /// A picture on one side and so many answers under one another on the other.
    pub fn answers(&self, count: usize) -> (Rect, Vec<Rect>) {
        let (picture, beside) = self.picture_and_beside();
        let gap = if self.low { 8.0 } else { 18.0 };
        let n = count.max(1) as f32;
        let high = ((beside.height() - gap * (n - 1.0)) / n).min(130.0);
        let top = beside.center().y - (high * n + gap * (n - 1.0)) / 2.0;
        let all = (0..count).map(|i| {
            let y = top + i as f32 * (high + gap);
            Rect::from_min_size(pos2(beside.left(), y), vec2(beside.width(), high))
        });
        (picture, all.collect())
    }

    /// A large square and the room beside it.
    pub fn picture_and_beside(&self) -> (Rect, Rect) {
        let s = self.stage;
        let gap = if self.low { 16.0 } else { 40.0 };
        let side = s.height().min(s.width() * 0.5 - gap / 2.0);
        let picture = Rect::from_min_size(s.min, Vec2::splat(side));
        let beside = Rect::from_min_max(pos2(picture.right() + gap, s.top()), picture.max)
            .with_max_x(s.right());
        if self.mirrored {
            (flipped(s, picture), flipped(s, beside))
        } else {
            (picture, beside)
        }
    }

    /// Two cards of one size side by side.
    pub fn two(&self) -> [Rect; 2] {
        let s = self.stage;
        let gap = (s.width() * 0.06).clamp(20.0, 90.0);
        let side = s.height().min((s.width() - gap) / 2.0);
        let from = s.center().x - side - gap / 2.0;
        let all = [from, from + side + gap].map(|x| square(x, s.top(), side));
        if self.mirrored { [all[1], all[0]] } else { all }
    }

    /// The heading of a picture that fills the stage.
    pub fn head(&self) -> Rect {
        let all = self.head_now.union(self.head_next);
        match self.mirrored {
            false => all.with_min_x(self.stage.left()),
            true => all.with_max_x(self.stage.right()),
        }
    }

    /// A card so large that nothing else counts.
    pub fn very_large(&self) -> Rect {
        let bar = self.bar;
        let free = match self.mirrored {
            false => self.window.with_max_x(bar.left()),
            true => self.window.with_min_x(bar.right()),
        };
        let side = (free.height() - 2.0 * LEAST - 24.0).min(free.width() - 48.0);
        let mid = free.center() + vec2(0.0, LEAST / 2.0);
        Rect::from_center_size(mid, Vec2::splat(side))
    }
}

/// Left and right changed about the middle of an area.
pub fn flipped(about: Rect, r: Rect) -> Rect {
    let x = |x: f32| about.left() + about.right() - x;
    Rect::from_min_max(pos2(x(r.right()), r.top()), pos2(x(r.left()), r.bottom()))
}

/// So many of a size side by side about a middle.
fn row_of(mid: f32, top: f32, size: Vec2, gap: f32, count: usize) -> Vec<Rect> {
    let all = count as f32 * (size.x + gap) - gap;
    (0..count)
        .map(|i| {
            let x = mid - all / 2.0 + i as f32 * (size.x + gap);
            Rect::from_min_size(pos2(x, top), size)
        })
        .collect()
}

/// The cards that are always there: one column, or two where one is too long.
fn bar(window: Rect, edge: f32, count: usize) -> (Rect, Vec<Rect>, bool) {
    let high = window.height() - 2.0 * edge - 16.0;
    let n = count.max(1);
    let columns = if high / n as f32 >= LEAST + 8.0 { 1 } else { 2 };
    let rows = n.div_ceil(columns) as f32;
    let each = high / rows;
    let beside = columns == 1 && each < 96.0;
    let width = match (columns, beside) {
        (1, true) => 164.0,
        (1, false) => (each + 12.0).min(window.width() * 0.13).max(112.0) + 16.0,
        _ => 2.0 * each.min(84.0) + 24.0,
    };
    let bar = Rect::from_min_max(
        pos2(window.right() - edge - width, window.top() + edge),
        window.max - vec2(edge, edge),
    );
    let cell = (width - 12.0) / columns as f32;
    let cards = (0..count).map(|i| {
        let at = vec2(
            6.0 + (i % columns) as f32 * cell,
            8.0 + (i / columns) as f32 * each,
        );
        let room = Rect::from_min_size(bar.min + at, vec2(cell, each)).shrink(4.0);
        if beside {
            return room;
        }
        Rect::from_center_size(room.center(), Vec2::splat(room.width().min(room.height())))
    });
    (bar, cards.collect(), beside)
}

fn square(x: f32, y: f32, side: f32) -> Rect {
    Rect::from_min_size(pos2(x, y), Vec2::splat(side))
}

/// Where a card is on its way from one place to another, slowing down towards the end.
pub fn between(from: Rect, to: Rect, part: f32) -> Rect {
    let s = 1.0 - (1.0 - part.clamp(0.0, 1.0)).powi(3);
    let mix = |a: Pos2, b: Pos2| a + (b - a) * s;
    Rect::from_min_max(mix(from.min, to.min), mix(from.max, to.max))
}
