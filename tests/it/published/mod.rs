//! Values published elsewhere and values of the trade, one file a source or a subject.

mod assignment;
mod awards;
mod bcp47;
mod beaufort;
mod change;
mod colour_spaces;
mod contrast;
mod countdown;
mod forms;
mod grid;
mod lengths;
mod making;
mod orientation;
mod packing;
mod rotation;
mod season;
mod small_parts;
mod summer_time;
mod svg_reader;
mod tiles;
mod told_apart;
mod uax14;
mod uv_index;
mod watchers;
mod xheight;

use daystrand::layout::{InkChoice, Request, Sheet, SheetKind, Turn, lay_out};
use daystrand::model::club::Club;
use daystrand::model::ids::ParticipantId;
use daystrand::page::dump::dump;

/// The sheets of one kind for all who come to the first session.
fn sheets(club: &Club, kind: SheetKind) -> Vec<Sheet> {
    let all: Vec<_> = club.participants.iter().map(|p| p.id).collect();
    // Tiles of several lie on common sheets; here each has sheets of their own.
    if matches!(kind, SheetKind::Tiles | SheetKind::Cards) {
        let each = all.iter().flat_map(|who| sheets_of(club, kind, vec![*who]));
        return each.collect();
    }
    sheets_of(club, kind, all)
}

/// The sheets of one kind for some, in the first session.
fn sheets_of(club: &Club, kind: SheetKind, participants: Vec<ParticipantId>) -> Vec<Sheet> {
    let request = Request {
        session: club.sessions[0].id,
        participants,
        kinds: vec![kind],
        paper: club.rules.paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    lay_out(club, &request).sheets
}

/// All they say, in reading order.
fn words(club: &Club, kind: SheetKind) -> String {
    let sheets = sheets(club, kind);
    sheets.iter().flat_map(|s| &s.pages).map(dump).collect()
}
