//! The finished place along the bottom, as the participant's own board has it: a row, a pouch, tiles
//! turned over, tiles ticked. Pressing it takes the last one back.

use egui::{
    Color32, CornerRadius, Mesh, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Ui, Vec2, pos2,
    vec2,
};

use super::cards::{self, Face, Presses};
use super::places::{Places, between};
use super::{Day, Target};
use crate::model::manner::{Finishing, Form};
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Pictures;
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::words;

/// So much of a tile in the pouch looks out of it.
const LOOKS_OUT: f32 = 0.5;
/// Most tiles that can be told in the pouch.
const IN_POUCH: usize = 3;

/// A tile on its way: which one, between which places, and how far it has come.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OnItsWay {
    /// The step.
    pub step: usize,
    /// Where the large card is.
    pub card: Rect,
    /// How far it is finished, from 0 to 1.
    pub part: f32,
}

/// The finished place with what lies in it.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    way: Option<OnItsWay>,
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let how = day.who.manner.finishing;
    let all: Vec<usize> = day.sight.finished.clone().collect();
    if how == Finishing::Pouch {
        pouch_back(p, &t, pouch(places));
    } else {
        basket(p, &t, places.finished);
    }
    if how != Finishing::Pouch {
        caption(p, &t, head(places));
    }
    // The last one moves above all others, and behind the front of a pouch.
    let deep = |i: &usize| how == Finishing::Pouch && above(&all, *i) >= IN_POUCH;
    let settled = all.iter().filter(|i| !deep(i));
    let settled = settled.filter(|i| way.is_none_or(|w| w.step != **i));
    for i in settled {
        let rect = home(places, how, &all, *i);
        tile(p, pictures, day, rect, *i, 1.0);
    }
    if let Some(way) = way {
        let to = home(places, how, &all, way.step);
        moving(p, pictures, day, to, way);
    }
    if how == Finishing::Pouch {
        pouch_front(p, &t, pouch(places));
    }
    if day.walk.can_back(&day.path, day.board) {
        let picked = day
            .sight
            .now
            .and_then(|i| day.walk.picked(day.board.steps[i].at));
        let name = match (picked, day.done.checked_sub(1)) {
            (None, Some(last)) => format!("Take back {}", day.board.steps[last].label),
            _ => "Choose again".to_owned(),
        };
        presses.at(ui, Target::Back, places.finished, &name);
    }
}

/// Where the word stands in the finished place.
fn head(places: &Places) -> Rect {
    let f = places.finished;
    let wide = if places.low { 92.0 } else { 138.0 };
    if places.mirrored {
        f.with_min_x(f.right() - wide)
    } else {
        f.with_max_x(f.left() + wide)
    }
}

/// Where tiles lie in it.
fn stretch(places: &Places) -> Rect {
    let (f, head) = (places.finished, head(places));
    let all = if places.mirrored {
        f.with_max_x(head.left())
    } else {
        f.with_min_x(head.right())
    };
    let inset = if places.low { 12.0 } else { 24.0 };
    Rect::from_min_max(all.min + vec2(8.0, inset), all.max - vec2(16.0, 10.0))
}

/// Where a finished tile lies.
fn home(places: &Places, how: Finishing, all: &[usize], step: usize) -> Rect {
    let at = all.iter().position(|i| *i == step);
    if how == Finishing::Pouch {
        let pouch = pouch(places);
        let side = pouch.height() * 0.74;
        // Older ones look out beside the newest.
        let aside = [0.0, -0.34, 0.34][above(all, step).min(IN_POUCH - 1)] * side;
        let lower = if aside == 0.0 { 0.0 } else { side * 0.12 };
        let y = mouth(pouch) + side * (0.5 - LOOKS_OUT) + lower;
        let mid = pos2(pouch.center().x + aside, y);
        return Rect::from_center_size(mid, Vec2::splat(side));
    }
    let count = all.len().max(if places.low { 6 } else { 8 });
    places.slot(stretch(places), at.unwrap_or(all.len()), count)
}

