//! The coordinator's sheet: the timetable with times and what is needed, who helps, who comes and
//! where their boards differ, what to bring, what to look at, and boxes to count in by hand.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame;
use super::shapes::{Look, rounded};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn, ink, plan_code, session_people, session_table};
use crate::model::session::Slot;
use crate::page::Role;
use crate::plan::clock::{self, Clock};
use crate::story::when::{self, NO_BREAK};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Letters of the table and of the lists.
pub(super) const LETTERS_PT: f64 = 10.5;
pub(super) const SMALL_PT: f64 = 9.0;
/// Most lines of one cell, so that a row never outgrows a page.
pub(super) const MOST_LINES: usize = 8;

/// What the club should look at, in words of our own after common practice for groups near water.
const CAUTIONS: [&str; 3] = [
    "Head counts: at arriving, after toilets, before going home.",
    "A change tile is with every board.",
    "Look at the place, the weather and the people again whenever something changes.",
];
const WATER_CAUTIONS: [&str; 5] = [
    "One watcher has no other job.",
    "A helper in the water beside one participant does not count as a watcher.",
    "Count before the water, at each change of helpers, and on leaving the water.",
    "A dry replacement is ready for everything in the water.",
    "Hearing aids and speech devices stay dry: agree on a signal that can be seen.",
];

/// The sheet of the session.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let people: Vec<Person<'_>> = desk
        .club
        .attending(desk.session)
        .map(|who| desk.person(who))
        .collect();
    let clock = clock::clock(desk.session, &desk.club.rules);
    let mut flow: Flow<Coordinator> = Flow::new();
    session_table::add(desk, &clock, room, &mut flow);
    counts(desk, &people, room, &mut flow);
    session_people::add_helpers(desk, room, &mut flow);
    session_people::add_objects(desk, &people, room, &mut flow);
    session_people::add_participants(desk, &people, room, &mut flow);
    let title = match desk.session.title.trim() {
        "" => "Session".to_owned(),
        title => title.to_owned(),
    };
    let boards = people.iter().map(|p| (&p.board, p.who));
    let code = plan_code::of_boards(desk.club, boards);
    let date = when::full_date(desk.session.date);
    let facts = facts(desk, &clock);
    let begin = |page: usize, pages: usize| {
        let what = format!("Session sheet, page {page} of {pages}");
        frame::begin_session(
            size,
            (&title, &facts),
            what,
            format!("Plan {code} · {date}"),
        )
    };
    let pages = flow.into_pages(room, begin);
    Sheet {
        kind: SheetKind::SessionSheet,
        participant: None,
        file_stem: desk.file_stem(SheetKind::SessionSheet, None),
        title: format!("Session sheet, {date}"),
        pages: pages.into_iter().map(PageWriter::finish).collect(),
    }
}

/// "Saturday 12 June 2027 · Heron Landing · 09:30 to 11:04, 2 min between"
fn facts(desk: &Desk<'_>, clock: &Clock) -> String {
    let s = desk.session;
    let mut facts = vec![format!(
        "{} {}",
        when::weekday(s.date),
        when::full_date(s.date)
    )];
    if !s.place.trim().is_empty() {
        facts.push(s.place.trim().to_owned());
    }
    facts.push(format!("{} to {}", clock.start, clock.end));
    if clock.rows.len() > 1 {
        let between = desk.club.rules.transition_minutes;
        facts.push(format!("{between}{NO_BREAK}min between slots"));
    }
    facts.join(" · ")
}

/// Regular letters of lists.
pub(super) fn letters() -> Style {
    Style::regular(Length::pt(LETTERS_PT))
}

/// A heading inside the sheet.
pub(super) fn heading(words: &str, room: Rect) -> Piece {
    heading_below(Length::mm(6.0), words, room)
}

/// The same with so much white above.
pub(super) fn heading_below(space: Length, words: &str, room: Rect) -> Piece {
    let words = Words::line(words, &Style::bold(Length::pt(14.0)), room.w);
    Piece::new(space + words.height() + Length::mm(2.0))
        .kept()
        .with(
            Role::Heading(2),
            None,
            words.left(Point::new(room.x, space), ink::INK),
        )
}

