//! A window used at random for a while: nothing panics, and the club stays sound.
//! `cargo bench --bench wander` goes on for as long as wanted.

#[path = "../../wander/acts.rs"]
mod acts;

use crate::dice;
use daystrand::model::invariants;
use dice::Dice;

/// How many things are done from each start.
const THINGS: usize = 250;

fn wander(seed: u64) {
    let mut dice = Dice::new(seed);
    let mut window = acts::window();
    let (mut changed, mut last) = (0, 0);
    for done in 0..THINGS {
        let act = acts::next(&mut dice);
        acts::perform(&mut window, &act);
        let view = window.state().bench().view();
        let broken = invariants::check(view.club);
        let told = format!("{broken:?} after {done}: {act:?}");
        let sound = broken.is_empty();
        changed += usize::from(view.revision != last);
        last = view.revision;
        assert!(sound, "{told} at {}", acts::place_now(&mut window));
        if acts::speaks(&window) {
            acts::begin_anew(&mut window);
        }
    }
    assert!(changed > 5, "only {changed} changes came of it");
}

#[test]
fn nothing_panics_whatever_is_pressed() {
    wander(1);
}

#[test]
fn nor_from_another_start() {
    wander(2);
}
