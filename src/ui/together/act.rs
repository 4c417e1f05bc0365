//! What follows when something is pressed: the walk goes on or back, a card opens, a choice is
//! written down. Says in words what happened.

use super::ask::{Asking, Way};
use super::ask_view::{SHOWING, THUMBS};
use super::practise::Practise;
use super::wait::{LENGTHS, Wait};
use super::walk::Back;
use super::{Day, Motion, Scene, TREMBLE, Target, TogetherState, choose, practise_view, scan};
use crate::model::edit::Edit;
use crate::model::privacy::Guarded;
use crate::model::record::Record;
use crate::ui::desk::Desk;
use crate::ui::together::adult::Adult;
use crate::workbench::command::{Command, GoingThrough, Scanning};

/// Something was pressed.
pub fn press(
    desk: &mut Desk<'_>,
    state: &mut TogetherState,
    day: &Day<'_>,
    target: Target,
    now: f64,
) {
    match target {
        Target::Now => finish(desk, state, day, now),
        Target::Back => back(desk, state, day, now),
        Target::Card(i) => open(desk, state, day, i),
        Target::Close => close(desk, state, day),
        Target::Option(i) => pick(desk, state, day, i),
        Target::Answer(i) => answer(state, day, i),
        Target::On => on(desk, state, day),
    }
}

fn say(desk: &mut Desk<'_>, words: String) {
    if desk.view.together.voice {
        desk.ask(Command::Say(words));
    }
}

/// The step that is now, in words.
fn now_words(state: &TogetherState, day: &Day<'_>) -> String {
    match state.walk.now(&day.path) {
        Some(i) if state.walk.choosing(&day.path, day.board).is_none() => {
            let step = &day.board.steps[i];
            let picked = state.walk.picked(step.at);
            picked.map_or(&step.label, |c| &c.label).clone()
        }
        Some(_) => crate::story::cards::choose(day.club).label,
        None => "All finished".to_owned(),
    }
}

fn finish(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>, now: f64) {
    let Some(step) = state.walk.now(&day.path) else {
        return;
    };
    if state.finished_at.is_some_and(|at| now - at < TREMBLE) {
        return;
    }
    state.finished_at = Some(now);
    let face = day.face(step);
    state.walk.finish(&day.path);
    state.motion = Some(Motion {
        step,
        from: now,
        forward: true,
    });
    let how = if face.off { "not today" } else { "finished" };
    let next = now_words(state, day);
    state.said = match state.walk.now(&day.path) {
        Some(_) => format!("{} {how}. Now: {next}.", face.label),
        None => format!("{} {how}. {next}.", face.label),
    };
    say(desk, next);
}

fn back(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>, now: f64) {
    match state.walk.back(&day.path, day.board) {
        None => return,
        Some(Back::To(step)) => {
            state.motion = Some(Motion {
                step,
                from: now,
                forward: false,
            });
        }
        Some(Back::Unpicked(at)) => record(desk, day, |r| {
            r.picked.remove(&at);
        }),
    }
    let words = now_words(state, day);
    state.said = format!("Back. Now: {words}.");
    say(desk, words);
}

fn open(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>, i: usize) {
    if let Some(card) = day.cards.get(i) {
        state.card = Some(i);
        state.said.clone_from(&card.label);
        say(desk, card.label.clone());
    }
}

fn close(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>) {
    state.card = None;
    let words = now_words(state, day);
    state.said = format!("Now: {words}.");
    say(desk, words);
}

fn pick(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>, i: usize) {
    let Some(step) = state.walk.choosing(&day.path, day.board) else {
        return;
    };
    let (all, _) = choose::options(day, step);
    if let Some(option) = all.get(i) {
        let words = option.label.clone();
        record(desk, day, |r| {
            r.picked.insert(step.at, words.clone());
        });
        state.said = format!("{words} is chosen.");
        say(desk, words);
        state.walk.pick(step.at, option.clone());
    }
}

fn answer(state: &mut TogetherState, day: &Day<'_>, i: usize) {
    let Scene::Asking(asking) = &mut state.scene else {
        return;
    };
    let how = match asking.way {
        Way::Thumb => THUMBS.get(i).map(|a| a.2),
        Way::Picture => SHOWING.get(i).map(|a| a.2),
        Way::Point => {
            if let Some(step) = asking.now().and_then(|q| q.point_at.get(i).copied()) {
                asking.point(step);
            }
            None
        }
    };
    if let Some(how) = how {
        asking.answer(day.board, how);
    }
    state.said = super::ask_view::words(day, asking);
}

