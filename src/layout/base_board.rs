//! Where the tiles are laid: a place for each finished tile in order along the rope, with the cross
//! where its fastener goes, and a finished place large enough for all of them.
//!
//! All places are for the *finished* tile: the printed side and a seal on either side, with a
//! little more so that it can be put down.

use std::ops::Range;

use super::desk::{Desk, Person};
use super::fit::report;
use super::frame::{self, Header, picture};
use super::shapes::{self, Look, dashes, fastener, rounded, shape};
use super::strips::{self, Strip};
use super::tile_sheet::{self, in_mm};
use super::words::{TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{Turn, forms, ink, strand};
use crate::model::board::{Step, StepState};
use crate::model::finding::Severity;
use crate::model::manner::{Finishing, Form, Run};
use crate::model::people::Participant;
use crate::page::{Item, Page, Source};
use crate::story::cards;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Room around a finished tile in its place, both sides together.
const CLEARANCE: Length = Length::um(2_000);
/// Least white between two places side by side.
const GAP: Length = Length::um(4_000);
/// From the top of a row to the rope, and from the rope to the places.
const PART: Length = Length::um(7_200);
const HANG: Length = Length::um(4_000);
/// For the run of the rope back to the next row.
const RETURN: Length = Length::um(6_500);
/// Below the head of a strip.
const HEAD_GAP: Length = Length::um(4_000);
/// Between the last row and the finished place.
const BELOW: Length = Length::um(4_000);
/// Inside the edge of the finished place.
const POUCH_PAD: Length = Length::um(2_500);
/// Height of the finished place's heading, where it stands above the tiles.
const POUCH_HEAD: Length = Length::um(14_000);
/// Width of the finished place's heading, where it stands beside the tiles.
const POUCH_SIDE: Length = Length::um(22_000);
/// Letters in a place, which the tile covers.
const LABEL_PT: f64 = 12.0;
/// Letters of "First" and "Then".
const ORDER_PT: f64 = 18.0;
/// Radius of a ring to tick beside a peg.
const TICK_RING: Length = Length::um(3_800);
/// How much wider the opening of a pouch is than a finished tile: common practice, so that a hand
/// puts it in with ease.
const POUCH_EASE: Length = Length::um(20_000);

/// Side of a place for a tile of a participant: finished tile and clearance.
pub(super) fn place_side(who: &Participant, seal: Length) -> Length {
    who.tile + seal * 2 + CLEARANCE
}

/// One way to share the board out over pages.
#[derive(Clone, Debug)]
struct Plan {
    size: Size,
    place: Length,
    columns: usize,
    /// Which steps lie on which page.
    pages: Vec<Range<usize>>,
    /// Whether each page has the finished place for its own tiles.
    together: bool,
    pouch: Pouch,
    finishing: Finishing,
    /// Taken above the places by what stands over a strip.
    head: Length,
}

/// What is laid out at once: the whole board, or one strip of it.
struct Part {
    steps: Range<usize>,
    strip: Option<Strip>,
}

/// How the finished place is divided.
#[derive(Clone, Copy, Debug)]
struct Pouch {
    /// Places in a row.
    columns: usize,
    /// Rows on a page of its own.
    rows: usize,
    /// Whether its heading stands beside the tiles rather than above.
    beside: bool,
}

impl Pouch {
    fn on(content: Rect, place: Length) -> Option<Self> {
        let w = content.w - POUCH_PAD * 2;
        let columns = w.times(place);
        let beside = w - place * columns >= POUCH_SIDE;
        let head = if beside { Length::ZERO } else { POUCH_HEAD };
        let rows = (content.h - head - POUCH_PAD * 2).times(place);
        (columns > 0 && rows > 0).then_some(Self {
            columns: usize::try_from(columns).ok()?,
            rows: usize::try_from(rows).ok()?,
            beside,
        })
    }

    fn height(self, place: Length, tiles: usize) -> Length {
        let head = if self.beside {
            Length::ZERO
        } else {
            POUCH_HEAD
        };
        head + place * tiles.div_ceil(self.columns) as i64 + POUCH_PAD * 2
    }
}

impl Plan {
    /// Where places and finished place stand.
    fn content(&self) -> Rect {
        below_head(frame::content(self.size), self.head)
    }

    /// Height of the finished place for some tiles.
    fn finish_height(&self, tiles: usize) -> Length {
        finish_height(self.finishing, self.pouch, self.place, tiles)
    }

    /// Pages that hold nothing but a finished place, as the tiles that go there.
    fn pouch_pages(&self, steps: usize) -> Vec<usize> {
        let each = self.pouch.columns * self.pouch.rows;
        if self.together || self.finishing != Finishing::FinishedRow {
            return Vec::new();
        }
        let mut left = steps;
        let mut pages = Vec::new();
        while left > 0 {
            pages.push(left.min(each));
            left -= left.min(each);
        }
        pages
    }
}

/// The pages of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    if person.board.steps.is_empty() {
        let sentence = format!("The board of {} is empty.", person.mark_words);
        let hint = "Put activities on the timetable, or own steps on the board.";
        desk.note(
            Severity::Look,
            "print.empty",
            desk.board_spot(person),
            sentence,
            hint,
        );
        return Vec::new();
    }
    let parts: Vec<Part> = match strips::of(desk, person) {
        Some(strips) => strips
            .into_iter()
            .map(|s| Part {
                steps: s.steps.clone(),
                strip: Some(s),
            })
            .collect(),
        None => vec![Part {
            steps: 0..person.board.steps.len(),
            strip: None,
        }],
    };
    let plans: Option<Vec<Plan>> = parts.iter().map(|p| best_plan(desk, person, p)).collect();
    let Some(plans) = plans else {
        left_out(desk, person);
        return Vec::new();
    };
    report_labels(desk, person, plans[0].place);
    let each = plans.iter().zip(&parts);
    let pages_of =
        |(plan, part): (&Plan, &Part)| plan.pages.len() + plan.pouch_pages(part.steps.len()).len();
    let count = each.clone().map(pages_of).sum();
    let mut pages = Vec::with_capacity(count);
    for (plan, part) in each {
        lay_part(desk, person, plan, part, count, &mut pages);
    }
    pages
}

