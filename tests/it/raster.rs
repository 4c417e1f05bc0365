//! Pages and symbols become the right pixels.

use std::sync::Arc;

use daystrand::model::ids::SymbolId;
use daystrand::model::privacy::Class;
use daystrand::page::{Block, Item, Page, Role, Stroke, SymbolKey};
use daystrand::raster::{self, PaintError};
use daystrand::symbols::art::{Art, CANVAS, Node, Shape};
use daystrand::text::run::FontId;
use daystrand::text::{self, Style};
use daystrand::units::colour::Rgb;
use daystrand::units::path::{Path, Seg};
use daystrand::units::{Length, Point, Rect, Size};
use image::{Rgba, RgbaImage};

const WHITE: Rgba<u8> = Rgba([255, 255, 255, 255]);
const BLACK: Rgba<u8> = Rgba([0, 0, 0, 255]);

fn page(width: f64, height: f64, items: Vec<Item>) -> Page {
    Page {
        size: Size::mm(width, height),
        title: "Test page".into(),
        lang: "en".into(),
        class: Class::Public,
        blocks: vec![Block {
            lang: None,
            role: Role::Artifact,
            source: None,
            items,
        }],
    }
}

fn closed<P: Copy>(points: &[P]) -> Path<P> {
    let mut segs = vec![Seg::Move(points[0])];
    segs.extend(points[1..].iter().map(|p| Seg::Line(*p)));
    segs.push(Seg::Close);
    Path { segs }
}

fn outline(r: Rect) -> Path<Point> {
    closed(&[
        r.origin(),
        Point::new(r.right(), r.y),
        Point::new(r.right(), r.bottom()),
        Point::new(r.x, r.bottom()),
    ])
}

fn filled(r: Rect, colour: Rgb) -> Item {
    Item::Shape {
        path: outline(r),
        fill: Some(colour),
        stroke: None,
    }
}

/// First and last column and row that are not white.
fn ink(picture: &RgbaImage) -> Option<(u32, u32, u32, u32)> {
    let marked = picture.enumerate_pixels().filter(|p| *p.2 != WHITE);
    marked.fold(None, |box_, (x, y, _)| {
        let (l, t, r, b) = box_.unwrap_or((x, y, x, y));
        Some((l.min(x), t.min(y), r.max(x), b.max(y)))
    })
}

/// 25.4 mm are 300 pixels at 300 dots per inch, by the definition of the inch.
#[test]
fn a_black_rectangle_is_at_its_pixels() {
    let r = Rect::mm(12.7, 25.4, 25.4, 50.8);
    let picture = raster::paint(&page(76.2, 101.6, vec![filled(r, Rgb::BLACK)]), 300.0).unwrap();
    assert_eq!(picture.dimensions(), (900, 1200));
    for (x, y, p) in picture.enumerate_pixels() {
        let inside = (150..450).contains(&x) && (300..900).contains(&y);
        assert_eq!(*p, if inside { BLACK } else { WHITE }, "at {x},{y}");
    }
}

#[test]
fn an_a4_page_has_the_pixels_of_its_size() {
    // 210 mm by 297 mm at 300 dots per inch: 2480.3 by 3507.9.
    let picture = raster::paint(&page(210.0, 297.0, vec![]), 300.0).unwrap();
    assert_eq!(picture.dimensions(), (2480, 3508));
    assert!(picture.pixels().all(|p| *p == WHITE));
}

#[test]
fn the_baseline_is_where_it_was_put() {
    let size = Length::pt(72.0);
    let line = Arc::new(text::line("HEH", &Style::regular(size)));
    let width = line.width;
    let at = Point::mm(25.4, 76.2);
    let words = Item::Text {
        at,
        line,
        colour: Rgb::BLACK,
    };
    let picture = raster::paint(&page(127.0, 101.6, vec![words]), 300.0).unwrap();
    let (left, top, right, bottom) = ink(&picture).unwrap();
    // The feet of H and E stand on the baseline, 900 pixels down.
    assert_eq!(bottom, 899);
    // H of Andika is 1460 of 2048 units high (its outline in the font file), 300 pixels an em.
    assert!(
        (900.0 - f64::from(top) - 300.0 * 1460.0 / 2048.0).abs() < 1.0,
        "{top}"
    );
    // Its stem begins 160 units right of the pen.
    assert!(
        (f64::from(left) - 300.0 - 300.0 * 160.0 / 2048.0).abs() < 1.0,
        "{left}"
    );
    assert!(f64::from(right) < 300.0 + width.to_px(300.0));
}

#[test]
fn counters_of_letters_stay_open() {
    let line = Arc::new(text::line("O", &Style::bold(Length::pt(72.0))));
    let middle = (line.width.to_px(72.0) / 2.0) as u32;
    let words = Item::Text {
        at: Point::mm(0.0, 25.4),
        line,
        colour: Rgb::BLACK,
    };
    let picture = raster::paint(&page(50.8, 50.8, vec![words]), 72.0).unwrap();
    // Halfway up the capital, 72 pixels down less half of 0.71 em.
    assert_eq!(*picture.get_pixel(middle, 72 - 26), WHITE);
    assert!(ink(&picture).is_some());
}

