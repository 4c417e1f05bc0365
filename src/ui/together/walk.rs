//! How far two people have come on a board: what is now, what comes, what is finished, what was
//! picked. Knows nothing of the toolkit.

use std::collections::BTreeMap;
use std::ops::Range;

use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::StepRef;
use crate::model::manner::Reach;
use crate::plan::chunks::chunks;

/// The board as it is gone through: its strips, where the participant is given less than all.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Path {
    reach: Reach,
    strips: Vec<Range<usize>>,
    off: Vec<bool>,
}

/// What is before the two at a moment, as numbers of steps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sight {
    /// The step that is now; none when all are finished.
    pub now: Option<usize>,
    /// What comes, in order, as far as it is shown.
    pub coming: Vec<usize>,
    /// What is finished, as far as it is shown.
    pub finished: Range<usize>,
}

/// How far they have come.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Walk {
    done: usize,
    picked: BTreeMap<StepRef, Content>,
}

/// What one step back was.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Back {
    /// What was picked at this step is open again.
    Unpicked(StepRef),
    /// This step is now again.
    To(usize),
}

impl Path {
    /// The board of a participant who is shown so much at once.
    pub fn of(club: &Club, board: &Board, reach: Reach) -> Self {
        let off = |s: &Step| s.state == StepState::NotToday;
        Self {
            reach,
            strips: chunks(club, board, reach),
            off: board.steps.iter().map(off).collect(),
        }
    }

    /// How many steps there are.
    pub fn count(&self) -> usize {
        self.off.len()
    }

    /// How much is shown at once.
    pub const fn reach(&self) -> Reach {
        self.reach
    }

    /// The strip a step is on: what is shown of it stays while it is gone through.
    fn strip(&self, at: usize) -> Range<usize> {
        let found = self.strips.iter().find(|s| s.contains(&at));
        found.or(self.strips.last()).cloned().unwrap_or(0..0)
    }

    /// Whether a strip begins with this step, or with what it comes instead of.
    pub fn begins_strip(&self, at: usize) -> bool {
        let from = self.strip(at).start;
        self.off.get(from..at).is_some_and(|o| o.iter().all(|o| *o))
    }

    /// How many steps from one on are shown, when so many that are done are wanted. What is not
    /// today counts for nothing, so that what comes instead is shown with it.
    fn until(&self, from: usize, wanted: usize) -> usize {
        let mut done = 0;
        for at in from..self.count() {
            done += usize::from(!self.off[at]);
            if done == wanted {
                return at + 1;
            }
        }
        self.count()
    }
}

impl Walk {
    /// How many steps are finished.
    pub const fn done(&self) -> usize {
        self.done
    }

    /// The step that is now.
    pub fn now(&self, path: &Path) -> Option<usize> {
        (self.done < path.count()).then_some(self.done)
    }

    /// The one that is now is finished. False when there is none.
    pub fn finish(&mut self, path: &Path) -> bool {
        let some = self.done < path.count();
        self.done += usize::from(some);
        some
    }

    /// One step back: what was picked now is open again, or else the last finished step is now
    /// again.
    pub fn back(&mut self, path: &Path, board: &Board) -> Option<Back> {
        let now = self.now(path).map(|i| board.steps[i].at);
        if let Some(at) = now.filter(|at| self.picked.contains_key(at)) {
            self.picked.remove(&at);
            return Some(Back::Unpicked(at));
        }
        self.done = self.done.checked_sub(1)?;
        Some(Back::To(self.done))
    }

    /// Whether one step back leads anywhere.
    pub fn can_back(&self, path: &Path, board: &Board) -> bool {
        let now = self.now(path).map(|i| board.steps[i].at);
        self.done > 0 || now.is_some_and(|at| self.picked.contains_key(&at))
    }

    /// Something is picked where there is a choice.
    pub fn pick(&mut self, at: StepRef, what: Content) {
        self.picked.insert(at, what);
    }

    /// What was picked at a step.
    pub fn picked(&self, at: StepRef) -> Option<&Content> {
        self.picked.get(&at)
    }

