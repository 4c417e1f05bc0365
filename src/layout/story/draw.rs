//! One leaf of a story, drawn.

use super::super::desk::{Desk, Person};
use super::super::frame::{self, picture};
use super::super::shapes::{self, Look, rounded};
use super::super::words::{TIGHT, Words};
use super::super::writer::{Everyone, PageWriter};
use super::super::{ink, strand};
use super::leaves::{Leaf, Piece, Tongue};
use super::measures::{Measures, TO_ROPE, TOP};
use crate::page::{Page, Source};
use crate::story::cards::Card;
use crate::story::{PageKind, Small, Story};
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// Below a second language that nobody read through.
const UNREAD: &str = "Second language: not yet checked by a reader.";
/// Cards smaller than this are without words.
const WORDLESS: Length = Length::um(20_000);
/// Cards at the foot of a step's page.
const REMINDERS: usize = 3;

pub(super) fn draw(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    (story, m): (&Story, &Measures),
    leaf: &Leaf<'_>,
    (index, count): (usize, usize),
) -> Page {
    let what = format!("Story, page {} of {count}", index + 1);
    let name = format!("{what}: {}", leaf.page.heading);
    let mut page = PageWriter::new(m.size, name);
    draw_top(person, story, m, (index, count), &mut page);
    let source = leaf.page.step.filter(|_| leaf.first).map(Source::Step);
    draw_heading(story, m, leaf, &mut page);
    if !leaf.page.has_cards() {
        draw_picture(desk, person, m, leaf, source, &mut page);
    }
    for piece in &leaf.pieces {
        draw_piece(desk, person, (story, m), (piece, source), &mut page);
    }
    if let Some(at) = reminder_place(leaf, m) {
        draw_reminder(desk, person, story, at, m, &mut page);
    }
    if story.is_unread() {
        let style = Style::regular(Length::pt(10.0));
        let words = Words::line(UNREAD, &style, m.body.w);
        let at = Point::new(m.body.x, m.body.bottom() + Length::mm(2.2));
        page.paragraph(None, words.left(at, ink::SOFT));
    }
    let footer = desk.footer(person, what);
    frame::draw_footer(&mut page, m.size, &footer);
    page.finish()
}

fn draw_heading(story: &Story, m: &Measures, leaf: &Leaf<'_>, page: &mut PageWriter<Everyone>) {
    page.heading(2, leaf.heading.left(m.body.origin(), ink::INK));
    if let Some((top, words)) = &leaf.second {
        let at = Point::new(m.body.x, *top);
        draw_words(story, m, (at, words, Tongue::Second), None, page);
    }
}

/// Words in either language; those that run from right to left stand flush right.
fn draw_words(
    story: &Story,
    m: &Measures,
    (at, words, tongue): (Point, &Words, Tongue),
    source: Option<Source>,
    page: &mut PageWriter<Everyone>,
) {
    let items = match words.runs_left() {
        true => words.right(Point::new(m.body.right(), at.y), ink::INK),
        false => words.left(at, ink::INK),
    };
    match (tongue, &story.second) {
        (Tongue::Second, Some(second)) if !second.language.is_empty() => {
            page.paragraph_in(&second.language, source, items);
        }
        _ => page.paragraph(source, items),
    }
}

fn draw_piece(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    (story, m): (&Story, &Measures),
    (piece, source): (&Piece<'_>, Option<Source>),
    page: &mut PageWriter<Everyone>,
) {
    match piece {
        Piece::Words(at, words, tongue) => {
            draw_words(story, m, (*at, words, *tongue), source, page);
        }
        Piece::Card(at, card) => draw_card(desk, person, *at, card, page),
        Piece::Small(at, small) => draw_small(desk, person, *at, small, page),
    }
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
    let plate = Rect::new(Point::new(left, top), crate::units::Size::square(TOP));
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
            rope.push(shapes::circle(place(i), Length::mm(1.5), look));
        }
    }
    rope.extend(strand::peg(here));
    rope.extend(strand::peg_number(here, index + 1));
    page.artifact(rope);
}

