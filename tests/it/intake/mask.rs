//! What is kept of a photograph and what is not.

use std::sync::Arc;

use daystrand::intake::{Ground, Kind, Mask, Photo, Recipe};
use image::{Rgba, RgbaImage};

/// A red square of 20 on a white ground of 60 that darkens a little downwards, with a white island
/// inside the square.
fn scene() -> Photo {
    let picture = RgbaImage::from_fn(60, 60, |x, y| {
        let ground = 255 - (y / 4) as u8;
        let inside = |low, high| (low..high).contains(&x) && (low..high).contains(&y);
        match (inside(20, 40), inside(28, 32)) {
            (true, false) => Rgba([200, 30, 30, 255]),
            _ => Rgba([ground, ground, ground, 255]),
        }
    });
    Photo::from_pixels(picture, Vec::new())
}

#[test]
fn a_brush_marks_what_lies_within_its_radius() {
    let photo = scene();
    let mut mask = Mask::new(&photo);
    assert_eq!(mask.share_kept(), 1.0);
    mask.brush([10.0, 10.0], [30.0, 10.0], 3.0, false);
    for y in 0..60 {
        for x in 0..60 {
            let (px, py) = (x as f32 + 0.5, y as f32 + 0.5);
            let dx = px - px.clamp(10.0, 30.0);
            let inside = dx * dx + (py - 10.0).powi(2) <= 9.0;
            assert_eq!(mask.keeps(x, y), !inside, "{x} {y}");
        }
    }
    mask.brush([20.0, 10.0], [20.0, 10.0], 100.0, true);
    assert_eq!(mask.share_kept(), 1.0);
    let whole = mask.clone();
    for odd in [f32::NAN, f32::INFINITY, -1e30] {
        mask.brush([odd, 1.0], [1.0, odd], odd, false);
    }
    assert_eq!(mask, whole);
    mask.brush([-1e30, -1e30], [1e30, 1e30], 1.0, false);
}

#[test]
fn pouring_stops_at_another_colour_and_does_not_jump() {
    let photo = scene();
    let mut mask = Mask::new(&photo);
    mask.flood(&photo, [0, 0], 12.0, false);
    for y in 0..60 {
        for x in 0..60 {
            let square = (20..40).contains(&x) && (20..40).contains(&y);
            assert_eq!(mask.keeps(x, y), square, "{x} {y}: the island inside stays");
        }
    }
    mask.invert();
    assert!(mask.keeps(0, 0) && !mask.keeps(30, 30));
    mask.clear();
    // With almost no tolerance only the first rows look alike, each four high being one grey.
    mask.flood(&photo, [0, 0], 0.2, false);
    assert!(!mask.keeps(59, 3) && mask.keeps(0, 4));
    mask.flood(&photo, [60, 0], 10.0, false);
    mask.flood(&photo, [0, 59], f32::NAN, false);
}

/// CIE 1976 difference between sRGB red (255, 0, 0) and white: L*a*b* of red is 53.24, 80.09, 67.20
/// (values published widely for D65, from memory), of white 100, 0, 0; so 114.5 apart.
#[test]
fn tolerance_is_the_distance_in_lab() {
    let picture = RgbaImage::from_fn(2, 1, |x, _| {
        Rgba(if x == 0 {
            [255, 0, 0, 255]
        } else {
            [255, 255, 255, 255]
        })
    });
    let photo = Photo::from_pixels(picture, Vec::new());
    let poured = |tolerance| {
        let mut mask = Mask::new(&photo);
        mask.flood(&photo, [0, 0], tolerance, false);
        !mask.keeps(1, 0)
    };
    assert!(poured(115.0) && !poured(114.0));
}

#[test]
fn an_edge_is_soft_and_the_ground_is_what_was_asked_for() {
    let photo = scene();
    let mut mask = Mask::new(&photo);
    mask.flood(&photo, [0, 0], 12.0, false);
    let mut recipe = Recipe {
        mask: Some(Arc::new(mask)),
        ..Recipe::default()
    };
    let clear = photo.preview(&recipe, 60);
    let row: Vec<u8> = (16..24).map(|x| clear.get_pixel(x, 25).0[3]).collect();
    assert_eq!(row, [0, 0, 0, 64, 191, 255, 255, 255]);
    assert_eq!(photo.develop(&recipe, 60).kind, Kind::Png);
    recipe.ground = Ground::White;
    let white = photo.preview(&recipe, 60);
    assert_eq!(white.get_pixel(0, 59).0, [255; 4]);
    assert!(white.pixels().all(|p| p.0[3] == 255));
    assert_eq!(photo.develop(&recipe, 60).kind, Kind::Jpeg);
}

#[test]
fn a_mask_survives_being_written_as_bits() {
    let photo = scene();
    let mut mask = Mask::new(&photo);
    mask.brush([7.0, 7.0], [50.0, 33.0], 2.5, false);
    let bits = mask.to_bits();
    assert_eq!(bits.len(), 60 * 60 / 8);
    assert_eq!(Mask::from_bits(60, 60, &bits), Some(mask));
    assert_eq!(Mask::from_bits(60, 59, &bits), None);
    assert_eq!(Mask::from_bits(0, 60, &[]), None);
    assert_eq!(Mask::from_bits(100_000, 100_000, &bits), None);
}
