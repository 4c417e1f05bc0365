//! How much it is, in large numbers on cards, and the button that puts it into stock.

use egui::{Align2, CornerRadius, Id, Rect, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use super::write;
use crate::layout::{Counts, SheetKind};
use crate::model::craft::Work;
use crate::model::edit::Edit;
use crate::model::finding::Severity;
use crate::model::stock::StockEdit;
use crate::plan::stock::Shelf;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::strand::{Rope, paint};
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::form::scroll;
use crate::ui::widgets::steps::in_mm;
use crate::ui::widgets::words;
use crate::workbench::command::{Command, Format, Place};
use crate::workbench::view::View;

/// The numbers shown, with their words.
fn all(view: &View<'_>) -> [(String, &'static str, String); 4] {
    let pages: usize = view.sheets.iter().map(|s| s.pages.len()).sum();
    let none = Counts::default();
    let c = view.counts.unwrap_or(&none);
    let one = |n: usize, one: &'static str, more: &'static str| if n == 1 { one } else { more };
    let pouch = match view.club.rules.craft.work {
        Work::CutLaminateCut => format!("for {}, to laminate", view.club.rules.craft.pouch.label()),
        Work::OneSheet => "no film around tiles".to_owned(),
    };
    let cuts = c.first_cuts + c.second_cuts;
    [
        (
            pages.to_string(),
            one(pages, "page", "pages"),
            format!("{}, at 100 %", view.print.paper.label()),
        ),
        (
            c.sheets.to_string(),
            one(c.sheets, "sheet of tiles", "sheets of tiles"),
            match c.printed {
                1 => "1 tile or card".to_owned(),
                n => format!("{n} tiles and cards"),
            },
        ),
        (
            c.pouches.to_string(),
            one(c.pouches, "pouch", "pouches"),
            pouch,
        ),
        (
            cuts.to_string(),
            one(cuts, "cut", "cuts"),
            match c.cut_minutes() {
                1 => "about 1 minute".to_owned(),
                n => format!("about {n} minutes"),
            },
        ),
    ]
}

/// What else there is to know, in words.
fn in_words(view: &View<'_>) -> String {
    let n: usize = view.print.formats.iter().map(|f| files(view, *f)).sum();
    let formats: Vec<String> = view
        .print
        .formats
        .iter()
        .map(|f| f.word().to_uppercase())
        .collect();
    if view.laying {
        return "Laying out for many: the numbers follow…".to_owned();
    }
    let mut words = match n {
        1 => format!("1 file ({})", formats.join(", ")),
        n if formats.is_empty() => format!("{n} files"),
        n => format!("{n} files ({})", formats.join(", ")),
    };
    words.push('.');
    if let Some(c) = view.counts.filter(|c| c.needed > 0) {
        let there = in_stock(view);
        let be = if there == 1 { "is" } else { "are" };
        words += &format!(" {there} of {} tiles and cards {be} in stock.", c.needed);
        if c.spares > 0 {
            words += &format!(" {} of those printed are spares.", c.spares);
        }
        if c.dots > 0 {
            let dot = in_mm(view.club.rules.craft.dot);
            words += &format!(
                " {} fasteners of {dot} on tiles, as many on boards.",
                c.dots
            );
        }
    }
    words
}

/// How many files a format makes of the sheets.
fn files(view: &View<'_>, format: Format) -> usize {
    match format {
        Format::Pdf if view.print.one_file => {
            let classes = view.sheets.iter().flat_map(|s| s.pages.first());
            let classes: std::collections::BTreeSet<_> = classes.map(|p| p.class).collect();
            classes.len()
        }
        Format::Pdf => view.sheets.len(),
        Format::Png => view.sheets.iter().map(|s| s.pages.len()).sum(),
        Format::Text | Format::Html => view
            .sheets
            .iter()
            .filter(|s| s.kind == SheetKind::Story)
            .count(),
    }
}

/// How many of the tiles and cards that are needed are in stock, also where all are printed anew.
pub fn in_stock(view: &View<'_>) -> usize {
    let Some(c) = view.counts else { return 0 };
    if view.print.only_missing || view.club.stock.is_empty() {
        return c.in_stock;
    }
    let mut shelf = Shelf::of(&view.club.stock);
    let each = c.made.iter().flat_map(|(key, n)| (0..*n).map(move |_| key));
    each.filter(|key| shelf.take(key)).count()
}

/// The button that puts what was printed into stock. Once everything is there it cannot be pressed
/// again, whatever is printed.
fn made(ui: &mut Ui, desk: &mut Desk<'_>) {
    let Some(c) = desk.view.counts.filter(|c| c.needed > 0) else {
        return;
    };
    let all_there = in_stock(desk.view) >= c.needed;
    let b = Button::new("tiles-made", "These are made")
        .icon(Icon::Tick)
        .left()
        .width(ui.available_width())
        .enabled(!c.made.is_empty() && !all_there && !desk.view.laying);
    let b =
        b.tip("Puts the printed tiles and cards into stock, so that they are not printed again");
    if b.show(ui).clicked() {
        desk.edit(Edit::Stock(StockEdit::Made(c.made.clone())));
    }
    if all_there && !desk.view.laying {
        words::soft(ui, "All tiles are in stock. Undo takes that back.");
    }
}

