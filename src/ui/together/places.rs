//! Where everything stands, for a size of window, how much is shown and which way it runs. Pure
//! geometry: worked out from left to right and mirrored for a board that runs the other way.

use egui::{Pos2, Rect, Vec2, pos2, vec2};

use crate::model::manner::Run;

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

fn alone(s: Rect) -> Rect {
    let side = s.height().min(s.width() * 0.8);
    square(s.center().x - side / 2.0, s.top(), side)
}

fn pair(s: Rect, run: Run) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.08).clamp(24.0, 110.0);
    let large = s.height().min((s.width() - gap) * 0.57);
    let small = (large * 0.74).min(s.width() - gap - large);
    let x = s.center().x - (large + gap + small) / 2.0;
    let lower = if run == Run::Down { large - small } else { 0.0 };
    let next = square(x + large + gap, s.top() + lower, small);
    (square(x, s.top(), large), vec![Coming::Card(next)])
}

fn triple(s: Rect, run: Run) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.04).clamp(16.0, 56.0);
    if run == Run::Down {
        let small = ((s.height() - gap) / 2.0).min(s.width() * 0.36);
        let large = s.height().min(s.width() - small - gap * 1.5);
        let x = s.center().x - (large + gap * 1.5 + small) / 2.0;
        let left = x + large + gap * 1.5;
        let cards = [s.top(), s.top() + small + gap].map(|y| Coming::Card(square(left, y, small)));
        return (square(x, s.top(), large), cards.to_vec());
    }
    let large = s.height().min((s.width() - 2.0 * gap) * 0.44);
    let small = (large * 0.7).min((s.width() - 2.0 * gap - large) / 2.0);
    let x = s.center().x - (large + 2.0 * (gap + small)) / 2.0;
    let first = x + large + gap;
    let cards = [first, first + small + gap].map(|x| Coming::Card(square(x, s.top(), small)));
    (square(x, s.top(), large), cards.to_vec())
}

/// The next as a card, the others as small tiles below it.
fn many(s: Rect, count: usize) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.05).clamp(20.0, 64.0);
    let large = s.height().min((s.width() - gap) * 0.5);
    let now = square(s.left(), s.top(), large);
    let left = now.right() + gap;
    let wide = s.right() - left;
    let next = ((s.height() - SMALL - 14.0).max(s.height() * 0.5))
        .min(large * 0.62)
        .min(wide);
    let mut all = vec![Coming::Card(square(left, s.top(), next))];
    let room = s.height() - next - 14.0;
    let rows = (((room + 8.0) / (84.0 + 8.0)) as usize).max(1);
    let side = ((room - 8.0 * (rows as f32 - 1.0)) / rows as f32).clamp(SMALL, 104.0);
    let columns = (((wide + 8.0) / (side + 8.0)) as usize).max(1);
    let top = s.top() + next + 14.0;
    for i in 0..(count - 1).min(rows * columns) {
        let at = vec2((i % columns) as f32, (i / columns) as f32) * (side + 8.0);
        all.push(Coming::Small(square(left + at.x, top + at.y, side)));
    }
    (now, all)
}

/// A list from top to bottom, the next one higher than the others.
fn list(s: Rect, count: usize) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.06).clamp(26.0, 80.0);
    let large = s.height().min((s.width() - gap) * 0.56);
    let now = square(s.left(), s.top(), large);
    let left = now.right() + gap;
    let wide = (s.right() - left).min(large * 1.35);
    let between = 8.0;
    // The next one counts for one and a half.
    let fit = ((s.height() + between) / (ROW + between) - 0.5)
        .floor()
        .max(1.0) as usize;
    let n = count.min(fit);
    let high = ((s.height() - between * (n as f32 - 1.0)) / (n as f32 + 0.5)).clamp(ROW, 96.0);
    let mut y = s.top();
    let rows = (0..n).map(|i| {
        let h = if i == 0 { high * 1.5 } else { high };
        let r = Rect::from_min_size(pos2(left, y), vec2(wide, h));
        y += h + between;
        Coming::Row(r)
    });
    let rows: Vec<Coming> = rows.collect();
    (now, rows)
}

