//! The coordinator's roll: who is expected and how they say that they are here, and the head counts
//! of the day. Names as shown and marks, nothing else of anyone.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame;
use super::roll_table::{self, Rows};
use super::session_sheet::heading_below;
use super::words::{CLEAR, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn, ink, plan_code};
use crate::model::session::Slot;
use crate::plan::roll::Count;
use crate::story::when;
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// Letters of what is read.
const PT: f64 = 10.5;
const SMALL_PT: f64 = 9.0;

/// A count worked out on paper, to show how.
const EXAMPLE: Count = Count {
    arrived: 11,
    left_early: 1,
    at_toilets: 1,
};

/// The sheet of the session; without pages when nobody is expected.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let people: Vec<Person<'_>> = desk
        .club
        .attending(desk.session)
        .map(|who| desk.person(who))
        .collect();
    let date = when::full_date(desk.session.date);
    let pages = if people.is_empty() {
        Vec::new()
    } else {
        pages(desk, &people, &date)
    };
    Sheet {
        kind: SheetKind::Roll,
        participant: None,
        file_stem: desk.file_stem(SheetKind::Roll, None),
        title: format!("Roll sheet, {date}"),
        pages,
    }
}

fn pages(desk: &Desk<'_>, people: &[Person<'_>], date: &str) -> Vec<crate::page::Page> {
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let code = plan_code::of_boards(desk.club, people.iter().map(|p| (&p.board, p.who)));
    let s = desk.session;
    let mut facts = vec![format!("{} {date}", when::weekday(s.date))];
    facts.extend([s.title.trim(), s.place.trim()].map(str::to_owned));
    facts.retain(|f| !f.is_empty());
    let facts = facts.join(" · ");
    let begin = |page: usize, pages: usize| {
        let what = format!("Roll sheet, page {page} of {pages}");
        let title = match page {
            1 => "Roll and counts",
            _ => "Roll and counts go on",
        };
        let footer = desk.foot(what, format!("Plan {code} · {date}"));
        frame::begin_session(size, (title, &facts), &footer)
    };
    let settings = Rows::all().map(|rows| flow(desk, people, rows, room));
    // The roomiest of those that take the fewest pages.
    let shortest = settings.min_by_key(|flow| flow.pages_needed(room.h, 1));
    let pages = shortest.map_or_else(Vec::new, |flow| flow.into_pages(room, begin));
    pages.into_iter().map(PageWriter::finish).collect()
}

fn flow(desk: &Desk<'_>, people: &[Person<'_>], rows: Rows, room: Rect) -> Flow<Coordinator> {
    let mut flow = Flow::new();
    let expected = match people.len() {
        1 => "1 participant is expected.".to_owned(),
        n => format!("{n} participants are expected."),
    };
    let rule = "No answer is not absent: tick “not yet seen”, go and look, ask again.";
    flow.push(line(&format!("{expected} {rule}"), PT, room).kept());
    roll_table::add_people(people, rows.person, room, &mut flow);
    let away: Vec<&str> = desk
        .club
        .participants
        .iter()
        .filter(|p| desk.session.away.contains(&p.id))
        .map(|p| p.name.trim())
        .collect();
    if !away.is_empty() {
        let words = format!("Not expected today: {}.", away.join(", "));
        let style = Style::regular(Length::pt(SMALL_PT));
        flow.push(line_below(Length::mm(1.4), &words, &style, room));
    }
    flow.push(heading_below(Length::mm(3.0), "Head counts", room));
    flow.push(line(&how_counted(), SMALL_PT, room).kept());
    let in_water = |s: &Slot| s.off.is_none() && desk.club.in_water(s.activity);
    let water = desk.session.timetable.iter().any(in_water);
    roll_table::add_counts(water, rows.count, room, &mut flow);
    let look = "A difference of any size, more or fewer: stop and look, then count again.";
    flow.push(line_below(Length::mm(2.0), look, &Style::bold(Length::pt(PT)), room).kept());
    let paper = "Print on waterproof paper or keep it in a clear sleeve; write with a pencil or a wax marker.";
    flow.push(line(paper, SMALL_PT, room));
    flow
}

/// "Arrived, minus … 11 - 1 - 1 = 9."
fn how_counted() -> String {
    let Count {
        arrived,
        left_early,
        at_toilets,
    } = EXAMPLE;
    let here = EXAMPLE.expected_here().unwrap_or_default();
    format!(
        "Expected here is: arrived, minus left early, minus at the toilets with a helper. \
         Example: {arrived} − {left_early} − {at_toilets} = {here}."
    )
}

fn line(words: &str, pt: f64, room: Rect) -> Piece {
    line_below(Length::ZERO, words, &Style::regular(Length::pt(pt)), room)
}

/// The same with so much white above.
fn line_below(space: Length, words: &str, style: &Style, room: Rect) -> Piece {
    let words = Words::wrapped(words, style, room.w, CLEAR, 4);
    let at = Point::new(room.x, space);
    Piece::new(space + words.height() + Length::mm(1.8)).words(words.left(at, ink::INK))
}
