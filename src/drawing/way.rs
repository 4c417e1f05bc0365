//! A line by its pieces, and what an eraser leaves of it.
//!
//! A place on a line is the number of the piece and how far along it lies, in one: 2.5 is half way
//! along the third. Only what comes near the eraser is looked at closely, so that a line that goes
//! far beyond the canvas takes no longer than another.

use kurbo::{BezPath, ParamCurve, PathSeg, Point, Rect};

use super::erase::Eraser;

/// Between places of a line that are looked at, in canvas units.
const STEP: f64 = 0.5;
/// Pieces of a line shorter than this are gone too.
const CRUMB: f64 = 0.8;
/// The way along a line is added up in steps of this.
const FINE: f64 = 0.05;
/// Parts of a piece shorter than this are no longer halved.
const FINEST: f64 = 1e-12;
/// So much further off is looked at too, for what is lost in reckoning.
const NEAR: f64 = 1e-6;

/// A line by its pieces.
pub struct Places {
    segs: Vec<PathSeg>,
}

impl Places {
    /// The pieces of a line.
    pub fn along(line: &BezPath) -> Self {
        Self {
            segs: line.segments().collect(),
        }
    }

    /// The last place.
    pub const fn end(&self) -> f64 {
        self.segs.len() as f64
    }

    fn at(&self, place: f64) -> Point {
        let last = self.segs.len().saturating_sub(1);
        let i = (place.max(0.0) as usize).min(last);
        let seg = self.segs.get(i);
        seg.map_or(Point::ZERO, |s| s.eval((place - i as f64).clamp(0.0, 1.0)))
    }

    /// The stretches that are left: what is touched goes, and at each cut the room of a round end.
    /// Nothing where the eraser touches none of it.
    pub fn kept(&self, eraser: &Eraser, round: f64) -> Option<Vec<(f64, f64)>> {
        let mut cuts: Vec<(f64, f64)> = Vec::new();
        for (i, seg) in self.segs.iter().enumerate() {
            self.touched(eraser, *seg, (i as f64, (i + 1) as f64), &mut cuts);
        }
        if cuts.is_empty() {
            return None;
        }
        let mut kept = Vec::new();
        let mut from = 0.0;
        for (a, b) in cuts {
            let (a, b) = (self.further(a, -round), self.further(b, round));
            kept.extend(self.more_than_a_crumb(from, a));
            from = b.max(from);
        }
        kept.extend(self.more_than_a_crumb(from, self.end()));
        Some(kept)
    }

    /// Adds the stretches of a part of a piece that are touched.
    fn touched(
        &self,
        eraser: &Eraser,
        part: PathSeg,
        (from, to): (f64, f64),
        cuts: &mut Vec<(f64, f64)>,
    ) {
        let hull = hull(part);
        let size = hull.width().hypot(hull.height());
        if !eraser.comes_near(hull.center(), size / 2.0 + NEAR) {
            return;
        }
        if size > STEP && to - from > FINEST {
            let middle = f64::midpoint(from, to);
            let (first, second) = part.subdivide();
            self.touched(eraser, first, (from, middle), cuts);
            self.touched(eraser, second, (middle, to), cuts);
            return;
        }
        let cut = match (eraser.touches(part.start()), eraser.touches(part.end())) {
            (false, false) => return,
            (true, true) => (from, to),
            (true, false) => (from, self.edge(eraser, from, to)),
            (false, true) => (self.edge(eraser, to, from), to),
        };
        match cuts.last_mut() {
            Some(before) if cut.0 <= before.1 => before.1 = cut.1,
            _ => cuts.push(cut),
        }
    }

    /// Where the eraser's edge crosses between a touched and an untouched place.
    fn edge(&self, eraser: &Eraser, mut touched: f64, mut free: f64) -> f64 {
        for _ in 0..8 {
            let middle = f64::midpoint(touched, free);
            if eraser.touches(self.at(middle)) {
                touched = middle;
            } else {
                free = middle;
            }
        }
        free
    }

    /// The place so many canvas units further along, or back where `way` is negative; the end or the
    /// beginning where there is no more.
    fn further(&self, mut place: f64, way: f64) -> f64 {
        let (mut left, mut step) = (way.abs(), 0.02_f64);
        let mut here = self.at(place);
        while left > 0.0 {
            step = (step * 2.0).min(0.02);
            let go = |step: f64| (place + step * way.signum()).clamp(0.0, self.end());
            // In steps so small that the line is straight between them.
            while self.at(go(step)).distance(here) > FINE.min(left) && go(step / 2.0) != place {
                step /= 2.0;
            }
            let next = go(step);
            if next == place {
                break;
            }
            left -= self.at(next).distance(here).max(FINE * 1e-3);
            (place, here) = (next, self.at(next));
        }
        place
    }

    fn more_than_a_crumb(&self, from: f64, to: f64) -> Option<(f64, f64)> {
        (to > from && self.further(from, CRUMB) < to).then_some((from, to))
    }

    /// A stretch of the line.
    pub fn piece(&self, from: f64, to: f64) -> BezPath {
        let mut out = BezPath::new();
        for (i, seg) in self.segs.iter().enumerate() {
            let (s, t) = ((from - i as f64).max(0.0), (to - i as f64).min(1.0));
            if t - s < 1e-9 {
                continue;
            }
            let part = seg.subsegment(s..t);
            if out.elements().is_empty() {
                out.move_to(part.start());
            }
            out.push(part.as_path_el());
        }
        out
    }
}

/// What holds all of a piece: it never leaves the corners of its handles.
fn hull(seg: PathSeg) -> Rect {
    let ends = Rect::from_points(seg.start(), seg.end());
    match seg {
        PathSeg::Line(_) => ends,
        PathSeg::Quad(q) => ends.union_pt(q.p1),
        PathSeg::Cubic(c) => ends.union_pt(c.p1).union_pt(c.p2),
    }
}
