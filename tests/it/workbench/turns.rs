//! Rows in turns: worked out in the background, used as one change, told in words.

use std::sync::Arc;
use std::time::{Duration, Instant};

use daystrand::check::arranged;
use daystrand::model::board::Board;
use daystrand::model::edit::{Edit, TurnsEdit};
use daystrand::model::ids::{ParticipantId, SlotId};
use daystrand::model::session::Session;
use daystrand::model::turns::{Station, Turns};
use daystrand::plan::rotation::{
    Answer, Apart, Changes, Losses, NoQuiet, NotFound, Reason, Reordered, Waits, WaterLast,
};
use daystrand::plan::turns::{Asked, Round};
use daystrand::workbench::Workbench;
use daystrand::workbench::command::Command;
use daystrand::workbench::turns::{Arranging, Planned, suggested, told};

use super::{demo, edit, marked, quietly};

/// The demo's session in turns, chosen.
pub(super) fn wave() -> Workbench {
    let mut bench = demo();
    let with_turns = |s: &&Arc<Session>| s.turns.is_some();
    let id = bench
        .view()
        .club
        .sessions
        .iter()
        .find(with_turns)
        .unwrap()
        .id;
    quietly(&mut bench, Command::ChooseSession(id));
    bench
}

pub(super) fn session(bench: &Workbench) -> &Session {
    bench.view().session.unwrap()
}

pub(super) fn turns(bench: &Workbench) -> &Turns {
    session(bench).turns.as_ref().unwrap()
}

/// What is planned now, asked again.
pub(super) fn as_now(bench: &Workbench) -> Asked {
    Asked::of(session(bench), turns(bench))
}

/// The row of the chosen session with this label.
pub(super) fn row(bench: &Workbench, label: &str) -> SlotId {
    let club = bench.view().club;
    let is = |s: SlotId| {
        let row = session(bench).slot(s).unwrap();
        club.activity(row.activity).unwrap().label == label
    };
    let mut rows = session(bench).timetable.iter().map(|s| s.id);
    rows.find(|s| is(*s)).unwrap()
}

/// The first row in the water.
pub(super) fn water(bench: &Workbench) -> SlotId {
    let club = bench.view().club;
    let mut rows = session(bench).timetable.iter();
    rows.find(|s| club.in_water(s.activity)).unwrap().id
}

fn boards(bench: &Workbench) -> Vec<Arc<Board>> {
    bench.view().boards.iter().map(|b| b.1.clone()).collect()
}

fn round(bench: &Workbench, asked: Asked) -> Round {
    Round::new(bench.view().club, session(bench), &boards(bench), asked)
}

/// Polls until nothing is being worked out.
#[track_caller]
pub(super) fn wait(bench: &mut Workbench) {
    let began = Instant::now();
    while matches!(bench.view().turns, Some(Arranging::Working(_))) {
        bench.poll();
        assert!(began.elapsed() < Duration::from_secs(60), "no answer comes");
        std::thread::sleep(Duration::from_millis(1));
    }
}

#[track_caller]
pub(super) fn planned(bench: &Workbench) -> Planned {
    match bench.view().turns {
        Some(Arranging::Came(came)) => came.plan.clone().expect("a plan"),
        other => panic!("{other:?}"),
    }
}

/// Why there is no plan, in words.
#[track_caller]
pub(super) fn no_plan(bench: &mut Workbench, asked: Asked) -> Vec<String> {
    quietly(bench, Command::WorkOutTurns(asked));
    wait(bench);
    match bench.view().turns {
        Some(Arranging::Came(came)) if came.plan.is_none() => came.words.clone(),
        other => panic!("{other:?}"),
    }
}

#[test]
fn turns_are_worked_out_used_as_one_change_and_taken_back() {
    let mut bench = wave();
    let id = session(&bench).id;
    edit(&mut bench, Edit::Turns(id, TurnsEdit::Off));
    assert!(session(&bench).turns.is_none());
    let mut asked = suggested(bench.view().club, session(&bench));
    let (kite, boat) = (marked(&bench, "kite"), marked(&bench, "boat"));
    asked.friends.insert((kite, boat));
    quietly(&mut bench, Command::WorkOutTurns(asked.clone()));
    assert!(bench.view().turns.is_some(), "it is on its way at once");
    wait(&mut bench);
    let found = planned(&bench);
    // Eight want one row in the water, four of five people are free: two turns, by division.
    assert_eq!((found.plan.count, found.fewest), (2, true));
    assert_eq!(found.boards.len(), bench.view().boards.len());
    assert!(session(&bench).turns.is_none(), "nothing is changed yet");
    quietly(&mut bench, Command::UseTurns);
    assert_eq!(
        Asked::of(session(&bench), turns(&bench)).friends,
        asked.friends
    );
    assert_eq!(session(&bench).turns, found.session.turns);
    let view = bench.view();
    assert!(view.turns.is_none() && view.undo.unwrap().contains("2 turns"));
    for turn in 0..2 {
        let wet = water(&bench);
        let there = |b: &&Arc<Board>| turns(&bench).of(b.participant)[turn] == Some(wet);
        assert_eq!(boards(&bench).iter().filter(there).count(), 4);
    }
    quietly(&mut bench, Command::Undo);
    assert!(session(&bench).turns.is_none());
}

