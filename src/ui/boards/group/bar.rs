//! Above the table: which boards are shown, in which order, and how many places differ.

use egui::{Align2, Color32, Rect, Ui, pos2};

use super::NARROW;
use crate::ui::actions::Action;
use crate::ui::boards::BoardsState;
use crate::ui::boards::sort::{Filter, Line, Sort};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::tray;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::choose::{segments, select_at};
use crate::ui::widgets::words;

/// The line above: what is shown, in which order.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    lines: &[Line<'_>],
    (rect, short): (Rect, bool),
) {
    let narrow = rect.width() < NARROW;
    let back = Button::new("one-board", "One board").tip("Back to one board (Ctrl+G)");
    let back = if narrow {
        back.icon_only(Icon::Left)
    } else {
        back
    };
    let mut right = rect.right();
    let mut take = |width: f32| {
        let place = Rect::from_min_max(pos2(right - width, rect.top()), pos2(right, rect.bottom()));
        right = place.left() - 10.0;
        place
    };
    let place = take(back.needs(ui));
    if back.show_at(ui, place).clicked() {
        desk.actions.push(Action::Group);
    }
    if short {
        let place = take(theme::CONTROL);
        tray::folder(ui, &mut state.tray, "group-symbols", place);
    }
    let table = &mut state.table;
    let place = take(if narrow { 158.0 } else { 216.0 });
    let options: [&str; 2] = if narrow {
        ["All", "Differs"]
    } else {
        ["All steps", "Differs only"]
    };
    let chosen = usize::from(table.differs_only);
    if let Some(i) = segments(ui, "group-what", place, &options, chosen) {
        table.differs_only = i == 1;
    }
    let place = take(if narrow { 168.0 } else { 222.0 });
    let options = Sort::ALL.map(|s| s.label().to_owned());
    let now = Sort::ALL.iter().position(|s| *s == table.sort);
    let id = egui::Id::unique("group-sort");
    if let Some(i) = select_at(ui, id, place, "Order of the boards", &options, now) {
        table.sort = Sort::ALL[i];
    }
    let symbols = if short { theme::CONTROL + 10.0 } else { 0.0 };
    let others = 158.0 + 168.0 + theme::CONTROL + symbols + 30.0;
    let place = take(250.0_f32.min(rect.width() - others));
    let options = Filter::ALL.map(|f| f.label().to_owned());
    let now = Filter::ALL.iter().position(|f| *f == table.filter);
    let id = egui::Id::unique("group-filter");
    desk.regions.add(rect, id);
    if let Some(i) = select_at(ui, id, place, "Which boards", &options, now) {
        table.filter = Filter::ALL[i];
    }
    let room = rect.with_max_x(right - 6.0);
    if room.width() > 160.0 {
        title(ui, room, lines, desk.view.boards.len());
    }
}

fn title(ui: &Ui, room: Rect, lines: &[Line<'_>], all: usize) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let line = |rect: Rect, words: &str, font, ink: Color32| {
        words::line(p, rect, Align2::LEFT_CENTER, words, font, ink)
    };
    let took = line(room, "Whole group", theme::bold(24.0), t.col.ink);
    let rest = room.with_min_x(took.right() + 16.0);
    if rest.width() > 90.0 {
        let says = counts(lines, all);
        line(rest, &says, theme::regular(16.0), t.col.soft);
    }
}

/// How many boards are shown, and in how many places they differ.
fn counts(lines: &[Line<'_>], all: usize) -> String {
    let shown = lines.len();
    let boards = match (shown == all, all) {
        (true, 1) => "1 board".to_owned(),
        (true, n) => format!("{n} boards"),
        (false, n) => format!("{shown} of {n} boards"),
    };
    let places: usize = lines.iter().map(|l| l.board.differences()).sum();
    let questions: usize = lines.iter().map(|l| l.questions).sum();
    let differ = match places {
        0 => "as the timetable".to_owned(),
        1 => "1 place differs".to_owned(),
        n => format!("{n} places differ"),
    };
    match questions {
        0 => format!("{boards}, {differ}"),
        1 => format!("{boards}, {differ}, 1 question"),
        n => format!("{boards}, {differ}, {n} questions"),
    }
}
