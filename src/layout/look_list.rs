//! What to look at in the place, point by point, to fill in by hand: who, when, what was seen. What
//! was last written down stands in it already; names of values of sun and wind inform, no more.

use super::desk::Desk;
use super::flow::{Flow, Piece};
use super::frame;
use super::session_sheet::heading_below;
use super::shapes::{Look as Drawn, line, rounded};
use super::words::{TIGHT, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn, ink};
use crate::model::looks::{Look, LookGroup, Looked};
use crate::page::{Item, Page};
use crate::plan::clock::Moment;
use crate::plan::{reminders, weather};
use crate::story::when;
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// Letters of the points, and of the head of the table.
const PT: f64 = 11.0;
const SMALL_PT: f64 = 9.5;
/// Least height of a row: figures are written in it.
const ROW: Length = Length::um(8_200);
/// White between columns.
const GUTTER: Length = Length::um(1_600);

/// Columns, with the share of the width that each takes.
const COLUMNS: [(&str, f64); 5] = [
    ("Look at", 0.36),
    ("Who", 0.12),
    ("When", 0.10),
    ("Seen", 0.17),
    ("Note", 0.25),
];

/// The sheet of the session.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let date = when::full_date(desk.session.date);
    Sheet {
        kind: SheetKind::LookList,
        participant: None,
        file_stem: desk.file_stem(SheetKind::LookList, None),
        title: format!("What to look at, {date}"),
        pages: pages(desk, &date),
    }
}

fn pages(desk: &Desk<'_>, date: &str) -> Vec<Page> {
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let s = desk.session;
    let mut facts = vec![format!("{} {date}", when::weekday(s.date))];
    facts.extend([s.title.trim(), s.place.trim()].map(str::to_owned));
    facts.retain(|f| !f.is_empty());
    let facts = facts.join(" · ");
    let mut flow = Flow::new();
    fill(desk, room, &mut flow);
    let begin = |page: usize, pages: usize| {
        let what = format!("What to look at, page {page} of {pages}");
        let title = match page {
            1 => "What to look at",
            _ => "What to look at goes on",
        };
        frame::begin_session(size, (title, &facts), &desk.foot(what, date.to_owned()))
    };
    let pages = flow.into_pages(room, begin).into_iter();
    pages.map(PageWriter::finish).collect()
}

fn fill(desk: &Desk<'_>, room: Rect, flow: &mut Flow<Coordinator>) {
    let care = &desk.club.rules.care;
    let again = match care.look_again_minutes {
        0 => String::new(),
        n => format!(" and every {n} min"),
    };
    let rule = format!(
        "Look before the water{again}, and whenever something changes. The lifeguards and whoever \
         is in charge of water safety decide."
    );
    flow.push(text(&rule, &Style::bold(Length::pt(PT)), room));
    flow.push(text(&thunder(desk), &Style::regular(Length::pt(PT)), room));
    let wanted: Vec<Look> = care.looks().collect();
    for (i, group) in LookGroup::ALL.into_iter().enumerate() {
        let here: Vec<Look> = group.looks().filter(|l| wanted.contains(l)).collect();
        if here.is_empty() {
            continue;
        }
        flow.push(heading_below(Length::mm(2.4), group.label(), room));
        if i == 0 {
            flow.push(head(room));
        }
        let last = here.len() - 1;
        for (i, look) in here.into_iter().enumerate() {
            let row = row(look, last_of(desk, look), room);
            // A single row is not torn from the rest of its group.
            flow.push(if i + 1 == last { row.kept() } else { row });
        }
    }
    flags(desk, room, flow);
}

/// The last that was written down for a point.
fn last_of<'a>(desk: &Desk<'a>, look: Look) -> Option<&'a Looked> {
    let all = desk.session.today.looks.iter();
    all.filter(|l| l.look == look).max_by_key(|l| l.at)
}

/// When thunder was heard and the end of the club's wait; lines to write on where it was not.
fn thunder(desk: &Desk<'_>) -> String {
    let minutes = desk.club.rules.care.thunder_minutes;
    let heard = desk.session.today.thunder.iter();
    let heard: Vec<Moment> = heard.map(|t| Moment::at(*t)).collect();
    let until = reminders::return_not_before(&heard, minutes);
    match heard.iter().max().zip(until) {
        Some((last, until)) => format!(
            "Thunder was last heard at {last}. By the club’s {minutes} min nobody goes into the \
             water before {until}; each new one begins the wait anew. People decide."
        ),
        None => format!(
            "Thunder: everyone comes out at the first. Last heard at ______; the club waits \
             {minutes} min after the last, until ______."
        ),
    }
}

fn text(words: &str, style: &Style, room: Rect) -> Piece {
    let words = Words::wrapped(words, style, room.w, TIGHT, 6);
    let at = Point::new(room.x, Length::ZERO);
    Piece::new(words.height() + Length::mm(1.4)).words(words.left(at, ink::INK))
}

