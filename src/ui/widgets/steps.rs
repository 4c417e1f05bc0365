//! A number with steps: typed, or turned up and down. Whole numbers, some of which may be left out,
//! and millimetres to a tenth.

use egui::{Id, Rect, Ui, vec2};

use super::button::Button;
use super::field::{Drafts, Field};
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::units::Length;

/// What a stepper needs to know.
pub struct Steps<'a> {
    /// Its id.
    pub id: Id,
    /// Its name.
    pub label: &'a str,
    /// What stands after the number.
    pub unit: &'a str,
    /// Least and greatest.
    pub range: std::ops::RangeInclusive<u32>,
    /// How far one press goes.
    pub step: u32,
}

/// A number that can be typed or stepped. Gives the new number.
pub fn stepper(ui: &mut Ui, drafts: &mut Drafts, s: &Steps<'_>, value: u32) -> Option<u32> {
    let width = theme::CONTROL * 2.0 + 84.0;
    let (_, rect) = ui.allocate_space(vec2(width, theme::CONTROL));
    stepper_at(ui, drafts, s, value, rect)
}

/// The same in a rectangle.
pub fn stepper_at(
    ui: &mut Ui,
    drafts: &mut Drafts,
    s: &Steps<'_>,
    value: u32,
    rect: Rect,
) -> Option<u32> {
    let known = Known {
        value: Some(value),
        none: "",
        first: value,
        tenths: false,
        may_go: false,
    };
    show(ui, drafts, s, &known, rect).flatten()
}

/// A whole number that may be left out, with what stands there then, and the one that the first step
/// leads to.
pub struct Maybe<'a> {
    /// The number, if there is one.
    pub value: Option<u32>,
    /// Soft words in its place.
    pub none: &'a str,
    /// Where the first step leads.
    pub first: u32,
    /// How wide the stepper is.
    pub width: f32,
}

/// A number that may be left out: emptied, or turned below the least one. Gives what it is then.
pub fn maybe(
    ui: &mut Ui,
    drafts: &mut Drafts,
    s: &Steps<'_>,
    m: &Maybe<'_>,
) -> Option<Option<u32>> {
    let (_, rect) = ui.allocate_space(vec2(m.width, theme::CONTROL));
    let known = Known {
        value: m.value,
        none: m.none,
        first: m.first,
        tenths: false,
        may_go: true,
    };
    show(ui, drafts, s, &known, rect)
}

/// A length in millimetres, with what stands there while none is known, and the one that the first
/// step leads to then.
pub struct Millimetres<'a> {
    /// The length, if there is one.
    pub value: Option<Length>,
    /// Soft words in its place.
    pub none: &'a str,
    /// Where the first step leads.
    pub first: Length,
    /// How wide the stepper is.
    pub width: f32,
}

/// A length to a tenth of a millimetre; the range and the step are in tenths. Gives the new length.
pub fn millimetres(
    ui: &mut Ui,
    drafts: &mut Drafts,
    s: &Steps<'_>,
    mm: &Millimetres<'_>,
) -> Option<Length> {
    let (_, rect) = ui.allocate_space(vec2(mm.width, theme::CONTROL));
    let known = Known {
        value: mm.value.map(tenths),
        none: mm.none,
        first: tenths(mm.first),
        tenths: true,
        may_go: false,
    };
    let next = show(ui, drafts, s, &known, rect).flatten()?;
    Some(Length::um(i64::from(next) * 100))
}

/// A length in whole tenths of a millimetre.
fn tenths(length: Length) -> u32 {
    u32::try_from((length.to_um() + 50) / 100).unwrap_or(0)
}

/// A length in words: "60 mm", "37.5 mm".
pub fn in_mm(length: Length) -> String {
    format!("{} mm", written(tenths(length), true))
}

/// The number as it is now, and how it is written.
struct Known<'a> {
    value: Option<u32>,
    none: &'a str,
    first: u32,
    tenths: bool,
    may_go: bool,
}

/// A number as it stands in the field.
fn written(n: u32, in_tenths: bool) -> String {
    match (in_tenths, n % 10) {
        (false, _) => n.to_string(),
        (true, 0) => (n / 10).to_string(),
        (true, rest) => format!("{}.{rest}", n / 10),
    }
}

/// What was typed, with a comma or a point.
fn read(typed: &str, in_tenths: bool) -> Option<u32> {
    let typed = typed.trim();
    if !in_tenths {
        return typed.parse().ok();
    }
    let mm: f64 = typed.replace(',', ".").parse().ok()?;
    (0.0..1e6).contains(&mm).then(|| (mm * 10.0).round() as u32)
}

/// Gives the new number, or that it is left out now; nothing where nothing changed.
fn show(
    ui: &mut Ui,
    drafts: &mut Drafts,
    s: &Steps<'_>,
    known: &Known<'_>,
    rect: Rect,
) -> Option<Option<u32>> {
    let side = theme::CONTROL;
    let (low, high) = (*s.range.start(), *s.range.end());
    let less = Rect::from_min_size(rect.min, vec2(side, side));
    let more = Rect::from_min_size(
        egui::pos2(rect.right() - side, rect.top()),
        vec2(side, side),
    );
    let middle = Rect::from_min_max(
        less.right_top() + vec2(4.0, 0.0),
        more.left_bottom() - vec2(4.0, 0.0),
    );
    let mut next = known.value;
    let less_name = format!("{}: less", s.label);
    let more_name = format!("{}: more", s.label);
    let can_fall = match known.value {
        Some(v) => v > low || known.may_go,
        None => !known.may_go,
    };
    let b = Button::new((s.id, "less"), &less_name)
        .icon_only(Icon::Minus)
        .enabled(can_fall);
    if b.show_at(ui, less).clicked() {
        next = match known.value {
            Some(v) if v <= low => None,
            Some(v) => Some(v.saturating_sub(s.step).max(low)),
            None => Some(known.first),
        };
    }
    let shown = known
        .value
        .map_or_else(String::new, |v| written(v, known.tenths));
    let unit = if known.value.is_some() { s.unit } else { "" };
    let typed = Field::new(s.id, s.label, &shown)
        .unit(unit)
        .hint(known.none)
        .show_at(ui, drafts, middle);
    match typed {
        Some(text) if known.may_go && text.trim().is_empty() => next = None,
        Some(text) => {
            let number = read(&text, known.tenths).map(|n| n.clamp(low, high));
            next = number.or(next);
        }
        None => {}
    }
    let b = Button::new((s.id, "more"), &more_name)
        .icon_only(Icon::Plus)
        .enabled(known.value.is_none_or(|v| v < high));
    if b.show_at(ui, more).clicked() {
        let up = |v: u32| (v + s.step).min(high);
        next = Some(known.value.map_or(known.first, up));
    }
    (next != known.value).then_some(next)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn millimetres_are_typed_with_point_or_comma_and_shown_to_a_tenth() {
        for (typed, tenths) in [("99.4", 994), (" 99,4 ", 994), ("100", 1000), ("3.25", 33)] {
            assert_eq!(read(typed, true), Some(tenths), "{typed:?}");
        }
        for typed in ["", "-3", "about 3", "1e9", "NaN"] {
            assert_eq!(read(typed, true), None, "{typed:?}");
        }
        assert_eq!(read("12", false), Some(12));
        assert_eq!(in_mm(Length::um(3_200)), "3.2 mm");
        assert_eq!(in_mm(Length::um(60_000)), "60 mm");
    }
}
