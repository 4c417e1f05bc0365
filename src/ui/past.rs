//! What was done and what was taken back, as a list in which one goes back or forth by one press.

use egui::{Align2, Id, Rect, Ui, vec2};

use super::desk::Desk;
use super::dialogs;
use super::strand::paint;
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::item::item;
use super::widgets::{focus_ring, words};
use crate::workbench::command::Command;

const ROW: f32 = 44.0;

/// One line of the list.
struct Line<'a> {
    words: &'a str,
    /// What a press on it asks for; nothing for where we are.
    asks: Option<Command>,
    /// It was taken back.
    is_undone: bool,
}

/// Shows the list; says whether it was put away.
pub fn show(ui: &Ui, desk: &mut Desk<'_>) -> bool {
    let (away, close) = dialogs::over(ui, "past", "What was done", |ui| {
        words::heading(ui, "What was done", 24.0);
        words::soft(
            ui,
            "A press goes to how the club was after that. Nothing is lost by it.",
        );
        ui.add_space(8.0);
        list(ui, desk);
        ui.add_space(8.0);
        let b = Button::new("past-away", "Close").weight(Weight::Main);
        let r = b.show(ui);
        if ui.memory(|m| m.focused().is_none()) {
            r.request_focus();
        }
        r.clicked()
    });
    away || close
}

/// From what could be done again, over what was done last, to how the club was opened.
fn list(ui: &mut Ui, desk: &mut Desk<'_>) {
    let history = desk.view.history;
    let undone: Vec<&str> = history.undone().collect();
    let mut lines: Vec<Line<'_>> = undone
        .iter()
        .enumerate()
        .rev()
        .map(|(i, words)| Line {
            words,
            asks: Some(Command::RedoSteps(i + 1)),
            is_undone: true,
        })
        .collect();
    lines.extend(history.done().enumerate().map(|(i, words)| Line {
        words,
        asks: (i > 0).then_some(Command::UndoSteps(i)),
        is_undone: false,
    }));
    let all = history.done().len();
    lines.push(Line {
        words: "As it was opened, or as far back as can be gone",
        asks: (all > 0).then_some(Command::UndoSteps(all)),
        is_undone: false,
    });
    let room = (ui.ctx().content_rect().height() - 280.0).clamp(ROW, 9.0 * ROW);
    let mut asked = None;
    egui::ScrollArea::vertical()
        .max_height(room)
        .min_scrolled_height(room)
        .auto_shrink([false, true])
        .show_rows(ui, ROW, lines.len(), |ui, rows| {
            ui.spacing_mut().item_spacing.y = 0.0;
            for i in rows {
                if row(ui, &lines[i], (i, lines.len())) {
                    asked.clone_from(&lines[i].asks);
                }
            }
        });
    if let Some(command) = asked {
        desk.ask(command);
    }
}

fn row(ui: &mut Ui, line: &Line<'_>, (at, count): (usize, usize)) -> bool {
    let t = theme::of(ui.ctx());
    let here = line.asks.is_none();
    let state = match (here, line.is_undone) {
        (true, _) => "here now",
        (false, true) => "taken back",
        (false, false) => "done",
    };
    let name = format!("{}, {state}, {} of {count}", line.words, at + 1);
    let (r, rect) = item(ui, Id::unique(("past-row", at)), ROW, here, &name);
    let p = ui.painter();
    let rope = egui::pos2(rect.left() + 22.0, rect.center().y);
    let up = if at == 0 {
        rope
    } else {
        rope - vec2(0.0, ROW / 2.0)
    };
    let down = if at + 1 == count {
        rope
    } else {
        rope + vec2(0.0, ROW / 2.0)
    };
    paint::line(p, &t, &[up, down], 4.0);
    if line.is_undone {
        paint::ring(p, &t.col, rope, 7.0, t.col.panel);
    } else {
        paint::knot(p, &t, rope, 7.0);
    }
    let text = Rect::from_min_max(rect.min + vec2(44.0, 0.0), rect.max - vec2(90.0, 0.0));
    let (font, ink) = match (here, line.is_undone) {
        (true, _) => (theme::bold(16.0), t.col.ink),
        (false, true) => (theme::regular(16.0), t.col.soft),
        (false, false) => (theme::regular(16.0), t.col.ink),
    };
    words::line(p, text, Align2::LEFT_CENTER, line.words, font, ink);
    let end = Rect::from_min_max(
        egui::pos2(text.right(), rect.top()),
        rect.max - vec2(10.0, 0.0),
    );
    let says = if state == "done" { "" } else { state };
    let font = theme::regular(14.0);
    words::line(p, end, Align2::RIGHT_CENTER, says, font, t.col.soft);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    !here && r.clicked()
}