    /// The choice that is open now.
    pub fn choosing<'a>(&self, path: &Path, board: &'a Board) -> Option<&'a Step> {
        let step = &board.steps[self.now(path)?];
        let open = is_choice(step) && !self.picked.contains_key(&step.at);
        open.then_some(step)
    }

    /// Keeps within a board that may have become shorter.
    pub fn settle(&mut self, path: &Path) {
        self.done = self.done.min(path.count());
    }

    /// What is before them.
    pub fn sight(&self, path: &Path) -> Sight {
        let (n, done) = (path.count(), self.done);
        let Some(now) = self.now(path) else {
            return Sight {
                now: None,
                coming: Vec::new(),
                finished: path.before(done)..n,
            };
        };
        let to = match path.reach {
            Reach::One => path.until(now, 1),
            Reach::NowNext => path.until(now, 2),
            Reach::FirstThen | Reach::Three | Reach::Part => path.strip(now).end,
            Reach::Whole => n,
        };
        Sight {
            now: Some(now),
            coming: (now + 1..to).collect(),
            finished: path.before(done)..done,
        }
    }
}

impl Path {
    /// From where finished steps are shown when so many are: never more at once than the
    /// participant is given.
    fn before(&self, done: usize) -> usize {
        match self.reach {
            Reach::Whole => 0,
            Reach::One => done.saturating_sub(1),
            Reach::NowNext => done.saturating_sub(2),
            _ => self.strip(done.min(self.count().saturating_sub(1))).start,
        }
    }
}

/// Whether something is to be chosen at a step.
pub fn is_choice(step: &Step) -> bool {
    !step.options.is_empty() && step.state != StepState::NotToday
}

/// What stands in for a step that is not today: the step that comes instead, if one does.
pub fn instead(board: &Board, at: usize) -> Option<usize> {
    let step = board.steps.get(at)?;
    let StepRef::Slot(slot) = step.at else {
        return None;
    };
    let off = step.state == StepState::NotToday;
    off.then(|| board.position(StepRef::Instead(slot)))?
}

