//! The story side of Boards: sentences changed by keys and mouse, measures, the second language, in a
//! usual window and in a small one.

use daystrand::model::edit::Edit;
use daystrand::model::rewriting::{About, LineRef, PageRef, PageWords, Rewritten};
use daystrand::model::telling::{Depth, Pages, Second};
use daystrand::page::{Block, Item, hit};
use daystrand::ui::app::App;
use daystrand::units::Length;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Key, Modifiers, Pos2, Rect, Vec2, pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;

use super::{focused, key, middle, press, type_words, window_of, window_with};

/// Presses the mouse on what has this name, or a name beginning so.
fn click(h: &mut Harness<'_, App>, name: &str) {
    let at = middle(h, name);
    h.drag_at(at);
    h.step();
    h.drop_at(at);
    h.run();
}

/// The story side of the demo club's first participant.
fn story() -> Harness<'static, App> {
    open(window_of(Vec2::new(1366.0, 768.0)))
}

fn open(mut h: Harness<'static, App>) -> Harness<'static, App> {
    press(&mut h, Modifiers::COMMAND, Key::Num3);
    assert!(
        h.state().bench().view().story.is_none(),
        "told only when shown"
    );
    click(&mut h, "Story");
    assert!(h.state().bench().view().story.is_some());
    h
}

/// The sentences of a page, counted from zero.
fn lines(h: &Harness<'_, App>, page: usize) -> Vec<String> {
    let view = h.state().bench().view();
    let told = view.story.expect("a story");
    let lines = told.story.pages[page].lines.iter();
    lines.map(|l| l.text.clone()).collect()
}

fn hidden(h: &Harness<'_, App>, page: usize) -> usize {
    let view = h.state().bench().view();
    view.story.expect("a story").story.pages[page].hidden.len()
}

/// Whether the first page was changed by hand; another one is so in the demo.
fn by_hand(h: &Harness<'_, App>) -> bool {
    let view = h.state().bench().view();
    let who = view.participant.expect("someone").id;
    let story = view.session.expect("a session").stories.get(&who);
    story.is_some_and(|s| s.page(PageRef::Title).is_some())
}

fn has(h: &Harness<'_, App>, words: &str) -> bool {
    h.query_all_by(|n| {
        let (label, value) = (n.label(), n.value());
        label.is_some_and(|l| l.contains(words)) || value.is_some_and(|v| v.contains(words))
    })
    .next()
    .is_some()
}

/// Writes other words into a sentence and enters them.
fn rewrite(h: &mut Harness<'_, App>, name: &str, words: &str) {
    click(h, name);
    press(h, Modifiers::COMMAND, Key::A);
    type_words(h, words);
    key(h, Key::Enter);
}

#[test]
fn a_sentence_is_edited_in_one_step_and_undone() {
    let mut h = story();
    let before = lines(&h, 0);
    assert_eq!(before.len(), 3);
    rewrite(&mut h, "Sentence 3 of 3", "My helper and I go together.");
    assert_eq!(lines(&h, 0)[2], "My helper and I go together.");
    assert!(has(&h, "Sentence 3 of 3: Describing, edited"));
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(lines(&h, 0), before);
    assert_eq!(h.state().bench().view().undo, None, "typing is one step");
    press(&mut h, Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    assert_eq!(lines(&h, 0)[2], "My helper and I go together.");
}

#[test]
fn an_edited_sentence_goes_back_by_one_click_and_a_page_and_a_story_too() {
    let mut h = story();
    let before = lines(&h, 0);
    rewrite(&mut h, "Sentence 3 of 3", "We go together.");
    click(&mut h, "As told: sentence 3");
    assert_eq!((lines(&h, 0), by_hand(&h)), (before.clone(), false));
    rewrite(&mut h, "Sentence 3 of 3", "We go together.");
    click(&mut h, "This page as told");
    assert_eq!((lines(&h, 0), by_hand(&h)), (before.clone(), false));
    rewrite(&mut h, "Sentence 3 of 3", "We go together.");
    // The program's own words, typed with plain blanks, are no change.
    rewrite(&mut h, "Sentence 3 of 3", &before[2]);
    assert!(!by_hand(&h));
    rewrite(&mut h, "Sentence 3 of 3", "We go together.");
    click(&mut h, "Whole story as told");
    assert_eq!((lines(&h, 0), by_hand(&h)), (before, false));
}

#[test]
fn a_sentence_is_hidden_and_shown_again_and_an_emptied_one_is_hidden() {
    let mut h = story();
    let before = lines(&h, 0);
    click(&mut h, "Hide: sentence 2");
    assert_eq!(lines(&h, 0), [before[0].clone(), before[2].clone()]);
    assert_eq!(hidden(&h, 0), 1);
    click(&mut h, "Show: ");
    assert_eq!((lines(&h, 0), by_hand(&h)), (before.clone(), false));
    click(&mut h, "Sentence 2 of 3");
    press(&mut h, Modifiers::COMMAND, Key::A);
    key(&mut h, Key::Delete);
    key(&mut h, Key::Enter);
    assert_eq!((lines(&h, 0).len(), hidden(&h, 0)), (2, 1));
}

#[test]
fn a_sentence_is_added_gets_the_keyboard_and_is_taken_away() {
    let mut h = story();
    click(&mut h, "Add a sentence");
    assert_eq!(focused(&h), "A sentence of your own");
    type_words(&mut h, "We bring a towel.");
    key(&mut h, Key::Enter);
    assert_eq!(
        lines(&h, 0).last().map(String::as_str),
        Some("We bring a towel.")
    );
    h.run();
    assert!(
        focused(&h).starts_with("Sentence 4 of 4"),
        "{}",
        focused(&h)
    );
    assert!(has(&h, "added by hand"));
    assert!(has(&h, "1 to 3 are easier to take in"));
    click(&mut h, "Take away: sentence 4");
    assert_eq!(lines(&h, 0).len(), 3);
}

#[test]
fn by_keys_a_sentence_moves_with_what_was_typed_and_keeps_the_keyboard() {
    let mut h = story();
    let before = lines(&h, 0);
    click(&mut h, "Sentence 1 of 3");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "It is on Saturday.");
    press(&mut h, Modifiers::ALT, Key::ArrowDown);
    let moved = [
        before[1].clone(),
        "It is on Saturday.".into(),
        before[2].clone(),
    ];
    assert_eq!(lines(&h, 0), moved);
    assert!(
        focused(&h).starts_with("Sentence 2 of 3"),
        "{}",
        focused(&h)
    );
    press(&mut h, Modifiers::ALT, Key::ArrowUp);
    assert_eq!(lines(&h, 0)[0], "It is on Saturday.");
    press(&mut h, Modifiers::ALT, Key::ArrowUp);
    assert_eq!(lines(&h, 0)[0], "It is on Saturday.", "nowhere further up");
    click(&mut h, "Down: sentence 2");
    assert_eq!(lines(&h, 0)[2], before[1]);
}

#[test]
fn page_keys_turn_the_page_and_what_is_typed_counts_first() {
    let mut h = story();
    assert!(has(&h, "Page 1 of 16: My Saturday"));
    click(&mut h, "Sentence 3 of 3");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "We go together.");
    key(&mut h, Key::PageDown);
    h.run();
    assert_eq!(lines(&h, 0)[2], "We go together.");
    assert!(has(&h, "Page 2 of 16"));
    assert!(focused(&h).starts_with("Page 2 of 16"), "{}", focused(&h));
    key(&mut h, Key::ArrowRight);
    h.run();
    assert!(has(&h, "Page 3 of 16"));
    key(&mut h, Key::PageUp);
    h.run();
    assert!(has(&h, "Page 2 of 16"));
    click(&mut h, "Song, page 5 of 16");
    h.run();
    assert!(has(&h, "Page 5 of 16: Song"));
}

