//! What someone has on a board, for another one there: with its words, its choice, and no picture
//! that is not for the other's eyes.

use daystrand::model::board::{By, Step, derive};
use daystrand::model::club::Club;
use daystrand::model::edit::{
    BoardEdit, Edit, Give, GiveAt, Made as Came, Refused, TimetableEdit, apply,
};
use daystrand::model::hand::Content;
use daystrand::model::ids::{ParticipantId, SessionId, StepRef, SymbolId};
use daystrand::model::invariants;
use daystrand::model::picture::{Made, PhotoKind, Picture};
use daystrand::model::profile::PhotoConsent;

use super::random;
use super::random_pictures::photo;

/// A club, its session, two who take part, and the second step of each of their boards.
struct Desk {
    club: Club,
    id: SessionId,
    from: ParticipantId,
    to: ParticipantId,
    row: StepRef,
}

impl Desk {
    fn new() -> Self {
        let club = random::start();
        let (id, row) = (club.sessions[0].id, club.sessions[0].timetable[1].id);
        Self {
            id,
            from: club.participants[0].id,
            to: club.participants[1].id,
            row: StepRef::Slot(row),
            club,
        }
    }

    fn does(&mut self, edit: &Edit) {
        self.club = apply(&self.club, edit).unwrap().0;
        assert_eq!(invariants::check(&self.club), Vec::<String>::new());
    }

    fn by_hand(&mut self, edit: BoardEdit) {
        self.does(&Edit::Board(self.id, self.from, edit));
    }

    fn give(&mut self, steps: Vec<StepRef>, at: GiveAt) -> Result<(), Refused> {
        let give = Give {
            from: self.from,
            steps,
            to: self.to,
            at,
            stays: true,
        };
        apply(&self.club, &Edit::Give(self.id, give)).map(|(club, _)| self.club = club)
    }

    fn step(&self, who: ParticipantId) -> Step {
        let session = self.club.session(self.id).unwrap();
        let board = derive(&self.club, session, who);
        board.steps[board.position(self.row).unwrap()].clone()
    }
}

#[test]
fn in_the_place_of_a_step_it_keeps_its_own_words_and_its_choice() {
    let mut desk = Desk::new();
    let row = desk.row;
    let options = vec![
        Content::of(&desk.club.activities[0]),
        Content::of(&desk.club.activities[2]),
    ];
    desk.by_hand(BoardEdit::Replace(
        row,
        Content::of(&desk.club.activities[4]),
    ));
    desk.by_hand(BoardEdit::Offer(row, options.clone()));
    desk.by_hand(BoardEdit::Relabel(row, "Apple with Mum".into()));
    desk.give(vec![row], GiveAt::Step(row)).unwrap();
    let given = desk.step(desk.to);
    assert_eq!(given.activity, Some(desk.club.activities[4].id));
    assert_eq!(
        (given.label.as_str(), given.relabelled),
        ("Apple with Mum", true)
    );
    assert_eq!(given.options, options);
}

/// A row that is given its own activity shows what the timetable has, so the group's choice too.
#[test]
fn in_its_own_row_an_activity_is_the_groups_with_the_groups_choice() {
    let mut desk = Desk::new();
    let (id, row) = (desk.id, desk.row);
    let StepRef::Slot(slot) = row else { panic!() };
    let usual = desk.club.sessions[0].timetable[1].activity;
    let choice = vec![Content::of(&desk.club.activities[2])];
    let offers = TimetableEdit::Options(slot, choice.clone());
    desk.does(&Edit::Timetable(id, offers));
    let plain = Content::of(desk.club.activity(usual).unwrap());
    desk.by_hand(BoardEdit::Insert(plain, 0));
    let session = desk.club.session(id).unwrap();
    let own = derive(&desk.club, session, desk.from).steps[0].at;
    desk.give(vec![own], GiveAt::Step(row)).unwrap();
    let shown = desk.step(desk.to);
    assert_eq!(shown.activity, Some(usual));
    assert_eq!((shown.options, shown.by), (choice, By::Timetable));
}

#[test]
fn only_one_step_takes_the_place_of_another() {
    let mut desk = Desk::new();
    let first = StepRef::Slot(desk.club.sessions[0].timetable[0].id);
    let before = desk.club.clone();
    let refused = desk.give(vec![first, desk.row], GiveAt::Step(desk.row));
    let words = refused.unwrap_err().to_string();
    assert!(words.contains("Only one step"), "{words}");
    assert_eq!(before, desk.club);
}

#[test]
fn a_picture_for_own_eyes_does_not_go_along() {
    let mut desk = Desk::new();
    let (me, row) = (desk.from, desk.row);
    let towel = Picture {
        whose: Some(me),
        consent: PhotoConsent::OwnTiles,
        stands_for: Some(SymbolId::new("dig")),
        ..Picture::new(
            "My towel",
            Made::Photo(photo(PhotoKind::Jpeg, [40, 30], 200)),
        )
    };
    let (club, made) = apply(&desk.club, &Edit::AddPicture(towel)).unwrap();
    let Came::Picture(id) = made else {
        panic!("{made:?}")
    };
    let mut content = Content::of(&club.activities[0]);
    content.activity = None;
    content.symbol = club.picture(id).unwrap().symbol();
    desk.club = club;
    desk.by_hand(BoardEdit::Replace(row, content.clone()));
    desk.by_hand(BoardEdit::Offer(row, vec![content.clone()]));
    assert_eq!(desk.step(me).symbol, content.symbol);
    desk.give(vec![row], GiveAt::Step(row)).unwrap();
    let hand = desk
        .club
        .session(desk.id)
        .unwrap()
        .hand_of(desk.to)
        .unwrap();
    assert_eq!(hand.replaced[&row].symbol, SymbolId::new("dig"));
    assert_eq!(hand.choices[&row][0].symbol, SymbolId::new("dig"));
}
