//! The coordinator's page for a day that changes: what is called off and what comes instead,
//! whose boards show it, which tiles to hand out, which pages of which story change, what stays at
//! home and what is needed instead, and who is told apart and earlier. One page where that can be.

use std::sync::Arc;

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::forms;
use super::frame::{self, picture};
use super::session_sheet::{MOST_LINES, heading_below, tick_line_in, tick_lines_in};
use super::shapes::{Look, rounded};
use super::story::numbers;
use super::words::{CLEAR, TIGHT, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn, ink, of_today, plan_code};
use crate::model::board::{Board, StepState};
use crate::model::profile::Field;
use crate::page::Role;
use crate::plan::changes::{Affected, Change, Changes, changes};
use crate::story::{PageKind, tell, when};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// The sheet of the session; without pages when nothing is called off.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let people: Vec<Person<'_>> = desk
        .club
        .attending(desk.session)
        .map(|who| desk.person(who))
        .collect();
    let boards: Vec<Arc<Board>> = people.iter().map(|p| Arc::new(p.board.clone())).collect();
    let changes = changes(desk.club, desk.session, &boards);
    let pages = if changes.is_empty() {
        Vec::new()
    } else {
        pages(desk, &people, &changes)
    };
    Sheet {
        kind: SheetKind::ChangeSheet,
        participant: None,
        file_stem: desk.file_stem(SheetKind::ChangeSheet, None),
        title: "Change sheet".to_owned(),
        pages,
    }
}

/// Letters: clear-print guidance (CNIB, UK Association for Accessible Formats) calls nothing under 12
/// points clear.
const PT: f64 = 12.0;
/// Between two columns, and the narrowest that one may be.
const COLUMN_GAP: Length = Length::um(8_000);
const NARROWEST: Length = Length::um(80_000);

/// How the sheet is set: where its first column stands, and how much white there is.
#[derive(Clone, Copy, Debug)]
struct Setting {
    room: Rect,
    columns: usize,
    /// White between things, as a share of the usual.
    white: f64,
}

impl Setting {
    /// All of them, the roomiest first.
    fn all(page: Rect) -> Vec<Self> {
        let half = Rect {
            w: (page.w - COLUMN_GAP) / 2,
            ..page
        };
        let mut all = Vec::new();
        for (columns, room) in [(1, page), (2, half)] {
            for white in [1.0, 0.5] {
                all.push(Self {
                    room,
                    columns,
                    white,
                });
            }
        }
        all.retain(|s| s.columns == 1 || s.room.w >= NARROWEST);
        all
    }

    fn white(&self, usual: f64) -> Length {
        Length::mm(usual).scale(self.white)
    }

    fn places(&self) -> Vec<Rect> {
        let place = |i: usize| Rect {
            x: self.room.x + (self.room.w + COLUMN_GAP) * i as i64,
            ..self.room
        };
        (0..self.columns).map(place).collect()
    }

    fn heading(&self, words: &str) -> Piece {
        heading_below(self.white(6.0), words, self.room)
    }

    /// A piece with the white below it that belongs to the setting.
    fn spaced(&self, mut piece: Piece, below: f64) -> Piece {
        piece.height -= Length::mm(below) - self.white(below);
        piece
    }
}

fn letters() -> Style {
    Style::regular(Length::pt(PT))
}

/// One page if smaller gaps or two columns make it one; else as few as can be.
fn pages(desk: &Desk<'_>, people: &[Person<'_>], changes: &Changes) -> Vec<crate::page::Page> {
    let size = desk.page_size(Turn::Portrait);
    let settings = Setting::all(frame::content(size)).into_iter();
    let set = settings.map(|s| (flow(desk, people, changes, &s), s));
    let shortest = set.min_by_key(|(flow, s)| flow.pages_needed(s.room.h, s.columns));
    let Some((flow, setting)) = shortest else {
        return Vec::new();
    };
    let code = plan_code::of_boards(desk.club, people.iter().map(|p| (&p.board, p.who)));
    let date = when::full_date(desk.session.date);
    let tiles = counted(changes.change_tiles(), "change tile");
    let tiles = match changes.dry_tiles() {
        0 => tiles,
        n => format!("{tiles} and {}", counted(n, "tile of what comes instead")),
    };
    let below = format!(
        "{} {date} · {tiles} to hand out",
        when::weekday(desk.session.date)
    );
    let begin = |page: usize, pages: usize| {
        let what = format!("Change sheet, page {page} of {pages}");
        let title = match page {
            1 => "What changes today",
            _ => "What changes today goes on",
        };
        let footer = desk.foot(what, format!("Plan {code} · {date}"));
        frame::begin_session(size, (title, &below), &footer)
    };
    let pages = flow.into_columns(&setting.places(), begin);
    pages.into_iter().map(PageWriter::finish).collect()
}

