//! Whether every board has something on it, every step can be shown, choices are choices, and no
//! question is open.

use std::sync::Arc;

use super::{called, finding};
use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::conditions::{Condition, Known};
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{StepRef, SymbolId};
use crate::model::session::{Session, Slot};
use crate::symbols::own;

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
        choice(club, session, board, step, findings);
    }
    questions(club, session, board, findings);
}

/// Changes by hand that wait for an answer.
fn questions(club: &Club, session: &Session, board: &Board, findings: &mut Vec<Finding>) {
    let open = session.questions(board);
    let Some(who) = club.participant(board.participant).filter(|_| open > 0) else {
        return;
    };
    let what = match open {
        1 => "A change by hand".to_owned(),
        n => format!("{n} changes by hand"),
    };
    findings.push(finding(
        Severity::Look,
        "board.question",
        Spot::Board(session.id, board.participant),
        format!(
            "{what} on the board of {} lost what it was about when something else changed.",
            called(who)
        ),
        "Say on the board whether to keep it or let it go.",
    ));
}

/// A choice that is none: nothing to choose from, or something that is not there today.
fn choice(club: &Club, session: &Session, board: &Board, step: &Step, findings: &mut Vec<Finding>) {
    if step.state == StepState::NotToday {
        return;
    }
    let spot = choice_spot(session, board, step);
    let label = &step.label;
    let asks = step.symbol.as_str() == "choose";
    if step.options.len() == 1 || (asks && step.options.is_empty()) {
        findings.push(finding(
            Severity::Look,
            "board.choice_without_options",
            spot,
            format!("“{label}” is a choice with fewer than two things to choose from."),
            "Offer two or three, among them something else or no thanks.",
        ));
    }
    for option in &step.options {
        let activity = option.activity.and_then(|id| club.activity(id));
        let off = activity.and_then(|a| a.not_when.iter().find(|k| today(session, **k)));
        let called_off = |s: &Slot| s.off.is_some() && Some(s.activity) == option.activity;
        let gone = session.timetable.iter().any(called_off);
        if let Some(condition) = off {
            findings.push(not_there(&option.label, label, condition.label(), spot));
        } else if gone {
            findings.push(not_there(&option.label, label, "called off", spot));
        }
    }
}

fn today(session: &Session, known: Known) -> bool {
    session.conditions.contains(&Condition::Known(known))
}

fn not_there(option: &str, choice: &str, why: &str, spot: Spot) -> Finding {
    finding(
        Severity::Look,
        "board.choice_not_there",
        spot,
        format!("“{option}” can be chosen at “{choice}” and is not done today ({why})."),
        "Offer something that is there.",
    )
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
    } else if !own::is_known(club, &step.symbol) {
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

/// A choice that the timetable offers is mended there, one of this board's own on the board.
fn choice_spot(session: &Session, board: &Board, step: &Step) -> Spot {
    let hand = session.hand_of(board.participant);
    if hand.is_some_and(|h| h.choices.contains_key(&step.at)) {
        return Spot::Step(session.id, board.participant, step.at);
    }
    spot(session, board, step)
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
        format!("“{label}” has no picture.")
    } else {
        format!("The picture “{symbol}” of “{label}” is not one of the symbols.")
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
