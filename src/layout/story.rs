//! The story on paper: one page a step, the picture always at the same place on the left, the
//! sentences large beside it or below, each on a line of its own, and the day as a rope above.

use super::desk::{Desk, Person};
use super::fit::report;
use super::frame::{self, picture};
use super::shapes::{Look, rounded};
use super::words::{OPEN, TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{Turn, ink, strand};
use crate::page::{Page, Source};
use crate::story::cards::Card;
use crate::story::{PageKind, Story, StoryPage, tell};
use crate::text::{Style, missing};
use crate::units::{Length, Point, Rect, Size};

/// Smallest letters of a story; see the smallest letters of large print.
const SMALLEST_PT: f64 = 18.0;
const LARGEST_PT: f64 = 40.0;
/// Letters of a story for each point of the participant's large print.
const PER_TEXT_PT: f64 = 0.66;
/// Largest letters in points for each millimetre of the page's width, so that a small page still
/// holds a sentence.
const PT_PER_MM: f64 = 0.18;
/// Sentences stand beside the picture if so many letter sizes go in a line there; else below it.
const EMS_BESIDE: f64 = 8.5;
/// White between picture and sentences.
const BESIDE_GAP: Length = Length::um(9_000);
/// White between two sentences, in letter sizes.
const BETWEEN: f64 = 0.75;
/// Height of the mark and the story's title at the top.
const TOP: Length = Length::um(11_000);
/// From there down to the rope, and from the rope to the heading.
const TO_ROPE: Length = Length::um(6_500);
const TO_HEADING: Length = Length::um(10_000);

/// Measures of a story's pages, the same on all of them.
struct Measures {
    size: Size,
    /// From the heading to the footer.
    body: Rect,
    letters: Style,
    heading: Style,
    /// Side of the picture.
    picture: Length,
    /// Side of a card.
    card: Length,
    beside: bool,
}

/// What stands on one sheet of paper: a page of the story, or a further piece of it.
struct Leaf<'a> {
    page: &'a StoryPage,
    first: bool,
    heading: Words,
    /// Where the picture or the first sentence begins.
    top: Length,
    sentences: Vec<(Point, Words)>,
    cards: Vec<(Rect, &'a Card, Words)>,
}

/// The pages of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let story = tell(desk.club, desk.session, &person.board, person.who);
    let m = measures(desk, person);
    let mut leaves = Vec::new();
    for page in &story.pages {
        note_page(desk, person, page, &m);
        leaves.extend(flow(page, &m));
    }
    let count = leaves.len();
    leaves
        .iter()
        .enumerate()
        .map(|(i, leaf)| draw(desk, person, &story, &m, leaf, (i, count)))
        .collect()
}

/// On which sheet of paper each page of the story begins, and on which it ends; counted from one, as
/// at the foot of each.
pub(super) fn numbers(desk: &Desk<'_>, person: &Person<'_>, story: &Story) -> Vec<(usize, usize)> {
    let m = measures(desk, person);
    let mut last = 0;
    let leaves = story.pages.iter().map(|page| flow(page, &m).len());
    leaves
        .map(|leaves| {
            let first = last + 1;
            last += leaves;
            (first, last)
        })
        .collect()
}

fn measures(desk: &Desk<'_>, person: &Person<'_>) -> Measures {
    let size = desk.page_size(Turn::Portrait);
    let edge = frame::EDGE;
    let top = edge + TOP + TO_ROPE + TO_HEADING;
    let body = Rect {
        x: edge,
        y: top,
        w: size.w - edge * 2,
        h: size.h - top - frame::footer_room(size) - Length::mm(7.0),
    };
    let most = (body.w.to_mm() * PT_PER_MM).clamp(SMALLEST_PT, LARGEST_PT);
    let pt = (f64::from(person.who.text_pt) * PER_TEXT_PT).clamp(SMALLEST_PT, most);
    let letters = Style::regular(Length::pt(pt.round()));
    let large = body.w.scale(0.47).min(body.h.scale(0.6));
    let beside = body.w - large - BESIDE_GAP >= letters.size.scale(EMS_BESIDE);
    let small = body.w.min(body.h) < Length::mm(140.0);
    let heading = if small { 24.0 } else { 32.0 };
    Measures {
        size,
        body,
        letters,
        heading: Style::bold(Length::pt(heading)),
        picture: if beside {
            large
        } else {
            large.min(body.h.scale(0.4))
        },
        card: (body.w.scale(0.22)).clamp(Length::mm(26.0), Length::mm(46.0)),
        beside,
    }
}