fn flow(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    changes: &Changes,
    setting: &Setting,
) -> Flow<Coordinator> {
    let mut flow = Flow::new();
    add_called_off(changes, setting, &mut flow);
    add_told_first(desk, people, changes, setting, &mut flow);
    add_boards(desk, people, changes, setting, &mut flow);
    add_things(changes, setting, &mut flow);
    flow
}

fn counted(n: usize, thing: &str) -> String {
    match (n, thing.split_once(" of ")) {
        (1, _) => format!("1 {thing}"),
        (n, Some((one, of))) => format!("{n} {one}s of {of}"),
        (n, None) => format!("{n} {thing}s"),
    }
}

/// What is called off, each once, with what comes instead and for how many.
fn add_called_off(changes: &Changes, setting: &Setting, flow: &mut Flow<Coordinator>) {
    flow.push(setting.heading("Not today"));
    let mut all: Vec<(String, usize)> = Vec::new();
    for change in changes.boards.iter().flat_map(|b| &b.changes) {
        let words = change_words(change);
        match all.iter_mut().find(|(w, _)| *w == words) {
            Some((_, boards)) => *boards += 1,
            None => all.push((words, 1)),
        }
    }
    for (words, boards) in all {
        let words = format!("{words} ({})", counted(boards, "board"));
        flow.push(plain_line(&words, setting));
    }
}

/// "Ride the boat: Push the boat comes instead".
fn change_words(change: &Change) -> String {
    let was = change.was.trim();
    match &change.instead {
        Some((_, instead)) => format!("{was}: {} comes instead", instead.trim()),
        None => format!("{was}: nothing comes instead"),
    }
}

fn plain_line(words: &str, setting: &Setting) -> Piece {
    let words = Words::wrapped(words, &letters(), setting.room.w, CLEAR, MOST_LINES);
    let at = Point::new(setting.room.x, Length::ZERO);
    Piece::new(words.height() + setting.white(1.6)).words(words.left(at, ink::INK))
}

/// Who is told apart from the others and earlier, how they want to be warned, and what of today is
/// hard for them with what helps.
fn add_told_first(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    changes: &Changes,
    setting: &Setting,
    flow: &mut Flow<Coordinator>,
) {
    let affected = |p: &Person<'_>| changes.boards.iter().any(|b| b.participant == p.who.id);
    let mut lines = Vec::new();
    for person in people.iter().filter(|p| affected(p)) {
        let profile = &person.who.profile;
        let decision = flow.may_show(profile.decision());
        let early = decision.is_some_and(|d| d.warn_of_changes);
        let warnings = profile.guarded(Field::Warnings);
        let warnings = warnings.and_then(|w| flow.may_show(w)).map(|w| w.trim());
        let mut facts = Vec::new();
        if early {
            facts.push("apart from the others and earlier".to_owned());
        }
        facts.extend(warnings.filter(|w| !w.is_empty()).map(str::to_owned));
        facts.extend(of_today::hard(desk, person, flow));
        if !facts.is_empty() {
            let text = format!("{}: {}", named(person), facts.join(" · "));
            let line = tick_line_in(&letters(), &text, setting.room);
            lines.push((!early, setting.spaced(line, 1.8)));
        }
    }
    // Who is told apart comes first.
    lines.sort_by_key(|(later, _)| *later);
    if !lines.is_empty() {
        flow.push(setting.heading("Tell first"));
        for (_, line) in lines {
            flow.push(line);
        }
    }
}

/// "Mila (kite)".
fn named(person: &Person<'_>) -> String {
    format!("{} ({})", person.who.name.trim(), person.mark_words)
}

fn add_boards(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    changes: &Changes,
    setting: &Setting,
    flow: &mut Flow<Coordinator>,
) {
    flow.push(setting.heading("Boards, tiles, stories"));
    for affected in &changes.boards {
        let person = people.iter().find(|p| p.who.id == affected.participant);
        if let Some(person) = person {
            flow.push(board_row(desk, person, affected, setting));
        }
    }
}

