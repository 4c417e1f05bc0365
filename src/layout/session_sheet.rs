//! The coordinator's sheet, held at the water's edge: on the first page the day by time, who is with
//! whom in the water, who helps, what to look at and boxes to count in by hand; on the next what is
//! to be known of each participant. The first page has the largest letters at which it is one page.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame;
use super::shapes::{Look, rounded};
use super::words::{CLEAR, Words};
use super::writer::{Coordinator, PageWriter};
use super::{
    Sheet, SheetKind, Turn, ink, plan_code, session_checks, session_facts, session_people,
    session_table, session_water,
};
use crate::model::ids::{HelperId, ParticipantId};
use crate::page::{Page, Role};
use crate::plan::clock::{self, Clock};
use crate::story::when::{self, NO_BREAK};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Letters of the lists on the pages about participants.
pub(super) const LETTERS_PT: f64 = 10.5;
pub(super) const SMALL_PT: f64 = 9.0;
/// Most lines of one cell, so that a row never outgrows a page.
pub(super) const MOST_LINES: usize = 8;

/// Width below which a page is narrow, and nothing stands beside the timetable.
const NARROW: Length = Length::um(150_000);

/// Letters of the first page, the largest first. Clear print asks for 12 points; smaller ones are
/// for days on which that would be two pages.
const SIZES: [f64; 11] = [
    14.0, 13.5, 13.0, 12.5, 12.0, 11.75, 11.5, 11.0, 10.75, 10.5, 10.0,
];

/// Letters of one size for the first page.
#[derive(Clone, Copy, Debug)]
pub(super) struct Letters(pub f64);

impl Letters {
    pub fn body(self) -> Style {
        Style::regular(Length::pt(self.0))
    }

    pub fn bold(self) -> Style {
        Style::bold(Length::pt(self.0))
    }

    /// What is of less weight.
    pub fn small(self) -> Style {
        Style::regular(Length::pt(self.0 - 1.5))
    }

    pub fn small_bold(self) -> Style {
        Style::bold(Length::pt(self.0 - 1.5))
    }

    pub fn heading(self) -> Style {
        Style::bold(Length::pt(self.0 + 1.5))
    }

    /// A length that grows with the letters; `mm` is for letters of 12 points.
    pub fn mm(self, mm: f64) -> Length {
        Length::mm(mm * self.0 / 12.0)
    }
}

/// What the first page is made from.
pub(super) struct Scene<'a> {
    pub desk: &'a Desk<'a>,
    pub people: &'a [Person<'a>],
    pub clock: &'a Clock,
}

impl Scene<'_> {
    /// "Mila (kite)".
    pub fn called(&self, who: ParticipantId) -> String {
        let found = self.people.iter().find(|p| p.who.id == who);
        found.map_or_else(
            || "someone".to_owned(),
            |p| format!("{} ({})", p.who.name.trim(), p.mark_words),
        )
    }

    /// The name alone, with the mark where two share it.
    pub fn short(&self, who: ParticipantId) -> String {
        let name = |p: &Person<'_>| p.who.name.trim().to_owned();
        let Some(person) = self.people.iter().find(|p| p.who.id == who) else {
            return "someone".to_owned();
        };
        let own = name(person);
        let same = self.people.iter().filter(|p| name(p) == own).count();
        if same > 1 || own.is_empty() {
            self.called(who)
        } else {
            own
        }
    }

    pub fn helper(&self, id: HelperId) -> &str {
        self.desk
            .club
            .helper(id)
            .map_or("a helper", |h| h.name.trim())
    }

    /// "Ada, Bo and Cy".
    pub fn helpers(&self, ids: impl IntoIterator<Item = HelperId>) -> String {
        let names: Vec<&str> = ids.into_iter().map(|h| self.helper(h)).collect();
        listed(&names)
    }
}

/// "Ada, Bo and Cy".
pub(super) fn listed<S: AsRef<str>>(names: &[S]) -> String {
    let names: Vec<&str> = names.iter().map(AsRef::as_ref).collect();
    match names.as_slice() {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [most @ .., last] => format!("{} and {last}", most.join(", ")),
    }
}

/// The sheet of the session.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let people: Vec<Person<'_>> = desk
        .club
        .attending(desk.session)
        .map(|who| desk.person(who))
        .collect();
    let date = when::full_date(desk.session.date);
    Sheet {
        kind: SheetKind::SessionSheet,
        participant: None,
        file_stem: desk.file_stem(SheetKind::SessionSheet, None),
        title: format!("Session sheet, {date}"),
        pages: pages(desk, &people),
    }
}

