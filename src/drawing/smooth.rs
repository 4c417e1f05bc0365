//! How much a line turns, and the line without its trembling.

use kurbo::{Point, Vec2};

use super::trail::STEP;

/// How many degrees a line turns at a point, measured a way before and behind it.
pub fn turn_at(points: &[Point], i: usize, closed: bool, leg: f64) -> f64 {
    let steps = (leg / STEP).round().max(1.0) as usize;
    let n = points.len();
    let (before, behind) = if closed {
        // The last point is the first.
        let m = n - 1;
        ((i % m + m * steps.div_ceil(m) - steps) % m, (i + steps) % m)
    } else {
        if i < steps || i + steps >= n {
            return 0.0;
        }
        (i - steps, i + steps)
    };
    turn(points[i] - points[before], points[behind] - points[i])
}

/// The angle between two directions in degrees.
pub fn turn(a: Vec2, b: Vec2) -> f64 {
    if a.hypot2() == 0.0 || b.hypot2() == 0.0 {
        return 0.0;
    }
    a.cross(b).atan2(a.dot(b)).abs().to_degrees()
}

/// Points drawn towards their neighbours by a Gauss curve; the ends of an open line stay.
pub fn blurred(points: &[Point], closed: bool, sigma: f64) -> Vec<Point> {
    let n = points.len();
    if n < 3 {
        return points.to_vec();
    }
    let reach = (2.5 * sigma / STEP).ceil() as i64;
    let weight = |k: i64| (-0.5 * (k as f64 * STEP / sigma).powi(2)).exp();
    let weights: Vec<f64> = (0..=reach).map(weight).collect();
    let last = n as i64 - 1;
    let at = |i: i64| -> Vec2 {
        if closed {
            return points[i.rem_euclid(last) as usize].to_vec2();
        }
        // Beyond an end the line is turned about it, so that the end itself does not move.
        let about = |end: i64| {
            let other = (2 * end - i).clamp(0, last);
            2.0 * points[end as usize].to_vec2() - points[other as usize].to_vec2()
        };
        if i < 0 {
            about(0)
        } else if i > last {
            about(last)
        } else {
            points[i as usize].to_vec2()
        }
    };
    let soft = |i: i64| {
        let (mut sum, mut all) = (Vec2::ZERO, 0.0);
        for k in -reach..=reach {
            let w = weights[k.unsigned_abs() as usize];
            sum += at(i + k) * w;
            all += w;
        }
        (sum / all).to_point()
    };
    (0..=last).map(soft).collect()
}
