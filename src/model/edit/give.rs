//! Steps of one board for another one too, or for the same board once more: they arrive as own
//! steps, or one of them in the place of a step that is there.

use super::{BoardEdit, Give, GiveAt, Made, Refused, board};
use crate::model::board::{Step, derive};
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, SessionId, StepRef};
use crate::model::picture::Place;

/// The steps arrive in the order of the board they are from, whatever order they were named in.
pub(super) fn apply(club: &mut Club, id: SessionId, give: &Give) -> Result<Made, Refused> {
    let session = super::session::find(club, id)?.clone();
    if club.participant(give.from).is_none() || club.participant(give.to).is_none() {
        return Err(Refused::gone("participant"));
    }
    let from = derive(club, &session, give.from);
    let wanted = |s: &&Step| give.steps.contains(&s.at);
    let steps: Vec<Step> = from.steps.iter().filter(wanted).cloned().collect();
    let missing = give.steps.iter().any(|s| from.position(*s).is_none());
    if missing || steps.is_empty() {
        return Err(Refused::gone("step"));
    }
    if matches!(give.at, GiveAt::Step(_)) && steps.len() > 1 {
        return Err(Refused::new(
            "Only one step can take the place of another.",
            "Choose one of them.",
        ));
    }
    let mut made = Made::Nothing;
    for (i, step) in steps.iter().enumerate() {
        let at = match give.at {
            GiveAt::Position(at) => GiveAt::Position(at + i),
            there @ GiveAt::Step(_) => there,
        };
        made = arrive(club, (id, give.to), step, at)?;
    }
    if !give.stays {
        for step in steps.iter().filter(|s| matches!(s.at, StepRef::Own(_))) {
            board::apply(club, id, give.from, &BoardEdit::TakeOff(step.at))?;
        }
    }
    Ok(made)
}

/// One of them, with its own words and with what can be chosen there.
fn arrive(
    club: &mut Club,
    (id, who): (SessionId, ParticipantId),
    step: &Step,
    at: GiveAt,
) -> Result<Made, Refused> {
    let content = Content {
        activity: step.activity,
        symbol: step.symbol.clone(),
        label: step.label.clone(),
    };
    let content = for_eyes(club, who, content);
    let options = step.options.iter().cloned();
    let options: Vec<Content> = options.map(|o| for_eyes(club, who, o)).collect();
    let mut change = |edit: &BoardEdit| board::apply(club, id, who, edit);
    let made = change(&match at {
        GiveAt::Position(at) => BoardEdit::Insert(content, at),
        GiveAt::Step(there) => BoardEdit::Replace(there, content),
    })?;
    let there = match (at, made) {
        (GiveAt::Step(there), _) => there,
        (_, Made::Own(own)) => StepRef::Own(own),
        _ => return Ok(made),
    };
    if step.relabelled && step.activity.is_some() {
        change(&BoardEdit::Relabel(there, step.label.clone()))?;
    }
    if !options.is_empty() {
        change(&BoardEdit::Offer(there, options))?;
    }
    Ok(made)
}

/// A picture that is not for the eyes of another participant is not given to them: they get what
/// it stands for.
fn for_eyes(club: &Club, who: ParticipantId, mut content: Content) -> Content {
    let picture = club.own_picture(&content.symbol);
    if let Some(picture) = picture
        && !picture.may_be_seen(club, Place::Own(who))
        && let Some(symbol) = &picture.stands_for
    {
        content.symbol = symbol.clone();
    }
    content
}
