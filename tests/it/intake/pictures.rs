//! Pictures of every kind come out as what was put in. The files are by other encoders
//! (`tests/cases/pictures/SOURCE`); what they show follows from formulas.

use image::RgbaImage;

use super::{photo, picture};

/// Colour at a place of the test picture.
pub fn colour(x: u32, y: u32) -> [u8; 4] {
    let blue = if x < 16 && y < 8 { 255 } else { 40 };
    [(x * 255 / 47) as u8, (y * 255 / 31) as u8, blue, 255]
}

fn opacity(x: u32, y: u32) -> u8 {
    if x >= 24 { 255 } else { (y * 8) as u8 }
}

fn grey(x: u32, y: u32) -> u8 {
    (x * 4 + y) as u8
}

fn clear(x: u32, y: u32) -> [u8; 4] {
    let [r, g, b, _] = colour(x, y);
    [r, g, b, opacity(x, y)]
}

fn of_grey(v: u8) -> [u8; 4] {
    [v, v, v, 255]
}

fn pattern(x: u32, y: u32) -> [u8; 4] {
    of_grey(if (x / 5 + y / 3) % 2 == 1 { 255 } else { 0 })
}

fn palette(x: u32, y: u32) -> [u8; 4] {
    let i = ((x + y) % 16) as u8;
    [i * 17, 255 - i * 17, i * 5, 255]
}

/// Mean and largest difference to a formula, over all four numbers of every pixel.
pub fn difference(got: &RgbaImage, wanted: impl Fn(u32, u32) -> [u8; 4]) -> (f64, u8) {
    assert_eq!(got.dimensions(), (48, 32));
    let each = got.enumerate_pixels().flat_map(|(x, y, p)| {
        let wanted = wanted(x, y);
        (0..4).map(move |i| p.0[i].abs_diff(wanted[i]))
    });
    let (sum, most) = each.fold((0.0, 0), |(s, m), d| (s + f64::from(d), d.max(m)));
    (sum / f64::from(got.width() * got.height() * 4), most)
}

#[test]
fn lossless_pictures_come_out_exactly() {
    type Formula = fn(u32, u32) -> [u8; 4];
    let of_greys: Formula = |x, y| of_grey(grey(x, y));
    let clear_greys: Formula = |x, y| {
        let v = grey(x, y);
        [v, v, v, opacity(x, y)]
    };
    let hole: Formula = |x, y| {
        let [r, g, b, _] = palette(x, y);
        [r, g, b, if (x + y) % 16 == 3 { 0 } else { 255 }]
    };
    let cases: [(&str, Formula); 15] = [
        ("rgb8.png", colour),
        ("rgba8.png", clear),
        ("grey8.png", of_greys),
        ("grey-alpha8.png", clear_greys),
        ("grey1.png", pattern),
        ("grey16.png", of_greys),
        ("rgb16.png", colour),
        ("rgba16.png", clear),
        ("interlaced.png", colour),
        ("interlaced16.png", clear),
        ("palette4.png", palette),
        ("palette-clear.png", hole),
        ("moving.png", colour),
        ("lossless.webp", colour),
        ("alpha-lossless.webp", clear),
    ];
    for (name, formula) in cases {
        let photo = photo(name, &picture(name));
        assert_eq!(difference(photo.pixels(), formula), (0.0, 0), "{name}");
    }
}

/// Bounds are about twice what the encoders' own decoders give (libjpeg-turbo, libwebp): the jump
/// of colour at the blue corner cannot survive halved colour resolution.
#[test]
fn lossy_pictures_come_out_nearly() {
    let cases = [
        ("baseline-444.jpg", 1.5),
        ("baseline-420.jpg", 3.0),
        ("progressive.jpg", 3.0),
        ("restart.jpg", 3.0),
        ("lossy.webp", 4.0),
    ];
    for (name, mean) in cases {
        let photo = photo(name, &picture(name));
        let (got, _) = difference(photo.pixels(), colour);
        assert!(got <= mean, "{name}: {got}");
    }
    let grey_jpeg = photo("grey.jpg", &picture("grey.jpg"));
    let (got, _) = difference(grey_jpeg.pixels(), |x, y| of_grey(grey(x, y)));
    assert!(got <= 1.5, "grey.jpg: {got}");
    let clear_webp = photo("alpha-lossy.webp", &picture("alpha-lossy.webp"));
    for (x, y, p) in clear_webp.pixels().enumerate_pixels() {
        assert_eq!(p.0[3], opacity(x, y), "opacity is packed without loss");
    }
}

