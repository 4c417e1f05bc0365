//! Stories on paper: letters and lines against published guidance for large print, sentences that stay
//! whole, the booklet in the order in which it is folded, the page for a door.

use std::sync::Arc;

use daystrand::layout::booklet::{imposed, places};
use daystrand::layout::{InkChoice, Request, Sheet, SheetKind, Turn, lay_out};
use daystrand::model::club::{Club, Paper};
use daystrand::model::people::Participant;
use daystrand::model::telling::{Depth, Pages, Second};
use daystrand::page::dump::{Read, read};
use daystrand::page::hit::item_box;
use daystrand::page::{Block, Item, Page, Role};
use daystrand::story::tell_for;
use daystrand::units::Length;

use crate::fixture;

/// A sheet of the participant with the mark of the kite, told as wanted, on a paper.
fn sheet(kind: SheetKind, paper: Paper, change: impl FnOnce(&mut Participant)) -> (Club, Sheet) {
    let mut club = fixture::club();
    change(Arc::make_mut(&mut club.participants[0]));
    let request = Request {
        session: club.sessions[0].id,
        participants: vec![club.participants[0].id],
        kinds: vec![kind],
        paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    let sheet = lay_out(&club, &request).sheets.remove(0);
    (club, sheet)
}

/// Lines of a block with their letter size: left, right and baseline.
fn lines(block: &Block) -> Vec<(Length, Length, Length, f64, String)> {
    let line = |item: &Item| match item {
        Item::Text { at, line, .. } => {
            let size = line.runs.iter().map(|(_, r)| r.size).max()?.to_pt();
            Some((at.x, at.x + line.width, at.y, size, line.text.clone()))
        }
        _ => None,
    };
    block.items.iter().filter_map(line).collect()
}

/// The blocks that hold a sentence of the story, whole.
fn told<'a>(page: &'a Page, sentence: &str) -> Vec<&'a Block> {
    let has = |b: &&Block| {
        let words: Vec<String> = lines(b).into_iter().map(|l| l.4).collect();
        b.role == Role::Paragraph && words.join(" ") == sentence
    };
    page.blocks.iter().filter(has).collect()
}

/// UKAAF (2012) and the American Printing House for the Blind (2011): 18 points or more. WCAG 2.2
/// (1.4.8) and the American Council of the Blind: lines one and a half letter sizes apart, flush
/// left. RNIB: at most 70 characters a line. Inclusion Europe: a sentence stays on one page.
#[test]
fn sentences_are_large_open_short_lined_and_whole() {
    for paper in Paper::ALL {
        for letters in [None, Some(18), Some(24), Some(36)] {
            let (club, sheet) = sheet(SheetKind::Story, paper, |p| {
                p.telling.letters = letters;
                p.telling.pages = Pages::Steps;
            });
            let story = tell_for(&club, &club.sessions[0], &club.participants[0]);
            for sentence in story.sentences() {
                let found: Vec<_> = sheet.pages.iter().flat_map(|p| told(p, sentence)).collect();
                assert_eq!(
                    found.len().min(1),
                    1,
                    "{sentence} on {paper:?} at {letters:?}"
                );
                for line in found.iter().flat_map(|b| lines(b)) {
                    assert!(line.3 >= 18.0 - 0.01, "{line:?}");
                    assert!(line.4.chars().count() <= 70, "{line:?}");
                    if let Some(letters) = letters {
                        assert!((line.3 - f64::from(letters)).abs() < 0.01, "{line:?}");
                    }
                }
                for block in found {
                    let all = lines(block);
                    for pair in all.windows(2) {
                        let apart = (pair[1].2 - pair[0].2).to_pt() / pair[0].3;
                        assert!(apart >= 1.499, "{apart} in {sentence}");
                        assert_eq!(pair[0].0, pair[1].0, "flush left: {sentence}");
                    }
                }
            }
        }
    }
}

/// Inclusion Europe and common practice: "page 2 of 8" on every page; the picture at one place.
#[test]
fn pages_are_counted_and_the_picture_keeps_its_side() {
    let (_, sheet) = sheet(SheetKind::Story, Paper::A4, |p| {
        p.telling.pages = Pages::Steps
    });
    let count = sheet.pages.len();
    let mut left = Vec::new();
    for (i, page) in sheet.pages.iter().enumerate() {
        let foot = format!("Story, page {} of {count}", i + 1);
        let says = |r: &Read| matches!(r, Read::Paragraph(w) if w.starts_with(&foot));
        assert!(read(page).iter().any(says), "{foot}");
        let large = page
            .blocks
            .iter()
            .filter(|b| matches!(b.role, Role::Figure { .. }));
        let boxes = large.filter_map(|b| item_box(b.items.first()?));
        left.extend(boxes.filter(|r| r.w > Length::mm(60.0)).map(|r| (r.x, r.w)));
    }
    assert!(left.len() > 8);
    assert!(left.windows(2).all(|w| w[0] == w[1]), "{left:?}");
}

