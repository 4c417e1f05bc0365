//! What shapes cover, as polygons: union, difference, what two have in common, and back to curves.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::float::simplify::SimplifyShape;
use i_overlay::float::single::SingleFloatOverlay;
use kurbo::{BezPath, Cap, Join, PathEl, Point, Stroke, StrokeOpts};

use super::curves::{to_curves, to_path};
use super::trail::{curves, turn};
use crate::symbols::art::{Node, Shape};
use crate::units::path::Path;

/// How far a polygon may lie from the curve it stands for, in canvas units.
const FLAT: f64 = 0.02;
/// How far the curves made of a polygon may lie from it.
const TOLERANCE: f64 = 0.1;
/// A side this long is a straight line; pieces of curves are shorter.
const STRAIGHT: f64 = 8.0;
/// Between points of the sides that are fitted with curves.
const STEP: f64 = 0.6;
/// Where the sides of a polygon turn by more degrees than this, there is a corner.
const TURN: f64 = 35.0;
/// How far before and behind a corner its turn is measured.
const LEG: f64 = 0.8;
/// What covers less is nothing.
const LEAST: f64 = 0.05;

type Contour = Vec<[f64; 2]>;

/// A part of the canvas, bounded by polygons that do not cross; holes turn the other way round.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Area {
    contours: Vec<Contour>,
}

impl Area {
    /// All that a thing of a drawing covers.
    pub fn of(node: &Node) -> Self {
        match node {
            Node::Shape(shape) => Self::inside(shape).with(&Self::of_line(shape)),
            Node::Clipped { clip, nodes } => {
                let window = Self::of_path(clip, false);
                Self::all(nodes.iter().map(Self::of)).common(&window)
            }
            Node::Pixels {
                at: [x, y, w, h], ..
            } => {
                let corners = [[*x, *y], [x + w, *y], [x + w, y + h], [*x, y + h]];
                let corners = corners.map(|c| c.map(f64::from)).to_vec();
                Self::clean(&[corners], false)
            }
        }
    }

    /// The filled inside of a shape.
    pub fn inside(shape: &Shape) -> Self {
        match shape.fill {
            Some(_) => Self::of_path(&shape.path, shape.even_odd),
            None => Self::default(),
        }
    }

    /// What the line of a shape covers.
    pub fn of_line(shape: &Shape) -> Self {
        let Some(stroke) = shape.stroke else {
            return Self::default();
        };
        let cap = if stroke.butt { Cap::Butt } else { Cap::Round };
        let join = if stroke.mitre {
            Join::Miter
        } else {
            Join::Round
        };
        Self::along(&to_curves(&shape.path), f64::from(stroke.width), cap, join)
    }

    /// What a round pen covers along curves.
    pub fn along_round(curves: &BezPath, width: f64) -> Self {
        Self::along(curves, width, Cap::Round, Join::Round)
    }

    fn along(curves: &BezPath, width: f64, cap: Cap, join: Join) -> Self {
        let style = Stroke::new(width).with_caps(cap).with_join(join);
        let dots = dots(curves, width);
        let outline = kurbo::stroke(curves, &style, &StrokeOpts::default(), FLAT);
        let mut contours = flat(&outline);
        contours.extend(dots);
        Self::clean(&contours, false)
    }

    /// The inside of a path.
    pub fn of_path(path: &Path<[f32; 2]>, even_odd: bool) -> Self {
        Self::clean(&flat(&to_curves(path)), even_odd)
    }

    /// Of polygons that may cross, by one of the two rules of what is inside.
    pub fn clean(contours: &[Contour], even_odd: bool) -> Self {
        let rule = if even_odd {
            FillRule::EvenOdd
        } else {
            FillRule::NonZero
        };
        let contours = contours.to_vec();
        Self::taken(contours.simplify_shape(rule))
    }

    fn taken(shapes: Vec<Vec<Contour>>) -> Self {
        let contours = shapes.into_iter().flatten();
        let contours = contours.filter(|c| signed(c).abs() > LEAST).collect();
        Self { contours }
    }

    fn and(&self, other: &Self, rule: OverlayRule) -> Self {
        let shapes = self
            .contours
            .overlay(&other.contours, rule, FillRule::NonZero);
        Self::taken(shapes)
    }

    /// What both cover, together.
    #[must_use]
    pub fn with(&self, other: &Self) -> Self {
        if self.is_empty() {
            return other.clone();
        }
        if other.is_empty() {
            return self.clone();
        }
        self.and(other, OverlayRule::Union)
    }

    /// What this covers and the other does not.
    #[must_use]
    pub fn without(&self, other: &Self) -> Self {
        if self.is_empty() || !self.may_touch(other) {
            return self.clone();
        }
        self.and(other, OverlayRule::Difference)
    }

    /// What both cover.
    #[must_use]
    pub fn common(&self, other: &Self) -> Self {
        if !self.may_touch(other) {
            return Self::default();
        }
        self.and(other, OverlayRule::Intersect)
    }

    /// What any of them covers.
    pub fn all(areas: impl Iterator<Item = Self>) -> Self {
        let contours: Vec<Contour> = areas.flat_map(|a| a.contours).collect();
        Self::clean(&contours, false)
    }

    /// Whether nothing is covered.
    pub const fn is_empty(&self) -> bool {
        self.contours.is_empty()
    }

    /// How much is covered, in square units of the canvas.
    pub fn size(&self) -> f64 {
        self.contours.iter().map(|c| signed(c)).sum::<f64>().abs()
    }

    /// The least rectangle that holds it: left, top, right, bottom.
    pub fn bounds(&self) -> [f64; 4] {
        let start = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        self.contours.iter().flatten().fold(start, |b, p| {
            [
                b[0].min(p[0]),
                b[1].min(p[1]),
                b[2].max(p[0]),
                b[3].max(p[1]),
            ]
        })
    }

