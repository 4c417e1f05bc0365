//! What a helper's card says of the water: when and with whom, who watches, where all meet, the signal
//! that can be seen, how deep. Of health only who holds the plan, which stands elsewhere on the card.

use super::desk::{Desk, Person};
use super::flow::Flow;
use super::session_sheet::listed;
use super::writer::Helper;
use crate::model::ids::HelperId;
use crate::plan::water::{InWater, Together};
use crate::story::when::NO_BREAK;

/// "10:20 to 10:30 Splash: with Benno".
pub(super) fn minutes(desk: &Desk<'_>, person: &Person<'_>) -> Vec<String> {
    let own = desk.water().of(person.who.id);
    own.map(|(moment, visit)| one(desk, moment, visit))
        .collect()
}

fn one(desk: &Desk<'_>, moment: &InWater, visit: &Together) -> String {
    let slot = desk.session.slot(visit.slot);
    let activity = visit.activity.or(slot.map(|s| s.activity));
    let activity = activity.and_then(|id| desk.club.activity(id));
    let what = activity.map_or("in the water", |a| a.label.trim());
    let with = match visit.people.as_slice() {
        [] => "nobody is free yet; ask the coordinator".to_owned(),
        people => format!("with {}", names(desk, people)),
    };
    let (from, to) = (moment.stretch.from, moment.stretch.to);
    format!("{from}{NO_BREAK}to{NO_BREAK}{to} {what}: {with}")
}

fn names(desk: &Desk<'_>, helpers: &[HelperId]) -> String {
    let names = helpers.iter().filter_map(|h| desk.club.helper(*h));
    let names: Vec<&str> = names.map(|h| h.name.trim()).collect();
    listed(&names)
}

/// Who watches, where all meet, the signal that can be seen, how deep: each with its name.
pub(super) fn facts(
    desk: &Desk<'_>,
    person: &Person<'_>,
    flow: &Flow<Helper>,
) -> Vec<(String, String)> {
    let mut facts: Vec<(&str, String)> = Vec::new();
    let mut watchers: Vec<HelperId> = Vec::new();
    let mut wet = false;
    for (moment, _) in desk.water().of(person.who.id) {
        wet = true;
        let more = moment.watchers.iter().filter(|h| !watchers.contains(h));
        let more: Vec<HelperId> = more.copied().collect();
        watchers.extend(more);
    }
    if let Some(by) = desk.session.today.watched_by.get(&person.who.id) {
        let words = format!("{}, and nothing else", names(desk, &[*by]));
        facts.push(("Named to watch", words));
    }
    if wet {
        let who = match watchers.as_slice() {
            [] => "nobody is named".to_owned(),
            all => names(desk, all),
        };
        facts.push(("Watching", who));
        let recall = desk.club.rules.care.recall.trim();
        let agreed = flow.may_show(person.who.profile.in_water());
        if agreed.is_some_and(|a| a.without_hearing) {
            let signal = match recall {
                "" => "a signal that is seen; none is entered",
                signal => signal,
            };
            let words = format!("Does not hear in the water. To come out: {signal}");
            facts.push(("Signal", words));
        } else if !recall.is_empty() {
            facts.push(("Come out", recall.to_owned()));
        }
        let depth = agreed.and_then(|a| a.depth_cm);
        facts.extend(depth.map(|cm| ("Depth agreed", format!("{cm}{NO_BREAK}cm"))));
    }
    facts.extend(desk.meeting_spot().map(|s| ("Meeting spot", s.to_owned())));
    let owned = facts.into_iter();
    owned
        .map(|(name, value)| (name.to_owned(), value))
        .collect()
}
