//! Buttons: plain, the main one of a place, and quiet ones without an edge.

use egui::{
    Align2, Color32, CornerRadius, CursorIcon, Id, Rect, Response, Role, Sense, Stroke, StrokeKind,
    Ui, Vec2, WidgetInfo, vec2,
};

use super::{focus_ring, words};
use crate::ui::icons::{self, Icon};
use crate::ui::theme;

/// How much a button asks for attention.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// An edge on the panel.
    Plain,
    /// Filled with the accent: one in a place.
    Main,
    /// No edge until the mouse is on it.
    Quiet,
    /// An edge, and filled dark while chosen.
    Chosen(bool),
}

/// A button to be shown.
pub struct Button<'a> {
    id: Id,
    label: &'a str,
    name: &'a str,
    icon: Option<Icon>,
    icon_only: bool,
    weight: Weight,
    enabled: bool,
    tip: &'a str,
    role: Role,
    left: bool,
    height: f32,
    width: Option<f32>,
    trailing: &'a str,
}

impl<'a> Button<'a> {
    /// A plain button with words on it, which are also its name.
    pub fn new(id: impl std::hash::Hash + std::fmt::Debug, label: &'a str) -> Self {
        Self {
            id: Id::unique(("button", id)),
            label,
            name: label,
            icon: None,
            icon_only: false,
            weight: Weight::Plain,
            enabled: true,
            tip: "",
            role: Role::Button,
            left: false,
            height: theme::CONTROL,
            width: None,
            trailing: "",
        }
    }

    /// With another name than its words, where several have the same words.
    pub const fn name(mut self, name: &'a str) -> Self {
        self.name = name;
        self
    }

    /// With a sign before the words.
    pub const fn icon(mut self, icon: Icon) -> Self {
        self.icon = Some(icon);
        self
    }

    /// With a sign alone; the words stay its name and its tip.
    pub const fn icon_only(mut self, icon: Icon) -> Self {
        self.icon = Some(icon);
        self.icon_only = true;
        self
    }

    /// Of another weight.
    pub const fn weight(mut self, weight: Weight) -> Self {
        self.weight = weight;
        self
    }

    /// Usable or not.
    pub const fn enabled(mut self, enabled: bool) -> Self {
        self.enabled = enabled;
        self
    }

    /// What it does, shown when the mouse rests on it.
    pub const fn tip(mut self, tip: &'a str) -> Self {
        self.tip = tip;
        self
    }

    /// What it is to a screen reader, such as a radio button.
    pub const fn role(mut self, role: Role) -> Self {
        self.role = role;
        self
    }

    /// With its words at the left.
    pub const fn left(mut self) -> Self {
        self.left = true;
        self
    }

    /// Of a given height.
    pub const fn height(mut self, height: f32) -> Self {
        self.height = height;
        self
    }

    /// Of a given width.
    pub const fn width(mut self, width: f32) -> Self {
        self.width = Some(width);
        self
    }

    /// With soft words at the right, such as a key.
    pub const fn trailing(mut self, trailing: &'a str) -> Self {
        self.trailing = trailing;
        self
    }

    /// The width it needs.
    pub fn needs(&self, ui: &Ui) -> f32 {
        let text = |s: &str, size| {
            ui.painter()
                .layout_no_wrap(s.to_owned(), theme::bold(size), Color32::PLACEHOLDER)
                .size()
                .x
        };
        if self.icon_only {
            return self.height.max(theme::CONTROL);
        }
        let icon = if self.icon.is_some() { 30.0 } else { 0.0 };
        let trail = if self.trailing.is_empty() {
            0.0
        } else {
            text(self.trailing, 14.0) + 24.0
        };
        (text(self.label, self.size()) + icon + trail + 32.0)
            .ceil()
            .max(theme::CONTROL)
    }

    /// Shows it where the layout stands.
    pub fn show(self, ui: &mut Ui) -> Response {
        let width = self.width.unwrap_or_else(|| self.needs(ui));
        let (_, rect) = ui.allocate_space(vec2(width, self.height));
        self.show_at(ui, rect)
    }

