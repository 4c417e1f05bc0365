//! What is always different for a participant: swaps, what is left out, steps of their own, cards.

use egui::{CornerRadius, CursorIcon, Id, Role, Sense, StrokeKind, Ui, Vec2, WidgetInfo};

use super::PeopleState;
use crate::model::club::{Activity, Club};
use crate::model::hand::Content;
use crate::model::ids::{ActivityId, StandingId, SymbolId};
use crate::model::people::Participant;
use crate::model::standing::{Beside, Side, StandingStep};
use crate::symbols::lexicon::lexicon;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::picker::{For, Picker};
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{select, tick};
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::{focus_ring, words};

/// Which standing content is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// What comes instead of an activity.
    Swap(ActivityId),
    /// An own step.
    Own(StandingId),
    /// A card, by its place in the list.
    Card(usize),
}

/// The content meant, to change it.
pub fn content_mut(p: &mut Participant, which: Which) -> Option<&mut Content> {
    match which {
        Which::Swap(id) => p.standing.swaps.get_mut(&id),
        Which::Own(id) => {
            let mut own = p.standing.own.iter_mut();
            own.find(|s| s.id == id).map(|s| &mut s.content)
        }
        Which::Card(at) => p.standing.cards.get_mut(at),
    }
}

/// A symbol under its usual words; the club's own activity where there is one with this picture.
pub fn content_of(club: &Club, symbol: &SymbolId) -> Content {
    let own = club.activities.iter().find(|a| a.symbol == *symbol);
    own.map_or_else(
        || Content {
            activity: None,
            symbol: symbol.clone(),
            label: lexicon(&club.rules.words).label(symbol).to_owned(),
        },
        |a| Content::of(a),
    )
}

/// Shows the page and puts what was changed into `next`.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    words::heading(ui, "Instead of something", 18.0);
    swaps(ui, desk, state, person, next);
    words::heading(ui, "Left out", 18.0);
    left_out(ui, desk, person, next);
    words::heading(ui, "Own steps", 18.0);
    own(ui, desk, state, person, next);
    words::heading(ui, "Further always-there cards", 18.0);
    cards(ui, desk, state, person, next);
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
    let label = crate::model::board::shown(desk.view.club, content).label;
    block(ui, &label, 110.0, 64.0, |ui| {
        let (_, rect) = ui.allocate_space(Vec2::splat(64.0));
        let id = Id::unique(("standing-picture", person.id, format!("{which:?}")));
        let r = ui.interact(rect, id, Sense::click());
        let name = format!("{label}: pick another picture");
        r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
        let line = if r.hovered() {
            egui::Stroke::new(2.0, t.col.ink)
        } else {
            t.edge()
        };
        let p = ui.painter();
        p.rect(
            rect,
            CornerRadius::same(10),
            t.col.card,
            line,
            StrokeKind::Inside,
        );
        let shown = crate::model::board::shown(desk.view.club, content);
        desk.pictures
            .symbol(p, rect.shrink(5.0), &shown.symbol, person.figure);
        focus_ring(ui, &r, rect, 10);
        if r.on_hover_cursor(CursorIcon::PointingHand).clicked() {
            state.picker = Some(Picker::new(For::Standing(person.id, which)));
        }
    });
}

fn remove(ui: &mut Ui, name: &str, id: impl std::hash::Hash + std::fmt::Debug) -> bool {
    block(ui, "", 46.0, theme::CONTROL, |ui| {
        let b = Button::new(id, name).icon_only(Icon::Cross);
        b.weight(Weight::Quiet).show(ui).clicked()
    })
}

/// A list of activities to add one from.
fn add(ui: &mut Ui, id: Id, name: &str, from: &[&Activity]) -> Option<ActivityId> {
    let names: Vec<String> = from.iter().map(|a| a.label.clone()).collect();
    block(ui, name, 320.0, theme::CONTROL, |ui| {
        let width = ui.available_width();
        select(ui, id, name, &names, None, width).map(|i| from[i].id)
    })
}

