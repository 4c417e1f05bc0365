//! What a recipe makes of a photograph.

use daystrand::intake::{Frame, Kind, Photo, Recipe, Shape};
use daystrand::symbols::pixels::to_grey;
use daystrand::units::colour::Rgb;
use image::{Rgba, RgbaImage};

use super::pictures::{colour, difference};
use super::{photo, picture};

fn in_grey(picture: &RgbaImage) -> RgbaImage {
    let mut grey = picture.clone();
    to_grey(&mut grey);
    grey
}

fn test_picture() -> Photo {
    photo("rgb8.png", &picture("rgb8.png"))
}

fn framed(centre: [f32; 2], width: f32, shape: Shape) -> Recipe {
    Recipe {
        frame: Some(Frame {
            centre,
            width,
            shape,
        }),
        ..Recipe::default()
    }
}

#[test]
fn nothing_asked_nothing_changed() {
    let photo = test_picture();
    let shown = photo.preview(&Recipe::default(), 2362);
    assert_eq!(difference(&shown, colour), (0.0, 0));
    let jpeg = super::photo("a.jpg", &picture("baseline-444.jpg"));
    assert!(Recipe::default().changes_nothing());
    let kept = jpeg.develop(&Recipe::default(), 48);
    assert_eq!((kept.kind, kept.width, kept.height), (Kind::Jpeg, 48, 32));
    let scan = |b: &[u8]| b[b.windows(2).position(|w| w == b"\xFF\xDA").unwrap()..].to_vec();
    assert_eq!(scan(&kept.bytes), scan(&picture("baseline-444.jpg")));
    assert_ne!(jpeg.develop(&Recipe::default(), 47).width, 48);
}

#[test]
fn quarter_turns_move_every_pixel_where_it_belongs() {
    let photo = test_picture();
    for turns in 0..8_u8 {
        let recipe = Recipe {
            quarter_turns: turns,
            ..Recipe::default()
        };
        let shown = photo.preview(&recipe, 100);
        let wanted = match turns % 4 {
            0 => photo.pixels().clone(),
            1 => image::imageops::rotate90(photo.pixels()),
            2 => image::imageops::rotate180(photo.pixels()),
            _ => image::imageops::rotate270(photo.pixels()),
        };
        assert_eq!(shown, wanted, "{turns}");
    }
}

#[test]
fn a_frame_cuts_its_shape_pixel_on_pixel() {
    let photo = test_picture();
    let square = photo.preview(&framed([0.5, 0.5], 0.5, Shape::Square), 100);
    assert_eq!(square.dimensions(), (24, 24));
    assert_eq!(square.get_pixel(0, 0).0, colour(12, 4));
    assert_eq!(square.get_pixel(23, 23).0, colour(35, 27));
    let upright = photo.preview(&framed([0.5, 0.5], 0.5, Shape::Upright), 100);
    assert_eq!(upright.dimensions(), (24, 32));
    let across = photo.preview(&framed([0.5, 0.5], 0.5, Shape::Across), 100);
    assert_eq!(across.dimensions(), (24, 18));
    let free = photo.preview(&framed([0.25, 0.25], 0.5, Shape::Free { height: 0.5 }), 100);
    assert_eq!(free.dimensions(), (24, 16));
    assert_eq!(free.get_pixel(0, 0).0, colour(0, 0));
    // Beyond the edge there is nothing.
    let over = photo.preview(&framed([0.0, 0.0], 0.5, Shape::Square), 100);
    assert_eq!(over.get_pixel(11, 11).0, [0; 4]);
    assert_eq!(over.get_pixel(12, 12).0, colour(0, 0));
}

#[test]
fn straightening_turns_clockwise_about_the_middle_and_leaves_no_empty_corner() {
    let line = RgbaImage::from_fn(201, 201, |x, y| {
        // A line whose top leans to the left by ten degrees: turned clockwise it stands.
        let (dx, dy) = (f64::from(x) - 100.0, f64::from(y) - 100.0);
        let off = dx * 10_f64.to_radians().cos() + -dy * 10_f64.to_radians().sin();
        let black = off.abs() < 3.0;
        Rgba(if black { [0, 0, 0, 255] } else { [255; 4] })
    });
    let photo = Photo::from_pixels(line, Vec::new());
    for degrees in [10.0, -10.0] {
        let recipe = Recipe {
            straighten: degrees,
            ..Recipe::default()
        };
        let shown = photo.preview(&recipe, 500);
        assert!(shown.pixels().all(|p| p.0[3] == 255), "{degrees}");
        let (w, h) = shown.dimensions();
        let dark = (0..h).all(|y| shown.get_pixel(w / 2, y).0[0] < 30);
        assert_eq!(dark, degrees > 0.0, "{degrees}");
    }
    let odd = Recipe {
        straighten: f32::NAN,
        brightness: f32::INFINITY,
        contrast: f32::NAN,
        quarter_turns: 255,
        frame: Some(Frame {
            centre: [f32::NAN, 1e30],
            width: f32::NAN,
            shape: Shape::Free { height: -1.0 },
        }),
        ..Recipe::default()
    };
    assert!(photo.develop(&odd, 0).width > 0);
}

