//! Every colour and size of the window, in three schemes. No other file makes a colour.
//!
//! Contrast of words on their ground is tested against WCAG 2.2 (1.4.3, 1.4.6 and 1.4.11).

use std::sync::Arc;

use egui::epaint::text::{FontData, FontDefinitions, FontTweak};
use egui::{
    Color32, Context, CornerRadius, FontFamily, FontId, Id, Shadow, Stroke, TextStyle, Vec2,
};

use crate::assets;
use crate::units::colour::Rgb;
use crate::workbench::command::Theme as Chosen;

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

/// The colours of one scheme, each named for what it is used on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Palette {
    /// Behind everything.
    pub ground: Color32,
    /// A raised area, a control.
    pub panel: Color32,
    /// A hollow: the tray, the desk under a page.
    pub well: Color32,
    /// Words and outlines.
    pub ink: Color32,
    /// Words of less weight.
    pub soft: Color32,
    /// A card, a mark's plate: light in every scheme.
    pub card: Color32,
    /// Words on a card.
    pub card_ink: Color32,
    /// Words of less weight on a card.
    pub card_soft: Color32,
    /// The main action, "you are here", focus.
    pub accent: Color32,
    /// Words on the accent.
    pub on_accent: Color32,
    /// A touch of accent as ground.
    pub tint: Color32,
    /// The line round a control.
    pub edge: Color32,
    /// The rope.
    pub rope: Color32,
    /// The light along it.
    pub rope_light: Color32,
    /// A card's clear edge.
    pub seal: Color32,
    /// The line round it.
    pub seal_line: Color32,
    /// Lines that only part things.
    pub rule: Color32,
    /// Ground of a tile lying face down.
    pub down: Color32,
    /// Its dashes.
    pub down_line: Color32,
    /// A peg, a tab: the darkest thing.
    pub peg: Color32,
    /// Words on it.
    pub on_peg: Color32,
    /// A soft shadow, or none.
    pub shadow: Color32,
    /// Over all that must wait.
    pub veil: Color32,
}

const fn c(rgb: u32) -> Color32 {
    Color32::from_rgb((rgb >> 16) as u8, (rgb >> 8) as u8, rgb as u8)
}

const LIGHT: Palette = Palette {
    ground: c(0xF4EDDF),
    panel: c(0xFBF7EE),
    well: c(0xE8DDC9),
    ink: c(0x10383B),
    soft: c(0x44605F),
    card: c(0xFFFFFF),
    card_ink: c(0x10383B),
    card_soft: c(0x44605F),
    accent: c(0x8A2C50),
    on_accent: c(0xFFFFFF),
    tint: c(0xF3DDE2),
    edge: c(0x727A6F),
    rope: c(0x3B7476),
    rope_light: c(0x8FB8B4),
    seal: c(0xEAF1EC),
    seal_line: c(0x9DB3AC),
    rule: c(0xCDBFA6),
    down: c(0xEFE6D4),
    down_line: c(0x877C62),
    peg: c(0x10383B),
    on_peg: c(0xFFFFFF),
    shadow: Color32::from_rgba_premultiplied(2, 6, 6, 26),
    veil: Color32::from_rgba_premultiplied(8, 28, 30, 128),
};

const DARK: Palette = Palette {
    ground: c(0x13211F),
    panel: c(0x1C2E2C),
    well: c(0x0C1715),
    ink: c(0xEFE8DA),
    soft: c(0xB4C3BD),
    card: c(0xF7F2E7),
    card_ink: c(0x10383B),
    card_soft: c(0x44605F),
    accent: c(0xF2A9C1),
    on_accent: c(0x33101F),
    tint: c(0x43272F),
    edge: c(0x7F9791),
    rope: c(0x6FA6A3),
    rope_light: c(0xB9D6D2),
    seal: c(0x3A4F4B),
    seal_line: c(0x7F9791),
    rule: c(0x3A4F4B),
    down: c(0x22352F),
    down_line: c(0x7F9791),
    peg: c(0xEFE8DA),
    on_peg: c(0x10302F),
    shadow: Color32::from_rgba_premultiplied(0, 0, 0, 90),
    veil: Color32::from_rgba_premultiplied(0, 0, 0, 160),
};

