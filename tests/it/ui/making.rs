//! What is printed and made: groups of sheets, whom for, sizes of tiles, what is in stock, what the
//! printer makes of a length, how the club makes its tiles.

use daystrand::layout::SheetKind;
use daystrand::model::craft::{Cutting, Flip, Half, Sorting, TileShape, Work};
use daystrand::model::edit::Edit;
use daystrand::model::ids::ParticipantId;
use daystrand::model::stock::StockEdit;
use daystrand::ui::app::App;
use daystrand::ui::people::Pane as PeoplePane;
use daystrand::ui::print::Pane;
use daystrand::units::Length;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};

use super::{click, focused, press, type_words, window_with};

type Window = Harness<'static, App>;

/// A window so high that a whole column is seen.
const HIGH: Vec2 = Vec2::new(1366.0, 2600.0);

fn print_with(size: Vec2, prepare: impl FnOnce(&mut Workbench)) -> Window {
    window_with(size, |bench| {
        prepare(bench);
        drop(bench.handle(Command::Show(Place::Print)));
    })
}

fn type_over(h: &mut Window, field: &str, words: &str) {
    click(h, field);
    press(h, Modifiers::COMMAND, Key::A);
    type_words(h, words);
    press(h, Modifiers::NONE, Key::Enter);
}

/// So many who come, of whom one has a name of her own.
fn many(bench: &mut Workbench, n: usize) {
    let pattern = bench.view().club.participants.clone();
    for i in pattern.len()..n {
        let mut one = pattern[i % pattern.len()].as_ref().clone();
        one.name = match i {
            33 => "Zenobia".to_owned(),
            _ => format!("Somebody {i}"),
        };
        drop(bench.handle(Command::Edit(Edit::AddParticipant(one))));
    }
}

fn choose_kinds(bench: &mut Workbench, kinds: &[SheetKind]) {
    let mut choice = bench.view().print.clone();
    choice.kinds = kinds.to_vec();
    drop(bench.handle(Command::SetPrint(choice)));
}

fn tiles_only(bench: &mut Workbench) {
    choose_kinds(bench, &[SheetKind::Tiles, SheetKind::Cards]);
}

/// Everything that screen readers hear that begins so.
fn begins(h: &Window, name: &str) -> Vec<String> {
    let all = h.query_all_by(|n| n.label().is_some_and(|l| l.starts_with(name)));
    all.filter_map(|n| n.accesskit_node().label()).collect()
}

/// Makes all tiles of the demo's participants and shows the stock.
fn stock(size: Vec2) -> Window {
    let mut h = print_with(size, |bench| {
        drop(bench.handle(Command::Show(Place::Print)));
        tiles_only(bench);
        let made = bench.view().counts.expect("tiles are wanted").made.clone();
        drop(bench.handle(Command::Edit(Edit::Stock(StockEdit::Made(made)))));
    });
    h.state_mut().state_mut().print.pane = Pane::Stock;
    h.run();
    h
}

#[test]
fn every_kind_of_sheet_has_a_tick() {
    let mut h = print_with(HIGH, |_| {});
    for kind in SheetKind::ALL {
        let has = |h: &Window| h.state().bench().view().print.kinds.contains(&kind);
        let before = has(&h);
        click(&mut h, kind.label());
        assert_ne!(has(&h), before, "{kind:?}");
        click(&mut h, kind.label());
        assert_eq!(has(&h), before, "{kind:?}");
    }
}

#[test]
fn only_what_is_missing_and_one_file_are_ticks() {
    let mut h = print_with(HIGH, |_| {});
    let now = |h: &Window| {
        let print = h.state().bench().view().print.clone();
        (print.only_missing, print.one_file)
    };
    assert_eq!(now(&h), (true, false));
    click(&mut h, "Only what is missing");
    click(&mut h, "One PDF for all");
    assert_eq!(now(&h), (false, true));
}

