//! The coordinator's sheet: the timetable with times and what is needed, who helps, who comes and
//! where their boards differ, what to bring, what to look at, and boxes to count in by hand.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame::{self, Footer, Header, picture};
use super::shapes::{Look, line, rounded, shape};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn, equipment, ink, plan_code, strand};
use crate::model::board::{Step, StepState};
use crate::model::club::Activity;
use crate::model::people::{Helper, Role as HelperRole, Skin};
use crate::model::session::Slot;
use crate::page::{Item, Role, Source};
use crate::plan::clock::{self, Clock};
use crate::story::when::{self, NO_BREAK};
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Letters of the table and of the lists.
const LETTERS_PT: f64 = 10.5;
const SMALL_PT: f64 = 9.0;
/// White above and below a row.
const ROW_PAD: Length = Length::um(1_100);
/// Side of a picture in the table.
const PICTURE: Length = Length::um(10_000);
/// Most lines of one cell, so that a row never outgrows a page.
const MOST_LINES: usize = 8;

/// What is named in the head of the table, with the share of the width that each column takes.
const COLUMNS: [(&str, f64); 7] = [
    ("", 0.035),
    ("Time", 0.135),
    ("", 0.075),
    ("What", 0.215),
    ("Water", 0.10),
    ("If we stay dry", 0.18),
    ("Equipment", 0.26),
];

