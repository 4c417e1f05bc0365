//! What is known about each participant against their board: favourites, length, surprises, dates.
//! Days are compared with the day of the session, so that the same club gives the same list
//! whenever it is looked at.

use std::sync::Arc;

use super::{called, finding};
use crate::model::board::{Board, StepState};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::manner::Reach;
use crate::model::people::Participant;
use crate::model::profile::Field;
use crate::model::session::Session;
use crate::plan::chunks::chunks;
use crate::plan::since::favourites_shown;

/// Checks everyone who comes; dates of everyone in the club.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    for board in boards {
        if let Some(who) = club.participant(board.participant) {
            favourite(club, session, board, who, findings);
            length(session, board, who, findings);
            first_then(club, session, board, who, findings);
            surprise(session, board, who, findings);
        }
    }
    for who in &club.participants {
        dates(session, who, findings);
    }
}

/// Published guidance asks for liked activities among the others (Vanderbilt Kennedy Center, Quick
/// tips for teaching schedule-following skills). What was shown in a session counts as what is
/// entered in People.
fn favourite(
    club: &Club,
    session: &Session,
    board: &Board,
    who: &Participant,
    findings: &mut Vec<Finding>,
) {
    let mut favourites = who.profile.favourites.clone();
    favourites.extend(favourites_shown(club, session, who.id));
    if board.steps.is_empty() {
        return;
    }
    if favourites.is_empty() {
        findings.push(finding(
            Severity::GoodToKnow,
            "people.no_favourite_known",
            Spot::Participant(who.id),
            format!("No favourite activity is known for {}.", called(who)),
            "Ask the family, or note after a session what was shown.",
        ));
        return;
    }
    if !board.activities().any(|a| favourites.contains(&a)) {
        findings.push(finding(
            Severity::Look,
            "board.no_favourite",
            Spot::Board(session.id, who.id),
            format!(
                "Nothing on the board of {} is a favourite of theirs.",
                called(who)
            ),
            "Put something they like among the others, or offer it as a choice.",
        ));
    }
}

/// What was written down about attention against what is shown at once.
fn length(session: &Session, board: &Board, who: &Participant, findings: &mut Vec<Finding>) {
    let text = who.profile.for_owner(Field::Attention).trim_start();
    let digits: String = text.chars().take_while(char::is_ascii_digit).collect();
    let Ok(items) = digits.parse::<usize>() else {
        return;
    };
    let done = board.done().count();
    let shown = who.manner.reach.steps().unwrap_or(done).min(done);
    if items > 0 && shown > items && who.manner.reach != Reach::Part {
        findings.push(finding(
            Severity::Look,
            "board.longer_than_attention",
            Spot::Board(session.id, who.id),
            format!(
                "The board of {} shows {shown} steps at once; it was written down that {items} \
                 hold their attention.",
                called(who)
            ),
            "Someone who knows the participant decides: a shorter length, or another note.",
        ));
    }
}

/// On a strip of two the second, "then" or "next", must be something that will really happen.
fn first_then(
    club: &Club,
    session: &Session,
    board: &Board,
    who: &Participant,
    findings: &mut Vec<Finding>,
) {
    let strip_of = match who.manner.reach {
        Reach::FirstThen => "first-then",
        Reach::NowNext => "now-and-next",
        _ => return,
    };
    for strip in chunks(club, board, who.manner.reach) {
        let steps = &board.steps[strip];
        let off = |s: &crate::model::board::Step| s.state == StepState::NotToday;
        if let Some(last) = steps.last().filter(|s| off(s) && steps.len() > 1) {
            findings.push(finding(
                Severity::Look,
                "board.then_not_today",
                Spot::Step(session.id, who.id, last.at),
                format!(
                    "On a {strip_of} strip of {} “{}” comes last and is not today.",
                    called(who),
                    last.label
                ),
                "Choose what comes instead.",
            ));
        }
    }
}

/// A surprise only where the family agreed to it.
fn surprise(session: &Session, board: &Board, who: &Participant, findings: &mut Vec<Finding>) {
    if who.profile.decision().for_owner().surprises {
        return;
    }
    let mut done = board.done();
    if let Some(step) = done.find(|s| s.symbol.as_str() == "surprise") {
        findings.push(finding(
            Severity::Look,
            "board.surprise",
            Spot::Step(session.id, who.id, step.at),
            format!("There is a surprise on the board of {}.", called(who)),
            "Ask the family first and note in People that they agreed, or say what it is.",
        ));
    }
}

fn dates(session: &Session, who: &Participant, findings: &mut Vec<Finding>) {
    let decision = who.profile.decision().for_owner();
    if decision.review.is_some_and(|day| day <= session.date) {
        findings.push(finding(
            Severity::GoodToKnow,
            "people.review_due",
            Spot::Participant(who.id),
            format!(
                "It is time to look again at how the board of {} is given.",
                called(who)
            ),
            "Decide it with those who know the participant, and enter the next date.",
        ));
    }
    let papers = who.profile.papers().for_owner();
    if papers.delete_by.is_some_and(|day| day < session.date) {
        findings.push(finding(
            Severity::StopAndLook,
            "privacy.delete_by_past",
            Spot::Participant(who.id),
            format!(
                "What is kept about {} was to be deleted before this session.",
                called(who)
            ),
            "Remove them in People, or ask the family and enter another date.",
        ));
    }
}
