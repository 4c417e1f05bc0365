//! Who a participant is: name and mark, sizes, voice, the figures in the pictures, and what a helper
//! needs to know at a glance.

use egui::{CursorIcon, Id, Role, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo};

use super::{PeopleState, parts, readers};
use crate::model::club::Club;
use crate::model::ids::SymbolId;
use crate::model::people::{Age, Figure, Participant, Skin, Voice};
use crate::model::privacy::Guarded;
use crate::symbols::library::library;
use crate::ui::desk::Desk;
use crate::ui::picker::{For, Picker};
use crate::ui::theme;
use crate::ui::widgets::choose::segments_here;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::focus_ring;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::steps::{Steps, stepper};
use crate::units::Length;

/// Name, mark, sizes, and how the people in the pictures look.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    row(ui, |ui| {
        mark(ui, desk, state, person);
        name_and_size(ui, desk, person, next);
    });
    row(ui, |ui| {
        block(ui, "The story speaks as", 330.0, theme::CONTROL, |ui| {
            let names = ["I", "You", "By name"];
            let now = Voice::ALL
                .iter()
                .position(|v| *v == person.voice)
                .unwrap_or(0);
            if let Some(i) = segments_here(ui, "voice", &names, now) {
                next.voice = Voice::ALL[i];
            }
        });
        block(
            ui,
            "The people in the pictures are",
            330.0,
            theme::CONTROL,
            |ui| {
                let now = person.figure.age as usize;
                if let Some(i) = segments_here(ui, "age", &["Children", "Teens", "Adults"], now) {
                    next.figure.age = Age::ALL[i];
                }
            },
        );
        block(
            ui,
            "Skin of the main person in the pictures",
            420.0,
            96.0,
            |ui| skin(ui, desk, person, next),
        );
    });
    note(ui, desk, person, next);
}

/// The mark, large; a click picks another.
fn mark(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, person: &Participant) {
    let t = theme::of(ui.ctx());
    block(ui, "Mark", 104.0, 96.0, |ui| {
        let (_, rect) = ui.allocate_space(Vec2::splat(96.0));
        let r = ui.interact(rect, Id::unique(("mark", person.id)), Sense::click());
        r.widget_info(|| WidgetInfo::labeled(Role::Button, true, "Pick another mark"));
        let line = if r.hovered() {
            Stroke::new(2.0, t.col.ink)
        } else {
            t.edge()
        };
        ui.painter().rect(
            rect,
            egui::CornerRadius::same(16),
            t.col.card,
            line,
            StrokeKind::Inside,
        );
        desk.pictures
            .mark(ui.painter(), rect.shrink(18.0), &person.mark);
        focus_ring(ui, &r, rect, 16);
        let r = r.on_hover_text(
            "It stands for the participant where a name should not. Click to pick another",
        );
        if r.on_hover_cursor(CursorIcon::PointingHand).clicked() {
            state.picker = Some(Picker::new(For::Mark(person.id)));
        }
    });
}

fn name_and_size(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let id = |what: &str| Id::unique(("participant-field", person.id, what));
    block(
        ui,
        "Name on boards and tiles",
        260.0,
        theme::CONTROL,
        |ui| {
            let width = ui.available_width();
            if let Some(name) =
                Field::new(id("name"), "Name", &person.name).show(ui, desk.drafts, width)
            {
                next.name = name;
            }
        },
    );
    block(ui, "Tiles, printed side", 176.0, theme::CONTROL, |ui| {
        let s = Steps {
            id: id("tile"),
            label: "Tile side",
            unit: "mm",
            range: 30..=120,
            step: 5,
        };
        let now = (person.tile.to_mm().round() as u32).max(1);
        if let Some(mm) = stepper(ui, desk.drafts, &s, now) {
            next.tile = Length::mm(f64::from(mm));
        }
    });
    block(ui, "Large-print words", 176.0, theme::CONTROL, |ui| {
        let s = Steps {
            id: id("text"),
            label: "Text size",
            unit: "pt",
            range: 18..=72,
            step: 2,
        };
        if let Some(pt) = stepper(ui, desk.drafts, &s, person.text_pt) {
            next.text_pt = pt;
        }
    });
}

/// Four small cards with the same picture in each skin.
fn skin(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let t = theme::of(ui.ctx());
    let sample = sample_symbol(desk.view.club);
    let side = ((ui.available_width() - 30.0) / 4.0).min(92.0);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 10.0;
        for (skin, name) in Skin::ALL.into_iter().zip(["light", "warm", "tan", "deep"]) {
            let (_, rect) = ui.allocate_space(Vec2::splat(side));
            let on = skin == person.figure.skin;
            let r = ui.interact(rect, Id::unique(("skin", name)), Sense::click());
            r.widget_info(|| {
                WidgetInfo::selected(Role::RadioButton, true, on, format!("Skin: {name}"))
            });
            let line = match (on, r.hovered()) {
                (true, _) => Stroke::new(3.0, t.col.accent),
                (false, true) => Stroke::new(2.0, t.col.ink),
                (false, false) => Stroke::new(1.2, t.col.seal_line),
            };
            ui.painter().rect(
                rect,
                egui::CornerRadius::same(12),
                t.col.card,
                line,
                StrokeKind::Inside,
            );
            desk.pictures.symbol(
                ui.painter(),
                rect.shrink(6.0),
                &sample,
                Figure {
                    skin,
                    ..person.figure
                },
            );
            focus_ring(ui, &r, rect, 12);
            if r.on_hover_cursor(CursorIcon::PointingHand).clicked() {
                next.figure.skin = skin;
            }
        }
    });
}

/// A picture with a child in it: the club's first activity, or the first symbol there is.
fn sample_symbol(club: &Club) -> SymbolId {
    let wanted = SymbolId::new("say_hello");
    if library().get(&wanted).is_some() {
        return wanted;
    }
    let first = club.activities.first().map(|a| a.symbol.clone());
    first
        .or_else(|| library().all().first().map(|s| s.id.clone()))
        .unwrap_or(wanted)
}

fn note(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let now = person.helper_note.for_owner();
    let (width, label) = (ui.available_width(), "What the helper needs to know");
    ui.spacing_mut().item_spacing.y = 4.0;
    readers::name(ui, label, person.helper_note.class(), width);
    let id = Id::unique(("participant-field", person.id, "note"));
    if let Some(text) = parts::long_field(ui, desk, (id, label), now, (2, width)) {
        next.helper_note = Guarded::new(person.helper_note.class(), text);
    }
}
