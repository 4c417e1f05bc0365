//! How long photographs take, and how much memory: reading them, following a slider, keeping one.
//! `cargo bench --bench pictures` prints a table; nothing here is a test.

use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;

use image::codecs::jpeg::JpegEncoder;
use image::{ExtendedColorType, ImageEncoder, RgbImage};
use peak_alloc::PeakAlloc;

use daystrand::intake::{Frame, Ground, Mask, Photo, Recipe, Shape, Taken, take};

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

/// Pixels of a photograph while it is looked at, of its small tiles, and of one that is kept for
/// large print on A4.
const WORKED: u32 = 900;
const TILE: u32 = 260;
const KEPT: u32 = 1_300;

fn main() {
    for (name, width, height, is_jpeg) in [
        ("JPEG 12 megapixels", 4_000, 3_000, true),
        ("JPEG 24 megapixels", 6_000, 4_000, true),
        ("JPEG 50 megapixels", 8_660, 5_770, true),
        ("PNG 12 megapixels", 4_000, 3_000, false),
        ("PNG 50 megapixels", 8_660, 5_770, false),
    ] {
        let file = file(width, height, is_jpeg);
        println!("{name} ({:.1} MB):", file.len() as f64 / 1e6);
        let taken = measured("read and made clean", || take("a file", &file));
        let Ok(Taken::Photo(photo)) = taken else {
            println!(
                "  refused: {}",
                taken.err().map(|e| e.what).unwrap_or_default()
            );
            continue;
        };
        drop(file);
        used(&photo);
    }
}

fn used(photo: &Photo) {
    let small = measured("made small to be looked at", || {
        Photo::from_pixels(photo.preview(&Recipe::default(), WORKED), Vec::new())
    });
    let straightened = Recipe {
        frame: Some(Frame {
            centre: [0.5, 0.5],
            width: 0.6,
            shape: Shape::Square,
        }),
        straighten: 7.0,
        brightness: 20.0,
        ..Recipe::default()
    };
    measured("after a slider: whole and two tiles", || {
        black_box(small.preview(&straightened, WORKED));
        black_box(small.preview(&straightened, TILE))
    });
    let mut mask = measured("an empty mask", || Mask::new(photo));
    measured("ground poured away", || {
        mask.flood(photo, [3, 3], 12.0, false);
    });
    measured("kept, straightened", || photo.develop(&straightened, KEPT));
    let cut = Recipe {
        mask: Some(Arc::new(mask)),
        ground: Ground::Transparent,
        ..straightened
    };
    let kept = measured("kept, cut out", || photo.develop(&cut, KEPT));
    println!(
        "  {:<38} {:>8.0} kB",
        "its bytes",
        kept.bytes.len() as f64 / 1e3
    );
}

fn measured<T>(what: &str, run: impl FnOnce() -> T) -> T {
    let before = MEMORY.current_usage_as_mb();
    MEMORY.reset_peak_usage();
    let start = Instant::now();
    let result = run();
    let time = start.elapsed().as_secs_f64() * 1e3;
    let most = MEMORY.peak_usage_as_mb() - before;
    println!("  {what:<38} {time:>8.1} ms {most:>8.1} MB at most");
    result
}

/// A soft pattern with grain, which packs about as a photograph does.
fn file(width: u32, height: u32, is_jpeg: bool) -> Vec<u8> {
    let mut grain = 7_u32;
    let pixels = RgbImage::from_fn(width, height, |x, y| {
        grain = grain.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let noise = (grain >> 28) as u8;
        let inside = (x * 2).abs_diff(width) < width / 2 && (y * 2).abs_diff(height) < height / 2;
        let base = if inside { 60 } else { 200 };
        let wave = ((x / 40 + y / 60) % 16) as u8;
        image::Rgb([base + wave + noise / 4, base - wave, base / 2 + noise / 2])
    });
    let mut bytes = Vec::new();
    let colour = ExtendedColorType::Rgb8;
    let written = if is_jpeg {
        let encoder = JpegEncoder::new_with_quality(&mut bytes, 90);
        encoder.write_image(&pixels, width, height, colour)
    } else {
        let encoder = image::codecs::png::PngEncoder::new(&mut bytes);
        encoder.write_image(&pixels, width, height, colour)
    };
    written.map(|()| bytes).unwrap_or_default()
}
