//! A change practised: what if it is windy? What would follow is not guessed but worked out, with
//! the very edit the coordinator would make. Knows nothing of the toolkit.

use crate::model::board::{Board, Step, StepState, derive};
use crate::model::club::Club;
use crate::model::conditions::Known;
use crate::model::edit::{BoardEdit, Edit, apply};
use crate::model::hand::Content;
use crate::model::ids::StepRef;
use crate::model::session::Session;

/// Something that may change, and what follows for one step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WhatIf {
    /// What the day brings; none for a change of any kind.
    pub condition: Option<Known>,
    /// The step as it is.
    pub was: Step,
    /// What comes instead, if something does.
    pub instead: Option<Step>,
}

/// A change as it is practised: asked, then the step not today, then what comes instead.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Practise {
    /// All that can be practised on this board.
    pub all: Vec<WhatIf>,
    /// Which of them.
    pub at: usize,
    /// How far it is shown.
    pub stage: Stage,
}

/// How far a change is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// The question.
    Asked,
    /// The step is turned over, and the change tile lies beside it.
    Off,
    /// What comes instead.
    Instead,
}

impl Practise {
    /// What can be practised on a board; none where nothing on it changes with the day.
    pub fn of(club: &Club, session: &Session, board: &Board) -> Option<Self> {
        let all = what_ifs(club, session, board);
        (!all.is_empty()).then_some(Self {
            all,
            at: 0,
            stage: Stage::Asked,
        })
    }

    /// The one that is practised.
    pub fn now(&self) -> Option<&WhatIf> {
        self.all.get(self.at)
    }

    /// On to the next picture; false when it was the last of this change.
    pub fn on(&mut self) -> bool {
        self.stage = match self.stage {
            Stage::Asked => Stage::Off,
            Stage::Off if self.now().is_some_and(|w| w.instead.is_some()) => Stage::Instead,
            Stage::Off | Stage::Instead => return false,
        };
        true
    }

    /// The picture before; false when it was the first.
    pub fn back(&mut self) -> bool {
        self.stage = match self.stage {
            Stage::Asked => return false,
            Stage::Off => Stage::Asked,
            Stage::Instead => Stage::Off,
        };
        true
    }

    /// Another change.
    pub fn another(&mut self) {
        self.at = (self.at + 1) % self.all.len().max(1);
        self.stage = Stage::Asked;
    }
}

impl WhatIf {
    /// What is asked: "What if it is windy?"
    pub fn question(&self) -> String {
        use Known as K;
        let words = match self.condition {
            None => return "What if something changes?".to_owned(),
            Some(K::Windy) => "it is windy",
            Some(K::BigWaves) => "there are big waves",
            Some(K::Seaweed) => "there is seaweed",
            Some(K::Stingers) => "there are stingers",
            Some(K::Hot) => "it is hot",
            Some(K::Bright) => "the light is bright",
            Some(K::HotSand) => "the sand is hot",
            Some(K::Cold) => "it is cold",
            Some(K::Rain) => "it rains",
            Some(K::Thunder) => "there is thunder",
            Some(K::Loud) => "it is loud",
            Some(K::Crowded) => "it is crowded",
        };
        format!("What if {words}?")
    }
}

/// One for each condition that the club says some step is not done in, and one of any kind for a
/// step with a replacement ready where no condition is named.
fn what_ifs(club: &Club, session: &Session, board: &Board) -> Vec<WhatIf> {
    let rows: Vec<&Step> = board
        .done()
        .filter(|s| matches!(s.at, StepRef::Slot(_)) && s.activity.is_some())
        .collect();
    let mut all = Vec::new();
    for known in Known::ALL {
        let hit = rows.iter().find(|s| {
            let a = s.activity.and_then(|id| club.activity(id));
            a.is_some_and(|a| a.not_when.contains(&known))
        });
        all.extend(hit.and_then(|s| follows(club, session, board, s, Some(known))));
    }
    if all.is_empty() {
        let ready = rows.iter().find(|s| dry(club, s).is_some());
        all.extend(ready.and_then(|s| follows(club, session, board, s, None)));
    }
    all
}

fn dry(club: &Club, step: &Step) -> Option<Content> {
    let activity = club.activity(step.activity?)?;
    let dry = club.activity(activity.dry_replacement?)?;
    Some(Content::of(dry))
}

/// What the board would be if this step were not today.
fn follows(
    club: &Club,
    session: &Session,
    board: &Board,
    step: &Step,
    condition: Option<Known>,
) -> Option<WhatIf> {
    let edit = BoardEdit::NotToday(step.at, dry(club, step));
    let (then, _) = apply(club, &Edit::Board(session.id, board.participant, edit)).ok()?;
    let changed = derive(&then, then.session(session.id)?, board.participant);
    let instead = super::walk::instead(&changed, changed.position(step.at)?);
    Some(WhatIf {
        condition,
        was: step.clone(),
        instead: instead.map(|i| changed.steps[i].clone()),
    })
    .filter(|w| w.was.state != StepState::NotToday)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::workbench::demo;

    fn boards(check: impl Fn(&Club, &Session, &Board)) {
        let club = demo::club();
        for session in &club.sessions {
            for p in club.attending(session) {
                check(&club, session, &derive(&club, session, p.id));
            }
        }
    }

    #[test]
    fn the_demo_has_changes_to_practise_and_the_club_stays_as_it_is() {
        let before = demo::club();
        let mut with_replacement = 0;
        boards(|club, session, board| {
            for w in what_ifs(club, session, board) {
                assert!(board.position(w.was.at).is_some());
                if let Some(known) = w.condition {
                    let a = club.activity(w.was.activity.expect("one")).expect("known");
                    assert!(a.not_when.contains(&known), "{}", w.question());
                }
                if let Some(instead) = &w.instead {
                    assert!(matches!(instead.state, StepState::Instead { .. }));
                }
            }
            assert_eq!(club, &before);
        });
        boards_count(&mut with_replacement);
        assert!(with_replacement > 3, "{with_replacement}");
    }

    fn boards_count(n: &mut usize) {
        let club = demo::club();
        for session in &club.sessions {
            for p in club.attending(session) {
                let board = derive(&club, session, p.id);
                let all = what_ifs(&club, session, &board);
                *n += all.iter().filter(|w| w.instead.is_some()).count();
            }
        }
    }

    #[test]
    fn it_goes_from_the_question_to_what_comes_instead_and_back() {
        let club = demo::club();
        let session = &club.sessions[0];
        let who = club.attending(session).next().expect("someone").id;
        let board = derive(&club, session, who);
        let mut p = Practise::of(&club, session, &board).expect("a change");
        assert_eq!(p.stage, Stage::Asked);
        assert!(p.on() && p.stage == Stage::Off);
        let more = p.now().is_some_and(|w| w.instead.is_some());
        assert_eq!(p.on(), more);
        assert!(!p.on(), "then the day goes on");
        while p.back() {}
        assert_eq!(p.stage, Stage::Asked);
        let n = p.all.len();
        for _ in 0..n {
            p.another();
        }
        assert_eq!(p.at, 0);
    }

    #[test]
    fn every_condition_makes_a_question() {
        let step = Step::plain(
            StepRef::Own(crate::model::ids::OwnId(1)),
            crate::model::ids::SymbolId::new("dig"),
            "Dig".into(),
            crate::model::ids::PartId(1),
        );
        for condition in Known::ALL.map(Some).into_iter().chain([None]) {
            let w = WhatIf {
                condition,
                was: step.clone(),
                instead: None,
            };
            let q = w.question();
            assert!(q.starts_with("What if ") && q.ends_with('?'), "{q}");
        }
    }
}
