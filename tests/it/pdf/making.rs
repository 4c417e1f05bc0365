//! Sheets of tiles as they come out of a printer: painted by an independent reader (hayro) at 300 dpi and
//! measured at the middle of the lines, to 0.05 mm. Cut marks, edges of tiles, places in pouches, and rings
//! on backs behind their fronts.

use daystrand::export::pdf::pdf;
use daystrand::layout::{InkChoice, Request, SheetKind, Turn, ink, lay_out};
use daystrand::model::club::Paper;
use daystrand::model::craft::Flip;
use daystrand::page::hit::item_box;
use daystrand::page::{Item, Page, Role};
use daystrand::units::path::Seg;
use daystrand::units::{Length, Point, Rect};
use hayro::vello_cpu::Pixmap;

use super::sample;
use super::size::painted;
use crate::fixture;

const DPI: f64 = 300.0;
/// How far from where it should be a line is looked for, in millimetres.
const WINDOW: f64 = 0.38;

/// Sheets of a kind for everyone in the first session of the demo, with backs.
fn pages(kind: SheetKind, paper: Paper, flip: Flip) -> Vec<Page> {
    let mut club = fixture::club();
    club.rules.craft.backs = Some(flip);
    club.rules.craft.pouch = paper;
    let request = Request {
        session: club.sessions[0].id,
        participants: club.participants.iter().map(|p| p.id).collect(),
        kinds: vec![kind],
        paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Grey,
        only_missing: false,
    };
    lay_out(&club, &request).sheets.remove(0).pages
}

fn paint(page: &Page) -> Pixmap {
    painted(&pdf(std::slice::from_ref(page), &sample::meta()), 0, DPI)
}

/// The middle of what is dark on a short stretch across a line, in millimetres; none where nothing is.
fn middle(map: &Pixmap, down: bool, at: f64, beside: f64) -> Option<f64> {
    let px = |mm: f64| (mm / 25.4 * DPI).round() as usize;
    let (from, to) = (px(at - WINDOW), px(at + WINDOW));
    let (mut weight, mut moment) = (0.0, 0.0);
    for i in from..=to {
        let (x, y) = if down {
            (i, px(beside))
        } else {
            (px(beside), i)
        };
        if x >= usize::from(map.width()) || y >= usize::from(map.height()) {
            continue;
        }
        let p = map.data()[y * usize::from(map.width()) + x];
        let dark = 765.0 - f64::from(p.r) - f64::from(p.g) - f64::from(p.b);
        weight += dark;
        moment += dark * (i as f64 + 0.5);
    }
    (weight > 3.0).then(|| moment / weight * 25.4 / DPI)
}

/// How far a line lies from where it should be.
fn off(map: &Pixmap, down: bool, at: Length, beside: Length) -> f64 {
    let found = middle(map, down, at.to_mm(), beside.to_mm());
    let found = found.unwrap_or_else(|| panic!("no line at {} mm", at.to_mm()));
    (found - at.to_mm()).abs()
}

/// Straight lines of some ink and width that nothing else crosses: its ends.
fn straight(page: &Page, width: Length) -> Vec<(Point, Point)> {
    let drawn = page.blocks.iter().filter(|b| b.role == Role::Artifact);
    let lines = drawn.flat_map(|b| &b.items).filter_map(|item| match item {
        Item::Shape {
            path,
            stroke: Some(s),
            ..
        } if s.colour == ink::INK && s.width == width => match path.segs[..] {
            [Seg::Move(a), Seg::Line(b)] => Some((a, b)),
            _ => None,
        },
        _ => None,
    });
    lines.collect()
}

fn hairline_boxes(page: &Page) -> Vec<Rect> {
    let drawn = page.blocks.iter().filter(|b| b.role == Role::Artifact);
    let closed = drawn.flat_map(|b| &b.items).filter(|item| {
        matches!(item, Item::Shape { path, stroke: Some(s), .. }
            if s.colour == ink::RULE && s.width == ink::HAIRLINE
                && path.segs.iter().any(|s| matches!(s, Seg::Close)))
    });
    closed.filter_map(item_box).collect()
}

