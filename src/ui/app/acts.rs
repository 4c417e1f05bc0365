//! What follows from an action, whether a key, a button or the field for everything asked for it.

use egui::{Context, ViewportCommand};

use super::App;
use crate::ui::actions::{self, Action};
use crate::ui::drawing::Start;
use crate::ui::help::{self, HelpState};
use crate::ui::seek::Seek;
use crate::ui::state::{larger, smaller};
use crate::ui::together::TogetherState;
use crate::ui::{find, people, print, session};
use crate::workbench::command::{Command, Place};
use crate::workbench::next::{Where, next_thing};

impl App {
    pub(super) fn all(&mut self, ctx: &Context, actions: Vec<Action>) {
        for action in actions {
            self.act(ctx, action);
        }
    }

    /// Carries out an action of the window, or queues what it asks of the workbench.
    pub fn act(&mut self, ctx: &Context, action: Action) {
        if !actions::possible(action, &self.bench.view()) {
            return;
        }
        let s = &mut self.state;
        match action {
            Action::New => self.late.push(Command::New),
            Action::Open => self.late.push(Command::AskOpen),
            Action::Demo => self.late.push(Command::Demo),
            Action::Save => self.late.push(Command::Save),
            Action::SaveAs => self.late.push(Command::AskSaveAs),
            Action::Quit => self.late.push(Command::Quit),
            Action::Undo => self.late.push(Command::Undo),
            Action::Redo => self.late.push(Command::Redo),
            Action::Go(place) => self.late.push(Command::Show(place)),
            Action::Search => self.search(),
            Action::Group => {
                s.boards.group = !s.boards.group || self.bench.view().place != Place::Boards;
                self.late.push(Command::Show(Place::Boards));
            }
            Action::PersonAfter => self.another_person(1),
            Action::PersonBefore => self.another_person(-1),
            Action::Write => {
                self.late.push(Command::Show(Place::Print));
                self.late.push(Command::AskPrintFolder);
            }
            Action::Seek => s.seek = Some(Seek::default()),
            Action::Past => s.past = true,
            Action::Next => self.next_thing(ctx),
            Action::Together => {
                s.together = Some(TogetherState::default());
                ctx.send_viewport_cmd(ViewportCommand::Fullscreen(true));
            }
            Action::Draw => {
                s.draw = Some(Start::Blank {
                    whose: None,
                    stands_for: None,
                });
            }
            Action::ZoomIn => self
                .late
                .push(Command::SetZoom(larger(self.bench.view().zoom_percent))),
            Action::ZoomOut => self
                .late
                .push(Command::SetZoom(smaller(self.bench.view().zoom_percent))),
            Action::ZoomReset => self.late.push(Command::SetZoom(100)),
            Action::Colours(theme) => self.late.push(Command::SetTheme(theme)),
            Action::Still => s.still = !s.still,
            Action::NextArea => s.regions.step(ctx, false),
            Action::AreaBefore => s.regions.step(ctx, true),
            Action::Help => self.turn_help(ctx),
        }
        ctx.request_repaint();
    }

    /// Goes on to another participant: of those who come at Boards, else of all. After the last comes
    /// the first.
    fn another_person(&mut self, by: isize) {
        let view = self.bench.view();
        let all: Vec<_> = match view.place {
            Place::Boards => view.boards.iter().map(|(id, _)| *id).collect(),
            _ => view.club.participants.iter().map(|p| p.id).collect(),
        };
        let now = view.participant.map(|p| p.id);
        let at = all.iter().position(|id| Some(*id) == now).unwrap_or(0);
        let count = all.len() as isize;
        if count > 0 {
            let next = (at as isize + by).rem_euclid(count) as usize;
            let view = self.bench.view();
            self.state.boards.keep_step = view.place == Place::Boards && !view.story_shown;
            self.late.push(Command::ChooseParticipant(all[next]));
        }
    }

    /// Leads to what is to be done next.
    fn next_thing(&mut self, ctx: &Context) {
        let next = next_thing(&self.bench.view(), &self.state.led_to);
        match &next.at {
            Where::Place(place) => self.late.push(Command::Show(*place)),
            Where::Spot(spot) => self.late.push(Command::GoTo(*spot)),
            Where::Save => self.late.push(Command::Save),
            Where::Write => self.late.push(Command::AskPrintFolder),
            Where::Together => self.act(ctx, Action::Together),
        }
        if matches!(next.at, Where::Spot(_)) {
            self.state.led_to.push(next.at);
        }
    }

    /// Opens the help at the page of where one is, or puts it away.
    fn turn_help(&mut self, ctx: &Context) {
        if let Some(help) = self.state.help.take() {
            return help.leave(ctx);
        }
        let (pane, drawing) = (self.state.people.pane, self.state.drawing.is_some());
        let page = match self.state.start {
            Some(_) => "evening",
            None => help::page_of(&self.bench.view(), pane, drawing),
        };
        self.state.help = Some(HelpState::at(ctx, page));
    }

    /// The search field of the place, or that of the symbols.
    fn search(&mut self) {
        match self.bench.view().place {
            Place::People if self.bench.view().club.participants.len() > find::FEW => {
                self.state.people.pane = people::Pane::Participants;
                self.state.people.find.focus = true;
            }
            Place::Print => match self.state.print.pane {
                print::Pane::Sheets => self.state.print.find.focus = true,
                print::Pane::Stock => self.state.print.find_stock.focus = true,
            },
            Place::Session => {
                self.state.session.pane = session::Pane::Timetable;
                self.state.session.tray.focus_search = true;
            }
            _ => {
                self.state.boards.group = false;
                self.state.boards.tray.focus_search = true;
                self.late.push(Command::ShowStory(false));
                self.late.push(Command::Show(Place::Boards));
            }
        }
    }
}
