//! The kinds of sheets, in three groups by who gets them, each with a tick and its pages.

use egui::{Id, RichText, Ui};

use crate::layout::SheetKind;
use crate::ui::theme;
use crate::ui::widgets::choose::tick;
use crate::workbench::command::PrintChoice;
use crate::workbench::view::View;

/// The groups in the order of an evening.
const GROUPS: [(&str, &[SheetKind]); 3] = [
    (
        "For participants",
        &[
            SheetKind::LargePrint,
            SheetKind::Tiles,
            SheetKind::Cards,
            SheetKind::BaseBoard,
            SheetKind::Story,
            SheetKind::Booklet,
            SheetKind::StoryPage,
        ],
    ),
    (
        "For the session",
        &[
            SheetKind::GroupWall,
            SheetKind::HelperCard,
            SheetKind::Words,
            SheetKind::SessionSheet,
            SheetKind::ChangeSheet,
            SheetKind::Roll,
            SheetKind::LookList,
            SheetKind::TodaySlip,
            SheetKind::PictureList,
        ],
    ),
    (
        "For whoever prints",
        &[
            SheetKind::PrintRun,
            SheetKind::CutList,
            SheetKind::PouchGuide,
            SheetKind::PackList,
            SheetKind::Labels,
            SheetKind::TestPage,
        ],
    ),
];

/// What gets the keyboard first.
pub fn first() -> Id {
    id(SheetKind::LargePrint)
}

fn id(kind: SheetKind) -> Id {
    Id::unique(("kind", kind))
}

/// Shows the groups.
pub fn show(ui: &mut Ui, view: &View<'_>, next: &mut PrintChoice) {
    for (name, kinds) in GROUPS {
        small_heading(ui, name);
        for &kind in kinds {
            one(ui, view, next, kind);
        }
        ui.add_space(6.0);
    }
}

/// A quiet name over a few controls.
pub fn small_heading(ui: &mut Ui, words: &str) {
    let t = theme::of(ui.ctx());
    let words = RichText::new(words).font(theme::bold(15.0));
    ui.label(words.color(t.col.soft));
}

fn one(ui: &mut Ui, view: &View<'_>, next: &mut PrintChoice, kind: SheetKind) {
    let on = next.kinds.contains(&kind);
    let trailing = if on { pages(view, kind) } else { String::new() };
    if tick(ui, id(kind), on, kind.label(), &trailing).clicked() {
        if on {
            next.kinds.retain(|k| *k != kind);
        } else {
            next.kinds.push(kind);
            next.kinds.sort();
        }
    }
}

/// How many pages there are of a kind, in words.
fn pages(view: &View<'_>, kind: SheetKind) -> String {
    // Where both are chosen they lie on common sheets.
    if kind == SheetKind::Cards && view.print.kinds.contains(&SheetKind::Tiles) {
        return "with the tiles".to_owned();
    }
    let of = view.sheets.iter().filter(|s| s.kind == kind);
    match of.map(|s| s.pages.len()).sum::<usize>() {
        1 => "1 page".to_owned(),
        n => format!("{n} pages"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_stands_in_one_group() {
        let mut all: Vec<SheetKind> = GROUPS.iter().flat_map(|(_, k)| k.iter().copied()).collect();
        all.sort();
        let mut wanted = SheetKind::ALL.to_vec();
        wanted.sort();
        assert_eq!(all, wanted);
    }
}
