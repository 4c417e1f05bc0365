//! What is new for a participant since the session they came to last, and what is the same.

use crate::model::board::{self, Board, Step};
use crate::model::club::Club;
use crate::model::ids::{ActivityId, ParticipantId};
use crate::model::record::Record;
use crate::model::session::Session;

/// A session beside the last one a participant came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Since<'a> {
    /// The session they came to last.
    pub last: &'a Session,
    /// Words of the steps that were not on their board then, in the order of the board.
    pub new: Vec<String>,
    /// Words of the steps that were.
    pub same: Vec<String>,
    /// Words of the steps that were and are not now, in the order they had then.
    pub gone: Vec<String>,
    /// Whether it is elsewhere this time.
    pub other_place: bool,
    /// Whether it begins at another time of the day.
    pub other_start: bool,
}

/// The session a participant came to last before this one, by date and start; none for someone who
/// comes for the first time.
pub fn last<'a>(club: &'a Club, session: &Session, who: ParticipantId) -> Option<&'a Session> {
    let key = |s: &Session| (s.date, s.start, s.id);
    let earlier = club.sessions.iter().rev().map(AsRef::as_ref);
    earlier
        .filter(|s| key(s) < key(session))
        .find(|s| !s.away.contains(&who) && !s.timetable.is_empty())
}

/// What is new and what is the same; none for someone who comes for the first time. `board` is
/// theirs for the session. Steps of "not today" do not count on either side.
pub fn since<'a>(club: &'a Club, session: &Session, board: &Board) -> Option<Since<'a>> {
    let who = board.participant;
    let last = last(club, session, who)?;
    let before = board::derive(club, last, who);
    let had = |step: &Step| before.done().any(|b| same(b, step));
    let has = |step: &Step| board.done().any(|b| same(b, step));
    let words = |steps: Vec<&Step>| {
        let mut all: Vec<String> = Vec::with_capacity(steps.len());
        for step in steps {
            if !all.contains(&step.label) {
                all.push(step.label.clone());
            }
        }
        all
    };
    Some(Since {
        last,
        new: words(board.done().filter(|s| !had(s)).collect()),
        same: words(board.done().filter(|s| had(s)).collect()),
        gone: words(before.done().filter(|s| !has(s)).collect()),
        other_place: last.place != session.place,
        other_start: last.start != session.start,
    })
}

/// What was written down after the session a participant came to last.
pub fn last_record<'a>(
    club: &'a Club,
    session: &Session,
    who: ParticipantId,
) -> Option<(&'a Session, &'a Record)> {
    let last = last(club, session, who)?;
    Some((last, last.records.get(&who)?.for_owner()))
}

/// The activities that were favourites in any session up to this one, newest first.
pub fn favourites_shown(club: &Club, session: &Session, who: ParticipantId) -> Vec<ActivityId> {
    let key = |s: &Session| (s.date, s.start, s.id);
    let earlier = club.sessions.iter().rev();
    let earlier = earlier.filter(|s| key(s) <= key(session));
    let mut all = Vec::new();
    for shown in earlier.filter_map(|s| s.records.get(&who)?.for_owner().favourite) {
        if !all.contains(&shown) {
            all.push(shown);
        }
    }
    all
}

/// The same activity, or the same picture under the same words.
fn same(a: &Step, b: &Step) -> bool {
    match (a.activity, b.activity) {
        (Some(a), Some(b)) => a == b,
        (None, None) => a.symbol == b.symbol && a.label == b.label,
        _ => false,
    }
}