fn left_out(desk: &mut Desk<'_>, person: &Person<'_>) {
    let place = in_mm(place_side(person.who, desk.club.rules.seal));
    let paper = desk.request.paper.label();
    let sentence = format!(
        "The base board of {} is left out: a place of {place} cannot be laid out on {paper} paper.",
        person.mark_words
    );
    let spot = crate::model::finding::Spot::Participant(person.who.id);
    let hint = "Choose another tile size or larger paper.";
    desk.note(Severity::StopAndLook, "print.tile", spot, sentence, hint);
}

fn report_labels(desk: &mut Desk<'_>, person: &Person<'_>, place: Length) {
    let said = |s: &Step| forms::words_of(desk, person, s);
    let said: Vec<String> = person.board.steps.iter().map(said).collect();
    let steps = person.board.steps.iter().zip(&said);
    let labels: Vec<_> = steps
        .map(|(s, said)| (said.as_str(), desk.step_spot(person, s.at)))
        .collect();
    let overfull: Vec<usize> = (0..labels.len())
        .filter(|&i| place_words(&person.board.steps[i], &said[i], place).cut)
        .collect();
    let hint = "Use fewer or shorter words, or larger tiles.";
    report(desk, person, &labels, &overfull, "base board", hint);
}

/// The pages of the whole board or of one strip.
fn lay_part(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    part: &Part,
    count: usize,
    pages: &mut Vec<Page>,
) {
    for steps in &plan.pages {
        let steps = part.steps.start + steps.start..part.steps.start + steps.end;
        let mut page = begin(desk, person, plan, part, (pages.len() + 1, count));
        let bottom = draw_rows(desk, person, plan, part, steps.clone(), &mut page);
        let content = plan.content();
        let h = plan.finish_height(steps.len());
        let at = Rect {
            y: (bottom + BELOW).max(content.bottom() - h),
            h,
            ..content
        };
        match plan.finishing {
            Finishing::FinishedRow if plan.together => {
                draw_pouch(desk, person, plan, steps.len(), at, &mut page);
            }
            Finishing::Pouch => draw_one_pouch(desk, person, plan, at, &mut page),
            Finishing::TurnedOver => draw_turn_over(at, &mut page),
            Finishing::FinishedRow | Finishing::Tick => {}
        }
        pages.push(page.finish());
    }
    for tiles in plan.pouch_pages(part.steps.len()) {
        let mut page = begin(desk, person, plan, part, (pages.len() + 1, count));
        let at = Rect {
            h: plan.pouch.height(plan.place, tiles),
            ..plan.content()
        };
        draw_pouch(desk, person, plan, tiles, at, &mut page);
        pages.push(page.finish());
    }
}

