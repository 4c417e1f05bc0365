//! The reference reader: the same flat shapes by way of usvg 0.49 (the SVG reader of the resvg
//! project), which knows the whole of static SVG. Ours is judged by it.

use resvg::usvg;
use usvg::roxmltree;
use usvg::tiny_skia_path::{Path as SkPath, PathSegment, Point as SkPoint, Transform};

use daystrand::symbols::art::{Art, CANVAS, Node, Shape, Stroke};
use daystrand::units::colour::Rgb;
use daystrand::units::path::{Path, Seg};

/// How far a transform may stretch one direction more than another before a stroke would have to
/// change its width along the way.
const STRETCH: f32 = 1.04;

fn refuse<T>(reason: impl Into<String>) -> Result<T, String> {
    Err(reason.into())
}

/// Reads a drawing.
///
/// # Errors
/// Says what no flat shape can stand for.
pub fn parse(svg: &str) -> Result<Art, String> {
    let doc = roxmltree::Document::parse(svg)
        .map_err(|e| format!("The drawing is not well-formed XML: {e}."))?;
    let tree = usvg::Tree::from_xmltree(&doc, &usvg::Options::default())
        .map_err(|e| format!("The drawing cannot be read: {e}."))?;
    let side = tree.size().width();
    if (side - tree.size().height()).abs() > 0.01 {
        return refuse("The drawing is not square.");
    }
    let fit = Transform::from_scale(CANVAS / side, CANVAS / side);
    let mut nodes = Vec::new();
    group(tree.root(), fit, &mut nodes)?;
    Ok(Art { nodes })
}

fn group(g: &usvg::Group, above: Transform, out: &mut Vec<Node>) -> Result<(), String> {
    let at = above.pre_concat(g.transform());
    if g.opacity().get() < 1.0 {
        return refuse("A part is see-through.");
    }
    if g.mask().is_some() || !g.filters().is_empty() {
        return refuse("A part has a mask or a filter.");
    }
    if let Some(clip) = g.clip_path() {
        let clip = clip_outline(clip, at)?;
        let mut nodes = Vec::new();
        children(g, at, &mut nodes)?;
        if !nodes.is_empty() {
            out.push(Node::Clipped { clip, nodes });
        }
        return Ok(());
    }
    children(g, at, out)
}

fn children(g: &usvg::Group, at: Transform, out: &mut Vec<Node>) -> Result<(), String> {
    for child in g.children() {
        match child {
            usvg::Node::Group(g) => group(g, at, out)?,
            usvg::Node::Path(p) if p.is_visible() => shape(p, at, out)?,
            usvg::Node::Path(_) => {}
            usvg::Node::Image(_) => return refuse("The drawing holds an image."),
            usvg::Node::Text(_) => return refuse("The drawing holds words."),
        }
    }
    Ok(())
}

fn shape(p: &usvg::Path, at: Transform, out: &mut Vec<Node>) -> Result<(), String> {
    let path = outline(p.data(), at);
    let fill = p
        .fill()
        .map(|f| plain(f.paint(), f.opacity()))
        .transpose()?;
    let even_odd = p
        .fill()
        .is_some_and(|f| f.rule() == usvg::FillRule::EvenOdd);
    let stroke = p.stroke().map(|s| line(s, at)).transpose()?;
    let mut push = |fill, stroke| {
        let path = path.clone();
        out.push(Node::Shape(Shape {
            path,
            fill,
            even_odd,
            stroke,
        }));
    };
    match (p.paint_order(), fill, stroke) {
        (usvg::PaintOrder::StrokeAndFill, Some(_), Some(_)) => {
            push(None, stroke);
            push(fill, None);
        }
        _ => push(fill, stroke),
    }
    Ok(())
}

fn plain(paint: &usvg::Paint, opacity: usvg::Opacity) -> Result<Rgb, String> {
    if opacity.get() < 1.0 {
        return refuse("A colour is see-through.");
    }
    match paint {
        usvg::Paint::Color(c) => Ok(Rgb(c.red, c.green, c.blue)),
        _ => refuse("A shape is painted with a gradient or a pattern."),
    }
}

fn line(s: &usvg::Stroke, at: Transform) -> Result<Stroke, String> {
    let (long, short) = stretches(at);
    if short <= 0.0 || long / short > STRETCH {
        return refuse("A line is stretched in one direction, so its width would not be even.");
    }
    if s.dasharray().is_some() {
        return refuse("A line is dashed; draw the dashes as lines of their own.");
    }
    let butt = match s.linecap() {
        usvg::LineCap::Butt => true,
        usvg::LineCap::Round => false,
        usvg::LineCap::Square => return refuse("A line has square ends."),
    };
    let mitre = match s.linejoin() {
        usvg::LineJoin::Miter | usvg::LineJoin::MiterClip => true,
        usvg::LineJoin::Round => false,
        usvg::LineJoin::Bevel => return refuse("A line has bevelled joins."),
    };
    Ok(Stroke {
        colour: plain(s.paint(), s.opacity())?,
        width: s.width().get() * (long * short).sqrt(),
        butt,
        mitre,
    })
}

