//! The club's own pictures: all of them, and what is said about one.

use egui::{
    CornerRadius, CursorIcon, Id, Rect, Role, StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::PeopleState;
use crate::model::club::Club;
use crate::model::edit::Edit;
use crate::model::ids::PictureId;
use crate::model::picture::{Made, Picture};
use crate::model::set::Holds;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::drawing::Start;
use crate::ui::icons::Icon;
use crate::ui::photo::details::{self, Details};
use crate::ui::pictures::Eyes;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::choose::select_at;
use crate::ui::widgets::form::{scroll, sheet};
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;
use crate::workbench::incoming::Purpose;

/// What the pane remembers.
#[derive(Default)]
pub struct PicturesState {
    /// The picture being looked at.
    pub chosen: Option<PictureId>,
    /// How many there were, to choose a new one.
    seen: usize,
    details: Details,
}

/// A card of the grid, in points.
const CARD: Vec2 = vec2(116.0, 132.0);
/// Widest the right side gets.
const WIDEST: f32 = 620.0;

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let state = &mut state.pictures;
    follow(state, desk.view.club);
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    buttons(ui, desk, top);
    let below = rect.with_min_y(top.bottom() + 10.0);
    if desk.view.club.pictures.is_empty() {
        return empty(ui, below);
    }
    let wide = below.width() > 760.0;
    let side = if wide {
        below.width() - WIDEST.min(below.width() * 0.5) - 20.0
    } else {
        below.width()
    };
    let high = if wide {
        below.height()
    } else {
        (below.height() * 0.4).max(CARD.y + 20.0)
    };
    let grid_place = Rect::from_min_size(below.min, vec2(side, high));
    scroll(ui, "picture-grid", grid_place, |ui| grid(ui, desk, state));
    let Some(picture) = state.chosen.and_then(|id| desk.view.club.picture(id)) else {
        return;
    };
    let about = match wide {
        true => below.with_min_x(grid_place.right() + 20.0),
        false => below.with_min_y(grid_place.bottom() + 10.0),
    };
    scroll(ui, "picture-form", about, |ui| {
        sheet(ui, |ui| form(ui, desk, state, picture));
        ui.add_space(16.0);
    });
}

fn follow(state: &mut PicturesState, club: &Club) {
    let all = &club.pictures;
    let there = |id: &PictureId| club.picture(*id).is_some();
    state.chosen = state
        .chosen
        .filter(there)
        .or_else(|| all.first().map(|p| p.id));
    if all.len() > state.seen {
        state.chosen = all.last().map(|p| p.id);
    }
    state.seen = all.len();
}

fn buttons(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let mut left = rect.left();
    let mut next = |ui: &mut Ui, b: Button<'_>| {
        let width = b.needs(ui);
        let place = Rect::from_min_size(pos2(left, rect.top()), vec2(width, rect.height()));
        left += width + 10.0;
        b.show_at(ui, place).clicked()
    };
    let bring = Button::new("pictures-bring", "Bring pictures…").icon(Icon::Plus);
    let bring =
        bring.tip("Photographs and drawings from files; they can also be dropped or pasted");
    if next(ui, bring) {
        desk.ask(Command::AskPictures(Purpose::default()));
    }
    let draw = Button::new("pictures-draw", "Draw one…").icon(Icon::Pen);
    if next(ui, draw) {
        desk.actions.push(Action::Draw);
    }
    let take = Button::new("pictures-set", "Take in a set…");
    let take = take.tip("Pictures and activities that another club gave you, in one file");
    if next(ui, take) {
        desk.ask(Command::AskTakeSet);
    }
    let options = Holds::ALL.map(|h| h.label().to_owned());
    let place = Rect::from_min_size(pos2(left, rect.top()), vec2(220.0, rect.height()));
    let place = place.with_max_x(place.right().min(rect.right()));
    let id = Id::unique("pictures-give");
    if let Some(i) = select_at(ui, id, place, "Give out a set…", &options, None) {
        desk.ask(Command::AskSet(Holds::ALL[i]));
    }
}

fn empty(ui: &mut Ui, rect: Rect) {
    let t = theme::of(ui.ctx());
    let says = "Photographs and drawings of your own come here: bring files, drop them on the window, \
                or paste one. Each says whose it is and where it may be seen.";
    let room = rect.with_max_x(rect.left() + rect.width().min(640.0));
    words::label(
        ui.painter(),
        room.with_max_y(rect.top() + 90.0),
        says,
        &[17.0, 16.0],
        4,
        t.col.soft,
    );
}

