//! Drawings that stay drawings look as another renderer paints the original: resvg, which paints
//! the tree that usvg reads, while ours is said anew as flat shapes and painted by our own painter.
//! The drawings are in `tests/cases/svg`.

use std::fs;
use std::path::PathBuf;

use daystrand::intake::{Taken, take};
use daystrand::raster::paint_art;
use daystrand::symbols::parse::parse;
use image::RgbaImage;
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};

const PX: u32 = 240;

/// The original as resvg paints it, in the middle of the square; with a margin of six of 240 on
/// each side or without.
fn original(svg: &str, margin: f32) -> RgbaImage {
    let tree = Tree::from_str(svg, &Options::default()).unwrap();
    let (w, h) = (tree.size().width(), tree.size().height());
    let scale = (PX as f32 - 2.0 * margin) / w.max(h);
    let (x, y) = ((PX as f32 - w * scale) / 2.0, (PX as f32 - h * scale) / 2.0);
    let mut picture = Pixmap::new(PX, PX).unwrap();
    // By itself first, so that nothing beyond its edges is seen.
    let sides = [w, h].map(|v| (v * scale).ceil() as u32);
    let mut own = Pixmap::new(sides[0], sides[1]).unwrap();
    let place = |x: f32, y: f32| Transform::from_row(scale, 0.0, 0.0, scale, x, y);
    resvg::render(&tree, place(x.fract(), y.fract()), &mut own.as_mut());
    let paint = resvg::tiny_skia::PixmapPaint::default();
    let whole = Transform::identity();
    picture.draw_pixmap(x as i32, y as i32, own.as_ref(), &paint, whole, None);
    let pixels = picture.pixels().iter().flat_map(|p| {
        let c = p.demultiply();
        [c.red(), c.green(), c.blue(), c.alpha()]
    });
    RgbaImage::from_raw(PX, PX, pixels.collect()).unwrap()
}

/// Mean difference on white, of 255.
fn difference(a: &RgbaImage, b: &RgbaImage) -> f64 {
    let on_white = |p: &[u8; 4], i: usize| {
        let alpha = f64::from(p[3]) / 255.0;
        f64::from(p[i]) * alpha + 255.0 * (1.0 - alpha)
    };
    let each = a
        .pixels()
        .zip(b.pixels())
        .flat_map(|(a, b)| (0..3).map(move |i| (on_white(&a.0, i) - on_white(&b.0, i)).abs()));
    each.sum::<f64>() / f64::from(a.width() * a.height() * 3)
}

#[test]
fn drawings_look_as_another_renderer_paints_them() {
    let dir = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/cases/svg");
    let mut files: Vec<_> = fs::read_dir(dir)
        .unwrap()
        .map(|e| e.unwrap().path())
        .collect();
    files.retain(|f| f.extension().is_some_and(|e| e == "svg"));
    files.sort();
    assert!(files.len() >= 20);
    for file in files {
        let svg = fs::read_to_string(&file).unwrap();
        let name = file.file_name().unwrap().to_string_lossy();
        let taken = take(&name, svg.as_bytes());
        let Ok(Taken::Drawing(drawing)) = taken else {
            panic!("{name}: {taken:?}");
        };
        assert!(drawing.notes.is_empty(), "{name}: {:?}", drawing.notes);
        let ours = paint_art(&parse(&drawing.svg).unwrap(), PX);
        // With its margin or without: one of the two, for all of it.
        let off = [0.0, 6.0].map(|m| difference(&ours, &original(&svg, m)));
        let off = off[0].min(off[1]);
        assert!(off <= 0.35, "{name}: {off}");
    }
}
