//! Flags and signs that exist outside the program must look like themselves. A picture of a flag
//! in a schedule never takes the place of the flag on the beach.

use daystrand::model::ids::SymbolId;
use daystrand::symbols::library::library;
use daystrand::symbols::palette;
use daystrand::symbols::variant::Variant;
use daystrand::units::colour::Rgb;
use resvg::tiny_skia::Pixmap;

use super::paint;

const SIDE: u32 = 480;

fn picture(id: &str) -> Pixmap {
    let drawn = library().art(&SymbolId::new(id), Variant::default());
    assert!(drawn.known, "{id} is not there");
    paint::svg(&paint::to_svg(&drawn.art), SIDE)
}

fn at(map: &Pixmap, x: u32, y: u32) -> Option<Rgb> {
    map.pixel(x, y).map(|p| Rgb(p.red(), p.green(), p.blue()))
}

/// All places of one colour.
fn places(map: &Pixmap, colour: Rgb) -> Vec<(u32, u32)> {
    let all = (0..SIDE).flat_map(|y| (0..SIDE).map(move |x| (x, y)));
    all.filter(|(x, y)| at(map, *x, *y) == Some(colour))
        .collect()
}

/// Left, top, right, bottom.
fn around(places: &[(u32, u32)]) -> [u32; 4] {
    let xs = || places.iter().map(|p| p.0);
    let ys = || places.iter().map(|p| p.1);
    [
        xs().min().unwrap_or(0),
        ys().min().unwrap_or(0),
        xs().max().unwrap_or(0),
        ys().max().unwrap_or(0),
    ]
}

/// ISO 20712-2: the flag of the patrolled area is halved, red above yellow. International Life
/// Saving Federation, "Standards for Beach Safety and Information Flags" (2004), says the same.
#[test]
fn the_flag_of_the_patrolled_area_is_red_over_yellow_in_halves() {
    let map = picture("between_flags");
    let red = places(&map, palette::FLAG_RED);
    assert!(!red.is_empty());
    let [left, top, right, bottom] = around(&red);
    // Below the red of each column stands yellow, as high as the red, with no more than a seam or
    // a line between.
    let (mut columns, mut halved) = (0u32, 0u32);
    for x in (left..=right).step_by(4) {
        let reds: Vec<u32> = (top..=bottom)
            .filter(|y| at(&map, x, *y) == Some(palette::FLAG_RED))
            .collect();
        let (Some(&first), Some(&last)) = (reds.first(), reds.last()) else {
            continue;
        };
        let high = last - first + 1;
        if high < 12 {
            continue;
        }
        let yellow = (last..last + high + high / 2 + 8)
            .filter(|y| at(&map, x, *y) == Some(palette::SUN))
            .count() as u32;
        let share = f64::from(yellow) / f64::from(high);
        columns += 1;
        halved += u32::from((0.75..=1.3).contains(&share));
    }
    // Hair or a pole may hide a corner of a flag; most of it must be seen.
    assert!(
        columns >= 12 && halved * 4 >= columns * 3,
        "{halved} of {columns}"
    );
}

/// ISO 20712-2: a red flag means that the water must not be entered; it is plain red.
#[test]
fn the_red_flag_is_plain() {
    let map = picture("red_flag");
    let red = places(&map, palette::FLAG_RED);
    let [left, top, right, bottom] = around(&red);
    assert!(right - left > 120 && bottom - top > 70, "a large flag");
    let inside = (red.len() as f64) / f64::from((right - left + 1) * (bottom - top + 1));
    assert!(inside > 0.6, "only {inside:.2} of its field is red");
    let (x, y) = ((left + right) / 2, (top + bottom) / 2);
    assert_eq!(at(&map, x, y), Some(palette::FLAG_RED));
    // Nothing lies on it: from the middle, red runs to the edge on both sides.
    let row: Vec<bool> = (left..=right)
        .map(|x| at(&map, x, y) == Some(palette::FLAG_RED))
        .collect();
    let breaks = row.windows(2).filter(|w| w[0] && !w[1]).count();
    assert!(breaks <= 1, "{breaks} things lie on it");
}

