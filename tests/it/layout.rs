//! Sheets: what holds for every club, however odd (`sound`), and what is printed for the demo club.

mod helper;
mod large;
mod looks;
mod making;
pub mod packing;
mod pictures;
mod readers;
mod roll;
mod songs;
mod sound;
mod story;
mod wall;
mod waterside;

use daystrand::layout::{InkChoice, Request, Sheet, SheetKind, Turn, lay_out, plan_code};
use daystrand::model::board::{Board, derive};
use daystrand::model::club::{Club, Paper};
use daystrand::model::ids::{SlotId, StepRef, SymbolId};
use daystrand::model::manner::{Finishing, Form, Mixed, Reach, Run};
use daystrand::model::people::Participant;
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::session::Slot;
use daystrand::page::dump::dump;
use daystrand::page::hit::item_box;
use daystrand::page::{Block, Item, Page, Role};
use daystrand::units::{Length, Rect};
use sound::{SECRET, check};

use crate::fixture;

/// All sheets of everyone who comes to the first session.
fn all(club: &Club) -> Request {
    Request {
        session: club.sessions[0].id,
        participants: club.participants.iter().map(|p| p.id).collect(),
        kinds: SheetKind::ALL.to_vec(),
        paper: Paper::A4,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    }
}

fn board_of(club: &Club, sheet: &Sheet) -> Board {
    derive(club, &club.sessions[0], sheet.participant.unwrap())
}

fn who_of<'a>(club: &'a Club, sheet: &Sheet) -> &'a Participant {
    club.participant(sheet.participant.unwrap()).unwrap()
}

fn blocks(sheet: &Sheet) -> impl Iterator<Item = (&Page, &Block)> {
    sheet
        .pages
        .iter()
        .flat_map(|p| p.blocks.iter().map(move |b| (p, b)))
}

fn texts(block: &Block) -> impl Iterator<Item = (Rect, f64, &str)> {
    block.items.iter().filter_map(|item| match item {
        Item::Text { line, .. } => {
            let size = line.runs.iter().map(|(_, r)| r.size).max()?;
            Some((item_box(item)?, size.to_pt(), line.text.as_str()))
        }
        _ => None,
    })
}

/// Pictures but the mark in the header.
fn is_tile(block: &Block) -> bool {
    matches!(&block.role, Role::Figure { alt } if !alt.starts_with("Mark:"))
}

#[test]
fn the_same_request_gives_the_same_pages() {
    let club = fixture::club();
    let one = format!("{:?}", lay_out(&club, &all(&club)));
    let two = format!("{:?}", lay_out(&fixture::club(), &all(&club)));
    assert!(one == two);
}

#[test]
fn file_names_hold_marks_and_dates_never_names() {
    let mut club = fixture::club();
    let second = std::sync::Arc::make_mut(&mut club.participants[1]);
    second.mark = SymbolId::new("kite");
    let laid = lay_out(&club, &all(&club));
    let stems: Vec<&str> = laid.sheets.iter().map(|s| s.file_stem.as_str()).collect();
    assert!(stems.contains(&"2027-06-12-kite-large-print"), "{stems:?}");
    assert!(
        stems.contains(&"2027-06-12-kite-2-story"),
        "two with one mark get a number"
    );
    assert!(stems.contains(&"2027-06-12-session"));
    assert!(
        stems.contains(&"2027-06-12-tiles"),
        "tiles of several lie together"
    );
    for p in &club.participants {
        assert!(stems.iter().all(|s| !s.contains(&p.name.to_lowercase())));
    }
}

#[test]
fn who_is_away_or_unknown_is_passed_over() {
    let mut club = fixture::club();
    let away = club.participants[0].id;
    fixture::session_mut(&mut club).away.insert(away);
    let mut request = all(&club);
    request
        .participants
        .push(daystrand::model::ids::ParticipantId(99_999));
    request.participants.push(club.participants[1].id);
    request.kinds.push(SheetKind::Tiles);
    let laid = lay_out(&club, &request);
    assert!(laid.sheets.iter().all(|s| s.participant != Some(away)));
    let of_second = laid
        .sheets
        .iter()
        .filter(|s| s.participant == Some(club.participants[1].id));
    assert_eq!(of_second.count(), 6, "each sheet once");
    request.session = daystrand::model::ids::SessionId(99_999);
    assert!(lay_out(&club, &request).sheets.is_empty());
}

