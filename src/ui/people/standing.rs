//! What is always different for a participant: swaps, what is left out, steps of their own, cards.

use egui::{CornerRadius, CursorIcon, Id, Role, Sense, StrokeKind, Ui, Vec2, WidgetInfo, vec2};

use super::parts::{activity_chips, add_activity, chip};
use super::{PeopleState, readers};
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::{ActivityId, StandingId};
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::standing::{Beside, Side, StandingStep};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::picker::{For, Picker};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::choose::{select, tick_at};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::row;
use crate::ui::widgets::{focus_ring, words};

/// Which standing content is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// What comes instead of an activity.
    Swap(ActivityId),
    /// An own step.
    Own(StandingId),
    /// A new own step.
    NewOwn,
    /// A card, by its place in the list.
    Card(usize),
    /// A new card.
    NewCard,
    /// What to do while waiting.
    Waiting,
}

/// Puts what was picked where it is meant.
pub fn put(p: &mut Participant, which: Which, content: Content) {
    let s = &mut p.standing;
    match which {
        Which::Swap(id) => drop(s.swaps.insert(id, content)),
        Which::Own(id) => {
            if let Some(step) = s.own.iter_mut().find(|s| s.id == id) {
                step.content = content;
            }
        }
        Which::NewOwn => s.own.push(StandingStep {
            id: StandingId::NEW,
            content,
            side: Side::After,
            beside: Beside::Water,
            support: true,
        }),
        Which::Card(at) => {
            if let Some(card) = s.cards.get_mut(at) {
                *card = content;
            }
        }
        Which::NewCard => s.cards.push(content),
        Which::Waiting => s.waiting = Some(content),
    }
}

/// Shows the page and puts what was changed into `next`.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    title(ui, "Something else instead", "");
    swaps(ui, desk, state, person, next);
    ui.add_space(12.0);
    title(ui, "Left out", "");
    left_out(ui, desk, person, next);
    ui.add_space(12.0);
    let what = "Before or after an activity, a part of the day, or everything in the water.";
    title(ui, "Own steps", what);
    own(ui, desk, state, person, next);
    ui.add_space(12.0);
    let what = "Beside those that everyone has, such as help and stop.";
    title(ui, "Always-there cards of their own", what);
    cards(ui, desk, state, person, next);
    ui.add_space(12.0);
    let what =
        "A card that says wait and what to do; pieces from 5 to 1, without any time on them.";
    title(ui, "Waiting and counting down", what);
    waiting(ui, desk, state, person, next);
}

/// A heading with what it is about in softer words below.
pub(super) fn title(ui: &mut Ui, words: &str, what: &str) {
    let width = ui.available_width();
    readers::name(ui, words, Class::Public, width);
    if !what.is_empty() {
        words::soft(ui, what);
    }
}

/// What to do while waiting, and whether there are pieces to count down with.
fn waiting(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    row(ui, |ui| {
        if let Some(content) = &person.standing.waiting {
            let shows = crate::model::board::shown(desk.view.club, content);
            let name = format!("No card for waiting with {}", shows.label);
            let id = Id::unique(("waiting", person.id));
            if chip(ui, desk, id, (&shows, Eyes::of(person)), &name) {
                next.standing.waiting = None;
            }
        }
        let b = Button::new(("waiting-add", person.id), "What to do while waiting");
        if b.icon(Icon::Plus).show(ui).clicked() {
            state.picker = Some(Picker::new(For::Standing(person.id, Which::Waiting)));
        }
        let (_, rect) = ui.allocate_space(vec2(220.0, theme::CONTROL));
        let id = Id::unique(("countdown", person.id));
        let on = person.standing.countdown;
        if tick_at(ui, id, rect, on, "Pieces to count down", "").clicked() {
            next.standing.countdown = !on;
        }
    });
}

/// The picture and words of some content; a click picks another picture.
fn picture(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    (which, content): (Which, &Content),
) {
    let t = theme::of(ui.ctx());
    let shown = crate::model::board::shown(desk.view.club, content);
    // A step that is no activity has its words in a field beside it.
    let bare = matches!(which, Which::Own(_)) && content.activity.is_none();
    let font = theme::bold(16.0);
    let label = words::lay(ui.painter(), &shown.label, font, t.col.card_ink, 200.0, 1);
    let wide = if bare { 56.0 } else { 76.0 + label.size().x };
    let (_, rect) = ui.allocate_space(vec2(wide, 56.0));
    let id = Id::unique(("standing-picture", person.id, format!("{which:?}")));
    let r = ui.interact(rect, id, Sense::click());
    let name = format!("{}: pick another picture", shown.label);
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
    let p = ui.painter();
    tile(p, &t, rect, Lie::Flat);
    if r.hovered() {
        let corner = CornerRadius::same(theme::R_CARD);
        let line = egui::Stroke::new(2.0, t.col.ink);
        p.rect_stroke(rect, corner, line, StrokeKind::Inside);
    }
    let mid = rect.left_center() + vec2(28.0, 0.0);
    let place = egui::Rect::from_center_size(mid, Vec2::splat(44.0));
    desk.pictures
        .symbol(p, place, &shown.symbol, Eyes::of(person));
    if !bare {
        let at = rect.left_center() + vec2(60.0, -label.size().y / 2.0);
        p.galley(at, label, t.col.card_ink);
    }
    focus_ring(ui, &r, rect, theme::R_CARD);
    if r.on_hover_cursor(CursorIcon::PointingHand).clicked() {
        state.picker = Some(Picker::new(For::Standing(person.id, which)));
    }
}

