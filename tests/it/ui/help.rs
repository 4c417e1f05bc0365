//! The help: by keys to the page of the place, through all pages, to what is looked for, and away;
//! and what its texts say of the window is true.

use daystrand::assets;
use daystrand::ui::actions::{IN_AREAS, TABLE, key_words};
use daystrand::ui::app::App;
use daystrand::ui::help::text::{Means, ORDER, Page, What, pages};
use daystrand::workbench::command::Place;
use egui::accesskit::Role;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};

use super::{at, click, focused, key, press, type_words, window_of};

/// The page that is read.
fn page(h: &mut Harness<'_, App>) -> Option<&'static str> {
    h.state_mut()
        .state_mut()
        .help
        .as_ref()
        .map(|help| help.page())
}

/// The headings a screen reader finds.
fn headings(h: &Harness<'_, App>) -> Vec<String> {
    let all = h.query_all_by(|n| n.role() == Role::Heading);
    all.filter_map(|n| n.accesskit_node().label()).collect()
}

#[test]
fn it_opens_at_the_page_of_the_place_and_goes_again() {
    for place in Place::ALL {
        let mut h = at(place);
        key(&mut h, Key::F1);
        let title = place.label();
        assert!(headings(&h).contains(&title.to_owned()), "{title}");
        assert!(focused(&h).starts_with(&format!("{title}, page ")));
        key(&mut h, Key::Escape);
        assert_eq!(page(&mut h), None, "{title}");
        key(&mut h, Key::F1);
        key(&mut h, Key::F1);
        assert_eq!(page(&mut h), None, "{title}");
    }
}

#[test]
fn the_story_side_and_own_pictures_have_pages_of_their_own() {
    let mut h = at(Place::Boards);
    click(&mut h, "Story");
    key(&mut h, Key::F1);
    assert_eq!(page(&mut h), Some("story"));
    let mut h = at(Place::People);
    click(&mut h, "Pictures");
    key(&mut h, Key::F1);
    assert_eq!(page(&mut h), Some("pictures"));
}

#[test]
fn arrows_go_through_all_pages_and_the_place_behind_stays() {
    let mut h = at(Place::Session);
    key(&mut h, Key::F1);
    key(&mut h, Key::Home);
    for name in ORDER {
        assert_eq!(page(&mut h), Some(name));
        key(&mut h, Key::ArrowDown);
    }
    press(&mut h, Modifiers::COMMAND, Key::Num5);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    let view = h.state().bench().view();
    assert_eq!(view.place, Place::Session);
    assert_eq!(page(&mut h), Some(ORDER[ORDER.len() - 1]));
}

#[test]
fn words_are_found_on_all_pages_and_enter_goes_there() {
    let mut h = at(Place::Session);
    key(&mut h, Key::F1);
    press(&mut h, Modifiers::COMMAND, Key::F);
    assert_eq!(focused(&h), "Find in the help");
    type_words(&mut h, "LAMINÄTE pouches");
    let hit = "Print: Lay them apart in the pouch and laminate.";
    assert!(
        h.query_by(|n| n.label().is_some_and(|l| l.starts_with(hit)))
            .is_none()
    );
    assert!(
        h.query_by_label_contains("No line of the help has these words")
            .is_some()
    );
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "LAMINÄTE pouch");
    assert!(
        h.query_by(|n| n.label().is_some_and(|l| l.starts_with(hit)))
            .is_some()
    );
    key(&mut h, Key::Enter);
    assert_eq!(page(&mut h), Some("print"));
    assert_eq!(focused(&h), "Print");
    let line = h.get_by_label("Lay them apart in the pouch and laminate.");
    let window = egui::Rect::from_min_size(egui::Pos2::ZERO, Vec2::new(1366.0, 768.0));
    assert!(window.contains_rect(line.rect()), "brought into sight");
    assert!(line.rect().top() > 100.0);
}

#[test]
fn typing_begins_a_search_and_escape_empties_it_before_it_closes() {
    let mut h = at(Place::Checks);
    key(&mut h, Key::F1);
    type_words(&mut h, "water");
    assert_eq!(focused(&h), "Find in the help");
    type_words(&mut h, "s");
    key(&mut h, Key::Escape);
    assert_eq!(page(&mut h), Some("checks"), "it is still open");
    assert!(headings(&h).contains(&"Checks".to_owned()));
    key(&mut h, Key::Escape);
    assert_eq!(page(&mut h), None);
}

#[test]
fn what_was_found_is_gone_through_by_arrows() {
    let mut h = at(Place::Checks);
    key(&mut h, Key::F1);
    type_words(&mut h, "water");
    key(&mut h, Key::ArrowDown);
    let first = focused(&h);
    key(&mut h, Key::ArrowDown);
    assert!(first.contains(", 1 of ") && focused(&h).contains(", 2 of "));
    key(&mut h, Key::Enter);
    assert!(focused(&h).len() < first.len(), "a page has the keyboard");
}

#[test]
fn a_page_scrolls_by_keys() {
    let mut h = at(Place::Print);
    key(&mut h, Key::F1);
    let top = |h: &Harness<'_, App>| {
        h.get_by_label("Print at 100 %, not “fit to page”.")
            .rect()
            .top()
    };
    let before = top(&h);
    key(&mut h, Key::PageDown);
    let after = top(&h);
    assert!(after < before - 100.0, "{before} {after}");
    key(&mut h, Key::PageUp);
    assert!((top(&h) - before).abs() < 2.0);
    press(&mut h, Modifiers::NONE, Key::F6);
    assert_eq!(focused(&h), "Print");
    key(&mut h, Key::ArrowDown);
    assert!(top(&h) < before - 20.0);
}

