//! The group wall: large symbols and words of the group's timetable, and nothing of anyone.

use daystrand::layout::{Request, Sheet, SheetKind, Turn};
use daystrand::model::club::{Club, Paper};
use daystrand::model::hand::Content;
use daystrand::page::dump::dump;
use daystrand::page::{Item, Role};
use daystrand::text::{Style, metrics};
use daystrand::units::{Length, Rect};

use super::{all, blocks, check, lay_out, texts, words_on};
use crate::fixture;

fn wall(club: &Club, session: usize, paper: Paper, turn: Turn) -> Sheet {
    let request = Request {
        session: club.sessions[session].id,
        kinds: vec![SheetKind::GroupWall],
        paper,
        turn,
        ..all(club)
    };
    let laid = lay_out(club, &request);
    check(club, &request, &laid, "group wall");
    laid.sheets.into_iter().next().unwrap()
}

/// The symbols of steps; what is called off lies smaller on its hatched ground.
fn symbols(sheet: &Sheet) -> Vec<Rect> {
    let figures = blocks(sheet).filter(|(_, b)| {
        b.source.is_some() && matches!(&b.role, Role::Figure { alt } if !alt.starts_with("Not"))
    });
    let items = figures.flat_map(|(_, b)| &b.items);
    let shapes = items.filter_map(|i| match i {
        Item::Shape { .. } => daystrand::page::hit::item_box(i),
        _ => None,
    });
    shapes.collect()
}

/// The words under or beside the symbols.
fn labels(sheet: &Sheet) -> Vec<(f64, String)> {
    let words = blocks(sheet).filter(|(_, b)| b.source.is_some() && b.role == Role::Paragraph);
    words
        .flat_map(|(_, b)| texts(b))
        .map(|(_, pt, t)| (pt, t.to_owned()))
        .collect()
}

/// Common practice for a wall: symbols of 120 to 150 mm, two on an A4 page one below the other.
#[test]
fn symbols_are_120_to_150_mm() {
    let club = fixture::club();
    for (paper, turn, on_a_page) in [
        (Paper::A4, Turn::AsSuits, 2),
        (Paper::Letter, Turn::AsSuits, 2),
        (Paper::A3, Turn::AsSuits, 4),
        (Paper::A4, Turn::Landscape, 1),
        (Paper::A3, Turn::Portrait, 3),
        (Paper::A5, Turn::Portrait, 1),
    ] {
        let sheet = wall(&club, 0, paper, turn);
        let rows = club.sessions[0].timetable.len();
        assert_eq!(sheet.pages.len(), rows.div_ceil(on_a_page), "{paper:?}");
        let sides = symbols(&sheet);
        assert_eq!(sides.len(), rows);
        for side in sides {
            // The line around it is part of the box.
            let mm = side.w.to_mm();
            assert!((119.9..=150.5).contains(&mm), "{paper:?} {turn:?}: {mm}");
        }
    }
}

/// The American Printing House for the Blind calls nothing under 18 points large print. How far the
/// letters are read is said as common practice: 200 times their height.
#[test]
fn labels_have_one_size_and_it_is_said_from_how_far_they_are_read() {
    let club = fixture::club();
    for paper in Paper::ALL {
        let sheet = wall(&club, 1, paper, Turn::AsSuits);
        let labels = labels(&sheet);
        let pt = labels[0].0;
        assert!(pt >= 18.0, "{paper:?}: {pt}");
        assert!(labels.iter().all(|l| (l.0 - pt).abs() < 0.01), "{labels:?}");
        let high = metrics(&Style::bold(Length::pt(pt))).cap_height.to_mm();
        let said = format!(
            "Letters {high:.0} mm high are read from about {:.1} m",
            high / 5.0
        );
        for page in &sheet.pages {
            assert!(dump(page).contains(&said), "{said} in {}", dump(page));
        }
    }
}

#[test]
fn what_is_called_off_stays_and_what_comes_instead_follows_it() {
    let club = fixture::club();
    let session = &club.sessions[1];
    let off = session.timetable.iter().filter(|s| s.off.is_some()).count();
    assert!(off > 0, "the demo calls something off");
    let sheet = wall(&club, 1, Paper::A4, Turn::AsSuits);
    let text = words_on(&sheet);
    let after = |words: &str, from: usize| {
        let at = text[from..].find(words);
        from + at.unwrap_or_else(|| panic!("{words} in {text}"))
    };
    let not_today = after("Not today", 0);
    let was = after("Splash", not_today);
    let instead = after("Instead of", was);
    after("Ball", instead);
    let rows = session.timetable.len();
    let figures = blocks(&sheet).filter(|(_, b)| matches!(b.role, Role::Figure { .. }));
    assert_eq!(figures.count(), rows + off);
}

