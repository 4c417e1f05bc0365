//! The only way a club changes. Each edit names what a person meant; applying it keeps every
//! invariant or refuses with a sentence and changes nothing.
//!
//! Here: what can be meant, and [`apply`]. How each is done stands in a file for its noun; the
//! words for the undo menu stand in `label`, what merges into one undo step in `merge`.

mod arrange;
mod board;
mod club;
mod give;
mod label;
mod merge;
mod people;
mod pictures;
mod session;
mod songs;
mod stock;
mod story;
mod timetable;
mod today;
mod turns;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use jiff::civil::{Date, Time};

use super::club::{Activity, Club, Rules};
use super::conditions::Condition;
use super::craft::TileShape;
use super::hand::{Asked, Content};
use super::ids::{
    ActivityId, HelperId, OwnId, PartId, ParticipantId, PictureId, SessionId, SlotId, SongId,
    StepRef,
};
use super::limits;
use super::looks::Looked;
use super::people::{Helper, Participant};
use super::picture::Picture;
use super::record::Record;
use super::rewriting::{PageRef, PageWords};
use super::session::Off;
use super::set::Meeting;
use super::song::Song;
use super::stock::StockEdit;
use super::today::{Hours, Pair};
use super::turns::Station;
use crate::units::Length;

pub use label::and_more;
pub use merge::MergeKey;

/// One change. Positions count from zero; one past the end is the end.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Edit {
    /// Renames the club.
    ClubName(String),
    /// Sets the club's rules.
    Rules(Rules),
    /// Adds a part of the day at the end.
    AddPart(String),
    /// Renames a part of the day.
    RenamePart(PartId, String),
    /// Moves a part of the day to a position.
    MovePart(PartId, usize),
    /// Removes a part that nothing uses.
    RemovePart(PartId),
    /// Adds an activity; its id is given anew.
    AddActivity(Activity),
    /// Sets all of an activity.
    ChangeActivity(Activity),
    /// Removes an activity that no timetable uses.
    RemoveActivity(ActivityId),
    /// Adds a picture of the club's own at the end; its id is given anew.
    AddPicture(Picture),
    /// Sets all of an own picture.
    ChangePicture(Picture),
    /// Removes an own picture; what it stood for is seen again.
    RemovePicture(PictureId),
    /// Takes in what another club gives: pictures and activities.
    TakeSet(Arc<Club>, Meeting),
    /// Adds a song at the end; its id is given anew.
    AddSong(Song),
    /// Sets all of a song.
    ChangeSong(Song),
    /// Moves a song to a position.
    MoveSong(SongId, usize),
    /// Removes a song.
    RemoveSong(SongId),
    /// Adds a participant; the id is given anew.
    AddParticipant(Participant),
    /// Sets all of a participant.
    ChangeParticipant(Participant),
    /// Adds the participants whose id is zero and sets all of the others: a table that was filled in.
    TakeIn(Vec<Participant>),
    /// Moves a participant in the list.
    MoveParticipant(ParticipantId, usize),
    /// Removes a participant with all their hand changes.
    RemoveParticipant(ParticipantId),
    /// Adds a helper; the id is given anew.
    AddHelper(Helper),
    /// Sets all of a helper.
    ChangeHelper(Helper),
    /// Removes a helper.
    RemoveHelper(HelperId),
    /// Adds a session with an empty timetable.
    AddSession(SessionDetails),
    /// Adds a session with another one's timetable, without its hand changes.
    CopySession(SessionId, SessionDetails),
    /// Sets title, date, start and place.
    ChangeSession(SessionId, SessionDetails),
    /// Removes a session.
    RemoveSession(SessionId),
    /// Says whether a participant comes.
    Attend(SessionId, ParticipantId, bool),
    /// Says whether a helper comes.
    HelperAttends(SessionId, HelperId, bool),
    /// Says what the day may bring.
    Conditions(SessionId, Vec<Condition>),
    /// Writes down what was seen of a participant's session.
    Record(SessionId, ParticipantId, Record),
    /// Sets shape and printed side of the tiles of some participants.
    TileSizes(Vec<ParticipantId>, TileShape, Length),
    /// A change of the tiles in stock.
    Stock(StockEdit),
    /// One change to a timetable.
    Timetable(SessionId, TimetableEdit),
    /// One change by hand to a board.
    Board(SessionId, ParticipantId, BoardEdit),
    /// Gives steps of a board to another one too, or to the same one once more.
    Give(SessionId, Give),
    /// Sets all that differs by hand on a page of a story; nothing makes it as told again.
    StoryPage(SessionId, ParticipantId, PageRef, PageWords),
    /// Takes back all changes by hand of a story.
    StoryAsTold(SessionId, ParticipantId),
    /// Says who is beside a participant on the day.
    Beside(SessionId, ParticipantId, Option<HelperId>),
    /// One change of who does what on a date.
    Today(SessionId, TodayEdit),
    /// One change of the rows that are done in turns.
    Turns(SessionId, TurnsEdit),
}

