//! Tidied as the built-in symbols are: one line in ink round the whole figure, a thin white seam
//! where areas lie on one another, lines in ink above both.

use super::area::Area;
use super::colours::SETTINGS;
use super::curves::{filled, line, to_curves};
use crate::symbols::art::Node;
use crate::symbols::palette::{INK, WHITE};
use crate::units::colour::Rgb;

/// Width of the line round the figure.
pub const EDGE: f32 = 5.2;
/// Width of a seam.
pub const SEAM: f64 = 2.6;

/// What tidying puts among the things.
#[derive(Clone, Debug, PartialEq)]
pub enum Piece<'a> {
    /// A thing that was drawn.
    Drawn(&'a Node),
    /// A seam.
    Seam(Node),
    /// The line round the figure.
    Edge(Node),
}

/// Things in painting order with seams under areas and the line round them under what is in ink.
/// Sand and water are a setting and have neither, nor has a coloured line.
pub fn tidied<'a>(things: &[&'a Node]) -> Vec<Piece<'a>> {
    let is_ink = |n: &Node| colours(n).iter().all(|c| *c == INK);
    let is_line = |n: &Node| matches!(n, Node::Shape(s) if s.fill.is_none());
    let is_setting = |n: &Node| is_line(n) || colours(n).iter().all(|c| SETTINGS.contains(c));
    // Ink above the last area lies above the line round the figure too.
    let last = things.iter().rposition(|n| !is_ink(n)).map_or(0, |i| i + 1);
    // Where a line in ink parts two areas there is nothing to part with white.
    let inked = Area::all(things.iter().filter(|n| is_ink(n)).map(|n| near(n)));
    let mut below = Area::default();
    let mut out = Vec::new();
    for node in &things[..last] {
        if !is_ink(node) && !is_setting(node) {
            let area = Area::of(node);
            if let Some(seam) = seam(&area, &below, &inked) {
                out.push(Piece::Seam(seam));
            }
            below = below.with(&area);
        }
        out.push(Piece::Drawn(node));
    }
    if !below.is_empty() {
        let round = line(below.without_holes().to_path(), INK, EDGE);
        out.push(Piece::Edge(Node::Shape(round)));
    }
    out.extend(things[last..].iter().map(|n| Piece::Drawn(n)));
    out
}

/// White along the edge of an area, where it lies on what is below and no ink is near.
fn seam(area: &Area, below: &Area, inked: &Area) -> Option<Node> {
    if !area.may_touch(below) {
        return None;
    }
    let along = to_curves(&area.to_path());
    let around = Area::along_round(&along, SEAM * 2.0);
    let white = around.without(area).common(below).without(inked);
    let white = white.without_crumbs(SEAM * SEAM);
    (!white.is_empty()).then(|| Node::Shape(filled(white.to_path(), WHITE)))
}

/// A thing and what is as near to it as a seam is broad.
fn near(node: &Node) -> Area {
    let area = Area::of(node);
    let along = to_curves(&area.to_path());
    area.with(&Area::along_round(&along, SEAM * 2.0))
}

/// All colours of a thing.
fn colours(node: &Node) -> Vec<Rgb> {
    match node {
        Node::Shape(s) => s
            .fill
            .into_iter()
            .chain(s.stroke.map(|s| s.colour))
            .collect(),
        Node::Clipped { nodes, .. } => nodes.iter().flat_map(colours).collect(),
        Node::Pixels { .. } => Vec::new(),
    }
}
