//! The face of a tile: one picture, its words at one size over the participant's whole set, and the
//! mark small in the corner.

use std::ops::Range;

use super::desk::{Desk, Person};
use super::fit::{Labels, fit};
use super::frame::picture;
use super::ink;
use super::shapes::{Look, rounded};
use super::words::TIGHT;
use super::writer::{Everyone, PageWriter};
use crate::model::finding::Spot;
use crate::page::Source;
use crate::story::cards::{self, Card};
use crate::text::{Direction, Room};
use crate::units::{Length, Point, Rect, Size};

/// Smallest letters on a tile: the European Blind Union and easy-read guidance ask for 14 points.
pub(super) const SMALLEST_PT: f64 = 14.0;
/// Letters on a tile of 100 mm, in points; other tiles in proportion.
const PT_PER_100_MM: f64 = 31.0;

/// What is on one tile.
#[derive(Clone, Debug)]
pub(super) struct Face {
    pub card: Card,
    pub source: Option<Source>,
    pub spot: Spot,
}

/// All tiles and cards of a participant, with labels of one size.
#[derive(Clone, Debug)]
pub(super) struct TileSet {
    pub side: Length,
    pub faces: Vec<Face>,
    /// The tiles of the board among the faces: steps, dry replacements, change.
    pub tiles: Range<usize>,
    /// The always-there cards among the faces.
    pub cards: Range<usize>,
    pub labels: Labels,
}

impl TileSet {
    /// The set of a participant.
    pub fn of(desk: &Desk<'_>, person: &Person<'_>) -> Self {
        let step = |s: &crate::model::board::Step| Face {
            card: Card {
                symbol: s.symbol.clone(),
                label: s.label.clone(),
            },
            source: Some(Source::Step(s.at)),
            spot: desk.step_spot(person, s.at),
        };
        let plain = |card: Card, spot: Spot| Face {
            card,
            source: None,
            spot,
        };
        let board = desk.board_spot(person);
        let mut faces: Vec<Face> = person.board.steps.iter().map(step).collect();
        for ready in cards::dry_replacements(desk.club, &person.board) {
            faces.push(plain(ready.dry, Spot::Activity(ready.activity)));
        }
        faces.push(plain(cards::change(desk.club), board));
        let tiles = 0..faces.len();
        for card in cards::always_there(desk.club) {
            faces.push(plain(card, board));
        }
        let cards = tiles.end..faces.len();
        let side = person.who.tile;
        let words: Vec<&str> = faces.iter().map(|f| f.card.label.as_str()).collect();
        let labels = fit(&words, &room(side), TIGHT);
        Self {
            side,
            faces,
            tiles,
            cards,
            labels,
        }
    }

    /// Draws a face in a square of the set's side.
    pub fn draw(
        &self,
        desk: &mut Desk<'_>,
        person: &Person<'_>,
        index: usize,
        at: Rect,
        page: &mut PageWriter<Everyone>,
    ) {
        let face = &self.faces[index];
        let pad = pad(at.w);
        let corner = Look::line(ink::RULE, ink::HAIRLINE);
        page.artifact(vec![rounded(at, corner_radius(at.w), corner)]);
        let label_height = self.labels.height();
        let gap = at.w.scale(0.03);
        let area = Rect {
            x: at.x + pad,
            y: at.y + pad,
            w: at.w - pad * 2,
            h: at.h - pad * 2 - label_height - gap,
        };
        let drawn = desk.art(&face.card.symbol, &face.card.label, person, face.spot);
        let alt = desk.alt(&face.card.symbol, &face.card.label);
        page.figure(face.source, alt, vec![picture(&drawn, area)]);
        let words = &self.labels.words[index];
        let top = at.bottom() - pad - label_height + (label_height - words.height()) / 2;
        let middle = Point::new(at.center().x, top);
        page.paragraph(face.source, words.centred(middle, ink::INK));
        let side = at.w.scale(0.075).max(Length::mm(3.2));
        let mark = Rect::new(
            Point::new(at.right() - pad.scale(0.8) - side, at.y + pad.scale(0.8)),
            Size::square(side),
        );
        page.artifact(vec![picture(&person.mark, mark)]);
    }
}

/// White inside the edge of a tile.
fn pad(side: Length) -> Length {
    side.scale(0.05).max(Length::mm(1.8))
}

/// Radius that the corners of the paper can be cut to before laminating.
fn corner_radius(side: Length) -> Length {
    side.scale(0.06).min(Length::mm(4.0))
}

/// The place for the words on a tile.
fn room(side: Length) -> Room {
    let largest = (side.to_mm() * PT_PER_100_MM / 100.0).max(SMALLEST_PT);
    Room {
        width: side - pad(side) * 2,
        height: side.scale(0.42),
        max_lines: if side < Length::mm(70.0) { 2 } else { 3 },
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(largest),
        bold: true,
        direction: Direction::Auto,
    }
}
