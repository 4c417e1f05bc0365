//! What the club offers: a list of activities and everything about one of them.

use std::collections::BTreeSet;

use std::sync::Arc;

use egui::{Align2, CursorIcon, Id, Rect, Role, Sense, Ui, Vec2, WidgetInfo, pos2, vec2};

use super::{SessionState, depth};
use crate::model::club::{Activity, Around, Club};
use crate::model::conditions::Known;
use crate::model::edit::Edit;
use crate::model::ids::{ActivityId, SymbolId};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::picker::{For, Picker};
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, here, plate, tile};
use crate::ui::widgets::choose::select;
use crate::ui::widgets::field::{Field, live};
use crate::ui::widgets::form::{block, row, scroll, sheet};
use crate::ui::widgets::{focus_ring, words};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let club = desk.view.club;
    follow(state, club);
    let side = if rect.width() < 800.0 { 220.0 } else { 300.0 };
    let left = Rect::from_min_size(rect.min, vec2(side, rect.height()));
    list(ui, desk, state, left);
    let right = Rect::from_min_max(pos2(left.right() + 20.0, rect.top()), rect.max);
    let Some(activity) = state.activity.and_then(|id| club.activity(id)) else {
        return;
    };
    scroll(ui, "activity-form", right, |ui| {
        ui.set_max_width(ui.available_width().min(820.0));
        sheet(ui, |ui| form(ui, desk, state, activity));
    });
}

/// One that is gone is not looked at; a new one is.
fn follow(state: &mut SessionState, club: &Club) {
    let there = |id: &ActivityId| club.activity(*id).is_some();
    state.activity = state
        .activity
        .filter(there)
        .or_else(|| club.activities.first().map(|a| a.id));
    let n = club.activities.len();
    if n == state.activities + 1 {
        state.activity = club.activities.iter().map(|a| a.id).max_by_key(|a| a.0);
    }
    state.activities = n;
}

fn row_id(id: ActivityId) -> Id {
    Id::unique(("activity", id))
}

fn list(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let club = desk.view.club;
    let find = Rect::from_min_size(rect.min, vec2(rect.width() - 52.0, theme::CONTROL));
    live(
        ui,
        Id::unique("activity-search"),
        find,
        "Look for an activity",
        &mut state.activity_search,
        0.0,
    );
    let add = Rect::from_min_size(
        pos2(rect.right() - theme::CONTROL, rect.top()),
        Vec2::splat(theme::CONTROL),
    );
    if Button::new("activity-add", "Add an activity")
        .icon_only(Icon::Plus)
        .show_at(ui, add)
        .clicked()
        && let Some(a) = fresh(club)
    {
        desk.edit(Edit::AddActivity(a));
        state.activity_search.clear();
    }
    let wanted = state.activity_search.trim().to_lowercase();
    let shown: Vec<&Arc<Activity>> = club
        .activities
        .iter()
        .filter(|a| a.label.to_lowercase().contains(&wanted))
        .collect();
    let below = rect.with_min_y(find.bottom() + 8.0);
    let at = shown.iter().position(|a| Some(a.id) == state.activity);
    if let Some(a) = shown.get(at.unwrap_or(0)) {
        desk.regions.add(below, row_id(a.id));
    }
    scroll(ui, "activity-list", below, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (i, a) in shown.iter().enumerate() {
            let (_, place) = ui.allocate_space(vec2(ui.available_width(), 56.0));
            if ui.is_rect_visible(place.expand(120.0)) || at == Some(i) {
                item(
                    ui,
                    desk,
                    state,
                    place.shrink2(vec2(5.0, 2.0)),
                    a,
                    (i, &shown),
                );
            }
        }
    });
}

