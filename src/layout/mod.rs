//! From a club and what is wanted on paper to finished pages and what was found on the way.
//!
//! Layout cannot fail: what does not fit spills to a further page or becomes a finding. It decides
//! which class of readers a page is for, and a page is built through a writer of that class, so
//! that something more closed cannot get on it.

mod apart;
mod balance;
mod base_board;
mod base_finish;
mod base_place;
pub mod booklet;
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
mod group_turns;
mod group_wall;
mod guides;
mod helper_card;
mod helper_in;
mod helper_out;
mod helper_water;
pub mod ink;
mod kind;
mod large_across;
mod large_down;
mod large_frames;
mod large_line;
mod large_plan;
mod large_print;
mod large_step;
mod large_words;
mod look_list;
mod look_words;
mod making;
mod of_today;
pub mod packing;
mod picture_list;
pub mod plan_code;
mod ready;
mod roll_sheet;
mod roll_table;
mod session_checks;
mod session_facts;
mod session_people;
mod session_sheet;
mod session_table;
mod session_water;
mod shapes;
mod sizes;
mod story;
mod story_page;
mod strand;
mod strips;
mod tile_face;
mod today_slip;
pub mod told;
mod words;
mod words_sheet;
pub mod writer;

use crate::model::club::{Club, Paper};
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, SessionId};
use crate::page::Page;
use desk::{Desk, Person};
pub use kind::SheetKind;
use making::Making;
pub use making::counts::Counts;

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
    for finding in apart::keep_apart(club, session.id, &mut sheets) {
        desk.add(finding);
    }
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
    let people = desk.people();
    for person in &people {
        large_print::lay_out(&mut desk, person);
    }
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
        SheetKind::LookList => vec![look_list::lay_out(desk)],
        SheetKind::TodaySlip => vec![today_slip::lay_out(desk, people)],
        SheetKind::ChangeSheet => vec![change_sheet::lay_out(desk)],
        SheetKind::PictureList => vec![picture_list::lay_out(desk)],
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
        SheetKind::Booklet => booklet::lay_out(desk, person),
        SheetKind::StoryPage => story_page::lay_out(desk, person),
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