/// Boxes for head counts and lines to tick.
fn counts(desk: &Desk<'_>, people: &[Person<'_>], room: Rect, flow: &mut Flow<Coordinator>) {
    let in_water = |s: &Slot| desk.club.in_water(s.activity);
    let water = desk.session.timetable.iter().any(in_water);
    flow.push(heading("Counts", room));
    let expected = format!("{} participants are expected.", people.len());
    let words = Words::line(&expected, &letters(), room.w);
    let at = Point::new(room.x, Length::ZERO);
    flow.push(
        Piece::new(Length::mm(6.5))
            .kept()
            .words(words.left(at, ink::INK)),
    );
    let boxes: &[&str] = if water {
        &[
            "Arrived",
            "Before water",
            "In water",
            "Out of water",
            "After toilets",
            "Going home",
        ]
    } else {
        &[
            "Arrived",
            "After toilets",
            "Before going home",
            "Going home",
        ]
    };
    flow.push(count_boxes(boxes, room));
    flow.push(heading("Look at", room));
    let all = WATER_CAUTIONS.iter().filter(|_| water).chain(&CAUTIONS);
    for (i, caution) in all.enumerate() {
        let line = tick_line(caution, room);
        flow.push(if i == 0 { line.kept() } else { line });
    }
}

fn count_boxes(names: &[&str], room: Rect) -> Piece {
    let gap = Length::mm(2.0);
    let n = names.len() as i64;
    let w = (room.w - gap * (n - 1)) / n;
    let h = Length::mm(19.0);
    let mut drawn = Vec::new();
    let mut words = Vec::new();
    let small = Style::regular(Length::pt(SMALL_PT));
    for (i, name) in names.iter().enumerate() {
        let at = Rect {
            x: room.x + (w + gap) * i as i64,
            y: Length::ZERO,
            w,
            h,
        };
        drawn.push(rounded(
            at,
            Length::mm(1.6),
            Look::line(ink::SOFT, ink::THIN),
        ));
        let inside = w - Length::mm(3.0);
        let x = at.x + Length::mm(1.5);
        let name = Words::wrapped(name, &Style::bold(Length::pt(SMALL_PT)), inside, TIGHT, 2);
        words.extend(name.left(Point::new(x, at.y + Length::mm(1.2)), ink::INK));
        let by = Words::line("time, by", &small, inside);
        words.extend(by.left(Point::new(x, at.bottom() - Length::mm(4.6)), ink::SOFT));
    }
    Piece::new(h + Length::mm(2.0)).drawn(drawn).words(words)
}

/// Lines with boxes to tick, two side by side.
pub(super) fn tick_lines(words: &[String], room: Rect) -> Vec<Piece> {
    tick_lines_in(&letters(), words, room)
}

/// The same in letters of a kind.
pub(super) fn tick_lines_in(style: &Style, words: &[String], room: Rect) -> Vec<Piece> {
    let gap = Length::mm(4.0);
    let w = (room.w - gap) / 2;
    let left = Rect { w, ..room };
    let right = Rect {
        x: room.x + w + gap,
        ..left
    };
    words
        .chunks(2)
        .map(|two| {
            let beside = two.get(1).map(|words| tick_line_in(style, words, right));
            tick_line_in(style, &two[0], left).beside(beside)
        })
        .collect()
}

/// A line with a box to tick.
pub(super) fn tick_line(words: &str, room: Rect) -> Piece {
    tick_line_in(&letters(), words, room)
}

/// The same in letters of a kind.
pub(super) fn tick_line_in(style: &Style, words: &str, room: Rect) -> Piece {
    let side = Length::mm(3.8);
    let x = room.x + side + Length::mm(3.0);
    let words = Words::wrapped(words, style, room.right() - x, CLEAR, MOST_LINES);
    let box_ = Rect::new(Point::new(room.x, Length::mm(0.2)), Size::square(side));
    let look = Look::line(ink::SOFT, ink::THIN);
    Piece::new(words.height() + Length::mm(1.8))
        .drawn(vec![rounded(box_, Length::mm(0.8), look)])
        .words(words.left(Point::new(x, Length::ZERO), ink::INK))
}
