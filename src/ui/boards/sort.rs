//! In which order the boards of the group are listed, and which of them: pure, from the club and
//! the boards alone.

use std::sync::Arc;

use crate::model::board::{Board, Step, StepState};
use crate::model::club::{Activity, Club};
use crate::model::conditions::{Condition, Known};
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::model::session::Session;

/// In which order.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Sort {
    /// As in People.
    #[default]
    List,
    /// By name.
    Name,
    /// Those that differ most from the timetable first.
    Differences,
    /// Those with open questions first.
    Questions,
}

impl Sort {
    /// All of them, for a list to choose from.
    pub const ALL: [Self; 4] = [Self::List, Self::Name, Self::Differences, Self::Questions];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::List => "In the order of People",
            Self::Name => "By name",
            Self::Differences => "Most differences first",
            Self::Questions => "Open questions first",
        }
    }
}

/// Which boards.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Filter {
    /// All.
    #[default]
    Everyone,
    /// Who goes into the water, as far as the board says.
    Water,
    /// Who has nothing on the board that is known to be a favourite.
    NoFavourite,
    /// Whom wind concerns: by what is done, or because wind is hard for them.
    Wind,
    /// Who has a choice.
    Choice,
    /// Who has open questions.
    Questions,
}

impl Filter {
    /// All of them, for a list to choose from.
    pub const ALL: [Self; 6] = [
        Self::Everyone,
        Self::Water,
        Self::NoFavourite,
        Self::Wind,
        Self::Choice,
        Self::Questions,
    ];

    /// As a plain question.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Everyone => "Everyone",
            Self::Water => "Who goes in the water?",
            Self::NoFavourite => "Who has no favourite?",
            Self::Wind => "Who is affected by wind?",
            Self::Choice => "Who has a choice?",
            Self::Questions => "Who has open questions?",
        }
    }

    /// What is said where nobody is left.
    pub const fn nobody(self) -> &'static str {
        match self {
            Self::Everyone => "Nobody comes to this session yet. Say who comes in Session.",
            Self::Water => "Nobody goes in the water, as the boards are now.",
            Self::NoFavourite => "Everyone has a favourite on the board.",
            Self::Wind => "Nobody is affected by wind, as far as is written down.",
            Self::Choice => "Nobody has a choice on the board.",
            Self::Questions => "No board has an open question.",
        }
    }
}

/// A participant, their board, and how many questions are open about it.
#[derive(Clone, Copy)]
pub struct Line<'a> {
    /// Who.
    pub person: &'a Participant,
    /// Their board.
    pub board: &'a Board,
    /// Changes by hand that lost what they were about.
    pub questions: usize,
}

/// The boards to list, in order.
pub fn lines<'a>(
    club: &'a Club,
    session: &Session,
    boards: &'a [(ParticipantId, Arc<Board>)],
    filter: Filter,
    sort: Sort,
) -> Vec<Line<'a>> {
    let line = |(who, board): &'a (ParticipantId, Arc<Board>)| {
        Some(Line {
            person: club.participant(*who)?,
            board,
            questions: session.questions(board),
        })
    };
    let mut found: Vec<Line<'a>> = boards
        .iter()
        .filter_map(line)
        .filter(|l| keeps(club, filter, l))
        .collect();
    match sort {
        Sort::List => {}
        Sort::Name => found.sort_by_cached_key(|l| l.person.name.to_lowercase()),
        Sort::Differences => {
            found.sort_by_key(|l| std::cmp::Reverse(l.board.differences() + l.questions));
        }
        Sort::Questions => found.sort_by_key(|l| std::cmp::Reverse(l.questions)),
    }
    found
}

/// Whether a filter keeps a board.
pub fn keeps(club: &Club, filter: Filter, line: &Line<'_>) -> bool {
    let board = line.board;
    match filter {
        Filter::Everyone => true,
        Filter::Water => any_activity(club, board, |a| a.in_water),
        Filter::NoFavourite => {
            let favourites = &line.person.profile.favourites;
            !board.activities().any(|id| favourites.contains(&id))
        }
        Filter::Wind => {
            let hard = line.person.profile.hard().for_owner();
            hard.contains_key(&Condition::Known(Known::Windy))
                || any_activity(club, board, |a| {
                    a.in_water || a.not_when.contains(&Known::Windy)
                })
        }
        Filter::Choice => board.done().any(|s| !s.options.is_empty()),
        Filter::Questions => line.questions > 0,
    }
}

