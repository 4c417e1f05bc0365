//! The pages as they will be printed: one at a time on the desk, whole or true to size.

use egui::{
    Align2, ColorImage, Context, CornerRadius, Id, Key, Modifiers, Rect, Role, ScrollArea, Sense,
    Stroke, StrokeKind, TextureHandle, TextureOptions, Ui, UiBuilder, Vec2, WidgetInfo, pos2, vec2,
};

use super::PrintState;
use crate::layout::Sheet;
use crate::page::Page;
use crate::raster;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::card::well;
use crate::ui::widgets::{focus_ring, words};
use crate::units;
use crate::workbench::view::View;

/// Logical pixels in an inch: what the toolkit takes as true size.
const DPI: f64 = 96.0;
/// Textures of pages kept.
const KEPT: usize = 6;
/// Widest texture, in pixels.
const WIDEST: u32 = 2400;

/// How large a page is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Zoom {
    /// All of it.
    #[default]
    Whole,
    /// As wide as the desk.
    Width,
    /// As large as on paper.
    True,
}

impl Zoom {
    const fn next(self) -> Self {
        match self {
            Self::Whole => Self::Width,
            Self::Width => Self::True,
            Self::True => Self::Whole,
        }
    }

    const fn label(self) -> &'static str {
        match self {
            Self::Whole => "Whole page",
            Self::Width => "Full width",
            Self::True => "100 %",
        }
    }
}

/// Pages painted lately.
pub struct Pages {
    kept: Vec<(PageKey, TextureHandle)>,
    most: usize,
}

/// Which sheets, page, part of the page, width in pixels.
pub type PageKey = (u64, usize, usize, u32);

impl Default for Pages {
    fn default() -> Self {
        Self::keeping(KEPT)
    }
}

impl Pages {
    /// Forgets all, because something else is printed now.
    pub fn clear(&mut self) {
        self.kept.clear();
    }

    /// Keeping so many.
    pub const fn keeping(most: usize) -> Self {
        Self {
            kept: Vec::new(),
            most,
        }
    }

    /// A whole page.
    pub fn get(&mut self, ctx: &Context, key: PageKey, page: &Page) -> Option<TextureHandle> {
        let whole = units::Rect::new(units::Point::default(), page.size);
        self.part(ctx, key, page, whole)
    }

    /// A part of a page.
    pub fn part(
        &mut self,
        ctx: &Context,
        key: PageKey,
        page: &Page,
        part: units::Rect,
    ) -> Option<TextureHandle> {
        if let Some(i) = self.kept.iter().position(|(k, _)| *k == key) {
            let hit = self.kept.remove(i);
            self.kept.push(hit);
        } else {
            let image = raster::paint_part(page, part, key.3).ok()?;
            let size = [image.width() as usize, image.height() as usize];
            let colours = ColorImage::from_rgba_unmultiplied(size, image.as_raw());
            let texture =
                ctx.load_texture(format!("page {key:?}"), colours, TextureOptions::LINEAR);
            if self.kept.len() >= self.most {
                drop(self.kept.remove(0));
            }
            self.kept.push((key, texture));
        }
        self.kept.last().map(|(_, t)| t.clone())
    }
}

/// The sheet and page of a running number.
fn find(sheets: &[Sheet], mut n: usize) -> Option<(&Sheet, usize)> {
    for s in sheets {
        if n < s.pages.len() {
            return Some((s, n));
        }
        n -= s.pages.len();
    }
    None
}

/// Says why there is no page.
fn empty(ui: &Ui, view: &View<'_>, rect: Rect) {
    let there = view.counts.is_some_and(|c| c.needed > 0 && c.printed == 0);
    let says = match there {
        _ if view.laying => "Laying out…",
        true => "All of these tiles and cards are in stock: there is nothing to print.",
        false => "Choose what to print. It shows here as it will be on paper.",
    };
    let ink = theme::of(ui.ctx()).col.ink;
    let (p, font) = (ui.painter(), theme::regular(16.0));
    let g = words::lay_centred(p, says, font, ink, rect.width() - 32.0, 4);
    let top = rect.center() - vec2(0.0, g.size().y / 2.0);
    p.galley(top, g, ink);
}

/// Shows the desk with one page on it.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PrintState, rect: Rect) {
    let t = theme::of(ui.ctx());
    well(ui.painter(), &t, rect);
    let total: usize = desk.view.sheets.iter().map(|s| s.pages.len()).sum();
    state.page = state.page.min(total.saturating_sub(1));
    let Some((sheet, n)) = find(desk.view.sheets, state.page) else {
        empty(ui, desk.view, rect);
        return;
    };
    let head = Rect::from_min_size(
        rect.min + vec2(14.0, 8.0),
        vec2(rect.width() - 24.0, theme::CONTROL),
    );
    let narrow = rect.width() < 460.0;
    let whose = sheet
        .participant
        .and_then(|id| desk.view.club.participant(id));
    let title = match whose {
        Some(p) => format!("{}, {}", p.name, sheet.kind.label().to_lowercase()),
        None => sheet.kind.label().to_owned(),
    };
    let anew = if desk.view.laying {
        ", laying out…"
    } else {
        ""
    };
    let at = format!("page {} of {total}{anew}", state.page + 1);
    header(ui, state, head, (&title, &at), total);
    let below = Rect::from_min_max(
        pos2(
            rect.left() + 8.0,
            head.bottom() + if narrow { 50.0 } else { 8.0 },
        ),
        rect.max - vec2(8.0, 8.0),
    );
    desk.regions.add(below, Id::unique("page-preview"));
    page(ui, desk, state, below, &sheet.pages[n], total);
}

