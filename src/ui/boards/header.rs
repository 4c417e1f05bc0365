//! Above the board: whose it is, what can be done with the chosen step, undo and redo.

use egui::{Align2, Rect, Ui, Vec2, pos2, vec2};

use super::who::differs;
use super::{BoardsState, hard, several};
use crate::model::board::{By, Step, StepState};
use crate::model::edit::BoardEdit;
use crate::model::ids::{SlotId, StepRef};
use crate::model::people::Participant;
use crate::ui::actions::{self, Action};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::photo;
use crate::ui::theme;
use crate::ui::tray;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::plate;
use crate::ui::widgets::words;
use crate::workbench::command::Command;

/// Below this width the buttons show their signs alone.
const SIGNS_ONLY: f32 = 1000.0;
/// Room for mark and first name, which no button takes.
const NAME: f32 = theme::CONTROL + 90.0;

/// Shows the line.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    (rect, folds): (Rect, bool),
) {
    let rect = rect.with_max_y(rect.top() + theme::CONTROL);
    let signs = rect.width() < SIGNS_ONLY;
    let mut right = rect.right();
    if folds {
        let square = Vec2::splat(theme::CONTROL);
        let place = Rect::from_min_size(pos2(right - square.x, rect.top()), square);
        tray::folder(ui, &mut state.tray, "symbols", place);
        right = place.left() - 8.0;
    }
    let chosen = chosen(desk);
    // What can be done with a chosen step has more need of words than these.
    let short = signs || chosen.is_some();
    for (action, icon) in [(Action::Redo, Icon::Redo), (Action::Undo, Icon::Undo)] {
        right = undo_button(ui, desk, action, icon, short, (right, rect.top())) - 8.0;
    }
    let Some(person) = desk.view.participant else {
        return;
    };
    if wet(desk) {
        let b = Button::new("all-dry", "All dry today").tip(
            "Every activity in the water is not today, with its dry replacement instead, for this \
             participant",
        );
        let b = if short {
            b.icon_only(Icon::Wave)
        } else {
            b.icon(Icon::Wave)
        };
        let width = b.needs(ui);
        let place =
            Rect::from_min_size(pos2(right - width, rect.top()), vec2(width, theme::CONTROL));
        if b.show_at(ui, place).clicked() {
            desk.board(person.id, BoardEdit::Dry(None));
        }
        right = place.left() - 8.0;
    }
    if let Some(step) = &chosen {
        let room = rect.with_max_x(right - 8.0);
        right = step_buttons(ui, desk, state, step, room);
    }
    let right = right - 12.0;
    let several = desk.view.board();
    let several = several.map_or(0, |b| state.several.all(b, desk.view.step).len());
    whose(ui, desk, person, rect.with_max_x(right), several);
}

/// Mark and name, how the board differs, and what is hard today beside them.
fn whose(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, rect: Rect, several: usize) {
    let t = theme::of(ui.ctx());
    let hard = hard::of(desk.view);
    let chip = if hard.is_empty() {
        0.0
    } else {
        hard::ALONE + 12.0
    };
    let mark = Rect::from_min_size(rect.min, Vec2::splat(theme::CONTROL));
    let text = Rect::from_min_max(
        pos2(mark.right() + 12.0, rect.top() - 4.0),
        rect.max + vec2(-chip, 2.0),
    );
    if text.width() < 40.0 && !hard.is_empty() {
        // The mark is in the list at the side too; what is hard is nowhere else.
        hard::show(ui, desk, &hard, mark);
        return;
    }
    if rect.width() < mark.width() {
        return;
    }
    plate(ui.painter(), &t, mark);
    desk.pictures
        .mark(ui.painter(), mark.shrink(8.0), &person.mark);
    let mut end = mark.right();
    if text.width() >= 40.0 {
        end = name(ui, desk, person, text, several);
    }
    if !hard.is_empty() {
        let left = (end + 20.0).min(rect.right() - hard::ALONE);
        hard::show(ui, desk, &hard, rect.with_min_x(left));
    }
}

