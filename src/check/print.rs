//! Whether what goes on paper is large enough and its words fit.

use super::{called, finding};
use crate::layout::{self, InkChoice, Request, Turn};
use crate::model::club::Club;
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

/// Checks the finished size of every participant's tiles.
pub fn sizes(club: &Club, findings: &mut Vec<Finding>) {
    for p in &club.participants {
        let (printed, film) = (p.tile_size(), club.rules.film());
        let finished = seal::finished(printed, film);
        if small_parts::should_be_looked_at(finished) {
            findings.push(small_tile(p, finished, film));
        }
    }
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