fn item(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut SessionState,
    rect: Rect,
    a: &Activity,
    (i, shown): (usize, &[&Arc<Activity>]),
) {
    let t = theme::of(ui.ctx());
    let chosen = state.activity == Some(a.id);
    let sense = regions::one_stop(ui, row_id(a.id), chosen, false);
    let r = ui.interact(rect, row_id(a.id), sense);
    r.widget_info(|| WidgetInfo::selected(Role::ListBoxOption, true, chosen, &a.label));
    let p = ui.painter();
    if chosen {
        tile(p, &t, rect, Lie::Ground);
        here(p, &t, rect);
    }
    let picture =
        Rect::from_center_size(pos2(rect.left() + 32.0, rect.center().y), Vec2::splat(40.0));
    plate(p, &t, picture);
    desk.pictures
        .symbol(p, picture.shrink(3.0), &a.symbol, Default::default());
    let ink = if chosen { t.col.card_ink } else { t.col.ink };
    let text = Rect::from_min_max(
        pos2(picture.right() + 10.0, rect.top()),
        rect.max - vec2(8.0, 0.0),
    );
    words::line(
        p,
        text,
        Align2::LEFT_CENTER,
        &a.label,
        theme::bold(16.0),
        ink,
    );
    focus_ring(ui, &r, rect, theme::R_CARD);
    if r.clicked() {
        state.activity = Some(a.id);
        r.request_focus();
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        if let Some(to) = regions::arrows(ui, i, shown.len(), 1) {
            state.activity = Some(shown[to].id);
            ui.memory_mut(|m| m.request_focus(row_id(shown[to].id)));
        }
    }
    r.on_hover_cursor(CursorIcon::PointingHand);
}

/// A new activity in the club's first part of the day.
fn fresh(club: &Club) -> Option<Activity> {
    let part = club.parts.first()?.id;
    Some(Activity {
        id: ActivityId(0),
        label: "New activity".into(),
        symbol: SymbolId::new("welcome_circle"),
        part,
        minutes: 5,
        in_water: false,
        depth_cm: None,
        dry_replacement: None,
        sentences: Vec::new(),
        around: Default::default(),
        equipment: Vec::new(),
        place: String::new(),
        thing: String::new(),
        not_when: BTreeSet::new(),
    })
}

fn form(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, a: &Activity) {
    let mut next = a.clone();
    row(ui, |ui| {
        picture(ui, desk, state, a);
        ui.vertical(|ui| {
            row(ui, |ui| words_and_part(ui, desk, a, &mut next));
            row(ui, |ui| depth::time_and_water(ui, desk, a, &mut next));
        });
    });
    ui.add_space(6.0);
    let width = ui.available_width();
    let id = |what: &str| Id::unique(("activity-field", a.id, what));
    let sentences = a.sentences.join("\n");
    block(
        ui,
        "Sentences for the story, one a line. {I}, {my}, {walk} follow the participant’s voice.",
        width,
        120.0,
        |ui| {
            let f = Field::new(id("sentences"), "Sentences for the story", &sentences).rows(4);
            if let Some(text) = f.show(ui, desk.drafts, width) {
                next.sentences = lines(&text);
            }
        },
    );
    around(ui, desk, a, &mut next);
    let equipment = a.equipment.join("\n");
    block(
        ui,
        "What has to be brought, one a line",
        width,
        80.0,
        |ui| {
            let f = Field::new(id("equipment"), "What has to be brought", &equipment).rows(2);
            if let Some(text) = f.show(ui, desk.drafts, width) {
                next.equipment = lines(&text);
            }
        },
    );
    place_and_thing(ui, desk, a, &mut next);
    not_when(ui, a, &mut next);
    if next != *a {
        desk.edit(Edit::ChangeActivity(next));
    }
    let b = Button::new(("activity-remove", a.id), "Remove this activity")
        .icon(Icon::Bin)
        .weight(Weight::Quiet);
    if b.show(ui).clicked() {
        desk.edit(Edit::RemoveActivity(a.id));
    }
}

