//! The face of a step in the form in which a participant is given it: the one way it is painted,
//! on a board and where it is shown what others see.

use egui::{Align2, CornerRadius, Painter, Pos2, Rect, Stroke, StrokeKind, pos2, vec2};

use crate::model::board::{Step, StepState};
use crate::model::ids::SymbolId;
use crate::model::manner::Form;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::{Eyes, Pictures};
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::card::{Lie, face_down, tile};
use crate::ui::widgets::words;

/// What is seen where the family's photograph or the thing itself will be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Until {
    /// The drawing, so that the coordinator sees which step it is.
    Drawing,
    /// What the page has: an empty place, in words.
    Words,
}

/// Picture above, words below, on the paper of a card.
pub fn face(
    p: &Painter,
    pictures: &mut Pictures,
    paper: Rect,
    symbol: &SymbolId,
    label: &str,
    figure: Eyes,
) {
    let t = theme::of(p.ctx());
    let inner = paper.shrink2(vec2(4.0, 3.0));
    let two = words::rows_needed(p, label, theme::bold(16.0), inner.width()) > 1;
    let text_height = if two { 40.0 } else { 24.0 };
    let text = Rect::from_min_max(pos2(inner.left(), inner.bottom() - text_height), inner.max);
    let picture = Rect::from_min_max(inner.min, pos2(inner.right(), text.top() - 2.0));
    pictures.symbol(p, picture, symbol, figure);
    words::label(
        p,
        text,
        label,
        if two { &[16.0, 15.0, 14.0] } else { &[16.0] },
        2,
        t.col.card_ink,
    );
}

/// A step as a tile: face down if it is not today, else its face in its form.
pub fn step(
    p: &Painter,
    pictures: &mut Pictures,
    (rect, lie): (Rect, Lie),
    step: &Step,
    figure: Eyes,
    until: Until,
) {
    let t = theme::of(p.ctx());
    if step.state == StepState::NotToday {
        let plate = face_down(p, &t, rect);
        not_today(p, &t, plate, &step.label);
    } else {
        let paper = tile(p, &t, rect, lie);
        in_form(p, pictures, paper, step, figure, until);
    }
}

/// What is read has no picture; what is a thing or a photograph has a place left for it. A small
/// sign says which.
fn in_form(
    p: &Painter,
    pictures: &mut Pictures,
    paper: Rect,
    step: &Step,
    figure: Eyes,
    until: Until,
) {
    let t = theme::of(p.ctx());
    match step.form {
        Form::Drawing => face(p, pictures, paper, &step.symbol, &step.label, figure),
        Form::Word => alone(p, &t, paper, &step.label, &[24.0, 20.0, 17.0, 15.0]),
        Form::Sentence => alone(p, &t, paper, &step.label, &[18.0, 16.0, 14.0]),
        Form::Object | Form::Photograph => {
            let edge = Stroke::new(t.line(), t.col.card_soft);
            icons::dashed_rect(p, paper.shrink(3.0), 6.0, edge, 5.0, 4.0);
            match until {
                Until::Drawing => face(p, pictures, paper, &step.symbol, &step.label, figure),
                Until::Words => place(p, &t, paper, step),
            }
        }
    }
    form_sign(p, &t, paper.left_top() + vec2(13.0, 12.0), step.form);
}

/// Words without a picture, clear of the sign.
fn alone(p: &Painter, t: &Theme, paper: Rect, label: &str, sizes: &[f32]) {
    let room = paper.shrink2(vec2(6.0, 18.0));
    words::label(p, room, label, sizes, 4, t.col.card_ink);
}

/// An empty place, with what will be in it in words.
fn place(p: &Painter, t: &Theme, paper: Rect, step: &Step) {
    let inner = paper.shrink(8.0);
    let (room, below) = inner.split_top_bottom_at_y(inner.bottom() - 22.0);
    let says = match step.form {
        Form::Object => step.thing.as_str(),
        _ => "photograph",
    };
    let room = room.with_min_y(room.top() + 8.0);
    words::label(p, room, says, &[14.0, 13.0], 3, t.col.card_soft);
    words::label(
        p,
        below,
        &step.label,
        &[15.0, 14.0, 13.0],
        1,
        t.col.card_ink,
    );
}

/// A small sign of the form, in the upper left corner; a drawing has none.
fn form_sign(p: &Painter, t: &Theme, at: Pos2, form: Form) {
    let (ink, line) = (t.col.card_ink, Stroke::new(1.6, t.col.card_ink));
    if form != Form::Drawing {
        let ground = Rect::from_center_size(at, vec2(26.0, 20.0));
        p.rect_filled(ground, CornerRadius::same(5), t.col.card);
    }
    let body = Rect::from_center_size(at, vec2(18.0, 13.0));
    match form {
        Form::Drawing => {}
        Form::Object => {
            let inner = CornerRadius::same(2);
            p.rect_stroke(body, inner, line, StrokeKind::Inside);
            p.hline(body.x_range(), body.top() + 4.5, line);
        }
        Form::Photograph => {
            p.rect_stroke(body, CornerRadius::same(3), line, StrokeKind::Inside);
            p.circle_stroke(at + vec2(0.0, 0.5), 3.4, line);
        }
        Form::Word => {
            p.text(at, Align2::CENTER_CENTER, "Aa", theme::bold(14.0), ink);
        }
        Form::Sentence => icons::paint(p, Icon::Lines, icons::square(at, 18.0), ink),
    }
}

fn not_today(p: &Painter, t: &Theme, plate: Rect, label: &str) {
    let (top, bottom) = plate.split_top_bottom_at_fraction(0.48);
    words::line(
        p,
        top,
        Align2::CENTER_BOTTOM,
        "Not today",
        theme::bold(16.0),
        t.col.card_ink,
    );
    let room = bottom.shrink2(vec2(4.0, 0.0));
    words::line(
        p,
        room,
        Align2::CENTER_TOP,
        label,
        theme::regular(14.0),
        t.col.card_ink,
    );
}