#[test]
fn a_page_can_be_selected_from_elsewhere() {
    let mut h = story();
    h.state_mut().state_mut().boards.select_page(PageRef::Ask);
    h.run();
    assert!(
        has(&h, "Page 15 of 16"),
        "the page of how to ask is the last but one"
    );
}

/// Words, sentences and syllables of the page "Song" counted by hand: 18, 3 and 20 ("sing-ing" and
/// "lis-ten" have two). Flesch 1948: 206.835 - 1.015 * 6 - 84.6 * 20/18 = 106.7; Kincaid and others
/// 1975: 0.39 * 6 + 11.8 * 20/18 - 15.59 = -0.1.
#[test]
fn the_measures_of_a_page_stand_beside_those_of_the_story() {
    let mut h = story();
    click(&mut h, "Song, page 5 of 16");
    h.run();
    let said = [
        "The group sings one song.",
        "The singing may be loud.",
        "I can sing, listen or wear ear muffs.",
    ];
    assert_eq!(lines(&h, 4), said);
    for says in [
        "Words: this page 18, whole story ",
        "Sentences: this page 3, ",
        "Words a sentence: this page 6.0, ",
        "Reading ease: this page 106.7, ",
        "School grade: this page -0.1, ",
        "Describe to direct: this page 2 to 1 (2.0), ",
    ] {
        assert!(has(&h, says), "{says}");
    }
    assert!(has(&h, "The whole story is very easy to read."));
}

