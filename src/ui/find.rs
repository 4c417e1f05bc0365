//! Looking for someone in a long list: the field above it, and whom the words fit.

use egui::{Id, Key, Modifiers, Rect, Response, Ui, pos2, vec2};

use super::icons::{self, Icon};
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::field::live;
use crate::model::people::Participant;

/// A list of no more than this is seen at a glance and needs no field.
pub const FEW: usize = 10;
/// Room for the sign before the words.
const INSET: f32 = 30.0;

/// Whether a participant fits what was typed: every word of it is in the name or begins the mark.
pub fn fits(person: &Participant, typed: &str) -> bool {
    let name = person.name.to_lowercase();
    let mark = person.mark.as_str();
    let typed = typed.to_lowercase();
    let mut words = typed.split_whitespace();
    words.all(|w| name.contains(w) || mark.starts_with(w))
}

/// A field with a sign before its words and a cross to empty it; what is typed counts at once.
pub fn field(ui: &mut Ui, id: Id, rect: Rect, label: &str, text: &mut String) -> Response {
    let r = live(ui, id, rect, label, text, INSET);
    let ink = theme::of(ui.ctx()).col.ink;
    let mark = icons::square(rect.left_center() + vec2(23.0, 0.0), 21.0);
    icons::paint(ui.painter(), Icon::Search, mark, ink);
    if !text.is_empty() {
        let clear = Rect::from_min_max(pos2(rect.right() - theme::CONTROL, rect.top()), rect.max);
        let b = Button::new((id, "clear"), "Empty the search").icon_only(Icon::Cross);
        if b.weight(Weight::Quiet).show_at(ui, clear).clicked() {
            text.clear();
        }
    }
    r
}

/// What a list remembers of being looked through.
#[derive(Clone, Debug, Default)]
pub struct Find {
    /// What was typed.
    pub typed: String,
    /// Put the keyboard into the field in this frame.
    pub focus: bool,
    /// The keyboard goes on to the first that fits.
    pub go_on: bool,
}

impl Find {
    /// The field, if a list of so many needs one; gives what is below it. A list that became short
    /// shows everyone.
    pub fn above(&mut self, ui: &mut Ui, id: Id, rect: Rect, of: usize) -> Rect {
        self.above_for(ui, (id, "Find a name"), rect, of)
    }

    /// The same with other words in the field.
    pub fn above_for(
        &mut self,
        ui: &mut Ui,
        (id, label): (Id, &str),
        rect: Rect,
        of: usize,
    ) -> Rect {
        let asked = std::mem::take(&mut self.focus);
        if of <= FEW {
            self.typed.clear();
            return rect;
        }
        let place = rect.with_max_y(rect.top() + theme::CONTROL);
        let r = field(ui, id, place, label, &mut self.typed);
        if asked {
            r.request_focus();
        }
        let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
        self.go_on =
            r.has_focus() && pressed(Key::ArrowDown) || r.lost_focus() && pressed(Key::Enter);
        rect.with_min_y(place.bottom() + 8.0)
    }

    /// Whether someone is shown.
    pub fn shows(&self, person: &Participant) -> bool {
        fits(person, &self.typed)
    }

    /// Whether some are not shown.
    pub fn narrows(&self) -> bool {
        !self.typed.trim().is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ids::SymbolId;
    use crate::units::Length;

    #[test]
    fn a_name_is_found_by_any_part_of_it_and_by_its_mark() {
        let p = Participant::new("Ada van Loo", SymbolId::new("kite"), Length::mm(60.0));
        for typed in ["", "ada", "LOO", "van a", "kit", "ada kite", " loo  ada "] {
            assert!(fits(&p, typed), "{typed:?}");
        }
        for typed in ["adam", "ite", "kite boat"] {
            assert!(!fits(&p, typed), "{typed:?}");
        }
    }
}
