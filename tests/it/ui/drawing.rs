//! The place where a picture is drawn: by mouse, by keys, by finger; what is kept is in the club.

use daystrand::model::ids::{ParticipantId, SymbolId};
use daystrand::model::picture::{Made, Picture};
use daystrand::symbols::art::Node;
use daystrand::symbols::parse::parse;
use daystrand::ui::app::App;
use daystrand::ui::drawing::Start;
use egui::{Event, Key, Modifiers, Pos2, Rect, TouchDeviceId, TouchId, TouchPhase, Vec2, pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;

use super::{
    click, click_at, drag, key, middle, no_pictures, press, type_words, window_of, window_with,
};

const SIZE: Vec2 = Vec2::new(1366.0, 768.0);

/// The place with an empty sheet.
fn sheet() -> Harness<'static, App> {
    let mut h = window_with(SIZE, no_pictures);
    press(&mut h, Modifiers::COMMAND, Key::D);
    assert!(h.query_by_label("Draw a picture").is_some());
    h
}

fn paper(h: &Harness<'_, App>) -> Rect {
    let node = h.query_all_by(|n| n.label().is_some_and(|l| l.starts_with("Paper, ")));
    let node = node.last().expect("the paper");
    node.rect()
}

/// A place of the canvas in the window.
fn on(h: &Harness<'_, App>, x: f32, y: f32) -> Pos2 {
    let paper = paper(h);
    paper.min + Vec2::new(x, y) * (paper.width() / 240.0)
}

fn things(h: &mut Harness<'_, App>) -> Vec<Node> {
    let drawing = h.state_mut().state_mut().drawing.as_ref();
    drawing
        .expect("the place is open")
        .sketch()
        .things()
        .cloned()
        .collect()
}

fn is_open(h: &mut Harness<'_, App>) -> bool {
    h.state_mut().state_mut().drawing.is_some()
}

fn name_it(h: &mut Harness<'_, App>, name: &str) {
    click(h, "Name");
    type_words(h, name);
}

fn pictures(h: &Harness<'_, App>) -> Vec<Picture> {
    let view = h.state().bench().view();
    view.club
        .pictures
        .iter()
        .map(|p| p.as_ref().clone())
        .collect()
}

fn shapes_kept(picture: &Picture) -> usize {
    let Made::Drawing(d) = &picture.made else {
        panic!("not a drawing");
    };
    parse(d.svg()).expect("a drawing").nodes.len()
}

