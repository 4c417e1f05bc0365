//! How the club makes its tiles: film, cutting, backs, fasteners, spares.

use egui::{Id, Ui};

use crate::model::club::{Paper, Rules};
use crate::model::craft::{Craft, Cutting, Flip, Half, Sorting, Work};
use crate::model::edit::Edit;
use crate::plan::seal;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::{segments_here, tick};
use crate::ui::widgets::field::Drafts;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::steps::{Millimetres, Steps, in_mm, millimetres, stepper};
use crate::ui::widgets::words;
use crate::units::Length;

/// A hole for a ring, as office punches make it: between 5 and 6 mm. Common practice.
const HOLE: Length = Length::um(5_500);
/// Width of a block with a number.
const NUMBER: f32 = 200.0;

/// Shows the part.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>) {
    let now = &desk.view.club.rules;
    let mut next = now.clone();
    words::heading(ui, "How tiles are made", 20.0);
    words::soft(
        ui,
        "The first values are common practice: a clear edge of 4 mm all round, at least 3.2 mm as \
         makers of film ask, and 5 mm where tiles get into sea water.",
    );
    row(ui, |ui| film(ui, desk.drafts, &mut next));
    row(ui, |ui| sheets(ui, &mut next.craft));
    row(ui, |ui| fasteners(ui, desk.drafts, &mut next.craft));
    row(ui, |ui| numbers(ui, desk.drafts, &mut next.craft));
    if let Some(says) = corner(now) {
        words::soft(ui, &says);
    }
    let craft = &mut next.craft;
    let mut switch = |name: &str, on: &mut bool| {
        if tick(ui, Id::unique(("craft", name.to_owned())), *on, name, "").clicked() {
            *on = !*on;
        }
    };
    switch("Tiles get into sea water", &mut craft.sea_water);
    switch("Spares of what everyone uses", &mut craft.spares);
    switch("Each size on sheets of its own", &mut craft.sizes_apart);
    let mut ring = craft.ring.is_some();
    switch("Cards hang on a ring, by a tab of clear film", &mut ring);
    craft.ring = ring.then(|| craft.ring.unwrap_or(HOLE));
    if next != *now {
        desk.edit(Edit::Rules(next));
    }
}

/// One of a few under a name.
fn one_of<T: Copy + PartialEq>(
    ui: &mut Ui,
    (name, width): (&str, f32),
    all: &[(T, &str)],
    value: &mut T,
) {
    block(ui, name, width, theme::CONTROL, |ui| {
        let names: Vec<&str> = all.iter().map(|(_, n)| *n).collect();
        let at = all.iter().position(|(v, _)| v == value).unwrap_or(0);
        if let Some(i) = segments_here(ui, name, &names, at) {
            *value = all[i].0;
        }
    });
}

/// A length under a name; range and step in tenths of a millimetre.
fn length(
    ui: &mut Ui,
    drafts: &mut Drafts,
    name: &str,
    (from, to, step): (u32, u32, u32),
    value: &mut Length,
) {
    block(ui, name, NUMBER, theme::CONTROL, |ui| {
        let s = Steps {
            id: Id::unique(("craft", name.to_owned())),
            label: name,
            unit: "mm",
            range: from..=to,
            step,
        };
        let mm = Millimetres {
            value: Some(*value),
            none: "",
            first: *value,
            width: 172.0,
        };
        if let Some(next) = millimetres(ui, drafts, &s, &mm) {
            *value = next;
        }
    });
}

fn film(ui: &mut Ui, drafts: &mut Drafts, next: &mut Rules) {
    one_of(
        ui,
        ("Work", 510.0),
        &[
            (Work::CutLaminateCut, "Cut, laminate, cut again"),
            (Work::OneSheet, "Waterproof paper, cut once"),
        ],
        &mut next.craft.work,
    );
    if next.craft.work == Work::CutLaminateCut {
        length(
            ui,
            drafts,
            "Clear edge of a tile",
            (0, 200, 5),
            &mut next.seal,
        );
        let papers = Paper::ALL.map(|p| (p, p.label()));
        one_of(
            ui,
            ("Pouches to laminate in", 300.0),
            &papers,
            &mut next.craft.pouch,
        );
    }
}

fn sheets(ui: &mut Ui, craft: &mut Craft) {
    one_of(
        ui,
        ("Cut with", 230.0),
        &[
            (Cutting::Trimmer, "A trimmer"),
            (Cutting::Scissors, "Scissors"),
        ],
        &mut craft.cutting,
    );
    one_of(
        ui,
        ("Order on the sheets", 400.0),
        &[
            (Sorting::ByParticipant, "One after the other"),
            (Sorting::ThroughTheStack, "Through the stack"),
        ],
        &mut craft.sorting,
    );
    one_of(
        ui,
        ("Backs, and the edge the sheet is turned over", 400.0),
        &[
            (None, "None"),
            (Some(Flip::Long), "Long edge"),
            (Some(Flip::Short), "Short edge"),
        ],
        &mut craft.backs,
    );
}

fn fasteners(ui: &mut Ui, drafts: &mut Drafts, craft: &mut Craft) {
    one_of(
        ui,
        ("Half of the fastener on the tile", 260.0),
        &[(Half::SoftOnTile, "Soft"), (Half::RoughOnTile, "Rough")],
        &mut craft.half,
    );
    length(
        ui,
        drafts,
        "Fastener dot, across",
        (50, 300, 10),
        &mut craft.dot,
    );
    length(
        ui,
        drafts,
        "Radius of a corner",
        (0, 200, 5),
        &mut craft.corner,
    );
    if let Some(hole) = &mut craft.ring {
        length(ui, drafts, "Hole for the ring", (30, 120, 5), hole);
    }
}

fn numbers(ui: &mut Ui, drafts: &mut Drafts, craft: &mut Craft) {
    let mut number = |name: &str, unit: &str, (from, to, step): (u32, u32, u32), v: &mut u32| {
        block(ui, name, NUMBER, theme::CONTROL, |ui| {
            let s = Steps {
                id: Id::unique(("craft", name.to_owned())),
                label: name,
                unit,
                range: from..=to,
                step,
            };
            if let Some(next) = stepper(ui, drafts, &s, *v) {
                *v = next;
            }
        });
    };
    number("Time for a cut", "s", (1, 600, 5), &mut craft.cut_seconds);
    number("Blank tiles for a board", "", (0, 20, 1), &mut craft.blanks);
}

/// What a rounded corner leaves of the clear edge.
fn corner(rules: &Rules) -> Option<String> {
    let (edge, radius) = (rules.seal, rules.craft.corner);
    if rules.craft.work == Work::OneSheet || radius <= edge {
        return None;
    }
    let left = seal::in_corner(edge, radius);
    Some(match left > Length::ZERO {
        true => format!(
            "Rounded to {}, a corner keeps {} of clear edge.",
            in_mm(radius),
            in_mm(left)
        ),
        false => format!("Rounded to {}, the cut goes into the paper.", in_mm(radius)),
    })
}
