//! The place Boards: participants at the side, one board on the strand, symbols below; or the story
//! of that participant; or all boards at once.

mod asks;
pub mod card;
pub mod differs;
pub mod face;
mod group;
mod hard;
mod header;
pub mod held;
mod line;
mod several;
mod slips;
pub mod sort;
mod story;
mod told;
mod who;

use egui::{Rect, Ui, pos2, vec2};

use super::desk::Desk;
use super::find::Find;
use super::strand::{Grid, Rope};
use super::theme;
use super::tray::{self, Pick, Tray, TrayState};
use super::widgets::within;
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::edit::BoardEdit;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, StepRef};
use crate::model::rewriting::PageRef;
use crate::ui::pictures::Eyes;

/// Below this width the participants show their marks alone.
const NARROW: f32 = 1040.0;
/// Below this height the tray is lower.
const SHORT: f32 = 560.0;

/// What the place remembers.
#[derive(Default)]
pub struct BoardsState {
    /// All boards at once.
    pub group: bool,
    /// What the table of the whole group remembers.
    table: group::TableState,
    /// The symbols below.
    pub tray: TrayState,
    /// The step that the next symbol takes the place of.
    pub swap: Option<StepRef>,
    /// The step that is not today, for which what comes instead is picked.
    pub instead: Option<StepRef>,
    /// The step whose choice is being put together.
    pub offer: Option<StepRef>,
    /// Further steps that are chosen beside that one, and what was copied.
    several: several::Several,
    /// The step whose words are being changed.
    pub relabel: Option<StepRef>,
    /// What the story side remembers.
    story: story::StoryState,
    /// What is looked for in the list at the side.
    pub find: Find,
    /// Whose row the list at the side last followed.
    listed: Option<ParticipantId>,
    /// Put the keyboard on the chosen step in this frame.
    focus_step: bool,
    /// The next participant's step gets the keyboard.
    pub keep_step: bool,
    /// What letting go on the name would do that something is held over.
    over_name: Option<String>,
    /// Whose board was last seen.
    seen: Option<ParticipantId>,
    /// The place that what is in the hand would take.
    gap: Option<usize>,
    rope: Option<(Grid, Rope)>,
    /// What changed on the board, for whoever hears it.
    told: told::Told,
}

impl BoardsState {
    /// The rope of a grid, sampled once until the grid changes.
    fn rope(&mut self, grid: &Grid) -> &Rope {
        if self.rope.as_ref().is_none_or(|(g, _)| g != grid) {
            self.rope = None;
        }
        &self.rope.get_or_insert_with(|| (*grid, grid.rope())).1
    }

    /// Reads a page of the chosen participant's story; `Command::ShowStory` shows that side.
    pub fn select_page(&mut self, page: PageRef) {
        self.group = false;
        self.story.select(page);
    }

    /// Another participant, or a step that is gone, ends what was begun on a step.
    fn follow(&mut self, desk: &Desk<'_>) {
        let now = desk.view.participant.map(|p| p.id);
        if now != self.seen {
            self.focus_step |= std::mem::take(&mut self.keep_step);
            self.swap = None;
            self.relabel = None;
            self.instead = None;
            self.offer = None;
            self.seen = now;
            self.several.alone();
        }
        // Where no board is shown, its keyboard is not to come later.
        if desk.view.story_shown {
            self.focus_step = false;
        }
        let there = |s: &StepRef| desk.view.board().is_some_and(|b| b.position(*s).is_some());
        self.swap = self.swap.filter(there);
        self.relabel = self.relabel.filter(there);
        self.instead = self.instead.filter(there);
        self.offer = self.offer.filter(there);
        self.several.keep(there);
    }
}

impl BoardsState {
    /// The next symbols picked are what can be chosen at a step.
    fn begin_choice(&mut self, step: StepRef) {
        let open = self.offer == Some(step);
        self.offer = (!open).then_some(step);
        (self.swap, self.instead) = (None, None);
        self.tray.focus_search = !open;
    }

    /// The next symbol picked comes instead of a step.
    fn begin_instead(&mut self, step: StepRef) {
        self.instead = Some(step);
        (self.swap, self.offer) = (None, None);
        self.tray.focus_search = true;
    }
}

/// Takes steps off a board: what is in the water gets its dry replacement instead at once.
fn take_off(desk: &mut Desk<'_>, who: ParticipantId, board: &Board, steps: &[StepRef]) {
    let club = desk.view.club;
    several::each(desk, who, steps, |s| taken_off(club, board, s));
}