/// Mark and name, beside them or below what changes.
fn board_row(
    desk: &Desk<'_>,
    person: &Person<'_>,
    affected: &Affected,
    setting: &Setting,
) -> Piece {
    let (room, top) = (setting.room, Length::mm(0.4));
    let plate = Rect::new(Point::new(room.x, top), Size::square(Length::mm(8.0)));
    let x = plate.right() + Length::mm(3.5);
    let beside = setting.columns == 1;
    let name_width = match beside {
        true => room.w.scale(0.2),
        false => room.right() - x,
    };
    let bold = Style::bold(Length::pt(PT));
    let name = Words::wrapped(&named(person), &bold, name_width, TIGHT, 3);
    let (text_x, text_y) = match beside {
        true => (x + name_width + Length::mm(3.0), Length::ZERO),
        false => (x, name.height() + Length::mm(0.6)),
    };
    let width = room.right() - text_x;
    let all: Vec<String> = affected.changes.iter().map(change_words).collect();
    let what = Words::wrapped(&all.join("; "), &letters(), width, CLEAR, MOST_LINES);
    let rest = format!("{}. {}", tiles(affected), story_pages(desk, person));
    let rest = Words::wrapped(&rest, &letters(), width, CLEAR, MOST_LINES);
    let below = text_y + what.height() + Length::mm(0.6);
    let height = (below + rest.height())
        .max(name.height())
        .max(plate.bottom());
    let look = Look::line(ink::SEAL_EDGE, ink::THIN);
    let mark = vec![
        rounded(plate, Length::mm(1.8), look),
        picture(&person.mark, plate.shrink(Length::mm(1.3))),
    ];
    let alt = format!("Mark: {}", person.mark_words);
    Piece::new(height + setting.white(2.6))
        .with(Role::Figure { alt }, None, mark)
        .words(name.left(Point::new(x, Length::ZERO), ink::INK))
        .words(what.left(Point::new(text_x, text_y), ink::INK))
        .words(rest.left(Point::new(text_x, below), ink::SOFT))
}

/// "1 change tile; 1 tile: Push the boat; object: the blue cup".
fn tiles(affected: &Affected) -> String {
    let changes = &affected.changes;
    let mut all = vec![counted(changes.len(), "change tile")];
    let tiles: Vec<&str> = changes
        .iter()
        .filter_map(Change::tile)
        .map(str::trim)
        .collect();
    if !tiles.is_empty() {
        let count = counted(tiles.len(), "tile");
        all.push(format!("{count}: {}", tiles.join(", ")));
    }
    let things = changes.iter().filter_map(|c| c.thing.as_deref());
    all.extend(things.map(forms::object_words));
    all.join("; ")
}

/// "Story pages 8 Ride the boat, 9–10 Push the boat": the pages as they are counted at their foot.
fn story_pages(desk: &Desk<'_>, person: &Person<'_>) -> String {
    let story = tell(desk.club, desk.session, &person.board, person.who);
    let steps = &person.board.steps;
    let changed = |at| {
        let step = steps.iter().find(|s| s.at == at);
        step.is_some_and(|s| matches!(s.state, StepState::Instead { .. } | StepState::NotToday))
    };
    let pages: Vec<String> = story
        .pages
        .iter()
        .zip(numbers(desk, person, &story))
        .filter(|(p, _)| p.kind == PageKind::NotToday || p.steps().any(changed))
        .map(|(p, (first, last))| match p.heading.trim() {
            heading if first == last => format!("{first} {heading}"),
            heading => format!("{first}–{last} {heading}"),
        })
        .collect();
    let word = if pages.len() == 1 { "page" } else { "pages" };
    format!("Story {word} {}.", pages.join(", "))
}

fn add_things(changes: &Changes, setting: &Setting, flow: &mut Flow<Coordinator>) {
    for (title, things) in [
        ("No longer needed", &changes.stays),
        ("Needed now", &changes.comes),
    ] {
        if things.is_empty() {
            continue;
        }
        flow.push(setting.heading(title));
        for line in tick_lines_in(&letters(), things, setting.room) {
            flow.push(setting.spaced(line, 1.8));
        }
    }
}
