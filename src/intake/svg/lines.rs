//! Lines with a width: as the flat subset says them, or as the shape they cover where it cannot.

use resvg::tiny_skia::{LineCap, LineJoin, Path as Outline, StrokeDash, Transform};
use resvg::usvg::{Path, Stroke};

use super::super::refusal::Why;
use super::tags::too;

/// The most dashes of one line.
const MOST_DASHES: f32 = 10_000.0;
/// How far a transform may stretch one way more than the other before a line's width shows it.
const STRETCH: f32 = 1.02;

/// A line on the canvas.
pub enum Line {
    /// A path to be drawn with a pen.
    Pen {
        path: Outline,
        width: f32,
        cap: &'static str,
        join: &'static str,
    },
    /// The shape it covers.
    Shape(Outline),
}

/// The line of a path where `at` leads; none if there is nothing of it.
///
/// # Errors
/// If it has dashes without end.
pub fn line(path: &Path, stroke: &Stroke, at: Transform) -> Result<Option<Line>, Why> {
    let whole = path.data();
    let pen = stroke.to_tiny_skia();
    let dashed = match &pen.dash {
        Some(_) => dashed(whole, stroke)?,
        None => Some(whole.clone()),
    };
    let Some(data) = dashed else { return Ok(None) };
    let (long, short) = stretches(at);
    let cap = match pen.line_cap {
        LineCap::Butt => Some("butt"),
        LineCap::Round => Some("round"),
        LineCap::Square => None,
    };
    let join = match pen.line_join {
        LineJoin::Miter if (pen.miter_limit - 4.0).abs() < 0.01 => Some("miter"),
        LineJoin::Round => Some("round"),
        _ => None,
    };
    if let (Some(cap), Some(join)) = (cap, join)
        && short > 0.0
        && long / short <= STRETCH
    {
        let width = pen.width * (long * short).sqrt();
        return Ok(data.transform(at).map(|path| Line::Pen {
            path,
            width,
            cap,
            join,
        }));
    }
    let plain = resvg::tiny_skia::Stroke { dash: None, ..pen };
    let shape = data.stroke(&plain, long.clamp(0.01, 100.0));
    Ok(shape.and_then(|s| s.transform(at)).map(Line::Shape))
}

fn dashed(path: &Outline, stroke: &Stroke) -> Result<Option<Outline>, Why> {
    let array = stroke.dasharray().unwrap_or_default();
    let points = path.points();
    let length: f32 = points.windows(2).map(|p| p[0].distance(p[1])).sum();
    let round: f32 = array.iter().sum();
    let count = length / round * array.len() as f32;
    if count.is_nan() || count > MOST_DASHES {
        return Err(too("many dashes in a line"));
    }
    match StrokeDash::new(array.to_vec(), stroke.dashoffset()) {
        Some(dash) => Ok(path.dash(&dash, 1.0)),
        None => Ok(Some(path.clone())),
    }
}

/// The largest and smallest factor by which a transform changes a length.
fn stretches(t: Transform) -> (f32, f32) {
    let half = (t.sx * t.sx + t.kx * t.kx + t.ky * t.ky + t.sy * t.sy) / 2.0;
    let det = (t.sx * t.sy - t.kx * t.ky).abs();
    let spread = (half * half - det * det).max(0.0).sqrt();
    ((half + spread).sqrt(), (half - spread).max(0.0).sqrt())
}
