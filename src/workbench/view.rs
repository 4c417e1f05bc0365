//! What a panel may look at: one borrowed picture of the running program, nothing to change.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use jiff::civil::{Date, Time};

use super::command::{GoingThrough, Notice, Place, PrintChoice, Question, Theme};
use super::incoming;
use super::story::ToldStory;
use super::table::TakenIn;
use super::turns::Arranging;
use crate::layout::{Counts, Sheet};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::finding::Finding;
use crate::model::history::History;
use crate::model::ids::{ParticipantId, StepRef};
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::plan::water::WaterDay;

/// The running program as it is now.
#[derive(Clone, Copy)]
pub struct View<'a> {
    /// The day on which the program runs, for suggesting dates.
    pub today: Date,
    /// The club.
    pub club: &'a Club,
    /// The chosen session; none while the club has no session.
    pub session: Option<&'a Session>,
    /// The chosen participant; none while there is nobody. At Boards always one who comes.
    pub participant: Option<&'a Participant>,
    /// The board of every participant who comes to the chosen session, in the order of the list.
    pub boards: &'a [(ParticipantId, Arc<Board>)],
    /// Who is with whom in the water of the chosen session.
    pub water: &'a WaterDay,
    /// The chosen step of the chosen participant's board.
    pub step: Option<StepRef>,
    /// Whether Boards shows the story of the participant rather than the board.
    pub story_shown: bool,
    /// That story; none while it is not shown.
    pub story: Option<&'a ToldStory>,
    /// Where we are.
    pub place: Place,
    /// What should be looked at, most serious first, for the chosen session and the club.
    pub findings: &'a [Finding],
    /// What Undo would take back.
    pub undo: Option<&'a str>,
    /// What Redo would make again.
    pub redo: Option<&'a str>,
    /// All that was done and taken back.
    pub history: &'a History,
    /// Whether there are changes not saved.
    pub modified: bool,
    /// Whether the sheets were written as the club is now.
    pub written: bool,
    /// Whether some of them are not even kept for the case of a crash.
    pub unkept: bool,
    /// Grows with every change of the club; equal numbers mean an equal club.
    pub revision: u64,
    /// The club's file.
    pub path: Option<&'a Path>,
    /// Files opened or saved lately, newest first.
    pub recent: &'a [PathBuf],
    /// The folder sheets were written to last.
    pub last_folder: Option<&'a Path>,
    /// Colours of the window.
    pub theme: Theme,
    /// Size of everything in the window, in per cent.
    pub zoom_percent: u32,
    /// How a day is gone through together.
    pub together: GoingThrough,
    /// Whether it was found that this system has no voice to say words aloud with.
    pub mute: bool,
    /// What is to be told.
    pub notice: Option<&'a Notice>,
    /// What is to be answered first.
    pub question: Option<&'a Question>,
    /// What was chosen to print.
    pub print: &'a PrintChoice,
    /// The sheets of that choice, as they would be printed now; empty at other places than Print.
    /// While they are laid out in the background, those before them.
    pub sheets: &'a [Sheet],
    /// How much making its tiles is.
    pub counts: Option<&'a Counts>,
    /// Whether the sheets are being laid out in the background, because they are for many.
    pub laying: bool,
    /// Grows whenever the sheets are others.
    pub times_laid: u64,
    /// What came of the last table taken in.
    pub taken_in: Option<&'a TakenIn>,
    /// Turns being worked out, or those that were.
    pub turns: Option<Arranging<'a>>,
    /// Pictures on their way in.
    pub incoming: Option<incoming::Arriving<'a>>,
    /// What the clock says now; none where the program is not to look at it.
    pub clock: Option<fn() -> Time>,
    /// Writing in progress.
    pub job: Option<Progress<'a>>,
}

impl<'a> View<'a> {
    /// The chosen participant's board.
    pub fn board(&self) -> Option<&'a Board> {
        let who = self.participant?.id;
        self.boards
            .iter()
            .find(|(id, _)| *id == who)
            .map(|(_, b)| b.as_ref())
    }
}

/// How far a job has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress<'a> {
    /// What is being done, such as the file being written.
    pub doing: &'a str,
    /// Steps done.
    pub done: usize,
    /// Steps in all.
    pub total: usize,
}
