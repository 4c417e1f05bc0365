//! What happened, as a quiet strip at the lower edge that a screen reader speaks.

use egui::accesskit::{Live, Role};
use egui::{Align2, CornerRadius, Id, Rect, Sense, StrokeKind, Ui, WidgetInfo, pos2, vec2};

use super::desk::Desk;
use super::icons::{self, Icon};
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::words;
use crate::workbench::command::{Command, Place};

/// Shows the strip, or how far writing has come.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, window: Rect) {
    let Some(n) = desk.view.notice else { return };
    let t = theme::of(ui.ctx());
    let words = if n.hint.is_empty() {
        n.sentence.clone()
    } else {
        format!("{} {}", n.sentence, n.hint)
    };
    let most = window.width() - 32.0;
    let open = if n.folder.is_some() { 176.0 } else { 0.0 };
    let g = words::lay(
        ui.painter(),
        &words,
        theme::regular(16.0),
        t.col.on_peg,
        most - 130.0 - open,
        3,
    );
    let size = vec2(
        (g.size().x + 130.0 + open).min(most),
        g.size().y.max(24.0) + 22.0,
    );
    let tray = matches!(desk.view.place, Place::Boards | Place::Session);
    let above = if tray { 146.0 } else { 12.0 };
    let rect = Rect::from_min_size(
        pos2(
            window.center().x - size.x / 2.0,
            window.bottom() - size.y - above,
        ),
        size,
    );
    egui::Area::new(Id::unique("notice"))
        .fixed_pos(rect.min)
        .order(egui::Order::Foreground)
        .show(ui.ctx(), |ui| {
            let r = ui.interact(rect, Id::unique("notice-strip"), Sense::hover());
            r.widget_info(|| WidgetInfo::labeled(Role::Status, true, &words));
            ui.ctx().accesskit_node_builder(r.id, |node| {
                node.set_live(Live::Polite);
                node.set_value(words.as_str());
            });
            let p = ui.painter();
            p.add(
                t.lifted()
                    .as_shape(rect, CornerRadius::same(theme::R_PANEL)),
            );
            p.rect(
                rect,
                CornerRadius::same(theme::R_PANEL),
                t.col.peg,
                egui::Stroke::NONE,
                StrokeKind::Inside,
            );
            let at = rect.left_center() + vec2(28.0, 0.0);
            if n.trouble {
                icons::diamond(p, at, 12.0, true, t.col.on_peg, t.col.peg);
                p.text(at, Align2::CENTER_CENTER, "!", theme::bold(15.0), t.col.peg);
            } else {
                icons::paint(p, Icon::Tick, icons::square(at, 22.0), t.col.on_peg);
            }
            p.galley(
                pos2(rect.left() + 52.0, rect.center().y - g.size().y / 2.0),
                g,
                t.col.on_peg,
            );
            let away = Rect::from_min_size(
                pos2(rect.right() - 50.0, rect.center().y - 22.0),
                vec2(44.0, 44.0),
            );
            if let Some(folder) = &n.folder {
                let at = away.translate(vec2(-open, 0.0));
                let at = at.with_max_x(away.left() - 10.0);
                let b = Button::new("notice-folder", "Open the folder").icon(Icon::Folder);
                if b.show_at(ui, at).clicked() {
                    desk.ask(Command::LookInto(folder.clone()));
                }
            }
            let b = Button::new("notice-away", "Put the message away").icon_only(Icon::Cross);
            if b.weight(Weight::Chosen(true)).show_at(ui, away).clicked() {
                desk.ask(Command::DismissNotice);
            }
        });
}
