//! What the club's printer makes of a length, and what to set in its dialog. Nothing is ever scaled
//! without a word.

use egui::{Id, Ui};

use super::kinds::small_heading;
use crate::model::edit::Edit;
use crate::plan::seal;
use crate::ui::desk::Desk;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::steps::{Millimetres, Steps, in_mm, millimetres};
use crate::ui::widgets::words;
use crate::units::Length;

/// The bar on the test page.
const BAR: Length = Length::um(100_000);

/// Shows the block.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>) {
    small_heading(ui, "Printer: the bar of 100 mm measures");
    let bar = desk.view.club.rules.craft.bar;
    let s = Steps {
        id: Id::unique("printer-bar"),
        label: "What the bar of 100 mm measures",
        unit: "mm",
        range: 900..=1100,
        step: 1,
    };
    let mm = Millimetres {
        value: bar,
        none: "not measured",
        first: BAR,
        width: ui.available_width().min(260.0),
    };
    if let Some(next) = millimetres(ui, desk.drafts, &s, &mm) {
        set(desk, Some(next));
    }
    words::soft(ui, &says(bar, desk.view.club.rules.tile));
    if bar.is_some() {
        let b = Button::new("printer-forget", "Not measured").weight(Weight::Quiet);
        if b.tip("Forgets what was measured").show(ui).clicked() {
            set(desk, None);
        }
    }
}

fn set(desk: &mut Desk<'_>, bar: Option<Length>) {
    let mut rules = desk.view.club.rules.clone();
    rules.craft.bar = bar;
    desk.edit(Edit::Rules(rules));
}

/// What follows from what was measured.
fn says(bar: Option<Length>, tile: Length) -> String {
    let Some(bar) = bar else {
        return "Print the test page at 100 % and measure its bar. Nothing is scaled here."
            .to_owned();
    };
    if bar == BAR {
        return "True to size: leave the printer’s dialog at 100 %.".to_owned();
    }
    let (set, comes) = (seal::scale_to_set(bar), seal::printed(tile, bar));
    format!(
        "At 100 % a tile of {} comes out as {}. Set {}.{} % in the printer’s dialog; nothing is \
         scaled here.",
        in_mm(tile),
        in_mm(comes),
        set / 10,
        set % 10
    )
}
