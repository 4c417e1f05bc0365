//! Clubs to test with: the demo club, and what is changed on it.

use std::sync::Arc;

use daystrand::model::club::Club;
use daystrand::model::ids::{ActivityId, PartId, SessionId, SlotId};
use daystrand::model::people::Role;
use daystrand::model::session::{Session, Slot};

/// The demo club.
pub fn club() -> Club {
    daystrand::workbench::demo::club()
}

/// The demo club without the picture that a child of it drew.
pub fn without_pictures() -> Club {
    let mut club = club();
    club.pictures.clear();
    club
}

/// The demo club with so many people for the water that nothing is to be looked at.
pub fn calm() -> Club {
    let mut club = club();
    let gesa = club.helpers.iter().find(|h| h.name == "Gesa").unwrap();
    let held = gesa.certificates.clone();
    for h in club.helpers.iter_mut().map(Arc::make_mut) {
        if h.name != "Dario" {
            h.roles.insert(Role::WaterSafety);
            h.certificates.clone_from(&held);
        }
    }
    club.rules.care.watcher_for = Some(8);
    for s in club.sessions.iter_mut().map(Arc::make_mut) {
        s.helpers_away.clear();
    }
    club
}

/// Its first session, to change.
pub fn session_mut(club: &mut Club) -> &mut Session {
    Arc::make_mut(&mut club.sessions[0])
}

/// A session of slots that last so many minutes, beginning at 10:30 on 12 June 2027.
pub fn session_of(minutes: &[u32]) -> Session {
    Session {
        id: SessionId(1),
        title: "Shore morning".into(),
        date: jiff::civil::date(2027, 6, 12),
        start: jiff::civil::time(10, 30, 0, 0),
        place: "the shore".into(),
        timetable: minutes
            .iter()
            .zip(1..)
            .map(|(&minutes, id)| Slot {
                id: SlotId(id),
                activity: ActivityId(id),
                part: PartId(1),
                minutes,
                leads: Default::default(),
                options: vec![],
                off: None,
            })
            .collect(),
        turns: None,
        today: Default::default(),
        away: Default::default(),
        helpers_away: Default::default(),
        stories: Default::default(),
        beside: Default::default(),
        hand: Default::default(),
        conditions: vec![],
        records: Default::default(),
        from: None,
    }
}

/// An activity of the first session that has a dry replacement.
pub fn activity_with_dry(club: &Club) -> ActivityId {
    let mut slots = club.sessions[0].timetable.iter().map(|s| s.activity);
    slots
        .find(|id| {
            club.activity(*id)
                .is_some_and(|a| a.dry_replacement.is_some())
        })
        .unwrap()
}