/// The file holds inks made from the colours by `255 - colour` without black (Pillow's plain way),
/// turned round as Adobe does.
#[test]
fn inks_without_a_profile_darken_white_paper() {
    let cmyk = photo("cmyk.jpg", &picture("cmyk.jpg"));
    let (mean, _) = difference(cmyk.pixels(), colour);
    assert!(mean <= 3.0, "{mean}");
    assert_eq!(cmyk.notes.len(), 1);
    assert!(cmyk.notes[0].starts_with("Its colours are inks for a press"));
}

/// The file holds black as well, and its inks as light and colour (YCCK, Adobe Technical Note 5116).
#[test]
fn inks_as_light_and_colour_are_read_too() {
    let ycck = photo("ycck.jpg", &picture("ycck.jpg"));
    let (mean, _) = difference(ycck.pixels(), colour);
    assert!(mean <= 3.0, "{mean}");
    assert!(ycck.notes[0].starts_with("Its colours are inks for a press"));
}

#[test]
fn an_animation_gives_its_first_picture_and_says_so() {
    for name in ["moving.webp", "moving.png"] {
        let photo = photo(name, &picture(name));
        assert_eq!(difference(photo.pixels(), colour), (0.0, 0), "{name}");
        assert_eq!(
            photo.notes,
            ["Only the first picture of the animation was taken."]
        );
    }
}

#[test]
fn the_content_counts_and_a_wrong_ending_is_noted() {
    let photo = photo("shore.jpg", &picture("rgb8.png"));
    assert_eq!(
        photo.notes,
        ["The name ends with “.jpg”, but it is a PNG picture and was read as one."]
    );
    for name in ["shore.PNG", "shore", "shore at 9.30 in the morning"] {
        assert!(super::photo(name, &picture("rgb8.png")).notes.is_empty());
    }
}

/// A PNG may say that its numbers are light itself (`gAMA` of 100,000): half the light is 188 of 255
/// in sRGB (IEC 61966-2-1). Where the file says sRGB too, that counts (PNG, third edition, 11.3.2).
#[test]
fn the_gamma_of_a_png_is_applied() {
    use super::making::{chunk, png};
    let gamma = chunk(b"gAMA", &100_000_u32.to_be_bytes());
    let half = [[128, 128, 128]; 4];
    let linear = photo("a.png", &png(2, &half, std::slice::from_ref(&gamma)));
    let [r, g, b, _] = linear.pixels().get_pixel(0, 0).0;
    assert!(
        [r, g, b].iter().all(|v| v.abs_diff(188) <= 1),
        "{r} {g} {b}"
    );
    let both = photo("a.png", &png(2, &half, &[gamma, chunk(b"sRGB", &[0])]));
    assert_eq!(both.pixels().get_pixel(0, 0).0, [128, 128, 128, 255]);
}

/// An ordinary telephone's picture, 24 megapixels, in three ways of packing.
#[test]
fn a_large_honest_photograph_is_taken_and_made_smaller() {
    let (width, height) = (6000, 4000);
    let pixels: Vec<u8> = (0..height)
        .flat_map(|y| (0..width).flat_map(move |x| [(x / 24) as u8, (y / 16) as u8, 77]))
        .collect();
    let mut jpeg = Vec::new();
    let encoder = image::codecs::jpeg::JpegEncoder::new_with_quality(&mut jpeg, 85);
    let colour = image::ExtendedColorType::Rgb8;
    image::ImageEncoder::write_image(encoder, &pixels, width, height, colour).unwrap();
    let photo = photo("large.jpg", &jpeg);
    assert_eq!(photo.size(), [2362, 1575]);
    assert_eq!(
        photo.notes,
        ["It was made smaller, from 6000 by 4000 pixels to 2362 by 1575."]
    );
    for (x, y) in [(10, 10), (1181, 787), (2350, 1570)] {
        let p = photo.pixels().get_pixel(x, y).0;
        let place = |v: u32, of: u32, to: u32| (f64::from(v) + 0.5) * f64::from(of) / f64::from(to);
        let wanted = [
            place(x, width, 2362) / 24.0,
            place(y, height, 1575) / 16.0,
            77.0,
        ];
        for i in 0..3 {
            assert!(
                (f64::from(p[i]) - wanted[i]).abs() <= 3.0,
                "{p:?} {wanted:?}"
            );
        }
    }
}
