//! The participants as a table: writing one, taking one in, and what came of that.

use egui::{Id, Rect, Ui};

use super::PeopleState;
use crate::ui::desk::Desk;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::form::{scroll, sheet};
use crate::ui::widgets::words;
use crate::workbench::command::Command;
use crate::workbench::table::TakenIn;

/// Rows left out that are shown; more of them have one cause.
const SHOWN: usize = 50;

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    desk.regions.add(rect, Id::unique("table-write"));
    scroll(ui, "table", rect, |ui| {
        ui.set_max_width(ui.available_width().min(760.0));
        if let Some(taken) = desk.view.taken_in {
            sheet(ui, |ui| report(ui, taken));
            ui.add_space(12.0);
        }
        sheet(ui, |ui| write(ui, desk, state));
        ui.add_space(12.0);
        sheet(ui, |ui| take_in(ui, desk));
        ui.add_space(16.0);
    });
}

fn write(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState) {
    words::heading(ui, "Write a table", 20.0);
    words::body(
        ui,
        "One row for each participant, for any spreadsheet: name, mark, sizes, voice, figure and \
         how the board is given. What is sealed is never in it.",
    );
    ui.add_space(4.0);
    let id = Id::unique("table-helpers");
    if tick(
        ui,
        id,
        state.table_for_helpers,
        "With what helpers know",
        "",
    )
    .clicked()
    {
        state.table_for_helpers = !state.table_for_helpers;
    }
    if state.table_for_helpers {
        words::soft(
            ui,
            "Whoever has that file can read it. Keep it as you keep a helper’s card, and delete it \
             after use.",
        );
    }
    ui.add_space(4.0);
    let button = Button::new("table-write", "Write a table…");
    if button.show(ui).clicked() {
        desk.ask(Command::AskTable(state.table_for_helpers));
    }
}

fn take_in(ui: &mut Ui, desk: &mut Desk<'_>) {
    words::heading(ui, "Take in a table", 20.0);
    words::body(
        ui,
        "Its first line has the headings; write a table first to see them. A name that is here \
         already is changed, any other name is added. Empty cells change nothing. All of it is one \
         change, and Undo takes it back.",
    );
    ui.add_space(4.0);
    let button = Button::new("table-take-in", "Take in a table…");
    if button.show(ui).clicked() {
        desk.ask(Command::AskTakeIn);
    }
}

fn report(ui: &mut Ui, taken: &TakenIn) {
    words::heading(ui, "The last table", 20.0);
    words::body(ui, &taken.sentence());
    for row in taken.skipped.iter().take(SHOWN) {
        words::body(ui, &format!("Line {}: {}", row.line, row.why));
    }
    if taken.skipped.len() > SHOWN {
        let more = taken.skipped.len() - SHOWN;
        words::soft(ui, &format!("And {more} more."));
    }
    if !taken.passed_over.is_empty() {
        let columns = taken.passed_over.join(", ");
        words::soft(ui, &format!("Columns passed over: {columns}."));
    }
}
