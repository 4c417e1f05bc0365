//! What sheets look like: small pictures of pages, compared with those kept in
//! `tests/golden/sheets`. `UPDATE_GOLDEN=1` writes them anew.

use std::path::PathBuf;

use daystrand::export::pdf::pdf;
use daystrand::layout::{InkChoice, Request, SheetKind};
use daystrand::model::club::Paper;
use daystrand::model::ids::ParticipantId;
use daystrand::page::hit::item_box;
use daystrand::page::{Item, Page, Role};
use daystrand::raster::paint;
use daystrand::units::{Length, Rect};

use super::{all, lay_out};
use crate::fixture;
use crate::pdf::sample;
use crate::pdf::size::painted;

/// Dots per inch of a kept picture.
const DPI: f64 = 36.0;
/// Mean difference of a channel, in 255ths, that still counts as the same picture.
const SAME: f64 = 0.4;

/// The sheets that are kept: the session, whose, and which page.
const KEPT: [(SheetKind, usize, usize, usize); 7] = [
    (SheetKind::GroupWall, 0, 0, 0),
    (SheetKind::GroupWall, 1, 0, 3),
    (SheetKind::GroupWall, 2, 0, 2),
    (SheetKind::HelperCard, 0, 0, 0),
    (SheetKind::HelperCard, 1, 5, 0),
    (SheetKind::Words, 0, 0, 0),
    (SheetKind::Roll, 0, 0, 0),
];

fn page((kind, session, who, page): (SheetKind, usize, usize, usize), paper: Paper) -> Page {
    let club = fixture::club();
    let who: ParticipantId = club.participants[who].id;
    let request = Request {
        session: club.sessions[session].id,
        participants: vec![who],
        kinds: vec![kind],
        paper,
        ink: InkChoice::Colour,
        ..all(&club)
    };
    let mut sheet = lay_out(&club, &request).sheets.remove(0);
    sheet.pages.swap_remove(page)
}

fn compare(name: &str, page: &Page) {
    let seen = paint(page, DPI).unwrap();
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/golden/sheets")
        .join(format!("{name}.png"));
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        return seen.save(&path).unwrap();
    }
    let kept = image::open(&path)
        .unwrap_or_else(|e| panic!("{}: {e}; UPDATE_GOLDEN=1 writes it", path.display()))
        .to_rgba8();
    assert_eq!(kept.dimensions(), seen.dimensions(), "{name}");
    let both = kept.as_raw().iter().zip(seen.as_raw());
    let sum: u64 = both.map(|(a, b)| u64::from(a.abs_diff(*b))).sum();
    let mean = sum as f64 / seen.as_raw().len() as f64;
    if mean > SAME {
        let to = std::env::temp_dir().join(format!("daystrand-{name}.png"));
        seen.save(&to).unwrap();
        panic!("{name} looks different by {mean:.2}; see {}", to.display());
    }
}

#[test]
fn wall_helper_card_words_and_roll_look_as_they_did() {
    for paper in [Paper::A4, Paper::Letter] {
        for kept in KEPT {
            let (kind, session, _, number) = kept;
            let name = format!(
                "{}-{}-{}-{}",
                kind.word(),
                session + 1,
                number + 1,
                paper.label().to_lowercase()
            );
            compare(&name, &page(kept, paper));
        }
    }
}

/// The bar of 100 mm, painted by an independent reader from the PDF and measured to a tenth of a
/// millimetre.
#[test]
fn the_bar_of_each_is_100_mm_for_another_reader() {
    const TRIED: f64 = 254.0;
    for kept in [KEPT[0], KEPT[2], KEPT[4], KEPT[5]] {
        let page = page(kept, Paper::A4);
        let bar = bar(&page);
        let file = pdf(std::slice::from_ref(&page), &sample::meta());
        let map = painted(&file, 0, TRIED);
        let px = |l: Length| (l.to_mm() / 25.4 * TRIED) as usize;
        let row = px(bar.center().y) * usize::from(map.width());
        let dark = |x: &usize| map.data()[row + x].r < 128;
        let ends = px(bar.x).saturating_sub(20)..px(bar.right()) + 20;
        let long = ends.filter(dark).count() as f64 / TRIED * 25.4;
        // Round ends add the width of the line.
        assert!((long - 100.3).abs() <= 0.1, "{:?}: {long} mm", kept.0);
    }
}

fn bar(page: &Page) -> Rect {
    let drawn = page.blocks.iter().filter(|b| b.role == Role::Artifact);
    let mut lines = drawn.flat_map(|b| &b.items).filter_map(|i| match i {
        Item::Shape { fill: None, .. } => item_box(i),
        _ => None,
    });
    let long = |r: &Rect| (r.w.to_mm() - 100.0).abs() < 0.5 && r.h < Length::mm(1.0);
    lines.rfind(long).unwrap()
}
