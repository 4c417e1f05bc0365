//! The questions at the end: a picture and how it is answered in the participant's own way.

use egui::{Ui, vec2};

use super::ask::{Asking, Way};
use super::cards::{self, Face, Presses};
use super::places::Places;
use super::views::{heading, peg, rope};
use super::{Day, Target};
use crate::model::ids::SymbolId;
use crate::model::manner::{Form, Run};
use crate::model::record::Answered;
use crate::ui::pictures::Pictures;
use crate::ui::theme;

/// The answers of a thumb: picture and words.
pub const THUMBS: [(&str, &str, Answered); 3] = [
    ("good", "Thumb up", Answered::ThumbUp),
    ("not_sure", "Not sure", Answered::NotSure),
    ("not_good", "Not good", Answered::NotGood),
];
/// What the adult saw when it was acted out.
pub const SHOWING: [(&str, &str, Answered); 2] = [
    ("yes", "Showed it", Answered::Showed),
    ("later", "Not this time", Answered::DidNotShow),
];

/// What is asked.
pub fn words(day: &Day<'_>, asking: &Asking) -> String {
    let Some(q) = asking.now() else {
        return "Thank you.".to_owned();
    };
    let label = &day.face(q.about).label;
    match asking.way {
        Way::Thumb => format!("How is this? {label}"),
        Way::Point => match asking.pointed {
            None => q.words.clone(),
            Some(_) => format!("Here it is: {label}"),
        },
        Way::Picture => format!("Show me: {label}"),
    }
}

/// The question that stands, or the end of them.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    asking: &Asking,
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    rope(p, &t, places, Run::LeftToRight);
    heading(p, &t, places.head(), &words(day, asking), places);
    let Some(q) = asking.now() else {
        let face = Face::from(&crate::story::cards::finished(day.club));
        let (rect, _) = places.picture_and_beside();
        let rect = rect.translate(vec2(places.stage.center().x - rect.center().x, 0.0));
        cards::paint(p, pictures, rect, &face, day.eyes);
        presses.at(ui, Target::On, rect, "Back to the day");
        return;
    };
    match asking.way {
        Way::Thumb => side(ui, pictures, day, (places, q.about), &THUMBS, presses),
        Way::Picture => side(ui, pictures, day, (places, q.about), &SHOWING, presses),
        Way::Point => point(ui, pictures, day, places, asking, presses),
    }
}

fn mark(symbol: &str, label: &str) -> Face {
    Face {
        symbol: SymbolId::new(symbol),
        label: label.to_owned(),
        form: Form::Drawing,
        thing: String::new(),
        off: false,
    }
}

/// The picture on one side, the answers on the other.
fn side(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    (places, about): (&Places, usize),
    answers: &[(&str, &str, Answered)],
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let (picture, rects) = places.answers(answers.len());
    let face = day.face(about);
    cards::paint(p, pictures, picture, &face, day.eyes);
    peg(
        p,
        &t,
        picture.center_top() - vec2(0.0, super::places::HANG - 2.0),
    );
    cards::named(ui, "asked", picture, &face.label);
    for (i, ((symbol, label, _), rect)) in answers.iter().zip(rects).enumerate() {
        let face = mark(symbol, label);
        cards::wide(p, pictures, (rect, false), &face, day.eyes, places.mirrored);
        presses.at(ui, Target::Answer(i), rect, label);
    }
}

/// Pictures to point at. When one was, the one in question stays and the others step back; nothing
/// says right or wrong.
fn point(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    asking: &Asking,
    presses: &mut Presses,
) {
    let Some(q) = asking.now() else { return };
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let rects = places.options(q.point_at.len(), 0);
    for (i, (step, rect)) in q.point_at.iter().zip(rects).enumerate() {
        let face = day.face(*step);
        if asking.pointed.is_some() && *step != q.about {
            continue;
        }
        cards::paint(p, pictures, rect, &face, day.eyes);
        peg(
            p,
            &t,
            rect.center_top() - vec2(0.0, super::places::HANG - 2.0),
        );
        if asking.pointed.is_some() {
            presses.at(ui, Target::On, rect, &format!("{}: go on", face.label));
        } else {
            presses.at(ui, Target::Answer(i), rect, &face.label);
        }
    }
}
