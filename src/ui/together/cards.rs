//! Cards as large as the moment asks, and everything that is pressed on them.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Painter, Rect, Response, Role, Sense, Stroke, StrokeKind,
    Ui, WidgetInfo, pos2, vec2,
};

use super::Target;
use crate::model::board::{Step, StepState};
use crate::model::hand::Content;
use crate::model::ids::SymbolId;
use crate::model::manner::Form;
use crate::story::cards::Card;
use crate::ui::icons;
use crate::ui::pictures::{Eyes, Pictures};
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::{focus_ring, words};

/// Largest and smallest letters on a card.
const LETTERS: (f32, f32) = (42.0, 14.0);

/// What is on a card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Face {
    /// The picture.
    pub symbol: SymbolId,
    /// The words.
    pub label: String,
    /// In what form it is understood.
    pub form: Form,
    /// The real thing that goes with it; empty where there is none.
    pub thing: String,
    /// Whether it is not today.
    pub off: bool,
}

impl Face {
    /// Of a step, or of what was picked there.
    pub fn of(step: &Step, picked: Option<&Content>) -> Self {
        Self {
            symbol: picked.map_or(&step.symbol, |c| &c.symbol).clone(),
            label: picked.map_or(&step.label, |c| &c.label).clone(),
            form: step.form,
            thing: step.thing.clone(),
            off: step.state == StepState::NotToday,
        }
    }
}

impl From<&Card> for Face {
    fn from(card: &Card) -> Self {
        Self {
            symbol: card.symbol.clone(),
            label: card.label.clone(),
            form: Form::Drawing,
            thing: String::new(),
            off: false,
        }
    }
}

impl From<&Content> for Face {
    fn from(content: &Content) -> Self {
        Self::from(&Card {
            symbol: content.symbol.clone(),
            label: content.label.clone(),
        })
    }
}

/// Paints a card with its face, as large as its place.
pub fn paint(p: &Painter, pictures: &mut Pictures, rect: Rect, face: &Face, eyes: Eyes) {
    let t = theme::of(p.ctx());
    if face.off {
        return not_today(p, pictures, rect, face, eyes);
    }
    let paper = sheet(p, &t, rect);
    let most = letters(rect.width());
    match face.form {
        Form::Word => alone(p, &t, paper, &face.label, most * 1.9),
        Form::Sentence => alone(p, &t, paper, &face.label, most * 1.1),
        Form::Object | Form::Photograph => {
            let edge = Stroke::new(t.line(), t.col.card_soft);
            let inner = paper.shrink(paper.width() * 0.025);
            icons::dashed_rect(p, inner, 10.0, edge, 7.0, 5.0);
            let thing = Some(face.thing.as_str()).filter(|w| !w.is_empty() && *w != face.label);
            picture_and_words(p, pictures, (inner, most), face, thing, eyes);
        }
        Form::Drawing => picture_and_words(p, pictures, (paper, most), face, None, eyes),
    }
}

/// Size of the words on a card: on a small one they take more of it.
fn letters(width: f32) -> f32 {
    let share = if width < 200.0 { 0.15 } else { 0.115 };
    (width * share)
        .clamp(LETTERS.1, LETTERS.0)
        .min(width.max(230.0) * 0.115 + 3.0)
}

/// The paper of a card in its clear edge.
pub fn sheet(p: &Painter, t: &Theme, rect: Rect) -> Rect {
    let least = rect.width().min(rect.height());
    let corner = CornerRadius::same((least * 0.075).clamp(8.0, 28.0) as u8);
    p.add(t.shadow().as_shape(rect, corner));
    p.rect(rect, corner, t.col.seal, t.seal_line(), StrokeKind::Inside);
    let paper = rect.shrink((least * 0.045).clamp(3.0, 20.0));
    let inner = CornerRadius::same((least * 0.04).clamp(5.0, 16.0) as u8);
    p.rect_filled(paper, inner, t.col.card);
    paper
}

/// Radius of the ring round a card.
pub fn radius(rect: Rect) -> u8 {
    (rect.width().min(rect.height()) * 0.075).clamp(8.0, 28.0) as u8
}