#[test]
fn notes_for_helpers_stand_on_their_card_and_on_the_coordinators_sheet_only() {
    let mut club = fixture::club();
    for p in &mut club.participants {
        let p = std::sync::Arc::make_mut(p);
        p.helper_note = Guarded::new(Class::Helper, SECRET.to_owned());
    }
    let laid = lay_out(&club, &all(&club));
    for sheet in &laid.sheets {
        let says = sheet.pages.iter().any(|p| dump(p).contains(SECRET));
        assert_eq!(
            says,
            matches!(sheet.kind, SheetKind::SessionSheet | SheetKind::HelperCard),
            "{}",
            sheet.file_stem
        );
    }
}

/// Nothing in layout opens what is guarded but the flow, which knows its readers.
#[test]
fn only_the_flow_reads_what_is_guarded() {
    let mut folders = vec![std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src/layout")];
    let mut read = 0;
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let code = std::fs::read_to_string(&path).unwrap();
            let opens = code.contains(".for_page(") || code.contains(".for_owner(");
            assert_eq!(opens, path.ends_with("flow.rs"), "{}", path.display());
            read += 1;
        }
    }
    assert!(read > 50, "{read} files");
}

#[test]
fn the_code_changes_with_what_is_on_the_board_and_only_then() {
    let club = fixture::club();
    let code = |club: &Club| {
        let who = &club.participants[0];
        plan_code::of_board(club, &derive(club, &club.sessions[0], who.id), who)
    };
    let before = code(&club);
    assert_eq!(before.len(), 4);
    assert!(
        before.chars().all(|c| "CDFGHJKMNPQRTWXY34679".contains(c)),
        "{before}"
    );
    let changed = |change: &dyn Fn(&mut Club)| {
        let mut club = club.clone();
        change(&mut club);
        code(&club) != before
    };
    let who = club.participants[0].id;
    let participant = |c: &mut Club, f: &dyn Fn(&mut Participant)| {
        f(std::sync::Arc::make_mut(&mut c.participants[0]));
    };
    assert!(changed(&|c| participant(c, &|p| p.tile = Length::mm(61.0))));
    assert!(changed(&|c| participant(c, &|p| p.text_pt += 1)));
    assert!(changed(
        &|c| participant(c, &|p| p.manner.form = Form::Photograph)
    ));
    assert!(changed(
        &|c| participant(c, &|p| p.manner.reach = Reach::Three)
    ));
    assert!(changed(
        &|c| participant(c, &|p| p.manner.run = Run::RightToLeft)
    ));
    assert!(changed(
        &|c| participant(c, &|p| p.manner.finishing = Finishing::Tick)
    ));
    let first = club.sessions[0].timetable[0].activity;
    let thing = |form, thing: &str| Mixed {
        form,
        thing: thing.to_owned(),
    };
    assert!(changed(&|c| participant(c, &|p| {
        p.manner
            .mixed
            .insert(first, thing(Form::Object, "a blue cup"));
    })));
    assert!(!changed(&|c| participant(c, &|p| {
        p.manner
            .mixed
            .insert(first, thing(Form::Drawing, "a blue cup"));
    })));
    assert!(changed(&|c| fixture::session_mut(c).timetable.swap(0, 1)));
    assert!(changed(&|c| {
        fixture::session_mut(c).timetable.pop();
    }));
    assert!(changed(&|c| c.rules.seal = Length::mm(5.0)));
    assert!(changed(&|c| {
        let slot = c.sessions[0].timetable[0].id;
        let hand = fixture::session_mut(c).hand.entry(who).or_default();
        hand.labels.insert(StepRef::Slot(slot), "Hi".into());
    }));
    assert!(!changed(&|c| fixture::session_mut(c)
        .title
        .push_str(" again")));
    assert!(!changed(&|c| fixture::session_mut(c)
        .place
        .push_str(" again")));
    assert!(!changed(
        &|c| fixture::session_mut(c).start = jiff::civil::time(8, 0, 0, 0)
    ));
    assert!(!changed(
        &|c| fixture::session_mut(c).timetable[2].minutes += 5
    ));
    assert!(!changed(&|c| c.helpers.clear()));
    assert!(!changed(&|c| participant(c, &|p| p.name = "Other".into())));
    let away = club.participants[3].id;
    assert!(!changed(&|c| {
        fixture::session_mut(c).away.insert(away);
    }));
}

