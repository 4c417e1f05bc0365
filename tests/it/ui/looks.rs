//! What the window looks like: small pictures, compared with those kept in `tests/golden/ui`.
//! `UPDATE_GOLDEN=1` writes them anew, and whole ones to look at into `daystrand-looks` in the
//! folder for temporary files.

use std::path::PathBuf;

use daystrand::ui::app::App;
use daystrand::workbench::command::{Place, Theme};
use egui::{Key, Modifiers, Vec2};
use image::RgbaImage;
use image::imageops::FilterType;

use super::{at, click, first_page, press, window_of};

/// Mean difference of a channel, in 255ths, that still counts as the same picture; and in a part of
/// it, where a letter more or a line less is much.
const SAME: f64 = 1.0;
const SAME_PART: f64 = 8.0;
/// Side of such a part, in points of the kept picture.
const SIDE: u32 = 24;
/// The pictures are kept smaller by this.
const PART: u32 = 4;
/// The size of the window in most of them.
const WHOLE: Vec2 = Vec2::new(1366.0, 768.0);

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
    let whole = differs(&kept, &small, (0, 0), kept.dimensions());
    let (wide, high) = kept.dimensions();
    let corners = (0..high).step_by(SIDE as usize);
    let corners = corners.flat_map(|y| (0..wide).step_by(SIDE as usize).map(move |x| (x, y)));
    let part = corners.map(|at| (differs(&kept, &small, at, (SIDE, SIDE)), at));
    let (part, at) = part.max_by(|a, b| a.0.total_cmp(&b.0)).expect("a part");
    if whole > SAME || part > SAME_PART {
        let seen = std::env::temp_dir().join(format!("daystrand-{name}.png"));
        small.save(&seen).expect("written");
        panic!(
            "{name} looks different by {whole:.2}, at {at:?} by {part:.2}; see {}",
            seen.display()
        );
    }
}

/// Mean difference of a channel in a part of two pictures of one size.
fn differs(a: &RgbaImage, b: &RgbaImage, at: (u32, u32), size: (u32, u32)) -> f64 {
    let (right, below) = (a.width().min(at.0 + size.0), a.height().min(at.1 + size.1));
    let places = (at.1..below).flat_map(|y| (at.0..right).map(move |x| (x, y)));
    let (mut sum, mut count) = (0_u64, 0_u64);
    for (x, y) in places {
        let both = a.get_pixel(x, y).0.into_iter().zip(b.get_pixel(x, y).0);
        sum += both.map(|(a, b)| u64::from(a.abs_diff(b))).sum::<u64>();
        count += 4;
    }
    sum as f64 / count.max(1) as f64
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
    let seen = |h: &mut Window, what: &str| {
        compare(&format!("{name}-{what}"), &h.render().expect("a picture"));
    };
    let mut h = first_page(WHOLE);
    colours(&mut h, theme);
    seen(&mut h, "start");
    let mut h = at(Place::Session);
    colours(&mut h, theme);
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
    press(&mut h, Modifiers::COMMAND, Key::Num5);
    seen(&mut h, "print");
    press(&mut h, Modifiers::COMMAND, Key::K);
    seen(&mut h, "find");
    press(&mut h, Modifiers::NONE, Key::Escape);
    press(&mut h, Modifiers::NONE, Key::F1);
    seen(&mut h, "help");
    press(&mut h, Modifiers::NONE, Key::Escape);
    press(&mut h, Modifiers::COMMAND, Key::D);
    seen(&mut h, "drawing");
    let mut h = at(Place::Boards);
    colours(&mut h, theme);
    press(&mut h, Modifiers::NONE, Key::F5);
    seen(&mut h, "together");
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

/// The night colours of the full view are its own, whatever the window's are.
#[test]
fn going_through_together_at_night() {
    let mut h = window_of(WHOLE);
    press(&mut h, Modifiers::NONE, Key::F5);
    press(&mut h, Modifiers::NONE, Key::A);
    press(&mut h, Modifiers::NONE, Key::K);
    compare("night-together", &h.render().expect("a picture"));
}

#[test]
fn a_small_window_in_high_contrast() {
    let mut h = window_of(Vec2::new(683.0, 384.0));
    colours(&mut h, Theme::HighContrast);
    compare("small-contrast", &h.render().expect("a picture"));
}