fn picture_and_words(
    p: &Painter,
    pictures: &mut Pictures,
    (paper, most): (Rect, f32),
    face: &Face,
    thing: Option<&str>,
    eyes: Eyes,
) {
    let t = theme::of(p.ctx());
    let inner = paper.shrink(paper.width() * 0.03);
    let bold = theme::bold(most * 0.9);
    let one = words::rows_needed(p, &face.label, bold, inner.width()) < 2;
    let high = most * if one { 1.5 } else { 2.4 };
    let more = thing.map_or(0.0, |_| most * 0.95);
    let text = inner.with_min_y(inner.bottom() - high);
    let under = Rect::from_min_max(
        pos2(inner.left(), text.top() - more),
        pos2(inner.right(), text.top()),
    );
    let picture = inner.with_max_y(under.top() - 2.0);
    pictures.symbol(p, picture, &face.symbol, eyes);
    let sizes = [most, most * 0.9, most * 0.75, (most * 0.6).max(12.0)];
    words::label(
        p,
        text,
        &face.label,
        &sizes,
        if one { 1 } else { 2 },
        t.col.card_ink,
    );
    if let Some(thing) = thing {
        let sizes = [most * 0.6, (most * 0.5).max(12.0)];
        words::label(p, under, thing, &sizes, 1, t.col.card_soft);
    }
}

fn alone(p: &Painter, t: &Theme, paper: Rect, label: &str, most: f32) {
    let room = paper.shrink(paper.width() * 0.06);
    let sizes = [1.0, 0.85, 0.7, 0.58, 0.48].map(|s| (most * s).max(12.0));
    words::label(p, room, label, &sizes, 5, t.col.card_ink);
}

/// What is not today lies face down, and still says what it is, in pictures and words.
fn not_today(p: &Painter, pictures: &mut Pictures, rect: Rect, face: &Face, eyes: Eyes) {
    let t = theme::of(p.ctx());
    back(p, &t, rect);
    let large = rect.width() > 150.0;
    let plate = rect.shrink(rect.width() * if large { 0.11 } else { 0.14 });
    p.rect_filled(plate, CornerRadius::same(10), t.col.card);
    let most = (rect.width() * 0.1).clamp(12.0, 38.0);
    let inner = plate.shrink(plate.width() * 0.04);
    if !large {
        let (above, below) = inner.split_top_bottom_at_fraction(0.62);
        pictures.symbol(p, above, &SymbolId::new("not_today"), eyes);
        words::label(
            p,
            below,
            "Not today",
            &[14.0, 12.0, 11.0],
            2,
            t.col.card_ink,
        );
        return;
    }
    let (above, below) = inner.split_top_bottom_at_y(inner.bottom() - most * 2.9);
    let (left, right) = above.split_left_right_at_fraction(0.5);
    pictures.symbol(p, left.shrink(4.0), &face.symbol, eyes);
    pictures.symbol(p, right.shrink(4.0), &SymbolId::new("not_today"), eyes);
    let (first, second) = below.split_top_bottom_at_fraction(0.5);
    words::label(
        p,
        first,
        "Not today",
        &[most, most * 0.8],
        1,
        t.col.card_ink,
    );
    let sizes = [most * 0.85, most * 0.7, most * 0.55];
    words::label(p, second, &face.label, &sizes, 1, t.col.card_ink);
}

/// The back of a tile: dashed edge and hatching.
pub fn back(p: &Painter, t: &Theme, rect: Rect) {
    let col = &t.col;
    let corner = f32::from(radius(rect));
    p.rect_filled(rect, CornerRadius::same(radius(rect)), col.down);
    let line = Stroke::new(1.2, col.down_line.gamma_multiply(0.55));
    let inner = rect.shrink((rect.width() * 0.05).clamp(5.0, 18.0));
    icons::hatch(p, inner, (rect.width() * 0.06).clamp(8.0, 20.0), line);
    let edge = Stroke::new(t.line() + 0.4, col.down_line);
    icons::dashed_rect(p, rect.shrink(1.0), corner, edge, 8.0, 6.0);
}

/// A low, wide card: the picture and the words beside it; in a list the words all begin in one line.
pub fn wide(
    p: &Painter,
    pictures: &mut Pictures,
    (rect, listed): (Rect, bool),
    face: &Face,
    eyes: Eyes,
    mirrored: bool,
) {
    let t = theme::of(p.ctx());
    if face.off {
        return wide_off(p, pictures, rect, face, eyes, mirrored);
    }
    let paper = sheet(p, &t, rect).shrink(2.0);
    let side = paper.height().min(paper.width() * 0.4);
    let room = vec2(side, paper.height());
    let (picture, text) = if mirrored {
        (
            Rect::from_min_size(pos2(paper.right() - side, paper.top()), room),
            paper.with_max_x(paper.right() - side - 4.0),
        )
    } else {
        (
            Rect::from_min_size(paper.min, room),
            paper.with_min_x(paper.left() + side + 4.0),
        )
    };
    let read = matches!(face.form, Form::Word | Form::Sentence);
    let text = if read { paper.shrink(4.0) } else { text };
    if !read {
        pictures.symbol(p, picture.shrink(1.0), &face.symbol, eyes);
    }
    let most = (rect.height() * 0.36).clamp(15.0, 30.0);
    let sizes = [most, most * 0.85, (most * 0.7).max(14.0), 13.0];
    // One line, if it need not be much smaller for that.
    let bold = theme::bold(most * 0.75);
    let one = words::rows_needed(p, &face.label, bold, text.width() - 6.0) < 2;
    let rows = if one || rect.height() <= 48.0 { 1 } else { 2 };
    let text = text.shrink2(vec2(3.0, 0.0));
    if read || !listed {
        words::label(p, text, &face.label, &sizes, rows, t.col.card_ink);
    } else {
        beside(
            p,
            text.shrink2(vec2(6.0, 0.0)),
            &face.label,
            &sizes,
            mirrored,
        );
    }
}

