//! Changes by hand that lose what they were about are asked about, and both answers do what they say.

use daystrand::model::board::{Board, By, StepState, derive};
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
use daystrand::model::hand::{Asked, Content};
use daystrand::model::ids::{ParticipantId, SessionId, SlotId, StandingId, StepRef};
use daystrand::model::standing::{Beside, Side, StandingStep};

use super::random;

/// A club, and one board of it: Circle, Song, Boat, Swim (in the water), Song, Snack.
struct Desk {
    club: Club,
    session: SessionId,
    who: ParticipantId,
}

impl Desk {
    fn new() -> Self {
        let club = random::start();
        Self {
            session: club.sessions[0].id,
            who: club.participants[0].id,
            club,
        }
    }

    fn row(&self, at: usize) -> SlotId {
        self.club.sessions[0].timetable[at].id
    }

    fn step(&self, at: usize) -> StepRef {
        StepRef::Slot(self.row(at))
    }

    fn content(&self, at: usize) -> Content {
        Content::of(&self.club.activities[at])
    }

    fn by_hand(&mut self, edit: BoardEdit) {
        self.edit(Edit::Board(self.session, self.who, edit));
    }

    fn timetable(&mut self, edit: TimetableEdit) {
        self.edit(Edit::Timetable(self.session, edit));
    }

    fn edit(&mut self, edit: Edit) {
        self.club = apply(&self.club, &edit).unwrap().0;
    }

    fn board(&self) -> Board {
        derive(&self.club, &self.club.sessions[0], self.who)
    }

    fn labels(&self) -> Vec<String> {
        self.board().steps.into_iter().map(|s| s.label).collect()
    }

    fn asked(&self) -> Vec<Asked> {
        let hand = self.club.sessions[0].hand_of(self.who);
        hand.map_or_else(Vec::new, |h| h.asked.clone())
    }
}

#[test]
fn a_swap_in_a_row_that_goes_can_be_kept_as_an_own_step() {
    let mut desk = Desk::new();
    let snack = desk.content(4);
    desk.by_hand(BoardEdit::Replace(desk.step(2), snack));
    desk.timetable(TimetableEdit::Remove(desk.row(2)));
    assert_eq!(desk.labels(), ["Circle", "Song", "Swim", "Song", "Snack"]);
    let asked = desk.asked();
    let [Asked::RowGone { was, shown, .. }] = &asked[..] else {
        panic!("{asked:?}")
    };
    assert_eq!(
        (was.label.as_str(), shown.label.as_str()),
        ("Boat", "Snack")
    );
    let before = desk.club.clone();
    desk.by_hand(BoardEdit::Settle(asked[0].clone(), true));
    // It stands where it stood: behind the first song.
    assert_eq!(
        desk.labels(),
        ["Circle", "Song", "Snack", "Swim", "Song", "Snack"]
    );
    assert_eq!(desk.board().steps[2].state, StepState::Own);
    assert_eq!(desk.asked(), []);
    // Or let go of.
    desk.club = before;
    desk.by_hand(BoardEdit::Settle(asked[0].clone(), false));
    assert_eq!(desk.labels(), ["Circle", "Song", "Swim", "Song", "Snack"]);
    assert!(desk.club.sessions[0].hand.is_empty());
}

#[test]
fn what_is_not_today_goes_with_its_row_without_a_question() {
    let mut desk = Desk::new();
    desk.by_hand(BoardEdit::TakeOff(desk.step(2)));
    desk.timetable(TimetableEdit::Remove(desk.row(2)));
    assert_eq!(desk.asked(), []);
    assert!(desk.club.sessions[0].hand.is_empty());
    // What was to come instead is someone's decision and is asked about.
    let mut desk = Desk::new();
    let snack = desk.content(4);
    desk.by_hand(BoardEdit::NotToday(desk.step(2), Some(snack)));
    desk.timetable(TimetableEdit::Remove(desk.row(2)));
    assert!(matches!(&desk.asked()[..], [Asked::RowGone { .. }]));
}

/// Old words never stand under a new picture.
#[test]
fn words_wait_when_the_row_has_another_activity() {
    let mut desk = Desk::new();
    desk.by_hand(BoardEdit::Relabel(desk.step(2), "Red boat".into()));
    let (row, boat, snack) = (
        desk.row(2),
        desk.club.activities[2].id,
        desk.club.activities[4].id,
    );
    desk.timetable(TimetableEdit::Replace(row, snack));
    assert_eq!(desk.labels()[2], "Snack");
    let asked = desk.asked();
    assert!(matches!(&asked[..], [Asked::OtherWords { .. }]));
    // The timetable comes back: so do the words, and nothing is asked any more.
    let mut back = Desk {
        club: desk.club.clone(),
        ..desk
    };
    back.timetable(TimetableEdit::Replace(row, boat));
    assert_eq!(back.labels()[2], "Red boat");
    assert_eq!(back.asked(), []);
    // Kept, they go under the new activity; let go, they are gone.
    let kept = BoardEdit::Settle(asked[0].clone(), true);
    desk.by_hand(kept);
    assert_eq!(desk.labels()[2], "Red boat");
}