/// What else the story says: each a sentence, or nothing.
fn around(ui: &mut Ui, desk: &mut Desk<'_>, a: &Activity, next: &mut Activity) {
    type Get = fn(&mut Around) -> &mut String;
    let fields: [(&str, &str, Get); 4] = [
        ("Who is there", "The trainer shows it first.", |a| {
            &mut a.who
        }),
        ("What may be strong", "The sand may feel rough.", |a| {
            &mut a.strong
        }),
        ("What helps", "{I} can wipe {my} hands.", |a| &mut a.helps),
        ("Why it is done", "Moving wakes the body.", |a| &mut a.why),
    ];
    row(ui, |ui| {
        for (label, hint, get) in fields {
            block(ui, label, 380.0, theme::CONTROL, |ui| {
                let now = get(&mut (*a.around).clone()).clone();
                let width = ui.available_width();
                let id = Id::unique(("activity-around", a.id, label));
                if let Some(text) =
                    Field::new(id, label, &now)
                        .hint(hint)
                        .show(ui, desk.drafts, width)
                {
                    *get(&mut next.around) = text;
                }
            });
        }
    });
}

/// Where it is done, and the thing that stands for it where no picture is understood.
fn place_and_thing(ui: &mut Ui, desk: &mut Desk<'_>, a: &Activity, next: &mut Activity) {
    let id = |what: &str| Id::unique(("activity-field", a.id, what));
    row(ui, |ui| {
        block(ui, "Where it is done", 300.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let f = Field::new(id("place"), "Where it is done", &a.place).hint("at the jetty");
            if let Some(place) = f.show(ui, desk.drafts, width) {
                next.place = place;
            }
        });
        block(
            ui,
            "A real thing that stands for it",
            300.0,
            theme::CONTROL,
            |ui| {
                let width = ui.available_width();
                let name = "A real thing that stands for it";
                let f = Field::new(id("thing"), name, &a.thing).hint("a paddle");
                if let Some(thing) = f.show(ui, desk.drafts, width) {
                    next.thing = thing;
                }
            },
        );
    });
}

/// Conditions under which the club does not do it.
fn not_when(ui: &mut Ui, a: &Activity, next: &mut Activity) {
    words::soft(ui, "Not done when it is, as the club decided:");
    row(ui, |ui| {
        for known in Known::ALL {
            let on = a.not_when.contains(&known);
            let b = Button::new(("not-when", a.id, known.word()), known.label());
            if b.weight(Weight::Chosen(on)).show(ui).clicked() {
                if on {
                    next.not_when.remove(&known);
                } else {
                    next.not_when.insert(known);
                }
            }
        }
    });
    ui.add_space(6.0);
}

fn lines(text: &str) -> Vec<String> {
    text.lines()
        .map(str::trim)
        .filter(|l| !l.is_empty())
        .map(str::to_owned)
        .collect()
}

/// The picture, large; a click picks another.
fn picture(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, a: &Activity) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(Vec2::splat(152.0));
    let card = rect.shrink(4.0);
    let r = ui.interact(card, Id::unique(("activity-picture", a.id)), Sense::click());
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, "Pick another picture"));
    let paper = tile(ui.painter(), &t, card, Lie::Ground);
    crate::ui::boards::face::face(
        ui.painter(),
        desk.pictures,
        paper,
        &a.symbol,
        &a.label,
        Default::default(),
    );
    focus_ring(ui, &r, card, theme::R_CARD);
    if r.on_hover_text("Pick another picture")
        .on_hover_cursor(CursorIcon::PointingHand)
        .clicked()
    {
        state.picker = Some(Picker::new(For::Activity(a.id)));
    }
}

fn words_and_part(ui: &mut Ui, desk: &mut Desk<'_>, a: &Activity, next: &mut Activity) {
    let id = |what: &str| Id::unique(("activity-field", a.id, what));
    block(ui, "Words under the picture", 240.0, theme::CONTROL, |ui| {
        let width = ui.available_width();
        if let Some(label) = Field::new(id("label"), "Words under the picture", &a.label).show(
            ui,
            desk.drafts,
            width,
        ) {
            next.label = label;
        }
    });
    block(ui, "Usual part of the day", 220.0, theme::CONTROL, |ui| {
        let parts: Vec<String> = desk
            .view
            .club
            .parts
            .iter()
            .map(|p| p.name.clone())
            .collect();
        let now = desk.view.club.parts.iter().position(|p| p.id == a.part);
        let width = ui.available_width();
        if let Some(i) = select(ui, id("part"), "Usual part of the day", &parts, now, width) {
            next.part = desk.view.club.parts[i].id;
        }
    });
}