fn note_page(desk: &mut Desk<'_>, person: &Person<'_>, page: &StoryPage, m: &Measures) {
    let board = desk.board_spot(person);
    let spot = page.step.map_or(board, |s| desk.step_spot(person, s));
    let over = heading_of(page, m).cut;
    let over: &[usize] = if over { &[0] } else { &[] };
    let hint = "Use fewer or shorter words.";
    report(
        desk,
        person,
        &[(page.heading.as_str(), spot)],
        over,
        "story",
        hint,
    );
    for sentence in &page.sentences {
        desk.note_missing(spot, &missing(sentence));
    }
}

fn heading_of(page: &StoryPage, m: &Measures) -> Words {
    Words::wrapped(&page.heading, &m.heading, m.body.w, TIGHT, 3)
}

/// One page of the story on as many leaves as its sentences take.
fn flow<'a>(page: &'a StoryPage, m: &Measures) -> Vec<Leaf<'a>> {
    let mut flow = Flow::new(page, m);
    for sentence in page.beside_picture() {
        flow.sentence(sentence);
    }
    flow.end_sentences();
    for (card, sentence) in page.beside_cards() {
        flow.card(card, sentence);
    }
    flow.leaves
}

/// Places sentences and cards from top to bottom, leaf after leaf.
struct Flow<'a, 'm> {
    page: &'a StoryPage,
    m: &'m Measures,
    leaves: Vec<Leaf<'a>>,
    /// Where the next thing goes.
    y: Length,
    /// Whether nothing has been put on this leaf yet.
    empty: bool,
}

impl<'a, 'm> Flow<'a, 'm> {
    fn new(page: &'a StoryPage, m: &'m Measures) -> Self {
        let mut flow = Self {
            page,
            m,
            leaves: Vec::new(),
            y: Length::ZERO,
            empty: true,
        };
        flow.new_leaf();
        flow
    }

    fn new_leaf(&mut self) {
        let heading = heading_of(self.page, self.m);
        let top = self.m.body.y + heading.height() + Length::mm(7.0);
        self.y = top;
        if self.has_picture() && !self.m.beside {
            self.y += self.m.picture + Length::mm(8.0);
        }
        self.empty = true;
        self.leaves.push(Leaf {
            page: self.page,
            first: self.leaves.is_empty(),
            heading,
            top,
            sentences: Vec::new(),
            cards: Vec::new(),
        });
    }

    /// Pages with cards have no further picture.
    fn has_picture(&self) -> bool {
        self.page.cards.is_empty()
    }

    fn text_left(&self) -> Length {
        if self.has_picture() && self.m.beside {
            self.m.body.x + self.m.picture + BESIDE_GAP
        } else {
            self.m.body.x
        }
    }

    fn sentence(&mut self, sentence: &str) {
        let x = self.text_left();
        let width = self.m.body.right() - x;
        let mut words = Words::wrapped(sentence, &self.m.letters, width, OPEN, usize::MAX);
        while !words.is_empty() {
            let room = self.m.body.bottom() - self.y;
            // A sentence stays whole if a fresh leaf can hold it.
            if words.height() > room && !self.empty {
                self.new_leaf();
                continue;
            }
            let (now, later) = words.split_at_height(room);
            let height = now.height();
            self.put(Point::new(x, self.y), now);
            self.y += height + self.m.letters.size.scale(BETWEEN);
            words = later;
            if !words.is_empty() {
                self.new_leaf();
            }
        }
    }

    fn put(&mut self, at: Point, words: Words) {
        self.empty = false;
        if let Some(leaf) = self.leaves.last_mut() {
            leaf.sentences.push((at, words));
        }
    }

