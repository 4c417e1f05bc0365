//! The drawing on small cells: which thing is uppermost in each, and the distance to what is chosen.

use resvg::tiny_skia::{FillRule, Mask, PathBuilder, Transform};
use resvg::usvg::tiny_skia_path::{LineCap, LineJoin, Path as SkPath, Stroke};

use crate::symbols::art::{CANVAS, Node, Shape};
use crate::units::path::{Path, Seg};

/// Cells along a side.
pub const SIDE: usize = 960;
/// Cells in a canvas unit.
pub const SCALE: f32 = SIDE as f32 / CANVAS;
/// Nothing lies there.
pub const NONE: u32 = u32::MAX;

/// For each cell the leaf that is uppermost there, counted through all things in painting order.
pub struct Grid {
    /// The uppermost leaf, or [`NONE`].
    pub top: Vec<u32>,
    /// Of each leaf, the thing it belongs to and its colour.
    pub leaves: Vec<Leaf>,
}

/// A fill or a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leaf {
    /// The thing it belongs to.
    pub thing: usize,
    /// Its colour.
    pub colour: crate::units::colour::Rgb,
}

impl Grid {
    /// Of things in painting order.
    pub fn of<'a>(things: impl Iterator<Item = &'a Node>) -> Self {
        let mut grid = Self {
            top: vec![NONE; SIDE * SIDE],
            leaves: Vec::new(),
        };
        for (i, node) in things.enumerate() {
            grid.node(node, i, None);
        }
        grid
    }

    /// The leaf in a cell.
    pub fn leaf(&self, cell: usize) -> Option<&Leaf> {
        self.leaves.get(self.top[cell] as usize)
    }

    fn node(&mut self, node: &Node, thing: usize, window: Option<&Mask>) {
        match node {
            Node::Shape(shape) => self.shape(shape, thing, window),
            Node::Clipped { clip, nodes } => {
                let Some(mut mask) = covered(&outline(clip), false) else {
                    return;
                };
                if let Some(outer) = window {
                    let both = mask.data_mut().iter_mut().zip(outer.data());
                    both.for_each(|(a, b)| *a = (*a).min(*b));
                }
                for inner in nodes {
                    self.node(inner, thing, Some(&mask));
                }
            }
            Node::Pixels { .. } => {}
        }
    }

    fn shape(&mut self, shape: &Shape, thing: usize, window: Option<&Mask>) {
        let path = outline(&shape.path);
        if let Some(colour) = shape.fill {
            let leaf = Leaf { thing, colour };
            self.leaf_on(leaf, &path, shape.even_odd, window);
        }
        let Some((stroke, path)) = shape.stroke.zip(path) else {
            return;
        };
        let pen = Stroke {
            width: stroke.width,
            line_cap: if stroke.butt {
                LineCap::Butt
            } else {
                LineCap::Round
            },
            line_join: if stroke.mitre {
                LineJoin::Miter
            } else {
                LineJoin::Round
            },
            ..Stroke::default()
        };
        let leaf = Leaf {
            thing,
            colour: stroke.colour,
        };
        self.leaf_on(leaf, &path.stroke(&pen, SCALE), false, window);
    }

    fn leaf_on(
        &mut self,
        leaf: Leaf,
        path: &Option<SkPath>,
        even_odd: bool,
        window: Option<&Mask>,
    ) {
        let Some(mask) = covered(path, even_odd) else {
            return;
        };
        let number = self.leaves.len() as u32;
        self.leaves.push(leaf);
        let seen = |i: usize| window.is_none_or(|w| w.data()[i] > 127);
        for i in rows(path) {
            if mask.data()[i] > 127 && seen(i) {
                self.top[i] = number;
            }
        }
    }
}

/// The cells of the rows that a path reaches.
fn rows(path: &Option<SkPath>) -> std::ops::Range<usize> {
    let Some(path) = path else { return 0..0 };
    let row = |y: f32| ((y * SCALE).max(0.0) as usize).min(SIDE);
    let bounds = path.bounds();
    row(bounds.top() - 1.0) * SIDE..row(bounds.bottom() + 1.0) * SIDE
}

fn covered(path: &Option<SkPath>, even_odd: bool) -> Option<Mask> {
    let mut mask = Mask::new(SIDE as u32, SIDE as u32)?;
    let rule = if even_odd {
        FillRule::EvenOdd
    } else {
        FillRule::Winding
    };
    let at = Transform::from_scale(SCALE, SCALE);
    mask.fill_path(path.as_ref()?, rule, false, at);
    Some(mask)
}

fn outline(path: &Path<[f32; 2]>) -> Option<SkPath> {
    let mut pen = PathBuilder::new();
    for seg in &path.segs {
        match *seg {
            Seg::Move([x, y]) => pen.move_to(x, y),
            Seg::Line([x, y]) => pen.line_to(x, y),
            Seg::Cubic(a, b, c) => pen.cubic_to(a[0], a[1], b[0], b[1], c[0], c[1]),
            Seg::Close => pen.close(),
        }
    }
    pen.finish()
}

/// The squared distance of each cell to the nearest chosen one, in cells: P. F. Felzenszwalb and
/// D. P. Huttenlocher, "Distance Transforms of Sampled Functions", Theory of Computing 8 (2012).
pub fn distances(chosen: &[bool]) -> Vec<f32> {
    const FAR: f32 = 1e12;
    let mut d: Vec<f32> = chosen.iter().map(|c| if *c { 0.0 } else { FAR }).collect();
    let mut line = Envelope::new();
    let mut strip = vec![0.0; SIDE];
    for x in 0..SIDE {
        for (y, v) in strip.iter_mut().enumerate() {
            *v = d[y * SIDE + x];
        }
        line.of(&strip, |y, v| d[y * SIDE + x] = v);
    }
    for y in 0..SIDE {
        strip.copy_from_slice(&d[y * SIDE..(y + 1) * SIDE]);
        line.of(&strip, |x, v| d[y * SIDE + x] = v);
    }
    d
}

/// The lower envelope of parabolas, one standing on each cell of a line.
struct Envelope {
    stand: Vec<usize>,
    from: Vec<f32>,
}

impl Envelope {
    fn new() -> Self {
        Self {
            stand: vec![0; SIDE],
            from: vec![0.0; SIDE + 1],
        }
    }

    fn of(&mut self, f: &[f32], mut put: impl FnMut(usize, f32)) {
        let square = |i: usize| (i * i) as f32;
        let mut k = 0;
        self.stand[0] = 0;
        self.from[0] = f32::MIN;
        self.from[1] = f32::MAX;
        for q in 1..f.len() {
            let cross =
                |v: usize| ((f[q] + square(q)) - (f[v] + square(v))) / (2 * q - 2 * v) as f32;
            let mut s = cross(self.stand[k]);
            while s <= self.from[k] && k > 0 {
                k -= 1;
                s = cross(self.stand[k]);
            }
            if s > self.from[k] {
                k += 1;
            }
            self.stand[k] = q;
            self.from[k] = s;
            self.from[k + 1] = f32::MAX;
        }
        k = 0;
        for q in 0..f.len() {
            while self.from[k + 1] < q as f32 {
                k += 1;
            }
            let v = self.stand[k];
            put(q, square(q.abs_diff(v)) + f[v]);
        }
    }
}