/// With n places sheet i from zero carries outside n - 2i and 2i + 1, inside 2i + 2 and n - 2i - 1
/// (common practice of saddle-stitched printing); folded together they are read in order.
#[test]
fn a_booklet_is_imposed_by_the_law_and_folds_in_order() {
    for pages in 1..=60 {
        let places = places(pages);
        let n = places.len();
        assert!(n.is_multiple_of(4) && n >= pages && n - pages < 4);
        let sides = imposed(n);
        assert_eq!(sides.len(), n / 2);
        for (side, (left, right)) in sides.iter().enumerate() {
            let i = side / 2;
            let wanted = match side % 2 {
                0 => (n - 2 * i, 2 * i + 1),
                _ => (2 * i + 2, n - 2 * i - 1),
            };
            assert_eq!((left + 1, right + 1), wanted, "{n} places, side {side}");
        }
        assert_eq!(folded(&sides), (0..n).collect::<Vec<_>>());
        let told: Vec<usize> = places.iter().flatten().copied().collect();
        assert_eq!(told, (0..pages).collect::<Vec<_>>());
        assert_eq!(places[0], Some(0), "the front cover is never blank");
    }
}

/// The sides of sheets laid on one another, outermost first, folded and leafed through: each sheet
/// gives a leaf before the middle (outside right, inside left) and one behind it.
fn folded<T: Copy>(sides: &[(T, T)]) -> Vec<T> {
    let sheets: Vec<_> = sides.chunks(2).collect();
    let mut order = Vec::new();
    for sheet in &sheets {
        order.extend([sheet[0].1, sheet[1].0]);
    }
    for sheet in sheets.iter().rev() {
        order.extend([sheet[1].1, sheet[0].0]);
    }
    order
}

/// The number at the foot of each half of a side, by where it stands.
fn numbers(page: &Page) -> (Option<usize>, Option<usize>) {
    let mut found = (None, None);
    for line in page.blocks.iter().flat_map(lines) {
        let number = line.4.strip_prefix("Story, page ").and_then(|rest| {
            let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
            digits.parse().ok()
        });
        if number.is_some() && line.1 <= page.size.w / 2 {
            found.0 = number;
        } else if number.is_some() {
            assert!(line.0 >= page.size.w / 2, "a line over the fold: {line:?}");
            found.1 = number;
        }
    }
    found
}

#[test]
fn the_booklet_is_read_in_order_when_it_is_folded() {
    for paper in [Paper::A4, Paper::Letter, Paper::A3] {
        for text_pt in [30, 36, 60] {
            let (_, sheet) = sheet(SheetKind::Booklet, paper, |p| {
                p.text_pt = text_pt;
                p.telling.pages = Pages::Steps;
            });
            assert!(sheet.pages.len().is_multiple_of(2));
            for page in &sheet.pages {
                assert!(page.size.w > page.size.h);
                assert_eq!(page.size, paper.size().turned());
            }
            let sides: Vec<_> = sheet.pages.iter().map(numbers).collect();
            let order: Vec<usize> = folded(&sides).into_iter().flatten().collect();
            let wanted: Vec<usize> = (1..=order.len()).collect();
            assert_eq!(order, wanted, "{paper:?} at {text_pt}");
            let blank = sides.len() * 2 - order.len();
            assert!(blank < 4);
            assert!(
                blank == 0 || sides[0].0.is_none(),
                "the back cover is blank first"
            );
        }
    }
}

#[test]
fn one_page_holds_every_step_for_a_door() {
    for paper in Paper::ALL {
        for depth in Depth::ALL {
            let (club, sheet) = sheet(SheetKind::StoryPage, paper, |p| p.telling.depth = depth);
            assert_eq!(sheet.pages.len(), 1);
            let board =
                daystrand::model::board::derive(&club, &club.sessions[0], club.participants[0].id);
            let all: String = read(&sheet.pages[0])
                .iter()
                .map(|r| format!("{r:?}\n"))
                .collect();
            for step in &board.steps {
                assert!(
                    all.contains(&step.label) || depth == Depth::Pictures,
                    "{}",
                    step.label
                );
            }
            let figures = |r: &Read| matches!(r, Read::Figure(_));
            let pictures = read(&sheet.pages[0]).iter().filter(|r| figures(r)).count();
            assert!(pictures >= board.steps.len());
        }
    }
}

#[test]
fn the_second_language_stands_beside_the_first_in_the_familys_order() {
    let arabic = "أجلس في القارب.";
    for first in [false, true] {
        let (_, sheet) = sheet(SheetKind::Story, Paper::A4, |p| {
            p.telling.pages = Pages::Steps;
            let mut second = Second {
                language: "ar".into(),
                first,
                ..Second::default()
            };
            second.set("The group sings one song.", arabic);
            p.telling.second = Some(second);
        });
        let page = sheet
            .pages
            .iter()
            .find(|p| !told(p, arabic).is_empty())
            .unwrap();
        let [one] = told(page, arabic)[..] else {
            panic!("said once");
        };
        assert_eq!(one.lang.as_deref(), Some("ar"));
        let english = told(page, "The group sings one song.")[0];
        let (of_one, of_english) = (lines(one), lines(english));
        assert_eq!(of_one[0].2 < of_english[0].2, first, "its place");
        assert!(
            of_one[0].1 > of_english[0].1 + Length::mm(5.0),
            "flush right"
        );
        let foot = "Second language: not yet checked by a reader";
        let says = |r: &Read| matches!(r, Read::Paragraph(w) if w.contains(foot));
        assert!(read(page).iter().any(says));
    }
    let (_, sheet) = sheet(SheetKind::Story, Paper::A4, |p| {
        let mut second = Second::default();
        second.set("The group sings one song.", arabic);
        second.checked_by = "Rana".into();
        p.telling.second = Some(second);
    });
    let all: Vec<Read> = sheet.pages.iter().flat_map(read).collect();
    assert!(
        !all.iter()
            .any(|r| format!("{r:?}").contains("not yet checked"))
    );
}
