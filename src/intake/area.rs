//! Shrinking row by row: each new pixel is the mean of all it covers, parts of pixels counted by
//! their share. In light, not in numbers, so that fine light and dark patterns keep their brightness.

/// Shrinks pixels of `N` values. Rows go in from the top; finished rows come out.
pub struct Area<const N: usize> {
    from: [usize; 2],
    to: [usize; 2],
    /// For each column: the new column it begins in, and its share there; the rest goes to the next.
    columns: Vec<(usize, f32)>,
    across: Vec<[f32; N]>,
    sum: Vec<[f32; N]>,
    row: usize,
}

/// Where an old pixel lies among new ones: the first it touches, and its share in it and the next,
/// measured in new pixels.
fn share(i: usize, from: usize, to: usize) -> (usize, f32, f32) {
    let first = i * to / from;
    let end = (i + 1) * to;
    let edge = (first + 1) * from;
    let unit = from as f32;
    if end <= edge {
        (first, to as f32 / unit, 0.0)
    } else {
        let here = edge - i * to;
        (first, here as f32 / unit, (end - edge) as f32 / unit)
    }
}

impl<const N: usize> Area<N> {
    /// From so many pixels across and down to fewer or as many, each at least 1.
    pub fn new(from: [usize; 2], to: [usize; 2]) -> Self {
        let to = [to[0].clamp(1, from[0]), to[1].clamp(1, from[1])];
        let columns = (0..from[0]).map(|i| {
            let (first, here, _) = share(i, from[0], to[0]);
            (first, here)
        });
        Self {
            from,
            to,
            columns: columns.collect(),
            across: vec![[0.0; N]; to[0]],
            sum: vec![[0.0; N]; to[0]],
            row: 0,
        }
    }

    /// Takes one row and hands on the new row it completes, if it does. More rows than announced
    /// are passed over.
    pub fn push(&mut self, row: impl Iterator<Item = [f32; N]>, mut done: impl FnMut(&[[f32; N]])) {
        if self.row >= self.from[1] {
            return;
        }
        self.shrink_across(row);
        let (_, here, next) = share(self.row, self.from[1], self.to[1]);
        add(&mut self.sum, &self.across, here);
        self.row += 1;
        if self.row * self.to[1] / self.from[1] > (self.row - 1) * self.to[1] / self.from[1] {
            done(&self.sum);
            self.sum.fill([0.0; N]);
            if next > 0.0 {
                add(&mut self.sum, &self.across, next);
            }
        }
    }

    fn shrink_across(&mut self, row: impl Iterator<Item = [f32; N]>) {
        self.across.fill([0.0; N]);
        let whole = self.to[0] as f32 / self.from[0] as f32;
        for (pixel, (first, here)) in row.zip(&self.columns) {
            for (sum, v) in self.across[*first].iter_mut().zip(pixel) {
                *sum += v * here;
            }
            if *here < whole
                && let Some(next) = self.across.get_mut(first + 1)
            {
                for (sum, v) in next.iter_mut().zip(pixel) {
                    *sum += v * (whole - here);
                }
            }
        }
    }
}

fn add<const N: usize>(sum: &mut [[f32; N]], row: &[[f32; N]], share: f32) {
    for (sum, row) in sum.iter_mut().zip(row) {
        for (s, v) in sum.iter_mut().zip(row) {
            *s += v * share;
        }
    }
}

/// The size of a picture whose longest side is at most `longest`, never larger than it is.
pub fn fitted(width: u32, height: u32, longest: u32) -> [u32; 2] {
    let side = width.max(height).max(1);
    let longest = longest.max(1);
    if side <= longest {
        return [width.max(1), height.max(1)];
    }
    let fit = |v: u32| {
        let exact = f64::from(v) * f64::from(longest) / f64::from(side);
        (exact.round() as u32).clamp(1, v.max(1))
    };
    [fit(width), fit(height)]
}
