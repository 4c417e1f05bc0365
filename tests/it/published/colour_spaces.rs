//! Colours of a photograph with a profile: IEC 61966-2-1 (sRGB), Adobe RGB (1998) Color Image
//! Encoding (version 2005-05) and the profile format of ICC.1:2001-04. The profile is made here from
//! the published primaries, white and gamma; what it must give is computed here from the published
//! matrices, which are other numbers than those that go into the profile.

use daystrand::intake::{Taken, take};

use crate::intake::making::{chunk, packed, png};

/// Chromaticities of Adobe RGB (1998), section 4.3.1.1: red, green, blue; white is D65.
const PRIMARIES: [[f64; 2]; 3] = [[0.64, 0.33], [0.21, 0.71], [0.15, 0.06]];
const D65: [f64; 2] = [0.3127, 0.3290];
/// White of the connection space, ICC.1:2001-04, section 6.3.4.3.
const D50: [f64; 3] = [0.9642, 1.0, 0.8249];
/// Gamma of Adobe RGB (1998), section 4.3.4.2: 2 and 51/256.
const GAMMA: f64 = 563.0 / 256.0;

/// Adobe RGB (1998), section 4.3.5.3: light to XYZ, D65.
const ADOBE_TO_XYZ: [[f64; 3]; 3] = [
    [0.57667, 0.18556, 0.18823],
    [0.29734, 0.62736, 0.07529],
    [0.02703, 0.07069, 0.99134],
];
/// IEC 61966-2-1, equation 7: XYZ, D65, to light.
const XYZ_TO_SRGB: [[f64; 3]; 3] = [
    [3.2406, -1.5372, -0.4986],
    [-0.9689, 1.8758, 0.0415],
    [0.0557, -0.2040, 1.0570],
];
/// The linear Bradford adaptation (ICC.1:2010, annex E).
const BRADFORD: [[f64; 3]; 3] = [
    [0.8951, 0.2664, -0.1614],
    [-0.7502, 1.7135, 0.0367],
    [0.0389, -0.0685, 1.0296],
];

type Matrix = [[f64; 3]; 3];

fn times(m: &Matrix, v: [f64; 3]) -> [f64; 3] {
    std::array::from_fn(|i| (0..3).map(|j| m[i][j] * v[j]).sum())
}

fn inverse(m: &Matrix) -> Matrix {
    let cofactor = |i: usize, j: usize| {
        let (a, b) = ((i + 1) % 3, (i + 2) % 3);
        let (c, d) = ((j + 1) % 3, (j + 2) % 3);
        m[a][c] * m[b][d] - m[a][d] * m[b][c]
    };
    let det: f64 = (0..3).map(|j| m[0][j] * cofactor(0, j)).sum();
    std::array::from_fn(|i| std::array::from_fn(|j| cofactor(j, i) / det))
}

fn xyz([x, y]: [f64; 2]) -> [f64; 3] {
    [x / y, 1.0, (1.0 - x - y) / y]
}

/// Light to XYZ: the primaries scaled to add up to white (SMPTE RP 177-1993, section 3).
fn to_xyz(primaries: [[f64; 2]; 3]) -> Matrix {
    let columns = primaries.map(xyz);
    let matrix: Matrix = std::array::from_fn(|i| std::array::from_fn(|j| columns[j][i]));
    let scale = times(&inverse(&matrix), xyz(D65));
    std::array::from_fn(|i| std::array::from_fn(|j| matrix[i][j] * scale[j]))
}

/// The colorants of the profile: primaries scaled to add up to white, adapted to D50.
fn colorants() -> [[f64; 3]; 3] {
    let matrix = to_xyz(PRIMARIES);
    let (from, to) = (times(&BRADFORD, xyz(D65)), times(&BRADFORD, D50));
    std::array::from_fn(|j| {
        let cone = times(&BRADFORD, std::array::from_fn(|i| matrix[i][j]));
        times(
            &inverse(&BRADFORD),
            std::array::from_fn(|i| cone[i] * to[i] / from[i]),
        )
    })
}

