//! The adult's row: few quiet controls, folded away until they are wanted, each with the letter of its
//! key. While the row is folded the letters do nothing, so that a hand on the keys does no harm.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Key, Modifiers, Rect, Role, Sense, Stroke, StrokeKind,
    Ui, WidgetInfo, pos2, vec2,
};

use super::ask::Way;
use super::places::{LEAST, Places};
use super::{Scene, TogetherState};
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::{GoingThrough, Scanning};

/// Something the adult does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Adult {
    /// Opens the row, or folds it.
    Fold,
    /// The story's sentence.
    Sentence,
    /// Time that empties; so long, counted in the lengths offered.
    Wait(usize),
    /// More time.
    More,
    /// Back to the day.
    Day,
    /// A change to practise.
    Practise,
    /// Another one.
    Another,
    /// Questions about the day.
    Ask,
    /// Another way of answering.
    Way(usize),
    /// The answers are written down.
    Keep,
    /// Words aloud, or not.
    Voice,
    /// For how many switches.
    Scanning,
    /// Slower scanning.
    Slower,
    /// Quicker scanning.
    Quicker,
    /// Night colours, or not.
    Night,
}

/// One entry of the row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// What it does.
    pub act: Adult,
    /// Its key.
    pub key: Key,
    /// Its words.
    pub words: String,
    /// Whether it is on, for what can be on.
    pub on: bool,
}

/// The key that opens the row.
pub const FOLD: Key = Key::A;

/// What the row holds now.
pub fn entries(state: &TogetherState, going: GoingThrough, mute: bool) -> Vec<Entry> {
    let plain = |act, key, words: &str, on| Entry {
        act,
        key,
        words: words.to_owned(),
        on,
    };
    let mut all = match &state.scene {
        Scene::Day => vec![
            plain(Adult::Sentence, Key::S, "Story", state.sentence),
            plain(Adult::Wait(0), Key::W, "Wait", false),
            plain(Adult::Wait(1), Key::L, "Wait longer", false),
            plain(Adult::Practise, Key::P, "Practise", false),
            plain(Adult::Ask, Key::Q, "Ask", false),
        ],
        Scene::Wait(w) => vec![
            if w.is_over() {
                plain(Adult::Wait(0), Key::W, "Wait again", false)
            } else {
                plain(Adult::More, Key::M, "More time", false)
            },
            plain(Adult::Day, Key::D, "Back to the day", false),
        ],
        Scene::Practise(p) => {
            let mut all = vec![plain(Adult::Day, Key::D, "Back to the day", false)];
            if p.all.len() > 1 {
                all.insert(0, plain(Adult::Another, Key::O, "Another", false));
            }
            all
        }
        Scene::Asking(a) if a.now().is_none() => {
            let mut all = vec![plain(Adult::Day, Key::D, "Back, write nothing", false)];
            if !a.answers.is_empty() {
                all.insert(0, plain(Adult::Keep, Key::R, "Write it down", false));
            }
            all
        }
        Scene::Asking(a) => {
            let keys = [Key::T, Key::P, Key::H];
            let ways = Way::ALL.into_iter().zip(keys).enumerate();
            let mut all: Vec<Entry> = ways
                .map(|(i, (way, key))| plain(Adult::Way(i), key, way.label(), a.way == way))
                .collect();
            all.push(plain(Adult::Day, Key::D, "Back to the day", false));
            all
        }
    };
    all.extend(everywhere(going, mute));
    all
}

/// What can be set at any moment.
fn everywhere(going: GoingThrough, mute: bool) -> Vec<Entry> {
    let entry = |act, key, words: &str, on| Entry {
        act,
        key,
        words: words.to_owned(),
        on,
    };
    let voice = if mute { "No voice here" } else { "Voice" };
    let (switches, on) = match going.scanning {
        Scanning::Off => ("Switches", false),
        Scanning::OneSwitch => ("One switch", true),
        Scanning::TwoSwitches => ("Two switches", true),
    };
    let mut all = vec![
        entry(Adult::Voice, Key::V, voice, going.voice && !mute),
        entry(Adult::Scanning, Key::N, switches, on),
    ];
    if going.scanning == Scanning::OneSwitch {
        all.push(entry(Adult::Slower, Key::Minus, "Slower", false));
        all.push(entry(Adult::Quicker, Key::Plus, "Quicker", false));
    }
    all.push(entry(Adult::Night, Key::K, "Night", going.night));
    all
}

/// The letter on an entry.
pub fn letter(key: Key) -> &'static str {
    match key {
        Key::Plus => "+",
        Key::Minus => "-",
        other => other.name(),
    }
}

/// What the keys ask for.
pub fn keys(ui: &Ui, open: bool, entries: &[Entry]) -> Vec<Adult> {
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    let mut all = Vec::new();
    if pressed(FOLD) {
        all.push(Adult::Fold);
    }
    for e in entries.iter().filter(|_| open) {
        let also = e.key == Key::Plus && pressed(Key::Equals);
        if pressed(e.key) || also {
            all.push(e.act);
        }
    }
    all
}

