//! The face of a tile: what the participant understands a step by, its words at one size over the
//! participant's whole set, and the mark small in the corner.
//!
//! Tiles that are not square keep the picture above the words. Words alone are a set of their own, larger, as nothing else is on their tiles; so are sentences.

use std::ops::Range;

use super::desk::{Desk, Person};
use super::fit::{Labels, fit};
use super::forms;
use super::frame::picture;
use super::ready::{self, Ready};
use super::shapes::{Look, rounded};
use super::words::{TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{ink, strips};
use crate::model::board::{Step, shown};
use crate::model::finding::Spot;
use crate::model::hand::Content;
use crate::model::manner::{Form, Reach};
use crate::page::Source;
use crate::story::cards::{self, Card};
use crate::text::{Direction, Room, Style};
use crate::units::{Length, Point, Rect, Size};

/// Smallest letters on a tile: the European Blind Union and easy-read guidance ask for 14 points.
pub(super) const SMALLEST_PT: f64 = 14.0;
/// Letters on a tile of 100 mm, in points; other tiles in proportion.
const PT_PER_100_MM: f64 = 31.0;
/// Letters of words alone on a tile of 100 mm, in points.
const ALONE_PT_PER_100_MM: f64 = 46.0;
/// Letters of a sentence on a tile of 100 mm, in points.
const SENTENCE_PT_PER_100_MM: f64 = 30.0;

/// Pieces to count down with. Common practice: five.
const COUNTDOWN: usize = 5;

/// What is on one tile.
#[derive(Clone, Debug)]
pub(super) struct Face {
    pub card: Card,
    pub shape: Shape,
    pub source: Option<Source>,
    pub spot: Spot,
}

/// What a tile shows beside its words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shape {
    /// A step or a card in a form.
    Form(Form),
    /// Arrows to cut apart, one of which is laid beside the strip in use.
    Pointers,
    /// A large number to count down with.
    Number(usize),
}

/// Faces that are one card: the first says what it is about.
#[derive(Clone, Debug)]
pub(super) struct Several {
    /// The question and what can be chosen, or "wait" and what to do, among the faces.
    pub faces: Range<usize>,
    /// Whether it belongs to the always-there cards rather than to a step.
    pub is_card: bool,
}

/// All tiles and cards of a participant, with labels of one size.
#[derive(Clone, Debug)]
pub(super) struct TileSet {
    /// Printed size of a tile.
    pub size: Size,
    pub faces: Vec<Face>,
    /// The tiles of the board among the faces: steps, dry replacements, change, pointers.
    pub tiles: Range<usize>,
    /// The always-there cards among the faces.
    pub cards: Range<usize>,
    /// Cards of several faces: choices, then waiting.
    pub several: Vec<Several>,
    /// The words of each face.
    pub words: Vec<Words>,
    /// Faces whose words do not fit.
    pub overfull: Vec<usize>,
    /// Height that the words below pictures take.
    below: Length,
}

impl TileSet {
    /// The set of a participant. Steps that are real things have no tile, nor has what is ready
    /// instead and is one.
    pub fn of(desk: &Desk<'_>, person: &Person<'_>) -> Self {
        let board = desk.board_spot(person);
        let steps = person.board.steps.iter();
        let steps = steps.filter(|s| s.form != Form::Object);
        let mut faces: Vec<Face> = steps.map(|s| step_face(desk, person, s)).collect();
        faces.extend(ready::tiles(desk, person).into_iter().map(ready_face));
        if person.who.manner.reach != Reach::Whole && !person.board.steps.is_empty() {
            faces.push(Face {
                shape: Shape::Pointers,
                ..plain(strips::now_on(), Form::Drawing, board)
            });
        }
        let tiles = 0..faces.len();
        faces.extend(ready::cards(desk, person).into_iter().map(ready_face));
        let countdown = person.who.standing.countdown;
        faces.extend((1..=COUNTDOWN).rev().filter(|_| countdown).map(|n| Face {
            shape: Shape::Number(n),
            ..plain(cards::countdown(desk.club, n), Form::Drawing, board)
        }));
        let cards = tiles.end..faces.len();
        let mut several = choices(desk, person, &mut faces);
        several.extend(waiting(desk, person, &mut faces));
        let size = person.who.tile_size();
        let mut set = Self {
            size,
            words: vec![Words::default(); faces.len()],
            overfull: Vec::new(),
            below: Length::ZERO,
            faces,
            tiles,
            cards,
            several,
        };
        set.set_words();
        set
    }

