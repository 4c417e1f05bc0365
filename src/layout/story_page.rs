//! The story on one page, for a door or a wall: every step of the day in small with its words and what
//! is said of it first, then how to ask and how it ends.

use super::desk::{Desk, Person};
use super::frame::{self, Header, picture};
use super::shapes::{self, Look, face_down, rounded};
use super::story::draw_card;
use super::words::{CLEAR, TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{Turn, ink};
use crate::model::board::{Step, StepState};
use crate::model::finding::Severity;
use crate::model::manner::Run;
use crate::model::rewriting::PageRef;
use crate::page::{Page, Source};
use crate::plan::clock::Moment;
use crate::story::{PageKind, Story, tell, when};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// White between two columns, and between picture and words.
const BETWEEN: Length = Length::um(7_000);
const BESIDE: Length = Length::um(4_000);
/// Height of the row of cards at the foot, with the line above it.
const FOOT: Length = Length::um(40_000);
/// Side of a card there.
const CARD: Length = Length::um(26_000);
/// Smallest picture of a step; below it the page is no use on a wall.
const LEAST: Length = Length::um(11_000);
/// Largest picture of a step.
const LARGEST: Length = Length::um(34_000);

/// The page of a participant; none for a board without steps.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    if person.board.steps.is_empty() {
        return Vec::new();
    }
    let size = desk.page_size(Turn::Portrait);
    let story = tell(desk.club, desk.session, &person.board, person.who);
    let what = "Story on one page".to_owned();
    let mut page = PageWriter::new(size, what.clone());
    let s = desk.session;
    let below = format!("{}, {}", when::day(s.date), Moment::at(s.start));
    let below = match s.place.trim() {
        "" => below,
        place => format!("{below}, {place}"),
    };
    let header = Header {
        mark: Some(&person.mark),
        mark_words: &person.mark_words,
        title: &story.title,
        below: &below,
    };
    frame::draw(&mut page, size, &header, &desk.footer(person, what));
    let mut room = frame::content(size);
    room.h -= FOOT;
    draw_steps(desk, person, &story, room, &mut page);
    draw_foot(desk, person, &story, room, &mut page);
    vec![page.finish()]
}

/// Columns and rows in which all steps are as large as can be.
fn grid(steps: usize, room: Rect) -> (usize, usize, Length) {
    let of = |columns: usize| {
        let rows = steps.div_ceil(columns);
        let pitch = room.h / i64::try_from(rows).unwrap_or(1);
        (columns, rows, (pitch - Length::mm(3.0)).min(LARGEST))
    };
    let narrow = room.w < Length::mm(130.0);
    let most = if narrow { 2 } else { 3 };
    let mut best = of(1);
    for columns in 1..=most {
        let wide = room.w / i64::try_from(columns).unwrap_or(1);
        // Words beside a picture take twice its width to be read.
        let fits = |side: Length| wide >= side.scale(2.2);
        let next = of(columns);
        if fits(next.2) && next.2 > best.2 {
            best = next;
        }
    }
    best
}

fn draw_steps(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    story: &Story,
    room: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let steps = &person.board.steps;
    let (columns, rows, side) = grid(steps.len(), room);
    if side < LEAST {
        desk.note(
            Severity::Look,
            "print.story_page",
            desk.board_spot(person),
            format!("{} steps are too many for one page.", steps.len()),
            "Print the story in several pages, or on larger paper.",
        );
    }
    let count = i64::try_from(columns).unwrap_or(1);
    let width = (room.w - BETWEEN * (count - 1)) / count;
    let pitch = room.h / i64::try_from(rows).unwrap_or(1);
    let leftwards = person.who.manner.run == Run::RightToLeft;
    for (i, step) in steps.iter().enumerate() {
        let (column, row) = (i / rows, i % rows);
        let column = if leftwards {
            columns - 1 - column
        } else {
            column
        };
        let x = room.x + (width + BETWEEN) * i64::try_from(column).unwrap_or(0);
        let y = room.y + pitch * i64::try_from(row).unwrap_or(0);
        let at = Rect::new(Point::new(x, y), Size::new(width, side.min(pitch)));
        draw_step(desk, person, (story, step), at, page);
    }
}

