//! What numbers about sun and wind are called. Names only: they inform people, who decide.
//!
//! Sun: World Health Organization and others, Global Solar UV Index: a practical guide,
//! WHO/SDE/OEH/02.2, 2002. Wind: the Beaufort scale of the World Meteorological Organization.

/// The UV Index, in whole numbers as it is reported.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct UvIndex(u32);

impl UvIndex {
    /// A whole number, as reported.
    pub const fn new(whole: u32) -> Self {
        Self(whole)
    }

    /// A number with decimals, rounded to the nearest whole one, a half upwards; nothing for what
    /// cannot be an index: below zero, endless, not a number.
    pub fn rounded(value: f64) -> Option<Self> {
        // Rounds a half away from zero, which is upwards here.
        (value.is_finite() && value >= 0.0).then(|| Self(value.round() as u32))
    }

    /// The whole number.
    pub const fn whole(self) -> u32 {
        self.0
    }

    /// Its band.
    pub const fn band(self) -> UvBand {
        match self.0 {
            0..=2 => UvBand::Low,
            3..=5 => UvBand::Moderate,
            6..=7 => UvBand::High,
            8..=10 => UvBand::VeryHigh,
            _ => UvBand::Extreme,
        }
    }

    /// Whether the guide asks for sun protection: from 3, whatever the clouds or the temperature.
    pub const fn asks_for_protection(self) -> bool {
        self.0 >= PROTECTION_FROM
    }
}

/// The UV Index from which the guide asks for sun protection.
pub const PROTECTION_FROM: u32 = 3;

/// A band of the UV Index.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum UvBand {
    /// Up to 2.
    Low,
    /// 3 to 5.
    Moderate,
    /// 6 and 7.
    High,
    /// 8 to 10.
    VeryHigh,
    /// From 11.
    Extreme,
}

impl UvBand {
    /// All of them, from the lowest.
    pub const ALL: [Self; 5] = [
        Self::Low,
        Self::Moderate,
        Self::High,
        Self::VeryHigh,
        Self::Extreme,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Low => "low",
            Self::Moderate => "moderate",
            Self::High => "high",
            Self::VeryHigh => "very high",
            Self::Extreme => "extreme",
        }
    }
}

/// In what the speed of wind was measured or forecast.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum WindUnit {
    /// Metres a second.
    MetresPerSecond,
    /// Kilometres an hour.
    #[default]
    KilometresPerHour,
    /// Knots.
    Knots,
}

impl WindUnit {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::MetresPerSecond, Self::KilometresPerHour, Self::Knots];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::MetresPerSecond => "m/s",
            Self::KilometresPerHour => "km/h",
            Self::Knots => "knots",
        }
    }

    /// The speeds at which forces 1 to 12 begin, as printed in the column of this unit. The columns
    /// are rounded each on its own, so a speed that is converted may come out one force away.
    const fn begins(self) -> [f64; 12] {
        match self {
            Self::MetresPerSecond => [
                0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7,
            ],
            Self::KilometresPerHour => [
                1.0, 6.0, 12.0, 20.0, 29.0, 39.0, 50.0, 62.0, 75.0, 89.0, 103.0, 118.0,
            ],
            Self::Knots => [
                1.0, 4.0, 7.0, 11.0, 17.0, 22.0, 28.0, 34.0, 41.0, 48.0, 56.0, 64.0,
            ],
        }
    }
}

/// A force of wind on the Beaufort scale, from 0 to 12.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Beaufort(u8);

impl Beaufort {
    /// The force of a mean wind speed: the highest whose lowest speed is reached, so that a speed
    /// between two printed rows belongs to the lower one. Nothing for what cannot be a speed.
    pub fn of(speed: f64, unit: WindUnit) -> Option<Self> {
        let reached = || {
            unit.begins()
                .into_iter()
                .map(|from| u8::from(speed >= from))
        };
        (speed.is_finite() && speed >= 0.0).then(|| Self(reached().sum()))
    }

    /// From 0 to 12.
    pub const fn number(self) -> u8 {
        self.0
    }

    /// What it is called.
    pub const fn name(self) -> &'static str {
        match self.0 {
            0 => "calm",
            1 => "light air",
            2 => "light breeze",
            3 => "gentle breeze",
            4 => "moderate breeze",
            5 => "fresh breeze",
            6 => "strong breeze",
            7 => "near gale",
            8 => "gale",
            9 => "strong gale",
            10 => "storm",
            11 => "violent storm",
            _ => "hurricane",
        }
    }

    /// The speed it stands for, in metres a second: 0.836 B^1.5.
    pub fn usual_speed(self) -> f64 {
        0.836 * f64::from(self.0).powf(1.5)
    }
}

/// The UV Index in what someone wrote down, such as "6" or "UV 2.5". Nothing where it is not one
/// number.
pub fn uv_in(words: &str) -> Option<UvIndex> {
    let (value, _) = one_number(words)?;
    UvIndex::rounded(value)
}

/// The force of wind in what someone wrote down, such as "12 km/h", "3 m/s" or "10 kn". Nothing where
/// it is not one number with its unit.
pub fn wind_in(words: &str) -> Option<Beaufort> {
    let (value, after) = one_number(words)?;
    let unit = after.trim().to_lowercase();
    let begins = |all: &[&str]| all.iter().any(|u| unit.starts_with(u));
    let unit = if begins(&["km/h", "kmh", "kph"]) {
        WindUnit::KilometresPerHour
    } else if begins(&["m/s"]) {
        WindUnit::MetresPerSecond
    } else if begins(&["kn", "kt"]) {
        WindUnit::Knots
    } else {
        return None;
    };
    Beaufort::of(value, unit)
}

/// The only number in some words and what follows it; a comma may stand for the point.
fn one_number(words: &str) -> Option<(f64, &str)> {
    let from = words.find(|c: char| c.is_ascii_digit())?;
    let is_of_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',');
    let rest = &words[from..];
    let to = rest.find(|c| !is_of_number(c)).unwrap_or(rest.len());
    let (number, after) = rest.split_at(to);
    let number = number.trim_end_matches(['.', ',']).replace(',', ".");
    let below_zero = words[..from].ends_with(['-', '−']);
    let another = after.contains(|c: char| c.is_ascii_digit());
    let alone = !below_zero && !another;
    let value = number.parse().ok().filter(|_| alone)?;
    Some((value, after))
}

#[cfg(test)]
mod tests {
    use super::{uv_in, wind_in};

    #[test]
    fn what_was_written_down_is_read_only_where_it_is_one_number() {
        let uv = |words| uv_in(words).map(|uv| (uv.whole(), uv.band().label()));
        assert_eq!(uv("6"), Some((6, "high")));
        assert_eq!(uv("UV 2.5"), Some((3, "moderate")));
        assert_eq!(uv("2,4 at noon"), Some((2, "low")));
        for words in ["", "high", "5 to 6", "-3", "1.2.3"] {
            assert_eq!(uv(words), None, "{words}");
        }
        let wind = |words| wind_in(words).map(|b| (b.number(), b.name()));
        assert_eq!(wind("12 km/h"), Some((3, "gentle breeze")));
        assert_eq!(wind("3 m/s"), Some((2, "light breeze")));
        assert_eq!(wind("from the west, 10 kn"), Some((3, "gentle breeze")));
        assert_eq!(wind("11 Knots, gusts"), Some((4, "moderate breeze")));
        for words in ["3", "strong", "10 to 12 kn", "-3 m/s", "4 Beaufort"] {
            assert_eq!(wind(words), None, "{words}");
        }
    }
}
