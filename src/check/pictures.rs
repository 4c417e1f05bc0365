//! The club's own pictures: where one is wanted and may not be seen, what the family said, and what
//! cannot be drawn.

use std::sync::Arc;

use super::{called, finding};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::picture::{Made, Picture, Place};
use crate::model::profile::PhotoConsent;
use crate::model::session::Session;
use crate::symbols::parse::parse;

/// Checks every picture by itself, and the activities that show one.
pub fn club(club: &Club, findings: &mut Vec<Finding>) {
    for picture in &club.pictures {
        one(club, picture, findings);
    }
    for activity in &club.activities {
        let Some(picture) = club.own_picture(&activity.symbol) else {
            continue;
        };
        if !picture.may_be_seen(club, Place::Group) {
            findings.push(not_seen(
                ("pictures.activity", Spot::Activity(activity.id)),
                (&activity.label, &picture.name, "the group may not see"),
                "Choose a symbol for the activity, or say that the group may see the picture.",
            ));
        }
    }
}

fn one(club: &Club, picture: &Picture, findings: &mut Vec<Finding>) {
    let spot = Spot::Picture(picture.id);
    let name = &picture.name;
    if let Made::Drawing(drawing) = &picture.made
        && parse(drawing.svg()).is_err()
    {
        findings.push(finding(
            Severity::Look,
            "pictures.drawing",
            spot,
            format!("The drawing “{name}” cannot be read; an empty square is printed."),
            "Draw it again, or bring it once more.",
        ));
    }
    if picture.consent == PhotoConsent::OwnTiles && picture.whose.is_none() {
        findings.push(finding(
            Severity::Look,
            "pictures.nobodys",
            spot,
            format!("“{name}” may be seen on own tiles only, and it is nobody’s own."),
            "Say whose it is, or that the group may see it.",
        ));
    }
    if !picture.person || picture.consent == PhotoConsent::None {
        return;
    }
    let owner = picture.whose.and_then(|id| club.participant(id));
    if let Some(p) = owner
        && p.profile.papers().for_owner().photos < picture.consent
    {
        findings.push(finding(
            Severity::Look,
            "pictures.family",
            spot,
            format!(
                "“{name}” may be seen more widely than the family of {} said of photographs; what \
                 the family said counts.",
                called(p)
            ),
            "Ask the family, then change one of the two.",
        ));
    }
    if picture.said_on.is_none() {
        findings.push(finding(
            Severity::GoodToKnow,
            "pictures.date",
            spot,
            format!("A person is on “{name}”, and it is not written down when they agreed."),
            "Enter the day at People, Pictures.",
        ));
    }
}

/// Checks the steps of boards that show a picture which is not for those who see it there.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    for board in boards {
        let place = Place::Own(board.participant);
        for step in &board.steps {
            let Some(picture) = club.own_picture(&step.symbol) else {
                continue;
            };
            let by_activity = step.activity.and_then(|id| club.activity(id));
            if picture.may_be_seen(club, place)
                || by_activity.is_some_and(|a| a.symbol == step.symbol)
            {
                continue;
            }
            let spot = Spot::Step(session.id, board.participant, step.at);
            findings.push(not_seen(
                ("pictures.step", spot),
                (&step.label, &picture.name, "may not be seen there"),
                "Swap the step for another symbol, or change who may see the picture.",
            ));
        }
    }
}

/// Something shows a picture where it may not be seen.
fn not_seen(
    (code, spot): (&'static str, Spot),
    (what, picture, why): (&str, &str, &str),
    hint: &str,
) -> Finding {
    let what = what.trim();
    let sentence = format!(
        "“{what}” shows the picture “{picture}”, which {why}; what it stands for is printed in its \
         place."
    );
    finding(Severity::Look, code, spot, sentence, hint)
}
