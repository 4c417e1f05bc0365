//! The eraser. What it passes is gone and not painted over, so that it is right on any ground: a
//! line is cut where its middle is touched, an area loses what the eraser covers.

use std::sync::Arc;

use kurbo::{BezPath, Point};

use super::area::Area;
use super::curves::{filled, to_curves, to_path};
use super::fit::nearest;
use super::way::Places;
use crate::symbols::art::{Node, Shape, Stroke};

/// A line this wide is erased like an area.
const BROAD: f32 = 6.5;

/// The way of an eraser and what it covers.
pub struct Eraser {
    way: Vec<kurbo::Line>,
    reach: f64,
    covers: Area,
}

impl Eraser {
    /// An eraser led along a line, so wide.
    pub fn new(way: &BezPath, width: f64) -> Self {
        let mut lines = Vec::new();
        let mut pen = Point::ZERO;
        kurbo::flatten(way, 0.1, |el| match el {
            kurbo::PathEl::MoveTo(p) => pen = p,
            kurbo::PathEl::LineTo(p) => {
                lines.push(kurbo::Line::new(pen, p));
                pen = p;
            }
            _ => {}
        });
        Self {
            way: lines,
            reach: width / 2.0,
            covers: Area::along_round(way, width),
        }
    }

    /// Whether it passed a place.
    pub(super) fn touches(&self, p: Point) -> bool {
        self.comes_near(p, 0.0)
    }

    /// Whether it passed so near a place.
    pub(super) fn comes_near(&self, p: Point, by: f64) -> bool {
        let reach = (self.reach + by).powi(2);
        self.way.iter().any(|l| nearest(*l, p).1 <= reach)
    }
}

/// Erases from all things. Gives whether anything changed.
pub fn erase(things: &mut Vec<Arc<Node>>, eraser: &Eraser) -> bool {
    let mut left = Vec::with_capacity(things.len());
    let mut changed = false;
    for thing in things.iter() {
        match without(thing, eraser) {
            None => left.push(Arc::clone(thing)),
            Some(rest) => {
                changed = true;
                left.extend(rest.into_iter().map(Arc::new));
            }
        }
    }
    *things = left;
    changed
}

/// What is left of a thing, if the eraser touches it.
fn without(node: &Node, eraser: &Eraser) -> Option<Vec<Node>> {
    match node {
        Node::Shape(shape) => without_in(shape, eraser),
        Node::Clipped { clip, nodes } => {
            let mut rest = Vec::new();
            let mut changed = false;
            for inner in nodes {
                match without(inner, eraser) {
                    None => rest.push(inner.clone()),
                    Some(pieces) => {
                        changed = true;
                        rest.extend(pieces);
                    }
                }
            }
            let clip = clip.clone();
            changed.then(|| match rest.len() {
                0 => Vec::new(),
                _ => vec![Node::Clipped { clip, nodes: rest }],
            })
        }
        Node::Pixels { .. } => None,
    }
}

fn without_in(shape: &Shape, eraser: &Eraser) -> Option<Vec<Node>> {
    let inside = shape.fill.map(|colour| {
        let area = Area::inside(shape);
        let rest = cut_area(&area, eraser);
        (colour, rest)
    });
    let line = shape
        .stroke
        .map(|stroke| (stroke, cut_line(shape, stroke, eraser)));
    let touched = matches!(inside, Some((_, Some(_)))) || matches!(line, Some((_, Some(_))));
    if !touched {
        return None;
    }
    let mut rest = Vec::new();
    if let Some((colour, cut)) = inside {
        match cut {
            Some(area) if area.is_empty() => {}
            Some(area) => rest.push(Node::Shape(filled(area.to_path(), colour))),
            None => rest.push(Node::Shape(Shape {
                stroke: None,
                ..shape.clone()
            })),
        }
    }
    if let Some((stroke, cut)) = line {
        let whole = || {
            vec![Shape {
                fill: None,
                even_odd: false,
                ..shape.clone()
            }]
        };
        let pieces = cut.unwrap_or_else(whole);
        rest.extend(pieces.into_iter().map(|s| match s.stroke {
            None => Node::Shape(s),
            Some(_) => Node::Shape(Shape {
                stroke: Some(stroke),
                ..s
            }),
        }));
    }
    Some(rest)
}

fn cut_area(area: &Area, eraser: &Eraser) -> Option<Area> {
    if !area.may_touch(&eraser.covers) {
        return None;
    }
    let rest = area.without(&eraser.covers);
    (area.size() - rest.size() > 0.01).then_some(rest)
}

/// The pieces of a line that are left, if it is touched.
fn cut_line(shape: &Shape, stroke: Stroke, eraser: &Eraser) -> Option<Vec<Shape>> {
    if stroke.width >= BROAD {
        let rest = cut_area(&Area::of_line(shape), eraser)?;
        let pieces = (!rest.is_empty()).then(|| filled(rest.to_path(), stroke.colour));
        return Some(pieces.into_iter().collect());
    }
    // A round end reaches half the width beyond the cut.
    let round = if stroke.butt {
        0.0
    } else {
        f64::from(stroke.width) / 2.0
    };
    let mut out = Vec::new();
    let mut touched = false;
    for line in subpaths(&to_curves(&shape.path)) {
        let places = Places::along(&line);
        let Some(kept) = places.kept(eraser, round) else {
            out.push(line);
            continue;
        };
        touched = true;
        let closed = line.elements().last() == Some(&kurbo::PathEl::ClosePath);
        out.extend(joined(&places, kept, closed));
    }
    touched.then(|| {
        out.iter()
            .map(|piece| Shape {
                path: to_path(piece),
                fill: None,
                even_odd: false,
                stroke: Some(stroke),
            })
            .collect()
    })
}

/// Pieces as lines of their own; where a closed line begins, the last and the first are one.
fn joined(places: &Places, mut kept: Vec<(f64, f64)>, closed: bool) -> Vec<BezPath> {
    let around = closed
        && kept.len() > 1
        && kept.first().is_some_and(|k| k.0 == 0.0)
        && kept.last().is_some_and(|k| k.1 == places.end());
    let last = around.then(|| kept.pop()).flatten();
    let mut out: Vec<BezPath> = kept.iter().map(|k| places.piece(k.0, k.1)).collect();
    if let (Some((from, to)), Some(first)) = (last, out.first_mut()) {
        let mut whole = places.piece(from, to);
        whole.extend(first.elements().iter().skip(1).copied());
        *first = whole;
    }
    out
}

/// Each line of a path by itself.
fn subpaths(path: &BezPath) -> Vec<BezPath> {
    let mut out: Vec<BezPath> = Vec::new();
    for el in path.elements() {
        if matches!(el, kurbo::PathEl::MoveTo(_)) || out.is_empty() {
            out.push(BezPath::new());
        }
        if let Some(line) = out.last_mut() {
            line.push(*el);
        }
    }
    out
}
