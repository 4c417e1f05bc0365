//! What the window looks like: small pictures, compared with those kept in `tests/golden/ui`.
//! `UPDATE_GOLDEN=1` writes them anew, and whole ones to look at into `daystrand-looks` in the
//! folder for temporary files.

use std::path::PathBuf;

use daystrand::ui::app::App;
use daystrand::ui::start::StartState;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Place, Theme};
use egui::{Key, Modifiers, Vec2};
use image::RgbaImage;
use image::imageops::FilterType;

use super::{at, click, press, window_of};

/// Mean difference of a channel, in 255ths, that still counts as the same picture.
const SAME: f64 = 1.0;
/// The pictures are kept smaller by this.
const PART: u32 = 4;

type Window = egui_kittest::Harness<'static, App>;

fn golden(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/golden/ui")
        .join(format!("{name}.png"))
}

fn compare(name: &str, picture: &RgbaImage) {
    let small = image::imageops::resize(
        picture,
        picture.width() / PART,
        picture.height() / PART,
        FilterType::Triangle,
    );
    let path = golden(name);
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        std::fs::create_dir_all(path.parent().expect("a folder")).expect("folder");
        small.save(&path).expect("written");
        let large = std::env::temp_dir().join("daystrand-looks");
        std::fs::create_dir_all(&large).expect("folder");
        let large = large.join(format!("{name}.png"));
        picture.save(large).expect("written");
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
fn colours(h: &mut Window, theme: Theme) {
    let chosen = daystrand::ui::actions::Action::Colours(theme);
    let ctx = h.ctx.clone();
    h.state_mut().act(&ctx, chosen);
    h.run();
}

/// Everything there is to see, each as an evening comes to it.
fn whole_evening(theme: Theme, name: &str) {
    let mut h = at(Place::Session);
    colours(&mut h, theme);
    let seen = |h: &mut Window, what: &str| {
        compare(&format!("{name}-{what}"), &h.render().expect("a picture"));
    };
    seen(&mut h, "session");
    click(&mut h, "People and water");
    seen(&mut h, "water");
    press(&mut h, Modifiers::COMMAND, Key::Num2);
    seen(&mut h, "people");
    press(&mut h, Modifiers::COMMAND, Key::Num3);
    let first = super::middle(&h, &format!("{}, step 1", super::labels(&h)[0]));
    super::click_at(&mut h, first);
    press(&mut h, Modifiers::SHIFT, Key::ArrowRight);
    seen(&mut h, "boards");
    press(&mut h, Modifiers::COMMAND, Key::G);
    seen(&mut h, "group");
    press(&mut h, Modifiers::COMMAND, Key::G);
    click(&mut h, "Story");
    seen(&mut h, "story");
    press(&mut h, Modifiers::COMMAND, Key::Num4);
    seen(&mut h, "checks");
    press(&mut h, Modifiers::COMMAND, Key::K);
    seen(&mut h, "find");
    press(&mut h, Modifiers::NONE, Key::Escape);
    press(&mut h, Modifiers::NONE, Key::F1);
    seen(&mut h, "help");
    press(&mut h, Modifiers::NONE, Key::Escape);
    press(&mut h, Modifiers::COMMAND, Key::D);
    seen(&mut h, "drawing");
}

#[test]
fn an_evening_in_the_light() {
    whole_evening(Theme::Light, "light");
}

#[test]
fn an_evening_in_the_dark() {
    whole_evening(Theme::Dark, "dark");
}

#[test]
fn an_evening_in_high_contrast() {
    whole_evening(Theme::HighContrast, "contrast");
}

/// What one meets first, and what two go through together, by day and by night.
#[test]
fn the_first_page_and_going_through_together() {
    let mut h = window_of(Vec2::new(1366.0, 768.0));
    press(&mut h, Modifiers::NONE, Key::F5);
    compare("together", &h.render().expect("a picture"));
    let bench = Workbench::new(jiff::civil::date(2027, 6, 10));
    let mut h = super::window_on(bench, Vec2::new(1366.0, 768.0));
    h.state_mut().state_mut().start = Some(StartState::default());
    h.run();
    compare("start", &h.render().expect("a picture"));
}

#[test]
fn a_small_window_in_high_contrast() {
    let mut h = window_of(Vec2::new(683.0, 384.0));
    colours(&mut h, Theme::HighContrast);
    compare("small-contrast", &h.render().expect("a picture"));
}