#[test]
fn tiles_are_steps_then_dry_replacements_then_change() {
    let mut club = fixture::club();
    // A choice has a card of its own.
    let session = fixture::session_mut(&mut club);
    session.hand.clear();
    for slot in &mut session.timetable {
        slot.options.clear();
    }
    let request = Request {
        kinds: vec![SheetKind::Tiles],
        participants: vec![club.participants[0].id],
        ..all(&club)
    };
    let laid = lay_out(&club, &request);
    let sheet = &laid.sheets[0];
    let said: Vec<String> = blocks(sheet)
        .filter(|(p, _)| p.title.starts_with("Tiles"))
        .filter_map(|(_, b)| match &b.role {
            Role::Figure { alt } if !alt.starts_with("Mark") => Some(alt.clone()),
            _ => None,
        })
        .collect();
    let board = board_of(&club, sheet);
    assert_eq!(said.len(), board.steps.len() + 2);
    assert!(said[said.len() - 2].starts_with("Try a paddle"));
    assert!(said[said.len() - 1].starts_with("Change"));
}

#[test]
fn help_and_stop_come_first_among_the_cards() {
    let club = fixture::club();
    let request = Request {
        kinds: vec![SheetKind::Cards],
        participants: vec![club.participants[0].id],
        ..all(&club)
    };
    let page = &lay_out(&club, &request).sheets[0].pages[0];
    let text = dump(page);
    let order = [
        "[Help",
        "[Stop",
        "[Break",
        "[Toilet",
        "[Quiet place",
        "[Finished",
    ];
    let found: Vec<_> = order.iter().map(|w| text.find(w).unwrap()).collect();
    assert!(found.is_sorted(), "{text}");
}

#[test]
fn a_finished_place_is_large_enough_for_all_tiles() {
    let club = fixture::club();
    for paper in Paper::ALL {
        let request = Request {
            kinds: vec![SheetKind::BaseBoard],
            paper,
            ..all(&club)
        };
        for sheet in lay_out(&club, &request).sheets {
            let who = who_of(&club, &sheet);
            let least = who.tile + club.rules.seal * 2;
            // Dashed boxes that are no step's place are places to lay a finished tile.
            let places: Vec<Rect> = blocks(&sheet)
                .filter(|(_, b)| b.role == Role::Artifact)
                .flat_map(|(_, b)| &b.items)
                .filter(|i| matches!(i, Item::Shape { stroke: Some(s), .. } if s.dash.is_some()))
                .filter_map(item_box)
                .collect();
            let wanted = match who.manner.finishing {
                Finishing::FinishedRow => board_of(&club, &sheet).steps.len(),
                _ => 0,
            };
            assert_eq!(places.len(), wanted, "{}", sheet.file_stem);
            assert!(places.iter().all(|p| p.w >= least && p.h >= least));
            // A step's place is for the finished tile, with 2 mm to put it down.
            let landing = blocks(&sheet)
                .filter(|(_, b)| b.source.is_some() && is_tile(b))
                .filter_map(|(_, b)| b.items.iter().filter_map(item_box).next());
            for place in landing {
                assert_eq!(place.w, least + Length::mm(2.0));
                assert_eq!(place.h, least + Length::mm(2.0));
            }
        }
    }
}

// ---- odd input ----

fn with_labels(label: &str) -> Club {
    let mut club = fixture::club();
    for a in &mut club.activities {
        std::sync::Arc::make_mut(a).label = label.to_owned();
    }
    club
}

#[test]
fn labels_that_do_not_fit_are_reported_and_stay_inside() {
    for label in ["long ".repeat(400), "x".repeat(2_000)] {
        let club = with_labels(&label);
        let request = all(&club);
        let laid = lay_out(&club, &request);
        check(&club, &request, &laid, "long labels");
        let sheets = ["large-print board", "tiles"];
        for sheet in sheets {
            let told = laid
                .findings
                .iter()
                .any(|f| f.code == "print.label" && f.sentence.contains(sheet));
            assert!(told, "{sheet}");
        }
    }
}

