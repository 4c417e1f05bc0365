//! What is seen is what is printed: the program's own picture of a page against the PDF painted by
//! an independent reader (hayro).

use daystrand::page::Page;
use daystrand::raster::paint;

use super::sample;
use super::size::painted;

/// Share of pixels that differ by more than a quarter of full scale: soft edges fall differently,
/// a lost, moved or dashed line does not pass.
fn difference(page: &Page, index: usize) -> f64 {
    let dpi = 144.0;
    let own = paint(page, dpi).expect("a picture");
    let other = painted(&sample::file(), index, dpi);
    let (w, h) = (
        own.width().min(u32::from(other.width())),
        own.height().min(u32::from(other.height())),
    );
    assert!(own.width() - w <= 1 && own.height() - h <= 1);
    let mut differ = 0_u32;
    for y in 0..h {
        for x in 0..w {
            let a = own.get_pixel(x, y).0;
            let b = other.data()[(y * u32::from(other.width()) + x) as usize];
            let far = |a: u8, b: u8| a.abs_diff(b) > 64;
            differ += u32::from(far(a[0], b.r) || far(a[1], b.g) || far(a[2], b.b));
        }
    }
    f64::from(differ) / f64::from(w * h)
}

#[test]
fn tiles_look_the_same() {
    let differ = difference(&sample::tiles(), 0);
    assert!(differ < 0.002, "{:.3} %", differ * 100.0);
}

#[test]
fn words_look_the_same() {
    let differ = difference(&sample::words(), 1);
    assert!(differ < 0.002, "{:.3} %", differ * 100.0);
}
