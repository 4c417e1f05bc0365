//! Who a participant is: name and mark, sizes, the figures in the pictures, and what a helper
//! needs to know at a glance.

use egui::{Align2, CursorIcon, Id, Role, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, vec2};

use super::{PeopleState, parts, readers};
use crate::model::club::Club;
use crate::model::craft::TileShape;
use crate::model::ids::SymbolId;
use crate::model::people::{Age, Figure, Participant, Skin};
use crate::model::privacy::Guarded;
use crate::symbols::library::library;
use crate::ui::desk::Desk;
use crate::ui::picker::{For, Picker};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::choose::{segments_here, select, tick};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::focus_ring;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::steps::{Steps, in_mm, stepper};
use crate::ui::widgets::words;
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
    shared(ui, person, next);
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
    block(ui, "Shape of their tiles", 176.0, theme::CONTROL, |ui| {
        let options = TileShape::ALL.map(|s| s.label().to_owned());
        let at = TileShape::ALL.iter().position(|s| *s == person.shape);
        let width = ui.available_width();
        let label = "Shape of their tiles";
        if let Some(i) = select(ui, id("shape"), label, &options, at, width) {
            next.shape = TileShape::ALL[i];
        }
    });
    side(ui, desk, person, next);
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

/// The printed side, where the shape leaves it open; else the size that it has.
fn side(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    if !person.shape.has_side() {
        return block(ui, "Tiles, printed", 176.0, theme::CONTROL, |ui| {
            let size = person.tile_size();
            let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
            let says = format!("{} × {}", in_mm(size.w), in_mm(size.h));
            let r = ui.interact(
                rect,
                Id::unique(("participant-field", person.id, "size")),
                Sense::hover(),
            );
            r.widget_info(|| WidgetInfo::labeled(Role::Label, true, &says));
            let (font, ink) = (theme::regular(16.0), theme::of(ui.ctx()).col.ink);
            words::line(ui.painter(), rect, Align2::LEFT_CENTER, &says, font, ink);
        });
    }
    block(ui, "Tiles, printed side", 176.0, theme::CONTROL, |ui| {
        let s = Steps {
            id: Id::unique(("participant-field", person.id, "tile")),
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
}

/// Whether their tiles come from the box that everyone uses.
fn shared(ui: &mut Ui, person: &Participant, next: &mut Participant) {
    let id = Id::unique(("participant-field", person.id, "shared"));
    let words = "Tiles from the shared box";
    let tip = "Their tiles carry no mark and are counted with those of all others who share";
    let r = tick(ui, id, person.shared_tiles, words, "").on_hover_text(tip);
    if r.clicked() {
        next.shared_tiles = !person.shared_tiles;
    }
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
                Eyes::from(Figure {
                    skin,
                    ..person.figure
                }),
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
