//! The print run: sheets by kind, and for the tiles paper, pouches, cuts, minutes, fasteners, and what
//! to do with them step by step.

use super::{counted, flowing, heading, paragraph, step, table_row};
use crate::layout::desk::{Desk, Person};
use crate::layout::flow::Flow;
use crate::layout::making::{Counts, Making};
use crate::layout::sizes::in_mm;
use crate::layout::writer::Everyone;
use crate::layout::{InkChoice, Sheet, SheetKind, Turn, frame};
use crate::model::craft::{Cutting, Sorting, Work};
use crate::plan::seal;
use crate::story::when;
use crate::units::{Length, Rect};

/// The sheet: `others` are the sheets printed with it.
pub(in crate::layout) fn lay_out(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    making: &Making,
    others: &[Sheet],
) -> Sheet {
    let counts = Counts::of(making, &desk.club.rules);
    let room = frame::content(desk.page_size(Turn::Portrait));
    let mut flow: Flow<Everyone> = Flow::new();
    print(desk, others, room, &mut flow);
    make(desk, &counts, room, &mut flow);
    steps(desk, room, &mut flow);
    cautions(room, &mut flow);
    let below = format!(
        "{} {}, {}",
        when::weekday(desk.session.date),
        when::full_date(desk.session.date),
        counted(people.len(), "participant", "participants")
    );
    flowing(desk, people, (SheetKind::PrintRun, &below), flow)
}

fn print(desk: &Desk<'_>, others: &[Sheet], room: Rect, flow: &mut Flow<Everyone>) {
    flow.push(heading("Print", room));
    let shares = [0.5, 0.2, 0.3];
    flow.push(table_row(
        &["Sheets", "Pages", "Paper"],
        &shares,
        room,
        true,
    ));
    let mut all = 0;
    for kind in SheetKind::ALL {
        let pages: usize = others
            .iter()
            .filter(|s| s.kind == kind)
            .map(|s| s.pages.len())
            .sum();
        if pages > 0 {
            all += pages;
            let row = [kind.label(), &pages.to_string(), paper_for(desk, kind)];
            flow.push(table_row(&row, &shares, room, false));
        }
    }
    let all = all.to_string();
    flow.push(table_row(
        &["All", &all, desk.request.paper.label()],
        &shares,
        room,
        true,
    ));
    let ink = match desk.request.ink {
        InkChoice::Colour => "in colour",
        InkChoice::Grey => "in grey",
        InkChoice::Outline => "as outlines",
    };
    flow.push(paragraph(
        &format!(
            "Print {ink}, at 100 %. Turn “fit to page” off. Measure the bar of 100 mm on the first \
             sheet before you print the rest."
        ),
        room,
    ));
}

