//! Luminance and contrast against published values.

use daystrand::symbols::palette;
use daystrand::units::colour::Rgb;

/// Pairs with luminances and ratio, by the formula of WCAG 2.2 "relative luminance" and "contrast
/// ratio" (w3.org/TR/WCAG22), worked out with an independent program to four decimals.
const PAIRS: [(u32, u32, f64, f64, f64); 15] = [
    (0x000000, 0xFFFFFF, 0.0, 1.0, 21.0),
    (0x767676, 0xFFFFFF, 0.181_164, 1.0, 4.5422),
    (0x777777, 0xFFFFFF, 0.184_475, 1.0, 4.4781),
    (0x949494, 0xFFFFFF, 0.296_138, 1.0, 3.0335),
    (0x959595, 0xFFFFFF, 0.300_544, 1.0, 2.9953),
    (0x595959, 0xFFFFFF, 0.099_899, 1.0, 7.0047),
    (0x5A5A5A, 0xFFFFFF, 0.102_242, 1.0, 6.8969),
    (0x0000FF, 0xFFFFFF, 0.072_200, 1.0, 8.5925),
    (0xFF0000, 0xFFFFFF, 0.212_600, 1.0, 3.9985),
    (0xFFFF00, 0xFFFFFF, 0.927_800, 1.0, 1.0738),
    (0xFFFF00, 0x000000, 0.927_800, 0.0, 19.5560),
    (0xFF0000, 0x0000FF, 0.212_600, 0.072_200, 2.1489),
    (0x000080, 0xFFFFCC, 0.015_585, 0.971_396, 15.5736),
    (0x123456, 0xABCDEF, 0.032_565, 0.585_526, 7.6973),
    (0x808080, 0x808080, 0.215_861, 0.215_861, 1.0),
];

#[test]
fn wcag_pairs() {
    for (front, back, l_front, l_back, ratio) in PAIRS {
        let (f, b) = (Rgb::hex(front), Rgb::hex(back));
        assert!(
            (f.luminance() - l_front).abs() < 6e-7,
            "{front:06X} {}",
            f.luminance()
        );
        assert!(
            (b.luminance() - l_back).abs() < 6e-7,
            "{back:06X} {}",
            b.luminance()
        );
        assert!(
            (f.contrast(b) - ratio).abs() < 6e-5,
            "{front:06X} on {back:06X}"
        );
        assert_eq!(f.contrast(b), b.contrast(f));
    }
}

/// Okabe and Ito, Color Universal Design (2002, revised 2008), as in Wong, Nature Methods 8, 441
/// (2011): luminance, and contrast on white and on black.
const OKABE_ITO: [(u32, f64, f64, f64); 8] = [
    (0x000000, 0.0, 21.0, 1.0),
    (0xE69F00, 0.416_19, 2.252, 9.324),
    (0x56B4E9, 0.405_04, 2.307, 9.101),
    (0x009E73, 0.256_92, 3.421, 6.138),
    (0xF0E442, 0.744_05, 1.322, 15.881),
    (0x0072B2, 0.152_49, 5.185, 4.050),
    (0xD55E00, 0.221_52, 3.867, 5.430),
    (0xCC79A7, 0.293_02, 3.061, 6.860),
];

#[test]
fn okabe_ito_luminances() {
    for (hex, l, on_white, on_black) in OKABE_ITO {
        let c = Rgb::hex(hex);
        assert!((c.luminance() - l).abs() < 6e-6, "{hex:06X}");
        assert!(
            (c.contrast(Rgb::WHITE) - on_white).abs() < 6e-4,
            "{hex:06X}"
        );
        assert!(
            (c.contrast(Rgb::BLACK) - on_black).abs() < 6e-4,
            "{hex:06X}"
        );
    }
}

/// CIE 1976 lightness of the mid grey #777777 is 50.03 and of #BBBBBB 75.83 (W3C CSS Color 4,
/// `lab()` of sRGB greys under D65, from memory); black and white are exact.
#[test]
fn lightness_and_grey() {
    assert!((Rgb::hex(0x777777).lightness() - 50.03).abs() < 0.05);
    assert!((Rgb::WHITE.lightness() - 100.0).abs() < 1e-9);
    assert!(Rgb::BLACK.lightness().abs() < 1e-9);
    for level in 0..=255 {
        let grey = Rgb(level, level, level);
        assert_eq!(grey.to_grey(), grey);
    }
}

type Matrix = [[f64; 3]; 3];

