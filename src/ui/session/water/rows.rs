//! The rows of the participants: who it is, a thread through the day, and a block for every moment
//! in the water with the names of the people beside them.

use egui::{
    Align2, CornerRadius, CursorIcon, Painter, Rect, Role, Stroke, StrokeKind, Ui, Vec2,
    WidgetInfo, pos2, vec2,
};

use super::{At, GROUP, Line, WaterState, block_paint, hands, hold};
use crate::model::ids::SlotId;
use crate::model::people::Participant;
use crate::plan::water::{InWater, Together};
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::{focus_ring, words};

/// Shows the rows in sight; gives the block under what is in the hand.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    line: &Line<'_>,
) -> Option<At> {
    let mut over = None;
    let here = match state.at {
        Some(At::Block(who, _)) => line.people.iter().position(|p| p.id == who),
        _ => None,
    };
    for (i, person) in line.people.iter().enumerate() {
        let rect = line.row(i);
        let seen = ui.is_rect_visible(rect);
        if seen {
            ground(ui, line, rect);
        }
        if seen || here == Some(i) {
            for (moment, own) in line.water.of(person.id) {
                over = block(ui, desk, state, line, (rect, person), (moment, own)).or(over);
            }
        }
        if seen {
            name(ui, desk, line, rect, person);
        }
    }
    let top = line.row(0).top() - GROUP;
    group(
        ui.painter(),
        line,
        top,
        "Participants",
        "who is beside them in the water",
    );
    over
}

/// The name of a group of rows.
pub fn group(p: &Painter, line: &Line<'_>, top: f32, name: &str, more: &str) {
    let t = theme::of(p.ctx());
    let room = (line.seen.right() - line.names_at() - 8.0).max(40.0);
    let place = Rect::from_min_size(pos2(line.names_at(), top + 4.0), vec2(room, GROUP - 8.0));
    let took = words::line(
        p,
        place,
        Align2::LEFT_CENTER,
        name,
        theme::bold(18.0),
        t.col.ink,
    );
    let rest = place.with_min_x(took.right() + 12.0);
    words::line(
        p,
        rest,
        Align2::LEFT_CENTER,
        more,
        theme::regular(15.0),
        t.col.soft,
    );
}

/// The thread of a row.
fn ground(ui: &Ui, line: &Line<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let y = rect.center().y;
    let (left, right) = (
        pos2(line.left() - 4.0, y),
        pos2(line.left() + line.wide(), y),
    );
    paint::line(ui.painter(), &t, &[left, right], 3.5);
    ui.painter().circle_filled(right, 5.0, t.col.rope);
    paint::ring(ui.painter(), &t.col, left, 5.0, t.col.ground);
}

/// Who it is, with their mark; over what is scrolled below it.
fn name(ui: &Ui, desk: &mut Desk<'_>, line: &Line<'_>, row: Rect, person: &Participant) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let left = line.names_at();
    let rect = Rect::from_min_max(
        pos2(left - 4.0, row.top()),
        pos2(left + line.names - 16.0, row.bottom()),
    );
    p.rect_filled(rect, 0, t.col.ground);
    let mark = Rect::from_center_size(pos2(left + 22.0, row.center().y), Vec2::splat(42.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(8.0), &person.mark);
    let text = Rect::from_min_max(pos2(mark.right() + 10.0, row.top()), rect.max);
    let more = below(line, person);
    let (upper, lower) = text.split_top_bottom_at_y(row.center().y + 1.0);
    let place = if more.is_empty() {
        text
    } else {
        upper.with_min_y(row.top() + 6.0)
    };
    words::line(
        p,
        place,
        Align2::LEFT_CENTER,
        &person.name,
        theme::bold(16.0),
        t.col.ink,
    );
    if !more.is_empty() {
        let lower = lower.with_max_y(lower.top() + 20.0);
        words::line(
            p,
            lower,
            Align2::LEFT_CENTER,
            &more,
            theme::regular(14.0),
            t.col.soft,
        );
    }
    let r = ui.interact(
        rect,
        egui::Id::unique(("water-name", person.id)),
        egui::Sense::hover(),
    );
    let spoken = if more.is_empty() {
        said::called(person)
    } else {
        format!("{}, {more}", said::called(person))
    };
    r.widget_info(|| WidgetInfo::labeled(Role::Label, true, &spoken));
}

