//! Sheets: what holds for every club, however odd, and what is printed for the demo club.

use std::collections::BTreeMap;

use daystrand::layout::grid::Grid;
use daystrand::layout::{
    InkChoice, Laid, Request, Sheet, SheetKind, Turn, ink, lay_out, plan_code,
};
use daystrand::model::board::{Board, derive};
use daystrand::model::club::{Club, Paper};
use daystrand::model::hand::{Content, HandChanges, Placement};
use daystrand::model::ids::{OwnId, SlotId, StepRef, SymbolId};
use daystrand::model::people::{Participant, Voice};
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::session::Slot;
use daystrand::page::dump::dump;
use daystrand::page::hit::{block_box, item_box};
use daystrand::page::valid::faults;
use daystrand::page::{Block, Item, Page, Role, Source};
use daystrand::units::{Length, Point, Rect};

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

// ---- what holds for every club ----

/// Numbers that look random and are the same every time (a linear congruential generator with the
/// constants of Knuth's MMIX, from memory).
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, n: u64) -> u64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % n
    }

    fn pick<T: Clone>(&mut self, of: &[T]) -> T {
        of[self.below(of.len() as u64) as usize].clone()
    }
}

const LABELS: [&str; 14] = [
    "Dig",
    "Walk to the water",
    "",
    "   ",
    "Unterwasserbeobachtungsstation",
    "🏖️ beach",
    "e\u{301}te\u{301}",
    "Ride the board with a friend and then come back",
    "a",
    "Line\nbreak",
    "\u{200b}",
    "Wwwwwwwwwwwwwwwwwwwwww",
    "قارب",
    "1",
];
const SECRET: &str = "zzprivatezz";

/// A club with everything changed at random.
fn odd_club(seed: u64) -> (Club, Request) {
    let mut n = Numbers(seed);
    let mut club = fixture::club();
    for a in &mut club.activities {
        let a = std::sync::Arc::make_mut(a);
        if n.below(2) == 0 {
            a.label = n.pick(&LABELS).to_owned();
        }
        if n.below(6) == 0 {
            a.sentences = vec![n.pick(&LABELS).to_owned(), "{I} {walk}.".repeat(30)];
        }
        if n.below(5) == 0 {
            a.symbol = SymbolId::new(n.pick(&["no_such", "", "stop"]));
        }
    }
    for p in &mut club.participants {
        let p = std::sync::Arc::make_mut(p);
        p.tile = Length::um(30_000 + n.below(120_001) as i64);
        p.text_pt = 10 + n.below(80) as u32;
        p.voice = n.pick(&Voice::ALL);
        p.helper_note = Guarded::new(Class::Helper, format!("{SECRET} note"));
        if n.below(3) == 0 {
            p.name = n.pick(&LABELS).to_owned();
        }
    }
    club.rules.seal = Length::um(n.below(8_000) as i64);
    let who: Vec<_> = club.participants.iter().map(|p| p.id).collect();
    let parts: Vec<_> = club.parts.iter().map(|p| p.id).collect();
    let activities: Vec<_> = club.activities.iter().map(|a| a.id).collect();
    let many = [0, 1, 2, 5, 9, 14, 30];
    let count = n.pick(&many);
    let session = fixture::session_mut(&mut club);
    session.timetable = (0..count)
        .map(|i| Slot {
            id: SlotId(9_000 + i),
            activity: n.pick(&activities),
            part: parts[(i as usize * parts.len() / count as usize).min(parts.len() - 1)],
            minutes: n.below(60) as u32,
        })
        .collect();
    session.hand.clear();
    for id in who {
        let mut hand = HandChanges::default();
        for i in 0..count {
            let slot = SlotId(9_000 + i);
            let content = Content {
                activity: None,
                symbol: SymbolId::new("drum"),
                label: n.pick(&LABELS).to_owned(),
            };
            match n.below(9) {
                0 => {
                    hand.not_today.insert(slot);
                }
                1 => drop(hand.replaced.insert(slot, content)),
                2 => {
                    hand.own.insert(OwnId(i), content);
                    hand.placed.push(Placement {
                        step: StepRef::Own(OwnId(i)),
                        after: vec![StepRef::Slot(slot)],
                    });
                }
                _ => {}
            }
        }
        session.hand.insert(id, hand);
    }
    let mut request = all(&club);
    request.paper = n.pick(&Paper::ALL);
    request.turn = n.pick(&[Turn::AsSuits, Turn::Portrait, Turn::Landscape]);
    (club, request)
}

#[test]
fn whatever_the_club_the_sheets_are_sound() {
    for seed in 0..40 {
        let (club, request) = odd_club(seed);
        let laid = lay_out(&club, &request);
        check(
            &club,
            &request,
            &laid,
            &format!("seed {seed}, {:?}", request.paper),
        );
    }
}

