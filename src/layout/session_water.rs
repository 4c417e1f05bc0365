//! Who is with whom in the water, on the coordinator's sheet: for each row in the water, and for each
//! turn, the pairs, who watches, and a box where someone has nobody. It counts; it judges nothing.

use super::flow::{Flow, Piece};
use super::session_sheet::{Letters, MOST_LINES, Scene, heading_in, listed};
use super::shapes::{Look, rounded};
use super::words::{TIGHT, Words};
use super::writer::Coordinator;
use super::{ink, session_table};
use crate::model::ids::{ParticipantId, SlotId};
use crate::page::Role;
use crate::plan::clock::Moment;
use crate::plan::water::{InWater, Together};
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// White between columns.
const GAP: Length = Length::um(5_000);
/// Width for which a column of pairs is made at 12 points.
const COLUMN: f64 = 56.0;

/// Adds what is done in the water, in the order of time.
pub(super) fn add(scene: &Scene<'_>, letters: Letters, room: Rect, flow: &mut Flow<Coordinator>) {
    let water = scene.desk.water();
    let mut blocks: Vec<(Moment, Vec<Piece>)> = Vec::new();
    for moment in water.moments.iter().filter(|m| m.stretch.turn.is_none()) {
        let pieces = row(scene, letters, moment, room);
        blocks.push((moment.stretch.from, pieces));
    }
    if let Some((first, _)) = scene.clock.turns.first() {
        blocks.push((*first, turns(scene, letters, room)));
    }
    if blocks.is_empty() {
        return;
    }
    blocks.sort_by_key(|(from, _)| *from);
    let named = match scene.clock.turns.is_empty() {
        true => "Who is with whom in the water",
        false => "In turns, and who is with whom in the water",
    };
    let space = letters.mm(3.2);
    flow.push(heading_in(&letters.heading(), space, named, room));
    for piece in blocks.into_iter().flat_map(|(_, pieces)| pieces) {
        flow.push(piece);
    }
}

/// How many columns of pairs stand side by side.
fn columns(letters: Letters, room: Rect) -> usize {
    let many = (room.w + GAP).times(letters.mm(COLUMN) + GAP);
    usize::try_from(many).unwrap_or(1).clamp(1, 4)
}

fn column(room: Rect, of: usize, number: usize) -> Rect {
    let n = of.max(1) as i64;
    let w = (room.w - GAP * (n - 1)) / n;
    let x = room.x + (w + GAP) * number as i64;
    Rect { x, w, ..room }
}

/// A row of the timetable in which all are in the water at once.
fn row(scene: &Scene<'_>, letters: Letters, moment: &InWater, room: Rect) -> Vec<Piece> {
    let label = |slot: &SlotId| station(scene, *slot);
    let rows: Vec<String> = moment.stretch.rows.iter().map(label).collect();
    let times = format!("{}–{}", moment.stretch.from, moment.stretch.to);
    let mut pieces = vec![tab(&format!("{times}  {}", listed(&rows)), letters, room)];
    let pairs: Vec<String> = moment
        .visits
        .iter()
        .filter_map(|v| pair(scene, v))
        .collect();
    let many = columns(letters, room);
    let deep = pairs.len().div_ceil(many).max(1);
    let lists = pairs.chunks(deep).enumerate().map(|(i, pairs)| {
        let place = column(room, many, i);
        let lines = pairs.iter();
        lines.map(|p| line(p, &letters.body(), place)).collect()
    });
    pieces.extend(Piece::side_by_side(lists.collect(), room.h));
    pieces.extend(below(scene, letters, moment, room));
    pieces
}

/// The turns, side by side.
fn turns(scene: &Scene<'_>, letters: Letters, room: Rect) -> Vec<Piece> {
    let count = scene.clock.turns.len();
    // As even as can be: four turns are two and two where three would stand side by side.
    let most = columns(letters, room);
    let many = count.div_ceil(count.div_ceil(most).max(1)).max(1);
    let numbers: Vec<usize> = (0..count).collect();
    let mut pieces = Vec::new();
    for here in numbers.chunks(many) {
        let lists = here.iter().enumerate().map(|(i, turn)| {
            let place = column(room, many, i);
            one_turn(scene, letters, *turn, place)
        });
        pieces.extend(Piece::side_by_side(lists.collect(), room.h));
    }
    pieces
}

fn one_turn(scene: &Scene<'_>, letters: Letters, turn: usize, room: Rect) -> Vec<Piece> {
    let (Some(plan), Some((from, to))) = (&scene.desk.session.turns, scene.clock.turns.get(turn))
    else {
        return Vec::new();
    };
    let moments = &scene.desk.water().moments;
    let moment = moments.iter().find(|m| m.stretch.turn == Some(turn));
    let visits = moment.map_or(&[] as &[Together], |m| &m.visits);
    let at = |slot: Option<SlotId>| -> Vec<ParticipantId> {
        let all = scene.people.iter().map(|p| p.who.id);
        all.filter(|who| plan.of(*who).get(turn) == Some(&slot))
            .collect()
    };
    let mut pieces = vec![tab(
        &format!("{from}–{to}  Turn {}", turn + 1),
        letters,
        room,
    )];
    for slot in plan.slots() {
        let here = at(Some(slot));
        let wet: Vec<&Together> = visits.iter().filter(|v| v.slot == slot).collect();
        let dry = here.iter().filter(|who| wet.iter().all(|v| v.who != **who));
        let dry: Vec<String> = dry.map(|who| scene.short(*who)).collect();
        if wet.is_empty() && dry.is_empty() {
            continue;
        }
        let label = station(scene, slot);
        if wet.is_empty() {
            let words = format!("{label}: {}", dry.join(", "));
            pieces.push(line(&words, &letters.body(), room));
            continue;
        }
        pieces.push(wet_station(&label, letters, room));
        let pairs = wet.iter().filter_map(|v| pair(scene, v));
        pieces.extend(pairs.map(|p| line(&p, &letters.body(), room)));
        if !dry.is_empty() {
            let words = format!("Not in the water: {}", dry.join(", "));
            pieces.push(line(&words, &letters.body(), room));
        }
    }
    pieces.extend(moment.map_or_else(Vec::new, |m| below(scene, letters, m, room)));
    let nowhere: Vec<String> = at(None).iter().map(|who| scene.short(*who)).collect();
    if !nowhere.is_empty() {
        let words = format!("Nothing is planned for {}", listed(&nowhere));
        pieces.push(boxed(&words, letters, room));
    }
    pieces
}

