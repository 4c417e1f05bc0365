//! Where the tiles are laid: a place for each finished tile in order along the rope, with the cross
//! where its fastener goes, and a finished place large enough for all of them.
//!
//! All places are for the *finished* tile: the printed side and a seal on either side, with a
//! little more so that it can be put down.

use std::ops::Range;

use super::base_finish::{Pouch, draw_one_pouch, draw_pouch, draw_turn_over, finish_height};
use super::base_place::{Said, Slot, Ways, draw_part, draw_place, place_words};
use super::desk::{Desk, Person};
use super::fit::report;
use super::frame::{self, Header};
use super::making::gather::{self, SMALLEST};
use super::sizes::in_mm;
use super::strand;
use super::strips::{self, Part};
use super::writer::{Everyone, PageWriter};
use super::{Turn, forms};
use crate::model::board::Step;
use crate::model::finding::Severity;
use crate::model::manner::{Finishing, Run};
use crate::model::people::Participant;
use crate::page::Page;
use crate::plan::seal;
use crate::units::{Length, Rect, Size};

/// Room around a finished tile in its place, both sides together.
const CLEARANCE: Length = Length::um(2_000);
/// Below the head of a strip.
const HEAD_GAP: Length = Length::um(4_000);
/// Between the last row and the finished place.
const BELOW: Length = Length::um(4_000);

/// Size of a place for a tile of a participant: finished tile and clearance.
fn place_size(who: &Participant, film: Length) -> Size {
    let finished = seal::finished(who.tile_size(), film);
    Size::new(finished.w + CLEARANCE, finished.h + CLEARANCE)
}

/// One way to share the board out over pages.
#[derive(Clone, Debug)]
struct Plan {
    size: Size,
    place: Size,
    ways: Ways,
    /// Which steps lie on which page.
    pages: Vec<Range<usize>>,
    /// Whether each page has the finished place for its own tiles.
    together: bool,
    pouch: Pouch,
    finishing: Finishing,
    /// Taken above the places by what stands over a strip.
    head: Length,
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
    let parts = strips::parts(desk, person);
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
    let place = gather::in_words(place_size(person.who, desk.club.rules.film()));
    let paper = desk.request.paper.label();
    let sentence = format!(
        "The base board of {} is left out: a place of {place} cannot be laid out on {paper} paper.",
        person.mark_words
    );
    let spot = crate::model::finding::Spot::Participant(person.who.id);
    let hint = "Choose another tile size or larger paper.";
    desk.note(Severity::StopAndLook, "print.tile", spot, sentence, hint);
}

fn report_labels(desk: &mut Desk<'_>, person: &Person<'_>, place: Size) {
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
    let all = plan.pages.len() + plan.pouch_pages(part.steps.len()).len();
    for (i, steps) in plan.pages.iter().enumerate() {
        let steps = part.steps.start + steps.start..part.steps.start + steps.end;
        let place = (i, i + 1 < all);
        let mut page = begin(desk, person, plan, part, (pages.len() + 1, count), place);
        let (slots, bottom) = plan.ways.slots(plan.content(), steps.len());
        draw_steps(desk, person, plan, part, (steps.clone(), &slots), &mut page);
        joins(plan, (i, steps.len()), &mut page);
        let content = plan.content();
        let h = plan.finish_height(steps.len());
        let at = Rect {
            y: (bottom + BELOW).max(content.bottom() - h),
            h,
            ..content
        };
        match plan.finishing {
            Finishing::FinishedRow if plan.together => {
                draw_pouch(
                    desk,
                    person,
                    (plan.pouch, plan.place),
                    steps.len(),
                    at,
                    &mut page,
                );
            }
            Finishing::Pouch => draw_one_pouch(desk, person, plan.place, at, &mut page),
            Finishing::TurnedOver => draw_turn_over(at, &mut page),
            Finishing::FinishedRow | Finishing::Tick => {}
        }
        pages.push(page.finish());
    }
    let pouches = plan.pouch_pages(part.steps.len());
    for (i, &tiles) in (plan.pages.len()..).zip(&pouches) {
        let place = (i, i + 1 < all);
        let mut page = begin(desk, person, plan, part, (pages.len() + 1, count), place);
        let at = Rect {
            h: plan.pouch.height(plan.place, tiles),
            ..plan.content()
        };
        draw_pouch(desk, person, (plan.pouch, plan.place), tiles, at, &mut page);
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

/// The plan with the fewest pages; of those with as many, one that keeps each page whole, and one
/// that keeps the paper upright.
fn best_plan(desk: &Desk<'_>, person: &Person<'_>, part: &Part) -> Option<Plan> {
    let place = place_size(person.who, desk.club.rules.film());
    let tile = person.who.tile_size();
    if tile.w.min(tile.h) < SMALLEST {
        return None;
    }
    let steps = part.steps.len();
    let finishing = person.who.manner.finishing;
    let mut plans = Vec::new();
    for turn in [Turn::Portrait, Turn::Landscape] {
        let size = desk.page_size(turn);
        let room = frame::content(size).h;
        let head = match part.strip {
            Some(_) => strips::head_height(person, desk.club.rules.film(), room) + HEAD_GAP,
            None => Length::ZERO,
        };
        for together in [true, false] {
            let ways = Ways::new(
                person.who.manner.run,
                below_head(frame::content(size), head),
                place,
            );
            plans
                .extend(ways.and_then(|ways| plan(size, ways, steps, together, (finishing, head))));
        }
    }
    let pages = |p: &Plan| p.pages.len() + p.pouch_pages(steps).len();
    plans
        .into_iter()
        .min_by_key(|p| (pages(p), !p.together, p.size.w > p.size.h))
}

fn plan(
    size: Size,
    ways: Ways,
    steps: usize,
    together: bool,
    (finishing, head): (Finishing, Length),
) -> Option<Plan> {
    let content = below_head(frame::content(size), head);
    let place = ways.place;
    let pouch = Pouch::on(content, place)?;
    // Most lines for which the page still holds all that belongs to them.
    let fits = |lines: usize| {
        let tiles = (lines * ways.columns).min(steps);
        let below = finish_height(finishing, pouch, place, tiles) + BELOW;
        let with_finish = together || finishing != Finishing::FinishedRow;
        let finish = if with_finish { below } else { Length::ZERO };
        ways.height(lines) + finish <= content.h
    };
    let wanted = ways.most_lines(steps);
    let rows = (1..=wanted).take_while(|&r| fits(r)).last()?;
    let columns = ways.columns;
    let each = rows * columns;
    // The same number of pages, evenly filled, by whole rows where that costs nothing.
    let count = steps.div_ceil(each);
    let even = steps.div_ceil(count);
    let even = match ways.run {
        Run::Down => even,
        _ => even.div_ceil(columns).max(1) * columns,
    };
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
        ways: Ways {
            lines: rows,
            ..ways
        },
        pages,
        together,
        pouch,
        finishing,
        head,
    })
}

