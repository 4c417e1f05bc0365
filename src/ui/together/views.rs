//! The day itself: the rope with the card that is now and what comes, as much of it as the
//! participant is given at once.

use egui::{Align2, Painter, Pos2, Rect, Ui, Vec2, pos2, vec2};

use super::cards::{self, Face, Presses};
use super::finished::OnItsWay;
use super::places::{Coming, HANG, Places, between};
use super::{Day, Target};
use crate::model::board::StepState;
use crate::model::manner::{Reach, Run};
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Pictures;
use crate::ui::strand::{Rope, paint};
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::words;

/// The rope over the stage, with its pegs.
pub fn rope(p: &Painter, t: &Theme, places: &Places, run: Run) {
    let y = places.rope_y;
    let ends = match places.mirrored {
        false => (places.window.left() - 8.0, places.bar.left()),
        true => (places.window.right() + 8.0, places.bar.right()),
    };
    let mut rope = Rope {
        points: vec![pos2(ends.0, y - 4.0)],
        arrows: Vec::new(),
    };
    rope.sag_to(pos2(places.now.center().x, y));
    let list = places.coming.first().map(|c| c.rect());
    if let (Run::Down, Some(first)) = (run, list) {
        down(&mut rope, places, first);
    } else {
        for c in &places.coming {
            if let Coming::Card(r) = c {
                rope.sag_to(pos2(r.center().x, y));
            }
        }
        rope.sag_to(pos2(ends.1, y - 4.0));
    }
    let width = if places.low { 6.0 } else { 9.0 };
    paint::line(p, t, &rope.points, width);
    for (at, way) in rope.arrows {
        paint::arrow(p, at, way, t.col.rope);
    }
}

/// On a board from top to bottom the rope turns down along what comes.
fn down(rope: &mut Rope, places: &Places, first: Rect) {
    let last = places.coming.last().map_or(first, |c| c.rect());
    let x = match places.coming.first() {
        Some(Coming::Card(r)) => r.center().x,
        _ => (places.now.right() + first.left()) / 2.0,
    };
    let y = places.rope_y;
    rope.sag_to(pos2(x - 22.0, y));
    for i in 1..=8 {
        let a = i as f32 / 8.0 * std::f32::consts::FRAC_PI_2;
        rope.points
            .push(pos2(x - 22.0 + 22.0 * a.sin(), y + 22.0 * (1.0 - a.cos())));
    }
    let end = match places.coming.first() {
        Some(Coming::Card(_)) => last.top() + 6.0,
        _ => last.center().y,
    };
    rope.sag_to(pos2(x, end.max(y + 24.0)));
}

/// The card that is now, what comes, and their headings.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    way: Option<(OnItsWay, bool)>,
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let Some(now) = day.sight.now else { return };
    rope(p, &t, places, day.who.manner.run);
    let (first, second) = headings(day, now);
    heading(p, &t, places.head_now, &first, places);
    if !places.coming.is_empty() {
        heading(p, &t, places.head_next, &second, places);
    }
    for (c, step) in places.coming.iter().zip(&day.sight.coming) {
        let rect = arriving(places, c.rect(), way);
        coming(ui, pictures, day, (*c, rect), *step, &second);
    }
    more(p, &t, places, day.sight.coming.len());
    let rect = match way {
        // The one that was next comes up.
        Some((w, true)) => places
            .coming
            .first()
            .map_or(places.now, |c| between(c.rect(), places.now, w.part)),
        _ => places.now,
    };
    now_card(ui, pictures, day, (places, way), (rect, now), presses);
}

/// While a tile is taken back, what was now goes back to its place.
fn arriving(places: &Places, home: Rect, way: Option<(OnItsWay, bool)>) -> Rect {
    match way {
        Some((w, false)) if places.coming.first().map(|c| c.rect()) == Some(home) => {
            between(places.now, home, 1.0 - w.part)
        }
        _ => home,
    }
}

