//! In what form a step is seen on paper: a drawing, a frame to stick a photograph in, a place for
//! the real thing, words alone or a whole sentence.

use super::desk::{Desk, Person};
use super::frame::picture;
use super::ink;
use super::shapes::{Look, dashes, line, rounded};
use super::words::{TIGHT, Words};
use crate::model::board::{Step, StepState};
use crate::model::finding::Spot;
use crate::model::manner::Form;
use crate::page::Item;
use crate::story;
use crate::story::cards::Card;
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// Whether something is seen beside the words.
pub(super) const fn has_picture(form: Form) -> bool {
    !matches!(form, Form::Word | Form::Sentence)
}

/// The words of a step: its label, or the first sentence of its page in the story.
pub(super) fn words_of(desk: &Desk<'_>, person: &Person<'_>, step: &Step) -> String {
    let sentence = match (step.form, &step.state) {
        (Form::Sentence, StepState::NotToday) => None,
        (Form::Sentence, _) if !step.relabelled => story::sentence(desk.club, step, person.who),
        _ => None,
    };
    sentence.unwrap_or_else(|| step.label.clone())
}

/// The words for a real thing: "object: the blue cup".
pub(super) fn object_words(thing: &str) -> String {
    format!("object: {}", thing.trim())
}

/// What is seen beside the words of a card in this form, and the words that stand for it.
pub(super) fn figure(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    (card, form): (&Card, Form),
    spot: Spot,
    at: Rect,
) -> (String, Vec<Item>) {
    match form {
        Form::Photograph => (photo_alt(&card.label), photo_frame(at, true)),
        Form::Object => (object_alt(&card.label), object_place(at)),
        _ => {
            let drawn = desk.art(&card.symbol, &card.label, person, spot);
            (
                desk.alt_for(person, &card.symbol, &card.label),
                vec![picture(&drawn, at)],
            )
        }
    }
}

/// What stands for a frame in words.
pub(super) fn photo_alt(label: &str) -> String {
    format!("Frame for a photograph: {}", label.trim())
}

/// What stands for the place of a thing in words.
pub(super) fn object_alt(label: &str) -> String {
    format!("Place for an object: {}", label.trim())
}

/// An empty frame with ticks at its corners; in words its size, which the photograph covers.
pub(super) fn photo_frame(at: Rect, in_words: bool) -> Vec<Item> {
    let edge = Look::line(ink::RULE, ink::THIN).on(ink::PAPER);
    let mut items = vec![rounded(at, Length::ZERO, edge)];
    let arm = at.w.min(at.h).scale(0.16);
    let corners = [
        (at.x, at.y, 1, 1),
        (at.right(), at.y, -1, 1),
        (at.x, at.bottom(), 1, -1),
        (at.right(), at.bottom(), -1, -1),
    ];
    for (x, y, across, down) in corners {
        let p = Point::new(x, y);
        let width = Length::um(600);
        let z = Length::ZERO;
        items.push(line(p, p.moved(arm * across, z), ink::INK, width));
        items.push(line(p, p.moved(z, arm * down), ink::INK, width));
    }
    let size = format!("{:.0} × {:.0} mm", at.w.to_mm(), at.h.to_mm());
    let room = at.w - Length::mm(3.0);
    let style = Style::regular(Length::pt(9.0));
    let words = ["Photograph", &size].map(|w| Words::line(w, &style, room));
    if in_words && words.iter().all(|w| !w.cut) && at.h > Length::mm(14.0) {
        let [above, below] = words;
        let gap = Length::mm(0.6);
        let all = above.height() + gap + below.height();
        let (x, top) = (at.center().x, at.center().y - all / 2);
        items.extend(above.centred(Point::new(x, top), ink::SOFT));
        let second = top + above.height() + gap;
        items.extend(below.centred(Point::new(x, second), ink::SOFT));
    }
    items
}

/// The outline of a place where a real thing hangs or lies: a tray with a dashed ring in it.
pub(super) fn object_place(at: Rect) -> Vec<Item> {
    let r = at.middle_square();
    let edge = Look::line(ink::INK, ink::LINE).on(ink::PAPER);
    let radius = r.w.scale(0.16);
    let inner = r.shrink(r.w.scale(0.07));
    let ring = r.shrink(r.w.scale(0.2));
    let light = Look::line(ink::SEAL_EDGE, ink::THIN).on(ink::SEAL);
    vec![
        rounded(r, radius, edge),
        rounded(inner, radius.scale(0.7), light),
        rounded(ring, ring.w / 2, dashes().on(ink::PAPER)),
    ]
}

/// Words alone, in the largest of some letters at which they keep inside a place; cut off where
/// even the smallest do not.
pub(super) fn words_alone(words: &str, room: Rect, sizes: (f64, f64), bold: bool) -> Words {
    let (least, most) = sizes;
    let mut pt = most.max(least);
    loop {
        let size = Length::pt(pt);
        let style = if bold {
            Style::bold(size)
        } else {
            Style::regular(size)
        };
        let lines = usize::try_from(room.h.times(size.scale(TIGHT))).unwrap_or(1);
        let set = Words::wrapped(words, &style, room.w, TIGHT, lines.max(1));
        if !set.cut || pt <= least {
            return set;
        }
        pt = (pt * 0.94).max(least);
    }
}