#[test]
fn a_line_is_as_wide_as_it_says_and_dashes_have_gaps() {
    let rule = |dash| Item::Shape {
        path: Path {
            segs: vec![
                Seg::Move(Point::mm(25.4, 25.4)),
                Seg::Line(Point::mm(101.6, 25.4)),
            ],
        },
        fill: None,
        stroke: Some(Stroke {
            colour: Rgb::BLACK,
            width: Length::mm(2.54),
            dash,
        }),
    };
    let solid = raster::paint(&page(127.0, 50.8, vec![rule(None)]), 100.0).unwrap();
    // Ten pixels wide, with round ends five pixels longer.
    assert_eq!(ink(&solid), Some((95, 95, 404, 104)));
    let dash = Some((Length::mm(25.4), Length::mm(12.7)));
    let dashed = raster::paint(&page(127.0, 50.8, vec![rule(dash)]), 100.0).unwrap();
    // Drawn 100 to 200, gap to 250; round ends reach five pixels into the gap.
    assert_eq!(*dashed.get_pixel(150, 100), BLACK);
    assert_eq!(*dashed.get_pixel(225, 100), WHITE);
    assert_eq!(*dashed.get_pixel(300, 100), BLACK);
}

fn shape(points: &[[f32; 2]], colour: Rgb) -> Node {
    Node::Shape(Shape {
        path: closed(points),
        fill: Some(colour),
        even_odd: false,
        stroke: None,
    })
}

const WHOLE: [[f32; 2]; 4] = [[0.0, 0.0], [CANVAS, 0.0], [CANVAS, CANVAS], [0.0, CANVAS]];

fn symbol(rect: Rect, nodes: Vec<Node>) -> Item {
    Item::Symbol {
        rect,
        key: SymbolKey {
            id: SymbolId::new("test"),
            variant: "warm",
        },
        art: Arc::new(Art { nodes }),
    }
}

#[test]
fn a_symbol_fills_the_middle_square() {
    let item = symbol(
        Rect::mm(0.0, 0.0, 76.2, 25.4),
        vec![shape(&WHOLE, Rgb::BLACK)],
    );
    let picture = raster::paint(&page(76.2, 25.4, vec![item]), 100.0).unwrap();
    assert_eq!(ink(&picture), Some((100, 0, 199, 99)));
}

#[test]
fn a_window_and_the_edge_of_a_symbol_cut_what_is_behind() {
    let left = [[0.0, 0.0], [120.0, 0.0], [120.0, 240.0], [0.0, 240.0]];
    let clipped = Node::Clipped {
        clip: closed(&left),
        nodes: vec![shape(&WHOLE, Rgb::BLACK)],
    };
    let far = [[120.0, 0.0], [999.0, 0.0], [999.0, 60.0], [120.0, 60.0]];
    let nodes = vec![clipped, shape(&far, Rgb::BLACK)];
    let item = symbol(Rect::mm(25.4, 25.4, 25.4, 25.4), nodes);
    let picture = raster::paint(&page(76.2, 76.2, vec![item]), 100.0).unwrap();
    for (x, y, p) in picture.enumerate_pixels() {
        let half = (100..150).contains(&x) && (100..200).contains(&y);
        let strip = (150..200).contains(&x) && (100..125).contains(&y);
        assert_eq!(*p, if half || strip { BLACK } else { WHITE }, "at {x},{y}");
    }
}

#[test]
fn an_inside_by_the_even_odd_rule_has_its_hole() {
    let hole = [[60.0, 60.0], [180.0, 60.0], [180.0, 180.0], [60.0, 180.0]];
    let mut path = closed(&WHOLE);
    path.segs.extend(closed(&hole).segs);
    let ring = |even_odd| Art {
        nodes: vec![Node::Shape(Shape {
            path: path.clone(),
            fill: Some(Rgb::BLACK),
            even_odd,
            stroke: None,
        })],
    };
    assert_eq!(raster::paint_art(&ring(true), 24).get_pixel(12, 12).0[3], 0);
    assert_eq!(
        *raster::paint_art(&ring(false), 24).get_pixel(12, 12),
        BLACK
    );
}

#[test]
fn a_symbol_alone_has_transparent_ground_and_plain_colours() {
    let half = [[0.0, 0.0], [CANVAS, 0.0], [0.0, CANVAS]];
    let art = Art {
        nodes: vec![shape(&half, Rgb(200, 100, 50))],
    };
    let picture = raster::paint_art(&art, 48);
    assert_eq!(*picture.get_pixel(2, 2), Rgba([200, 100, 50, 255]));
    assert_eq!(picture.get_pixel(45, 45).0[3], 0);
    // On the slanting edge opacity is partial and the colour the same.
    let edge = picture.get_pixel(23, 24);
    assert!(edge.0[3] > 0 && edge.0[3] < 255);
    assert!(
        edge.0[0].abs_diff(200) <= 2 && edge.0[2].abs_diff(50) <= 2,
        "{edge:?}"
    );
    assert_eq!(raster::paint_art(&art, 0).dimensions(), (1, 1));
    assert_eq!(raster::paint_art(&art, u32::MAX).dimensions(), (4096, 4096));
}

