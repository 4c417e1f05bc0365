//! Pages a second, by stage: deriving boards, laying out, writing PDF; and what one change costs in
//! the running program. `cargo bench --bench pages` prints a table; nothing here is a test.

use std::sync::Arc;
use std::time::{Duration, Instant};

use daystrand::check;
use daystrand::export::pdf::{Meta, pdf};
use daystrand::layout::{InkChoice, Request, SheetKind, Turn, lay_out};
use daystrand::model::board;
use daystrand::model::club::Club;
use daystrand::model::edit::Edit;
use daystrand::model::ids::ParticipantId;
use daystrand::text::{self, Direction, Room};
use daystrand::units::Length;
use daystrand::workbench::command::{Command, Place};
use daystrand::workbench::{Workbench, demo};

/// How many participants the demo's eight are multiplied to.
const SIZES: [usize; 3] = [10, 100, 1_000];

const KINDS: [SheetKind; 3] = [SheetKind::Tiles, SheetKind::LargePrint, SheetKind::Story];

fn main() {
    println!(
        "{:<18} {:>6} {:>7} {:>10} {:>10} {:>10} {:>9} {:>9}",
        "sheet", "people", "pages", "derive ms", "lay out ms", "pdf ms", "pages/s", "MB"
    );
    for people in SIZES {
        let club = crowd(people);
        for kind in KINDS {
            row(&club, kind);
        }
    }
    println!("\none change in the running program (an edit, boards, checks, view), best of ten:");
    for people in [8, 20, 100] {
        let place = |place| millis(change(people, place));
        println!(
            "{people:>6} people: {:>8.1} ms at Boards, {:>8.1} ms at Print; checks alone {:>8.1} ms",
            place(Place::Boards),
            place(Place::Print),
            millis(checks(people)),
        );
    }
    println!("\ntwenty labels fitted: {:.2} ms", millis(labels()));
}

/// Twenty labels made to fit a tile, again and again: the best of twenty. Well under a millisecond is
/// what a window that lays out tiles while someone types can bear.
fn labels() -> Duration {
    let labels: Vec<String> = (0..20)
        .map(|i| format!("Carry the board {i} down"))
        .collect();
    let labels: Vec<&str> = labels.iter().map(String::as_str).collect();
    let room = Room {
        width: Length::mm(52.0),
        height: Length::mm(20.0),
        max_lines: 2,
        sizes: Length::pt(18.0)..=Length::pt(48.0),
        bold: true,
        direction: Direction::Auto,
    };
    let once = || {
        let start = Instant::now();
        text::fit_set(&labels, &room);
        start.elapsed()
    };
    (0..=20).map(|_| once()).min().unwrap_or_default()
}

/// The demo club with so many participants, the eight in turn, each with the hand changes of the
/// one they are made from.
fn crowd(people: usize) -> Club {
    let mut club = demo::club();
    let eight = std::mem::take(&mut club.participants);
    for i in 0..people {
        let mut p = eight[i % eight.len()].as_ref().clone();
        let from = p.id;
        p.id = ParticipantId(10_000 + i as u32);
        for session in &mut club.sessions {
            if let Some(hand) = session.hand_of(from).cloned() {
                Arc::make_mut(session).hand.insert(p.id, hand);
            }
        }
        club.participants.push(Arc::new(p));
    }
    club
}

fn row(club: &Club, kind: SheetKind) {
    let session = &club.sessions[0];
    let everyone: Vec<ParticipantId> = club.attending(session).map(|p| p.id).collect();
    let (_, derive) = timed(|| {
        let boards = everyone
            .iter()
            .map(|who| board::derive(club, session, *who));
        boards.map(|b| b.steps.len()).sum::<usize>()
    });
    let request = Request {
        session: session.id,
        participants: everyone,
        kinds: vec![kind],
        paper: club.rules.paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    let (laid, layout) = timed(|| lay_out(club, &request));
    let pages: usize = laid.sheets.iter().map(|s| s.pages.len()).sum();
    let (bytes, written) = timed(|| {
        let files = laid.sheets.iter().map(|s| {
            let meta = Meta {
                title: s.title.clone(),
                subject: None,
                author: club.name.clone(),
                date: (2027, 6, 12),
            };
            pdf(&s.pages, &meta).len()
        });
        files.sum::<usize>()
    });
    let all = derive + layout + written;
    println!(
        "{:<18} {:>6} {pages:>7} {:>10.1} {:>10.1} {:>10.1} {:>9.0} {:>9.1}",
        kind.label(),
        request.participants.len(),
        millis(derive),
        millis(layout),
        millis(written),
        pages as f64 / all.as_secs_f64(),
        bytes as f64 / 1e6,
    );
}

/// The shortest of ten changes to the club.
fn change(people: usize, place: Place) -> Duration {
    let dir = std::env::temp_dir().join(format!("daystrand-bench-{}", std::process::id()));
    let path = dir.join("crowd.daystrand");
    let prepared = std::fs::create_dir_all(&dir).is_ok()
        && daystrand::storage::save(&path, &crowd(people)).is_ok();
    let mut bench = Workbench::new(jiff::civil::date(2027, 6, 11));
    if prepared {
        drop(bench.handle(Command::Open(path)));
    }
    drop(std::fs::remove_dir_all(&dir));
    drop(bench.handle(Command::Show(place)));
    let times = (0..10).map(|i| {
        let rename = Command::Edit(Edit::ClubName(format!("Crowd {i}")));
        let (view, time) = timed(|| {
            drop(bench.handle(rename));
            bench.view().boards.len()
        });
        assert_eq!(view, people, "the crowd is open");
        time
    });
    times.min().unwrap_or_default()
}

fn checks(people: usize) -> Duration {
    let club = crowd(people);
    let session = club.sessions.first().map(AsRef::as_ref);
    (0..10)
        .map(|_| timed(|| check::run(&club, session).len()).1)
        .min()
        .unwrap_or_default()
}

fn timed<T>(work: impl FnOnce() -> T) -> (T, Duration) {
    let began = Instant::now();
    let value = std::hint::black_box(work());
    (value, began.elapsed())
}

fn millis(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}
