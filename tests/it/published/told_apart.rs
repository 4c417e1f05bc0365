//! Names, marks, and what others must not see.
//!
//! A name or mark the family chose and nothing else where others can see it: Child Protection in
//! Sport Unit (UK), pages on photography and on deaf and disabled children; a Finnish data
//! protection project on hobbies; NHS England, health and care passports; all read in part. Two
//! people of one name told apart by a mark is common practice. Ways to write a telephone number:
//! ITU-T Recommendation E.123 (02/2001), clauses 2 and 3, from memory; the numbers themselves are
//! from the ranges that the regulators of Australia and the United Kingdom keep for fiction.

use std::sync::Arc;

use daystrand::check;
use daystrand::check::privacy::{Facts, Leak, refusal};
use daystrand::layout::{Sheet, SheetKind};
use daystrand::model::club::Club;
use daystrand::model::finding::Severity;
use daystrand::model::ids::SymbolId;
use daystrand::model::people::Participant;
use daystrand::model::privacy::Class;
use daystrand::model::profile::Field;
use daystrand::page::Role;
use daystrand::page::dump::dump;

use super::sheets;
use crate::fixture;

fn who<'a>(club: &'a mut Club, mark: &str) -> &'a mut Participant {
    let mut all = club.participants.iter_mut();
    Arc::make_mut(all.find(|p| p.mark.as_str() == mark).unwrap())
}

const PERSONAL: [SheetKind; 5] = [
    SheetKind::LargePrint,
    SheetKind::Tiles,
    SheetKind::BaseBoard,
    SheetKind::Cards,
    SheetKind::Story,
];

/// Two are called Mila: every page of theirs shows the mark of the one and not of the other, and so
/// does the name of its file.
#[test]
fn two_of_one_name_are_told_apart_on_every_page() {
    let club = fixture::club();
    let milas: Vec<_> = club
        .participants
        .iter()
        .filter(|p| p.name == "Mila")
        .collect();
    assert_eq!(milas.len(), 2);
    let mut pages = 0;
    for kind in PERSONAL {
        for sheet in sheets(&club, kind) {
            let Some(mine) = milas.iter().find(|p| sheet.participant == Some(p.id)) else {
                continue;
            };
            let other = milas.iter().find(|p| p.id != mine.id).unwrap();
            assert!(sheet.file_stem.contains(mine.mark.as_str()));
            assert!(!sheet.file_stem.contains(other.mark.as_str()));
            for page in &sheet.pages {
                let marks = page.blocks.iter().filter_map(|b| match &b.role {
                    Role::Figure { alt } => alt.strip_prefix("Mark: "),
                    _ => None,
                });
                let mut marks: Vec<_> = marks.collect();
                marks.dedup();
                assert_eq!(marks, [mine.mark.as_str()], "{}", dump(page));
                pages += 1;
            }
        }
    }
    assert!(pages > 20, "{pages}");
}

/// Without marks of their own this is among the first things to look at before printing, and even
/// then no file takes the place of another.
#[test]
fn two_of_one_name_and_one_mark_stop_whoever_prints() {
    let mut club = fixture::club();
    let told = |club: &Club| {
        let all = check::run(club, Some(&club.sessions[0]));
        all.into_iter().find(|f| f.code == "people.same_name")
    };
    assert_eq!(told(&club), None);
    who(&mut club, "star").mark = SymbolId::new("kite");
    let found = told(&club).unwrap();
    assert_eq!(found.severity, Severity::StopAndLook);
    assert!(found.hint.contains("a mark of their own"), "{}", found.hint);
    for kind in PERSONAL {
        let mut stems: Vec<_> = sheets(&club, kind)
            .into_iter()
            .map(|s| s.file_stem)
            .collect();
        assert_eq!(stems.len(), club.participants.len());
        stems.sort();
        stems.dedup();
        assert_eq!(stems.len(), club.participants.len(), "{stems:?}");
    }
}

/// A number, and how it is written elsewhere: national and international notation (clause 2), with
/// the signs of clause 3 between the digits.
const NUMBERS: [(&str, &[&str]); 2] = [
    (
        "0491 570 156",
        &[
            "0491 570 156",
            "(0491) 570 156",
            "+61 491 570 156",
            "+61-491-570-156",
            "0061 491 570 156",
        ],
    ),
    (
        "+44 7700 900123",
        &[
            "+44 7700 900123",
            "07700 900123",
            "(07700) 900 123",
            "+44 7700 900/123",
        ],
    ),
];

#[test]
fn a_telephone_number_is_found_in_either_notation() {
    for (entered, written) in NUMBERS {
        let mut club = fixture::club();
        let text = format!("Ines, {entered}");
        who(&mut club, "leaf").profile.set(Field::Emergency, text);
        let facts = Facts::of(&club);
        for number in written {
            let found = facts.in_text(&format!("Ring {number}."), Class::Public);
            assert_eq!(found.len(), 1, "{entered} as {number}");
        }
        for other in [
            "Ring +61 491 570 157.",
            "Ring 07700 900124.",
            "At 09:30 on 2027-06-12, 570 156 shells.",
        ] {
            let found = facts.in_text(other, Class::Public);
            assert!(found.is_empty(), "{entered}: {other}");
        }
    }
}

/// What one must not see, and as what it is planted.
const PLANTED: [(Field, &str, &str); 4] = [
    (Field::Surname, "Quillfeather", "Quillfeather"),
    (Field::Emergency, "Ines, 0491 570 156", "0491-570-156"),
    (Field::Born, "4 March 2019", "2019-03-04"),
    (
        Field::Alerts,
        "Epilepsy; the plan is in the red bag",
        "epilepsy",
    ),
];

/// In the name of a file, in the title of a document and in what is read for a picture, as on the
/// page: each is found, and the sheet is not written; the reason does not repeat it.
#[test]
fn private_facts_are_found_wherever_a_sheet_can_hold_words() {
    let mut club = fixture::club();
    for (field, text, _) in PLANTED {
        who(&mut club, "leaf").profile.set(field, text.into());
    }
    let id = who(&mut club, "leaf").id;
    let facts = Facts::of(&club);
    let clean = sheets(&club, SheetKind::LargePrint).remove(0);
    assert_eq!(facts.in_sheet(&clean), []);
    type Plant = fn(&mut Sheet, &str);
    let places: [(Option<usize>, Plant); 4] = [
        (None, |s, words| {
            s.file_stem = format!("2027-06-12-{words}-large-print")
        }),
        (None, |s, words| s.title = format!("Board: {words}")),
        (Some(1), |s, words| {
            s.pages[0].title = format!("Board, {words}")
        }),
        (Some(1), |s, words| {
            let mut all = s.pages[0].blocks.iter_mut();
            let alt = all.find_map(|b| match &mut b.role {
                Role::Figure { alt } => Some(alt),
                _ => None,
            });
            *alt.unwrap() = format!("A picture, {words}");
        }),
    ];
    for (field, _, planted) in PLANTED {
        for (at, (page, plant)) in places.iter().enumerate() {
            let mut sheet = clean.clone();
            plant(&mut sheet, planted);
            let leak = Leak {
                who: id,
                field,
                page: *page,
            };
            assert_eq!(facts.in_sheet(&sheet), [leak], "{planted}, place {at}");
            let (why, what) = refusal(&club, &facts, &sheet).unwrap();
            assert!(why.contains("was not written") && !what.is_empty(), "{why}");
            // The name of the file is part of the sentence only where it is the file's.
            let repeats = why.to_lowercase().contains(&planted.to_lowercase());
            assert!(!repeats || at == 0, "{why}");
        }
    }
}
