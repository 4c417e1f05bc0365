//! Tiles and cards on common sheets, and the guides to make them.

use std::collections::BTreeSet;
use std::sync::Arc;

use daystrand::layout::grid::MARGIN;
use daystrand::layout::{Counts, Laid, Request, Sheet, SheetKind, Turn, ink, lay_out};
use daystrand::model::club::{Club, Paper};
use daystrand::model::craft::{Cutting, Flip, Sorting, TileShape, Work, pouch_size};
use daystrand::model::edit::{Edit, apply};
use daystrand::model::stock::{Loss, StockEdit};
use daystrand::page::dump::dump;
use daystrand::page::hit::item_box;
use daystrand::page::{Block, Item, Page, Role};
use daystrand::units::path::Seg;
use daystrand::units::{Length, Point, Rect, Size};

use super::sound::{check, heart_of};
use super::{all, blocks, texts, words_on};
use crate::fixture;

/// The outlines of tiles and cards on a page: closed hairlines in the colour of cut lines.
fn outlines(page: &Page) -> Vec<Rect> {
    let drawn = page.blocks.iter().filter(|b| b.role == Role::Artifact);
    let closed = drawn.flat_map(|b| &b.items).filter(|item| {
        matches!(item, Item::Shape { path, stroke: Some(s), .. }
            if s.colour == ink::RULE && s.width == ink::HAIRLINE
                && path.segs.iter().any(|s| matches!(s, Seg::Close)))
    });
    closed.filter_map(item_box).collect()
}

/// Size of an outline: printed size.
fn size_of(outline: Rect) -> Size {
    outline.size()
}

fn is_back(page: &Page) -> bool {
    page.title.starts_with("Back of")
}

/// Every tile has one of the sizes that are wanted, all lie within the margins and none over another;
/// words keep inside theirs, cut marks outside all.
pub(super) fn tiles_are_true(club: &Club, request: &Request, sheet: &Sheet, what: &str) {
    let sizes: Vec<Size> = club.participants.iter().map(|p| p.tile_size()).collect();
    let several = |s: Size, of: Size| {
        let times = |a: Length, b: Length| a.to_um() % b.to_um() == 0 && a >= b;
        times(s.w, of.w) && times(s.h, of.h)
    };
    for page in sheet.pages.iter().filter(|p| !is_back(p)) {
        let size = page.size;
        assert!(size == request.paper.size() || size == request.paper.size().turned());
        let tiles = outlines(page);
        assert!(!tiles.is_empty(), "{what}: a sheet without tiles");
        let room = Rect::new(Point::default(), size).shrink(MARGIN - ink::HAIRLINE);
        for (i, tile) in tiles.iter().enumerate() {
            let printed = size_of(*tile);
            let known = sizes.iter().any(|s| several(printed, *s));
            assert!(known, "{what}: {printed:?} is nobody's");
            assert!(room.encloses(*tile), "{what}: {tile:?} in the margin");
            for other in &tiles[i + 1..] {
                let apart = !tile
                    .shrink(ink::HAIRLINE)
                    .overlaps(other.shrink(ink::HAIRLINE));
                assert!(apart, "{what}: two tiles in one place");
            }
        }
        for block in &page.blocks {
            words_keep_inside(block, &tiles, what);
            for item in block.items.iter().filter(|_| block.role == Role::Artifact) {
                if let Item::Shape {
                    stroke: Some(s), ..
                } = item
                    && s.colour == ink::INK
                {
                    let mark = item_box(item).unwrap();
                    let over = tiles.iter().any(|t| t.overlaps(mark));
                    assert!(!over, "{what}: a cut mark in a tile");
                }
            }
        }
    }
}