#[test]
fn words_a_reader_may_trip_over_are_named_at_the_sentence_two_at_first() {
    let mut h = story();
    let words = "I must always wait in the queue because it is not my turn.";
    rewrite(&mut h, "Sentence 3 of 3", words);
    assert!(has(&h, "“must”") && has(&h, "“always”"));
    assert!(!has(&h, "“not”"));
    click(&mut h, "All that there is to say");
    assert!(has(&h, "“not”"));
    assert_eq!(lines(&h, 0)[2], words, "nothing is put right by itself");
}

#[test]
fn a_sentence_written_before_the_plan_changed_is_asked_about() {
    let line = LineRef::Told(About::Event, 0);
    let mut h = open(window_with(Vec2::new(1366.0, 768.0), |bench| {
        let mut words = PageWords::default();
        let old = Rewritten {
            text: "It is on Friday.".into(),
            was: "Boat morning is on Friday.".into(),
        };
        words.texts.insert(line, old);
        let view = bench.view();
        let (session, who) = (
            view.session.expect("one").id,
            view.participant.expect("one").id,
        );
        let edit = Edit::StoryPage(session, who, PageRef::Title, words);
        drop(bench.handle(Command::Edit(edit)));
    }));
    let asks = "The plan has changed since this was written. The program says now: “Boat morning";
    assert!(has(&h, asks));
    click(&mut h, "Keep mine");
    assert!(!has(&h, asks) && lines(&h, 0)[0] == "It is on Friday.");
    press(&mut h, Modifiers::COMMAND, Key::Z);
    click(&mut h, "Take what the program says now");
    assert!(!has(&h, asks) && !by_hand(&h));
}

fn with_second(bench: &mut Workbench, language: &str) {
    let mut p = bench.view().participant.expect("one").clone();
    p.telling.second = Some(Second {
        language: language.into(),
        checked_by: "Noor’s aunt".into(),
        ..Second::default()
    });
    drop(bench.handle(Command::Edit(Edit::ChangeParticipant(p))));
}

#[test]
fn a_second_language_is_written_under_each_sentence_and_read_through_by_someone() {
    let size = Vec2::new(1366.0, 768.0);
    let mut h = open(window_with(size, |bench| with_second(bench, "ar")));
    let of = lines(&h, 0)[0].clone();
    let name = format!("In the second language: {of}");
    click(&mut h, &name);
    let words = "صباح القارب يوم السبت";
    type_words(&mut h, words);
    key(&mut h, Key::Enter);
    let second = |h: &Harness<'_, App>| {
        let view = h.state().bench().view();
        let second = view.participant.expect("one").telling.second.clone();
        second.expect("a second language")
    };
    assert_eq!(second(&h).of(&of), Some(words));
    assert!(second(&h).is_unchecked(), "nobody read this sentence yet");
    assert!(has(&h, "Not yet checked by a reader."));
    assert!(has(&h, "are still missing"));
    assert!(
        has(&h, "As printed: "),
        "as the page shows it, joined and in order"
    );
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(second(&h).of(&of), None);
}

#[test]
fn how_much_is_written_and_who_is_beside_are_chosen_here() {
    let mut h = story();
    click(&mut h, "How much is written");
    click(&mut h, "A word");
    let depth = |h: &Harness<'_, App>| {
        h.state()
            .bench()
            .view()
            .participant
            .expect("one")
            .telling
            .depth
    };
    assert_eq!(depth(&h), Depth::Word);
    key(&mut h, Key::PageDown);
    h.run();
    assert!(has(
        &h,
        "This story is told in a word: it has no sentences here."
    ));
    click(&mut h, "Beside them on the day");
    let helper = {
        let view = h.state().bench().view();
        let session = view.session.expect("one");
        let mut helpers = view.club.helpers.iter();
        let there = helpers.find(|p| !session.helpers_away.contains(&p.id));
        there.expect("a helper").clone()
    };
    click(&mut h, &helper.name);
    let view = h.state().bench().view();
    let (session, who) = (view.session.expect("one"), view.participant.expect("one"));
    assert_eq!(session.beside.get(&who.id), Some(&helper.id));
}

#[test]
fn what_is_new_since_last_time_stands_beside() {
    let mut h = open(window_with(Vec2::new(1366.0, 768.0), |bench| {
        let last = bench.view().club.sessions.last().expect("one").id;
        drop(bench.handle(Command::ChooseSession(last)));
    }));
    assert!(has(&h, "Compared with last time"));
    assert!(has(&h, "Same: "));
    h.run();
}

