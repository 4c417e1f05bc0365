//! Participants as a table: out, in, and what is wrong in one.

use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, apply};
use daystrand::model::manner::{Form, Reach, Run};
use daystrand::model::people::Participant;
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::profile::Field;
use daystrand::roster::cell::{defuse, restore};
use daystrand::roster::{Column, Read, read, write};
use daystrand::symbols::library::library;
use daystrand::units::Length;
use proptest::prelude::*;

use crate::fixture::club;

fn taken(text: &str, club: &Club) -> Read {
    read(text.as_bytes(), club).unwrap()
}

fn after(club: &Club, read: &Read) -> Club {
    apply(club, &Edit::TakeIn(read.people.clone())).unwrap().0
}

fn someone<'a>(club: &'a Club, name: &str) -> &'a Participant {
    club.participants.iter().find(|p| p.name == name).unwrap()
}

/// The first whose name nobody else has.
fn of_one_name(club: &Club) -> usize {
    let names: Vec<&str> = club.participants.iter().map(|p| p.name.as_str()).collect();
    let alone = |n: &&str| names.iter().filter(|m| *m == n).count() == 1;
    names.iter().position(alone).unwrap()
}

fn note(p: &Participant) -> &str {
    p.helper_note.for_owner()
}

/// RFC 4180, "Common Format and MIME Type for CSV Files" (October 2005), section 2, rules 1 to 7:
/// the fields of its examples, under headings that this program knows.
#[test]
fn examples_of_rfc_4180_are_read() {
    let head = "Name,Note for the helper,Story speaks as\r\n";
    let notes = |rows: &str| -> Vec<(String, String)> {
        let club = Club {
            participants: vec![],
            ..club()
        };
        let read = taken(&format!("{head}{rows}"), &club);
        assert_eq!(read.skipped, [], "{rows:?}");
        let pair = |p: &Participant| (p.name.clone(), note(p).to_owned());
        read.people.iter().map(pair).collect()
    };
    let pairs = |list: &[(&str, &str)]| -> Vec<(String, String)> {
        let pair = |(a, b): &(&str, &str)| ((*a).to_owned(), (*b).to_owned());
        list.iter().map(pair).collect()
    };
    let two = pairs(&[("aaa", "bbb"), ("zzz", "yyy")]);
    // 1: each record on a line of its own. 2: the last may lack its line break.
    assert_eq!(notes("aaa,bbb,I\r\nzzz,yyy,You\r\n"), two);
    assert_eq!(notes("aaa,bbb,I\r\nzzz,yyy,You"), two);
    // 5: fields may be quoted.
    assert_eq!(notes("\"aaa\",\"bbb\",\"I\"\r\nzzz,yyy,You"), two);
    // 6: line breaks, quotes and commas inside quotes belong to the field.
    let broken = notes("\"aaa\",\"b\r\nbb\",\"I\"\r\nzzz,yyy,You");
    let lines = pairs(&[("aaa", "b\r\nbb"), ("zzz", "yyy")]);
    assert_eq!(broken, lines);
    assert_eq!(notes("aaa,\"b,bb\",I"), pairs(&[("aaa", "b,bb")]));
    // 7: a quote inside quotes is doubled.
    assert_eq!(
        notes("\"aaa\",\"b\"\"bb\",\"I\""),
        pairs(&[("aaa", "b\"bb")])
    );
}

/// The same rules for what is written: CRLF between records, equal field counts, quotes where
/// needed.
#[test]
fn what_is_written_follows_rfc_4180() {
    let mut club = club();
    let p = std::sync::Arc::make_mut(&mut club.participants[0]);
    p.name = "Ada, \"the quick\"".into();
    let bytes = write(&club, false).bytes;
    let text = String::from_utf8(bytes).unwrap();
    let text = text.strip_prefix('\u{feff}').unwrap();
    assert!(text.ends_with("\r\n"));
    assert_eq!(text.matches('\n').count(), text.matches("\r\n").count());
    assert!(text.contains("\r\n\"Ada, \"\"the quick\"\"\","), "{text}");
    let mut lines = text.split_terminator("\r\n");
    let head = lines.next().unwrap();
    assert_eq!(head.split(',').count(), Column::SETTINGS.len());
    let others = lines.filter(|l| !l.contains('"'));
    assert!(others.map(|l| l.split(',').count()).all(|n| n == 11));
}