fn swaps(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let club = desk.view.club;
    for (id, content) in &person.standing.swaps {
        let was = club.activity(*id).map(|a| Content::of(a));
        let label = was.as_ref().map_or("", |w| w.label.as_str());
        ui.horizontal(|ui| {
            picture(ui, desk, state, person, (Which::Swap(*id), content));
            words::body(ui, "instead of");
            let name = format!("No longer instead of {label}");
            let at = Id::unique(("swap", person.id, *id));
            if let Some(was) = &was
                && chip(ui, desk, at, (was, Eyes::of(person)), &name)
            {
                next.standing.swaps.remove(id);
            }
        });
    }
    let id = Id::unique(("swap-add", person.id));
    let taken = |a| person.standing.swaps.contains_key(&a);
    if let Some(id) = add_activity(ui, id, "Something else instead of…", (club, 280.0), taken) {
        state.picker = Some(Picker::new(For::Standing(person.id, Which::Swap(id))));
    }
}

fn left_out(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let out = &person.standing.left_out;
    row(ui, |ui| {
        let words = ("left-out", "No longer left out");
        if let Some(id) = activity_chips(ui, desk, person, out, words) {
            next.standing.left_out.remove(&id);
        }
        let id = Id::unique(("left-out-add", person.id));
        let from = (desk.view.club, 280.0);
        if let Some(id) = add_activity(ui, id, "Leave something out…", from, |a| out.contains(&a))
        {
            next.standing.left_out.insert(id);
        }
    });
}

/// Beside what a standing step can stand: each water activity, the parts of the day, the activities.
fn besides(club: &Club) -> Vec<(Beside, String)> {
    let water = (Beside::Water, "each activity in the water".to_owned());
    let parts = club.parts.iter();
    let parts = parts.map(|p| (Beside::Part(p.id), format!("the part “{}”", p.name)));
    let all = club.activities.iter();
    let all = all.map(|a| (Beside::Activity(a.id), a.label.clone()));
    std::iter::once(water).chain(parts).chain(all).collect()
}

fn own(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let club = desk.view.club;
    let besides = besides(club);
    let names: Vec<String> = besides.iter().map(|b| b.1.clone()).collect();
    let sides: Vec<String> = Side::ALL.iter().map(|s| s.label().to_owned()).collect();
    for (at, step) in person.standing.own.iter().enumerate() {
        let field = |what: &str| Id::unique(("own", step.id, what));
        let shown = crate::model::board::shown(club, &step.content).label;
        row(ui, |ui| {
            let which = Which::Own(step.id);
            picture(ui, desk, state, person, (which, &step.content));
            if step.content.activity.is_none() {
                let name = format!("Words of {shown}");
                let f = Field::new(field("words"), &name, &step.content.label);
                if let Some(words) = f.show(ui, desk.drafts, 170.0) {
                    next.standing.own[at].content.label = words;
                }
            }
            let now = Side::ALL.iter().position(|s| *s == step.side);
            let name = format!("{shown}: before or after");
            if let Some(i) = select(ui, field("side"), &name, &sides, now, 116.0) {
                next.standing.own[at].side = Side::ALL[i];
            }
            let now = besides.iter().position(|b| b.0 == step.beside);
            let name = format!("{shown}: beside what");
            if let Some(i) = select(ui, field("beside"), &name, &names, now, 260.0) {
                next.standing.own[at].beside = besides[i].0;
            }
            let (_, rect) = ui.allocate_space(vec2(146.0, theme::CONTROL));
            let name = "A support";
            if tick_at(ui, field("support"), rect, step.support, name, "").clicked() {
                next.standing.own[at].support = !step.support;
            }
            let name = format!("Remove {shown}");
            let b = Button::new(("own-remove", step.id), &name).icon_only(Icon::Cross);
            if b.weight(Weight::Quiet).show(ui).clicked() {
                next.standing.own.remove(at);
            }
        });
    }
    let b = Button::new(("own-add", person.id), "Add an own step");
    if b.icon(Icon::Plus).show(ui).clicked() {
        state.picker = Some(Picker::new(For::Standing(person.id, Which::NewOwn)));
    }
}

fn cards(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let club = desk.view.club;
    row(ui, |ui| {
        for (at, card) in person.standing.cards.iter().enumerate() {
            let shows = crate::model::board::shown(club, card);
            let name = format!("Remove the card {}", shows.label);
            let id = Id::unique(("card", person.id, at));
            if chip(ui, desk, id, (&shows, Eyes::of(person)), &name) {
                next.standing.cards.remove(at);
            }
        }
        let b = Button::new(("card-add", person.id), "Add a card");
        if b.icon(Icon::Plus).show(ui).clicked() {
            state.picker = Some(Picker::new(For::Standing(person.id, Which::NewCard)));
        }
    });
}
