//! What one meets first: the clubs opened lately, the demo, and a new club from three answers. The
//! strand leads through it from its ring to its knot.

use egui::{Align2, Id, Painter, Rect, ScrollArea, Ui, pos2, vec2};

use super::actions::Action;
use super::dates;
use super::desk::Desk;
use super::icons::Icon;
use super::pictures::Eyes;
use super::strand::{Rope, paint};
use super::theme::{self, Theme};
use super::widgets::button::{Button, Weight};
use super::widgets::card::{self, Lie};
use super::widgets::field::Field;
use super::widgets::form::block;
use super::widgets::{within, words};
use crate::model::ids::SymbolId;
use crate::workbench::begin::{Beginning, PLAIN_DAY, names};
use crate::workbench::command::Command;

/// Below this width the cards hang one under the other.
const NARROW: f32 = 980.0;
/// How many clubs opened lately are shown.
const LATELY: usize = 5;

/// What was typed so far.
#[derive(Clone, Debug, Default)]
pub struct StartState {
    name: String,
    names: String,
    date: String,
    asked: bool,
}

/// Shows the page; says whether someone goes on without any of it. A club that is open ends it too.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StartState, window: Rect) -> bool {
    let t = theme::of(ui.ctx());
    let low = window.height() < 560.0;
    let y = window.top() + if low { 74.0 } else { 142.0 };
    head(ui, window, low);
    let (first, last) = ends(window);
    let mut rope = Rope {
        points: vec![pos2(first, y)],
        arrows: Vec::new(),
    };
    let left = window.left() + 40.0;
    let room = Rect::from_min_max(pos2(left, y + 10.0), window.max - vec2(40.0, 12.0));
    let narrow = window.width() < NARROW;
    let middles = cards(room, narrow).map(|c| c.center().x);
    let stops: &[f32] = if narrow { &middles[..1] } else { &middles };
    for x in stops {
        rope.sag_to(pos2(*x, y));
    }
    rope.sag_to(pos2(last, y));
    let p = ui.painter();
    whole(p, &t, &rope);
    for x in stops {
        paint::knot(p, &t, pos2(*x, y), 9.0);
    }
    if !narrow {
        a_day(ui, desk, window, room.top() + 422.0 + 40.0);
    }
    within(ui, "start", room, |ui| {
        if narrow {
            ScrollArea::vertical()
                .auto_shrink(false)
                .show(ui, |ui| stacked(ui, desk, state))
                .inner
        } else {
            beside(ui, desk, state, room)
        }
    })
}

/// Where a rope's ring and its stopper are, clear of the cards.
fn ends(window: Rect) -> (f32, f32) {
    (window.left() + 22.0, window.right() - 32.0)
}

/// A rope from its ring to its stopper.
fn whole(p: &Painter, t: &Theme, rope: &Rope) {
    paint::line(p, t, &rope.points, 6.0);
    if let (Some(ring), Some(stopper)) = (rope.points.first(), rope.points.last()) {
        paint::ring(p, &t.col, *ring, 12.0, t.col.ground);
        paint::stopper(p, t, *stopper);
    }
}

fn head(ui: &Ui, window: Rect, low: bool) {
    let t = theme::of(ui.ctx());
    let (size, top) = if low { (26.0, 10.0) } else { (36.0, 26.0) };
    let at = window.min + vec2(40.0, top);
    let p = ui.painter();
    let font = theme::bold(size);
    let name = p.text(at, Align2::LEFT_TOP, "Daystrand", font, t.col.ink);
    let says = "One timetable becomes a picture schedule for each child.";
    let rect = Rect::from_min_max(
        pos2(name.left(), name.bottom() + 2.0),
        pos2(window.right() - 40.0, name.bottom() + 28.0),
    );
    if !low {
        words::line(
            p,
            rect,
            Align2::LEFT_CENTER,
            says,
            theme::regular(18.0),
            t.col.soft,
        );
    }
}

/// Where the three cards hang.
fn cards(room: Rect, narrow: bool) -> [Rect; 3] {
    if narrow {
        return [room; 3];
    }
    let width = ((room.width() - 2.0 * 26.0) / 3.0).min(420.0);
    let free = (room.width() - 3.0 * width) / 2.0;
    let high = room.height().min(422.0);
    let one = |i: f32| {
        let x = room.left() + i * (width + free);
        Rect::from_min_size(pos2(x, room.top()), vec2(width, high))
    };
    [one(0.0), one(1.0), one(2.0)]
}

/// Where there is room below: a day as it will hang.
fn a_day(ui: &Ui, desk: &mut Desk<'_>, window: Rect, y: f32) {
    let side = (window.bottom() - y - 24.0).min(128.0);
    if side < 72.0 {
        return;
    }
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let (left, right) = ends(window);
    let step = (right - left) / PLAIN_DAY.len() as f32;
    let middle = |i: usize| left + (i as f32 + 0.5) * step;
    let mut rope = Rope {
        points: vec![pos2(left, y)],
        arrows: Vec::new(),
    };
    for i in 0..PLAIN_DAY.len() {
        rope.sag_to(pos2(middle(i), y));
    }
    rope.sag_to(pos2(right, y));
    whole(p, &t, &rope);
    for (i, symbol) in PLAIN_DAY.into_iter().enumerate() {
        let at = pos2(middle(i) - side / 2.0, y + 8.0);
        let rect = Rect::from_min_size(at, vec2(side, side));
        let paper = card::tile(p, &t, rect, Lie::Ground);
        let picture = paper.shrink(5.0);
        let id = SymbolId::new(symbol);
        desk.pictures.symbol(p, picture, &id, Eyes::default());
        card::peg(p, pos2(middle(i), y), "", t.col.peg, t.col.on_peg);
    }
}