#[test]
fn at_two_hundred_percent_the_pages_are_in_one_control() {
    let mut h = window_of(Vec2::new(1366.0, 768.0));
    for _ in 0..7 {
        press(&mut h, Modifiers::COMMAND, Key::Plus);
    }
    press(&mut h, Modifiers::COMMAND, Key::Num5);
    key(&mut h, Key::F1);
    assert_eq!(h.state().bench().view().zoom_percent, 200);
    assert!(
        h.query_by(|n| n.role() == Role::ComboBox && n.label().is_some_and(|l| l == "Page"))
            .is_some()
    );
    assert_eq!(focused(&h), "Print");
    let close = h.get_by_label("Close the help").rect();
    assert!(close.right() <= 683.0 && close.top() >= 0.0, "{close:?}");
}

fn words(page: &Page) -> impl Iterator<Item = String> + '_ {
    page.lines.iter().map(|l| l.what.words())
}

#[test]
fn every_file_of_the_help_is_a_page_or_a_picture_that_is_shown() {
    let shown: Vec<&str> = pages()
        .iter()
        .flat_map(|p| &p.lines)
        .filter_map(|l| match l.what {
            What::Picture { name, .. } => Some(name),
            _ => None,
        })
        .collect();
    for file in assets::help_files() {
        let (name, ending) = file.rsplit_once('.').expect("an ending");
        match ending {
            "txt" => assert!(ORDER.contains(&name), "{file} is no page"),
            "png" => assert!(shown.contains(&name), "{file} is shown nowhere"),
            _ => panic!("{file}: neither a page nor a picture"),
        }
    }
    for name in &shown {
        let bytes = assets::help_picture(name).unwrap_or_else(|| panic!("no picture {name}"));
        assert!(bytes.len() < 80_000, "{name}: {} bytes", bytes.len());
        let image = image::load_from_memory(bytes).expect("a picture");
        assert!(image.width() <= 900, "{name} is {} wide", image.width());
    }
    assert!(shown.len() >= 6);
}

#[test]
fn pages_are_short_and_so_are_sentences() {
    for page in pages() {
        assert!(!page.title.is_empty(), "{}", page.name);
        let long = page.lines.len();
        let most = if page.name == "keys" { 99 } else { 22 };
        assert!((6..=most).contains(&long), "{}: {long} lines", page.name);
        for line in words(page) {
            for sentence in line.split_inclusive(['.', '!', '?', ':']) {
                let n = sentence.split_whitespace().count();
                assert!(n <= 20, "{}: {n} words: {sentence}", page.name);
            }
        }
    }
}

#[test]
fn every_place_has_a_page() {
    for place in Place::ALL {
        let has = pages().iter().any(|p| p.title == place.label());
        assert!(has, "{}", place.label());
    }
}

/// Every key that a text names is in the table of keys.
#[test]
fn every_key_named_is_a_key() {
    let mut keys: Vec<String> = vec!["Tab".into()];
    keys.extend(IN_AREAS.iter().map(|(key, _)| (*key).to_owned()));
    for row in TABLE {
        keys.push(row.keys());
        keys.extend(row.also.as_ref().map(key_words));
    }
    let mut named = 0;
    for page in pages() {
        for run in page.lines.iter().flat_map(|l| l.what.runs()) {
            if run.means == Means::Key {
                named += 1;
                assert!(
                    keys.iter().any(|k| k == run.words),
                    "{}: {}",
                    page.name,
                    run.words
                );
            } else {
                let bare = run.words.contains("Ctrl") || run.words.contains(" F1");
                assert!(!bare, "{}: a key is written bare: {}", page.name, run.words);
            }
        }
    }
    assert!(named > 12, "{named}");
}

/// Every name that a text gives as one of the window's is a name somewhere in the program.
#[test]
fn every_name_of_the_window_is_there() {
    let mut source = String::new();
    let mut folders = vec![std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else {
                source.push_str(&std::fs::read_to_string(path).unwrap());
            }
        }
    }
    for page in pages().iter().filter(|p| p.name != "mind") {
        for run in page.lines.iter().flat_map(|l| l.what.runs()) {
            if run.means == Means::Name {
                let there = source.contains(&format!("\"{}\"", run.words));
                assert!(there, "{}: nothing is called {}", page.name, run.words);
            }
        }
    }
}

/// The word stands once, where it is said that it is never said.
#[test]
fn nothing_is_called_safe() {
    let said: Vec<String> = pages()
        .iter()
        .flat_map(words)
        .filter(|l| l.to_lowercase().contains("safe"))
        .collect();
    assert_eq!(said, ["It never says that anything is safe."]);
}

#[test]
fn the_table_of_keys_is_on_its_page() {
    let keys = pages().iter().find(|p| p.name == "keys").expect("a page");
    let all: Vec<String> = words(keys).collect();
    for row in TABLE.iter().filter(|r| r.key.is_some()) {
        assert!(
            all.iter()
                .any(|l| l.starts_with(&row.keys()) && l.ends_with(row.tip))
        );
    }
    for (key, what) in IN_AREAS {
        assert!(all.contains(&format!("{key}: {what}")));
    }
}
