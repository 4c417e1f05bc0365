//! When a tile that was made once can be used again. Common practice: other words, another language,
//! form or size make another tile; another order does not.

use std::sync::Arc;

use daystrand::layout::{SheetKind, plan_code};
use daystrand::model::board::derive;
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, apply};
use daystrand::model::ids::{StepRef, SymbolId};
use daystrand::model::manner::{Form, Mixed};
use daystrand::model::people::Participant;
use daystrand::page::dump::{Read, read};
use daystrand::units::Length;

use super::sheets;
use crate::fixture;

/// All that is on the tiles of the first participant, whatever their order; and what stands above
/// them, which says how large they are printed and cut.
fn tiles(club: &Club) -> (Vec<String>, Vec<String>) {
    let sheet = sheets(club, SheetKind::Tiles).remove(0);
    assert_eq!(sheet.participant, Some(club.participants[0].id));
    let mut pieces = Vec::new();
    let mut sizes = Vec::new();
    for piece in sheet.pages.iter().flat_map(read) {
        match piece {
            Read::Heading(_, words) => sizes.push(words),
            Read::Paragraph(words) if words.starts_with("Printed") => sizes.push(words),
            // The foot of the page tells the plan by its code.
            Read::Paragraph(words) if words.contains("Plan") => {}
            other => pieces.push(format!("{other:?}")),
        }
    }
    pieces.sort();
    (pieces, sizes)
}

fn code(club: &Club) -> String {
    let who = &club.participants[0];
    plan_code::of_board(club, &derive(club, &club.sessions[0], who.id), who)
}

fn plain() -> Club {
    let mut club = fixture::club();
    fixture::session_mut(&mut club).hand.clear();
    let first = Arc::make_mut(&mut club.participants[0]);
    first.manner = Default::default();
    club
}

fn first(club: &mut Club, change: impl Fn(&mut Participant)) {
    change(Arc::make_mut(&mut club.participants[0]));
}

#[test]
fn another_order_needs_no_other_tiles() {
    let before = plain();
    let mut club = before.clone();
    fixture::session_mut(&mut club).timetable.swap(1, 4);
    assert_eq!(tiles(&club), tiles(&before));
    assert_ne!(code(&club), code(&before), "the board is another one");
    let (id, who) = (before.sessions[0].id, before.participants[0].id);
    let last = StepRef::Slot(before.sessions[0].timetable.last().unwrap().id);
    let moved = Edit::Board(id, who, BoardEdit::Move(vec![last], 0));
    let club = apply(&before, &moved).unwrap().0;
    assert_eq!(tiles(&club), tiles(&before));
    // Nor do another day, time, place or helper.
    let mut club = before.clone();
    let session = fixture::session_mut(&mut club);
    session.start = jiff::civil::time(14, 0, 0, 0);
    session.timetable[2].minutes += 5;
    session.place = "the reeds".into();
    club.helpers.clear();
    assert_eq!((tiles(&club), code(&club)), (tiles(&before), code(&before)));
}

#[test]
fn other_words_language_form_or_size_make_another_tile() {
    type Change = fn(&mut Club);
    let changes: [(&str, Change); 9] = [
        ("words", |c| relabel(c, "Sand")),
        ("the same words in another language", |c| relabel(c, "حفر")),
        ("capitals", |c| relabel(c, "DIG")),
        ("a photograph", |c| {
            first(c, |p| p.manner.form = Form::Photograph)
        }),
        ("what is ready instead as a photograph", |c| {
            let mut all = c.activities.iter();
            let dry = all.find(|a| a.label == "Boat").unwrap().dry_replacement;
            first(c, |p| {
                let form = Form::Photograph;
                let thing = String::new();
                p.manner.mixed.insert(dry.unwrap(), Mixed { form, thing });
            });
        }),
        ("words alone", |c| first(c, |p| p.manner.form = Form::Word)),
        ("another picture", |c| {
            dig(c).symbol = SymbolId::new("shovel")
        }),
        ("size", |c| first(c, |p| p.tile = Length::mm(61.0))),
        ("the film around it", |c| c.rules.seal = Length::mm(5.0)),
    ];
    let before = plain();
    for (what, change) in changes {
        let mut club = before.clone();
        change(&mut club);
        assert_ne!(tiles(&club), tiles(&before), "{what}");
        assert_ne!(code(&club), code(&before), "{what}");
    }
}

fn dig(club: &mut Club) -> &mut daystrand::model::club::Activity {
    let mut all = club.activities.iter_mut();
    Arc::make_mut(all.find(|a| a.label == "Dig").unwrap())
}

fn relabel(club: &mut Club, words: &str) {
    dig(club).label = words.into();
}
