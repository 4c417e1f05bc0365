//! From a club and what is wanted on paper to finished pages and what was found on the way.
//!
//! Layout cannot fail: what does not fit spills to a further page or becomes a finding. It decides
//! which class of readers a page is for, and a page is built through a writer of that class, so
//! that something more closed cannot get on it.

mod balance;
mod base_board;
mod base_finish;
mod base_place;
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
mod guides;
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
mod making;
mod of_today;
pub mod packing;
pub mod plan_code;
mod ready;
mod roll_sheet;
mod roll_table;
mod session_people;
mod session_sheet;
mod session_table;
mod shapes;
mod sizes;
mod story;
mod strand;
mod strips;
mod tile_face;
mod words;
mod words_sheet;
pub mod writer;

use crate::model::club::{Club, Paper};
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, SessionId};
use crate::page::Page;
use desk::{Desk, Person};
use making::Making;
pub use making::counts::Counts;

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
    /// How much there is to print and to make, and what to do step by step.
    PrintRun,
    /// Every sheet of tiles and every pouch with its cuts numbered.
    CutList,
    /// What lies under an open pouch while it is filled, true to size.
    PouchGuide,
    /// Which tiles and things go into whose pouch.
    PackList,
    /// Labels for the pouches and the shared box.
    Labels,
    /// A page that tests the printer.
    TestPage,
}

impl SheetKind {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 17] = [
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
        Self::PrintRun,
        Self::CutList,
        Self::PouchGuide,
        Self::PackList,
        Self::Labels,
        Self::TestPage,
    ];

    /// Those that an evening usually takes: all but the page that tests the printer.
    pub fn usual() -> Vec<Self> {
        let usual = Self::ALL.into_iter().filter(|k| *k != Self::TestPage);
        usual.collect()
    }

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
            Self::PrintRun => "Print run",
            Self::CutList => "Cut list",
            Self::PouchGuide => "Pouch guide",
            Self::PackList => "Pack list",
            Self::Labels => "Storage labels",
            Self::TestPage => "Printer test page",
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
            Self::PrintRun => "print-run",
            Self::CutList => "cut-list",
            Self::PouchGuide => "pouch-guide",
            Self::PackList => "pack-list",
            Self::Labels => "labels",
            Self::TestPage => "test-page",
        }
    }

    /// Whether it is for participants who are chosen, each or together; the others are for the whole
    /// session or the club.
    pub const fn is_personal(self) -> bool {
        !matches!(
            self,
            Self::GroupWall
                | Self::Words
                | Self::SessionSheet
                | Self::ChangeSheet
                | Self::Roll
                | Self::TestPage
        )
    }

    /// Whether it shows tiles, or how they are made.
    const fn is_of_making(self) -> bool {
        matches!(
            self,
            Self::Tiles
                | Self::Cards
                | Self::PrintRun
                | Self::CutList
                | Self::PouchGuide
                | Self::PackList
                | Self::Labels
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
    /// Whether tiles and cards that are in stock are left out.
    pub only_missing: bool,
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
    /// How much making the tiles is, where tiles are wanted.
    pub counts: Option<Counts>,
}

/// Lays out what is wanted. Pure: the same club and request give the same pages.
pub fn lay_out(club: &Club, request: &Request) -> Laid {
    let Some(session) = club.session(request.session) else {
        return Laid::default();
    };
    let mut desk = Desk::new(club, session, request);
    let people = desk.people();
    let making = making(&mut desk, &people);
    let mut kinds = request.kinds.clone();
    kinds.dedup();
    let mut sheets = Vec::new();
    let mut done = Vec::new();
    // The print run counts all other sheets.
    let last = |k: &SheetKind| *k == SheetKind::PrintRun;
    kinds.sort_by_key(last);
    for kind in kinds {
        if done.contains(&kind) {
            continue;
        }
        done.push(kind);
        match &making {
            Some(making) if kind.is_of_making() => {
                sheets.extend(of_making(&mut desk, kind, &people, making, &sheets));
            }
            _ => sheets.extend(of_kind(&mut desk, kind, &people)),
        }
    }
    sheets.retain(|s: &Sheet| !s.pages.is_empty());
    let place = |s: &Sheet| request.kinds.iter().position(|k| *k == s.kind);
    sheets.sort_by_key(place);
    Laid {
        sheets,
        counts: making.map(|m| Counts::of(&m, &club.rules)),
        findings: desk.into_findings(),
    }
}

/// What should be looked at when large print and tiles are laid out, without laying tiles on sheets.
pub fn look(club: &Club, request: &Request) -> Vec<Finding> {
    let Some(session) = club.session(request.session) else {
        return Vec::new();
    };
    let mut desk = Desk::new(club, session, request);
    for person in desk.people() {
        large_print::lay_out(&mut desk, &person);
    }
    let people = desk.people();
    Making::look(&mut desk, &people);
    desk.into_findings()
}

/// The tiles of those who are chosen, where any sheet needs them: of the board, cards, or both.
fn making(desk: &mut Desk<'_>, people: &[Person<'_>]) -> Option<Making> {
    let kinds = &desk.request.kinds;
    if people.is_empty() || !kinds.iter().any(|k| k.is_of_making()) {
        return None;
    }
    let (tiles, cards) = (
        kinds.contains(&SheetKind::Tiles),
        kinds.contains(&SheetKind::Cards),
    );
    let wanted = if tiles || cards {
        (tiles, cards)
    } else {
        (true, true)
    };
    Some(Making::of(desk, people, wanted))
}