#[test]
fn the_demo_club_is_sound_on_every_paper() {
    let club = fixture::club();
    for paper in Paper::ALL {
        for turn in [Turn::AsSuits, Turn::Portrait, Turn::Landscape] {
            let request = Request {
                paper,
                turn,
                ..all(&club)
            };
            let laid = lay_out(&club, &request);
            check(&club, &request, &laid, &format!("demo, {paper:?} {turn:?}"));
        }
    }
}

/// All that holds for every sheet of every club.
fn check(club: &Club, request: &Request, laid: &Laid, what: &str) {
    let mut stems = BTreeMap::new();
    for sheet in &laid.sheets {
        let what = format!("{what}, {}", sheet.file_stem);
        assert!(
            stems.insert(sheet.file_stem.clone(), ()).is_none(),
            "{what} twice"
        );
        assert!(!sheet.pages.is_empty() && !sheet.title.is_empty());
        let class = if sheet.kind.is_personal() {
            Class::Public
        } else {
            Class::Coordinator
        };
        for page in &sheet.pages {
            assert_eq!(page.class, class, "{what}");
            assert_eq!(faults(page), Vec::<String>::new(), "{what}");
            text_keeps_off_the_edge(page, &what);
            words_do_not_collide(page, &what);
            if class == Class::Public {
                assert!(!dump(page).contains(SECRET), "{what}");
                assert!(!page.title.contains(SECRET), "{what}");
            }
        }
        if sheet.kind.is_personal() {
            every_step_is_shown_once(club, sheet, &what);
            letters_are_large_enough(club, sheet, &what);
        }
        if matches!(sheet.kind, SheetKind::Tiles | SheetKind::Cards) {
            tiles_are_true(club, request, sheet, &what);
        }
    }
    let mut sorted = laid.findings.clone();
    sorted.sort();
    sorted.dedup();
    assert_eq!(sorted, laid.findings, "{what}: sorted, each once");
    for f in &laid.findings {
        assert!(f.sentence.ends_with('.') && f.hint.ends_with('.'), "{f:?}");
    }
}

fn text_keeps_off_the_edge(page: &Page, what: &str) {
    // Office printers leave up to 4 mm white; small ink-jets a little more at the foot.
    let edge = Length::mm(4.0);
    let inside = Rect::new(Point::default(), page.size).shrink(edge);
    for block in &page.blocks {
        for item in &block.items {
            if let Item::Text { at, line, .. } = item {
                let right = at.x + line.width;
                let fine = at.x >= inside.x && right <= inside.right();
                assert!(fine, "{what}: {:?} too near the edge", line.text);
                assert!(
                    at.y >= inside.y && at.y <= inside.bottom(),
                    "{what}: {:?}",
                    line.text
                );
            }
        }
    }
}

/// The heart of a line: from the baseline up to the height of a small letter.
fn heart(item: &Item) -> Option<(Rect, &str)> {
    let Item::Text { at, line, .. } = item else {
        return None;
    };
    let size = line.runs.iter().map(|(_, r)| r.size).max()?;
    let h = size.scale(0.5);
    let rect = Rect {
        x: at.x,
        y: at.y - h,
        w: line.width,
        h,
    };
    Some((rect, line.text.as_str()))
}

fn words_do_not_collide(page: &Page, what: &str) {
    let all: Vec<_> = page
        .blocks
        .iter()
        .flat_map(|b| b.items.iter().filter_map(heart))
        .collect();
    for (i, (a, x)) in all.iter().enumerate() {
        for (b, y) in &all[i + 1..] {
            assert!(
                !a.overlaps(*b),
                "{what}: {x:?} over {y:?} on {}",
                page.title
            );
        }
    }
    for (a, x) in &all {
        for symbol in page.blocks.iter().flat_map(|b| &b.items) {
            if let Item::Symbol { rect, .. } = symbol {
                let over = a.overlaps(rect.middle_square());
                assert!(!over, "{what}: {x:?} over a picture on {}", page.title);
            }
        }
    }
}

fn every_step_is_shown_once(club: &Club, sheet: &Sheet, what: &str) {
    if sheet.kind == SheetKind::Cards {
        return;
    }
    let shown: Vec<Source> = blocks(sheet)
        .filter(|(_, b)| matches!(b.role, Role::Figure { .. }))
        .filter_map(|(_, b)| b.source)
        .collect();
    let steps: Vec<Source> = board_of(club, sheet)
        .steps
        .iter()
        .map(|s| Source::Step(s.at))
        .collect();
    assert_eq!(shown, steps, "{what}: each step once, in order");
}

