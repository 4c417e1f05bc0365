//! The cards that are always there: help, stop, break and the others. Pressed, one is shown very
//! large; the day stays where it is.

use egui::{CornerRadius, Rect, StrokeKind, Ui, pos2};

use super::cards::{self, Face, Presses};
use super::places::Places;
use super::{Day, Target};
use crate::ui::pictures::Pictures;
use crate::ui::theme;
use crate::ui::widgets::words;

/// The panel with its cards.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let corner = CornerRadius::same(if places.low { 16 } else { 24 });
    p.rect(
        places.bar,
        corner,
        t.col.panel,
        t.edge(),
        StrokeKind::Inside,
    );
    for (i, (card, rect)) in day.cards.iter().zip(&places.cards).enumerate() {
        let face = Face::from(card);
        if places.words_beside {
            cards::wide(
                p,
                pictures,
                (*rect, false),
                &face,
                day.eyes,
                places.mirrored,
            );
        } else if rect.width() < 76.0 {
            let paper = cards::sheet(p, &t, *rect);
            pictures.symbol(p, paper.shrink(1.0), &face.symbol, day.eyes);
        } else {
            cards::paint(p, pictures, *rect, &face, day.eyes);
        }
        presses.at(ui, Target::Card(i), *rect, &card.label);
    }
}

/// One of them, very large, with what the participant's story says of asking so.
pub fn large(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    (at, said): (usize, Option<&str>),
    presses: &mut Presses,
) {
    let Some(card) = day.cards.get(at) else {
        return;
    };
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let rect = places.very_large();
    cards::paint(p, pictures, rect, &Face::from(card), day.eyes);
    if let Some(words) = said {
        let room = Rect::from_min_max(
            pos2(places.stage.left(), places.window.top() + 6.0),
            pos2(places.stage.right(), rect.top() - 4.0),
        );
        let room = match places.mirrored {
            false => room.with_max_x(places.fold.left() - 8.0),
            true => room.with_min_x(places.fold.right() + 8.0),
        };
        words::label(p, room, words, &[26.0, 22.0, 18.0, 15.0], 2, t.col.ink);
    }
    presses.at(
        ui,
        Target::Close,
        rect,
        &format!("{}: put away", card.label),
    );
}