fn now_card(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    (places, way): (&Places, Option<(OnItsWay, bool)>),
    (rect, now): (Rect, usize),
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let step = &day.board.steps[now];
    let taken_back = way.is_some_and(|(w, forward)| !forward && w.step == now);
    if !taken_back {
        cards::paint(p, pictures, rect, &day.face(now), day.eyes);
    }
    let side = if places.low { 30.0 } else { 44.0 };
    let peg = pos2(places.now.center().x, places.now.top() - HANG + 2.0);
    let place = Rect::from_center_size(peg, Vec2::splat(side));
    p.rect_filled(place, 12, t.col.accent);
    let how = match &step.state {
        StepState::NotToday => "not today".to_owned(),
        StepState::Instead { of } => format!("instead of {of}, press when finished"),
        _ => "press when finished".to_owned(),
    };
    let n = day.board.steps.len();
    let label = day.face(now).label;
    let name = format!("Now: {label}, step {} of {n}, {how}", now + 1);
    let seen = if taken_back { places.now } else { rect };
    presses.moving(ui, Target::Now, (places.now, seen), &name);
}

fn coming(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    (kind, rect): (Coming, Rect),
    step: usize,
    head: &str,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let face = day.face(step);
    match kind {
        Coming::Card(home) => {
            cards::paint(p, pictures, rect, &face, day.eyes);
            if day.who.manner.run != Run::Down {
                let at = pos2(home.center().x, home.top() - HANG + 2.0);
                let peg = Rect::from_center_size(at, Vec2::splat(26.0));
                p.rect_filled(peg, theme::R_PEG, t.col.peg);
            }
        }
        Coming::Small(_) if rect.width() < 92.0 && !face.off => {
            let paper = cards::sheet(p, &t, rect);
            pictures.symbol(p, paper.shrink(2.0), &face.symbol, day.eyes);
        }
        Coming::Small(_) => cards::paint(p, pictures, rect, &face, day.eyes),
        Coming::Row(_) => cards::wide(p, pictures, (rect, true), &face, day.eyes, false),
    }
    let first = day.sight.coming.first() == Some(&step);
    let name = match (first, face.off) {
        (_, true) => format!("Not today: {}", face.label),
        (true, _) => format!("{head}: {}", face.label),
        (false, _) => format!("Later: {}", face.label),
    };
    cards::named(ui, ("coming", step), rect, &name);
}

/// Where not all of what comes has room, the line goes on.
fn more(p: &Painter, t: &Theme, places: &Places, count: usize) {
    let Some(last) = places.coming.last().map(|c| c.rect()) else {
        return;
    };
    if count <= places.coming.len() {
        return;
    }
    let (at, icon) = match places.coming.last() {
        Some(Coming::Row(_)) => (last.center_bottom() + vec2(0.0, 7.0), Icon::Down),
        _ if places.mirrored => (last.left_center() - vec2(12.0, 0.0), Icon::Left),
        _ => (last.right_center() + vec2(12.0, 0.0), Icon::Right),
    };
    icons::paint(p, icon, icons::square(at, 22.0), t.col.rope);
}

/// What stands over the two.
fn headings(day: &Day<'_>, now: usize) -> (String, String) {
    let off = |i: usize| day.board.steps[i].state == StepState::NotToday;
    let first_then = day.path.reach() == Reach::FirstThen;
    let first = match (first_then, off(now)) {
        (_, true) => "Not today",
        (true, _) if day.path.begins_strip(now) => "First",
        (true, _) => "Then",
        (false, _) => "Now",
    };
    let instead = super::walk::instead(day.board, now).is_some();
    let second = match (first_then, off(now) && instead) {
        (_, true) => "Instead",
        (true, _) => "Then",
        (false, _) => "Next",
    };
    (first.to_owned(), second.to_owned())
}

/// Words over a card.
pub fn heading(p: &Painter, t: &Theme, rect: Rect, words: &str, places: &Places) {
    let size = if places.low { 26.0 } else { 34.0 };
    let align = if places.mirrored {
        Align2::RIGHT_CENTER
    } else {
        Align2::LEFT_CENTER
    };
    words::line(p, rect, align, words, theme::bold(size), t.col.ink);
}

/// A peg on the rope above a card.
pub fn peg(p: &Painter, t: &Theme, at: Pos2) {
    let place = Rect::from_center_size(at, Vec2::splat(26.0));
    p.rect_filled(place, theme::R_PEG, t.col.peg);
}

impl Day<'_> {
    /// What a step shows: what was picked there, or itself.
    pub fn face(&self, step: usize) -> Face {
        let step = &self.board.steps[step];
        let mut face = Face::of(step, self.walk.picked(step.at));
        if face.form == crate::model::manner::Form::Sentence && self.walk.picked(step.at).is_none()
        {
            let told = crate::story::sentence(self.club, step, self.who);
            face.label = told.unwrap_or(face.label);
        }
        face
    }
}