fn fixed(v: f64) -> [u8; 4] {
    ((v * 65536.0).round() as i32).to_be_bytes()
}

/// A matrix profile of version 2.1: three colorants, three curves that are one number, a white.
fn profile() -> Vec<u8> {
    let xyz_type = |v: [f64; 3]| {
        let numbers = v.map(fixed).concat();
        [b"XYZ \0\0\0\0", &numbers[..]].concat()
    };
    let gamma = ((GAMMA * 256.0).round() as u16).to_be_bytes();
    let curve = [b"curv\0\0\0\0\0\0\0\x01", &gamma[..], b"\0\0"].concat();
    let [red, green, blue] = colorants();
    let text = b"desc\0\0\0\0\0\0\0\x02a\0\0\0\0\0\0\0\0\0\0\0\0\0".to_vec();
    let text = [text, vec![0; 67 + 3]].concat();
    let tags: [(&[u8; 4], Vec<u8>); 9] = [
        (b"desc", text),
        (b"cprt", b"text\0\0\0\0free\0\0\0\0".to_vec()),
        (b"wtpt", xyz_type(D50)),
        (b"rXYZ", xyz_type(red)),
        (b"gXYZ", xyz_type(green)),
        (b"bXYZ", xyz_type(blue)),
        (b"rTRC", curve.clone()),
        (b"gTRC", curve.clone()),
        (b"bTRC", curve),
    ];
    let mut at = 128 + 4 + 12 * tags.len();
    let (mut table, mut data) = ((tags.len() as u32).to_be_bytes().to_vec(), Vec::new());
    for (name, body) in tags {
        let padded = body.len().next_multiple_of(4);
        table.extend(name);
        table.extend((at as u32).to_be_bytes());
        table.extend((body.len() as u32).to_be_bytes());
        data.extend(&body);
        data.resize(data.len() + padded - body.len(), 0);
        at += padded;
    }
    let mut head = vec![0; 128];
    head[..4].copy_from_slice(&(at as u32).to_be_bytes());
    head[8..12].copy_from_slice(&[2, 0x10, 0, 0]);
    head[12..24].copy_from_slice(b"mntrRGB XYZ ");
    head[24..36].copy_from_slice(&[7, 0xEA, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0]);
    head[36..40].copy_from_slice(b"acsp");
    head[68..80].copy_from_slice(&D50.map(fixed).concat());
    [head, table, data].concat()
}

/// What an Adobe RGB colour is in sRGB, by the published matrices.
fn wanted(colour: [u8; 3]) -> [f64; 3] {
    let light = colour.map(|c| (f64::from(c) / 255.0).powf(GAMMA));
    in_srgb(&ADOBE_TO_XYZ, light)
}

/// Light of some primaries as numbers of sRGB (IEC 61966-2-1, equations 7 to 9).
fn in_srgb(to_xyz: &Matrix, light: [f64; 3]) -> [f64; 3] {
    times(&XYZ_TO_SRGB, times(to_xyz, light)).map(|y| {
        let y = y.clamp(0.0, 1.0);
        let c = if y <= 0.003_130_8 {
            12.92 * y
        } else {
            1.055 * y.powf(1.0 / 2.4) - 0.055
        };
        c * 255.0
    })
}

fn taken(colours: &[[u8; 3]], profile: &[u8]) -> (Vec<[u8; 3]>, Vec<String>) {
    with(colours, &[with_profile(profile)])
}

fn with_profile(profile: &[u8]) -> Vec<u8> {
    chunk(b"iCCP", &[&b"a\0\0"[..], &packed(profile)].concat())
}

/// What comes of a PNG with these chunks before its pixels.
fn with(colours: &[[u8; 3]], chunks: &[Vec<u8>]) -> (Vec<[u8; 3]>, Vec<String>) {
    let file = png(8, colours, chunks);
    let Ok(Taken::Photo(photo)) = take("a.png", &file) else {
        panic!("not taken");
    };
    let got = photo.pixels().pixels().map(|p| [p.0[0], p.0[1], p.0[2]]);
    (got.collect(), photo.notes.clone())
}

