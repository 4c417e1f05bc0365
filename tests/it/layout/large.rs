//! Large print in the participant's own direction, and several short strips on one page.

use daystrand::layout::SheetKind;
use daystrand::model::hand::Content;
use daystrand::model::ids::SlotId;
use daystrand::model::manner::{Form, Reach, Run};
use daystrand::model::session::Slot;
use daystrand::page::hit::{block_box, item_box};
use daystrand::page::{Item, Page, Role};
use daystrand::plan::chunks::chunks;
use daystrand::units::{Length, Rect};

use super::{all, board_of, is_tile, lay_out, texts, who_of, with_manner, words_on};
use crate::fixture;

/// Where the pictures of the steps stand on a page, in reading order.
fn pictures(page: &Page) -> Vec<Rect> {
    let of_steps = page.blocks.iter();
    let of_steps = of_steps.filter(|b| b.source.is_some() && is_tile(b));
    of_steps.filter_map(block_box).collect()
}

/// Dashed frames around strips.
fn frames(page: &Page) -> Vec<Rect> {
    let dashed = |i: &&Item| matches!(i, Item::Shape { stroke: Some(s), fill: None, .. } if s.dash.is_some());
    let drawn = page.blocks.iter().filter(|b| b.role == Role::Artifact);
    let items = drawn.flat_map(|b| &b.items).filter(dashed);
    items.filter_map(item_box).collect()
}

#[test]
fn large_print_follows_the_direction() {
    for (run, sign) in [(Run::LeftToRight, 1), (Run::RightToLeft, -1)] {
        let (_, sheet) = with_manner(SheetKind::LargePrint, |p| p.manner.run = run);
        for page in &sheet.pages {
            assert!(page.size.w > page.size.h, "a row lies on the long side");
            let at = pictures(page);
            assert!(at.len() >= 3, "{run:?}: at least three in a row");
            for pair in at[..3].windows(2) {
                assert!((pair[1].x - pair[0].x) * sign > Length::ZERO, "{run:?}");
                assert_eq!(pair[0].y, pair[1].y, "{run:?}: one row");
            }
        }
    }
    let (_, down) = with_manner(SheetKind::LargePrint, |_| {});
    for pair in pictures(&down.pages[0]).windows(2) {
        assert!(pair[1].y > pair[0].y && pair[0].x == pair[1].x);
    }
}

/// Each word stands under its own picture and no other.
#[test]
fn words_stand_under_their_pictures() {
    for run in [Run::LeftToRight, Run::RightToLeft] {
        let (_, sheet) = with_manner(SheetKind::LargePrint, |p| p.manner.run = run);
        for page in &sheet.pages {
            let at = pictures(page);
            let said = page.blocks.iter();
            let said = said.filter(|b| b.source.is_some() && b.role == Role::Paragraph);
            for (picture, block) in at.iter().zip(said) {
                let label = texts(block).filter(|(_, pt, _)| *pt >= 18.0);
                for (line, _, words) in label {
                    let off = line.center().x - picture.center().x;
                    assert!(off.to_mm().abs() < 0.1, "{words}");
                    assert!(line.y > picture.y, "{words}");
                }
            }
        }
    }
}

#[test]
fn short_strips_share_a_page_in_frames() {
    for reach in [Reach::One, Reach::FirstThen] {
        for run in Run::ALL {
            let (club, sheet) = with_manner(SheetKind::LargePrint, |p| {
                p.manner.reach = reach;
                p.manner.run = run;
            });
            let what = format!("{reach:?} {run:?}");
            let board = board_of(&club, &sheet);
            let strips = chunks(&club, &board, reach);
            // A strip with words of two lines may stand alone.
            assert!(sheet.pages.len() * 3 <= strips.len() * 2, "{what}");
            let text = words_on(&sheet);
            let mut from = 0;
            for i in 1..=strips.len() {
                let title = format!("## Strip {i} of {}\n", strips.len());
                let at = text[from..].find(&title).map(|at| from + at);
                from = at.unwrap_or_else(|| panic!("{what}: {title:?} in {text}"));
            }
            let places = text.matches("Place for the pointer").count();
            assert_eq!(places, strips.len(), "{what}");
            let least = who_of(&club, &sheet).tile.scale(0.5);
            for page in &sheet.pages {
                let frames = frames(page);
                for picture in pictures(page) {
                    assert!(picture.w >= least, "{what}: half a tile at least");
                    let framed = frames.iter().any(|f| f.encloses(picture));
                    assert!(framed || frames.is_empty(), "{what}");
                }
            }
        }
    }
}

