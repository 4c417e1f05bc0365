//! Who may see a sheet stands on it, and what a helper or the coordinator needs to know of a
//! participant today stands where they read it, and nowhere else.

use std::sync::Arc;

use daystrand::layout::{Request, SheetKind, Turn};
use daystrand::model::club::{Club, Paper};
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::ids::ParticipantId;
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::record::Record;
use daystrand::model::session::Off;
use daystrand::page::dump::dump;

use super::{all, blocks, check, lay_out, texts, words_on};
use crate::fixture;

#[test]
fn every_page_says_who_may_see_it() {
    let club = fixture::club();
    let mut changed = club.clone();
    call_off(&mut changed);
    for paper in Paper::ALL {
        let request = Request {
            paper,
            ..all(&changed)
        };
        let laid = lay_out(&changed, &request);
        let kinds: std::collections::BTreeSet<SheetKind> =
            laid.sheets.iter().map(|s| s.kind).collect();
        // Cards lie among the tiles.
        assert_eq!(kinds.len(), SheetKind::ALL.len() - 1);
        for sheet in &laid.sheets {
            for page in &sheet.pages {
                let says = dump(page).contains(page.class.label());
                assert!(says, "{paper:?}, {}: {}", sheet.file_stem, page.title);
            }
        }
    }
}

/// Calls off every activity in the water, for everyone.
fn call_off(club: &mut Club) {
    let wet: Vec<_> = club
        .activities
        .iter()
        .filter(|a| a.in_water)
        .cloned()
        .collect();
    for slot in &mut fixture::session_mut(club).timetable {
        if let Some(a) = wet.iter().find(|a| a.id == slot.activity) {
            slot.off = Some(Off {
                instead: a.dry_replacement,
            });
        }
    }
}

#[test]
fn what_is_hard_today_stands_where_helper_and_coordinator_read_it_only() {
    let mut club = fixture::club();
    let p = Arc::make_mut(&mut club.participants[0]);
    let helps = |words: &str| words.to_owned();
    p.profile.set_hard(
        [
            (Condition::Known(Known::Windy), helps("zzhelpzz")),
            (Condition::Known(Known::Rain), helps("zzdryzz")),
            (Condition::Words("zzroadzz".into()), helps("")),
        ]
        .into(),
    );
    fixture::session_mut(&mut club).conditions = vec![
        Condition::Known(Known::Windy),
        Condition::Words("zzroadzz".into()),
    ];
    let laid = lay_out(&club, &all(&club));
    for sheet in &laid.sheets {
        let text = words_on(sheet);
        let here = match sheet.kind {
            SheetKind::SessionSheet => true,
            SheetKind::HelperCard => sheet.participant == Some(club.participants[0].id),
            _ => false,
        };
        assert_eq!(text.contains("zzhelpzz"), here, "{}", sheet.file_stem);
        assert_eq!(
            text.contains("Hard today: zzroadzz"),
            here,
            "{}",
            sheet.file_stem
        );
        assert!(!text.contains("zzdryzz"), "it does not rain today");
    }
}

#[test]
fn what_was_seen_last_time_stands_on_the_session_sheet_only() {
    let mut club = fixture::club();
    let who: ParticipantId = club.participants[0].id;
    let favourite = club.sessions[0].timetable[1].activity;
    let label = club.activity(favourite).unwrap().label.clone();
    let record = Record {
        favourite: Some(favourite),
        next_time: "zzcloserzz".into(),
        ..Record::default()
    };
    let first = fixture::session_mut(&mut club);
    first.records = [(who, Guarded::new(Class::Coordinator, record))].into();
    let mut request = all(&club);
    request.session = club.sessions[1].id;
    let laid = lay_out(&club, &request);
    let words = format!("Last time, 12 June 2027: favourite {label}; to change: zzcloserzz");
    for sheet in &laid.sheets {
        // The line may break anywhere.
        let text = words_on(sheet)
            .split_whitespace()
            .collect::<Vec<_>>()
            .join(" ");
        let here = sheet.kind == SheetKind::SessionSheet;
        assert_eq!(text.contains("zzcloserzz"), here, "{}", sheet.file_stem);
        if here {
            assert!(text.contains(&words), "{text}");
        }
    }
    let text = session_words(&club);
    assert!(!text.contains("Last time"), "nothing came before");
}

/// What stands on the session sheet, wherever its lines break.
fn session_words(club: &Club) -> String {
    let sheets = lay_out(club, &all(club)).sheets;
    let sheet = sheets.iter().find(|s| s.kind == SheetKind::SessionSheet);
    let text = words_on(sheet.unwrap());
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A day on which everyone's board changes, for more and more people: one page as long as columns
/// and gaps allow it, letters never under 12 points (clear-print guidance of CNIB), and a further
/// page says what it is.
#[test]
fn the_change_sheet_is_one_page_where_that_can_be() {
    let club = fixture::club();
    let mut single = 0;
    for people in [8, 12, 16, 40] {
        let mut club = club.clone();
        call_off(&mut club);
        let more = (club.participants.len()..people).map(|i| {
            let mut p = (*club.participants[i % 8]).clone();
            p.id = ParticipantId(60_000 + i as u32);
            Arc::new(p)
        });
        let more: Vec<_> = more.collect();
        club.participants.extend(more);
        let request = Request {
            kinds: vec![SheetKind::ChangeSheet],
            turn: Turn::AsSuits,
            ..all(&club)
        };
        let laid = lay_out(&club, &request);
        check(&club, &request, &laid, "change sheet");
        let sheet = &laid.sheets[0];
        if sheet.pages.len() == 1 {
            single = people;
        }
        for (i, page) in sheet.pages.iter().enumerate() {
            let goes_on = dump(page).contains("What changes today goes on");
            assert_eq!(goes_on, i > 0, "{people} people, page {i}");
        }
        let size = sheet.pages[0].size;
        for (_, block) in blocks(sheet) {
            for (at, pt, words) in texts(block) {
                let foot = at.y > size.h - Length::mm(24.0);
                assert!(foot || pt >= 12.0 - 0.01, "{words:?} at {pt} pt");
            }
        }
    }
    assert!(single >= 12, "one page for {single} people at most");
}

use daystrand::units::Length;

/// A choice is told as one, and words are told as other words only where they are.
#[test]
fn how_a_board_differs_is_told_in_words() {
    let club = fixture::club();
    let text = session_words(&club);
    for told in [
        "A choice at Dig: Dig, Find shells, Something else.",
        "Boat is called Red boat.",
        "Drum instead of Song.",
    ] {
        assert!(text.contains(told), "{told} in {text}");
    }
    for label in club.activities.iter().map(|a| &a.label) {
        assert!(!text.contains(&format!("{label} is called {label}")));
    }
}
