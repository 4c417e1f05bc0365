//! The running program without a window: whole evenings, questions, files, jobs.

mod begin;
mod choice;
mod edits;
mod evening;
mod files;
mod held;
mod laying;
mod looked;
mod measured;
mod pictures;
mod printing;
mod table;
mod turns;
mod unsaved;
mod voice;

use daystrand::model::club::Activity;
use daystrand::model::edit::{Edit, SessionDetails};
use daystrand::model::hand::Content;
use daystrand::model::ids::{ActivityId, ParticipantId, SymbolId};
use daystrand::model::invariants;
use daystrand::model::people::{Helper, Participant, Role};
use daystrand::units::Length;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Effect};
use jiff::civil::{Date, date, time};

/// The day on which all of these happen.
const TODAY: Date = Date::constant(2027, 6, 11);

/// A workbench that keeps no preferences.
fn bench() -> Workbench {
    Workbench::new(TODAY)
}

/// One with the demo club open.
fn demo() -> Workbench {
    let mut bench = bench();
    assert_eq!(bench.handle(Command::Demo), vec![]);
    bench
}

/// Does something that asks for nothing, and sweeps the invariants.
#[track_caller]
fn quietly(bench: &mut Workbench, command: Command) {
    let effects: Vec<Effect> = bench.handle(command);
    assert_eq!(effects, vec![]);
    sound(bench);
}

/// Makes an edit that is not refused.
#[track_caller]
fn edit(bench: &mut Workbench, edit: Edit) {
    quietly(bench, Command::Edit(edit));
    let notice = bench.view().notice;
    assert!(notice.is_none_or(|n| !n.trouble), "{notice:?}");
}

/// What always holds of a workbench.
#[track_caller]
fn sound(bench: &Workbench) {
    let view = bench.view();
    assert_eq!(invariants::check(view.club), Vec::<String>::new());
    let attending: Vec<_> = view
        .session
        .map_or_else(Vec::new, |s| view.club.attending(s).map(|p| p.id).collect());
    let boards: Vec<_> = view.boards.iter().map(|(id, _)| *id).collect();
    assert_eq!(boards, attending);
    assert_eq!(view.session.is_some(), !view.club.sessions.is_empty());
    if let Some(who) = view.participant {
        assert!(view.club.participant(who.id).is_some());
    }
}

fn details(title: &str, day: i8) -> SessionDetails {
    SessionDetails {
        title: title.into(),
        date: date(2027, 6, day),
        start: time(9, 30, 0, 0),
        place: "the landing".into(),
    }
}

fn participant(name: &str, mark: &str) -> Participant {
    Participant {
        helper_note: Default::default(),
        ..Participant::new(name, SymbolId::new(mark), Length::mm(60.0))
    }
}

fn helper(name: &str, roles: &[Role]) -> Helper {
    Helper {
        roles: roles.iter().copied().collect(),
        ..Helper::new(name)
    }
}

/// The club's activity with this label.
#[track_caller]
fn activity<'a>(bench: &'a Workbench, label: &str) -> &'a Activity {
    let club = bench.view().club;
    club.activities.iter().find(|a| a.label == label).unwrap()
}

fn activity_id(bench: &Workbench, label: &str) -> ActivityId {
    activity(bench, label).id
}

/// The activity as what a step shows.
fn content(bench: &Workbench, label: &str) -> Content {
    let activity = activity(bench, label);
    Content {
        activity: Some(activity.id),
        symbol: activity.symbol.clone(),
        label: activity.label.clone(),
    }
}

/// The words of the chosen board in order.
fn words(bench: &Workbench) -> Vec<String> {
    let view = bench.view();
    let board = view.board().unwrap();
    board.steps.iter().map(|s| s.label.clone()).collect()
}

/// The participant with this mark.
#[track_caller]
fn marked(bench: &Workbench, mark: &str) -> ParticipantId {
    let club = bench.view().club;
    let mut all = club.participants.iter();
    all.find(|p| p.mark.as_str() == mark).unwrap().id
}

/// Chooses the participant with this mark.
#[track_caller]
fn choose(bench: &mut Workbench, mark: &str) {
    let who = marked(bench, mark);
    quietly(bench, Command::ChooseParticipant(who));
}
