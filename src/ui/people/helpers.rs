//! The helpers and what each does, as the club entered it.

use egui::{Align2, CursorIcon, Id, Rect, Role as Reads, Ui, WidgetInfo, pos2, vec2};
use jiff::civil::Date;

use super::ahead::{self, Gap};
use super::{PeopleState, ahead_sheet, helper_form};
use crate::model::edit::Edit;
use crate::model::ids::HelperId;
use crate::model::people::Helper;
use crate::plan::certificates::Standing;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, here, tile};
use crate::ui::widgets::form::{scroll, sheet};
use crate::ui::widgets::{focus_ring, words};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let club = desk.view.club;
    follow(state, desk);
    let side = if rect.width() < 800.0 { 200.0 } else { 260.0 };
    let left = Rect::from_min_size(rect.min, vec2(side, rect.height()));
    list(ui, desk, state, left);
    let right = Rect::from_min_max(pos2(left.right() + 20.0, rect.top()), rect.max);
    if state.ahead {
        scroll(ui, "certificates-ahead", right, |ui| {
            ui.set_max_width(ui.available_width().min(WIDEST));
            ahead_sheet::show(ui, desk, state);
            ui.add_space(16.0);
        });
        return;
    }
    let Some(h) = state.helper.and_then(|id| club.helper(id)) else {
        return;
    };
    scroll(ui, "helper-form", right, |ui| {
        ui.set_max_width(ui.available_width().min(WIDEST));
        sheet(ui, |ui| helper_form::show(ui, desk, state, h));
        ui.add_space(16.0);
    });
}

/// Widest the right side gets.
const WIDEST: f32 = 880.0;

fn follow(state: &mut PeopleState, desk: &Desk<'_>) {
    let all = &desk.view.club.helpers;
    state.helper = state
        .helper
        .filter(|id| desk.view.club.helper(*id).is_some())
        .or_else(|| all.first().map(|h| h.id));
    if all.len() == state.helpers + 1 {
        state.helper = all.iter().map(|h| h.id).max_by_key(|id| id.0);
        state.ahead = false;
    }
    state.helpers = all.len();
}

/// The id of a helper in the list.
pub fn row_id(id: HelperId) -> Id {
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
    let second = top.translate(vec2(0.0, theme::CONTROL + 8.0));
    let b = Button::new("certificates-ahead", "Certificates ahead")
        .icon(Icon::Diamond)
        .weight(Weight::Chosen(state.ahead));
    if b.show_at(ui, second).clicked() {
        state.ahead = true;
        ui.ctx().request_repaint();
    }
    let below = rect.with_min_y(second.bottom() + 8.0);
    if let Some(id) = state.helper {
        desk.regions.add(below, row_id(id));
    }
    scroll(ui, "helper-list", below, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let club = desk.view.club;
        let sessions = ahead::sessions(club, desk.view.today);
        for (i, h) in club.helpers.iter().enumerate() {
            let ends = ends(&ahead::gaps_of(club, h, &sessions), desk.view.today);
            let height = if ends.is_some() { 90.0 } else { 60.0 };
            let (_, place) = ui.allocate_space(vec2(ui.available_width(), height));
            let place = place.shrink2(vec2(5.0, 3.0));
            item(ui, desk, state, place, (h, ends.as_deref(), i));
        }
    });
}

/// What ends first before the season does, in a few words.
fn ends(gaps: &[Gap<'_>], today: Date) -> Option<String> {
    let first = gaps.first()?;
    let more = match gaps.len() {
        1 => String::new(),
        n => format!(" and {} more", n - 1),
    };
    let name = first.award.name.trim();
    Some(match first.standing {
        Standing::Ended { last } => {
            let verb = if last < today { "ended" } else { "ends" };
            let day = dates::brief(last, today);
            format!("{verb} {day}: {name}{more}")
        }
        Standing::NotYetGained { gained } => {
            format!("begins {}: {name}{more}", dates::brief(gained, today))
        }
        _ => format!("no date: {name}{more}"),
    })
}

fn item(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    rect: Rect,
    (h, ends, i): (&Helper, Option<&str>, usize),
) {
    let t = theme::of(ui.ctx());
    let current = state.helper == Some(h.id);
    let chosen = current && !state.ahead;
    let sense = regions::one_stop(ui, row_id(h.id), current, false);
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
            match ends {
                Some(ends) => format!("{}, {roles}, {ends}", h.name),
                None => format!("{}, {roles}", h.name),
            },
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
    let inner = rect.shrink2(vec2(18.0, 0.0));
    let (two, third) = match ends {
        Some(_) => inner.split_top_bottom_at_y(inner.bottom() - 26.0),
        None => (inner, Rect::NOTHING),
    };
    let (upper, lower) = two.split_top_bottom_at_fraction(0.52);
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
    if let Some(ends) = ends {
        let mid = pos2(third.left() + 6.0, third.top() + 9.0);
        let ground = if chosen { t.col.card } else { t.col.ground };
        icons::diamond(p, mid, 6.0, false, ink, ground);
        let room = third.with_min_x(third.left() + 20.0);
        words::line(p, room, Align2::LEFT_TOP, ends, theme::bold(14.0), ink);
    }
    focus_ring(ui, &r, rect, theme::R_CARD);
    if r.clicked() {
        state.ahead = false;
        state.helper = Some(h.id);
        r.request_focus();
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        let all = &desk.view.club.helpers;
        if let Some(to) = regions::arrows(ui, i, all.len(), 1) {
            state.ahead = false;
            state.helper = Some(all[to].id);
            ui.memory_mut(|m| m.request_focus(row_id(all[to].id)));
        }
    }
    r.on_hover_cursor(CursorIcon::PointingHand);
}
