//! Removable tiles: one for each step of the board that is not a real thing, then the dry
//! replacements of what is in the water that are none either, the change tile and the pointers; then
//! a card for each choice.

use super::SheetKind;
use super::choice_card;
use super::desk::{Desk, Person};
use super::tile_face::TileSet;
use super::tile_sheet;
use crate::page::Page;

/// The sheets of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let set = TileSet::of(desk, person);
    let mut pages = tile_sheet::lay_out(desk, person, &set, set.tiles.clone(), SheetKind::Tiles);
    if !pages.is_empty() {
        pages.extend(choice_card::lay_out(desk, person, &set));
    }
    pages
}
