//! Sun and wind: names only. The scales themselves are in `published/uv_index.rs` and
//! `published/beaufort.rs`.

use daystrand::plan::weather::{Beaufort, UvBand, UvIndex, WindUnit};

#[test]
fn what_cannot_be_measured_has_no_name() {
    for wrong in [-0.1, -1.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(UvIndex::rounded(wrong), None, "{wrong}");
        for unit in WindUnit::ALL {
            assert_eq!(Beaufort::of(wrong, unit), None, "{wrong}");
        }
    }
    assert_eq!(UvIndex::rounded(-0.0), Some(UvIndex::new(0)));
}

#[test]
fn numbers_without_measure_do_not_overflow() {
    let most = UvIndex::rounded(f64::MAX).unwrap();
    assert_eq!((most.whole(), most.band()), (u32::MAX, UvBand::Extreme));
    let wind = Beaufort::of(f64::MAX, WindUnit::Knots).unwrap();
    assert_eq!((wind.number(), wind.name()), (12, "hurricane"));
}

#[test]
fn more_wind_is_never_a_smaller_force() {
    for unit in WindUnit::ALL {
        let mut last = 0;
        for tenth in 0..2_000 {
            let now = Beaufort::of(f64::from(tenth) / 10.0, unit).unwrap();
            assert!(now.number() >= last && now.number() - last <= 1);
            last = now.number();
        }
        assert_eq!(last, 12);
    }
}

/// Every word these functions can say, against words that would judge a day for people.
#[test]
fn no_name_tells_anyone_to_go_or_to_stay() {
    let judging = [
        "go",
        "no-go",
        "stop",
        "stay",
        "cancel",
        "postpone",
        "safe",
        "unsafe",
        "danger",
        "dangerous",
        "ok",
        "fine",
        "good",
        "bad",
        "suitable",
        "allowed",
        "forbidden",
        "avoid",
        "risk",
        "red",
        "green",
    ];
    let winds = WindUnit::ALL
        .into_iter()
        .flat_map(|unit| (0..=200).filter_map(move |n| Beaufort::of(f64::from(n), unit)));
    let mut said: Vec<&str> = winds.map(Beaufort::name).collect();
    said.sort_unstable();
    said.dedup();
    assert_eq!(said.len(), 13, "all thirteen names are looked at");
    said.extend(UvBand::ALL.map(UvBand::label));
    said.extend(WindUnit::ALL.map(WindUnit::label));
    for words in said {
        for word in words.split_whitespace() {
            assert!(!judging.contains(&word), "{words}");
        }
    }
}
