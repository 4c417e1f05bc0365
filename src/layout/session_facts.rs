//! Beside the timetable on the coordinator's sheet: where all meet and whom to call, who leads in the
//! water, when sunscreen and drinks are due, who helps and when.

use super::flow::{Flow, Piece};
use super::ink;
use super::session_sheet::{Letters, MOST_LINES, Scene, heading_in, listed};
use super::session_water::boxed;
use super::shapes::{Look, line, rounded};
use super::words::{TIGHT, Words};
use super::writer::Coordinator;
use crate::model::people::{Helper, Role as Job};
use crate::model::profile::Field;
use crate::model::today::Hours;
use crate::page::Item;
use crate::plan::clock::Moment;
use crate::plan::reminders::{self, Sunscreen};
use crate::plan::water::{certificates_on, watches};
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// All of it, each a piece.
pub(super) fn all(
    scene: &Scene<'_>,
    letters: Letters,
    room: Rect,
    flow: &Flow<Coordinator>,
) -> Vec<Piece> {
    let mut pieces = vec![missing(scene, letters, room)];
    let water = !scene.desk.water().is_dry();
    if water {
        pieces.extend(lead(scene, letters, room));
    }
    for words in due(scene) {
        pieces.push(text(&words, &letters.bold(), room));
    }
    pieces.extend(named_watchers(scene, letters, room, flow));
    pieces.extend(helpers(scene, letters, room));
    pieces
}

fn text(words: &str, style: &Style, room: Rect) -> Piece {
    let words = Words::wrapped(words, style, room.w, TIGHT, MOST_LINES * 2);
    let at = Point::new(room.x, Length::ZERO);
    Piece::new(words.height() + style.size.scale(0.35)).words(words.left(at, ink::INK))
}

/// The number to call and the place to meet, in a frame; lines to write on where they are not known.
fn missing(scene: &Scene<'_>, letters: Letters, room: Rect) -> Piece {
    let pad = letters.mm(2.0);
    let x = room.x + pad;
    let inside = room.w - pad * 2;
    let mut y = pad;
    let mut words: Vec<Item> = Vec::new();
    let mut lines = Vec::new();
    let spot = scene.desk.meeting_spot().unwrap_or_default();
    let number = scene.desk.club.rules.care.emergency.trim();
    let large = Style::bold(letters.bold().size.scale(1.25));
    for (name, value, style) in [
        ("Emergency number", number, &large),
        ("Meeting spot", spot, &letters.bold()),
    ] {
        let name = Words::line(name, &letters.small(), inside);
        words.extend(name.left(Point::new(x, y), ink::INK));
        y += name.height();
        if value.is_empty() {
            y += letters.mm(6.0);
            let (from, to) = (Point::new(x, y), Point::new(x + inside, y));
            lines.push(line(from, to, ink::INK, ink::THIN));
        } else {
            let value = Words::wrapped(value, style, inside, TIGHT, 3);
            words.extend(value.left(Point::new(x, y), ink::INK));
            y += value.height();
        }
        y += letters.mm(0.8);
    }
    let frame = Rect {
        y: Length::ZERO,
        h: y + pad - letters.mm(0.8),
        ..room
    };
    lines.push(rounded(
        frame,
        Length::mm(2.0),
        Look::line(ink::INK, ink::LINE),
    ));
    Piece::new(frame.bottom() + letters.mm(2.0))
        .drawn(lines)
        .words(words)
}

/// Who leads in the water, and the signal that can be seen.
fn lead(scene: &Scene<'_>, letters: Letters, room: Rect) -> Vec<Piece> {
    let session = scene.desk.session;
    let here = |id: &_| !session.helpers_away.contains(id);
    let lead = match session.today.water_lead.filter(here) {
        Some(id) => text(
            &format!("Water lead: {}", scene.helper(id)),
            &letters.bold(),
            room,
        ),
        None => boxed("Nobody is named to lead in the water.", letters, room),
    };
    let mut pieces = vec![lead];
    let recall = scene.desk.club.rules.care.recall.trim();
    if !recall.is_empty() {
        let words = format!("Come out, a signal that is seen: {recall}");
        pieces.push(text(&words, &letters.body(), room));
    }
    pieces
}

/// Who is watched by someone named for that alone, and for whom nobody is named where an alert was
/// entered. What the alert says is not told.
fn named_watchers(
    scene: &Scene<'_>,
    letters: Letters,
    room: Rect,
    flow: &Flow<Coordinator>,
) -> Vec<Piece> {
    let watched = &scene.desk.session.today.watched_by;
    let mut pieces = Vec::new();
    let mut without = Vec::new();
    for person in scene.people {
        if let Some(by) = watched.get(&person.who.id) {
            let who = scene.called(person.who.id);
            let words = format!("{} watches {who}, nothing else", scene.helper(*by));
            pieces.push(text(&words, &letters.bold(), room));
            continue;
        }
        let alert = [Field::AlertMarker, Field::Alerts].into_iter().any(|f| {
            let text = person.who.profile.guarded(f);
            let text = text.and_then(|t| flow.may_show(t));
            text.is_some_and(|t| !t.trim().is_empty())
        });
        if alert {
            without.push(person.mark_words.as_str());
        }
    }
    if !without.is_empty() {
        let words = format!(
            "Not complete: no named watcher for mark {}",
            listed(&without)
        );
        pieces.push(boxed(&words, letters, room));
    }
    pieces
}

