//! Participants as rows of a table, to fill in or hand on with any spreadsheet: text of RFC 4180
//! (Y. Shafranovich, October 2005), out and in.
//!
//! Only what fits in a cell is in it: name, mark and the settings of the board, and, only when
//! asked for, what helpers know. What is sealed is never written and never taken in.
//!
//! Reading order: `column` (what stands in a row and how it is said), `cell` (nothing in it may run
//! as a formula), `write`, `read`.

pub mod cell;
mod column;
mod read;
mod write;

pub use column::Column;
pub use read::{Read, Skipped, read};
pub use write::{Written, write};
