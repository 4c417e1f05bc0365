//! What the window and the command line may ask of the workbench, and what it asks back.

use std::path::PathBuf;
use std::sync::Arc;

use image::RgbaImage;

use super::begin::Beginning;
use super::incoming::{Keep, Purpose};
use crate::layout::{InkChoice, SheetKind, Turn};
use crate::model::club::Paper;
use crate::model::edit::{BoardEdit, Edit};
use crate::model::finding::Spot;
use crate::model::ids::{ParticipantId, SessionId, StepRef};
use crate::model::set::Holds;
use crate::plan::turns::Asked;

pub use crate::storage::preferences::{GoingThrough, PACE, Scanning, Theme, ZOOM};

/// The five places of the window, in the order of an evening.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Place {
    /// The timetable of a date.
    #[default]
    Session,
    /// Participants and helpers.
    People,
    /// Each participant's board.
    Boards,
    /// What should be looked at.
    Checks,
    /// What goes on paper.
    Print,
}

impl Place {
    /// All of them, in order.
    pub const ALL: [Self; 5] = [
        Self::Session,
        Self::People,
        Self::Boards,
        Self::Checks,
        Self::Print,
    ];

    /// As shown.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Session => "Session",
            Self::People => "People",
            Self::Boards => "Boards",
            Self::Checks => "Checks",
            Self::Print => "Print",
        }
    }
}

/// One thing asked of the workbench. Panels queue these; they are carried out after the frame.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    /// Changes the club.
    Edit(Edit),
    /// Changes the chosen participant's board in the chosen session.
    EditBoard(BoardEdit),
    /// Takes the last change back.
    Undo,
    /// Makes it again.
    Redo,
    /// Takes so many changes back.
    UndoSteps(usize),
    /// Makes so many again.
    RedoSteps(usize),
    /// Goes to a place.
    Show(Place),
    /// Chooses a session.
    ChooseSession(SessionId),
    /// Chooses a participant.
    ChooseParticipant(ParticipantId),
    /// Chooses a step of the board, or none.
    ChooseStep(Option<StepRef>),
    /// Shows the story of the participant at Boards, or the board.
    ShowStory(bool),
    /// Goes to where a finding points: its place, session, participant and step.
    GoTo(Spot),
    /// A club without people and sessions, after asking about unsaved changes.
    New,
    /// A new club from three answers, in place of an untouched one.
    Begin(Beginning),
    /// The demo club, after asking about unsaved changes.
    Demo,
    /// Asks for a file to open.
    AskOpen,
    /// Opens a file, after asking about unsaved changes.
    Open(PathBuf),
    /// Saves to the club's file, asking for one if there is none.
    Save,
    /// Asks for another file to save to.
    AskSaveAs,
    /// Saves to a file.
    SaveAs(PathBuf),
    /// Closes the window, after asking about unsaved changes.
    Quit,
    /// Answers the open question.
    Answer(Answer),
    /// Sets what to print.
    SetPrint(PrintChoice),
    /// Says that the system cannot show a folder.
    CannotOpen(PathBuf),
    /// Opens a folder with whatever the system shows folders with.
    LookInto(PathBuf),
    /// Asks for a folder to write the sheets to.
    AskPrintFolder,
    /// Writes the chosen sheets into a folder.
    WriteSheets(PathBuf),
    /// Asks for a table of participants to take in.
    AskTakeIn,
    /// Takes a table of participants in: one change, bad rows left out and told.
    TakeIn(PathBuf),
    /// Asks where to write the participants as a table; whether with what helpers know.
    AskTable(bool),
    /// Writes the participants as a table; whether with what helpers know.
    WriteTable(PathBuf, bool),
    /// Asks where to write what another club is given.
    AskSet(Holds),
    /// Writes what another club is given.
    WriteSet(PathBuf, Holds),
    /// Asks for what another club gives.
    AskTakeSet,
    /// Takes in what another club gives, asking once about what has the same name.
    TakeSet(PathBuf),
    /// Asks for pictures to take in.
    AskPictures(Purpose),
    /// Takes pictures in, in the background; a folder stands for the files in it.
    TakePictures(Vec<PathBuf>, Purpose),
    /// Takes in the picture of the clipboard.
    TakePasted(Arc<RgbaImage>, Purpose),
    /// Keeps the picture that arrived first.
    KeepArrived(Box<Keep>),
    /// Keeps all pictures that arrived, as they are.
    KeepAllArrived,
    /// Does not keep the picture that arrived first.
    PassArrived,
    /// Keeps none of the pictures that arrived.
    PassAllArrived,
    /// Stops writing; files written so far stay and are named.
    CancelJob,
    /// Works out rows of the chosen session in turns, in the background.
    WorkOutTurns(Asked),
    /// Makes the change that sets the turns that were worked out.
    UseTurns,
    /// Stops working out turns, or puts those away that were worked out.
    DropTurns,
    /// Puts the notice away.
    DismissNotice,
    /// Keeps changes that are not saved, for the case of a crash.
    KeepUnsaved,
    /// Sets the colours of the window, also for the next time.
    SetTheme(Theme),
    /// Sets the size of everything in the window in per cent, also for the next time.
    SetZoom(u32),
    /// Sets how a day is gone through together, also for the next time.
    SetGoingThrough(GoingThrough),
    /// Says words aloud, if that is wanted and the system has a voice.
    Say(String),
    /// Stops saying.
    Hush,
}

