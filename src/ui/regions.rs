//! Areas of the window that F6 goes round, and arrow keys inside one of them.

use egui::{Context, EventFilter, Id, Key, Modifiers, Rect, Sense, Ui};

/// The areas of this frame in their order.
#[derive(Clone, Debug, Default)]
pub struct Regions {
    list: Vec<(Rect, Id)>,
}

impl Regions {
    /// Begins a frame.
    pub fn clear(&mut self) {
        self.list.clear();
    }

    /// Says that an area is there, and what gets the keyboard when it is entered.
    pub fn add(&mut self, rect: Rect, first: Id) {
        self.list.push((rect, first));
    }

    /// Puts the keyboard into the next area, or the one before.
    pub fn step(&self, ctx: &Context, back: bool) {
        if self.list.is_empty() {
            return;
        }
        let focus = ctx
            .memory(egui::Memory::focused)
            .and_then(|id| ctx.read_response(id));
        let here = focus.and_then(|r| {
            let at = r.rect.center();
            self.list
                .iter()
                .position(|(rect, id)| *id == r.id || rect.contains(at))
        });
        let n = self.list.len();
        let next = match (here, back) {
            (None, false) => 0,
            (None, true) => n - 1,
            (Some(i), false) => (i + 1) % n,
            (Some(i), true) => (i + n - 1) % n,
        };
        ctx.memory_mut(|m| m.request_focus(self.list[next].1));
    }
}

/// How an item of a list is sensed, so that a list is one stop of the Tab key: only the current
/// item, or the one that just got the keyboard, can be reached.
pub fn one_stop(ui: &Ui, id: Id, current: bool, drag: bool) -> Sense {
    let base = if drag {
        Sense::CLICK | Sense::DRAG
    } else {
        Sense::CLICK
    };
    if current || ui.memory(|m| m.has_focus(id)) {
        base | Sense::FOCUSABLE
    } else {
        base
    }
}

/// Keeps arrow keys for the focused widget instead of letting them leave it.
pub fn keep_arrows(ui: &Ui, id: Id) {
    ui.memory_mut(|m| {
        m.set_focus_lock_filter(
            id,
            EventFilter {
                horizontal_arrows: true,
                vertical_arrows: true,
                ..Default::default()
            },
        );
    });
}

/// Where plain arrow keys, Home, End and the page keys lead from one item among `count` that
/// stand `per_row` side by side.
pub fn arrows(ui: &Ui, at: usize, count: usize, per_row: usize) -> Option<usize> {
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    let last = count.checked_sub(1)?;
    let by = |back: bool, n: usize| {
        if back {
            at.saturating_sub(n)
        } else {
            (at + n).min(last)
        }
    };
    let to = if pressed(Key::ArrowLeft) {
        by(true, 1)
    } else if pressed(Key::ArrowRight) {
        by(false, 1)
    } else if pressed(Key::ArrowUp) {
        by(true, per_row)
    } else if pressed(Key::ArrowDown) {
        by(false, per_row)
    } else if pressed(Key::Home) {
        0
    } else if pressed(Key::End) {
        last
    } else if pressed(Key::PageUp) {
        by(true, 10 * per_row)
    } else if pressed(Key::PageDown) {
        by(false, 10 * per_row)
    } else {
        return None;
    };
    (to != at).then_some(to)
}

/// How far Alt with an arrow key moves the item at `at`: its new place, counted after taking it out.
pub fn alt_arrows(ui: &Ui, at: usize, count: usize, per_row: usize) -> Option<usize> {
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::ALT, key));
    let last = count.checked_sub(1)?;
    let to = if pressed(Key::ArrowLeft) {
        at.saturating_sub(1)
    } else if pressed(Key::ArrowRight) {
        (at + 1).min(last)
    } else if pressed(Key::ArrowUp) {
        at.saturating_sub(per_row)
    } else if pressed(Key::ArrowDown) {
        (at + per_row).min(last)
    } else if pressed(Key::Home) {
        0
    } else if pressed(Key::End) {
        last
    } else {
        return None;
    };
    (to != at).then_some(to)
}
