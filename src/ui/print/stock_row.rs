//! One kind of tile in stock: its picture and words, how many there are, and what became of others.

use egui::{
    Align2, CornerRadius, Id, Rect, Role, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, pos2,
    vec2,
};

use super::stock::SHARED;
use crate::model::edit::Edit;
use crate::model::manner::Form;
use crate::model::people::Participant;
use crate::model::stock::{Loss, Owned, StockEdit, TileKey};
use crate::ui::desk::Desk;
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::steps::{Steps, in_mm, stepper_at};
use crate::ui::widgets::words;
use crate::units::Length;

/// Widths of the controls at the right.
const COUNT: f32 = 172.0;
const LOST: f32 = 72.0;
const WORN: f32 = 108.0;
const GAP: f32 = 8.0;
/// Room for words that shows film and fastener too.
const ROOMY: f32 = 330.0;

/// One row.
pub struct Row<'a> {
    /// The kind.
    pub owned: &'a Owned,
    /// Whose.
    pub owner: Option<&'a Participant>,
    /// Which of how many.
    pub place: (usize, usize),
}

/// What gets the keyboard first in the row of a kind.
pub fn first(key: &TileKey) -> Id {
    count_id(key)
}

fn count_id(key: &TileKey) -> Id {
    Id::unique(("stock", format!("{key:?}")))
}

impl Row<'_> {
    /// Shows it.
    pub fn show(&self, ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
        let right = rect.right() - 8.0;
        let mid = rect.center().y;
        let at = |from_right: f32, width: f32| {
            let middle = pos2(right - from_right - width / 2.0, mid);
            Rect::from_center_size(middle, vec2(width, theme::CONTROL))
        };
        let (worn, lost) = (at(0.0, WORN), at(WORN + GAP, LOST));
        let count = at(WORN + LOST + 2.0 * GAP, COUNT);
        self.paint(ui, desk, rect, count.left() - 10.0);
        self.says(ui, rect.with_max_x(count.left() - 10.0));
        self.count(ui, desk, count);
        self.gone(ui, desk, lost, (Loss::Lost, "Lost"));
        self.gone(ui, desk, worn, (Loss::Worn, "Worn out"));
    }

    fn count(&self, ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
        let label = format!("Counted: {}", self.called());
        let s = Steps {
            id: count_id(&self.owned.key),
            label: &label,
            unit: "",
            range: 0..=10_000,
            step: 1,
        };
        if let Some(n) = stepper_at(ui, desk.drafts, &s, self.owned.count, rect) {
            let key = self.owned.key.clone();
            desk.edit(Edit::Stock(StockEdit::Counted(key, n)));
        }
    }

    fn gone(&self, ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, (loss, label): (Loss, &str)) {
        let name = format!("{label}: {}", self.called());
        let tip = match loss {
            Loss::Lost => "One of these is gone",
            Loss::Worn => "One of these is split, cloudy or sharp and was thrown away",
        };
        let b = Button::new((count_id(&self.owned.key), label), label)
            .name(&name)
            .enabled(self.owned.count > 0)
            .tip(tip);
        if b.show_at(ui, rect).clicked() {
            let key = self.owned.key.clone();
            desk.edit(Edit::Stock(StockEdit::Gone(key, loss)));
        }
    }

    /// The words on the tile and whose it is.
    fn called(&self) -> String {
        let owner = self.owner.map_or(SHARED, |p| p.name.as_str());
        format!("{}, {owner}", self.words())
    }

    fn words(&self) -> &str {
        match self.owned.key.face.label.trim() {
            "" => "Blank tile",
            label => label,
        }
    }

    /// All of it for a screen reader, and for the mouse where it is cut off.
    fn says(&self, ui: &Ui, rect: Rect) {
        let id = Id::unique(("stock-kind", count_id(&self.owned.key)));
        let r = ui.interact(rect, id, Sense::hover());
        let (n, of) = self.place;
        let words = format!("{}, {}, {n} of {of}", self.called(), self.how());
        r.widget_info(|| WidgetInfo::labeled(Role::Label, true, &words));
        r.on_hover_text(self.how());
    }

    /// Size, and what became of others; film and fastener too.
    fn how(&self) -> String {
        let face = &self.owned.key.face;
        let film = match face.film > Length::ZERO {
            true => format!("{} clear edge", in_mm(face.film)),
            false => "no film".to_owned(),
        };
        let (half, dot) = (face.half.words().0, in_mm(face.dot));
        format!("{}, {film}, {half} dot of {dot}", self.in_short())
    }

    /// Size, form where it is no drawing, and what became of others.
    fn in_short(&self) -> String {
        let face = &self.owned.key.face;
        let size = face.printed();
        let mut all = vec![match size.w == size.h {
            true => in_mm(size.w),
            false => format!("{} × {}", in_mm(size.w), in_mm(size.h)),
        }];
        if !matches!(face.form, Form::Drawing) && !face.label.is_empty() {
            all.push(face.form.label().to_lowercase());
        }
        if self.owned.lost > 0 {
            all.push(format!("{} lost", self.owned.lost));
        }
        if self.owned.worn > 0 {
            all.push(format!("{} worn out", self.owned.worn));
        }
        all.join(", ")
    }

    fn paint(&self, ui: &Ui, desk: &mut Desk<'_>, rect: Rect, right: f32) {
        let (t, p) = (theme::of(ui.ctx()), ui.painter());
        let edge = Stroke::new(t.line(), t.col.rule);
        let corner = CornerRadius::same(theme::R_CONTROL);
        p.rect(rect, corner, t.col.panel, edge, StrokeKind::Inside);
        let mid = pos2(rect.left() + 32.0, rect.center().y);
        let picture = Rect::from_center_size(mid, Vec2::splat(48.0));
        plate(p, &t, picture);
        let face = &self.owned.key.face;
        let figure = self.owner.map_or_else(Eyes::default, Eyes::of);
        if !face.symbol.as_str().is_empty() {
            let pictures = &mut desk.pictures;
            pictures.symbol(p, picture.shrink(4.0), &face.symbol, figure);
        }
        let left = pos2(picture.right() + 12.0, rect.top());
        let text = Rect::from_min_max(left, pos2(right, rect.bottom()));
        let (upper, lower) = text.split_top_bottom_at_fraction(0.52);
        let (bold, plain) = (theme::bold(16.0), theme::regular(14.0));
        words::line(p, upper, Align2::LEFT_BOTTOM, self.words(), bold, t.col.ink);
        let how = match text.width() < ROOMY {
            true => self.in_short(),
            false => self.how(),
        };
        words::line(p, lower, Align2::LEFT_TOP, &how, plain, t.col.soft);
    }
}
