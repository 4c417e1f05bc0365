//! How much work a drawing is to paint, worked out before it is painted.

use resvg::tiny_skia::Transform;
use resvg::usvg::filter::Kind;
use resvg::usvg::{Group, Node, NonZeroRect, Paint, Path, Pattern, Rect, Tree};

use super::super::refusal::Why;
use super::SIMPLER;

/// What painting takes, in whole pictures.
#[derive(Clone, Copy, Default)]
pub struct Cost {
    /// Pixels touched.
    pub passes: f64,
    /// Pixels held at once beside the picture itself.
    pub held: f64,
}

/// Painting takes up to so many times the picture for a layer that reaches beyond it.
const LARGEST_LAYER: f64 = 25.0;

/// Whether anything visible lies on the picture.
pub fn sees_anything(tree: &Tree) -> bool {
    fn any(group: &Group, whole: &Rect) -> bool {
        group.children().iter().any(|node| match node {
            Node::Group(group) => any(group, whole),
            Node::Path(path) => {
                let painted = path.fill().is_some_and(|f| f.opacity().get() > 0.0)
                    || path.stroke().is_some_and(|s| s.opacity().get() > 0.0);
                painted && path.is_visible() && share(path.abs_stroke_bounding_box(), whole) >= 0.0
            }
            _ => false,
        })
    }
    any(tree.root(), &whole(tree))
}

/// The cost of all of it.
///
/// # Errors
/// If it has a part that takes too long or too much room however small it is painted.
pub fn of(tree: &Tree) -> Result<Cost, Why> {
    of_group(tree.root(), &whole(tree))
}

fn whole(tree: &Tree) -> Rect {
    let size = tree.size();
    Rect::from_xywh(0.0, 0.0, size.width(), size.height())
        .unwrap_or_else(|| tree.root().abs_bounding_box())
}

/// How much of the picture a box covers; below zero if it lies beside it.
fn share(part: Rect, whole: &Rect) -> f64 {
    let side = |a: (f32, f32), b: (f32, f32)| f64::from(a.1.min(b.1)) - f64::from(a.0.max(b.0));
    let w = side((part.left(), part.right()), (whole.left(), whole.right()));
    let h = side((part.top(), part.bottom()), (whole.top(), whole.bottom()));
    if w < 0.0 || h < 0.0 {
        return -1.0;
    }
    w * h / area(*whole)
}

fn area(rect: Rect) -> f64 {
    (f64::from(rect.width()) * f64::from(rect.height())).max(f64::MIN_POSITIVE)
}

fn layer(rect: NonZeroRect, whole: &Rect) -> f64 {
    (area(rect.to_rect()) / area(*whole)).min(LARGEST_LAYER)
}

fn of_group(group: &Group, whole: &Rect) -> Result<Cost, Why> {
    let mut cost = Cost::default();
    let mut inside: f64 = 0.0;
    for node in group.children() {
        let part = match node {
            Node::Group(group) => of_group(group, whole)?,
            Node::Path(path) => of_path(path, whole)?,
            _ => Cost::default(),
        };
        cost.passes += part.passes;
        inside = inside.max(part.held);
    }
    cost.held = inside;
    if group.should_isolate() {
        let own = layer(group.abs_layer_bounding_box(), whole);
        cost.passes += 3.0 * own;
        cost.held += own;
        let mut clip = group.clip_path();
        while let Some(window) = clip {
            cost.add_beside(of_group(window.root(), whole)?, own);
            clip = window.clip_path();
        }
        let mut mask = group.mask();
        while let Some(next) = mask {
            cost.add_beside(of_group(next.root(), whole)?, 2.0 * own);
            mask = next.mask();
        }
        for filter in group.filters() {
            for primitive in filter.primitives() {
                cost.passes += own.max(1.0) * of_effect(primitive.kind())?;
                cost.held += own.max(1.0);
            }
            cost.held += 3.0 * own;
        }
    }
    Ok(cost)
}

impl Cost {
    fn add_beside(&mut self, other: Self, own: f64) {
        self.passes += other.passes + 2.0 * own;
        self.held += other.held + own;
    }
}

fn of_effect(kind: &Kind) -> Result<f64, Why> {
    match kind {
        Kind::GaussianBlur(_) | Kind::DropShadow(_) => Ok(12.0),
        Kind::Offset(_)
        | Kind::Flood(_)
        | Kind::Merge(_)
        | Kind::Blend(_)
        | Kind::Composite(_)
        | Kind::ColorMatrix(_)
        | Kind::ComponentTransfer(_)
        | Kind::Tile(_) => Ok(4.0),
        _ => Err(Why::new(
            "is a drawing with effects (light, noise or the like) that take too long to paint",
            SIMPLER,
        )),
    }
}

fn of_path(path: &Path, whole: &Rect) -> Result<Cost, Why> {
    if !path.is_visible() {
        return Ok(Cost::default());
    }
    let seen = share(path.abs_stroke_bounding_box(), whole).clamp(0.0, 1.0);
    let lines = path.data().len() as f64 * 2e-5;
    let mut cost = Cost::default();
    let fill = path.fill().map(|f| f.paint());
    let stroke = path.stroke().map(|s| s.paint());
    for paint in fill.into_iter().chain(stroke) {
        cost.passes += seen + lines + 1e-4;
        if let Paint::Pattern(pattern) = paint {
            let tile = of_pattern(pattern, path.abs_transform(), whole)?;
            cost.passes += tile.passes;
            cost.held = cost.held.max(tile.held);
        }
    }
    Ok(cost)
}

/// A pattern is painted once as large as it is, for each shape that has it.
fn of_pattern(pattern: &Pattern, at: Transform, whole: &Rect) -> Result<Cost, Why> {
    let (sx, sy) = at.pre_concat(pattern.transform()).get_scale();
    let rect = pattern.rect();
    let size = f64::from(rect.width() * sx) * f64::from(rect.height() * sy) / area(*whole);
    if size.is_nan() || size > LARGEST_LAYER {
        return Err(Why::new(
            "is a drawing with a pattern far larger than itself",
            SIMPLER,
        ));
    }
    let mut cost = of_group(pattern.root(), whole)?;
    cost.passes += size;
    cost.held += size;
    Ok(cost)
}
