//! A real choice: what the board offers, and always something else and no thanks.

use egui::Ui;

use super::cards::{self, Face, Presses};
use super::places::Places;
use super::views::{heading, peg, rope};
use super::{Day, Target};
use crate::model::board::Step;
use crate::model::hand::Content;
use crate::model::manner::Run;
use crate::story::cards::choose;
use crate::ui::pictures::Pictures;
use crate::ui::theme;

/// What can be chosen at a step, and how much of it the board itself offers.
pub fn options(day: &Day<'_>, step: &Step) -> (Vec<Content>, usize) {
    // A word that the club itself has for such a picture goes before ours.
    let words = |symbol: &str| {
        let mut all = day.club.activities.iter();
        let own = all.find(|a| a.symbol.as_str() == symbol && !a.label.trim().is_empty());
        own.map(|a| a.label.clone())
    };
    super::walk::options(step, words)
}

/// The options, all open, none before another.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    step: &Step,
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    rope(p, &t, places, Run::LeftToRight);
    let (all, own) = options(day, step);
    let rects = places.options(own, all.len() - own);
    heading(p, &t, places.head(), &choose(day.club).label, places);
    for (i, (option, rect)) in all.iter().zip(rects).enumerate() {
        let face = Face::from(option);
        if i < own {
            cards::paint(p, pictures, rect, &face, day.eyes);
            peg(
                p,
                &t,
                rect.center_top() - egui::vec2(0.0, super::places::HANG - 2.0),
            );
        } else {
            cards::wide(p, pictures, (rect, false), &face, day.eyes, places.mirrored);
        }
        presses.at(
            ui,
            Target::Option(i),
            rect,
            &format!("Choose {}", option.label),
        );
    }
}