const CONTRAST: Palette = Palette {
    ground: c(0x000000),
    panel: c(0x000000),
    well: c(0x000000),
    ink: c(0xFFFFFF),
    soft: c(0xFFFFFF),
    card: c(0xFFFFFF),
    card_ink: c(0x000000),
    card_soft: c(0x000000),
    accent: c(0xFFD83D),
    on_accent: c(0x000000),
    tint: c(0x000000),
    edge: c(0xFFFFFF),
    rope: c(0xFFFFFF),
    rope_light: c(0xFFFFFF),
    seal: c(0x000000),
    seal_line: c(0xFFFFFF),
    rule: c(0xFFFFFF),
    down: c(0x000000),
    down_line: c(0xFFFFFF),
    peg: c(0xFFFFFF),
    on_peg: c(0x000000),
    shadow: Color32::TRANSPARENT,
    veil: Color32::from_rgba_premultiplied(0, 0, 0, 200),
};

const NIGHT: Palette = Palette {
    ground: c(0x1A130D),
    panel: c(0x251B13),
    well: c(0x120D08),
    ink: c(0xE2CDA8),
    soft: c(0xB59E7C),
    card: c(0xC9B38C),
    card_ink: c(0x17100A),
    card_soft: c(0x3B2D1D),
    accent: c(0xE39A6B),
    on_accent: c(0x1A130D),
    tint: c(0x4A2F1F),
    edge: c(0x8F7A5C),
    rope: c(0x95815F),
    rope_light: c(0xB9A47F),
    seal: c(0x4A3B29),
    seal_line: c(0x8F7A5C),
    rule: c(0x4A3B29),
    down: c(0x2C2117),
    down_line: c(0x8F7A5C),
    peg: c(0xE2CDA8),
    on_peg: c(0x1A130D),
    shadow: Color32::from_rgba_premultiplied(0, 0, 0, 90),
    veil: Color32::from_rgba_premultiplied(0, 0, 0, 160),
};

/// A picture painted in its own colours.
pub const AS_IS: Color32 = Color32::WHITE;
/// The light in which pictures are seen at night: as the paper of a card.
const LAMPLIGHT: Color32 = c(0xC9B38C);

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

/// Puts a theme in use; called before a frame is built, and only when it changed.
pub fn install(ctx: &Context, theme: Theme) {
    ctx.data_mut(|d| d.insert_temp(Id::unique("daystrand-theme"), theme));
    ctx.set_theme(if theme.scheme == Scheme::Light {
        egui::Theme::Light
    } else {
        egui::Theme::Dark
    });
    ctx.all_styles_mut(|s| style(s, &theme));
}

/// Loads the bundled faces; once, before the first frame.
pub fn load_fonts(ctx: &Context) {
    let mut fonts = FontDefinitions::default();
    for (name, bytes, scale) in [
        ("andika", assets::ANDIKA_REGULAR, 1.0),
        ("andika-bold", assets::ANDIKA_BOLD, 1.0),
        // Letters that Andika has not: Arabic, for typing a story in a second language. They are
        // small on their body.
        ("harmattan", assets::HARMATTAN_REGULAR, 1.35),
    ] {
        let tweak = FontTweak {
            scale,
            ..FontTweak::default()
        };
        let data = Arc::new(FontData::from_static(bytes).tweak(tweak));
        fonts.font_data.insert(name.to_owned(), data);
    }
    let rest = fonts
        .families
        .get(&FontFamily::Proportional)
        .cloned()
        .unwrap_or_default();
    let family = |first: &str| {
        let mut all = vec![first.to_owned(), "harmattan".to_owned()];
        all.extend(rest.iter().cloned());
        all
    };
    fonts
        .families
        .insert(FontFamily::Proportional, family("andika"));
    fonts
        .families
        .insert(FontFamily::Name("bold".into()), family("andika-bold"));
    ctx.set_fonts(fonts);
}