/// The name above, how the board differs below; gives where the longer of them ends.
fn name(ui: &Ui, desk: &Desk<'_>, person: &Participant, text: Rect, several: usize) -> f32 {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let (upper, lower) = text.split_top_bottom_at_fraction(0.6);
    let (bold, regular) = (theme::bold(24.0), theme::regular(15.0));
    let whole = possessive(&person.name, "board");
    let fits = words::rows_needed(p, &whole, bold.clone(), text.width()) < 2;
    let how = desk.view.board().map_or_else(String::new, |b| {
        let n = b.steps.len();
        match several {
            0 | 1 if !fits => differs(b),
            0 | 1 => format!("{n} step{}, {}", if n == 1 { "" } else { "s" }, differs(b)),
            chosen => format!("{chosen} of {n} steps chosen"),
        }
    });
    let name = if fits { &whole } else { &person.name };
    let a = words::line(p, upper, Align2::LEFT_CENTER, name, bold, t.col.ink);
    let b = words::line(p, lower, Align2::LEFT_CENTER, &how, regular, t.col.soft);
    a.right().max(b.right())
}

/// Whether anything on the board is in the water and done today.
fn wet(desk: &Desk<'_>) -> bool {
    let club = desk.view.club;
    let slot = |s: &&Step| matches!(s.at, StepRef::Slot(_));
    desk.view.board().is_some_and(|b| {
        let mut done = b.done().filter(slot).filter_map(|s| s.activity);
        done.any(|id| club.in_water(id))
    })
}

/// "Noor's board", with a typographer's apostrophe.
pub fn possessive(name: &str, what: &str) -> String {
    if name.ends_with('s') {
        format!("{name}’ {what}")
    } else {
        format!("{name}’s {what}")
    }
}

fn chosen(desk: &Desk<'_>) -> Option<Step> {
    let step = desk.view.step?;
    desk.view
        .board()?
        .steps
        .iter()
        .find(|s| s.at == step)
        .cloned()
}

/// An undo or redo button that ends at `right`; gives its left edge.
pub fn undo_button(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    action: Action,
    icon: Icon,
    sign: bool,
    (right, top): (f32, f32),
) -> f32 {
    let what = if action == Action::Undo {
        desk.view.undo
    } else {
        desk.view.redo
    };
    let row = actions::of(action);
    let label = row.map_or("", |r| r.label);
    let tip = format!(
        "{label}: {} ({})",
        what.unwrap_or("nothing"),
        row.map_or_else(String::new, actions::Row::keys)
    );
    let b = Button::new(("history", label), label)
        .enabled(what.is_some())
        .tip(&tip);
    let b = if sign {
        b.icon_only(icon)
    } else {
        b.icon(icon)
    };
    let b = if what.is_some() {
        b
    } else {
        b.weight(Weight::Quiet)
    };
    let width = b.needs(ui);
    let place = Rect::from_min_size(pos2(right - width, top), vec2(width, theme::CONTROL));
    if b.show_at(ui, place).clicked() {
        desk.actions.push(action);
    }
    place.left()
}

/// What can be done with the chosen step; gives the left edge of what was shown.
fn step_buttons(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    step: &Step,
    room: Rect,
) -> f32 {
    let swapping = state.swap == Some(step.at);
    let wanted = offered_now(desk, state, step);
    let needs = |one: &Offered| Button::new("needs", one.0).icon(one.1).needs(ui) + 8.0;
    let signs = wanted.iter().map(needs).sum::<f32>() > room.width() - NAME;
    let mut right = room.right();
    for (label, icon, tip, what) in wanted {
        let name = format!("{label}: {}", step.label);
        let b = Button::new(("step", label), if signs { &name } else { label }).tip(tip);
        let b = if signs {
            b.icon_only(icon)
        } else {
            b.icon(icon)
        };
        let b = if swapping && matches!(what, Do::Swap) {
            b.weight(Weight::Chosen(true))
        } else {
            b
        };
        let size = vec2(b.needs(ui), theme::CONTROL);
        let place = Rect::from_min_size(pos2(right - size.x, room.top()), size);
        if b.show_at(ui, place).clicked() {
            act(desk, state, step.at, what);
        }
        right = place.left() - 8.0;
    }
    right
}

/// A button: its words, its sign, what it does in a sentence, and what it does.
type Offered = (&'static str, Icon, &'static str, Do);

#[derive(Clone, Copy, PartialEq, Eq)]
enum Do {
    Words,
    Picture,
    Swap,
    Choice,
    Group(SlotId, bool),
    Off,
    Instead,
    Today,
    Restore,
}

