//! The strand: where its cards hang and how the rope runs. Pure geometry; `paint` strokes it.
//!
//! Every row reads the same way. After a row the rope turns, runs back empty below the cards and
//! begins the next one.

pub mod paint;

use egui::{Pos2, Rect, Vec2, pos2, vec2};

use super::theme;

/// Room left of the first card, for the ring and the first knot.
const LEAD: f32 = 50.0;
/// Room right of the last card, for the turn and the stopper.
const TAIL: f32 = 80.0;
/// From the top of the drawing to the first rope: the names of parts stand there.
const HEAD: f32 = 38.0;
/// From the rope to the top of a card.
pub const HANG: f32 = 8.0;
/// How much lower a card hangs that differs.
pub const LOWER: f32 = 12.0;
/// From the lower edge of a row's cards, hanging apart, to its return run.
const RETURN: f32 = 36.0;
/// How deep the rope sags between two pegs.
const SAG: f32 = 3.0;

/// Where everything on the strand stands, for a number of places in a width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grid {
    /// Places in a row.
    pub per_row: usize,
    /// Places in all.
    pub count: usize,
    /// Top left of the drawing.
    pub origin: Pos2,
    /// Side of a card.
    pub card: f32,
    /// Between two cards.
    pub gap: f32,
}

impl Grid {
    /// As many places for cards of a size in a row as fit a width, one at least. Cards spread a
    /// little to fill it.
    pub fn fit(origin: Pos2, width: f32, card: f32, count: usize) -> Self {
        let room = (width - LEAD - TAIL).max(card);
        let per_row = (((room + theme::CARD_GAP) / (card + theme::CARD_GAP)) as usize).max(1);
        let spare = room - per_row as f32 * (card + theme::CARD_GAP) + theme::CARD_GAP;
        let more = if per_row > 1 {
            (spare / (per_row - 1) as f32).clamp(0.0, 14.0)
        } else {
            0.0
        };
        let gap = (theme::CARD_GAP + more).floor();
        Self {
            per_row,
            count,
            origin,
            card,
            gap,
        }
    }

    /// From one row's rope to the next.
    pub const fn pitch(&self) -> f32 {
        self.card + theme::BETWEEN_ROWS
    }

    /// The same for another number of places.
    pub const fn with_count(mut self, count: usize) -> Self {
        self.count = count;
        self
    }

    /// Rows needed; one even when nothing hangs on the strand.
    pub fn rows(&self) -> usize {
        self.count.div_ceil(self.per_row).max(1)
    }

    /// Height of the whole drawing.
    pub fn height(&self) -> f32 {
        HEAD + (self.rows() - 1) as f32 * self.pitch() + HANG + self.card + LOWER + 22.0
    }

    /// Height of the rope in a row.
    pub fn rope_y(&self, row: usize) -> f32 {
        self.origin.y + HEAD + row as f32 * self.pitch()
    }

    /// Left edge of the card in a column.
    fn card_x(&self, column: usize) -> f32 {
        self.origin.x + LEAD + column as f32 * (self.card + self.gap)
    }

    /// Where the card of a place hangs.
    pub fn card(&self, place: usize) -> Rect {
        let (row, column) = (place / self.per_row, place % self.per_row);
        let at = pos2(self.card_x(column), self.rope_y(row) + HANG);
        Rect::from_min_size(at, Vec2::splat(self.card))
    }

    /// Where the peg of a place sits on the rope.
    pub fn peg(&self, place: usize) -> Pos2 {
        let card = self.card(place);
        pos2(card.center().x, card.top() - HANG)
    }

    /// Where the knot before a place sits.
    pub fn knot(&self, place: usize) -> Pos2 {
        let card = self.card(place);
        pos2(card.left() - self.gap / 2.0, card.top() - HANG)
    }

    /// The open ring at the very beginning.
    pub fn ring(&self) -> Pos2 {
        pos2(self.card_x(0) - 38.0, self.rope_y(0))
    }

    /// The stopper after the last place.
    pub fn stopper(&self) -> Pos2 {
        let y = self.rope_y(self.rows() - 1);
        if self.count == 0 {
            return pos2(self.card_x(0) + 40.0, y);
        }
        pos2(self.card(self.count - 1).right() + 36.0, y)
    }

    /// Which place a thing held at `at` would take: the cell under it, never past `count`.
    pub fn place_at(&self, at: Pos2) -> usize {
        let row = ((at.y - self.origin.y - HEAD + 28.0) / self.pitch()).floor();
        let column = ((at.x - self.card_x(0) + self.gap / 2.0) / (self.card + self.gap)).floor();
        let row = (row.max(0.0) as usize).min(self.rows());
        let column = (column.max(0.0) as usize).min(self.per_row - 1);
        (row * self.per_row + column).min(self.count)
    }

    /// The rope from the ring to the stopper, sampled finely enough to stroke.
    pub fn rope(&self) -> Rope {
        let mut rope = Rope::default();
        let rows = self.rows();
        rope.points.push(self.ring());
        for row in 0..rows {
            let last = row + 1 == rows;
            let from = row * self.per_row;
            let to = if last {
                self.count
            } else {
                from + self.per_row
            };
            for place in from..to {
                rope.sag_to(self.peg(place));
            }
            if last {
                rope.sag_to(self.stopper());
            } else {
                self.turn(&mut rope, row);
            }
        }
        rope
    }

