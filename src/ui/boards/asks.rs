//! Between the name and the board: what is asked about changes by hand, a choice being made, what is
//! left out. One line each, with its buttons; nothing stands in the way.

use egui::{Align2, CornerRadius, Id, Rect, ScrollArea, StrokeKind, Ui, UiBuilder, pos2, vec2};

use super::BoardsState;
use crate::model::club::Club;
use crate::model::edit::BoardEdit;
use crate::model::hand::{Asked, Content};
use crate::model::ids::{SlotId, StepRef, SymbolId};
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::symbols::lexicon::lexicon;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::words;
use crate::workbench::view::View;

/// Height of a line with the white below it.
pub const LINE: f32 = theme::CONTROL + 8.0;

/// One line.
pub enum Ask {
    /// What can be chosen at a step is being put together.
    Choice(StepRef),
    /// A change that lost what it was about.
    Asked(Asked),
    /// A change about a step that is not on the board.
    Waiting(StepRef, String),
    /// A row that is left out by a standing change.
    LeftOut(SlotId, String),
}

/// The lines of the chosen board, what wants an answer first.
pub fn of(view: &View<'_>, state: &BoardsState) -> Vec<Ask> {
    let (Some(session), Some(person), Some(board)) = (view.session, view.participant, view.board())
    else {
        return Vec::new();
    };
    let mut all: Vec<Ask> = state.offer.map(Ask::Choice).into_iter().collect();
    let hand = session.hand_of(person.id);
    let asked = hand.into_iter().flat_map(|h| &h.asked);
    all.extend(asked.cloned().map(Ask::Asked));
    let waiting = board.waiting.iter();
    all.extend(waiting.map(|s| Ask::Waiting(*s, named(view.club, session, person, *s))));
    for slot in &board.left_out {
        let label = row_label(view.club, session, *slot).unwrap_or_default();
        all.push(Ask::LeftOut(*slot, label.to_owned()));
    }
    all
}

/// What the timetable has in a row, in words.
fn row_label<'a>(club: &'a Club, session: &Session, slot: SlotId) -> Option<&'a str> {
    let activity = club.activity(session.slot(slot)?.activity)?;
    Some(activity.label.as_str())
}

/// A step that is not on the board, in words.
fn named(club: &Club, session: &Session, person: &Participant, step: StepRef) -> String {
    let row = |slot: SlotId| row_label(club, session, slot).unwrap_or("a row of the timetable");
    match step {
        StepRef::Slot(slot) => row(slot).to_owned(),
        StepRef::Instead(slot) => format!("what comes instead of {}", row(slot)),
        StepRef::Own(_) => "an own step".to_owned(),
        StepRef::Standing(id, beside) => {
            let own = person.standing.step(id);
            let own = own.map_or("a step of their own", |s| s.content.label.as_str());
            match beside {
                Some(slot) => format!("{own} beside {}", row(slot)),
                None => own.to_owned(),
            }
        }
    }
}

/// Shows the lines; more than there is room for are scrolled to.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, asks: &[Ask], rect: Rect) {
    if let Some(first) = asks.first() {
        desk.regions.add(rect, first_button(first, 0));
    }
    let shown = ((rect.height() / LINE) as usize).min(asks.len());
    let mut child = ui.new_child(UiBuilder::new().id_salt("ask-lines").max_rect(rect));
    child.set_clip_rect(rect.expand2(vec2(6.0, 4.0)).intersect(ui.clip_rect()));
    ScrollArea::vertical()
        .id_salt("asks")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            let bar = if asks.len() > shown { 14.0 } else { 0.0 };
            let height = asks.len() as f32 * LINE - 8.0;
            let (_, all) = ui.allocate_space(vec2(rect.width(), height));
            for (n, ask) in asks.iter().enumerate() {
                let top = all.top() + n as f32 * LINE;
                let place = Rect::from_min_size(
                    pos2(rect.left(), top),
                    vec2(rect.width() - bar, theme::CONTROL),
                );
                line(ui, desk, state, ask, place, n);
            }
        });
}

/// What F6 puts the keyboard on.
fn first_button(ask: &Ask, n: usize) -> Id {
    let label = match ask {
        Ask::Choice(_) => "Done".to_owned(),
        Ask::Asked(asked) => keep_words(asked),
        Ask::Waiting(..) => "Let it go".to_owned(),
        Ask::LeftOut(..) => "With the group today".to_owned(),
    };
    Id::unique(("button", ("ask", label.as_str(), n)))
}

fn line(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    ask: &Ask,
    rect: Rect,
    n: usize,
) {
    let t = theme::of(ui.ctx());
    let r = CornerRadius::same(theme::R_CONTROL);
    let quiet = matches!(ask, Ask::LeftOut(..));
    let edge = if quiet {
        egui::Stroke::new(t.line(), t.col.rule)
    } else {
        t.edge()
    };
    ui.painter()
        .rect(rect, r, t.col.panel, edge, StrokeKind::Inside);
    let Some(who) = desk.view.participant.map(|p| p.id) else {
        return;
    };
    let mut right = rect.right();
    match ask {
        Ask::Choice(step) => {
            right = choice(ui, desk, state, *step, (rect, n));
        }
        Ask::Asked(asked) => {
            let keep = keep_words(asked);
            let other = match asked {
                Asked::RowGone { .. } => "Let it go",
                Asked::OtherWords { .. } | Asked::OtherActivity { .. } => "Follow the timetable",
            };
            for (label, kept) in [(keep.as_str(), true), (other, false)] {
                if at_right(ui, (rect, n), &mut right, label, None) {
                    desk.board(who, BoardEdit::Settle(asked.clone(), kept));
                    state.focus_step = true;
                }
            }
        }
        Ask::Waiting(step, _) => {
            if at_right(ui, (rect, n), &mut right, "Let it go", None) {
                desk.board(who, BoardEdit::LetGo(*step));
            }
        }
        Ask::LeftOut(slot, _) => {
            if at_right(ui, (rect, n), &mut right, "With the group today", None) {
                desk.board(who, BoardEdit::WithGroup(*slot, true));
            }
        }
    }
    let says = sentence(ask);
    let room = Rect::from_min_max(
        rect.min + vec2(14.0, 0.0),
        pos2(right - 10.0, rect.bottom()),
    );
    let ink = t.col.ink;
    words::label(ui.painter(), room, &says, &[16.0, 14.5, 13.0], 2, ink);
}

