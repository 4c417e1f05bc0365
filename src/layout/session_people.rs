//! Who helps, what to bring, and who comes, on the coordinator's sheet.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame::picture;
use super::session_sheet::{LETTERS_PT, MOST_LINES, SMALL_PT, heading, letters, tick_lines};
use super::shapes::{Look, rounded};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::Coordinator;
use super::{equipment, ink};
use crate::model::board::{Step, StepState};
use crate::model::manner::Form;
use crate::model::people::{Helper, Role as HelperRole};
use crate::page::Role;
use crate::story::cards;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Who helps on the left, what to bring on the right.
pub(super) fn add_helpers(desk: &Desk<'_>, room: Rect, flow: &mut Flow<Coordinator>) {
    let left = Rect {
        w: room.w.scale(0.43),
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

/// Adds who comes, where their boards differ and what their helper needs to know.
pub(super) fn add_participants(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    room: Rect,
    flow: &mut Flow<Coordinator>,
) {
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

/// Adds the real things that stand for steps: whose and what, with a box to tick when it is packed.
pub(super) fn add_objects(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    room: Rect,
    flow: &mut Flow<Coordinator>,
) {
    let mut lines = Vec::new();
    for person in people {
        for line in objects(desk, person) {
            if !lines.contains(&line) {
                lines.push(line);
            }
        }
    }
    if lines.is_empty() {
        return;
    }
    flow.push(heading("Objects for boards", room));
    for line in tick_lines(&lines, room) {
        flow.push(line);
    }
}

/// The things of one board, then those that are ready for what may be called off.
fn objects(desk: &Desk<'_>, person: &Person<'_>) -> Vec<String> {
    let mark = &person.mark_words;
    let steps = person.board.steps.iter();
    let things = steps.filter(|s| s.form == Form::Object && s.state != StepState::NotToday);
    let mut all: Vec<String> = things
        .map(|s| format!("{mark}: {}, for {}", s.thing.trim(), s.label.trim()))
        .collect();
    let manner = &person.who.manner;
    for ready in cards::dry_replacements(desk.club, &person.board) {
        let activity = Some(ready.activity);
        if manner.form_of(activity) == Form::Object {
            let usual = desk.club.activity(ready.activity);
            let usual = usual.map(|a| a.thing.as_str()).filter(|t| !t.is_empty());
            let thing = manner.thing_of(activity).or(usual);
            let thing = thing.unwrap_or(&ready.dry.label).trim();
            let of = ready.instead_of.trim();
            all.push(format!("{mark}: {thing}, ready instead of {of}"));
        }
    }
    all
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
            StepState::Instead { of } => format!("{label} comes instead of {of}"),
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
    tick_lines(&equipment::needed(used), room)
}
