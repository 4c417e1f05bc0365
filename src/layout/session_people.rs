//! Who comes and what is to be known of each, on the coordinator's sheet.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame::picture;
use super::session_sheet::{LETTERS_PT, MOST_LINES, SMALL_PT, heading, letters, tick_lines};
use super::shapes::{Look, rounded};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::Coordinator;
use super::{ink, of_today, ready};
use crate::model::board::{Step, StepState};
use crate::model::manner::Form;
use crate::page::Role;
use crate::story::voice::capitalised;
use crate::text::Style;
use crate::units::colour::Rgb;
use crate::units::{Length, Point, Rect, Size};

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
    let conditions = of_today::conditions(desk);
    if !conditions.is_empty() {
        let mut day = pair("The day brings", &conditions, room).kept();
        day.height += Length::mm(2.0);
        flow.push(day);
    }
    for person in people {
        let note = flow.may_show(&person.who.helper_note).map(String::as_str);
        let said = Said {
            differs: differences(desk, person),
            hard: of_today::hard(desk, person, flow),
            note: note.unwrap_or_default(),
            last_time: of_today::last_time(desk, person, flow),
        };
        flow.push(participant(person, &said, room));
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

/// Adds the real things that stand for steps and for what is ready: whose and what, with a box to
/// tick when it is packed.
pub(super) fn add_objects(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    room: Rect,
    flow: &mut Flow<Coordinator>,
) {
    let mut lines = Vec::new();
    for person in people {
        let steps = person.board.steps.iter();
        let steps = steps.filter(|s| s.form == Form::Object && s.state != StepState::NotToday);
        let things = steps.map(|s| (s.thing.clone(), s.label.clone()));
        for (thing, label) in things.chain(ready::things(desk, person)) {
            let (mark, thing, label) = (&person.mark_words, thing.trim(), label.trim());
            // Where nobody said which thing, the words of the step stand in its place.
            let line = if thing.is_empty() || thing == label {
                format!("{mark}: a thing that stands for {label}")
            } else {
                format!("{mark}: {thing}, for {label}")
            };
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

/// What is said about one participant.
struct Said<'a> {
    /// Where their board differs.
    differs: String,
    /// What of today is hard, with what helps.
    hard: Vec<String>,
    /// What their helper needs to know.
    note: &'a str,
    /// What was seen last time.
    last_time: String,
}

impl Said<'_> {
    /// Its lines, one below the other, with the letters and ink of each.
    fn lines(&self, width: Length) -> Vec<(Words, Rgb)> {
        let small = Style::regular(Length::pt(SMALL_PT));
        let set =
            |words: &str, style: &Style| Words::wrapped(words, style, width, CLEAR, MOST_LINES);
        let mut lines = vec![(set(&self.differs, &letters()), ink::INK)];
        let hard = self.hard.iter().map(|words| capitalised(words));
        lines.extend(hard.map(|words| (set(&words, &letters()), ink::INK)));
        lines.push((set(self.note, &small), ink::SOFT));
        lines.push((set(&self.last_time, &small), ink::SOFT));
        lines.retain(|(words, _)| !words.is_empty());
        lines
    }
}

fn participant(person: &Person<'_>, said: &Said<'_>, room: Rect) -> Piece {
    const BETWEEN: Length = Length::um(600);
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
    let lines = said.lines(room.right() - text_x);
    let text = lines.iter().map(|(words, _)| words.height() + BETWEEN);
    let height = (text.sum::<Length>() - BETWEEN)
        .max(name.height())
        .max(plate.bottom());
    let look = Look::line(ink::SEAL_EDGE, ink::THIN);
    let mark = vec![
        rounded(plate, Length::mm(1.8), look),
        picture(&person.mark, plate.shrink(Length::mm(1.3))),
    ];
    let alt = format!("Mark: {}", person.mark_words);
    let mut piece = Piece::new(height + Length::mm(2.6))
        .with(Role::Figure { alt }, None, mark)
        .words(name.left(Point::new(x, Length::ZERO), ink::INK));
    let mut y = Length::ZERO;
    for (words, colour) in lines {
        piece = piece.words(words.left(Point::new(text_x, y), colour));
        y += words.height() + BETWEEN;
    }
    piece
}

/// Where a board differs from the timetable, in words.
fn differences(desk: &Desk<'_>, person: &Person<'_>) -> String {
    let steps = &person.board.steps;
    let mut all: Vec<String> = Vec::new();
    for (i, step) in steps.iter().enumerate().filter(|(_, s)| s.differs()) {
        let label = step.label.trim();
        let before = i.checked_sub(1).map(|b| steps[b].label.trim());
        let place = before.map_or_else(|| "first".to_owned(), |b| format!("after {b}"));
        all.extend(match &step.state {
            StepState::NotToday => Some(format!("{label} is not today")),
            StepState::Swapped { instead_of } => Some(format!("{label} instead of {instead_of}")),
            StepState::Own => Some(format!("Own step {label}, {place}")),
            StepState::Instead { of } => Some(format!("{label} comes instead of {of}")),
            StepState::AsTimetable if step.moved => Some(format!("{label} comes {place}")),
            StepState::AsTimetable if step.relabelled => {
                Some(format!("{} is called {label}", usual_label(desk, step)))
            }
            StepState::AsTimetable if !step.options.is_empty() => None,
            StepState::AsTimetable => Some(format!("{label} with the group")),
        });
        if !step.options.is_empty() {
            let options: Vec<&str> = step.options.iter().map(|o| o.label.trim()).collect();
            all.push(format!("A choice at {label}: {}", options.join(", ")));
        }
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
