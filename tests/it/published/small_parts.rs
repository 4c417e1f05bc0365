//! The gauge for small parts.
//!
//! Dimensions: 16 CFR 1501.4, figure 1 (inches bind: 1.25 in across, 1 in to 2.25 in deep);
//! EN 71-1:2014 section 8.2 (31.7 mm). The table of fits was computed from these dimensions with
//! geometry worked out on paper and compared with a numerical search, for pieces of 0.5 mm.

use daystrand::plan::seal::finished;
use daystrand::plan::small_parts::{
    CUTTING_ALLOWANCE, Fit, Gauge, LOOK_BELOW, fit, fit_disc, should_be_looked_at,
};
use daystrand::units::{Length, Size};

const INCH_MM: f64 = 25.4;

fn mm(v: f64) -> Length {
    Length::mm(v)
}

#[test]
fn the_gauge_has_the_published_dimensions() {
    assert_eq!(Gauge::Inch.diameter(), mm(1.25 * INCH_MM));
    assert_eq!(Gauge::Inch.shallow(), mm(1.0 * INCH_MM));
    assert_eq!(Gauge::Inch.deep(), mm(2.25 * INCH_MM));
    assert_eq!(Gauge::Millimetre.diameter(), mm(31.7));
    assert_eq!(Gauge::Millimetre.deep(), mm(57.1));
    let slope = (2.25 - 1.0) / 1.25;
    assert!(
        (slope - 1.0_f64).abs() < 1e-12,
        "the floor slopes at 45 degrees"
    );
}

/// Width, height, thickness in mm; fits the inch gauge; fits the millimetre gauge; look at it.
const PIECES: [(f64, f64, f64, Fit, Fit, bool); 12] = {
    use Fit::{DoesNotFit as No, Fits as Yes};
    [
        (30.0, 30.0, 0.5, Yes, Yes, true),
        (31.0, 31.0, 0.5, Yes, Yes, true),
        (31.72, 31.72, 0.5, Yes, No, true),
        (31.746, 31.746, 0.5, Yes, No, true),
        (31.747, 31.747, 0.5, No, No, true),
        (31.75, 31.75, 0.5, No, No, true),
        (32.0, 32.0, 0.3, No, No, true),
        (33.3, 33.3, 0.5, No, No, false),
        (40.0, 40.0, 0.5, No, No, false),
        (20.0, 50.0, 0.5, Yes, Yes, true),
        (50.0, 20.0, 0.5, Yes, Yes, true),
        (25.0, 70.0, 0.5, No, No, true),
    ]
};

#[test]
fn pieces_fit_as_published_dimensions_say() {
    for (w, h, t, inch, millimetre, look) in PIECES {
        let piece = Size::mm(w, h);
        assert_eq!(
            fit(piece, mm(t), Gauge::Inch),
            inch,
            "{w} x {h} x {t}, inch"
        );
        assert_eq!(
            fit(piece, mm(t), Gauge::Millimetre),
            millimetre,
            "{w} x {h} x {t}, mm"
        );
        assert_eq!(should_be_looked_at(piece), look, "{w} x {h} x {t}, look");
    }
}

/// Thickness; largest square that fits the inch gauge and the millimetre gauge, in mm, to a
/// ten-thousandth.
const LARGEST_SQUARES: [(f64, f64, f64); 5] = [
    (0.0, 31.7500, 31.7000),
    (0.25, 31.7490, 31.6990),
    (0.5, 31.7461, 31.6961),
    (1.0, 31.7342, 31.6842),
    (2.0, 31.6869, 31.6368),
];

#[test]
fn the_largest_square_is_where_the_table_says() {
    for (t, inch, millimetre) in LARGEST_SQUARES {
        for (gauge, side) in [(Gauge::Inch, inch), (Gauge::Millimetre, millimetre)] {
            let below = Size::square(Length::um((side * 1000.0).floor() as i64));
            let above = Size::square(Length::um((side * 1000.0).ceil() as i64 + 1));
            assert_eq!(
                fit(below, mm(t), gauge),
                Fit::Fits,
                "{side} x {t} {gauge:?}"
            );
            assert_eq!(
                fit(above, mm(t), gauge),
                Fit::DoesNotFit,
                "{side} x {t} {gauge:?}"
            );
        }
    }
}

