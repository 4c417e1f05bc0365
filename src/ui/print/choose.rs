//! What to print, for whom, on which paper, with which ink, as which files.

use egui::{Id, Rect, Ui, vec2};

use super::numbers;
use crate::layout::{InkChoice, SheetKind, Turn};
use crate::model::club::Paper;
use crate::model::ids::ParticipantId;
use crate::ui::desk::Desk;
use crate::ui::session::face;
use crate::ui::widgets::choose::{segments_here, tick};
use crate::ui::widgets::form::{row, scroll};
use crate::ui::widgets::words;
use crate::workbench::command::{Command, Format, PrintChoice};

/// Shows the column; with the numbers below when there is no third column.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, with_numbers: bool) {
    let mut next = desk.view.print.clone();
    desk.regions
        .add(rect, Id::unique(("kind", SheetKind::ALL[0])));
    scroll(ui, "print-choices", rect, |ui| {
        words::heading(ui, "What to print", 24.0);
        ui.spacing_mut().item_spacing.y = 2.0;
        kinds(ui, desk, &mut next);
        ui.add_space(8.0);
        whom(ui, desk, &mut next);
        ui.add_space(8.0);
        paper(ui, &mut next);
        files(ui, &mut next);
        if with_numbers {
            ui.add_space(10.0);
            numbers::column(ui, desk);
        }
        ui.add_space(12.0);
    });
    if next != *desk.view.print {
        desk.ask(Command::SetPrint(next));
    }
}

fn kinds(ui: &mut Ui, desk: &Desk<'_>, next: &mut PrintChoice) {
    for kind in SheetKind::ALL {
        let on = next.kinds.contains(&kind);
        let pages: usize = desk
            .view
            .sheets
            .iter()
            .filter(|s| s.kind == kind)
            .map(|s| s.pages.len())
            .sum();
        let trailing = match (on, pages) {
            (false, _) => String::new(),
            (true, 1) => "1 page".into(),
            (true, n) => format!("{n} pages"),
        };
        if tick(ui, Id::unique(("kind", kind)), on, kind.label(), &trailing).clicked() {
            if on {
                next.kinds.retain(|k| *k != kind);
            } else {
                next.kinds.push(kind);
                next.kinds.sort();
            }
        }
    }
}

/// The participants who come, each with a tick.
fn whom(ui: &mut Ui, desk: &mut Desk<'_>, next: &mut PrintChoice) {
    let all: Vec<ParticipantId> = desk.view.boards.iter().map(|(id, _)| *id).collect();
    let chosen: Vec<ParticipantId> = match &next.participants {
        None => all.clone(),
        Some(some) => all.iter().copied().filter(|id| some.contains(id)).collect(),
    };
    words::heading(ui, "For whom", 20.0);
    words::soft(ui, &format!("{} of {} who come", chosen.len(), all.len()));
    let width = ui.available_width();
    let columns = ((width + 8.0) / 86.0).floor().max(1.0);
    let cell = ((width - (columns - 1.0) * 8.0) / columns).floor();
    let mut after = chosen.clone();
    row(ui, |ui| {
        ui.spacing_mut().item_spacing = vec2(8.0, 8.0);
        for id in &all {
            let Some(p) = desk.view.club.participant(*id) else {
                continue;
            };
            let (_, rect) = ui.allocate_space(vec2(cell, 96.0));
            let on = chosen.contains(id);
            if face(ui, desk, rect, Id::unique(("print-for", *id)), p, on).clicked() {
                if on {
                    after.retain(|x| x != id);
                } else {
                    after.push(*id);
                }
            }
        }
    });
    if after != chosen {
        let everyone = all.iter().all(|id| after.contains(id));
        let order =
            |list: &[ParticipantId]| all.iter().copied().filter(|id| list.contains(id)).collect();
        next.participants = if everyone { None } else { Some(order(&after)) };
    }
}

fn paper(ui: &mut Ui, next: &mut PrintChoice) {
    words::soft(ui, "Paper");
    let at = Paper::ALL
        .iter()
        .position(|p| *p == next.paper)
        .unwrap_or(0);
    if let Some(i) = segments_here(ui, "paper", &Paper::ALL.map(Paper::label), at) {
        next.paper = Paper::ALL[i];
    }
    words::soft(ui, "Which way up");
    let turns = [Turn::AsSuits, Turn::Portrait, Turn::Landscape];
    let at = turns.iter().position(|t| *t == next.turn).unwrap_or(0);
    if let Some(i) = segments_here(ui, "turn", &["As suits", "Upright", "Across"], at) {
        next.turn = turns[i];
    }
    words::soft(ui, "Ink");
    let inks = [InkChoice::Colour, InkChoice::Grey, InkChoice::Outline];
    let at = inks.iter().position(|x| *x == next.ink).unwrap_or(0);
    if let Some(i) = segments_here(ui, "ink", &["Colour", "Grey", "Outline"], at) {
        next.ink = inks[i];
    }
}

fn files(ui: &mut Ui, next: &mut PrintChoice) {
    words::soft(ui, "Files to write");
    for format in Format::ALL {
        let on = next.formats.contains(&format);
        if tick(ui, Id::unique(("format", format)), on, format.label(), "").clicked() {
            if on {
                next.formats.retain(|f| *f != format);
            } else {
                next.formats.push(format);
                next.formats.sort();
            }
        }
    }
}
