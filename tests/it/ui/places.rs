//! Every place by keys and mouse: it comes to rest, has names, fits small windows and 200 %.

use daystrand::layout::SheetKind;
use daystrand::ui::app::App;
use daystrand::workbench::command::Place;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::kittest::Queryable as _;

use super::{at, click, focused, key, middle, press, type_words, window, window_of};

type Window = egui_kittest::Harness<'static, daystrand::ui::app::App>;

/// `run` fails when the window does not come to rest, when something to press has no name, and
/// when a letter is missing in the fonts.
#[test]
fn every_place_comes_to_rest_in_every_size_of_window() {
    for size in [
        Vec2::new(1366.0, 768.0),
        Vec2::new(683.0, 384.0),
        Vec2::new(1920.0, 1080.0),
    ] {
        let mut h = window_of(size);
        for digit in [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5] {
            press(&mut h, Modifiers::COMMAND, digit);
        }
        press(&mut h, Modifiers::COMMAND, Key::G);
        press(&mut h, Modifiers::NONE, Key::F1);
        key(&mut h, Key::Escape);
    }
}

#[test]
fn f6_goes_round_the_areas_of_every_place() {
    for place in Place::ALL {
        let mut h = at(place);
        let mut seen = Vec::new();
        for _ in 0..12 {
            key(&mut h, Key::F6);
            let now = focused(&h);
            assert!(
                !now.is_empty(),
                "F6 lands on something with a name in {place:?}"
            );
            if seen.first() == Some(&now) {
                break;
            }
            seen.push(now);
        }
        // Checks has nothing but the bar while nothing is open.
        let least = if place == Place::Checks { 1 } else { 2 };
        assert!(
            seen.len() >= least && seen.len() < 12,
            "{place:?}: {seen:?}"
        );
    }
}

#[test]
fn zoom_goes_up_to_200_percent_and_back() {
    let mut h = window();
    for _ in 0..8 {
        press(&mut h, Modifiers::COMMAND, Key::Plus);
    }
    assert!((h.ctx.zoom_factor() - 2.0).abs() < 0.01);
    press(&mut h, Modifiers::COMMAND, Key::Num0);
    assert!((h.ctx.zoom_factor() - 1.0).abs() < 0.01);
}

/// Whoever needs large words needs them in a card that lies over the window too.
#[test]
fn zoom_is_there_while_a_card_lies_over_the_window() {
    for opens in [Key::O, Key::K] {
        let mut h = window();
        press(&mut h, Modifiers::COMMAND, opens);
        let field = focused(&h);
        press(&mut h, Modifiers::COMMAND, Key::Plus);
        assert!(h.ctx.zoom_factor() > 1.05, "{opens:?}");
        assert_eq!(focused(&h), field, "the card stays");
        // Nothing else happens behind it.
        let place = h.state().bench().view().place;
        press(&mut h, Modifiers::COMMAND, Key::Num5);
        assert_eq!(h.state().bench().view().place, place);
        press(&mut h, Modifiers::COMMAND, Key::Num0);
        assert!((h.ctx.zoom_factor() - 1.0).abs() < 0.01);
    }
}

#[test]
fn a_finding_leads_to_where_it_points() {
    let mut h = at(Place::Session);
    type_minutes(&mut h, "120");
    press(&mut h, Modifiers::COMMAND, Key::Num4);
    let found = h.state().bench().view().findings.first().cloned();
    let first = found.expect("a session of two hours more is longer than the club's time");
    click(
        &mut h,
        &format!("{}: {}", first.severity.label(), first.sentence),
    );
    assert_eq!(h.state().bench().view().place, Place::Session);
}

#[test]
fn what_to_print_is_chosen_with_ticks() {
    let mut h = at(Place::Print);
    let pages = |h: &Window| {
        h.state()
            .bench()
            .view()
            .sheets
            .iter()
            .map(|s| s.pages.len())
            .sum::<usize>()
    };
    let all = pages(&h);
    assert!(all > 0);
    click(&mut h, SheetKind::Tiles.label());
    assert!(
        !h.state()
            .bench()
            .view()
            .print
            .kinds
            .contains(&SheetKind::Tiles)
    );
    assert!(pages(&h) < all);
    click(&mut h, SheetKind::Tiles.label());
    assert_eq!(pages(&h), all);
}

/// Types minutes into the first row of the timetable.
fn type_minutes(h: &mut Window, minutes: &str) {
    let view = h.state().bench().view();
    let slot = &view.session.expect("a session").timetable[0];
    let label = view
        .club
        .activity(slot.activity)
        .expect("an activity")
        .label
        .clone();
    click(h, &format!("Minutes of {label}"));
    press(h, Modifiers::COMMAND, Key::A);
    type_words(h, minutes);
    key(h, Key::Enter);
}

#[test]
fn minutes_are_typed_into_the_timetable_and_undone() {
    let mut h = at(Place::Session);
    let first = |h: &Window| {
        h.state()
            .bench()
            .view()
            .session
            .expect("a session")
            .timetable[0]
            .minutes
    };
    let before = first(&h);
    type_minutes(&mut h, "17");
    assert_eq!(first(&h), 17);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(first(&h), before);
}

#[test]
fn what_is_being_typed_counts_when_another_place_is_opened() {
    let mut h = at(Place::People);
    click(&mut h, "Name");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "Alva");
    press(&mut h, Modifiers::COMMAND, Key::Num3);
    let view = h.state().bench().view();
    assert_eq!(view.place, Place::Boards);
    assert_eq!(view.participant.map(|p| p.name.as_str()), Some("Alva"));
}

