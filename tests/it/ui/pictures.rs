//! A picture pasted in the window becomes someone's own, and is looked after at People.

use std::sync::Arc;

use daystrand::model::ids::SymbolId;
use daystrand::model::profile::PhotoConsent;
use daystrand::ui::app::App;
use daystrand::ui::people::Pane;
use daystrand::workbench::command::{Command, Place};
use egui::{Color32, ColorImage, Event, Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;

use super::{click, middle, no_pictures, press, type_words, window_of, window_with};
use crate::model::random_pictures::drawing;

type Window = Harness<'static, App>;

const SIZE: Vec2 = Vec2::new(1366.0, 768.0);

fn paste(h: &mut Window) {
    // A dark thing on a light ground.
    let pixels = (0..80 * 60).map(|i| match (i % 80, i / 80) {
        (20..60, 10..50) => Color32::from_rgb(30, 90, 140),
        _ => Color32::from_rgb(230, 235, 238),
    });
    let image = ColorImage::new([80, 60], pixels.collect());
    h.event(Event::PasteImage(Arc::new(image)));
    h.run();
}

#[test]
fn a_picture_pasted_at_a_step_is_kept_with_two_presses() {
    let mut h = window_with(SIZE, |bench| {
        no_pictures(bench);
        drop(bench.handle(Command::Show(Place::Boards)));
        let third = bench.view().board().unwrap().steps[2].at;
        drop(bench.handle(Command::ChooseStep(Some(third))));
    });
    let view = h.state().bench().view();
    let who = view.participant.unwrap().id;
    let step = view.board().unwrap().steps[2].clone();
    paste(&mut h);
    click(&mut h, "Keep");
    let view = h.state().bench().view();
    assert!(view.incoming.is_none());
    let kept = view.club.pictures.last().unwrap();
    assert_eq!(kept.whose, Some(who));
    assert_eq!(kept.stands_for, Some(step.symbol));
    assert_eq!(kept.name, step.label);
    assert_eq!(kept.consent, PhotoConsent::OwnTiles);
    // The largest square of it.
    assert_eq!(kept.photo().unwrap().size(), [60, 60]);
}

/// A file as the system hands it to the window.
#[derive(Debug)]
struct Dropped(std::path::PathBuf);

impl egui::DroppedFile for Dropped {
    fn path(&self) -> &std::path::Path {
        &self.0
    }

    fn bytes(&self) -> Result<Vec<u8>, String> {
        std::fs::read(&self.0).map_err(|e| e.to_string())
    }
}

fn drop_on(h: &mut Window, paths: &[&str]) {
    let cases = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases");
    let input = h.input_mut();
    for path in paths {
        input
            .dropped_files
            .push(Arc::new(Dropped(cases.join(path))));
    }
    h.run();
    // They are read in the background.
    for _ in 0..6_000 {
        if h.state().bench().view().incoming.is_none_or(|i| !i.reading) {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
        h.run_ok();
    }
}

#[test]
fn files_dropped_at_a_step_are_looked_at_one_after_the_other_and_bad_ones_are_named() {
    let mut h = window_with(SIZE, |bench| {
        no_pictures(bench);
        drop(bench.handle(Command::Show(Place::Boards)));
        let third = bench.view().board().unwrap().steps[2].at;
        drop(bench.handle(Command::ChooseStep(Some(third))));
    });
    let view = h.state().bench().view();
    let who = view.participant.unwrap().id;
    let symbol = view.board().unwrap().steps[2].symbol.clone();
    drop_on(
        &mut h,
        &["pictures/rgb8.png", "pictures/SOURCE", "svg/fills.svg"],
    );
    assert_eq!(h.state().bench().view().incoming.unwrap().behind, 1);
    let said = h.state().bench().view().notice.unwrap();
    assert!(
        said.trouble && said.sentence.contains("“SOURCE”"),
        "{}",
        said.sentence
    );
    click(&mut h, "Keep");
    click(&mut h, "Keep");
    let view = h.state().bench().view();
    assert!(view.incoming.is_none());
    assert_eq!(view.club.pictures.len(), 2);
    assert!(view.club.pictures.iter().all(|p| p.whose == Some(who)));
    assert!(
        view.club
            .pictures
            .iter()
            .all(|p| p.stands_for.as_ref() == Some(&symbol))
    );
    assert!(view.club.pictures[0].photo().is_some() && view.club.pictures[1].photo().is_none());
}

#[test]
fn a_club_dropped_on_the_window_is_opened() {
    let mut h = window_of(SIZE);
    drop_on(&mut h, &["files/good.daystrand"]);
    let path = h.state().bench().view().path.unwrap();
    assert!(path.ends_with("files/good.daystrand"));
}

#[test]
fn what_is_held_over_the_window_says_what_it_will_be() {
    let mut h = window_with(SIZE, |bench| {
        no_pictures(bench);
        drop(bench.handle(Command::Show(Place::Boards)));
    });
    h.input_mut()
        .hovered_files
        .push(egui::HoveredFile::default());
    h.run_ok();
    let view = h.state().bench().view();
    let says = format!(
        "The picture will be {}’s own. Let go, and look at it first.",
        view.participant.unwrap().name
    );
    h.get_by_label(&says);
}

#[test]
fn the_ground_is_taken_away_with_one_press_on_it() {
    let mut h = window_of(SIZE);
    paste(&mut h);
    click(&mut h, "Take the ground away");
    let stage = middle(&h, "What is cut out. Arrows move the brush, Enter uses it.");
    // Left of the thing in its middle.
    let ground = stage - Vec2::new(200.0, 0.0);
    h.drag_at(ground);
    h.step();
    h.drop_at(ground);
    h.run();
    click(&mut h, "Keep");
    let club = h.state().bench().view().club;
    let photo = club.pictures.last().unwrap().photo().unwrap().clone();
    let seen = image::load_from_memory(photo.bytes()).unwrap().to_rgba8();
    let [w, h] = photo.size();
    assert_eq!(seen.get_pixel(0, 0).0[3], 0, "the ground is clear");
    assert_eq!(seen.get_pixel(w / 2, h / 2).0, [30, 90, 140, 255]);
}

#[test]
fn escape_keeps_nothing() {
    let mut h = window_with(SIZE, no_pictures);
    paste(&mut h);
    assert!(h.state().bench().view().incoming.is_some());
    press(&mut h, Modifiers::NONE, Key::Escape);
    let view = h.state().bench().view();
    assert!(view.incoming.is_none() && view.club.pictures.is_empty());
}

#[test]
fn at_people_a_picture_is_renamed_given_and_removed() {
    let mut h = window_with(Vec2::new(1366.0, 1400.0), |bench| {
        no_pictures(bench);
        let sign = daystrand::model::picture::Picture::new(
            "Sign",
            daystrand::model::picture::Made::Drawing(drawing(120)),
        );
        let add = daystrand::model::edit::Edit::AddPicture(sign);
        drop(bench.handle(Command::Edit(add)));
    });
    press(&mut h, Modifiers::COMMAND, Key::Num2);
    assert_eq!(h.state().bench().view().place, Place::People);
    h.state_mut().state_mut().people.pane = Pane::Pictures;
    h.run();
    let now = |h: &Window| h.state().bench().view().club.pictures[0].clone();
    click(&mut h, "Name of the picture");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "Wooden ramp");
    press(&mut h, Modifiers::NONE, Key::Tab);
    assert_eq!(now(&h).name, "Wooden ramp");
    assert_eq!(
        now(&h).symbol(),
        SymbolId::new(&format!("own-{}", now(&h).id))
    );
    click(&mut h, "Outside too");
    assert_eq!(now(&h).consent, PhotoConsent::ClubMedia);
    click(&mut h, "A person can be recognised on it");
    assert!(now(&h).person);
    click(&mut h, "Remove");
    assert!(h.state().bench().view().club.pictures.is_empty());
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(now(&h).name, "Wooden ramp");
}
