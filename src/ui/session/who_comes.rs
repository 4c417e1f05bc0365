//! Who comes to the session: participants and helpers, each a switch.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Rect, Role, Sense, Stroke, StrokeKind, Ui, Vec2,
    WidgetInfo, pos2, vec2,
};

use super::SessionState;
use crate::model::edit::Edit;
use crate::model::people::{Helper, Participant};
use crate::model::session::Session;
use crate::ui::desk::Desk;
use crate::ui::find::FEW;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::choose::{tick, tick_box};
use crate::ui::widgets::{focus_ring, form, words};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let Some(session) = desk.view.session else {
        words::body(ui, "Add a session first.");
        return;
    };
    if let Some(p) = desk.view.club.participants.first() {
        desk.regions.add(rect, Id::unique(("comes", p.id)));
    }
    form::scroll(ui, "who-comes", rect, |ui| {
        let club = desk.view.club;
        let coming = club.attending(session).count();
        words::heading(ui, "Participants", 20.0);
        words::soft(ui, &format!("{coming} of {} come", club.participants.len()));
        let (id, all) = (Id::unique("find-comer"), club.participants.len());
        if all > FEW {
            let (_, at) = ui.allocate_space(vec2(ui.available_width().min(420.0), theme::CONTROL));
            state.find.above(ui, id, at, all);
        }
        form::row(ui, |ui| {
            for p in club.participants.iter().filter(|p| state.find.shows(p)) {
                participant(ui, desk, session, p);
            }
        });
        if club.participants.is_empty() {
            words::body(ui, "There is nobody yet. Add participants in People.");
        }
        ui.add_space(12.0);
        words::heading(ui, "Helpers", 20.0);
        let here = club.helpers.len() - session.helpers_away.len();
        words::soft(ui, &format!("{here} of {} come", club.helpers.len()));
        ui.set_max_width(ui.available_width().min(560.0));
        for h in &club.helpers {
            helper(ui, desk, session, h);
        }
        ui.add_space(16.0);
    });
}

fn participant(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session, p: &Participant) {
    let comes = !session.away.contains(&p.id);
    let (_, rect) = ui.allocate_space(vec2(108.0, 124.0));
    let r = face(ui, desk, rect, Id::unique(("comes", p.id)), p, comes);
    if r.clicked() {
        desk.edit(Edit::Attend(session.id, p.id, !comes));
    }
}

/// A participant's mark and name with a tick at the corner; also used for choosing whom to print.
pub fn face(
    ui: &Ui,
    desk: &mut Desk<'_>,
    rect: Rect,
    id: Id,
    p: &Participant,
    on: bool,
) -> egui::Response {
    let t = theme::of(ui.ctx());
    let r = ui.interact(rect, id, Sense::click());
    r.widget_info(|| WidgetInfo::selected(Role::CheckBox, true, on, &p.name));
    let painter = ui.painter();
    let line = match (on, r.hovered()) {
        (true, _) => Stroke::new(2.2, t.col.ink),
        (false, true) => Stroke::new(2.0, t.col.ink),
        (false, false) => t.edge(),
    };
    painter.rect(
        rect,
        CornerRadius::same(theme::R_CARD),
        t.col.panel,
        line,
        StrokeKind::Inside,
    );
    let side = (rect.height() * 0.48).min(58.0);
    let mark = Rect::from_center_size(
        pos2(rect.center().x, rect.top() + side / 2.0 + 14.0),
        Vec2::splat(side),
    );
    plate(painter, &t, mark);
    desk.pictures
        .mark(painter, mark.shrink(side * 0.2), &p.mark);
    let name = Rect::from_min_max(
        pos2(rect.left() + 6.0, mark.bottom() + 2.0),
        rect.max - vec2(6.0, 6.0),
    );
    let font = if on {
        theme::bold(16.0)
    } else {
        theme::regular(16.0)
    };
    words::line(
        painter,
        name,
        Align2::CENTER_CENTER,
        &p.name,
        font,
        t.col.ink,
    );
    let corner = Rect::from_center_size(rect.right_top() + vec2(-15.0, 15.0), Vec2::splat(22.0));
    tick_box(ui, corner, on, r.hovered());
    focus_ring(ui, &r, rect, theme::R_CARD);
    r.on_hover_cursor(CursorIcon::PointingHand)
}

fn helper(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session, h: &Helper) {
    let comes = !session.helpers_away.contains(&h.id);
    let roles: Vec<&str> = h.roles.iter().map(|r| r.label()).collect();
    if tick(
        ui,
        Id::unique(("helper-comes", h.id)),
        comes,
        &h.name,
        &roles.join(", "),
    )
    .clicked()
    {
        desk.edit(Edit::HelperAttends(session.id, h.id, !comes));
    }
}
