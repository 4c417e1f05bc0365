//! A slip for each participant: at arrival what they wear and carry is written on it, it is folded and
//! sealed, and opened only when someone is missing. Printed on one side in three panels: the last two
//! are folded on each other, the first is folded back and stays outside with the mark alone.

use super::desk::{Desk, Person};
use super::frame::{self, picture};
use super::shapes::{Look, line, rounded, shape};
use super::words::{TIGHT, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn, ink};
use crate::page::Page;
use crate::story::when;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Least height of a slip.
const LEAST: Length = Length::um(62_000);
/// White inside a panel.
const PAD: Length = Length::um(4_000);
/// Letters of what is printed to be filled in.
const PT: f64 = 9.5;

/// What is written down by hand. Common practice: what those who search ask for.
const ASKED: [&str; 6] = [
    "Wears",
    "Cap colour",
    "Carries",
    "Belongings are",
    "Flotation",
    "Likely to go to the water",
];

/// The slips of those who are chosen.
pub(super) fn lay_out(desk: &mut Desk<'_>, people: &[Person<'_>]) -> Sheet {
    let pages = pages(desk, people);
    desk.common_sheet(people, SheetKind::TodaySlip, pages)
}

fn pages(desk: &Desk<'_>, people: &[Person<'_>]) -> Vec<Page> {
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let per_page = usize::try_from(room.h.times(LEAST)).unwrap_or(1).max(1);
    let height = room.h / per_page as i64;
    let count = people.len().div_ceil(per_page);
    let pages = people.chunks(per_page).enumerate().map(|(i, here)| {
        let mut page = begin(desk, size, (i + 1, count));
        for (n, person) in here.iter().enumerate() {
            let at = Rect {
                y: room.y + height * n as i64,
                h: height,
                ..room
            };
            slip(desk, person, at, &mut page);
        }
        page.finish()
    });
    pages.collect()
}

fn begin(desk: &Desk<'_>, size: Size, (page, count): (usize, usize)) -> PageWriter<Coordinator> {
    let s = desk.session;
    let date = when::full_date(s.date);
    let below = format!(
        "{} {date} · cut apart, fill in at arrival, fold the right third in, fold the mark back, seal",
        when::weekday(s.date)
    );
    let what = format!("Description of today, page {page} of {count}");
    let footer = desk.foot(what, date);
    frame::begin_session(size, ("Description of today", &below), &footer)
}

fn slip(desk: &Desk<'_>, person: &Person<'_>, at: Rect, page: &mut PageWriter<Coordinator>) {
    let third = at.w / 3;
    let panel = |n: i64| Rect {
        x: at.x + third * n,
        w: third,
        ..at
    };
    let cut = Look::line(ink::RULE, ink::THIN);
    let fold = Look::line(ink::HATCH, ink::THIN).dashed(Length::mm(2.4), Length::mm(2.0));
    let mut drawn = vec![rounded(at, Length::ZERO, cut)];
    for n in [1, 2] {
        let x = panel(n).x;
        let ends = [Point::new(x, at.y), Point::new(x, at.bottom())];
        let segs = vec![Seg::Move(ends[0]), Seg::Line(ends[1])];
        drawn.push(shape(Path { segs }, fold));
    }
    page.artifact(drawn);
    outside(person, panel(0), page);
    description(person, panel(1), page);
    missing(desk, panel(2), page);
}

/// The mark, and that it is sealed; nothing else.
fn outside(person: &Person<'_>, panel: Rect, page: &mut PageWriter<Coordinator>) {
    let inside = panel.shrink(PAD);
    let style = Style::regular(Length::pt(PT));
    let words = Words::wrapped("sealed: description of today", &style, inside.w, TIGHT, 3);
    let side = inside.w.min(inside.h - words.height() - PAD * 2).scale(0.7);
    let all = side + PAD + words.height();
    let top = panel.center().y - all / 2;
    let corner = Point::new(panel.center().x - side / 2, top);
    let plate = Rect::new(corner, Size::square(side));
    frame::draw_mark(page, plate, &person.mark, &person.mark_words);
    let below = Point::new(panel.center().x, plate.bottom() + PAD);
    page.paragraph(None, words.centred(below, ink::INK));
}

/// Whose, and lines to write on.
fn description(person: &Person<'_>, panel: Rect, page: &mut PageWriter<Coordinator>) {
    let inside = panel.shrink(PAD);
    let side = Length::mm(7.0);
    let corner = Point::new(inside.right() - side, inside.y);
    let mark = picture(&person.mark, Rect::new(corner, Size::square(side)));
    let alt = format!("Mark: {}", person.mark_words);
    page.figure(None, alt, vec![mark]);
    let style = Style::bold(Length::pt(13.0));
    let width = inside.w - side - Length::mm(2.0);
    let name = Words::wrapped(person.who.name.trim(), &style, width, TIGHT, 2);
    page.paragraph(None, name.left(inside.origin(), ink::INK));
    let top = inside.y + name.height().max(side);
    let step = (inside.bottom() - top) / ASKED.len() as i64;
    let style = Style::regular(Length::pt(PT));
    let mut lines = Vec::new();
    for (i, asked) in ASKED.iter().enumerate() {
        let foot = top + step * (i as i64 + 1) - Length::mm(0.6);
        let words = Words::line(asked, &style, inside.w);
        let left = Point::new(inside.x, foot - words.height());
        page.paragraph(None, words.left(left, ink::SOFT));
        let from = Point::new(inside.x + words.width() + Length::mm(1.5), foot);
        if from.x < inside.right() {
            lines.push(line(
                from,
                Point::new(inside.right(), foot),
                ink::SEAL_EDGE,
                ink::THIN,
            ));
        }
    }
    page.artifact(lines);
}

/// What is done, in order: after published lifesaving guidance for places near water, in words of our
/// own. No first aid.
fn missing(desk: &Desk<'_>, panel: Rect, page: &mut PageWriter<Coordinator>) {
    let number = desk.club.rules.care.emergency.trim();
    let call = match number {
        "" => "1. Call for help at once: ________".to_owned(),
        number => format!("1. Call {number} at once."),
    };
    let meet = match desk.meeting_spot() {
        None => "5. All others meet at ________".to_owned(),
        Some(spot) => format!("5. All others meet: {spot}."),
    };
    let steps = [
        call,
        "2. Tell the lifeguards. The water’s edge first.".to_owned(),
        "3. Whoever saw them last stays with you.".to_owned(),
        "4. Note where and when they were last seen.".to_owned(),
        meet,
    ];
    let inside = panel.shrink(PAD);
    let mut set = Vec::new();
    // Smaller where the panel is.
    for pt in [12.0, 11.0, 10.0, 9.0, 8.0, 7.0] {
        let head = Style::bold(Length::pt(pt + 1.0));
        let style = Style::regular(Length::pt(pt));
        set = vec![Words::wrapped(
            "If someone is missing",
            &head,
            inside.w,
            TIGHT,
            2,
        )];
        set.extend(
            steps
                .iter()
                .map(|s| Words::wrapped(s, &style, inside.w, TIGHT, 4)),
        );
        if height(&set) <= inside.h {
            break;
        }
    }
    let mut y = inside.y;
    for words in &set {
        if y + words.height() > panel.bottom() {
            break;
        }
        page.paragraph(None, words.left(Point::new(inside.x, y), ink::INK));
        y += words.height() + BETWEEN;
    }
}

/// White between two steps.
const BETWEEN: Length = Length::um(1_000);

fn height(all: &[Words]) -> Length {
    let each = all.iter().map(|w| w.height() + BETWEEN);
    each.sum()
}