    /// Whether the rectangles round both meet.
    pub fn may_touch(&self, other: &Self) -> bool {
        let (a, b) = (self.bounds(), other.bounds());
        a[0] <= b[2] && b[0] <= a[2] && a[1] <= b[3] && b[1] <= a[3]
    }

    /// Without its holes.
    #[must_use]
    pub fn without_holes(&self) -> Self {
        let outer = self.contours.iter().filter(|c| signed(c) > 0.0);
        let turned = |c: &Contour| c.iter().rev().copied().collect::<Contour>();
        let most = self.contours.iter().max_by(|a, b| {
            let (a, b) = (signed(a).abs(), signed(b).abs());
            a.total_cmp(&b)
        });
        let contours: Vec<Contour> = match most {
            Some(c) if signed(c) < 0.0 => {
                let inner = self.contours.iter().filter(|c| signed(c) < 0.0);
                inner.map(turned).collect()
            }
            _ => outer.cloned().collect(),
        };
        Self::clean(&contours, false)
    }

    /// Without pieces that cover less than this.
    #[must_use]
    pub fn without_crumbs(mut self, least: f64) -> Self {
        self.contours.retain(|c| signed(c).abs() >= least);
        self
    }

    /// As curves, within a tenth of a unit.
    pub fn to_path(&self) -> Path<[f32; 2]> {
        let mut all = BezPath::new();
        for contour in &self.contours {
            all.extend(round_about(contour));
        }
        to_path(&all)
    }
}

/// Lines that go nowhere: a round pen put down and lifted leaves a dot.
fn dots(curves: &BezPath, width: f64) -> Vec<Contour> {
    let mut out = Vec::new();
    let mut line: Vec<Point> = Vec::new();
    let mut flush = |line: &mut Vec<Point>| {
        if let Some(p) = line.first()
            && line.iter().all(|q| q.distance(*p) < 1e-6)
        {
            let circle = kurbo::Circle::new(*p, width / 2.0);
            out.extend(flat(&kurbo::Shape::to_path(&circle, FLAT)));
        }
        line.clear();
    };
    for el in curves.elements() {
        if matches!(el, PathEl::MoveTo(_)) {
            flush(&mut line);
        }
        match *el {
            PathEl::CurveTo(a, b, c) => line.extend([a, b, c]),
            PathEl::QuadTo(a, b) => line.extend([a, b]),
            PathEl::MoveTo(a) | PathEl::LineTo(a) => line.push(a),
            PathEl::ClosePath => {}
        }
    }
    flush(&mut line);
    out
}

/// Curves as polygons.
fn flat(curves: &BezPath) -> Vec<Contour> {
    let mut out: Vec<Contour> = Vec::new();
    kurbo::flatten(curves, FLAT, |el| match el {
        PathEl::MoveTo(p) => out.push(vec![[p.x, p.y]]),
        PathEl::LineTo(p) => {
            if let Some(line) = out.last_mut() {
                line.push([p.x, p.y]);
            }
        }
        _ => {}
    });
    out.retain(|c| c.len() > 2);
    out
}

/// Half the sum of the cross products: the area, with the sign of its direction.
fn signed(c: &Contour) -> f64 {
    let next = c.iter().cycle().skip(1);
    let cross = c.iter().zip(next).map(|(a, b)| a[0] * b[1] - a[1] * b[0]);
    cross.sum::<f64>() / 2.0
}

/// A polygon as curves: straight where its sides are long, fitted between its corners elsewhere.
fn round_about(contour: &Contour) -> BezPath {
    let corners: Vec<Point> = contour.iter().map(|p| Point::new(p[0], p[1])).collect();
    let n = corners.len();
    // Places where a curve may not run on: corners, and the ends of straight sides.
    let mut points = Vec::new();
    let mut stops = Vec::new();
    let long = |i: usize| corners[i % n].distance(corners[(i + 1) % n]) >= STRAIGHT;
    for i in 0..n {
        let (a, b) = (corners[i], corners[(i + 1) % n]);
        if long(i) || long(i + n - 1) || sharp(&corners, i) {
            stops.push(points.len());
        }
        points.push(a);
        let pieces = (a.distance(b) / STEP).ceil();
        if !long(i) {
            points.extend((1..pieces as usize).map(|k| a.lerp(b, k as f64 / pieces)));
        }
    }
    let Some(first) = stops.first().copied() else {
        points.push(points[0]);
        return curves(&points, &[], true, TOLERANCE);
    };
    points.rotate_left(first);
    points.push(points[0]);
    let m = points.len() - 1;
    let mut stops: Vec<usize> = stops.into_iter().map(|s| s - first).collect();
    stops.push(m);
    curves(&points, &stops, true, TOLERANCE)
}

/// Whether a polygon turns at once at a corner, seen a little way before and behind it.
fn sharp(corners: &[Point], i: usize) -> bool {
    let n = corners.len();
    let away = |forth: bool| {
        let step = |k: usize| if forth { (i + k) % n } else { (i + n - k) % n };
        let mut left = LEG;
        let mut at = corners[i];
        for k in 1..n {
            let to = corners[step(k)];
            let long = at.distance(to);
            if long >= left {
                return at.lerp(to, left / long);
            }
            left -= long;
            at = to;
        }
        at
    };
    let at_corner = |j: usize| {
        let (a, b) = (corners[(j + n - 1) % n], corners[(j + 1) % n]);
        turn(corners[j % n] - a, b - corners[j % n])
    };
    let here = at_corner(i);
    let most_here = here >= at_corner(i + n - 1) && here >= at_corner(i + 1);
    here > 8.0 && most_here && turn(corners[i] - away(false), away(true) - corners[i]) > TURN
}