    /// Labels, words alone and sentences: three sets, each at one size.
    fn set_words(&mut self) {
        let size = self.size;
        let label = |s: Shape| matches!(s, Shape::Form(f) if forms::has_picture(f));
        self.below = self.set_some(&label, &room(size)).height();
        let alone = alone_room(size, ALONE_PT_PER_100_MM, true);
        self.set_some(&|s| s == Shape::Form(Form::Word), &alone);
        let sentence = alone_room(size, SENTENCE_PT_PER_100_MM, false);
        self.set_some(&|s| s == Shape::Form(Form::Sentence), &sentence);
        self.overfull.sort_unstable();
    }

    fn set_some(&mut self, which: &dyn Fn(Shape) -> bool, room: &Room) -> Labels {
        let some: Vec<usize> = (0..self.faces.len())
            .filter(|&i| which(self.faces[i].shape))
            .collect();
        let words: Vec<&str> = some
            .iter()
            .map(|&i| self.faces[i].card.label.as_str())
            .collect();
        let labels = fit(&words, room, TIGHT);
        for (at, words) in some.iter().zip(&labels.words) {
            self.words[*at] = words.clone();
        }
        self.overfull
            .extend(labels.overfull.iter().map(|&i| some[i]));
        labels
    }

    /// Draws a face in a place of the set's size, with the mark where it is someone's own.
    pub fn draw(
        &self,
        desk: &mut Desk<'_>,
        person: &Person<'_>,
        index: usize,
        (at, marked): (Rect, bool),
        page: &mut PageWriter<Everyone>,
    ) {
        let corner = Look::line(ink::RULE, ink::HAIRLINE);
        page.artifact(vec![rounded(at, corner_radius(at.w.min(at.h)), corner)]);
        self.draw_inside(desk, person, index, at, page);
        if marked && self.faces[index].shape != Shape::Pointers {
            draw_mark(person, at, page);
        }
    }

    /// The same without edge and mark, for a card of several.
    pub fn draw_inside(
        &self,
        desk: &mut Desk<'_>,
        person: &Person<'_>,
        index: usize,
        at: Rect,
        page: &mut PageWriter<Everyone>,
    ) {
        let face = &self.faces[index];
        let words = &self.words[index];
        let form = match face.shape {
            Shape::Pointers => return strips::draw_pointers(at, page),
            Shape::Number(n) => return draw_number(n, at, page),
            Shape::Form(form) => form,
        };
        if !forms::has_picture(form) {
            page.paragraph(face.source, words.amid(at.center(), ink::INK));
            return;
        }
        let pad = pad(at.w.min(at.h));
        let area = Rect {
            x: at.x + pad,
            y: at.y + pad,
            w: at.w - pad * 2,
            h: at.h - pad * 2 - self.below - at.w.min(at.h).scale(0.03),
        };
        let area = match form {
            // Clear of the mark in the corner.
            Form::Photograph => Rect {
                w: area.w - mark_side(at.w.min(at.h)) * 2,
                x: area.x + mark_side(at.w.min(at.h)),
                ..area
            },
            _ => area,
        };
        let (alt, items) = forms::figure(desk, person, (&face.card, form), face.spot, area);
        page.figure(face.source, alt, items);
        let top = at.bottom() - pad - self.below + (self.below - words.height()) / 2;
        let middle = Point::new(at.center().x, top);
        page.paragraph(face.source, words.centred(middle, ink::INK));
    }
}

fn step_face(desk: &Desk<'_>, person: &Person<'_>, step: &Step) -> Face {
    Face {
        card: Card {
            symbol: step.symbol.clone(),
            label: forms::words_of(desk, person, step),
        },
        shape: Shape::Form(step.form),
        source: Some(Source::Step(step.at)),
        spot: desk.step_spot(person, step.at),
    }
}

fn ready_face(ready: Ready) -> Face {
    Face {
        card: ready.card,
        shape: Shape::Form(ready.form),
        source: None,
        spot: ready.spot,
    }
}

