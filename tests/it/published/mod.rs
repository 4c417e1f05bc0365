//! Values published elsewhere and values of the trade, one file a source or a subject.

mod bcp47;
mod change;
mod contrast;
mod forms;
mod grid;
mod lengths;
mod packing;
mod season;
mod small_parts;
mod summer_time;
mod tiles;
mod told_apart;
mod uax14;
mod xheight;

use daystrand::layout::{InkChoice, Request, Sheet, SheetKind, Turn, lay_out};
use daystrand::model::club::Club;
use daystrand::page::dump::dump;

/// The sheets of one kind for all who come to the first session.
fn sheets(club: &Club, kind: SheetKind) -> Vec<Sheet> {
    let request = Request {
        session: club.sessions[0].id,
        participants: club.participants.iter().map(|p| p.id).collect(),
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
