//! Private facts and public pages. What must not be seen by others is common practice in the trade,
//! without one published list; the ways of writing a date are everyday ones.

use std::sync::Arc;

use daystrand::check::privacy::{Facts, Leak};
use daystrand::layout::{self, InkChoice, Request, Sheet, SheetKind, Turn};
use daystrand::model::club::Club;
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::ids::ParticipantId;
use daystrand::model::people::Participant;
use daystrand::model::privacy::Class;
use daystrand::model::profile::Field;
use daystrand::page::dump;

fn demo() -> Club {
    daystrand::workbench::demo::club()
}

fn first(club: &mut Club) -> &mut Participant {
    Arc::make_mut(&mut club.participants[0])
}

fn with(field: Field, text: &str) -> (Club, ParticipantId) {
    let mut club = demo();
    first(&mut club).profile.set(field, text.into());
    let who = club.participants[0].id;
    (club, who)
}

fn sheets(club: &Club, kinds: &[SheetKind]) -> Vec<Sheet> {
    let session = &club.sessions[0];
    let request = Request {
        session: session.id,
        participants: club.attending(session).map(|p| p.id).collect(),
        kinds: kinds.to_vec(),
        paper: club.rules.paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    layout::lay_out(club, &request).sheets
}

fn found(field: Field, text: &str, on_page: &str) -> bool {
    let (club, who) = with(field, text);
    let all = Facts::of(&club).in_text(on_page, Class::Public);
    all.contains(&(who, field))
}

/// A word that is no word, another for each field.
fn nonsense(field: Field) -> String {
    let at = Field::ALL.iter().position(|f| *f == field).unwrap();
    let syllables = ["zor", "mip", "vak", "dul", "quef", "jat", "rulb", "xen"];
    format!(
        "{}{}{}",
        syllables[at % 8],
        syllables[at / 8 % 8],
        syllables[(at + 3) % 8]
    )
}

/// Whatever is written down about everyone, no page that others can see has a word of it.
#[test]
fn no_field_of_a_profile_reaches_a_public_page() {
    let mut club = demo();
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        for field in Field::ALL {
            p.profile.set(field, nonsense(field));
        }
        let hard = [(Condition::Known(Known::Windy), "zorwind".to_owned())];
        p.profile.set_hard(hard.into());
    }
    Arc::make_mut(&mut club.sessions[0]).conditions = vec![Condition::Known(Known::Windy)];
    let facts = Facts::of(&club);
    let sheets = sheets(&club, &SheetKind::ALL);
    assert!(sheets.len() > 30);
    for sheet in &sheets {
        assert_eq!(facts.in_sheet(sheet), [], "{}", sheet.file_stem);
        for page in sheet.pages.iter().filter(|p| p.class == Class::Public) {
            let words = dump::dump(page);
            assert!(!words.contains("zorwind"), "{}", sheet.file_stem);
            for field in Field::ALL {
                assert!(!words.contains(&nonsense(field)), "{field:?}: {words}");
            }
        }
    }
}

/// A planted word of every field is found in a label, in what is read for a picture, in a title and
/// in the name of a file; on a page for the coordinator it may stand.
#[test]
fn a_planted_word_of_every_field_is_found() {
    let mut club = demo();
    let who = first(&mut club).id;
    for field in Field::ALL {
        first(&mut club).profile.set(field, nonsense(field));
    }
    let facts = Facts::of(&club);
    let mut sheet = sheets(&club, &[SheetKind::LargePrint]).remove(0);
    for field in Field::ALL {
        let word = nonsense(field);
        let leak = |page| Leak { who, field, page };
        let mut titled = sheet.clone();
        titled.title = format!("Board, {word}");
        assert_eq!(facts.in_sheet(&titled), [leak(None)]);
        let mut named = sheet.clone();
        named.file_stem = format!("kite-{}-large-print", word.to_uppercase());
        assert_eq!(facts.in_sheet(&named), [leak(None)]);
        let mut page = sheet.clone();
        page.pages[0].title = format!("{word}.");
        assert_eq!(facts.in_sheet(&page), [leak(Some(1))]);
        assert_eq!(facts.in_text(&word, Class::Coordinator).len(), 0);
        let helper = usize::from(field.class() > Class::Helper);
        assert_eq!(facts.in_text(&word, Class::Helper).len(), helper);
    }
    // In a label, and in the words that stand for its picture.
    let word = nonsense(Field::Alerts);
    let (slot, id) = {
        let session = &club.sessions[0];
        (session.timetable[0].id, session.id)
    };
    let step = daystrand::model::ids::StepRef::Slot(slot);
    let relabel = daystrand::model::edit::BoardEdit::Relabel(step, format!("With {word}"));
    let edit = daystrand::model::edit::Edit::Board(id, who, relabel);
    club = daystrand::model::edit::apply(&club, &edit).unwrap().0;
    sheet = sheets(&club, &[SheetKind::LargePrint]).remove(0);
    let leaks = Facts::of(&club).in_sheet(&sheet);
    assert!(
        leaks
            .iter()
            .all(|l| l.field == Field::Alerts && l.page == Some(1))
    );
    assert_eq!(leaks.len(), 1);
}