fn below_head(content: Rect, head: Length) -> Rect {
    Rect {
        y: content.y + head,
        h: content.h - head,
        ..content
    }
}

/// Height of what finished tiles go to.
fn finish_height(finishing: Finishing, pouch: Pouch, place: Length, tiles: usize) -> Length {
    match finishing {
        Finishing::FinishedRow => pouch.height(place, tiles),
        Finishing::Pouch => place + Length::mm(4.0),
        Finishing::TurnedOver => Length::mm(13.0),
        Finishing::Tick => Length::ZERO,
    }
}

/// The plan with the fewest pages; of those with as many, one that keeps each page whole, and one
/// that keeps the paper upright.
fn best_plan(desk: &Desk<'_>, person: &Person<'_>, part: &Part) -> Option<Plan> {
    let place = place_side(person.who, desk.club.rules.seal);
    if person.who.tile < tile_sheet::SMALLEST {
        return None;
    }
    let steps = part.steps.len();
    let finishing = person.who.manner.finishing;
    let mut plans = Vec::new();
    for turn in [Turn::Portrait, Turn::Landscape] {
        let size = desk.page_size(turn);
        let room = frame::content(size).h;
        let head = match part.strip {
            Some(_) => strips::head_height(person, desk.club.rules.seal, room) + HEAD_GAP,
            None => Length::ZERO,
        };
        for together in [true, false] {
            plans.extend(plan(size, place, steps, together, (finishing, head)));
        }
    }
    let pages = |p: &Plan| p.pages.len() + p.pouch_pages(steps).len();
    plans
        .into_iter()
        .min_by_key(|p| (pages(p), !p.together, p.size.w > p.size.h))
}

fn plan(
    size: Size,
    place: Length,
    steps: usize,
    together: bool,
    (finishing, head): (Finishing, Length),
) -> Option<Plan> {
    let content = below_head(frame::content(size), head);
    let inner = content.w - strand::TURN * 2;
    let columns = usize::try_from((inner + GAP).times(place + GAP)).ok()?;
    let pouch = Pouch::on(content, place)?;
    if columns == 0 {
        return None;
    }
    // Most rows for which the page still holds all that belongs to them.
    let fits = |rows: usize| {
        let tiles = (rows * columns).min(steps);
        let below = finish_height(finishing, pouch, place, tiles) + BELOW;
        let with_finish = together || finishing != Finishing::FinishedRow;
        let need = rows_height(place, rows) + if with_finish { below } else { Length::ZERO };
        need <= content.h
    };
    let wanted = steps.div_ceil(columns);
    let rows = (1..=wanted).take_while(|&r| fits(r)).last()?;
    let each = rows * columns;
    // The same number of pages, evenly filled, by whole rows where that costs nothing.
    let count = steps.div_ceil(each);
    let even = steps.div_ceil(count);
    let even = even.div_ceil(columns).max(1) * columns;
    let each = if steps.div_ceil(even.min(each)) == count {
        even.min(each)
    } else {
        each
    };
    let pages = (0..steps)
        .step_by(each)
        .map(|from| from..(from + each).min(steps))
        .collect();
    Some(Plan {
        size,
        place,
        columns,
        pages,
        together,
        pouch,
        finishing,
        head,
    })
}

fn row_height(place: Length) -> Length {
    PART + HANG + place
}

fn rows_height(place: Length, rows: usize) -> Length {
    let rows = rows as i64;
    row_height(place) * rows + RETURN * (rows - 1)
}

fn begin(
    desk: &Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    part: &Part,
    (page, pages): (usize, usize),
) -> PageWriter<Everyone> {
    let title = person.plan_title();
    let of = if pages > 1 {
        format!("Base board {page} of {pages}")
    } else {
        "Base board".to_owned()
    };
    let tile = person.who.tile;
    let finished = in_mm(tile + desk.club.rules.seal * 2);
    let below = format!("{of}, for tiles of {} ({finished} with film)", in_mm(tile));
    let mut writer = PageWriter::new(plan.size, format!("{title}, {of}"));
    let header = Header {
        mark: Some(&person.mark),
        mark_words: &person.mark_words,
        title: &title,
        below: &below,
    };
    let footer = desk.footer(person, of);
    frame::draw(&mut writer, plan.size, &header, &footer);
    if let Some(strip) = &part.strip {
        let parts = desk.part_names(&person.board.steps[strip.steps.clone()]);
        let at = Rect {
            h: plan.head - HEAD_GAP,
            ..frame::content(plan.size)
        };
        strips::draw_head(desk, person, (&strip.title(), &parts), at, &mut writer);
    }
    writer
}