/// What can be chosen at a step: the options of the board, and always something else and no thanks.
/// Gives how many of them are the board's own.
pub fn options(step: &Step, words: impl Fn(&str) -> Option<String>) -> (Vec<Content>, usize) {
    const ALWAYS: [(&str, &str); 2] = [("something_else", "Something else"), ("no", "No thanks")];
    let mut all = step.options.clone();
    let own = all.len();
    for (symbol, label) in ALWAYS {
        if all.iter().all(|o| o.symbol.as_str() != symbol) {
            all.push(Content {
                activity: None,
                symbol: crate::model::ids::SymbolId::new(symbol),
                label: words(symbol).unwrap_or_else(|| label.to_owned()),
            });
        }
    }
    (all, own)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ids::{OwnId, PartId, ParticipantId, SlotId, SymbolId};
    use crate::workbench::demo;

    fn step(n: u32, part: u32) -> Step {
        let at = StepRef::Slot(SlotId(n));
        Step::plain(at, SymbolId::new("dig"), format!("S{n}"), PartId(part))
    }

    /// Seven steps in two parts; the third is not today and the fourth comes instead.
    fn board() -> Board {
        let mut steps: Vec<Step> = (1..=7)
            .map(|n| step(n, if n < 5 { 1 } else { 2 }))
            .collect();
        steps[2].state = StepState::NotToday;
        steps[3].at = StepRef::Instead(SlotId(3));
        steps[3].state = StepState::Instead { of: "S3".into() };
        Board {
            participant: ParticipantId(1),
            steps,
            left_out: Vec::new(),
            waiting: Vec::new(),
        }
    }

    fn path(reach: Reach) -> Path {
        Path::of(&demo::starter(), &board(), reach)
    }

    fn sights(reach: Reach) -> Vec<Sight> {
        let (path, mut walk) = (path(reach), Walk::default());
        let mut all = vec![walk.sight(&path)];
        while walk.finish(&path) {
            all.push(walk.sight(&path));
        }
        all
    }

    #[test]
    fn a_day_goes_forward_to_its_end_and_all_the_way_back() {
        let (path, board, mut walk) = (path(Reach::Whole), board(), Walk::default());
        let mut seen = Vec::new();
        while let Some(now) = walk.now(&path) {
            seen.push(now);
            assert!(walk.finish(&path));
        }
        assert_eq!(seen, [0, 1, 2, 3, 4, 5, 6]);
        assert!(!walk.finish(&path), "nothing is after the end");
        for now in (0..7).rev() {
            assert_eq!(walk.back(&path, &board), Some(Back::To(now)));
        }
        assert_eq!(
            walk.back(&path, &board),
            None,
            "nothing is before the start"
        );
    }

    #[test]
    fn no_more_is_shown_than_the_participant_is_given() {
        let most = |reach, n| {
            for sight in sights(reach) {
                let board = board();
                let ahead = sight.now.into_iter().chain(sight.coming.clone());
                let ahead = ahead.filter(|i| board.steps[*i].state != StepState::NotToday);
                assert!(ahead.count() <= n, "{reach:?} {sight:?}");
                assert!(sight.finished.len() <= n + 1, "{reach:?} {sight:?}");
            }
        };
        most(Reach::One, 1);
        most(Reach::FirstThen, 2);
        most(Reach::NowNext, 2);
        most(Reach::Three, 3);
        assert!(sights(Reach::Whole)[0].coming == (1..7).collect::<Vec<_>>());
    }

    #[test]
    fn strips_stay_and_now_and_next_slide() {
        let next =
            |reach| -> Vec<Vec<usize>> { sights(reach).into_iter().map(|s| s.coming).collect() };
        assert_eq!(next(Reach::NowNext)[0], [1]);
        assert_eq!(next(Reach::NowNext)[1], [2, 3], "with what comes instead");
        let part = sights(Reach::Part);
        assert_eq!(part[0].coming, [1, 2, 3], "the first part alone");
        assert_eq!(part[3].coming, [] as [usize; 0]);
        assert_eq!(part[3].finished, 0..3);
        assert_eq!(
            part[4].finished,
            4..4,
            "a new part begins with nothing finished"
        );
        assert_eq!(part[7].finished, 4..7);
    }

    #[test]
    fn what_is_not_today_is_shown_with_what_comes_instead() {
        for reach in Reach::ALL {
            let sight = sights(reach)[2].clone();
            assert_eq!(sight.now, Some(2));
            assert_eq!(sight.coming.first(), Some(&3), "{reach:?}");
            assert_eq!(instead(&board(), 2), Some(3));
        }
        assert_eq!(instead(&board(), 1), None);
    }

    #[test]
    fn a_choice_stays_open_until_something_is_picked_and_opens_again() {
        let mut board = board();
        let content = |label: &str| Content {
            activity: None,
            symbol: SymbolId::new("ball"),
            label: label.into(),
        };
        board.steps[0].options = vec![content("Ball"), content("Kite")];
        let path = Path::of(&demo::starter(), &board, Reach::Whole);
        let mut walk = Walk::default();
        assert_eq!(
            walk.choosing(&path, &board).map(|s| s.at),
            Some(board.steps[0].at)
        );
        walk.pick(board.steps[0].at, content("Kite"));
        assert_eq!(walk.choosing(&path, &board), None);
        assert_eq!(
            walk.picked(board.steps[0].at).map(|c| c.label.as_str()),
            Some("Kite")
        );
        let at = board.steps[0].at;
        assert_eq!(walk.back(&path, &board), Some(Back::Unpicked(at)));
        assert!(walk.choosing(&path, &board).is_some());
        // Called off, it is no choice any more.
        board.steps[0].state = StepState::NotToday;
        assert!(walk.choosing(&path, &board).is_none());
    }

    #[test]
    fn something_else_and_no_thanks_are_always_among_the_options_once() {
        let mut one = step(1, 1);
        let content = |symbol: &str| Content {
            activity: None,
            symbol: SymbolId::new(symbol),
            label: symbol.into(),
        };
        one.options = vec![content("dig"), content("something_else")];
        let (all, own) = options(&one, |_| None);
        let symbols: Vec<&str> = all.iter().map(|o| o.symbol.as_str()).collect();
        assert_eq!((symbols, own), (vec!["dig", "something_else", "no"], 2));
        assert_eq!(all[2].label, "No thanks");
    }

    #[test]
    fn an_empty_or_shortened_board_never_points_outside() {
        let mut board = board();
        let long = Path::of(&demo::starter(), &board, Reach::Three);
        let mut walk = Walk::default();
        while walk.finish(&long) {}
        board.steps.truncate(2);
        let short = Path::of(&demo::starter(), &board, Reach::Three);
        walk.settle(&short);
        assert_eq!(walk.done(), 2);
        board.steps.clear();
        let none = Path::of(&demo::starter(), &board, Reach::Part);
        walk.settle(&none);
        assert_eq!(walk.sight(&none).finished, 0..0);
        let own = StepRef::Own(OwnId(9));
        assert_eq!(walk.picked(own), None);
    }
}
