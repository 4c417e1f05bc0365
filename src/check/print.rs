//! Whether what goes on paper is large enough, closed all round, true to size, and its words fit.

use super::{called, finding};
use crate::layout::{self, InkChoice, Request, Turn};
use crate::model::club::{Club, Rules};
use crate::model::craft::Work;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::plan::seal;
use crate::plan::small_parts::{self, Fit, Gauge};
use crate::units::{Length, Size};

/// Thickness of a laminated tile, for the gauge: office paper of 0.1 mm between two films of
/// 0.125 mm is 0.35 mm, and 0.5 mm with card. Common practice; thinner pieces differ by less than
/// a hundredth of a millimetre in the gauge.
const TILE_THICKNESS: Length = Length::um(500);

/// The bar on the test page.
const BAR: Length = Length::um(100_000);
/// How far off the bar may be before we ask people to look: half a millimetre is what a ruler shows.
const SCALE_OFF: Length = Length::um(500);

/// Checks the finished size of every participant's tiles, and tells of small parts where that is
/// wanted.
pub fn sizes(club: &Club, findings: &mut Vec<Finding>) {
    for p in &club.participants {
        if p.profile.decision().for_owner().small_parts {
            findings.push(small_parts_on(club, p));
        }
        let (printed, film) = (p.tile_size(), club.rules.film());
        let finished = seal::finished(printed, film);
        if small_parts::should_be_looked_at(finished) {
            findings.push(small_tile(p, finished, film));
        }
    }
}

/// Dots and torn film go into the gauge at any size of a tile.
fn small_parts_on(club: &Club, p: &Participant) -> Finding {
    let dot = club.rules.craft.dot.to_mm();
    finding(
        Severity::StopAndLook,
        "print.small_parts",
        Spot::Participant(p.id),
        format!(
            "On the tiles of {} fastener dots of {dot} mm and torn film go into the gauge for small \
             parts (31.75 mm), whatever the size of a tile.",
            called(p)
        ),
        "Decide with who knows them: a board without loose tiles, a ring, pegs, or someone who \
         watches. Look for loose dots before every session."
            .to_owned(),
    )
}

fn small_tile(p: &Participant, finished: Size, film: Length) -> Finding {
    let side = finished.w.min(finished.h);
    let fits = small_parts::fit(finished, TILE_THICKNESS, Gauge::Inch) == Fit::Fits;
    let (severity, how) = if fits {
        (Severity::StopAndLook, "goes into")
    } else {
        (Severity::Look, "is, as cut by hand, close to going into")
    };
    let least = small_parts::LOOK_BELOW - film * 2;
    finding(
        severity,
        "print.small_tile",
        Spot::Participant(p.id),
        format!(
            "A finished tile of {} is {:.1} mm wide and {how} the gauge for small parts (31.75 mm).",
            called(p),
            side.to_mm()
        ),
        format!(
            "Print tiles of {:.1} mm or more, or let someone who knows the participant decide. \
             Fastener dots fit the gauge at any tile size.",
            least.to_mm()
        ),
    )
}

/// Checks how the club makes its tiles: the clear edge, its corners, and what the printer makes of a
/// length.
pub fn craft(club: &Club, findings: &mut Vec<Finding>) {
    let rules = &club.rules;
    if rules.craft.work == Work::CutLaminateCut {
        findings.extend(narrow_seal(rules));
        findings.extend(narrow_corner(rules));
    }
    findings.extend(wrong_scale(rules));
}

fn narrow_seal(rules: &Rules) -> Option<Finding> {
    let sea = rules.craft.sea_water;
    let least = if sea { seal::SEA } else { seal::LEAST };
    let why = match sea {
        true => "where tiles get into sea water, common practice is at least 5 mm",
        false => "makers of film ask for at least 3.2 mm",
    };
    (rules.seal < least).then(|| {
        finding(
            Severity::Look,
            "print.seal",
            Spot::Club,
            format!("The clear edge of a tile is {}; {why}.", mm(rules.seal)),
            format!(
                "Set a clear edge of {} or more in the club’s rules.",
                mm(least)
            ),
        )
    })
}

/// Where the film is rounded further in than its edge is wide, the square corner of the paper comes
/// close to the outside.
fn narrow_corner(rules: &Rules) -> Option<Finding> {
    let (edge, radius) = (rules.seal, rules.craft.corner);
    let left = seal::in_corner(edge, radius);
    if radius <= edge || left >= seal::CORNER_LEAST {
        return None;
    }
    let what = match left > Length::ZERO {
        true => format!("leaves {} of film in the corner", mm(left)),
        false => "cuts into the paper".to_owned(),
    };
    let paper = mm(seal::paper_radius(edge, radius));
    let or = wide_enough(edge, radius).map_or_else(String::new, |r| {
        format!(", or round the film to no more than {}", mm(r))
    });
    Some(finding(
        Severity::Look,
        "print.corner",
        Spot::Club,
        format!(
            "A corner rounded to {} with a clear edge of {} {what}.",
            mm(radius),
            mm(edge)
        ),
        format!("Round the paper to {paper} before it is laminated{or}."),
    ))
}

/// The largest radius in half millimetres below this one that leaves enough film in the corner.
fn wide_enough(edge: Length, radius: Length) -> Option<Length> {
    let halves = (0..radius.to_um() / 500).rev();
    let mut all = halves.map(|n| Length::um(n * 500));
    all.find(|r| seal::in_corner(edge, *r) >= seal::CORNER_LEAST)
}

fn wrong_scale(rules: &Rules) -> Option<Finding> {
    let bar = rules.craft.bar?;
    let off = (bar.to_um() - BAR.to_um()).abs();
    let set = seal::scale_to_set(bar);
    (off > SCALE_OFF.to_um()).then(|| {
        finding(
            Severity::Look,
            "print.scale",
            Spot::Club,
            format!(
                "The printer makes {} of the bar of 100 mm: a tile of 60 mm comes out as {}.",
                mm(bar),
                mm(seal::printed(Length::mm(60.0), bar))
            ),
            format!(
                "Set {}.{} % in the printer’s dialog and print the test page again.",
                set / 10,
                set % 10
            ),
        )
    })
}

/// A length to a tenth of a millimetre.
fn mm(length: Length) -> String {
    let words = format!("{:.1}", length.to_mm());
    format!("{} mm", words.strip_suffix(".0").unwrap_or(&words))
}

/// What layout found when tiles and boards are laid out on the club's paper.
pub fn labels(club: &Club, session: &Session, findings: &mut Vec<Finding>) {
    let request = Request {
        session: session.id,
        participants: club.attending(session).map(|p| p.id).collect(),
        kinds: Vec::new(),
        paper: club.rules.paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    findings.extend(layout::look(club, &request));
}