fn header(
    ui: &mut Ui,
    state: &mut PrintState,
    rect: Rect,
    (title, at): (&str, &str),
    total: usize,
) {
    let zoom = Button::new("page-zoom", state.zoom.label()).tip("How large the page is shown");
    let width = 126.0;
    let right = Rect::from_min_max(pos2(rect.right() - width, rect.top()), rect.max);
    if zoom.width(width).show_at(ui, right).clicked() {
        state.zoom = state.zoom.next();
    }
    let small = |x: f32| Rect::from_min_size(pos2(x, rect.top()), Vec2::splat(theme::CONTROL));
    let next = small(right.left() - 52.0);
    let before = small(next.left() - 52.0);
    let b = Button::new("page-next", "Next page")
        .icon_only(Icon::Right)
        .enabled(state.page + 1 < total);
    if b.show_at(ui, next).clicked() {
        state.page += 1;
    }
    let b = Button::new("page-before", "Page before")
        .icon_only(Icon::Left)
        .enabled(state.page > 0);
    if b.show_at(ui, before).clicked() {
        state.page -= 1;
    }
    let t = theme::of(ui.ctx());
    let room = if rect.width() < 436.0 {
        rect.translate(vec2(0.0, theme::CONTROL))
    } else {
        rect.with_max_x(before.left() - 10.0)
    };
    let (upper, lower) = room.split_top_bottom_at_fraction(0.55);
    words::line(
        ui.painter(),
        upper,
        Align2::LEFT_CENTER,
        title,
        theme::bold(17.0),
        t.col.ink,
    );
    words::line(
        ui.painter(),
        lower,
        Align2::LEFT_CENTER,
        at,
        theme::regular(14.0),
        t.col.soft,
    );
}

fn page(
    ui: &mut Ui,
    desk: &Desk<'_>,
    state: &mut PrintState,
    rect: Rect,
    page: &Page,
    total: usize,
) {
    let (w, h) = (page.size.w.to_mm() as f32, page.size.h.to_mm() as f32);
    if w <= 0.0 || h <= 0.0 {
        return;
    }
    let width = match state.zoom {
        Zoom::Whole => (rect.width() - 24.0).min((rect.height() - 16.0) * w / h),
        Zoom::Width => rect.width() - 34.0,
        Zoom::True => page.size.w.to_px(DPI) as f32,
    };
    let size = vec2(width, width * h / w);
    let scale = ui.ctx().pixels_per_point();
    let px = ((width * scale).round() as u32).clamp(16, WIDEST);
    let key = (desk.view.times_laid, state.page, 0, px);
    let Some(texture) = state.pages.get(ui.ctx(), key, page) else {
        return;
    };
    let mut child = ui.new_child(UiBuilder::new().id_salt("page").max_rect(rect));
    ScrollArea::both()
        .id_salt("page")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            let room = ui.available_size().max(size + vec2(12.0, 16.0));
            let (_, all) = ui.allocate_space(room);
            let place = Rect::from_center_size(all.center(), size);
            paint(ui, place, &texture);
            let r = ui.interact(place, Id::unique("page-preview"), Sense::click());
            let name = format!("{}, page {} of {total}", page.title, state.page + 1);
            r.widget_info(|| WidgetInfo::labeled(Role::Image, true, &name));
            focus_ring(ui, &r, place, 2);
            if r.has_focus() {
                turn(ui, state, r.id, total);
            }
        });
}

/// A page on the desk: paper with a soft shadow.
pub fn paint(ui: &Ui, place: Rect, texture: &TextureHandle) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let square = CornerRadius::same(1);
    p.add(t.shadow().as_shape(place, square));
    let whole = Rect::from_min_max(pos2(0.0, 0.0), pos2(1.0, 1.0));
    p.image(texture.id(), place, whole, theme::AS_IS);
    p.rect_stroke(
        place,
        square,
        Stroke::new(1.0, t.col.rule),
        StrokeKind::Outside,
    );
}

/// Arrow and page keys turn the pages.
fn turn(ui: &Ui, state: &mut PrintState, id: Id, total: usize) {
    regions::keep_arrows(ui, id);
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    if pressed(Key::ArrowRight) || pressed(Key::PageDown) || pressed(Key::ArrowDown) {
        state.page = (state.page + 1).min(total.saturating_sub(1));
    }
    if pressed(Key::ArrowLeft) || pressed(Key::PageUp) || pressed(Key::ArrowUp) {
        state.page = state.page.saturating_sub(1);
    }
}
