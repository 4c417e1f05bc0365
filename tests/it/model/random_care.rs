//! Random edits of people, water and turns.

use std::collections::{BTreeMap, BTreeSet};

use daystrand::model::award::{Award, Certificate, MonthDay, ShortMonth, Validity};
use daystrand::model::care::{Care, Flag, Sunscreen};
use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, TimetableEdit, TodayEdit, TurnsEdit, TurnsPlan};
use daystrand::model::ids::{ActivityId, AwardId, HelperId, ParticipantId, SessionId, SlotId};
use daystrand::model::looks::{Look, Looked};
use daystrand::model::session::Session;
use daystrand::model::today::{Hours, Pair};
use daystrand::model::turns::Station;
use jiff::civil::{date, time};

use super::random::{Seed, pick, pick_session};

/// The club's rules for people and water.
pub fn care(club: &Club, seed: &Seed) -> Care {
    let mut awards = club.rules.care.awards.clone();
    if seed.flag && !awards.is_empty() {
        awards.remove(seed.a % awards.len());
    } else {
        awards.push(Award {
            id: AwardId::NEW,
            name: seed.words.clone(),
            for_water: seed.at.is_multiple_of(2),
            validity: validity(seed),
            last_day_counts: seed.flag,
        });
    }
    Care {
        people_each: seed.a as u32 % 8,
        watcher_for: seed.flag.then_some(seed.b as u32),
        fewest_adults: seed.at as u32,
        look_again_minutes: seed.b as u32,
        thunder_minutes: seed.a as u32 + 1,
        sunscreen: seed.flag.then(Sunscreen::default),
        drink_minutes: seed.flag.then_some(seed.b as u32),
        rule: format!(" {}\r\nand more ", seed.words),
        emergency: "112 ".into(),
        meeting_spot: seed.words.clone(),
        recall: seed.words.clone(),
        flags: vec![Flag {
            looks: seed.words.clone(),
            means: "look".into(),
        }],
        not_looked_at: Look::ALL.into_iter().skip(seed.at).take(2).collect(),
        awards,
    }
}

fn validity(seed: &Seed) -> Validity {
    match seed.at % 3 {
        0 => Validity::AsWritten,
        1 => Validity::Months {
            months: seed.a as u32,
            short: ShortMonth::ALL[seed.b % 2],
        },
        _ => Validity::FixedDay {
            until: MonthDay::new(12, 31).unwrap(),
            boundary: MonthDay::new(1 + (seed.a % 12) as u8, 1),
        },
    }
}

/// What a helper holds.
pub fn certificates(club: &Club, seed: &Seed) -> Vec<Certificate> {
    let award = pick(&club.rules.care.awards, seed.b).map(|a| a.id);
    let made = |award| Certificate {
        award,
        gained: Some(date(2025, 1 + (seed.a % 12) as i8, 2)),
        expires: seed.flag.then(|| date(2027, 1, 1)),
        seen_by: format!(" {}", seed.words),
        seen_on: None,
    };
    award.map(made).into_iter().collect()
}

/// An edit of one date, or of its turns.
pub fn edit(club: &Club, seed: &Seed) -> Edit {
    let session = pick_session(club, seed.b % 5);
    let id = session.as_ref().map_or(SessionId(77), |s| s.id);
    let rows: Vec<SlotId> = session
        .as_ref()
        .map_or(vec![], |s| s.timetable.iter().map(|r| r.id).collect());
    let slot = pick(&rows, seed.a).unwrap_or(SlotId(u32::MAX));
    let who = pick(&club.participants, seed.a).map_or(ParticipantId(77), |p| p.id);
    let helper = pick(&club.helpers, seed.at).map_or(HelperId(77), |h| h.id);
    let with: BTreeSet<HelperId> = seed.flag.then_some(helper).into_iter().collect();
    match seed.kind % 10 {
        0 | 1 => Edit::Turns(id, TurnsEdit::Set(plan(club, session.as_ref(), seed))),
        2 if seed.at.is_multiple_of(2) => Edit::Turns(id, TurnsEdit::Place(who, seed.b % 4, slot)),
        2 => Edit::Turns(id, TurnsEdit::Hold(who, slot, seed.flag)),
        3 if seed.flag => Edit::Turns(id, TurnsEdit::Off),
        3 => Edit::Turns(id, TurnsEdit::Friends(friends(club, seed))),
        4 => Edit::Timetable(id, TimetableEdit::Leads(slot, with)),
        5 if seed.flag => Edit::Timetable(id, TimetableEdit::Move(slot, seed.at)),
        5 => Edit::Timetable(id, TimetableEdit::Remove(slot)),
        _ => Edit::Today(id, today(seed, (slot, who, helper), with)),
    }
}