fn words_keep_inside(block: &Block, tiles: &[Rect], what: &str) {
    for (area, pt, text) in texts(block) {
        let touched: Vec<_> = tiles
            .iter()
            .filter(|c| c.overlaps(heart_of(area)))
            .collect();
        assert!(touched.len() <= 1, "{what}: {text:?} over a cut");
        for tile in touched {
            let inside = area.x >= tile.x && area.right() <= tile.right();
            let bottom = area.bottom() <= tile.bottom() + Length::mm(0.3);
            assert!(inside && bottom, "{what}: {text:?} leaves its tile");
            let is_photo = text == "Photograph" || text.ends_with(" mm");
            let large = pt >= 13.99 || block.role != Role::Paragraph || is_photo;
            assert!(large, "{what}: {text:?} at {pt} pt on a tile");
        }
    }
}

fn counts(club: &Club, request: &Request) -> Counts {
    lay_out(club, request).counts.unwrap()
}

fn of(laid: &Laid, kind: SheetKind) -> &Sheet {
    laid.sheets.iter().find(|s| s.kind == kind).unwrap()
}

/// Tiles, cards and everything about them for everyone in a session.
fn making(club: &Club, session: usize) -> Request {
    Request {
        session: club.sessions[session].id,
        kinds: vec![
            SheetKind::Tiles,
            SheetKind::Cards,
            SheetKind::PrintRun,
            SheetKind::CutList,
            SheetKind::PouchGuide,
            SheetKind::PackList,
            SheetKind::Labels,
        ],
        ..all(club)
    }
}

// ---- few sheets ----

/// No more sheets than whole sheets of paper would hold by area, and one for each size.
#[test]
fn an_evening_takes_the_fewest_sheets() {
    for session in 0..2 {
        for paper in [Paper::A4, Paper::Letter] {
            let club = fixture::club();
            let request = Request {
                paper,
                ..making(&club, session)
            };
            let laid = lay_out(&club, &request);
            let tiles = of(&laid, SheetKind::Tiles);
            let outlines: Vec<Rect> = tiles.pages.iter().flat_map(outlines).collect();
            let room = Rect::new(Point::default(), paper.size()).shrink(MARGIN);
            let um2 = |s: Size| i128::from(s.w.to_um()) * i128::from(s.h.to_um());
            let area: i128 = outlines.iter().map(|t| um2(size_of(*t))).sum();
            let least = (area + um2(room.size()) - 1) / um2(room.size());
            let mut sizes: Vec<_> = outlines
                .iter()
                .map(|t| size_of(*t))
                .map(|s| (s.w, s.h))
                .collect();
            sizes.sort_unstable();
            sizes.dedup();
            let most = usize::try_from(least).unwrap() + sizes.len();
            assert!(tiles.pages.len() <= most, "{} of {most}", tiles.pages.len());
            let counts = laid.counts.as_ref().unwrap();
            assert_eq!(counts.sheets, tiles.pages.len());
            assert_eq!(counts.printed, outlines.len());
        }
    }
}

/// Tiles of one size lie in a plain grid, and a plain grid of c by r has c + 1 and r + 1 cuts.
#[test]
fn tiles_of_one_size_take_the_plain_grid_and_its_cuts() {
    let mut club = fixture::club();
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        p.tile = Length::mm(60.0);
        p.shape = TileShape::Square;
        p.manner = Default::default();
    }
    fixture::session_mut(&mut club).hand.clear();
    let counts = counts(&club, &making(&club, 0));
    // 3 by 4 on a sheet of A4.
    assert_eq!(counts.sheets, counts.printed.div_ceil(12));
    let full = counts.printed / 12 * (4 + 5);
    assert!(counts.first_cuts >= full && counts.first_cuts <= full + 9);
    assert_eq!(
        counts.pouches,
        counts.printed.div_ceil(12),
        "finished 68 mm, 3 by 4"
    );
    assert_eq!(
        counts.cut_seconds,
        (counts.first_cuts + counts.second_cuts) as u64 * 15
    );
}

