//! What the checks say of the board that lies here, as slips of paper below it.

use egui::{Rect, Ui, pos2, vec2};

use crate::model::finding::{Finding, Spot};
use crate::model::ids::StepRef;
use crate::ui::checks;
use crate::ui::desk::Desk;
use crate::workbench::view::View;

/// What is said of the chosen board and its steps, most serious first.
pub fn of<'a>(view: &View<'a>) -> Vec<&'a Finding> {
    let (Some(session), Some(who)) = (view.session, view.participant) else {
        return Vec::new();
    };
    view.findings
        .iter()
        .filter(|f| match f.spot {
            Spot::Board(s, p) | Spot::Step(s, p, _) => s == session.id && p == who.id,
            _ => false,
        })
        .collect()
}

/// The number of the first finding about a step, counted from one, and whether it is serious.
pub fn about(findings: &[&Finding], step: StepRef) -> Option<(usize, bool)> {
    let at = findings
        .iter()
        .position(|f| matches!(f.spot, Spot::Step(_, _, s) if s == step))?;
    Some((
        at + 1,
        findings[at].severity == crate::model::finding::Severity::StopAndLook,
    ))
}

/// Shows the first two side by side; the rest are in Checks.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, findings: &[&Finding], rect: Rect) {
    let shown = findings.len().min(if rect.width() > 760.0 { 2 } else { 1 });
    let gap = 14.0;
    let width = (rect.width() - gap * (shown as f32 - 1.0)) / shown as f32;
    for (i, f) in findings.iter().take(shown).enumerate() {
        let left = rect.left() + i as f32 * (width + gap);
        let place = Rect::from_min_size(pos2(left, rect.top()), vec2(width, rect.height()));
        let more = findings.len() - shown;
        let more = if i + 1 == shown { more } else { 0 };
        checks::slip(ui, desk, place, f, (i + 1, more));
    }
}