/// The picture of a page: on the left beside the sentences, or alone where there are none.
fn draw_picture(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    m: &Measures,
    leaf: &Leaf<'_>,
    source: Option<Source>,
    page: &mut PageWriter<Everyone>,
) {
    let at = match leaf.page.lines.is_empty() {
        true => m.alone(leaf.top),
        false => shapes::square(m.body.x, leaf.top, leaf.picture),
    };
    let board = desk.board_spot(person);
    let spot = leaf.page.step.map_or(board, |s| desk.step_spot(person, s));
    let drawn = desk.art(&leaf.page.symbol, &leaf.page.heading, person, spot);
    let edge = Look::line(ink::RULE, Length::mm(0.4)).on(ink::PAPER);
    let mut items = vec![rounded(at, Length::mm(5.0), edge)];
    let inside = at.shrink(at.w.scale(0.06));
    let alt = desk.alt_for(person, &leaf.page.symbol, &leaf.page.heading);
    if leaf.page.kind == PageKind::NotToday {
        items = shapes::face_down(at, Length::mm(5.0));
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
    let words = leaf.pieces.iter().rev().find_map(|p| match p {
        Piece::Words(at, words, _) => Some(at.y + words.height()),
        _ => None,
    });
    let below_words = words.unwrap_or(leaf.top);
    let picture = match leaf.page.lines.is_empty() {
        true => m.alone(leaf.top).bottom(),
        false => leaf.top + leaf.picture,
    };
    let used = below_words.max(picture);
    let h = Length::mm(11.0) + m.card;
    let at = Rect {
        y: m.body.bottom() - h,
        h,
        ..m.body
    };
    (used + Length::mm(8.0) <= at.y).then_some(at)
}

/// "I can ask", with the first cards of the page that tells of it.
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
    for (i, (card, _)) in ask.with_cards().take(REMINDERS).enumerate() {
        let x = at.x + (m.card + Length::mm(5.0)) * i as i64;
        draw_card(desk, person, shapes::square(x, top, m.card), card, page);
    }
}

/// A small card as the printed tile looks.
pub(in crate::layout) fn draw_card(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    at: Rect,
    card: &Card,
    page: &mut PageWriter<Everyone>,
) {
    let side = at.w;
    let drawn = desk.art(&card.symbol, &card.label, person, desk.board_spot(person));
    let look = Look::line(ink::INK, ink::LINE).on(ink::PAPER);
    // On a very small card words would leave no room for the picture; the sentence beside says them.
    let words = match side < WORDLESS {
        true => Words::default(),
        false => fitted(&card.label, side - Length::mm(3.0)),
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
    page.figure(None, desk.alt_for(person, &card.symbol, &card.label), items);
    let top = at.bottom() - pad - words.height();
    page.paragraph(
        None,
        words.centred(Point::new(at.center().x, top), ink::INK),
    );
}

/// A label in one line, in the largest letters that fit, down to nine points.
fn fitted(label: &str, room: Length) -> Words {
    let mut size = Length::pt(14.0);
    loop {
        let words = Words::line(label, &Style::bold(size), room);
        if !words.cut || size <= Length::pt(9.0) {
            break words;
        }
        size = size.scale(0.9);
    }
}

/// A step of the day in small: its picture, its words below, and a word where it is new.
fn draw_small(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    at: Rect,
    small: &Small,
    page: &mut PageWriter<Everyone>,
) {
    let square = shapes::square(at.x, at.y, at.w);
    let spot = desk.step_spot(person, small.step);
    let drawn = desk.art(&small.card.symbol, &small.card.label, person, spot);
    let edge = Look::line(ink::RULE, Length::mm(0.4)).on(ink::PAPER);
    let radius = Length::mm(3.0);
    let mut items = vec![rounded(square, radius, edge)];
    let mut alt = desk.alt_for(person, &small.card.symbol, &small.card.label);
    let mut inside = square.shrink(Length::mm(1.5));
    if small.off {
        items = shapes::face_down(square, radius);
        let plate = square.shrink(at.w.scale(0.16));
        items.push(rounded(plate, radius, Look::filled(ink::PAPER)));
        inside = plate.shrink(Length::mm(0.8));
        alt = format!("Not today. {alt}");
    }
    items.push(picture(&drawn, inside));
    let source = Some(Source::Step(small.step));
    page.figure(source, alt, items);
    let style = Style::bold(Length::pt(12.0));
    let words = Words::wrapped(&small.card.label, &style, at.w, TIGHT, 2);
    let top = Point::new(square.center().x, square.bottom() + Length::mm(1.0));
    page.paragraph(source, words.centred(top, ink::INK));
    if small.new {
        let tag = Words::line("New", &Style::bold(Length::pt(11.0)), at.w);
        let pad = Length::mm(1.6);
        let size = crate::units::Size::new(tag.width() + pad * 2, tag.height() + pad);
        let corner = square.origin().moved(-Length::mm(1.0), -Length::mm(1.5));
        let plate = Rect::new(corner, size);
        page.artifact(vec![rounded(plate, size.h / 2, Look::filled(ink::INK))]);
        page.paragraph(source, tag.amid(plate.center(), ink::PAPER));
    }
}
