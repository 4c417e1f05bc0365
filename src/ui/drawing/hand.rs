//! What the hand is doing on the paper: from press, move and lift to a finished gesture.

use crate::drawing::gesture::{Gesture, Spot};
use crate::drawing::sketch::on_grid;

/// How near to its first corner a press closes a shape, in canvas units.
const CLOSES: f64 = 7.0;

/// With what is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tool {
    /// A line by hand.
    #[default]
    Pen,
    /// A straight line.
    Line,
    /// A rectangle.
    Rectangle,
    /// An ellipse.
    Ellipse,
    /// A shape with corners.
    Polygon,
    /// A shape in curves.
    Rounded,
    /// A tap fills.
    Fill,
    /// The eraser.
    Eraser,
}

/// A gesture that is not finished.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Doing {
    /// None.
    #[default]
    Nothing,
    /// The pen or the eraser is down.
    Down(Vec<Spot>),
    /// From one place to where the hand is.
    Span(Spot, Spot),
    /// Corners so far, and where the hand is.
    Corners(Vec<Spot>, Spot),
}

/// The hand with its tool.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hand {
    /// Its tool.
    pub tool: Tool,
    /// What it is at.
    pub doing: Doing,
    /// Places are held to the grid.
    pub grid: bool,
    /// Width of the eraser.
    pub eraser: f64,
}

impl Hand {
    /// Takes another tool; a shape with enough corners is finished first.
    pub fn take(&mut self, tool: Tool) -> Option<Gesture> {
        let done = self.finish();
        self.doing = Doing::Nothing;
        self.tool = tool;
        done
    }

    /// A place as the tool takes it.
    fn held(&self, at: Spot) -> Spot {
        let by_hand = matches!(self.tool, Tool::Pen | Tool::Eraser | Tool::Fill);
        if self.grid && !by_hand {
            on_grid(at)
        } else {
            at
        }
    }

    /// The tool is put down.
    pub fn press(&mut self, at: Spot) -> Option<Gesture> {
        let at = self.held(at);
        match self.tool {
            Tool::Pen | Tool::Eraser => self.doing = Doing::Down(vec![at]),
            Tool::Line | Tool::Rectangle | Tool::Ellipse => self.doing = Doing::Span(at, at),
            Tool::Fill => return Some(Gesture::Fill(at)),
            Tool::Polygon | Tool::Rounded => return self.corner(at),
        }
        None
    }

    /// One more corner, or the end at the first one.
    fn corner(&mut self, at: Spot) -> Option<Gesture> {
        let Doing::Corners(corners, _) = &mut self.doing else {
            self.doing = Doing::Corners(vec![at], at);
            return None;
        };
        let near = |s: &Spot| (s.x - at.x).hypot(s.y - at.y) <= CLOSES;
        let closes = corners.len() >= 3 && corners.first().is_some_and(near);
        if closes {
            return self.finish();
        }
        corners.push(at);
        self.doing = Doing::Corners(std::mem::take(corners), at);
        None
    }

    /// The hand moves.
    pub fn moved(&mut self, to: Spot) {
        let held = self.held(to);
        match &mut self.doing {
            Doing::Nothing => {}
            Doing::Down(spots) => spots.push(to),
            Doing::Span(_, end) | Doing::Corners(_, end) => *end = held,
        }
    }

    /// The tool is lifted.
    pub fn lift(&mut self) -> Option<Gesture> {
        match self.doing {
            Doing::Down(_) | Doing::Span(..) => self.finish(),
            Doing::Nothing | Doing::Corners(..) => None,
        }
    }

    /// What is being done is finished as it is.
    pub fn finish(&mut self) -> Option<Gesture> {
        let gesture = self.gesture();
        self.doing = Doing::Nothing;
        gesture
    }

    /// What is being done, as if it were finished.
    pub fn gesture(&self) -> Option<Gesture> {
        Some(match (&self.doing, self.tool) {
            (Doing::Nothing, _) => return None,
            (Doing::Down(spots), Tool::Eraser) => Gesture::Erase(spots.clone(), self.eraser),
            (Doing::Down(spots), _) => Gesture::Stroke(spots.clone()),
            (Doing::Span(a, b), Tool::Rectangle) => Gesture::Rectangle(*a, *b),
            (Doing::Span(a, b), Tool::Ellipse) => Gesture::Ellipse(*a, *b),
            (Doing::Span(a, b), _) => Gesture::Line(*a, *b),
            (Doing::Corners(corners, _), tool) => {
                let corners = corners.clone();
                if tool == Tool::Rounded {
                    Gesture::Rounded(corners)
                } else {
                    Gesture::Polygon(corners)
                }
            }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hand(tool: Tool) -> Hand {
        Hand {
            tool,
            eraser: 18.0,
            ..Hand::default()
        }
    }

    #[test]
    fn a_line_is_the_way_from_press_to_lift() {
        let mut h = hand(Tool::Pen);
        assert_eq!(h.press(Spot::new(1.0, 2.0)), None);
        h.moved(Spot::new(3.0, 4.0));
        let way = vec![Spot::new(1.0, 2.0), Spot::new(3.0, 4.0)];
        assert_eq!(h.lift(), Some(Gesture::Stroke(way)));
        assert_eq!(h.lift(), None);
    }

    #[test]
    fn corners_end_where_they_began() {
        let mut h = hand(Tool::Polygon);
        h.grid = true;
        for (x, y) in [(11.0, 12.0), (100.0, 12.0), (100.0, 99.0)] {
            assert_eq!(h.press(Spot::new(x, y)), None);
            assert_eq!(h.lift(), None);
        }
        let all = [(12.0, 12.0), (96.0, 12.0), (96.0, 96.0)].map(|(x, y)| Spot::new(x, y));
        assert_eq!(
            h.press(Spot::new(14.0, 10.0)),
            Some(Gesture::Polygon(all.to_vec()))
        );
        assert_eq!(h.doing, Doing::Nothing);
    }

    #[test]
    fn another_tool_finishes_what_was_begun() {
        let mut h = hand(Tool::Rectangle);
        let (a, b) = (Spot::new(1.0, 1.0), Spot::new(90.0, 50.0));
        h.press(a);
        h.moved(b);
        assert_eq!(h.take(Tool::Fill), Some(Gesture::Rectangle(a, b)));
        assert_eq!(h.press(b), Some(Gesture::Fill(b)));
    }
}
