//! The participants, and what the program needs to know about each.

use egui::{
    Align2, CursorIcon, Id, Rect, Role, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::{PAGES, Page, PeopleState, manner, parts, profile, readers, seen, standing};
use crate::model::club::Club;
use crate::model::edit::Edit;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::people::{Age, Figure, Participant, Skin, Voice};
use crate::model::privacy::Guarded;
use crate::model::profile::Section;
use crate::symbols::library::library;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::picker::{For, Picker};
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, here, plate, tile};
use crate::ui::widgets::choose::{Steps, segments, segments_here, select_at, stepper};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row, scroll, sheet};
use crate::ui::widgets::{focus_ring, words};
use crate::units::Length;
use crate::workbench::command::{Command, Place};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let side = if rect.width() < 800.0 { 200.0 } else { 260.0 };
    let left = Rect::from_min_size(rect.min, vec2(side, rect.height()));
    list(ui, desk, left);
    let right = Rect::from_min_max(pos2(left.right() + 20.0, rect.top()), rect.max);
    let Some(person) = desk.view.participant else {
        scroll(ui, "no-participant", right, |ui| {
            words::heading(ui, "There is nobody yet.", 20.0);
            words::body(ui, "Add the first participant with the button at the left.");
        });
        return;
    };
    let wide = right.width().min(WIDEST);
    let tabs = Rect::from_min_size(right.min, vec2(wide - 16.0, theme::CONTROL));
    pages(ui, desk, state, person, tabs);
    let below = right.with_min_y(tabs.bottom() + 10.0);
    // A page of its own for each: what was scrolled down on one is not scrolled on another.
    let salt = format!("participant-form {:?}", state.page);
    scroll(ui, &salt, below, |ui| {
        ui.set_max_width(ui.available_width().min(WIDEST - 16.0));
        sheet(ui, |ui| form(ui, desk, state, person));
        ui.add_space(16.0);
    });
}

/// Widest a participant's page gets.
const WIDEST: f32 = 1100.0;

/// Which page of the participant: tabs, or a list where they have no room. Each says how much is
/// there.
fn pages(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    rect: Rect,
) {
    let counts = PAGES.map(|(page, name)| match filled(person, page) {
        0 => name.to_owned(),
        n => format!("{name} · {n}"),
    });
    let now = PAGES.iter().position(|(p, _)| *p == state.page);
    let now = now.unwrap_or(0);
    let chosen = if rect.width() < 780.0 {
        let id = Id::unique("participant-page");
        desk.regions.add(rect, id);
        select_at(ui, id, rect, "Page of the participant", &counts, Some(now))
    } else {
        desk.regions
            .add(rect, Id::unique(("participant-page", now)));
        let names = counts.each_ref().map(String::as_str);
        segments(ui, "participant-page", rect, &names, now)
    };
    if let Some(i) = chosen {
        state.page = PAGES[i].0;
        // The tabs were painted before the page changed.
        ui.ctx().request_repaint();
    }
}

/// How much is said on a page.
fn filled(person: &Participant, page: Page) -> usize {
    let facts = |of: &[Section]| {
        let all = of.iter().flat_map(|s| s.fields());
        all.filter(|f| !person.profile.for_owner(*f).is_empty())
            .count()
    };
    match page {
        Page::Always => {
            let s = &person.standing;
            s.swaps.len() + s.left_out.len() + s.own.len() + s.cards.len()
        }
        Page::Know => {
            let more = person.profile.favourites.len() + person.profile.hard().for_owner().len();
            facts(&profile::KNOW) + more
        }
        Page::Sealed => facts(&[Section::Sealed]),
        Page::Looks | Page::Board | Page::Seen => 0,
    }
}

fn row_id(id: ParticipantId) -> Id {
    Id::unique(("participant", id))
}