/// How many tiles lie above one.
fn above(all: &[usize], step: usize) -> usize {
    let at = all.iter().position(|i| *i == step);
    at.map_or(0, |at| all.len() - at - 1)
}

fn caption(p: &Painter, t: &Theme, rect: Rect) {
    let inner = rect.shrink2(vec2(8.0, 0.0)).translate(vec2(4.0, 5.0));
    words::label(p, inner, "Finished", &[25.0, 21.0, 17.0], 1, t.col.ink);
}

fn tile(p: &Painter, pictures: &mut Pictures, day: &Day<'_>, rect: Rect, step: usize, part: f32) {
    let t = theme::of(p.ctx());
    let mut face = day.face(step);
    if face.form == Form::Sentence {
        // A sentence is too long for a small tile: its words are those of the board.
        face.form = Form::Word;
        face.label.clone_from(&day.board.steps[step].label);
    }
    match day.who.manner.finishing {
        Finishing::TurnedOver if !face.off => turned(p, pictures, day, rect),
        Finishing::Tick if !face.off => {
            small(p, pictures, day, rect, &face);
            tick(p, &t, rect, part);
        }
        _ => small(p, pictures, day, rect, &face),
    }
}

/// A finished tile: small ones show their picture alone.
fn small(p: &Painter, pictures: &mut Pictures, day: &Day<'_>, rect: Rect, face: &Face) {
    let t = theme::of(p.ctx());
    let read = matches!(face.form, Form::Word | Form::Sentence);
    if rect.width() >= 92.0 || face.off || read {
        return cards::paint(p, pictures, rect, face, day.eyes);
    }
    let paper = cards::sheet(p, &t, rect);
    pictures.symbol(p, paper.shrink(2.0), &face.symbol, day.eyes);
}

/// The back of a tile with the participant's mark, as it is printed.
fn turned(p: &Painter, pictures: &mut Pictures, day: &Day<'_>, rect: Rect) {
    let t = theme::of(p.ctx());
    cards::back(p, &t, rect);
    let plate = Rect::from_center_size(rect.center(), rect.size() * 0.52);
    p.rect_filled(plate, CornerRadius::same(8), t.col.card);
    pictures.mark(p, plate.shrink(plate.width() * 0.08), &day.who.mark);
}

/// A tick in its ring, growing as it is made.
fn tick(p: &Painter, t: &Theme, rect: Rect, part: f32) {
    let side = (rect.width() * 0.3).clamp(20.0, 110.0) * part.clamp(0.0, 1.0);
    if side < 2.0 {
        return;
    }
    let mid = rect.right_top() + vec2(-1.0, 1.0) * (rect.width() * 0.14).clamp(8.0, 50.0);
    p.circle(mid, side * 0.52, t.col.accent, Stroke::new(2.0, t.col.card));
    icons::paint(
        p,
        Icon::Tick,
        icons::square(mid, side * 0.82),
        t.col.on_accent,
    );
}

/// The card on its way: slid, turned over on the way, or ticked before it goes.
fn moving(p: &Painter, pictures: &mut Pictures, day: &Day<'_>, to: Rect, way: OnItsWay) {
    let face = day.face(way.step);
    match day.who.manner.finishing {
        Finishing::TurnedOver if !face.off => {
            let rect = between(way.card, to, way.part);
            // Turned about its upright middle: narrow, then wide again with its back.
            let turn = (std::f32::consts::PI * way.part).cos();
            let size = vec2((rect.width() * turn.abs()).max(4.0), rect.height());
            let narrow = Rect::from_center_size(rect.center(), size);
            if turn > 0.0 {
                let t = theme::of(p.ctx());
                let paper = cards::sheet(p, &t, narrow);
                pictures.symbol(p, paper, &face.symbol, day.eyes);
            } else {
                turned(p, pictures, day, narrow);
            }
        }
        Finishing::Tick if !face.off => {
            let t = theme::of(p.ctx());
            let gone = ((way.part - 0.4) / 0.6).clamp(0.0, 1.0);
            let rect = between(way.card, to, gone);
            cards::paint(p, pictures, rect, &face, day.eyes);
            tick(p, &t, rect, (way.part / 0.35).min(1.0));
        }
        _ => {
            let rect = between(way.card, to, way.part);
            cards::paint(p, pictures, rect, &face, day.eyes);
        }
    }
}

