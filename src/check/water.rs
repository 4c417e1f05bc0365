//! Whether something dry is ready for everything in the water.
//!
//! Common practice in the trade: wind, waves or a full lagoon can end a water activity at any
//! moment, so what is done instead is decided, and its tile printed, the evening before.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::finding;
use crate::model::board::{Board, By, StepState};
use crate::model::club::{Activity, Club};
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{ActivityId, StepRef};
use crate::model::session::Session;

/// Checks every activity that is in the timetable or on a board, each once, where it first stands.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    for (id, spot) in first_spots(session, boards) {
        let Some(activity) = club.activity(id).filter(|a| a.in_water) else {
            continue;
        };
        let dry = activity.dry_replacement.and_then(|d| club.activity(d));
        match dry {
            None => findings.push(finding(
                Severity::Look,
                "water.no_dry_replacement",
                spot,
                format!(
                    "“{}” is in the water and nothing dry is ready instead.",
                    activity.label
                ),
                "Choose what is done instead in the activity’s settings.",
            )),
            Some(dry) if dry.in_water => findings.push(wet(activity, dry, spot)),
            Some(_) => {}
        }
    }
    for board in boards {
        nothing_instead(club, session, board, findings);
    }
}

/// An activity in the water that is not today leaves a gap in the day when nothing comes instead.
fn nothing_instead(club: &Club, session: &Session, board: &Board, findings: &mut Vec<Finding>) {
    for step in board
        .steps
        .iter()
        .filter(|s| s.state == StepState::NotToday)
    {
        let wet = step.activity.is_some_and(|id| club.in_water(id));
        let StepRef::Slot(slot) = step.at else {
            continue;
        };
        if !wet || board.position(StepRef::Instead(slot)).is_some() {
            continue;
        }
        let called_off = session.slot(slot).is_some_and(|s| s.off.is_some());
        let spot = match step.by {
            By::Timetable if called_off => Spot::Slot(session.id, slot),
            _ => Spot::Step(session.id, board.participant, step.at),
        };
        findings.push(finding(
            Severity::Look,
            "water.nothing_instead",
            spot,
            format!("“{}” is not today and nothing comes instead.", step.label),
            "Choose what comes instead, so that the board says what happens then.",
        ));
    }
}

fn wet(activity: &Activity, instead: &Activity, spot: Spot) -> Finding {
    finding(
        Severity::Look,
        "water.wet_replacement",
        spot,
        format!(
            "What is done instead of “{}” is “{}”, which is in the water too.",
            activity.label, instead.label
        ),
        "Choose something on land instead.",
    )
}

/// Each activity of a session with the first place where it stands: the timetable before boards.
fn first_spots(session: &Session, boards: &[Arc<Board>]) -> BTreeMap<ActivityId, Spot> {
    let mut spots = BTreeMap::new();
    for slot in &session.timetable {
        let spot = Spot::Slot(session.id, slot.id);
        spots.entry(slot.activity).or_insert(spot);
    }
    for board in boards {
        for step in &board.steps {
            if let (Some(id), false) = (step.activity, step.state == StepState::NotToday) {
                let spot = Spot::Step(session.id, board.participant, step.at);
                spots.entry(id).or_insert(spot);
            }
        }
    }
    spots
}
