//! One participant's whole board in large print: a ring to tick, a picture and words for each step
//! along the rope, with a knot where a part of the day begins.

use std::ops::Range;

use super::balance::{Row, columns_needed, height, share_out};
use super::desk::{Desk, Person};
use super::fit::{Labels, fit, report};
use super::frame::{self, Header, picture};
use super::shapes::{Look, circle, dashes, face_down, line, rounded};
use super::strips::{self, Part};
use super::words::Words;
use super::writer::{Everyone, PageWriter};
use super::{Turn, forms, ink, strand};
use crate::model::board::{Step, StepState};
use crate::model::finding::Severity;
use crate::model::manner::{Finishing, Form};
use crate::page::{Page, Source};
use crate::symbols::library::Drawn;
use crate::text::{Direction, Room, Style};
use crate::units::{Length, Point, Rect, Size};

/// Smallest letters of large print: the American Printing House for the Blind calls nothing below
/// 18 points large print, and the UK Association for Accessible Formats asks for 18 ideally.
const SMALLEST_PT: f64 = 18.0;
/// Largest letters that can be asked for.
const LARGEST_PT: f64 = 160.0;
/// Lines of one label.
const LINES: usize = 3;
/// Lines of one sentence, and its largest letters in points.
const SENTENCE_LINES: usize = 6;
const MOST_SENTENCE_PT: f64 = 30.0;
/// Distance of baselines; clear-print guidance of CNIB asks for 1.25 to 1.3 at least.
const LEADING: f64 = 1.3;
/// Height of the name of a part of the day.
const PART: Length = Length::um(12_000);
/// Least white between two rows.
const GAP: Length = Length::um(5_000);
/// Most white that is added between rows to fill a page.
const MOST_EXTRA: Length = Length::um(7_000);
/// Left free below the rows for the loose ends of the rope.
const END: Length = Length::um(5_000);
/// Radius of a ring to tick.
const RING: Length = Length::um(5_500);
/// Side of a place to cover.
const COVER: Length = Length::um(9_000);
/// From the left edge of a column: middle of the peg, the rope, left edge of the pictures.
const PEG_X: Length = Length::um(4_500);
const ROPE_X: Length = Length::um(13_000);
const PICTURE_X: Length = Length::um(23_000);
/// Between picture and words.
const WORDS_GAP: Length = Length::um(6_000);
/// Below the head of a strip.
const HEAD_GAP: Length = Length::um(5_000);
/// Between two columns.
const COLUMN_GAP: Length = Length::um(12_000);

/// The board as it will be placed.
struct Plan {
    size: Size,
    columns: Vec<Rect>,
    /// Side of the pictures.
    side: Length,
    /// The words of each step: its label or a sentence.
    said: Vec<String>,
    labels: Labels,
    /// Words that name the real thing, for steps that have one.
    things: Vec<Words>,
    rows: Vec<Row>,
    /// "First" and "Then", on boards of two.
    orders: Vec<Words>,
    /// The whole board, or its strips, each on pages of its own.
    parts: Vec<Part>,
    /// What stands on each page; empty until it is chosen.
    pages: Vec<(usize, Vec<Range<usize>>)>,
}

/// The pages of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let steps = &person.board.steps;
    if steps.is_empty() {
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
    let plan = best_plan(desk, person);
    let labels: Vec<_> = steps
        .iter()
        .zip(&plan.said)
        .map(|(s, said)| (said.as_str(), desk.step_spot(person, s.at)))
        .collect();
    let hint = "Use fewer or shorter words, larger paper, or the other way up.";
    report(
        desk,
        person,
        &labels,
        &plan.labels.overfull,
        "large-print board",
        hint,
    );
    let pictures: Vec<Drawn> = steps.iter().map(|s| desk.step_art(s, person)).collect();
    let drawing = Drawing {
        desk,
        person,
        plan: &plan,
        pictures: &pictures,
    };
    let count = plan.pages.len();
    let pages = plan.pages.iter().enumerate();
    pages
        .map(|(i, (part, shares))| drawing.page(&plan.parts[*part], shares, (i + 1, count)))
        .collect()
}