/// A lattice through all colours.
fn lattice() -> Vec<[u8; 3]> {
    let steps = [0, 36, 73, 109, 146, 182, 219, 255];
    let count = steps.len();
    let all = (0..count * count * count).map(|i| {
        [
            steps[i / count / count],
            steps[i / count % count],
            steps[i % count],
        ]
    });
    all.collect()
}

#[test]
fn colours_of_adobe_rgb_come_out_as_those_of_srgb() {
    near(&[with_profile(&profile())], wanted);
}

/// Whether every colour of a lattice comes out of a PNG with these chunks as it should.
fn near(chunks: &[Vec<u8>], wanted: impl Fn([u8; 3]) -> [f64; 3]) {
    let colours = lattice();
    let (got, notes) = with(&colours, chunks);
    assert!(notes.is_empty(), "{notes:?}");
    let mut most: f64 = 0.0;
    for (colour, got) in colours.iter().zip(&got) {
        let wanted = wanted(*colour);
        for (g, w) in got.iter().zip(wanted) {
            // Near black the curve of sRGB is steep, and four decimals of a matrix count.
            let bound = if w < 30.0 { 4.0 } else { 2.0 };
            let off = (f64::from(*g) - w).abs();
            assert!(off <= bound, "{colour:?}: {got:?}, wanted {wanted:?}");
            most = most.max(off);
        }
    }
    // Not by leaving them as they are: their green is far outside sRGB.
    assert_ne!(got[8], colours[8]);
    assert!(most > 0.0);
}

/// `cHRM` and `gAMA` (W3C PNG, third edition, 11.3.2.1 and 11.3.2.2): white, red, green, blue, and
/// the gamma of the file, all in parts of 100,000.
fn by_numbers(points: [[f64; 2]; 4], gamma: Option<f64>) -> Vec<Vec<u8>> {
    let parts = |v: f64| ((v * 100_000.0).round() as u32).to_be_bytes();
    let points = points.concat().into_iter().flat_map(parts);
    let mut chunks = vec![chunk(b"cHRM", &points.collect::<Vec<u8>>())];
    chunks.extend(gamma.map(|g| chunk(b"gAMA", &parts(1.0 / g))));
    chunks
}

#[test]
fn the_same_colours_come_out_of_primaries_and_gamma() {
    let [red, green, blue] = PRIMARIES;
    near(&by_numbers([D65, red, green, blue], Some(GAMMA)), wanted);
}

/// Light by the curve of sRGB (IEC 61966-2-1, equations 5 and 6).
fn light(c: u8) -> f64 {
    let c = f64::from(c) / 255.0;
    if c <= 0.040_45 {
        c / 12.92
    } else {
        ((c + 0.055) / 1.055).powf(2.4)
    }
}

/// `cICP` (PNG, third edition, 11.3.2.6) with the codes of ITU-T H.273: 12 are the primaries of
/// SMPTE EG 432-1 and 9 those of ITU-R BT.2020, both on D65; 13 is the curve of sRGB.
#[test]
fn primaries_come_by_their_codes_too() {
    let eg_432 = [[0.680, 0.320], [0.265, 0.690], [0.150, 0.060]];
    let bt_2020 = [[0.708, 0.292], [0.170, 0.797], [0.131, 0.046]];
    for (code, primaries) in [(12, eg_432), (9, bt_2020)] {
        let matrix = to_xyz(primaries);
        let chunks = [chunk(b"cICP", &[code, 13, 0, 1])];
        near(&chunks, |colour| in_srgb(&matrix, colour.map(light)));
        let [red, green, blue] = primaries;
        let numbers = by_numbers([D65, red, green, blue], None);
        near(&numbers, |colour| in_srgb(&matrix, colour.map(light)));
    }
}