fn grid(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PicturesState) {
    let club = desk.view.club;
    let columns = ((ui.available_width() / (CARD.x + 8.0)) as usize).max(1);
    let rows = club.pictures.len().div_ceil(columns);
    let high = rows as f32 * (CARD.y + 8.0);
    let (_, all) = ui.allocate_space(vec2(ui.available_width(), high));
    for (i, picture) in club.pictures.iter().enumerate() {
        let (column, row) = ((i % columns) as f32, (i / columns) as f32);
        let at = all.min + vec2(column * (CARD.x + 8.0), row * (CARD.y + 8.0)) + vec2(3.0, 3.0);
        let rect = Rect::from_min_size(at, CARD);
        if ui.is_rect_visible(rect.expand(CARD.y)) || state.chosen == Some(picture.id) {
            card(ui, desk, state, (i, columns, rect), picture);
        }
    }
}

fn card_id(id: PictureId) -> Id {
    Id::unique(("own-picture", id))
}

fn card(
    ui: &Ui,
    desk: &mut Desk<'_>,
    state: &mut PicturesState,
    (i, columns, rect): (usize, usize, Rect),
    picture: &Picture,
) {
    let t = theme::of(ui.ctx());
    let club = desk.view.club;
    let chosen = state.chosen == Some(picture.id);
    let sense = regions::one_stop(ui, card_id(picture.id), chosen, false);
    let r = ui.interact(rect, card_id(picture.id), sense);
    let owner = picture.whose.and_then(|id| club.participant(id));
    let owner = owner.map_or("the club’s", |p| p.name.as_str());
    let count = club.pictures.len();
    let name = format!("{}, {owner}, {} of {count}", picture.name, i + 1);
    r.widget_info(|| WidgetInfo::selected(Role::ListBoxOption, true, chosen, &name));
    if chosen {
        desk.regions.add(rect, r.id);
    }
    let paper = tile(ui.painter(), &t, rect, Lie::Ground);
    let words_top = paper.bottom() - 42.0;
    let seen = Rect::from_min_max(paper.min, pos2(paper.right(), words_top)).shrink(6.0);
    desk.pictures
        .symbol(ui.painter(), seen, &picture.symbol(), Eyes::default());
    let label = Rect::from_min_max(
        pos2(paper.left() + 4.0, words_top),
        pos2(paper.right() - 4.0, words_top + 22.0),
    );
    let p = ui.painter();
    words::label(
        p,
        label,
        &picture.name,
        &[15.0, 14.0, 13.0],
        1,
        t.col.card_ink,
    );
    let below = label.translate(vec2(0.0, 19.0));
    words::label(p, below, owner, &[13.5, 12.5], 1, t.col.card_soft);
    if chosen {
        let line = egui::Stroke::new(3.0, t.col.accent);
        p.rect_stroke(rect, CornerRadius::same(12), line, StrokeKind::Outside);
    }
    focus_ring(ui, &r, rect, 12);
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        if let Some(to) = regions::arrows(ui, i, count, columns) {
            let to = club.pictures[to].id;
            state.chosen = Some(to);
            ui.memory_mut(|m| m.request_focus(card_id(to)));
        }
    }
    if r.on_hover_cursor(CursorIcon::PointingHand).clicked() {
        state.chosen = Some(picture.id);
    }
}

fn form(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PicturesState, picture: &Picture) {
    let mut next = picture.clone();
    ui.spacing_mut().item_spacing.y = 8.0;
    if state.details.picker.is_some() {
        details::picked(ui, desk, &mut state.details, &mut next);
    }
    details::show(ui, desk, &mut state.details, &mut next);
    ui.add_space(6.0);
    if matches!(picture.made, Made::Drawing(_)) {
        let b = Button::new(("picture-redraw", picture.id), "Change the drawing…");
        if b.icon(Icon::Pen).show(ui).clicked() {
            desk.draw(Start::Change(picture.id));
        }
    }
    let b = Button::new(("picture-remove", picture.id), "Remove").icon(Icon::Bin);
    let tip = "Goes from the file and from its earlier copies when you save";
    if b.weight(Weight::Quiet).tip(tip).show(ui).clicked() {
        return desk.edit(Edit::RemovePicture(picture.id));
    }
    if next != *picture {
        desk.edit(Edit::ChangePicture(next));
    }
}
