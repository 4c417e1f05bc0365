//! What an edit is called in the undo menu.

use super::club::short;
use super::{BoardEdit, Edit, Give, TimetableEdit, TodayEdit, TurnsEdit};
use crate::model::board;
use crate::model::club::Club;
use crate::model::hand::{Content, HandChanges};
use crate::model::ids::{
    ActivityId, HelperId, PartId, ParticipantId, PictureId, SessionId, SlotId, SongId, StepRef,
};
use crate::model::stock::{Loss, StockEdit, TileKey};

impl Edit {
    /// A few words for the undo menu, such as "Move Circle". `club` is the club before the edit.
    pub fn label(&self, club: &Club) -> String {
        match self {
            Self::ClubName(_) => "Rename the club".to_owned(),
            Self::Rules(_) => "Change the rules".to_owned(),
            Self::AddPart(name) => format!("Add {}", short(name.trim())),
            Self::RenamePart(id, _) => format!("Rename {}", part(club, *id)),
            Self::MovePart(id, _) => format!("Move {}", part(club, *id)),
            Self::RemovePart(id) => format!("Remove {}", part(club, *id)),
            Self::AddActivity(a) => format!("Add {}", short(a.label.trim())),
            Self::ChangeActivity(a) => format!("Change {}", activity(club, a.id)),
            Self::RemoveActivity(id) => format!("Remove {}", activity(club, *id)),
            Self::AddPicture(p) => format!("Add picture {}", short(p.name.trim())),
            Self::ChangePicture(p) => format!("Change {}", picture(club, p.id)),
            Self::RemovePicture(id) => format!("Remove {}", picture(club, *id)),
            Self::TakeSet(set, _) => format!("Take in {}", short(set.name.trim())),
            Self::AddSong(s) => format!("Add {}", short(s.title.trim())),
            Self::ChangeSong(s) => format!("Change {}", song(club, s.id)),
            Self::MoveSong(id, _) => format!("Move {}", song(club, *id)),
            Self::RemoveSong(id) => format!("Remove {}", song(club, *id)),
            Self::AddParticipant(p) => format!("Add {}", short(p.name.trim())),
            Self::ChangeParticipant(p) => format!("Change {}", participant(club, p.id)),
            Self::TakeIn(people) => match people.len() {
                1 => "Take in a row".to_owned(),
                n => format!("Take in {n} rows"),
            },
            Self::MoveParticipant(id, _) => format!("Move {}", participant(club, *id)),
            Self::RemoveParticipant(id) => format!("Remove {}", participant(club, *id)),
            Self::AddHelper(h) => format!("Add {}", short(h.name.trim())),
            Self::ChangeHelper(h) => format!("Change {}", helper(club, h.id)),
            Self::RemoveHelper(id) => format!("Remove {}", helper(club, *id)),
            Self::AddSession(d) => format!("Add {}", session_words(&d.title)),
            Self::CopySession(from, _) => format!("Copy {}", session(club, *from)),
            Self::ChangeSession(id, _) => format!("Change {}", session(club, *id)),
            Self::RemoveSession(id) => format!("Remove {}", session(club, *id)),
            Self::Attend(_, who, comes) => comes_or_not(&participant(club, *who), *comes),
            Self::HelperAttends(_, who, comes) => comes_or_not(&helper(club, *who), *comes),
            Self::Conditions(id, _) => format!("Conditions of {}", session(club, *id)),
            Self::Record(_, who, _) => format!("Record of {}", participant(club, *who)),
            Self::TileSizes(who, ..) => match who.as_slice() {
                [one] => format!("Tiles of {}", participant(club, *one)),
                all => format!("Tiles of {} participants", all.len()),
            },
            Self::Stock(edit) => stock(edit),
            Self::Timetable(id, edit) => timetable(club, *id, edit),
            Self::Board(id, who, edit) => {
                let what = on_board(club, *id, *who, edit);
                format!("{what} for {}", participant(club, *who))
            }
            Self::Give(id, give) => given(club, *id, give),
            Self::StoryPage(_, who, ..) => {
                format!("Words in the story of {}", participant(club, *who))
            }
            Self::StoryAsTold(_, who) => format!("Story of {} as told", participant(club, *who)),
            Self::Beside(_, who, Some(h)) => {
                format!("{} beside {}", helper(club, *h), participant(club, *who))
            }
            Self::Beside(_, who, None) => {
                format!("Nobody named beside {}", participant(club, *who))
            }
            Self::Today(id, edit) => today(club, *id, edit),
            Self::Turns(id, edit) => turns(club, *id, edit),
        }
    }
}