/// The first thing that is said of a step, where sentences are told.
fn said<'a>(story: &'a Story, step: &Step) -> Option<&'a str> {
    if !story.depth.has_sentences() {
        return None;
    }
    let of_page = story.page(PageRef::Step(step.at)).map(|p| p.lines.first());
    let in_list = || {
        let lines = story.pages.iter().flat_map(|p| &p.lines);
        lines.rev().find(|l| l.step == Some(step.at))
    };
    let line = of_page.flatten().or_else(in_list)?;
    Some(line.text.as_str())
}

fn draw_step(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    (story, step): (&Story, &Step),
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let source = Some(Source::Step(step.at));
    let square = shapes::square(at.x, at.y, at.h);
    let drawn = desk.step_art(step, person);
    let radius = Length::mm(2.5);
    let edge = Look::line(ink::RULE, Length::mm(0.4)).on(ink::PAPER);
    let mut items = vec![rounded(square, radius, edge)];
    let mut inside = square.shrink(Length::mm(1.2));
    let mut alt = desk.alt_for(person, &step.symbol, &step.label);
    if step.state == StepState::NotToday {
        items = face_down(square, radius);
        inside = square.shrink(at.h.scale(0.16));
        items.push(rounded(inside, radius, Look::filled(ink::PAPER)));
        alt = format!("Not today. {alt}");
    }
    items.push(picture(&drawn, inside));
    page.figure(source, alt, items);
    if story.depth == crate::model::telling::Depth::Pictures {
        return;
    }
    let x = square.right() + BESIDE;
    let width = at.right() - x;
    let letters = Length::pt((at.h.to_mm() * 0.55).clamp(9.0, 16.0));
    let label = Words::wrapped(&step.label, &Style::bold(letters), width, TIGHT, 2);
    let mut words = vec![label];
    let small = Style::regular(letters.scale(0.85).max(Length::pt(9.0)));
    let sentence = said(story, step).map(|s| Words::wrapped(s, &small, width, CLEAR, 4));
    let room = at.h - words[0].height() - Length::mm(1.0);
    // A sentence that would be cut off is left to the longer story.
    words.extend(sentence.filter(|w| !w.cut && w.height() <= room));
    let gap = Length::mm(1.0) * i64::try_from(words.len() - 1).unwrap_or(0);
    let all = words.iter().map(Words::height);
    let height = all.fold(gap, |a, b| a + b);
    let mut y = at.center().y - height / 2;
    for block in &words {
        page.paragraph(source, block.left(Point::new(x, y), ink::INK));
        y += block.height() + Length::mm(1.0);
    }
}

/// How to ask, and how it ends.
fn draw_foot(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    story: &Story,
    room: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let top = room.bottom() + Length::mm(3.0);
    let right = Point::new(room.right(), top);
    let rule = shapes::line(Point::new(room.x, top), right, ink::RULE, ink::THIN);
    page.artifact(vec![rule]);
    let holder = |kind| story.pages.iter().find(|p| p.kind == kind);
    let Some(ask) = holder(PageKind::Ask).or_else(|| holder(PageKind::Ending)) else {
        return;
    };
    let y = top + Length::mm(7.0);
    let mut x = room.x;
    for (card, _) in ask.with_cards() {
        draw_card(desk, person, shapes::square(x, y, CARD), card, page);
        x += CARD + Length::mm(4.0);
    }
    let Some(ending) = holder(PageKind::Ending).filter(|_| story.depth.has_sentences()) else {
        return;
    };
    let width = room.right() - x - Length::mm(2.0);
    let style = Style::regular(Length::pt(12.0));
    let mut y = y;
    for line in ending.plain().take(2) {
        let words = Words::wrapped(&line.text, &style, width, CLEAR, 3);
        if words.cut || y + words.height() > room.bottom() + FOOT {
            break;
        }
        page.paragraph(
            None,
            words.left(Point::new(x + Length::mm(2.0), y), ink::INK),
        );
        y += words.height() + Length::mm(1.5);
    }
}
