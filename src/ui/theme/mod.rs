//! Every colour and size of the window, in three schemes. No other file makes a colour.
//!
//! Contrast of words on their ground is tested against WCAG 2.2 (1.4.3, 1.4.6 and 1.4.11).

mod install;
mod palette;

use egui::{Color32, Context, FontFamily, FontId, Id, Shadow, Stroke};

use crate::units::colour::Rgb;
use crate::workbench::command::Theme as Chosen;

pub use install::{install, load_fonts};
pub use palette::Palette;
use palette::{CONTRAST, DARK, LAMPLIGHT, LIGHT, NIGHT};

/// Height of an ordinary control, and the least side of anything that can be hit.
pub const CONTROL: f32 = 44.0;
/// Height of the one main action of a place.
pub const MAIN: f32 = 56.0;
/// Distance from the window's edge.
pub const MARGIN: f32 = 16.0;
/// Between cards on the strand.
pub const CARD_GAP: f32 = 20.0;
/// Side of a card on the strand.
pub const CARD: f32 = 144.0;
/// Side of a card in a low window.
pub const CARD_LOW: f32 = 104.0;
/// From one row of cards to the next: room for tabs, the return run and names of parts.
pub const BETWEEN_ROWS: f32 = 80.0;
/// Thickness of the rope.
pub const ROPE: f32 = 6.0;
/// Corner of a control.
pub const R_CONTROL: u8 = 12;
/// Corner of a card's clear edge.
pub const R_CARD: u8 = 14;
/// Corner of the paper in a card.
pub const R_PAPER: u8 = 7;
/// Corner of a panel.
pub const R_PANEL: u8 = 16;
/// Corner of a peg.
pub const R_PEG: u8 = 8;

/// Seconds a card takes to slide aside.
const SLIDE: f32 = 0.16;
/// Seconds a card takes to lift.
const LIFT: f32 = 0.09;

/// Which set of colours.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Scheme {
    /// Warm paper.
    #[default]
    Light,
    /// For a dim room.
    Dark,
    /// Black, white and one yellow.
    Contrast,
    /// Dim and warm, pictures too, for going through a day in the evening.
    Night,
}

impl Scheme {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Light, Self::Dark, Self::Contrast, Self::Night];

    /// What was chosen, or how the system is set.
    pub fn of(chosen: Chosen, system: Option<egui::Theme>) -> Self {
        match (chosen, system) {
            (Chosen::Dark, _) | (Chosen::System, Some(egui::Theme::Dark)) => Self::Dark,
            (Chosen::HighContrast, _) => Self::Contrast,
            (Chosen::Light | Chosen::System, _) => Self::Light,
        }
    }
}

/// What can be chosen, as shown.
pub const fn label(chosen: Chosen) -> &'static str {
    match chosen {
        Chosen::System => "Colours as the system",
        Chosen::Light => "Light",
        Chosen::Dark => "Dark",
        Chosen::HighContrast => "High contrast",
    }
}

/// A picture painted in its own colours.
pub const AS_IS: Color32 = Color32::WHITE;
/// How the window looks now.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Theme {
    /// The chosen scheme.
    pub scheme: Scheme,
    /// Nothing slides or fades.
    pub still: bool,
    /// The scheme's colours.
    pub col: Palette,
}

impl Theme {
    /// The theme of a scheme.
    pub const fn new(scheme: Scheme, still: bool) -> Self {
        let col = match scheme {
            Scheme::Light => LIGHT,
            Scheme::Dark => DARK,
            Scheme::Contrast => CONTRAST,
            Scheme::Night => NIGHT,
        };
        Self { scheme, still, col }
    }

    /// The light in which pictures are seen.
    pub const fn light(&self) -> Color32 {
        match self.scheme {
            Scheme::Night => LAMPLIGHT,
            _ => AS_IS,
        }
    }

    /// Seconds a card takes to slide.
    pub const fn slide(&self) -> f32 {
        if self.still { 0.0 } else { SLIDE }
    }

    /// Seconds a card takes to lift.
    pub const fn lift(&self) -> f32 {
        if self.still { 0.0 } else { LIFT }
    }

    /// The line round a control, thicker where contrast matters most.
    pub fn edge(&self) -> Stroke {
        Stroke::new(self.line(), self.col.edge)
    }

    /// The line round a card.
    pub fn seal_line(&self) -> Stroke {
        Stroke::new(self.line(), self.col.seal_line)
    }

    /// Width of a control's line.
    pub fn line(&self) -> f32 {
        if self.scheme == Scheme::Contrast {
            2.5
        } else {
            1.5
        }
    }

    /// The shadow under a card lying on the ground.
    pub const fn shadow(&self) -> Shadow {
        Shadow {
            offset: [0, 3],
            blur: 9,
            spread: 0,
            color: self.col.shadow,
        }
    }

    /// The shadow under a lifted card, a menu, a dialog.
    pub const fn lifted(&self) -> Shadow {
        Shadow {
            offset: [0, 12],
            blur: 22,
            spread: 0,
            color: self.col.shadow,
        }
    }
}

/// Andika at a size.
pub fn regular(size: f32) -> FontId {
    FontId::new(size, FontFamily::Proportional)
}

/// Andika bold at a size.
pub fn bold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name("bold".into()))
}

/// The theme in use.
pub fn of(ctx: &Context) -> Theme {
    ctx.data(|d| d.get_temp(Id::unique("daystrand-theme")))
        .unwrap_or(Theme::new(Scheme::Light, false))
}

/// A colour of paper as one of the screen.
pub fn from_rgb(rgb: Rgb) -> Color32 {
    Color32::from_rgb(rgb.0, rgb.1, rgb.2)
}
