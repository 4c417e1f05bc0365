//! One moment of one participant at the side: who could be with them, what keeps each from it, and
//! how they are wished together.

use egui::{Align2, Id, Rect, Ui, vec2};

use super::{WaterState, change, hold, person};
use crate::model::edit::TodayEdit;
use crate::model::ids::{ParticipantId, SlotId};
use crate::model::people::{Helper, Role};
use crate::model::session::Session;
use crate::model::today::Pair;
use crate::plan::water::{InWater, Together};
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::choose::{select_at, tick_at};
use crate::ui::widgets::words;
use crate::workbench::view::View;

/// Shows it.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    session: &Session,
    (who, slot): (ParticipantId, SlotId),
) {
    let view = *desk.view;
    let found = hold::moment_of(view.water, who, slot);
    let (Some((moment, own)), Some(p)) = (found, view.club.participant(who)) else {
        return;
    };
    let stretch = &moment.stretch;
    let says = format!("With {} at {}", p.name, stretch.from);
    person::heading(ui, state, desk.drafts.is_open(), &says);
    let activity = own.activity.and_then(|a| view.club.activity(a));
    let what = activity.map_or(String::new(), |a| format!("{}, ", a.label));
    words::soft(ui, &format!("{what}{} to {}", stretch.from, stretch.to));
    let people: Vec<String> = own
        .people
        .iter()
        .map(|h| said::helper(view.club, *h))
        .collect();
    let held = session.today.held.contains_key(&(slot, who));
    let how = if held {
        "put together by hand"
    } else {
        "as the program pairs them"
    };
    words::body(
        ui,
        &match people.is_empty() {
            true => "Nobody is beside them.".to_owned(),
            false => format!("{}, {how}.", said::list(&people)),
        },
    );
    if own.asked > 1 {
        let asked = said::number(own.asked as usize);
        words::soft(
            ui,
            &format!("The club’s rule asks for {asked} people beside each."),
        );
    }
    if held {
        let b = Button::new("water-let-choose", "Let the program choose");
        if b.show(ui).clicked() {
            change(desk, TodayEdit::Hold(slot, who, Default::default()));
        }
    }
    ui.add_space(4.0);
    words::heading(ui, "Who is with them", 16.0);
    let goes = |h: &&std::sync::Arc<Helper>| h.roles.contains(&Role::WaterSafety);
    for helper in view.club.helpers.iter().filter(goes) {
        choice(ui, desk, state, session, (moment, own), helper);
    }
}

/// The first who can be chosen, for the keyboard.
pub fn first(view: &View<'_>, session: &Session, who: ParticipantId, slot: SlotId) -> Option<Id> {
    let (moment, _) = hold::moment_of(view.water, who, slot)?;
    let can = |h: &&std::sync::Arc<Helper>| {
        hold::kept_from(view.club, session, moment, (who, h.id)).is_none()
    };
    let first = view.club.helpers.iter().find(can)?;
    Some(Id::unique(("water-with", first.id)))
}

/// One helper: a tick to put them there, the wish for the pair, and what keeps them.
fn choice(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    session: &Session,
    (moment, own): (&InWater, &Together),
    helper: &Helper,
) {
    let view = *desk.view;
    let kept = hold::kept_from(view.club, session, moment, (own.who, helper.id));
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
    let wish = rect.with_min_x(rect.right() - 128.0);
    let place = rect.with_max_x(wish.left() - 6.0);
    let on = own.people.contains(&helper.id);
    let id = Id::unique(("water-with", helper.id));
    let clicked = match kept {
        Some(_) => unticked(ui, place, &helper.name),
        None => tick_at(ui, id, place, on, &helper.name, "").clicked(),
    };
    if clicked {
        choose(desk, state, session, own, helper);
    }
    pair(ui, desk, session, (wish, own.who), helper);
    let elsewhere = moment
        .visits
        .iter()
        .find(|v| v.people.contains(&helper.id) && v.who != own.who);
    let says = kept.or_else(|| {
        let other = elsewhere.and_then(|v| view.club.participant(v.who))?;
        Some(format!("now with {}", said::called(other)))
    });
    if let Some(says) = says {
        below(ui, id.with("below"), &says);
    }
}

/// Soft words under a name.
fn below(ui: &mut Ui, id: Id, says: &str) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let g = words::lay(
        ui.painter(),
        says,
        theme::regular(15.0),
        t.col.soft,
        width - 48.0,
        3,
    );
    ui.add_space(-10.0);
    let (_, rect) = ui.allocate_space(vec2(width, g.size().y));
    let r = ui.interact(rect, id, egui::Sense::hover());
    r.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Label, true, says));
    ui.painter()
        .galley(rect.min + vec2(44.0, 0.0), g, t.col.soft);
}

/// The name of someone who cannot be chosen.
fn unticked(ui: &Ui, rect: Rect, name: &str) -> bool {
    let t = theme::of(ui.ctx());
    let room = rect.with_min_x(rect.left() + 44.0);
    let sign = Rect::from_center_size(rect.left_center() + vec2(18.0, 0.0), vec2(20.0, 20.0));
    crate::ui::icons::paint(
        ui.painter(),
        crate::ui::icons::Icon::Cross,
        sign,
        t.col.soft,
    );
    words::line(
        ui.painter(),
        room,
        Align2::LEFT_CENTER,
        name,
        theme::regular(16.0),
        t.col.soft,
    );
    false
}

/// Puts a helper there; one who was put there by hand already goes again.
fn choose(
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    session: &Session,
    own: &Together,
    helper: &Helper,
) {
    let view = *desk.view;
    let held = session.today.held.get(&(own.slot, own.who));
    if let Some(held) = held.filter(|h| h.contains(&helper.id)) {
        let mut next = held.clone();
        next.remove(&helper.id);
        return change(desk, TodayEdit::Hold(own.slot, own.who, next));
    }
    match hold::put(
        view.club,
        session,
        view.water,
        (own.who, own.slot),
        helper.id,
    ) {
        Ok(edit) => {
            state.refused = None;
            change(desk, edit);
        }
        Err(why) => state.refused = Some(why),
    }
}

/// How the two are wished together.
fn pair(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    session: &Session,
    (rect, who): (Rect, ParticipantId),
    helper: &Helper,
) {
    const WISHES: [(Option<Pair>, &str); 3] = [
        (None, "As usual"),
        (Some(Pair::Wanted), "Wanted"),
        (Some(Pair::Never), "Not together"),
    ];
    let now = session.today.pairs.get(&(who, helper.id)).copied();
    let at = WISHES.iter().position(|(w, _)| *w == now);
    let names: Vec<String> = WISHES.iter().map(|(_, n)| (*n).to_owned()).collect();
    let id = Id::unique(("water-wish", helper.id));
    let label = format!("{} with them", helper.name);
    if let Some(i) = select_at(ui, id, rect, &label, &names, at) {
        change(desk, TodayEdit::Pair(who, helper.id, WISHES[i].0));
    }
}
