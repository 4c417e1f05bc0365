//! What is dragged onto the window, dropped on it or pasted into it: pictures, or a club.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::accesskit::{Live, Role};
use egui::{
    Align2, Context, CornerRadius, Id, Order, Rect, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2,
};
use image::RgbaImage;

use super::purpose;
use crate::symbols::lexicon::lexicon;
use crate::ui::theme;
use crate::ui::widgets::{form, words};
use crate::workbench::command::Command;
use crate::workbench::view::View;

fn is_club(path: &Path) -> bool {
    path.extension().is_some_and(|e| e == "daystrand")
}

/// What follows from what was dropped or pasted in this frame.
pub fn commands(ctx: &Context, view: &View<'_>) -> Vec<Command> {
    let mut commands = Vec::new();
    let dropped = ctx.input(|i| i.raw.dropped_files.clone());
    let paths: Vec<PathBuf> = dropped.iter().map(|f| f.path().to_path_buf()).collect();
    if let Some(path) = paths.iter().find(|p| is_club(p)) {
        commands.push(Command::Open(path.clone()));
    } else if !paths.is_empty() {
        commands.push(Command::TakePictures(paths, purpose(view)));
    }
    if let Some(pixels) = pasted(ctx) {
        commands.push(Command::TakePasted(Arc::new(pixels), purpose(view)));
    }
    commands
}

fn pasted(ctx: &Context) -> Option<RgbaImage> {
    let image = ctx.input(|i| {
        i.events.iter().find_map(|e| match e {
            egui::Event::PasteImage(image) => Some(Arc::clone(image)),
            _ => None,
        })
    })?;
    let [w, h] = image.size.map(|side| u32::try_from(side).unwrap_or(0));
    let pixels = image.pixels.iter();
    let bytes = pixels.flat_map(egui::Color32::to_srgba_unmultiplied);
    RgbaImage::from_raw(w, h, bytes.collect())
}

/// While something is held over the window: what will come of letting go.
pub fn held_over(ui: &Ui, view: &View<'_>, window: Rect) {
    let held = ui.input(|i| i.raw.hovered_files.clone());
    if held.is_empty() {
        return;
    }
    let club = held
        .iter()
        .filter_map(|f| f.path.as_ref())
        .any(|p| is_club(p));
    let says = if club {
        "Let go, and this club is opened.".to_owned()
    } else {
        becomes(view, held.len())
    };
    let area = egui::Area::new(Id::unique("held-over")).fixed_pos(window.min);
    area.order(Order::Tooltip)
        .show(ui.ctx(), |ui| slip(ui, window, &says));
}

/// The sentence in the middle of the window, and a dashed line round the whole of it.
fn slip(ui: &Ui, window: Rect, says: &str) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    form::dashed(ui, window.shrink(8.0));
    let font = theme::bold(20.0);
    let g = words::lay(p, says, font, t.col.on_peg, window.width() - 120.0, 3);
    let size = g.size() + vec2(48.0, 28.0);
    let slip = Align2::CENTER_CENTER.align_size_within_rect(size, window);
    let r = ui.interact(slip, Id::unique("held-over-says"), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Status, true, says));
    ui.ctx().accesskit_node_builder(r.id, |node| {
        node.set_live(Live::Polite);
        node.set_value(says);
    });
    let corner = CornerRadius::same(theme::R_PANEL);
    p.add(t.lifted().as_shape(slip, corner));
    p.rect(slip, corner, t.col.peg, Stroke::NONE, StrokeKind::Inside);
    p.galley(slip.center() - g.size() / 2.0, g, t.col.on_peg);
}

/// What pictures become that are dropped now, in a sentence.
fn becomes(view: &View<'_>, count: usize) -> String {
    let what = if count == 1 {
        "The picture"
    } else {
        "Each picture"
    };
    let purpose = purpose(view);
    let owner = purpose.whose.and_then(|id| view.club.participant(id));
    let whose = owner.map_or_else(|| "the club’s".to_owned(), |p| format!("{}’s own", p.name));
    let names = lexicon(&view.club.rules.words);
    let place = purpose.stands_for.as_ref();
    let place = place.map_or_else(String::new, |s| format!(", in place of {}", names.label(s)));
    format!("{what} will be {whose}{place}. Let go, and look at it first.")
}