#[test]
fn a_name_is_found_among_forty_and_ticked_by_keys_alone() {
    let mut h = print_with(Vec2::new(1366.0, 768.0), |bench| {
        tiles_only(bench);
        many(bench, 40);
    });
    press(&mut h, Modifiers::COMMAND, Key::F);
    assert_eq!(focused(&h), "Find a name");
    let faces = begins(&h, "Somebody");
    assert!(
        (1..30).contains(&faces.len()),
        "only rows in sight are laid out: {}",
        faces.len()
    );
    type_words(&mut h, "zeno");
    assert_eq!(begins(&h, "Somebody"), Vec::<String>::new());
    press(&mut h, Modifiers::NONE, Key::ArrowDown);
    assert_eq!(focused(&h), "Zenobia");
    press(&mut h, Modifiers::NONE, Key::Space);
    let view = h.state().bench().view();
    let chosen = view.print.participants.clone().expect("not everyone");
    assert_eq!(chosen.len(), 39);
    let name = |id: &ParticipantId| view.club.participant(*id).map(|p| p.name.clone());
    assert!(
        !chosen
            .iter()
            .any(|id| name(id).as_deref() == Some("Zenobia"))
    );
}

#[test]
fn the_tab_key_reaches_everyone_in_a_long_list() {
    let mut h = print_with(Vec2::new(1366.0, 768.0), |bench| {
        tiles_only(bench);
        many(bench, 40);
    });
    press(&mut h, Modifiers::COMMAND, Key::F);
    let mut seen = Vec::new();
    for _ in 0..44 {
        press(&mut h, Modifiers::NONE, Key::Tab);
        seen.push(focused(&h));
    }
    for i in [9, 20, 32, 39] {
        let name = format!("Somebody {i}");
        assert!(seen.contains(&name), "{name}: {seen:?}");
    }
}

#[test]
fn everyone_and_nobody_are_one_press_each() {
    let mut h = print_with(HIGH, |bench| {
        tiles_only(bench);
        many(bench, 12);
    });
    let chosen = |h: &Window| h.state().bench().view().print.participants.clone();
    click(&mut h, "Nobody");
    assert_eq!(chosen(&h), Some(Vec::new()));
    click(&mut h, "Everyone");
    assert_eq!(chosen(&h), None);
}

#[test]
fn tiles_of_those_chosen_get_their_shape_and_side_at_once() {
    let mut h = print_with(HIGH, tiles_only);
    let sheets = |h: &Window| h.state().bench().view().counts.expect("tiles").sheets;
    let before = sheets(&h);
    type_over(&mut h, "Side of the tiles", "90");
    let all = |h: &Window| {
        let club = h.state().bench().view().club;
        let mut all: Vec<_> = club
            .participants
            .iter()
            .map(|p| (p.shape, p.tile))
            .collect();
        all.dedup();
        all
    };
    assert_eq!(all(&h), [(TileShape::Square, Length::mm(90.0))]);
    assert!(sheets(&h) > before, "{before} sheets, now {}", sheets(&h));
    click(&mut h, "Shape of the tiles");
    click(&mut h, "Upright");
    assert_eq!(all(&h), [(TileShape::Upright, Length::mm(90.0))]);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(sheets(&h), before);
}

#[test]
fn a_shape_leaves_each_the_side_they_have() {
    let mut h = print_with(HIGH, |bench| {
        tiles_only(bench);
        let first = bench.view().club.participants[0].id;
        let size = Edit::TileSizes(vec![first], TileShape::Square, Length::mm(80.0));
        drop(bench.handle(Command::Edit(size)));
    });
    click(&mut h, "Shape of the tiles");
    click(&mut h, "Across");
    let club = h.state().bench().view().club;
    assert!(
        club.participants
            .iter()
            .all(|p| p.shape == TileShape::Across)
    );
    assert_eq!(club.participants[0].tile, Length::mm(80.0));
    assert_ne!(club.participants[1].tile, Length::mm(80.0));
}