/// What can be done with the chosen step, or with all of them where several are chosen.
fn offered_now(desk: &Desk<'_>, state: &BoardsState, step: &Step) -> Vec<Offered> {
    let board = desk.view.board();
    let all = board.map_or(1, |b| state.several.all(b, Some(step.at)).len());
    if all < 2 {
        return offered(desk, step);
    }
    let off = "All that are chosen go off the line (Delete)";
    let back = "All that are chosen, back to what the timetable says (Backspace)";
    vec![
        ("As timetable", Icon::AsMade, back, Do::Restore),
        ("Not today", Icon::Bin, off, Do::Off),
    ]
}

/// What can be done with a step, from the right to the left.
fn offered(desk: &Desk<'_>, step: &Step) -> Vec<Offered> {
    let slot = matches!(step.at, StepRef::Slot(_));
    let off = step.state == StepState::NotToday;
    let by_hand = desk
        .view
        .session
        .zip(desk.view.participant)
        .is_some_and(|(s, p)| {
            let hand = s.hand_of(p.id);
            hand.is_some_and(|h| h.not_today.contains_key(&step.at))
        });
    let mut all = Vec::new();
    // What is always different for them stays when tonight's changes go.
    let tonight = step.moved || step.relabelled || step.by == By::Hand;
    if tonight && !matches!(step.at, StepRef::Own(_)) {
        let tip = "Back to what the timetable says (Backspace)";
        all.push(("As timetable", Icon::AsMade, tip, Do::Restore));
    }
    if off {
        if by_hand {
            let tip = "It is done today after all; other changes stay (T)";
            all.push(("Today", Icon::Tick, tip, Do::Today));
        }
        if slot {
            let tip = "The next symbol you pick comes instead (I)";
            all.push(("Instead", Icon::Swap, tip, Do::Instead));
        }
        return all;
    }
    if let StepRef::Slot(id) = step.at {
        let with = desk
            .view
            .session
            .zip(desk.view.participant)
            .and_then(|(s, p)| s.hand_of(p.id))
            .is_some_and(|h| h.with_group.contains(&id));
        if with {
            let tip = "Back to what is always so for this participant (G)";
            all.push(("As always", Icon::AsMade, tip, Do::Group(id, false)));
        } else if step.by == By::Standing {
            let tip = "As the group does it, today only (G)";
            all.push(("With the group", Icon::Lines, tip, Do::Group(id, true)));
        }
    }
    let label = match step.at {
        StepRef::Own(_) | StepRef::Instead(_) => "Take off",
        StepRef::Slot(_) | StepRef::Standing(..) => "Not today",
    };
    all.push((label, Icon::Bin, "Off the line (Delete)", Do::Off));
    let tip = "The next symbol you pick takes its place (R)";
    all.push(("Swap", Icon::Swap, tip, Do::Swap));
    let tip = "Two or three things to choose from (C)";
    all.push(("Choice", Icon::Diamond, tip, Do::Choice));
    let tip = "A picture of their own, wherever this one is seen (P)";
    all.push(("Picture", Icon::Picture, tip, Do::Picture));
    all.push((
        "Words",
        Icon::Pen,
        "Other words under the picture (F2)",
        Do::Words,
    ));
    all
}

fn act(desk: &mut Desk<'_>, state: &mut BoardsState, step: StepRef, what: Do) {
    let Some(who) = desk.view.participant.map(|p| p.id) else {
        return;
    };
    match what {
        Do::Words => state.relabel = Some(step),
        Do::Picture => desk.ask(Command::AskPictures(photo::purpose(desk.view))),
        Do::Swap => {
            state.swap = if state.swap == Some(step) {
                None
            } else {
                Some(step)
            }
        }
        Do::Choice => state.begin_choice(step),
        Do::Group(slot, with) => desk.board(who, BoardEdit::WithGroup(slot, with)),
        Do::Instead => state.begin_instead(step),
        Do::Today => desk.board(who, BoardEdit::DoToday(step)),
        Do::Off => {
            if let Some(board) = desk.view.board() {
                let all = state.several.all(board, Some(step));
                super::take_off(desk, who, board, &all);
                state.several.alone();
            }
        }
        Do::Restore => {
            let all = desk.view.board().map(|b| state.several.all(b, Some(step)));
            several::restore(desk, who, &all.unwrap_or_default());
        }
    }
    if what == Do::Swap && state.swap.is_some() {
        state.tray.focus_search = true;
    }
}
