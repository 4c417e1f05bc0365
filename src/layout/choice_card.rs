//! Cards of several faces, each as large as a tile: a question and two or three things to choose from, or
//! that it is waited and what to do. The card is laminated in one piece.

use super::desk::{Desk, Person};
use super::ink;
use super::shapes::{Look, rounded};
use super::tile_face::{TileSet, corner_radius};
use super::writer::{Everyone, PageWriter};
use crate::units::{Length, Rect};

/// The place of the `k`-th face of a card with so many faces side by side.
pub(super) fn cell(set: &TileSet, columns: usize, k: usize, at: Rect) -> Rect {
    let columns = columns.max(1);
    let (x, y) = (
        set.size.w * (k % columns) as i64,
        set.size.h * (k / columns) as i64,
    );
    Rect::new(at.origin().moved(x, y), set.size)
}

/// Draws a card: the question on its ground, the options each in a frame.
pub(super) fn draw(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    set: &TileSet,
    (choice, columns): (usize, usize),
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let faces = set.several[choice].faces.clone();
    let radius = corner_radius(set.size.w.min(set.size.h));
    let edge = Look::line(ink::RULE, ink::HAIRLINE).on(ink::PAPER);
    let mut items = vec![rounded(at, radius, edge)];
    let inset = Length::mm(1.6);
    for k in 0..faces.len() {
        let look = match k {
            0 => Look::filled(ink::SEAL),
            _ => Look::line(ink::SEAL_EDGE, ink::THIN),
        };
        items.push(rounded(
            cell(set, columns, k, at).shrink(inset),
            radius,
            look,
        ));
    }
    page.artifact(items);
    for (k, face) in faces.enumerate() {
        let place = cell(set, columns, k, at).shrink(inset);
        set.draw_inside(desk, person, face, place, page);
    }
}
