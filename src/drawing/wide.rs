//! A line whose width follows how hard the hand pressed: a filled outline.

use super::area::Area;
use super::trail::{TOLERANCE, Trail, douglas_peucker};
use kurbo::{Point, Vec2};

/// Sides of the polygon that stands for a round nib.
const SIDES: usize = 32;
/// Width without pressure and with the hardest, as a share of the chosen width.
const LIGHT: f64 = 0.45;
const HARD: f64 = 1.45;

/// The width of a line at a pressure from 0 to 1.
pub fn width_at(force: f64, width: f64) -> f64 {
    width * (LIGHT + (HARD - LIGHT) * force.clamp(0.0, 1.0))
}

/// What a pen covers that is broader where it is pressed harder.
pub fn outline(trail: &Trail, width: f64) -> Area {
    let radius = soft(&trail.force);
    let radius: Vec<f64> = radius.iter().map(|f| width_at(*f, width) / 2.0).collect();
    let kept = kept(&trail.points, &radius);
    let mut contours = Vec::new();
    for &i in &kept {
        contours.push(nib(trail.points[i], radius[i]));
    }
    for pair in kept.windows(2) {
        let [a, b] = [pair[0], pair[1]];
        let (p, q) = (trail.points[a], trail.points[b]);
        contours.extend(between(p, radius[a], q, radius[b]));
    }
    Area::clean(&contours, false)
}

/// The points without which neither line nor width would be right.
fn kept(points: &[Point], radius: &[f64]) -> Vec<usize> {
    let line = douglas_peucker(points, TOLERANCE / 4.0);
    let broad: Vec<Point> = radius
        .iter()
        .enumerate()
        .map(|(i, r)| Point::new(i as f64 * 0.6, *r))
        .collect();
    let broad = douglas_peucker(&broad, 0.12);
    let mut all = [line, broad].concat();
    all.sort_unstable();
    all.dedup();
    all
}

/// Pressure without its trembling.
fn soft(force: &[f64]) -> Vec<f64> {
    const REACH: usize = 5;
    let n = force.len();
    let mean = |i: usize| {
        let near = &force[i.saturating_sub(REACH)..(i + REACH + 1).min(n)];
        near.iter().sum::<f64>() / near.len() as f64
    };
    (0..n).map(mean).collect()
}

/// A polygon round a place, touching the circle from outside and inside alike.
fn nib(at: Point, radius: f64) -> Vec<[f64; 2]> {
    let corner = |i: usize| {
        let turn = std::f64::consts::TAU * i as f64 / SIDES as f64;
        let p = at + Vec2::from_angle(turn) * radius;
        [p.x, p.y]
    };
    (0..SIDES).map(corner).collect()
}

/// What lies between two round places, bounded by the lines that touch both.
fn between(p: Point, r: f64, q: Point, s: f64) -> Option<Vec<[f64; 2]>> {
    let along = q - p;
    let far = along.hypot();
    if far <= (r - s).abs() {
        return None;
    }
    let sin = (r - s) / far;
    let cos = (1.0 - sin * sin).sqrt();
    let (u, v) = (along / far, Vec2::new(-along.y, along.x) / far);
    let (left, right) = (u * sin + v * cos, u * sin - v * cos);
    let corners = [p + left * r, q + left * s, q + right * s, p + right * r];
    let corners = corners.map(|c| [c.x, c.y]).to_vec();
    // All pieces turn the same way round, so that overlaps add up.
    let turned: f64 = (0..4)
        .map(|i| {
            let (a, b) = (corners[i], corners[(i + 1) % 4]);
            a[0] * b[1] - a[1] * b[0]
        })
        .sum();
    Some(if turned < 0.0 {
        corners.into_iter().rev().collect()
    } else {
        corners
    })
}