/// Sizes of ISO 216 and ISO/IEC 7810 on A4 and Letter with 10 mm margins, upright or across, whichever
/// holds more; computed by the whole part of room by size on each axis.
#[test]
fn each_shape_lies_whichever_way_holds_more() {
    for (shape, paper, each) in [
        (TileShape::A7, Paper::A4, 4),
        (TileShape::A6, Paper::A4, 2),
        (TileShape::Card, Paper::A4, 10),
        (TileShape::Card, Paper::Letter, 9),
        (TileShape::A7, Paper::Letter, 4),
    ] {
        let mut club = fixture::club();
        for p in &mut club.participants {
            let p = Arc::make_mut(p);
            p.shape = shape;
            p.manner = Default::default();
        }
        let session = fixture::session_mut(&mut club);
        session.hand.clear();
        for slot in &mut session.timetable {
            slot.options.clear();
        }
        for p in &mut club.participants {
            Arc::make_mut(p).standing.waiting = None;
        }
        let request = Request {
            paper,
            ..making(&club, 0)
        };
        let laid = lay_out(&club, &request);
        check(&club, &request, &laid, shape.label());
        let counts = laid.counts.unwrap();
        assert_eq!(
            counts.sheets,
            counts.printed.div_ceil(each),
            "{shape:?} on {paper:?}"
        );
    }
}

/// Each size on sheets of its own, where the club likes that: more sheets, fewer cuts.
#[test]
fn sizes_apart_take_more_sheets_and_fewer_cuts() {
    let mut club = fixture::club();
    let together = counts(&club, &making(&club, 0));
    club.rules.craft.sizes_apart = true;
    let request = making(&club, 0);
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "apart");
    for page in &of(&laid, SheetKind::Tiles).pages {
        let mut tiles: Vec<_> = outlines(page).iter().map(|t| (t.w, t.h)).collect();
        tiles.sort_unstable();
        tiles.dedup();
        assert_eq!(tiles.len(), 1, "{}", page.title);
    }
    let apart = laid.counts.unwrap();
    assert!(
        apart.sheets > together.sheets,
        "{} {}",
        apart.sheets,
        together.sheets
    );
    assert!(apart.first_cuts < together.first_cuts);
}

/// A card that hangs on a ring has a tab of clear film: hole and a seal on either side.
#[test]
fn cards_on_a_ring_have_a_tab_of_film() {
    let mut club = fixture::club();
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        p.tile = Length::mm(60.0);
        p.manner = Default::default();
    }
    let plain = counts(&club, &making(&club, 0));
    club.rules.craft.ring = Some(Length::mm(5.0));
    let request = making(&club, 0);
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "ring");
    let counts = laid.counts.clone().unwrap();
    assert_eq!(
        (counts.sheets, counts.printed),
        (plain.sheets, plain.printed)
    );
    assert!(counts.pouches >= plain.pouches);
    let run = words_on(of(&laid, SheetKind::PrintRun));
    assert!(run.contains("Never punch through"), "{run}");
    // The hole is round and has its seal all around: 4 mm of film to the paper below it.
    let guide = of(&laid, SheetKind::PouchGuide);
    let mut holes = 0;
    for page in &guide.pages {
        let shapes = page.blocks.iter().flat_map(|b| &b.items);
        let boxes: Vec<Rect> = shapes.filter_map(item_box).collect();
        let is_hole = |r: &&Rect| r.size() == Size::mm(5.0, 5.0);
        let papers: Vec<&Rect> = boxes
            .iter()
            .filter(|r| r.w > Length::mm(30.0) && r.h > Length::mm(20.0))
            .collect();
        for hole in boxes.iter().filter(is_hole) {
            let below = papers
                .iter()
                .filter(|p| p.x < hole.x && p.right() > hole.right());
            let gap = below
                .map(|p| p.y - hole.bottom())
                .filter(|g| *g >= Length::ZERO)
                .min();
            assert_eq!(gap, Some(club.rules.seal));
            holes += 1;
        }
    }
    assert!(holes > 10, "{holes}");
}

// ---- ways of working ----

