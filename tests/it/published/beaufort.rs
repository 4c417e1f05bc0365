//! The Beaufort scale of the World Meteorological Organization, as published copies of its table
//! print it: metres a second and knots for every force, kilometres an hour up to force 9 (from 10 on
//! from memory).

use daystrand::plan::weather::{Beaufort, WindUnit};

/// Force, lowest and highest speed printed in m/s, knots and km/h, name. Force 12 has no highest.
type Row = (u8, (f64, f64), (u32, u32), (u32, u32), &'static str);

const TABLE: [Row; 13] = [
    (0, (0.0, 0.2), (0, 0), (0, 0), "calm"),
    (1, (0.3, 1.5), (1, 3), (1, 5), "light air"),
    (2, (1.6, 3.3), (4, 6), (6, 11), "light breeze"),
    (3, (3.4, 5.4), (7, 10), (12, 19), "gentle breeze"),
    (4, (5.5, 7.9), (11, 16), (20, 28), "moderate breeze"),
    (5, (8.0, 10.7), (17, 21), (29, 38), "fresh breeze"),
    (6, (10.8, 13.8), (22, 27), (39, 49), "strong breeze"),
    (7, (13.9, 17.1), (28, 33), (50, 61), "near gale"),
    (8, (17.2, 20.7), (34, 40), (62, 74), "gale"),
    (9, (20.8, 24.4), (41, 47), (75, 88), "strong gale"),
    (10, (24.5, 28.4), (48, 55), (89, 102), "storm"),
    (11, (28.5, 32.6), (56, 63), (103, 117), "violent storm"),
    (12, (32.7, 90.0), (64, 180), (118, 320), "hurricane"),
];

fn force(speed: f64, unit: WindUnit) -> u8 {
    Beaufort::of(speed, unit).unwrap().number()
}

#[test]
fn every_printed_speed_has_its_force_and_name() {
    for (number, metres, knots, kilometres, name) in TABLE {
        // Tenths of a metre a second, as printed.
        for tenth in (metres.0 * 10.0).round() as u32..=(metres.1 * 10.0).round() as u32 {
            let speed = f64::from(tenth) / 10.0;
            let found = Beaufort::of(speed, WindUnit::MetresPerSecond).unwrap();
            assert_eq!(
                (found.number(), found.name()),
                (number, name),
                "{speed} m/s"
            );
        }
        for speed in knots.0..=knots.1 {
            let found = force(f64::from(speed), WindUnit::Knots);
            assert_eq!(found, number, "{speed} knots");
        }
        for speed in kilometres.0..=kilometres.1 {
            let found = force(f64::from(speed), WindUnit::KilometresPerHour);
            assert_eq!(found, number, "{speed} km/h");
        }
    }
}

/// 10.75 m/s falls between two printed rows; the scale says where a force begins, so it is 5.
#[test]
fn a_speed_between_two_rows_belongs_to_the_lower_one() {
    assert_eq!(force(5.4, WindUnit::MetresPerSecond), 3);
    assert_eq!(force(5.5, WindUnit::MetresPerSecond), 4);
    assert_eq!(force(10.75, WindUnit::MetresPerSecond), 5);
    assert_eq!(force(10.8, WindUnit::MetresPerSecond), 6);
    assert_eq!(force(16.0, WindUnit::Knots), 4);
    assert_eq!(force(16.9, WindUnit::Knots), 4);
    assert_eq!(force(17.0, WindUnit::Knots), 5);
    assert_eq!(force(28.5, WindUnit::KilometresPerHour), 4);
}

/// v = 0.836 B^1.5 m/s, the scale's formula as commonly printed; each speed by hand.
#[test]
fn the_formula_gives_a_speed_inside_each_row() {
    let printed = [(4, 6.69, 24.1), (5, 9.35, 33.6), (6, 12.29, 44.2)];
    for (number, metres, kilometres) in printed {
        let wind = Beaufort::of(metres, WindUnit::MetresPerSecond).unwrap();
        assert_eq!(wind.number(), number);
        assert!((wind.usual_speed() - metres).abs() < 0.005, "{number}");
        assert!((wind.usual_speed() * 3.6 - kilometres).abs() < 0.05);
    }
    for (number, (lowest, highest), ..) in TABLE {
        let wind = Beaufort::of(lowest, WindUnit::MetresPerSecond).unwrap();
        let usual = wind.usual_speed();
        assert!(
            lowest <= usual && usual < highest + 0.1,
            "{number}: {usual}"
        );
        assert_eq!(force(usual, WindUnit::MetresPerSecond), number);
    }
}