/// Steps that another board gets too.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Give {
    /// Whose they are.
    pub from: ParticipantId,
    /// Which.
    pub steps: Vec<StepRef>,
    /// Who gets them.
    pub to: ParticipantId,
    /// Where.
    pub at: GiveAt,
    /// Whether own steps stay where they are from; all others do anyhow.
    pub stays: bool,
}

/// Where steps that are given arrive.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GiveAt {
    /// As own steps, the first of them at this position.
    Position(usize),
    /// In the place of this step, which shows the same then: for one step alone. A row that gets
    /// its own activity is as the timetable has it, with the group's choice where there is one.
    Step(StepRef),
}

/// One change of who does what on a date, and of what was seen there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TodayEdit {
    /// Who leads in the water.
    WaterLead(Option<HelperId>),
    /// When a helper is there; nothing is all of the session.
    Here(HelperId, Option<Hours>),
    /// Whether a helper watches today; nothing is as their roles say.
    Watches(HelperId, Option<bool>),
    /// Who watches a participant and nothing else.
    WatchedBy(ParticipantId, Option<HelperId>),
    /// What is wished of a pair.
    Pair(ParticipantId, HelperId, Option<Pair>),
    /// Who is with a participant at a row of the timetable; nobody lets the program find someone.
    Hold(SlotId, ParticipantId, BTreeSet<HelperId>),
    /// All who are held at once, in place of those before.
    HoldAll(Held),
    /// Where all meet when someone is missing.
    MeetingSpot(String),
    /// Writes down what was looked at.
    Look(Looked),
    /// Changes what was written down at a place of the list.
    LookAgain(usize, Looked),
    /// Takes out what was written down at a place of the list.
    Unlook(usize),
    /// Thunder was heard at these times.
    Thunder(BTreeSet<Time>),
}

/// Who was put with whom by hand, for rows of the timetable.
pub type Held = BTreeMap<(SlotId, ParticipantId), BTreeSet<HelperId>>;

/// One change of the rows that are done in turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TurnsEdit {
    /// Sets all of it.
    Set(TurnsPlan),
    /// Puts a participant at one of the rows in a turn; whatever they do then changes places with
    /// it.
    Place(ParticipantId, usize, SlotId),
    /// Holds a participant at a station in the turn where they are there, or lets them go: what is
    /// held stays when turns are worked out again, and nothing changes places with it.
    Hold(ParticipantId, SlotId, bool),
    /// Who wants to be together.
    Friends(BTreeSet<(ParticipantId, ParticipantId)>),
    /// All rows one after the other again, for everyone in the same order.
    Off,
}

/// Rows done in turns as a plan: who waits has nothing in that turn, and gets a row of waiting.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TurnsPlan {
    /// The rows, which are put together where the first of them stands.
    pub stations: Vec<Station>,
    /// What those do who wait; without it their board says nothing of the wait.
    pub waiting: Option<ActivityId>,
    /// How many turns.
    pub count: u32,
    /// Minutes of each.
    pub minutes: u32,
    /// Who is where, turn by turn.
    pub places: BTreeMap<ParticipantId, Vec<Option<SlotId>>>,
    /// Who wants to be together.
    pub friends: BTreeSet<(ParticipantId, ParticipantId)>,
}

/// What is said about a session besides its timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SessionDetails {
    /// What it is called on paper.
    pub title: String,
    /// The day.
    pub date: Date,
    /// When it begins.
    pub start: Time,
    /// Where.
    pub place: String,
}

