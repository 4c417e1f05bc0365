//! In which order boards of the group are listed, and which of them.

use std::collections::BTreeMap;
use std::sync::Arc;

use jiff::civil::date;

use daystrand::model::board::{Board, StepState, derive};
use daystrand::model::club::Club;
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::edit::{BoardEdit, Edit, apply};
use daystrand::model::hand::{Asked, Content};
use daystrand::model::ids::{StepRef, SymbolId};
use daystrand::ui::boards::differs::Differs;
use daystrand::ui::boards::sort::{Filter, Sort, lines};
use daystrand::workbench::Workbench;
use daystrand::workbench::command::Command;

fn demo() -> Club {
    let mut bench = Workbench::new(date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    bench.view().club.clone()
}

fn names(club: &Club, filter: Filter, sort: Sort) -> Vec<String> {
    let session = club.sessions.last().expect("a session").clone();
    let boards: Vec<_> = club
        .attending(&session)
        .map(|p| (p.id, Arc::new(derive(club, &session, p.id))))
        .collect();
    let found = lines(club, &session, &boards, filter, sort);
    found.iter().map(|l| l.person.name.clone()).collect()
}

fn edit(club: &Club, who: usize, make: impl Fn(&Board) -> BoardEdit) -> Club {
    let session = club.sessions.last().expect("a session");
    let who = club.attending(session).nth(who).expect("a participant").id;
    let edit = make(&derive(club, session, who));
    let all = Edit::Board(session.id, who, edit);
    apply(club, &all).expect("applies").0
}

#[test]
fn by_name_ignores_capitals_and_keeps_everyone() {
    let club = demo();
    let all = names(&club, Filter::Everyone, Sort::List);
    let mut by_name = names(&club, Filter::Everyone, Sort::Name);
    assert!(by_name.is_sorted_by_key(|n| n.to_lowercase()));
    let mut sorted = all;
    sorted.sort();
    by_name.sort();
    assert_eq!(sorted, by_name);
}

#[test]
fn most_differences_come_first_and_equal_ones_keep_their_order() {
    let mut club = demo();
    let all = names(&club, Filter::Everyone, Sort::List);
    for at in 0..6 {
        club = edit(&club, 5, |_| {
            BoardEdit::Insert(
                Content {
                    activity: None,
                    symbol: SymbolId::new("drum"),
                    label: format!("Drum {at}"),
                },
                0,
            )
        });
    }
    let sorted = names(&club, Filter::Everyone, Sort::Differences);
    assert_eq!(sorted[0], all[5]);
    let questions = names(&club, Filter::Everyone, Sort::Questions);
    assert_eq!(questions, all, "no questions are open");
}

#[test]
fn who_is_dry_today_is_not_among_those_in_the_water() {
    let club = demo();
    let before = names(&club, Filter::Water, Sort::List);
    let all = names(&club, Filter::Everyone, Sort::List);
    let who = all
        .iter()
        .position(|n| before.contains(n))
        .expect("someone goes into the water");
    let dry = edit(&club, who, |_| BoardEdit::Dry(None));
    let after = names(&dry, Filter::Water, Sort::List);
    // Names may be shared, so they are counted.
    assert_eq!(after.len() + 1, before.len());
}

#[test]
fn wind_concerns_whom_it_is_hard_for_even_on_land() {
    let mut club = demo();
    let all = names(&club, Filter::Everyone, Sort::List);
    let mut person = club.participants[0].as_ref().clone();
    let at = all
        .iter()
        .position(|n| *n == person.name)
        .expect("they come");
    for activity in club.activities.clone() {
        let mut a = activity.as_ref().clone();
        a.in_water = false;
        a.not_when.clear();
        club = apply(&club, &Edit::ChangeActivity(a)).expect("applies").0;
    }
    person.profile.set_hard(BTreeMap::new());
    for p in club.participants.clone() {
        let mut p = p.as_ref().clone();
        p.profile.set_hard(BTreeMap::new());
        club = apply(&club, &Edit::ChangeParticipant(p))
            .expect("applies")
            .0;
    }
    assert!(names(&club, Filter::Wind, Sort::List).is_empty());
    let hard = [(Condition::Known(Known::Windy), String::new())];
    person.profile.set_hard(hard.into_iter().collect());
    club = apply(&club, &Edit::ChangeParticipant(person))
        .expect("applies")
        .0;
    assert_eq!(names(&club, Filter::Wind, Sort::List), [all[at].clone()]);
}

#[test]
fn an_offered_favourite_counts_as_on_the_board() {
    let mut club = demo();
    let session = club.sessions.last().expect("a session").clone();
    let person = club.attending(&session).next().expect("someone").clone();
    let board = derive(&club, &session, person.id);
    let absent = club
        .activities
        .iter()
        .find(|a| !board.activities().any(|id| id == a.id))
        .expect("an activity that is not on the board")
        .clone();
    let mut changed = person.as_ref().clone();
    changed.profile.favourites = [absent.id].into_iter().collect();
    club = apply(&club, &Edit::ChangeParticipant(changed))
        .expect("applies")
        .0;
    assert!(names(&club, Filter::NoFavourite, Sort::List).contains(&person.name));
    let offered = edit(&club, 0, |b| {
        BoardEdit::Offer(b.steps[0].at, vec![Content::of(&absent)])
    });
    assert!(!names(&offered, Filter::NoFavourite, Sort::List).contains(&person.name));
    assert!(names(&offered, Filter::Choice, Sort::List).contains(&person.name));
}

#[test]
fn an_open_question_is_found_and_comes_first() {
    let mut club = demo();
    let all = names(&club, Filter::Everyone, Sort::List);
    assert!(names(&club, Filter::Questions, Sort::List).is_empty());
    let at = club.sessions.len() - 1;
    let who = club
        .participants
        .iter()
        .find(|p| p.name == all[3])
        .expect("known")
        .id;
    let session = Arc::make_mut(&mut club.sessions[at]);
    let drum = Content {
        activity: None,
        symbol: SymbolId::new("drum"),
        label: "Drum".into(),
    };
    session
        .hand
        .entry(who)
        .or_default()
        .asked
        .push(Asked::RowGone {
            was: drum.clone(),
            shown: drum,
            options: Vec::new(),
            after: Vec::<StepRef>::new(),
        });
    assert_eq!(
        names(&club, Filter::Questions, Sort::List),
        [all[3].clone()]
    );
    assert_eq!(names(&club, Filter::Everyone, Sort::Questions)[0], all[3]);
}

#[test]
fn what_is_called_off_for_all_says_so() {
    let club = demo();
    let session = club.sessions.last().expect("a session");
    let who = club.attending(session).next().expect("someone").id;
    let mut step = derive(&club, session, who).steps[0].clone();
    step.state = StepState::NotToday;
    step.by = daystrand::model::board::By::Timetable;
    assert_eq!(Differs::of(&step), Differs::CalledOff);
    step.by = daystrand::model::board::By::Hand;
    assert_eq!(Differs::of(&step), Differs::NotToday);
}
