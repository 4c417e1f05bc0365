//! What the picture is called, whose it is, which symbol it stands for.

use egui::{Align2, CornerRadius, Id, Rect, StrokeKind, Ui, vec2};

use super::{DrawingState, Use};
use crate::symbols::lexicon::lexicon;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::photo::details;
use crate::ui::picker::{For, Picker};
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::block;
use crate::ui::widgets::words;

/// What the keyboard reaches first.
pub fn first() -> Id {
    Id::unique("draw-name")
}

/// The field of the words.
pub fn words_id() -> Id {
    Id::unique("draw-words")
}

/// Shows the fields.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut DrawingState) {
    let width = ui.available_width();
    ui.spacing_mut().item_spacing.y = 4.0;
    block(ui, "Name", width, theme::CONTROL, |ui| {
        let now = state.facts.name.clone();
        let f = Field::new(first(), "Name", &now).hint("Such as: wooden ramp");
        if let Some(text) = f.show(ui, desk.drafts, ui.available_width()) {
            state.facts.name = text;
        }
    });
    block(ui, "Words to find it by", width, theme::CONTROL, |ui| {
        let now = state.facts.words.clone();
        let f = Field::new(words_id(), "Words to find it by", &now).hint("With commas between");
        if let Some(text) = f.show(ui, desk.drafts, ui.available_width()) {
            state.facts.words = text;
        }
    });
    block(ui, "Whose it is", width, theme::CONTROL, |ui| {
        let (id, club) = (Id::unique("draw-whose"), desk.view.club);
        if let Some(whose) = details::choose_whose(ui, id, club, state.facts.whose) {
            state.facts.whose = whose;
        }
    });
    block(ui, "Seen in the place of", width, theme::CONTROL, |ui| {
        stands_for(ui, desk, state);
    });
    ui.add_space(4.0);
    let on = state.sketch.tidy();
    let tip = "A line in ink round the whole, a thin white seam where areas lie on one another";
    let r = tick(
        ui,
        Id::unique("draw-tidy"),
        on,
        "Tidy as the symbols are",
        "",
    );
    if r.on_hover_text(tip).clicked() {
        state.sketch.set_tidy(!on);
    }
}

fn stands_for(ui: &mut Ui, desk: &Desk<'_>, state: &mut DrawingState) {
    let names = lexicon(&desk.view.club.rules.words);
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
    let now = state.facts.stands_for.clone();
    let label = now.as_ref().map_or("No symbol", |id| names.label(id));
    let name = format!("Seen in the place of: {label}");
    let mut room = rect;
    if now.is_some() {
        let (left, right) = rect.split_left_right_at_x(rect.right() - theme::CONTROL);
        room = left.with_max_x(left.right() - 6.0);
        let b = Button::new("draw-for-none", "Of no symbol").icon_only(Icon::Cross);
        if b.show_at(ui, right).clicked() {
            state.facts.stands_for = None;
        }
    }
    let b = Button::new("draw-for", label)
        .name(&name)
        .icon(Icon::Swap)
        .left();
    if b.show_at(ui, room).clicked() {
        state.picker = Some(Picker::new(For::Drawing(Use::StandsFor)));
    }
}

/// One sentence at the head of the place, louder when something went wrong.
pub fn says(ui: &Ui, rect: Rect, sentence: &str, loud: bool) {
    let t = theme::of(ui.ctx());
    let (rows, size) = (2, 15.0);
    let room = if loud {
        rect.shrink2(vec2(10.0, 0.0))
    } else {
        rect
    };
    let p = ui.painter();
    let colour = if loud { t.col.ink } else { t.col.soft };
    let g = words::lay(
        p,
        sentence,
        theme::regular(size),
        colour,
        room.width(),
        rows,
    );
    let place = Align2::LEFT_CENTER.align_size_within_rect(g.size(), room);
    if loud {
        let r = CornerRadius::same(theme::R_CONTROL);
        let slip = place.expand2(vec2(10.0, 4.0));
        p.rect(slip, r, t.col.panel, t.edge(), StrokeKind::Inside);
    }
    let r = ui.interact(place, Id::unique("draw-says"), egui::Sense::hover());
    r.widget_info(|| {
        let mut info = egui::WidgetInfo::labeled(egui::Role::Status, true, "State");
        info.current_text_value = Some(sentence.to_owned());
        info
    });
    p.galley(place.min, g, colour);
}
