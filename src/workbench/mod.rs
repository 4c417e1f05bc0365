//! The running program without a window: commands come in, the club changes, boards, findings and
//! sheets follow, a view goes out. The window, the command line and the tests are its drivers.
//!
//! Here: the workbench and how each command is carried out. `begin` makes a new club, `choice` keeps what is chosen,
//! `derived` what follows from the club, `story` a told story while it is shown, `files` opens and saves, `print` and `jobs` write sheets
//! in the background, `printing` is what they do, `table` is people for a spreadsheet, `turns` works rows
//! in turns out, `unsaved` keeps changes until they are saved, `next` says what is to be done next, `looked` puts what was looked at into words, `incoming` brings pictures in, `sets` gives them to other
//! clubs, `voice` says words aloud with the system's own voice.

pub mod begin;
mod choice;
pub mod command;
pub mod contact;
pub mod demo;
mod derived;
mod files;
pub mod incoming;
mod jobs;
pub mod looked;
pub mod next;
mod print;
pub mod printing;
mod sets;
pub mod story;
pub mod table;
pub mod telephone;
pub mod turns;
mod unsaved;
pub mod view;
pub mod voice;

use std::path::PathBuf;
use std::sync::Arc;

use jiff::civil::{Date, Time};

use crate::model::club::Club;
use crate::model::edit::{BoardEdit, Edit, Made};
use crate::model::history::History;
use crate::storage::preferences::{GoingThrough, PACE, Preferences, Theme, ZOOM};
use choice::Choice;
use command::{Command, Effect, Notice, Place, PrintChoice};
use derived::Derived;
use files::{ClubFile, Next, Standing};
use incoming::Incoming;
use jobs::Jobs;
use story::Telling;
use table::TakenIn;
use turns::Turning;
use unsaved::Unsaved;
use view::View;
use voice::Voice;

pub use crate::storage::preferences::usual_path as usual_preferences;
pub use crate::storage::unsaved::usual_folder as usual_unsaved;

/// The running program.
#[derive(Debug)]
pub struct Workbench {
    today: Date,
    history: History,
    /// Added to the history's revisions, so that no number comes back with another club.
    revisions_before: u64,
    last_revision: u64,
    choice: Choice,
    derived: Derived,
    telling: Telling,
    print: PrintChoice,
    file: Option<ClubFile>,
    question: Option<Standing>,
    after_save: Option<Next>,
    notice: Option<Notice>,
    jobs: Jobs,
    turning: Turning,
    incoming: Incoming,
    clock: Option<fn() -> Time>,
    taken_in: Option<TakenIn>,
    voice: Voice,
    preferences: Preferences,
    preferences_at: Option<PathBuf>,
    unsaved: Unsaved,
    /// The revision whose sheets are being written, and that whose sheets were written last.
    writing: Option<u64>,
    written: Option<u64>,
}

impl Workbench {
    /// With a new club. `today` is the day on which the program runs.
    pub fn new(today: Date) -> Self {
        let history = History::new(demo::starter());
        let print = PrintChoice::usual(history.club().rules.paper);
        let mut bench = Self {
            today,
            history,
            revisions_before: 0,
            last_revision: 0,
            choice: Choice::default(),
            derived: Derived::default(),
            telling: Telling::default(),
            print,
            file: None,
            question: None,
            after_save: None,
            notice: None,
            jobs: Jobs::default(),
            turning: Turning::default(),
            incoming: Incoming::default(),
            clock: None,
            taken_in: None,
            voice: Voice::default(),
            preferences: Preferences::default(),
            preferences_at: None,
            unsaved: Unsaved::default(),
            writing: None,
            written: None,
        };
        bench.follow();
        bench
    }

    /// The same with what was remembered in a file, and remembering there.
    #[must_use]
    pub fn with_preferences(mut self, path: Option<PathBuf>) -> Self {
        self.preferences = path.as_deref().map(Preferences::load).unwrap_or_default();
        self.preferences_at = path;
        self
    }