#[test]
fn one_label_that_does_not_fit_leaves_the_others_large() {
    let mut club = fixture::club();
    let slot = club.sessions[0].timetable[1].activity;
    let a = club.activities.iter_mut().find(|a| a.id == slot).unwrap();
    std::sync::Arc::make_mut(a).label = "x".repeat(300);
    let request = Request {
        kinds: vec![SheetKind::LargePrint],
        participants: vec![club.participants[0].id],
        ..all(&club)
    };
    let laid = lay_out(&club, &request);
    assert_eq!(
        laid.findings
            .iter()
            .filter(|f| f.code == "print.label")
            .count(),
        1
    );
    let pt = blocks(&laid.sheets[0])
        .flat_map(|(_, b)| texts(b))
        .find(|(_, _, t)| *t == "Hello")
        .map(|(_, pt, _)| pt);
    assert!((pt.unwrap() - 36.0).abs() < 0.1, "{pt:?}");
}

#[test]
fn signs_without_letters_and_empty_labels_are_reported() {
    let laid = |label| {
        let club = with_labels(label);
        lay_out(&club, &all(&club)).findings
    };
    assert!(laid("🏖️ beach").iter().any(|f| f.code == "print.letters"));
    assert!(laid("").iter().any(|f| f.code == "print.no-words"));
    let fine = fixture::club();
    let codes: Vec<_> = lay_out(&fine, &all(&fine))
        .findings
        .iter()
        .map(|f| f.code)
        .collect();
    assert_eq!(
        codes,
        Vec::<&str>::new(),
        "the demo club prints without a finding"
    );
}

#[test]
fn tiles_larger_than_the_paper_are_left_out_and_reported() {
    for (side, paper) in [
        (150.0, Paper::A5),
        (1_000.0, Paper::A3),
        (0.0, Paper::A4),
        (-5.0, Paper::A4),
    ] {
        let mut club = fixture::club();
        for p in &mut club.participants {
            std::sync::Arc::make_mut(p).tile = Length::mm(side);
        }
        let request = Request {
            paper,
            ..all(&club)
        };
        let laid = lay_out(&club, &request);
        check(&club, &request, &laid, "odd tiles");
        let tiles = laid.sheets.iter().any(|s| s.kind == SheetKind::Tiles);
        assert!(!tiles, "{side} mm on {paper:?}");
        assert!(
            laid.findings.iter().any(|f| f.code == "print.tile"),
            "{side}"
        );
    }
}

#[test]
fn boards_of_none_and_of_two_hundred_steps() {
    let mut club = fixture::club();
    let template = club.sessions[0].timetable.clone();
    let session = fixture::session_mut(&mut club);
    session.hand.clear();
    session.timetable = (0..200)
        .map(|i| Slot {
            id: SlotId(5_000 + i),
            ..template[i as usize % template.len()].clone()
        })
        .collect();
    let request = all(&club);
    check(&club, &request, &lay_out(&club, &request), "200 slots");
    fixture::session_mut(&mut club).timetable.clear();
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "no slots");
    assert!(laid.findings.iter().any(|f| f.code == "print.empty"));
    assert!(
        laid.sheets.iter().any(|s| s.kind == SheetKind::Tiles),
        "change and cards"
    );
}

// ---- what a participant's settings mean on paper ----

/// The first participant with a manner of their own, and their sheet of a kind.
fn with_manner(kind: SheetKind, change: impl Fn(&mut Participant)) -> (Club, Sheet) {
    let mut club = fixture::club();
    let p = std::sync::Arc::make_mut(&mut club.participants[0]);
    change(p);
    let request = Request {
        kinds: vec![kind],
        participants: vec![club.participants[0].id],
        ..all(&club)
    };
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "settings");
    let sheet = laid.sheets.into_iter().next().unwrap();
    (club, sheet)
}

fn words_on(sheet: &Sheet) -> String {
    sheet.pages.iter().map(dump).collect()
}

#[test]
fn a_surprise_tile_lies_with_the_cards_where_the_family_agreed() {
    let cards = |agreed: bool| {
        let (_, sheet) = with_manner(SheetKind::Cards, |p| {
            let mut decision = *p.profile.decision().for_owner();
            decision.surprises = agreed;
            p.profile.set_decision(decision);
        });
        words_on(&sheet).contains("Surprise")
    };
    assert_eq!((cards(false), cards(true)), (false, true));
}

