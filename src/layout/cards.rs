//! Always-there cards, not part of any order: help and stop first, break, toilet, quiet place,
//! finished.

use super::SheetKind;
use super::desk::{Desk, Person};
use super::tile_face::TileSet;
use super::tile_sheet;
use crate::page::Page;

/// The sheets of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let set = TileSet::of(desk, person);
    tile_sheet::lay_out(desk, person, &set, set.cards.clone(), SheetKind::Cards)
}
