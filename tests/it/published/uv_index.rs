//! The bands of the UV Index: World Health Organization and others, Global Solar UV Index: a
//! practical guide, WHO/SDE/OEH/02.2, 2002. Its bands as several published copies give them; the
//! print of 2002 writes the lowest as "below 2", with 2 in no band (from memory).

use daystrand::plan::weather::{PROTECTION_FROM, UvBand, UvIndex};

#[test]
fn each_band_begins_and_ends_where_the_guide_says() {
    let bands = [
        (0..=2, UvBand::Low, "low"),
        (3..=5, UvBand::Moderate, "moderate"),
        (6..=7, UvBand::High, "high"),
        (8..=10, UvBand::VeryHigh, "very high"),
        (11..=20, UvBand::Extreme, "extreme"),
    ];
    for (values, band, words) in bands {
        for value in values {
            assert_eq!(UvIndex::new(value).band(), band, "{value}");
            assert_eq!(band.label(), words);
        }
    }
}

/// The guide reports whole numbers. A half goes up, where rounding to even would lose a prompt.
#[test]
fn a_number_with_decimals_is_rounded_a_half_upwards() {
    let rows = [
        (0.0, 0, UvBand::Low),
        (0.5, 1, UvBand::Low),
        (2.4, 2, UvBand::Low),
        (2.5, 3, UvBand::Moderate),
        (4.5, 5, UvBand::Moderate),
        (5.4, 5, UvBand::Moderate),
        (5.5, 6, UvBand::High),
        (7.5, 8, UvBand::VeryHigh),
        (10.4, 10, UvBand::VeryHigh),
        (10.5, 11, UvBand::Extreme),
        // The number just below a half, to which adding a half makes one.
        (0.5_f64.next_down(), 0, UvBand::Low),
    ];
    for (value, whole, band) in rows {
        let index = UvIndex::rounded(value).unwrap();
        assert_eq!((index.whole(), index.band()), (whole, band), "{value}");
    }
}

/// The guide asks for protection from 3.
#[test]
fn sun_protection_is_asked_for_from_three() {
    assert_eq!(PROTECTION_FROM, 3);
    for value in 0..20 {
        let asks = UvIndex::new(value).asks_for_protection();
        assert_eq!(asks, value >= 3, "{value}");
    }
    let asks = |value| UvIndex::rounded(value).unwrap().asks_for_protection();
    assert!(!asks(2.4));
    assert!(asks(2.5));
}
