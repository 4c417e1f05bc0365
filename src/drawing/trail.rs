//! From the places a hand passed to a line without its trembling: evenly spaced, its corners found,
//! smoothed between them, and as few curves as keep within a tolerance.
//!
//! Corners are looked for among the points that D. H. Douglas and T. K. Peucker keep ("Algorithms
//! for the reduction of the number of points required to represent a digitized line or its
//! caricature", Cartographica 10(2), 1973).

use kurbo::{BezPath, Point};

use super::fit::{fit, nearest};
use super::gesture::Spot;
use super::smooth::{blurred, turn_at};

/// How far a curve may lie from the smoothed line, in canvas units: at 60 mm a tenth of a
/// millimetre and a half.
pub const TOLERANCE: f64 = 0.6;
/// Between points of a trail.
pub(super) const STEP: f64 = 0.6;
/// How far the smoothing reaches: its standard deviation.
const SOFT: f64 = 1.8;
/// What is farther beyond the canvas than this is drawn at this distance.
const BEYOND: f64 = 60.0;
/// How far the ends of a line may be apart to count as joined.
const JOINED: f64 = 2.6;
/// A turn of this many degrees is a corner.
const TURN: f64 = 34.0;
/// How far before and behind a corner its turn is measured.
const LEG: f64 = 6.0;

/// A line without its trembling.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Trail {
    /// Evenly spaced points.
    pub points: Vec<Point>,
    /// How hard the hand pressed at each, from 0 to 1.
    pub force: Vec<f64>,
    /// Which points are corners; the ends are among them unless the line is closed without one.
    pub corners: Vec<usize>,
    /// Whether the last point is the first.
    pub closed: bool,
    /// Whether the pressure says anything.
    pub pressed: bool,
}

impl Trail {
    /// From the places a hand passed. Places that are no numbers are passed over.
    pub fn new(spots: &[Spot]) -> Self {
        let spots = sound(spots);
        let forces = || spots.iter().filter_map(|s| s.force);
        let (least, most) = forces().fold((1.0_f64, 0.0_f64), |(a, b), f| (a.min(f), b.max(f)));
        let pressed = most - least > 0.05;
        let (points, force) = evenly(&spots);
        let mut trail = Self {
            points,
            force,
            pressed,
            ..Self::default()
        };
        trail.join_ends();
        trail.corners = trail.find_corners();
        trail.smooth();
        trail
    }

    /// From points close together along a closed edge.
    pub(super) fn of_ring(ring: &[Point]) -> Self {
        let spot = |p: &Point| Spot::new(p.x, p.y);
        let spots: Vec<Spot> = ring.iter().chain(ring.first()).map(spot).collect();
        let (mut points, _) = evenly(&spots);
        if points.len() > 3 && points[points.len() - 1].distance(points[0]) < STEP / 2.0 {
            points.pop();
        }
        points.extend(points.first().copied());
        let mut trail = Self {
            force: vec![0.5; points.len()],
            points,
            closed: true,
            ..Self::default()
        };
        trail.corners = trail.find_corners();
        trail.smooth();
        trail
    }

    /// The middle of the line as curves; a single place is a line to itself, which shows as a dot.
    pub fn curves(&self, tolerance: f64) -> BezPath {
        curves(&self.points, &self.corners, self.closed, tolerance)
    }

    /// Ends that nearly meet are joined, so that what they enclose can be filled.
    fn join_ends(&mut self) {
        let (Some(first), Some(last)) = (self.points.first(), self.points.last()) else {
            return;
        };
        let way = self.points.len() as f64 * STEP;
        self.closed = way > 8.0 * JOINED && first.distance(*last) <= JOINED;
        if self.closed {
            self.points.push(*first);
            self.force.push(self.force[0]);
        }
    }

    /// Among the points that Douglas and Peucker keep, those where the line turns at once rather
    /// than slowly.
    fn find_corners(&self) -> Vec<usize> {
        let n = self.points.len();
        if n < 3 {
            return (0..n).collect();
        }
        let soft = blurred(&self.points, self.closed, SOFT / 3.0);
        let mut kept = douglas_peucker(&soft, 1.5);
        if !self.closed {
            kept.retain(|i| *i != 0 && *i != n - 1);
        } else {
            kept.pop();
        }
        let turn = |i: usize, leg: f64| turn_at(&soft, i, self.closed, leg);
        let candidates = kept.into_iter().filter_map(|i| {
            let near = (2.0 / STEP) as usize;
            let range = i.saturating_sub(near)..(i + near + 1).min(n);
            let best = range.max_by(|a, b| turn(*a, LEG).total_cmp(&turn(*b, LEG)))?;
            let whole = turn(best, LEG);
            // Along an arc half the way turns half as much; at a corner it turns nearly as much.
            let sudden = turn(best, LEG / 2.0) > 0.68 * whole;
            (whole >= TURN && sudden).then_some((best, whole))
        });
        let mut corners: Vec<(usize, f64)> = Vec::new();
        for (i, much) in candidates {
            match corners.last_mut() {
                Some(last) if (i as f64 - last.0 as f64).abs() * STEP < LEG / 2.0 => {
                    if much > last.1 {
                        *last = (i, much);
                    }
                }
                _ => corners.push((i, much)),
            }
        }
        let mut corners: Vec<usize> = corners.into_iter().map(|c| c.0).collect();
        if !self.closed {
            corners.insert(0, 0);
            corners.push(n - 1);
        }
        corners.dedup();
        corners
    }