/// A page with what stands around it: which page of the board or strip it is, from zero, and
/// whether that goes on on the next.
fn begin(
    desk: &Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    part: &Part,
    (page, pages): (usize, usize),
    (number, more): (usize, bool),
) -> PageWriter<Everyone> {
    let plain = person.plan_title();
    let title = match &part.strip {
        Some(_) => plain.clone(),
        None => strips::goes_on(&plain, number),
    };
    let of = if pages > 1 {
        format!("Base board {page} of {pages}")
    } else {
        "Base board".to_owned()
    };
    let tile = person.who.tile_size();
    let film = desk.club.rules.film();
    let with_film = match film > Length::ZERO {
        true => format!(
            " ({} with film)",
            gather::in_words(seal::finished(tile, film))
        ),
        false => String::new(),
    };
    let (_, on_board) = desk.club.rules.craft.half.words();
    let dot = in_mm(desk.club.rules.craft.dot);
    let mut below = format!(
        "{of}, for tiles of {}{with_film}. On each cross a {on_board} dot of {dot}",
        gather::in_words(tile)
    );
    if more {
        below = format!("{below}. Goes on: page {}", page + 1);
    }
    let mut writer = PageWriter::new(plan.size, format!("{plain}, {of}"));
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
        let title = strips::goes_on(&strip.title(), number);
        strips::draw_head(desk, person, (&title, &parts), at, &mut writer);
    }
    writer
}

/// Where the rope of one page is laid on that of the next: the same letter at both ends.
fn joins(plan: &Plan, (page_at, steps): (usize, usize), page: &mut PageWriter<Everyone>) {
    let [first, last] = plan.ways.joins(plan.content(), steps);
    let letter = |n: usize| char::from(b'A' + u8::try_from(n % 26).unwrap_or(0)).to_string();
    if page_at > 0 {
        page.artifact(strand::join(first, &letter(page_at - 1)));
    }
    if page_at + 1 < plan.pages.len() {
        page.artifact(strand::join(last, &letter(page_at)));
    }
}

/// Rope and places of a page.
fn draw_steps(
    desk: &Desk<'_>,
    person: &Person<'_>,
    plan: &Plan,
    part: &Part,
    (steps, slots): (Range<usize>, &[Slot]),
    page: &mut PageWriter<Everyone>,
) {
    let all = &person.board.steps;
    let ends = (steps.start == 0, steps.end == all.len());
    page.artifact(plan.ways.rope(plan.content(), steps.len(), ends));
    for (i, slot) in steps.clone().zip(slots) {
        let strip = part.strip.as_ref();
        let words = Said {
            number: i + 1,
            words: forms::words_of(desk, person, &all[i]),
            order: strip.and_then(|s| strips::order_word(person, s, i)),
        };
        if i == steps.start || all[i - 1].part != all[i].part {
            draw_part(desk, &all[i], &words, slot, page);
        }
        let dot = desk.club.rules.craft.dot;
        draw_place((plan.finishing, dot), &all[i], &words, slot, page);
    }
}
