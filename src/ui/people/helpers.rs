//! The helpers and what each does, as the club entered it.

use egui::{Align2, CursorIcon, Id, Rect, Role as Reads, Ui, WidgetInfo, pos2, vec2};

use super::PeopleState;
use crate::model::edit::Edit;
use crate::model::ids::HelperId;
use crate::model::people::{Helper, Role};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, here, tile};
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, scroll, sheet};
use crate::ui::widgets::{focus_ring, words};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let club = desk.view.club;
    follow(state, desk);
    let side = if rect.width() < 800.0 { 200.0 } else { 260.0 };
    let left = Rect::from_min_size(rect.min, vec2(side, rect.height()));
    list(ui, desk, state, left);
    let right = Rect::from_min_max(pos2(left.right() + 20.0, rect.top()), rect.max);
    let Some(h) = state.helper.and_then(|id| club.helper(id)) else {
        return;
    };
    scroll(ui, "helper-form", right, |ui| {
        ui.set_max_width(ui.available_width().min(560.0));
        sheet(ui, |ui| form(ui, desk, h));
    });
}

fn follow(state: &mut PeopleState, desk: &Desk<'_>) {
    let all = &desk.view.club.helpers;
    state.helper = state
        .helper
        .filter(|id| desk.view.club.helper(*id).is_some())
        .or_else(|| all.first().map(|h| h.id));
    if all.len() == state.helpers + 1 {
        state.helper = all.iter().map(|h| h.id).max_by_key(|id| id.0);
    }
    state.helpers = all.len();
}

fn row_id(id: HelperId) -> Id {
    Id::unique(("helper", id))
}

fn list(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    if Button::new("helper-add", "Add a helper")
        .icon(Icon::Plus)
        .show_at(ui, top)
        .clicked()
    {
        desk.edit(Edit::AddHelper(Helper::new("New helper")));
    }
    let below = rect.with_min_y(top.bottom() + 8.0);
    if let Some(id) = state.helper {
        desk.regions.add(below, row_id(id));
    }
    scroll(ui, "helper-list", below, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (i, h) in desk.view.club.helpers.iter().enumerate() {
            let (_, place) = ui.allocate_space(vec2(ui.available_width(), 60.0));
            item(ui, desk, state, place.shrink2(vec2(5.0, 3.0)), h, i);
        }
    });
}

fn item(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    rect: Rect,
    h: &Helper,
    i: usize,
) {
    let t = theme::of(ui.ctx());
    let chosen = state.helper == Some(h.id);
    let sense = regions::one_stop(ui, row_id(h.id), chosen, false);
    let r = ui.interact(rect, row_id(h.id), sense);
    let roles: Vec<&str> = h.roles.iter().map(|r| r.label()).collect();
    let roles = if roles.is_empty() {
        "no role yet".to_owned()
    } else {
        roles.join(", ")
    };
    r.widget_info(|| {
        WidgetInfo::selected(
            Reads::ListBoxOption,
            true,
            chosen,
            format!("{}, {roles}", h.name),
        )
    });
    let p = ui.painter();
    if chosen {
        tile(p, &t, rect, Lie::Ground);
        here(p, &t, rect);
    }
    let (ink, soft) = if chosen {
        (t.col.card_ink, t.col.card_soft)
    } else {
        (t.col.ink, t.col.soft)
    };
    let (upper, lower) = rect
        .shrink2(vec2(18.0, 0.0))
        .split_top_bottom_at_fraction(0.52);
    words::line(
        p,
        upper,
        Align2::LEFT_BOTTOM,
        &h.name,
        theme::bold(16.0),
        ink,
    );
    words::line(
        p,
        lower,
        Align2::LEFT_TOP,
        &roles,
        theme::regular(14.0),
        soft,
    );
    focus_ring(ui, &r, rect, theme::R_CARD);
    if r.clicked() {
        state.helper = Some(h.id);
        r.request_focus();
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        let all = &desk.view.club.helpers;
        if let Some(to) = regions::arrows(ui, i, all.len(), 1) {
            state.helper = Some(all[to].id);
            ui.memory_mut(|m| m.request_focus(row_id(all[to].id)));
        }
    }
    r.on_hover_cursor(CursorIcon::PointingHand);
}

fn form(ui: &mut Ui, desk: &mut Desk<'_>, h: &Helper) {
    let mut next = h.clone();
    block(ui, "Name", 300.0, theme::CONTROL, |ui| {
        let width = ui.available_width();
        let f = Field::new(Id::unique(("helper-name", h.id)), "Name", &h.name);
        if let Some(name) = f.show(ui, desk.drafts, width) {
            next.name = name;
        }
    });
    words::heading(ui, "Does", 18.0);
    for role in Role::ALL {
        let on = h.roles.contains(&role);
        if tick(
            ui,
            Id::unique(("role", h.id, role.label())),
            on,
            role.label(),
            "",
        )
        .clicked()
        {
            if on {
                next.roles.remove(&role);
            } else {
                next.roles.insert(role);
            }
        }
    }
    words::soft(
        ui,
        "As the club entered it. Daystrand does not know who is qualified.",
    );
    if next != *h {
        desk.edit(Edit::ChangeHelper(next));
    }
    let b = Button::new(("helper-remove", h.id), "Remove")
        .icon(Icon::Bin)
        .weight(Weight::Quiet);
    if b.show(ui).clicked() {
        desk.edit(Edit::RemoveHelper(h.id));
    }
}
