//! Scanning: what can be pressed is offered one after the other, for whoever has one switch or two.
//! Time comes in as seconds gone by; nothing here reads a clock or knows the toolkit.

use crate::workbench::command::{PACE, Scanning};

/// After so many rounds in which nothing was taken it rests at the first, until a switch is pressed:
/// a frame that wanders for ever is nothing but unrest.
const ROUNDS: usize = 3;

/// What is offered now.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Scan {
    at: usize,
    waited: f64,
    rounds: usize,
}

/// What a switch does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Switch {
    /// Goes on to the next; of two switches the first.
    On,
    /// Takes what is offered.
    Take,
}

impl Scan {
    /// Which one is offered of so many.
    pub fn at(&self, count: usize) -> usize {
        self.at.min(count.saturating_sub(1))
    }

    /// Begins anew at the first.
    pub fn restart(&mut self) {
        *self = Self::default();
    }

    /// Whether it rests until a switch is pressed.
    pub const fn rests(&self) -> bool {
        self.rounds >= ROUNDS
    }

    /// So many seconds went by. Only with one switch it goes on by itself.
    pub fn tick(&mut self, seconds: f64, how: Scanning, pace_ms: u32, count: usize) {
        if how != Scanning::OneSwitch || self.rests() || count < 2 {
            return;
        }
        let pace = f64::from(pace_ms) / 1000.0;
        // A window that was hidden for a while goes on by one, not by many.
        self.waited += seconds.clamp(0.0, pace);
        if self.waited + 1e-6 >= pace {
            self.waited = 0.0;
            self.on(count);
        }
    }

    /// Seconds until it goes on by itself; none when it does not.
    pub fn left(&self, how: Scanning, pace_ms: u32, count: usize) -> Option<f64> {
        let goes = how == Scanning::OneSwitch && !self.rests() && count > 1;
        goes.then(|| (f64::from(pace_ms) / 1000.0 - self.waited).max(0.0))
    }

    /// A switch is pressed: gives which one is taken, if one is.
    pub fn press(&mut self, switch: Switch, how: Scanning, count: usize) -> Option<usize> {
        if count == 0 {
            return None;
        }
        match (how, switch) {
            (Scanning::Off, _) => None,
            (Scanning::TwoSwitches, Switch::On) => {
                self.on(count);
                self.rounds = 0;
                None
            }
            // Out of its rest it begins again; what lay there by chance is not taken.
            (Scanning::OneSwitch, _) if self.rests() => {
                self.restart();
                None
            }
            _ => {
                let at = self.at(count);
                self.restart();
                Some(at)
            }
        }
    }

    fn on(&mut self, count: usize) {
        self.at = (self.at(count) + 1) % count;
        self.rounds += usize::from(self.at == 0);
    }
}

/// The next slower or quicker pace, in steps that are felt.
pub fn pace(now_ms: u32, slower: bool) -> u32 {
    const STEPS: [u32; 9] = [500, 800, 1200, 1600, 2000, 3000, 4000, 6000, 10_000];
    let next = match slower {
        true => STEPS.into_iter().find(|s| *s > now_ms),
        false => STEPS.into_iter().rev().find(|s| *s < now_ms),
    };
    next.unwrap_or(now_ms).clamp(*PACE.start(), *PACE.end())
}

#[cfg(test)]
mod tests {
    use super::*;

    const ONE: Scanning = Scanning::OneSwitch;
    const TWO: Scanning = Scanning::TwoSwitches;

    #[test]
    fn one_is_offered_after_the_other_at_the_pace() {
        let mut scan = Scan::default();
        let mut seen = vec![scan.at(3)];
        for _ in 0..12 {
            scan.tick(0.5, ONE, 2000, 3);
            seen.push(scan.at(3));
        }
        assert_eq!(seen, [0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 0]);
        assert_eq!(scan.left(ONE, 2000, 3), Some(2.0));
        scan.tick(0.5, ONE, 2000, 3);
        assert_eq!(scan.left(ONE, 2000, 3), Some(1.5));
    }

    #[test]
    fn the_switch_takes_what_is_offered_and_it_begins_anew() {
        let mut scan = Scan::default();
        scan.tick(1.0, ONE, 1000, 4);
        scan.tick(1.0, ONE, 1000, 4);
        assert_eq!(scan.press(Switch::Take, ONE, 4), Some(2));
        assert_eq!(scan.at(4), 0);
        assert_eq!(
            scan.press(Switch::On, ONE, 4),
            Some(0),
            "one switch only takes"
        );
    }

    #[test]
    fn two_switches_wait_for_the_hand_for_ever() {
        let mut scan = Scan::default();
        scan.tick(500.0, TWO, 1000, 3);
        assert_eq!((scan.at(3), scan.left(TWO, 1000, 3)), (0, None));
        for at in [1, 2, 0, 1] {
            assert_eq!(scan.press(Switch::On, TWO, 3), None);
            assert_eq!(scan.at(3), at);
        }
        assert_eq!(scan.press(Switch::Take, TWO, 3), Some(1));
    }

    #[test]
    fn it_comes_to_rest_and_a_press_wakes_it_without_taking() {
        let mut scan = Scan::default();
        for _ in 0..100 {
            scan.tick(1.0, ONE, 1000, 5);
        }
        assert!(scan.rests());
        assert_eq!((scan.at(5), scan.left(ONE, 1000, 5)), (0, None));
        assert_eq!(scan.press(Switch::Take, ONE, 5), None);
        assert!(!scan.rests());
        assert_eq!(scan.press(Switch::Take, ONE, 5), Some(0));
    }

    #[test]
    fn a_long_pause_goes_on_by_one_only() {
        let mut scan = Scan::default();
        scan.tick(3600.0, ONE, 2000, 5);
        assert_eq!(scan.at(5), 1);
        assert_eq!(scan.at(1), 0, "fewer things: the last of them");
        assert_eq!(scan.press(Switch::Take, ONE, 0), None);
    }

    #[test]
    fn the_pace_has_a_slowest_and_a_quickest() {
        let slow = (0..20).fold(2000, |p, _| pace(p, true));
        let quick = (0..20).fold(2000, |p, _| pace(p, false));
        assert_eq!((slow, quick), (*PACE.end(), *PACE.start()));
        assert_eq!(pace(pace(2000, true), false), 2000);
    }
}
