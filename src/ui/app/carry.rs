//! Commands on their way to the workbench, and what it asks of the window in turn.

use egui::{Context, ViewportCommand};

use super::App;
use crate::model::finding::Spot;
use crate::ui::dialogs::PathDialog;
use crate::ui::{people, session};
use crate::workbench::command::{Command, Effect};

impl App {
    /// Carries a command out and does what the workbench asks for in turn.
    pub(super) fn carry_out(&mut self, ctx: &Context, command: Command) {
        self.before(&command);
        for effect in self.bench.handle(command) {
            let path = self.bench.view().path.map(std::path::Path::to_path_buf);
            let beside = path.as_deref();
            match effect {
                Effect::AskOpenPath => self.state.dialog = Some(PathDialog::open(beside)),
                Effect::AskSavePath { suggested } => {
                    self.state.dialog = Some(PathDialog::save(beside, &suggested));
                }
                Effect::AskFolder => {
                    let last = self.bench.view().last_folder;
                    self.state.dialog = Some(PathDialog::folder(last, beside));
                }
                Effect::AskPictures { purpose } => {
                    self.state.dialog = Some(PathDialog::pictures(beside, purpose));
                }
                Effect::AskSet => self.state.dialog = Some(PathDialog::set(beside)),
                Effect::AskSetPath { suggested, holds } => {
                    let dialog = PathDialog::write_set(beside, &suggested, holds);
                    self.state.dialog = Some(dialog);
                }
                Effect::AskTable => self.state.dialog = Some(PathDialog::table(beside)),
                Effect::AskTablePath {
                    suggested,
                    for_helpers,
                } => {
                    let dialog = PathDialog::write_table(beside, &suggested, for_helpers);
                    self.state.dialog = Some(dialog);
                }
                Effect::OpenFolder(folder) => self.look_into(folder),
                Effect::Quit => {
                    self.closing = true;
                    ctx.send_viewport_cmd(ViewportCommand::Close);
                }
            }
        }
    }

    /// Opens a folder with the system; where there is nothing to open it with, says where it is.
    fn look_into(&mut self, folder: std::path::PathBuf) {
        if open::that_detached(&folder).is_err() {
            self.late.push(Command::CannotOpen(folder));
        }
    }

    /// What the window itself does beside a command.
    fn before(&mut self, command: &Command) {
        match command {
            Command::Undo | Command::Redo => self.state.drafts.clear(),
            Command::SetPrint(_) | Command::ChooseSession(_) => self.state.print.pages.clear(),
            Command::New | Command::Demo | Command::Open(_) => {
                self.state.print.pages.clear();
                self.state.led_to.clear();
            }
            Command::Show(_) => self.state.start = None,
            Command::GoTo(spot) => {
                self.state.start = None;
                self.open_pane(*spot);
            }
            _ => {}
        }
    }

    /// Opens the side of a place where a finding points to.
    fn open_pane(&mut self, spot: Spot) {
        let s = &mut self.state;
        match spot {
            Spot::Club => s.people.pane = people::Pane::Club,
            Spot::Participant(_) => s.people.pane = people::Pane::Participants,
            Spot::Picture(id) => {
                s.people.pane = people::Pane::Pictures;
                s.people.pictures.chosen = Some(id);
            }
            Spot::Helper(id) => {
                s.people.pane = people::Pane::Helpers;
                s.people.helper = Some(id);
                s.people.ahead = false;
            }
            Spot::Activity(id) => {
                s.session.pane = session::Pane::Activities;
                s.session.activity = Some(id);
            }
            Spot::Session(_) => s.session.pane = session::Pane::Timetable,
            Spot::Water(..) => s.session.pane = session::Pane::Water,
            Spot::Slot(_, slot) => {
                s.session.pane = session::Pane::Timetable;
                s.session.slot = Some(slot);
            }
            Spot::Board(..) | Spot::Step(..) => s.boards.group = false,
            Spot::Story(_, _, page) => {
                s.boards.group = false;
                s.boards.select_page(page);
            }
        }
    }
}