#[test]
fn a_surname_is_found_and_an_everyday_surname_only_behind_the_name() {
    assert!(found(
        Field::Surname,
        "Quillfeather",
        "Tiles for QUILLFEATHER, M."
    ));
    assert!(!found(Field::Surname, "Quillfeather", "Tiles for the kite"));
    let (club, who) = with(Field::Surname, "Sand");
    let name = &club.participants[0].name;
    let facts = Facts::of(&club);
    assert!(facts.in_text("Feet in sand", Class::Public).is_empty());
    let behind = facts.in_text(&format!("{name} Sand"), Class::Public);
    assert!(behind.contains(&(who, Field::Surname)));
}

#[test]
fn a_telephone_number_is_found_however_it_is_spaced() {
    let said = "Ines, 0491 570 156";
    for on_page in [
        "call 0491570156",
        "0491-570-156",
        "(0491) 570 156",
        "0491.570.156",
    ] {
        assert!(found(Field::Emergency, said, on_page), "{on_page}");
    }
    assert!(!found(Field::Emergency, said, "at 09:30 for 57 minutes"));
    assert!(!found(Field::Emergency, said, "0491 570 157"));
}

#[test]
fn a_date_of_birth_is_found_in_the_usual_spellings() {
    for entered in [
        "2019-03-04",
        "4.3.2019",
        "04/03/2019",
        "4 March 2019",
        "March 4, 2019",
    ] {
        for on_page in [
            "2019-03-04",
            "4.3.2019",
            "04.03.19",
            "4/3/19",
            "3/4/2019",
            "born 4 March 2019",
            "Mar 4 2019",
        ] {
            assert!(found(Field::Born, entered, on_page), "{entered}, {on_page}");
        }
        assert!(!found(Field::Born, entered, "Saturday 12 June 2027"));
    }
}

#[test]
fn a_telling_word_is_found_and_everyday_words_are_not() {
    let alert = "Epilepsy. Call the first aider, then Ines.";
    assert!(found(Field::Alerts, alert, "kite-epilepsy-large-print"));
    assert!(!found(
        Field::Alerts,
        alert,
        "First, then. Call when you want help."
    ));
    assert!(!found(Field::Helps, "shade", "Shade"));
    assert!(found(
        Field::Helps,
        "a walk along the shade with me",
        "He needs a walk along the shade with me"
    ));
}

/// The day of a session stands on every sheet and in the name of its file: a note that names it is
/// no fact about anyone. A telephone number in the same note still is.
#[test]
fn the_day_of_a_session_in_a_note_blocks_no_sheet() {
    let kinds = [SheetKind::LargePrint, SheetKind::Story];
    for text in ["2027-06-12", "12.06.2027", "12 June 2027", "12/6/2027"] {
        for note in [text.to_owned(), format!("Talked about it on {text}.")] {
            let (club, who) = with(Field::DecidedBy, &note);
            assert_eq!(club.sessions[0].date.to_string(), "2027-06-12");
            let facts = Facts::of(&club);
            for sheet in sheets(&club, &kinds) {
                assert_eq!(facts.in_sheet(&sheet), [], "{note}: {}", sheet.file_stem);
            }
            let (club, _) = with(Field::DecidedBy, &format!("{note} 0491 570 006"));
            let found = Facts::of(&club).in_text("Ring 0491-570-006", Class::Public);
            assert!(found.contains(&(who, Field::DecidedBy)));
        }
    }
}
