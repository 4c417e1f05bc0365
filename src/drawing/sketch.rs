//! The drawing being made: things in painting order, what was done and can be undone.

use std::sync::Arc;

use kurbo::{BezPath, Point, Rect, Shape as _};

use super::curves::{filled, line, to_path};
use super::erase::{Eraser, erase};
use super::fill::fill;
use super::gesture::{Gesture, Look, Pen, Spot};
use super::svg;
use super::tidy::{Piece, tidied};
use super::trail::{TOLERANCE, Trail};
use super::wide;
use crate::symbols::art::{Art, CANVAS, Node};
use crate::symbols::palette::INK;
use crate::symbols::parse::Refusal;

/// Steps that can be undone.
const UNDO: usize = 200;
/// Between the lines of the grid, in canvas units.
pub const GRID: f64 = 12.0;
/// How near a thing must have two corners to have a size at all.
const LEAST: f64 = 1.0;
/// Width of the line in ink round a filled shape.
const EDGE: f32 = 5.2;

type Things = Vec<Arc<Node>>;

/// A drawing being made.
#[derive(Clone, Debug, Default)]
pub struct Sketch {
    things: Things,
    tidy: bool,
    back: Vec<(Things, bool)>,
    forth: Vec<(Things, bool)>,
    /// What was there when it began.
    first: (Things, bool),
    revision: u64,
}

impl Sketch {
    /// An empty sheet.
    pub fn new() -> Self {
        Self::default()
    }

    /// A drawing made here, opened again: its shapes are things.
    ///
    /// # Errors
    /// Says what in the text is outside the words of the built-in symbols.
    pub fn open(text: &str) -> Result<Self, Refusal> {
        let (art, tidy) = svg::read(text)?;
        let things: Things = art.nodes.into_iter().map(Arc::new).collect();
        Ok(Self {
            first: (things.clone(), tidy),
            things,
            tidy,
            ..Self::default()
        })
    }

    /// The things in painting order.
    pub fn things(&self) -> impl ExactSizeIterator<Item = &Node> {
        self.things.iter().map(AsRef::as_ref)
    }

    /// Whether nothing is on the sheet.
    pub const fn is_empty(&self) -> bool {
        self.things.is_empty()
    }

    /// Whether it differs from what it was when it began.
    pub fn is_changed(&self) -> bool {
        self.things != self.first.0 || self.tidy != self.first.1
    }

    /// Grows with every change.
    pub const fn revision(&self) -> u64 {
        self.revision
    }

    /// Whether it is tidied as the built-in symbols are.
    pub const fn tidy(&self) -> bool {
        self.tidy
    }

    /// Has it tidied or not.
    pub fn set_tidy(&mut self, tidy: bool) {
        if self.tidy != tidy {
            self.remember();
            self.tidy = tidy;
        }
    }

    /// Whether another drawing has shapes to take over; a photograph has none.
    pub fn can_start_from(art: &Art) -> bool {
        art.nodes.iter().any(|n| !matches!(n, Node::Pixels { .. }))
    }

    /// Takes over the shapes of another drawing as things, above what is there.
    pub fn start_from(&mut self, art: &Art) {
        if Self::can_start_from(art) {
            self.remember();
            let shapes = art.nodes.iter();
            let shapes = shapes.filter(|n| !matches!(n, Node::Pixels { .. }));
            self.things.extend(shapes.cloned().map(Arc::new));
        }
    }

    /// Takes everything off the sheet.
    pub fn clear(&mut self) {
        if !self.things.is_empty() {
            self.remember();
            self.things.clear();
        }
    }

    /// Takes the last thing done back; says whether there was one.
    pub fn undo(&mut self) -> bool {
        let Some(was) = self.back.pop() else {
            return false;
        };
        let now = (std::mem::replace(&mut self.things, was.0), self.tidy);
        self.tidy = was.1;
        self.forth.push(now);
        self.revision += 1;
        true
    }

    /// Does it again; says whether there was something.
    pub fn redo(&mut self) -> bool {
        let Some(next) = self.forth.pop() else {
            return false;
        };
        let now = (std::mem::replace(&mut self.things, next.0), self.tidy);
        self.tidy = next.1;
        self.back.push(now);
        self.revision += 1;
        true
    }

    /// Whether there is something to take back.
    pub const fn can_undo(&self) -> bool {
        !self.back.is_empty()
    }

    /// Whether there is something to do again.
    pub const fn can_redo(&self) -> bool {
        !self.forth.is_empty()
    }

    /// Does what a hand did; says whether it changed anything.
    pub fn draw(&mut self, gesture: &Gesture, pen: Pen) -> bool {
        let mut things = self.things.clone();
        let changed = match gesture {
            Gesture::Fill(at) => fill(&mut things, at.x, at.y, pen.colour),
            Gesture::Erase(spots, width) => {
                let way = Trail::new(spots).curves(TOLERANCE);
                !way.elements().is_empty() && erase(&mut things, &Eraser::new(&way, *width))
            }
            drawn => match shape(drawn, pen) {
                Some(node) => {
                    things.push(Arc::new(node));
                    true
                }
                None => false,
            },
        };
        if changed {
            self.remember();
            self.things = things;
        }
        changed
    }