type Part = fn(&mut Ui, &mut Desk<'_>, &mut StartState) -> bool;

const PARTS: [(&str, Part); 3] = [
    ("Open a club", lately),
    ("Begin a new club", new_club),
    ("Look around", look_around),
];

fn beside(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StartState, room: Rect) -> bool {
    let t = theme::of(ui.ctx());
    let mut done = false;
    for (rect, (title, part)) in cards(room, false).into_iter().zip(PARTS) {
        card::panel(ui.painter(), &t, rect);
        let inside = rect.shrink2(vec2(20.0, 14.0));
        within(ui, title, inside, |ui| {
            ui.spacing_mut().item_spacing.y = 8.0;
            words::heading(ui, title, 22.0);
            done |= part(ui, desk, state);
        });
    }
    done
}

fn stacked(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StartState) -> bool {
    let mut done = false;
    ui.set_max_width(ui.available_width() - 16.0);
    ui.spacing_mut().item_spacing.y = 8.0;
    for (title, part) in PARTS {
        words::heading(ui, title, 22.0);
        done |= part(ui, desk, state);
        ui.add_space(12.0);
    }
    done
}

fn lately(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StartState) -> bool {
    let width = ui.available_width();
    for (i, path) in desk.view.recent.iter().take(LATELY).enumerate() {
        let name = path
            .file_stem()
            .unwrap_or(path.as_os_str())
            .to_string_lossy();
        let full = path.display().to_string();
        let b = Button::new(("start-lately", path), &name)
            .icon(Icon::Folder)
            .tip(&full)
            .left()
            .width(width);
        let r = b.show(ui);
        if i == 0 && !std::mem::replace(&mut state.asked, true) {
            r.request_focus();
        }
        if r.clicked() {
            desk.ask(Command::Open(path.clone()));
        }
    }
    let words = if desk.view.recent.is_empty() {
        "Open a club’s file…"
    } else {
        "Another file…"
    };
    let b = Button::new("start-open", words).icon(Icon::Folder).left();
    if b.width(width).show(ui).clicked() {
        desk.actions.push(Action::Open);
    }
    if desk.view.recent.is_empty() {
        words::soft(
            ui,
            "Clubs you open stand here the next time. All of a club is in its one file; where that \
             is kept is up to you.",
        );
    }
    false
}

fn new_club(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StartState) -> bool {
    let today = desk.view.today;
    let width = ui.available_width();
    let id = |what: &str| Id::unique(("start", what));
    if desk.view.recent.is_empty() && !std::mem::replace(&mut state.asked, true) {
        ui.memory_mut(|m| m.request_focus(id("name")));
    }
    block(ui, "What is it called?", width, theme::CONTROL, |ui| {
        let f = Field::new(id("name"), "What the club is called", &state.name);
        if let Some(typed) = f
            .hint("Such as: Pebble Cove Saturdays")
            .show(ui, desk.drafts, width)
        {
            state.name = typed;
        }
    });
    let who = "Who takes part?";
    block(ui, who, width, theme::CONTROL, |ui| {
        let f = Field::new(
            id("names"),
            "First names, with commas between",
            &state.names,
        );
        let hint = "First names, with commas between";
        if let Some(typed) = f.hint(hint).show(ui, desk.drafts, width) {
            state.names = typed;
        }
    });
    block(
        ui,
        "When is the next session?",
        width,
        theme::CONTROL,
        |ui| {
            let tomorrow = dates::typed(dates::days_on(today, 1));
            let f = Field::new(id("date"), "Day of the next session", &state.date);
            if let Some(typed) = f.hint(&tomorrow).show(ui, desk.drafts, width) {
                state.date = typed;
            }
        },
    );
    let read = match state.date.trim() {
        "" => Some(dates::days_on(today, 1)),
        typed => dates::read_date(typed),
    };
    let says = match read {
        Some(date) => format!("{}. All of it can be changed later.", dates::long(date)),
        None => format!("That is no date; type it like {}.", dates::typed(today)),
    };
    words::soft(ui, &says);
    let b = Button::new("start-begin", "Begin")
        .weight(Weight::Main)
        .enabled(read.is_some());
    let pressed = b.width(width).show(ui).clicked();
    let Some(date) = read.filter(|_| pressed) else {
        return false;
    };
    desk.ask(Command::Begin(Beginning {
        name: state.name.clone(),
        names: names(&state.names),
        date,
    }));
    false
}

fn look_around(ui: &mut Ui, desk: &mut Desk<'_>, _: &mut StartState) -> bool {
    let width = ui.available_width();
    words::soft(
        ui,
        "A paddle club by a lagoon, with eight children and three mornings. Nobody in it exists; \
         change it as you like, it is saved nowhere unless you say so.",
    );
    let b = Button::new("start-demo", "Try the demo club").icon(Icon::Right);
    if b.left().width(width).show(ui).clicked() {
        desk.actions.push(Action::Demo);
    }
    let b = Button::new("start-help", "Keys and help").left();
    if b.width(width).show(ui).clicked() {
        desk.actions.push(Action::Help);
    }
    let b = Button::new("start-empty", "Begin with an empty club")
        .weight(Weight::Quiet)
        .left();
    b.width(width).show(ui).clicked()
}
