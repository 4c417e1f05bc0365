//! Simple questions at the end, in the participant's own way: a thumb, pointing, or showing. Never
//! "do you understand?", never a mark; nothing is written down unless the adult says so. Knows
//! nothing of the toolkit.

use crate::model::board::{Board, Step};
use crate::model::ids::StepRef;
use crate::model::record::Answered;

/// At most so many questions: it is a check, not an examination.
const MOST: usize = 3;
/// Pictures to point at.
const POINT_AT: usize = 3;

/// In which way a participant answers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Way {
    /// A thumb up, not sure, not good.
    #[default]
    Thumb,
    /// Pointing at one of three pictures.
    Point,
    /// The picture alone, to act out or show.
    Picture,
}

impl Way {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::Thumb, Self::Point, Self::Picture];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Thumb => "Thumb",
            Self::Point => "Pointing",
            Self::Picture => "Showing",
        }
    }
}

/// A question about one step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The step.
    pub about: usize,
    /// What is asked when pictures are pointed at.
    pub words: String,
    /// The steps to point at; the one in question is among them.
    pub point_at: Vec<usize>,
}

/// Questions on their way.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Asking {
    /// The way of answering.
    pub way: Way,
    /// The questions.
    pub questions: Vec<Question>,
    /// Which one; past the last it is asked whether to write the answers down.
    pub at: usize,
    /// What was answered, one for each question that was.
    pub answers: Vec<(StepRef, Answered)>,
    /// The step that was pointed at, until it goes on.
    pub pointed: Option<usize>,
}

impl Asking {
    /// Questions about a board.
    pub fn of(board: &Board) -> Self {
        Self {
            questions: questions(board),
            ..Self::default()
        }
    }

    /// The question that stands.
    pub fn now(&self) -> Option<&Question> {
        self.questions.get(self.at)
    }

    /// Another way of answering; the question stays, what was answered so far too.
    pub fn turn_to(&mut self, way: Way) {
        self.way = way;
        self.pointed = None;
    }

    /// Takes an answer and goes on.
    pub fn answer(&mut self, board: &Board, how: Answered) {
        if let Some(q) = self.now() {
            let at = board.steps[q.about].at;
            self.answers.retain(|(step, _)| *step != at);
            self.answers.push((at, how));
            self.on();
        }
    }

    /// A step is pointed at: it stays to be seen until it goes on.
    pub fn point(&mut self, step: usize) {
        if self.now().is_some_and(|q| q.point_at.contains(&step)) {
            self.pointed = Some(step);
        }
    }

    /// Goes on: past a picture that was pointed at, with what that says.
    pub fn on_from_pointing(&mut self, board: &Board) {
        let (Some(step), Some(about)) = (self.pointed, self.now().map(|q| q.about)) else {
            return;
        };
        self.answer(
            board,
            if step == about {
                Answered::Pointed
            } else {
                Answered::PointedElsewhere
            },
        );
    }

    /// Goes on without an answer.
    pub fn on(&mut self) {
        self.pointed = None;
        self.at = (self.at + 1).min(self.questions.len());
    }

    /// One back; false at the first.
    pub fn back(&mut self) -> bool {
        if self.pointed.take().is_some() {
            return true;
        }
        let some = self.at > 0;
        self.at = self.at.saturating_sub(1);
        some
    }
}

/// About the first step, the one in the middle, the last; each only once.
fn questions(board: &Board) -> Vec<Question> {
    let done: Vec<usize> = (0..board.steps.len())
        .filter(|i| board.steps[*i].state != crate::model::board::StepState::NotToday)
        .collect();
    let Some(last) = done.len().checked_sub(1) else {
        return Vec::new();
    };
    let mut places = vec![0, last / 2, last];
    places.dedup();
    places
        .into_iter()
        .take(MOST)
        .map(|place| {
            let about = done[place];
            Question {
                about,
                words: words(board, &done, place),
                point_at: point_at(&board.steps, &done, about),
            }
        })
        .collect()
}

