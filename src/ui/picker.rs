//! Picks a symbol or a mark from all there are, on a card over the window.

use egui::{
    CornerRadius, CursorIcon, Frame, Id, Key, Margin, Modal, Modifiers, Rect, Role, ScrollArea,
    Stroke, StrokeKind, Ui, Vec2, WidgetInfo, vec2,
};

use super::drawing::Use;
use super::people::standing::Which;
use super::pictures::Pictures;
use super::regions;
use super::theme;
use super::widgets::button::Button;
use super::widgets::choose::select;
use super::widgets::field::live;
use super::widgets::{focus_ring, words};
use crate::model::club::Club;
use crate::model::ids::{ActivityId, ParticipantId, PictureId, SymbolId};
use crate::symbols::lexicon::{Lexicon, lexicon};
use crate::symbols::library::{Symbol, library};
use crate::symbols::own;

/// For what something is picked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum For {
    /// An activity's picture.
    Activity(ActivityId),
    /// A participant's mark.
    Mark(ParticipantId),
    /// What an own picture stands for.
    OwnPicture(PictureId),
    /// Something that is always different for a participant.
    Standing(ParticipantId, Which),
    /// A drawing being made.
    Drawing(Use),
}

/// A pick in progress.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picker {
    /// For what.
    pub target: For,
    search: String,
    group: Option<String>,
    at: usize,
    focus: bool,
}

/// What came of it.
pub enum Picked {
    /// Not yet.
    Not,
    /// Put away.
    Away,
    /// This one.
    This(SymbolId),
}

impl Picker {
    /// Begins.
    pub const fn new(target: For) -> Self {
        Self {
            target,
            search: String::new(),
            group: None,
            at: 0,
            focus: true,
        }
    }

    const fn marks(&self) -> bool {
        matches!(self.target, For::Mark(_))
    }

    /// Whose eyes the picture is for.
    const fn who(&self) -> Option<ParticipantId> {
        match self.target {
            For::Activity(_) | For::OwnPicture(_) | For::Drawing(_) => None,
            For::Mark(id) | For::Standing(id, _) => Some(id),
        }
    }

    fn items(&self, club: &Club, names: &Lexicon) -> Vec<(SymbolId, String)> {
        let wanted = self.search.trim();
        if self.marks() {
            let found = names.search_marks(wanted).into_iter();
            return found
                .map(|s| (s.id.clone(), names.mark(&s.id).to_owned()))
                .collect();
        }
        let of_group = |s: &&Symbol| self.group.as_ref().is_none_or(|g| *g == s.group);
        let found = names.search(wanted).into_iter().filter(of_group);
        let built_in = found.map(|s| (s.id.clone(), names.label(&s.id).to_owned()));
        let own = own::search(club, self.who(), wanted).into_iter();
        // An own picture stands for none of its kind.
        let stood_for = matches!(
            self.target,
            For::OwnPicture(_) | For::Drawing(Use::StandsFor)
        );
        let any = self.group.is_none() && !stood_for;
        let own = own.filter(|_| any);
        own.map(|p| (p.symbol(), p.name.clone()))
            .chain(built_in)
            .collect()
    }