/// What stands below a name.
fn below(line: &Line<'_>, person: &Participant) -> String {
    if let Some(by) = line.session.today.watched_by.get(&person.id) {
        return format!("{} watches", said::helper(line.club, *by));
    }
    if line.water.of(person.id).next().is_none() {
        return "not in the water".to_owned();
    }
    String::new()
}

/// What a screen reader says of a block.
fn spoken(line: &Line<'_>, person: &Participant, moment: &InWater, own: &Together) -> String {
    let with = match own.people.is_empty() {
        true => "with nobody".to_owned(),
        false => format!("with {}", names(line, own)),
    };
    let missing = own.asked as usize - own.people.len().min(own.asked as usize);
    let missing = match (missing, own.people.is_empty()) {
        (0, _) | (_, true) => String::new(),
        (n, false) => format!(", {} missing", said::number(n)),
    };
    let held = if is_held(line, own.slot, person) {
        ", put together by hand"
    } else {
        ""
    };
    format!(
        "{}, {} to {}, {}, {with}{missing}{held}",
        person.name,
        moment.stretch.from,
        moment.stretch.to,
        activity(line, own),
    )
}

/// What is done in a block.
pub fn activity<'a>(line: &Line<'a>, own: &Together) -> &'a str {
    let slot = line.session.slot(own.slot).map(|s| s.activity);
    let id = own.activity.or(slot);
    let found = id.and_then(|id| line.club.activity(id));
    found.map_or("", |a| a.label.as_str())
}

/// The names of those who are with someone.
pub fn names(line: &Line<'_>, own: &Together) -> String {
    let all: Vec<String> = own
        .people
        .iter()
        .map(|h| said::helper(line.club, *h))
        .collect();
    said::list(&all)
}

fn is_held(line: &Line<'_>, slot: SlotId, person: &Participant) -> bool {
    line.session.today.held.contains_key(&(slot, person.id))
}

fn block(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    line: &Line<'_>,
    (row, person): (Rect, &Participant),
    (moment, own): (&InWater, &Together),
) -> Option<At> {
    let column = line.columns.iter().find(|c| c.stretch == moment.stretch)?;
    let rect = line.cell(column, row);
    let at = At::Block(person.id, own.slot);
    let current = state.at == Some(at);
    let seen = ui.is_rect_visible(rect);
    if !seen && !current {
        return None;
    }
    let id = hands::id(at);
    let r = ui.interact(rect, id, regions::one_stop(ui, id, current, false));
    let said = spoken(line, person, moment, own);
    r.widget_info(|| WidgetInfo::selected(Role::Button, true, state.open == Some(at), &said));
    let over = line
        .held
        .filter(|(_, at)| rect.contains(*at) && line.seen.contains(*at));
    if seen {
        let t = theme::of(ui.ctx());
        block_paint::block(ui.painter(), desk, line, rect, own);
        if is_held(line, own.slot, person) {
            block_paint::pin(ui.painter(), &t, rect.right_top() + vec2(-10.0, 0.0));
        }
        if state.open == Some(at) {
            let edge = Stroke::new(2.5, t.col.accent);
            let r = CornerRadius::same(theme::R_CARD);
            ui.painter().rect_stroke(rect, r, edge, StrokeKind::Inside);
        }
        if let Some((helper, _)) = line.held {
            let kept = hold::kept_from(line.club, line.session, moment, (person.id, helper));
            block_paint::target(ui.painter(), &t, rect, kept.is_none(), over.is_some());
        }
    }
    focus_ring(ui, &r, rect, theme::R_CARD);
    hands::act(ui, state, line, at, &r);
    if line.held.is_none() {
        r.on_hover_cursor(CursorIcon::PointingHand)
            .on_hover_text(said);
    }
    over.map(|_| at)
}