    fn end_sentences(&mut self) {
        if !self.page.cards.is_empty() && !self.empty {
            self.y += Length::mm(4.0);
        }
    }

    fn card(&mut self, card: &'a Card, sentence: &str) {
        let side = self.m.card;
        let x = self.m.body.x + side + Length::mm(9.0);
        let width = self.m.body.right() - x;
        let lines = usize::try_from(self.m.body.h.times(self.m.letters.size.scale(OPEN * 1.6)));
        let words = Words::wrapped(
            sentence,
            &self.m.letters,
            width,
            OPEN,
            lines.unwrap_or(1).max(1),
        );
        let height = side.max(words.height());
        if self.y + height > self.m.body.bottom() && !self.empty {
            self.new_leaf();
        }
        let at = Rect::new(Point::new(self.m.body.x, self.y), Size::new(side, height));
        self.empty = false;
        self.y += height + Length::mm(8.0);
        if let Some(leaf) = self.leaves.last_mut() {
            leaf.cards.push((at, card, words));
        }
    }
}

fn draw(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    story: &Story,
    m: &Measures,
    leaf: &Leaf<'_>,
    (index, count): (usize, usize),
) -> Page {
    let what = format!("Story, page {} of {count}", index + 1);
    let name = format!("{what}: {}", leaf.page.heading);
    let mut page = PageWriter::new(m.size, name);
    draw_top(person, story, m, (index, count), &mut page);
    let source = leaf.page.step.filter(|_| leaf.first).map(Source::Step);
    let at = m.body.origin();
    page.heading(2, leaf.heading.left(at, ink::INK));
    if leaf.page.cards.is_empty() {
        draw_picture(desk, person, m, leaf, source, &mut page);
    }
    for (at, words) in &leaf.sentences {
        page.paragraph(source, words.left(*at, ink::INK));
    }
    if let Some(at) = reminder_place(leaf, m) {
        draw_reminder(desk, person, story, at, m, &mut page);
    }
    for (at, card, words) in &leaf.cards {
        draw_card(desk, person, *at, card, &mut page);
        let middle = Point::new(at.right() + Length::mm(9.0), at.center().y);
        page.paragraph(None, words.left_of_middle(middle, ink::INK));
    }
    let footer = desk.footer(person, what);
    frame::draw_footer(&mut page, m.size, &footer);
    page.finish()
}

/// Mark, title of the story, and the rope with a peg where this page is.
fn draw_top(
    person: &Person<'_>,
    story: &Story,
    m: &Measures,
    (index, count): (usize, usize),
    page: &mut PageWriter<Everyone>,
) {
    let (left, right) = (m.body.x, m.body.right());
    let top = frame::EDGE;
    let plate = Rect::new(Point::new(left, top), Size::square(TOP));
    frame::draw_mark(page, plate, &person.mark, &person.mark_words);
    let x = plate.right() + Length::mm(4.0);
    let title = Words::line(&story.title, &Style::regular(Length::pt(14.0)), right - x);
    page.heading(
        1,
        title.left_of_middle(Point::new(x, plate.center().y), ink::SOFT),
    );
    let y = plate.bottom() + TO_ROPE;
    let mut rope = strand::straight(Point::new(left, y), Point::new(right, y));
    let inset = strand::PEG.w / 2;
    let last = count.saturating_sub(1).max(1) as f64;
    let place = |i: usize| {
        let along = (right - left - inset * 2).scale(i as f64 / last);
        Point::new(left + inset + along, y)
    };
    let here = place(index);
    // With very many pages the rings would touch: then only the peg is shown.
    if place(1).x - place(0).x >= Length::mm(4.2) {
        for i in (0..count).filter(|&i| i != index) {
            let look = if i < index {
                Look::filled(ink::ROPE)
            } else {
                Look::line(ink::ROPE, Length::mm(0.6)).on(ink::PAPER)
            };
            rope.push(super::shapes::circle(place(i), Length::mm(1.5), look));
        }
    }
    rope.extend(strand::peg(here));
    rope.extend(strand::peg_number(here, index + 1));
    page.artifact(rope);
}

