//! How many keys and clicks an evening takes. Each command counts as one; what the window does
//! without a command (opening a pane, pressing R before picking) is counted beside it.

use std::time::Duration;

use daystrand::model::board::StepState;
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit};
use daystrand::model::ids::{ParticipantId, StepRef};
use daystrand::model::session::Session;
use daystrand::plan::changes::changes;
use daystrand::workbench::command::{Effect, Place};
use tempfile::tempdir;

use super::*;

/// A volunteer at the window.
struct Hands {
    bench: Workbench,
    actions: usize,
}

impl Hands {
    /// The demo with twelve participants; that is how the club is before the evening.
    fn new() -> Self {
        let mut bench = demo();
        for (name, mark) in [
            ("Ada", "bell"),
            ("Bo", "ring"),
            ("Cy", "drop"),
            ("Dee", "sun"),
        ] {
            edit(&mut bench, Edit::AddParticipant(participant(name, mark)));
        }
        let first = bench.view().club.sessions[0].id;
        quietly(&mut bench, Command::ChooseSession(first));
        Self { bench, actions: 0 }
    }

    /// A key or a click that asks for something.
    fn does(&mut self, command: Command) {
        self.actions += 1;
        quietly(&mut self.bench, command);
    }

    /// Keys and clicks that only open something in the window.
    fn opens(&mut self, actions: usize) {
        self.actions += actions;
    }

    fn session(&self) -> &Session {
        self.bench.view().session.unwrap()
    }

    fn marked(&self, mark: &str) -> ParticipantId {
        let mut all = self.bench.view().club.participants.iter();
        all.find(|p| p.mark.as_str() == mark).unwrap().id
    }

    fn content(&self, label: &str) -> Content {
        let mut all = self.bench.view().club.activities.iter();
        Content::of(all.find(|a| a.label == label).unwrap())
    }

    /// Clicks a participant and a card of theirs.
    fn chooses(&mut self, mark: &str, label: &str) -> StepRef {
        let who = self.marked(mark);
        self.does(Command::ChooseParticipant(who));
        let board = self.bench.view().board().unwrap();
        let step = board.steps.iter().find(|s| s.label == label).unwrap().at;
        self.does(Command::ChooseStep(Some(step)));
        step
    }

    /// Writes all sheets into a folder: to Print, the button, the folder.
    fn prints(&mut self) -> usize {
        let dir = tempdir().unwrap();
        self.does(Command::Show(Place::Print));
        self.actions += 1;
        assert_eq!(
            self.bench.handle(Command::AskPrintFolder),
            [Effect::AskFolder]
        );
        self.does(Command::WriteSheets(dir.path().to_owned()));
        while self.bench.view().job.is_some() {
            self.bench.poll();
            std::thread::sleep(Duration::from_millis(5));
        }
        std::fs::read_dir(dir.path()).unwrap().count()
    }
}

#[test]
fn a_first_evening_takes_at_most_forty_actions() {
    let mut hands = Hands::new();
    // A new session from the one before.
    let from = hands.session().id;
    let details = super::details("Boat morning", 26);
    hands.does(Command::Edit(Edit::CopySession(from, details)));
    assert_eq!(hands.bench.view().boards.len(), 12);
    hands.does(Command::Show(Place::Boards));
    // Three swaps: the participant, the card, R, the symbol.
    for (mark, from, to) in [
        ("bell", "Song", "Drum"),
        ("ring", "Dig", "Find shells"),
        ("drop", "Warm up", "Stretch"),
    ] {
        let step = hands.chooses(mark, from);
        hands.opens(1);
        let content = hands.content(to);
        hands.does(Command::EditBoard(BoardEdit::Replace(step, content)));
    }
    // One own step: the participant, the card before it, the symbol.
    hands.chooses("sun", "Dig");
    let who = hands.marked("sun");
    let at = hands.bench.view().board().unwrap();
    let at = at.steps.iter().position(|s| s.label == "Dig").unwrap() + 1;
    let own = hands.content("Find shells");
    let id = hands.session().id;
    hands.does(Command::Edit(Edit::Board(
        id,
        who,
        BoardEdit::Insert(own, at),
    )));
    // One "not today": the participant, the card, Delete.
    let step = hands.chooses("kite", "Boat");
    hands.does(Command::EditBoard(BoardEdit::TakeOff(step)));
    let files = hands.prints();
    // Large print, base board and story for each of twelve.
    assert!(files >= 12 * 3, "{files} files");
    println!("a first evening: {} actions, {files} files", hands.actions);
    assert!(hands.actions <= 40, "{}", hands.actions);
}

#[test]
fn wind_at_eight_in_the_morning_takes_under_ten_actions() {
    let mut hands = Hands::new();
    let id = hands.session().id;
    // To Session, the pane, the condition, all water off.
    hands.does(Command::Show(Place::Session));
    hands.opens(1);
    let windy = vec![Condition::Known(Known::Windy)];
    hands.does(Command::Edit(Edit::Conditions(id, windy)));
    hands.does(Command::Edit(Edit::Timetable(
        id,
        TimetableEdit::Dry(None, true),
    )));
    let view = hands.bench.view();
    // Nobody's board has anything in the water left, and what comes instead is on each.
    for (_, board) in view.boards {
        for step in board.done() {
            let activity = step.activity.and_then(|a| view.club.activity(a));
            assert!(!activity.is_some_and(|a| a.in_water), "{step:?}");
        }
        let off = board
            .steps
            .iter()
            .filter(|s| s.state == StepState::NotToday);
        let instead = board.steps.iter();
        let instead = instead.filter(|s| matches!(s.state, StepState::Instead { .. }));
        assert_eq!(off.count(), instead.count());
    }
    let boards: Vec<_> = view.boards.iter().map(|(_, b)| b.clone()).collect();
    let found = changes(view.club, view.session.unwrap(), &boards);
    assert_eq!(found.boards.len(), 12);
    assert!(found.boards.iter().any(|b| b.tell_apart));
    let codes: Vec<_> = view.findings.iter().map(|f| f.code).collect();
    assert!(!codes.contains(&"conditions.not_when"), "{codes:?}");
    hands.prints();
    println!("wind: {} actions", hands.actions);
    assert!(hands.actions < 10, "{}", hands.actions);
}