fn any_activity(club: &Club, board: &Board, fits: impl Fn(&Activity) -> bool) -> bool {
    board
        .activities()
        .any(|id| club.activity(id).is_some_and(|a| fits(a)))
}

/// How a step differs, as the group's table says it: never by colour alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Differs {
    /// Not at all.
    No,
    /// Something else than in the timetable.
    Swapped,
    /// A step of their own.
    Own,
    /// Not done today.
    NotToday,
    /// Not done today by anyone.
    CalledOff,
    /// It comes instead of what is not today.
    Instead,
    /// Something can be chosen.
    Choice,
    /// It stands elsewhere.
    Moved,
    /// It has other words.
    OwnWords,
}

impl Differs {
    /// How a step differs; of several ways the one that says most.
    pub fn of(step: &Step) -> Self {
        use crate::model::board::By;
        match &step.state {
            StepState::NotToday if step.by == By::Timetable => Self::CalledOff,
            StepState::NotToday => Self::NotToday,
            _ if !step.options.is_empty() => Self::Choice,
            StepState::Instead { .. } => Self::Instead,
            StepState::Swapped { .. } => Self::Swapped,
            StepState::Own => Self::Own,
            StepState::AsTimetable if step.moved => Self::Moved,
            StepState::AsTimetable if step.relabelled => Self::OwnWords,
            StepState::AsTimetable => Self::No,
        }
    }

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::No => "as the timetable",
            Self::Swapped => "swapped",
            Self::Own => "own",
            Self::NotToday => "not today",
            Self::CalledOff => "called off",
            Self::Instead => "instead",
            Self::Choice => "choice",
            Self::Moved => "moved",
            Self::OwnWords => "own words",
        }
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use jiff::civil::date;

    use super::*;
    use crate::model::board::derive;
    use crate::model::edit::{BoardEdit, Edit, apply};
    use crate::model::hand::{Asked, Content};
    use crate::model::ids::{StepRef, SymbolId};
    use crate::workbench::Workbench;
    use crate::workbench::command::Command;

    fn demo() -> Club {
        let mut bench = Workbench::new(date(2027, 6, 10));
        drop(bench.handle(Command::Demo));
        bench.view().club.clone()
    }

    fn names(club: &Club, filter: Filter, sort: Sort) -> Vec<String> {
        let session = club.sessions.last().expect("a session").clone();
        let boards: Vec<_> = club
            .attending(&session)
            .map(|p| (p.id, Arc::new(derive(club, &session, p.id))))
            .collect();
        let found = lines(club, &session, &boards, filter, sort);
        found.iter().map(|l| l.person.name.clone()).collect()
    }

    fn edit(club: &Club, who: usize, make: impl Fn(&Board) -> BoardEdit) -> Club {
        let session = club.sessions.last().expect("a session");
        let who = club.attending(session).nth(who).expect("a participant").id;
        let edit = make(&derive(club, session, who));
        let all = Edit::Board(session.id, who, edit);
        apply(club, &all).expect("applies").0
    }

    #[test]
    fn by_name_ignores_capitals_and_keeps_everyone() {
        let club = demo();
        let all = names(&club, Filter::Everyone, Sort::List);
        let mut by_name = names(&club, Filter::Everyone, Sort::Name);
        assert!(by_name.is_sorted_by_key(|n| n.to_lowercase()));
        let mut sorted = all;
        sorted.sort();
        by_name.sort();
        assert_eq!(sorted, by_name);
    }

    #[test]
    fn most_differences_come_first_and_equal_ones_keep_their_order() {
        let mut club = demo();
        let all = names(&club, Filter::Everyone, Sort::List);
        for at in 0..6 {
            club = edit(&club, 5, |_| {
                BoardEdit::Insert(
                    Content {
                        activity: None,
                        symbol: SymbolId::new("drum"),
                        label: format!("Drum {at}"),
                    },
                    0,
                )
            });
        }
        let sorted = names(&club, Filter::Everyone, Sort::Differences);
        assert_eq!(sorted[0], all[5]);
        let questions = names(&club, Filter::Everyone, Sort::Questions);
        assert_eq!(questions, all, "no questions are open");
    }

    #[test]
    fn who_is_dry_today_is_not_among_those_in_the_water() {
        let club = demo();
        let before = names(&club, Filter::Water, Sort::List);
        let all = names(&club, Filter::Everyone, Sort::List);
        let who = all
            .iter()
            .position(|n| before.contains(n))
            .expect("someone goes into the water");
        let dry = edit(&club, who, |_| BoardEdit::Dry(None));
        let after = names(&dry, Filter::Water, Sort::List);
        // Names may be shared, so they are counted.
        assert_eq!(after.len() + 1, before.len());
    }

    #[test]
    fn wind_concerns_whom_it_is_hard_for_even_on_land() {
        let mut club = demo();
        let all = names(&club, Filter::Everyone, Sort::List);
        let mut person = club.participants[0].as_ref().clone();
        let at = all
            .iter()
            .position(|n| *n == person.name)
            .expect("they come");
        for activity in club.activities.clone() {
            let mut a = activity.as_ref().clone();
            a.in_water = false;
            a.not_when.clear();
            club = apply(&club, &Edit::ChangeActivity(a)).expect("applies").0;
        }
        person.profile.set_hard(BTreeMap::new());
        for p in club.participants.clone() {
            let mut p = p.as_ref().clone();
            p.profile.set_hard(BTreeMap::new());
            club = apply(&club, &Edit::ChangeParticipant(p))
                .expect("applies")
                .0;
        }
        assert!(names(&club, Filter::Wind, Sort::List).is_empty());
        let hard = [(Condition::Known(Known::Windy), String::new())];
        person.profile.set_hard(hard.into_iter().collect());
        club = apply(&club, &Edit::ChangeParticipant(person))
            .expect("applies")
            .0;
        assert_eq!(names(&club, Filter::Wind, Sort::List), [all[at].clone()]);
    }

    #[test]
    fn an_offered_favourite_counts_as_on_the_board() {
        let mut club = demo();
        let session = club.sessions.last().expect("a session").clone();
        let person = club.attending(&session).next().expect("someone").clone();
        let board = derive(&club, &session, person.id);
        let absent = club
            .activities
            .iter()
            .find(|a| !board.activities().any(|id| id == a.id))
            .expect("an activity that is not on the board")
            .clone();
        let mut changed = person.as_ref().clone();
        changed.profile.favourites = [absent.id].into_iter().collect();
        club = apply(&club, &Edit::ChangeParticipant(changed))
            .expect("applies")
            .0;
        assert!(names(&club, Filter::NoFavourite, Sort::List).contains(&person.name));
        let offered = edit(&club, 0, |b| {
            BoardEdit::Offer(b.steps[0].at, vec![Content::of(&absent)])
        });
        assert!(!names(&offered, Filter::NoFavourite, Sort::List).contains(&person.name));
        assert!(names(&offered, Filter::Choice, Sort::List).contains(&person.name));
    }

    #[test]
    fn an_open_question_is_found_and_comes_first() {
        let mut club = demo();
        let all = names(&club, Filter::Everyone, Sort::List);
        assert!(names(&club, Filter::Questions, Sort::List).is_empty());
        let at = club.sessions.len() - 1;
        let who = club
            .participants
            .iter()
            .find(|p| p.name == all[3])
            .expect("known")
            .id;
        let session = Arc::make_mut(&mut club.sessions[at]);
        let drum = Content {
            activity: None,
            symbol: SymbolId::new("drum"),
            label: "Drum".into(),
        };
        session
            .hand
            .entry(who)
            .or_default()
            .asked
            .push(Asked::RowGone {
                was: drum.clone(),
                shown: drum,
                options: Vec::new(),
                after: Vec::<StepRef>::new(),
            });
        assert_eq!(
            names(&club, Filter::Questions, Sort::List),
            [all[3].clone()]
        );
        assert_eq!(names(&club, Filter::Everyone, Sort::Questions)[0], all[3]);
    }

    #[test]
    fn what_is_called_off_for_all_says_so() {
        let club = demo();
        let session = club.sessions.last().expect("a session");
        let who = club.attending(session).next().expect("someone").id;
        let mut step = derive(&club, session, who).steps[0].clone();
        step.state = StepState::NotToday;
        step.by = crate::model::board::By::Timetable;
        assert_eq!(Differs::of(&step), Differs::CalledOff);
        step.by = crate::model::board::By::Hand;
        assert_eq!(Differs::of(&step), Differs::NotToday);
    }
}