fn on(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>) {
    if let Scene::Practise(p) = &mut state.scene
        && p.on()
    {
        state.said = practise_view::words(p);
        let words = state.said.clone();
        return say(desk, words);
    }
    if let Scene::Asking(a) = &mut state.scene
        && a.now().is_some()
    {
        a.on_from_pointing(day.board);
        state.said = super::ask_view::words(day, a);
        return;
    }
    adult(desk, state, day, Adult::Day);
}

/// The adult did something.
pub fn adult(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>, act: Adult) {
    let going = desk.view.together;
    state.note = "";
    match act {
        Adult::Fold => state.open = !state.open,
        Adult::Sentence => {
            state.sentence = !state.sentence;
            if let Some(words) = state
                .told(day, desk.view.revision)
                .filter(|_| state.sentence)
            {
                state.said.clone_from(&words);
                say(desk, words);
            }
        }
        Adult::Wait(length) => {
            let seconds = LENGTHS.get(length).or(LENGTHS.last());
            state.scene = Scene::Wait(Wait::full(seconds.copied().unwrap_or(60.0)));
            state.said = "Wait".to_owned();
        }
        Adult::More => {
            if let Scene::Wait(w) = &mut state.scene {
                w.more(LENGTHS[0]);
                state.said = "More time to wait.".to_owned();
            }
        }
        Adult::Day => {
            state.scene = Scene::Day;
            let words = now_words(state, day);
            state.said = format!("Now: {words}.");
        }
        Adult::Practise => {
            let practise = Practise::of(day.club, day.session, day.board);
            if practise.is_none() {
                state.note = "Nothing on this board has a change ready to practise.";
                state.said = state.note.to_owned();
            }
            if let Some(p) = practise {
                state.said = practise_view::words(&p);
                let words = state.said.clone();
                state.scene = Scene::Practise(p);
                say(desk, words);
            }
        }
        Adult::Another => {
            if let Scene::Practise(p) = &mut state.scene {
                p.another();
                state.said = practise_view::words(p);
            }
        }
        Adult::Ask => {
            let asking = Asking::of(day.board);
            state.said = super::ask_view::words(day, &asking);
            state.scene = Scene::Asking(asking);
        }
        Adult::Way(i) => {
            if let (Scene::Asking(a), Some(way)) = (&mut state.scene, Way::ALL.get(i)) {
                a.turn_to(*way);
                state.said = super::ask_view::words(day, a);
            }
        }
        Adult::Keep => keep(desk, state, day),
        Adult::Voice | Adult::Scanning | Adult::Slower | Adult::Quicker | Adult::Night => {
            state.scan.restart();
            set(desk, going, act);
        }
    }
    state.card = None;
}

fn set(desk: &mut Desk<'_>, going: GoingThrough, act: Adult) {
    let next = match act {
        Adult::Voice => GoingThrough {
            voice: !going.voice,
            ..going
        },
        Adult::Night => GoingThrough {
            night: !going.night,
            ..going
        },
        Adult::Scanning => GoingThrough {
            scanning: match going.scanning {
                Scanning::Off => Scanning::OneSwitch,
                Scanning::OneSwitch => Scanning::TwoSwitches,
                Scanning::TwoSwitches => Scanning::Off,
            },
            ..going
        },
        slower => GoingThrough {
            pace_ms: scan::pace(going.pace_ms, slower == Adult::Slower),
            ..going
        },
    };
    desk.ask(Command::SetGoingThrough(next));
}

/// The answers are written down, because the adult says so.
fn keep(desk: &mut Desk<'_>, state: &mut TogetherState, day: &Day<'_>) {
    if let Scene::Asking(a) = &state.scene {
        let answers = a.answers.clone();
        record(desk, day, |r| r.answered.extend(answers));
        state.said = "It is written down.".to_owned();
    }
    state.scene = Scene::Day;
}

/// Changes what is known of this participant's session; nothing when nothing is different.
fn record(desk: &mut Desk<'_>, day: &Day<'_>, change: impl FnOnce(&mut Record)) {
    let before = day.session.records.get(&day.who.id).map(Guarded::for_owner);
    let mut next = before.cloned().unwrap_or_default();
    change(&mut next);
    if before.unwrap_or(&Record::default()) != &next {
        desk.edit(Edit::Record(day.session.id, day.who.id, next));
    }
}