/// What is done at a row, or comes instead.
fn station(scene: &Scene<'_>, slot: SlotId) -> String {
    let row = scene.desk.session.slot(slot);
    let activity = row.map(|s| s.off.and_then(|o| o.instead).unwrap_or(s.activity));
    let activity = activity.and_then(|id| scene.desk.club.activity(id));
    activity.map_or_else(
        || "Unknown activity".to_owned(),
        |a| a.label.trim().to_owned(),
    )
}

/// "Mila (kite) – Benno"; nothing where nobody is there.
fn pair(scene: &Scene<'_>, visit: &Together) -> Option<String> {
    let with = visit.people.iter().copied();
    let who = scene.called(visit.who);
    (!visit.people.is_empty()).then(|| format!("{who} – {}", scene.helpers(with)))
}

/// Who has nobody, and who watches.
fn below(scene: &Scene<'_>, letters: Letters, moment: &InWater, room: Rect) -> Vec<Piece> {
    let mut pieces = Vec::new();
    let short = moment
        .visits
        .iter()
        .filter(|v| (v.people.len() as u32) < v.asked);
    let (none, few): (Vec<&Together>, Vec<&Together>) = short.partition(|v| v.people.is_empty());
    for (who, words) in [(none, "Nobody free for"), (few, "One more needed for")] {
        let who: Vec<String> = who.iter().map(|v| scene.called(v.who)).collect();
        if !who.is_empty() {
            pieces.push(boxed(&format!("{words} {}", listed(&who)), letters, room));
        }
    }
    let (there, asked) = (moment.watchers.len(), moment.watchers_asked as usize);
    let watch = if there == 1 { "watches" } else { "watch" };
    let names = scene.helpers(moment.watchers.iter().copied());
    let who = match there {
        0 => "No watcher is named".to_owned(),
        _ => format!("{names} {watch}"),
    };
    if there < asked {
        let words = format!("{who}; the club’s rule asks for {asked}");
        pieces.push(boxed(&words, letters, room));
    } else {
        pieces.push(line(&who, &letters.bold(), room));
    }
    pieces
}

fn line(words: &str, style: &Style, room: Rect) -> Piece {
    let words = Words::wrapped(words, style, room.w, TIGHT, MOST_LINES);
    let at = Point::new(room.x, Length::ZERO);
    Piece::new(words.height() + style.size.scale(0.2)).words(words.left(at, ink::INK))
}

/// The name of a station in the water, with a wave.
fn wet_station(label: &str, letters: Letters, room: Rect) -> Piece {
    let style = letters.bold();
    let wide = letters.mm(7.5);
    let set = Words::wrapped(label, &style, room.w - wide - Length::mm(2.0), TIGHT, 3);
    let at = Point::new(room.x + set.width() + Length::mm(2.0), set.height() / 2);
    Piece::new(set.height() + style.size.scale(0.2))
        .kept()
        .words(set.left(Point::new(room.x, Length::ZERO), ink::INK))
        .drawn(vec![session_table::wave(at, wide)])
}

/// A dark tab with a time in it.
fn tab(words: &str, letters: Letters, room: Rect) -> Piece {
    let pad = letters.mm(1.1);
    let style = letters.bold();
    let words = Words::line(words, &style, room.w - Length::mm(5.0));
    let space = letters.mm(0.8);
    let at = Rect {
        y: space,
        h: words.height() + pad * 2,
        ..room
    };
    let place = Point::new(at.x + Length::mm(2.5), at.y + pad);
    Piece::new(at.bottom() + letters.mm(1.3))
        .kept()
        .drawn(vec![rounded(at, Length::mm(1.6), Look::filled(ink::INK))])
        .with(Role::Heading(2), None, words.left(place, ink::PAPER))
}

/// Bold words in a frame that is seen at once.
pub(super) fn boxed(words: &str, letters: Letters, room: Rect) -> Piece {
    let pad = letters.mm(1.2);
    let width = room.w - pad * 2;
    let words = Words::wrapped(words, &letters.bold(), width, TIGHT, MOST_LINES);
    let at = Rect {
        y: letters.mm(0.5),
        h: words.height() + pad * 2,
        ..room
    };
    let look = Look::line(ink::INK, Length::mm(0.7));
    let place = Point::new(at.x + pad, at.y + pad);
    Piece::new(at.bottom() + letters.mm(1.0))
        .drawn(vec![rounded(at, Length::mm(1.4), look)])
        .words(words.left(place, ink::INK))
}