fn today(
    seed: &Seed,
    (slot, who, helper): (SlotId, ParticipantId, HelperId),
    with: BTreeSet<HelperId>,
) -> TodayEdit {
    let looked = Looked {
        look: Look::ALL[seed.a % Look::ALL.len()],
        at: time(9, (seed.b % 60) as i8, 7, 0),
        by: format!(" {}", seed.words),
        seen: "yes ".into(),
        note: String::new(),
    };
    let hours = Hours {
        from: Some(time(10, (seed.a % 60) as i8, 0, 0)),
        to: seed.flag.then(|| time(10, (seed.b % 60) as i8, 0, 0)),
    };
    match seed.at % 12 {
        0 => TodayEdit::WaterLead(seed.flag.then_some(helper)),
        1 => TodayEdit::Here(helper, Some(hours)),
        2 => TodayEdit::Watches(helper, Some(seed.flag)),
        3 => TodayEdit::WatchedBy(who, seed.flag.then_some(helper)),
        4 => TodayEdit::Pair(who, helper, Some(Pair::ALL[seed.b % 2])),
        5 | 6 => TodayEdit::Hold(slot, who, with),
        7 => TodayEdit::HoldAll(BTreeMap::from([((slot, who), with)])),
        8 => TodayEdit::MeetingSpot(seed.words.clone()),
        9 => TodayEdit::Look(looked),
        10 => TodayEdit::LookAgain(seed.b % 3, looked),
        _ if seed.flag => TodayEdit::Unlook(seed.b % 3),
        _ => TodayEdit::Thunder([time(10, (seed.b % 60) as i8, 3, 0)].into()),
    }
}

/// Two who want to be together, or one with themselves, or someone who is not there.
fn friends(club: &Club, seed: &Seed) -> BTreeSet<(ParticipantId, ParticipantId)> {
    let one = |n| pick(&club.participants, n).map_or(ParticipantId(77), |p| p.id);
    BTreeSet::from([(one(seed.a), one(seed.b))])
}

/// Some rows in turns, everyone shifted by one; now and then someone is at a row twice.
fn plan(club: &Club, session: Option<&Session>, seed: &Seed) -> TurnsPlan {
    let rows = session.map_or(&[][..], |s| &s.timetable);
    let stations: Vec<Station> = rows
        .iter()
        .skip(seed.at % 3)
        .step_by(1 + seed.a % 2)
        .take(1 + seed.b % 3)
        .map(|r| Station {
            slot: r.id,
            capacity: seed.flag.then_some(seed.a as u32),
        })
        .collect();
    let count = stations.len() + seed.a % 3;
    let place = |p: usize, turn: usize| stations.get((p + turn) % count.max(1)).map(|s| s.slot);
    let people = club.participants.iter().enumerate();
    TurnsPlan {
        waiting: pick(&club.activities, seed.b)
            .map(|a: _| a.id)
            .or(None::<ActivityId>),
        count: count as u32,
        minutes: seed.b as u32 * 11,
        places: people
            .map(|(i, p)| (p.id, (0..count).map(|t| place(i, t)).collect()))
            .collect(),
        friends: friends(club, seed),
        stations,
    }
}