/// What can be chosen, and its question. A real thing or a sentence has no card of its own here: a drawing stands
/// for it.
fn plain(card: Card, form: Form, spot: Spot) -> Face {
    let form = match form {
        Form::Object | Form::Sentence => Form::Drawing,
        form => form,
    };
    Face {
        card,
        shape: Shape::Form(form),
        source: None,
        spot,
    }
}

/// Adds the faces of all choice cards: the question, then what can be chosen.
fn choices(desk: &Desk<'_>, person: &Person<'_>, faces: &mut Vec<Face>) -> Vec<Several> {
    let mut all = Vec::new();
    for step in person.board.done().filter(|s| !s.options.is_empty()) {
        let from = faces.len();
        let spot = desk.step_spot(person, step.at);
        let question = match person.who.manner.form {
            Form::Word => Form::Word,
            _ => Form::Drawing,
        };
        faces.push(plain(cards::choose(desk.club), question, spot));
        let options = step.options.iter();
        faces.extend(options.map(|o| option_face(desk, person, o, spot)));
        all.push(Several {
            faces: from..faces.len(),
            is_card: false,
        });
    }
    all
}

/// Adds the faces of the card for waiting, where there is one: that it is waited, and what to do.
fn waiting(desk: &Desk<'_>, person: &Person<'_>, faces: &mut Vec<Face>) -> Option<Several> {
    let what = person.who.standing.waiting.as_ref()?;
    let from = faces.len();
    let spot = desk.board_spot(person);
    let form = match person.who.manner.form {
        Form::Word => Form::Word,
        _ => Form::Drawing,
    };
    faces.push(plain(cards::wait(desk.club), form, spot));
    faces.push(option_face(desk, person, what, spot));
    Some(Several {
        faces: from..faces.len(),
        is_card: true,
    })
}

/// A number as large as the tile allows. No time stands on it.
fn draw_number(number: usize, at: Rect, page: &mut PageWriter<Everyone>) {
    let size = at.h.min(at.w).scale(0.62);
    let words = Words::line(&number.to_string(), &Style::bold(size), at.w);
    page.paragraph(None, words.amid(at.center(), ink::INK));
}

fn option_face(desk: &Desk<'_>, person: &Person<'_>, option: &Content, spot: Spot) -> Face {
    let form = person.who.manner.form_of(option.activity);
    let shown = shown(desk.club, option);
    let card = Card {
        symbol: shown.symbol,
        label: shown.label,
    };
    plain(card, form, spot)
}

/// The mark, small in the corner of a tile.
pub(super) fn draw_mark(person: &Person<'_>, at: Rect, page: &mut PageWriter<Everyone>) {
    let least = at.w.min(at.h);
    let (pad, side) = (pad(least), mark_side(least));
    let mark = Rect::new(
        Point::new(at.right() - pad.scale(0.8) - side, at.y + pad.scale(0.8)),
        Size::square(side),
    );
    page.artifact(vec![picture(&person.mark, mark)]);
}

fn mark_side(side: Length) -> Length {
    side.scale(0.075).max(Length::mm(3.2))
}

/// White inside the edge of a tile.
fn pad(side: Length) -> Length {
    side.scale(0.05).max(Length::mm(1.8))
}

/// Radius that the corners of the paper can be cut to before laminating.
pub(super) fn corner_radius(side: Length) -> Length {
    side.scale(0.06).min(Length::mm(4.0))
}

/// The place for the words on a tile.
fn room(size: Size) -> Room {
    let side = size.w.min(size.h);
    let largest = (side.to_mm() * PT_PER_100_MM / 100.0).max(SMALLEST_PT);
    Room {
        width: size.w - pad(side) * 2,
        height: side.scale(0.42),
        max_lines: if size.w < Length::mm(70.0) || size.h < Length::mm(70.0) {
            2
        } else {
            3
        },
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(largest),
        bold: true,
        direction: Direction::Auto,
    }
}

/// The place for words that are alone on a tile, below the mark and as far from the lower edge.
fn alone_room(size: Size, pt_per_100_mm: f64, bold: bool) -> Room {
    let side = size.w.min(size.h);
    let largest = (side.to_mm() * pt_per_100_mm / 100.0).max(SMALLEST_PT);
    Room {
        width: size.w - pad(side) * 2,
        height: size.h - (mark_side(side) + pad(side)) * 2,
        max_lines: 12,
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(largest),
        bold,
        direction: Direction::Auto,
    }
}
