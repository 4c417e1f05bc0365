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
