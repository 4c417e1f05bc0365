//! What shapes cover, as polygons: union, difference, what two have in common, and back to curves.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::float::simplify::SimplifyShape;
use i_overlay::float::single::SingleFloatOverlay;
use kurbo::{BezPath, Cap, Join, Stroke, StrokeOpts};

use super::curves::{to_curves, to_path};
use super::polygon::{Contour, FLAT, dots, flat, round_about, signed};
use crate::symbols::art::{Node, Shape};
use crate::units::path::Path;

/// What covers less is nothing.
const LEAST: f64 = 0.05;

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
        self.contours.iter().map(signed).sum::<f64>().abs()
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
