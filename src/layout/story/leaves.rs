//! A page of a story on as many leaves of paper as its sentences take. No sentence stands over the
//! end of a leaf that a fresh leaf could hold.

use super::super::words::{OPEN, TIGHT, Words};
use super::measures::{BESIDE_GAP, BETWEEN, BETWEEN_LANGUAGES, Measures};
use crate::model::telling::Depth;
use crate::story::cards::Card;
use crate::story::{Line, PageKind, Small, Story, StoryPage};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// What stands on one sheet of paper: a page of the story, or a further piece of it.
pub(super) struct Leaf<'a> {
    pub page: &'a StoryPage,
    pub first: bool,
    pub heading: Words,
    /// The heading in the second language, with the top of it.
    pub second: Option<(Length, Words)>,
    /// Where the picture or the first sentence begins.
    pub top: Length,
    /// Side of the picture.
    pub picture: Length,
    pub pieces: Vec<Piece<'a>>,
}

/// Something placed on a leaf, in reading order.
pub(super) enum Piece<'a> {
    /// Words, with where they begin.
    Words(Point, Words, Tongue),
    /// A tile or card.
    Card(Rect, &'a Card),
    /// A step in small.
    Small(Rect, &'a Small),
}

/// In which of the two languages.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Tongue {
    First,
    Second,
}

/// The words of the heading on a leaf.
pub(super) fn heading_of(page: &StoryPage, m: &Measures) -> Words {
    Words::wrapped(&page.heading, &m.heading, m.body.w, TIGHT, 3)
}

/// How much smaller pictures and cards may get so that a page of the story stays one leaf.
const SMALLER: [f64; 6] = [1.0, 0.92, 0.85, 0.78, 0.7, 0.6];

/// One page of the story on as many leaves as its sentences take. Pictures and cards get a little
/// smaller where that keeps it on one leaf.
pub(super) fn flow<'a>(story: &'a Story, page: &'a StoryPage, m: &Measures) -> Vec<Leaf<'a>> {
    let mut tried = SMALLER
        .iter()
        .map(|by| flow_at(story, page, &m.scaled(*by)));
    let whole = tried.next().unwrap_or_default();
    if whole.len() <= 1 {
        return whole;
    }
    tried.find(|leaves| leaves.len() == 1).unwrap_or(whole)
}

fn flow_at<'a>(story: &'a Story, page: &'a StoryPage, m: &Measures) -> Vec<Leaf<'a>> {
    let mut flow = Flow {
        story,
        page,
        m,
        leaves: Vec::new(),
        y: Length::ZERO,
        empty: true,
    };
    flow.new_leaf();
    for line in page.plain() {
        flow.sentence(line);
    }
    if page.has_cards() && !flow.empty {
        flow.y += Length::mm(4.0);
    }
    flow.small();
    for (card, line) in page.with_cards() {
        flow.card(card, line);
    }
    flow.leaves
}

/// Places sentences and cards from top to bottom, leaf after leaf.
struct Flow<'a, 'm> {
    story: &'a Story,
    page: &'a StoryPage,
    m: &'m Measures,
    leaves: Vec<Leaf<'a>>,
    /// Where the next thing goes.
    y: Length,
    /// Whether nothing has been put on this leaf yet.
    empty: bool,
}