fn stock(edit: &StockEdit) -> String {
    let tile = |key: &TileKey| short(key.face.label.trim());
    match edit {
        StockEdit::Made(tiles) => match tiles.iter().map(|(_, n)| n).sum() {
            1_u32 => "1 tile made".to_owned(),
            n => format!("{n} tiles made"),
        },
        StockEdit::Gone(key, Loss::Lost) => format!("Tile {} lost", tile(key)),
        StockEdit::Gone(key, Loss::Worn) => format!("Tile {} worn out", tile(key)),
        StockEdit::Counted(key, n) => format!("{n} of tile {} counted", tile(key)),
    }
}

fn timetable(club: &Club, id: SessionId, edit: &TimetableEdit) -> String {
    match *edit {
        TimetableEdit::Insert(a, _) => format!("Add {} to the timetable", activity(club, a)),
        TimetableEdit::Move(s, _) => format!("Move {}", slot(club, id, s)),
        TimetableEdit::Replace(s, _) => format!("Replace {}", slot(club, id, s)),
        TimetableEdit::Minutes(s, _) => format!("Minutes of {}", slot(club, id, s)),
        TimetableEdit::Part(s, _) => format!("Part of the day of {}", slot(club, id, s)),
        TimetableEdit::Remove(s) => format!("Remove {}", slot(club, id, s)),
        TimetableEdit::Off(s, Some(_)) => format!("{} not today", slot(club, id, s)),
        TimetableEdit::Off(s, None) => format!("{} today after all", slot(club, id, s)),
        TimetableEdit::Dry(_, true) => "Dry instead of water".to_owned(),
        TimetableEdit::Dry(_, false) => "Water after all".to_owned(),
        TimetableEdit::Options(s, _) => format!("Choice at {}", slot(club, id, s)),
        TimetableEdit::Leads(s, _) => format!("Who leads {}", slot(club, id, s)),
    }
}

fn today(club: &Club, id: SessionId, edit: &TodayEdit) -> String {
    match edit {
        TodayEdit::WaterLead(Some(h)) => format!("{} leads in the water", helper(club, *h)),
        TodayEdit::WaterLead(None) => "Nobody leads in the water".to_owned(),
        TodayEdit::Here(h, _) => format!("When {} is there", helper(club, *h)),
        TodayEdit::Watches(h, Some(true)) => format!("{} watches", helper(club, *h)),
        TodayEdit::Watches(h, Some(false)) => format!("{} does not watch", helper(club, *h)),
        TodayEdit::Watches(h, None) => format!("{} as usual", helper(club, *h)),
        TodayEdit::WatchedBy(p, Some(h)) => {
            format!("{} watches {}", helper(club, *h), participant(club, *p))
        }
        TodayEdit::WatchedBy(p, None) => format!("Nobody named for {}", participant(club, *p)),
        TodayEdit::Pair(p, h, _) => {
            format!("{} and {}", participant(club, *p), helper(club, *h))
        }
        TodayEdit::Hold(s, p, _) => {
            format!(
                "Who is with {} at {}",
                participant(club, *p),
                slot(club, id, *s)
            )
        }
        TodayEdit::HoldAll(all) if all.is_empty() => "Let all pairs go".to_owned(),
        TodayEdit::HoldAll(_) => "Hold the pairs".to_owned(),
        TodayEdit::MeetingSpot(_) => "Meeting spot".to_owned(),
        TodayEdit::Look(l) | TodayEdit::LookAgain(_, l) => {
            format!("Looked: {}", short(l.look.label()))
        }
        TodayEdit::Unlook(_) => "Take out what was looked at".to_owned(),
        TodayEdit::Thunder(_) => "Thunder".to_owned(),
    }
}

fn turns(club: &Club, id: SessionId, edit: &TurnsEdit) -> String {
    match edit {
        TurnsEdit::Set(plan) => format!("In turns: {} turns", plan.count),
        TurnsEdit::Place(p, turn, s) => {
            let (who, what) = (participant(club, *p), slot(club, id, *s));
            format!("{who} at {what} in turn {}", turn + 1)
        }
        TurnsEdit::Hold(p, s, held) => {
            let (who, what) = (participant(club, *p), slot(club, id, *s));
            match held {
                true => format!("Hold {who} at {what}"),
                false => format!("Let {who} go from {what}"),
            }
        }
        TurnsEdit::Friends(_) => "Who wants to be together".to_owned(),
        TurnsEdit::Off => "Not in turns".to_owned(),
    }
}

fn given(club: &Club, id: SessionId, give: &Give) -> String {
    let what = give.steps.first().copied();
    let what = what.map_or_else(String::new, |at| step(club, id, give.from, at));
    let what = and_more(&what, give.steps.len());
    let to = participant(club, give.to);
    match (give.from == give.to, give.stays) {
        (true, _) => format!("{what} once more for {to}"),
        (false, true) => format!("{what} for {to} too"),
        (false, false) => format!("{what} to {to}"),
    }
}