/// The knob that opens the row, and the row while it is open; gives what was pressed. `say` are the
/// few words to say.
pub fn show(ui: &Ui, places: &Places, open: bool, entries: &[Entry], say: &str) -> Vec<Adult> {
    let mut all = Vec::new();
    if fold(ui, places, open) {
        all.push(Adult::Fold);
    }
    if !open {
        return all;
    }
    let (rects, wide) = lay(ui, places.row, entries, places.mirrored);
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let last = rects.iter().fold(places.row, |a, r| a.union(*r));
    let mut sheet = last.expand2(vec2(6.0, 3.0));
    sheet.max.y += if say.is_empty() { 0.0 } else { 26.0 };
    p.rect(
        sheet,
        CornerRadius::same(theme::R_CONTROL),
        t.col.panel,
        t.edge(),
        StrokeKind::Inside,
    );
    for (e, rect) in entries.iter().zip(rects) {
        if entry(ui, e, rect, wide) {
            all.push(e.act);
        }
    }
    if !say.is_empty() {
        let room = sheet
            .with_min_y(sheet.bottom() - 28.0)
            .shrink2(vec2(14.0, 2.0));
        let align = if places.mirrored {
            Align2::RIGHT_CENTER
        } else {
            Align2::LEFT_CENTER
        };
        words::line(p, room, align, say, theme::regular(16.0), t.col.soft);
    }
    all
}

fn fold(ui: &Ui, places: &Places, open: bool) -> bool {
    let t = theme::of(ui.ctx());
    let r = ui.interact(places.fold, Id::unique("together-adult"), Sense::click());
    let name = if open {
        "For the adult: fold away, key A"
    } else {
        "For the adult: open, key A"
    };
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, name));
    let p = ui.painter();
    let cap = Rect::from_center_size(places.fold.center(), vec2(30.0, 30.0));
    let (ground, ink) = if open {
        (t.col.peg, t.col.on_peg)
    } else {
        (t.col.panel, t.col.soft)
    };
    let edge = Stroke::new(1.5, t.col.edge);
    p.rect(cap, CornerRadius::same(8), ground, edge, StrokeKind::Inside);
    p.text(
        cap.center(),
        Align2::CENTER_CENTER,
        "A",
        theme::bold(16.0),
        ink,
    );
    focus_ring(ui, &r, places.fold, 10);
    r.on_hover_text("For the adult: story, wait, practise, voice, switches, night")
        .clicked()
}

/// Width of an entry with its words.
fn needs(ui: &Ui, e: &Entry) -> f32 {
    let g = words::lay(
        ui.painter(),
        &e.words,
        theme::regular(16.0),
        theme::AS_IS,
        300.0,
        1,
    );
    (g.size().x + 46.0).ceil().max(LEAST)
}

/// Entries side by side with their words if a row holds them, or else their letters alone.
fn lay(ui: &Ui, row: Rect, entries: &[Entry], mirrored: bool) -> (Vec<Rect>, bool) {
    let widths: Vec<f32> = entries.iter().map(|e| needs(ui, e)).collect();
    let all: f32 = widths.iter().sum::<f32>() + 4.0 * widths.len() as f32;
    let wide = all <= row.width();
    let letters = ((row.width() + 2.0) / entries.len().max(1) as f32 - 2.0).min(LEAST);
    let mut x = row.left();
    let rects = widths.into_iter().map(|w| {
        let w = if wide { w } else { letters };
        let r = Rect::from_min_size(pos2(x, row.top()), vec2(w, row.height()));
        x += w + if wide { 4.0 } else { 2.0 };
        if mirrored {
            super::places::flipped(row, r)
        } else {
            r
        }
    });
    (rects.collect(), wide)
}

fn entry(ui: &Ui, e: &Entry, rect: Rect, wide: bool) -> bool {
    let t = theme::of(ui.ctx());
    let r = ui.interact(rect, Id::unique(("together-adult", e.act)), Sense::click());
    let name = format!("{}, key {}", e.words, letter(e.key));
    let on = e.on;
    r.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::Button, true, &name);
        info.selected = Some(on);
        info
    });
    let p = ui.painter();
    let (ground, ink, soft) = match (on, r.hovered()) {
        (true, _) => (t.col.peg, t.col.on_peg, t.col.on_peg),
        (false, true) => (t.col.tint, t.col.ink, t.col.ink),
        (false, false) => (t.col.panel, t.col.ink, t.col.soft),
    };
    p.rect_filled(rect.shrink(1.0), CornerRadius::same(8), ground);
    let mid = if wide {
        rect.left_center() + vec2(19.0, 0.0)
    } else {
        rect.center()
    };
    let cap = Rect::from_center_size(mid, vec2(24.0, 24.0));
    p.rect_stroke(
        cap,
        CornerRadius::same(6),
        Stroke::new(1.4, soft),
        StrokeKind::Inside,
    );
    p.text(
        mid,
        Align2::CENTER_CENTER,
        letter(e.key),
        theme::bold(14.0),
        ink,
    );
    if wide {
        let room = rect.with_min_x(rect.left() + 38.0);
        words::line(
            p,
            room,
            Align2::LEFT_CENTER,
            &e.words,
            theme::regular(16.0),
            ink,
        );
    }
    focus_ring(ui, &r, rect, 8);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    let r = if wide { r } else { r.on_hover_text(&e.words) };
    r.clicked()
}