    /// The same with a clock on the wall, for times that are written down.
    #[must_use]
    pub fn with_clock(mut self) -> Self {
        self.clock = Some(|| jiff::Zoned::now().time());
        self
    }

    /// Carries out a command. While a question stands open only its answer counts.
    #[must_use = "effects are asked of whoever drives the workbench"]
    pub fn handle(&mut self, command: Command) -> Vec<Effect> {
        let mut effects = Vec::new();
        let waits = !matches!(
            command,
            Command::Answer(_) | Command::CancelJob | Command::DismissNotice
        );
        if self.question.is_none() || !waits {
            self.carry_out(command, &mut effects);
            self.follow();
        }
        effects
    }

    fn carry_out(&mut self, command: Command, effects: &mut Vec<Effect>) {
        if !matches!(command, Command::Edit(_) | Command::EditBoard(_)) {
            self.history.end_typing();
        }
        match command {
            Command::Edit(edit) => self.edit(&edit),
            Command::EditBoard(edit) => self.edit_board(edit),
            Command::Undo => self.undo(),
            Command::Redo => self.redo(),
            Command::UndoSteps(steps) => self.undo_steps(steps),
            Command::RedoSteps(steps) => self.redo_steps(steps),
            Command::Show(place) => self.choice.place = place,
            Command::ChooseSession(id) => self.choice.session = Some(id),
            Command::ChooseParticipant(id) => self.choice.participant = Some(id),
            Command::ChooseStep(step) => self.choice.step = step,
            Command::ShowStory(shown) => self.choice.story = shown,
            Command::GoTo(spot) => self.choice.go_to(spot),
            Command::New => self.ask_first(Next::New, effects),
            Command::Demo => self.ask_first(Next::Demo, effects),
            Command::Begin(answers) => self.begin(&answers),
            Command::AskOpen => effects.push(Effect::AskOpenPath),
            Command::Open(path) => self.open(path, effects),
            Command::Save => self.save(effects),
            Command::AskSaveAs => self.ask_save_as(effects),
            Command::SaveAs(path) => self.save_as(path, effects),
            Command::Quit => self.ask_first(Next::Quit, effects),
            Command::Answer(answer) => self.answer(answer, effects),
            Command::SetPrint(choice) => self.print = choice,
            Command::CannotOpen(folder) => self.tell(Notice::trouble(
                format!(
                    "The system opens no folder from here: {}.",
                    folder.display()
                ),
                "Open it with your file manager.",
            )),
            Command::LookInto(folder) => effects.push(Effect::OpenFolder(folder)),
            Command::AskPrintFolder => self.ask_folder(effects),
            Command::WriteSheets(folder) => self.write_sheets(folder),
            Command::AskTakeIn => effects.push(Effect::AskTable),
            Command::TakeIn(path) => self.take_in_table(&path),
            Command::AskTable(for_helpers) => self.ask_table(for_helpers, effects),
            Command::WriteTable(path, for_helpers) => self.write_table(path, for_helpers),
            Command::AskSet(holds) => self.ask_set(holds, effects),
            Command::WriteSet(path, holds) => self.write_set(path, holds),
            Command::AskTakeSet => effects.push(Effect::AskSet),
            Command::TakeSet(path) => self.take_set(&path),
            Command::AskPictures(purpose) => self.ask_pictures(purpose, effects),
            Command::TakePictures(paths, purpose) => self.take_pictures(&paths, purpose),
            Command::TakePasted(png, purpose) => self.take_pixels(&png, purpose),
            Command::KeepArrived(keep) => self.keep_arrived(&keep),
            Command::KeepAllArrived => self.keep_all_arrived(),
            Command::PassArrived => self.pass_arrived(),
            Command::PassAllArrived => self.pass_all_arrived(),
            Command::CancelJob => self.jobs.stop(),
            Command::WorkOutTurns(asked) => self.work_out_turns(asked),
            Command::UseTurns => self.use_turns(),
            Command::DropTurns => self.turning.drop_it(),
            Command::DismissNotice => self.notice = None,
            Command::KeepUnsaved => self.keep_unsaved(),
            Command::SetTheme(theme) => self.set_look(theme, self.preferences.zoom_percent),
            Command::SetZoom(percent) => self.set_look(self.preferences.theme, percent),
            Command::SetGoingThrough(going) => self.set_going_through(going),
            Command::Say(words) => self.say(&words),
            Command::Hush => self.voice.hush(),
        }
    }

