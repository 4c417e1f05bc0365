//! What is hard today for the participant whose board lies here, as a quiet chip beside the name:
//! the condition's picture, its words, and what helps. It is for the helper and on no board.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Painter, Popup, Rect, Role, Sense, Stroke, StrokeKind,
    Ui, Vec2, WidgetInfo, pos2, vec2,
};

use crate::model::conditions::Condition;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::view::View;

/// Side of the chip without words.
pub const ALONE: f32 = theme::CONTROL;
/// Widest the chip gets.
const WIDEST: f32 = 440.0;
/// Below this width it shows its picture alone.
const WORDS_FROM: f32 = 128.0;
/// Below this width what helps has no room and is said on a press alone.
const HELPS_FROM: f32 = 250.0;
/// Side of a condition's picture.
const PICTURE: f32 = 36.0;

/// A condition of today that is hard, and what helps then.
pub type Hard<'a> = (&'a Condition, &'a str);

/// What of today is hard for the chosen participant, in the order of the day's conditions.
pub fn of<'a>(view: &View<'a>) -> Vec<Hard<'a>> {
    let (Some(session), Some(person)) = (view.session, view.participant) else {
        return Vec::new();
    };
    let hard = person.profile.hard().for_owner();
    let today = session.conditions.iter();
    today
        .filter_map(|c| Some((c, hard.get(c)?.as_str())))
        .collect()
}

/// Everything in one sentence each.
pub fn spoken(all: &[Hard<'_>]) -> String {
    let one = |(c, helps): &Hard<'_>| match *helps {
        "" => format!("Hard today: {}.", c.label()),
        helps => format!("Hard today: {}. What helps: {helps}.", c.label()),
    };
    all.iter().map(one).collect::<Vec<_>>().join(" ")
}

/// Shows the chip at the left of a rectangle, as wide as its words; a press says all of it.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, all: &[Hard<'_>], rect: Rect) {
    let t = theme::of(ui.ctx());
    let figure = desk.view.participant.map_or(Eyes::default(), Eyes::of);
    let labels: Vec<&str> = all.iter().map(|(c, _)| c.label()).collect();
    let labels = labels.join(", ");
    let (upper, lower) = if rect.width() < HELPS_FROM {
        ("Hard today".to_owned(), labels)
    } else {
        (format!("Hard today: {labels}"), helps(all))
    };
    let (bold, regular) = (theme::bold(15.0), theme::regular(14.0));
    let with_words = rect.width() >= WORDS_FROM;
    let width = if with_words {
        let p = ui.painter();
        let needs = [(&upper, bold.clone()), (&lower, regular.clone())]
            .map(|(w, f)| words::lay(p, w, f, t.col.ink, WIDEST, 1).size().x);
        (needs[0].max(needs[1]) + PICTURE + 30.0).min(rect.width().min(WIDEST))
    } else {
        ALONE
    };
    let chip = Rect::from_min_size(rect.min, vec2(width, theme::CONTROL));
    let r = ui.interact(chip, Id::unique("hard-today"), Sense::click());
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, spoken(all)));
    let p = ui.painter();
    let edge = if r.hovered() {
        Stroke::new(2.0, t.col.ink)
    } else {
        Stroke::new(t.line(), t.col.rule)
    };
    let corner = CornerRadius::same(theme::R_CONTROL);
    p.rect(chip, corner, t.col.panel, edge, StrokeKind::Inside);
    let at = Rect::from_min_size(chip.min + vec2(4.0, 4.0), Vec2::splat(PICTURE));
    picture(p, desk, at, all[0].0, figure);
    if with_words {
        let left = pos2(at.right() + 10.0, chip.top() + 2.0);
        let text = Rect::from_min_max(left, chip.max - vec2(10.0, 3.0));
        let (above, below) = text.split_top_bottom_at_fraction(0.5);
        words::line(p, above, Align2::LEFT_CENTER, &upper, bold, t.col.ink);
        words::line(p, below, Align2::LEFT_CENTER, &lower, regular, t.col.soft);
    }
    focus_ring(ui, &r, chip, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    Popup::menu(&r)
        .width(360.0)
        .accessible_name("Hard today")
        .show(|ui| in_full(ui, desk, all, figure));
}

/// What helps, in one line.
fn helps(all: &[Hard<'_>]) -> String {
    let known: Vec<&str> = all
        .iter()
        .map(|(_, h)| *h)
        .filter(|h| !h.is_empty())
        .collect();
    if known.is_empty() {
        "what helps is not written down yet".to_owned()
    } else {
        format!("helps: {}", known.join("; "))
    }
}

/// All of it, one condition below the other.
fn in_full(ui: &mut Ui, desk: &mut Desk<'_>, all: &[Hard<'_>], figure: Eyes) {
    words::heading(ui, "Hard today, and what helps", 17.0);
    for (condition, helps) in all {
        ui.horizontal_top(|ui| {
            let (_, at) = ui.allocate_space(Vec2::splat(PICTURE));
            picture(&ui.painter().clone(), desk, at, condition, figure);
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                words::heading(ui, condition.label(), 16.0);
                match *helps {
                    "" => words::soft(ui, "What helps is not written down yet."),
                    helps => words::body(ui, helps),
                }
            });
        });
    }
    words::soft(ui, "For the helper; not printed on the board.");
}

fn picture(p: &Painter, desk: &mut Desk<'_>, at: Rect, condition: &Condition, figure: Eyes) {
    let t = theme::of(p.ctx());
    plate(p, &t, at);
    match condition.symbol() {
        Some(symbol) => desk.pictures.symbol(p, at.shrink(3.0), &symbol, figure),
        None => icons::paint(p, Icon::Pen, at.shrink(9.0), t.col.card_ink),
    }
}
