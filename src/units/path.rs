//! A drawn line: moves, straight lines and curves, in whatever plane its points are in.

/// One stretch of a path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Seg<P> {
    /// Lift the pen and begin here.
    Move(P),
    /// A straight line to here.
    Line(P),
    /// A cubic curve by two control points to here.
    Cubic(P, P, P),
    /// Back to where the pen was put down.
    Close,
}

/// Any number of open or closed lines. `P` is [`super::Point`] on a page, `[f32; 2]` inside a
/// symbol or a glyph.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Path<P> {
    /// The stretches in drawing order.
    pub segs: Vec<Seg<P>>,
}

impl<P> Path<P> {
    /// The same path with every point moved by `f`.
    pub fn map<Q>(&self, mut f: impl FnMut(&P) -> Q) -> Path<Q> {
        let segs = self
            .segs
            .iter()
            .map(|s| match s {
                Seg::Move(p) => Seg::Move(f(p)),
                Seg::Line(p) => Seg::Line(f(p)),
                Seg::Cubic(a, b, p) => Seg::Cubic(f(a), f(b), f(p)),
                Seg::Close => Seg::Close,
            })
            .collect();
        Path { segs }
    }
}