/// The rows of places on a page; gives the height where they end.
fn draw_rows(
    desk: &Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    part: &Part,
    steps: Range<usize>,
    page: &mut PageWriter<Everyone>,
) -> Length {
    let content = plan.content();
    let backwards = person.who.manner.run == Run::RightToLeft;
    let axis = content.center().x;
    let rows = steps.len().div_ceil(plan.columns);
    let top = |row: usize| content.y + (row_height(plan.place) + RETURN) * row as i64;
    let rope_at = |row: usize| top(row) + PART;
    let (left, right) = (content.x + strand::TURN, content.right() - strand::TURN);
    let heights: Vec<Length> = (0..rows).map(rope_at).collect();
    let back = |row: usize| top(row) + row_height(plan.place) + RETURN.scale(0.35);
    let returns: Vec<Length> = (0..rows.saturating_sub(1)).map(back).collect();
    let end = rows.checked_sub(1).map_or(content.y, rope_at);
    let mut rope = strand::through_rows(left, right, &heights, &returns);
    if steps.start == 0 {
        rope.extend(strand::beginning(Point::new(left, content.y + PART)));
    }
    if steps.end == person.board.steps.len() {
        rope.extend(strand::stopper_right(Point::new(right, end)));
    } else {
        rope.extend(strand::arrow_right(Point::new(
            right + Length::mm(3.0),
            end,
        )));
    }
    page.artifact(if backwards {
        shapes::mirrored(rope, axis)
    } else {
        rope
    });
    let pitch = (right - left) / plan.columns as i64;
    let all = &person.board.steps;
    for (k, i) in steps.clone().enumerate() {
        let (row, column) = (k / plan.columns, k % plan.columns);
        let x = left + pitch * column as i64;
        let slot = Rect {
            x: if backwards { axis * 2 - x - pitch } else { x },
            y: top(row),
            w: pitch,
            h: row_height(plan.place),
        };
        let begins = i == steps.start || all[i - 1].part != all[i].part;
        if begins {
            draw_part(desk, &all[i], slot, page);
        }
        let order = part.strip.as_ref();
        let order = order.and_then(|s| strips::order_word(person, s, i));
        let said = forms::words_of(desk, person, &all[i]);
        draw_place(plan, &all[i], (i + 1, &said, order), slot, page);
    }
    content.y + rows_height(plan.place, rows)
}

/// The knot and the name of a part of the day, at the left of a place.
fn draw_part(desk: &Desk<'_>, step: &Step, slot: Rect, page: &mut PageWriter<Everyone>) {
    let knot = Point::new(slot.x + Length::mm(5.0), slot.y + PART);
    page.artifact(strand::knot(knot));
    let name = desk.club.part(step.part).map_or("", |p| p.name.as_str());
    let style = Style::bold(Length::pt(12.0));
    let words = Words::line(name, &style, slot.w - Length::mm(2.0));
    let at = Point::new(slot.x + Length::mm(2.0), slot.y - Length::mm(1.3));
    page.heading(2, words.left(at, ink::SOFT));
}

/// The words in a place, which the tile covers; words that are alone stand large.
fn place_words(step: &Step, said: &str, side: Length) -> Words {
    let room = side - Length::mm(4.0);
    let words = match step.state {
        StepState::NotToday => format!("{} (not today)", step.label.trim()),
        _ => said.to_owned(),
    };
    // Below the fastener, or beside it where a picture's frame takes the middle.
    let below = Rect::new(
        Point::default(),
        Size::new(room, side / 2 - Length::mm(6.0)),
    );
    match step.form {
        _ if step.state == StepState::NotToday => {}
        Form::Word => return forms::words_alone(&words, below, (LABEL_PT, 22.0), true),
        Form::Sentence => return forms::words_alone(&words, below, (LABEL_PT, 16.0), false),
        _ => {}
    }
    let style = Style::regular(Length::pt(LABEL_PT));
    Words::wrapped(&words, &style, room, TIGHT, 2)
}

