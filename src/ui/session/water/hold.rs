//! What it means to put a person with someone in the water: the edit that does it, or the reason
//! why it cannot be.

use std::collections::BTreeSet;

use crate::model::club::Club;
use crate::model::edit::TodayEdit;
use crate::model::ids::{HelperId, ParticipantId, SlotId};
use crate::model::people::Role;
use crate::model::session::Session;
use crate::model::today::Pair;
use crate::plan::water::{InWater, WaterDay};
use crate::story::said;

/// What keeps a person from being with someone at a moment, in words without their name; nothing
/// where they can be.
pub fn kept_from(
    club: &Club,
    session: &Session,
    moment: &InWater,
    (who, helper): (ParticipantId, HelperId),
) -> Option<String> {
    let goes = club.helper(helper)?.roles.contains(&Role::WaterSafety);
    if !goes {
        return Some("does not go into the water".to_owned());
    }
    let not = moment.not_free.iter().find(|n| n.who == helper);
    if let Some(n) = not {
        return Some(said::why_short(club, session, n.reason));
    }
    let never = session.today.pairs.get(&(who, helper)) == Some(&Pair::Never);
    never.then(|| "not to be together".to_owned())
}

/// Puts a person with a participant at a row of the timetable: beside those who were put there by
/// hand while the club's rule asks for more, else in their place. Who was put elsewhere by hand at
/// the same moment comes from there.
pub fn put(
    club: &Club,
    session: &Session,
    water: &WaterDay,
    (who, slot): (ParticipantId, SlotId),
    helper: HelperId,
) -> Result<TodayEdit, String> {
    let (name, with) = (said::helper(club, helper), said::participant(club, who));
    let moment = moment_of(water, who, slot);
    let Some((moment, own)) = moment else {
        return Err(format!("{with} is not in the water then."));
    };
    if let Some(kept) = kept_from(club, session, moment, (who, helper)) {
        return Err(format!("{name} was not put with {with}: {kept}."));
    }
    let held = &session.today.held;
    let mut next: BTreeSet<HelperId> = held.get(&(slot, who)).cloned().unwrap_or_default();
    if next.len() >= own.asked as usize {
        next.clear();
    }
    next.insert(helper);
    let others = moment.visits.iter().filter(|v| v.who != who);
    let elsewhere = others
        .map(|v| (v.slot, v.who))
        .find(|key| held.get(key).is_some_and(|h| h.contains(&helper)));
    let Some(from) = elsewhere else {
        return Ok(TodayEdit::Hold(slot, who, next));
    };
    let mut all = held.clone();
    if let Some(there) = all.get_mut(&from) {
        there.remove(&helper);
    }
    all.insert((slot, who), next);
    Ok(TodayEdit::HoldAll(all))
}

/// The moment at which a participant is at a row, with who is with them.
pub fn moment_of(
    water: &WaterDay,
    who: ParticipantId,
    slot: SlotId,
) -> Option<(&InWater, &crate::plan::water::Together)> {
    water.of(who).find(|(_, own)| own.slot == slot)
}