/// Who helps: what they do, and when they are here where that is not all of the session.
fn helpers(scene: &Scene<'_>, letters: Letters, room: Rect) -> Vec<Piece> {
    let session = scene.desk.session;
    let all = scene.desk.club.helpers.iter();
    let (away, here): (Vec<_>, Vec<_>) = all.partition(|h| session.helpers_away.contains(&h.id));
    let mut pieces = vec![heading_in(
        &letters.heading(),
        letters.mm(1.0),
        "Who helps",
        room,
    )];
    if here.is_empty() {
        pieces.push(text("Nobody is entered.", &letters.bold(), room));
    }
    for helper in here {
        pieces.push(one_helper(scene, letters, helper, room));
    }
    if !away.is_empty() {
        let names: Vec<&str> = away.iter().map(|h| h.name.trim()).collect();
        let words = format!("Not here: {}", names.join(", "));
        pieces.push(text(&words, &letters.small(), room));
    }
    pieces
}

fn one_helper(scene: &Scene<'_>, letters: Letters, helper: &Helper, room: Rect) -> Piece {
    let session = scene.desk.session;
    let mut jobs: Vec<String> = Vec::new();
    let watching = watches(session, helper);
    for job in &helper.roles {
        match job {
            Job::Watcher => {}
            Job::WaterSafety => jobs.push(in_water(scene, helper)),
            _ => jobs.push(job.label().to_lowercase()),
        }
    }
    jobs.extend(watching.then(|| "watches".to_owned()));
    jobs.extend(session.today.here.get(&helper.id).and_then(hours));
    let jobs = jobs.join(" · ");
    let name = Words::line(helper.name.trim(), &letters.bold(), room.w.scale(0.6));
    let x = room.x + name.width() + letters.mm(2.0);
    let beside = Words::line(&jobs, &letters.small(), room.right() - x);
    let down = (letters.bold().size - letters.small().size).scale(0.78);
    let names = name.left(Point::new(room.x, Length::ZERO), ink::INK);
    if !beside.cut {
        return Piece::new(name.height() + letters.mm(0.8))
            .words(names)
            .words(beside.left(Point::new(x, down), ink::INK));
    }
    let indent = room.x + letters.mm(3.0);
    let below = Words::wrapped(&jobs, &letters.small(), room.right() - indent, TIGHT, 3);
    let at = Point::new(indent, name.height());
    Piece::new(name.height() + below.height() + letters.mm(0.8))
        .words(names)
        .words(below.left(at, ink::INK))
}

/// "water safety", or which certificate does not cover the day, so that nobody sends them in.
fn in_water(scene: &Scene<'_>, helper: &Helper) -> String {
    let (club, date) = (scene.desk.club, scene.desk.session.date);
    let held = certificates_on(club, helper, date);
    let uncovered = held.into_iter().find(|(_, s)| !s.is_covered());
    let award = uncovered.and_then(|(id, _)| club.rules.care.award(id));
    award.map_or_else(
        || Job::WaterSafety.label().to_lowercase(),
        |a| format!("not in the water today: “{}”", a.name.trim()),
    )
}

/// "from 10:00", "until 11:00", "10:00 to 11:00".
fn hours(hours: &Hours) -> Option<String> {
    let at = |t| Moment::at(t).to_string();
    match (hours.from.map(at), hours.to.map(at)) {
        (None, None) => None,
        (Some(from), None) => Some(format!("from {from}")),
        (None, Some(to)) => Some(format!("until {to}")),
        (Some(from), Some(to)) => Some(format!("{from} to {to}")),
    }
}

/// "Sunscreen 09:10, 10:45" and "Drink 10:00, 10:30": by the club's own minutes.
fn due(scene: &Scene<'_>) -> Vec<String> {
    let care = &scene.desk.club.rules.care;
    let (start, end) = (scene.clock.start, scene.clock.end);
    let leaves: Vec<Moment> = scene
        .desk
        .water()
        .moments
        .iter()
        .map(|m| m.stretch.to)
        .collect();
    let listed = |name: &str, all: Vec<Moment>| {
        let times: Vec<String> = all.iter().take(12).map(Moment::to_string).collect();
        (!times.is_empty()).then(|| format!("{name} {}", times.join(", ")))
    };
    let sun = care.sunscreen.map(|s| Sunscreen {
        before: s.before_minutes,
        again: s.every_minutes,
    });
    let sun = sun.map(|s| s.all(start, end, &leaves).take(12).collect());
    let drinks = care.drink_minutes;
    let drinks = drinks.map(|every| reminders::drinks(start, end, every).take(12).collect());
    let all = [
        sun.and_then(|all| listed("Sunscreen", all)),
        drinks.and_then(|all| listed("Drink", all)),
    ];
    all.into_iter().flatten().collect()
}