    fn remember(&mut self) {
        if self.back.len() == UNDO {
            self.back.remove(0);
        }
        self.back.push((self.things.clone(), self.tidy));
        self.forth.clear();
        self.revision += 1;
    }

    /// The drawing as it is seen.
    pub fn art(&self) -> Art {
        let things: Vec<&Node> = self.things().collect();
        let nodes = if self.tidy {
            let pieces = tidied(&things).into_iter();
            let node = |p| match p {
                Piece::Drawn(node) => node.clone(),
                Piece::Seam(node) | Piece::Edge(node) => node,
            };
            pieces.map(node).collect()
        } else {
            things.into_iter().cloned().collect()
        };
        Art { nodes }
    }

    /// The drawing as SVG text; the same drawing gives the same bytes.
    pub fn svg(&self) -> String {
        let things: Vec<&Node> = self.things().collect();
        svg::write(&things, self.tidy)
    }
}

/// A place on the nearest crossing of the grid.
pub fn on_grid(spot: Spot) -> Spot {
    let snap = |v: f64| ((v / GRID).round() * GRID).clamp(0.0, f64::from(CANVAS));
    Spot {
        x: snap(spot.x),
        y: snap(spot.y),
        ..spot
    }
}

/// What a gesture that adds something draws; nothing where it has no size.
pub fn shape(gesture: &Gesture, pen: Pen) -> Option<Node> {
    match gesture {
        Gesture::Stroke(spots) => stroke(spots, pen),
        Gesture::Line(a, b) => {
            let (a, b) = (point(a)?, point(b)?);
            let mut path = BezPath::new();
            path.move_to(a);
            path.line_to(b);
            let drawn = line(to_path(&path), pen.colour, pen.width);
            (a.distance(b) >= LEAST).then_some(Node::Shape(drawn))
        }
        Gesture::Rectangle(a, b) => {
            let path = rect(a, b)?.to_path(0.01);
            Some(closed(&path, pen))
        }
        Gesture::Ellipse(a, b) => {
            let path = kurbo::Ellipse::from_rect(rect(a, b)?).to_path(0.01);
            Some(closed(&path, pen))
        }
        Gesture::Polygon(spots) => {
            let corners = corners(spots)?;
            let mut path = BezPath::new();
            path.move_to(corners[0]);
            corners[1..].iter().for_each(|p| path.line_to(*p));
            path.close_path();
            Some(closed(&path, pen))
        }
        Gesture::Rounded(spots) => Some(closed(&rounded(&corners(spots)?), pen)),
        Gesture::Fill(_) | Gesture::Erase(..) => None,
    }
}

fn stroke(spots: &[Spot], pen: Pen) -> Option<Node> {
    let trail = Trail::new(spots);
    if trail.points.is_empty() {
        return None;
    }
    if trail.pressed {
        let area = wide::outline(&trail, f64::from(pen.width));
        return Some(Node::Shape(filled(area.to_path(), pen.colour)));
    }
    let path = to_path(&trail.curves(TOLERANCE));
    Some(Node::Shape(line(path, pen.colour, pen.width)))
}

/// A closed path, seen as the pen says.
fn closed(path: &BezPath, pen: Pen) -> Node {
    let path = to_path(path);
    Node::Shape(match pen.look {
        Look::Line => line(path, pen.colour, pen.width),
        Look::Area => filled(path, pen.colour),
        Look::Both => {
            let mut both = line(path, INK, EDGE);
            both.fill = Some(pen.colour);
            both.even_odd = true;
            both
        }
    })
}

/// A place as a point within reach of the canvas, if it is one.
fn point(spot: &Spot) -> Option<Point> {
    let reach = |v: f64| v.clamp(-60.0, f64::from(CANVAS) + 60.0);
    let sound = spot.x.is_finite() && spot.y.is_finite();
    sound.then(|| Point::new(reach(spot.x), reach(spot.y)))
}

fn rect(a: &Spot, b: &Spot) -> Option<Rect> {
    let rect = Rect::from_points(point(a)?, point(b)?);
    (rect.width() >= LEAST && rect.height() >= LEAST).then_some(rect)
}

/// Three or more corners, none twice in a row.
fn corners(spots: &[Spot]) -> Option<Vec<Point>> {
    let mut corners: Vec<Point> = spots.iter().filter_map(point).collect();
    corners.dedup_by(|a, b| a.distance(*b) < LEAST);
    while corners.len() > 1 && corners[0].distance(corners[corners.len() - 1]) < LEAST {
        corners.pop();
    }
    (corners.len() >= 3).then_some(corners)
}

/// A closed curve that touches every side of a polygon in its middle.
fn rounded(corners: &[Point]) -> BezPath {
    let n = corners.len();
    let middle = |i: usize| corners[i % n].midpoint(corners[(i + 1) % n]);
    let mut path = BezPath::new();
    path.move_to(middle(n - 1));
    for (i, corner) in corners.iter().enumerate() {
        path.quad_to(*corner, middle(i));
    }
    path.close_path();
    path
}