fn others<'a>(club: &'a Club, taken: impl Fn(&Activity) -> bool) -> Vec<&'a Activity> {
    let all = club.activities.iter().map(AsRef::as_ref);
    all.filter(|a| !taken(a)).collect()
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
        let was = club.activity(*id).map_or("", |a| a.label.as_str());
        row(ui, |ui| {
            picture(ui, desk, state, person, (Which::Swap(*id), content));
            block(ui, "comes always instead of", 220.0, 40.0, |ui| {
                words::body(ui, was);
            });
            if remove(ui, &format!("No swap for {was}"), ("swap", person.id, *id)) {
                next.standing.swaps.remove(id);
            }
        });
    }
    let free = others(club, |a| person.standing.swaps.contains_key(&a.id));
    let id = Id::unique(("swap-add", person.id));
    if let Some(id) = add(ui, id, "Something else instead of", &free) {
        // Something to begin with; a click on the picture changes it.
        let rest = SymbolId::new("quiet_place");
        next.standing.swaps.insert(id, content_of(club, &rest));
        state.picker = Some(Picker::new(For::Standing(person.id, Which::Swap(id))));
    }
}

fn left_out(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let club = desk.view.club;
    row(ui, |ui| {
        for id in &person.standing.left_out {
            let label = club.activity(*id).map_or("", |a| a.label.as_str());
            let name = format!("{label} ×");
            let b = Button::new(("left-out", person.id, *id), &name);
            if b.tip("On the board again").show(ui).clicked() {
                next.standing.left_out.remove(id);
            }
        }
    });
    let free = others(club, |a| person.standing.left_out.contains(&a.id));
    let id = Id::unique(("left-out-add", person.id));
    if let Some(id) = add(ui, id, "Has no part in", &free) {
        next.standing.left_out.insert(id);
    }
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
        row(ui, |ui| {
            picture(
                ui,
                desk,
                state,
                person,
                (Which::Own(step.id), &step.content),
            );
            block(ui, "Where", 118.0, theme::CONTROL, |ui| {
                let now = Side::ALL.iter().position(|s| *s == step.side);
                if let Some(i) = select(ui, field("side"), "Before or after", &sides, now, 116.0) {
                    next.standing.own[at].side = Side::ALL[i];
                }
            });
            block(ui, "What", 240.0, theme::CONTROL, |ui| {
                let now = besides.iter().position(|b| b.0 == step.beside);
                let width = ui.available_width();
                if let Some(i) = select(ui, field("beside"), "Beside what", &names, now, width) {
                    next.standing.own[at].beside = besides[i].0;
                }
            });
            block(ui, "", 176.0, theme::CONTROL, |ui| {
                if tick(ui, field("support"), step.support, "It is a support", "").clicked() {
                    next.standing.own[at].support = !step.support;
                }
            });
            let name = format!("Remove {}", step.content.label);
            if remove(ui, &name, ("own-remove", step.id)) {
                next.standing.own.remove(at);
            }
        });
    }
    let b = Button::new(("own-add", person.id), "Add an own step");
    if b.icon(Icon::Plus).show(ui).clicked() {
        next.standing.own.push(StandingStep {
            id: StandingId::NEW,
            content: content_of(club, &SymbolId::new("quiet_place")),
            side: Side::After,
            beside: Beside::Water,
            support: true,
        });
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
            picture(ui, desk, state, person, (Which::Card(at), card));
            let name = format!("Remove {}", card.label);
            if remove(ui, &name, ("card-remove", person.id, at)) {
                next.standing.cards.remove(at);
            }
        }
    });
    let b = Button::new(("card-add", person.id), "Add a card");
    if b.icon(Icon::Plus).show(ui).clicked() {
        let at = person.standing.cards.len();
        next.standing
            .cards
            .push(content_of(club, &SymbolId::new("too_loud")));
        state.picker = Some(Picker::new(For::Standing(person.id, Which::Card(at))));
    }
}
