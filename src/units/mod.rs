//! Lengths and places on paper, in whole micrometres. Millimetres go in, points come out.
//! Beside them `colour` and `path`, which every layer above shares.
//!
//! Knows nothing of clubs, pages or pixels. A page's origin is its top left corner; `y` grows
//! downwards.

pub mod colour;
pub mod path;

use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

/// One inch in micrometres (exactly 25.4 mm).
const UM_PER_INCH: f64 = 25_400.0;
/// Points in an inch: 1 pt = 1/72 in.
const PT_PER_INCH: f64 = 72.0;

/// A length on paper in whole micrometres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Length(i64);

impl Length {
    /// No length at all.
    pub const ZERO: Self = Self(0);

    /// From whole micrometres.
    pub const fn um(um: i64) -> Self {
        Self(um)
    }

    /// From millimetres, rounded to the nearest micrometre. What is not a number becomes zero.
    pub fn mm(mm: f64) -> Self {
        Self((mm * 1000.0).round() as i64)
    }

    /// From points (1/72 in), rounded to the nearest micrometre.
    pub fn pt(pt: f64) -> Self {
        Self((pt * UM_PER_INCH / PT_PER_INCH).round() as i64)
    }

    /// In whole micrometres.
    pub const fn to_um(self) -> i64 {
        self.0
    }

    /// In millimetres.
    pub fn to_mm(self) -> f64 {
        self.0 as f64 / 1000.0
    }

    /// In points (1/72 in).
    pub fn to_pt(self) -> f64 {
        self.0 as f64 * PT_PER_INCH / UM_PER_INCH
    }

    /// In pixels at a resolution in dots per inch.
    pub fn to_px(self, dpi: f64) -> f64 {
        self.0 as f64 * dpi / UM_PER_INCH
    }

    /// This length times a factor, rounded to the nearest micrometre.
    pub fn scale(self, factor: f64) -> Self {
        Self((self.0 as f64 * factor).round() as i64)
    }

    /// How often `part` goes into this length; zero when `part` is not above zero.
    pub fn times(self, part: Self) -> i64 {
        if part.0 <= 0 {
            0
        } else {
            self.0.div_euclid(part.0).max(0)
        }
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, o: Self) -> Self {
        Self(self.0.saturating_add(o.0))
    }
}
impl AddAssign for Length {
    fn add_assign(&mut self, o: Self) {
        *self = *self + o;
    }
}
impl Sub for Length {
    type Output = Self;
    fn sub(self, o: Self) -> Self {
        Self(self.0.saturating_sub(o.0))
    }
}
impl SubAssign for Length {
    fn sub_assign(&mut self, o: Self) {
        *self = *self - o;
    }
}
impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}
impl Mul<i64> for Length {
    type Output = Self;
    fn mul(self, n: i64) -> Self {
        Self(self.0.saturating_mul(n))
    }
}
impl Div<i64> for Length {
    type Output = Self;
    fn div(self, n: i64) -> Self {
        Self(if n == 0 { 0 } else { self.0 / n })
    }
}
impl std::iter::Sum for Length {
    fn sum<I: Iterator<Item = Self>>(iter: I) -> Self {
        iter.fold(Self::ZERO, Add::add)
    }
}

/// A place on a page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Point {
    /// From the left edge.
    pub x: Length,
    /// From the top edge.
    pub y: Length,
}

impl Point {
    /// The place `x` from the left and `y` from the top.
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }

    /// The same from millimetres.
    pub fn mm(x: f64, y: f64) -> Self {
        Self::new(Length::mm(x), Length::mm(y))
    }

    /// Moved right and down.
    pub fn moved(self, dx: Length, dy: Length) -> Self {
        Self::new(self.x + dx, self.y + dy)
    }
}

/// Width and height.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Size {
    /// Width.
    pub w: Length,
    /// Height.
    pub h: Length,
}

impl Size {
    /// From width and height.
    pub const fn new(w: Length, h: Length) -> Self {
        Self { w, h }
    }

    /// The same from millimetres.
    pub fn mm(w: f64, h: f64) -> Self {
        Self::new(Length::mm(w), Length::mm(h))
    }

    /// A square of side `s`.
    pub const fn square(s: Length) -> Self {
        Self::new(s, s)
    }

    /// Width and height exchanged.
    pub const fn turned(self) -> Self {
        Self::new(self.h, self.w)
    }
}

/// Distances from the four edges.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Insets {
    /// From the left edge.
    pub left: Length,
    /// From the top edge.
    pub top: Length,
    /// From the right edge.
    pub right: Length,
    /// From the bottom edge.
    pub bottom: Length,
}

impl Insets {
    /// The same on all four sides.
    pub const fn all(d: Length) -> Self {
        Self {
            left: d,
            top: d,
            right: d,
            bottom: d,
        }
    }
}

/// A rectangle on a page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Rect {
    /// Left edge.
    pub x: Length,
    /// Top edge.
    pub y: Length,
    /// Width.
    pub w: Length,
    /// Height.
    pub h: Length,
}

impl Rect {
    /// From a corner and a size.
    pub const fn new(at: Point, size: Size) -> Self {
        Self {
            x: at.x,
            y: at.y,
            w: size.w,
            h: size.h,
        }
    }

    /// From millimetres: left, top, width, height.
    pub fn mm(x: f64, y: f64, w: f64, h: f64) -> Self {
        Self::new(Point::mm(x, y), Size::mm(w, h))
    }

    /// The right edge.
    pub fn right(self) -> Length {
        self.x + self.w
    }

    /// The bottom edge.
    pub fn bottom(self) -> Length {
        self.y + self.h
    }

    /// The top left corner.
    pub const fn origin(self) -> Point {
        Point::new(self.x, self.y)
    }

    /// Width and height.
    pub const fn size(self) -> Size {
        Size::new(self.w, self.h)
    }

    /// The middle.
    pub fn center(self) -> Point {
        Point::new(self.x + self.w / 2, self.y + self.h / 2)
    }

    /// Made smaller by insets; never of negative size.
    pub fn inset(self, i: Insets) -> Self {
        Self {
            x: self.x + i.left,
            y: self.y + i.top,
            w: (self.w - i.left - i.right).max(Length::ZERO),
            h: (self.h - i.top - i.bottom).max(Length::ZERO),
        }
    }

    /// Made smaller by the same distance on all sides.
    pub fn shrink(self, d: Length) -> Self {
        self.inset(Insets::all(d))
    }

    /// Whether a place lies within, edges included on the left and top only.
    pub fn contains(self, p: Point) -> bool {
        p.x >= self.x && p.x < self.right() && p.y >= self.y && p.y < self.bottom()
    }

    /// Whether another rectangle lies wholly within, edges included.
    pub fn encloses(self, o: Self) -> bool {
        o.x >= self.x && o.y >= self.y && o.right() <= self.right() && o.bottom() <= self.bottom()
    }

    /// Whether two rectangles share more than an edge.
    pub fn overlaps(self, o: Self) -> bool {
        self.x < o.right() && o.x < self.right() && self.y < o.bottom() && o.y < self.bottom()
    }

    /// The largest square in the middle of this rectangle.
    pub fn middle_square(self) -> Self {
        let s = self.w.min(self.h);
        let c = self.center();
        Self {
            x: c.x - s / 2,
            y: c.y - s / 2,
            w: s,
            h: s,
        }
    }
}