#[test]
fn a_part_shows_that_part_at_any_size() {
    let r = Rect::mm(20.0, 20.0, 10.0, 10.0);
    let page = page(100.0, 50.0, vec![filled(r, Rgb::BLACK)]);
    let part = raster::paint_part(&page, Rect::mm(15.0, 15.0, 20.0, 10.0), 200).unwrap();
    assert_eq!(part.dimensions(), (200, 100));
    assert_eq!(ink(&part), Some((50, 50, 149, 99)));
    // Beyond the edge of the page there is white.
    let beyond = raster::paint_part(&page, Rect::mm(-10.0, -10.0, 20.0, 20.0), 40).unwrap();
    assert_eq!(ink(&beyond), None);
}

#[test]
fn too_many_pixels_and_none_are_refused_in_words() {
    let page = page(297.0, 420.0, vec![]);
    let refused = raster::paint(&page, 5000.0).unwrap_err();
    assert!(matches!(refused, PaintError::TooLarge { .. }));
    assert_eq!(
        refused.to_string(),
        "a picture of 58465 by 82677 pixels is too large to make; choose a lower resolution"
    );
    for dpi in [0.0, -300.0, f64::NAN] {
        assert_eq!(raster::paint(&page, dpi), Err(PaintError::Nothing));
    }
    assert!(raster::paint(&page, f64::INFINITY).is_err());
    let nothing = raster::paint_part(&page, Rect::mm(0.0, 0.0, 0.0, 10.0), 100);
    assert_eq!(nothing, Err(PaintError::Nothing));
    let wide = raster::paint_part(&page, Rect::mm(0.0, 0.0, 10.0, 0.001), u32::MAX);
    assert!(wide.is_err());
}

#[test]
fn the_same_page_gives_the_same_pixels() {
    let line = Arc::new(text::line("Drum · بحر 🏊", &Style::bold(Length::pt(20.0))));
    let words = Item::Text {
        at: Point::mm(5.0, 15.0),
        line,
        colour: Rgb(16, 56, 59),
    };
    let page = page(80.0, 20.0, vec![words]);
    let first = raster::paint(&page, 150.0).unwrap();
    assert_eq!(first, raster::paint(&page, 150.0).unwrap());
}

#[test]
fn every_letter_of_the_bundled_alphabets_has_an_outline() {
    let letters = "AaÄäĄąẮắÆæØøŁłЖжÞþĞğ";
    for (style, font) in [
        (Style::regular(Length::pt(10.0)), FontId::Regular),
        (Style::bold(Length::pt(10.0)), FontId::Bold),
    ] {
        for (_, run) in text::line(letters, &style).runs {
            assert_eq!(run.font, font);
            for g in run.glyphs {
                assert!(text::glyph_outline(font, g.id).is_some());
            }
        }
    }
    assert_eq!(text::glyph_outline(FontId::Regular, u16::MAX), None);
}

/// Difference of two pictures on white, as the mean over all pixels and channels, 0 to 255.
fn difference(ours: &RgbaImage, theirs: &resvg::tiny_skia::Pixmap) -> f64 {
    let on_white = |c: u8, a: u8| i32::from(c) * i32::from(a) / 255 + 255 - i32::from(a);
    let mut sum = 0;
    for (o, t) in ours.pixels().zip(theirs.pixels()) {
        let t = t.demultiply();
        let t = [t.red(), t.green(), t.blue(), t.alpha()];
        sum += (0..3)
            .map(|i| (on_white(o.0[i], o.0[3]) - on_white(t[i], t[3])).abs())
            .sum::<i32>();
    }
    f64::from(sum) / f64::from(ours.width() * ours.height() * 3)
}

/// Against another painter: resvg reads and paints the source drawing by itself.
#[test]
fn symbols_look_as_resvg_paints_their_sources() {
    use resvg::{tiny_skia, usvg};
    let symbols = daystrand::symbols::library::library().all();
    assert!(!symbols.is_empty());
    for symbol in symbols.iter().step_by(5) {
        let side = 120;
        let ours = raster::paint_art(&symbol.drawn(Default::default()).art, side);
        let tree = usvg::Tree::from_str(symbol.svg(), &usvg::Options::default()).unwrap();
        let mut theirs = tiny_skia::Pixmap::new(side, side).unwrap();
        let scale = side as f32 / tree.size().width();
        let to_px = tiny_skia::Transform::from_scale(scale, scale);
        resvg::render(&tree, to_px, &mut theirs.as_mut());
        let d = difference(&ours, &theirs);
        assert!(d < 0.5, "{} differs by {d:.2}", symbol.id);
        assert!(
            ours.pixels().any(|p| p.0[3] == 255),
            "{} is empty",
            symbol.id
        );
    }
}
