//! Drawing with keys alone: a letter for each tool, arrows for the pen, Space to put it down and to
//! lift it.

use egui::{EventFilter, Id, Key, Modifiers, Ui};

use super::hand::Doing;
use super::{DrawingState, Tool, tools};
use crate::drawing::gesture::{Look, Spot};
use crate::drawing::sketch::GRID;
use crate::ui::actions::Action;

/// How far an arrow goes, in canvas units.
const STEP: f64 = 4.0;
/// How far with Shift.
const FINE: f64 = 1.0;

impl DrawingState {
    /// What a key of the window does here: undo and redo are the drawing's own; what makes the
    /// window larger or leads to its next area goes on to the window. Says whether it does.
    pub fn passes(&mut self, action: Action) -> bool {
        let free = self.picker.is_none() && !self.leaving;
        match action {
            Action::Undo if free => self.undo(),
            Action::Redo if free => self.redo(),
            _ if action.zooms() => return true,
            Action::NextArea | Action::AreaBefore | Action::Help => return free,
            _ => {}
        }
        false
    }
}

/// The letters, wherever the keyboard is, unless something is being typed.
pub fn tools(ui: &Ui, state: &mut DrawingState) {
    if ui.ctx().text_edit_focused() {
        return;
    }
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    for (tool, _, _, key) in tools::TOOLS {
        if pressed(key) {
            state.take(tool);
        }
    }
    for (i, key) in [Key::Num1, Key::Num2, Key::Num3].into_iter().enumerate() {
        if pressed(key) {
            state.set_width(i);
        }
    }
    if pressed(Key::G) {
        state.hand.grid = !state.hand.grid;
    }
    if pressed(Key::A) {
        state.pen.look = match state.pen.look {
            Look::Both => Look::Area,
            Look::Area => Look::Line,
            Look::Line => Look::Both,
        };
    }
}

/// Escape drops what is not finished; else it asks to leave.
pub fn leaves(ui: &Ui, state: &mut DrawingState) -> bool {
    if ui.ctx().text_edit_focused() {
        return false;
    }
    let escape = ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Escape));
    if escape && state.hand.doing != Doing::Nothing {
        state.hand.doing = Doing::Nothing;
        return false;
    }
    escape
}

/// The pen while the keyboard is on the paper.
pub fn pen(ui: &Ui, state: &mut DrawingState, paper: Id) {
    ui.memory_mut(|m| {
        m.set_focus_lock_filter(
            paper,
            EventFilter {
                horizontal_arrows: true,
                vertical_arrows: true,
                // Escape drops what is not finished, and the keyboard stays on the paper.
                escape: true,
                ..Default::default()
            },
        );
    });
    let (plain, shift) = (Modifiers::NONE, Modifiers::SHIFT);
    let pressed = |modifiers, key| ui.input_mut(|i| i.count_and_consume_key(modifiers, key));
    for (key, x, y) in [
        (Key::ArrowLeft, -1.0, 0.0),
        (Key::ArrowRight, 1.0, 0.0),
        (Key::ArrowUp, 0.0, -1.0),
        (Key::ArrowDown, 0.0, 1.0),
    ] {
        let step = if state.hand.grid { GRID } else { STEP };
        let far = pressed(shift, key) as f64 * FINE + pressed(plain, key) as f64 * step;
        if far > 0.0 {
            let go = |from: f64, by: f64| (from + by * far).clamp(0.0, 240.0);
            state.point = Spot::new(go(state.point.x, x), go(state.point.y, y));
            state.hand.moved(state.point);
        }
    }
    if pressed(plain, Key::Space) > 0 {
        let done = match (&state.hand.doing, state.hand.tool) {
            (Doing::Nothing, _) | (_, Tool::Polygon | Tool::Rounded) => {
                state.hand.press(state.point)
            }
            _ => state.hand.lift(),
        };
        state.draw(done);
    }
    if pressed(plain, Key::Enter) > 0 {
        let done = state.hand.finish();
        state.draw(done);
    }
    if pressed(plain, Key::Backspace) > 0 || pressed(plain, Key::Delete) > 0 {
        state.undo();
    }
}
