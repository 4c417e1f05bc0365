//! Points and paths: the plane geometry every figure is made of.
//!
//! Units are those of the 240 by 240 drawing canvas, y runs down, angles are
//! degrees clockwise from "to the right".

use std::ops::{Add, Mul, Sub};

/// A point or a vector on the canvas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct P {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

/// Short hand for a point.
pub const fn p(x: f64, y: f64) -> P {
    P { x, y }
}

impl Add for P {
    type Output = P;
    fn add(self, o: P) -> P {
        p(self.x + o.x, self.y + o.y)
    }
}
impl Sub for P {
    type Output = P;
    fn sub(self, o: P) -> P {
        p(self.x - o.x, self.y - o.y)
    }
}
impl Mul<f64> for P {
    type Output = P;
    fn mul(self, k: f64) -> P {
        p(self.x * k, self.y * k)
    }
}

impl P {
    /// Length of the vector.
    pub fn len(self) -> f64 {
        self.x.hypot(self.y)
    }
    /// The same direction with length 1 (the zero vector gives "right").
    pub fn unit(self) -> P {
        let l = self.len();
        if l < 1e-9 {
            p(1.0, 0.0)
        } else {
            self * (1.0 / l)
        }
    }
    /// A quarter turn against the clock as seen on screen.
    pub fn left(self) -> P {
        p(self.y, -self.x)
    }
    /// Turned clockwise by `deg`.
    pub fn rot(self, deg: f64) -> P {
        let (s, c) = deg.to_radians().sin_cos();
        p(self.x * c - self.y * s, self.x * s + self.y * c)
    }
    /// Inner product.
    pub fn dot(self, o: P) -> f64 {
        self.x * o.x + self.y * o.y
    }
    /// The point `t` of the way to `o`.
    pub fn to(self, o: P, t: f64) -> P {
        self + (o - self) * t
    }
    /// Direction in degrees.
    pub fn deg(self) -> f64 {
        self.y.atan2(self.x).to_degrees()
    }
}

/// The vector of length `l` in direction `deg`.
pub fn polar(deg: f64, l: f64) -> P {
    p(l, 0.0).rot(deg)
}

/// One piece of a path, in absolute coordinates.
#[derive(Clone, Copy, Debug)]
pub enum Seg {
    /// Start a new outline.
    M(P),
    /// Straight line.
    L(P),
    /// Curve with one control point.
    Q(P, P),
    /// Curve with two control points.
    C(P, P, P),
    /// Close.
    Z,
}

/// An outline or a line.
#[derive(Clone, Debug, Default)]
pub struct Path(pub Vec<Seg>);

/// Circle quarter as a cubic curve.
pub const KAPPA: f64 = 0.5523;

