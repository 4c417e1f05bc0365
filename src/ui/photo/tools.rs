//! The controls of a photograph: its part, how straight, how bright; or what cuts it out.

use egui::{Id, Rect, Ui};

use super::cut::Tool;
use super::{Doing, PhotoState, stage};
use crate::intake::{Ground, Photo, Shape};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::choose::{segments, segments_here};
use crate::ui::widgets::slide::{Slide, slider};
use crate::ui::widgets::words;

/// What is done with the photograph.
pub fn doing(ui: &mut Ui, state: &mut PhotoState, rect: Rect) {
    let now = usize::from(state.doing == Doing::Cut);
    let names = ["Choose the part", "Take the ground away"];
    if let Some(i) = segments(ui, "photo-doing", rect, &names, now) {
        state.doing = [Doing::Frame, Doing::Cut][i];
    }
}

/// The controls of what is done.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PhotoState, photo: &Photo) {
    let _ = desk;
    match state.doing {
        Doing::Frame => part(ui, state, photo),
        Doing::Cut => ground(ui, state),
    }
    tones(ui, state);
}

const SHAPES: [(Shape, &str); 3] = [
    (Shape::Square, "Square"),
    (Shape::Upright, "Upright"),
    (Shape::Across, "Across"),
];

fn part(ui: &mut Ui, state: &mut PhotoState, photo: &Photo) {
    let shape = state.recipe.frame.map(|f| f.shape);
    let now = SHAPES.iter().position(|(s, _)| Some(*s) == shape);
    let names: Vec<&str> = SHAPES
        .iter()
        .map(|(_, n)| *n)
        .chain(["All of it"])
        .collect();
    if let Some(i) = segments_here(ui, "photo-shape", &names, now.unwrap_or(SHAPES.len())) {
        state.recipe.frame = SHAPES
            .get(i)
            .map(|(s, _)| stage::largest(photo.size(), &state.recipe, *s));
    }
    ui.horizontal(|ui| {
        for (id, name, icon, turns) in [
            ("photo-left-turn", "Turn left", Icon::Undo, 3),
            ("photo-right-turn", "Turn right", Icon::Redo, 1),
        ] {
            if Button::new(id, name).icon(icon).show(ui).clicked() {
                state.recipe.quarter_turns = (state.recipe.quarter_turns + turns) % 4;
                let shape = state.recipe.frame.map(|f| f.shape);
                state.recipe.frame = shape.map(|s| stage::largest(photo.size(), &state.recipe, s));
            }
        }
    });
    let straight = Slide {
        id: Id::unique("photo-straight"),
        label: "Straight",
        unit: "°",
        range: (-45.0, 45.0),
        rest: 0.0,
    };
    if let Some(degrees) = slider(ui, &straight, state.recipe.straighten) {
        state.recipe.straighten = degrees;
        stage::settle(photo.size(), &mut state.recipe);
    }
}

fn tones(ui: &mut Ui, state: &mut PhotoState) {
    let recipe = &mut state.recipe;
    for (id, label, value) in [
        ("photo-bright", "Brightness", &mut recipe.brightness),
        ("photo-contrast", "Contrast", &mut recipe.contrast),
    ] {
        let slide = Slide {
            id: Id::unique(id),
            label,
            unit: "",
            range: (-100.0, 100.0),
            rest: 0.0,
        };
        if let Some(next) = slider(ui, &slide, *value) {
            *value = next;
        }
    }
}

const TOOLS: [(Tool, &str); 3] = [
    (Tool::Pour, "What looks alike"),
    (Tool::Away, "Brush away"),
    (Tool::Back, "Brush back"),
];

fn ground(ui: &mut Ui, state: &mut PhotoState) {
    let now = TOOLS.iter().position(|(t, _)| *t == state.cut.tool);
    let names = TOOLS.map(|(_, n)| n);
    if let Some(i) = segments_here(ui, "photo-cut", &names, now.unwrap_or(0)) {
        state.cut.tool = TOOLS[i].0;
    }
    words::soft(
        ui,
        match state.cut.tool {
            Tool::Pour => "Press on the ground: what looks like it goes.",
            Tool::Away => "Draw over what is to go.",
            Tool::Back => "Draw over what is to come back.",
        },
    );
    let pour = state.cut.tool == Tool::Pour;
    let (label, range, rest) = match pour {
        true => ("How alike", (2.0, 60.0), 18.0),
        false => ("Brush", (1.0, 15.0), 3.0),
    };
    let slide = Slide {
        id: Id::unique(("photo-cut-size", pour)),
        label,
        unit: "",
        range,
        rest,
    };
    let value = match pour {
        true => state.cut.tolerance,
        false => state.cut.radius * 100.0,
    };
    match slider(ui, &slide, value) {
        Some(next) if pour => state.cut.tolerance = next,
        Some(next) => state.cut.radius = next / 100.0,
        None => {}
    }
    ui.horizontal_wrapped(|ui| {
        let some = !state.cut.is_empty();
        let back = Button::new("photo-cut-back", "Take the last back").icon(Icon::Undo);
        if back.enabled(some).show(ui).clicked() {
            state.cut.take_back();
        }
        let all = Button::new("photo-cut-all", "Bring all back").enabled(some);
        if all.show(ui).clicked() {
            state.cut.clear();
        }
    });
    let white = state.recipe.ground == Ground::White;
    let names = ["Clear ground", "White ground"];
    if let Some(i) = segments_here(ui, "photo-ground", &names, usize::from(white)) {
        state.recipe.ground = [Ground::Transparent, Ground::White][i];
    }
}
