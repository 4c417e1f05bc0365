//! What is written: read by the reader of the symbols, seen as it was drawn, small, the same again.

use daystrand::drawing::colours::{COLOURS, WIDTHS};
use daystrand::drawing::gesture::{Gesture, Look, Pen, Spot};
use daystrand::drawing::sketch::Sketch;
use daystrand::raster::paint_art;
use daystrand::symbols::art::Art;
use daystrand::symbols::library::library;
use daystrand::symbols::palette;
use daystrand::symbols::parse::parse;
use daystrand::symbols::variant::Variant;

use resvg::{tiny_skia, usvg};

use super::{PEN, RED, Tremble, along, circle, drawn, pixels, spots};

/// A bit of everything.
fn everything() -> Sketch {
    let both = Pen {
        look: Look::Both,
        colour: RED,
        ..PEN
    };
    let pressed: Vec<Spot> = (0..100)
        .map(|i| Spot {
            force: Some(f64::from(i % 50) / 50.0),
            ..Spot::new(20.0 + 2.0 * f64::from(i), 20.0 + f64::from(i % 9))
        })
        .collect();
    drawn(&[
        (
            Gesture::Rectangle(Spot::new(30.0, 150.0), Spot::new(210.0, 220.0)),
            both,
        ),
        (
            Gesture::Ellipse(Spot::new(60.0, 40.0), Spot::new(180.0, 120.0)),
            both,
        ),
        (Gesture::Stroke(circle((120.0, 120.0), 70.0, 100, 0.5)), PEN),
        (
            Gesture::Rounded(spots([
                (20.0, 60.0),
                (60.0, 40.0),
                (50.0, 110.0),
                (20.0, 120.0),
            ])),
            both,
        ),
        (Gesture::Stroke(pressed), PEN),
        (
            Gesture::Fill(Spot::new(120.0, 135.0)),
            Pen {
                colour: COLOURS[10].1,
                ..PEN
            },
        ),
        (
            Gesture::Erase(along(&[(10.0, 200.0), (230.0, 180.0)]), 12.0),
            PEN,
        ),
    ])
}

/// The share of pixels that differ by more than a hair in any channel.
fn differing(a: &image::RgbaImage, b: &image::RgbaImage) -> f64 {
    let far = |(p, q): (&image::Rgba<u8>, &image::Rgba<u8>)| {
        p.0.iter().zip(q.0).any(|(x, y)| x.abs_diff(y) > 24)
    };
    let count = a.pixels().zip(b.pixels()).filter(|pair| far(*pair)).count();
    count as f64 / f64::from(a.width() * a.height())
}

#[test]
fn what_is_read_is_seen_as_it_was_drawn() {
    for tidy in [false, true] {
        let mut sketch = everything();
        sketch.set_tidy(tidy);
        let read = parse(&sketch.svg()).expect("a symbol");
        let off = differing(&pixels(&sketch), &paint_art(&read, 960));
        assert!(off < 0.0005, "{off} of the pixels, tidy {tidy}");
    }
}

/// Painted on white by resvg alone.
fn resvg_paints(text: &str, side: u32) -> tiny_skia::Pixmap {
    let tree = usvg::Tree::from_str(text, &usvg::Options::default()).expect("readable SVG");
    let mut map = tiny_skia::Pixmap::new(side, side).expect("a size above zero");
    map.fill(tiny_skia::Color::WHITE);
    let scale = side as f32 / tree.size().width();
    let at = tiny_skia::Transform::from_scale(scale, scale);
    resvg::render(&tree, at, &mut map.as_mut());
    map
}

/// The SVG reader and painter of resvg see the same.
#[test]
fn another_reader_sees_the_same() {
    let sketch = everything();
    let theirs = resvg_paints(&sketch.svg(), 480);
    let mut ours = image::RgbaImage::from_pixel(480, 480, image::Rgba([255; 4]));
    image::imageops::overlay(&mut ours, &paint_art(&sketch.art(), 480), 0, 0);
    let theirs = image::RgbaImage::from_raw(480, 480, theirs.data().to_vec()).expect("pixels");
    assert!(differing(&ours, &theirs) < 0.001);
}