/// A sheet of tiles or about them. Tiles and cards lie on common sheets where both are wanted.
fn of_making(
    desk: &mut Desk<'_>,
    kind: SheetKind,
    people: &[Person<'_>],
    making: &Making,
    others: &[Sheet],
) -> Option<Sheet> {
    let both = desk.request.kinds.contains(&SheetKind::Tiles);
    match kind {
        SheetKind::Cards if both => None,
        SheetKind::Tiles | SheetKind::Cards => Some(making.tile_sheet(desk, people, kind)),
        SheetKind::PrintRun => Some(guides::print_run::lay_out(desk, people, making, others)),
        SheetKind::CutList => Some(guides::cut_list::lay_out(desk, people, making)),
        SheetKind::PouchGuide => Some(guides::pouch_guide::lay_out(desk, people, making)),
        SheetKind::PackList => Some(guides::pack_list::lay_out(desk, people, making)),
        SheetKind::Labels => Some(guides::labels::lay_out(desk, people, making)),
        _ => None,
    }
}

/// A sheet for the session, or one for each of the people.
fn of_kind(desk: &mut Desk<'_>, kind: SheetKind, people: &[Person<'_>]) -> Vec<Sheet> {
    match kind {
        SheetKind::GroupWall => vec![group_wall::lay_out(desk)],
        SheetKind::Words => vec![words_sheet::lay_out(desk)],
        SheetKind::SessionSheet => vec![session_sheet::lay_out(desk)],
        SheetKind::Roll => vec![roll_sheet::lay_out(desk)],
        SheetKind::ChangeSheet => vec![change_sheet::lay_out(desk)],
        SheetKind::TestPage => vec![guides::test_page::lay_out(desk)],
        _ => people
            .iter()
            .filter_map(|p| personal(desk, kind, p))
            .collect(),
    }
}

fn personal(desk: &mut Desk<'_>, kind: SheetKind, person: &Person<'_>) -> Option<Sheet> {
    let pages = match kind {
        SheetKind::LargePrint => large_print::lay_out(desk, person),
        SheetKind::BaseBoard => base_board::lay_out(desk, person),
        SheetKind::Story => story::lay_out(desk, person),
        SheetKind::HelperCard => helper_card::lay_out(desk, person),
        _ => return None,
    };
    Some(Sheet {
        kind,
        participant: Some(person.who.id),
        file_stem: desk.file_stem(kind, Some(person)),
        title: format!("{}, {}", kind.label(), person.mark_words),
        pages,
    })
}