/// The first of some, with how many there are besides.
pub fn and_more(first: &str, count: usize) -> String {
    match count {
        0 | 1 => first.to_owned(),
        n => format!("{first} and {} more", n - 1),
    }
}

/// What is done to a board, without whose it is.
fn on_board(club: &Club, id: SessionId, who: ParticipantId, edit: &BoardEdit) -> String {
    let step = |at: StepRef| step(club, id, who, at);
    match edit {
        BoardEdit::Insert(c, _) => format!("Add {}", content(club, c)),
        BoardEdit::Replace(at, _) => format!("Replace {}", step(*at)),
        BoardEdit::Relabel(at, _) => format!("Words of {}", step(*at)),
        BoardEdit::TakeOff(at @ (StepRef::Slot(_) | StepRef::Standing(..)))
        | BoardEdit::NotToday(at, _) => format!("{} not today", step(*at)),
        BoardEdit::DoToday(at) => format!("{} today after all", step(*at)),
        BoardEdit::Dry(_) => "Dry instead of water".to_owned(),
        BoardEdit::Offer(at, _) => format!("Choice at {}", step(*at)),
        BoardEdit::WithGroup(row, true) => format!("{} with the group", slot(club, id, *row)),
        BoardEdit::WithGroup(row, false) => format!("{} as always", slot(club, id, *row)),
        BoardEdit::Settle(asked, true) => format!("Keep {}", content(club, asked.kept())),
        BoardEdit::Settle(..) => "Follow the timetable".to_owned(),
        BoardEdit::LetGo(_) => "Let a change go".to_owned(),
        BoardEdit::TakeOff(at) => format!("Take off {}", step(*at)),
        BoardEdit::Restore(at) => format!("{} as in the timetable", step(*at)),
        BoardEdit::RestoreAll => "All as in the timetable".to_owned(),
        BoardEdit::Move(steps, _) => {
            let first = steps.first().map_or_else(String::new, |at| step(*at));
            format!("Move {}", and_more(&first, steps.len()))
        }
        BoardEdit::All(edits) => {
            let first = edits
                .first()
                .map_or_else(String::new, |e| on_board(club, id, who, e));
            and_more(&first, edits.len())
        }
    }
}

fn comes_or_not(name: &str, comes: bool) -> String {
    let words = if comes { "comes" } else { "does not come" };
    format!("{name} {words}")
}

fn part(club: &Club, id: PartId) -> String {
    let found = club.part(id).map(|p| short(&p.name));
    found.unwrap_or_else(|| "a part of the day".to_owned())
}

fn activity(club: &Club, id: ActivityId) -> String {
    let found = club.activity(id).map(|a| short(&a.label));
    found.unwrap_or_else(|| "an activity".to_owned())
}

fn picture(club: &Club, id: PictureId) -> String {
    let found = club.picture(id).map(|p| short(&p.name));
    found.unwrap_or_else(|| "a picture".to_owned())
}

fn song(club: &Club, id: SongId) -> String {
    let found = club.song(id).map(|s| short(&s.title));
    found.unwrap_or_else(|| "a song".to_owned())
}

fn participant(club: &Club, id: ParticipantId) -> String {
    let found = club.participant(id).map(|p| short(&p.name));
    found.unwrap_or_else(|| "a participant".to_owned())
}

fn helper(club: &Club, id: HelperId) -> String {
    let found = club.helper(id).map(|h| short(&h.name));
    found.unwrap_or_else(|| "a helper".to_owned())
}

fn session(club: &Club, id: SessionId) -> String {
    session_words(club.session(id).map_or("", |s| &s.title))
}

fn session_words(title: &str) -> String {
    match title.trim() {
        "" => "a session".to_owned(),
        title => short(title),
    }
}

fn slot(club: &Club, session: SessionId, id: SlotId) -> String {
    let row = club.session(session).and_then(|s| s.slot(id));
    row.map_or_else(|| "a row".to_owned(), |row| activity(club, row.activity))
}

fn step(club: &Club, session: SessionId, who: ParticipantId, at: StepRef) -> String {
    let none = HandChanges::default();
    let found = club.session(session).and_then(|s| {
        let hand = s.hand_of(who).unwrap_or(&none);
        let by_hand = hand.labels.get(&at).cloned();
        by_hand.or_else(|| board::own_words(club, s, who, hand, at))
    });
    found.map_or_else(|| "a step".to_owned(), |words| short(&words))
}

fn content(club: &Club, content: &Content) -> String {
    match content.activity {
        Some(id) => activity(club, id),
        None => short(content.label.trim()),
    }
}
