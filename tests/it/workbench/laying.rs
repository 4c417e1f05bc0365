//! Sheets of the print choice: for few at once, for many in the background, never those of another
//! club or choice.

use std::time::{Duration, Instant};

use daystrand::layout::{self, Request, SheetKind};
use daystrand::model::craft::TileShape;
use daystrand::workbench::command::Place;

use super::*;

/// The demo with so many who come, and only tiles chosen.
fn with(people: usize) -> Workbench {
    let mut bench = demo();
    let pattern = bench.view().club.participants.clone();
    for i in pattern.len()..people {
        let mut one = pattern[i % pattern.len()].as_ref().clone();
        one.standing = Default::default();
        edit(&mut bench, Edit::AddParticipant(one));
    }
    let mut choice = bench.view().print.clone();
    choice.kinds = vec![SheetKind::Tiles];
    quietly(&mut bench, Command::SetPrint(choice));
    bench
}

/// Polls until nothing is on its way.
#[track_caller]
fn wait(bench: &mut Workbench) {
    let began = Instant::now();
    while bench.view().laying {
        bench.poll();
        assert!(
            began.elapsed() < Duration::from_secs(60),
            "the sheets never come"
        );
        std::thread::sleep(Duration::from_millis(1));
    }
}

/// Pages and tiles of a view.
fn shown(bench: &Workbench) -> (usize, usize) {
    let view = bench.view();
    let pages = view.sheets.iter().map(|s| s.pages.len()).sum();
    (pages, view.counts.map_or(0, |c| c.printed))
}

/// The same as they should be.
fn wanted(bench: &Workbench) -> (usize, usize) {
    let view = bench.view();
    let session = view.session.unwrap();
    let request = Request {
        session: session.id,
        participants: view.club.attending(session).map(|p| p.id).collect(),
        kinds: view.print.kinds.clone(),
        paper: view.print.paper,
        turn: view.print.turn,
        ink: view.print.ink,
        only_missing: view.print.only_missing,
    };
    let laid = layout::lay_out(view.club, &request);
    let pages = laid.sheets.iter().map(|s| s.pages.len()).sum();
    (pages, laid.counts.map_or(0, |c| c.printed))
}

/// Larger tiles for all.
fn larger(bench: &mut Workbench) {
    let all = bench
        .view()
        .club
        .participants
        .iter()
        .map(|p| p.id)
        .collect();
    let size = Edit::TileSizes(all, TileShape::Square, Length::mm(90.0));
    edit(bench, size);
}

#[test]
fn sheets_for_few_are_there_at_once() {
    let mut bench = with(16);
    quietly(&mut bench, Command::Show(Place::Print));
    assert!(!bench.view().laying);
    assert_eq!(shown(&bench), wanted(&bench));
}

#[test]
fn sheets_for_many_come_from_the_background_and_are_the_same() {
    let mut bench = with(17);
    quietly(&mut bench, Command::Show(Place::Print));
    assert!(bench.view().laying);
    assert_eq!(shown(&bench), (0, 0));
    wait(&mut bench);
    assert_eq!(shown(&bench), wanted(&bench));
    assert!(shown(&bench).0 > 10);
}

#[test]
fn the_sheets_before_stay_until_those_of_the_change_are_there() {
    let mut bench = with(30);
    quietly(&mut bench, Command::Show(Place::Print));
    wait(&mut bench);
    let (before, times) = (shown(&bench), bench.view().times_laid);
    larger(&mut bench);
    assert!(bench.view().laying);
    assert_eq!(shown(&bench), before);
    wait(&mut bench);
    assert_ne!(shown(&bench).0, before.0, "larger tiles take more paper");
    assert_eq!(shown(&bench), wanted(&bench));
    assert_eq!(bench.view().times_laid, times + 1);
}

#[test]
fn sheets_of_an_earlier_club_are_dropped() {
    let mut bench = with(30);
    quietly(&mut bench, Command::Show(Place::Print));
    let times = bench.view().times_laid;
    // The club changes while its sheets are on their way.
    larger(&mut bench);
    wait(&mut bench);
    assert_eq!(shown(&bench), wanted(&bench));
    assert_eq!(bench.view().times_laid, times + 1, "only the last counts");
}

#[test]
fn what_does_not_change_the_sheets_does_not_lay_them_out_anew() {
    let mut bench = with(30);
    quietly(&mut bench, Command::Show(Place::Print));
    wait(&mut bench);
    let mut choice = bench.view().print.clone();
    choice.one_file = true;
    quietly(&mut bench, Command::SetPrint(choice));
    assert!(!bench.view().laying);
}

#[test]
fn sheets_that_come_when_nobody_looks_are_not_kept() {
    let mut bench = with(30);
    quietly(&mut bench, Command::Show(Place::Print));
    quietly(&mut bench, Command::Show(Place::Boards));
    assert!(!bench.view().laying);
    let began = Instant::now();
    while !bench.poll() && began.elapsed() < Duration::from_secs(60) {
        std::thread::sleep(Duration::from_millis(1));
    }
    assert_eq!(shown(&bench), (0, 0));
    quietly(&mut bench, Command::Show(Place::Print));
    wait(&mut bench);
    assert_eq!(shown(&bench), wanted(&bench));
}

#[test]
fn another_session_does_not_show_the_sheets_of_this_one() {
    let mut bench = with(30);
    quietly(&mut bench, Command::Show(Place::Print));
    wait(&mut bench);
    let session = bench.view().session.unwrap().id;
    edit(&mut bench, Edit::CopySession(session, details("Again", 19)));
    assert_ne!(bench.view().session.unwrap().id, session);
    assert!(bench.view().laying);
    assert_eq!(shown(&bench), (0, 0));
    wait(&mut bench);
    assert_eq!(shown(&bench), wanted(&bench));
}