#[test]
fn a_board_in_strips_says_which_strip_and_has_a_place_for_the_pointer() {
    let words = [
        (Reach::FirstThen, ["First", "Then"]),
        (Reach::NowNext, ["Now", "Next"]),
    ];
    let kinds = [SheetKind::LargePrint, SheetKind::BaseBoard];
    for (kind, (reach, words)) in kinds.into_iter().flat_map(|k| words.map(|w| (k, w))) {
        let (club, sheet) = with_manner(kind, |p| p.manner.reach = reach);
        let board = board_of(&club, &sheet);
        let strips = daystrand::plan::chunks::chunks(&club, &board, reach);
        let text = words_on(&sheet);
        for i in 1..=strips.len() {
            let title = format!("Strip {i} of {}", strips.len());
            assert!(text.contains(&title), "{title} on {kind:?}");
        }
        for word in [words[0], words[1], "Place for the pointer"] {
            assert!(text.contains(word), "{word} on {kind:?}");
        }
    }
    let (_, whole) = with_manner(SheetKind::LargePrint, |_| {});
    assert!(!words_on(&whole).contains("Strip 1"));
    let (_, tiles) = with_manner(SheetKind::Tiles, |p| p.manner.reach = Reach::Three);
    assert!(words_on(&tiles).contains("Pointers: now on"));
}

#[test]
fn a_step_that_is_a_thing_has_an_outline_and_a_line_to_pack_but_no_tile() {
    let first = fixture::club().sessions[0].timetable[0].activity;
    let object = |p: &mut Participant| {
        let thing = Mixed {
            form: Form::Object,
            thing: "the blue cup".to_owned(),
        };
        p.manner.mixed.insert(first, thing);
    };
    for kind in [SheetKind::LargePrint, SheetKind::BaseBoard] {
        let (_, sheet) = with_manner(kind, object);
        assert!(words_on(&sheet).contains("object: the blue"), "{kind:?}");
    }
    let (club, tiles) = with_manner(SheetKind::Tiles, object);
    let label = &board_of(&club, &tiles).steps[0].label;
    assert!(!words_on(&tiles).contains(&format!("\n{label}\n")));
    let (_, session) = with_manner(SheetKind::SessionSheet, object);
    let text = words_on(&session);
    assert!(text.contains("Objects for boards") && text.contains("kite: the blue cup"));
}

#[test]
fn a_board_from_right_to_left_begins_at_the_right() {
    let first_places = |run| {
        let (_, sheet) = with_manner(SheetKind::BaseBoard, |p| p.manner.run = run);
        let of_steps = blocks(&sheet).filter(|(_, b)| b.source.is_some() && is_tile(b));
        let places = of_steps.filter_map(|(_, b)| b.items.iter().filter_map(item_box).next());
        places.take(2).map(|r| r.x).collect::<Vec<_>>()
    };
    let right = first_places(Run::LeftToRight);
    assert!(right[0] < right[1]);
    let left = first_places(Run::RightToLeft);
    assert!(left[0] > left[1]);
}

#[test]
fn a_pouch_opens_twenty_millimetres_wider_than_a_finished_tile() {
    let (club, sheet) = with_manner(SheetKind::BaseBoard, |p| {
        p.manner.finishing = Finishing::Pouch;
    });
    let finished = who_of(&club, &sheet).tile + club.rules.seal * 2;
    let opening = format!("opening {:.0}", (finished + Length::mm(20.0)).to_mm());
    assert!(words_on(&sheet).contains(&opening), "{opening}");
}

#[test]
fn when_something_is_called_off_there_is_a_change_sheet_and_only_then() {
    let mut club = fixture::club();
    let session = fixture::session_mut(&mut club);
    session.hand.clear();
    let request = Request {
        kinds: vec![SheetKind::ChangeSheet],
        ..all(&club)
    };
    assert!(lay_out(&club, &request).sheets.is_empty());
    let dry = fixture::activity_with_dry(&club);
    let instead = club.activity(dry).unwrap().dry_replacement;
    let session = fixture::session_mut(&mut club);
    for slot in session.timetable.iter_mut().filter(|s| s.activity == dry) {
        slot.off = Some(daystrand::model::session::Off { instead });
    }
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "change sheet");
    let text = words_on(&laid.sheets[0]);
    let label = |id| club.activity(id).unwrap().label.as_str();
    let change = format!("{}: {} comes instead", label(dry), label(instead.unwrap()));
    for words in [&change, "1 change tile", "Story pages", "Tell first"] {
        assert!(text.contains(words), "{words} in {text}");
    }
}
