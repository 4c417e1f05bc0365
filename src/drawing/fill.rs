//! A tap that fills: what has the colour of the tapped place and hangs together with it becomes one
//! shape, under the lines around it.

use std::sync::Arc;

use super::curves::{filled, to_path};
use super::grid::{Grid, NONE, SCALE, SIDE, distances};
use super::trace::edges;
use crate::symbols::art::{Node, Shape};
use crate::units::colour::Rgb;

/// A gap this wide in a line does not let the colour out, in canvas units.
pub const GAP: f32 = 2.0;
/// How far the colour goes under what lies above it: half a usual line, so that no white is left.
const UNDER: f32 = 2.5;
/// How far it goes over what lies below it, against hairs of white between two colours.
const OVER: f32 = 0.3;
/// What is smaller than this many cells is not filled.
const LEAST: usize = 12;

/// Fills round a place. Gives whether anything changed.
pub fn fill(things: &mut Vec<Arc<Node>>, x: f64, y: f64, colour: Rgb) -> bool {
    let Some(start) = cell_at(x, y) else {
        return false;
    };
    let grid = Grid::of(things.iter().map(AsRef::as_ref));
    let was = grid.leaf(start).map(|l| l.colour);
    if was == Some(colour) {
        return false;
    }
    if let Some(leaf) = grid.leaf(start)
        && recoloured(things, &grid, start, leaf.thing, colour)
    {
        return true;
    }
    let same: Vec<bool> = (0..grid.top.len())
        .map(|i| grid.leaf(i).map(|l| l.colour) == was)
        .collect();
    let region = region(&same, start);
    if region.iter().filter(|r| **r).count() < LEAST {
        return false;
    }
    let place = place(&grid, &region);
    let grown = grown(&grid, &region, place);
    let path = to_path(&edges(&grown));
    if path.segs.is_empty() {
        return false;
    }
    things.insert(place, Arc::new(Node::Shape(filled(path, colour))));
    true
}

fn cell_at(x: f64, y: f64) -> Option<usize> {
    let cell = |v: f64| {
        let v = v * f64::from(SCALE);
        (v >= 0.0 && v < SIDE as f64).then_some(v as usize)
    };
    Some(cell(y)? * SIDE + cell(x)?)
}

/// A line, or an area that is seen in one piece, takes the colour itself.
fn recoloured(
    things: &mut [Arc<Node>],
    grid: &Grid,
    start: usize,
    thing: usize,
    colour: Rgb,
) -> bool {
    let Node::Shape(shape) = things[thing].as_ref() else {
        return false;
    };
    let mut next: Shape = shape.clone();
    match (shape.fill, &mut next.stroke) {
        (None, Some(stroke)) => stroke.colour = colour,
        (Some(_), _) if in_one_piece(grid, start) => {
            let inside = grid.leaf(start).map(|l| l.colour) == shape.fill;
            match &mut next.stroke {
                Some(stroke) if !inside => stroke.colour = colour,
                _ => next.fill = Some(colour),
            }
        }
        _ => return false,
    }
    things[thing] = Arc::new(Node::Shape(next));
    true
}

/// Whether all that is seen of the leaf at a cell hangs together with it.
fn in_one_piece(grid: &Grid, start: usize) -> bool {
    let leaf = grid.top[start];
    let own: Vec<bool> = grid.top.iter().map(|t| *t == leaf).collect();
    let all = own.iter().filter(|o| **o).count();
    let here = flood(&own, start).iter().filter(|f| **f).count();
    here * 50 >= all * 49
}

/// The cells that hang together with one, through ways wider than a gap, and those beside them that
/// only a wider way would not have reached.
fn region(same: &[bool], start: usize) -> Vec<bool> {
    let other: Vec<bool> = same.iter().map(|s| !s).collect();
    let mut reach = GAP / 2.0 * SCALE;
    let free = distances(&other);
    // In a place narrower than a gap every way counts.
    while reach > 0.5 && free[start] <= reach * reach {
        reach /= 2.0;
    }
    let wide: Vec<bool> = free.iter().map(|d| *d > reach * reach).collect();
    let core = flood(&wide, start);
    let near = distances(&core);
    let back = (reach + 0.8) * (reach + 0.8);
    let mut found: Vec<bool> = near
        .iter()
        .zip(same)
        .map(|(d, s)| *s && *d <= back)
        .collect();
    add_tips(&mut found, same, &wide);
    found
}

/// Adds what hangs together with the region and leads nowhere: the tips of narrow corners. What
/// leads through a gap to a wider place stays outside.
fn add_tips(found: &mut [bool], same: &[bool], wide: &[bool]) {
    let mut rest: Vec<bool> = same.iter().zip(&*found).map(|(s, f)| *s && !f).collect();
    for at in 0..rest.len() {
        let touches = |i: usize| found.get(i).is_some_and(|f| *f);
        let beside = [at + 1, at.wrapping_sub(1), at + SIDE, at.wrapping_sub(SIDE)];
        if !rest[at] || !beside.into_iter().any(touches) {
            continue;
        }
        let tip = drained(&mut rest, at);
        if !tip.iter().any(|i| wide[*i]) {
            tip.iter().for_each(|i| found[*i] = true);
        }
    }
}

/// The chosen cells that hang together with one of them, side by side.
fn flood(chosen: &[bool], start: usize) -> Vec<bool> {
    let mut found = vec![false; chosen.len()];
    let reached = drained(&mut chosen.to_vec(), start);
    reached.iter().for_each(|i| found[*i] = true);
    found
}

/// The same as a list; they are not chosen any more.
fn drained(free: &mut [bool], start: usize) -> Vec<usize> {
    let mut all = Vec::new();
    if !std::mem::take(&mut free[start]) {
        return all;
    }
    all.push(start);
    let mut next = 0;
    while let Some(&at) = all.get(next) {
        next += 1;
        let (x, y) = (at % SIDE, at / SIDE);
        let beside = [
            (x > 0).then(|| at - 1),
            (x + 1 < SIDE).then(|| at + 1),
            (y > 0).then(|| at - SIDE),
            (y + 1 < SIDE).then(|| at + SIDE),
        ];
        for to in beside.into_iter().flatten() {
            if std::mem::take(&mut free[to]) {
                all.push(to);
            }
        }
    }
    all
}

/// Where among the things the colour goes: right above the uppermost thing seen in the region.
fn place(grid: &Grid, region: &[bool]) -> usize {
    let seen = (0..region.len()).filter(|i| region[*i]);
    let things = seen.filter_map(|i| Some(grid.leaf(i)?.thing + 1));
    things.max().unwrap_or(0)
}

/// The region, grown under what lies above it and a hair over what lies below.
fn grown(grid: &Grid, region: &[bool], place: usize) -> Vec<bool> {
    let far = distances(region);
    let (under, over) = (UNDER * SCALE, OVER * SCALE);
    far.iter()
        .enumerate()
        .map(|(i, d)| {
            let above = grid.top[i] != NONE && grid.leaf(i).is_some_and(|l| l.thing >= place);
            let reach = if above { under } else { over };
            region[i] || *d <= reach * reach
        })
        .collect()
}
