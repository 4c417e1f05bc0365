//! The same for whole sentences, as they are put together: the sheets and findings of the demo club.

use daystrand::check;
use daystrand::layout::{InkChoice, Request, SheetKind, Turn, lay_out};
use daystrand::model::club::Club;
use daystrand::page::dump::dump;

use super::{ALLOWED, Scanner, sentences};
use crate::fixture;

/// What the sheets of the first session say, and what is found in the club.
fn said(club: &Club) -> Vec<String> {
    let request = Request {
        session: club.sessions[0].id,
        participants: club.participants.iter().map(|p| p.id).collect(),
        kinds: SheetKind::ALL.to_vec(),
        paper: club.rules.paper,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    let laid = lay_out(club, &request);
    let pages = laid.sheets.iter().flat_map(|s| &s.pages).map(dump);
    let found = check::run(club, Some(&club.sessions[0]));
    let found = found.iter().chain(&laid.findings);
    let found = found.flat_map(|f| [f.sentence.clone(), f.hint.clone()]);
    let all: Vec<String> = pages.chain(found).collect();
    all.iter().flat_map(|text| sentences(text)).collect()
}

fn claims(club: &Club) -> Vec<String> {
    let scanner = Scanner::new();
    let said = said(club);
    assert!(said.len() > 500, "too little is said: {}", said.len());
    let mine = said
        .iter()
        .filter(|s| !ALLOWED.iter().any(|(_, sentence, _)| s == sentence));
    let told = |s: &String| {
        let claims = scanner.claims(s).into_iter();
        claims.map(|c| format!("{c}: {s}")).collect::<Vec<_>>()
    };
    mine.flat_map(told).collect()
}

#[test]
fn no_sheet_and_no_finding_of_the_demo_makes_a_claim_that_is_not_ours() {
    let found = claims(&fixture::club());
    assert!(found.is_empty(), "say it otherwise:\n{}", found.join("\n"));
}

/// The scan sees what is on paper: a claim that someone typed as the name of a session is found.
#[test]
fn a_planted_claim_is_found_on_paper() {
    let mut club = fixture::club();
    fixture::session_mut(&mut club).title = "All clear to swim".into();
    let found = claims(&club);
    assert!(!found.is_empty());
}