/// One place on the rope.
fn draw_place(
    plan: &Plan,
    step: &Step,
    (number, said, order): (usize, &str, Option<&str>),
    slot: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let side = plan.place;
    let rope_y = slot.y + PART;
    let place = Rect {
        x: slot.center().x - side / 2,
        y: rope_y + HANG,
        w: side,
        h: side,
    };
    let peg = Point::new(place.center().x, rope_y);
    let source = Some(Source::Step(step.at));
    let not_today = step.state == StepState::NotToday;
    let mut items = vec![rounded(place, side.scale(0.08), dashes().on(ink::PAPER))];
    items.extend(strand::peg(peg));
    items.extend(strand::peg_number(peg, number));
    if plan.finishing == Finishing::Tick && !not_today {
        let ring = peg.moved(strand::PEG.w + Length::mm(1.0), Length::ZERO);
        items.push(strand::ring(ring, TICK_RING));
    }
    let mut words = place_words(step, said, side);
    let mut thing = Words::default();
    if step.form == Form::Object && !not_today {
        let style = Style::regular(Length::pt(LABEL_PT));
        let room = side - Length::mm(4.0);
        thing = Words::wrapped(&forms::object_words(&step.thing), &style, room, TIGHT, 2);
        words.cut |= thing.cut;
    }
    let top = place.bottom() - Length::mm(2.0) - words.height() - thing.height();
    let seen = Rect {
        y: place.y + Length::mm(3.0),
        h: top - place.y - Length::mm(5.0),
        ..place.shrink(Length::mm(3.0))
    };
    if !not_today && seen.h > Length::mm(12.0) {
        match step.form {
            Form::Photograph => items.extend(forms::photo_frame(seen)),
            Form::Object => items.extend(forms::object_place(seen)),
            _ => {}
        }
    }
    items.extend(fastener(place.center()));
    let today = if not_today { ", not today" } else { "" };
    let alt = format!("Place for tile {number}: {}{today}", step.label);
    page.figure(source, alt, items);
    let at = Point::new(place.center().x, top);
    let mut lines = words.centred(at, ink::SOFT);
    let below = Point::new(at.x, top + words.height());
    lines.extend(thing.centred(below, ink::SOFT));
    if let Some(order) = order {
        let room = side / 2 - Length::mm(16.0);
        let order = Words::line(
            order,
            &Style::bold(Length::pt(ORDER_PT)),
            room.max(Length::mm(12.0)),
        );
        let at = Point::new(place.right() - Length::mm(1.0), slot.y + Length::mm(1.2));
        lines.extend(order.right(at, ink::INK));
    }
    page.paragraph(source, lines);
}

/// A pouch for all finished tiles, one on the other: its opening is 20 mm wider than a finished
/// tile.
fn draw_one_pouch(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let opening = person.who.tile + desk.club.rules.seal * 2 + POUCH_EASE;
    let w = opening.min(at.w);
    let pouch_at = Rect {
        x: at.center().x - w / 2,
        w,
        ..at
    };
    let look = Look::line(ink::INK, ink::LINE).on(ink::HATCH_GROUND);
    page.artifact(vec![shape(pouch(pouch_at), look)]);
    let card = cards::finished(desk.club);
    let drawn = desk.art(&card.symbol, &card.label, person, desk.board_spot(person));
    let alt = desk.alt(&card.symbol, &card.label);
    let words = Words::line(
        &card.label,
        &Style::bold(Length::pt(16.0)),
        w - Length::mm(6.0),
    );
    let side = plan.place.scale(0.5).min(Length::mm(40.0));
    let all = side + Length::mm(2.0) + words.height() + Length::mm(6.5);
    let middle = pouch_at.center();
    let symbol = Rect::new(
        Point::new(middle.x - side / 2, middle.y - all / 2),
        Size::square(side),
    );
    page.figure(None, alt, vec![picture(&drawn, symbol)]);
    let top = symbol.bottom() + Length::mm(2.0);
    page.heading(2, words.centred(Point::new(middle.x, top), ink::INK));
    let note = format!("pouch, opening {}", in_mm(opening));
    let note = Words::line(&note, &Style::regular(Length::pt(9.0)), w - Length::mm(4.0));
    let below = top + words.height() + Length::mm(1.5);
    page.paragraph(None, note.centred(Point::new(middle.x, below), ink::SOFT));
}

/// There is no finished place when tiles are turned over.
fn draw_turn_over(at: Rect, page: &mut PageWriter<Everyone>) {
    let style = Style::bold(Length::pt(14.0));
    let words = Words::line("Finished: turn over", &style, at.w);
    let y = at.y + Length::mm(5.0);
    page.paragraph(None, words.centred(Point::new(at.center().x, y), ink::SOFT));
}

