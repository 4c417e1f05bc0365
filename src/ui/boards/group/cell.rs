//! One place of a row: a small plate where nothing differs, else a card with words and a sign of its
//! own shape. What is left out is a gap that can be seen.

use egui::{Align2, Painter, Rect, Shape, Stroke, Vec2, pos2, vec2};

use crate::model::board::Step;
use crate::model::people::Participant;
use crate::ui::boards::differs::Differs;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Eyes;
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::card::{Lie, face_down, plate, tile};
use crate::ui::widgets::words;

/// Paints a step in its place.
pub fn step(p: &Painter, desk: &mut Desk<'_>, rect: Rect, s: &Step, person: &Participant) {
    let t = &theme::of(p.ctx());
    let how = Differs::of(s);
    match how {
        Differs::CalledOff => return back(p, t, small(rect, 40.0)),
        Differs::NotToday => return off(p, t, rect),
        // What is so for everyone is said in the timetable above.
        _ if !s.differs() => {
            let rect = small(rect, 44.0);
            plate(p, t, rect);
            desk.pictures
                .symbol(p, rect.shrink(4.0), &s.symbol, Eyes::of(person));
            return;
        }
        _ => {}
    }
    let paper = tile(p, t, rect, Lie::Ground).shrink(1.0);
    match how {
        Differs::Own => own(p, desk, paper, s, person),
        Differs::Choice => choice(p, desk, paper, s, person),
        Differs::Moved => with_word(p, desk, paper, s, person, "moved"),
        _ => beside(p, desk, paper, s, person),
    }
    badge(p, t, rect, how);
}

/// A square in the middle, or less where there is no room for one.
fn small(rect: Rect, side: f32) -> Rect {
    Rect::from_center_size(rect.center(), vec2(side.min(rect.width()), side))
}

/// Not done: face down, in words where there is room, else with the sign alone.
fn off(p: &Painter, t: &Theme, rect: Rect) {
    if rect.width() < 60.0 {
        return back(p, t, rect);
    }
    let plate = face_down(p, t, rect).expand2(vec2(3.0, 0.0));
    words::label(p, plate, "Not today", &[14.0, 13.0], 2, t.col.card_ink);
}

/// The back of a small tile that lies face down, with a cross on a light ground.
pub fn back(p: &Painter, t: &Theme, rect: Rect) {
    p.rect_filled(rect, theme::R_PEG, t.col.down);
    let line = Stroke::new(t.line() + 0.2, t.col.down_line);
    icons::dashed_rect(p, rect.shrink(1.0), 8.0, line, 5.0, 4.0);
    let plate = Rect::from_center_size(rect.center(), Vec2::splat(rect.width() - 8.0));
    p.rect_filled(plate, 5, t.col.card);
    let sign = icons::square(rect.center(), (plate.width() - 2.0).min(20.0));
    icons::paint(p, Icon::Cross, sign, t.col.card_ink);
}

fn own(p: &Painter, desk: &mut Desk<'_>, paper: Rect, s: &Step, person: &Participant) {
    with_word(p, desk, paper, s, person, "own");
}

fn with_word(
    p: &Painter,
    desk: &mut Desk<'_>,
    paper: Rect,
    s: &Step,
    person: &Participant,
    word: &str,
) {
    let ink = theme::of(p.ctx()).col.card_ink;
    let (picture, text) = paper.split_top_bottom_at_y(paper.bottom() - 15.0);
    desk.pictures
        .symbol(p, picture, &s.symbol, Eyes::of(person));
    words::line(p, text, Align2::CENTER_CENTER, word, theme::bold(13.0), ink);
}