/// Shows the column at the right.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let height = rect.height();
    let strand = Rect::from_min_size(rect.min, vec2(rect.width(), 380.0_f32.min(height * 0.5)));
    cards(ui, desk.view, strand);
    let below = Rect::from_min_max(pos2(rect.left(), strand.bottom() + 14.0), rect.max);
    let button = Rect::from_min_max(pos2(rect.left(), rect.bottom() - theme::MAIN), rect.max);
    let room = below.with_max_y(button.top() - 10.0);
    scroll(ui, "numbers-below", room, |ui| {
        ui.spacing_mut().item_spacing.y = 8.0;
        words::soft(ui, &in_words(desk.view));
        made(ui, desk);
        to_know(ui, desk);
    });
    if let Some(rest) = write::button(ui, desk, button) {
        write::progress(ui, desk, rest);
    }
    desk.regions.add(button, Id::unique(("button", "write")));
}

/// The same where there is no third column.
pub fn column(ui: &mut Ui, desk: &mut Desk<'_>) {
    for (n, words, more) in all(desk.view) {
        words::body(ui, &format!("{n} {words}, {more}"));
    }
    words::soft(ui, &in_words(desk.view));
    made(ui, desk);
    to_know(ui, desk);
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::MAIN));
    if let Some(rest) = write::button(ui, desk, rect) {
        write::progress(ui, desk, rest);
    }
}

/// Four cards on the strand, two by two.
fn cards(ui: &Ui, view: &View<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let (gap, drop) = (12.0, 24.0);
    let width = (rect.width() - gap) / 2.0;
    let height = (rect.height() - 20.0 - drop) / 2.0;
    let y = rect.top() + 14.0;
    let card = |i: usize| {
        let (column, row) = ((i % 2) as f32, (i / 2) as f32);
        let at = pos2(
            rect.left() + column * (width + gap),
            y + 8.0 + row * (height + drop),
        );
        Rect::from_min_size(at, vec2(width, height))
    };
    let mut rope = Rope {
        points: vec![pos2(rect.left(), y - 4.0)],
        arrows: Vec::new(),
    };
    for i in 0..2 {
        rope.sag_to(pos2(card(i).center().x, y));
    }
    rope.sag_to(pos2(rect.right(), y - 4.0));
    paint::rope(p, &t, &rope);
    for i in 0..2 {
        for x in [0.3, 0.7] {
            let x = card(i).left() + width * x;
            p.vline(
                x,
                card(i).bottom() - 2.0..=card(i + 2).top() + 4.0,
                egui::Stroke::new(3.5, t.col.rope),
            );
        }
    }
    for (i, (n, words, more)) in all(view).into_iter().enumerate() {
        let rect = card(i);
        let r = ui.interact(rect, Id::unique(("number", i)), Sense::hover());
        r.widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("{n} {words}, {more}")));
        let paper = tile(p, &t, rect, Lie::Ground);
        if i < 2 {
            let peg = Rect::from_center_size(pos2(rect.center().x, y), vec2(26.0, 26.0));
            p.rect_filled(peg, CornerRadius::same(theme::R_PEG), t.col.peg);
        }
        let third = paper.height() / 3.0;
        let line = |k: f32| {
            Rect::from_min_size(
                pos2(paper.left() + 6.0, paper.top() + k),
                vec2(paper.width() - 12.0, third),
            )
        };
        words::line(
            p,
            line(third * 0.25),
            Align2::CENTER_CENTER,
            &n,
            theme::bold(48.0),
            t.col.card_ink,
        );
        words::line(
            p,
            line(third * 1.05),
            Align2::CENTER_CENTER,
            words,
            theme::bold(18.0),
            t.col.card_ink,
        );
        words::line(
            p,
            line(third * 1.68),
            Align2::CENTER_CENTER,
            &more,
            theme::regular(14.0),
            t.col.card_soft,
        );
    }
}

/// What the checks say before it is printed.
fn to_know(ui: &mut Ui, desk: &mut Desk<'_>) {
    let stop = desk
        .view
        .findings
        .iter()
        .filter(|f| f.severity == Severity::StopAndLook)
        .count();
    let look = desk
        .view
        .findings
        .iter()
        .filter(|f| f.severity == Severity::Look)
        .count();
    let words = match (stop, look) {
        (0, 0) => {
            return words::soft(
                ui,
                "The checks found nothing open. You know the day better.",
            );
        }
        (0, n) => format!("{n} to look at in Checks"),
        (n, _) => format!("{n} to stop and look at in Checks"),
    };
    let b = Button::new("to-checks", &words)
        .icon(Icon::Diamond)
        .left()
        .width(ui.available_width());
    if b.show(ui).clicked() {
        desk.ask(Command::Show(Place::Checks));
    }
}