/// The largest pictures that do not cost letters or pages.
fn best_plan(desk: &Desk<'_>, person: &Person<'_>) -> Plan {
    let size = desk.page_size(Turn::Portrait);
    let parts = strips::parts(desk, person);
    let mut content = frame::content(size);
    if parts[0].strip.is_some() {
        let head = strips::head_height(person, desk.club.rules.seal, content.h);
        content.y += head + HEAD_GAP;
        content.h -= head + HEAD_GAP;
    }
    let columns = columns(content, size);
    let width = columns[0].w;
    // Few steps at once may be seen from afar.
    let share = match person.who.manner.reach.steps() {
        Some(_) => 0.42,
        None => 0.27,
    };
    let smallest = Length::mm((width.to_mm() * 0.135).clamp(18.0, 34.0));
    let half = (width - PICTURE_X - WORDS_GAP) / 2;
    let most = width
        .scale(share)
        .min(half)
        .min(content.h.scale(0.4))
        .max(smallest);
    let base = plan(desk, person, size, &columns, smallest);
    let costs_nothing = |larger: &Plan| {
        larger.needed(&parts) == base.needed(&parts)
            && larger.labels.size == base.labels.size
            && larger.labels.overfull == base.labels.overfull
    };
    let mut sides = Vec::new();
    let mut side = most;
    while side > smallest {
        sides.push(side);
        side -= Length::mm(2.0);
    }
    let mut larger = sides
        .into_iter()
        .map(|s| plan(desk, person, size, &columns, s));
    let mut plan = larger.find(costs_nothing).unwrap_or(base);
    for (i, part) in parts.iter().enumerate() {
        let from = part.steps.start;
        let shares = share_out(&plan.rows[part.steps.clone()], columns[0].h, PART);
        let shares: Vec<_> = shares
            .into_iter()
            .map(|s| from + s.start..from + s.end)
            .collect();
        let pages = shares.chunks(columns.len()).map(|s| (i, s.to_vec()));
        plan.pages.extend(pages);
    }
    plan.parts = parts;
    plan
}

fn columns(content: Rect, size: Size) -> Vec<Rect> {
    let content = Rect {
        h: content.h - END,
        ..content
    };
    if size.w <= size.h {
        return vec![content];
    }
    let w = (content.w - COLUMN_GAP) / 2;
    let second = content.x + w + COLUMN_GAP;
    vec![
        Rect { w, ..content },
        Rect {
            x: second,
            w,
            ..content
        },
    ]
}

fn plan(desk: &Desk<'_>, person: &Person<'_>, size: Size, columns: &[Rect], side: Length) -> Plan {
    let steps = &person.board.steps;
    let column = columns[0];
    let narrow = column.w - PICTURE_X - side - WORDS_GAP;
    let said: Vec<String> = steps
        .iter()
        .map(|s| forms::words_of(desk, person, s))
        .collect();
    let labels = words(person, &said, column, narrow);
    let things = steps.iter().map(|s| thing(s, narrow)).collect::<Vec<_>>();
    let orders = order_words(desk, person);
    let rows: Vec<Row> = steps
        .iter()
        .enumerate()
        .map(|(i, step)| {
            let words = labels.words[i].height() + thing_room(&things[i]) + order_room(&orders[i]);
            let seen = if has_plate(step) { side } else { RING * 2 };
            Row {
                height: seen.max(words) + GAP,
                begins_part: i == 0 || steps[i - 1].part != step.part,
            }
        })
        .collect();
    Plan {
        size,
        columns: columns.to_vec(),
        side,
        said,
        labels,
        things,
        orders,
        rows,
        parts: Vec::new(),
        pages: Vec::new(),
    }
}

/// Labels at one size, words alone with more room at the same, sentences at a size of their own.
fn words(person: &Person<'_>, said: &[String], column: Rect, narrow: Length) -> Labels {
    let steps = &person.board.steps;
    let wanted = f64::from(person.who.text_pt).clamp(SMALLEST_PT, LARGEST_PT);
    let room = Room {
        width: narrow,
        height: column.h.scale(0.4),
        max_lines: LINES,
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(wanted),
        bold: true,
        direction: Direction::Auto,
    };
    // What is not today has its label beside the face-down tile.
    let is_sentence = |i: &usize| steps[*i].form == Form::Sentence && !has_plate(&steps[*i]);
    let (sentences, labels): (Vec<usize>, Vec<usize>) = (0..steps.len()).partition(is_sentence);
    let texts = |which: &[usize]| which.iter().map(|&i| said[i].as_str()).collect::<Vec<_>>();
    let short = fit(&texts(&labels), &room, LEADING);
    let whole = Room {
        width: column.w - PICTURE_X,
        max_lines: SENTENCE_LINES,
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(wanted.min(MOST_SENTENCE_PT)),
        bold: false,
        ..room
    };
    let long = fit(&texts(&sentences), &whole, LEADING);
    let mut all = Labels {
        size: if labels.is_empty() {
            long.size
        } else {
            short.size
        },
        words: vec![Words::default(); steps.len()],
        overfull: Vec::new(),
    };
    for (which, fitted) in [(labels, short), (sentences, long)] {
        all.overfull
            .extend(fitted.overfull.iter().map(|&k| which[k]));
        for (at, words) in which.into_iter().zip(fitted.words) {
            all.words[at] = words;
        }
    }
    all.overfull.sort_unstable();
    all
}