/// ISO 20712-2: the zone of boards and other craft has a flag quartered black and white.
#[test]
fn the_flag_of_the_craft_zone_is_quartered_black_and_white() {
    let map = picture("craft_zone");
    // Fields of ink so large that no outline can be meant.
    let solid = |x: u32, y: u32| {
        (0..24).step_by(6).all(|d| {
            at(&map, x + d, y) == Some(palette::INK) && at(&map, x, y + d) == Some(palette::INK)
        })
    };
    let mut dark: Vec<(u32, u32)> = Vec::new();
    for y in 0..SIDE / 2 {
        for x in 0..SIDE - 30 {
            if solid(x, y) {
                dark.push((x, y));
            }
        }
    }
    assert!(!dark.is_empty(), "no dark field");
    let [left, top, right, bottom] = around(&dark);
    let (right, bottom) = (right + 18, bottom + 18);
    let quarter = |u: f64, v: f64| {
        let x = f64::from(left) + u * f64::from(right - left);
        let y = f64::from(top) + v * f64::from(bottom - top);
        at(&map, x as u32, y as u32)
    };
    let (a, b) = (quarter(0.25, 0.25), quarter(0.75, 0.75));
    let (c, d) = (quarter(0.75, 0.25), quarter(0.25, 0.75));
    assert_eq!(a, b, "opposite quarters are alike");
    assert_eq!(c, d, "opposite quarters are alike");
    let mut two = [a, c];
    two.sort_by_key(|c| c.map(|c| c.0));
    assert_eq!(two, [Some(palette::INK), Some(Rgb::WHITE)]);
}

/// ISO 7010 E003 is a white cross on green; ISO 3864-4 gives signal green, RAL 6032, about #237F52.
#[test]
fn first_aid_is_a_white_cross_on_green() {
    assert_eq!(palette::AID_GREEN, Rgb::hex(0x23_7F_52));
    let map = picture("first_aid_tent");
    let green = places(&map, palette::AID_GREEN);
    let [left, top, right, bottom] = around(&green);
    assert!(right - left > 60 && bottom - top > 50, "a box to be seen");
    let field = |x: u32, y: u32| (left..=right).contains(&x) && (top..=bottom).contains(&y);
    // The cross is the white that lies within the green: as wide as high, its middle white, its
    // corners green.
    let white: Vec<(u32, u32)> = places(&map, Rgb::WHITE)
        .into_iter()
        .filter(|(x, y)| {
            field(*x, *y)
                && (left..*x)
                    .rev()
                    .take(90)
                    .any(|u| at(&map, u, *y) == Some(palette::AID_GREEN))
                && (*x..right)
                    .take(90)
                    .any(|u| at(&map, u, *y) == Some(palette::AID_GREEN))
                && (top..*y)
                    .rev()
                    .take(90)
                    .any(|v| at(&map, *x, v) == Some(palette::AID_GREEN))
                && (*y..bottom)
                    .take(90)
                    .any(|v| at(&map, *x, v) == Some(palette::AID_GREEN))
        })
        .collect();
    let [l, t, r, b] = around(&white);
    let (w, h) = (f64::from(r - l + 1), f64::from(b - t + 1));
    assert!(w > 24.0 && (0.8..1.25).contains(&(w / h)), "{w} by {h}");
    assert_eq!(at(&map, (l + r) / 2, (t + b) / 2), Some(Rgb::WHITE));
    let inset = (w * 0.1) as u32;
    for (x, y) in [(l, t), (r, t), (l, b), (r, b)] {
        let x = if x == l { l + inset } else { r - inset };
        let y = if y == t { t + inset } else { b - inset };
        assert_eq!(
            at(&map, x, y),
            Some(palette::AID_GREEN),
            "a corner of the cross at {x}, {y}"
        );
    }
}

/// A picture of someone in the water shows who is with them: the water is never shown with one
/// person alone. What is seen is said in the index.
#[test]
fn in_the_water_someone_is_with_them() {
    let alone = |s: &str| {
        s.contains("child") && !["adult", "helper", "hands"].iter().any(|w| s.contains(w))
    };
    for s in library()
        .all()
        .iter()
        .filter(|s| s.group == "Water" || s.group == "Pool")
    {
        let shows = s.shows.to_lowercase();
        let wet = shows.contains("in the water") || shows.contains("in water");
        assert!(!(wet && alone(&shows)), "{}: {}", s.id, s.shows);
    }
}
