//! Who is with whom in the water of a club: the demo, and a club made for it.

use std::collections::BTreeSet;
use std::sync::Arc;

use daystrand::model::award::{Award, Certificate, Validity};
use daystrand::model::board::{self, Board};
use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, TodayEdit, TurnsEdit, apply};
use daystrand::model::ids::{AwardId, HelperId, ParticipantId, SlotId};
use daystrand::model::people::Role;
use daystrand::model::session::Session;
use daystrand::model::today::{Hours, Pair};
use daystrand::plan::rotation::{Answer, Effort};
use daystrand::plan::turns::{Asked, Round};
use daystrand::plan::water::{InWater, Known, Reason, WaterDay, day, day_again};
use daystrand::workbench::demo;
use jiff::civil::{date, time};

fn boards(club: &Club, session: &Session) -> Vec<Arc<Board>> {
    let all = club.attending(session);
    all.map(|p| Arc::new(board::derive(club, session, p.id)))
        .collect()
}

fn water(club: &Club, session: &Session) -> WaterDay {
    day(club, session, &boards(club, session))
}

/// The session of the demo with this title.
fn titled<'a>(club: &'a Club, title: &str) -> &'a Session {
    club.sessions.iter().find(|s| s.title == title).unwrap()
}

fn named(club: &Club, name: &str) -> HelperId {
    club.helpers.iter().find(|h| h.name == name).unwrap().id
}

fn marked(club: &Club, mark: &str) -> ParticipantId {
    let mut all = club.participants.iter();
    all.find(|p| p.mark.as_str() == mark).unwrap().id
}

fn done(club: &Club, edit: Edit) -> Club {
    apply(club, &edit).unwrap().0
}

/// The rule, looked at from outside: everyone in the water has exactly their number of people, each
/// of whom is there, covered, without another job, and with nobody else.
#[track_caller]
fn keeps_the_rule(club: &Club, session: &Session, moment: &InWater) {
    let mut seen = BTreeSet::new();
    for visit in &moment.visits {
        if moment.short.is_none() {
            assert_eq!(visit.people.len(), visit.asked as usize, "{visit:?}");
        }
        for who in &visit.people {
            assert!(seen.insert(*who), "{who} is with two");
            assert!(!session.helpers_away.contains(who));
            let helper = club.helper(*who).unwrap();
            assert!(helper.roles.contains(&Role::WaterSafety));
            let rows = session.timetable.iter();
            let mut leads = rows.filter(|r| moment.stretch.rows.contains(&r.id));
            assert!(!leads.any(|r| r.leads.contains(who)), "{who} leads");
            let pair = session.today.pairs.get(&(visit.who, *who));
            assert_ne!(pair, Some(&Pair::Never));
        }
    }
    assert!(moment.watchers.iter().all(|w| !seen.contains(w)));
}

#[test]
fn the_demo_is_solved_in_turns() {
    let club = demo::club();
    let session = titled(&club, "Wave morning");
    let go = club.helpers.iter();
    let go = go.filter(|h| h.roles.contains(&Role::WaterSafety)).count();
    assert_eq!((club.attending(session).count(), go), (8, 5));
    let water = water(&club, session);
    assert_eq!(water.moments.len(), 2, "two of three turns have water");
    for moment in &water.moments {
        assert_eq!(moment.visits.len(), 4);
        assert_eq!(moment.short, None);
        assert_eq!(moment.watchers, [named(&club, "Dario")]);
        assert_eq!(moment.watchers_asked, 1);
        keeps_the_rule(&club, session, moment);
        let not: Vec<HelperId> = moment.not_free.iter().map(|n| n.who).collect();
        assert_eq!(not, [named(&club, "Hauke")]);
        assert!(matches!(moment.not_free[0].reason, Reason::Certificate(..)));
    }
    let with = |mark: &str| {
        water
            .of(marked(&club, mark))
            .next()
            .unwrap()
            .1
            .people
            .clone()
    };
    assert_eq!(with("kite"), [named(&club, "Benno")], "the trainer stays");
    assert_eq!(
        with("leaf"),
        [named(&club, "Gesa")],
        "a pair that is wanted"
    );
}