/// The pouch, in the middle of the finished place.
fn pouch(places: &Places) -> Rect {
    let f = places.finished;
    let wide = (f.height() * 2.3).min(f.width());
    Rect::from_center_size(f.center(), vec2(wide, f.height()))
}

/// Height of its opening.
fn mouth(pouch: Rect) -> f32 {
    pouch.top() + pouch.height() * 0.44
}

fn pouch_back(p: &Painter, t: &Theme, pouch: Rect) {
    let back = pouch.with_min_y(mouth(pouch) - pouch.height() * 0.16);
    let corner = CornerRadius::same(16);
    let edge = Stroke::new(2.0, t.col.edge);
    p.rect(back, corner, t.col.well, edge, StrokeKind::Inside);
}

/// The front with its sagging mouth and a seam.
fn pouch_front(p: &Painter, t: &Theme, pouch: Rect) {
    let front = pouch.with_min_y(mouth(pouch));
    hollow(p, front, t.col.panel, Stroke::new(2.0, t.col.edge));
    let seam = front.shrink(8.0);
    let (upper, lower) = edges(seam);
    let all: Vec<Pos2> = upper.into_iter().chain(lower.into_iter().rev()).collect();
    let line = Stroke::new(1.6, t.col.rope);
    p.extend(Shape::dashed_line(&all, line, 7.0, 6.0));
    let room = seam.with_min_y(seam.top() + seam.height() * 0.14);
    words::label(p, room, "Finished", &[25.0, 21.0, 17.0], 1, t.col.ink);
}

/// A wide shallow hollow.
fn basket(p: &Painter, t: &Theme, rect: Rect) {
    hollow(p, rect, t.col.well, Stroke::new(2.0, t.col.edge));
}

fn hollow(p: &Painter, rect: Rect, ground: Color32, line: Stroke) {
    let (upper, lower) = edges(rect);
    let mut mesh = Mesh::default();
    for at in upper.iter().zip(&lower).flat_map(|(a, b)| [*a, *b]) {
        mesh.colored_vertex(at, ground);
    }
    for i in 0..upper.len() as u32 - 1 {
        mesh.add_triangle(2 * i, 2 * i + 1, 2 * i + 2);
        mesh.add_triangle(2 * i + 1, 2 * i + 3, 2 * i + 2);
    }
    p.add(Shape::mesh(mesh));
    let edge = upper.iter().chain(lower.iter().rev()).copied().collect();
    p.add(Shape::closed_line(edge, line));
}

/// Upper edge, sagging, and lower edge, round at its ends, with points above one another.
fn edges(rect: Rect) -> (Vec<Pos2>, Vec<Pos2>) {
    const ROUND: f32 = 20.0;
    let width = rect.width();
    let deep = (rect.height() * 0.13).min(24.0);
    let ends =
        (0..=8).map(|i| ROUND * (1.0 - (i as f32 / 8.0 * std::f32::consts::FRAC_PI_2).cos()));
    let ends: Vec<f32> = ends.collect();
    let middle = (1..40).map(|i| ROUND + (width - 2.0 * ROUND) * i as f32 / 40.0);
    let xs: Vec<f32> = ends
        .iter()
        .copied()
        .chain(middle)
        .chain(ends.iter().rev().map(|x| width - x))
        .collect();
    let upper = |x: f32| {
        let s = 2.0 * x / width - 1.0;
        pos2(rect.left() + x, rect.top() + deep * (1.0 - s.powi(4)))
    };
    let lower = |x: f32| {
        let from_end = x.min(width - x).min(ROUND);
        let up = ROUND - (ROUND * ROUND - (ROUND - from_end).powi(2)).max(0.0).sqrt();
        pos2(rect.left() + x, rect.bottom() - up)
    };
    (
        xs.iter().map(|x| upper(*x)).collect(),
        xs.iter().map(|x| lower(*x)).collect(),
    )
}
