//! What every panel gets: what it may look at, and where it puts what it wants.

use super::actions::Action;
use super::drawing::Start;
use super::pictures::Pictures;
use super::regions::Regions;
use super::widgets::field::Drafts;
use crate::model::edit::{BoardEdit, Edit, TimetableEdit};
use crate::model::ids::ParticipantId;
use crate::workbench::command::Command;
use crate::workbench::view::View;

/// One frame's desk.
pub struct Desk<'a> {
    /// The running program as it is now.
    pub view: &'a View<'a>,
    /// Symbols as textures.
    pub pictures: &'a mut Pictures,
    /// What is being typed.
    pub drafts: &'a mut Drafts,
    /// Areas for F6.
    pub regions: &'a mut Regions,
    /// What is asked of the workbench after the frame.
    pub out: &'a mut Vec<Command>,
    /// What is asked of the window itself after the frame.
    pub actions: &'a mut Vec<Action>,
    /// With what the place where a picture is drawn is to open after the frame.
    pub draw: &'a mut Option<Start>,
}

impl Desk<'_> {
    /// Asks for something.
    pub fn ask(&mut self, command: Command) {
        self.out.push(command);
    }

    /// Asks for a change of the club.
    pub fn edit(&mut self, edit: Edit) {
        self.out.push(Command::Edit(edit));
    }

    /// Asks for the place where a picture is drawn.
    pub fn draw(&mut self, start: Start) {
        *self.draw = Some(start);
    }

    /// Asks for a change of the chosen session's timetable.
    pub fn timetable(&mut self, edit: TimetableEdit) {
        if let Some(session) = self.view.session {
            self.edit(Edit::Timetable(session.id, edit));
        }
    }

    /// Asks for a change of a participant's board in the chosen session.
    pub fn board(&mut self, who: ParticipantId, edit: BoardEdit) {
        if let Some(session) = self.view.session {
            self.edit(Edit::Board(session.id, who, edit));
        }
    }
}
