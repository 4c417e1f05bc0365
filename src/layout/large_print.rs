//! One participant's whole board in large print, in the direction they read: a ring to tick, a
//! picture and words for each step along the rope, with a knot where a part of the day begins.
//! Short strips share a page, each in a frame of its own.

use super::desk::{Desk, Person};
use super::fit::report;
use super::frame::{self, Header};
use super::large_frames;
use super::large_plan::{Filled, Kind, Leaf, Plan, Way};
use super::large_step::Drawing;
use super::large_words::Said;
use super::strips;
use super::writer::{Everyone, PageWriter};
use crate::model::finding::Severity;
use crate::page::Page;
use crate::symbols::library::Drawn;
use crate::units::Rect;

/// The pages of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let steps = &person.board.steps;
    if steps.is_empty() {
        let sentence = format!("The board of {} is empty.", person.mark_words);
        let hint = "Put activities on the timetable, or own steps on the board.";
        let spot = desk.board_spot(person);
        desk.note(Severity::Look, "print.empty", spot, sentence, hint);
        return Vec::new();
    }
    let parts = strips::parts(desk, person);
    let plan = Plan::of(desk, person, &parts);
    report_labels(desk, person, plan.alone.way.said());
    let pictures: Vec<Drawn> = steps.iter().map(|s| desk.step_art(s, person)).collect();
    let drawing = Drawing {
        desk,
        person,
        pictures: &pictures,
    };
    let count = plan.leaves.len();
    let leaves = plan.leaves.iter().enumerate();
    leaves
        .map(|(i, leaf)| page(&drawing, plan.kind(leaf), leaf, (i + 1, count)))
        .collect()
}

fn report_labels(desk: &mut Desk<'_>, person: &Person<'_>, said: &Said) {
    let steps = person.board.steps.iter().zip(&said.said);
    let labels: Vec<_> = steps
        .map(|(s, said)| (said.as_str(), desk.step_spot(person, s.at)))
        .collect();
    let hint = "Use fewer or shorter words, larger paper, or the other way up.";
    let over = &said.labels.overfull;
    report(desk, person, &labels, over, "large-print board", hint);
}

fn page(drawing: &Drawing<'_>, kind: &Kind, leaf: &Leaf<'_>, number: (usize, usize)) -> Page {
    let (desk, person) = (drawing.desk, drawing.person);
    let mut page = begin(drawing, kind, leaf, number);
    let content = frame::content(kind.size);
    if let Some(frames) = kind.frames {
        let all = (0..leaf.filled.len()).map(|i| frames.frame(content, i));
        large_frames::draw_cuts(&all.collect::<Vec<Rect>>(), &mut page);
    }
    for (i, filled) in leaf.filled.iter().enumerate() {
        head(drawing, kind, filled, i, &mut page);
        let place = (kind.room(desk, person, filled.part, i), kind.extra);
        let (at, of) = filled.page;
        let next = (at + 1 < of).then_some(number.0 + 1);
        match &kind.way {
            Way::Down(down) => down.draw(drawing, place, &filled.shares, next, &mut page),
            Way::Across(across) => across.draw(drawing, place, &filled.shares, next, &mut page),
        }
    }
    page.finish()
}

/// A page with what stands around it.
fn begin(
    drawing: &Drawing<'_>,
    kind: &Kind,
    leaf: &Leaf<'_>,
    (page, pages): (usize, usize),
) -> PageWriter<Everyone> {
    let (desk, person) = (drawing.desk, drawing.person);
    let parts = part_names(drawing, &leaf.filled);
    let of = format!("page {page} of {pages}");
    let plain = person.plan_title();
    let mut writer = PageWriter::new(kind.size, format!("{plain}, {of}: {parts}"));
    let strip = |f: &Filled<'_>| f.part.strip.as_ref().map(|s| s.index);
    let (first, last) = (leaf.filled.first(), leaf.filled.last());
    let strips = first.and_then(strip).zip(last.and_then(strip));
    let below = match (strips, pages, parts.as_str()) {
        (Some((first, last)), ..) if leaf.framed => {
            let which = large_frames::which(first, last);
            format!("Page {page} of {pages}: {which}. Cut or fold on the dashes.")
        }
        (Some(_), ..) | (None, 2.., "") => format!("Page {page} of {pages}"),
        (None, 0 | 1, parts) => parts.to_owned(),
        (None, _, parts) => format!("Page {page} of {pages}: {parts}"),
    };
    let title = match first {
        Some(filled) if strips.is_none() => strips::goes_on(&plain, filled.page.0),
        _ => plain,
    };
    let header = Header {
        mark: Some(&person.mark),
        mark_words: &person.mark_words,
        title: &title,
        below: &below,
    };
    let footer = desk.footer(person, format!("Large-print board, {of}"));
    frame::draw(&mut writer, kind.size, &header, &footer);
    writer
}

/// The parts of the day of what stands on a page.
fn part_names(drawing: &Drawing<'_>, filled: &[Filled<'_>]) -> String {
    let first = filled.first().and_then(|f| f.shares.first());
    let last = filled.last().and_then(|f| f.shares.last());
    first.zip(last).map_or_else(String::new, |(first, last)| {
        let steps = &drawing.person.board.steps[first.start..last.end];
        drawing.desk.part_names(steps)
    })
}

/// What stands above a strip.
fn head(
    drawing: &Drawing<'_>,
    kind: &Kind,
    filled: &Filled<'_>,
    at: usize,
    page: &mut PageWriter<Everyone>,
) {
    let (desk, person) = (drawing.desk, drawing.person);
    let Some(strip) = &filled.part.strip else {
        return;
    };
    let (content, seal) = (frame::content(kind.size), desk.club.rules.film());
    let parts = part_names(drawing, std::slice::from_ref(filled));
    if let Some(frames) = kind.frames {
        let frame = frames.frame(content, at);
        if let Some(inside) = large_frames::inside(frame, person, seal) {
            // Rows from top to bottom name their parts themselves.
            let parts = match &kind.way {
                Way::Down(_) => "",
                Way::Across(_) => parts.as_str(),
            };
            large_frames::draw_head(person, (strip, parts), &inside, page);
        }
        return;
    }
    let h = strips::head_height(person, seal, content.h);
    let title = strips::goes_on(&strip.title(), filled.page.0);
    let at = Rect { h, ..content };
    strips::draw_head(desk, person, (&title, &parts), at, page);
}
