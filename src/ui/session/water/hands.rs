//! What mouse and keys do on the time line: choose a place, go on with the arrows, carry a person to
//! someone in the water.

use egui::{
    Align2, Context, CornerRadius, CursorIcon, DragAndDrop, Id, Key, LayerId, Modifiers, Order,
    Pos2, Rect, Response, Stroke, StrokeKind, Ui, pos2, vec2,
};

use super::{At, Line, WaterState, change, hold};
use crate::model::ids::HelperId;
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::{keyboard_led, way_back, words};

/// A helper in the hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Carried(pub HelperId);

/// A place's name to the toolkit.
pub fn id(at: At) -> Id {
    Id::unique(("water", at))
}

/// Who is in the hand, and where the pointer is.
pub fn in_hand(ctx: &Context) -> Option<(HelperId, Pos2)> {
    let held = DragAndDrop::payload::<Carried>(ctx)?;
    let at = ctx
        .pointer_interact_pos()
        .or_else(|| ctx.pointer_latest_pos())?;
    Some((held.0, at))
}

/// All places, row by row, each with its middle from the left.
fn places(line: &Line<'_>) -> Vec<Vec<(At, f32)>> {
    let block = |who| {
        let own = line.water.of(who).filter_map(move |(m, own)| {
            let column = line.columns.iter().find(|c| c.stretch == m.stretch)?;
            Some((At::Block(who, own.slot), column.middle()))
        });
        own.collect()
    };
    let blocks = line.people.iter().map(|p| block(p.id));
    let helpers = line.helpers.iter().map(|h| vec![(At::Person(h.id), 0.0)]);
    let all = blocks.chain(helpers);
    all.filter(|row: &Vec<_>| !row.is_empty()).collect()
}

/// The keyboard's place is always one that is there; so is what the side shows.
pub fn settle(state: &mut WaterState, line: &Line<'_>) {
    let rows = places(line);
    let there = |at: &At| rows.iter().flatten().any(|(a, _)| a == at);
    state.open = state.open.filter(there);
    let first = rows.first().and_then(|r| r.first());
    state.at = state.at.filter(there).or(first.map(|(at, _)| *at));
}

/// Where an arrow key leads among rows of places: along the row, or to what lies nearest in the row
/// above or below.
fn next(rows: &[Vec<(At, f32)>], from: At, key: Key) -> Option<At> {
    let row = rows
        .iter()
        .position(|r| r.iter().any(|(a, _)| *a == from))?;
    let place = rows[row].iter().position(|(a, _)| *a == from)?;
    let x = rows[row][place].1;
    let to = match key {
        Key::ArrowLeft => return Some(rows[row].get(place.checked_sub(1)?)?.0),
        Key::ArrowRight => return Some(rows[row].get(place + 1)?.0),
        Key::Home => return Some(rows[row].first()?.0),
        Key::End => return Some(rows[row].last()?.0),
        Key::ArrowUp => row.checked_sub(1)?,
        Key::ArrowDown => row + 1,
        Key::PageUp => row.saturating_sub(8),
        Key::PageDown => (row + 8).min(rows.len() - 1),
        _ => return None,
    };
    let near = |p: &&(At, f32)| (p.1 - x).abs();
    let found = rows.get(to)?.iter();
    found
        .min_by(|a, b| near(a).total_cmp(&near(b)))
        .map(|p| p.0)
}

const KEYS: [Key; 8] = [
    Key::ArrowLeft,
    Key::ArrowRight,
    Key::ArrowUp,
    Key::ArrowDown,
    Key::Home,
    Key::End,
    Key::PageUp,
    Key::PageDown,
];

/// Does what was done to a place.
pub fn act(ui: &Ui, state: &mut WaterState, line: &Line<'_>, at: At, r: &Response) {
    if r.clicked() {
        state.at = Some(at);
        open(state, at);
        // Enter clicks too, and goes on to the side; the mouse stays here.
        state.focus_side = r.has_focus() && keyboard_led(ui.ctx());
        used_up(ui);
        if !state.focus_side {
            r.request_focus();
        }
        return;
    }
    if !r.has_focus() {
        return;
    }
    state.at = Some(at);
    regions::keep_arrows(ui, r.id);
    if r.gained_focus() && keyboard_led(ui.ctx()) {
        let under = if line.sticks {
            super::head::HEIGHT
        } else {
            8.0
        };
        let place = Rect::from_min_max(pos2(r.rect.left(), r.rect.top() - under), r.rect.max);
        ui.scroll_to_rect(place.expand(6.0), None);
    }
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    if let Some(key) = KEYS.into_iter().find(|k| pressed(*k))
        && let Some(to) = next(&places(line), at, key)
    {
        state.at = Some(to);
        ui.memory_mut(|m| m.request_focus(id(to)));
    }
}

