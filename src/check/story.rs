//! Whether each story and its board agree: the same steps in the same order, with the same words and
//! pictures; and whether what a person wrote in a story still fits the plan. Story and schedule that
//! differ are worse than none (common practice).

use std::sync::Arc;

use super::{called, finding};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::StepRef;
use crate::model::people::Participant;
use crate::model::rewriting::PageRef;
use crate::model::session::Session;
use crate::story::against::{Mismatch, look};
use crate::story::tell;

pub(super) fn check(
    club: &Club,
    session: &Session,
    boards: &[Arc<Board>],
    findings: &mut Vec<Finding>,
) {
    // What the program tells follows the board; only where a person wrote can they differ.
    for who in session.stories.keys() {
        let board = boards.iter().find(|b| b.participant == *who);
        if let Some((board, who)) = board.zip(club.participant(*who)) {
            of_one(club, session, (board, who), findings);
        }
    }
}

fn of_one(
    club: &Club,
    session: &Session,
    (board, who): (&Board, &Participant),
    findings: &mut Vec<Finding>,
) {
    let story = tell(club, session, board, who);
    let label = |at: StepRef| {
        let step = board.steps.iter().find(|s| s.at == at);
        step.map_or_else(String::new, |s| s.label.clone())
    };
    let name = called(who);
    for mismatch in look(club, &story, board) {
        let (page, code, sentence, hint) = match &mismatch {
            Mismatch::Missing(at) => (
                PageRef::Title,
                "story.missing",
                format!("The story of {name} does not tell of “{}”.", label(*at)),
                "Take the changes in the story back.",
            ),
            Mismatch::Extra(_) => (
                PageRef::Title,
                "story.extra",
                format!("The story of {name} tells of something that is not on the board."),
                "Take the changes in the story back.",
            ),
            Mismatch::Order(at) => (
                PageRef::Step(*at),
                "story.order",
                format!(
                    "From “{}” on the story of {name} has another order than the board.",
                    label(*at)
                ),
                "Put the sentences in the order of the board.",
            ),
            Mismatch::Words(at) => (
                PageRef::Step(*at),
                "story.words",
                format!("“{}” has other words in the story of {name}.", label(*at)),
                "Use the words of the board.",
            ),
            Mismatch::Picture(at) => (
                PageRef::Step(*at),
                "story.picture",
                format!(
                    "“{}” has another picture in the story of {name}.",
                    label(*at)
                ),
                "Use the picture of the board.",
            ),
            Mismatch::ChangedSince(page, _) => (
                *page,
                "story.changed_since",
                format!(
                    "The plan changed since a sentence in the story of {name} was written by hand."
                ),
                "Read that sentence again; one click takes it back to what the program says.",
            ),
            Mismatch::NotOnBoard(page, _, label) => (
                *page,
                "story.not_on_board",
                format!(
                    "A sentence in the story of {name} names “{label}”, which is not on the board."
                ),
                "Change the sentence, or the board.",
            ),
        };
        let spot = Spot::Story(session.id, who.id, page);
        findings.push(finding(Severity::Look, code, spot, sentence, hint));
    }
}
