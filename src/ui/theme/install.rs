//! Gives the toolkit our letters, colours and distances.

use std::sync::Arc;

use egui::epaint::text::{FontData, FontDefinitions, FontTweak};
use egui::{Context, CornerRadius, FontFamily, Id, Stroke, TextStyle, Vec2};

use super::{CONTROL, LIFT, R_CONTROL, R_PANEL, Scheme, Theme, bold, regular};
use crate::assets;

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