    fn edit(&mut self, edit: &Edit) {
        match self.history.apply(edit) {
            Ok(made) => self.follow_made(edit, made),
            Err(refused) => self.tell(Notice::trouble(refused.sentence, refused.hint)),
        }
    }

    /// Chooses what an edit made; a session that was changed may stand elsewhere in the list.
    fn follow_made(&mut self, edit: &Edit, made: Made) {
        self.notice = None;
        self.choice.follow(made);
        if let (Made::Own(_), Edit::Board(session, who, _)) = (made, edit) {
            self.choice.session = Some(*session);
            self.choice.participant = Some(*who);
        }
    }

    fn edit_board(&mut self, edit: BoardEdit) {
        let session = self.choice.session_of(self.history.club()).map(|s| s.id);
        match (session, self.choice.participant) {
            (Some(session), Some(who)) => self.edit(&Edit::Board(session, who, edit)),
            (None, _) => self.tell(Notice::trouble(
                "There is no session yet.",
                "Add one at Session, then change boards.",
            )),
            (_, None) => self.tell(Notice::trouble(
                "Nobody is chosen.",
                "Choose a participant, then change the board.",
            )),
        }
    }

    fn undo(&mut self) {
        match self.history.undo() {
            Some(label) => self.tell(Notice::done(format!("Taken back: {label}."))),
            None => self.tell(Notice::done("There is nothing to take back.")),
        }
    }

    fn redo(&mut self) {
        match self.history.redo() {
            Some(label) => self.tell(Notice::done(format!("Done again: {label}."))),
            None => self.tell(Notice::done("There is nothing to do again.")),
        }
    }

    fn undo_steps(&mut self, steps: usize) {
        let taken = (0..steps).map_while(|_| self.history.undo()).count();
        if taken > 0 {
            self.tell(Notice::done(format!("{} taken back.", changes(taken))));
        }
    }

    fn redo_steps(&mut self, steps: usize) {
        let done = (0..steps).map_while(|_| self.history.redo()).count();
        if done > 0 {
            self.tell(Notice::done(format!("{} done again.", changes(done))));
        }
    }

    fn set_look(&mut self, theme: Theme, zoom_percent: u32) {
        self.preferences.theme = theme;
        self.preferences.zoom_percent = zoom_percent.clamp(*ZOOM.start(), *ZOOM.end());
        self.keep_preferences();
    }

    fn set_going_through(&mut self, going: GoingThrough) {
        self.preferences.together = GoingThrough {
            pace_ms: going.pace_ms.clamp(*PACE.start(), *PACE.end()),
            ..going
        };
        if !going.voice {
            self.voice.hush();
        }
        self.keep_preferences();
    }

    fn say(&mut self, words: &str) {
        if self.preferences.together.voice {
            let club = self.history.club();
            self.voice.say(words, &club.rules.words);
        }
    }

    /// Remembers for the next time; losing that is never a reason to stop or to bother anyone.
    fn keep_preferences(&self) {
        if let Some(path) = &self.preferences_at {
            drop(self.preferences.save(path));
        }
    }

    fn tell(&mut self, notice: Notice) {
        self.notice = Some(notice);
    }