/// Left edge and width of each column.
fn columns(room: Rect) -> [(Length, Length); 5] {
    let mut x = room.x;
    COLUMNS.map(|(_, share)| {
        let (at, w) = (x, room.w.scale(share));
        x += w;
        (at, w - GUTTER)
    })
}

fn head(room: Rect) -> Piece {
    let style = Style::bold(Length::pt(SMALL_PT));
    let mut items = Vec::new();
    for ((name, _), (x, w)) in COLUMNS.iter().zip(columns(room)) {
        let words = Words::line(name, &style, w);
        items.extend(words.left(Point::new(x, Length::ZERO), ink::SOFT));
    }
    Piece::new(Length::mm(5.2)).kept().words(items)
}

/// A point with its boxes; what was seen last stands in them.
fn row(look: Look, last: Option<&Looked>, room: Rect) -> Piece {
    let columns = columns(room);
    let label = Style::regular(Length::pt(PT));
    let small = Style::regular(Length::pt(SMALL_PT));
    let pad = Length::mm(1.2);
    let set = |words: &str, column: usize| {
        Words::wrapped(words.trim(), &small, columns[column].1 - pad * 2, TIGHT, 5)
    };
    let words = Words::wrapped(look.label(), &label, columns[0].1, TIGHT, 4);
    let cells = last.map_or_else(Vec::new, |l| {
        let note = [l.note.trim(), &named(look, &l.seen)];
        let note: Vec<&str> = note.into_iter().filter(|w| !w.is_empty()).collect();
        vec![
            set(&l.by, 1),
            set(&Moment::at(l.at).to_string(), 2),
            set(&l.seen, 3),
            set(&note.join(" · "), 4),
        ]
    });
    let highest = cells.iter().map(Words::height).max().unwrap_or_default();
    let height = (words.height() + Length::mm(1.6))
        .max(highest + pad * 2)
        .max(ROW);
    let middle = height / 2;
    let h = height - Length::mm(1.2);
    let look = Drawn::line(ink::SEAL_EDGE, ink::THIN);
    let boxes = columns.iter().skip(1).map(|(x, w)| {
        let at = Rect {
            x: *x,
            y: middle - h / 2,
            w: *w,
            h,
        };
        rounded(at, Length::mm(1.0), look)
    });
    let mut piece = Piece::new(height)
        .drawn(boxes.collect())
        .words(words.left_of_middle(Point::new(room.x, middle), ink::INK));
    for (cell, (x, _)) in cells.iter().zip(&columns[1..]) {
        piece = piece.words(cell.left_of_middle(Point::new(*x + pad, middle), ink::INK));
    }
    piece
}

/// What a value of sun or wind is called, by published scales.
fn named(look: Look, seen: &str) -> String {
    match look {
        Look::Uv => weather::uv_in(seen).map_or_else(String::new, |uv| {
            format!("UV Index {} is called {}", uv.whole(), uv.band().label())
        }),
        Look::Wind => weather::wind_in(seen).map_or_else(String::new, |wind| {
            format!("Beaufort {}, {}", wind.number(), wind.name())
        }),
        _ => String::new(),
    }
}

/// Flags and what the club says they mean here.
fn flags(desk: &Desk<'_>, room: Rect, flow: &mut Flow<Coordinator>) {
    let all = desk.club.rules.care.flags.iter();
    let all: Vec<_> = all.filter(|f| !f.looks.trim().is_empty()).collect();
    if all.is_empty() {
        return;
    }
    flow.push(heading_below(
        Length::mm(3.0),
        "Flags here, as the club entered them",
        room,
    ));
    let x = room.x + room.w.scale(COLUMNS[0].1);
    for flag in &all {
        flow.push(one_flag(flag.looks.trim(), flag.means.trim(), x, room).kept());
    }
    let caution = "Local practice comes first. A picture or a list replaces no flag. Names of UV \
                   and wind values inform; they decide nothing.";
    flow.push(text(caution, &Style::regular(Length::pt(SMALL_PT)), room));
}

fn one_flag(looks: &str, means: &str, x: Length, room: Rect) -> Piece {
    let name = Style::bold(Length::pt(PT));
    let name = Words::wrapped(looks, &name, x - room.x - GUTTER, TIGHT, 3);
    let style = Style::regular(Length::pt(PT));
    let means = Words::wrapped(means, &style, room.right() - x, TIGHT, 4);
    let height = name.height().max(means.height()) + Length::mm(2.0);
    let foot: Vec<Item> = vec![line(
        Point::new(room.x, height - Length::mm(0.8)),
        Point::new(room.right(), height - Length::mm(0.8)),
        ink::RULE,
        ink::THIN,
    )];
    Piece::new(height)
        .drawn(foot)
        .words(name.left(Point::new(room.x, Length::ZERO), ink::INK))
        .words(means.left(Point::new(x, Length::ZERO), ink::INK))
}