    /// Smooths between the corners, which stay where they are.
    fn smooth(&mut self) {
        if self.closed && self.corners.is_empty() {
            self.points = blurred(&self.points, true, SOFT);
            return;
        }
        if self.closed {
            self.turn_to(self.corners[0]);
        }
        for pair in self.corners.windows(2) {
            let soft = blurred(&self.points[pair[0]..=pair[1]], false, SOFT);
            self.points[pair[0]..=pair[1]].copy_from_slice(&soft);
        }
    }

    /// A closed line begun at one of its corners.
    fn turn_to(&mut self, at: usize) {
        let n = self.points.len() - 1;
        let at = at % n.max(1);
        self.points.pop();
        self.force.pop();
        self.points.rotate_left(at);
        self.force.rotate_left(at);
        self.points.push(self.points[0]);
        self.force.push(self.force[0]);
        self.corners.iter_mut().for_each(|c| *c = (*c + n - at) % n);
        self.corners.sort_unstable();
        self.corners.push(n);
    }
}

/// Curves through points that are smooth between corners.
pub fn curves(points: &[Point], corners: &[usize], closed: bool, tolerance: f64) -> BezPath {
    let mut out = BezPath::new();
    let Some(first) = points.first() else {
        return out;
    };
    out.move_to(*first);
    if points.len() == 1 {
        out.line_to(*first);
    }
    if closed && corners.len() < 2 {
        fit(points, true, tolerance, &mut out);
    }
    for pair in corners.windows(2) {
        fit(&points[pair[0]..=pair[1]], false, tolerance, &mut out);
    }
    if closed {
        out.close_path();
    }
    out
}

/// Places that are numbers, within reach of the canvas, none twice in a row.
fn sound(spots: &[Spot]) -> Vec<Spot> {
    let canvas = f64::from(crate::symbols::art::CANVAS);
    let reach = |v: f64| v.clamp(-BEYOND, canvas + BEYOND);
    let numbers = spots.iter().filter(|s| s.x.is_finite() && s.y.is_finite());
    let mut out: Vec<Spot> = numbers
        .map(|s| Spot {
            x: reach(s.x),
            y: reach(s.y),
            force: s.force.filter(|f| f.is_finite()).map(|f| f.clamp(0.0, 1.0)),
        })
        .collect();
    out.dedup_by(|a, b| a.x == b.x && a.y == b.y);
    out
}

/// Points a step apart along the places, with the pressure in between.
fn evenly(spots: &[Spot]) -> (Vec<Point>, Vec<f64>) {
    let (mut points, mut force) = (Vec::new(), Vec::new());
    let Some(first) = spots.first() else {
        return (points, force);
    };
    let press = |s: &Spot| s.force.unwrap_or(0.5);
    points.push(Point::new(first.x, first.y));
    force.push(press(first));
    let mut left = STEP;
    for pair in spots.windows(2) {
        let (a, b) = (
            Point::new(pair[0].x, pair[0].y),
            Point::new(pair[1].x, pair[1].y),
        );
        let long = a.distance(b);
        let mut at = left;
        while at <= long {
            let t = at / long;
            points.push(a.lerp(b, t));
            force.push(press(&pair[0]) + (press(&pair[1]) - press(&pair[0])) * t);
            at += STEP;
        }
        left = at - long;
    }
    if let [.., last] = spots
        && left < STEP * 0.99
    {
        points.push(Point::new(last.x, last.y));
        force.push(press(last));
    }
    (points, force)
}

/// Which points Douglas and Peucker keep: those without which the line would be off by more than
/// the tolerance.
pub fn douglas_peucker(points: &[Point], tolerance: f64) -> Vec<usize> {
    let mut keep = vec![false; points.len()];
    let Some(last) = points.len().checked_sub(1) else {
        return Vec::new();
    };
    keep[0] = true;
    keep[last] = true;
    let mut open = vec![(0, last)];
    while let Some((a, b)) = open.pop() {
        let chord = kurbo::Line::new(points[a], points[b]);
        let mut most = (tolerance * tolerance, None);
        for (i, p) in points.iter().enumerate().take(b).skip(a + 1) {
            let (_, d2) = nearest(chord, *p);
            if d2 > most.0 {
                most = (d2, Some(i));
            }
        }
        if let Some(i) = most.1 {
            keep[i] = true;
            open.push((a, i));
            open.push((i, b));
        }
    }
    (0..points.len()).filter(|i| keep[*i]).collect()
}