/// The first two or three pictures side by side, with the word under them.
fn choice(p: &Painter, desk: &mut Desk<'_>, paper: Rect, s: &Step, person: &Participant) {
    let ink = theme::of(p.ctx()).col.card_ink;
    let (pictures, text) = paper.split_top_bottom_at_y(paper.bottom() - 16.0);
    let n = s.options.len().max(1) as f32;
    let width = (pictures.width() / n).min(34.0);
    let left = pictures.center().x - n * width / 2.0;
    for (i, option) in s.options.iter().enumerate() {
        let at = pos2(left + i as f32 * width, pictures.top());
        let place = Rect::from_min_size(at, vec2(width, pictures.height())).shrink(1.0);
        desk.pictures
            .symbol(p, place, &option.symbol, Eyes::of(person));
    }
    let font = theme::bold(13.0);
    words::line(p, text, Align2::CENTER_CENTER, "choice", font, ink);
}

/// Picture and words side by side; one above the other where a word is too long for that, or where
/// all of them fit below.
fn beside(p: &Painter, desk: &mut Desk<'_>, paper: Rect, s: &Step, person: &Participant) {
    let ink = theme::of(p.ctx()).col.card_ink;
    let narrow = paper.width() < 74.0;
    let one = words::rows_needed(p, &s.label, theme::bold(13.0), paper.width() + 4.0) == 1;
    let picture = if narrow { 24.0 } else { 42.0 };
    let (picture, text) = paper.split_left_right_at_x(paper.left() + picture);
    let text = text.expand2(vec2(1.0, 2.0));
    if !(narrow && one) && text.width() > 30.0 && words::fits(p, &s.label, 13.0, text.width()) {
        desk.pictures
            .symbol(p, picture, &s.symbol, Eyes::of(person));
        words::label(p, text, &s.label, &[14.0, 13.0], 2, ink);
    } else {
        let (picture, text) = paper.split_top_bottom_at_y(paper.bottom() - 16.0);
        desk.pictures
            .symbol(p, picture, &s.symbol, Eyes::of(person));
        let text = text.expand2(vec2(2.0, 2.0));
        words::label(p, text, &s.label, &[13.5, 12.5], 1, ink);
    }
}

/// The sign of how a step differs, in the upper left corner.
fn badge(p: &Painter, t: &Theme, rect: Rect, how: Differs) {
    let at = rect.left_top() + vec2(4.0, 4.0);
    let (ground, ink) = (t.col.peg, t.col.on_peg);
    if how == Differs::Choice {
        icons::diamond(p, at, 11.0, true, ground, ink);
        for x in [-3.5, 3.5] {
            p.circle_filled(at + vec2(x, 0.0), 2.0, ink);
        }
        return;
    }
    p.circle_filled(at, 10.0, ground);
    let sign = icons::square(at, 13.0);
    match how {
        Differs::Own => icons::paint(p, Icon::Plus, sign, ink),
        Differs::OwnWords => icons::paint(p, Icon::Pen, sign, ink),
        Differs::Moved => icons::paint(p, Icon::Right, sign, ink),
        _ => icons::paint(p, Icon::Swap, sign, ink),
    }
}

/// A gap that can be seen: a row of the timetable this participant has no part in.
pub fn gap(p: &Painter, rect: Rect) {
    let t = &theme::of(p.ctx());
    let place = Rect::from_center_size(rect.center(), vec2(rect.width().min(84.0), 40.0));
    p.rect_filled(place, 12, t.col.ground);
    icons::dashed_rect(p, place, 12.0, Stroke::new(t.line(), t.col.edge), 4.0, 4.0);
    let font = theme::regular(14.0);
    words::line(
        p,
        place,
        Align2::CENTER_CENTER,
        "left out",
        font,
        t.col.soft,
    );
}

/// A question is open here.
pub fn question(p: &Painter, rect: Rect) {
    let t = &theme::of(p.ctx());
    let at = rect.right_top() + vec2(-4.0, 5.0);
    let tail = vec![
        at + vec2(-5.0, 6.0),
        at + vec2(3.0, 7.0),
        at + vec2(-6.0, 14.0),
    ];
    p.add(Shape::convex_polygon(tail, t.col.accent, Stroke::NONE));
    p.circle_filled(at, 10.0, t.col.accent);
    p.text(
        at,
        Align2::CENTER_CENTER,
        "?",
        theme::bold(15.0),
        t.col.on_accent,
    );
}
