//! People and water in the window: the time line read by names, a person put with someone by keys
//! and by the mouse.

use daystrand::model::ids::HelperId;
use daystrand::ui::app::App;
use daystrand::workbench::command::Command;
use daystrand::workbench::view::View;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};

use super::{drag, focused, key, middle, press, window_with};

type Window = Harness<'static, App>;

fn view(h: &Window) -> View<'_> {
    h.state().bench().view()
}

fn click(h: &mut Window, name: &str) {
    let at = middle(h, name);
    h.drag_at(at);
    h.step();
    h.drop_at(at);
    h.run();
}

/// The demo's last session, whose water is done in turns, at People and water.
fn window() -> Window {
    let mut h = window_with(Vec2::new(1366.0, 1400.0), |bench| {
        let last = bench.view().club.sessions.last().map(|s| s.id);
        drop(bench.handle(Command::ChooseSession(last.expect("a session"))));
    });
    press(&mut h, Modifiers::COMMAND, Key::Num1);
    click(&mut h, "People and water");
    h
}

/// A participant in the water, as read: "Mila, 10:35 to 10:45, Splash, with Benno". With the helper
/// who is with them and one who is free then and with nobody, or with another.
fn first_block(h: &Window) -> (String, HelperId, HelperId) {
    let v = view(h);
    let moment = v.water.moments.first().expect("in the water");
    let own = moment.visits.first().expect("someone");
    let who = v.club.participant(own.who).expect("known").name.clone();
    let with = own.people[0];
    let other = moment.free.iter().find(|f| **f != with).expect("another");
    let name = v.club.helper(with).expect("known").name.clone();
    let label = own.activity.and_then(|a| v.club.activity(a));
    let label = label.expect("known").label.clone();
    let (from, to) = (moment.stretch.from, moment.stretch.to);
    let said = format!("{who}, {from} to {to}, {label}, with {name}");
    (said, with, *other)
}

fn name(h: &Window, helper: HelperId) -> String {
    view(h).club.helper(helper).expect("known").name.clone()
}

/// Who is held with the first participant of the first moment.
fn held(h: &Window) -> Vec<HelperId> {
    let v = view(h);
    let own = &v.water.moments[0].visits[0];
    let held = &v.session.expect("a session").today.held;
    let found = held.get(&(own.slot, own.who));
    found.into_iter().flatten().copied().collect()
}

#[test]
fn a_block_is_read_with_who_when_what_and_with_whom() {
    let h = window();
    let (said, ..) = first_block(&h);
    let found = h.query_all_by(|n| n.label().is_some_and(|l| l == said));
    assert_eq!(found.count(), 1, "{said}");
}

#[test]
fn a_helper_is_put_with_someone_by_keys_and_undo_takes_it_back() {
    let mut h = window();
    let (said, _, other) = first_block(&h);
    for _ in 0..10 {
        if focused(&h) == said {
            break;
        }
        key(&mut h, Key::F6);
    }
    assert_eq!(focused(&h), said, "F6 reaches the time line");
    key(&mut h, Key::Enter);
    let first = view(&h).water.moments[0].free[0];
    assert_eq!(focused(&h), name(&h, first), "Enter goes to the side");
    let other_name = name(&h, other);
    for _ in 0..20 {
        if focused(&h) == other_name {
            break;
        }
        key(&mut h, Key::Tab);
    }
    assert_eq!(focused(&h), other_name, "Tab reaches every person");
    key(&mut h, Key::Space);
    assert_eq!(held(&h), [other]);
    assert_eq!(view(&h).water.moments[0].visits[0].people, [other]);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(held(&h), []);
    key(&mut h, Key::Escape);
    assert_eq!(focused(&h), said, "Escape leads back to the block");
}

#[test]
fn arrows_go_to_the_next_block_and_on_to_the_people() {
    let mut h = window();
    let (said, ..) = first_block(&h);
    for _ in 0..10 {
        if focused(&h) == said {
            break;
        }
        key(&mut h, Key::F6);
    }
    key(&mut h, Key::ArrowDown);
    let second = {
        let v = view(&h);
        v.club.participants[1].name.clone()
    };
    assert!(focused(&h).starts_with(&second), "{}", focused(&h));
    let people = view(&h).boards.len();
    for _ in 0..people {
        key(&mut h, Key::ArrowDown);
    }
    let helper = view(&h).club.helpers[1].name.clone();
    let now = focused(&h);
    assert!(now.starts_with(&helper), "{now} is a helper's row");
}

#[test]
fn a_helper_is_dragged_to_someone_in_the_water() {
    let mut h = window();
    let (said, _, other) = first_block(&h);
    let row = format!("{}, ", name(&h, other));
    let (from, to) = (middle(&h, &row), middle(&h, &said));
    drag(&mut h, from, to);
    assert_eq!(held(&h), [other]);
    click(&mut h, "Let all go");
    assert_eq!(held(&h), []);
}

#[test]
fn whoever_cannot_go_into_the_water_that_day_goes_back_with_the_reason() {
    let mut h = window();
    let (said, ..) = first_block(&h);
    let (who, reason) = {
        let v = view(&h);
        let not = &v.water.moments[0].not_free;
        let who = not.first().expect("someone is kept from it").who;
        (name(&h, who), "ended with")
    };
    let (from, to) = (middle(&h, &format!("{who}, ")), middle(&h, &said));
    drag(&mut h, from, to);
    assert_eq!(held(&h), []);
    let told = h.query_all_by(|n| n.label().is_some_and(|l| l.contains("was not put with")));
    let told: Vec<String> = told.filter_map(|n| n.accesskit_node().label()).collect();
    assert!(told.iter().any(|t| t.contains(reason)), "{told:?}");
}

#[test]
fn all_pairs_are_held_at_once() {
    let mut h = window();
    click(&mut h, "Hold these pairs");
    let v = view(&h);
    let session = v.session.expect("a session");
    assert_eq!(session.today.held, v.water.as_held());
    assert!(!session.today.held.is_empty());
}