fn list(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let club = desk.view.club;
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    if Button::new("participant-add", "Add a participant")
        .icon(Icon::Plus)
        .show_at(ui, top)
        .clicked()
    {
        desk.edit(Edit::AddParticipant(fresh(club)));
    }
    let below = rect.with_min_y(top.bottom() + 8.0);
    let now = desk.view.participant.map(|p| p.id);
    let at = club
        .participants
        .iter()
        .position(|p| Some(p.id) == now)
        .unwrap_or(0);
    if let Some(p) = club.participants.get(at) {
        desk.regions.add(below, row_id(p.id));
    }
    scroll(ui, "participant-list", below, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (i, p) in club.participants.iter().enumerate() {
            let (_, place) = ui.allocate_space(vec2(ui.available_width(), 60.0));
            item(ui, desk, place.shrink2(vec2(5.0, 3.0)), p, (i, i == at));
        }
    });
}

fn item(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    rect: Rect,
    person: &Participant,
    (i, current): (usize, bool),
) {
    let t = theme::of(ui.ctx());
    let all = &desk.view.club.participants;
    let sense = regions::one_stop(ui, row_id(person.id), current, false);
    let r = ui.interact(rect, row_id(person.id), sense);
    r.widget_info(|| {
        let words = format!("{}, {} of {}", person.name, i + 1, all.len());
        WidgetInfo::selected(Role::ListBoxOption, true, current, words)
    });
    let p = ui.painter();
    if current {
        tile(p, &t, rect, Lie::Ground);
        here(p, &t, rect);
    }
    let mark = Rect::from_center_size(pos2(rect.left() + 34.0, rect.center().y), Vec2::splat(42.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(8.0), &person.mark);
    let ink = if current { t.col.card_ink } else { t.col.ink };
    let text = Rect::from_min_max(
        pos2(mark.right() + 12.0, rect.top()),
        rect.max - vec2(8.0, 0.0),
    );
    words::line(
        p,
        text,
        Align2::LEFT_CENTER,
        &person.name,
        theme::bold(17.0),
        ink,
    );
    focus_ring(ui, &r, rect, theme::R_CARD);
    if r.clicked() {
        desk.ask(Command::ChooseParticipant(person.id));
        r.request_focus();
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        if let Some(to) = regions::alt_arrows(ui, i, all.len(), 1) {
            desk.edit(Edit::MoveParticipant(person.id, to));
        }
        if let Some(to) = regions::arrows(ui, i, all.len(), 1) {
            desk.ask(Command::ChooseParticipant(all[to].id));
            ui.memory_mut(|m| m.request_focus(row_id(all[to].id)));
        }
        if ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, egui::Key::Delete)) {
            desk.edit(Edit::RemoveParticipant(person.id));
        }
    }
    r.on_hover_cursor(CursorIcon::PointingHand);
}

/// A new participant with the first mark that nobody has.
fn fresh(club: &Club) -> Participant {
    let taken = |id: &SymbolId| club.participants.iter().any(|p| p.mark == *id);
    let mark = library()
        .marks()
        .iter()
        .map(|m| &m.id)
        .find(|id| !taken(id));
    let mark = mark.cloned().unwrap_or_else(|| SymbolId::new("kite"));
    Participant::new("New participant", mark, club.rules.tile)
}

fn form(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, person: &Participant) {
    let mut next = person.clone();
    match state.page {
        Page::Looks => looks(ui, desk, state, person, &mut next),
        Page::Board => {
            manner::show(ui, desk, person, &mut next);
            profile::board(ui, desk, state, person, &mut next);
        }
        Page::Always => standing::show(ui, desk, state, person, &mut next),
        Page::Know => profile::show(ui, desk, state, person, &mut next),
        Page::Sealed => profile::sealed(ui, desk, state, person, &mut next),
        Page::Seen => seen::show(ui, desk, state, person),
    }
    if next != *person {
        desk.edit(Edit::ChangeParticipant(next));
    }
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        let comes = desk.view.boards.iter().any(|(id, _)| *id == person.id);
        let b = Button::new("to-board", "To the board")
            .icon(Icon::Right)
            .enabled(comes);
        if b.show(ui).clicked() {
            desk.ask(Command::Show(Place::Boards));
        }
        let b = Button::new(("participant-remove", person.id), "Remove")
            .icon(Icon::Bin)
            .weight(Weight::Quiet);
        if b.tip("With all hand changes; Undo brings them back")
            .show(ui)
            .clicked()
        {
            desk.edit(Edit::RemoveParticipant(person.id));
        }
    });
}

/// Name, mark, sizes, and how the people in the pictures look.
fn looks(
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
