//! Go through together: tomorrow's board one step at a time in full view, for a participant and a
//! parent. A key, a tap or a switch moves the card to the finished place the way the participant's
//! own board does it. Nothing blinks, nothing is won, and leaving takes a hold, so that nobody leaves
//! by accident.
//!
//! `walk`, `scan`, `wait`, `practise` and `ask` know nothing of the toolkit; `places` says where
//! everything stands; `act` what follows when something is pressed; the others paint. `adult` is the row
//! for whoever sits beside, `leave` the way out.

mod act;
mod adult;
mod ask;
mod ask_view;
mod bar;
mod cards;
mod choose;
mod day;
mod finished;
mod keys;
mod leave;
mod places;
mod practise;
mod practise_view;
mod scan;
mod views;
mod wait;
mod wait_view;
mod walk;

use egui::accesskit::Live;
use egui::{CornerRadius, Id, Rect, Role, Sense, Ui, Vec2, WidgetInfo};

use super::desk::Desk;
use super::theme;
use super::widgets::words;
use crate::model::profile::Field;
use crate::model::rewriting::PageRef;
use crate::story::Story;
use cards::Presses;
use day::Day;
use finished::OnItsWay;
use places::{Places, Wanted};
use walk::Walk;

/// Seconds a card takes to the finished place.
const MOVE: f64 = 0.45;
/// Seconds in which a second press is the same press.
const TREMBLE: f64 = 0.2;

/// Where the two have come to.
#[derive(Debug, Default)]
pub struct TogetherState {
    walk: Walk,
    scene: Scene,
    /// The card of those always there that is shown large.
    card: Option<usize>,
    /// Whether the story's sentence is shown.
    sentence: bool,
    /// Whether the adult's row is open.
    open: bool,
    motion: Option<Motion>,
    hold: leave::Hold,
    scan: scan::Scan,
    /// When a step was finished last: a trembling hand does not finish two.
    finished_at: Option<f64>,
    /// When the last frame was.
    seen: Option<f64>,
    /// What happened last, in words.
    said: String,
    /// What the adult is told.
    note: &'static str,
    /// The story, once it was asked for, and of which revision.
    story: Option<(u64, Story)>,
}

/// What is before the two.
#[derive(Debug, Default)]
enum Scene {
    /// The day.
    #[default]
    Day,
    /// A change that is practised.
    Practise(practise::Practise),
    /// Time that empties.
    Wait(wait::Wait),
    /// Questions at the end.
    Asking(ask::Asking),
}

/// Something that can be pressed by whoever goes through the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
enum Target {
    /// The card that is now.
    Now,
    /// The finished place: takes the last one back.
    Back,
    /// A card that is always there.
    Card(usize),
    /// The large card: put away.
    Close,
    /// Something to choose.
    Option(usize),
    /// An answer.
    Answer(usize),
    /// Goes on.
    On,
}

/// A card on its way.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Motion {
    step: usize,
    from: f64,
    forward: bool,
}

impl TogetherState {
    /// What can be pressed now, in the order in which it is offered.
    fn targets(&self, day: &Day<'_>) -> Vec<Target> {
        let mut all = match (&self.card, &self.scene) {
            (Some(_), _) => vec![Target::Close],
            (None, Scene::Day) => match self.walk.choosing(&day.path, day.board) {
                Some(step) => {
                    let (options, _) = choose::options(day, step);
                    (0..options.len()).map(Target::Option).collect()
                }
                None if day.sight.now.is_some() => vec![Target::Now],
                // At the end one press more does nothing.
                None => Vec::new(),
            },
            (None, Scene::Practise(_)) => vec![Target::On],
            (None, Scene::Wait(w)) if w.is_over() => vec![Target::On],
            (None, Scene::Wait(_)) => Vec::new(),
            (None, Scene::Asking(a)) => match a.now() {
                None => vec![Target::On],
                Some(_) if a.pointed.is_some() => vec![Target::On],
                Some(q) => {
                    let n = match a.way {
                        ask::Way::Point => q.point_at.len(),
                        ask::Way::Thumb => ask_view::THUMBS.len(),
                        ask::Way::Picture => ask_view::SHOWING.len(),
                    };
                    (0..n).map(Target::Answer).collect()
                }
            },
        };
        all.extend((0..day.cards.len()).map(Target::Card));
        let day_shown = self.card.is_none() && matches!(self.scene, Scene::Day);
        if day_shown && self.walk.can_back(&day.path, day.board) {
            all.push(Target::Back);
        }
        all
    }

