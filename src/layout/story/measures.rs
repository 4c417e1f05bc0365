//! Measures of a story's pages, the same on all pages of one story.

use super::super::desk::Person;
use super::super::frame;
use super::super::shapes;
use crate::text::Style;
use crate::units::{Length, Rect, Size};

/// Smallest letters of a story; see the smallest letters of large print.
const SMALLEST_PT: f64 = 18.0;
const LARGEST_PT: f64 = 40.0;
/// Letters of a story for each point of the participant's large print, where nothing else is said.
const PER_TEXT_PT: f64 = 0.66;
/// Largest letters in points for each millimetre of the page's width where nothing else is said, so
/// that a small page still holds a sentence.
const PT_PER_MM: f64 = 0.18;
/// Sentences stand beside the picture if so many letter sizes go in a line there; else below it.
const EMS_BESIDE: f64 = 8.5;
/// Longest line in letter sizes: no more than 70 characters, which is the most that clear-print
/// guidance asks for (RNIB: 60 to 70). A character of the face is half a letter size wide or more.
const EMS_A_LINE: f64 = 33.0;
/// White between picture and sentences.
pub(super) const BESIDE_GAP: Length = Length::um(9_000);
/// White between two sentences, in letter sizes.
pub(super) const BETWEEN: f64 = 0.75;
/// White between a sentence and the same in the second language, in letter sizes.
pub(super) const BETWEEN_LANGUAGES: f64 = 0.3;
/// Height of the mark and the story's title at the top.
pub(super) const TOP: Length = Length::um(11_000);
/// From there down to the rope, and from the rope to the heading.
pub(super) const TO_ROPE: Length = Length::um(6_500);
const TO_HEADING: Length = Length::um(10_000);

/// Measures of a story's pages.
#[derive(Clone)]
pub(super) struct Measures {
    pub size: Size,
    /// From the heading to the footer.
    pub body: Rect,
    pub letters: Style,
    pub heading: Style,
    /// Side of the picture.
    pub picture: Length,
    /// Side of a card.
    pub card: Length,
    /// Side of a step in small.
    pub small: Length,
    pub beside: bool,
    /// Longest line.
    pub line: Length,
}

impl Measures {
    pub fn of(person: &Person<'_>, size: Size) -> Self {
        let edge = frame::EDGE;
        let top = edge + TOP + TO_ROPE + TO_HEADING;
        let body = Rect {
            x: edge,
            y: top,
            w: size.w - edge * 2,
            h: size.h - top - frame::footer_room(size) - Length::mm(7.0),
        };
        let letters = Style::regular(letters(person, body.w));
        let large = body.w.scale(0.47).min(body.h.scale(0.6));
        let beside = body.w - large - BESIDE_GAP >= letters.size.scale(EMS_BESIDE);
        let is_small = body.w.min(body.h) < Length::mm(140.0);
        let heading = if is_small { 24.0 } else { 32.0 };
        let side = |share: f64, from: f64, to: f64| {
            let side = body.w.scale(share);
            side.clamp(Length::mm(from), Length::mm(to))
        };
        Self {
            size,
            body,
            line: letters.size.scale(EMS_A_LINE),
            letters,
            heading: Style::bold(Length::pt(heading)),
            picture: if beside {
                large
            } else {
                large.min(body.h.scale(0.4))
            },
            card: side(0.22, 26.0, 46.0),
            small: side(0.2, 24.0, 36.0),
            beside,
        }
    }

    /// The same with smaller pictures and cards.
    pub fn scaled(&self, by: f64) -> Self {
        Self {
            // Beside the sentences a smaller picture makes no more room below.
            picture: self.picture.scale(if self.beside { 1.0 } else { by }),
            card: self.card.scale(by),
            small: self.small.scale(by),
            ..self.clone()
        }
    }

    /// The place of a picture that stands alone on its page.
    pub fn alone(&self, top: Length) -> Rect {
        let room = self.body.bottom() - top;
        let side = self.body.w.min(room).min(Length::mm(220.0));
        let middle = self.body.center().x - side / 2;
        let y = top + (room - side) / 2;
        shapes::square(middle, y, side)
    }
}

/// As the family chose, or as follows from the large print of the board.
fn letters(person: &Person<'_>, width: Length) -> Length {
    if let Some(chosen) = person.who.telling.letters {
        return Length::pt(f64::from(chosen));
    }
    let most = (width.to_mm() * PT_PER_MM).clamp(SMALLEST_PT, LARGEST_PT);
    let pt = (f64::from(person.who.text_pt) * PER_TEXT_PT).clamp(SMALLEST_PT, most);
    Length::pt(pt.round())
}
