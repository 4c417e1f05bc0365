//! Lengths, dates, times and steps as they are written in a file.

use jiff::civil::{Date, Time};
use serde::{Deserialize, Serialize};

use crate::model::ids::{OwnId, SlotId, StandingId, StepRef};
use crate::units::Length;

/// A length in millimetres: `60`, or `3.175`.
#[derive(Clone, Copy, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "serde_json::Number")]
pub(super) struct Mm(pub(super) Length);

/// Lengths beyond ten metres are no lengths of this trade.
const MM_MAX: f64 = 10_000.0;

impl TryFrom<f64> for Mm {
    type Error = String;
    fn try_from(mm: f64) -> Result<Self, String> {
        if mm.is_finite() && mm.abs() <= MM_MAX {
            Ok(Self(Length::mm(mm)))
        } else {
            Err(format!("a length is at most {MM_MAX} mm"))
        }
    }
}

impl From<Mm> for serde_json::Number {
    fn from(mm: Mm) -> Self {
        let um = mm.0.to_um();
        if um % 1000 == 0 {
            return (um / 1000).into();
        }
        // A whole number of micrometres divided by a thousand is a finite number.
        Self::from_f64(mm.0.to_mm()).unwrap_or_else(|| 0.into())
    }
}

/// A day: `2026-05-02`.
#[derive(Clone, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub(super) struct Day(pub(super) Date);

impl TryFrom<String> for Day {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let date = text.parse::<Date>().ok().filter(|d| d.to_string() == text);
        date.map(Self)
            .ok_or_else(|| format!("“{text}” is no day such as 2026-05-02"))
    }
}

impl From<Day> for String {
    fn from(day: Day) -> Self {
        day.0.to_string()
    }
}

/// A time of the day: `09:30`.
#[derive(Clone, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub(super) struct Clock(pub(super) Time);

impl TryFrom<String> for Clock {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let time = text.parse::<Time>().ok();
        time.map(Self)
            .filter(|t| String::from(t.clone()) == text)
            .ok_or_else(|| format!("“{text}” is no time such as 09:30"))
    }
}

impl From<Clock> for String {
    fn from(clock: Clock) -> Self {
        format!("{:02}:{:02}", clock.0.hour(), clock.0.minute())
    }
}

/// A step: `slot-12`, `own-7`, `instead-12`, `standing-5` or `standing-5-at-12`.
#[derive(Clone, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub(super) struct Step(pub(super) StepRef);

impl TryFrom<String> for Step {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let step = match text.split_once('-') {
            Some(("slot", n)) => n.parse().map(|n| StepRef::Slot(SlotId(n))).ok(),
            Some(("own", n)) => n.parse().map(|n| StepRef::Own(OwnId(n))).ok(),
            Some(("instead", n)) => n.parse().map(|n| StepRef::Instead(SlotId(n))).ok(),
            Some(("standing", rest)) => standing(rest),
            _ => None,
        };
        step.map(Self)
            .ok_or_else(|| format!("“{text}” is no step such as slot-12 or own-7"))
    }
}

/// `5`, or `5-at-12`.
fn standing(rest: &str) -> Option<StepRef> {
    let (id, slot) = match rest.split_once("-at-") {
        None => (rest, None),
        Some((id, slot)) => (id, Some(SlotId(slot.parse().ok()?))),
    };
    Some(StepRef::Standing(StandingId(id.parse().ok()?), slot))
}

impl From<Step> for String {
    fn from(step: Step) -> Self {
        match step.0 {
            StepRef::Slot(id) => format!("slot-{id}"),
            StepRef::Own(id) => format!("own-{id}"),
            StepRef::Instead(id) => format!("instead-{id}"),
            StepRef::Standing(id, None) => format!("standing-{id}"),
            StepRef::Standing(id, Some(slot)) => format!("standing-{id}-at-{slot}"),
        }
    }
}