#[test]
fn at_twice_the_size_every_control_of_the_first_sentence_is_in_the_window() {
    let size = Vec2::new(683.0, 384.0);
    let h = open(window_of(size));
    let window = Rect::from_min_size(pos2(0.0, 0.0), size);
    for name in [
        "Sentence 1 of 3",
        "Hide: sentence 1",
        "Down: sentence 1",
        "Next page",
        "Story",
    ] {
        let found = h
            .query_all_by(|n| n.label().is_some_and(|l| l.starts_with(name)))
            .next();
        let rect = found
            .unwrap_or_else(|| panic!("{name} is not there"))
            .rect();
        assert!(window.contains_rect(rect), "{name} at {rect}");
        assert!(
            rect.height() >= 44.0 && rect.width() >= 44.0,
            "{name} at {rect}"
        );
    }
}

/// Whatever the depth, size of letters and participant: every leaf belongs to one page of the story
/// and bears its heading.
#[test]
fn every_leaf_belongs_to_a_page_of_the_story() {
    let mut bench = Workbench::new(date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    drop(bench.handle(Command::Show(Place::Boards)));
    drop(bench.handle(Command::ShowStory(true)));
    let people: Vec<_> = bench.view().boards.iter().map(|(id, _)| *id).collect();
    for who in people {
        drop(bench.handle(Command::ChooseParticipant(who)));
        for (depth, letters) in [
            (Depth::Short, None),
            (Depth::Full, Some(36)),
            (Depth::Word, None),
        ] {
            let mut p = bench.view().participant.expect("one").clone();
            (p.telling.depth, p.telling.letters) = (depth, letters);
            drop(bench.handle(Command::Edit(Edit::ChangeParticipant(p))));
            let view = bench.view();
            let told = view.story.expect("a story");
            let mut next = 0;
            for (page, (first, last)) in told.story.pages.iter().zip(&told.places) {
                assert_eq!((*first, first <= last), (next, true));
                for leaf in &told.leaves[*first..=*last] {
                    assert!(leaf.title.ends_with(&page.heading), "{}", leaf.title);
                }
                next = last + 1;
            }
            assert_eq!(next, told.leaves.len());
        }
    }
}

/// Presses the mouse on the first block of the shown page that says these words.
fn click_on_page(h: &mut Harness<'_, App>, leaf: usize, words: &str) {
    let shown = middle_of_page(h, leaf, words);
    h.drag_at(shown);
    h.step();
    h.drop_at(shown);
    h.run();
    h.run();
}

fn middle_of_page(h: &Harness<'_, App>, leaf: usize, words: &str) -> Pos2 {
    let view = h.state().bench().view();
    let page = &view.story.expect("a story").leaves[leaf];
    let says = |b: &&Block| {
        let text = |i: &Item| match i {
            Item::Text { line, .. } => line.text.starts_with(words),
            _ => false,
        };
        b.items.iter().any(text)
    };
    let block = page.blocks.iter().find(says).expect("words on the page");
    let middle = hit::block_box(block).expect("a place").center();
    let name = format!("Page {} of", leaf + 1);
    let at = h
        .query_all_by(|n| n.label().is_some_and(|l| l.starts_with(&name)))
        .next()
        .expect("the page")
        .rect();
    let share = |a: Length, b: Length| (a.to_mm() / b.to_mm()) as f32;
    let (x, y) = (share(middle.x, page.size.w), share(middle.y, page.size.h));
    at.min + Vec2::new(x * at.width(), y * at.height())
}

#[test]
fn words_on_the_page_lead_to_their_sentence_and_pictures_to_their_page() {
    let mut h = story();
    click_on_page(&mut h, 0, "Boat morning is");
    assert!(
        focused(&h).starts_with("Sentence 1 of 3"),
        "{}",
        focused(&h)
    );

    let mut h = open(window_with(Vec2::new(1366.0, 768.0), |bench| {
        let club = bench.view().club;
        let last = club.sessions[1].id;
        let mut who = (*club.participants[0]).clone();
        who.telling.pages = Pages::News;
        drop(bench.handle(Command::ChooseSession(last)));
        drop(bench.handle(Command::Edit(Edit::ChangeParticipant(who))));
    }));
    click(&mut h, "My plan, page 2 of 4");
    h.run();
    click_on_page(&mut h, 1, "Find shells");
    assert!(!has(&h, "Page 2 of 4"), "the step is told on another page");
    assert!(focused(&h).starts_with("Sentence "), "{}", focused(&h));
}