fn taken_off(club: &Club, board: &Board, step: StepRef) -> BoardEdit {
    let shown = board.steps.iter().find(|s| s.at == step);
    let activity = shown.and_then(|s| club.activity(s.activity?));
    let dry = activity
        .filter(|a| a.in_water && matches!(step, StepRef::Slot(_)))
        .and_then(|a| club.activity(a.dry_replacement?));
    match dry {
        Some(dry) => BoardEdit::NotToday(step, Some(Content::of(dry))),
        None => BoardEdit::TakeOff(step),
    }
}

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    state.follow(desk);
    state.told.follow(ui, desk.view, rect);
    if state.group {
        group::show(ui, desk, state, rect);
        return;
    }
    let short = rect.height() < SHORT;
    let side = if rect.width() < NARROW { 84.0 } else { 206.0 };
    let left = Rect::from_min_size(rect.min, vec2(side, rect.height()));
    let main = Rect::from_min_max(pos2(left.right() + 18.0, rect.top()), rect.max);
    state.over_name = None;
    within(ui, "who", left, |ui| who::show(ui, desk, state, left));
    if desk.view.story_shown {
        within(ui, "story", main, |ui| {
            story::show(ui, desk, &mut state.story, main)
        });
        return;
    }
    let head = Rect::from_min_size(main.min, vec2(main.width(), 48.0));
    let folds = tray::folds(rect.height());
    let picking = state.swap.or(state.instead).or(state.offer).is_some();
    let tray_height = match (state.tray.shows_up(folds, picking), short) {
        (false, _) => 0.0,
        (true, true) => 92.0,
        (true, false) => 124.0,
    };
    let tray = Rect::from_min_max(pos2(main.left(), main.bottom() - tray_height), main.max);
    let slips = slips::of(desk.view);
    let slip_height = if slips.is_empty() || short {
        0.0
    } else {
        theme::CONTROL + 8.0
    };
    let slip = Rect::from_min_max(
        pos2(main.left(), tray.top() - slip_height),
        pos2(main.right(), tray.top() - 8.0),
    );
    let asks = asks::of(desk.view, state);
    let lines = asks.len().min(if short { 1 } else { 2 });
    let ask = Rect::from_min_size(
        pos2(main.left(), head.bottom() + 2.0),
        vec2(main.width(), lines as f32 * asks::LINE),
    );
    let board = Rect::from_min_max(
        pos2(
            main.left(),
            ask.bottom() - if lines == 0 { 2.0 } else { 0.0 },
        ),
        pos2(main.right(), tray.top() - slip_height - 4.0),
    );
    within(ui, "head", head, |ui| {
        header::show(ui, desk, state, (head, folds));
    });
    if lines > 0 {
        within(ui, "asks", ask, |ui| {
            asks::show(ui, desk, state, &asks, ask)
        });
    }
    line::show(ui, desk, state, board);
    if slip_height > 0.0 {
        within(ui, "slips", slip, |ui| slips::show(ui, desk, &slips, slip));
    }
    if tray_height > 0.0 {
        within(ui, "tray", tray, |ui| symbols(ui, desk, state, tray));
    }
    match &state.over_name {
        Some(says) => held::ghost(ui, desk, Some(says)),
        None => held::show(ui, desk, board),
    }
}

/// The symbols below the board, and what a pick does.
fn symbols(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    let Some(person) = desk.view.participant else {
        return;
    };
    let mut items = tray::activities(desk.view.club, &state.tray);
    let own = items.len();
    items.extend(tray::others(desk.view.club, Some(person.id), &state.tray));
    let chosen = desk.view.step.and_then(|s| {
        let board = desk.view.board()?;
        let at = board.position(s)?;
        Some((at + 1, board.steps[at].label.as_str()))
    });
    let picking = state.swap.or(state.instead).or(state.offer);
    let does = match (picking, chosen) {
        (Some(_), _) if state.offer.is_some() => "Pick what can be chosen".to_owned(),
        (Some(_), _) if state.instead.is_some() => "Pick what comes instead".to_owned(),
        (Some(_), _) => "Pick what takes its place".to_owned(),
        (None, Some((n, label))) => format!("Enter adds after {n} {label}"),
        (None, None) => "Drag one up, or press Enter".to_owned(),
    };
    let eager = picking.is_some();
    let shown = Tray {
        name: "symbols",
        items,
        own,
        eager,
        does,
        figure: Eyes::of(person),
    };
    let n = desk.view.board().map_or(0, |b| b.steps.len());
    match (
        shown.show(ui, desk, &mut state.tray, rect),
        state.swap.or(desk.view.step),
    ) {
        (Some(Pick::Add(c)), _) if state.offer.is_some() => offer(desk, state, c),
        (Some(Pick::Add(c)), _) if state.instead.is_some() => {
            let step = state.instead.take();
            state.tray.search.clear();
            state.focus_step = true;
            if let Some(step) = step {
                desk.board(person.id, BoardEdit::NotToday(step, Some(c)));
            }
        }
        (Some(Pick::Add(c)), Some(step)) if eager => {
            state.swap = None;
            state.tray.search.clear();
            state.focus_step = true;
            desk.board(person.id, BoardEdit::Replace(step, c));
        }
        (Some(Pick::Add(c)), _) => {
            let place = chosen.map_or(n, |(number, _)| number);
            desk.board(person.id, BoardEdit::Insert(c, place));
        }
        (Some(Pick::Swap(c)), Some(step)) => desk.board(person.id, BoardEdit::Replace(step, c)),
        (Some(Pick::Swap(_)) | None, _) => {}
    }
}

/// One more thing to choose from.
fn offer(desk: &mut Desk<'_>, state: &mut BoardsState, content: Content) {
    let (Some(step), Some(person)) = (state.offer, desk.view.participant) else {
        return;
    };
    // What comes next is looked for as this was.
    state.tray.focus_search |= !state.tray.search.is_empty();
    state.tray.search.clear();
    let at = desk.view.board().and_then(|b| b.position(step));
    let now = at.and_then(|at| Some(desk.view.board()?.steps.get(at)?.options.clone()));
    let mut next = now.unwrap_or_default();
    next.push(content);
    desk.board(person.id, BoardEdit::Offer(step, next));
}