/// The largest and smallest factor by which a transform changes a length.
fn stretches(t: Transform) -> (f32, f32) {
    let half = (t.sx * t.sx + t.kx * t.kx + t.ky * t.ky + t.sy * t.sy) / 2.0;
    let det = (t.sx * t.sy - t.kx * t.ky).abs();
    let spread = (half * half - det * det).max(0.0).sqrt();
    ((half + spread).sqrt(), (half - spread).max(0.0).sqrt())
}

/// One path that covers all that the window's shapes cover. Each shape is turned the same way round
/// so that overlaps add up.
fn clip_outline(clip: &usvg::ClipPath, at: Transform) -> Result<Path<[f32; 2]>, String> {
    if clip.clip_path().is_some() {
        return refuse("A window is itself seen through a window.");
    }
    let mut all = Path { segs: Vec::new() };
    add_window(clip.root(), at.pre_concat(clip.transform()), &mut all)?;
    Ok(all)
}

fn add_window(g: &usvg::Group, at: Transform, all: &mut Path<[f32; 2]>) -> Result<(), String> {
    let at = at.pre_concat(g.transform());
    if g.clip_path().is_some() {
        return refuse("A part of a window is itself seen through a window.");
    }
    for child in g.children() {
        match child {
            usvg::Node::Group(g) => add_window(g, at, all)?,
            usvg::Node::Path(p) => {
                if p.fill()
                    .is_some_and(|f| f.rule() == usvg::FillRule::EvenOdd)
                {
                    return refuse("A window has the even-odd rule.");
                }
                let path = outline(p.data(), at);
                let turned = if signed_area(&path) < 0.0 {
                    backwards(&path)
                } else {
                    path
                };
                all.segs.extend(turned.segs);
            }
            _ => return refuse("A window holds an image or words."),
        }
    }
    Ok(())
}

fn outline(path: &SkPath, at: Transform) -> Path<[f32; 2]> {
    let Some(path) = path.clone().transform(at) else {
        return Path { segs: Vec::new() };
    };
    let p = |p: SkPoint| [p.x, p.y];
    let mut pen = SkPoint::zero();
    let mut segs = Vec::with_capacity(path.len());
    for seg in path.segments() {
        match seg {
            PathSegment::MoveTo(a) => segs.push(Seg::Move(p(a))),
            PathSegment::LineTo(a) => segs.push(Seg::Line(p(a))),
            PathSegment::QuadTo(c, a) => {
                let third = |from: SkPoint| {
                    [
                        from.x + (c.x - from.x) * 2.0 / 3.0,
                        from.y + (c.y - from.y) * 2.0 / 3.0,
                    ]
                };
                segs.push(Seg::Cubic(third(pen), third(a), p(a)));
            }
            PathSegment::CubicTo(c1, c2, a) => segs.push(Seg::Cubic(p(c1), p(c2), p(a))),
            PathSegment::Close => segs.push(Seg::Close),
        }
        match seg {
            PathSegment::MoveTo(a)
            | PathSegment::LineTo(a)
            | PathSegment::QuadTo(_, a)
            | PathSegment::CubicTo(_, _, a) => pen = a,
            PathSegment::Close => {}
        }
    }
    Path { segs }
}

/// Twice the area of the polygon through a path's points; above zero when it turns clockwise on a
/// plane whose `y` grows downwards.
fn signed_area(path: &Path<[f32; 2]>) -> f32 {
    let (mut area, mut start, mut pen) = (0.0, [0.0; 2], [0.0; 2]);
    let cross = |a: [f32; 2], b: [f32; 2]| a[0] * b[1] - a[1] * b[0];
    for seg in &path.segs {
        match *seg {
            Seg::Move(p) => {
                area += cross(pen, start);
                start = p;
                pen = p;
            }
            Seg::Line(p) => {
                area += cross(pen, p);
                pen = p;
            }
            Seg::Cubic(a, b, p) => {
                area += cross(pen, a) + cross(a, b) + cross(b, p);
                pen = p;
            }
            Seg::Close => {
                area += cross(pen, start);
                pen = start;
            }
        }
    }
    area + cross(pen, start)
}

/// The same outline drawn the other way round.
fn backwards(path: &Path<[f32; 2]>) -> Path<[f32; 2]> {
    let mut segs = Vec::with_capacity(path.segs.len());
    for part in path.segs.split_inclusive(|s| matches!(s, Seg::Close)) {
        for line in part.chunk_by(|_, next| !matches!(next, Seg::Move(_))) {
            reverse_line(line, &mut segs);
        }
    }
    Path { segs }
}

fn reverse_line(line: &[Seg<[f32; 2]>], out: &mut Vec<Seg<[f32; 2]>>) {
    let end = |s: &Seg<[f32; 2]>| match *s {
        Seg::Move(p) | Seg::Line(p) | Seg::Cubic(_, _, p) => Some(p),
        Seg::Close => None,
    };
    let points: Vec<[f32; 2]> = line.iter().filter_map(end).collect();
    let Some(last) = points.last() else { return };
    out.push(Seg::Move(*last));
    for (i, seg) in line.iter().enumerate().rev() {
        match *seg {
            Seg::Line(_) if i > 0 => out.push(Seg::Line(points[i - 1])),
            Seg::Cubic(a, b, _) if i > 0 => out.push(Seg::Cubic(b, a, points[i - 1])),
            _ => {}
        }
    }
    out.push(Seg::Close);
}
