//! The way up of a photograph: TIFF 6.0 (1992), section "Baseline fields", and Exif 2.32 (CIPA DC-008),
//! tag 0x0112. For each value the standard says which side of what is seen the first row and the
//! first column of the stored picture are.

use daystrand::intake::{Taken, take};
use image::{Rgb, RgbImage};

use crate::intake::making::{chunk, exif, segment, webp, with_segments};

/// Value; side of the first row; side of the first column.
const SIDES: [(u16, &str, &str); 8] = [
    (1, "top", "left"),
    (2, "top", "right"),
    (3, "bottom", "right"),
    (4, "bottom", "left"),
    (5, "left", "top"),
    (6, "right", "top"),
    (7, "right", "bottom"),
    (8, "left", "bottom"),
];

const SEEN: (u32, u32) = (24, 16);

/// What is to be seen: a red ground, green top left, blue top right, white bottom left.
fn seen(x: u32, y: u32) -> [u8; 3] {
    match (x < 8, y < 8, x >= 16) {
        (true, true, _) => [0, 200, 0],
        (_, true, true) => [0, 0, 200],
        (true, false, _) => [250, 250, 250],
        _ => [200, 0, 0],
    }
}

/// The picture as a camera stores it under a value.
fn stored(row_side: &str, column_side: &str) -> RgbImage {
    let turned = matches!(row_side, "left" | "right");
    let (w, h) = if turned { (SEEN.1, SEEN.0) } else { SEEN };
    RgbImage::from_fn(w, h, |column, row| {
        // How far from a side of what is seen the place lies along each of its axes.
        let (mut x, mut y) = (0, 0);
        for (side, distance) in [(row_side, row), (column_side, column)] {
            match side {
                "top" => y = distance,
                "bottom" => y = SEEN.1 - 1 - distance,
                "left" => x = distance,
                _ => x = SEEN.0 - 1 - distance,
            }
        }
        Rgb(seen(x, y))
    })
}

fn as_jpeg(picture: &RgbImage, value: u16) -> Vec<u8> {
    let mut plain = Vec::new();
    let encoder = image::codecs::jpeg::JpegEncoder::new_with_quality(&mut plain, 95);
    picture.write_with_encoder(encoder).unwrap();
    let block = [&b"Exif\0\0"[..], &exif(value, b"words")].concat();
    with_segments(&plain, &[segment(0xE1, &block)])
}

fn as_png(picture: &RgbImage, value: u16) -> Vec<u8> {
    let mut plain = Vec::new();
    let encoder = image::codecs::png::PngEncoder::new(&mut plain);
    picture.write_with_encoder(encoder).unwrap();
    let block = chunk(b"eXIf", &exif(value, b"words"));
    [&plain[..33], &block, &plain[33..]].concat()
}

fn as_webp(picture: &RgbImage, value: u16) -> Vec<u8> {
    let mut plain = Vec::new();
    let (w, h) = picture.dimensions();
    image_webp::WebPEncoder::new(&mut plain)
        .encode(picture, w, h, image_webp::ColorType::Rgb8)
        .unwrap();
    let sides = [w as u8 - 1, 0, 0, h as u8 - 1, 0, 0];
    webp(&[
        (b"VP8X", [&[8, 0, 0, 0], &sides[..]].concat()),
        (b"VP8L", plain[20..].to_vec()),
        (b"EXIF", exif(value, b"words")),
    ])
}

#[test]
fn all_eight_ways_up_come_out_upright() {
    for (value, row_side, column_side) in SIDES {
        let picture = stored(row_side, column_side);
        let files = [
            ("a.jpg", as_jpeg(&picture, value), 24),
            ("a.png", as_png(&picture, value), 0),
            ("a.webp", as_webp(&picture, value), 0),
        ];
        for (name, file, most) in files {
            let Ok(Taken::Photo(photo)) = take(name, &file) else {
                panic!("{name} {value}");
            };
            assert_eq!(photo.size(), [SEEN.0, SEEN.1], "{name} {value}");
            for (x, y, p) in photo.pixels().enumerate_pixels() {
                let wanted = seen(x, y);
                for i in 0..3 {
                    let off = p.0[i].abs_diff(wanted[i]);
                    assert!(off <= most, "{name} {value} at {x} {y}: {p:?} {wanted:?}");
                }
            }
        }
    }
}

#[test]
fn a_value_that_the_standard_does_not_know_changes_nothing() {
    let picture = stored("top", "left");
    for value in [0, 9, 257, 65_535] {
        let Ok(Taken::Photo(photo)) = take("a.png", &as_png(&picture, value)) else {
            panic!("{value}");
        };
        assert_eq!(photo.size(), [SEEN.0, SEEN.1]);
    }
}
