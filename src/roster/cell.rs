//! Cells that a spreadsheet would take for a formula. General guidance on such files (OWASP, "CSV
//! Injection"; from memory) is to put an apostrophe before them; so does [`defuse`], and [`restore`]
//! takes it away again, so that a table goes out and comes in unchanged.

use std::borrow::Cow;

/// Letters that begin a formula: as typed on any keyboard, and their wide forms, which some
/// spreadsheets read alike.
const BEGINS: [char; 10] = [
    '=', '+', '-', '@', '\t', '\r', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}',
];

/// Whether a formula begins here, or a cell that was defused already.
fn begins_formula(text: &str) -> bool {
    text.trim_start_matches('\'').starts_with(BEGINS)
}

/// The text as a spreadsheet may be given it.
pub fn defuse(text: &str) -> Cow<'_, str> {
    if begins_formula(text) {
        Cow::Owned(format!("'{text}"))
    } else {
        Cow::Borrowed(text)
    }
}

/// The text that was meant.
pub fn restore(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(text) if begins_formula(text) => text,
        _ => cell,
    }
}