#[test]
fn waterproof_sheets_have_no_film_no_pouches_and_smaller_places() {
    let mut club = fixture::club();
    let before = lay_out(&club, &making(&club, 0));
    club.rules.craft.work = Work::OneSheet;
    let request = Request {
        kinds: [making(&club, 0).kinds, vec![SheetKind::BaseBoard]].concat(),
        ..making(&club, 0)
    };
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "waterproof");
    let (was, is) = (before.counts.unwrap(), laid.counts.clone().unwrap());
    assert!(was.pouches > 0 && was.second_cuts > 0);
    assert_eq!((is.pouches, is.second_cuts), (0, 0));
    assert!(laid.sheets.iter().all(|s| s.kind != SheetKind::PouchGuide));
    let run = words_on(of(&laid, SheetKind::PrintRun));
    assert!(
        run.contains("waterproof synthetic") && !run.contains("Laminat"),
        "{run}"
    );
    let board = words_on(of(&laid, SheetKind::BaseBoard));
    assert!(!board.contains("with film"), "{board}");
}

#[test]
fn scissors_need_no_numbers_on_the_sheets() {
    let mut club = fixture::club();
    let digits = |club: &Club| {
        let laid = lay_out(club, &making(club, 0));
        let tiles = of(&laid, SheetKind::Tiles);
        let small = blocks(tiles).filter(|(_, b)| b.role == Role::Artifact);
        small
            .map(|(_, b)| texts(b).filter(|(.., t)| t.parse::<u32>().is_ok()).count())
            .sum::<usize>()
    };
    assert!(digits(&club) > 20);
    club.rules.craft.cutting = Cutting::Scissors;
    assert_eq!(digits(&club), 0);
}

/// The back of a tile lies behind its face, whichever edge the printer turns over.
#[test]
fn backs_lie_behind_their_fronts() {
    for flip in [Flip::Long, Flip::Short] {
        for turn in [Turn::Portrait, Turn::Landscape] {
            let mut club = fixture::club();
            club.rules.craft.backs = Some(flip);
            let request = Request {
                turn,
                ..making(&club, 0)
            };
            let laid = lay_out(&club, &request);
            check(&club, &request, &laid, "backs");
            let tiles = of(&laid, SheetKind::Tiles);
            let mut backs = 0;
            for pair in tiles.pages.chunks(2) {
                let [front, back] = pair else {
                    panic!("a front without a back");
                };
                assert!(!is_back(front) && is_back(back));
                for tile in outlines(front) {
                    let over_x = (front.size.h >= front.size.w) == (flip == Flip::Long);
                    let centre = tile.center();
                    let behind = match over_x {
                        true => Point::new(front.size.w - centre.x, centre.y),
                        false => Point::new(centre.x, front.size.h - centre.y),
                    };
                    // What stands there is as far left as right of the middle.
                    let near = back
                        .blocks
                        .iter()
                        .flat_map(|b| &b.items)
                        .filter_map(item_box);
                    let found = near.filter(|b| {
                        let d = b.center().x - behind.x;
                        let inside = Rect::new(behind.moved(-tile.w / 2, -tile.h / 2), tile.size());
                        inside.encloses(*b) && d.to_um().abs() <= 50
                    });
                    assert!(
                        found.count() >= 1,
                        "{flip:?} {turn:?}: nothing behind {tile:?}"
                    );
                    backs += 1;
                }
                let says = dump(back);
                for p in &club.participants {
                    assert!(!says.contains(&p.name), "{says}");
                }
            }
            assert!(backs > 100);
        }
    }
}

/// Cut as a stack, each pile is in order: what follows in a pile lies on the next sheet.
#[test]
fn through_the_stack_the_same_pictures_lie_on_one_another() {
    let mut club = fixture::club();
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        p.tile = Length::mm(60.0);
        p.shape = TileShape::Square;
        p.manner = Default::default();
    }
    fixture::session_mut(&mut club).hand.clear();
    club.rules.craft.sorting = Sorting::ThroughTheStack;
    let request = making(&club, 0);
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "stack");
    let first = |page: &Page| {
        let mut figures = page.blocks.iter().filter_map(|b| match &b.role {
            Role::Figure { alt } if !alt.starts_with("Mark") => Some(alt.clone()),
            _ => None,
        });
        figures.next().unwrap()
    };
    let piles: Vec<String> = of(&laid, SheetKind::Tiles)
        .pages
        .iter()
        .map(first)
        .collect();
    let same = piles.windows(2).filter(|w| w[0] == w[1]).count();
    assert!(same >= piles.len() / 2, "{piles:?}");
    let list = words_on(of(&laid, SheetKind::CutList));
    assert!(list.contains("as a stack"), "{list}");
}

