//! From a club and what is wanted on paper to finished pages and what was found on the way.
//!
//! Layout cannot fail: what does not fit spills to a further page or becomes a finding. It decides
//! which class of readers a page is for, and a page is built through a writer of that class, so
//! that something more closed cannot get on it.

mod balance;
mod base_board;
mod base_finish;
mod base_place;
mod cards;
mod change_sheet;
mod choice_card;
pub mod contact;
mod desk;
mod fit;
mod flow;
mod forms;
mod frame;
pub mod grid;
mod group_card;
mod group_wall;
mod helper_card;
mod helper_in;
mod helper_out;
pub mod ink;
mod large_across;
mod large_down;
mod large_frames;
mod large_line;
mod large_plan;
mod large_print;
mod large_step;
mod large_words;
mod of_today;
pub mod plan_code;
mod ready;
mod roll_sheet;
mod roll_table;
mod session_people;
mod session_sheet;
mod session_table;
mod shapes;
mod story;
mod strand;
mod strips;
mod tile_face;
mod tile_sheet;
mod tiles;
mod words;
mod words_sheet;
pub mod writer;

use crate::model::club::{Club, Paper};
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, SessionId};
use crate::page::Page;
use desk::{Desk, Person};

/// A kind of sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SheetKind {
    /// One participant's whole board in large print.
    LargePrint,
    /// Removable tiles, true to size.
    Tiles,
    /// Where the tiles are laid, with a finished place.
    BaseBoard,
    /// Help, stop, break, toilet, quiet place, finished.
    Cards,
    /// The story to go through before the day.
    Story,
    /// The group's timetable as large cards for the circle.
    GroupWall,
    /// What one participant's helper needs to know.
    HelperCard,
    /// The club's songs and chants in large print, for families.
    Words,
    /// Timetable with times, for the coordinator.
    SessionSheet,
    /// What is called off and all that follows, for the coordinator; only when something is.
    ChangeSheet,
    /// Who is here, and how many, for the coordinator.
    Roll,
}

impl SheetKind {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 11] = [
        Self::LargePrint,
        Self::Tiles,
        Self::BaseBoard,
        Self::Cards,
        Self::Story,
        Self::GroupWall,
        Self::HelperCard,
        Self::Words,
        Self::SessionSheet,
        Self::ChangeSheet,
        Self::Roll,
    ];

    /// As shown to people.
    pub const fn label(self) -> &'static str {
        match self {
            Self::LargePrint => "Large-print board",
            Self::Tiles => "Tiles",
            Self::BaseBoard => "Base board",
            Self::Cards => "Always-there cards",
            Self::Story => "Story",
            Self::GroupWall => "Group wall",
            Self::HelperCard => "Helper card",
            Self::Words => "Words sheet",
            Self::SessionSheet => "Session sheet",
            Self::ChangeSheet => "Change sheet",
            Self::Roll => "Roll sheet",
        }
    }

    /// As typed on a command line and used in file names.
    pub const fn word(self) -> &'static str {
        match self {
            Self::LargePrint => "large-print",
            Self::Tiles => "tiles",
            Self::BaseBoard => "base-board",
            Self::Cards => "cards",
            Self::Story => "story",
            Self::GroupWall => "group-wall",
            Self::HelperCard => "helper-card",
            Self::Words => "words",
            Self::SessionSheet => "session",
            Self::ChangeSheet => "changes",
            Self::Roll => "roll",
        }
    }

    /// Whether there is one for each participant, or one for the whole session or the club.
    pub const fn is_personal(self) -> bool {
        !matches!(
            self,
            Self::GroupWall | Self::Words | Self::SessionSheet | Self::ChangeSheet | Self::Roll
        )
    }
}

/// Which way up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Turn {
    /// As suits the sheet.
    #[default]
    AsSuits,
    /// Higher than wide.
    Portrait,
    /// Wider than high.
    Landscape,
}

/// How the pictures are inked.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum InkChoice {
    /// Full colour.
    #[default]
    Colour,
    /// Greys of the same luminance.
    Grey,
    /// White inside, lines only: to colour in.
    Outline,
}

/// What is wanted on paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Request {
    /// For which session.
    pub session: SessionId,
    /// For whom, in this order. Who is away or unknown is passed over.
    pub participants: Vec<ParticipantId>,
    /// Which sheets.
    pub kinds: Vec<SheetKind>,
    /// On which paper.
    pub paper: Paper,
    /// Which way up, where the sheet leaves a choice.
    pub turn: Turn,
    /// How pictures are inked.
    pub ink: InkChoice,
}

/// All pages of one kind for one participant, or for the session.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// The kind.
    pub kind: SheetKind,
    /// Whose, for personal sheets.
    pub participant: Option<ParticipantId>,
    /// Name of the file without ending: marks and dates, never names.
    pub file_stem: String,
    /// Title of the document.
    pub title: String,
    /// The pages.
    pub pages: Vec<Page>,
}

/// What layout gives.
#[derive(Clone, Debug, Default)]
pub struct Laid {
    /// The sheets, by kind and then by participant.
    pub sheets: Vec<Sheet>,
    /// What should be looked at.
    pub findings: Vec<Finding>,
}

/// Lays out what is wanted. Pure: the same club and request give the same pages.
pub fn lay_out(club: &Club, request: &Request) -> Laid {
    let Some(session) = club.session(request.session) else {
        return Laid::default();
    };
    let mut desk = Desk::new(club, session, request);
    let people = desk.people();
    let mut sheets = Vec::new();
    let mut done = Vec::new();
    for &kind in &request.kinds {
        if done.contains(&kind) {
            continue;
        }
        done.push(kind);
        match kind {
            SheetKind::GroupWall => sheets.push(group_wall::lay_out(&mut desk)),
            SheetKind::Words => sheets.push(words_sheet::lay_out(&mut desk)),
            SheetKind::SessionSheet => sheets.push(session_sheet::lay_out(&mut desk)),
            SheetKind::ChangeSheet => sheets.push(change_sheet::lay_out(&mut desk)),
            SheetKind::Roll => sheets.push(roll_sheet::lay_out(&mut desk)),
            _ => sheets.extend(people.iter().map(|p| personal(&mut desk, kind, p))),
        }
    }
    sheets.retain(|s| !s.pages.is_empty());
    Laid {
        sheets,
        findings: desk.into_findings(),
    }
}

fn personal(desk: &mut Desk<'_>, kind: SheetKind, person: &Person<'_>) -> Sheet {
    let pages = match kind {
        SheetKind::LargePrint => large_print::lay_out(desk, person),
        SheetKind::Tiles => tiles::lay_out(desk, person),
        SheetKind::BaseBoard => base_board::lay_out(desk, person),
        SheetKind::Cards => cards::lay_out(desk, person),
        SheetKind::Story => story::lay_out(desk, person),
        SheetKind::HelperCard => helper_card::lay_out(desk, person),
        SheetKind::GroupWall
        | SheetKind::Words
        | SheetKind::SessionSheet
        | SheetKind::ChangeSheet
        | SheetKind::Roll => Vec::new(),
    };
    Sheet {
        kind,
        participant: Some(person.who.id),
        file_stem: desk.file_stem(kind, Some(person)),
        title: format!("{}, {}", kind.label(), person.mark_words),
        pages,
    }
}