/// A button that ends at `right`, which moves to its left edge.
fn at_right(
    ui: &mut Ui,
    (rect, n): (Rect, usize),
    right: &mut f32,
    label: &str,
    icon: Option<Icon>,
) -> bool {
    let b = Button::new(("ask", label, n), label).weight(Weight::Quiet);
    let b = match icon {
        Some(icon) => b.icon(icon),
        None => b,
    };
    let width = b.needs(ui);
    let place = Rect::from_min_size(pos2(*right - width, rect.top()), vec2(width, rect.height()));
    *right = place.left();
    b.show_at(ui, place).clicked()
}

fn keep_words(asked: &Asked) -> String {
    match asked {
        Asked::RowGone { shown, .. } => format!("Keep {} as own step", shown.label),
        Asked::OtherWords { words, .. } => format!("Say {words}"),
        Asked::OtherActivity { .. } => "Keep the change".to_owned(),
    }
}

/// What a line says.
pub fn sentence(ask: &Ask) -> String {
    match ask {
        Ask::Choice(_) => "Choice:".to_owned(),
        Ask::Asked(Asked::RowGone { was, shown, .. }) if was.label == shown.label => {
            format!(
                "{} was changed here and is not in the timetable any more.",
                was.label
            )
        }
        Ask::Asked(Asked::RowGone { was, shown, .. }) => format!(
            "{} was here for {}, which is not in the timetable any more.",
            shown.label, was.label
        ),
        Ask::Asked(Asked::OtherWords { was, words, .. }) => format!(
            "The words were “{words}” for {}; the timetable has something else now.",
            was.label
        ),
        Ask::Asked(Asked::OtherActivity { was, .. }) => format!(
            "{} was changed here; the timetable has something else now.",
            was.label
        ),
        Ask::Waiting(_, what) => {
            format!("A change waits for {what}, which is not on the board now.")
        }
        Ask::LeftOut(_, label) => format!("Left out, as always: {label}."),
    }
}

/// The options of a step with what can be added in one click; gives the left edge of the buttons.
fn choice(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    step: StepRef,
    (rect, n): (Rect, usize),
) -> f32 {
    let mut right = rect.right();
    if at_right(ui, (rect, n), &mut right, "Done", Some(Icon::Tick)) {
        state.offer = None;
    }
    let Some(person) = desk.view.participant else {
        return right;
    };
    let now = desk.view.board().and_then(|b| {
        let at = b.position(step)?;
        Some(b.steps[at].options.clone())
    });
    let now = now.unwrap_or_default();
    let full = now.len() >= crate::model::limits::OPTIONS;
    for (symbol, label) in [("no", "No thanks"), ("something_else", "Something else")] {
        let there = now.iter().any(|o| o.symbol.as_str() == symbol);
        if there || full {
            continue;
        }
        if at_right(ui, (rect, n), &mut right, label, Some(Icon::Plus)) {
            let mut next = now.clone();
            next.push(plain(desk, symbol, label));
            desk.board(person.id, BoardEdit::Offer(step, next));
        }
    }
    let mut left = rect.left() + 84.0;
    for (i, option) in now.iter().enumerate() {
        let name = format!("{} ×", option.label);
        let b = Button::new(("option", i), &name).tip("Take it out of the choice");
        let width = b.needs(ui);
        if left + width > right - 8.0 {
            break;
        }
        let place = Rect::from_min_size(pos2(left, rect.top()), vec2(width, rect.height()));
        if b.show_at(ui, place).clicked() {
            let mut next = now.clone();
            next.remove(i);
            desk.board(person.id, BoardEdit::Offer(step, next));
        }
        left = place.right() + 8.0;
    }
    if now.is_empty() {
        let t = theme::of(ui.ctx());
        let room = Rect::from_min_max(pos2(left, rect.top()), pos2(right - 8.0, rect.bottom()));
        words::line(
            ui.painter(),
            room,
            Align2::LEFT_CENTER,
            "pick two or three symbols below",
            theme::regular(15.0),
            t.col.soft,
        );
    }
    right.min(rect.left() + 96.0)
}

fn plain(desk: &Desk<'_>, symbol: &str, label: &str) -> Content {
    let symbol = SymbolId::new(symbol);
    let own = lexicon(&desk.view.club.rules.words)
        .label(&symbol)
        .to_owned();
    Content {
        activity: None,
        label: if symbol.as_str() == "no" || own.is_empty() {
            label.to_owned()
        } else {
            own
        },
        symbol,
    }
}
