//! Whether every board has something on it and every step can be shown.

use std::sync::Arc;

use super::{called, finding};
use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{StepRef, SymbolId};
use crate::model::session::Session;
use crate::symbols::library::library;

/// Checks the timetable and the boards of all who come.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    if session.timetable.is_empty() {
        findings.push(finding(
            Severity::StopAndLook,
            "board.no_timetable",
            Spot::Session(session.id),
            "The timetable is empty.".to_owned(),
            "Add activities in the order of the day.",
        ));
    } else if boards.is_empty() {
        findings.push(finding(
            Severity::Look,
            "board.nobody",
            Spot::Session(session.id),
            "Nobody comes to this session.".to_owned(),
            "Add participants, or say in People who comes.",
        ));
    }
    for board in boards {
        one(club, session, board, findings);
    }
}

fn one(club: &Club, session: &Session, board: &Board, findings: &mut Vec<Finding>) {
    let Some(who) = club.participant(board.participant) else {
        return;
    };
    let done = board
        .steps
        .iter()
        .filter(|s| s.state != StepState::NotToday);
    if done.count() == 0 && !session.timetable.is_empty() {
        findings.push(finding(
            Severity::StopAndLook,
            "board.empty",
            Spot::Board(session.id, who.id),
            format!("Nothing is left to do on the board of {}.", called(who)),
            "Add a step of their own, or take a change back.",
        ));
    }
    for step in &board.steps {
        one_step(club, session, board, step, findings);
    }
}

fn one_step(
    club: &Club,
    session: &Session,
    board: &Board,
    step: &Step,
    findings: &mut Vec<Finding>,
) {
    let spot = spot(session, board, step);
    let activity = step.activity.map(|id| club.activity(id));
    if matches!(activity, Some(None)) {
        findings.push(unknown_activity(spot));
    } else if library().get(&step.symbol).is_none() {
        let label = activity.flatten().map_or(&step.label, |a| &a.label);
        findings.push(unknown_symbol(&step.symbol, label, spot));
    }
    if step.label.trim().is_empty() {
        let here = Spot::Step(session.id, board.participant, step.at);
        findings.push(no_words(if step.relabelled { here } else { spot }));
    }
}

/// What a step shows of the timetable is mended once, in the timetable; anything else on its board.
fn spot(session: &Session, board: &Board, step: &Step) -> Spot {
    match (step.at, &step.state) {
        (StepRef::Slot(slot), StepState::AsTimetable | StepState::NotToday) => {
            Spot::Slot(session.id, slot)
        }
        (at, _) => Spot::Step(session.id, board.participant, at),
    }
}

fn unknown_activity(spot: Spot) -> Finding {
    finding(
        Severity::StopAndLook,
        "board.unknown_activity",
        spot,
        "A step shows an activity that the club does not have.".to_owned(),
        "Put another activity there, or take it out.",
    )
}

fn unknown_symbol(symbol: &SymbolId, label: &str, spot: Spot) -> Finding {
    let sentence = if symbol.as_str().is_empty() {
        format!("\"{label}\" has no picture.")
    } else {
        format!("The picture \"{symbol}\" of \"{label}\" is not one of the symbols.")
    };
    finding(
        Severity::StopAndLook,
        "board.unknown_symbol",
        spot,
        sentence,
        "Choose another picture.",
    )
}

fn no_words(spot: Spot) -> Finding {
    finding(
        Severity::Look,
        "board.no_words",
        spot,
        "A step has no words under its picture.".to_owned(),
        "Write the word that is said when the picture is shown.",
    )
}