fn words(board: &Board, done: &[usize], place: usize) -> String {
    match place {
        0 => "What comes first?".to_owned(),
        n if n + 1 == done.len() => "What comes last?".to_owned(),
        n => format!("What comes after {}?", board.steps[done[n - 1]].label),
    }
}

/// The step in question and others that look different, in the order of their words so that the
/// place says nothing.
fn point_at(steps: &[Step], done: &[usize], about: usize) -> Vec<usize> {
    let alike =
        |a: usize, b: usize| steps[a].symbol == steps[b].symbol || steps[a].label == steps[b].label;
    let mut others: Vec<usize> = Vec::new();
    for &i in done {
        if !alike(i, about) && others.iter().all(|o| !alike(i, *o)) {
            others.push(i);
        }
    }
    let n = others.len();
    let mut all = vec![about];
    all.extend(others.get(n / 3));
    all.extend(others.get(2 * n / 3).filter(|_| n > 1 && POINT_AT > 2));
    all.dedup();
    all.sort_by(|a, b| steps[*a].label.cmp(&steps[*b].label));
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::board::StepState;
    use crate::model::ids::{PartId, ParticipantId, SlotId, SymbolId};

    fn board(n: u32) -> Board {
        let step = |i: u32| {
            let at = StepRef::Slot(SlotId(i));
            Step::plain(
                at,
                SymbolId::new(&format!("s{i}")),
                format!("S{}", 9 - i),
                PartId(1),
            )
        };
        Board {
            participant: ParticipantId(1),
            steps: (0..n).map(step).collect(),
            left_out: Vec::new(),
            waiting: Vec::new(),
        }
    }

    #[test]
    fn first_middle_and_last_are_asked_about_each_once() {
        for (n, want) in [
            (0, vec![]),
            (1, vec![0]),
            (2, vec![0, 1]),
            (7, vec![0, 3, 6]),
        ] {
            let all: Vec<usize> = questions(&board(n)).iter().map(|q| q.about).collect();
            assert_eq!(all, want, "{n} steps");
        }
        let q = questions(&board(7));
        assert_eq!(q[1].words, "What comes after S7?");
        let mut off = board(7);
        off.steps[0].state = StepState::NotToday;
        assert_eq!(
            questions(&off)[0].about,
            1,
            "what is not today is not asked about"
        );
    }

    #[test]
    fn among_the_pictures_is_the_right_one_once_and_no_two_are_alike() {
        for n in 1..=9 {
            let board = board(n);
            for q in questions(&board) {
                let all = &q.point_at;
                assert_eq!(all.iter().filter(|i| **i == q.about).count(), 1);
                assert!(all.len() <= 3 && (n < 3 || all.len() == 3), "{n}: {all:?}");
                let mut sorted = all.clone();
                sorted.sort_by_key(|i| board.steps[*i].label.clone());
                assert_eq!(&sorted, all, "in the order of the words");
            }
        }
    }

    #[test]
    fn answers_are_kept_once_a_step_and_going_back_changes_them() {
        let board = board(5);
        let mut a = Asking::of(&board);
        a.answer(&board, Answered::ThumbUp);
        assert_eq!(a.at, 1);
        assert!(a.back());
        a.answer(&board, Answered::NotSure);
        assert_eq!(a.answers, [(board.steps[0].at, Answered::NotSure)]);
        a.turn_to(Way::Point);
        let right = a.now().expect("one").about;
        a.point(right);
        assert_eq!(a.pointed, Some(right));
        assert!(a.back(), "pointing is taken back first");
        a.point(right);
        a.on_from_pointing(&board);
        assert_eq!(a.answers[1].1, Answered::Pointed);
        let wrong = *a
            .now()
            .expect("one")
            .point_at
            .iter()
            .find(|i| **i != 4)
            .expect("another");
        a.point(wrong);
        a.on_from_pointing(&board);
        assert_eq!(a.answers[2].1, Answered::PointedElsewhere);
        assert_eq!(a.now(), None);
        a.on();
        a.answer(&board, Answered::Showed);
        assert_eq!(
            a.answers.len(),
            3,
            "after the last there is nothing to answer"
        );
        while a.back() {}
        assert_eq!(a.at, 0);
    }
}
