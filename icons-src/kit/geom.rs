//! Points, paths and limbs: the plane geometry every figure is made of.
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
const KAPPA: f64 = 0.5523;

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
    /// Mirrored left to right about the vertical at `x`.
    pub fn mirror(&self, x: f64) -> Path {
        self.map(|q| p(2.0 * x - q.x, q.y))
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

/// Half a circle from `a` to `b` around their middle, bulging along `dir`.
fn cap(a: P, b: P, dir: P) -> [Seg; 2] {
    let m = a.to(b, 0.5);
    let h = (b - a) * 0.5;
    let tip = m + dir * h.len();
    let push = dir * (h.len() * KAPPA);
    [
        Seg::C(a + push, tip - h * KAPPA, tip),
        Seg::C(tip + h * KAPPA, b + push, b),
    ]
}

/// A limb of two bones with a round joint between them.
#[derive(Clone, Copy, Debug)]
pub struct Limb {
    /// Shoulder or hip, elbow or knee, wrist or ankle.
    pub pts: [P; 3],
    /// Half thickness at each of them.
    pub w: [f64; 3],
    /// Ends straight across (a sleeve) instead of round.
    pub flat: bool,
}

impl Limb {
    /// Bends two bones from `a` so that they end at `c`; `bend` chooses the
    /// side (+1: the joint lies clockwise of the straight line). When the
    /// target is too far the bones stretch a little, then stop short.
    pub fn reach(a: P, c: P, bones: [f64; 2], w: [f64; 3], bend: f64) -> Limb {
        let d = (c - a).len();
        let max = bones[0] + bones[1];
        let k = (d / max).clamp(1.0, 1.12);
        if d > max * 1.121 {
            eprintln!("a limb stops {:.0} short of {:.0} {:.0}", d - max, c.x, c.y);
        }
        let (l1, l2) = (bones[0] * k, bones[1] * k);
        let dd = d.clamp((l1 - l2).abs() + 0.1, l1 + l2);
        let along = (l1 * l1 - l2 * l2 + dd * dd) / (2.0 * dd);
        let off = (l1 * l1 - along * along).max(0.0).sqrt();
        let u = (c - a).unit();
        let joint = a + u * along + u.left() * (-off * bend);
        Limb {
            pts: [a, joint, a + u * dd],
            w,
            flat: false,
        }
    }
    /// The same limb cut at `t` of its whole length (0 to 1), thickened.
    pub fn cut(&self, t: f64, more: f64) -> Limb {
        let [a, b, c] = self.pts;
        let (l1, l2) = ((b - a).len(), (c - b).len());
        let at = t * (l1 + l2);
        let [wa, wb, wc] = self.w;
        if at <= l1 * 1.02 {
            let e = a.to(b, (at / l1).min(1.0));
            let we = wa + (wb - wa) * (at / l1).min(1.0);
            let m = a.to(e, 0.5);
            Limb {
                pts: [a, m, e],
                w: [wa + more, (wa + we) / 2.0 + more, we + more],
                flat: true,
            }
        } else {
            let s = (at - l1) / l2;
            let e = b.to(c, s);
            Limb {
                pts: [a, b, e],
                w: [wa + more, wb + more, wb + (wc - wb) * s + more],
                flat: true,
            }
        }
    }
    /// Direction of the last bone in degrees.
    pub fn aim(&self) -> f64 {
        (self.pts[2] - self.pts[1]).deg()
    }
    /// One side of the limb from `t` of the first bone to the end.
    fn side(&self, s: f64, t: f64) -> Vec<Seg> {
        let [a, b, c] = self.pts;
        let [wa, wb, wc] = self.w;
        let (n1, n2) = ((b - a).unit().left() * s, (c - b).unit().left() * s);
        let (a1, b1, b2, c1) = (a + n1 * wa, b + n1 * wb, b + n2 * wb, c + n2 * wc);
        let mut out = vec![Seg::M(a1.to(b1, t))];
        let turn = (b - a).unit();
        let next = (c - b).unit();
        let cross = turn.x * next.y - turn.y * next.x;
        if cross.abs() < 0.03 {
            out.push(Seg::L(b1.to(b2, 0.5)));
        } else if cross * s > 0.0 {
            // The outside of the bend: a round knee.
            let mid = b + (n1 + n2).unit() * wb;
            let h = 0.36 * (b2 - b1).len();
            let m = (b2 - b1).unit();
            out.push(Seg::L(b1));
            out.push(Seg::C(b1 + turn * h, mid - m * (h * 0.7), mid));
            out.push(Seg::C(mid + m * (h * 0.7), b2 - next * h, b2));
        } else if let Some(x) = cross_point(a1, b1, b2, c1) {
            let r = (wb * 0.9)
                .min((x - a1).len() * 0.5)
                .min((c1 - x).len() * 0.5);
            let (u, v) = ((b1 - a1).unit(), (c1 - b2).unit());
            out.push(Seg::L(x - u * r));
            out.push(Seg::Q(x, x + v * r));
        } else {
            out.push(Seg::L(b));
        }
        out.push(Seg::L(c1));
        out
    }
    /// The closed outline.
    pub fn outline(&self) -> Path {
        let [a, b, _] = self.pts;
        let l = self.side(1.0, 0.0);
        let r = Path(self.side(-1.0, 0.0)).reversed();
        let (la, lc) = (first(&l), last(&l));
        let (rc, ra) = (first(&r.0), last(&r.0));
        let mut s = l;
        self.end(&mut s, lc, rc);
        s.extend(r.0.into_iter().skip(1));
        s.extend(cap(ra, la, (a - b).unit()));
        s.push(Seg::Z);
        Path(s)
    }
    /// The open line around the limb, beginning and ending at `t` of the first
    /// bone: where the white seam runs, so that a shoulder stays one with the
    /// body.
    pub fn edge(&self, t: f64) -> Path {
        let l = self.side(1.0, t);
        let r = Path(self.side(-1.0, t)).reversed();
        let (lc, rc) = (last(&l), first(&r.0));
        let mut s = l;
        self.end(&mut s, lc, rc);
        s.extend(r.0.into_iter().skip(1));
        Path(s)
    }
    fn end(&self, s: &mut Vec<Seg>, l: P, r: P) {
        if self.flat {
            s.push(Seg::L(r));
        } else {
            s.extend(cap(l, r, (self.pts[2] - self.pts[1]).unit()));
        }
    }
    /// The line across the end of the limb (a cuff).
    pub fn across(&self) -> Path {
        let [_, b, c] = self.pts;
        let n = (c - b).unit().left() * self.w[2];
        Path::poly(&[c + n, c - n], false)
    }
}

impl Path {
    /// An open path walked the other way.
    pub fn reversed(&self) -> Path {
        let mut pts: Vec<P> = Vec::new();
        for s in &self.0 {
            pts.push(end_of(s));
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

fn end_of(s: &Seg) -> P {
    match *s {
        Seg::M(a) | Seg::L(a) | Seg::Q(_, a) | Seg::C(_, _, a) => a,
        Seg::Z => p(0.0, 0.0),
    }
}
fn first(s: &[Seg]) -> P {
    end_of(&s[0])
}
fn last(s: &[Seg]) -> P {
    end_of(&s[s.len() - 1])
}

/// Where the lines a-b and c-d cross, if within both (with a little grace).
fn cross_point(a: P, b: P, c: P, d: P) -> Option<P> {
    let (r, s) = (b - a, d - c);
    let den = r.x * s.y - r.y * s.x;
    if den.abs() < 1e-6 {
        return None;
    }
    let q = c - a;
    let t = (q.x * s.y - q.y * s.x) / den;
    let u = (q.x * r.y - q.y * r.x) / den;
    ((0.02..=1.2).contains(&t) && (-0.2..=0.98).contains(&u)).then(|| a + r * t)
}