/// The key that opened something is used up: what gets the keyboard now is not pressed with it.
pub fn used_up(ui: &Ui) {
    for key in [Key::Enter, Key::Space] {
        ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    }
}

/// Shows something at the side.
pub fn open(state: &mut WaterState, at: At) {
    state.open = Some(at);
    state.to_side = true;
}

/// Puts who is in the hand where they are let go, or says why not.
pub fn drop_held(
    ui: &Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    line: &Line<'_>,
    over: Option<At>,
) {
    let Some((helper, at)) = line.held else {
        return;
    };
    if !ui.input(|i| i.pointer.any_released()) {
        return;
    }
    DragAndDrop::clear_payload(ui.ctx());
    let Some(At::Block(who, slot)) = over else {
        state.back = Some((helper, at, ui.input(|i| i.time)));
        return;
    };
    match hold::put(line.club, line.session, line.water, (who, slot), helper) {
        Ok(edit) => {
            state.at = over;
            change(desk, edit);
        }
        Err(why) => {
            state.refused = Some(why);
            state.back = Some((helper, at, ui.input(|i| i.time)));
        }
    }
}

/// The card that follows the pointer, or goes back where it came from.
pub fn ghost(ui: &Ui, desk: &Desk<'_>, state: &mut WaterState) {
    let ctx = ui.ctx();
    let name = |helper| said::helper(desk.view.club, helper);
    if let Some((helper, at)) = in_hand(ctx) {
        ctx.set_cursor_icon(CursorIcon::Grabbing);
        state.back = None;
        return card(ctx, at, &name(helper));
    }
    let Some((helper, from, since)) = state.back else {
        return;
    };
    let home = ctx.read_response(id(At::Person(helper)));
    match home.and_then(|home| way_back(ctx, since, from, home.rect.center())) {
        Some(at) => card(ctx, at, &name(helper)),
        None => state.back = None,
    }
}

fn card(ctx: &Context, at: Pos2, name: &str) {
    let t = theme::of(ctx);
    let p = ctx.layer_painter(LayerId::new(Order::Tooltip, Id::unique("carried")));
    let wide = p.layout_no_wrap(name.to_owned(), theme::bold(17.0), t.col.card_ink);
    let size = vec2(wide.size().x.clamp(60.0, 220.0) + 36.0, 50.0);
    let rect = Rect::from_min_size(at + vec2(6.0, 8.0), size);
    let paper = tile(&p, &t, rect, Lie::Lifted);
    let corner = CornerRadius::same(theme::R_CARD);
    p.rect_stroke(
        rect,
        corner,
        Stroke::new(2.0, t.col.accent),
        StrokeKind::Inside,
    );
    let text = paper.shrink2(vec2(6.0, 0.0));
    words::line(
        &p,
        text,
        Align2::CENTER_CENTER,
        name,
        theme::bold(17.0),
        t.col.card_ink,
    );
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ids::{ParticipantId, SlotId};

    #[test]
    fn arrows_go_along_a_row_and_to_what_lies_nearest_below() {
        let block = |who, slot, x| (At::Block(ParticipantId(who), SlotId(slot)), x);
        let helper = (At::Person(HelperId(9)), 0.0);
        let rows = vec![
            vec![block(1, 1, 10.0), block(1, 2, 90.0)],
            vec![block(2, 2, 90.0)],
            vec![helper],
        ];
        let go = |from: (At, f32), key| next(&rows, from.0, key);
        assert_eq!(go(rows[0][0], Key::ArrowRight), Some(rows[0][1].0));
        assert_eq!(go(rows[0][0], Key::ArrowLeft), None);
        assert_eq!(go(rows[0][0], Key::ArrowDown), Some(rows[1][0].0));
        assert_eq!(go(rows[1][0], Key::ArrowUp), Some(rows[0][1].0));
        assert_eq!(go(rows[1][0], Key::ArrowDown), Some(helper.0));
        assert_eq!(go(helper, Key::ArrowDown), None);
        assert_eq!(go(helper, Key::ArrowUp), Some(rows[1][0].0));
    }
}