/// One change to a timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TimetableEdit {
    /// Inserts an activity at a position, with its usual part and minutes.
    Insert(ActivityId, usize),
    /// Moves a slot to a position (counted after taking it out).
    Move(SlotId, usize),
    /// Puts another activity in a slot; minutes stay.
    Replace(SlotId, ActivityId),
    /// Sets a slot's minutes.
    Minutes(SlotId, u32),
    /// Sets a slot's part of the day.
    Part(SlotId, PartId),
    /// Removes a slot.
    Remove(SlotId),
    /// Calls a slot off for everyone, or takes that back.
    Off(SlotId, Option<Off>),
    /// Calls off every activity in the water, with its dry replacement instead, or takes that back:
    /// in one part of the day, or in all of it.
    Dry(Option<PartId>, bool),
    /// Says what can be chosen in a slot; nothing takes the choice back.
    Options(SlotId, Vec<Content>),
    /// Says who leads a slot.
    Leads(SlotId, BTreeSet<HelperId>),
}

/// One change by hand to a board.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BoardEdit {
    /// Adds an own step at a position.
    Insert(Content, usize),
    /// Moves steps together to a position (counted after taking all of them out), in the order in
    /// which they stand.
    Move(Vec<StepRef>, usize),
    /// Some changes one after the other, as one: all of them or none.
    All(Vec<BoardEdit>),
    /// Shows something else in a timetable step, or in an own step.
    Replace(StepRef, Content),
    /// Other words under a step; the activity's own words take the change back.
    Relabel(StepRef, String),
    /// Takes a step off: an own step goes, a timetable step is "not today" and stays visible.
    TakeOff(StepRef),
    /// A timetable or standing step is not done today; what comes instead of a timetable step.
    NotToday(StepRef, Option<Content>),
    /// A step is done today after all; other changes about it stay.
    DoToday(StepRef),
    /// Every activity in the water is not done today and its dry replacement comes instead, for
    /// this participant: in one part of the day, or in all of it.
    Dry(Option<PartId>),
    /// Says what can be chosen at a step; nothing takes the choice back.
    Offer(StepRef, Vec<Content>),
    /// This row is as the group's in this session, whatever the standing changes say; or not.
    WithGroup(SlotId, bool),
    /// Answers what is asked: keep it, or let it go.
    Settle(Asked, bool),
    /// Lets go of the changes about a step that is not on the board.
    LetGo(StepRef),
    /// Takes back all hand changes of one timetable step.
    Restore(StepRef),
    /// Takes back all hand changes of the board.
    RestoreAll,
}

/// What applying an edit made, for selecting it afterwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Made {
    /// Nothing new.
    Nothing,
    /// A part of the day.
    Part(PartId),
    /// An activity.
    Activity(ActivityId),
    /// A picture of the club's own.
    Picture(PictureId),
    /// A song.
    Song(SongId),
    /// A participant.
    Participant(ParticipantId),
    /// A helper.
    Helper(HelperId),
    /// A session.
    Session(SessionId),
    /// A row of a timetable.
    Slot(SlotId),
    /// An own step.
    Own(OwnId),
}

/// Why an edit was not made: one sentence and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// What is in the way.
    pub sentence: String,
    /// What to do.
    pub hint: String,
}

impl Refused {
    /// From what is in the way and what to do.
    pub fn new(sentence: impl Into<String>, hint: impl Into<String>) -> Self {
        Self {
            sentence: sentence.into(),
            hint: hint.into(),
        }
    }

    /// Something that was meant is no longer in the club.
    fn gone(what: &str) -> Self {
        Self::new(
            format!("This {what} is no longer there."),
            "It was removed before; undo brings it back.",
        )
    }
}

impl std::fmt::Display for Refused {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} {}", self.sentence, self.hint)
    }
}

impl std::error::Error for Refused {}

/// The club after an edit, and what it made. The club given is never changed; what the edit does
/// not touch is shared between the two. An edit that changes nothing gives an equal club.
///
/// # Errors
/// When the edit would break an invariant, names something that is gone, or holds a value outside
/// the bounds of [`limits`].
pub fn apply(club: &Club, edit: &Edit) -> Result<(Club, Made), Refused> {
    let mut next = club.clone();
    let made = change(&mut next, edit)?;
    Ok((next, made))
}

