//! The group's timetable as large cards to cut apart and hang where the circle sees them. It shows
//! what the group does and nothing of any participant.
//!
//! Symbols of 120 to 150 mm are common practice for a wall, as are letters whose height is a two
//! hundredth of the distance they are read from.

use super::desk::{Desk, quoted};
use super::fit::{Labels, fit};
use super::frame;
use super::group_card::{self, Card, Place, State, With};
use super::group_turns;
use super::large_frames::{Frames, draw_cuts};
use super::words::Words;
use super::writer::{Everyone, PageWriter};
use super::{Sheet, SheetKind, Turn, grid, ink, plan_code};
use crate::model::board::UNKNOWN_ACTIVITY;
use crate::model::club::Activity;
use crate::model::finding::{Severity, Spot};
use crate::model::ids::{ActivityId, SlotId, SymbolId};
use crate::model::session::{Session, Slot};
use crate::page::Page;
use crate::story::when;
use crate::text::{Direction, Room, Style, metrics, missing};
use crate::units::{Length, Point, Rect, Size};

/// White at the sides; office printers reach to within 4 to 7 mm of the edge.
const SIDE: Length = Length::um(8_000);
/// Above the cards: what the page is, and how it is used.
const TOP: Length = Length::um(15_000);
/// Below them: bar and plan.
const FOOT: Length = Length::um(12_500);
/// The least card with a symbol of 120 mm and the white around it, and the least width at which
/// its words stand beside the symbol.
const LEAST_HEIGHT: Length = Length::um(125_000);
const LEAST_WIDTH: Length = Length::um(180_000);
/// Smallest letters: those of large print. Largest: what a hall needs.
const SMALLEST_PT: f64 = 18.0;
const LARGEST_PT: f64 = 170.0;
/// Lines of a label.
const LINES: usize = 4;
const LEADING: f64 = 1.15;
/// Common practice: letters are read from so many times their height.
const READ_FROM: f64 = 200.0;

/// The wall of the session; without pages when nothing is on the timetable.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let date = when::full_date(desk.session.date);
    Sheet {
        kind: SheetKind::GroupWall,
        participant: None,
        file_stem: desk.file_stem(SheetKind::GroupWall, None),
        title: format!("Group wall, {date}"),
        pages: pages(desk, &date),
    }
}

/// How cards stand on a page.
#[derive(Clone, Copy, Debug)]
struct Setting {
    size: Size,
    area: Rect,
    frames: Frames,
}

impl Setting {
    /// Upright or turned as was asked for; else as more cards stand on a page.
    fn of(desk: &Desk<'_>) -> Self {
        let upright = Self::on(desk.page_size(Turn::Portrait));
        let turned = Self::on(desk.page_size(Turn::Landscape));
        if turned.frames.len() > upright.frames.len() {
            turned
        } else {
            upright
        }
    }

    fn on(size: Size) -> Self {
        let area = Rect {
            x: SIDE,
            y: TOP,
            w: size.w - SIDE * 2,
            h: size.h - TOP - FOOT,
        };
        let many = |room: Length, least: Length| usize::try_from(room.times(least)).unwrap_or(1);
        let frames = Frames {
            across: many(area.w, LEAST_WIDTH).max(1),
            down: many(area.h, LEAST_HEIGHT).max(1),
        };
        Self { size, area, frames }
    }
}

fn pages(desk: &mut Desk<'_>, date: &str) -> Vec<Page> {
    let all = cards(desk);
    if all.is_empty() {
        return Vec::new();
    }
    let setting = Setting::of(desk);
    let frame = setting.frames.frame(setting.area, 0);
    let place = Place::of(frame, With::of(&all));
    let labels = labels(&all, &place);
    report(desk, &all, &labels);
    let code = plan_code::of_timetable(desk.club, desk.session);
    let plan = format!("Plan {code} · {date}");
    let per_page = setting.frames.len();
    let count = all.len().div_ceil(per_page);
    let mut pages = Vec::with_capacity(count);
    for (i, here) in all.chunks(per_page).enumerate() {
        let what = format!("Group wall, page {} of {count}", i + 1);
        let mut page = PageWriter::new(setting.size, what.clone());
        let first = i * per_page;
        let last = all.last().map_or(0, |c| c.number);
        head(desk, &setting, (here, last), labels.size, &mut page);
        let frames: Vec<Rect> = (0..here.len())
            .map(|n| setting.frames.frame(setting.area, n))
            .collect();
        draw_cuts(&frames, &mut page);
        for ((card, frame), words) in here.iter().zip(&frames).zip(&labels.words[first..]) {
            let by = frame.origin().moved(-setting.area.x, -setting.area.y);
            let place = place.moved(by);
            group_card::draw(desk, card, words, &place, &plan, &mut page);
        }
        let footer = desk.foot(what, plan.clone());
        frame::draw_tight_footer(&mut page, setting.size, &footer);
        pages.push(page.finish());
    }
    pages
}

/// A card for each row; a row that is called off stays, and what comes instead follows it. Rows in
/// turns are one block of one number.
fn cards(desk: &Desk<'_>) -> Vec<Card> {
    let mut all: Vec<Card> = Vec::new();
    let mut part = None;
    let turns = desk.session.turns.as_deref();
    let in_turns = |slot: &Slot| turns.is_some_and(|t| t.has(slot.id));
    for rows in shown(desk).chunk_by(|a, b| in_turns(a) && in_turns(b)) {
        let mut next = all.last().map_or(0, |c| c.number) + 1;
        let mut cards = Vec::new();
        for slot in rows {
            let begins = part.replace(slot.part) != Some(slot.part);
            cards.extend(of_row(desk, slot, begins));
        }
        if in_turns(rows[0]) {
            group_turns::join(&mut cards, next);
        }
        for card in cards.iter_mut().filter(|c| c.turns.is_none()) {
            card.number = next;
            next += 1;
        }
        all.extend(cards);
    }
    all
}