/// Shorter side; longest other side that stands upright in the inch gauge; longest found leaning.
const UPRIGHT: [(f64, f64, f64); 8] = [
    (10.0, 55.84, 63.1),
    (15.0, 54.77, 61.1),
    (20.0, 53.10, 58.2),
    (25.0, 50.56, 53.9),
    (28.0, 48.26, 50.3),
    (30.0, 45.97, 46.9),
    (31.0, 44.21, 44.6),
    (31.5, 42.76, 42.9),
];

#[test]
fn long_pieces_stand_upright_lean_or_stay_out() {
    for (a, upright, leaning) in UPRIGHT {
        let fits = |b: f64| fit(Size::mm(a, b), mm(0.5), Gauge::Inch);
        assert_eq!(fits(upright - 0.01), Fit::Fits, "{a} x {upright}");
        assert_eq!(fits(upright + 0.01), Fit::MayFitLeaning, "{a} x {upright}");
        assert_ne!(
            fits(leaning),
            Fit::DoesNotFit,
            "{a} x {leaning} was found to go in"
        );
        // The longest straight line in the gauge: √(31.75² + 57.15²) = 65.38 mm.
        assert_eq!(fits(65.37), Fit::MayFitLeaning);
        assert_eq!(fits(65.38), Fit::DoesNotFit);
    }
}

#[test]
fn discs_fit_up_to_the_diameter() {
    for dot in [13.0, 15.0] {
        assert_eq!(fit_disc(mm(dot), Gauge::Inch), Fit::Fits, "a fastener dot");
        assert_eq!(fit_disc(mm(dot), Gauge::Millimetre), Fit::Fits);
    }
    assert_eq!(fit_disc(mm(31.7), Gauge::Inch), Fit::Fits);
    assert_eq!(fit_disc(mm(31.748), Gauge::Inch), Fit::Fits);
    assert_eq!(fit_disc(mm(31.748), Gauge::Millimetre), Fit::DoesNotFit);
    assert_eq!(fit_disc(mm(31.751), Gauge::Inch), Fit::DoesNotFit);
}

#[test]
fn the_limit_is_the_wider_gauge_and_the_allowance() {
    let exact = Gauge::Inch.diameter() + CUTTING_ALLOWANCE;
    assert!(LOOK_BELOW >= exact && LOOK_BELOW - exact < mm(0.1));
    assert_eq!(finished(Size::square(mm(60.0)), mm(4.0)).w, mm(68.0));
}

/// Printed side, film around it, finished side, whether the club is told: 22 + 2 x 4 = 30 mm goes
/// in, 32 + 2 x 4 = 40 mm stays out.
#[test]
fn a_club_is_told_of_tiles_that_fit() {
    for (printed, seal, after, told) in [
        (22.0, 4.0, 30.0, true),
        (30.0, 0.0, 30.0, true),
        (32.0, 4.0, 40.0, false),
        (40.0, 0.0, 40.0, false),
    ] {
        let mut club = crate::fixture::club();
        club.rules.seal = mm(seal);
        for p in &mut club.participants {
            std::sync::Arc::make_mut(p).tile = mm(printed);
        }
        assert_eq!(finished(Size::square(mm(printed)), mm(seal)).w, mm(after));
        let found = daystrand::check::run(&club, None).into_iter();
        let found: Vec<_> = found.filter(|f| f.code == "print.small_tile").collect();
        let all = if told { club.participants.len() } else { 0 };
        assert_eq!(found.len(), all, "{printed} mm with {seal} mm of film");
        for f in found {
            let size = format!("{after:.1} mm wide and goes into the gauge");
            assert!(f.sentence.contains(&size), "{}", f.sentence);
            assert!(f.hint.contains("Fastener dots fit the gauge"), "{}", f.hint);
        }
    }
}
