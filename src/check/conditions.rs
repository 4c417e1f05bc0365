//! What the day may bring, against what is planned and who comes. It names what the club entered and
//! decides nothing about the water or the weather.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::{called, finding};
use crate::model::board::{Board, StepState};
use crate::model::club::{Activity, Club};
use crate::model::conditions::Condition;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::ActivityId;
use crate::model::session::Session;

/// Checks the activities on the boards and the people who come against the conditions of the day.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    if session.conditions.is_empty() {
        return;
    }
    let mut told: BTreeSet<ActivityId> = BTreeSet::new();
    for slot in session.timetable.iter().filter(|s| s.off.is_none()) {
        let spot = Spot::Slot(session.id, slot.id);
        planned(club, session, slot.activity, spot, &mut told, findings);
    }
    for board in boards {
        for step in board
            .steps
            .iter()
            .filter(|s| s.state != StepState::NotToday)
        {
            if let Some(id) = step.activity {
                let spot = Spot::Step(session.id, board.participant, step.at);
                planned(club, session, id, spot, &mut told, findings);
            }
        }
        hard(club, session, board, findings);
    }
}

/// Tells once of an activity that the club does not do under one of today's conditions.
fn planned(
    club: &Club,
    session: &Session,
    id: ActivityId,
    spot: Spot,
    told: &mut BTreeSet<ActivityId>,
    findings: &mut Vec<Finding>,
) {
    let Some(activity) = club.activity(id) else {
        return;
    };
    let today = |c: &&Condition| match c {
        Condition::Known(known) => activity.not_when.contains(known),
        Condition::Words(_) => false,
    };
    if let Some(condition) = session.conditions.iter().find(today)
        && told.insert(id)
    {
        findings.push(finding(
            Severity::Look,
            "conditions.not_when",
            spot,
            format!(
                "“{}” is planned, and the club entered that it is not done when it is: {}.",
                activity.label,
                condition.label()
            ),
            hint(club, activity),
        ));
    }
}

fn hint(club: &Club, activity: &Activity) -> String {
    let dry = activity.dry_replacement.and_then(|d| club.activity(d));
    match dry {
        Some(dry) => format!(
            "Call it off in the timetable; “{}” is ready instead.",
            dry.label
        ),
        None => "Call it off in the timetable, or put something else there.".to_owned(),
    }
}

/// What is hard for someone who comes, on a day such as this.
fn hard(club: &Club, session: &Session, board: &Board, findings: &mut Vec<Finding>) {
    let Some(who) = club.participant(board.participant) else {
        return;
    };
    for condition in &session.conditions {
        let Some(helps) = who.profile.hard().for_owner().get(condition) else {
            continue;
        };
        let hint = match helps.trim() {
            "" => "Write in People what helps then.".to_owned(),
            helps => format!("What helps: {}.", helps.trim_end_matches('.')),
        };
        findings.push(finding(
            Severity::GoodToKnow,
            "conditions.hard",
            Spot::Board(session.id, who.id),
            format!(
                "Today’s “{}” is hard for {}.",
                condition.label(),
                called(who)
            ),
            hint,
        ));
    }
}
