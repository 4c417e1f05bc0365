//! One frame: what lies in the window, and what lies over that.

use egui::{Rect, Ui, ViewportCommand, vec2};

use super::App;
use crate::model::edit::Edit;
use crate::model::ids::SymbolId;
use crate::symbols::lexicon;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::dialogs::{self, Outcome};
use crate::ui::drawing::{self, Went};
use crate::ui::files::SystemDialog;
use crate::ui::people::standing;
use crate::ui::picker::{For, Picked, Picker};
use crate::ui::state::UiState;
use crate::ui::topbar::{self, Bar};
use crate::ui::widgets::within;
use crate::ui::{
    boards, checks, help, notice, past, people, photo, print, seek, session, start, theme, together,
};
use crate::workbench::command::{Command, Place};

impl App {
    /// Shows everything; what is asked for is queued.
    pub(super) fn frame(&mut self, ui: &mut Ui, out: &mut Vec<Command>, wanted: &mut Vec<Action>) {
        let window = ui.max_rect();
        let ground = theme::of(ui.ctx()).col.ground;
        ui.painter().rect_filled(window, 0, ground);
        let view = self.bench.view();
        let s = &mut self.state;
        s.regions.clear();
        self.pictures.look_at(view.club, view.revision);
        // Away from the rest while panels have them.
        let mut drafts = std::mem::take(&mut s.drafts);
        let mut regions = std::mem::take(&mut s.regions);
        let mut draw = s.draw.take();
        let mut desk = Desk {
            view: &view,
            pictures: &mut self.pictures,
            drafts: &mut drafts,
            regions: &mut regions,
            out,
            actions: wanted,
            draw: &mut draw,
        };
        if s.together.is_some() {
            going_through(ui, &mut desk, s, window);
        } else {
            lies(ui, &mut desk, s, window);
            lies_over(ui, &mut desk, s, &mut self.system, window);
        }
        (s.drafts, s.regions, s.draw) = (drafts, regions, draw);
    }
}

/// Two go through a day, full screen.
fn going_through(ui: &mut Ui, desk: &mut Desk<'_>, s: &mut UiState, window: Rect) {
    let question = desk.view.question;
    let Some(together) = &mut s.together else {
        return;
    };
    if together::show(ui, desk, together, (window, question.is_some())) {
        s.together = None;
        let whole = ViewportCommand::Fullscreen(false);
        ui.ctx().send_viewport_cmd(whole);
    }
    // The cross of the window asks here too.
    if let Some(answer) = question.and_then(|q| dialogs::question(ui, q)) {
        desk.ask(Command::Answer(answer));
    }
}

/// The page one meets first, the place where a picture is drawn, or one of the five places.
fn lies(ui: &mut Ui, desk: &mut Desk<'_>, s: &mut UiState, window: Rect) {
    let view = desk.view;
    if view.path.is_some() || view.modified || !view.club.name.is_empty() {
        s.start = None;
    }
    if let Some(state) = &mut s.start {
        if start::show(ui, desk, state, window) {
            s.start = None;
        }
    } else if let Some(drawing) = &mut s.drawing {
        let covered = s.help.is_some() || s.dialog.is_some() || view.question.is_some();
        if drawing::show(ui, desk, drawing, (window, covered)) == Went::Away {
            s.drawing = None;
        }
    } else {
        place(ui, desk, s, window);
    }
}

fn place(ui: &mut Ui, desk: &mut Desk<'_>, s: &mut UiState, window: Rect) {
    let bar = Bar {
        still: s.still,
        led_to: &s.led_to,
    };
    let top = window.with_max_y(window.top() + topbar::height(window.size()));
    topbar::show(ui, desk, &bar, top);
    let place = Rect::from_min_max(
        egui::pos2(window.left() + theme::MARGIN, top.bottom() + 4.0),
        window.max - vec2(theme::MARGIN, 12.0),
    );
    within(ui, "place", place, |ui| match desk.view.place {
        Place::Session => session::show(ui, desk, &mut s.session, place),
        Place::People => people::show(ui, desk, &mut s.people, place),
        Place::Boards => boards::show(ui, desk, &mut s.boards, place),
        Place::Checks => checks::show(ui, desk, place),
        Place::Print => print::show(ui, desk, &mut s.print, place),
    });
}

/// Messages, cards and the help.
fn lies_over(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    s: &mut UiState,
    system: &mut SystemDialog,
    window: Rect,
) {
    let view = desk.view;
    notice::show(ui, desk, window);
    photo::show(ui, desk, &mut s.photo);
    if view.question.is_none() && s.drawing.is_none() {
        photo::held_over(ui, view, window);
    }
    pickers(ui, desk, (&mut s.session.picker, &mut s.people.picker));
    if let Some(dialog) = &mut s.dialog {
        match dialogs::path(ui, dialog, system, view.recent) {
            Outcome::Stays => {}
            Outcome::Away => s.dialog = None,
            Outcome::Go(command) => {
                s.dialog = None;
                desk.ask(*command);
            }
        }
    }
    if let Some(answer) = view.question.and_then(|q| dialogs::question(ui, q)) {
        desk.ask(Command::Answer(answer));
    }
    if s.past && past::show(ui, desk) {
        s.past = false;
    }
    looking(ui, desk, s);
    if let Some(help) = s.help.take_if(|help| help::show(ui, help)) {
        help.leave(ui.ctx());
    }
}

/// The field for everything.
fn looking(ui: &Ui, desk: &mut Desk<'_>, s: &mut UiState) {
    let Some(looking) = &mut s.seek else { return };
    match seek::show(ui, desk, looking) {
        seek::Went::Stays => {}
        seek::Went::Away => s.seek = None,
        seek::Went::To(goes) => {
            s.seek = None;
            desk.out.extend(seek::commands(&goes));
            match goes {
                seek::Goes::Do(action) => desk.actions.push(action),
                seek::Goes::Symbol(words) => {
                    s.boards.group = false;
                    s.boards.tray.group = None;
                    s.boards.tray.search = words;
                }
                seek::Goes::To(_) => {}
            }
        }
    }
}

/// Pictures and marks being picked.
fn pickers(
    ui: &Ui,
    desk: &mut Desk<'_>,
    (activity, mark): (&mut Option<Picker>, &mut Option<Picker>),
) {
    for slot in [activity, mark] {
        let Some(picker) = slot else { continue };
        match picker.show(ui, desk.pictures, desk.view.club) {
            Picked::Not => {}
            Picked::Away => *slot = None,
            Picked::This(id) => {
                picked(desk, picker.target, id);
                *slot = None;
            }
        }
    }
}

fn picked(desk: &mut Desk<'_>, target: For, symbol: SymbolId) {
    match target {
        For::Activity(id) => {
            if let Some(a) = desk.view.club.activity(id) {
                let mut next = a.as_ref().clone();
                next.symbol = symbol;
                desk.edit(Edit::ChangeActivity(next));
            }
        }
        // The form of the picture, or the drawing, takes it itself.
        For::OwnPicture(_) | For::Drawing(_) => {}
        For::Standing(id, which) => {
            let club = desk.view.club;
            if let Some(p) = club.participant(id) {
                let mut next = p.as_ref().clone();
                standing::put(&mut next, which, lexicon::content(club, &symbol));
                desk.edit(Edit::ChangeParticipant(next));
            }
        }
        For::Mark(id) => {
            if let Some(p) = desk.view.club.participant(id) {
                let mut next = p.as_ref().clone();
                next.mark = symbol;
                desk.edit(Edit::ChangeParticipant(next));
            }
        }
    }
}