/// Nothing of a strip leaves its frame: picture, number and words of a step are cut apart together.
#[test]
fn a_step_stays_in_one_frame_with_its_words() {
    let (_, sheet) = with_manner(SheetKind::LargePrint, |p| p.manner.reach = Reach::FirstThen);
    for page in &sheet.pages {
        let frames = frames(page);
        for source in page.blocks.iter().filter_map(|b| b.source) {
            let of_it = page.blocks.iter().filter(|b| b.source == Some(source));
            let boxes: Vec<Rect> = of_it.filter_map(block_box).collect();
            let whole = |f: &&Rect| boxes.iter().all(|b| f.encloses(*b));
            assert_eq!(frames.iter().filter(whole).count(), 1, "{source:?}");
        }
    }
}

#[test]
fn what_goes_on_says_so_on_both_pages() {
    for run in Run::ALL {
        let (_, sheet) = with_manner(SheetKind::LargePrint, |p| p.manner.run = run);
        let pages = sheet.pages.len();
        assert!(pages > 1);
        for (i, page) in sheet.pages.iter().enumerate() {
            let text = daystrand::page::dump::dump(page);
            let next = format!("Goes on: page {}", i + 2);
            assert_eq!(text.contains(&next), i + 1 < pages, "{run:?}, page {i}");
            assert_eq!(text.contains("plan goes on"), i > 0, "{run:?}, page {i}");
        }
    }
    // A strip as long as the day, on the large-print board and on the base board.
    for kind in [SheetKind::LargePrint, SheetKind::BaseBoard] {
        let mut club = fixture::club();
        let p = std::sync::Arc::make_mut(&mut club.participants[0]);
        p.manner.reach = Reach::Part;
        p.tile = Length::mm(80.0);
        let template: Slot = club.sessions[0].timetable[0].clone();
        let session = fixture::session_mut(&mut club);
        session.hand.clear();
        session.timetable = (0..14)
            .map(|i| Slot {
                id: SlotId(7_000 + i),
                ..template.clone()
            })
            .collect();
        let request = super::Request {
            kinds: vec![kind],
            participants: vec![club.participants[0].id],
            ..all(&club)
        };
        let laid = lay_out(&club, &request);
        super::check(&club, &request, &laid, "one long strip");
        let text = words_on(&laid.sheets[0]);
        assert!(text.contains("Strip 1 of 1 goes on"), "{kind:?}: {text}");
        assert!(text.contains("Goes on: page 2"), "{kind:?}");
    }
}

/// What is ready has the participant's own form; what must be understood at once by whoever is near
/// keeps its picture, but for those who have words alone.
#[test]
fn what_is_ready_has_the_own_form() {
    let pictured = |kind, form, word: &str| {
        let (_, sheet) = with_manner(kind, |p| {
            p.manner.form = form;
            p.manner.mixed.clear();
            p.standing.cards = vec![Content {
                activity: None,
                symbol: daystrand::model::ids::SymbolId::new("drum"),
                label: "Drum".to_owned(),
            }];
        });
        let mut drawn = Vec::new();
        for block in sheet.pages.iter().flat_map(|p| &p.blocks) {
            if let Role::Figure { alt } = &block.role
                && alt.contains(word)
            {
                drawn.push(alt.clone());
            }
        }
        assert!(words_on(&sheet).contains(word), "{word}, {form:?}");
        drawn
    };
    use SheetKind::{Cards, Tiles};
    for (kind, word) in [
        (Tiles, "Change"),
        (Cards, "Help"),
        (Cards, "Stop"),
        (Cards, "Drum"),
    ] {
        assert!(pictured(kind, Form::Word, word).is_empty(), "{word} alone");
    }
    for (kind, word) in [(Tiles, "Change"), (Cards, "Drum")] {
        let drawn = pictured(kind, Form::Object, word);
        assert_eq!(drawn, [format!("Place for an object: {word}")]);
    }
    for word in ["Help", "Stop", "Break", "Toilet"] {
        let drawn = pictured(Cards, Form::Object, word);
        assert!(drawn.iter().all(|alt| !alt.starts_with("Place")) && !drawn.is_empty());
    }
    let (_, session) = with_manner(SheetKind::SessionSheet, |p| {
        p.manner.form = Form::Object;
        p.manner.mixed.clear();
    });
    let text = words_on(&session);
    assert!(text.contains("kite: a thing that stands for"), "{text}");
}