/// Whether a square stands before the words: a picture, a frame, a place, or "not today".
fn has_plate(step: &Step) -> bool {
    step.state == StepState::NotToday || forms::has_picture(step.form)
}

/// "object: the blue cup".
fn thing(step: &Step, width: Length) -> Words {
    if step.form != Form::Object || step.state == StepState::NotToday {
        return Words::default();
    }
    let style = Style::regular(Length::pt(SMALLEST_PT));
    Words::wrapped(&forms::object_words(&step.thing), &style, width, LEADING, 2)
}

/// "First" and "Then" of each step, in the smallest letters of large print.
fn order_words(desk: &Desk<'_>, person: &Person<'_>) -> Vec<Words> {
    let style = Style::bold(Length::pt(SMALLEST_PT));
    let mut all = vec![Words::default(); person.board.steps.len()];
    for strip in strips::of(desk, person).unwrap_or_default() {
        for i in strip.steps.clone() {
            if let Some(word) = strips::order_word(person, &strip, i) {
                all[i] = Words::line(word, &style, Length::mm(60.0));
            }
        }
    }
    all
}

fn order_room(order: &Words) -> Length {
    if order.is_empty() {
        Length::ZERO
    } else {
        order.height() + Length::mm(1.5)
    }
}

fn thing_room(thing: &Words) -> Length {
    if thing.is_empty() {
        Length::ZERO
    } else {
        thing.height() + Length::mm(1.5)
    }
}

impl Plan {
    /// How many columns the rows take.
    fn needed(&self, parts: &[Part]) -> usize {
        let of = |p: &Part| columns_needed(&self.rows[p.steps.clone()], self.columns[0].h, PART);
        parts.iter().map(of).sum()
    }

    /// White to add to each row, the same on all pages, so that the fullest column is filled.
    fn extra(&self) -> Length {
        let spare = |share: &Range<usize>| {
            let used = height(&self.rows[share.clone()], PART);
            (self.columns[0].h - used) / share.len() as i64
        };
        let shares = self.pages.iter().flat_map(|(_, shares)| shares);
        let least = shares.map(spare).min();
        least
            .unwrap_or(Length::ZERO)
            .clamp(Length::ZERO, MOST_EXTRA)
    }
}

/// What drawing the pages needs.
struct Drawing<'a> {
    desk: &'a Desk<'a>,
    person: &'a Person<'a>,
    plan: &'a Plan,
    pictures: &'a [Drawn],
}