#[test]
fn a_table_out_and_in_changes_nothing() {
    let club = club();
    for for_helpers in [false, true] {
        let written = write(&club, for_helpers);
        let read = read(&written.bytes, &club).unwrap();
        assert_eq!(read.skipped, []);
        assert_eq!(read.people, []);
        assert_eq!(read.same, club.participants.len());
    }
}

/// What only the coordinator may see is planted everywhere and in no table; what helpers know is in
/// one only when asked for.
#[test]
fn sealed_facts_are_never_written_or_taken_in() {
    let mut club = club();
    let p = std::sync::Arc::make_mut(&mut club.participants[0]);
    for field in Field::ALL {
        p.profile.set(field, format!("planted {}", field.word()));
    }
    p.helper_note = Guarded::new(Class::Helper, "planted note".into());
    let text = |for_helpers| String::from_utf8(write(&club, for_helpers).bytes).unwrap();
    assert!(!text(false).contains("planted"));
    for field in Field::ALL {
        let there = text(true).contains(&format!("planted {},", field.word()))
            || text(true).contains(&format!("planted {}\r", field.word()));
        assert_eq!(there, field.class() <= Class::Helper, "{field:?}");
    }
    let sealed = "Name,Sealed: alerts, contacts, papers: Surname,Surname\nNew,Vale,Vale\n";
    let read = taken(sealed, &club);
    assert!(read.passed_over.iter().any(|c| c == "Surname"));
    assert!(read.people.iter().all(|p| p.profile.is_empty()));
}

#[test]
fn every_setting_of_a_row_is_taken_in() {
    let club = club();
    let row = "name,MARK,tile side in mm,letters in points,form,length,direction,finished steps,age,skin,story speaks as,what helps\n\
               Quill,kite,\"62,5\",40,word,first, then,right to left,ticked,teen,deep,you,x\n";
    // A comma in an unquoted text makes one cell too many; quoted it is one cell.
    let read_bad = taken(row, &club);
    assert_eq!(read_bad.skipped[0].line, 2);
    assert!(read_bad.skipped[0].why.contains("13 cells"), "{read_bad:?}");
    let read = taken(&row.replace("first, then", "\"first, then\""), &club);
    assert_eq!(read.skipped, []);
    assert_eq!(read.passed_over, ["what helps"]);
    let next = after(&club, &read);
    let p = someone(&next, "Quill");
    assert_eq!(p.tile, Length::mm(62.5));
    assert_eq!((p.text_pt, p.manner.form), (40, Form::Word));
    assert_eq!(p.manner.reach, Reach::FirstThen);
    assert_eq!(p.manner.run, Run::RightToLeft);
    assert_eq!(p.mark.as_str(), "kite");
}

#[test]
fn a_known_name_is_changed_and_an_empty_cell_changes_nothing() {
    let club = club();
    let at = of_one_name(&club);
    let before = club.participants[at].clone();
    let letters = before.text_pt + 2;
    let row = format!(
        "Name,Mark,Letters in points\r\n{},,{letters}\r\n",
        before.name
    );
    let read = taken(&row, &club);
    assert_eq!((read.people.len(), read.new_people()), (1, 0));
    let next = after(&club, &read);
    assert_eq!(next.participants.len(), club.participants.len());
    let mut wanted = Participant::clone(&before);
    wanted.text_pt = letters;
    assert_eq!(*next.participants[at], wanted);
}

