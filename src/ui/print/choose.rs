//! What to print, for whom, on which paper, with which ink, as which files.

use egui::{Id, Rect, Ui};

use super::{PrintState, kinds, numbers, printer, tiles, whom};
use crate::layout::{InkChoice, Turn};
use crate::model::club::Paper;
use crate::ui::desk::Desk;
use crate::ui::widgets::choose::{segments_here, tick};
use crate::ui::widgets::form::scroll;
use crate::ui::widgets::words;
use crate::workbench::command::{Command, Format, PrintChoice};

/// Shows the column; with the numbers below when there is no third column.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PrintState,
    rect: Rect,
    with_numbers: bool,
) {
    let mut next = desk.view.print.clone();
    desk.regions.add(rect, kinds::first());
    scroll(ui, "print-choices", rect, |ui| {
        words::heading(ui, "What to print", 24.0);
        ui.spacing_mut().item_spacing.y = 2.0;
        kinds::show(ui, desk.view, &mut next);
        missing(ui, desk, &mut next);
        ui.add_space(10.0);
        whom::show(ui, desk, &mut state.find, &mut next);
        ui.add_space(10.0);
        ui.spacing_mut().item_spacing.y = 4.0;
        tiles::show(ui, desk);
        ui.add_space(10.0);
        words::heading(ui, "On what", 20.0);
        paper(ui, &mut next);
        ui.add_space(6.0);
        printer::show(ui, desk);
        ui.add_space(10.0);
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

/// Whether what is in stock is left out, with how much that is.
fn missing(ui: &mut Ui, desk: &Desk<'_>, next: &mut PrintChoice) {
    let trailing = match numbers::in_stock(desk.view) {
        0 if desk.view.club.stock.is_empty() => String::new(),
        n => format!("{n} in stock"),
    };
    let on = next.only_missing;
    let r = tick(
        ui,
        Id::unique("only-missing"),
        on,
        "Only what is missing",
        &trailing,
    );
    let r = r.on_hover_text("Tiles and cards that are in stock are not printed again");
    if r.clicked() {
        next.only_missing = !on;
    }
}

fn paper(ui: &mut Ui, next: &mut PrintChoice) {
    kinds::small_heading(ui, "Paper");
    let at = Paper::ALL
        .iter()
        .position(|p| *p == next.paper)
        .unwrap_or(0);
    if let Some(i) = segments_here(ui, "paper", &Paper::ALL.map(Paper::label), at) {
        next.paper = Paper::ALL[i];
    }
    kinds::small_heading(ui, "Which way up");
    let turns = [Turn::AsSuits, Turn::Portrait, Turn::Landscape];
    let at = turns.iter().position(|t| *t == next.turn).unwrap_or(0);
    if let Some(i) = segments_here(ui, "turn", &["As suits", "Upright", "Across"], at) {
        next.turn = turns[i];
    }
    kinds::small_heading(ui, "Ink");
    let inks = [InkChoice::Colour, InkChoice::Grey, InkChoice::Outline];
    let at = inks.iter().position(|x| *x == next.ink).unwrap_or(0);
    if let Some(i) = segments_here(ui, "ink", &["Colour", "Grey", "Outline"], at) {
        next.ink = inks[i];
    }
}

fn files(ui: &mut Ui, next: &mut PrintChoice) {
    words::heading(ui, "Files to write", 20.0);
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
    let r = tick(
        ui,
        Id::unique("one-file"),
        next.one_file,
        "One PDF for all",
        "",
    );
    let tip = "All sheets in one file; pages for other readers get a file of their own";
    if r.on_hover_text(tip).clicked() {
        next.one_file = !next.one_file;
    }
}