/// Machado, Oliveira, Fernandes, "A Physiologically-based Model for Simulation of Color Vision
/// Deficiency", IEEE TVCG 15(6), 2009: full protan, deutan and tritan deficiency, for linear RGB.
const MACHADO: [Matrix; 3] = [
    [
        [0.152_286, 1.052_583, -0.204_868],
        [0.114_503, 0.786_281, 0.099_216],
        [-0.003_882, -0.048_116, 1.051_998],
    ],
    [
        [0.367_322, 0.860_646, -0.227_968],
        [0.280_085, 0.672_501, 0.047_413],
        [-0.011_820, 0.042_940, 0.968_881],
    ],
    [
        [1.255_528, -0.076_749, -0.178_779],
        [-0.078_411, 0.930_809, 0.147_602],
        [0.004_733, 0.691_367, 0.303_900],
    ],
];

fn seen(colour: Rgb, by: &Matrix) -> Rgb {
    let linear = |c: u8| {
        let c = f64::from(c) / 255.0;
        if c <= 0.04045 {
            c / 12.92
        } else {
            ((c + 0.055) / 1.055).powf(2.4)
        }
    };
    let encode = |c: f64| {
        let c = c.clamp(0.0, 1.0);
        let c = if c <= 0.003_130_8 {
            c * 12.92
        } else {
            1.055 * c.powf(1.0 / 2.4) - 0.055
        };
        (c * 255.0).round() as u8
    };
    let v = [linear(colour.0), linear(colour.1), linear(colour.2)];
    let row = |r: &[f64; 3]| encode(r[0] * v[0] + r[1] * v[1] + r[2] * v[2]);
    Rgb(row(&by[0]), row(&by[1]), row(&by[2]))
}

/// What the matrices give for known inputs, worked out apart from this program, within one step a
/// channel; and greys stay grey.
#[test]
fn machado_check_values() {
    let cases = [
        (0xFF0000, [0x6D5F00, 0xA39000, 0xFF000F]),
        (0x00FF00, [0xFFE500, 0xEFD63A, 0x00F7D9]),
        (0x0000FF, [0x0059FF, 0x003DFB, 0x006B96]),
        (0xE69F00, [0xB9A200, 0xCAB411, 0xFB8C87]),
        (0x56B4E9, [0x9BB3EC, 0x87A4E8, 0x00C2C6]),
        (0x009E73, [0x9A9271, 0x8A8676, 0x009E92]),
        (0xF0E442, [0xF8DC23, 0xFCE34E, 0xFFD4C5]),
        (0x0072B2, [0x5375B5, 0x3B67B1, 0x008289]),
        (0xD55E00, [0x817100, 0x9E8C00, 0xEB4050]),
        (0xCC79A7, [0x808BA9, 0x9498A5, 0xD6788A]),
    ];
    for (from, to) in cases {
        for (matrix, want) in MACHADO.iter().zip(to) {
            let (got, want) = (seen(Rgb::hex(from), matrix), Rgb::hex(want));
            let near = |a: u8, b: u8| a.abs_diff(b) <= 1;
            assert!(
                near(got.0, want.0) && near(got.1, want.1) && near(got.2, want.2),
                "{from:06X}: {got:?}, not {want:?}"
            );
        }
    }
    for matrix in &MACHADO {
        assert!(
            matrix
                .iter()
                .all(|r| (r.iter().sum::<f64>() - 1.0).abs() < 2e-6)
        );
    }
}

/// What acts on a symbol is outlined in ink; ink against every fill that needs telling from it
/// keeps 3:1 (WCAG 2.2 SC 1.4.11) for every kind of colour vision, and in grey.
#[test]
fn key_colours_stand_out_for_everyone() {
    let named = |name: &str| palette::ALL.iter().find(|(n, _)| *n == name).expect(name).1;
    let pairs = [
        ("ink", "sun"),
        ("ink", "white"),
        ("ink", "water"),
        ("ink", "sand"),
        ("ink", "coral"),
        ("ink", "leaf"),
        ("ink", "skin"),
        ("teal", "sun"),
        ("navy", "sun"),
        ("charcoal", "sun"),
        ("teal", "white"),
        ("navy", "white"),
        ("flagred", "sun"),
        ("flagred", "white"),
        ("aidgreen", "white"),
    ];
    for (a, b) in pairs {
        let (a_colour, b_colour) = (named(a), named(b));
        assert!(a_colour.contrast(b_colour) >= 3.0, "{a} on {b}");
        assert!(
            a_colour.to_grey().contrast(b_colour.to_grey()) >= 2.95,
            "{a} on {b} in grey"
        );
        for matrix in &MACHADO {
            let ratio = seen(a_colour, matrix).contrast(seen(b_colour, matrix));
            assert!(ratio >= 3.0, "{a} on {b}: {ratio:.2}");
        }
    }
}