/// The same on a narrow page; what to bring stands in its own list below.
const NARROW_COLUMNS: [(&str, f64); 7] = [
    ("", 0.055),
    ("Time", 0.205),
    ("", 0.10),
    ("What", 0.285),
    ("Water", 0.135),
    ("If we stay dry", 0.22),
    ("", 0.0),
];
/// Width below which a page is narrow.
const NARROW: Length = Length::um(150_000);

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
    timetable(desk, &clock, room, &mut flow);
    counts(desk, &people, room, &mut flow);
    helpers_and_equipment(desk, room, &mut flow);
    participants(desk, &people, room, &mut flow);
    let title = match desk.session.title.trim() {
        "" => "Session".to_owned(),
        title => title.to_owned(),
    };
    let boards = people.iter().map(|p| (&p.board, p.who));
    let code = plan_code::of_boards(desk.club, boards);
    let date = when::full_date(desk.session.date);
    let begin = |page: usize, pages: usize| {
        let what = format!("Session sheet, page {page} of {pages}, for the coordinator only");
        let mut writer = PageWriter::new(size, format!("{title}, {what}"));
        let header = Header {
            mark: None,
            mark_words: "",
            title: &title,
            below: &facts(desk, &clock),
        };
        let footer = Footer {
            what,
            plan: format!("Plan {code} · {date}"),
        };
        frame::draw(&mut writer, size, &header, &footer);
        writer
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

fn letters() -> Style {
    Style::regular(Length::pt(LETTERS_PT))
}

fn heading(words: &str, room: Rect) -> Piece {
    let words = Words::line(words, &Style::bold(Length::pt(14.0)), room.w);
    let space = Length::mm(6.0);
    Piece::new(space + words.height() + Length::mm(2.0))
        .kept()
        .with(
            Role::Heading(2),
            None,
            words.left(Point::new(room.x, space), ink::INK),
        )
}

fn shares(room: Rect) -> [(&'static str, f64); 7] {
    if room.w < NARROW {
        NARROW_COLUMNS
    } else {
        COLUMNS
    }
}

/// Left edge and width of each column.
fn columns(room: Rect) -> [(Length, Length); 7] {
    let mut x = room.x;
    shares(room).map(|(_, share)| {
        let (at, w) = (x, room.w.scale(share));
        x += w;
        (at, w - Length::mm(2.0))
    })
}

fn timetable(desk: &Desk<'_>, clock: &Clock, room: Rect, flow: &mut Flow<Coordinator>) {
    let columns = columns(room);
    let mut head = Vec::new();
    for ((name, _), (x, w)) in shares(room).iter().zip(columns) {
        let words = Words::line(name, &Style::bold(Length::pt(SMALL_PT)), w);
        head.extend(words.left(Point::new(x, Length::ZERO), ink::SOFT));
    }
    flow.push(Piece::new(Length::mm(5.5)).kept().words(head));
    let mut part = None;
    let count = desk.session.timetable.len();
    for (i, slot) in desk.session.timetable.iter().enumerate() {
        if part != Some(slot.part) {
            part = Some(slot.part);
            flow.push(part_row(desk, slot, columns[0].0, room, i == 0));
        }
        flow.push(slot_row(desk, clock, slot, &columns, room, i + 1 == count));
    }
    if count == 0 {
        let words = Words::line("Nothing is on the timetable yet.", &letters(), room.w);
        let at = Point::new(room.x, Length::ZERO);
        flow.push(Piece::new(Length::mm(7.0)).words(words.left(at, ink::INK)));
    }
}

fn part_row(desk: &Desk<'_>, slot: &Slot, x: Length, room: Rect, first: bool) -> Piece {
    let height = Length::mm(7.0);
    let at = Point::new(x + strand::KNOT, height / 2);
    let from = if first { at.y } else { Length::ZERO };
    let mut rope = strand::straight(Point::new(at.x, from), Point::new(at.x, height));
    rope.extend(strand::knot(at));
    let name = desk.club.part(slot.part).map_or("", |p| p.name.as_str());
    let style = Style::bold(Length::pt(LETTERS_PT));
    let words = Words::line(name, &style, room.w - Length::mm(12.0));
    let left = Point::new(x + Length::mm(8.0), at.y);
    Piece::new(height)
        .kept()
        .drawn(rope)
        .words(words.left_of_middle(left, ink::SOFT))
}

fn slot_row(
    desk: &Desk<'_>,
    clock: &Clock,
    slot: &Slot,
    columns: &[(Length, Length); 7],
    room: Rect,
    last: bool,
) -> Piece {
    let activity = desk.club.activity(slot.activity);
    let label = activity.map_or("Unknown activity", |a| a.label.as_str());
    let cell = |words: &str, column: usize, style: &Style| {
        Words::wrapped(words, style, columns[column].1, CLEAR, MOST_LINES)
    };
    let bold = Style::bold(Length::pt(LETTERS_PT));
    let what = cell(label, 3, &bold);
    let minutes = format!("{}{NO_BREAK}min", slot.minutes);
    let time = clock
        .row(slot.id)
        .map_or_else(String::new, |r| format!("{}–{}\n{minutes}", r.from, r.to));
    let time = cell(&time, 1, &letters());
    let water = activity.is_some_and(|a| a.in_water);
    let dry = cell(&dry_words(desk, activity.map(|a| &**a)), 5, &letters());
    let needs = activity.map_or_else(String::new, |a| a.equipment.join(", "));
    let needs = if room.w < NARROW {
        String::new()
    } else {
        needs
    };
    let needs = cell(&needs, 6, &Style::regular(Length::pt(SMALL_PT)));
    let highest = [&what, &time, &dry, &needs].map(Words::height);
    let height = highest.into_iter().fold(PICTURE, Length::max) + ROW_PAD * 2;
    let middle = height / 2;
    let rope_x = columns[0].0 + strand::KNOT;
    let end = if last { middle } else { height };
    let mut rope = strand::straight(Point::new(rope_x, Length::ZERO), Point::new(rope_x, end));
    if last {
        rope.extend(strand::stopper_below(Point::new(rope_x, middle)));
    }
    let rule_y = height;
    rope.push(line(
        Point::new(columns[1].0, rule_y),
        Point::new(room.right(), rule_y),
        ink::RULE,
        ink::HAIRLINE,
    ));
    let source = Some(Source::Slot(slot.id));
    let at = |column: usize| Point::new(columns[column].0, middle);
    let mut piece = Piece::new(height).drawn(rope).with(
        Role::Paragraph,
        source,
        time.left_of_middle(at(1), ink::INK),
    );
    if let Some(a) = activity {
        let drawn = desk.art_on(&a.symbol, Skin::default());
        let square = Rect::new(
            Point::new(columns[2].0, middle - PICTURE / 2),
            Size::square(PICTURE),
        );
        let alt = desk.alt(&a.symbol, &a.label);
        piece = piece.with(Role::Figure { alt }, source, vec![picture(&drawn, square)]);
    }
    piece = piece.with(
        Role::Paragraph,
        source,
        what.left_of_middle(at(3), ink::INK),
    );
    if water {
        piece = piece.with(Role::Paragraph, source, water_mark(at(4), columns[4].1));
    }
    piece
        .with(Role::Paragraph, source, dry.left_of_middle(at(5), ink::INK))
        .with(
            Role::Paragraph,
            source,
            needs.left_of_middle(at(6), ink::SOFT),
        )
}

/// What is done instead, for activities in the water.
fn dry_words(desk: &Desk<'_>, activity: Option<&Activity>) -> String {
    match activity {
        Some(a) if a.in_water => a
            .dry_replacement
            .and_then(|id| desk.club.activity(id))
            .map_or_else(|| "none ready".to_owned(), |d| d.label.clone()),
        _ => String::new(),
    }
}

/// A small wave and "in water".
fn water_mark(at: Point, width: Length) -> Vec<Item> {
    let style = Style::bold(Length::pt(SMALL_PT));
    let words = Words::line("in water", &style, width);
    let mm = Length::mm;
    let mut segs = vec![Seg::Move(at.moved(mm(0.0), mm(-2.6)))];
    for i in 0..3 {
        let x = f64::from(i) * 4.0;
        segs.push(Seg::Cubic(
            at.moved(mm(x + 1.3), mm(-5.0)),
            at.moved(mm(x + 2.7), mm(-0.2)),
            at.moved(mm(x + 4.0), mm(-2.6)),
        ));
    }
    let mut items = vec![shape(Path { segs }, Look::line(ink::ROPE, mm(0.6)))];
    items.extend(words.left(at.moved(Length::ZERO, mm(-0.4)), ink::INK));
    items
}

/// Boxes for head counts and lines to tick.
fn counts(desk: &Desk<'_>, people: &[Person<'_>], room: Rect, flow: &mut Flow<Coordinator>) {
    let in_water = |s: &Slot| desk.club.activity(s.activity).is_some_and(|a| a.in_water);
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
    for caution in all {
        flow.push(tick_line(caution, room));
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
        let name = Words::line(name, &Style::bold(Length::pt(SMALL_PT)), inside);
        words.extend(name.left(Point::new(x, at.y + Length::mm(1.2)), ink::INK));
        let by = Words::line("time, by", &small, inside);
        words.extend(by.left(Point::new(x, at.bottom() - Length::mm(4.6)), ink::SOFT));
    }
    Piece::new(h + Length::mm(2.0)).drawn(drawn).words(words)
}

/// A line with a box to tick.
fn tick_line(words: &str, room: Rect) -> Piece {
    let side = Length::mm(3.8);
    let x = room.x + side + Length::mm(3.0);
    let words = Words::wrapped(words, &letters(), room.right() - x, CLEAR, MOST_LINES);
    let box_ = Rect::new(Point::new(room.x, Length::mm(0.2)), Size::square(side));
    let look = Look::line(ink::SOFT, ink::THIN);
    Piece::new(words.height() + Length::mm(1.8))
        .drawn(vec![rounded(box_, Length::mm(0.8), look)])
        .words(words.left(Point::new(x, Length::ZERO), ink::INK))
}

/// Who helps on the left, what to bring on the right.
fn helpers_and_equipment(desk: &Desk<'_>, room: Rect, flow: &mut Flow<Coordinator>) {
    let left = Rect {
        w: room.w.scale(0.56),
        ..room
    };
    let x = left.right() + Length::mm(6.0);
    let right = Rect {
        x,
        w: room.right() - x,
        ..room
    };
    let things = equipment_list(desk, right);
    let heads = match things.is_empty() {
        true => heading("Helpers", left),
        false => heading("Helpers", left).beside(Some(heading("Equipment", right))),
    };
    flow.push(heads);
    let mut people = helpers(desk, left).into_iter();
    let mut things = things.into_iter();
    loop {
        let piece = match (people.next(), things.next()) {
            (Some(helper), thing) => helper.beside(thing),
            (None, Some(thing)) => thing,
            (None, None) => break,
        };
        flow.push(piece);
    }
}

fn helpers(desk: &Desk<'_>, room: Rect) -> Vec<Piece> {
    let here: Vec<_> = desk
        .club
        .helpers
        .iter()
        .filter(|h| !desk.session.helpers_away.contains(&h.id))
        .collect();
    let names = |is: &dyn Fn(&Helper) -> bool| {
        let names: Vec<&str> = here
            .iter()
            .filter(|h| is(h))
            .map(|h| h.name.as_str())
            .collect();
        names.join(", ")
    };
    let mut rows = Vec::new();
    for role in HelperRole::ALL {
        let who = names(&|h| h.roles.contains(&role));
        let who = if who.is_empty() {
            "nobody named".to_owned()
        } else {
            who
        };
        rows.push(pair(role.label(), &who, room));
    }
    let without = names(&|h| h.roles.is_empty());
    if !without.is_empty() {
        rows.push(pair("No role yet", &without, room));
    }
    rows
}

/// Bold words and what belongs to them.
fn pair(name: &str, value: &str, room: Rect) -> Piece {
    let x = room.x + Length::mm(36.0);
    let bold = Style::bold(Length::pt(LETTERS_PT));
    let name = Words::line(name, &bold, Length::mm(34.0));
    let value = Words::wrapped(value, &letters(), room.right() - x, CLEAR, MOST_LINES);
    let mut items = name.left(Point::new(room.x, Length::ZERO), ink::SOFT);
    items.extend(value.left(Point::new(x, Length::ZERO), ink::INK));
    Piece::new(value.height().max(name.height()) + Length::mm(1.8)).words(items)
}

fn participants(desk: &Desk<'_>, people: &[Person<'_>], room: Rect, flow: &mut Flow<Coordinator>) {
    flow.push(heading("Participants", room));
    for person in people {
        let note = flow.may_show(&person.who.helper_note).map(String::as_str);
        let piece = participant(desk, person, note.unwrap_or_default(), room);
        flow.push(piece);
    }
    let away: Vec<&str> = desk
        .club
        .participants
        .iter()
        .filter(|p| desk.session.away.contains(&p.id))
        .map(|p| p.name.as_str())
        .collect();
    if !away.is_empty() {
        flow.push(pair("Not here", &away.join(", "), room));
    }
}