fn change(club: &mut Club, edit: &Edit) -> Result<Made, Refused> {
    match edit {
        Edit::ClubName(name) => club::rename(club, name),
        Edit::Rules(rules) => club::set_rules(club, rules),
        Edit::AddPart(name) => club::add_part(club, name),
        Edit::RenamePart(id, name) => club::rename_part(club, *id, name),
        Edit::MovePart(id, to) => club::move_part(club, *id, *to),
        Edit::RemovePart(id) => club::remove_part(club, *id),
        Edit::AddActivity(a) => club::add_activity(club, a),
        Edit::ChangeActivity(a) => club::change_activity(club, a),
        Edit::RemoveActivity(id) => club::remove_activity(club, *id),
        Edit::AddPicture(p) => pictures::add(club, p),
        Edit::ChangePicture(p) => pictures::change(club, p),
        Edit::RemovePicture(id) => pictures::remove(club, *id),
        Edit::TakeSet(set, meeting) => pictures::take_set(club, set, *meeting),
        Edit::AddSong(s) => songs::add(club, s),
        Edit::ChangeSong(s) => songs::change(club, s),
        Edit::MoveSong(id, to) => songs::shift_to(club, *id, *to),
        Edit::RemoveSong(id) => songs::remove(club, *id),
        Edit::AddParticipant(p) => people::add_participant(club, p),
        Edit::ChangeParticipant(p) => people::change_participant(club, p),
        Edit::TakeIn(people) => people::take_in(club, people),
        Edit::MoveParticipant(id, to) => people::move_participant(club, *id, *to),
        Edit::RemoveParticipant(id) => people::remove_participant(club, *id),
        Edit::AddHelper(h) => people::add_helper(club, h),
        Edit::ChangeHelper(h) => people::change_helper(club, h),
        Edit::RemoveHelper(id) => people::remove_helper(club, *id),
        Edit::AddSession(d) => session::add(club, d),
        Edit::CopySession(from, d) => session::copy(club, *from, d),
        Edit::ChangeSession(id, d) => session::change(club, *id, d),
        Edit::RemoveSession(id) => session::remove(club, *id),
        Edit::Attend(id, who, comes) => session::attend(club, *id, *who, *comes),
        Edit::HelperAttends(id, who, comes) => session::helper_attends(club, *id, *who, *comes),
        Edit::Conditions(id, list) => session::conditions(club, *id, list),
        Edit::Record(id, who, record) => session::record(club, *id, *who, record),
        Edit::TileSizes(who, shape, side) => people::tile_sizes(club, who, *shape, *side),
        Edit::Stock(e) => stock::apply(club, e),
        Edit::Timetable(id, e) => timetable::apply(club, *id, e),
        Edit::Board(id, who, e) => board::apply(club, *id, *who, e),
        Edit::Give(id, give) => give::apply(club, *id, give),
        Edit::StoryPage(id, who, at, words) => story::page(club, *id, *who, *at, words),
        Edit::StoryAsTold(id, who) => story::as_told(club, *id, *who),
        Edit::Beside(id, who, helper) => story::beside(club, *id, *who, *helper),
        Edit::Today(id, e) => today::apply(club, *id, e),
        Edit::Turns(id, e) => turns::apply(club, *id, e),
    }
}

/// The next number to give.
fn fresh(club: &mut Club) -> Result<u32, Refused> {
    let id = club.next_id;
    if id >= limits::LAST_ID {
        return Err(Refused::new(
            "This club has used up its numbers.",
            "Start a new club file; the sheets of this one can still be printed.",
        ));
    }
    club.next_id = id + 1;
    Ok(id)
}

/// Puts a value in place of another, and keeps the old one when nothing differs.
fn set<T: PartialEq>(place: &mut Arc<T>, value: T) {
    if **place != value {
        *place = Arc::new(value);
    }
}

/// Moves the entry at `from` to `to`, counted after taking it out; past the end is the end.
fn shift<T>(list: &mut Vec<T>, from: usize, to: usize) {
    let entry = list.remove(from);
    list.insert(to.min(list.len()), entry);
}
