//! The helper's card: what a helper may know of one participant, folded in; nothing kept for the
//! coordinator.

use std::sync::Arc;

use daystrand::layout::{Request, Sheet, SheetKind};
use daystrand::model::club::{Club, Paper};
use daystrand::model::manner::{Finishing, Run};
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::profile::Field;
use daystrand::page::dump::dump;
use daystrand::units::Length;

use super::{all, blocks, check, lay_out, texts, who_of, with_manner, words_on};
use crate::fixture;

fn cards(club: &Club, paper: Paper) -> Vec<Sheet> {
    let request = Request {
        kinds: vec![SheetKind::HelperCard],
        paper,
        ..all(club)
    };
    let laid = lay_out(club, &request);
    check(club, &request, &laid, "helper card");
    laid.sheets
}

/// A word that is no word, for a field of the participant with this place in the list.
fn planted(who: usize, field: Field) -> String {
    format!("zq{who}x{}q", field.word().replace('-', ""))
}

/// A club in which every field of everyone says something that stands nowhere else.
fn planted_club() -> Club {
    let mut club = fixture::club();
    for (i, p) in club.participants.iter_mut().enumerate() {
        let p = Arc::make_mut(p);
        for field in Field::ALL {
            p.profile.set(field, planted(i, field));
        }
        p.helper_note = Guarded::new(Class::Coordinator, format!("zq{i}xsealednoteq"));
    }
    club
}

/// No matter what is written down, a helper's card has what is for a helper's eyes, of one
/// participant, and nothing else. What the alert marker says is not repeated either.
#[test]
fn a_card_holds_what_is_for_a_helper_and_nothing_of_the_coordinators() {
    let club = planted_club();
    for paper in [Paper::A4, Paper::A5] {
        let cards = cards(&club, paper);
        assert_eq!(cards.len(), club.participants.len());
        for sheet in &cards {
            let here = who_of(&club, sheet).id;
            let titles: String = sheet.pages.iter().map(|p| p.title.as_str()).collect();
            // A word too long for its column is torn; the pieces belong together.
            let text = format!("{}{titles}", words_on(sheet)).replace(['\n', ' '], "");
            for (i, p) in club.participants.iter().enumerate() {
                assert!(!text.contains(&format!("zq{i}xsealednoteq")));
                for field in Field::ALL {
                    let open = field.class() <= Class::Helper && field != Field::AlertMarker;
                    let wanted = p.id == here && open;
                    let found = text.contains(&planted(i, field));
                    // On narrow paper a long word is torn.
                    let fine = found == wanted || (paper == Paper::A5 && !found);
                    assert!(fine, "{field:?} of {i} on {paper:?}");
                }
            }
            assert!(
                words_on(sheet).contains("coordinator"),
                "the alert is told of"
            );
        }
    }
}

/// Cue, words to say and where the board lives stand outside; all else is folded in, and nothing
/// stands on a fold.
#[test]
fn what_is_private_lies_behind_the_folds() {
    let club = planted_club();
    for sheet in cards(&club, Paper::A4) {
        let (half, quarter) = (sheet.pages[0].size.w / 2, sheet.pages[0].size.w / 4);
        for (page, block) in blocks(&sheet) {
            let foot = page.size.h - Length::mm(21.0);
            for (at, pt, words) in texts(block) {
                if at.y < Length::mm(9.0) || at.bottom() > foot {
                    continue;
                }
                assert!(pt >= 10.0, "{words} at {pt} pt");
                for fold in [half, half + quarter] {
                    let clear =
                        at.right() <= fold - Length::mm(4.0) || at.x >= fold + Length::mm(4.0);
                    assert!(clear, "{words} on a fold");
                }
                let outside = ["cue", "exactwords", "boardlives"];
                let private = words.contains("zq") && !outside.iter().any(|o| words.contains(o));
                assert!(!private || at.x > half, "{words} is seen by others");
            }
        }
    }
}

#[test]
fn a_card_says_how_it_is_folded_at_both_edges() {
    let sheet = cards(&fixture::club(), Paper::A4).remove(0);
    for page in &sheet.pages {
        let text = dump(page);
        assert_eq!(text.matches("Fold this half in").count(), 2, "{text}");
        assert_eq!(text.matches("Fold it back here").count(), 2, "{text}");
    }
}

/// Common practice in teaching visual schedules: only the participant moves the tiles, one fixed
/// cue, few exact words, at every change.
#[test]
fn a_card_says_how_the_board_is_used() {
    let (club, sheet) = with_manner(SheetKind::HelperCard, |p| {
        p.manner.finishing = Finishing::Pouch;
    });
    let text = words_on(&sheet);
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let name = who_of(&club, &sheet).name.clone();
    for words in [
        format!("Only {name} moves the tiles."),
        "help to take the tile off and put it in the pouch".to_owned(),
        "Use the board for every change".to_owned(),
        "Wait before you say them again.".to_owned(),
        "Cue The tile in the open hand".to_owned(),
        "“Look. What is next?”".to_owned(),
    ] {
        assert!(text.contains(&words), "{words} in {text}");
    }
    let (_, ticks) = with_manner(SheetKind::HelperCard, |p| {
        p.manner.finishing = Finishing::Tick;
    });
    assert!(words_on(&ticks).contains("help to tick it"));
}

#[test]
fn what_does_not_fit_goes_on_on_a_further_card() {
    let (_, sheet) = with_manner(SheetKind::HelperCard, |p| {
        for field in Field::ALL
            .into_iter()
            .filter(|f| f.class() == Class::Helper)
        {
            p.profile
                .set(field, "Some words that were written down. ".repeat(12));
        }
        p.helper_note = Guarded::new(Class::Helper, "A long note. ".repeat(700));
    });
    assert!(sheet.pages.len() > 2);
    for (i, page) in sheet.pages.iter().enumerate() {
        let goes_on = dump(page).contains("Card goes on");
        assert_eq!(goes_on, i > 0, "page {i}");
    }
}

#[test]
fn steps_run_from_the_side_where_the_participant_begins_to_read() {
    let first_number = |run| {
        let (_, sheet) = with_manner(SheetKind::HelperCard, |p| p.manner.run = run);
        let mut of_steps = blocks(&sheet).filter(|(_, b)| b.source.is_some());
        let (_, number) = of_steps.next().unwrap();
        let (_, words) = of_steps.nth(1).unwrap();
        let x = |b| texts(b).next().unwrap().0.x;
        (x(number), x(words))
    };
    let (number, words) = first_number(Run::LeftToRight);
    assert!(number < words);
    let (number, words) = first_number(Run::RightToLeft);
    assert!(number > words);
}