    /// Shows the card.
    pub fn show(&mut self, ui: &Ui, pictures: &mut Pictures, club: &Club) -> Picked {
        let names = lexicon(&club.rules.words);
        let t = theme::of(ui.ctx());
        let window = ui.ctx().content_rect();
        let size = vec2(
            (window.width() - 60.0).min(760.0),
            (window.height() - 60.0).min(560.0),
        );
        let frame = Frame::new()
            .fill(t.col.panel)
            .stroke(t.edge())
            .corner_radius(26)
            .shadow(t.lifted())
            .inner_margin(Margin::same(20));
        let name = if self.marks() {
            "Pick a mark"
        } else {
            "Pick a picture"
        };
        let id = Id::unique("picker");
        let area = Modal::default_area(id)
            .accessible_name(name)
            .role(Role::Dialog);
        let out = Modal::new(id)
            .area(area)
            .frame(frame)
            .backdrop_color(t.col.veil)
            .show(ui.ctx(), |ui| {
                ui.set_width(size.x - 40.0);
                words::heading(ui, name, 24.0);
                let (_, field) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
                let r = live(
                    ui,
                    Id::unique("picker-search"),
                    field,
                    "Look for it by word",
                    &mut self.search,
                    0.0,
                );
                if std::mem::take(&mut self.focus) {
                    r.request_focus();
                }
                if !self.marks() {
                    ui.add_space(2.0);
                    self.groups(ui, names);
                }
                let down = r.has_focus()
                    && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::ArrowDown));
                let picked = self.grid(
                    ui,
                    pictures,
                    (club, names),
                    (size.y - if self.marks() { 200.0 } else { 252.0 }, down),
                );
                ui.add_space(6.0);
                let away = Button::new("picker-away", "Cancel").show(ui).clicked();
                if away { Picked::Away } else { picked }
            });
        let close = out.should_close();
        if close && matches!(out.inner, Picked::Not) {
            Picked::Away
        } else {
            out.inner
        }
    }

    /// Which group is looked at.
    fn groups(&mut self, ui: &mut Ui, names: &Lexicon) {
        let groups = library().groups();
        let mut options = vec!["All groups".to_owned()];
        options.extend(groups.iter().map(|g| names.group(g).to_owned()));
        let now = groups.iter().position(|g| self.group.as_ref() == Some(g));
        let (id, width) = (Id::unique("picker-group"), ui.available_width());
        let chosen = Some(now.map_or(0, |i| i + 1));
        if let Some(i) = select(ui, id, "Group of symbols", &options, chosen, width) {
            self.group = i.checked_sub(1).map(|i| groups[i].clone());
            self.at = 0;
        }
    }

    fn grid(
        &mut self,
        ui: &mut Ui,
        pictures: &mut Pictures,
        (club, names): (&Club, &Lexicon),
        (height, enter): (f32, bool),
    ) -> Picked {
        let items = self.items(club, names);
        self.at = self.at.min(items.len().saturating_sub(1));
        let mut picked = Picked::Not;
        ScrollArea::vertical()
            .id_salt("picker-grid")
            .max_height(height)
            .auto_shrink(false)
            .show(ui, |ui| {
                let cell = vec2(96.0, 108.0);
                let columns = ((ui.available_width() / (cell.x + 6.0)) as usize).max(1);
                let rows = items.len().div_ceil(columns);
                let (_, all) =
                    ui.allocate_space(vec2(ui.available_width(), rows as f32 * (cell.y + 6.0)));
                for (i, (id, label)) in items.iter().enumerate() {
                    let at = vec2(
                        (i % columns) as f32 * (cell.x + 6.0),
                        (i / columns) as f32 * (cell.y + 6.0),
                    );
                    let rect = Rect::from_min_size(all.min + at + vec2(3.0, 3.0), cell);
                    if !ui.is_rect_visible(rect.expand(cell.y)) && i != self.at {
                        continue;
                    }
                    if self.cell(
                        ui,
                        pictures,
                        rect,
                        (i, id, label),
                        (items.len(), columns, enter),
                    ) {
                        picked = Picked::This(id.clone());
                    }
                }
            });
        picked
    }

    fn cell(
        &mut self,
        ui: &mut Ui,
        pictures: &mut Pictures,
        rect: Rect,
        (i, id, label): (usize, &SymbolId, &str),
        (count, columns, enter): (usize, usize, bool),
    ) -> bool {
        let cell_id = |i: usize| Id::unique(("picker-cell", i));
        let sense = regions::one_stop(ui, cell_id(i), i == self.at, false);
        let r = ui.interact(rect, cell_id(i), sense);
        r.widget_info(|| {
            WidgetInfo::labeled(Role::Button, true, format!("{label}, {} of {count}", i + 1))
        });
        if enter && i == self.at {
            r.request_focus();
        }
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        let line = if r.hovered() {
            Stroke::new(2.0, t.col.ink)
        } else {
            Stroke::new(1.2, t.col.seal_line)
        };
        p.rect(
            rect,
            CornerRadius::same(10),
            t.col.card,
            line,
            StrokeKind::Inside,
        );
        let (picture, text) = rect.shrink(5.0).split_top_bottom_at_y(rect.bottom() - 38.0);
        if self.marks() {
            pictures.mark(
                p,
                Rect::from_center_size(picture.center(), Vec2::splat(44.0)),
                id,
            );
        } else {
            pictures.symbol(p, picture, id, Default::default());
        }
        words::label(p, text, label, &[14.0, 13.0], 2, t.col.card_ink);
        focus_ring(ui, &r, rect, 10);
        if r.has_focus() {
            regions::keep_arrows(ui, r.id);
            if let Some(to) = regions::arrows(ui, i, count, columns) {
                self.at = to;
                ui.memory_mut(|m| m.request_focus(cell_id(to)));
            }
        }
        let entered = r.has_focus() && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter));
        r.on_hover_cursor(CursorIcon::PointingHand).clicked() || entered
    }
}