// ---- guides ----

/// Printed and in stock add up to what goes into the pouches, on the list and in the counts.
#[test]
fn totals_of_the_pack_list_agree() {
    let mut club = fixture::club();
    club.rules.craft.spares = true;
    club.rules.craft.blanks = 2;
    let request = making(&club, 0);
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "pack list");
    let counts = laid.counts.as_ref().unwrap();
    let list = words_on(of(&laid, SheetKind::PackList));
    let all = format!(
        "{} in all pouches: {} printed now, 0 in stock.",
        counts.needed, counts.printed
    );
    assert!(list.contains(&all), "{all} in {list}");
    assert_eq!(counts.needed, counts.printed);
    assert!(counts.spares > 5, "{}", counts.spares);
    let boxes = of(&laid, SheetKind::PackList)
        .pages
        .iter()
        .flat_map(|p| &p.blocks);
    let boxes = boxes.filter(|b| b.role == Role::Artifact && b.items.len() == 1);
    let tick = Size::mm(3.6, 3.6);
    let boxes = boxes
        .filter_map(|b| item_box(&b.items[0]))
        .filter(|b| b.size() == tick);
    let things =
        list.lines().filter(|l| l.contains("object")).count() - 1 - list.matches("; ").count();
    assert!(
        boxes.count() >= counts.needed + things.min(1),
        "a box for each"
    );
    for p in &club.participants {
        assert!(!list.contains(&p.name) || p.name == "Mila", "{}", p.name);
    }
}

/// In the pouch guide a tile has a seal to the edge of the pouch, and two to its neighbour.
#[test]
fn tiles_lie_in_pouches_with_their_seals() {
    let club = fixture::club();
    let request = making(&club, 0);
    let laid = lay_out(&club, &request);
    let guide = of(&laid, SheetKind::PouchGuide);
    let seal = club.rules.seal;
    let pouch = pouch_size(club.rules.craft.pouch);
    let mut places = 0;
    for page in &guide.pages {
        assert_eq!(page.size, Paper::A4.size());
        let over = Point::new((page.size.w - pouch.w) / 2, (page.size.h - pouch.h) / 2);
        let pouch = Rect::new(over, pouch);
        let ground = page.blocks.iter().flat_map(|b| &b.items).filter(
            |i| matches!(i, Item::Shape { fill: Some(c), stroke: None, .. } if *c == ink::SEAL),
        );
        let tiles: Vec<Rect> = ground.filter_map(item_box).collect();
        let inside = pouch.shrink(seal);
        for (i, tile) in tiles.iter().enumerate() {
            assert!(
                inside.encloses(*tile),
                "{tile:?} too near the edge of the pouch"
            );
            let grown = tile.shrink(-seal * 2 + Length::um(1));
            assert!(
                tiles[i + 1..].iter().all(|t| !grown.overlaps(*t)),
                "{tile:?}"
            );
            places += 1;
        }
    }
    assert!(places > 50);
}

#[test]
fn the_print_run_warns_where_rounding_opens_a_corner() {
    let mut club = fixture::club();
    let run = |club: &Club| {
        let laid = lay_out(club, &making(club, 0));
        words_on(of(&laid, SheetKind::PrintRun)).replace(['\n', '\u{a0}'], " ")
    };
    assert!(!run(&club).contains("That is little"));
    club.rules.craft.corner = Length::mm(8.0);
    // 8 - sqrt 2 times 4 is 2.34.
    let words = run(&club);
    assert!(
        words.contains("2.3 mm of film is left there. That is little"),
        "{words}"
    );
    assert!(words.contains("Round the paper itself to 4 mm"), "{words}");
}