impl Path {
    /// Reads a path written with the absolute commands M L Q C Z.
    pub fn read(d: &str) -> Path {
        let mut spaced = String::new();
        for ch in d.chars() {
            match ch {
                'M' | 'L' | 'Q' | 'C' | 'Z' => {
                    spaced.push(' ');
                    spaced.push(ch);
                    spaced.push(' ');
                }
                ',' => spaced.push(' '),
                '-' => spaced.push_str(" -"),
                // "1.5.2" is two numbers, 1.5 and .2.
                '.' if word_has_point(&spaced) => spaced.push_str(" ."),
                _ => spaced.push(ch),
            }
        }
        let mut words = spaced.split_whitespace().peekable();
        let mut out = Vec::new();
        let mut cmd = 'M';
        while let Some(w) = words.peek() {
            if let Some(c) = w.chars().next().filter(char::is_ascii_alphabetic) {
                cmd = c;
                words.next();
                if cmd == 'Z' {
                    out.push(Seg::Z);
                }
                continue;
            }
            let mut pt = || {
                let mut n = || {
                    words
                        .next()
                        .and_then(|w| w.parse::<f64>().ok())
                        .unwrap_or(0.0)
                };
                let x = n();
                p(x, n())
            };
            match cmd {
                'M' => {
                    out.push(Seg::M(pt()));
                    cmd = 'L';
                }
                'L' => out.push(Seg::L(pt())),
                'Q' => out.push(Seg::Q(pt(), pt())),
                'C' => out.push(Seg::C(pt(), pt(), pt())),
                _ => break,
            }
        }
        Path(out)
    }
    /// Every point replaced.
    pub fn map(&self, f: impl Fn(P) -> P) -> Path {
        Path(
            self.0
                .iter()
                .map(|s| match *s {
                    Seg::M(a) => Seg::M(f(a)),
                    Seg::L(a) => Seg::L(f(a)),
                    Seg::Q(a, b) => Seg::Q(f(a), f(b)),
                    Seg::C(a, b, c) => Seg::C(f(a), f(b), f(c)),
                    Seg::Z => Seg::Z,
                })
                .collect(),
        )
    }
    /// Placed: scaled by `k` (`flip` mirrors y first), turned, moved to `at`.
    pub fn put(&self, at: P, k: f64, deg: f64, flip: bool) -> Path {
        let f = if flip { -1.0 } else { 1.0 };
        self.map(|q| at + p(q.x * k, q.y * k * f).rot(deg))
    }
    /// A turned ellipse.
    pub fn ellipse(c: P, rx: f64, ry: f64, deg: f64) -> Path {
        let k = KAPPA;
        let at = |x: f64, y: f64| c + p(x * rx, y * ry).rot(deg);
        Path(vec![
            Seg::M(at(1.0, 0.0)),
            Seg::C(at(1.0, k), at(k, 1.0), at(0.0, 1.0)),
            Seg::C(at(-k, 1.0), at(-1.0, k), at(-1.0, 0.0)),
            Seg::C(at(-1.0, -k), at(-k, -1.0), at(0.0, -1.0)),
            Seg::C(at(k, -1.0), at(1.0, -k), at(1.0, 0.0)),
            Seg::Z,
        ])
    }
    /// A circle.
    pub fn circle(c: P, r: f64) -> Path {
        Path::ellipse(c, r, r, 0.0)
    }
    /// A turned rectangle with round corners around its middle.
    pub fn block(c: P, w: f64, h: f64, r: f64, deg: f64) -> Path {
        let (a, b) = (w / 2.0, h / 2.0);
        let at = |x: f64, y: f64| c + p(x, y).rot(deg);
        let mut s = vec![Seg::M(at(-a + r, -b)), Seg::L(at(a - r, -b))];
        s.push(Seg::Q(at(a, -b), at(a, -b + r)));
        s.push(Seg::L(at(a, b - r)));
        s.push(Seg::Q(at(a, b), at(a - r, b)));
        s.push(Seg::L(at(-a + r, b)));
        s.push(Seg::Q(at(-a, b), at(-a, b - r)));
        s.push(Seg::L(at(-a, -b + r)));
        s.push(Seg::Q(at(-a, -b), at(-a + r, -b)));
        s.push(Seg::Z);
        Path(s)
    }
    /// Straight lines through points.
    pub fn poly(pts: &[P], closed: bool) -> Path {
        let mut s = Vec::new();
        for (i, q) in pts.iter().enumerate() {
            s.push(if i == 0 { Seg::M(*q) } else { Seg::L(*q) });
        }
        if closed {
            s.push(Seg::Z);
        }
        Path(s)
    }
    /// A soft line through points.
    pub fn smooth(pts: &[P], closed: bool) -> Path {
        let n = pts.len();
        let get = |i: isize| {
            if closed {
                pts[i.rem_euclid(n as isize) as usize]
            } else {
                pts[i.clamp(0, n as isize - 1) as usize]
            }
        };
        let mut s = vec![Seg::M(pts[0])];
        let end = if closed { n } else { n - 1 };
        for i in 0..end as isize {
            let (a, b, c, d) = (get(i - 1), get(i), get(i + 1), get(i + 2));
            s.push(Seg::C(
                b + (c - a) * (1.0 / 6.0),
                c - (d - b) * (1.0 / 6.0),
                c,
            ));
        }
        if closed {
            s.push(Seg::Z);
        }
        Path(s)
    }
    /// This path followed by another, as one outline when `joined`.
    pub fn then(mut self, o: Path, joined: bool) -> Path {
        for s in o.0 {
            self.0.push(match s {
                Seg::M(a) if joined => Seg::L(a),
                other => other,
            });
        }
        self
    }
    /// Every outline turned the same way round, so that overlapping ones add
    /// up instead of cutting holes.
    pub fn wound(self) -> Path {
        let mut out = Vec::new();
        let mut rest = self.0.as_slice();
        while !rest.is_empty() {
            let end = rest.iter().skip(1).position(|s| matches!(s, Seg::M(_)));
            let n = end.map_or(rest.len(), |e| e + 1);
            let one = Path(
                rest[..n]
                    .iter()
                    .copied()
                    .filter(|s| !matches!(s, Seg::Z))
                    .collect(),
            );
            let pts = one.sample();
            let next = |i: usize| pts[(i + 1) % pts.len()];
            let twice: f64 = pts
                .iter()
                .enumerate()
                .map(|(i, a)| a.x * next(i).y - a.y * next(i).x)
                .sum();
            out.extend(if twice < 0.0 { one.reversed().0 } else { one.0 });
            out.push(Seg::Z);
            rest = &rest[n..];
        }
        Path(out)
    }
    /// Closed.
    pub fn close(mut self) -> Path {
        self.0.push(Seg::Z);
        self
    }
    /// Points along the path, close enough to measure it.
    pub fn sample(&self) -> Vec<P> {
        let mut out: Vec<P> = Vec::new();
        let mut cur = p(0.0, 0.0);
        for s in &self.0 {
            for i in 1..=8 {
                let t = f64::from(i) / 8.0;
                let u = 1.0 - t;
                match *s {
                    Seg::M(a) | Seg::L(a) => out.push(if i == 8 { a } else { continue }),
                    Seg::Q(a, b) => {
                        out.push(cur * (u * u) + a * (2.0 * u * t) + b * (t * t));
                    }
                    Seg::C(a, b, c) => out.push(
                        cur * (u * u * u)
                            + a * (3.0 * u * u * t)
                            + b * (3.0 * u * t * t)
                            + c * (t * t * t),
                    ),
                    Seg::Z => {}
                }
            }
            cur = out.last().copied().unwrap_or(cur);
        }
        out
    }
    /// Left, top, right, bottom.
    pub fn bounds(&self) -> [f64; 4] {
        let mut b = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        for q in self.sample() {
            b = [b[0].min(q.x), b[1].min(q.y), b[2].max(q.x), b[3].max(q.y)];
        }
        b
    }
    /// Whether any of the points lies inside the closed path or within `reach`
    /// of its line.
    pub fn meets(&self, pts: &[P], reach: f64) -> bool {
        let own = self.sample();
        let b = self.bounds();
        let (lo, hi) = (p(b[0] - reach, b[1] - reach), p(b[2] + reach, b[3] + reach));
        pts.iter()
            .filter(|q| q.x > lo.x && q.x < hi.x && q.y > lo.y && q.y < hi.y)
            .any(|q| {
                let mut inside = false;
                for (i, a) in own.iter().enumerate() {
                    let c = own[(i + 1) % own.len()];
                    let t = (*q - *a).dot(c - *a) / (c - *a).dot(c - *a).max(1e-9);
                    if (a.to(c, t.clamp(0.0, 1.0)) - *q).len() < reach {
                        return true;
                    }
                    if (a.y > q.y) != (c.y > q.y)
                        && q.x < (c.x - a.x) * (q.y - a.y) / (c.y - a.y) + a.x
                    {
                        inside = !inside;
                    }
                }
                inside
            })
    }
    /// As the text of an SVG `d` attribute, one decimal, relative after each
    /// start so that it stays short.
    pub fn d(&self) -> String {
        let mut o = String::new();
        let mut cur = (0, 0);
        for s in &self.0 {
            let (c, pts): (char, Vec<P>) = match *s {
                Seg::M(a) => ('M', vec![a]),
                Seg::L(a) => ('l', vec![a]),
                Seg::Q(a, b) => ('q', vec![a, b]),
                Seg::C(a, b, c) => ('c', vec![a, b, c]),
                Seg::Z => ('z', vec![]),
            };
            o.push(c);
            let base = if c == 'M' { (0, 0) } else { cur };
            for q in &pts {
                cur = (tenths(q.x), tenths(q.y));
                for v in [cur.0 - base.0, cur.1 - base.1] {
                    if v >= 0 && !o.ends_with(char::is_alphabetic) {
                        o.push(' ');
                    }
                    o.push_str(&num(v as f64 / 10.0));
                }
            }
        }
        o
    }
}

