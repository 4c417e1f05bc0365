//! What holds for every sheet of every club, and clubs changed at random to try it on.

use std::collections::{BTreeMap, BTreeSet};

use daystrand::layout::{Laid, Request, Sheet, SheetKind, Turn, lay_out};
use daystrand::model::board::{Step, StepState};
use daystrand::model::club::{Club, Paper};
use daystrand::model::craft::{Craft, Cutting, Flip, Sorting, TileShape, Work};
use daystrand::model::hand::{Content, HandChanges, Placement};
use daystrand::model::ids::{OwnId, SlotId, SongId, StepRef, SymbolId};
use daystrand::model::manner::{Finishing, Form, Mixed, Reach, Run};
use daystrand::model::people::{Participant, Voice};
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::profile::Field;
use daystrand::model::session::{Off, Slot};
use daystrand::model::song::Song;
use daystrand::page::dump::dump;
use daystrand::page::valid::faults;
use daystrand::page::{Item, Page, Role, Source};
use daystrand::story;
use daystrand::units::{Length, Point, Rect};

use super::{all, blocks, board_of, making, texts, who_of};
use crate::fixture;

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
pub(super) const SECRET: &str = "zzprivatezz";

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
    let offered: Vec<_> = club.activities.iter().map(|a| a.id).collect();
    for p in &mut club.participants {
        let p = std::sync::Arc::make_mut(p);
        p.tile = Length::um(30_000 + n.below(120_001) as i64);
        p.text_pt = 10 + n.below(80) as u32;
        p.voice = n.pick(&Voice::ALL);
        p.manner.form = n.pick(&Form::ALL);
        p.manner.reach = n.pick(&Reach::ALL);
        p.manner.run = n.pick(&Run::ALL);
        p.manner.finishing = n.pick(&Finishing::ALL);
        for id in &offered {
            if n.below(4) == 0 {
                let (form, thing) = (n.pick(&Form::ALL), n.pick(&LABELS).to_owned());
                p.manner.mixed.insert(*id, Mixed { form, thing });
            }
        }
        if n.below(3) == 0 {
            p.standing.cards.push(Content {
                activity: None,
                symbol: SymbolId::new("drum"),
                label: n.pick(&LABELS).to_owned(),
            });
        }
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
            leads: Default::default(),
            options: (0..[0, 0, 0, 2, 3][n.below(5) as usize])
                .map(|_| Content {
                    activity: Some(n.pick(&activities)),
                    symbol: SymbolId::new("drum"),
                    label: n.pick(&LABELS).to_owned(),
                })
                .collect(),
            off: (n.below(6) == 0).then(|| Off {
                instead: (n.below(2) == 0).then(|| n.pick(&activities)),
            }),
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
                    hand.not_today.insert(StepRef::Slot(slot), None);
                }
                1 => drop(hand.replaced.insert(StepRef::Slot(slot), content)),
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
    for p in &mut club.participants {
        let p = std::sync::Arc::make_mut(p);
        for field in Field::ALL {
            let text = n.pick(&LABELS).repeat(n.below(4) as usize);
            let text = match field.class() {
                Class::Coordinator => format!("{SECRET} {text}"),
                _ => text,
            };
            p.profile.set(field, text);
        }
    }
    club.songs = (0..n.below(4))
        .map(|i| Song {
            id: SongId(90_000 + i as u32),
            words: (0..n.below(60))
                .map(|_| n.pick(&LABELS).to_owned() + "\n")
                .collect(),
            activity: (n.below(2) == 0).then(|| n.pick(&offered)),
            ..Song::new(n.pick(&LABELS))
        })
        .map(Into::into)
        .collect();
    // Numbers of their own, so that the clubs are otherwise what they were.
    let mut makes = Numbers(seed ^ 0x7117);
    for p in &mut club.participants {
        let p = std::sync::Arc::make_mut(p);
        p.shape = makes.pick(&TileShape::ALL);
        p.shared_tiles = makes.below(4) == 0;
    }
    club.rules.craft = Craft {
        work: makes.pick(&[Work::CutLaminateCut, Work::OneSheet]),
        cutting: makes.pick(&[Cutting::Trimmer, Cutting::Scissors]),
        pouch: makes.pick(&Paper::ALL),
        sorting: makes.pick(&[Sorting::ByParticipant, Sorting::ThroughTheStack]),
        backs: makes.pick(&[None, Some(Flip::Long), Some(Flip::Short)]),
        sizes_apart: makes.below(3) == 0,
        ring: makes.pick(&[None, Some(Length::mm(5.0))]),
        spares: makes.below(2) == 0,
        blanks: makes.below(3) as u32,
        ..Craft::default()
    };
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
pub(super) fn check(club: &Club, request: &Request, laid: &Laid, what: &str) {
    let mut stems = BTreeMap::new();
    for sheet in &laid.sheets {
        let what = format!("{what}, {}", sheet.file_stem);
        assert!(
            stems.insert(sheet.file_stem.clone(), ()).is_none(),
            "{what} twice"
        );
        assert!(!sheet.pages.is_empty() && !sheet.title.is_empty());
        let class = class_of(sheet.kind);
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
        let shows_steps = matches!(
            sheet.kind,
            SheetKind::LargePrint | SheetKind::Tiles | SheetKind::BaseBoard | SheetKind::Story
        );
        if shows_steps && sheet.participant.is_some() {
            every_step_is_shown_once(club, sheet, &what);
            letters_are_large_enough(club, sheet, &what);
        }
        if matches!(sheet.kind, SheetKind::Tiles | SheetKind::Cards) {
            making::tiles_are_true(club, request, sheet, &what);
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

/// Who may see a kind of sheet: what hangs or is given away everyone, the helper's card one helper,
/// what names all or tells of times and people the coordinator.
pub(super) const fn class_of(kind: SheetKind) -> Class {
    match kind {
        SheetKind::LargePrint
        | SheetKind::Tiles
        | SheetKind::BaseBoard
        | SheetKind::Cards
        | SheetKind::Story
        | SheetKind::Booklet
        | SheetKind::StoryPage
        | SheetKind::GroupWall
        | SheetKind::Words
        | SheetKind::PrintRun
        | SheetKind::CutList
        | SheetKind::PouchGuide
        | SheetKind::PackList
        | SheetKind::Labels
        | SheetKind::TestPage => Class::Public,
        SheetKind::HelperCard => Class::Helper,
        SheetKind::SessionSheet
        | SheetKind::ChangeSheet
        | SheetKind::Roll
        | SheetKind::LookList
        | SheetKind::PictureList
        | SheetKind::TodaySlip => Class::Coordinator,
    }
}

fn text_keeps_off_the_edge(page: &Page, what: &str) {
    // The page that tests how near the edge a printer reaches, and what lies under a pouch that is
    // larger than its paper, keep off it too.
    let edge = Length::mm(5.0);
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
    let mut shown: Vec<Source> = blocks(sheet).filter_map(|(_, b)| b.source).collect();
    shown.dedup();
    let who = who_of(club, sheet);
    // A real thing has no tile.
    let has = |s: &Step| sheet.kind != SheetKind::Tiles || s.form != Form::Object;
    let steps: Vec<Source> = board_of(club, sheet)
        .steps
        .iter()
        .filter(|s| has(s) && (said(club, who, s) || sheet.kind != SheetKind::Tiles))
        .map(|s| Source::Step(s.at))
        .collect();
    assert_eq!(shown, steps, "{what}: each step once, in order");
}

/// Whether a step is seen at all: words alone may be none.
fn said(club: &Club, who: &Participant, step: &Step) -> bool {
    let sentence = || story::sentence(club, step, who);
    let words = match step.form {
        Form::Sentence if step.state != StepState::NotToday => sentence(),
        Form::Word | Form::Sentence => None,
        _ => return true,
    };
    let words = words.unwrap_or_else(|| step.label.clone());
    words.chars().any(|c| !c.is_whitespace() && c != '\u{200b}')
}

fn letters_are_large_enough(club: &Club, sheet: &Sheet, what: &str) {
    let least = match sheet.kind {
        SheetKind::LargePrint | SheetKind::Story => 18.0,
        SheetKind::Tiles | SheetKind::Cards => 14.0,
        _ => 12.0,
    };
    let steps = board_of(club, sheet).steps;
    let mut sizes = BTreeSet::new();
    for (_, block) in blocks(sheet).filter(|(_, b)| b.source.is_some() && b.role == Role::Paragraph)
    {
        let step = steps
            .iter()
            .find(|s| block.source == Some(Source::Step(s.at)));
        for (_, pt, text) in texts(block) {
            let is_number = text.chars().all(|c| c.is_ascii_digit());
            if is_number {
                continue;
            }
            assert!(pt >= least - 0.01, "{what}: {text:?} at {pt} pt");
            if let Some(step) = step.filter(|s| s.label == text) {
                // Words alone are a set of their own, as are sentences.
                let set = match step.form {
                    Form::Word => 1,
                    Form::Sentence => 2,
                    _ => 0,
                };
                sizes.insert((set, (pt * 100.0) as i64));
            }
        }
    }
    // One size for a set, a little smaller in a further script; a label that does not fit at all
    // may be smaller. The base board's words are covered by the tiles and need no set.
    for set in 0..3 {
        let count = sizes.iter().filter(|(s, _)| *s == set).count();
        let fine = count <= 3 || sheet.kind == SheetKind::BaseBoard;
        assert!(fine, "{what}: {sizes:?}");
    }
}

/// The box of a line without the free space above and below it.
pub(super) fn heart_of(area: Rect) -> Rect {
    Rect {
        y: area.y + area.h.scale(0.3),
        h: area.h.scale(0.4),
        ..area
    }
}
