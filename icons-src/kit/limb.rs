//! Limbs: two bones with a round joint, aimed at the point the hand or foot
//! must reach.

use super::geom::{KAPPA, P, Path, Seg};

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

fn first(s: &[Seg]) -> P {
    s[0].end()
}
fn last(s: &[Seg]) -> P {
    s[s.len() - 1].end()
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