#[test]
fn opened_again_it_is_the_same_and_gives_the_same_bytes() {
    for tidy in [false, true] {
        let mut sketch = everything();
        sketch.set_tidy(tidy);
        let text = sketch.svg();
        let mut again = Sketch::open(&text).expect("its own text");
        assert_eq!(again.tidy(), tidy);
        assert_eq!(again.svg(), text);
        assert!(!again.is_changed());
        assert!(
            again.things().eq(sketch.things()),
            "shapes are things again"
        );
        assert!(again.draw(
            &Gesture::Line(Spot::new(9.0, 9.0), Spot::new(99.0, 9.0)),
            PEN
        ));
        assert!(again.is_changed() && again.undo() && !again.is_changed());
        assert_eq!(
            everything().svg(),
            drawn(&[]).svg().replace("</svg>\n", "") + &body(&everything())
        );
    }
}

/// All lines after the first.
fn body(sketch: &Sketch) -> String {
    let svg = sketch.svg();
    svg.split_once('\n').expect("lines").1.to_owned()
}

/// Lines end as the club's file keeps them: joined anew, and read just the same.
#[test]
fn a_drawing_kept_by_the_club_is_opened_again() {
    let mut sketch = everything();
    sketch.set_tidy(true);
    let kept = daystrand::model::picture::Drawing::new(&sketch.svg());
    let again = Sketch::open(kept.svg()).expect("what the club kept");
    assert!(again.tidy() && again.things().eq(sketch.things()));
}

#[test]
fn two_hundred_lines_take_less_than_200_kilobytes() {
    let mut sketch = Sketch::new();
    let mut t = Tremble(4711);
    for i in 0..200 {
        let (mut x, mut y, mut turn) = (120.0, 120.0, t.next() * 3.0);
        let hand = spots((0..250).map(|_| {
            turn += 0.4 * t.next();
            x = (x + 1.5 * turn.cos()).clamp(10.0, 230.0);
            y = (y + 1.5 * turn.sin()).clamp(10.0, 230.0);
            (x, y)
        }));
        let width = WIDTHS[i % 3];
        assert!(sketch.draw(&Gesture::Stroke(hand), Pen { width, ..PEN }));
    }
    let size = sketch.svg().len();
    assert!(size < 200_000, "{size} bytes");
    assert!(parse(&sketch.svg()).is_ok());
}

#[test]
fn every_symbol_can_be_started_from() {
    for symbol in library().all() {
        let drawn = library().art(&symbol.id, Variant::default());
        let mut sketch = Sketch::new();
        sketch.start_from(&drawn.art);
        let read: Art = parse(&sketch.svg()).unwrap_or_else(|e| panic!("{}: {e}", symbol.id));
        // The painter counts four lines in a pixel: the hundredth of a unit can tip one of them.
        let off = differing(&paint_art(&drawn.art, 240), &paint_art(&read, 240));
        assert!(off < 0.004, "{}: {off}", symbol.id);
    }
}

#[test]
fn colours_are_those_of_the_symbols() {
    for (name, colour) in COLOURS {
        assert!(palette::ALL.iter().any(|(_, c)| *c == colour), "{name}");
        assert!(!name.is_empty());
    }
}

#[test]
fn what_is_no_drawing_is_refused_with_a_reason() {
    let e =
        Sketch::open("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><text/></svg>");
    assert!(
        e.expect_err("no text in drawings")
            .to_string()
            .contains("<text>")
    );
}

/// What can be painted can be opened, whatever another program made of its lines.
#[test]
fn a_tidied_drawing_whose_lines_were_changed_opens_with_all_that_is_there() {
    let mut sketch = everything();
    sketch.set_tidy(true);
    let text = sketch.svg();
    assert!(Sketch::open(&text).unwrap().tidy());
    let made = text.lines().find(|l| l.starts_with("<path id=\"")).unwrap();
    let changed = text.replacen(made, &made.replace("/>", ">\n</path>"), 1);
    assert_ne!(changed, text);
    let all = parse(&changed).unwrap();
    let opened = Sketch::open(&changed).unwrap();
    assert!(!opened.tidy());
    assert_eq!(opened.things().len(), all.nodes.len());
}
