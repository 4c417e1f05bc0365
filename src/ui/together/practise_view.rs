//! A change practised, in three quiet pictures: the question, what is not today, what comes instead.

use egui::{Ui, vec2};

use super::cards::{self, Face, Presses};
use super::places::Places;
use super::practise::{Practise, Stage};
use super::views::{heading, peg, rope};
use super::{Day, Target};
use crate::model::hand::Content;
use crate::model::ids::SymbolId;
use crate::model::manner::Run;
use crate::story::cards::change;
use crate::ui::pictures::Pictures;
use crate::ui::theme;

/// The picture of this moment; pressing goes on.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    practise: &Practise,
    presses: &mut Presses,
) {
    let Some(what) = practise.now() else { return };
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    rope(p, &t, places, Run::LeftToRight);
    heading(p, &t, places.head(), &words(practise), places);
    let tile = change(day.club);
    let condition = what.condition.map(|k| Content {
        activity: None,
        symbol: SymbolId::new(k.symbol()),
        label: k.label().to_owned(),
    });
    let left = condition
        .as_ref()
        .map_or_else(|| Face::from(&tile), Face::from);
    let now = Face::of(&what.was, None);
    let off = Face {
        off: true,
        ..now.clone()
    };
    let shown = match practise.stage {
        Stage::Asked => [left, now],
        Stage::Off => [off, Face::from(&tile)],
        Stage::Instead => {
            let instead = what.instead.as_ref().map(|s| Face::of(s, None));
            [off, instead.unwrap_or_else(|| Face::from(&tile))]
        }
    };
    let rects = places.two();
    for (face, rect) in shown.iter().zip(rects) {
        cards::paint(p, pictures, rect, face, day.eyes);
        peg(
            p,
            &t,
            rect.center_top() - vec2(0.0, super::places::HANG - 2.0),
        );
    }
    let both = rects[0].union(rects[1]);
    presses.at(
        ui,
        Target::On,
        both,
        &format!("{} Press to go on", words(practise)),
    );
}

/// What is said at this moment.
pub fn words(practise: &Practise) -> String {
    let Some(what) = practise.now() else {
        return String::new();
    };
    match (practise.stage, &what.instead) {
        (Stage::Asked, _) => what.question(),
        (Stage::Off, _) => format!("Not today: {}.", what.was.label),
        (Stage::Instead, Some(step)) => format!("Instead: {}.", step.label),
        (Stage::Instead, None) => String::new(),
    }
}
