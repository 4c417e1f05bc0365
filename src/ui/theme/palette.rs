//! The colours of each scheme. No other file makes a colour.

use egui::Color32;

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

pub(super) const LIGHT: Palette = Palette {
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

pub(super) const DARK: Palette = Palette {
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

pub(super) const CONTRAST: Palette = Palette {
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

pub(super) const NIGHT: Palette = Palette {
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

/// The light in which pictures are seen at night: as the paper of a card.
pub(super) const LAMPLIGHT: Color32 = c(0xC9B38C);

#[cfg(test)]
mod tests {
    use egui::Color32;

    use crate::ui::theme::{Scheme, Theme};
    use crate::units::colour::Rgb;

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