#[test]
fn the_test_page_says_what_to_set_in_the_dialog() {
    let mut club = fixture::club();
    club.rules.craft.bar = Some(Length::mm(97.0));
    let request = Request {
        kinds: vec![SheetKind::TestPage],
        ..all(&club)
    };
    let laid = lay_out(&club, &request);
    let words = words_on(&laid.sheets[0]).replace(['\n', '\u{a0}'], " ");
    assert!(words.contains("made 97 mm of it: set 103.1 %"), "{words}");
    assert_eq!(laid.sheets[0].pages.len(), 1);
    let bars = laid.sheets[0].pages[0].blocks.iter().flat_map(|b| &b.items);
    let bars = bars
        .filter_map(item_box)
        .filter(|b| b.w.max(b.h) == Length::mm(100.0));
    assert_eq!(bars.count(), 2, "the bars are not scaled");
}

// ---- stock ----

fn made(club: &Club, session: usize) -> Club {
    let counts = counts(club, &making(club, session));
    apply(club, &Edit::Stock(StockEdit::Made(counts.made)))
        .unwrap()
        .0
}

fn missing(club: &Club, session: usize) -> Counts {
    let request = Request {
        only_missing: true,
        ..making(club, session)
    };
    let laid = lay_out(club, &request);
    check(club, &request, &laid, "missing");
    laid.counts.unwrap()
}

#[test]
fn a_second_session_prints_only_what_is_missing() {
    let club = fixture::club();
    let whole = counts(&club, &making(&club, 1));
    let club = made(&club, 0);
    assert_eq!(missing(&club, 0).printed, 0, "nothing is printed twice");
    let next = missing(&club, 1);
    assert!(
        next.printed > 0 && next.printed < whole.printed / 2,
        "{}",
        next.printed
    );
    assert_eq!(next.printed + next.in_stock, next.needed);
    assert_eq!(next.needed, whole.needed);
    assert!(next.sheets < whole.sheets);
    let club = made(&club, 1);
    assert_eq!(missing(&club, 1).printed, 0);
}

#[test]
fn a_lost_tile_is_missing_and_a_lost_one_can_be_found_again() {
    let before = made(&fixture::club(), 0);
    let key = before.stock[3].key.clone();
    let gone = Edit::Stock(StockEdit::Gone(key.clone(), Loss::Lost));
    let club = apply(&before, &gone).unwrap().0;
    let printed = missing(&club, 0).made;
    assert_eq!(printed, vec![(key.clone(), 1)]);
    assert_eq!(club.stock[3].lost, 1);
    let club = apply(&club, &Edit::Stock(StockEdit::Counted(key, 1)))
        .unwrap()
        .0;
    assert_eq!(missing(&club, 0).printed, 0);
}

#[test]
fn who_leaves_takes_their_tiles_along() {
    let club = made(&fixture::club(), 0);
    let who = club.participants[0].id;
    let mine = |c: &Club| c.stock.iter().filter(|o| o.key.whose == Some(who)).count();
    assert!(mine(&club) > 10);
    let club = apply(&club, &Edit::RemoveParticipant(who)).unwrap().0;
    assert_eq!(mine(&club), 0);
}

/// Tiles of the shared box have no mark, and what one does not need another uses.
#[test]
fn shared_tiles_have_no_mark_and_serve_everyone() {
    let mut club = fixture::without_pictures();
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        p.shared_tiles = true;
        p.tile = Length::mm(60.0);
        p.manner = Default::default();
        p.figure = Default::default();
    }
    fixture::session_mut(&mut club).hand.clear();
    let request = making(&club, 0);
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "shared");
    let figures = of(&laid, SheetKind::Tiles)
        .pages
        .iter()
        .flat_map(|p| &p.blocks);
    let symbols = figures
        .filter(|b| b.role == Role::Artifact)
        .flat_map(|b| &b.items);
    let marks = symbols.filter(|i| matches!(i, Item::Symbol { .. }));
    assert_eq!(marks.count(), 0, "no mark in a corner");
    let kinds: BTreeSet<_> = laid
        .counts
        .unwrap()
        .made
        .into_iter()
        .map(|(k, _)| k.whose)
        .collect();
    assert_eq!(kinds, BTreeSet::from([None]));
}