/// The same for what is not today: it lies face down and says so.
fn wide_off(
    p: &Painter,
    pictures: &mut Pictures,
    rect: Rect,
    face: &Face,
    eyes: Eyes,
    mirrored: bool,
) {
    let t = theme::of(p.ctx());
    back(p, &t, rect);
    let plate = rect.shrink2(vec2(rect.height() * 0.3, rect.height() * 0.13));
    p.rect_filled(plate, CornerRadius::same(7), t.col.card);
    let side = plate.height();
    let (picture, text) = if mirrored {
        plate.split_left_right_at_x(plate.right() - side)
    } else {
        plate.split_left_right_at_x(plate.left() + side)
    };
    let (picture, text) = if mirrored {
        (text, picture)
    } else {
        (picture, text)
    };
    pictures.symbol(p, picture.shrink(1.0), &SymbolId::new("not_today"), eyes);
    let words = format!("Not today: {}", face.label);
    let most = (rect.height() * 0.3).clamp(14.0, 26.0);
    let sizes = [most, most * 0.85, (most * 0.7).max(13.0)];
    beside(p, text.shrink2(vec2(6.0, 0.0)), &words, &sizes, mirrored);
}

/// Words that stand near their picture in a long row, as large as one line holds.
fn beside(p: &Painter, room: Rect, label: &str, sizes: &[f32], mirrored: bool) {
    let ink = theme::of(p.ctx()).col.card_ink;
    let fits = |size: &&f32| {
        let g = p.layout_no_wrap(label.to_owned(), theme::bold(**size), ink);
        g.size().x <= room.width()
    };
    let size = sizes.iter().find(fits).or(sizes.last());
    let align = if mirrored {
        Align2::RIGHT_CENTER
    } else {
        Align2::LEFT_CENTER
    };
    let font = theme::bold(size.copied().unwrap_or(LETTERS.1));
    words::line(p, room, align, label, font, ink);
}

/// What can be pressed in a frame: what is offered by scanning now, and what was pressed.
#[derive(Debug, Default)]
pub struct Presses {
    /// What scanning offers.
    pub offered: Option<Target>,
    /// What was pressed, in order.
    pub pressed: Vec<Target>,
}

impl Presses {
    /// Something to press, already painted: with a name, a ring for the keyboard and a frame while
    /// it is offered.
    pub fn at(&mut self, ui: &Ui, target: Target, rect: Rect, name: &str) -> Response {
        self.moving(ui, target, (rect, rect), name)
    }

    /// The same for what is seen on its way to the place where it is pressed.
    pub fn moving(
        &mut self,
        ui: &Ui,
        target: Target,
        (rect, seen): (Rect, Rect),
        name: &str,
    ) -> Response {
        let r = ui.interact(rect, id(target), Sense::click());
        let offered = self.offered == Some(target);
        r.widget_info(|| WidgetInfo::labeled(Role::Button, true, name));
        if offered {
            let mark = |node: &mut egui::accesskit::Node| node.set_selected(true);
            ui.ctx().accesskit_node_builder(r.id, mark);
        }
        focus_ring(ui, &r, seen, radius(seen));
        if offered {
            offer(ui, seen);
        }
        let r = r.on_hover_cursor(CursorIcon::PointingHand);
        if r.clicked() {
            self.pressed.push(target);
        }
        r
    }
}

/// The name of something to press within the toolkit.
pub fn id(target: Target) -> Id {
    Id::unique(("together", target))
}

/// The frame round what is offered: broad, and quiet.
fn offer(ui: &Ui, rect: Rect) {
    let t = theme::of(ui.ctx());
    let corner = CornerRadius::same(radius(rect).saturating_add(6));
    let p = ui.painter();
    let line = Stroke::new(7.0, t.col.accent);
    p.rect_stroke(rect.expand(2.0), corner, line, StrokeKind::Outside);
}

/// A name for a picture that is only looked at.
pub fn named(ui: &Ui, at: impl std::hash::Hash + std::fmt::Debug, rect: Rect, name: &str) {
    let r = ui.interact(rect, Id::unique(("together-seen", at)), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Image, true, name));
}