    /// The story's sentence about the step that is now.
    fn told(&mut self, day: &Day<'_>, revision: u64) -> Option<String> {
        let at = day.board.steps.get(day.sight.now?)?.at;
        let story = self.story(day, revision);
        let own = story.page(PageRef::Step(at));
        let said: Vec<&str> = match own {
            Some(page) => page.sentences().take(3).collect(),
            None => {
                let mut lines = story.pages.iter().flat_map(|p| &p.lines);
                let line = lines.find(|l| l.step == Some(at));
                line.map(|l| l.text.as_str()).into_iter().collect()
            }
        };
        if said.is_empty() {
            let step = &day.board.steps[day.sight.now?];
            return crate::story::sentence(day.club, step, day.who);
        }
        Some(said.join(" "))
    }

    /// What the story says of asking with a card.
    fn asks(&mut self, day: &Day<'_>, revision: u64, card: usize) -> Option<String> {
        let card = day.cards.get(card)?;
        let story = self.story(day, revision);
        let page = story.page(PageRef::Ask)?;
        let mut lines = page.with_cards();
        let (_, line) = lines.find(|(c, _)| c.symbol == card.symbol)?;
        Some(line.text.clone()).filter(|t| !t.is_empty() && *t != card.label)
    }

    fn story(&mut self, day: &Day<'_>, revision: u64) -> &Story {
        if self.story.as_ref().is_some_and(|(r, _)| *r != revision) {
            self.story = None;
        }
        let tell = || crate::story::tell(day.club, day.session, day.board, day.who);
        &self.story.get_or_insert_with(|| (revision, tell())).1
    }
}

/// Shows the view; says whether it was left. While a question covers it nothing in it reacts.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TogetherState,
    (rect, covered): (Rect, bool),
) -> bool {
    let Some(day) = Day::of(desk, &mut state.walk) else {
        return true;
    };
    let now = ui.input(|i| i.time);
    let gone = now - state.seen.replace(now).unwrap_or(now);
    let targets = state.targets(&day);
    let mut presses = Presses::default();
    pass_time(ui, desk, state, gone, targets.len());
    let mut adult_acts = Vec::new();
    let entries = adult::entries(state, desk.view.together, desk.view.mute);
    if !covered {
        adult_acts = adult::keys(ui, state.open, &entries);
        let mirrored = day.who.manner.run == crate::model::manner::Run::RightToLeft;
        let how = (desk.view.together, mirrored);
        keys::read(ui, how, state, &targets, &mut presses);
    }
    let scanning = desk.view.together.scanning != crate::workbench::command::Scanning::Off;
    if scanning && !state.scan.rests() {
        presses.offered = targets.get(state.scan.at(targets.len())).copied();
    }
    let places = paint(ui, desk, state, (&day, rect), &mut presses);
    let say = say(&day, state);
    adult_acts.extend(adult::show(ui, &places, state.open, &entries, &say));
    status(ui, &state.said);
    keys::keep_focus(ui, &targets, scanning);
    for target in std::mem::take(&mut presses.pressed) {
        act::press(desk, state, &day, target, now);
        keys::leave_answer(ui, target);
        state.scan.restart();
        ui.ctx().request_repaint();
    }
    for act in adult_acts {
        act::adult(desk, state, &day, act);
        ui.ctx().request_repaint();
    }
    let with_words = !state.open && rect.width() > 900.0;
    let left = leave::show(ui, &mut state.hold, &places, with_words);
    if left {
        desk.ask(crate::workbench::command::Command::Hush);
    }
    left
}

/// Waiting and scanning go on with the time that went by.
fn pass_time(ui: &Ui, desk: &Desk<'_>, state: &mut TogetherState, gone: f64, count: usize) {
    let going = desk.view.together;
    if let Scene::Wait(w) = &mut state.scene {
        w.tick(gone);
        if !w.is_over() {
            let still = theme::of(ui.ctx()).still;
            let next = if still { w.until_seen() } else { 0.05 };
            ui.ctx().request_repaint_after_secs(next as f32);
        }
    }
    state.scan.tick(gone, going.scanning, going.pace_ms, count);
    if let Some(left) = state.scan.left(going.scanning, going.pace_ms, count) {
        ui.ctx().request_repaint_after_secs(left.max(0.02) as f32);
    }
}

