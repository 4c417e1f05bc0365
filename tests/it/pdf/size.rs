//! True to size: painted by an independent reader (hayro) at 300 dpi and measured at the middle of
//! the lines, to 0.05 mm: half of what an office printer can place.

use daystrand::export::pdf::pdf;
use daystrand::units::Size;
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::vello_cpu::Pixmap;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{PixmapSettings, RenderCache, RenderSettings, render};

use super::sample;

const DPI: f64 = 300.0;
const TOLERANCE_MM: f64 = 0.05;

/// Paints one page.
pub fn painted(bytes: &[u8], page: usize, dpi: f64) -> Pixmap {
    let pdf = Pdf::new(bytes.to_vec()).expect("a PDF");
    let scale = (dpi / 72.0) as f32;
    let settings = PixmapSettings {
        x_scale: scale,
        y_scale: scale,
        bg_color: WHITE,
    };
    render(
        &pdf.pages()[page],
        &RenderCache::new(),
        &InterpreterSettings::default(),
        &RenderSettings {
            hinting: false,
            glyph_caching: false,
            ..Default::default()
        },
        &settings,
    )
}

/// How red each pixel of a row or column is, 0 to 1.
fn redness(map: &Pixmap, at: impl Fn(usize) -> (usize, usize), count: usize) -> Vec<f64> {
    let data = map.data();
    (0..count)
        .map(|i| {
            let (x, y) = at(i);
            let p = data[y * usize::from(map.width()) + x];
            // White has blue 255, the measured red has blue 0.
            f64::from(u8::from(p.r > 200)) * (255.0 - f64::from(p.b)) / 255.0
        })
        .collect()
}

/// Middles of the red stretches, in millimetres: weighted, so soft edges count by their share.
fn middles(row: &[f64]) -> Vec<f64> {
    let mut out = Vec::new();
    let (mut weight, mut moment) = (0.0, 0.0);
    for (i, r) in row.iter().chain(&[0.0]).enumerate() {
        if *r > 0.02 {
            weight += r;
            moment += r * (i as f64 + 0.5);
        } else if weight > 0.0 {
            out.push(moment / weight * 25.4 / DPI);
            (weight, moment) = (0.0, 0.0);
        }
    }
    out
}

fn px(mm: f64) -> usize {
    (mm / 25.4 * DPI) as usize
}

fn near(got: f64, wanted: f64) {
    assert!(
        (got - wanted).abs() <= TOLERANCE_MM,
        "{got:.3} mm, not {wanted} mm"
    );
}

#[test]
fn a_square_of_60_mm_is_60_mm_and_where_it_belongs() {
    let map = painted(&sample::file(), 0, DPI);
    let across = middles(&redness(&map, |i| (i, px(30.0)), usize::from(map.width())));
    assert_eq!(across.len(), 2, "{across:?}");
    near(across[0], 20.0);
    near(across[1] - across[0], 60.0);
    let down = middles(&redness(&map, |i| (px(40.0), i), px(85.0)));
    assert_eq!(down.len(), 2, "{down:?}");
    near(down[0], 20.0);
    near(down[1] - down[0], 60.0);
}

#[test]
fn a_bar_of_100_mm_is_100_mm() {
    let map = painted(&sample::file(), 0, DPI);
    let row = redness(&map, |i| (i, px(60.0)), usize::from(map.width()));
    let reds: f64 = row[px(90.0)..].iter().sum();
    // Round ends add half a line width on either side.
    near(reds * 25.4 / DPI - sample::LINE_MM, 100.0);
}

#[test]
fn pages_have_the_size_of_their_paper() {
    let letter = {
        let mut page = sample::words();
        page.size = Size::mm(215.9, 279.4);
        page
    };
    let bytes = pdf(&[sample::tiles(), letter], &sample::meta());
    let doc = lopdf::Document::load_mem(&bytes).expect("a PDF");
    let sizes = [(595.2756, 841.8898), (612.0, 792.0)];
    for (id, (w, h)) in doc.get_pages().into_values().zip(sizes) {
        let page = doc.get_dictionary(id).expect("a page");
        for name in [&b"MediaBox"[..], b"TrimBox", b"BleedBox", b"CropBox"] {
            let area = page
                .get(name)
                .and_then(lopdf::Object::as_array)
                .expect("a box");
            let at = |i: usize| f64::from(area[i].as_float().expect("a number"));
            assert!(at(0) == 0.0 && at(1) == 0.0);
            assert!(
                (at(2) - w).abs() < 1e-3 && (at(3) - h).abs() < 1e-3,
                "{area:?}"
            );
        }
    }
    let map = painted(&bytes, 1, 72.0);
    assert_eq!((map.width(), map.height()), (612, 792));
}