/// Where a card is on its way from one place to another, slowing down towards the end.
pub fn between(from: Rect, to: Rect, part: f32) -> Rect {
    let s = 1.0 - (1.0 - part.clamp(0.0, 1.0)).powi(3);
    let mix = |a: Pos2, b: Pos2| a + (b - a) * s;
    Rect::from_min_max(mix(from.min, to.min), mix(from.max, to.max))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SIZES: [(f32, f32); 7] = [
        (640.0, 380.0),
        (683.0, 384.0),
        (900.0, 700.0),
        (1024.0, 600.0),
        (1366.0, 768.0),
        (1920.0, 1080.0),
        (800.0, 1280.0),
    ];

    fn every() -> Vec<(String, Places)> {
        let mut all = Vec::new();
        for (w, h) in SIZES {
            for run in Run::ALL {
                for coming in 0..16 {
                    for cards in [0, 5, 7, 9, 12] {
                        let window = Rect::from_min_size(Pos2::ZERO, vec2(w, h));
                        for (row, finished) in [(false, true), (true, true), (true, false)] {
                            let wanted = Wanted {
                                coming,
                                cards,
                                run,
                                row,
                                finished,
                            };
                            let name = format!("{w}x{h} {wanted:?}");
                            all.push((name, Places::of(window, wanted)));
                        }
                    }
                }
            }
        }
        all
    }

    fn apart(name: &str, rects: &[Rect]) {
        for (i, a) in rects.iter().enumerate() {
            assert!(a.width() > 0.0 && a.height() > 0.0, "{name}: {i} is {a:?}");
            for (j, b) in rects.iter().enumerate().skip(i + 1) {
                let common = a.intersect(*b);
                let touch = common.width() <= 0.5 || common.height() <= 0.5;
                assert!(touch, "{name}: {i} {a:?} lies on {j} {b:?}");
            }
        }
    }

    #[test]
    fn nothing_lies_on_anything_else_in_any_window() {
        for (name, p) in every() {
            let mut rects = vec![p.now, p.bar, p.leave, p.fold];
            rects.extend(name.contains("finished: true").then_some(p.finished));
            rects.extend(p.coming.iter().map(|c| c.rect()));
            apart(&name, &rects);
            apart(&name, &[p.row, p.leave, p.fold, p.bar]);
            apart(&name, &p.cards);
            for r in rects.iter().chain(&p.cards).chain([&p.row]) {
                assert!(
                    p.window.contains_rect(*r),
                    "{name}: {r:?} leaves the window"
                );
            }
            for card in &p.cards {
                assert!(p.bar.contains_rect(*card), "{name}: {card:?}");
            }
        }
    }

    #[test]
    fn what_can_be_pressed_is_large_enough_for_a_finger() {
        for (name, p) in every() {
            let mut rects = vec![p.now, p.finished, p.leave, p.fold];
            rects.extend(&p.cards);
            for r in rects {
                let least = r.width().min(r.height());
                assert!(least >= LEAST - 0.5, "{name}: {r:?}");
            }
            let least = if name.contains("row: true") {
                90.0
            } else {
                130.0
            };
            assert!(
                p.now.width() >= least,
                "{name}: now is the largest: {:?}",
                p.now
            );
            for c in &p.coming {
                assert!(c.rect().height() <= p.now.height(), "{name}");
            }
        }
    }

    #[test]
    fn at_least_the_next_one_is_shown_and_never_more_than_come() {
        for (name, p) in every() {
            let shown = p.coming.len();
            let wanted = name.contains("coming: 0");
            assert_eq!(shown == 0, wanted, "{name}");
        }
    }

    #[test]
    fn right_to_left_is_the_mirror_of_left_to_right() {
        let window = Rect::from_min_size(pos2(10.0, 20.0), vec2(1024.0, 600.0));
        for coming in 0..9 {
            let of = |run| {
                let (row, finished) = (false, true);
                Places::of(
                    window,
                    Wanted {
                        coming,
                        cards: 7,
                        run,
                        row,
                        finished,
                    },
                )
            };
            let (there, back) = (of(Run::LeftToRight), of(Run::RightToLeft));
            let turned = flipped(window, back.now);
            assert!((turned.min - there.now.min).length() < 0.01);
            assert!(back.bar.left() < back.now.left() && there.now.left() < there.bar.left());
            for (a, b) in there.coming.iter().zip(&back.coming) {
                let turned = flipped(window, b.rect());
                assert!((turned.min - a.rect().min).length() < 0.01);
            }
            let stretch = there.finished.shrink(20.0);
            assert!(there.slot(stretch, 0, 5).left() < there.slot(stretch, 1, 5).left());
            assert!(back.slot(stretch, 0, 5).left() > back.slot(stretch, 1, 5).left());
        }
    }

    #[test]
    fn finished_tiles_stay_in_their_place_and_options_on_the_stage() {
        for (name, p) in every() {
            for count in [1, 2, 7, 15, 40] {
                let stretch = p.finished.shrink(14.0);
                for i in 0..count {
                    let slot = p.slot(stretch, i, count);
                    assert!(
                        p.finished.contains_rect(slot),
                        "{name}: {slot:?} of {count}"
                    );
                }
            }
            for (own, others) in [(1, 0), (2, 2), (3, 2), (3, 1), (3, 0)] {
                let all = p.options(own, others);
                apart(&name, &all);
                for r in all {
                    assert!(p.stage.expand(0.5).contains_rect(r), "{name}: {r:?}");
                    let least = r.width().min(r.height());
                    assert!(least >= LEAST - 0.5, "{name}: {r:?}");
                }
            }
            let (picture, answers) = p.answers(3);
            let mut all = answers;
            all.push(picture);
            apart(&name, &all);
            assert!(
                all.iter().all(|r| p.stage.expand(0.5).contains_rect(*r)),
                "{name}"
            );
            apart(&name, &p.two());
            assert!(
                p.two()
                    .iter()
                    .all(|r| p.stage.expand(0.5).contains_rect(*r)),
                "{name}"
            );
            let card = p.very_large();
            apart(&name, &[card, p.bar, p.leave]);
            assert!(card.width() > 250.0, "{name}: {card:?}");
        }
    }

    #[test]
    fn a_card_on_its_way_begins_and_ends_where_it_should() {
        let a = Rect::from_min_size(pos2(0.0, 0.0), vec2(100.0, 100.0));
        let b = Rect::from_min_size(pos2(300.0, 400.0), vec2(50.0, 50.0));
        assert_eq!(between(a, b, 0.0), a);
        assert_eq!(between(a, b, 1.0), b);
        let mut before = a.left();
        for i in 1..=20 {
            let x = between(a, b, i as f32 / 20.0).left();
            assert!(x > before, "one way, without turning back");
            before = x;
        }
    }
}