#[test]
fn a_choice_shows_what_can_be_chosen() {
    let mut club = fixture::club();
    let content = |label: &str| Content {
        activity: None,
        symbol: daystrand::model::ids::SymbolId::new("drum"),
        label: label.into(),
    };
    let slot = &mut fixture::session_mut(&mut club).timetable[3];
    slot.options = ["zzone", "zztwo", "zzthree"].map(content).into();
    for paper in Paper::ALL {
        let text = words_on(&wall(&club, 0, paper, Turn::AsSuits));
        for words in ["zzone", "zztwo", "zzthree"] {
            assert!(text.contains(words), "{words} on {paper:?}");
        }
    }
}

#[test]
fn nobody_is_named_on_the_wall() {
    let mut club = fixture::club();
    for (i, p) in club.participants.iter_mut().enumerate() {
        std::sync::Arc::make_mut(p).name = format!("zzname{i}");
    }
    for h in &mut club.helpers {
        std::sync::Arc::make_mut(h).name = "zzhelper".into();
    }
    let sheet = wall(&club, 0, Paper::A4, Turn::AsSuits);
    let text = words_on(&sheet);
    assert!(!text.contains("zzname") && !text.contains("zzhelper") && !text.contains("Mark:"));
}

/// The demo's third session, with rows in turns.
const IN_TURNS: usize = 2;

/// How many cards say that they are done in turns.
fn signs(sheet: &Sheet) -> usize {
    let words = blocks(sheet).filter(|(_, b)| b.role == Role::Paragraph);
    let words = words.flat_map(|(_, b)| texts(b));
    words.filter(|(_, _, t)| *t == "In turns").count()
}

/// What is done in turns hangs as one block: one number, the words on each card, small pictures of
/// all of it, and a card less for whoever waits a second time.
#[test]
fn what_is_done_in_turns_is_one_block() {
    let club = fixture::club();
    let session = &club.sessions[IN_TURNS];
    let rows = session.timetable.len();
    let stations = session.turns.as_ref().unwrap().stations.len();
    assert_eq!(stations, 3, "as the demo has it");
    let sheet = wall(&club, IN_TURNS, Paper::A4, Turn::AsSuits);
    let text = words_on(&sheet);
    assert_eq!(signs(&sheet), stations, "{text}");
    // Cards are named 6a, 6b and 6c, and the next one is 7.
    for name in ["5 ·", "6a ·", "6b ·", "6c ·", "7 ·"] {
        assert!(text.contains(name), "{name} in {text}");
    }
    let last = rows - stations + 1;
    assert!(text.contains(&format!("of {last}.")), "{text}");
    assert!(text.contains("All cards 6 hang side by side."), "{text}");
    let of_block = blocks(&sheet).filter(|(_, b)| {
        matches!(&b.role, Role::Figure { alt } if alt.starts_with("In turns: Splash, Dig, "))
    });
    assert_eq!(of_block.count(), stations);
    assert_eq!(symbols(&sheet).len(), rows);
}

/// A wait that comes twice is one card; without turns there is no block.
#[test]
fn waiting_has_one_card_and_no_turns_no_block() {
    use daystrand::model::edit::{Edit, TurnsEdit, TurnsPlan, apply};
    let club = fixture::club();
    let session = &club.sessions[IN_TURNS];
    let turns = session.turns.as_deref().unwrap();
    let water = turns.stations[0];
    let place = |p| (p, vec![Some(water.slot), None, None]);
    let people = club.participants.iter().map(|p| p.id);
    let plan = TurnsPlan {
        stations: vec![water],
        waiting: Some(club.activities[0].id),
        count: 3,
        minutes: 10,
        places: people.map(place).collect(),
        friends: Default::default(),
    };
    let set = Edit::Turns(session.id, TurnsEdit::Set(plan));
    let (club, _) = apply(&club, &set).unwrap();
    let waits = club.sessions[IN_TURNS].turns.as_ref().unwrap().waits.len();
    assert_eq!(waits, 2);
    let sheet = wall(&club, IN_TURNS, Paper::A4, Turn::AsSuits);
    let rows = club.sessions[IN_TURNS].timetable.len();
    assert_eq!(symbols(&sheet).len(), rows - 1);
    assert_eq!(signs(&sheet), 2);
    let off = Edit::Turns(club.sessions[IN_TURNS].id, TurnsEdit::Off);
    let (club, _) = apply(&club, &off).unwrap();
    let sheet = wall(&club, IN_TURNS, Paper::A4, Turn::AsSuits);
    assert_eq!(signs(&sheet), 0);
    assert!(!words_on(&sheet).contains("side by side"));
}