fn draw_picture(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    m: &Measures,
    leaf: &Leaf<'_>,
    source: Option<Source>,
    page: &mut PageWriter<Everyone>,
) {
    let at = Rect::new(Point::new(m.body.x, leaf.top), Size::square(m.picture));
    let board = desk.board_spot(person);
    let spot = leaf.page.step.map_or(board, |s| desk.step_spot(person, s));
    let drawn = desk.art(&leaf.page.symbol, &leaf.page.heading, person, spot);
    let edge = Look::line(ink::RULE, Length::mm(0.4)).on(ink::PAPER);
    let mut items = vec![rounded(at, Length::mm(5.0), edge)];
    let inside = at.shrink(at.w.scale(0.06));
    let alt = desk.alt(&leaf.page.symbol, &leaf.page.heading);
    if leaf.page.kind == PageKind::NotToday {
        items = super::shapes::face_down(at, Length::mm(5.0));
        let plate = at.shrink(at.w.scale(0.16));
        items.push(rounded(plate, Length::mm(4.0), Look::filled(ink::PAPER)));
        items.push(picture(&drawn, plate.shrink(at.w.scale(0.03))));
        page.figure(source, format!("Not today. {alt}"), items);
        return;
    }
    items.push(picture(&drawn, inside));
    page.figure(source, alt, items);
}

/// Where the reminder of how to ask stands: at the foot of a step's page, if there is room.
fn reminder_place(leaf: &Leaf<'_>, m: &Measures) -> Option<Rect> {
    leaf.page.step?;
    let last = leaf.sentences.last();
    let below_words = last.map_or(leaf.top, |(at, words)| at.y + words.height());
    let used = below_words.max(leaf.top + m.picture);
    let h = Length::mm(11.0) + m.card;
    let at = Rect {
        y: m.body.bottom() - h,
        h,
        ..m.body
    };
    (used + Length::mm(8.0) <= at.y).then_some(at)
}

/// "I can ask", with the cards of the page that tells of it.
fn draw_reminder(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    story: &Story,
    at: Rect,
    m: &Measures,
    page: &mut PageWriter<Everyone>,
) {
    let Some(ask) = story.pages.iter().find(|p| p.kind == PageKind::Ask) else {
        return;
    };
    let style = Style::bold(Length::pt(18.0));
    let words = Words::line(&ask.heading, &style, at.w);
    page.heading(2, words.left(at.origin(), ink::SOFT));
    let top = at.y + Length::mm(11.0);
    for (i, card) in ask.cards.iter().enumerate() {
        let x = at.x + (m.card + Length::mm(5.0)) * i as i64;
        let place = Rect::new(Point::new(x, top), Size::square(m.card));
        draw_card(desk, person, place, card, page);
    }
}

/// A small card as the printed tile looks.
fn draw_card(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    at: Rect,
    card: &Card,
    page: &mut PageWriter<Everyone>,
) {
    let side = at.w;
    let at = Rect {
        y: at.center().y - side / 2,
        h: side,
        ..at
    };
    let drawn = desk.art(&card.symbol, &card.label, person, desk.board_spot(person));
    let look = Look::line(ink::INK, ink::LINE).on(ink::PAPER);
    let mut size = Length::pt(14.0);
    let words = loop {
        let words = Words::line(&card.label, &Style::bold(size), side - Length::mm(3.0));
        if !words.cut || size <= Length::pt(9.0) {
            break words;
        }
        size = size.scale(0.9);
    };
    let pad = Length::mm(2.0);
    let inside = Rect {
        h: side - words.height() - pad * 2,
        ..at
    };
    let items = vec![
        rounded(at, Length::mm(3.0), look),
        picture(&drawn, inside.shrink(pad)),
    ];
    page.figure(None, desk.alt(&card.symbol, &card.label), items);
    let top = at.bottom() - pad - words.height();
    page.paragraph(
        None,
        words.centred(Point::new(at.center().x, top), ink::INK),
    );
}
