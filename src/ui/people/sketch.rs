//! Small sketches of how a board is given, one for each thing that can be chosen, so that it is
//! understood before it is read.

use egui::{Color32, CornerRadius, CursorIcon, Id, Painter, Rect, Role, Stroke};
use egui::{StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2};

use crate::model::manner::{Finishing, Form, Reach, Run};
use crate::ui::icons::{self, Icon};
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};

/// What is sketched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sketch {
    /// A step in a form.
    Form(Form),
    /// How much is shown at once.
    Reach(Reach),
    /// Which way the steps run.
    Run(Run),
    /// Where a finished step goes.
    Finishing(Finishing),
}

impl Sketch {
    const fn label(self) -> &'static str {
        match self {
            Self::Form(x) => x.label(),
            Self::Reach(x) => x.label(),
            Self::Run(x) => x.label(),
            Self::Finishing(x) => x.label(),
        }
    }
}

/// One of a few, each a card with its sketch above its words. One stop of the Tab key; the arrow
/// keys go along, Enter or Space chooses. Gives the one newly chosen.
pub fn cards(ui: &mut Ui, name: &str, all: &[Sketch], chosen: usize) -> Option<usize> {
    let (gap, n) = (10.0, all.len() as f32);
    let wide = ui.available_width();
    let side = ((wide - gap * (n - 1.0)) / n).min(150.0);
    let per_row = if side < 104.0 { 3 } else { all.len() };
    let side = if per_row == 3 {
        ((wide - gap * 2.0) / 3.0).min(150.0)
    } else {
        side
    };
    let rows = all.len().div_ceil(per_row) as f32;
    let size = vec2(side, 96.0);
    let (_, area) = ui.allocate_space(vec2(wide, rows * (size.y + gap) - gap));
    let id = |i: usize| Id::unique(("sketch", name, i));
    let mut picked = None;
    for (i, sketch) in all.iter().enumerate() {
        let (x, y) = ((i % per_row) as f32, (i / per_row) as f32);
        let at = area.min + vec2(x * (side + gap), y * (size.y + gap));
        let rect = Rect::from_min_size(at, size);
        let on = i == chosen;
        let r = ui.interact(rect, id(i), regions::one_stop(ui, id(i), on, false));
        let said = format!("{name}: {}", sketch.label());
        r.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, on, &said));
        card(ui, rect, *sketch, (on, r.hovered()));
        focus_ring(ui, &r, rect, theme::R_CARD);
        if r.has_focus() {
            regions::keep_arrows(ui, r.id);
            if let Some(to) = regions::arrows(ui, i, all.len(), per_row) {
                ui.memory_mut(|m| m.request_focus(id(to)));
            }
        }
        if r.on_hover_cursor(CursorIcon::PointingHand).clicked() && !on {
            picked = Some(i);
        }
    }
    picked
}

fn card(ui: &Ui, rect: Rect, sketch: Sketch, (on, over): (bool, bool)) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let line = match (on, over) {
        (true, _) => Stroke::new(3.0, t.col.accent),
        (false, true) => Stroke::new(2.0, t.col.ink),
        (false, false) => t.edge(),
    };
    let corner = CornerRadius::same(theme::R_CARD);
    p.rect(rect, corner, t.col.card, line, StrokeKind::Inside);
    let (top, bottom) = rect.split_top_bottom_at_y(rect.bottom() - 34.0);
    let room = bottom.shrink2(vec2(6.0, 3.0));
    words::label(p, room, sketch.label(), &[15.0, 14.0], 1, t.col.card_ink);
    if on {
        let mid = rect.right_top() + vec2(-15.0, 15.0);
        p.circle_filled(mid, 10.0, t.col.accent);
        icons::paint(p, Icon::Tick, icons::square(mid, 13.0), t.col.on_accent);
    }
    let mid = top.center() + vec2(0.0, 3.0);
    let pen = Pen {
        p,
        ink: t.col.card_ink,
        soft: t.col.card_soft,
    };
    match sketch {
        Sketch::Form(x) => pen.form(mid, x),
        Sketch::Reach(x) => pen.reach(mid, x),
        Sketch::Run(x) => pen.run(mid, x),
        Sketch::Finishing(x) => pen.finishing(mid, x),
    }
}

struct Pen<'a> {
    p: &'a Painter,
    ink: Color32,
    soft: Color32,
}