#[test]
fn a_line_by_mouse_is_drawn_undone_and_a_shape_is_kept() {
    let mut h = sheet();
    let (a, b) = (on(&h, 40.0, 60.0), on(&h, 200.0, 180.0));
    drag(&mut h, a, b);
    assert_eq!(things(&mut h).len(), 1);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert!(things(&mut h).is_empty());
    press(&mut h, Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    assert_eq!(things(&mut h).len(), 1);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    click(&mut h, "Rectangle");
    click(&mut h, "Brown");
    drag(&mut h, a, b);
    let all = things(&mut h);
    let Node::Shape(shape) = &all[0] else {
        panic!("a shape");
    };
    assert!(shape.fill.is_some() && shape.stroke.is_some());
    // Without a name it cannot be kept.
    click(&mut h, "Keep");
    assert!(is_open(&mut h));
    name_it(&mut h, "Wooden ramp");
    click(&mut h, "Words to find it by");
    type_words(&mut h, "plank, slope , ");
    click(&mut h, "Keep");
    assert!(!is_open(&mut h));
    let kept = &pictures(&h)[0];
    assert_eq!(kept.name, "Wooden ramp");
    assert_eq!(kept.words, ["plank", "slope"]);
    assert_eq!((kept.whose, kept.stands_for.clone()), (None, None));
    assert_eq!(shapes_kept(kept), 1);
    // One step of the club's own undo.
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert!(pictures(&h).is_empty());
}

#[test]
fn keys_alone_draw_a_line_a_shape_and_keep_them() {
    let mut h = sheet();
    // To the paper.
    for _ in 0..4 {
        if super::focused(&h).starts_with("Paper, ") {
            break;
        }
        key(&mut h, Key::F6);
    }
    assert!(super::focused(&h).starts_with("Paper, "));
    key(&mut h, Key::L);
    key(&mut h, Key::Space);
    for _ in 0..12 {
        key(&mut h, Key::ArrowRight);
    }
    key(&mut h, Key::Space);
    assert_eq!(things(&mut h).len(), 1, "a line");
    key(&mut h, Key::C);
    for arrow in [Key::ArrowDown, Key::ArrowLeft, Key::ArrowUp] {
        for _ in 0..10 {
            key(&mut h, arrow);
        }
        key(&mut h, Key::Space);
    }
    key(&mut h, Key::Enter);
    assert_eq!(things(&mut h).len(), 2, "a shape with corners");
    // A letter too many is dropped with Escape, and the place stays.
    key(&mut h, Key::R);
    key(&mut h, Key::Space);
    key(&mut h, Key::Escape);
    assert!(is_open(&mut h));
    assert_eq!(things(&mut h).len(), 2);
    key(&mut h, Key::F6);
    assert_eq!(super::focused(&h), "Name");
    type_words(&mut h, "Gate");
    click(&mut h, "Keep");
    assert_eq!(pictures(&h)[0].name, "Gate");
    assert_eq!(shapes_kept(&pictures(&h)[0]), 2);
}

#[test]
fn leaving_asks_only_if_something_was_drawn() {
    let mut h = sheet();
    click(&mut h, "Cancel");
    assert!(!is_open(&mut h));
    press(&mut h, Modifiers::COMMAND, Key::D);
    let (a, b) = (on(&h, 40.0, 60.0), on(&h, 200.0, 60.0));
    drag(&mut h, a, b);
    key(&mut h, Key::Escape);
    assert!(is_open(&mut h));
    click(&mut h, "Go on drawing");
    assert_eq!(things(&mut h).len(), 1);
    click(&mut h, "Cancel");
    click(&mut h, "Leave without keeping");
    assert!(!is_open(&mut h) && pictures(&h).is_empty());
}

#[test]
fn fill_and_eraser_work_on_the_paper() {
    let mut h = sheet();
    click(&mut h, "Ellipse");
    click(&mut h, "Shapes: line only");
    let (a, b) = (on(&h, 40.0, 40.0), on(&h, 200.0, 200.0));
    drag(&mut h, a, b);
    click(&mut h, "Fill");
    click(&mut h, "Yellow");
    let at = on(&h, 120.0, 120.0);
    click_at(&mut h, at);
    assert_eq!(things(&mut h).len(), 2);
    click(&mut h, "Eraser");
    let (a, b) = (on(&h, 120.0, 20.0), on(&h, 120.0, 220.0));
    let before = things(&mut h);
    drag(&mut h, a, b);
    assert_ne!(things(&mut h), before);
}

#[test]
fn a_picture_is_changed_in_its_own_place() {
    let mut h = sheet();
    let (a, b) = (on(&h, 40.0, 60.0), on(&h, 200.0, 60.0));
    drag(&mut h, a, b);
    name_it(&mut h, "Rail");
    click(&mut h, "Keep");
    let id = pictures(&h)[0].id;
    h.state_mut().state_mut().draw = Some(Start::Change(id));
    h.run();
    assert!(h.query_by_label("Change a picture").is_some());
    assert_eq!(things(&mut h).len(), 1);
    let (a, b) = (on(&h, 40.0, 120.0), on(&h, 200.0, 120.0));
    drag(&mut h, a, b);
    click(&mut h, "Tidy as the symbols are");
    click(&mut h, "Keep");
    let kept = pictures(&h);
    assert_eq!(kept.len(), 1);
    assert_eq!((kept[0].id, kept[0].name.as_str()), (id, "Rail"));
    assert_eq!(shapes_kept(&kept[0]), 2);
}

#[test]
fn it_opens_for_someone_and_in_the_place_of_a_symbol() {
    let mut h = window_with(SIZE, no_pictures);
    let who: ParticipantId = h.state().bench().view().club.participants[0].id;
    let towel = SymbolId::new("towel");
    h.state_mut().state_mut().draw = Some(Start::Blank {
        whose: Some(who),
        stands_for: Some(towel.clone()),
    });
    h.run();
    let (a, b) = (on(&h, 40.0, 60.0), on(&h, 200.0, 60.0));
    drag(&mut h, a, b);
    name_it(&mut h, "Blue towel");
    click(&mut h, "Keep");
    let kept = &pictures(&h)[0];
    assert_eq!(
        (kept.whose, kept.stands_for.clone()),
        (Some(who), Some(towel.clone()))
    );
    let view = h.state().bench().view();
    let person = view.club.participant(who).expect("they are there");
    assert_eq!(view.club.seen_by(person, &towel), kept.symbol());
}

#[test]
fn a_symbol_below_is_started_from() {
    let mut h = sheet();
    click(&mut h, "A symbol faintly below, to trace");
    type_words(&mut h, "towel");
    key(&mut h, Key::ArrowDown);
    key(&mut h, Key::Enter);
    assert!(things(&mut h).is_empty(), "seen, but not drawn");
    click(&mut h, "Start from it");
    assert!(!things(&mut h).is_empty());
}

/// A finger or a pen whose pressure the platform knows.
#[test]
fn pressure_of_a_pen_makes_a_broader_line() {
    let mut h = sheet();
    let touch = |h: &mut Harness<'_, App>, phase, at: Pos2, force: f32| {
        h.event(Event::Touch {
            device_id: TouchDeviceId(1),
            id: TouchId(1),
            phase,
            pos: at,
            force: Some(force),
        });
    };
    let at = |h: &Harness<'_, App>, i: u8| on(h, 40.0 + 8.0 * f32::from(i), 120.0);
    let start = at(&h, 0);
    touch(&mut h, TouchPhase::Start, start, 0.1);
    h.drag_at(start);
    h.step();
    for i in 1..20 {
        let to = at(&h, i);
        touch(&mut h, TouchPhase::Move, to, 0.1 + 0.04 * f32::from(i));
        h.hover_at(to);
        h.step();
    }
    let end = at(&h, 19);
    h.drop_at(end);
    h.run();
    let all = things(&mut h);
    let Node::Shape(shape) = &all[0] else {
        panic!("a shape");
    };
    assert!(
        shape.fill.is_some() && shape.stroke.is_none(),
        "an outline: {shape:?}"
    );
}

#[test]
fn everything_is_there_in_a_small_window_at_200_percent() {
    for size in [
        Vec2::new(683.0, 384.0),
        Vec2::new(640.0, 380.0),
        Vec2::new(1366.0, 768.0),
    ] {
        let mut h = window_of(size);
        press(&mut h, Modifiers::COMMAND, Key::D);
        let paper = paper(&h);
        assert!(paper.width() >= 190.0, "{size}: {paper}");
        let window = Rect::from_min_size(pos2(0.0, 0.0), size);
        for name in ["Keep", "Cancel"] {
            let at = middle(&h, name);
            assert!(window.contains(at), "{name} at {at} in {size}");
        }
    }
}
