//! One step of a large-print board: what is ticked or covered, what is seen, and "goes on".

use super::desk::{Desk, Person};
use super::frame::picture;
use super::large_words::SMALLEST_PT;
use super::shapes::{Look, circle, dashes, face_down, rounded};
use super::words::Words;
use super::writer::{Everyone, PageWriter};
use super::{forms, ink, strand};
use crate::model::board::{Step, StepState};
use crate::model::manner::{Finishing, Form};
use crate::page::{Item, Source};
use crate::symbols::library::Drawn;
use crate::text::Style;
use crate::units::colour::Rgb;
use crate::units::{Length, Point, Rect};

/// Radius of a ring to tick.
pub(super) const RING: Length = Length::um(5_500);
/// Side of a place to cover.
const COVER: Length = Length::um(9_000);

/// What drawing the steps needs.
pub(super) struct Drawing<'a> {
    pub desk: &'a Desk<'a>,
    pub person: &'a Person<'a>,
    pub pictures: &'a [Drawn],
}

impl Drawing<'_> {
    /// The step with this number from zero.
    pub fn step(&self, index: usize) -> &Step {
        &self.person.board.steps[index]
    }

    /// Where its words come from.
    pub fn source(&self, index: usize) -> Option<Source> {
        Some(Source::Step(self.step(index).at))
    }

    /// The name of the part of the day of a step, no wider than a width.
    pub fn part_name(&self, index: usize, width: Length) -> Words {
        let part = self.desk.club.part(self.step(index).part);
        let style = Style::bold(Length::pt(SMALLEST_PT));
        Words::line(part.map_or("", |p| p.name.as_str()), &style, width)
    }

    /// The inks of a step's label, and of what stands with it.
    pub fn inks(&self, index: usize) -> (Rgb, Rgb) {
        match self.step(index).state {
            StepState::NotToday => (ink::SOFT, ink::SOFT),
            _ => (ink::INK, ink::SOFT),
        }
    }

    /// What is ticked or covered, and the plate of the peg.
    pub fn marks(&self, index: usize, ring: Point, peg: Point, page: &mut PageWriter<Everyone>) {
        let not_today = self.step(index).state == StepState::NotToday;
        let to_tick = self.person.who.manner.finishing == Finishing::Tick;
        let mut marks = vec![match (not_today, to_tick) {
            (true, _) => circle(ring, RING, dashes().on(ink::PAPER)),
            (false, true) => strand::ring(ring, RING),
            (false, false) => strand::cover(ring, COVER),
        }];
        marks.extend(strand::peg(peg));
        page.artifact(marks);
    }

    /// What is seen of a step.
    pub fn plate(&self, index: usize, at: Rect, page: &mut PageWriter<Everyone>) {
        let step = self.step(index);
        let (alt, items) = match step.form {
            _ if step.state == StepState::NotToday => {
                let alt = format!("Not today: {}", step.label);
                (alt, not_today_plate(at))
            }
            Form::Photograph => (forms::photo_alt(&step.label), forms::photo_frame(at, true)),
            Form::Object => (forms::object_alt(&step.label), forms::object_place(at)),
            Form::Drawing => {
                let alt = self.desk.alt_for(self.person, &step.symbol, &step.label);
                (alt, vec![picture(&self.pictures[index], at)])
            }
            Form::Word | Form::Sentence => return,
        };
        page.figure(self.source(index), alt, items);
    }
}

/// "Goes on: page 3", in the smallest letters of large print.
pub(super) fn goes_on(page: usize) -> Words {
    let style = Style::bold(Length::pt(SMALLEST_PT));
    Words::line(&format!("Goes on: page {page}"), &style, Length::mm(90.0))
}

/// The back of a tile, with "Not today" on it.
fn not_today_plate(r: Rect) -> Vec<Item> {
    let mut items = face_down(r, r.w.scale(0.1));
    let size = Length::pt((r.w.to_mm() * 0.52).clamp(9.0, 26.0));
    let words = Words::wrapped("Not today", &Style::bold(size), r.w.scale(0.62), 1.15, 2);
    let plate = Rect {
        x: r.x + r.w.scale(0.1),
        y: r.center().y - words.height() / 2 - Length::mm(1.6),
        w: r.w.scale(0.8),
        h: words.height() + Length::mm(3.2),
    };
    items.push(rounded(plate, Length::mm(1.6), Look::filled(ink::PAPER)));
    items.extend(words.amid(r.center(), ink::INK));
    items
}