    /// Puts another club in place of this one.
    fn replace(&mut self, history: History, file: Option<ClubFile>, place: Place) {
        self.revisions_before = self.last_revision;
        self.history = history;
        self.file = file;
        self.taken_in = None;
        self.pass_all_arrived();
        self.derived.clear();
        self.telling.drop_it();
        let club = self.history.club();
        self.choice = Choice::for_club(club, self.today, place);
        self.print = PrintChoice::usual(club.rules.paper);
    }

    /// Brings everything that follows from the club and the choice up to date.
    fn follow(&mut self) {
        let revision = self.revisions_before + self.history.revision();
        self.last_revision = self.last_revision.max(revision);
        if !self.history.is_modified() {
            self.unsaved.forget();
        }
        let club = self.history.club();
        self.choice.settle(club);
        let session = self.choice.session_of(club);
        self.turning.follow((revision, session.map(|s| s.id)));
        self.derived.follow(club, revision, session);
        let board = self
            .choice
            .participant
            .and_then(|who| self.derived.board(who));
        self.choice.settle_step(club, board);
        if let Some(chosen) = &mut self.print.participants {
            chosen.retain(|id| club.participant(*id).is_some());
        }
        self.derived
            .follow_sheets(club, self.choice.place, &self.print);
        self.follow_story(revision);
    }

    /// Tells the chosen participant's story while it is shown.
    fn follow_story(&mut self, revision: u64) {
        let club = self.history.club();
        let shown = self.choice.story && self.choice.place == Place::Boards;
        let whose = || {
            let who = self.choice.participant?;
            let person = club.participant(who)?;
            let board = self.derived.board(who)?;
            Some((self.choice.session_of(club)?, (person.as_ref(), board)))
        };
        match shown.then(whose).flatten() {
            Some((session, person)) => {
                let club = (club.as_ref(), revision);
                self.telling.follow(club, session, person, &self.print);
            }
            None => self.telling.drop_it(),
        }
    }

    /// The club as it is now.
    pub const fn club(&self) -> &Arc<Club> {
        self.history.club()
    }

    /// The running program as it is now.
    pub fn view(&self) -> View<'_> {
        let club: &Club = self.history.club();
        let participant = self.choice.participant.and_then(|id| club.participant(id));
        View {
            today: self.today,
            club,
            session: self.choice.session_of(club),
            participant: participant.map(AsRef::as_ref),
            boards: self.derived.boards(),
            water: self.derived.water(),
            step: self.choice.step,
            story_shown: self.choice.story,
            story: self.telling.told(),
            place: self.choice.place,
            findings: self.derived.findings(),
            undo: self.history.undo_label(),
            redo: self.history.redo_label(),
            history: &self.history,
            modified: self.history.is_modified(),
            written: self.written == Some(self.last_revision_of_club()),
            unkept: self.history.is_modified() && self.unsaved.lacks(self.last_revision_of_club()),
            revision: self.last_revision_of_club(),
            path: self.file.as_ref().map(|f| f.path.as_path()),
            recent: &self.preferences.recent,
            last_folder: self.preferences.last_folder.as_deref(),
            theme: self.preferences.theme,
            zoom_percent: self.preferences.zoom_percent,
            together: self.preferences.together,
            mute: self.voice.is_missing(),
            notice: self.notice.as_ref(),
            question: self.question.as_ref().map(|s| &s.question),
            print: &self.print,
            sheets: self.derived.sheets(),
            counts: self.derived.counts(),
            laying: self.derived.is_laying(),
            times_laid: self.derived.times_laid(),
            turns: self.turning.view(),
            incoming: self.incoming.view(),
            clock: self.clock,
            job: self.jobs.progress(),
            taken_in: self.taken_in.as_ref(),
        }
    }

    const fn last_revision_of_club(&self) -> u64 {
        self.revisions_before + self.history.revision()
    }
}

fn changes(count: usize) -> String {
    match count {
        1 => "One change".to_owned(),
        n => format!("{n} changes"),
    }
}