/// The rows that have cards: whoever waits again does the same as before, so one card is enough.
fn shown<'a>(desk: &Desk<'a>) -> Vec<&'a Slot> {
    let session = desk.session;
    let again = session.turns.iter().flat_map(|t| t.waits.iter().skip(1));
    let again: Vec<SlotId> = again.copied().collect();
    let rows = session.timetable.iter();
    rows.filter(|s| !again.contains(&s.id)).collect()
}

/// A row, and what comes instead of it.
fn of_row(desk: &Desk<'_>, slot: &Slot, begins_part: bool) -> Vec<Card> {
    let part = desk.club.part(slot.part).map_or("", |p| p.name.trim());
    let mut card = plain(desk, slot.activity, slot);
    part.clone_into(&mut card.part);
    card.begins_part = begins_part;
    let Some(off) = slot.off else {
        card.options = group_card::options(desk, &slot.options);
        return vec![card];
    };
    let was = card.label.clone();
    card.state = State::NotToday;
    let instead = off.instead.map(|id| Card {
        part: part.to_owned(),
        state: State::Instead(was),
        ..plain(desk, id, slot)
    });
    std::iter::once(card).chain(instead).collect()
}

fn plain(desk: &Desk<'_>, id: ActivityId, slot: &Slot) -> Card {
    let activity = desk.club.activity(id).map(|a| &**a);
    let label = |a: &Activity| a.label.trim().to_owned();
    Card {
        number: 0,
        slot: slot.id,
        symbol: activity.map_or_else(|| SymbolId::new(""), |a| a.symbol.clone()),
        label: activity.map_or_else(|| UNKNOWN_ACTIVITY.to_owned(), label),
        part: String::new(),
        begins_part: false,
        state: State::Today,
        options: Vec::new(),
        turns: None,
    }
}

/// All labels of the wall at one size.
fn labels(all: &[Card], place: &Place) -> Labels {
    let words: Vec<&str> = all.iter().map(|c| c.label.as_str()).collect();
    let room = Room {
        width: place.label.w,
        height: place.label.h,
        max_lines: LINES,
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(LARGEST_PT),
        bold: true,
        direction: Direction::Auto,
    };
    fit(&words, &room, LEADING)
}

fn report(desk: &mut Desk<'_>, all: &[Card], labels: &Labels) {
    let session = desk.session.id;
    for (i, card) in all.iter().enumerate() {
        let spot = Spot::Slot(session, card.slot);
        if labels.overfull.contains(&i) {
            let sentence = format!(
                "{} does not fit on the group wall, even in the smallest letters allowed.",
                quoted(&card.label)
            );
            let hint = "Use fewer or shorter words, or larger paper.";
            desk.note(Severity::Look, "print.label", spot, sentence, hint);
        }
        if !desk.art_on(&card.symbol, Default::default()).known {
            let sentence = format!(
                "{} has no picture; an empty square is printed.",
                quoted(&card.label)
            );
            let hint = "Choose a picture for it.";
            desk.note(Severity::Look, "print.symbol", spot, sentence, hint);
        }
        desk.note_missing(spot, &missing(&card.label));
    }
}

/// What the page is, which cards stand on it, how they hang, and from how far they are read.
fn head(
    desk: &Desk<'_>,
    setting: &Setting,
    (here, last): (&[Card], usize),
    letters: Length,
    page: &mut PageWriter<Everyone>,
) {
    let x = grid::MARGIN;
    let width = setting.size.w - x * 2;
    let title = format!("Group wall · {}", session_name(desk.session));
    let title = Words::line(&title, &Style::bold(Length::pt(11.0)), width);
    page.heading(1, title.left(Point::new(x, Length::mm(5.0)), ink::INK));
    let cards = which(here, last);
    let high = metrics(&Style::bold(letters)).cap_height.to_mm();
    let larger = match setting.frames.len() {
        1 => "",
        _ => " Paper the other way up has larger letters.",
    };
    let how = format!(
        "{cards} Letters {high:.0} mm high are read from about {:.1} m (common practice: \
         distance ÷ 200).{larger}",
        high * READ_FROM / 1000.0
    );
    let fitting = [8.5, 8.0, 7.0, 6.0].map(Length::pt).into_iter();
    let mut fitting = fitting.map(|pt| Words::line(&how, &Style::regular(pt), width));
    let how = fitting.find(|w| !w.cut).unwrap_or_default();
    page.paragraph(None, how.left(Point::new(x, Length::mm(10.0)), ink::SOFT));
}

/// "Cards 3 and 4a of 7. Cut on the dashes.", and how cards of one number hang.
fn which(here: &[Card], of: usize) -> String {
    let named: Vec<String> = here.iter().map(group_turns::named).collect();
    let cards = match &named[..] {
        [] => String::new(),
        [one] => format!("Card {one} of {of}."),
        [one, two] => format!("Cards {one} and {two} of {of}. Cut on the dashes."),
        [first, .., last] => format!("Cards {first} to {last} of {of}. Cut on the dashes."),
    };
    let joined = here
        .iter()
        .find(|c| c.turns.as_ref().is_some_and(|t| t.of > 1));
    match joined {
        Some(card) => format!("{cards} All cards {} hang side by side.", card.number),
        None => cards,
    }
}

/// "Boat morning, Saturday 12 June 2027".
fn session_name(session: &Session) -> String {
    let day = format!(
        "{} {}",
        when::weekday(session.date),
        when::full_date(session.date)
    );
    match session.title.trim() {
        "" => day,
        title => format!("{title}, {day}"),
    }
}
