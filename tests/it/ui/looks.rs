//! What the window looks like: few small pictures, compared with those kept in `tests/golden/ui`.
//! `UPDATE_GOLDEN=1` writes them anew.

use std::path::PathBuf;

use daystrand::ui::app::App;
use daystrand::workbench::command::{Place, Theme};
use egui::{Key, Modifiers, Vec2};
use image::RgbaImage;
use image::imageops::FilterType;

use super::{at, press, window_of};

/// Mean difference of a channel, in 255ths, that still counts as the same picture.
const SAME: f64 = 1.0;

fn golden(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/golden/ui")
        .join(format!("{name}.png"))
}

fn compare(name: &str, picture: &RgbaImage) {
    let small = image::imageops::resize(
        picture,
        picture.width() / 3,
        picture.height() / 3,
        FilterType::Triangle,
    );
    let path = golden(name);
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        std::fs::create_dir_all(path.parent().expect("a folder")).expect("folder");
        small.save(&path).expect("written");
        return;
    }
    let kept = image::open(&path)
        .unwrap_or_else(|e| panic!("{}: {e}; UPDATE_GOLDEN=1 writes it", path.display()));
    let kept = kept.to_rgba8();
    assert_eq!(
        kept.dimensions(),
        small.dimensions(),
        "{name}: another size"
    );
    let sum: u64 = kept
        .as_raw()
        .iter()
        .zip(small.as_raw())
        .map(|(a, b)| u64::from(a.abs_diff(*b)))
        .sum();
    let mean = sum as f64 / small.as_raw().len() as f64;
    if mean > SAME {
        let seen = std::env::temp_dir().join(format!("daystrand-{name}.png"));
        small.save(&seen).expect("written");
        panic!(
            "{name} looks different by {mean:.2}; see {}",
            seen.display()
        );
    }
}

/// Chooses colours the way the menu does.
fn colours(h: &mut egui_kittest::Harness<'_, App>, theme: Theme) {
    let chosen = daystrand::ui::actions::Action::Colours(theme);
    let ctx = h.ctx.clone();
    h.state_mut().act(&ctx, chosen);
    h.run();
}

#[test]
fn the_board_on_the_strand() {
    let mut h = at(Place::Boards);
    compare("boards", &h.render().expect("a picture"));
}

#[test]
fn a_story_beside_its_page() {
    let mut h = at(Place::Boards);
    let at = super::middle(&h, "Story");
    h.drag_at(at);
    h.step();
    h.drop_at(at);
    h.run();
    compare("story", &h.render().expect("a picture"));
}

#[test]
fn the_whole_group_in_the_dark() {
    let mut h = at(Place::Boards);
    colours(&mut h, Theme::Dark);
    press(&mut h, Modifiers::COMMAND, Key::G);
    compare("group-dark", &h.render().expect("a picture"));
}

#[test]
fn a_small_window_in_high_contrast() {
    let mut h = window_of(Vec2::new(683.0, 384.0));
    colours(&mut h, Theme::HighContrast);
    compare("small-contrast", &h.render().expect("a picture"));
}