/// What paper suits a kind of sheet.
fn paper_for(desk: &Desk<'_>, kind: SheetKind) -> &'static str {
    let film = desk.club.rules.craft.work == Work::CutLaminateCut;
    match kind {
        SheetKind::Tiles | SheetKind::Cards if !film => "waterproof synthetic",
        SheetKind::Tiles | SheetKind::Cards => "office paper, to laminate",
        SheetKind::BaseBoard => "office paper, to laminate whole",
        SheetKind::PouchGuide => "office paper, once",
        _ => "office paper",
    }
}

fn make(desk: &Desk<'_>, counts: &Counts, room: Rect, flow: &mut Flow<Everyone>) {
    let rules = &desk.club.rules;
    flow.push(heading("Make", room));
    let shares = [0.36, 0.64];
    let mut row =
        |what: &str, much: &str| flow.push(table_row(&[what, much], &shares, room, false));
    row("Tiles and cards needed", &counts.needed.to_string());
    if desk.request.only_missing {
        row("In stock already", &counts.in_stock.to_string());
    }
    let spares = match counts.spares {
        0 => String::new(),
        n => format!(", {n} of them spares"),
    };
    row("To make", &format!("{}{spares}", counts.printed));
    row("Sheets of paper", &counts.sheets.to_string());
    if rules.craft.work == Work::CutLaminateCut {
        let pouch = rules.craft.pouch.label();
        row(
            "Laminating pouches",
            &format!("{}, {pouch}, 125 µm a side, matt", counts.pouches),
        );
    }
    let cuts = match counts.second_cuts {
        0 => counts.first_cuts.to_string(),
        film => format!("{} of paper, {film} of film", counts.first_cuts),
    };
    row("Cuts", &cuts);
    let minutes = counted(
        usize::try_from(counts.cut_minutes()).unwrap_or(0),
        "minute",
        "minutes",
    );
    row(
        "Cutting",
        &format!("{minutes}, at {} seconds a cut", rules.craft.cut_seconds),
    );
    let (tile, board) = rules.craft.half.words();
    let dot = in_mm(rules.craft.dot);
    row(
        "Fasteners",
        &format!(
            "{0} {tile} dots on tiles, {0} {board} dots on boards, {dot}",
            counts.dots
        ),
    );
}

fn steps(desk: &Desk<'_>, room: Rect, flow: &mut Flow<Everyone>) {
    let rules = &desk.club.rules;
    let craft = &rules.craft;
    flow.push(heading("Step by step", room));
    let cut = match craft.cutting {
        Cutting::Trimmer => {
            "Cut the sheets on the trimmer in the order of the numbers: the cut list shows each sheet."
        }
        Cutting::Scissors => "Cut the sheets along the thin lines with scissors.",
    };
    let stack = match craft.sorting {
        Sorting::ThroughTheStack => {
            " Sheets that are divided alike lie on one another: each pile is then in order."
        }
        Sorting::ByParticipant => "",
    };
    let mut all = vec![format!("{cut}{stack}")];
    let corner = in_mm(craft.corner);
    if craft.work == Work::CutLaminateCut {
        let film = rules.film();
        all.push(format!(
            "Lay the tiles into the pouches as the pouch guide shows: {} between two tiles, {} at the \
             edge. Let the ink dry first.",
            in_mm(film * 2),
            in_mm(film)
        ));
        all.push("Laminate with the closed edge first, and let it cool lying flat.".to_owned());
        all.push(format!(
            "Cut again, in the middle of the clear film, so that {} of film is left on every side.",
            in_mm(film)
        ));
        all.push(rounding(film, craft.corner));
    } else {
        all.push(format!("Round the corners to a radius of {corner}."));
    }
    if let Some(hole) = craft.ring.filter(|_| craft.work == Work::CutLaminateCut) {
        all.push(format!(
            "Punch a hole of {} in the tab of clear film above each card for the ring. Never punch through \
             paper.",
            in_mm(hole)
        ));
    }
    let (tile, board) = craft.half.words();
    all.push(format!(
        "Put a {tile} dot in the middle of the back of each tile, and a {board} dot on each cross of \
         the board. Press, and leave it for a day if you can."
    ));
    all.push("Sort by the pack list and tick each one.".to_owned());
    for (i, words) in all.iter().enumerate() {
        flow.push(step(i + 1, words, room));
    }
}

/// How corners are rounded, with the film that is left there.
fn rounding(film: Length, radius: Length) -> String {
    if radius == Length::ZERO {
        return "Round the corners a little, so that none is sharp.".to_owned();
    }
    let left = seal::in_corner(film, radius);
    let mut words = format!(
        "Round the corners to a radius of {}: {} of film is left there.",
        in_mm(radius),
        in_mm(left.max(Length::ZERO))
    );
    if left < seal::CORNER_LEAST {
        words.push_str(&format!(
            " That is little. Round the paper itself to {} before laminating, or round less.",
            in_mm(seal::paper_radius(film, radius).max(Length::mm(1.0)))
        ));
    }
    words
}

/// The usual cautions; whoever is in charge decides.
fn cautions(room: Rect, flow: &mut Flow<Everyone>) {
    flow.push(heading("Take care", room));
    for words in [
        "Fastener dots and torn film are small parts. Look for loose ones before every session, and \
         watch for anyone who puts things into their mouth. This program does not say that a tile meets \
         any rule.",
        "No cord around a child’s neck, and none on anyone in the water. Rings go on an adult’s waist \
         or on a clip that opens.",
        "The laminator and fresh pouches are hot. The trimmer is sharp. Both are for adults.",
        "Rinse tiles in fresh water, dry them lying open, and take out those that are split, cloudy or \
         sharp. A hot car softens the glue.",
    ] {
        flow.push(paragraph(words, room));
    }
}