#[test]
fn made_tiles_are_in_stock_once_and_not_printed_again() {
    for only_missing in [true, false] {
        let mut h = print_with(HIGH, |bench| {
            tiles_only(bench);
            let mut choice = bench.view().print.clone();
            choice.only_missing = only_missing;
            drop(bench.handle(Command::SetPrint(choice)));
        });
        let tiles = |h: &Window| -> u32 {
            let stock = &h.state().bench().view().club.stock;
            stock.iter().map(|o| o.count).sum()
        };
        let needed = h.state().bench().view().counts.expect("tiles").needed;
        assert!(needed > 50);
        click(&mut h, "These are made");
        assert_eq!(tiles(&h) as usize, needed);
        click(&mut h, "These are made");
        assert_eq!(tiles(&h) as usize, needed, "a second press adds nothing");
        let printed = h.state().bench().view().counts.expect("tiles").printed;
        assert_eq!(printed, if only_missing { 0 } else { needed });
        press(&mut h, Modifiers::COMMAND, Key::Z);
        assert_eq!(tiles(&h), 0);
    }
}

#[test]
fn the_bar_is_typed_in_tenths_and_what_to_set_is_said() {
    let mut h = print_with(HIGH, |_| {});
    type_over(&mut h, "What the bar of 100 mm measures", "98,0");
    let bar = |h: &Window| h.state().bench().view().club.rules.craft.bar;
    assert_eq!(bar(&h), Some(Length::mm(98.0)));
    let speaks = |h: &Window| {
        let findings = h.state().bench().view().findings;
        findings.iter().any(|f| f.code == "print.scale")
    };
    assert!(speaks(&h));
    click(&mut h, "What the bar of 100 mm measures: more");
    assert_eq!(bar(&h), Some(Length::mm(98.1)));
    click(&mut h, "Not measured");
    assert_eq!(bar(&h), None);
    assert!(!speaks(&h));
}

#[test]
fn lost_worn_out_and_counted_tiles_are_told_in_stock() {
    let mut h = stock(Vec2::new(1366.0, 768.0));
    let first = |h: &Window| {
        let club = h.state().bench().view().club;
        let who = club.participants[0].id;
        let mut all = club.stock.iter();
        let owned = all.find(|o| o.key.whose == Some(who)).expect("theirs");
        (owned.count, owned.lost, owned.worn)
    };
    let (count, ..) = first(&h);
    click(&mut h, "Lost: ");
    assert_eq!(first(&h), (count - 1, 1, 0));
    let field = begins(&h, "Counted: ").into_iter();
    let mut field = field.filter(|n| !n.ends_with(": less") && !n.ends_with(": more"));
    type_over(&mut h, &field.next().expect("a field"), "5");
    assert_eq!(first(&h), (5, 1, 0));
    click(&mut h, "Worn out: ");
    assert_eq!(first(&h), (4, 1, 1));
    for _ in 0..3 {
        press(&mut h, Modifiers::COMMAND, Key::Z);
    }
    assert_eq!(first(&h), (count, 0, 0));
}

#[test]
fn a_tile_is_found_in_stock_and_reached_by_keys() {
    let mut h = stock(Vec2::new(1366.0, 768.0));
    let all = begins(&h, "Counted: ");
    press(&mut h, Modifiers::COMMAND, Key::F);
    let view = h.state().bench().view();
    let (label, kinds) = (
        view.club.stock[0].key.face.label.clone(),
        view.club.stock.len(),
    );
    assert!(all.len() / 3 < kinds / 2, "only rows in sight are laid out");
    type_words(&mut h, &label);
    let found = begins(&h, "Lost: ");
    assert!(!found.is_empty(), "{label}");
    let has = |l: &String| l.to_lowercase().contains(&label.to_lowercase());
    assert!(found.iter().all(has), "{found:?}");
    press(&mut h, Modifiers::NONE, Key::ArrowDown);
    assert!(focused(&h).starts_with("Counted: "), "{}", focused(&h));
}

#[test]
fn an_empty_stock_says_how_tiles_get_there() {
    let mut h = print_with(Vec2::new(683.0, 384.0), |_| {});
    click(&mut h, "Stock");
    assert_eq!(h.state_mut().state_mut().print.pane, Pane::Stock);
    let says = h.query_all_by(|n| n.value().is_some_and(|v| v.contains("These are made")));
    assert_eq!(says.count(), 1);
}