/// Everything but the adult's row; gives where things stand.
fn paint(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TogetherState,
    (day, rect): (&Day<'_>, Rect),
    presses: &mut Presses,
) -> Places {
    let t = theme::of(ui.ctx());
    ui.painter()
        .rect_filled(rect, CornerRadius::ZERO, t.col.ground);
    let day_shown = matches!(state.scene, Scene::Day);
    let told = match state.sentence && day_shown {
        true => state.told(day, desk.view.revision),
        false => None,
    };
    let coming = match told {
        // The sentence stands where the next one would.
        Some(_) => 1,
        None => day.sight.coming.len(),
    };
    let places = Places::of(
        rect,
        Wanted {
            coming,
            cards: day.cards.len(),
            run: day.who.manner.run,
            row: state.open,
            finished: day_shown,
        },
    );
    let pictures = &mut *desk.pictures;
    bar::show(ui, pictures, day, &places, presses);
    if let Some(card) = state.card {
        let said = state.asks(day, desk.view.revision, card);
        let which = (card, said.as_deref());
        bar::large(ui, pictures, day, &places, which, presses);
        return places;
    }
    let way = on_its_way(ui, state, &places);
    match &state.scene {
        Scene::Day => one_day(ui, pictures, day, &places, (told, way), presses),
        Scene::Practise(p) => practise_view::show(ui, pictures, day, &places, p, presses),
        Scene::Wait(w) => wait_view::show(ui, pictures, day, &places, w, presses),
        Scene::Asking(a) => ask_view::show(ui, pictures, day, &places, a, presses),
    }
    if day_shown {
        let part = way.map(|(w, _)| w);
        finished::show(ui, pictures, day, &places, part, presses);
    }
    places
}

/// The day itself: a choice, the end, or a card with what comes.
fn one_day(
    ui: &Ui,
    pictures: &mut super::pictures::Pictures,
    day: &Day<'_>,
    places: &Places,
    (told, way): (Option<String>, Option<(OnItsWay, bool)>),
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    if let Some(step) = day.walk.choosing(&day.path, day.board) {
        return choose::show(ui, pictures, day, places, step, presses);
    }
    if day.sight.now.is_none() {
        return end(ui, pictures, day, places);
    }
    match told {
        None => views::show(ui, pictures, day, places, way, presses),
        Some(words) => {
            let alone = Places {
                coming: Vec::new(),
                ..places.clone()
            };
            views::show(ui, pictures, day, &alone, way, presses);
            let room = match places.mirrored {
                false => places.stage.with_min_x(places.now.right() + 36.0),
                true => places.stage.with_max_x(places.now.left() - 36.0),
            };
            let sizes = [36.0, 32.0, 28.0, 24.0, 20.0, 17.0];
            words::label(ui.painter(), room, &words, &sizes, 9, t.col.ink);
            cards::named(ui, "sentence", room, &words);
        }
    }
}

/// All is finished.
fn end(ui: &Ui, pictures: &mut super::pictures::Pictures, day: &Day<'_>, places: &Places) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    views::rope(p, &t, places, crate::model::manner::Run::LeftToRight);
    views::heading(p, &t, places.head_now, "All finished", places);
    let card = crate::story::cards::finished(day.club);
    cards::paint(p, pictures, places.now, &cards::Face::from(&card), day.eyes);
    let at = egui::pos2(places.now.center().x, places.now.top() - places::HANG + 2.0);
    views::peg(p, &t, at);
    cards::named(ui, "end", places.now, "All finished");
}

/// The card that moves now, and whether it goes to the finished place.
fn on_its_way(ui: &Ui, state: &mut TogetherState, places: &Places) -> Option<(OnItsWay, bool)> {
    let motion = state.motion?;
    let still = theme::of(ui.ctx()).still;
    let part = (ui.input(|i| i.time) - motion.from) / MOVE;
    if still || part >= 1.0 || !matches!(state.scene, Scene::Day) {
        state.motion = None;
        return None;
    }
    ui.ctx().request_repaint();
    let part = part.max(0.0) as f32;
    let way = OnItsWay {
        step: motion.step,
        card: places.now,
        part: if motion.forward { part } else { 1.0 - part },
    };
    Some((way, motion.forward))
}

/// The few words to say: those that were agreed for this participant, or the words of the board.
fn say(day: &Day<'_>, state: &TogetherState) -> String {
    if !state.note.is_empty() {
        return state.note.to_owned();
    }
    if !matches!(state.scene, Scene::Day) || state.card.is_some() {
        return String::new();
    }
    let exact = day.who.profile.for_owner(Field::ExactWords).trim();
    match (day.sight.now, exact) {
        (None, _) => "Say: Finished.".to_owned(),
        (Some(_), exact) if !exact.is_empty() => format!("Say: {exact}"),
        _ if day.walk.choosing(&day.path, day.board).is_some() => {
            format!("Say: {}.", crate::story::cards::choose(day.club).label)
        }
        (Some(i), _) if day.face(i).off => format!("Say: Not today, {}.", day.face(i).label),
        (Some(i), _) => format!("Say: {}.", day.board.steps[i].label),
    }
}

/// What happened, for a screen reader, without interrupting.
fn status(ui: &Ui, said: &str) {
    let at = Rect::from_min_size(ui.max_rect().min, Vec2::splat(1.0));
    let r = ui.interact(at, Id::unique("together-status"), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Status, true, said));
    ui.ctx().accesskit_node_builder(r.id, |node| {
        node.set_live(Live::Polite);
        node.set_value(said);
    });
}