impl Pen<'_> {
    const fn line(&self) -> Stroke {
        Stroke {
            width: 2.0,
            color: self.ink,
        }
    }

    const fn faint(&self) -> Stroke {
        Stroke {
            width: 1.5,
            color: self.soft,
        }
    }

    fn plate(&self, mid: egui::Pos2, side: f32, full: bool) {
        let r = Rect::from_center_size(mid, Vec2::splat(side));
        let corner = CornerRadius::same(4);
        if full {
            self.p.rect_filled(r, corner, self.ink);
        } else {
            self.p
                .rect_stroke(r, corner, self.faint(), StrokeKind::Inside);
        }
    }

    /// Lines of words, as wide as given.
    fn words(&self, mid: egui::Pos2, widths: &[f32]) {
        let first = mid.y - 4.5 * (widths.len() as f32 - 1.0);
        let left = mid.x - widths.iter().copied().fold(0.0, f32::max) / 2.0;
        for (i, w) in widths.iter().enumerate() {
            let y = first + 9.0 * i as f32;
            let thick = Stroke::new(4.0, self.ink);
            self.p.hline(left..=left + w, y, thick);
        }
    }

    fn form(&self, mid: egui::Pos2, form: Form) {
        match form {
            // A cup: a thing to hold.
            Form::Object => {
                let cup = Rect::from_center_size(mid - vec2(3.0, 0.0), vec2(26.0, 30.0));
                let corner = CornerRadius {
                    nw: 2,
                    ne: 2,
                    sw: 9,
                    se: 9,
                };
                self.p.rect_filled(cup, corner, self.ink);
                let handle = pos2(cup.right() + 2.0, mid.y - 3.0);
                self.p
                    .circle_stroke(handle, 7.0, Stroke::new(3.5, self.ink));
            }
            Form::Photograph => {
                let frame = Rect::from_center_size(mid, vec2(48.0, 36.0));
                let corner = CornerRadius::same(3);
                self.p
                    .rect_stroke(frame, corner, self.line(), StrokeKind::Inside);
                let at = |x: f32, y: f32| frame.left_bottom() + vec2(x, -y);
                let hills = vec![
                    at(5.0, 5.0),
                    at(16.0, 20.0),
                    at(24.0, 11.0),
                    at(31.0, 17.0),
                    at(43.0, 5.0),
                ];
                self.p.add(egui::Shape::line(hills, self.line()));
                self.p.circle_filled(at(36.0, 27.0), 3.5, self.ink);
            }
            // A figure above a line of words.
            Form::Drawing => {
                let frame = Rect::from_center_size(mid, vec2(44.0, 46.0));
                let corner = CornerRadius::same(5);
                self.p
                    .rect_stroke(frame, corner, self.line(), StrokeKind::Inside);
                let head = frame.center_top() + vec2(0.0, 11.0);
                self.p.circle_filled(head, 4.5, self.ink);
                let body = Rect::from_center_size(head + vec2(0.0, 12.5), vec2(13.0, 13.0));
                let round = CornerRadius {
                    nw: 6,
                    ne: 6,
                    sw: 1,
                    se: 1,
                };
                self.p.rect_filled(body, round, self.ink);
                self.words(frame.center_bottom() - vec2(0.0, 8.0), &[22.0]);
            }
            Form::Word => self.words(mid, &[36.0]),
            Form::Sentence => self.words(mid, &[58.0, 50.0, 28.0]),
        }
    }

    fn reach(&self, mid: egui::Pos2, reach: Reach) {
        // How many plates are shown, of how many in all.
        let (shown, all, side) = match reach {
            Reach::One => (1, 1, 30.0),
            Reach::FirstThen => (2, 2, 26.0),
            Reach::NowNext => (1, 2, 26.0),
            Reach::Three => (3, 3, 20.0),
            Reach::Part => (3, 6, 14.0),
            Reach::Whole => (6, 6, 14.0),
        };
        let pitch = side + 5.0;
        let left = mid.x - pitch * (all as f32 - 1.0) / 2.0;
        for i in 0..all {
            self.plate(pos2(left + pitch * i as f32, mid.y), side, i < shown);
        }
    }

    fn run(&self, mid: egui::Pos2, run: Run) {
        let along = match run {
            Run::Down => vec2(0.0, 1.0),
            Run::LeftToRight => vec2(1.0, 0.0),
            Run::RightToLeft => vec2(-1.0, 0.0),
        };
        let across = vec2(-along.y, along.x);
        let start = mid - across * 9.0;
        for i in 0..3 {
            self.plate(start + along * (17.0 * (i as f32 - 1.0)), 13.0, i == 0);
        }
        let tip = mid + across * 12.0 + along * 22.0;
        let tail = tip - along * 44.0;
        self.p.line_segment([tail, tip], self.line());
        for turn in [6.0, -6.0] {
            let barb = tip - along * 7.0 + across * turn;
            self.p.line_segment([tip, barb], self.line());
        }
    }

    fn finishing(&self, mid: egui::Pos2, how: Finishing) {
        match how {
            Finishing::Pouch => {
                let tile = mid - vec2(0.0, 13.0);
                self.plate(tile, 22.0, true);
                let bag = Rect::from_center_size(mid + vec2(0.0, 9.0), vec2(46.0, 28.0));
                let corner = CornerRadius {
                    nw: 2,
                    ne: 2,
                    sw: 10,
                    se: 10,
                };
                let white = theme::of(self.p.ctx()).col.card;
                self.p
                    .rect(bag, corner, white, self.line(), StrokeKind::Inside);
            }
            Finishing::TurnedOver => {
                self.plate(mid - vec2(20.0, 0.0), 26.0, true);
                let back = Rect::from_center_size(mid + vec2(20.0, 0.0), Vec2::splat(26.0));
                icons::hatch(self.p, back, 6.0, self.faint());
                self.plate(back.center(), 26.0, false);
            }
            Finishing::FinishedRow => {
                for i in 0..3 {
                    let x = 22.0 * (i as f32 - 1.0);
                    self.plate(mid + vec2(x, -13.0), 16.0, i > 0);
                }
                let row = Rect::from_center_size(mid + vec2(0.0, 13.0), vec2(70.0, 24.0));
                let corner = CornerRadius::same(6);
                self.p
                    .rect_stroke(row, corner, self.line(), StrokeKind::Inside);
                self.plate(mid + vec2(-22.0, 13.0), 16.0, true);
            }
            Finishing::Tick => {
                self.plate(mid - vec2(20.0, 0.0), 26.0, true);
                let box_ = Rect::from_center_size(mid + vec2(20.0, 0.0), Vec2::splat(26.0));
                self.plate(box_.center(), 26.0, false);
                icons::paint(self.p, Icon::Tick, box_.shrink(3.0), self.ink);
            }
        }
    }
}
