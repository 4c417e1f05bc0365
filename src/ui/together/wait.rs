//! Waiting as a picture of time that empties: how full it is. Seconds come in; there is no clock, no
//! number and no sound. More time can be given at any moment, and the picture only gets slower.

/// Seconds of the two lengths that are offered; the shorter one is also what is given more.
pub const LENGTHS: [f64; 2] = [60.0, 180.0];
/// In a still picture it goes down in so many steps.
const COARSE: f64 = 8.0;

/// Time that empties.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wait {
    level: f64,
    left: f64,
}

impl Wait {
    /// Full, for so many seconds.
    pub const fn full(seconds: f64) -> Self {
        Self {
            level: 1.0,
            left: if seconds > 1.0 { seconds } else { 1.0 },
        }
    }

    /// So many seconds went by. It empties evenly over the time that is left.
    pub fn tick(&mut self, seconds: f64) {
        let gone = seconds.clamp(0.0, self.left);
        if self.left > 0.0 {
            self.level *= (self.left - gone) / self.left;
        }
        self.left -= gone;
        if self.left <= 0.0 {
            (self.level, self.left) = (0.0, 0.0);
        }
    }

    /// More time: the water stays where it is and sinks more slowly from there. Once it is over there
    /// is nothing left to stretch; a new wait begins full.
    pub fn more(&mut self, seconds: f64) {
        if !self.is_over() {
            self.left += seconds.max(0.0);
        }
    }

    /// How full it is, from 1 to 0; in steps where nothing moves.
    pub fn level(&self, still: bool) -> f64 {
        match still {
            true => (self.level * COARSE).ceil() / COARSE,
            false => self.level,
        }
    }

    /// Whether it is over.
    pub fn is_over(&self) -> bool {
        self.left <= 0.0
    }

    /// Seconds until the still picture is another.
    pub fn until_seen(&self) -> f64 {
        if self.is_over() || self.level <= 0.0 {
            return 0.0;
        }
        let below = ((self.level * COARSE).ceil() - 1.0) / COARSE;
        (self.left * (1.0 - below / self.level)).max(0.05)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_empties_evenly_to_nothing() {
        let mut w = Wait::full(100.0);
        for n in 1..=10 {
            w.tick(10.0);
            let want = 1.0 - f64::from(n) / 10.0;
            assert!((w.level(false) - want).abs() < 1e-9, "{n}");
        }
        assert!(w.is_over() && w.level(false) == 0.0);
        w.tick(5.0);
        assert!(w.is_over());
    }

    #[test]
    fn more_time_never_jumps_up_or_down() {
        let mut w = Wait::full(60.0);
        let mut before = w.level(false);
        for n in 0..400 {
            if n % 37 == 5 {
                w.more(30.0);
                assert!((w.level(false) - before).abs() < 1e-12, "a jump at {n}");
            }
            w.tick(1.0);
            let now = w.level(false);
            assert!(now <= before && before - now < 0.05, "{before} to {now}");
            before = now;
        }
        assert!(w.is_over(), "however often it was stretched, it ends");
        w.more(60.0);
        assert!(w.is_over() && w.level(false) == 0.0, "and stays ended");
    }

    #[test]
    fn a_still_picture_sinks_in_few_steps_and_is_full_and_empty_when_the_other_is() {
        let mut w = Wait::full(80.0);
        let mut steps = vec![w.level(true)];
        while !w.is_over() {
            let wait = w.until_seen();
            assert!(wait > 0.0);
            w.tick(wait + 1e-6);
            steps.push(w.level(true));
        }
        steps.dedup();
        assert_eq!(steps.first(), Some(&1.0));
        assert_eq!(steps.last(), Some(&0.0));
        assert_eq!(steps.len(), 9);
        assert_eq!(w.until_seen(), 0.0);
    }

    #[test]
    fn odd_times_do_no_harm() {
        let mut w = Wait::full(-3.0);
        w.tick(-1.0);
        w.tick(f64::from(u32::MAX));
        w.more(-5.0);
        assert!(w.level(false) >= 0.0 && w.level(false) <= 1.0);
    }
}
