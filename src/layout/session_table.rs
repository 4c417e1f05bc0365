//! The timetable on the coordinator's sheet: a row for each slot along the rope, with its time, where
//! it is done, who leads, and whether it is in the water.

use super::flow::Piece;
use super::frame::picture;
use super::session_sheet::{Letters, MOST_LINES, Scene};
use super::shapes::{Look, line, shape};
use super::words::{TIGHT, Words};
use super::{ink, strand};
use crate::model::board::UNKNOWN_ACTIVITY;
use crate::model::club::Activity;
use crate::model::people::Figure;
use crate::model::session::Slot;
use crate::page::{Item, Role, Source};
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Where the columns of a row begin.
struct Columns {
    rope: Length,
    time: Length,
    picture: Length,
    side: Length,
    what: Length,
    right: Length,
}

impl Columns {
    fn of(letters: Letters, room: Rect) -> Self {
        let widest = Words::line("00:00–00:00", &letters.bold(), room.w);
        let time = room.x + letters.mm(8.0);
        let side = letters.mm(7.3);
        let picture = time + widest.width() + letters.mm(2.4);
        Self {
            rope: room.x + strand::KNOT,
            time,
            picture,
            side,
            what: picture + side + letters.mm(2.4),
            right: room.right(),
        }
    }
}

/// All rows, each a piece.
pub(super) fn rows(scene: &Scene<'_>, letters: Letters, room: Rect) -> Vec<Piece> {
    let slots = &scene.desk.session.timetable;
    if slots.is_empty() {
        let style = letters.body();
        let words = Words::wrapped("Nothing is on the timetable yet.", &style, room.w, TIGHT, 3);
        let items = words.left(Point::new(room.x, Length::ZERO), ink::INK);
        return vec![Piece::new(letters.mm(8.0)).words(items)];
    }
    let columns = Columns::of(letters, room);
    let mut part = None;
    let row = |(i, slot): (usize, &Slot)| {
        let begins = part.replace(slot.part) != Some(slot.part);
        let place = Place {
            first: i == 0,
            last: i + 1 == slots.len(),
            begins,
        };
        slot_row(scene, letters, slot, &columns, place)
    };
    slots.iter().enumerate().map(row).collect()
}

/// Where a row stands.
#[derive(Clone, Copy)]
struct Place {
    first: bool,
    last: bool,
    /// Whether a part of the day begins with it.
    begins: bool,
}

/// The words of a row, set.
struct RowWords {
    time: Words,
    what: Words,
    about: Words,
    part: Words,
    /// From the label to what stands beside it; nothing where it stands below.
    beside: Option<Length>,
}

impl RowWords {
    fn of(
        scene: &Scene<'_>,
        letters: Letters,
        slot: &Slot,
        columns: &Columns,
        begins: bool,
    ) -> Self {
        let club = scene.desk.club;
        let activity = club.activity(slot.activity).map(|a| &**a);
        let label = activity.map_or(UNKNOWN_ACTIVITY, |a| a.label.trim());
        let is_wet = wet(activity, slot);
        // A wave has the place of the name of the part, which then stands with the details.
        let part = match begins && !is_wet {
            true => club.part(slot.part).map_or("", |p| p.name.trim()),
            false => "",
        };
        let part = Words::line(part, &letters.small(), letters.mm(30.0));
        let taken = match (is_wet, part.is_empty()) {
            (true, _) => letters.mm(11.0),
            (false, true) => Length::ZERO,
            (false, false) => part.width() + letters.mm(2.0),
        };
        let width = columns.right - taken - columns.what;
        let set =
            |words: &str, style: Style| Words::wrapped(words, &style, width, TIGHT, MOST_LINES);
        let what = set(label, letters.bold());
        let about = set(&details(scene, slot, activity, begins), letters.small());
        // Beside the label where both are one line.
        let along = what.width() + letters.mm(2.0);
        let beside = along + about.width() <= width && about.height() <= what.height();
        let time = scene.clock.row(slot.id);
        let time = time.map_or_else(String::new, |r| format!("{}–{}", r.from, r.to));
        Self {
            time: Words::line(&time, &letters.bold(), columns.picture - columns.time),
            what,
            about,
            part,
            beside: beside.then_some(along),
        }
    }

    /// How high label and details are together.
    fn height(&self) -> Length {
        match self.beside {
            Some(_) => self.what.height(),
            None => self.what.height() + self.about.height(),
        }
    }

    /// Label and details from a corner on.
    fn items(&self, at: Point, letters: Letters) -> Vec<Item> {
        let mut items = self.what.left(at, ink::INK);
        let about = match self.beside {
            Some(along) => at.moved(along, letters.mm(0.42)),
            None => at.moved(Length::ZERO, self.what.height()),
        };
        items.extend(self.about.left(about, ink::INK));
        items
    }
}

