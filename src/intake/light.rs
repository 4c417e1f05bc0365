//! Between the numbers of sRGB and light (IEC 61966-2-1), by tables.

use std::sync::OnceLock;

/// Steps of the table that leads back; fine enough that every one of the 256 numbers is hit.
const STEPS: usize = 1 << 16;

/// The light of each number, 0 to 1.
pub fn light() -> &'static [f32; 256] {
    static TABLE: OnceLock<[f32; 256]> = OnceLock::new();
    TABLE.get_or_init(|| std::array::from_fn(|i| to_light(i as f64 / 255.0) as f32))
}

/// The number nearest to a light of 0 to 1.
pub fn number(light: f32) -> u8 {
    static TABLE: OnceLock<Vec<u8>> = OnceLock::new();
    let table = TABLE.get_or_init(|| {
        let to_u8 = |i| (from_light(i as f64 / STEPS as f64) * 255.0).round() as u8;
        (0..=STEPS).map(to_u8).collect()
    });
    // The cast ends at the ends of the table and makes a zero of what is no number.
    table[((light * STEPS as f32 + 0.5) as usize).min(STEPS)]
}

fn to_light(c: f64) -> f64 {
    if c <= 0.04045 {
        c / 12.92
    } else {
        ((c + 0.055) / 1.055).powf(2.4)
    }
}

fn from_light(y: f64) -> f64 {
    if y <= 0.003_130_8 {
        y * 12.92
    } else {
        1.055 * y.powf(1.0 / 2.4) - 0.055
    }
}