impl<'a> Flow<'a, '_> {
    fn new_leaf(&mut self) {
        let (m, page) = (self.m, self.page);
        // Where pictures stand alone only the first page says what it is.
        let is_shown = self.story.depth != Depth::Pictures || page.kind == PageKind::Title;
        let heading = match is_shown {
            true => heading_of(page, m),
            false => Words::default(),
        };
        let mut top = m.body.y + heading.height();
        let style = Style::regular(m.heading.size.scale(0.7));
        let second = page
            .heading_second
            .as_ref()
            .filter(|_| is_shown)
            .map(|text| {
                let words = Words::wrapped(text, &style, m.body.w, TIGHT, 3);
                let at = top + Length::mm(2.0);
                top = at + words.height();
                (at, words)
            });
        top += Length::mm(7.0);
        self.y = top;
        if self.has_picture() && !m.beside {
            self.y += m.picture + Length::mm(8.0);
        }
        self.empty = true;
        self.leaves.push(Leaf {
            page,
            first: self.leaves.is_empty(),
            heading,
            second,
            top,
            picture: m.picture,
            pieces: Vec::new(),
        });
    }

    /// Pages with cards have no further picture.
    fn has_picture(&self) -> bool {
        !self.page.has_cards()
    }

    fn text_left(&self) -> Length {
        if self.has_picture() && self.m.beside {
            self.m.body.x + self.m.picture + BESIDE_GAP
        } else {
            self.m.body.x
        }
    }

    fn put(&mut self, piece: Piece<'a>) {
        self.empty = false;
        if let Some(leaf) = self.leaves.last_mut() {
            leaf.pieces.push(piece);
        }
    }

    fn set(&self, text: &str, width: Length) -> Words {
        let width = width.min(self.m.line);
        Words::wrapped(text, &self.m.letters, width, OPEN, usize::MAX)
    }

    /// A sentence and the same in the second language, in the family's order.
    fn both(&self, line: &Line, width: Length) -> Vec<(Words, Tongue)> {
        if line.text.is_empty() {
            return Vec::new();
        }
        let first = (self.set(&line.text, width), Tongue::First);
        let Some(second) = &line.second else {
            return vec![first];
        };
        let second = (self.set(second, width), Tongue::Second);
        match self.story.second.as_ref().is_some_and(|s| s.first) {
            true => vec![second, first],
            false => vec![first, second],
        }
    }

    fn between_languages(&self) -> Length {
        self.m.letters.size.scale(BETWEEN_LANGUAGES)
    }

    fn height(&self, both: &[(Words, Tongue)]) -> Length {
        let words: Length = both
            .iter()
            .map(|(w, _)| w.height())
            .fold(Length::ZERO, |a, b| a + b);
        let gaps = i64::try_from(both.len().saturating_sub(1)).unwrap_or(0);
        words + self.between_languages() * gaps
    }

    fn sentence(&mut self, line: &'a Line) {
        let x = self.text_left();
        let both = self.both(line, self.m.body.right() - x);
        // Both languages stay together if a fresh leaf can hold them.
        if self.height(&both) > self.m.body.bottom() - self.y && !self.empty {
            self.new_leaf();
        }
        let last = both.len().saturating_sub(1);
        for (i, (words, tongue)) in both.into_iter().enumerate() {
            self.words(x, words, tongue);
            let gap = if i < last { BETWEEN_LANGUAGES } else { BETWEEN };
            self.y += self.m.letters.size.scale(gap);
        }
    }

    fn words(&mut self, x: Length, mut words: Words, tongue: Tongue) {
        while !words.is_empty() {
            let room = self.m.body.bottom() - self.y;
            // A sentence stays whole if a fresh leaf can hold it.
            if words.height() > room && !self.empty {
                self.new_leaf();
                continue;
            }
            let (now, later) = words.split_at_height(room);
            let height = now.height();
            self.put(Piece::Words(Point::new(x, self.y), now, tongue));
            self.y += height;
            words = later;
            if !words.is_empty() {
                self.new_leaf();
            }
        }
    }

    fn card(&mut self, card: &'a Card, line: &'a Line) {
        let side = self.m.card;
        let x = self.m.body.x + side + Length::mm(9.0);
        let both = self.both(line, self.m.body.right() - x);
        let words = self.height(&both);
        let height = side.max(words);
        if self.y + height > self.m.body.bottom() && !self.empty {
            self.new_leaf();
        }
        let at = Rect::new(Point::new(self.m.body.x, self.y), Size::new(side, side));
        let at = Rect {
            y: self.y
                + (height - side)
                    .min(self.m.body.bottom() - self.y - side)
                    .max(Length::ZERO)
                    / 2,
            ..at
        };
        self.put(Piece::Card(at, card));
        let beginning = self.y;
        self.y += (side - words).max(Length::ZERO) / 2;
        let last = both.len().saturating_sub(1);
        let leaves = self.leaves.len();
        for (i, (words, tongue)) in both.into_iter().enumerate() {
            self.words(x, words, tongue);
            if i < last {
                self.y += self.between_languages();
            }
        }
        let here = if self.leaves.len() == leaves {
            beginning + height
        } else {
            self.y
        };
        self.y = here.max(self.y) + Length::mm(8.0);
    }

    /// All steps of the day in rows.
    fn small(&mut self) {
        let (m, gap) = (self.m, Length::mm(5.0));
        let side = m.small;
        let cell = Size::new(side, side + Length::mm(17.0));
        let columns = ((m.body.w + gap).times(side + gap)).max(1);
        let columns = usize::try_from(columns).unwrap_or(1);
        let all: &'a [Small] = &self.page.small;
        for row in all.chunks(columns) {
            if self.y + cell.h > m.body.bottom() && !self.empty {
                self.new_leaf();
            }
            for (i, small) in row.iter().enumerate() {
                let x = m.body.x + (side + gap) * i64::try_from(i).unwrap_or(0);
                self.put(Piece::Small(Rect::new(Point::new(x, self.y), cell), small));
            }
            self.y += cell.h + Length::mm(4.0);
        }
        if !all.is_empty() {
            self.y += Length::mm(4.0);
        }
    }
}