/// Two sessions at once share a box: what the one uses is not there for the other. One after the other
/// they use the same tiles. Common practice: the greatest number in use at one moment.
#[test]
fn shared_tiles_serve_one_session_after_the_other_but_not_two_at_once() {
    let mut club = fixture::without_pictures();
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        p.shared_tiles = true;
        p.tile = Length::mm(60.0);
        p.manner = Default::default();
        p.figure = Default::default();
        *p.standing = Default::default();
    }
    fixture::session_mut(&mut club).hand.clear();
    let mut second = (*club.sessions[0]).clone();
    second.id = daystrand::model::ids::SessionId(90_001);
    second.start = jiff::civil::time(15, 0, 0, 0);
    club.sessions.insert(1, Arc::new(second));
    let club = made(&club, 0);
    assert_eq!(
        missing(&club, 1).printed,
        0,
        "in the afternoon they are there again"
    );
    let mut at_once = club.clone();
    let start = at_once.sessions[0].start;
    Arc::make_mut(&mut at_once.sessions[1]).start = start;
    let needed = counts(&at_once, &making(&at_once, 1)).needed;
    assert_eq!(missing(&at_once, 1).printed, needed, "all are in use");
    assert_eq!(
        missing(&at_once, 0).printed,
        needed,
        "for either of the two"
    );
}

#[test]
fn what_is_not_in_stock_is_told_once_a_stock_is_kept() {
    let told = |club: &Club| {
        let all = daystrand::check::run(club, Some(&club.sessions[0]));
        all.into_iter()
            .find(|f| f.code == "print.stock")
            .map(|f| f.sentence)
    };
    let club = fixture::club();
    assert_eq!(told(&club), None, "no stock is kept");
    let club = made(&club, 0);
    assert_eq!(told(&club), None, "all of it is there");
    let gone = StockEdit::Gone(club.stock[0].key.clone(), Loss::Worn);
    let club = apply(&club, &Edit::Stock(gone)).unwrap().0;
    let says = told(&club).unwrap();
    assert!(
        says.starts_with("1 of ") && says.ends_with("is not in stock yet."),
        "{says}"
    );
}

/// A tile that no sheet can hold is left out, and never taken for one in stock.
#[test]
fn what_is_too_large_is_not_in_stock() {
    let mut club = fixture::club();
    Arc::make_mut(&mut club.participants[0]).tile = Length::mm(300.0);
    Arc::make_mut(&mut club.participants[0]).shape = TileShape::Square;
    let laid = lay_out(&club, &making(&club, 0));
    let list = words_on(of(&laid, SheetKind::PackList));
    assert!(
        !list.contains("(s)") && list.contains("too large for A4 paper"),
        "{list}"
    );
    assert_eq!(laid.counts.unwrap().in_stock, 0);
}

#[test]
fn a_tile_larger_than_the_pouches_is_told() {
    let mut club = fixture::club();
    let told = |club: &Club| {
        let laid = lay_out(club, &making(club, 0));
        let all = laid
            .findings
            .into_iter()
            .filter(|f| f.code == "print.pouch");
        all.map(|f| f.sentence).collect::<Vec<_>>()
    };
    assert_eq!(told(&club), Vec::<String>::new());
    club.rules.craft.pouch = Paper::A5;
    for p in &mut club.participants {
        Arc::make_mut(p).tile = Length::mm(40.0);
    }
    Arc::make_mut(&mut club.participants[0]).tile = Length::mm(150.0);
    let says = told(&club);
    assert!(
        !says.is_empty() && says[0].contains("than an A5 pouch"),
        "{says:?}"
    );
}