/// Worked out anew, the demo's turns are as few as can be and keep every limit.
#[test]
fn the_turns_of_the_demo_can_be_worked_out() {
    let club = demo::club();
    let session = titled(&club, "Wave morning");
    let turns = session.turns.as_ref().unwrap();
    let asked = Asked {
        turns: None,
        ..Asked::of(session, turns)
    };
    let round = Round::new(&club, session, &boards(&club, session), asked);
    assert_eq!(round.breaches(turns), [], "the demo's own turns");
    assert_eq!((0..3).map(|t| round.room(t)).collect::<Vec<_>>(), [4, 4, 4]);
    let Answer::Found(plan) = round.arrange(&Effort::first(), &mut |_| {
        std::ops::ControlFlow::Continue(())
    }) else {
        panic!("turns are found");
    };
    assert_eq!((plan.turns, plan.fewest), (3, true));
    let edit = Edit::Turns(session.id, TurnsEdit::Set(round.plan(&plan)));
    let next = done(&club, edit);
    let session = next.session(session.id).unwrap();
    for moment in &water(&next, session).moments {
        assert_eq!(moment.short, None);
        keeps_the_rule(&next, session, moment);
    }
}

/// All at once is too many for the people there are, and the reason is who and how many.
#[test]
fn without_turns_people_are_short_and_it_is_said_why() {
    let club = demo::club();
    let id = titled(&club, "Wave morning").id;
    let club = done(&club, Edit::Turns(id, TurnsEdit::Off));
    let session = club.session(id).unwrap();
    let water = water(&club, session);
    let [moment] = &water.moments[..] else {
        panic!("one row is in the water");
    };
    let short = moment.short.as_ref().unwrap();
    assert_eq!(short.people.len(), 4);
    assert_eq!(short.participants.len() - short.people.len(), 1);
    assert_eq!(moment.visits.len(), 8);
    assert_eq!(
        moment.visits.iter().map(|v| v.people.len()).sum::<usize>(),
        4
    );
}

#[test]
fn whoever_leads_watches_or_is_not_there_is_with_nobody() {
    let club = demo::club();
    let session = titled(&club, "Wave morning");
    let id = session.id;
    let carmen = named(&club, "Carmen");
    let reason = |club: &Club| {
        let session = club.session(id).unwrap();
        let water = water(club, session);
        let first = &water.moments[0];
        assert!(!first.free.contains(&carmen));
        let not = first.not_free.iter().find(|n| n.who == carmen);
        not.unwrap().reason
    };
    let today = |edit| done(&club, Edit::Today(id, edit));
    let late = Hours {
        from: Some(time(11, 0, 0, 0)),
        to: None,
    };
    assert_eq!(
        reason(&today(TodayEdit::Here(carmen, Some(late)))),
        Reason::NotThere
    );
    assert_eq!(
        reason(&today(TodayEdit::Watches(carmen, Some(true)))),
        Reason::Watches
    );
    let kite = marked(&club, "kite");
    let watched = today(TodayEdit::WatchedBy(kite, Some(carmen)));
    assert_eq!(reason(&watched), Reason::WatchesOne(kite));
    assert_eq!(
        reason(&done(&club, Edit::HelperAttends(id, carmen, false))),
        Reason::Away
    );
    let splash = session.turns.as_ref().unwrap().stations[0].slot;
    let lead = daystrand::model::edit::TimetableEdit::Leads(splash, [carmen].into());
    assert_eq!(
        reason(&done(&club, Edit::Timetable(id, lead))),
        Reason::Leads(splash)
    );
}

#[test]
fn who_was_put_together_stays_together_and_never_means_never() {
    let club = demo::club();
    let session = titled(&club, "Wave morning");
    let (id, kite) = (session.id, marked(&club, "kite"));
    let splash = session.turns.as_ref().unwrap().stations[0].slot;
    let gesa = named(&club, "Gesa");
    let with = |club: &Club, slot: SlotId| {
        let water = water(club, club.session(id).unwrap());
        water.people(kite, slot).unwrap().people.clone()
    };
    let held = TodayEdit::Hold(splash, kite, [gesa].into());
    let held = done(&club, Edit::Today(id, held));
    assert_eq!(with(&held, splash), [gesa]);
    let never = TodayEdit::Pair(kite, named(&club, "Benno"), Some(Pair::Never));
    let never = done(&club, Edit::Today(id, never));
    assert_ne!(with(&never, splash), [named(&club, "Benno")]);
    // Held by hand and never to be together: it is said, and someone else is found.
    let both = TodayEdit::Pair(kite, gesa, Some(Pair::Never));
    let both = done(&held, Edit::Today(id, both));
    assert_ne!(with(&both, splash), [gesa]);
    let water = water(&both, both.session(id).unwrap());
    assert_eq!(water.moments[0].broken.len(), 1);
}