fn style(s: &mut egui::Style, t: &Theme) {
    let col = &t.col;
    s.text_styles = [
        (TextStyle::Heading, bold(24.0)),
        (TextStyle::Body, regular(16.0)),
        (TextStyle::Button, regular(16.0)),
        (TextStyle::Small, regular(14.0)),
        (TextStyle::Monospace, regular(16.0)),
    ]
    .into();
    s.animation_time = if t.still { 0.0 } else { LIFT };
    if t.still {
        s.scroll_animation = egui::style::ScrollAnimation::none();
    }
    s.interaction.selectable_labels = false;
    s.interaction.tooltip_delay = 0.6;
    spacing(&mut s.spacing);
    let v = &mut s.visuals;
    v.dark_mode = t.scheme != Scheme::Light;
    v.override_text_color = None;
    v.weak_text_color = Some(col.soft);
    v.weak_text_alpha = 1.0;
    v.panel_fill = col.ground;
    v.window_fill = col.panel;
    v.extreme_bg_color = col.panel;
    v.text_edit_bg_color = Some(col.panel);
    v.faint_bg_color = col.well;
    v.window_stroke = t.edge();
    v.window_corner_radius = CornerRadius::same(R_PANEL);
    v.menu_corner_radius = CornerRadius::same(R_PANEL);
    v.popup_shadow = t.lifted();
    v.window_shadow = t.lifted();
    v.selection.bg_fill = col.tint;
    v.selection.stroke = Stroke::new(1.5, col.accent);
    v.text_cursor.stroke = Stroke::new(2.0, col.accent);
    v.text_cursor.blink = false;
    v.hyperlink_color = col.accent;
    for w in [
        &mut v.widgets.noninteractive,
        &mut v.widgets.inactive,
        &mut v.widgets.hovered,
        &mut v.widgets.active,
        &mut v.widgets.open,
    ] {
        w.bg_fill = col.edge;
        w.weak_bg_fill = col.panel;
        w.bg_stroke = t.edge();
        w.fg_stroke = Stroke::new(1.5, col.ink);
        w.corner_radius = CornerRadius::same(R_CONTROL);
        w.expansion = 0.0;
    }
}

fn spacing(s: &mut egui::style::Spacing) {
    s.item_spacing = Vec2::new(12.0, 8.0);
    s.interact_size = Vec2::new(CONTROL, CONTROL);
    s.button_padding = Vec2::new(16.0, 8.0);
    s.menu_margin = egui::Margin::same(8);
    s.tooltip_width = 320.0;
    s.scroll.floating = false;
    s.scroll.foreground_color = false;
    s.scroll.bar_width = 8.0;
    s.scroll.handle_min_length = 44.0;
    s.scroll.bar_inner_margin = 4.0;
    s.scroll.bar_outer_margin = 2.0;
}

/// A colour of paper as one of the screen.
pub fn from_rgb(rgb: Rgb) -> Color32 {
    Color32::from_rgb(rgb.0, rgb.1, rgb.2)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ratio(a: Color32, b: Color32) -> f64 {
        Rgb(a.r(), a.g(), a.b()).contrast(Rgb(b.r(), b.g(), b.b()))
    }

    /// WCAG 2.2: 1.4.3 asks 4.5 for words, 1.4.11 asks 3 for the lines of controls.
    #[test]
    fn words_and_lines_are_told_from_their_ground() {
        for scheme in Scheme::ALL {
            let p = Theme::new(scheme, false).col;
            for (words, on, least) in [
                (p.ink, p.ground, 7.0),
                (p.ink, p.panel, 7.0),
                (p.ink, p.well, 7.0),
                (p.soft, p.ground, 4.5),
                (p.soft, p.panel, 4.5),
                (p.soft, p.well, 4.5),
                (p.card_ink, p.card, 7.0),
                (p.card_soft, p.card, 4.5),
                (p.accent, p.ground, 4.5),
                (p.accent, p.panel, 4.5),
                (p.accent, p.tint, 4.5),
                (p.on_accent, p.accent, 4.5),
                (p.on_peg, p.peg, 7.0),
                (p.edge, p.ground, 3.0),
                (p.edge, p.panel, 3.0),
                (p.rope, p.ground, 3.0),
                (p.down_line, p.down, 3.0),
            ] {
                assert!(ratio(words, on) >= least, "{scheme:?} {words:?} on {on:?}");
            }
        }
    }
}