#[test]
fn brightness_and_contrast_follow_their_curves() {
    let ramp = RgbaImage::from_fn(256, 1, |x, _| Rgba([x as u8, x as u8, x as u8, 255]));
    let photo = Photo::from_pixels(ramp, Vec::new());
    for (brightness, contrast) in [(50.0, 0.0), (-100.0, 0.0), (0.0, 50.0), (30.0, -100.0)] {
        let recipe = Recipe {
            brightness,
            contrast,
            ..Recipe::default()
        };
        let shown = photo.preview(&recipe, 256);
        for x in 0..256_u32 {
            let power = (-f64::from(brightness) / 100.0).exp2();
            let factor = (f64::from(contrast) / 50.0).exp2();
            let value = ((f64::from(x) / 255.0).powf(power) - 0.5) * factor + 0.5;
            let wanted = (value.clamp(0.0, 1.0) * 255.0).round();
            let got = f64::from(shown.get_pixel(x, 0).0[0]);
            assert!((got - wanted).abs() <= 1.0, "{x}: {got} {wanted}");
        }
    }
}

/// Stripes of black and white, one pixel each, are half the light: 188 of 255 (IEC 61966-2-1: 0.5
/// is the light of 0.7354), where a mean of the numbers would give 128.
#[test]
fn shrinking_keeps_the_light() {
    let stripes = RgbaImage::from_fn(200, 200, |x, _| {
        let v = if x % 2 == 0 { 0 } else { 255 };
        Rgba([v, v, v, 255])
    });
    let photo = Photo::from_pixels(stripes, Vec::new());
    for px in [100, 50, 25] {
        let shown = photo.preview(&Recipe::default(), px);
        assert_eq!(shown.dimensions(), (px, px));
        assert!(shown.pixels().all(|p| p.0 == [188, 188, 188, 255]), "{px}");
    }
    let odd = photo.preview(&Recipe::default(), 77);
    assert_eq!(odd.dimensions(), (77, 77));
}

#[test]
fn the_same_input_gives_the_same_bytes() {
    let recipe = Recipe {
        straighten: 7.0,
        contrast: 20.0,
        ..framed([0.4, 0.5], 0.6, Shape::Square)
    };
    let first = test_picture().develop(&recipe, 30);
    assert_eq!(first, test_picture().develop(&recipe, 30));
    assert_eq!(first, test_picture().clone().develop(&recipe.clone(), 30));
}

#[test]
fn a_washed_out_picture_stays_readable_in_grey() {
    let washed = RgbaImage::from_fn(100, 10, |x, _| {
        let v = 140 + x as u8;
        Rgba([v, v, v, 255])
    });
    let grey = in_grey(&washed);
    let (first, last) = (grey.get_pixel(1, 0).0[0], grey.get_pixel(98, 0).0[0]);
    assert!(first <= 13 && last >= 247, "{first} {last}");
    // Of almost one grey no noise is made: at most two and a half times the difference.
    let flat = RgbaImage::from_fn(100, 10, |x, _| Rgba([200 + (x % 2) as u8, 200, 200, 255]));
    let flat = in_grey(&flat);
    let values: Vec<u8> = flat.pixels().map(|p| p.0[0]).collect();
    let spread = values.iter().max().unwrap() - values.iter().min().unwrap();
    assert!(spread <= 3, "{spread}");
    // What has its full range already is turned grey as everywhere and hardly moved.
    let full = RgbaImage::from_fn(256, 64, |x, y| {
        let red = (x as u8).saturating_add(y as u8);
        Rgba([red, x as u8, x as u8, 255])
    });
    for (p, g) in full.pixels().zip(in_grey(&full).pixels()) {
        let wanted = Rgb(p.0[0], p.0[1], p.0[2]).to_grey().0;
        assert!(g.0[0].abs_diff(wanted) <= 12, "{p:?} {g:?} {wanted}");
        assert_eq!(g.0[0], g.0[2]);
    }
    assert_eq!(in_grey(&RgbaImage::new(3, 3)), RgbaImage::new(3, 3));
}