fn slot_row(
    scene: &Scene<'_>,
    letters: Letters,
    slot: &Slot,
    columns: &Columns,
    place: Place,
) -> Piece {
    let activity = scene.desk.club.activity(slot.activity).map(|a| &**a);
    let words = RowWords::of(scene, letters, slot, columns, place.begins);
    let height = words.height().max(columns.side) + letters.mm(1.1);
    let middle = height / 2;
    let source = Some(Source::Slot(slot.id));
    let at = Point::new(columns.time, middle);
    let time = words.time.left_of_middle(at, ink::INK);
    let piece = Piece::new(height).drawn(rope(columns, height, place));
    let mut piece = piece.with(Role::Paragraph, source, time);
    if let Some(a) = activity {
        let drawn = scene.desk.art_on(&a.symbol, Figure::default());
        let corner = Point::new(columns.picture, middle - columns.side / 2);
        let square = Rect::new(corner, Size::square(columns.side));
        let alt = scene.desk.alt(&a.symbol, &a.label);
        piece = piece.with(Role::Figure { alt }, source, vec![picture(&drawn, square)]);
    }
    let corner = Point::new(columns.what, middle - words.height() / 2);
    piece = piece.with(Role::Paragraph, source, words.items(corner, letters));
    let top = middle - words.part.height() / 2;
    let named = words.part.right(Point::new(columns.right, top), ink::SOFT);
    piece = piece.with(Role::Paragraph, source, named);
    if wet(activity, slot) {
        let at = Point::new(columns.right - letters.mm(9.4), middle);
        piece = piece.drawn(vec![wave(at, letters.mm(9.0))]);
    }
    piece
}

fn wet(activity: Option<&Activity>, slot: &Slot) -> bool {
    slot.off.is_none() && activity.is_some_and(|a| a.in_water)
}

fn rope(columns: &Columns, height: Length, place: Place) -> Vec<Item> {
    let middle = height / 2;
    let from = if place.first { middle } else { Length::ZERO };
    let to = if place.last { middle } else { height };
    let x = columns.rope;
    let mut items = strand::straight(Point::new(x, from), Point::new(x, to));
    if place.last {
        items.extend(strand::stopper_below(Point::new(x, middle)));
    } else if place.begins {
        items.extend(strand::knot(Point::new(x, middle)));
    }
    if !place.last {
        let (from, to) = (
            Point::new(columns.time, height),
            Point::new(columns.right, height),
        );
        items.push(line(from, to, ink::RULE, ink::THIN));
    }
    items
}

/// "in water · in turns · at the jetty · Ada leads · if dry: Drum".
fn details(scene: &Scene<'_>, slot: &Slot, activity: Option<&Activity>, begins: bool) -> String {
    let club = scene.desk.club;
    let mut all: Vec<String> = Vec::new();
    if let Some(off) = slot.off {
        let instead = off.instead.and_then(|id| club.activity(id));
        all.push(match instead {
            Some(a) => format!("not today, {} instead", a.label.trim()),
            None => "not today".to_owned(),
        });
    }
    let is_wet = wet(activity, slot);
    let turns = scene.desk.session.turns.as_ref();
    let part = club.part(slot.part).filter(|_| is_wet && begins);
    all.extend(part.map(|p| p.name.trim().to_owned()));
    all.extend(is_wet.then(|| "in water".to_owned()));
    all.extend(
        turns
            .filter(|t| t.has(slot.id))
            .map(|_| "in turns".to_owned()),
    );
    let place = activity.map_or("", |a| a.place.trim());
    all.extend((!place.is_empty()).then(|| place.to_owned()));
    if !slot.leads.is_empty() {
        let lead = if slot.leads.len() == 1 {
            "leads"
        } else {
            "lead"
        };
        let who = scene.helpers(slot.leads.iter().copied());
        all.push(format!("{who} {lead}"));
    }
    if let Some(a) = activity.filter(|_| is_wet) {
        let dry = a.dry_replacement.and_then(|id| club.activity(id));
        let dry = dry.map_or("none ready", |d| d.label.trim());
        all.push(format!("if dry: {dry}"));
    }
    all.join(" · ")
}

/// A small wave: in the water.
pub(super) fn wave(at: Point, width: Length) -> Item {
    let (part, up) = (width / 3, width.scale(0.27));
    let mut segs = vec![Seg::Move(at)];
    for i in 0..3 {
        let x = part * i;
        segs.push(Seg::Cubic(
            at.moved(x + part.scale(0.33), -up),
            at.moved(x + part.scale(0.67), up),
            at.moved(x + part, Length::ZERO),
        ));
    }
    shape(Path { segs }, Look::line(ink::INK, width.scale(0.085)))
}
