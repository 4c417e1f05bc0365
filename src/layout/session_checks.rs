//! At the foot of the coordinator's sheet: boxes for head counts with the number that is expected,
//! what to look at, what to bring, the club's own rule and cautions.

use super::flow::{Flow, Piece};
use super::session_sheet::{Letters, Scene, heading_in};
use super::shapes::{Look, rounded};
use super::words::{TIGHT, Words};
use super::writer::Coordinator;
use super::{ink, look_words};
use crate::plan::clock::Moment;
use crate::plan::equipment;
use crate::plan::roll::{Count, Occasion};
use crate::units::{Length, Point, Rect, Size};

/// Most lines of a list that stay on one page.
const MOST_KEPT: usize = 8;

/// Most boxes in one row.
const MOST_BOXES: usize = 8;

/// Who decides, in words of our own after published guidance for groups near water.
const DECIDED: &str = "What the local code says, the lifeguards and whoever is in charge of water \
                       safety decide; this sheet only says what was entered.";
/// What the club should look at, in words of our own after common practice for groups near water.
const CAUTIONS: &str = "Look again whenever something changes. A change tile is with every board.";
const WATER_CAUTIONS: &str = "Whoever is beside one participant in the water does not watch; a \
                              watcher has no other job. Hearing aids and devices stay dry: use the \
                              signal that is seen. A dry replacement is ready.";

/// Adds all of it.
pub(super) fn add(scene: &Scene<'_>, letters: Letters, room: Rect, flow: &mut Flow<Coordinator>) {
    let space = letters.mm(1.4);
    flow.push(heading_in(&letters.heading(), space, "Head counts", room));
    for piece in count_boxes(scene, letters, room) {
        flow.push(piece);
    }
    let care = &scene.desk.club.rules.care;
    let looks: Vec<String> = care
        .looks()
        .map(|l| look_words::short(l).to_owned())
        .collect();
    let again = match care.look_again_minutes {
        0 => "Look at".to_owned(),
        n => format!("Look at, every {n} min"),
    };
    list(&again, &looks, letters, room, flow);
    let things = equipment::of_session(scene.desk.club, scene.desk.session);
    list("Bring", &things, letters, room, flow);
    let dry = scene.desk.water().is_dry();
    let rule = match care.rule.trim() {
        rule if dry || rule.is_empty() => String::new(),
        rule => format!("Club rule: {rule}"),
    };
    let cautions = match dry {
        true => CAUTIONS.to_owned(),
        false => format!("{DECIDED} {WATER_CAUTIONS} {CAUTIONS}"),
    };
    for (words, style) in [(rule, letters.small_bold()), (cautions, letters.small())] {
        if !words.is_empty() {
            let words = Words::wrapped(&words, &style, room.w, TIGHT, 14);
            let at = Point::new(room.x, Length::ZERO);
            let piece = Piece::new(words.height() + letters.mm(1.2));
            flow.push(piece.words(words.left(at, ink::INK)));
        }
    }
}

/// Bold words, and short ones with boxes to tick after them, line by line.
fn list(named: &str, words: &[String], letters: Letters, room: Rect, flow: &mut Flow<Coordinator>) {
    if words.is_empty() {
        return;
    }
    let style = letters.small();
    let (gap, side) = (letters.mm(3.6), style.size.scale(1.0));
    let indent = side + style.size.scale(0.4);
    let named = Words::line(named, &letters.bold(), room.w);
    let mut x = room.x + named.width() + gap;
    let down = (letters.bold().size - style.size).scale(0.78);
    let first = Point::new(room.x, Length::ZERO);
    let mut line = Piece::new(named.height()).words(named.left(first, ink::INK));
    let mut lines = Vec::new();
    for word in words {
        let set = Words::wrapped(word, &style, room.w - indent, TIGHT, 3);
        if x + indent + set.width() > room.right() && x > room.x {
            line.height += letters.mm(1.3);
            lines.push(line);
            line = Piece::default();
            x = room.x;
        }
        let at = Rect::new(Point::new(x, down), Size::square(side));
        let look = Look::line(ink::INK, ink::THIN);
        let words = set.left(Point::new(x + indent, down), ink::INK);
        line.height = line.height.max(down + set.height());
        line = line
            .drawn(vec![rounded(at, Length::mm(0.7), look)])
            .words(words);
        x += indent + set.width() + gap;
    }
    line.height += letters.mm(2.4);
    // A short list is not torn in two by the end of a page.
    let whole = lines.len() < MOST_KEPT;
    for above in lines {
        flow.push(if whole { above.kept() } else { above });
    }
    flow.push(line);
}

