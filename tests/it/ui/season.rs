//! A season in the window: a session copied from week to week.

use daystrand::model::edit::{Edit, SessionDetails};
use daystrand::workbench::command::{Command, Place};
use egui::{Key, Modifiers, Vec2};
use jiff::civil::{date, time};

use super::{middle, press, window_with};

/// Five Saturdays from 8 November 2025: the calendar (ISO 8601, week date 2025-W45-6). The clocks
/// that go back on 26 October are the business of `published::summer_time`; here the first session
/// is before it.
#[test]
fn copies_for_next_week_are_a_week_apart_at_the_same_time() {
    for (from, wanted) in [
        (
            date(2025, 11, 8),
            [(11, 8), (11, 15), (11, 22), (11, 29), (12, 6)],
        ),
        (
            date(2025, 10, 19),
            [(10, 19), (10, 26), (11, 2), (11, 9), (11, 16)],
        ),
    ] {
        let mut h = window_with(Vec2::new(1366.0, 768.0), |bench| {
            let club = &bench.view().club;
            let first = club.sessions[0].clone();
            let others: Vec<_> = club.sessions[1..].iter().map(|s| s.id).collect();
            let details = SessionDetails {
                title: first.title.clone(),
                date: from,
                start: time(9, 30, 0, 0),
                place: first.place.clone(),
            };
            for other in others {
                drop(bench.handle(Command::Edit(Edit::RemoveSession(other))));
            }
            drop(bench.handle(Command::Edit(Edit::ChangeSession(first.id, details))));
        });
        press(&mut h, Modifiers::COMMAND, Key::Num1);
        assert_eq!(h.state().bench().view().place, Place::Session);
        for _ in 0..4 {
            let at = middle(&h, "Copy for next week");
            h.drag_at(at);
            h.step();
            h.drop_at(at);
            h.run();
        }
        let view = h.state().bench().view();
        let sessions = view.club.sessions.iter();
        let days: Vec<_> = sessions.map(|s| (s.date, s.start)).collect();
        let wanted = wanted.map(|(m, d)| (date(2025, m, d), time(9, 30, 0, 0)));
        assert_eq!(days, wanted);
    }
}