#[test]
fn what_is_stopped_or_of_another_club_never_comes() {
    let mut bench = wave();
    let asked = as_now(&bench);
    quietly(&mut bench, Command::WorkOutTurns(asked.clone()));
    quietly(&mut bench, Command::DropTurns);
    assert!(bench.view().turns.is_none());
    let before = turns(&bench).clone();
    std::thread::sleep(Duration::from_millis(50));
    bench.poll();
    assert!(bench.view().turns.is_none());
    quietly(&mut bench, Command::UseTurns);
    assert_eq!(*turns(&bench), before);
    assert!(bench.view().notice.is_some_and(|n| n.trouble));
    // A change of the club in between.
    quietly(&mut bench, Command::WorkOutTurns(asked.clone()));
    edit(&mut bench, Edit::ClubName("Another".into()));
    assert!(bench.view().turns.is_none());
    // Another session is chosen when it has come.
    quietly(&mut bench, Command::WorkOutTurns(asked));
    wait(&mut bench);
    planned(&bench);
    let other = bench.view().club.sessions[0].id;
    quietly(&mut bench, Command::ChooseSession(other));
    assert!(bench.view().turns.is_none());
}

#[test]
fn asking_for_nothing_is_told() {
    let mut bench = wave();
    let asked = Asked {
        rows: vec![],
        ..as_now(&bench)
    };
    quietly(&mut bench, Command::WorkOutTurns(asked));
    assert!(bench.view().turns.is_none());
    assert!(bench.view().notice.is_some_and(|n| n.trouble));
}

#[test]
fn what_is_asked_at_first_are_the_rows_in_the_water() {
    let bench = wave();
    let asked = suggested(bench.view().club, session(&bench));
    let wet = water(&bench);
    let rows: Vec<SlotId> = asked.rows.iter().map(|s| s.slot).collect();
    assert_eq!(rows, [wet]);
    assert_eq!(asked.minutes, session(&bench).slot(wet).unwrap().minutes);
    assert_eq!(asked.turns, None);
    let told = told(
        bench.view().club,
        session(&bench),
        &boards(&bench),
        &asked,
        None,
    );
    assert_eq!(
        told.room,
        ["Four people are free for the water, so four at once."]
    );
    assert!(told.losses.is_empty());
}

#[test]
fn the_reason_why_there_are_no_turns_is_exact() {
    let mut bench = wave();
    let wet = water(&bench);
    let one = |slot, capacity| vec![Station { slot, capacity }];
    let asked = Asked {
        rows: one(wet, None),
        turns: Some(1),
        ..as_now(&bench)
    };
    let words = no_plan(&mut bench, asked);
    assert_eq!(
        words[0],
        "Eight want the water, and four can be there at once: two turns are needed."
    );
    assert!(
        words[1].contains("“Water rescue” of Hauke ended"),
        "{words:?}"
    );
    let label = "Dig";
    let asked = Asked {
        rows: one(row(&bench, label), Some(3)),
        turns: Some(2),
        ..as_now(&bench)
    };
    let words = no_plan(&mut bench, asked);
    assert_eq!(
        words,
        ["Eight want “Dig”, and three can be there at once: three turns are needed."]
    );
    let asked = Asked {
        turns: Some(2),
        ..as_now(&bench)
    };
    let words = no_plan(&mut bench, asked);
    let name = called(&bench, "kite");
    let three = format!("{name} has three rows to go to in two turns: three turns are needed.");
    assert!(words.contains(&three), "{words:?}");
}

#[test]
fn nobody_free_for_the_water_is_a_reason() {
    let mut bench = wave();
    let id = session(&bench).id;
    let helpers: Vec<_> = bench.view().club.helpers.iter().map(|h| h.id).collect();
    for h in helpers {
        edit(&mut bench, Edit::HelperAttends(id, h, false));
    }
    let asked = Asked {
        turns: None,
        ..as_now(&bench)
    };
    let words = no_plan(&mut bench, asked.clone());
    assert_eq!(
        words[0],
        "Eight want the water, and nobody is free to be with them."
    );
    let told = told(
        bench.view().club,
        session(&bench),
        &boards(&bench),
        &asked,
        None,
    );
    assert_eq!(told.room, ["Nobody is free for the water."]);
}

/// A participant as sentences call them.
pub(super) fn called(bench: &Workbench, mark: &str) -> String {
    let who = marked(bench, mark);
    let name = &bench.view().club.participant(who).unwrap().name;
    format!("{name} ({mark})")
}