/// On which occasions heads are counted, with the time where one is planned.
fn occasions(scene: &Scene<'_>) -> Vec<(Occasion, Option<Moment>)> {
    let water = scene.desk.water();
    let mut all = vec![(Occasion::Arrival, None)];
    let between = scene.desk.club.rules.transition_minutes;
    let mut wet: Vec<(Occasion, Option<Moment>)> = Vec::new();
    let mut before: Option<Moment> = None;
    for moment in &water.moments {
        let (from, to) = (moment.stretch.from, moment.stretch.to);
        let goes_on = before.is_some_and(|out| from <= out.after(between));
        if goes_on {
            wet.pop();
            let turn = moment.stretch.turn.is_some();
            let handed = water.handovers.iter().any(|h| h.at == from);
            wet.extend((turn || handed).then_some((Occasion::HelperChange, Some(from))));
        } else {
            wet.push((Occasion::BeforeWater, Some(from)));
        }
        wet.push((Occasion::LeavingWater, Some(to)));
        before = Some(to);
    }
    all.extend(wet);
    all.push((Occasion::AfterToilets, None));
    all.push((Occasion::BeforeLeaving, None));
    all
}

fn count_boxes(scene: &Scene<'_>, letters: Letters, room: Rect) -> Vec<Piece> {
    let count = Count {
        arrived: u32::try_from(scene.people.len()).unwrap_or(u32::MAX),
        ..Count::default()
    };
    let expected = count.expected_here().unwrap_or_default();
    let all = occasions(scene);
    let fit = usize::try_from(room.w.times(letters.mm(23.0))).unwrap_or(1);
    let most = fit.clamp(1, MOST_BOXES);
    let rows = all.len().div_ceil(most).max(1);
    let many = all.len().div_ceil(rows).max(1);
    let row = |here: &[(Occasion, Option<Moment>)]| {
        let cells = here.iter().enumerate();
        cells.fold(Piece::default(), |row, (i, (occasion, at))| {
            let cell = count_box(*occasion, *at, expected, letters, place(room, many, i));
            row.beside(Some(cell))
        })
    };
    all.chunks(many).map(row).collect()
}

fn place(room: Rect, many: usize, number: usize) -> Rect {
    let gap = Length::mm(2.0);
    let n = many as i64;
    let w = (room.w - gap * (n - 1)) / n;
    let x = room.x + (w + gap) * number as i64;
    Rect { x, w, ..room }
}

/// A box with its occasion, room for the count and the time, and how many are expected.
fn count_box(
    occasion: Occasion,
    at: Option<Moment>,
    expected: u32,
    letters: Letters,
    room: Rect,
) -> Piece {
    let pad = letters.mm(1.3);
    let inside = room.w - pad * 2;
    let name = match (occasion, at) {
        (Occasion::HelperChange, Some(at)) => format!("Change {at}"),
        (Occasion::BeforeWater, Some(at)) => format!("Before water {at}"),
        (Occasion::LeavingWater, Some(at)) => format!("Out of water {at}"),
        _ => occasion.label().to_owned(),
    };
    let style = letters.small_bold();
    let name = Words::wrapped(&name, &style, inside, TIGHT, 2);
    let top = pad + style.size.scale(2.25);
    let of = Words::line(&format!("of {expected}"), &letters.bold(), inside);
    let by = Words::line("time, by", &letters.small(), inside);
    let of_top = top + letters.mm(2.2);
    let by_top = of_top + of.height() + letters.mm(1.6);
    let frame = Rect {
        y: Length::ZERO,
        h: by_top + by.height() + letters.mm(0.8),
        ..room
    };
    let x = room.x + pad;
    let look = Look::line(ink::INK, ink::LINE);
    Piece::new(frame.bottom() + letters.mm(2.4))
        .drawn(vec![rounded(frame, Length::mm(1.6), look)])
        .words(name.left(Point::new(x, pad), ink::INK))
        .words(of.right(Point::new(room.right() - pad, of_top), ink::INK))
        .words(by.left(Point::new(x, by_top), ink::SOFT))
}
