//! Which session is looked at, and the others to choose from.

use egui::{Align2, CursorIcon, Id, Popup, Rect, Role, Sense, Ui, WidgetInfo, vec2};

use crate::plan::clock;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::button::Weight;
use crate::ui::widgets::focus_ring;
use crate::ui::widgets::words;
use crate::workbench::command::Command;
use crate::workbench::command::Place;

/// Which session: title and date, and all others in a list.
pub(super) fn session_chooser(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let (title, when) = match desk.view.session {
        Some(s) => {
            let minutes = clock::clock(s, &desk.view.club.rules).minutes();
            (
                s.title.clone(),
                format!("{}, {minutes} min", crate::ui::dates::shortest(s.date)),
            )
        }
        None => (desk.view.club.name.clone(), "no session yet".to_owned()),
    };
    let r = ui.interact(rect, Id::unique("session-chooser"), Sense::click());
    r.widget_info(|| {
        WidgetInfo::labeled(Role::ComboBox, true, format!("Session: {title}, {when}"))
    });
    let p = ui.painter();
    if r.hovered() || Popup::is_id_open(ui.ctx(), Popup::default_response_id(&r)) {
        let corner = egui::CornerRadius::same(theme::R_CONTROL);
        p.rect(
            rect,
            corner,
            t.col.panel,
            t.edge(),
            egui::StrokeKind::Inside,
        );
    }
    let text = Rect::from_min_max(rect.min + vec2(8.0, 2.0), rect.max - vec2(26.0, 2.0));
    let (upper, lower) = text.split_top_bottom_at_fraction(0.54);
    words::line(
        p,
        upper,
        Align2::LEFT_BOTTOM,
        &title,
        theme::bold(18.0),
        t.col.ink,
    );
    words::line(
        p,
        lower,
        Align2::LEFT_TOP,
        &when,
        theme::regular(14.0),
        t.col.soft,
    );
    icons::paint(
        p,
        Icon::Down,
        icons::square(rect.right_center() - vec2(14.0, 0.0), 15.0),
        t.col.soft,
    );
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    Popup::menu(&r)
        .width(300.0)
        .accessible_name("Sessions")
        .show(|ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            words::soft(ui, &desk.view.club.name);
            let chosen = desk.view.session.map(|s| s.id);
            for s in &desk.view.club.sessions {
                let when = crate::ui::dates::short(s.date);
                let on = Some(s.id) == chosen;
                let b = Button::new(("session", s.id), &s.title)
                    .weight(if on {
                        Weight::Chosen(true)
                    } else {
                        Weight::Quiet
                    })
                    .role(Role::MenuItemRadio)
                    .left()
                    .width(ui.available_width());
                let b = if on { b } else { b.trailing(&when) };
                if b.show(ui).clicked() {
                    desk.ask(Command::ChooseSession(s.id));
                }
            }
            let b = Button::new("to-sessions", "Add or copy a session")
                .icon(Icon::Plus)
                .weight(Weight::Quiet)
                .left();
            if b.width(ui.available_width()).show(ui).clicked() {
                desk.actions.push(Action::Go(Place::Session));
            }
        });
}