#[test]
fn how_tiles_are_made_is_set_in_the_club() {
    let mut h = window_with(Vec2::new(1366.0, 4800.0), |bench| {
        drop(bench.handle(Command::Show(Place::People)));
    });
    h.state_mut().state_mut().people.pane = PeoplePane::Club;
    h.run();
    for words in [
        "Waterproof paper, cut once",
        "Scissors",
        "Through the stack",
        "Short edge",
        "Rough",
        "Tiles get into sea water",
        "Spares of what everyone uses",
        "Blank tiles for a board: more",
        "Time for a cut: more",
        "Radius of a corner: more",
    ] {
        click(&mut h, words);
    }
    type_over(&mut h, "Fastener dot, across", "22");
    let craft = h.state().bench().view().club.rules.craft;
    assert_eq!(craft.work, Work::OneSheet);
    assert_eq!(craft.cutting, Cutting::Scissors);
    assert_eq!(craft.sorting, Sorting::ThroughTheStack);
    assert_eq!(craft.backs, Some(Flip::Short));
    assert_eq!(craft.half, Half::RoughOnTile);
    assert!(craft.sea_water && craft.spares);
    assert_eq!((craft.blanks, craft.cut_seconds), (1, 20));
    assert_eq!(craft.corner, Length::mm(4.5));
    assert_eq!(craft.dot, Length::mm(22.0));
    click(&mut h, "Cut, laminate, cut again");
    type_over(&mut h, "Clear edge of a tile", "3.2");
    assert_eq!(h.state().bench().view().club.rules.seal, Length::mm(3.2));
}

#[test]
fn a_participant_gets_a_shape_and_the_shared_box() {
    let mut h = window_with(HIGH, |bench| {
        drop(bench.handle(Command::Show(Place::People)));
    });
    click(&mut h, "Shape of their tiles");
    click(&mut h, "Bank card");
    click(&mut h, "Tiles from the shared box");
    let person = h
        .state()
        .bench()
        .view()
        .participant
        .expect("someone")
        .clone();
    assert_eq!(person.shape, TileShape::Card);
    assert!(person.shared_tiles);
    let size = h.query_all_by(|n| n.value().is_some_and(|v| v == "85.6 mm × 54 mm"));
    assert_eq!(size.count(), 1, "the side is not theirs to choose");
}

/// The sheets for many come from the background: the window waits without turning round.
#[test]
fn laying_out_for_many_is_said_until_the_sheets_are_there() {
    let mut h = print_with(Vec2::new(1366.0, 768.0), |bench| {
        choose_kinds(bench, &[SheetKind::Tiles]);
        many(bench, 40);
    });
    let began = std::time::Instant::now();
    while h.state().bench().view().laying {
        assert!(
            begins(&h, "These are made").is_empty(),
            "not of other sheets"
        );
        h.run();
        assert!(began.elapsed().as_secs() < 60, "the sheets never come");
        std::thread::sleep(std::time::Duration::from_millis(2));
    }
    h.run();
    assert!(!h.state().bench().view().sheets.is_empty());
    assert_eq!(begins(&h, "These are made").len(), 1);
}

#[test]
fn of_four_thousand_kinds_only_those_in_sight_are_laid_out() {
    let mut h = print_with(Vec2::new(1366.0, 768.0), |bench| {
        drop(bench.handle(Command::Show(Place::Print)));
        tiles_only(bench);
        let pattern = bench.view().counts.expect("tiles").made[0].0.clone();
        let kind = |i: u32| {
            let mut key = pattern.clone();
            key.face.label = format!("Word {i}");
            (key, 1)
        };
        let made = StockEdit::Made((0..4000).map(kind).collect());
        drop(bench.handle(Command::Edit(Edit::Stock(made))));
    });
    h.state_mut().state_mut().print.pane = Pane::Stock;
    h.run();
    assert_eq!(h.state().bench().view().club.stock.len(), 4000);
    let rows = begins(&h, "Lost: ").len();
    assert!((5..16).contains(&rows), "{rows}");
    // The Tab key goes on below what was in sight at first.
    let seen = begins(&h, "Lost: ");
    press(&mut h, Modifiers::COMMAND, Key::F);
    for _ in 0..80 {
        press(&mut h, Modifiers::NONE, Key::Tab);
    }
    let now = focused(&h);
    let tile = now.split(": ").nth(1).expect("a tile's name");
    assert!(!seen.iter().any(|l| l.contains(tile)), "{now} of {seen:?}");
}