fn letters_are_large_enough(club: &Club, sheet: &Sheet, what: &str) {
    let least = match sheet.kind {
        SheetKind::LargePrint | SheetKind::Story => 18.0,
        SheetKind::Tiles | SheetKind::Cards => 14.0,
        _ => 12.0,
    };
    let labels: Vec<String> = board_of(club, sheet)
        .steps
        .into_iter()
        .map(|s| s.label)
        .collect();
    let mut sizes = BTreeMap::new();
    for (_, block) in blocks(sheet).filter(|(_, b)| b.source.is_some() && b.role == Role::Paragraph)
    {
        for (_, pt, text) in texts(block) {
            let is_number = text.chars().all(|c| c.is_ascii_digit());
            if !is_number {
                assert!(pt >= least - 0.01, "{what}: {text:?} at {pt} pt");
                if labels.iter().any(|l| l == text) {
                    *sizes.entry((pt * 100.0) as i64).or_insert(0) += 1;
                }
            }
        }
    }
    // One size for the set; a label that does not fit at all may be smaller.
    assert!(sizes.len() <= 2, "{what}: {sizes:?}");
}

fn tiles_are_true(club: &Club, request: &Request, sheet: &Sheet, what: &str) {
    let size = sheet.pages[0].size;
    let side = who_of(club, sheet).tile;
    let is_tile = |b: &Block| matches!(&b.role, Role::Figure { alt } if !alt.starts_with("Mark"));
    let tiles = blocks(sheet).filter(|(_, b)| is_tile(b)).count();
    let grid = Grid::on(size, side, tiles).unwrap();
    assert_eq!(grid.cell(0).w, side, "{what}: true to size");
    assert!(size == request.paper.size() || size == request.paper.size().turned());
    for page in &sheet.pages {
        let mut used = Vec::new();
        for block in &page.blocks {
            if !matches!(block.role, Role::Figure { .. }) {
                continue;
            }
            let area = block_box(block).unwrap();
            let cell = (0..grid.len())
                .map(|i| grid.cell(i))
                .find(|c| c.encloses(area));
            let Some(cell) = cell else { continue };
            assert!(!used.contains(&cell), "{what}: two tiles in one place");
            used.push(cell);
        }
        assert!(!used.is_empty(), "{what}: a sheet without tiles");
        for block in &page.blocks {
            for (area, _, text) in texts(block) {
                let touched: Vec<_> = used.iter().filter(|c| c.overlaps(heart_of(area))).collect();
                assert!(touched.len() <= 1, "{what}: {text:?} over a cut");
                for cell in touched {
                    let inside = area.x >= cell.x && area.right() <= cell.right();
                    let bottom = area.bottom() <= cell.bottom() + Length::mm(0.3);
                    assert!(inside && bottom, "{what}: {text:?} leaves its tile");
                }
            }
            for item in &block.items {
                if let Item::Shape {
                    stroke: Some(s), ..
                } = item
                    && s.colour == ink::INK
                {
                    let area = item_box(item).unwrap();
                    let over = used.iter().any(|c| c.overlaps(area));
                    assert!(!over, "{what}: a cut mark in a tile");
                }
            }
        }
    }
}

/// The box of a line without the free space above and below it.
fn heart_of(area: Rect) -> Rect {
    Rect {
        y: area.y + area.h.scale(0.3),
        h: area.h.scale(0.4),
        ..area
    }
}

// ---- single facts ----

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
        stems.contains(&"2027-06-12-kite-2-tiles"),
        "two with one mark get a number"
    );
    assert!(stems.contains(&"2027-06-12-session"));
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
    assert_eq!(of_second.count(), 5, "each sheet once");
    request.session = daystrand::model::ids::SessionId(99_999);
    assert!(lay_out(&club, &request).sheets.is_empty());
}

#[test]
fn notes_for_helpers_stand_on_the_coordinators_sheet_only() {
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
            sheet.kind == SheetKind::SessionSheet,
            "{}",
            sheet.file_stem
        );
    }
}

/// Nothing in layout opens what is guarded but the flow, which knows its readers.
#[test]
fn only_the_flow_reads_what_is_guarded() {
    let dir = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src/layout");
    for entry in std::fs::read_dir(dir).unwrap() {
        let path = entry.unwrap().path();
        let code = std::fs::read_to_string(&path).unwrap();
        let opens = code.contains(".for_page(") || code.contains(".for_owner(");
        assert_eq!(opens, path.ends_with("flow.rs"), "{}", path.display());
    }
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
    assert!(changed(&|c| fixture::session_mut(c).timetable.swap(0, 1)));
    assert!(changed(&|c| drop(fixture::session_mut(c).timetable.pop())));
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
    let club = fixture::club();
    let request = Request {
        kinds: vec![SheetKind::Tiles],
        participants: vec![club.participants[0].id],
        ..all(&club)
    };
    let laid = lay_out(&club, &request);
    let sheet = &laid.sheets[0];
    let said: Vec<String> = blocks(sheet)
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
            assert_eq!(
                places.len(),
                board_of(&club, &sheet).steps.len(),
                "{}",
                sheet.file_stem
            );
            assert!(places.iter().all(|p| p.w >= least && p.h >= least));
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
    assert!(laid.sheets.iter().any(|s| s.kind == SheetKind::Cards));
}