/// A certificate that ends on the day itself counts if the club says so.
#[test]
fn the_last_day_counts_as_the_club_says() {
    for (counts, free) in [(true, true), (false, false)] {
        let mut club = demo::club();
        let award = AwardId(club.next_id);
        club.next_id += 1;
        club.rules.care.awards = vec![Award {
            id: award,
            name: "Rescue".into(),
            for_water: true,
            validity: Validity::AsWritten,
            last_day_counts: counts,
        }];
        for h in &mut club.helpers {
            Arc::make_mut(h).certificates = vec![Certificate {
                award,
                gained: None,
                expires: Some(date(2027, 6, 26)),
                seen_by: String::new(),
                seen_on: None,
            }];
        }
        let session = titled(&club, "Wave morning");
        let water = water(&club, session);
        assert_eq!(water.moments[0].short.is_none(), free, "{counts}");
        assert_eq!(water.moments[0].free.len(), if free { 5 } else { 0 });
    }
}

/// Two people each, as a club may ask for.
#[test]
fn a_club_may_ask_for_two_people_each() {
    let mut club = demo::club();
    club.rules.care.people_each = 2;
    let session = titled(&club, "Wave morning");
    let water = water(&club, session);
    let short = water.moments[0].short.as_ref().unwrap();
    assert!(short.missing > 0);
    for moment in &water.moments {
        for visit in &moment.visits {
            assert!(visit.people.len() <= 2);
        }
    }
}

/// Boards and stories follow the turns, and a change of them by hand.
#[test]
fn boards_and_stories_go_in_the_order_of_the_turns() {
    let club = demo::club();
    let session = titled(&club, "Wave morning");
    let moon = marked(&club, "moon");
    let turns = session.turns.as_ref().unwrap();
    let slot = |i: usize| turns.stations[i].slot;
    let (splash, dig, shells) = (slot(0), slot(1), slot(2));
    let shown = |club: &Club| -> Vec<SlotId> {
        let session = club.session(session.id).unwrap();
        let board = board::derive(club, session, moon);
        let rows = board.steps.iter().filter_map(|s| s.at.slot());
        rows.filter(|s| [splash, dig, shells].contains(s)).collect()
    };
    assert_eq!(shown(&club), [shells, splash, dig]);
    let place = TurnsEdit::Place(moon, 0, dig);
    let next = done(&club, Edit::Turns(session.id, place));
    assert_eq!(shown(&next), [dig, splash, shells]);
    let told = |club: &Club| -> Vec<SlotId> {
        let session = club.session(session.id).unwrap();
        let mut who = (**club.participant(moon).unwrap()).clone();
        who.telling.pages = daystrand::model::telling::Pages::Steps;
        let story = daystrand::story::tell_for(club, session, &who);
        let steps = story.pages.iter().filter_map(|p| match p.at {
            daystrand::model::rewriting::PageRef::Step(at) => at.slot(),
            _ => None,
        });
        steps
            .filter(|s| [splash, dig, shells].contains(s))
            .collect()
    };
    assert_eq!(told(&club), [shells, splash, dig]);
    assert_eq!(told(&next), [dig, splash, shells]);
}

/// What was worked out before is the same as what is worked out anew, whatever was asked before.
#[test]
fn an_answer_that_is_known_is_the_answer() {
    let club = demo::club();
    let mut known = Known::default();
    let id = titled(&club, "Wave morning").id;
    let carmen = named(&club, "Carmen");
    let without = done(&club, Edit::HelperAttends(id, carmen, false));
    let renamed = done(&club, Edit::ClubName("Another".into()));
    for club in [&club, &renamed, &without, &club, &without] {
        for session in &club.sessions {
            let boards = boards(club, session);
            let again = day_again(club, session, &boards, &mut known);
            assert_eq!(again, day(club, session, &boards));
        }
    }
}