/// What was chosen to print.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PrintChoice {
    /// Which sheets.
    pub kinds: Vec<SheetKind>,
    /// For whom; `None` means everyone who comes.
    pub participants: Option<Vec<ParticipantId>>,
    /// On which paper.
    pub paper: Paper,
    /// Which way up.
    pub turn: Turn,
    /// How pictures are inked.
    pub ink: InkChoice,
    /// Whether tiles and cards in stock are left out.
    pub only_missing: bool,
    /// Which files to write for each sheet.
    pub formats: Vec<Format>,
    /// Whether all sheets go into one PDF, rather than one for each.
    pub one_file: bool,
}

impl PrintChoice {
    /// What is offered first: everything for everyone, in colour, as PDF.
    pub fn usual(paper: Paper) -> Self {
        Self {
            kinds: SheetKind::usual(),
            participants: None,
            paper,
            turn: Turn::default(),
            ink: InkChoice::default(),
            only_missing: true,
            formats: vec![Format::Pdf],
            one_file: false,
        }
    }
}

/// A kind of output file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Format {
    /// Print-ready pages.
    Pdf,
    /// One picture a page, 300 dots an inch.
    Png,
    /// The words only, for stories.
    Text,
    /// One file to go through on a telephone, for stories.
    Html,
}

impl Format {
    /// All of them, for lists.
    pub const ALL: [Self; 4] = [Self::Pdf, Self::Png, Self::Text, Self::Html];

    /// As typed on a command line.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Png => "png",
            Self::Text => "text",
            Self::Html => "html",
        }
    }

    /// Whether it is written for stories only.
    pub const fn is_of_stories(self) -> bool {
        matches!(self, Self::Text | Self::Html)
    }

    /// As shown to people.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Pdf => "PDF to print",
            Self::Png => "Pictures (PNG)",
            Self::Text => "Story as plain text",
            Self::Html => "Story as one page for a telephone",
        }
    }
}

/// A question that stands open; nothing goes on until it is answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// What is asked, one sentence.
    pub sentence: String,
    /// What each answer means, in the order the buttons stand; the first is the usual one.
    pub answers: Vec<(Answer, String)>,
}

/// An answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    /// Save first, then go on.
    Save,
    /// Go on without saving.
    Discard,
    /// Do nothing.
    Stay,
    /// Go on with what a program left that came to an end without being closed.
    TakeUp,
    /// Of two with the same name, the one that is there.
    KeepOurs,
    /// Of two with the same name, the one that comes.
    TakeTheirs,
    /// Both.
    KeepBoth,
}

/// What the workbench asks of whoever drives it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Effect {
    /// Ask for a file to open, then send [`Command::Open`].
    AskOpenPath,
    /// Ask for a file to save to, then send [`Command::SaveAs`].
    AskSavePath {
        /// A name to begin with.
        suggested: String,
    },
    /// Ask for a table, then send [`Command::TakeIn`].
    AskTable,
    /// Ask for a file to write a table to, then send [`Command::WriteTable`].
    AskTablePath {
        /// A name to begin with.
        suggested: String,
        /// Whether what helpers know is wanted.
        for_helpers: bool,
    },
    /// Ask for a file to write a set to, then send [`Command::WriteSet`].
    AskSetPath {
        /// A name to begin with.
        suggested: String,
        /// What it is to hold.
        holds: Holds,
    },
    /// Ask for a set, then send [`Command::TakeSet`].
    AskSet,
    /// Ask for pictures, then send [`Command::TakePictures`].
    AskPictures {
        /// For what.
        purpose: Purpose,
    },
    /// Ask for a folder, then send [`Command::WriteSheets`].
    AskFolder,
    /// Close the window.
    Quit,
    /// Open this folder with the system.
    OpenFolder(PathBuf),
}

/// Something to tell, until it is put away or the next one comes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// Whether something went wrong.
    pub trouble: bool,
    /// What happened.
    pub sentence: String,
    /// What to do, if anything.
    pub hint: String,
    /// A folder to look into now; such a notice stays until it is put away.
    pub folder: Option<PathBuf>,
}

impl Notice {
    /// Something that went as it was meant.
    pub fn done(sentence: impl Into<String>) -> Self {
        Self {
            trouble: false,
            sentence: sentence.into(),
            hint: String::new(),
            folder: None,
        }
    }

    /// Something that went wrong, and what to do.
    pub fn trouble(sentence: impl Into<String>, hint: impl Into<String>) -> Self {
        Self {
            trouble: true,
            sentence: sentence.into(),
            hint: hint.into(),
            folder: None,
        }
    }
}
