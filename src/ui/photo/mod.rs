//! A picture that came in is looked at: which part of it, how bright, on what ground, whose it is and
//! who may see it. Then it is kept, or not.
//!
//! Reading order: here what is remembered and the card; `stage` is the photograph with its frame and
//! its brush, `cut` what was cut out so far, `tools` the controls, `details` what is said about any
//! picture, `looks` the pictures of all that as textures; `brought` is what is dropped or pasted.

mod brought;
mod cut;
pub mod details;
mod looks;
mod stage;
mod tools;

use egui::{Rect, ScrollArea, Ui, pos2, vec2};

use super::desk::Desk;
use super::dialogs;
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::{within, words};
use crate::intake::{Photo, Recipe, Shape, Taken};
use crate::model::picture::Picture;
use crate::workbench::command::{Command, Place};
use crate::workbench::incoming::{Arrived, Arriving, Keep, Purpose, begun};
use crate::workbench::view::View;
pub use brought::{commands, held_over};
use cut::Cut;
use details::Details;
use looks::Looks;

/// Longest side of the photograph that is worked on; what is kept is made of the whole one.
const WORKED_PX: u32 = 900;

/// What is done with the photograph just now.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Doing {
    /// Choosing a part of it.
    #[default]
    Frame,
    /// Cutting it out of its ground.
    Cut,
}

/// One picture being looked at.
pub struct PhotoState {
    /// Which of those that came in.
    number: u64,
    /// A photograph, small enough to be worked on.
    photo: Option<Photo>,
    recipe: Recipe,
    doing: Doing,
    cut: Cut,
    looks: Looks,
    picture: Picture,
    details: Details,
    focus: bool,
}

impl PhotoState {
    fn new(arrived: &Arrived) -> Self {
        let photo = match &arrived.what {
            Taken::Photo(photo) => {
                let small = photo.preview(&Recipe::default(), WORKED_PX);
                Some(Photo::from_pixels(small, Vec::new()))
            }
            Taken::Drawing(_) => None,
        };
        let mut recipe = Recipe::default();
        if let Some(photo) = &photo {
            recipe.frame = Some(stage::largest(photo.size(), &recipe, Shape::Square));
        }
        Self {
            number: arrived.number,
            photo,
            recipe,
            doing: Doing::default(),
            cut: Cut::default(),
            looks: Looks::default(),
            picture: begun(arrived),
            details: Details::default(),
            focus: true,
        }
    }

    /// The recipe for the whole photograph, with what was cut out done again on all of its pixels.
    fn recipe_for(&self, photo: &Photo) -> Recipe {
        Recipe {
            mask: self.cut.mask(photo),
            ..self.recipe.clone()
        }
    }
}

/// For what a picture is brought that is dropped or pasted now: the chosen step of a board, else the
/// participant that is looked at, else the club.
pub fn purpose(view: &View<'_>) -> Purpose {
    let person = view.participant.map(|p| p.id);
    match view.place {
        Place::Boards => {
            let step = view.step.zip(view.board());
            let step = step.and_then(|(at, board)| board.position(at).map(|i| &board.steps[i]));
            let symbol = step.map(|s| s.symbol.clone());
            Purpose {
                whose: person,
                stands_for: symbol.filter(|s| s.own().is_none()),
                label: step.map_or_else(String::new, |s| s.label.clone()),
            }
        }
        _ => Purpose::default(),
    }
}

/// Shows the picture that came in first, while there is one.
pub fn show(ui: &Ui, desk: &mut Desk<'_>, state: &mut Option<PhotoState>) {
    let Some(arriving) = desk.view.incoming else {
        *state = None;
        return;
    };
    let Some(arrived) = arriving.first else {
        *state = None;
        return waiting(ui, desk);
    };
    if state.as_ref().is_none_or(|s| s.number != arrived.number) {
        *state = Some(PhotoState::new(arrived));
    }
    let Some(state) = state else { return };
    if state.details.picker.is_some() {
        return details::picked(ui, desk, &mut state.details, &mut state.picture);
    }
    let close = card(ui, |ui| body(ui, desk, state, arriving, arrived));
    if close {
        desk.ask(Command::PassArrived);
    }
}

/// While the first one is still being read.
fn waiting(ui: &Ui, desk: &mut Desk<'_>) {
    let close = card(ui, |ui| {
        words::heading(ui, "Reading pictures…", 24.0);
        ui.add_space(8.0);
        if Button::new("pictures-stop", "Stop").show(ui).clicked() {
            desk.ask(Command::PassAllArrived);
        }
    });
    if close {
        desk.ask(Command::PassAllArrived);
    }
}

/// The card over the window; whether it was put away.
fn card(ui: &Ui, add: impl FnOnce(&mut Ui)) -> bool {
    dialogs::over_wide(ui, "photo", ("A picture came in", 1_080.0), add).1
}