/// A coordinate in whole tenths.
fn tenths(v: f64) -> i64 {
    (v * 10.0).round() as i64
}

fn word_has_point(text: &str) -> bool {
    text.rsplit(' ').next().is_some_and(|w| w.contains('.'))
}

/// One decimal, without a trailing zero or a negative zero.
pub fn num(v: f64) -> String {
    let r = (v * 10.0).round() / 10.0;
    if r == 0.0 {
        "0".to_owned()
    } else {
        format!("{r}")
    }
}

impl Path {
    /// An open path walked the other way.
    pub fn reversed(&self) -> Path {
        let mut pts: Vec<P> = Vec::new();
        for s in &self.0 {
            pts.push(s.end());
        }
        let mut out = vec![Seg::M(pts[pts.len() - 1])];
        for i in (1..self.0.len()).rev() {
            let to = pts[i - 1];
            out.push(match self.0[i] {
                Seg::Q(a, _) => Seg::Q(a, to),
                Seg::C(a, b, _) => Seg::C(b, a, to),
                _ => Seg::L(to),
            });
        }
        Path(out)
    }
}

impl Seg {
    /// Where the piece ends.
    pub fn end(&self) -> P {
        match *self {
            Seg::M(a) | Seg::L(a) | Seg::Q(_, a) | Seg::C(_, _, a) => a,
            Seg::Z => p(0.0, 0.0),
        }
    }
}
