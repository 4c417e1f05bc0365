//! Numbers that look like chance and are the same every time.

/// The generator of Steele, Lea and Flood 2014 ("SplitMix").
#[derive(Clone, Debug)]
pub struct Chance(pub u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number below `n`; zero when there is none.
    pub fn below(&mut self, n: usize) -> usize {
        ((u128::from(self.next()) * n as u128) >> 64) as usize
    }

    /// How many halvings a value lives, nearly as in radioactive decay: at least `k` with a chance
    /// of one in two to the `k`. Without logarithms, which differ between machines.
    pub fn halvings(&mut self) -> f64 {
        let bits = self.next();
        let part = (bits >> 32) as f64 / f64::from(1_u32 << 16) / f64::from(1_u32 << 16);
        f64::from((bits as u32).trailing_zeros()) + part
    }
}
