//! The place where a picture is drawn, over the whole window: what to draw with at the left, the
//! paper in the middle, at the right what it will look like and what it is called.

mod fields;
mod hand;
mod keep;
mod keys;
mod paper;
mod preview;
mod show;
mod tools;

pub use hand::Tool;
pub use show::{Went, show};

use self::hand::Hand;
use super::picker::Picker;
use crate::drawing::colours::WIDTHS;
use crate::drawing::gesture::{Gesture, Look, Pen, Spot};
use crate::drawing::sketch::Sketch;
use crate::model::club::Club;
use crate::model::ids::{ParticipantId, PictureId, SymbolId};
use crate::model::picture::{Made, Picture};
use crate::symbols::palette::INK;

/// With what the place opens.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Start {
    /// An empty sheet.
    Blank {
        /// Whose the picture will be; nobody's is the club's.
        whose: Option<ParticipantId>,
        /// The symbol in whose place it will be seen.
        stands_for: Option<SymbolId>,
    },
    /// A drawing the club has, to be changed.
    Change(PictureId),
}

/// For what a symbol is picked here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Use {
    /// To be seen faintly below.
    Below,
    /// To be stood for.
    StandsFor,
}

/// What a picture is called and whose it is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
struct Facts {
    name: String,
    words: String,
    whose: Option<ParticipantId>,
    stands_for: Option<SymbolId>,
}

/// The place while it is open.
#[derive(Clone, Debug)]
pub struct DrawingState {
    start: Start,
    /// The club was looked into for what the place opens with.
    ready: bool,
    sketch: Sketch,
    hand: Hand,
    pen: Pen,
    /// Which of the three widths.
    width: usize,
    /// A symbol seen faintly below.
    below: Option<SymbolId>,
    facts: Facts,
    first: Facts,
    /// The picture that is changed.
    of: Option<Picture>,
    /// Where the keyboard's pen is.
    point: Spot,
    /// How hard a pen or finger presses just now, where it is known.
    force: Option<f64>,
    picker: Option<Picker>,
    /// Whether to leave is being asked.
    leaving: bool,
    /// Why it was not kept.
    trouble: Option<String>,
}

impl DrawingState {
    /// Opens the place.
    pub fn new(start: Start) -> Self {
        let (whose, stands_for) = match &start {
            Start::Blank { whose, stands_for } => (*whose, stands_for.clone()),
            Start::Change(_) => (None, None),
        };
        let facts = Facts {
            whose,
            stands_for: stands_for.filter(|s| s.own().is_none()),
            ..Facts::default()
        };
        Self {
            start,
            ready: false,
            sketch: Sketch::new(),
            hand: Hand {
                eraser: eraser_of(WIDTHS[1]),
                ..Hand::default()
            },
            pen: Pen {
                colour: INK,
                width: WIDTHS[1],
                look: Look::Both,
            },
            width: 1,
            below: None,
            first: facts.clone(),
            facts,
            of: None,
            point: Spot::new(120.0, 120.0),
            force: None,
            picker: None,
            leaving: false,
            trouble: None,
        }
    }

    /// The drawing, to look at.
    pub const fn sketch(&self) -> &Sketch {
        &self.sketch
    }

    /// Takes over what the club has of the picture that is changed. One that cannot be read, or is
    /// a photograph, is not touched: the sheet is empty, and that is said.
    fn prepare(&mut self, club: &Club) {
        self.ready = true;
        let Start::Change(id) = self.start else {
            return;
        };
        let Some(picture) = club.picture(id) else {
            self.trouble = Some("That picture is not there any more. This is a new sheet.".into());
            return;
        };
        let Made::Drawing(drawing) = &picture.made else {
            self.trouble = Some("A photograph cannot be drawn on. This is a new sheet.".into());
            return;
        };
        match Sketch::open(drawing.svg()) {
            Ok(sketch) => self.sketch = sketch,
            Err(e) => {
                self.trouble = Some(format!(
                    "The picture cannot be drawn on: {e} This is a new sheet."
                ));
                return;
            }
        }
        self.facts = Facts {
            name: picture.name.clone(),
            words: picture.words.join(", "),
            whose: picture.whose,
            stands_for: picture.stands_for.clone(),
        };
        self.first = self.facts.clone();
        self.of = Some(picture.as_ref().clone());
    }

    /// Whether something would be lost by leaving.
    fn is_changed(&self) -> bool {
        self.sketch.is_changed() || self.facts != self.first || self.hand.gesture().is_some()
    }

    /// Does what the hand did, if it did something.
    fn draw(&mut self, gesture: Option<Gesture>) {
        if let Some(gesture) = gesture {
            self.sketch.draw(&gesture, self.pen);
        }
    }

    /// Takes another tool.
    fn take(&mut self, tool: Tool) {
        let done = self.hand.take(tool);
        self.draw(done);
    }

    /// Takes one of the three widths.
    fn set_width(&mut self, i: usize) {
        self.width = i;
        self.pen.width = WIDTHS[i];
        self.hand.eraser = eraser_of(WIDTHS[i]);
    }

    /// Takes the last thing back: first what is not finished yet.
    pub fn undo(&mut self) {
        if self.hand.doing == hand::Doing::Nothing {
            self.sketch.undo();
        } else {
            self.hand.doing = hand::Doing::Nothing;
        }
    }

    /// Does it again.
    pub fn redo(&mut self) {
        self.sketch.redo();
    }
}

/// The eraser is three times as broad as the line.
fn eraser_of(width: f32) -> f64 {
    f64::from(width) * 3.0
}
