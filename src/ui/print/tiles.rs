//! Shape and side of the tiles of those who are chosen, all at once.

use egui::{Id, Ui};

use super::kinds::small_heading;
use super::whom;
use crate::model::craft::TileShape;
use crate::model::edit::Edit;
use crate::model::people::Participant;
use crate::ui::desk::Desk;
use crate::ui::widgets::choose::select;
use crate::ui::widgets::steps::{Millimetres, Steps, in_mm, millimetres};
use crate::ui::widgets::words;
use crate::units::Length;

/// Stands for values that are not the same for all.
const DIFFER: &str = "as each has";

/// Shows the block.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>) {
    let chosen = whom::chosen(desk.view, desk.view.print);
    let people: Vec<&Participant> = chosen
        .iter()
        .filter_map(|id| desk.view.club.participant(*id))
        .map(AsRef::as_ref)
        .collect();
    if people.is_empty() {
        return;
    }
    let shape = same(people.iter().map(|p| p.shape));
    let side = same(people.iter().map(|p| p.tile));
    small_heading(ui, "Their tiles");
    let options = TileShape::ALL.map(|s| s.label().to_owned());
    let at = shape.and_then(|s| TileShape::ALL.iter().position(|x| *x == s));
    let id = Id::unique("print-tile-shape");
    let label = if at.is_some() {
        "Shape of the tiles"
    } else {
        "Shape: as each has"
    };
    let width = ui.available_width();
    if let Some(i) = select(ui, id, label, &options, at, width) {
        set(desk, &people, |p| (TileShape::ALL[i], p.tile));
    }
    match shape.filter(|s| !s.has_side()) {
        Some(shape) => {
            let size = shape.size(Length::ZERO);
            let words = format!("{} × {}, printed", in_mm(size.w), in_mm(size.h));
            words::soft(ui, &words);
        }
        None => {
            if let Some(side) = sides(ui, desk, side) {
                set(desk, &people, |p| (p.shape, side));
            }
        }
    }
}

fn sides(ui: &mut Ui, desk: &mut Desk<'_>, side: Option<Length>) -> Option<Length> {
    let s = Steps {
        id: Id::unique("print-tile-side"),
        label: "Side of the tiles",
        unit: "mm",
        range: 300..=1200,
        step: 50,
    };
    let mm = Millimetres {
        value: side,
        none: DIFFER,
        first: desk.view.club.rules.tile,
        width: ui.available_width().min(260.0),
    };
    millimetres(ui, desk.drafts, &s, &mm)
}

/// What all of them have, if it is the same.
fn same<T: PartialEq>(mut all: impl Iterator<Item = T>) -> Option<T> {
    let first = all.next()?;
    all.all(|x| x == first).then_some(first)
}

/// Sets the tiles of all; those for whom it comes to the same in one edit.
fn set(
    desk: &mut Desk<'_>,
    people: &[&Participant],
    wanted: impl Fn(&Participant) -> (TileShape, Length),
) {
    let mut groups: Vec<((TileShape, Length), Vec<_>)> = Vec::new();
    for p in people {
        let to = wanted(p);
        match groups.iter_mut().find(|(g, _)| *g == to) {
            Some((_, who)) => who.push(p.id),
            None => groups.push((to, vec![p.id])),
        }
    }
    for ((shape, side), who) in groups {
        desk.edit(Edit::TileSizes(who, shape, side));
    }
}
