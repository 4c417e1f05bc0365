//! What is read and what is done with it. A further target is a further row.

use std::fs;
use std::path::Path;
use std::sync::Arc;

use daystrand::intake::{Frame, Ground, Mask, Photo, Recipe, Shape, Taken, take};
use daystrand::symbols::parse::parse;

use super::dice::Dice;
use super::mutate::bytes;
use super::{drawing, jpeg, png, sets, svg};

/// What became of a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    Photo,
    Drawing,
    Set,
    Refused,
}

/// One kind of file.
pub struct Target {
    pub name: &'static str,
    /// Real files to begin with.
    pub originals: fn() -> Vec<Vec<u8>>,
    /// One of them, changed.
    pub change: fn(&[Vec<u8>], &mut Dice) -> Vec<u8>,
    /// Brings a file in and does with it what a person does.
    pub bring: fn(&[u8], &mut Step) -> Outcome,
}

/// Called after each step with what it was.
pub type Step<'a> = dyn FnMut(&'static str) + 'a;

/// All kinds.
pub const TARGETS: [Target; 6] = [
    Target {
        name: "png",
        originals: || files("pictures", "png"),
        change: png::change,
        bring: intake,
    },
    Target {
        name: "jpeg",
        originals: || files("pictures", "jpg"),
        change: jpeg::change,
        bring: intake,
    },
    Target {
        name: "webp",
        originals: || files("pictures", "webp"),
        change: |originals, dice| {
            let mut file = dice.one(originals).clone();
            bytes(&mut file, originals, dice);
            file
        },
        bring: intake,
    },
    Target {
        name: "svg",
        originals: || [files("svg", "svg"), files("svg/pixels", "svg")].concat(),
        change: svg::change,
        bring: intake,
    },
    Target {
        name: "drawing",
        originals: drawing::originals,
        change: svg::change,
        bring: drawing::bring,
    },
    Target {
        name: "set",
        originals: sets::originals,
        change: sets::change,
        bring: sets::bring,
    },
];

fn files(folder: &str, ending: &str) -> Vec<Vec<u8>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/cases")
        .join(folder);
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let mut paths: Vec<_> = entries.map(|e| e.path()).collect();
    paths.retain(|p| p.extension().is_some_and(|e| e == ending));
    paths.sort();
    paths.iter().filter_map(|p| fs::read(p).ok()).collect()
}

fn intake(file: &[u8], step: &mut Step) -> Outcome {
    let taken = take("a file", file);
    step("take");
    match taken {
        Ok(Taken::Photo(photo)) => {
            use_photo(&photo, step);
            Outcome::Photo
        }
        Ok(Taken::Drawing(drawing)) => {
            assert!(
                parse(&drawing.svg).is_ok(),
                "a drawing that cannot be drawn"
            );
            Outcome::Drawing
        }
        Err(refusal) => {
            assert!(refusal.what.starts_with("“a file” ") && refusal.hint.ends_with('.'));
            Outcome::Refused
        }
    }
}

/// Kept, taken again, and cut, turned and masked.
fn use_photo(photo: &Photo, step: &mut Step) {
    let kept = photo.kept();
    step("kept");
    let again = take("kept", &kept.bytes);
    step("take again");
    assert!(
        matches!(&again, Ok(Taken::Photo(p)) if p.size() == photo.size()),
        "what is kept cannot be taken again"
    );
    let mut mask = Mask::new(photo);
    mask.flood(photo, [0, 0], 10.0, false);
    step("flood");
    let recipe = Recipe {
        frame: Some(Frame {
            centre: [0.4, 0.6],
            width: 0.7,
            shape: Shape::Upright,
        }),
        straighten: 12.0,
        quarter_turns: 1,
        brightness: 20.0,
        contrast: -30.0,
        mask: Some(Arc::new(mask)),
        ground: Ground::Transparent,
    };
    photo.develop(&recipe, 200);
    step("develop");
}
