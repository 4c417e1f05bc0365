//! One step as a card: its picture and words, and how it differs from the timetable.

use egui::{CornerRadius, Painter, Rect, Stroke, StrokeKind, pos2, vec2};

use super::face::{self, Until};
use crate::model::board::{By, Step, StepState};
use crate::model::manner::Form;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::{Eyes, Pictures};
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::card::Lie;
use crate::ui::widgets::words;

/// How a step is drawn.
pub struct Look<'a> {
    /// The step.
    pub step: &'a Step,
    /// The participant's skin.
    pub figure: Eyes,
    /// Chosen: the line round it is the accent.
    pub chosen: bool,
    /// A symbol would take its place.
    pub swapping: bool,
    /// The number of the finding about it, and whether it is serious.
    pub finding: Option<(usize, bool)>,
}

/// Draws a step's card; its tab hangs below.
pub fn paint(p: &Painter, pictures: &mut Pictures, rect: Rect, look: &Look<'_>) {
    let t = theme::of(p.ctx());
    let step = look.step;
    let at = (rect, Lie::Ground);
    face::step(p, pictures, at, step, look.figure, Until::Drawing);
    if look.chosen || look.swapping {
        let line = Stroke::new(2.5, t.col.accent);
        p.rect_stroke(
            rect,
            CornerRadius::same(theme::R_CARD),
            line,
            StrokeKind::Inside,
        );
    }
    if look.swapping {
        tab(p, &t, rect, Icon::Swap, "pick a symbol", false);
    } else if let Some((icon, words, dark)) = says(step) {
        tab(p, &t, rect, icon, &words, dark);
    }
    if let Some((n, serious)) = look.finding {
        let corner = rect.right_top() + vec2(-8.0, 8.0);
        icons::numbered(p, corner, n, serious, t.col.card_ink, t.col.card);
    }
}

/// What the tab of a step says: sign, words, and whether it is dark.
pub fn says(step: &Step) -> Option<(Icon, String, bool)> {
    if !step.options.is_empty() && step.state != StepState::NotToday {
        let dark = step.by == By::Hand;
        return Some((
            Icon::Diamond,
            format!("choice of {}", step.options.len()),
            dark,
        ));
    }
    match &step.state {
        StepState::Swapped { instead_of } => {
            Some((Icon::Swap, format!("instead of {instead_of}"), true))
        }
        StepState::Instead { of } => Some((Icon::Swap, format!("instead of {of}"), true)),
        StepState::Own if step.by == By::Standing => {
            Some((Icon::Plus, "always theirs".into(), false))
        }
        StepState::Own => Some((Icon::Plus, "own step".into(), false)),
        StepState::NotToday if step.by == By::Timetable => {
            Some((Icon::Cross, "called off".into(), false))
        }
        StepState::NotToday => None,
        StepState::AsTimetable if step.moved => Some((Icon::Swap, "moved".into(), false)),
        StepState::AsTimetable if step.relabelled => Some((Icon::Pen, "own words".into(), false)),
        StepState::AsTimetable if step.form == Form::Object => {
            Some((Icon::Ring, step.thing.clone(), false))
        }
        StepState::AsTimetable => None,
    }
}

/// A tab with words, hanging from the lower edge of a card.
fn tab(p: &Painter, t: &Theme, card: Rect, icon: Icon, words: &str, dark: bool) {
    let col = &t.col;
    let (ground, ink) = if dark {
        (col.peg, col.on_peg)
    } else {
        (col.panel, col.ink)
    };
    let most = card.width() + 12.0;
    let text = words::lay(p, words, theme::bold(14.0), ink, most - 38.0, 1);
    let width = (text.size().x + 40.0).clamp(84.0, most);
    let at = pos2(card.center().x - width / 2.0, card.bottom() - 3.0);
    let rect = Rect::from_min_size(at, vec2(width, 24.0));
    let line = if dark {
        Stroke::NONE
    } else {
        Stroke::new(t.line() + 0.3, col.ink)
    };
    p.rect(
        rect,
        CornerRadius::same(5),
        ground,
        line,
        StrokeKind::Inside,
    );
    icons::paint(
        p,
        icon,
        icons::square(rect.left_center() + vec2(16.0, 0.0), 16.0),
        ink,
    );
    p.galley(
        pos2(rect.left() + 29.0, rect.center().y - text.size().y / 2.0),
        text,
        ink,
    );
}

/// What a screen reader says of a step.
pub fn spoken(step: &Step, place: usize, count: usize) -> String {
    let how = match &step.state {
        StepState::NotToday if step.by == By::Timetable => ", not today for anyone".to_owned(),
        StepState::NotToday => ", not today".to_owned(),
        _ => says(step).map_or_else(String::new, |(_, words, _)| format!(", {words}")),
    };
    format!("{}{how}, step {} of {count}", step.label, place + 1)
}