fn body(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PhotoState,
    arriving: Arriving<'_>,
    arrived: &Arrived,
) {
    let window = ui.ctx().content_rect();
    head(ui, arriving);
    let room = (window.height() - 190.0).max(120.0);
    let wide = ui.available_width() > 760.0;
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), room));
    if wide {
        let middle = rect.left() + rect.width() * 0.5;
        let left = rect.with_max_x(middle - 10.0);
        let right = rect.with_min_x(middle + 10.0);
        within(ui, "photo-left", left, |ui| {
            picture(ui, state, arrived, left)
        });
        within(ui, "photo-right", right, |ui| {
            scrolled(ui, "photo-about", |ui| about(ui, desk, state, arrived));
        });
    } else {
        within(ui, "photo-all", rect, |ui| {
            scrolled(ui, "photo-about", |ui| {
                // No higher than what is seen of it: a frame is moved on the whole picture.
                let width = ui.available_width();
                let high = (room - 8.0).clamp(180.0, width.min(420.0) + theme::CONTROL);
                let (_, place) = ui.allocate_space(vec2(width, high));
                picture(ui, state, arrived, place);
                about(ui, desk, state, arrived);
            });
        });
    }
    ui.add_space(8.0);
    buttons(ui, desk, state, arriving, arrived);
}

fn scrolled(ui: &mut Ui, salt: &str, add: impl FnOnce(&mut Ui)) {
    ScrollArea::vertical()
        .id_salt(salt)
        .auto_shrink(false)
        .show(ui, |ui| {
            ui.set_max_width(ui.available_width() - 14.0);
            ui.spacing_mut().item_spacing.y = 8.0;
            add(ui);
        });
}

fn head(ui: &mut Ui, arriving: Arriving<'_>) {
    let more = match (arriving.behind, arriving.reading) {
        (0, false) => String::new(),
        (0, true) => ", more are being read".to_owned(),
        (1, false) => ", one more waits".to_owned(),
        (n, false) => format!(", {n} more wait"),
        (n, true) => format!(", {n} more wait and others are being read"),
    };
    words::heading(ui, &format!("A picture came in{more}"), 24.0);
}

/// The photograph to work on, or the drawing.
fn picture(ui: &mut Ui, state: &mut PhotoState, arrived: &Arrived, rect: Rect) {
    let Some(photo) = state.photo.clone() else {
        if let Taken::Drawing(drawing) = &arrived.what {
            state.looks.drawing(ui, &drawing.svg, rect);
        }
        return;
    };
    let tools = rect.with_min_y(rect.bottom() - theme::CONTROL);
    let stage = Rect::from_min_max(rect.min, pos2(rect.right(), tools.top() - 8.0));
    stage::show(ui, state, &photo, stage);
    within(ui, "photo-doing", tools, |ui| {
        tools::doing(ui, state, tools)
    });
}

/// What can be set, what it becomes, and what is said about it.
fn about(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PhotoState, arrived: &Arrived) {
    if let Some(photo) = state.photo.clone() {
        tools::show(ui, desk, state, &photo);
        state.looks.results(ui, &photo, &state.recipe_for(&photo));
    }
    for note in arrived.what.notes() {
        words::soft(ui, note);
    }
    if std::mem::take(&mut state.focus) {
        state.details.focus = true;
    }
    details::show(ui, desk, &mut state.details, &mut state.picture);
}

fn buttons(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &PhotoState,
    arriving: Arriving<'_>,
    arrived: &Arrived,
) {
    ui.horizontal(|ui| {
        let keep = Button::new("picture-keep", "Keep").weight(Weight::Main);
        if keep.show(ui).clicked() {
            let recipe = match &arrived.what {
                Taken::Photo(whole) => state.recipe_for(whole),
                Taken::Drawing(_) => Recipe::default(),
            };
            let picture = state.details.settled(state.picture.clone());
            desk.ask(Command::KeepArrived(Box::new(Keep { recipe, picture })));
        }
        if Button::new("picture-pass", "Do not keep")
            .show(ui)
            .clicked()
        {
            desk.ask(Command::PassArrived);
        }
        if arriving.behind == 0 {
            // What decides who sees it stands beside what keeps it.
            words::soft(ui, &details::in_short(desk.view.club, &state.picture));
            return;
        }
        let all = format!("Keep all {} as they are", arriving.behind + 1);
        if Button::new("picture-keep-all", &all).show(ui).clicked() {
            desk.ask(Command::KeepAllArrived);
        }
        let none = Button::new("picture-pass-all", "Keep none").weight(Weight::Quiet);
        if none.show(ui).clicked() {
            desk.ask(Command::PassAllArrived);
        }
    });
}