    /// From the last peg of a row round the turn, back below the cards, to the next row's start.
    fn turn(&self, rope: &mut Rope, row: usize) {
        let y = self.rope_y(row);
        let right = self.card(row * self.per_row + self.per_row - 1).right();
        let left = self.card_x(0);
        let (back, next) = (y + self.card + RETURN, self.rope_y(row + 1));
        let out = right + 74.0;
        rope.sag_to(pos2(right + 2.0, y - 3.0));
        let middle = (y + back) / 2.0;
        rope.curve(
            pos2(right + 46.0, y - 9.0),
            pos2(out, y + 34.0),
            pos2(out, middle),
        );
        rope.arrows.push((pos2(out, middle), vec2(0.0, 1.0)));
        rope.curve(
            pos2(out, back - 34.0),
            pos2(right + 46.0, back + 1.0),
            pos2(right + 2.0, back),
        );
        let half = pos2((left + right) / 2.0, back - 1.0);
        rope.sag_to(half);
        rope.arrows.push((half, vec2(-1.0, 0.0)));
        rope.sag_to(pos2(left + 8.0, back - 2.0));
        let side = (back + next) / 2.0;
        rope.curve(
            pos2(left - 20.0, back - 2.0),
            pos2(left - 38.0, back + 6.0),
            pos2(left - 38.0, side),
        );
        rope.curve(
            pos2(left - 38.0, next - 8.0),
            pos2(left - 26.0, next),
            pos2(left - 11.0, next),
        );
    }
}

/// The rope as a line of points, and where arrowheads say which way it runs.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Rope {
    /// The points.
    pub points: Vec<Pos2>,
    /// Arrowheads: where, and the way they point.
    pub arrows: Vec<(Pos2, Vec2)>,
}

impl Rope {
    /// On to a place, hanging through a little on the way.
    pub fn sag_to(&mut self, to: Pos2) {
        let from = self.points.last().copied().unwrap_or(to);
        let length = (to - from).length();
        let steps = ((length / 9.0) as usize).clamp(2, 120);
        let deep = if length < 60.0 {
            SAG * length / 60.0
        } else {
            SAG
        };
        for i in 1..=steps {
            let t = i as f32 / steps as f32;
            let dip = deep * 0.5 * (1.0 - (std::f32::consts::TAU * t).cos());
            self.points.push(from + (to - from) * t + vec2(0.0, dip));
        }
    }

    /// On along a cubic curve.
    fn curve(&mut self, a: Pos2, b: Pos2, to: Pos2) {
        let from = self.points.last().copied().unwrap_or(to).to_vec2();
        for i in 1..=14 {
            let t = i as f32 / 14.0;
            let s = 1.0 - t;
            let v = from * (s * s * s)
                + a.to_vec2() * (3.0 * s * s * t)
                + b.to_vec2() * (3.0 * s * t * t)
                + to.to_vec2() * (t * t * t);
            self.points.push(v.to_pos2());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn grid(width: f32, count: usize) -> Grid {
        Grid::fit(pos2(100.0, 50.0), width, theme::CARD, count)
    }

    #[test]
    fn fewer_cards_a_row_in_less_room_and_never_none() {
        assert_eq!(grid(1110.0, 12).per_row, 6);
        assert_eq!(grid(600.0, 12).per_row, 2);
        assert_eq!(grid(90.0, 12).per_row, 1);
    }

    #[test]
    fn cards_and_turn_stay_within_the_width() {
        for width in [330.0, 480.0, 700.0, 1110.0, 1600.0] {
            let g = grid(width, 40);
            let right = g.card(g.per_row - 1).right();
            assert!(right + 76.0 <= 100.0 + width, "{width}");
            for p in g.rope().points {
                assert!(p.x >= 100.0 && p.x <= 100.0 + width, "{width}: {p:?}");
            }
        }
    }

    #[test]
    fn the_place_under_a_card_is_its_own() {
        for count in [1, 5, 6, 7, 23] {
            let g = grid(1110.0, count);
            for i in 0..count {
                assert_eq!(g.place_at(g.card(i).center()), i);
                assert_eq!(g.place_at(g.card(i).left_top() + vec2(2.0, 2.0)), i);
                assert_eq!(g.place_at(g.card(i).right_bottom() - vec2(2.0, 2.0)), i);
            }
        }
    }

    #[test]
    fn far_places_are_the_nearest_real_ones() {
        let g = grid(1110.0, 8);
        assert_eq!(g.place_at(pos2(-500.0, -500.0)), 0);
        assert_eq!(g.place_at(pos2(5000.0, 5000.0)), 8);
        assert_eq!(g.place_at(g.card(7).center() + vec2(400.0, 0.0)), 8);
    }

    #[test]
    fn the_rope_passes_every_peg_in_order_and_never_jumps() {
        let g = grid(700.0, 11);
        let rope = g.rope();
        let mut next = 0;
        for p in &rope.points {
            if next < 11 && (*p - g.peg(next)).length() < 0.5 {
                next += 1;
            }
        }
        assert_eq!(next, 11);
        for w in rope.points.windows(2) {
            assert!((w[1] - w[0]).length() < 30.0, "{w:?}");
        }
        assert_eq!(rope.arrows.len(), 2 * (g.rows() - 1));
        assert_eq!(rope.points.last().copied(), Some(g.stopper()));
    }

    #[test]
    fn an_empty_strand_still_has_a_ring_and_a_stopper() {
        let g = grid(700.0, 0);
        assert_eq!(g.rows(), 1);
        assert!(g.stopper().x > g.ring().x);
        assert_eq!(g.place_at(pos2(400.0, 100.0)), 0);
    }
}