/// PNG, third edition, 4.3: codes before a profile, a profile before sRGB, that before gamma and
/// primaries.
#[test]
fn of_several_words_about_colours_the_first_counts() {
    let colours = lattice();
    let [red, green, blue] = PRIMARIES;
    let numbers = by_numbers([D65, red, green, blue], Some(GAMMA));
    let codes = chunk(b"cICP", &[1, 13, 0, 1]);
    let adobe = with_profile(&profile());
    let srgb = chunk(b"sRGB", &[0]);
    let all = |first: &[Vec<u8>]| [first, &numbers].concat();
    for chunks in [all(&[codes, adobe.clone()]), all(&[srgb])] {
        assert_eq!(with(&colours, &chunks), (colours.clone(), Vec::new()));
    }
    let screen = by_numbers([D65, [0.64, 0.33], [0.30, 0.60], [0.15, 0.06]], Some(2.2));
    assert_eq!(with(&colours, &screen), (colours.clone(), Vec::new()));
    near(&[vec![adobe], screen].concat(), wanted);
}

#[test]
fn words_about_colours_that_make_no_sense_change_nothing() {
    let colours = lattice();
    let [red, green, blue] = PRIMARIES;
    let none = [0.0, 0.0];
    for points in [
        [none; 4],
        [D65; 4],
        [none, red, green, blue],
        [[0.9, 0.05], red, green, blue],
        [D65, blue, green, red],
        [D65, [40_000.0, 0.3], green, blue],
    ] {
        let got = with(&colours, &by_numbers(points, None));
        assert_eq!(got, (colours.clone(), Vec::new()), "{points:?}");
    }
    let short = [chunk(b"cHRM", &[0; 31]), chunk(b"cICP", &[12, 13, 0])];
    assert_eq!(with(&colours, &short), (colours.clone(), Vec::new()));
    // Light for brighter screens, part of the range, codes that are not given out, nothing known.
    for codes in [
        [9, 16, 0, 1],
        [9, 18, 0, 1],
        [1, 13, 0, 0],
        [200, 13, 0, 1],
        [2, 2, 0, 1],
    ] {
        let (got, notes) = with(&colours, &[chunk(b"cICP", &codes)]);
        assert_eq!((got, notes.len()), (colours.clone(), 1), "{codes:?}");
        assert!(notes[0].starts_with("Its colour profile could not be read"));
    }
}

#[test]
fn what_is_srgb_by_its_profile_is_not_touched() {
    let colours = lattice();
    let (got, notes) = taken(
        &colours,
        &moxcms::ColorProfile::new_srgb().encode().unwrap(),
    );
    assert_eq!(got, colours);
    assert!(notes.is_empty());
}

#[test]
fn a_profile_that_is_none_leaves_the_colours_and_says_so() {
    let colours = lattice();
    let (got, notes) = taken(&colours, &profile()[..200]);
    assert_eq!(got, colours);
    assert_eq!(
        notes,
        [
            "Its colour profile could not be read, so its colours were taken as those of a screen (sRGB)."
        ]
    );
}

/// Inks with a profile, against Little CMS 2.14 (made outside; `tests/cases/pictures/SOURCE`).
#[test]
fn inks_with_a_profile_have_the_colours_of_another_reader() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/pictures");
    let table = std::fs::read_to_string(folder.join("inks.txt")).unwrap();
    let rows: Vec<Vec<u8>> = table
        .lines()
        .filter(|l| !l.starts_with('#'))
        .map(|l| l.split(' ').map(|n| n.parse().unwrap()).collect())
        .collect();
    assert_eq!(rows.len(), 24);
    for name in ["cmyk-profile.jpg", "ycck-profile.jpg"] {
        let bytes = std::fs::read(folder.join(name)).unwrap();
        let Ok(Taken::Photo(photo)) = take(name, &bytes) else {
            panic!("{name} was not taken");
        };
        assert_eq!(photo.notes, Vec::<String>::new(), "{name}");
        for (i, row) in rows.iter().enumerate() {
            let (x, y) = (i as u32 % 6 * 8 + 4, i as u32 / 6 * 8 + 4);
            let got = photo.pixels().get_pixel(x, y).0;
            for (a, b) in got.iter().zip(&row[4..]) {
                // In the dark a step of a number is hardly any light, and tables are read unlike.
                let apart = if *b < 40 { 10 } else { 4 };
                assert!(a.abs_diff(*b) <= apart, "{name} {row:?}: {got:?}");
            }
        }
    }
}