fn participant(desk: &Desk<'_>, person: &Person<'_>, note: &str, room: Rect) -> Piece {
    let plate = Rect::new(
        Point::new(room.x, Length::mm(0.4)),
        Size::square(Length::mm(8.0)),
    );
    let x = plate.right() + Length::mm(3.5);
    let bold = Style::bold(Length::pt(LETTERS_PT));
    let name = format!("{} ({})", person.who.name.trim(), person.mark_words);
    let name_width = Length::mm(38.0);
    let name = Words::wrapped(&name, &bold, name_width, TIGHT, 2);
    let text_x = x + name_width + Length::mm(3.0);
    let width = room.right() - text_x;
    let differs = Words::wrapped(
        &differences(desk, person),
        &letters(),
        width,
        CLEAR,
        MOST_LINES,
    );
    let small = Style::regular(Length::pt(SMALL_PT));
    let note = Words::wrapped(note, &small, width, CLEAR, MOST_LINES);
    let between = if note.is_empty() {
        Length::ZERO
    } else {
        Length::mm(0.6)
    };
    let height = (differs.height() + between + note.height())
        .max(name.height())
        .max(plate.h + Length::mm(0.4));
    let look = Look::line(ink::SEAL_EDGE, ink::THIN);
    let mark = vec![
        rounded(plate, Length::mm(1.8), look),
        picture(&person.mark, plate.shrink(Length::mm(1.3))),
    ];
    let alt = format!("Mark: {}", person.mark_words);
    let note_at = Point::new(text_x, differs.height() + between);
    Piece::new(height + Length::mm(2.6))
        .with(Role::Figure { alt }, None, mark)
        .words(name.left(Point::new(x, Length::ZERO), ink::INK))
        .words(differs.left(Point::new(text_x, Length::ZERO), ink::INK))
        .words(note.left(note_at, ink::SOFT))
}