fn pages(desk: &Desk<'_>, people: &[Person<'_>]) -> Vec<Page> {
    let size = desk.page_size(Turn::Portrait);
    let room = room(size);
    let clock = clock::clock(desk.session, &desk.club.rules);
    let scene = Scene {
        desk,
        people,
        clock: &clock,
    };
    let mut front = front(&scene, room);
    let mut back: Flow<Coordinator> = Flow::new();
    let first = front.pages_needed(room.h, 1);
    // Where the day itself needs a second page, what follows goes on there.
    let rest = if first > 1 { &mut front } else { &mut back };
    session_people::add_objects(desk, people, room, rest);
    session_people::add_participants(desk, people, room, rest);
    let first = front.pages_needed(room.h, 1);
    let all = first + back.pages_needed(room.h, 1);
    let begin = |page: usize| begin(&scene, size, (page, all));
    let mut pages = front.into_pages(room, |page, _| begin(page));
    pages.extend(back.into_pages(room, |page, _| begin(first + page)));
    pages.into_iter().map(PageWriter::finish).collect()
}

/// A little higher than on other sheets: every line counts.
fn room(size: Size) -> Rect {
    let up = Length::mm(4.0);
    let room = frame::content(size);
    Rect {
        y: room.y - up,
        h: room.h + up + Length::mm(3.0),
        ..room
    }
}

/// The first page in the largest letters at which it is one; in the smallest where it never is.
fn front(scene: &Scene<'_>, room: Rect) -> Flow<Coordinator> {
    let mut flow = Flow::new();
    for size in SIZES {
        flow = Flow::new();
        fill(scene, Letters(size), room, &mut flow);
        if flow.pages_needed(room.h, 1) <= 1 {
            break;
        }
    }
    flow
}

fn fill(scene: &Scene<'_>, letters: Letters, room: Rect, flow: &mut Flow<Coordinator>) {
    if room.w < NARROW {
        for piece in session_table::rows(scene, letters, room) {
            flow.push(piece);
        }
        for piece in session_facts::all(scene, letters, room, flow) {
            flow.push(piece);
        }
    } else {
        let gap = Length::mm(6.0);
        let left = Rect {
            w: room.w.scale(0.585),
            ..room
        };
        let x = left.right() + gap;
        let right = Rect {
            x,
            w: room.right() - x,
            ..room
        };
        let columns = vec![
            session_table::rows(scene, letters, left),
            session_facts::all(scene, letters, right, flow),
        ];
        for piece in Piece::side_by_side(columns, room.h) {
            flow.push(piece);
        }
    }
    session_water::add(scene, letters, room, flow);
    session_checks::add(scene, letters, room, flow);
}

fn begin(scene: &Scene<'_>, size: Size, (page, pages): (usize, usize)) -> PageWriter<Coordinator> {
    let desk = scene.desk;
    let title = match desk.session.title.trim() {
        "" => "Session".to_owned(),
        title => title.to_owned(),
    };
    let boards = scene.people.iter().map(|p| (&p.board, p.who));
    let code = plan_code::of_boards(desk.club, boards);
    let date = when::full_date(desk.session.date);
    let what = format!("Session sheet, page {page} of {pages}");
    let footer = desk.foot(what, format!("Plan {code} · {date}"));
    frame::begin_session(size, (&title, &facts(desk, scene.clock)), &footer)
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
    heading_in(&Style::bold(Length::pt(14.0)), space, words, room)
}

/// The same in letters of a kind.
pub(super) fn heading_in(style: &Style, space: Length, words: &str, room: Rect) -> Piece {
    let words = Words::line(words, style, room.w);
    Piece::new(space + words.height() + style.size.scale(0.4))
        .kept()
        .with(
            Role::Heading(2),
            None,
            words.left(Point::new(room.x, space), ink::INK),
        )
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

/// A line with a box to tick, in letters of a kind.
pub(super) fn tick_line_in(style: &Style, words: &str, room: Rect) -> Piece {
    let side = style.size.scale(1.02);
    let x = room.x + side + style.size.scale(0.6);
    let words = Words::wrapped(words, style, room.right() - x, CLEAR, MOST_LINES);
    let box_ = Rect::new(Point::new(room.x, Length::mm(0.2)), Size::square(side));
    let look = Look::line(ink::INK, ink::THIN);
    Piece::new(words.height() + Length::mm(1.8))
        .drawn(vec![rounded(box_, Length::mm(0.8), look)])
        .words(words.left(Point::new(x, Length::ZERO), ink::INK))
}