#[test]
fn a_swap_stays_until_it_is_answered() {
    let mut desk = Desk::new();
    let (row, song) = (desk.row(2), desk.content(1));
    desk.by_hand(BoardEdit::Replace(StepRef::Slot(row), song));
    let snack = desk.club.activities[4].id;
    desk.timetable(TimetableEdit::Replace(row, snack));
    assert_eq!(desk.labels()[2], "Song");
    let asked = desk.asked();
    assert!(matches!(&asked[..], [Asked::OtherActivity { .. }]));
    desk.by_hand(BoardEdit::Settle(asked[0].clone(), false));
    assert_eq!(desk.labels()[2], "Snack");
    assert_eq!(desk.board().differences(), 0);
    // The timetable comes round to what was put in by hand: there is nothing to ask.
    let mut desk = Desk::new();
    let song = desk.content(1);
    desk.by_hand(BoardEdit::Replace(StepRef::Slot(row), song));
    let id = desk.club.activities[1].id;
    desk.timetable(TimetableEdit::Replace(row, id));
    assert_eq!(desk.asked(), []);
    assert_eq!(desk.board().differences(), 0);
}

/// "Quiet place" after everything in the water: it comes and goes with the water, and a change about
/// it waits meanwhile.
#[test]
fn a_standing_step_goes_with_the_water_and_its_change_waits() {
    let mut desk = Desk::new();
    let mut person = desk.club.participants[0].as_ref().clone();
    person.standing.own.push(StandingStep {
        id: StandingId::NEW,
        content: desk.content(0),
        side: Side::After,
        beside: Beside::Water,
        support: true,
    });
    desk.edit(Edit::ChangeParticipant(person));
    let swim = desk.row(3);
    let id = desk.club.participants[0].standing.own[0].id;
    let quiet = StepRef::Standing(id, Some(swim));
    assert_eq!(desk.board().position(quiet), Some(4));
    assert_eq!(desk.board().steps[4].by, By::Standing);
    desk.by_hand(BoardEdit::Relabel(quiet, "Tent".into()));
    // It goes along when the water is moved, and stays behind it.
    desk.timetable(TimetableEdit::Move(swim, 0));
    assert_eq!(desk.board().position(quiet), Some(1));
    // Moved by hand it goes along too: before what stood at that place.
    desk.by_hand(BoardEdit::Move(vec![StepRef::Slot(swim)], 3));
    assert_eq!(
        desk.labels()[..5],
        ["Circle", "Song", "Swim", "Tent", "Boat"]
    );
    desk.timetable(TimetableEdit::Dry(None, true));
    assert_eq!(desk.board().position(quiet), None);
    assert!(desk.board().waiting.contains(&quiet));
    desk.timetable(TimetableEdit::Dry(None, false));
    assert_eq!(desk.board().steps[3].label, "Tent");
    assert!(desk.board().waiting.is_empty());
}

/// Standing changes, hand changes and the timetable are apart: each can be changed alone.
#[test]
fn a_row_that_is_left_out_can_be_done_with_the_group_for_once() {
    let mut desk = Desk::new();
    let song = desk.club.activities[1].id;
    let mut person = desk.club.participants[0].as_ref().clone();
    person.standing.left_out.insert(song);
    desk.edit(Edit::ChangeParticipant(person));
    assert_eq!(desk.labels(), ["Circle", "Boat", "Swim", "Snack"]);
    assert_eq!(desk.board().left_out, [desk.row(1), desk.row(4)]);
    desk.by_hand(BoardEdit::WithGroup(desk.row(4), true));
    assert_eq!(desk.labels(), ["Circle", "Boat", "Swim", "Song", "Snack"]);
    let next = random::details(
        "Next",
        jiff::civil::date(2026, 5, 9),
        jiff::civil::time(9, 30, 0, 0),
    );
    desk.edit(Edit::CopySession(desk.session, next));
    let copy = derive(&desk.club, &desk.club.sessions[1], desk.who);
    assert_eq!(copy.left_out.len(), 2, "that was for the one session");
}