#[test]
fn opening_asks_for_a_path_in_the_window() {
    let mut h = window();
    press(&mut h, Modifiers::COMMAND, Key::O);
    assert_eq!(focused(&h), "File");
    key(&mut h, Key::Escape);
    assert!(h.state_mut().state_mut().dialog.is_none());
}

#[test]
fn quitting_with_changes_asks_first() {
    let mut h = at(Place::People);
    click(&mut h, "Add a participant");
    press(&mut h, Modifiers::COMMAND, Key::Q);
    assert!(h.state().bench().view().question.is_some());
    key(&mut h, Key::Escape);
    assert!(h.state().bench().view().question.is_none());
}

#[test]
fn going_through_together_takes_one_step_after_another() {
    let mut h = at(Place::Boards);
    let view = h.state().bench().view();
    let labels: Vec<String> = view
        .board()
        .expect("a board")
        .steps
        .iter()
        .map(|s| s.label.clone())
        .collect();
    key(&mut h, Key::F5);
    assert!(
        focused(&h).starts_with(&format!("Now: {}", labels[0])),
        "{}",
        focused(&h)
    );
    key(&mut h, Key::Space);
    assert!(
        focused(&h).starts_with(&format!("Now: {}", labels[1])),
        "{}",
        focused(&h)
    );
    key(&mut h, Key::ArrowLeft);
    assert!(focused(&h).starts_with(&format!("Now: {}", labels[0])));
    assert!(
        h.state_mut().state_mut().together.is_some(),
        "nothing leaves by accident"
    );
}

#[test]
fn the_full_view_is_left_by_holding_and_not_by_a_click() {
    let mut h = at(Place::Boards);
    key(&mut h, Key::F5);
    click(&mut h, "Leave: hold");
    assert!(h.state_mut().state_mut().together.is_some());
    let ring = middle(&h, "Leave: hold");
    h.drag_at(ring);
    // As long as it is held it fills: run_ok stops where the view is left and rests.
    assert!(h.run_ok().is_some());
    assert!(h.state_mut().state_mut().together.is_none());
}

/// Two widgets with one id are written in red over the window in builds for testing; the button is
/// there once in a wide window and in a narrow one.
#[test]
fn without_any_session_there_is_one_button_for_a_new_one() {
    use daystrand::model::edit::Edit;
    use daystrand::workbench::command::Command;
    use egui_kittest::kittest::Queryable as _;
    for size in [Vec2::new(1366.0, 768.0), Vec2::new(683.0, 384.0)] {
        let mut h = super::window_with(size, |bench| {
            let all: Vec<_> = bench.view().club.sessions.iter().map(|s| s.id).collect();
            for id in all {
                drop(bench.handle(Command::Edit(Edit::RemoveSession(id))));
            }
            drop(bench.handle(Command::Show(Place::Session)));
        });
        h.run();
        assert!(h.state().bench().view().session.is_none());
        assert_eq!(h.query_all_by_label("New session").count(), 1, "{size:?}");
    }
}

#[test]
fn in_a_low_window_symbols_are_folded_away_and_come_when_they_are_looked_for() {
    for place in [Place::Boards, Place::Session] {
        let mut h = window_of(Vec2::new(683.0, 384.0));
        let digit = [Key::Num1, Key::Num2, Key::Num3][place as usize];
        press(&mut h, Modifiers::COMMAND, digit);
        let symbols = |h: &Window| {
            h.query_all_by(|n| n.label().is_some_and(|l| l.contains(", symbol ")))
                .count()
        };
        assert_eq!(symbols(&h), 0, "{place:?}");
        click(&mut h, "Symbols below");
        assert!(symbols(&h) > 3, "{place:?}");
        click(&mut h, "Fold the symbols away");
        assert_eq!(symbols(&h), 0, "{place:?}");
        press(&mut h, Modifiers::COMMAND, Key::F);
        assert_eq!(focused(&h), "Look for a symbol");
        assert!(symbols(&h) > 3, "{place:?}");
    }
}

#[test]
fn at_1024_by_600_a_whole_day_is_seen() {
    // The test's own margin takes 8 at each side.
    let mut h = window_of(Vec2::new(1040.0, 616.0));
    press(&mut h, Modifiers::COMMAND, Key::Num3);
    let last = super::labels(&h).len();
    let card = h
        .query_all_by(|n| {
            n.label()
                .is_some_and(|l| l.contains(&format!("step {last} of")))
        })
        .next()
        .expect("the last step");
    let tray = middle(&h, "Look for a symbol");
    assert!(card.rect().bottom() < tray.y - 15.0, "{:?}", card.rect());
}

/// Whatever was typed: words are deleted forwards and backwards from every place in them.
#[test]
fn words_of_every_script_are_deleted_by_keys() {
    let mut h = egui_kittest::Harness::builder()
        .with_size(Vec2::new(1366.0, 768.0))
        .allow_missing_glyphs()
        .with_context_setup(App::prepare)
        .build_ui_state(
            |ui, app: &mut App| {
                app.logic(ui.ctx());
                app.show(ui);
            },
            App::new(super::demo()),
        );
    press(&mut h, Modifiers::COMMAND, Key::K);
    for words in [
        "dig",
        "سباحة",
        "🏊\u{200d}♀\u{fe0f} e\u{301}",
        "سباحة 🏊\u{200d}♀\u{fe0f}سباحة e\u{301} dig",
    ] {
        for (back, held) in [
            (0, Modifiers::ALT),
            (0, Modifiers::COMMAND),
            (3, Modifiers::ALT),
        ] {
            press(&mut h, Modifiers::COMMAND, Key::A);
            type_words(&mut h, words);
            key(&mut h, Key::End);
            for _ in 0..back {
                key(&mut h, Key::ArrowLeft);
            }
            press(&mut h, held, Key::Delete);
            press(&mut h, held, Key::Backspace);
        }
    }
}