/// Where a board differs from the timetable, in words.
fn differences(desk: &Desk<'_>, person: &Person<'_>) -> String {
    let steps = &person.board.steps;
    let mut all: Vec<String> = Vec::new();
    for (i, step) in steps.iter().enumerate().filter(|(_, s)| s.differs()) {
        let label = step.label.trim();
        let before = i.checked_sub(1).map(|b| steps[b].label.trim());
        let place = before.map_or_else(|| "first".to_owned(), |b| format!("after {b}"));
        all.push(match &step.state {
            StepState::NotToday => format!("{label} is not today"),
            StepState::Swapped { instead_of } => format!("{label} instead of {instead_of}"),
            StepState::Own => format!("Own step {label}, {place}"),
            StepState::AsTimetable if step.moved => format!("{label} comes {place}"),
            StepState::AsTimetable => format!("{} is called {label}", usual_label(desk, step)),
        });
    }
    if all.is_empty() {
        "As the timetable.".to_owned()
    } else {
        format!("{}.", all.join("; "))
    }
}

fn usual_label<'a>(desk: &Desk<'a>, step: &Step) -> &'a str {
    let activity = step.activity.and_then(|id| desk.club.activity(id));
    activity.map_or("A step", |a| a.label.as_str())
}

fn equipment_list(desk: &Desk<'_>, room: Rect) -> Vec<Piece> {
    let slots = desk.session.timetable.iter();
    let used = slots
        .filter_map(|s| desk.club.activity(s.activity))
        .map(|a| a.equipment.as_slice());
    equipment::needed(used)
        .iter()
        .map(|thing| tick_line(thing, room))
        .collect()
}
