//! A line measured along its way, and what an eraser leaves of it.

use kurbo::{BezPath, ParamCurve, ParamCurveArclen, PathSeg, Point};

use super::erase::Eraser;

/// Between places of a line that are looked at, in canvas units.
const STEP: f64 = 0.5;
/// Pieces of a line shorter than this are gone too.
const CRUMB: f64 = 0.8;

/// A line measured along its way.
pub struct Places {
    segs: Vec<(PathSeg, f64)>,
}

impl Places {
    /// Measures a line.
    pub fn along(line: &BezPath) -> Self {
        let segs = line.segments().map(|s| (s, s.arclen(0.01))).collect();
        Self { segs }
    }

    /// How long it is.
    pub fn long(&self) -> f64 {
        self.segs.iter().map(|s| s.1).sum()
    }

    fn at(&self, mut way: f64) -> Point {
        for (seg, long) in &self.segs {
            if way <= *long {
                let t = if *long > 0.0 {
                    seg.inv_arclen(way.max(0.0), 0.01)
                } else {
                    0.0
                };
                return seg.eval(t.clamp(0.0, 1.0));
            }
            way -= long;
        }
        self.segs.last().map_or(Point::ZERO, |(s, _)| s.end())
    }

    /// The stretches that are left: what is touched goes, and at each cut the room of a round end.
    pub fn kept(&self, eraser: &Eraser, round: f64) -> Vec<(f64, f64)> {
        let long = self.long();
        let n = (long / STEP).ceil().max(1.0) as usize;
        let place = |i: usize| long * i as f64 / n as f64;
        let mut cuts: Vec<(f64, f64)> = Vec::new();
        let mut open: Option<f64> = None;
        let mut was = false;
        for i in 0..=n {
            let is = eraser.touches(self.at(place(i)));
            let edge = |a: f64, b: f64| self.edge(eraser, a, b);
            if is && !was {
                open = Some(if i == 0 {
                    0.0
                } else {
                    edge(place(i), place(i - 1))
                });
            }
            if !is && was {
                let to = edge(place(i - 1), place(i));
                cuts.extend(open.take().map(|from| (from, to)));
            }
            was = is;
        }
        cuts.extend(open.map(|from| (from, long)));
        if cuts.is_empty() {
            return vec![(0.0, long)];
        }
        let mut kept = Vec::new();
        let mut from = 0.0;
        for (a, b) in cuts {
            let (a, b) = (a - round, b + round);
            if a - from > CRUMB {
                kept.push((from, a));
            }
            from = b.max(from);
        }
        if long - from > CRUMB {
            kept.push((from, long));
        }
        kept
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

    /// A stretch of the line.
    pub fn piece(&self, from: f64, to: f64) -> BezPath {
        let mut out = BezPath::new();
        let mut way = 0.0;
        for (seg, long) in &self.segs {
            let (a, b) = ((from - way).max(0.0), (to - way).min(*long));
            way += long;
            if b - a < 1e-6 {
                continue;
            }
            let (s, t) = (seg.inv_arclen(a, 0.001), seg.inv_arclen(b, 0.001));
            let s = if a <= 0.0 { 0.0 } else { s };
            let t = if b >= *long { 1.0 } else { t };
            let part = seg.subsegment(s..t);
            if out.elements().is_empty() {
                out.move_to(part.start());
            }
            out.push(part.as_path_el());
        }
        out
    }
}