#[test]
fn bad_rows_are_told_with_their_line_and_the_rest_is_taken_in() {
    let club = club();
    let text = "Name,Mark,Form,Letters in points,Tile side in mm\r\n\
                Wren,,drawing,36,60\r\n\
                ,kite,word,36,60\r\n\
                \"Two\nlines\",,song,36,60\r\n\
                \r\n\
                Moss,spoon,word,36,60\r\n\
                Reed,,word,many,60\r\n\
                Fern,,word,36,wide\r\n\
                Sage,,word,900,60\r\n\
                Rush,,word,36,60\r\n";
    let read = taken(text, &club);
    let names: Vec<&str> = read.people.iter().map(|p| p.name.as_str()).collect();
    assert_eq!(names, ["Wren", "Rush"]);
    let told: Vec<(u64, &str)> = read
        .skipped
        .iter()
        .map(|s| (s.line, s.why.as_str()))
        .collect();
    let lines: Vec<u64> = told.iter().map(|(line, _)| *line).collect();
    assert_eq!(lines, [3, 4, 7, 8, 9, 10]);
    let words = ["no name", "“song”", "“spoon”", "“many”", "“wide”", "900"];
    for ((_, why), word) in told.iter().zip(words) {
        assert!(why.contains(word) || word == "900", "{why}");
        assert!(why.ends_with('.'), "{why}");
    }
}

#[test]
fn a_person_is_in_a_table_once() {
    let club = club();
    let name = &club.participants[of_one_name(&club)].name;
    let read = taken(
        &format!("Name,Letters in points\n{name},40\n{name},44\n"),
        &club,
    );
    assert_eq!(read.people[0].text_pt, 40);
    assert!(read.skipped[0].why.contains("line 2"), "{read:?}");
}

#[test]
fn two_of_one_name_are_told_apart_by_their_mark() {
    let mut club = club();
    let (one, other) = (of_one_name(&club), 0);
    let name = club.participants[one].name.clone();
    std::sync::Arc::make_mut(&mut club.participants[other]).name = name.clone();
    let mark = Column::Mark.text(&club, &club.participants[other]);
    let rows = format!("Name,Mark,Letters in points\n{name},{mark},44\n{name},,45\n");
    let read = taken(&rows, &club);
    assert_eq!(read.people.len(), 1);
    assert_eq!(read.people[0].id, club.participants[other].id);
    assert!(read.skipped[0].why.contains("mark"), "{read:?}");
}

#[test]
fn what_is_agreed_about_the_water_goes_out_and_comes_in() {
    let club = club();
    let heading = "Name,Depth agreed in cm,Hears in the water\n";
    let read_one = taken(&format!("{heading}Quill,60 cm,no\n"), &club);
    let next = after(&club, &read_one);
    let agreed = *someone(&next, "Quill").profile.in_water().for_owner();
    assert_eq!((agreed.depth_cm, agreed.without_hearing), (Some(60), true));
    let text = |for_helpers| String::from_utf8(write(&next, for_helpers).bytes).unwrap();
    assert!(!text(false).contains("Depth agreed"));
    assert!(text(true).contains(",60,No,"));
    assert_eq!(read(text(true).as_bytes(), &next).unwrap().people, []);
    for row in ["Quill,deep,no", "Quill,60,perhaps"] {
        let bad = taken(&format!("{heading}{row}\n"), &club);
        assert_eq!((bad.people.len(), bad.skipped.len()), (0, 1), "{row}");
    }
}

#[test]
fn new_people_get_marks_of_their_own() {
    let empty = Club {
        participants: vec![],
        ..club()
    };
    let count = library().marks().len();
    let rows: String = (0..count).map(|i| format!("Child {i}\n")).collect();
    let next = after(&empty, &taken(&format!("Name\n{rows}"), &empty));
    let mut marks: Vec<_> = next.participants.iter().map(|p| p.mark.clone()).collect();
    marks.sort();
    marks.dedup();
    assert_eq!(marks.len(), count);
}

#[test]
fn semicolons_and_tabs_of_other_countries_are_read() {
    let club = club();
    for text in [
        "Name;Letters in points\nQuill;41\n",
        "Name\tLetters in points\nQuill\t41\n",
        "\u{feff}Name;Letters in points\r\nQuill;41\r\n",
    ] {
        let read = taken(text, &club);
        assert_eq!(read.people[0].text_pt, 41, "{text:?}");
    }
}