/// The finished place: an open pouch with a place for each tile.
fn draw_pouch(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    tiles: usize,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let look = Look::line(ink::INK, ink::LINE).on(ink::HATCH_GROUND);
    page.artifact(vec![shape(pouch(at), look)]);
    let card = cards::finished(desk.club);
    let drawn = desk.art(&card.symbol, &card.label, person, desk.board_spot(person));
    let alt = desk.alt(&card.symbol, &card.label);
    let columns = plan.pouch.columns;
    let used = plan.place * columns.min(tiles) as i64;
    let inside = at.shrink(POUCH_PAD);
    let (heading, first) = if plan.pouch.beside {
        let spare = inside.w - plan.place * columns as i64;
        let heading = Rect { w: spare, ..inside };
        (heading, Point::new(heading.right(), inside.y))
    } else {
        let heading = Rect {
            h: POUCH_HEAD,
            ..inside
        };
        let left = inside.x + (inside.w - used) / 2;
        (heading, Point::new(left, heading.bottom()))
    };
    let (symbol, words, words_at) = pouch_heading(&card.label, heading, plan.pouch.beside);
    page.figure(None, alt, vec![picture(&drawn, symbol)]);
    page.heading(2, words.left(words_at, ink::INK));
    let mut items: Vec<Item> = Vec::new();
    for k in 0..tiles {
        let corner = Point::new(
            first.x + plan.place * (k % columns) as i64,
            first.y + plan.place * (k / columns) as i64,
        );
        let place = Rect::new(corner, Size::square(plan.place)).shrink(Length::mm(0.6));
        let look = Look::line(ink::HATCH, ink::THIN).dashed(Length::mm(1.0), Length::mm(1.4));
        items.push(rounded(place, plan.place.scale(0.08), look));
        items.extend(fastener(place.center()));
    }
    page.artifact(items);
}

/// Picture and words of the finished place, beside the tiles or above them.
fn pouch_heading(label: &str, at: Rect, beside: bool) -> (Rect, Words, Point) {
    let bold = |pt: f64| Style::bold(Length::pt(pt));
    if !beside {
        let symbol = Rect::new(
            at.origin().moved(Length::mm(1.0), Length::mm(0.8)),
            Size::square(at.h - Length::mm(2.0)),
        );
        let x = symbol.right() + Length::mm(3.0);
        let words = Words::line(label, &bold(18.0), at.right() - x);
        let top = symbol.center().y - words.height() / 2;
        return (symbol, words, Point::new(x, top));
    }
    let room = at.w - Length::mm(1.0);
    let fits = |pt: &f64| !Words::line(label, &bold(*pt), room).cut;
    let pt = [18.0, 16.0, 14.0, 13.0, 12.0].into_iter().find(fits);
    let words = Words::line(label, &bold(pt.unwrap_or(12.0)), room);
    let side = (at.w - Length::mm(3.0)).min(Length::mm(30.0));
    let all = side + Length::mm(1.5) + words.height();
    let top = at.center().y - all / 2;
    let symbol = Rect::new(
        Point::new(at.center().x - side / 2, top),
        Size::square(side),
    );
    let words_at = Point::new(
        at.center().x - words.width() / 2,
        symbol.bottom() + Length::mm(1.5),
    );
    (symbol, words, words_at)
}

/// An open pouch: its upper edge hangs a little.
fn pouch(r: Rect) -> Path<Point> {
    let radius = Length::mm(3.0);
    let sag = Length::mm(2.2);
    let p = Point::new;
    let k = radius.scale(0.45);
    Path {
        segs: vec![
            Seg::Move(p(r.x, r.y)),
            Seg::Cubic(
                p(r.x + r.w.scale(0.3), r.y + sag),
                p(r.x + r.w.scale(0.7), r.y + sag),
                p(r.right(), r.y),
            ),
            Seg::Line(p(r.right(), r.bottom() - radius)),
            Seg::Cubic(
                p(r.right(), r.bottom() - k),
                p(r.right() - k, r.bottom()),
                p(r.right() - radius, r.bottom()),
            ),
            Seg::Line(p(r.x + radius, r.bottom())),
            Seg::Cubic(
                p(r.x + k, r.bottom()),
                p(r.x, r.bottom() - k),
                p(r.x, r.bottom() - radius),
            ),
            Seg::Close,
        ],
    }
}