impl Drawing<'_> {
    fn page(&self, part: &Part, shares: &[Range<usize>], (page, pages): (usize, usize)) -> Page {
        let (desk, person, plan) = (self.desk, self.person, self.plan);
        let title = person.plan_title();
        let steps = match (shares.first(), shares.last()) {
            (Some(first), Some(last)) => &person.board.steps[first.start..last.end],
            _ => &[],
        };
        let parts = desk.part_names(steps);
        let of = format!("page {page} of {pages}");
        let mut writer: PageWriter<Everyone> =
            PageWriter::new(plan.size, format!("{title}, {of}: {parts}"));
        let below = match (pages, parts.as_str()) {
            _ if part.strip.is_some() => format!("Page {page} of {pages}"),
            (1, parts) => parts.to_owned(),
            (_, "") => format!("Page {page} of {pages}"),
            (_, parts) => format!("Page {page} of {pages}: {parts}"),
        };
        let header = Header {
            mark: Some(&person.mark),
            mark_words: &person.mark_words,
            title: &title,
            below: &below,
        };
        let footer = desk.footer(person, format!("Large-print board, {of}"));
        frame::draw(&mut writer, plan.size, &header, &footer);
        if let Some(strip) = &part.strip {
            let content = frame::content(plan.size);
            let h = strips::head_height(person, desk.club.rules.seal, content.h);
            let at = Rect { h, ..content };
            strips::draw_head(desk, person, (&strip.title(), &parts), at, &mut writer);
        }
        for (share, column) in shares.iter().zip(&plan.columns) {
            self.column(share.clone(), *column, &mut writer);
        }
        writer.finish()
    }

    fn column(&self, share: Range<usize>, column: Rect, writer: &mut PageWriter<Everyone>) {
        let plan = self.plan;
        let rope_x = column.x + ROPE_X;
        let extra = plan.extra();
        let used = height(&plan.rows[share.clone()], PART) + extra * share.len() as i64;
        let (top, bottom) = (column.y, column.y + used);
        let first = share.start == 0;
        let last = share.end == plan.rows.len();
        let end = if last {
            bottom - Length::mm(1.0)
        } else {
            bottom
        };
        let mut rope = strand::straight(Point::new(rope_x, top), Point::new(rope_x, end));
        if first {
            rope.extend(strand::beginning(Point::new(rope_x, top)));
        }
        rope.extend(if last {
            strand::stopper_below(Point::new(rope_x, end))
        } else {
            strand::arrow_down(Point::new(rope_x, end + Length::mm(1.0)))
        });
        writer.artifact(rope);
        let mut y = top;
        for i in share.clone() {
            if i == share.start || plan.rows[i].begins_part {
                self.part(&self.person.board.steps[i], column, y, writer);
                y += PART;
            }
            let row = Rect {
                y,
                h: plan.rows[i].height + extra,
                ..column
            };
            self.step(i, row, writer);
            y = row.bottom();
        }
    }

    fn part(&self, step: &Step, column: Rect, y: Length, writer: &mut PageWriter<Everyone>) {
        let middle = y + PART / 2;
        writer.artifact(strand::knot(Point::new(column.x + ROPE_X, middle)));
        let name = self
            .desk
            .club
            .part(step.part)
            .map_or("", |p| p.name.as_str());
        let x = column.x + PICTURE_X;
        let style = Style::bold(Length::pt(18.0));
        let words = Words::line(name, &style, column.right() - x);
        writer.heading(2, words.left_of_middle(Point::new(x, middle), ink::SOFT));
        let from = x + words.width() + Length::mm(4.0);
        if from < column.right() - Length::mm(8.0) {
            let (a, b) = (Point::new(from, middle), Point::new(column.right(), middle));
            writer.artifact(vec![line(a, b, ink::RULE, ink::THIN)]);
        }
    }

    fn step(&self, index: usize, row: Rect, writer: &mut PageWriter<Everyone>) {
        let (plan, step) = (self.plan, &self.person.board.steps[index]);
        let source = Some(Source::Step(step.at));
        let middle = row.y + row.h / 2;
        let ring = Point::new(row.x + ROPE_X, middle);
        let peg = Point::new(row.x + PEG_X, middle);
        let not_today = step.state == StepState::NotToday;
        let to_tick = self.person.who.manner.finishing == Finishing::Tick;
        let mut marks = vec![match (not_today, to_tick) {
            (true, _) => circle(ring, RING, dashes().on(ink::PAPER)),
            (false, true) => strand::ring(ring, RING),
            (false, false) => strand::cover(ring, COVER),
        }];
        marks.extend(strand::peg(peg));
        writer.artifact(marks);
        let plate = Rect {
            x: row.x + PICTURE_X,
            y: middle - plan.side / 2,
            w: plan.side,
            h: plan.side,
        };
        if not_today {
            let alt = format!("Not today: {}", step.label);
            writer.figure(source, alt, not_today_plate(plate));
        } else if forms::has_picture(step.form) {
            let (alt, items) = match step.form {
                Form::Photograph => (
                    forms::photo_alt(&step.label),
                    forms::photo_frame(plate, true),
                ),
                Form::Object => (forms::object_alt(&step.label), forms::object_place(plate)),
                _ => {
                    let alt = self.desk.alt(&step.symbol, &step.label);
                    (alt, vec![picture(&self.pictures[index], plate)])
                }
            };
            writer.figure(source, alt, items);
        }
        let x = if has_plate(step) {
            plate.right() + WORDS_GAP
        } else {
            plate.x
        };
        let colour = if not_today { ink::SOFT } else { ink::INK };
        let (label, thing) = (&plan.labels.words[index], &plan.things[index]);
        let order = &plan.orders[index];
        let all = order_room(order) + label.height() + thing_room(thing);
        let first = middle - all / 2;
        let top = first + order_room(order);
        let mut words = strand::peg_number(peg, index + 1);
        words.extend(order.left(Point::new(x, first), ink::SOFT));
        words.extend(label.left(Point::new(x, top), colour));
        let below = top + label.height() + Length::mm(1.5);
        words.extend(thing.left(Point::new(x, below), ink::SOFT));
        writer.paragraph(source, words);
    }
}

/// The back of a tile, with "Not today" on it.
fn not_today_plate(r: Rect) -> Vec<crate::page::Item> {
    let mut items = face_down(r, r.w.scale(0.1));
    let size = Length::pt((r.w.to_mm() * 0.52).clamp(9.0, 26.0));
    let words = Words::wrapped("Not today", &Style::bold(size), r.w.scale(0.62), 1.15, 2);
    let plate = Rect {
        x: r.x + r.w.scale(0.1),
        y: r.center().y - words.height() / 2 - Length::mm(1.6),
        w: r.w.scale(0.8),
        h: words.height() + Length::mm(3.2),
    };
    items.push(rounded(plate, Length::mm(1.6), Look::filled(ink::PAPER)));
    items.extend(words.amid(r.center(), ink::INK));
    items
}