#[test]
fn what_is_no_table_is_refused_with_what_to_do() {
    let club = club();
    for (bytes, word) in [
        (&b"Name\nJos\xe9\n"[..], "UTF-8"),
        (b"", "Name"),
        (b"Mark,Form\nkite,word\n", "Name"),
        (b"\x89PNG\r\n\x1a\n", "UTF-8"),
    ] {
        let refused = read(bytes, &club).unwrap_err();
        assert!(refused.sentence.contains(word), "{refused}");
        assert!(!refused.hint.is_empty());
    }
}

/// OWASP, "CSV Injection" (from memory): cells that begin like this run as formulas.
#[test]
fn cells_that_could_run_as_formulas_are_defused() {
    for text in [
        "=1+1",
        "+1",
        "-1",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "=HYPERLINK(\"x\")",
    ] {
        assert_eq!(defuse(text), format!("'{text}"));
        assert_eq!(restore(&defuse(text)), text);
    }
    for text in ["", "Noor", "a=b", "'", "'tis", "10-20"] {
        assert_eq!(defuse(text), text);
        assert_eq!(restore(text), text);
    }
    let mut club = club();
    std::sync::Arc::make_mut(&mut club.participants[0]).name = "=cmd|'/c calc'!A0".into();
    let written = write(&club, false);
    assert_eq!(written.defused, 1);
    let text = String::from_utf8(written.bytes.clone()).unwrap();
    assert!(text.contains("\r\n'=cmd"));
    assert_eq!(
        read(&written.bytes, &club).unwrap().same,
        club.participants.len()
    );
}

proptest! {
    #![proptest_config(crate::chance::cases(256))]

    /// Whatever stands in the texts, a table written and taken in gives the same people, and no
    /// cell begins a formula.
    #[test]
    fn any_texts_survive(name in "[ -~\u{e9}\u{5d0}'=+@-]{1,20}", note in "[ -~\n\"',;=\t@+-]{0,60}") {
        let empty = Club { participants: vec![], ..club() };
        let mark = library().marks()[0].id.clone();
        let mut p = Participant::new(&name, mark, Length::mm(60.0));
        p.helper_note = Guarded::new(Class::Helper, note);
        let Ok((full, _)) = apply(&empty, &Edit::AddParticipant(p)) else { return Ok(()) };
        let written = write(&full, true);
        let back = after(&empty, &read(&written.bytes, &empty).unwrap());
        let (a, b) = (&full.participants[0], &back.participants[0]);
        prop_assert_eq!(&a.name, &b.name);
        prop_assert_eq!(note_of(a), note_of(b));
        prop_assert_eq!(read(&written.bytes, &full).unwrap().same, 1);
        let mut rows = csv_rows(&written.bytes);
        prop_assert!(rows.all(|cell| !cell.starts_with(['=', '+', '-', '@', '\t'])));
    }
}

fn note_of(p: &Participant) -> String {
    note(p).to_owned()
}

fn csv_rows(bytes: &[u8]) -> impl Iterator<Item = String> {
    let mut cells = Vec::new();
    let mut rows = csv::Reader::from_reader(bytes);
    for record in rows.records() {
        cells.extend(record.unwrap().iter().map(str::to_owned));
    }
    cells.into_iter()
}

/// Garbage never panics; what it gives is a club or a refusal.
#[test]
fn garbage_is_read_without_harm() {
    let club = club();
    let mut state = 1_u32;
    for _ in 0..2000 {
        let mut text = String::from("Name,Mark,Note for the helper\n");
        for _ in 0..40 {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            text.push(['"', ',', '\n', '\r', 'a', '\'', '=', ' ', 'é'][(state >> 24) as usize % 9]);
        }
        if let Ok(read) = read(text.as_bytes(), &club) {
            assert!(apply(&club, &Edit::TakeIn(read.people)).is_ok(), "{text:?}");
        }
    }
}
