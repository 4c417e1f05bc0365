//! The participants of a club as a table.

use csv::{Terminator, WriterBuilder};

use super::cell::defuse;
use super::column::Column;
use crate::model::club::Club;

/// A table that was written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// The bytes of the file.
    pub bytes: Vec<u8>,
    /// How many people are in it.
    pub people: usize,
    /// How many cells began like a formula and got an apostrophe before them.
    pub defused: usize,
}

/// Spreadsheets take a file for UTF-8 when it begins with this.
pub(super) const UTF8_SIGN: &str = "\u{feff}";

/// The participants of a club as rows of text: UTF-8, lines ended as RFC 4180 has it. What helpers
/// know is in it only when asked for; what is sealed never is.
pub fn write(club: &Club, for_helpers: bool) -> Written {
    let mut columns = Column::SETTINGS.to_vec();
    if for_helpers {
        columns.extend(Column::for_helpers());
    }
    let mut defused = 0;
    let mut rows = vec![columns.iter().map(|c| c.heading()).collect::<Vec<_>>()];
    for p in &club.participants {
        let cells = columns.iter().map(|c| {
            let text = c.text(club, p);
            let cell = defuse(&text);
            defused += usize::from(*cell != text);
            cell.into_owned()
        });
        rows.push(cells.collect());
    }
    Written {
        bytes: bytes(&rows),
        people: club.participants.len(),
        defused,
    }
}

fn bytes(rows: &[Vec<String>]) -> Vec<u8> {
    let mut out = WriterBuilder::new()
        .terminator(Terminator::CRLF)
        .from_writer(UTF8_SIGN.as_bytes().to_vec());
    // Memory takes every row, and all rows are as long as each other.
    let whole = rows.iter().all(|row| out.write_record(row).is_ok());
    debug_assert!(whole, "rows of one length");
    out.into_inner().unwrap_or_default()
}