fn number(round: &Round, bench: &Workbench, mark: &str) -> usize {
    let who: ParticipantId = marked(bench, mark);
    (0..8).find(|i| round.who(*i) == who).unwrap()
}

#[test]
fn every_loss_is_a_sentence() {
    let bench = wave();
    let asked = as_now(&bench);
    let round = round(&bench, asked);
    let (kite, boat, moon) = (
        number(&round, &bench, "kite"),
        number(&round, &bench, "boat"),
        number(&round, &bench, "moon"),
    );
    let dig = (0..3)
        .find(|s| round.slot(*s) == row(&bench, "Dig"))
        .unwrap();
    let lost = Losses {
        quiet: vec![NoQuiet {
            participant: kite,
            turn: 0,
        }],
        last: vec![
            WaterLast {
                participant: moon,
                turn: 2,
            },
            WaterLast {
                participant: boat,
                turn: 2,
            },
        ],
        apart: vec![Apart {
            pair: 0,
            stations: vec![dig],
        }],
        order: vec![Reordered {
            participant: moon,
            pairs: vec![(0, 1)],
        }],
        places: vec![Changes {
            participant: kite,
            times: 2,
        }],
        waits: vec![Waits {
            participant: boat,
            turns: vec![1, 2],
        }],
    };
    let words = arranged::losses(bench.view().club, session(&bench), &round, &lost);
    let (kite, boat, moon) = (
        called(&bench, "kite"),
        called(&bench, "boat"),
        called(&bench, "moon"),
    );
    let mut wanted = vec![
        format!("For {kite} the quiet place does not follow the water."),
        format!("{boat} and {moon} have the water last."),
        format!("{kite} and {boat} are apart at “Dig”."),
        format!("{boat} waits in turns 2 and 3."),
        format!("{moon} has another order than the timetable."),
    ];
    let places: Vec<usize> = round.rotation.stations.iter().map(|s| s.place).collect();
    if (0..places.len()).any(|i| places[i] != i) {
        wanted.push("Together there are two changes of place between two rows.".into());
    }
    assert_eq!(words, wanted);
    let none = arranged::losses(
        bench.view().club,
        session(&bench),
        &round,
        &Losses::default(),
    );
    assert!(none.is_empty());
}

/// Every reason says something, in a sentence.
#[test]
fn every_reason_is_a_sentence() {
    let bench = wave();
    let round = round(&bench, as_now(&bench));
    let visit = daystrand::plan::rotation::Visit {
        turn: 1,
        station: 0,
    };
    let all = vec![
        Reason::BadWish {
            participant: 0,
            station: 0,
        },
        Reason::TooManyStations {
            participant: 0,
            stations: 3,
            turns: 2,
        },
        Reason::StationFull {
            station: 1,
            visits: 9,
            most: 8,
        },
        Reason::WaterFull { visits: 9, most: 8 },
        Reason::FixedNotWished {
            participant: 0,
            visit,
        },
        Reason::FixedTooLate {
            participant: 0,
            visit,
        },
        Reason::FixedTwice {
            participant: 0,
            visit,
            other: visit,
        },
        Reason::FixedStationFull {
            visit,
            visits: 3,
            most: 2,
        },
        Reason::FixedWaterFull {
            turn: 0,
            visits: 3,
            most: 2,
        },
        Reason::FixedNotPaired {
            turn: 0,
            participants: vec![0, 1],
        },
        Reason::NeverPaired { participant: 0 },
        Reason::AllTried,
    ];
    let say = |answer: Answer| arranged::none(bench.view().club, session(&bench), &round, &answer);
    for reason in all {
        let words = say(Answer::Impossible(vec![reason.clone()]));
        assert!(!words.is_empty(), "{reason:?}");
        for w in words {
            assert!(w.len() > 10 && w.ends_with('.'), "{reason:?}: {w}");
        }
    }
    let not = |stopped| NotFound {
        turns: 4,
        reasons: vec![],
        stopped,
    };
    assert_eq!(
        say(Answer::NotFound(not(false))),
        ["No plan was found with four turns. That there is none is not proved."]
    );
    assert_eq!(say(Answer::NotFound(not(true))).len(), 1);
}

#[test]
fn losses_of_turns_changed_by_hand_are_told() {
    let mut bench = wave();
    let (kite, id) = (marked(&bench, "kite"), session(&bench).id);
    let wet = water(&bench);
    edit(&mut bench, Edit::Turns(id, TurnsEdit::Place(kite, 2, wet)));
    let asked = as_now(&bench);
    let all = boards(&bench);
    let told = told(
        bench.view().club,
        session(&bench),
        &all,
        &asked,
        Some(turns(&bench)),
    );
    let name = called(&bench, "kite");
    let last = format!("{name} has the water last.");
    assert!(told.losses.contains(&last), "{:?}", told.losses);
}
