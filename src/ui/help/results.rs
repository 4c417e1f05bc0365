//! What was found on all pages of the help: each line with the page it stands on.

use egui::{
    CornerRadius, CursorIcon, Id, Rect, Role, ScrollArea, StrokeKind, Ui, UiBuilder, WidgetInfo,
    pos2, vec2,
};

use super::HelpState;
use super::find::Hit;
use super::text::pages;
use super::words as laid;
use crate::ui::regions::{arrows, keep_arrows, one_stop};
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};

/// Most lines shown; with more, another word finds them.
const MOST: usize = 40;

/// What has the keyboard at a line that was found.
pub fn hit_id(n: usize) -> Id {
    Id::unique(("help-hit", n))
}

/// Shows what was found in a rectangle; says which line to go to.
pub fn show(
    ui: &mut Ui,
    state: &mut HelpState,
    rect: Rect,
    (hits, wanted): (&[Hit], &[String]),
) -> Option<Hit> {
    state.hit = state.hit.min(hits.len().saturating_sub(1));
    if !hits.is_empty() {
        state.regions.add(rect, hit_id(state.hit));
    }
    let mut gone = None;
    let mut child = ui.new_child(UiBuilder::new().max_rect(rect.shrink2(vec2(8.0, 4.0))));
    ScrollArea::vertical()
        .id_salt("help-hits")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            words::soft(ui, &how_many(hits.len()));
            ui.add_space(4.0);
            let count = hits.len().min(MOST);
            for (n, hit) in hits.iter().take(MOST).enumerate() {
                if show_hit(ui, state, (n, count), *hit, wanted) {
                    gone = Some(*hit);
                }
            }
        });
    gone
}

fn how_many(n: usize) -> String {
    match n {
        0 => "No line of the help has these words. Try one of them alone.".to_owned(),
        1 => "One line has these words. Enter goes there.".to_owned(),
        n if n > MOST => format!("{n} lines have these words; the first {MOST} are shown."),
        n => format!("{n} lines have these words. Enter goes to the marked one."),
    }
}

fn show_hit(
    ui: &mut Ui,
    state: &mut HelpState,
    (n, count): (usize, usize),
    hit: Hit,
    wanted: &[String],
) -> bool {
    let t = theme::of(ui.ctx());
    let page = &pages()[hit.page];
    let line = hit.line.map(|i| page.lines[i].what.words());
    let id = hit_id(n);
    let width = (ui.available_width() - 8.0).min(740.0);
    let p = ui.painter();
    let head = (page.title, theme::bold(16.0));
    let head = laid::lay_plain(p, &t, head, wanted, width - 28.0);
    let body = line.as_deref().unwrap_or("the page");
    let body = laid::lay_plain(p, &t, (body, theme::regular(16.0)), wanted, width - 28.0);
    let height = head.size().y + body.size().y + 14.0;
    let (_, rect) = ui.allocate_space(vec2(width, height.max(theme::CONTROL)));
    let marked = n == state.hit;
    let r = ui.interact(rect, id, one_stop(ui, id, marked, false));
    r.widget_info(|| {
        let says = line.as_deref().unwrap_or("the page");
        let says = format!("{}: {says}, {} of {count}", page.title, n + 1);
        WidgetInfo::selected(Role::ListBoxOption, true, marked, says)
    });
    paint_ground(ui, rect, marked, r.hovered());
    let at = rect.min + vec2(14.0, 7.0);
    let below = pos2(at.x, at.y + head.size().y);
    ui.painter().galley(at, head, t.col.ink);
    ui.painter().galley(below, body, t.col.ink);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    if r.has_focus() {
        keep_arrows(ui, id);
        if let Some(to) = arrows(ui, n, count, 1) {
            state.hit = to;
            state.focus = Some(hit_id(to));
        }
    }
    let clicked = r.clicked();
    r.on_hover_cursor(CursorIcon::PointingHand);
    clicked
}

/// The marked line is a card with the accent at its edge.
fn paint_ground(ui: &Ui, rect: Rect, marked: bool, over: bool) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let radius = CornerRadius::same(theme::R_CONTROL);
    if marked {
        let edge = egui::Stroke::new(t.line() + 0.5, t.col.accent);
        p.rect_stroke(rect, radius, edge, StrokeKind::Inside);
    } else if over {
        p.rect_stroke(rect, radius, t.edge(), StrokeKind::Inside);
    }
}
