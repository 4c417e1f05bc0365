//! In which order the boards of the group are listed, and which of them: pure, from the club and
//! the boards alone.

use std::sync::Arc;

use crate::model::board::Board;
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