    /// Shows it in a rectangle.
    pub fn show_at(self, ui: &mut Ui, rect: Rect) -> Response {
        let sense = if self.enabled {
            Sense::click()
        } else {
            Sense::hover()
        };
        let r = ui.interact(rect, self.id, sense);
        let enabled = self.enabled && ui.is_enabled();
        let (role, label) = (self.role, self.name);
        let chosen = match self.weight {
            Weight::Chosen(on) => Some(on),
            _ => None,
        };
        r.widget_info(|| {
            let mut info = WidgetInfo::labeled(role, enabled, label);
            info.selected = chosen;
            info
        });
        if ui.is_rect_visible(rect) {
            self.paint(ui, rect, &r, enabled);
        }
        // Also out of sight: the keyboard brings it into sight.
        focus_ring(ui, &r, rect, self.radius());
        let tip = if self.tip.is_empty() && self.icon_only {
            self.label
        } else {
            self.tip
        };
        let r = if enabled {
            r.on_hover_cursor(CursorIcon::PointingHand)
        } else {
            r
        };
        if tip.is_empty() {
            r
        } else {
            r.on_hover_text(tip)
        }
    }

    const fn size(&self) -> f32 {
        if matches!(self.weight, Weight::Main) && self.height > 50.0 {
            18.0
        } else {
            16.0
        }
    }

    const fn radius(&self) -> u8 {
        theme::R_CONTROL
    }

    fn colours(&self, ui: &Ui, r: &Response, enabled: bool) -> (Color32, Stroke, Color32) {
        let t = theme::of(ui.ctx());
        let col = t.col;
        let over = r.hovered() || r.is_pointer_button_down_on();
        let ink = if enabled { col.ink } else { col.edge };
        match self.weight {
            Weight::Main if enabled => {
                let edge = if over {
                    Stroke::new(2.0, col.ink)
                } else {
                    Stroke::NONE
                };
                (col.accent, edge, col.on_accent)
            }
            Weight::Main => (col.well, t.edge(), col.soft),
            Weight::Chosen(true) => (col.peg, Stroke::NONE, col.on_peg),
            Weight::Plain | Weight::Chosen(false) => {
                let edge = if over && enabled {
                    Stroke::new(2.0, col.ink)
                } else {
                    t.edge()
                };
                (
                    if over && enabled {
                        col.card_or_panel()
                    } else {
                        col.panel
                    },
                    edge,
                    ink,
                )
            }
            Weight::Quiet => {
                let ground = if over && enabled {
                    col.panel
                } else {
                    Color32::TRANSPARENT
                };
                let edge = if over && enabled {
                    t.edge()
                } else {
                    Stroke::NONE
                };
                (ground, edge, ink)
            }
        }
    }

    fn paint(&self, ui: &Ui, rect: Rect, r: &Response, enabled: bool) {
        let (ground, edge, ink) = self.colours(ui, r, enabled);
        let p = ui.painter();
        p.rect(
            rect,
            CornerRadius::same(self.radius()),
            ground,
            edge,
            StrokeKind::Inside,
        );
        if self.icon_only {
            if let Some(icon) = self.icon {
                icons::paint(p, icon, icons::square(rect.center(), 24.0), ink);
            }
            return;
        }
        let font = theme::bold(self.size());
        let icon_width = if self.icon.is_some() { 30.0 } else { 0.0 };
        let room = rect.width() - 20.0 - icon_width;
        let g = words::lay(p, self.label, font, ink, room, 1);
        let all = Vec2::new(g.size().x + icon_width, g.size().y);
        let align = if self.left {
            Align2::LEFT_CENTER
        } else {
            Align2::CENTER_CENTER
        };
        let place = align.align_size_within_rect(all, rect.shrink2(vec2(12.0, 0.0)));
        if let Some(icon) = self.icon {
            let mid = place.left_center() + vec2(11.0, 0.0);
            icons::paint(p, icon, icons::square(mid, 22.0), ink);
        }
        p.galley(place.min + vec2(icon_width, 0.0), g, ink);
        if !self.trailing.is_empty() {
            let soft = theme::of(ui.ctx()).col.soft;
            let inner = rect.shrink2(vec2(14.0, 0.0));
            words::line(
                p,
                inner,
                Align2::RIGHT_CENTER,
                self.trailing,
                theme::regular(14.0),
                soft,
            );
        }
    }
}

impl theme::Palette {
    /// A control under the mouse: a touch lighter than the panel where that is possible.
    pub fn card_or_panel(&self) -> Color32 {
        if self.ink == self.card_ink {
            self.card
        } else {
            self.panel
        }
    }
}
