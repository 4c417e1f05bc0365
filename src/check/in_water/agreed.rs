//! What is agreed for a participant in the water, and how the water lies in the day: depth, a signal
//! that can be seen, time to dry.

use std::sync::Arc;

use super::super::{called, finding};
use crate::model::board::{Board, StepState};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::ActivityId;
use crate::model::session::Session;
use crate::plan::clock::clock;
use crate::plan::water::WaterDay;

/// Minutes with nothing in the water before the end, for drying and changing, below which a look is
/// asked for. Our own number.
const TO_DRY: u32 = 5;

/// A participant whose plan has a depth, and something deeper on their board.
pub fn depth(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    for board in boards {
        let Some(p) = club.participant(board.participant) else {
            continue;
        };
        let Some(agreed) = p.profile.in_water().for_owner().depth_cm else {
            continue;
        };
        for step in board
            .steps
            .iter()
            .filter(|s| s.state != StepState::NotToday)
        {
            let options = step.options.iter().filter_map(|o| o.activity);
            let all = step.activity.into_iter().chain(options);
            let deeper = |id: &ActivityId| depth_of(club, *id).is_some_and(|d| d > agreed);
            let Some(id) = all.into_iter().find(deeper) else {
                continue;
            };
            let label = club.activity(id).map_or("", |a| a.label.trim());
            findings.push(finding(
                Severity::StopAndLook,
                "water.too_deep",
                Spot::Step(session.id, p.id, step.at),
                format!(
                    "“{label}” is {} cm deep, and {} cm are agreed for {}.",
                    depth_of(club, id).unwrap_or_default(),
                    agreed,
                    called(p)
                ),
                "Put something else on this board, or look at what was agreed.",
            ));
        }
    }
}

fn depth_of(club: &Club, id: ActivityId) -> Option<u32> {
    club.activity(id).filter(|a| a.in_water)?.depth_cm
}

/// Someone who does not hear in the water, and no signal that can be seen.
pub fn recall(club: &Club, session: &Session, water: &WaterDay, findings: &mut Vec<Finding>) {
    if !club.rules.care.recall.trim().is_empty() {
        return;
    }
    for p in club.attending(session) {
        let without = p.profile.in_water().for_owner().without_hearing;
        if without && water.of(p.id).next().is_some() {
            findings.push(finding(
                Severity::StopAndLook,
                "water.no_visual_recall",
                Spot::Participant(p.id),
                format!(
                    "{} does not hear in the water, and no signal that can be seen is entered.",
                    called(p)
                ),
                "Enter the signal to come out in People, Club, and try it on the day.",
            ));
        }
    }
}

/// The water comes last, with no time to dry.
pub fn last(club: &Club, session: &Session, water: &WaterDay, findings: &mut Vec<Finding>) {
    let clock = clock(session, &club.rules);
    let Some(end) = water.moments.iter().map(|m| m.stretch.to).max() else {
        return;
    };
    if clock.end.since(end) < TO_DRY {
        let moment = water.moments.iter().find(|m| m.stretch.to == end);
        findings.push(finding(
            Severity::Look,
            "water.last",
            moment
                .and_then(|m| m.visits.first())
                .map_or(Spot::Session(session.id), |v| {
                    Spot::Slot(session.id, v.slot)
                }),
            format!(
                "The water ends at {end} and the session at {}: there is no time to dry.",
                clock.end
            ),
            "Put something after it for drying and changing.",
        ));
    }
}
