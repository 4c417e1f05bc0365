//! The edge of chosen cells as curves.

use kurbo::{BezPath, Point};

use super::grid::{SCALE, SIDE};
use super::trail::{Trail, curves};

/// How far the curves may lie from the middle of the stairs.
const TOLERANCE: f64 = 0.25;
/// Edges shorter than this many cells are specks.
const SPECK: usize = 24;

/// The edges of the chosen cells, each closed; holes turn the other way round.
pub fn edges(chosen: &[bool]) -> BezPath {
    let mut out = BezPath::new();
    for ring in rings(chosen) {
        if ring.len() < SPECK {
            continue;
        }
        let trail = Trail::of_ring(&ring);
        out.extend(curves(&trail.points, &trail.corners, true, TOLERANCE));
    }
    out
}

/// Directions along the edges of cells: right, down, left, up.
const STEPS: [(i32, i32); 4] = [(1, 0), (0, 1), (-1, 0), (0, -1)];

/// Walks round with the chosen cells at the right hand; a point in the middle of each cell's side.
fn rings(chosen: &[bool]) -> Vec<Vec<Point>> {
    let side = SIDE as i32;
    let is = |x: i32, y: i32| {
        (0..side).contains(&x) && (0..side).contains(&y) && chosen[(y * side + x) as usize]
    };
    let mut seen = vec![false; chosen.len()];
    let mut out = Vec::new();
    for start in 0..chosen.len() {
        let (x, y) = ((start % SIDE) as i32, (start / SIDE) as i32);
        // An upper side that no walk has passed.
        if seen[start] || !is(x, y) || is(x, y - 1) {
            continue;
        }
        let mut ring = Vec::new();
        let (mut at, mut dir) = ((x, y), 0);
        loop {
            let (dx, dy) = STEPS[dir];
            if dir == 0 {
                seen[(at.1 * side + at.0) as usize] = true;
            }
            let middle = (
                f64::from(at.0) + f64::from(dx) / 2.0,
                f64::from(at.1) + f64::from(dy) / 2.0,
            );
            let unit = f64::from(SCALE);
            ring.push(Point::new(middle.0 / unit, middle.1 / unit));
            at = (at.0 + dx, at.1 + dy);
            dir = onward(&is, at, dir);
            if (at, dir) == ((x, y), 0) {
                break;
            }
        }
        out.push(ring);
    }
    out
}

/// Where the walk goes on at a corner of cells: chosen cells stay at the right hand, and cells that
/// touch with their corners alone are parted.
fn onward(is: &impl Fn(i32, i32) -> bool, at: (i32, i32), dir: usize) -> usize {
    let (dx, dy) = STEPS[dir];
    // The right hand of a direction on a plane whose y grows downwards.
    let (rx, ry) = (-dy, dx);
    // The cell ahead, at the right (1) or at the left (-1).
    let ahead = |hand: i32| {
        is(
            at.0 + (dx + hand * rx - 1) / 2,
            at.1 + (dy + hand * ry - 1) / 2,
        )
    };
    if !ahead(1) {
        (dir + 1) % 4
    } else if ahead(-1) {
        (dir + 3) % 4
    } else {
        dir
    }
}
