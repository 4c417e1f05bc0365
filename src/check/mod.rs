//! What a person should look at before anything is printed: one family of checks a file.
//!
//! `time` (the clock), `water` (something dry ready), `in_water` (who is with whom), `helpers`
//! (certificates, two places at once), `turns` (rows in turns; `arranged` puts plans of them into words), `conditions` (what the day may bring), `board`
//! (steps that cannot be shown, questions, choices), `settings` (what is known about each against
//! their board), `story` (whether it and the board agree), `people` (told apart), `pictures` (who may see the club's own), `print` (sizes on paper), `privacy` (private facts on public
//! pages). A finding reports; it never refuses, but for `privacy`, which keeps a sheet from being
//! written. None says that anything is safe. A code always means the same.

pub mod arranged;
mod board;
mod conditions;
mod everyday;
mod helpers;
mod in_water;
mod people;
mod pictures;
mod print;
pub mod privacy;
mod settings;
mod story;
mod time;
mod turns;
mod water;

use std::sync::Arc;

use crate::model::board::{self as boards, Board};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::session::Session;
use crate::plan::water::{self as with, WaterDay};
use crate::story::said::{self, called};

/// Everything to look at in a club and, if one is chosen, in a session: most serious first, then by
/// code and place. Pure: the same club and session give the same list.
pub fn run(club: &Club, session: Option<&Session>) -> Vec<Finding> {
    let boards: Vec<Arc<Board>> = session.map_or_else(Vec::new, |session| {
        club.attending(session)
            .map(|p| Arc::new(boards::derive(club, session, p.id)))
            .collect()
    });
    let water = session.map(|session| with::day(club, session, &boards));
    run_on(club, session, &boards, &water.unwrap_or_default())
}

/// The same with the boards of all who come, and who is with whom in the water, already at hand.
pub fn run_on(
    club: &Club,
    session: Option<&Session>,
    boards: &[Arc<Board>],
    day: &WaterDay,
) -> Vec<Finding> {
    let mut findings = Vec::new();
    people::check(club, &mut findings);
    helpers::club(club, &mut findings);
    pictures::club(club, &mut findings);
    print::sizes(club, &mut findings);
    print::craft(club, &mut findings);
    if let Some(session) = session {
        time::check(club, session, &mut findings);
        water::check(club, session, boards, &mut findings);
        in_water::check(club, session, (boards, day), &mut findings);
        helpers::check(club, session, &mut findings);
        turns::check(club, session, boards, &mut findings);
        conditions::check(club, session, boards, &mut findings);
        board::check(club, session, boards, &mut findings);
        pictures::check(club, session, boards, &mut findings);
        settings::check(club, session, boards, &mut findings);
        story::check(club, session, boards, &mut findings);
        privacy::check(club, session, boards, &mut findings);
        print::labels(club, session, &mut findings);
    }
    findings.sort();
    findings.dedup();
    findings
}

/// A finding with its words.
fn finding(
    severity: Severity,
    code: &'static str,
    spot: Spot,
    sentence: String,
    hint: impl Into<String>,
) -> Finding {
    Finding {
        severity,
        code,
        spot,
        sentence,
        hint: hint.into(),
    }
}