#[test]
fn cut_marks_and_edges_of_tiles_lie_where_they_should() {
    for paper in [Paper::A4, Paper::Letter] {
        let all = pages(SheetKind::Tiles, paper, Flip::Long);
        let (mut marks, mut edges, mut worst) = (0, 0, 0.0_f64);
        for page in all.iter().step_by(2).take(4) {
            let map = paint(page);
            for (a, b) in straight(page, Length::um(200)) {
                let (down, mid) = (a.x == b.x, Point::new((a.x + b.x) / 2, (a.y + b.y) / 2));
                let (at, beside) = if down { (mid.x, mid.y) } else { (mid.y, mid.x) };
                let far = off(&map, down, at, beside);
                assert!(
                    far <= 0.05,
                    "{paper:?}: a mark at {at:?}, {beside:?} is {far:.3} mm off"
                );
                worst = worst.max(far);
                marks += 1;
            }
            for tile in hairline_boxes(page) {
                // Where a cut of the neighbour meets an edge it looks shifted: three places, the best.
                let beside = [0.3, 0.45, 0.62];
                for (down, at) in [
                    (true, tile.x),
                    (true, tile.right()),
                    (false, tile.y),
                    (false, tile.bottom()),
                ] {
                    let off_at = |part: f64| match down {
                        true => off(&map, down, at, tile.y + tile.h.scale(part)),
                        false => off(&map, down, at, tile.x + tile.w.scale(part)),
                    };
                    let far = beside.map(off_at).into_iter().fold(f64::MAX, f64::min);
                    assert!(
                        far <= 0.05,
                        "{paper:?}: an edge at {at:?} is {far:.3} mm off"
                    );
                    worst = worst.max(far);
                    edges += 1;
                }
            }
        }
        assert!(marks > 40 && edges > 150, "{marks} marks, {edges} edges");
        assert!(worst <= 0.05, "{paper:?}: {worst:.3} mm off");
    }
}

#[test]
fn rings_on_backs_lie_behind_the_middle_of_their_tiles() {
    for (paper, flip) in [(Paper::A4, Flip::Long), (Paper::Letter, Flip::Short)] {
        let all = pages(SheetKind::Tiles, paper, flip);
        let (mut rings, mut worst) = (0, 0.0_f64);
        for pair in all.chunks(2).take(3) {
            let (front, back) = (&pair[0], &pair[1]);
            let map = paint(back);
            let upright = front.size.h >= front.size.w;
            let over_x = upright == (flip == Flip::Long);
            let dot = Length::mm(15.0);
            for tile in hairline_boxes(front) {
                let centre = tile.center();
                let behind = match over_x {
                    true => Point::new(front.size.w - centre.x, centre.y),
                    false => Point::new(centre.x, front.size.h - centre.y),
                };
                // Cards hang on a ring or lie at hand: nothing is fastened to them.
                let left = behind.x - dot / 2;
                if middle(&map, true, left.to_mm(), behind.y.to_mm()).is_none() {
                    continue;
                }
                for (down, at, beside) in [
                    (true, left, behind.y),
                    (true, behind.x + dot / 2, behind.y),
                    (false, behind.y - dot / 2, behind.x),
                ] {
                    worst = worst.max(off(&map, down, at, beside));
                }
                rings += 1;
            }
        }
        assert!(rings > 20, "{rings} rings");
        assert!(worst <= 0.05, "{paper:?}: {worst:.3} mm off");
    }
}

#[test]
fn places_in_pouches_lie_where_they_should() {
    for paper in [Paper::A4, Paper::Letter] {
        let all = pages(SheetKind::PouchGuide, paper, Flip::Long);
        let (mut lines, mut worst) = (0, 0.0_f64);
        for page in all.iter().take(3) {
            let map = paint(page);
            for (a, b) in straight(page, ink::THIN) {
                let (down, at) = (a.x == b.x, Point::new(a.x, a.y));
                // Off the middle, where words stand in some.
                let beside = match down {
                    true => a.y + (b.y - a.y).scale(0.93),
                    false => a.x + (b.x - a.x).scale(0.93),
                };
                let at = if down { at.x } else { at.y };
                worst = worst.max(off(&map, down, at, beside));
                lines += 1;
            }
        }
        assert!(lines > 60, "{lines} lines");
        assert!(worst <= 0.05, "{paper:?}: {worst:.3} mm off");
    }
}
