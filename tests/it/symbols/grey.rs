//! Areas that lie side by side without ink or seam between them are told apart in grey.

use std::collections::BTreeMap;

use daystrand::symbols::library::library;
use daystrand::symbols::palette;
use daystrand::symbols::variant::Variant;
use daystrand::units::colour::Rgb;

use super::paint;

const SIDE: usize = 480;
/// CIE lightness steps that are one tone to the eye: our own choice.
const ALIKE: f64 = 7.0;
/// Border of at most this many dots is a corner where things meet, not an edge: 5 mm in all on a
/// tile of 20 mm.
const CORNER: usize = 120;

/// For each dot the palette colour it has, if it is wholly of one.
fn fields(svg: &str) -> Vec<Option<usize>> {
    let map = paint::svg(svg, SIDE as u32);
    let of = |p: &resvg::tiny_skia::PremultipliedColorU8| {
        let c = Rgb(p.red(), p.green(), p.blue());
        palette::ALL.iter().position(|(_, known)| *known == c)
    };
    map.pixels().iter().map(of).collect()
}

/// How long two colours run side by side, in dots: one next to the other, or with up to two soft
/// dots between.
fn borders(fields: &[Option<usize>]) -> BTreeMap<(usize, usize), usize> {
    let mut out = BTreeMap::new();
    for y in 0..SIDE {
        for x in 0..SIDE {
            let Some(a) = fields[y * SIDE + x] else {
                continue;
            };
            for (dx, dy) in [(1, 0), (0, 1)] {
                let along = |n: usize| {
                    let (u, v) = (x + dx * n, y + dy * n);
                    (u < SIDE && v < SIDE).then(|| fields[v * SIDE + u])
                };
                let next = (1..=3).find_map(|n| along(n).flatten());
                if let Some(b) = next.filter(|b| *b != a) {
                    *out.entry((a.min(b), a.max(b))).or_default() += 1;
                }
            }
        }
    }
    out
}

/// Marks on a face or hand and cheeks belong to the skin and need not stand out from it; ink is the
/// line itself, and dark hair may run into it.
fn matters(name: &str) -> bool {
    !name.starts_with("skinline") && name != "blush" && name != "ink"
}

#[test]
fn neighbours_differ_in_grey() {
    let mut faults = Vec::new();
    for s in library().all() {
        let art = s.drawn(Variant::default()).art;
        for ((a, b), long) in borders(&fields(&paint::to_svg(&art))) {
            let ((one, c), (two, d)) = (palette::ALL[a], palette::ALL[b]);
            let near = (c.lightness() - d.lightness()).abs() < ALIKE;
            if near && long > CORNER && matters(one) && matters(two) {
                faults.push(format!("{}: {one} beside {two} for {long} dots", s.id));
            }
        }
    }
    assert!(
        faults.is_empty(),
        "{}:\n{}",
        faults.len(),
        faults.join("\n")
    );
}
