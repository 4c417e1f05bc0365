//! Every symbol in the repository keeps the drawing rules of `icons-src/STYLE.md`.

use std::collections::BTreeSet;
use std::path::Path;

use daystrand::assets;
use daystrand::model::language::Language;
use daystrand::model::people::Age;
use daystrand::symbols::art::{Art, CANVAS, Node};
use daystrand::symbols::lexicon::lexicon;
use daystrand::symbols::library::{Symbol, library};
use daystrand::symbols::palette;
use daystrand::symbols::parse::parse;
use daystrand::units::colour::Rgb;

use super::paint;

/// The live area: ink stays this far from the canvas edge, give or take the soft edge of a pixel.
const MARGIN: f64 = 12.0;
const SOFT: f64 = 1.0;
/// A drawing fills at least this much of the canvas in one direction.
const LEAST: f64 = 180.0;

fn everything() -> impl Iterator<Item = &'static Symbol> {
    library().all().iter().chain(library().marks())
}

fn report(faults: &[String]) {
    assert!(
        faults.is_empty(),
        "{} faults:\n{}",
        faults.len(),
        faults.join("\n")
    );
}

#[test]
fn index_and_drawings_match() {
    let mut faults = library().faults().to_vec();
    for (folder, listed) in [("svg", library().all()), ("marks", library().marks())] {
        let listed: BTreeSet<&str> = listed.iter().map(|s| s.id.as_str()).collect();
        for file in assets::drawings(folder) {
            if !listed.contains(file) {
                faults.push(format!("icons-src/{folder}/{file}.svg is in no index."));
            }
        }
    }
    report(&faults);
}

#[test]
fn what_is_built_in_is_what_lies_on_disk() {
    for folder in ["svg", "marks"] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("icons-src")
            .join(folder);
        let mut on_disk: Vec<String> = std::fs::read_dir(&path)
            .into_iter()
            .flatten()
            .filter_map(|f| f.ok()?.file_name().into_string().ok())
            .filter_map(|f| f.strip_suffix(".svg").map(str::to_owned))
            .collect();
        on_disk.sort();
        assert_eq!(
            assets::drawings(folder),
            on_disk,
            "a drawing came or went since the build: touch src/assets.rs and build again"
        );
    }
}

#[test]
fn drawings_are_within_the_subset_and_the_palette() {
    let mut faults = Vec::new();
    for s in everything() {
        match parse(s.svg()) {
            Err(refusal) => faults.push(format!("{}: {refusal}", s.id)),
            Ok(art) => {
                let mut used = BTreeSet::new();
                colours(&art.nodes, &mut used);
                for c in used {
                    if !palette::ALL.iter().any(|(_, p)| *p == c) {
                        let Rgb(r, g, b) = c;
                        faults.push(format!(
                            "{}: #{r:02X}{g:02X}{b:02X} is no palette colour",
                            s.id
                        ));
                    }
                }
            }
        }
    }
    report(&faults);
}

fn colours(nodes: &[Node], used: &mut BTreeSet<Rgb>) {
    for node in nodes {
        match node {
            Node::Shape(s) => {
                used.extend(s.fill);
                used.extend(s.stroke.map(|s| s.colour));
            }
            Node::Clipped { nodes, .. } => colours(nodes, used),
            Node::Pixels { .. } => panic!("no symbol has pixels"),
        }
    }
}

#[test]
fn drawings_fill_the_live_area_and_stay_within() {
    let mut faults = Vec::new();
    for s in everything() {
        let map = paint::svg(s.svg(), 480);
        let Some(ink) = paint::ink_box(&map) else {
            faults.push(format!("{}: nothing can be seen", s.id));
            continue;
        };
        let [left, top, right, bottom] = ink.map(|px| f64::from(px) * f64::from(CANVAS) / 480.0);
        let edge = MARGIN - SOFT;
        let far = f64::from(CANVAS) - edge;
        if left < edge || top < edge || right > far || bottom > far {
            faults.push(format!(
                "{}: ink from {left}, {top} to {right}, {bottom} leaves the live area",
                s.id
            ));
        }
        if (right - left).max(bottom - top) < LEAST {
            faults.push(format!(
                "{}: too small ({left}, {top} to {right}, {bottom})",
                s.id
            ));
        }
    }
    report(&faults);
}

#[test]
fn parsed_drawings_paint_like_their_source() {
    let mut faults = Vec::new();
    for s in everything() {
        let art: Art = parse(s.svg()).unwrap_or_default();
        let differ = paint::difference(
            &paint::svg(s.svg(), 240),
            &paint::svg(&paint::to_svg(&art), 240),
        );
        // Rounding at edges moves single pixels; a lost or misplaced shape moves hundreds.
        if differ > 0.0015 {
            faults.push(format!(
                "{}: {:.2} % of pixels differ",
                s.id,
                differ * 100.0
            ));
        }
    }
    report(&faults);
}

/// A drawing that a painter has to walk through for each tile stays small. Bounds are our own; the
/// bench `symbols` measures how long reading takes.
#[test]
fn drawings_are_small() {
    fn count(nodes: &[Node]) -> usize {
        let one = |n: &Node| match n {
            Node::Shape(_) => 1,
            Node::Clipped { nodes, .. } => 1 + count(nodes),
            Node::Pixels { .. } => panic!("no symbol has pixels"),
        };
        nodes.iter().map(one).sum()
    }
    let mut faults = Vec::new();
    for s in everything() {
        for age in Age::ALL {
            let Some(svg) = s.svg_at(age) else { continue };
            let art = parse(svg).unwrap_or_default();
            let (n, bytes) = (count(&art.nodes), svg.len());
            if n > 700 || bytes > 128_000 || svg.contains("<text") {
                faults.push(format!("{}: {n} shapes, {bytes} bytes", s.id));
            }
        }
    }
    report(&faults);
}

/// Who opens a drawing alone, without the program, sees what it is called.
#[test]
fn titles_are_the_british_labels() {
    let words = lexicon(&Language::default());
    for s in library().all() {
        let title = s.svg().split("<title>").nth(1).unwrap_or_default();
        let title = title.split("</title>").next().unwrap_or_default();
        let title = title.replace("&amp;", "&").replace("&#39;", "'");
        assert_eq!(title, words.label(&s.id), "{}", s.id);
    }
}

#[test]
fn the_tray_has_two_hundred_symbols() {
    assert!(library().all().len() >= 200, "{}", library().all().len());
}

#[test]
fn index_entries_say_something() {
    let mut faults = Vec::new();
    for s in library().all() {
        let id = &s.id;
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
        if id.as_str().is_empty() || !id.as_str().chars().all(plain) {
            faults.push(format!("{id}: a name is lower-case letters, digits and _"));
        }
        for (what, text) in [("shows", &s.shows), ("group", &s.group)] {
            if text.trim().is_empty() || text.trim() != text {
                faults.push(format!("{id}: {what} is empty or has spaces around it"));
            }
        }
    }
    report(&faults);
}
