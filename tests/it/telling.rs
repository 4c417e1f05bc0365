//! How stories are told: depths, pages, pronouns, what a person wrote, a second language, and whether
//! story and board agree.

use std::sync::Arc;

use daystrand::model::board::derive;
use daystrand::model::club::{Around, Club};
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::edit::{Edit, TimetableEdit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{HelperId, ParticipantId, SessionId, StepRef, SymbolId};
use daystrand::model::people::{Age, Participant, Voice};
use daystrand::model::rewriting::{About, LineRef, PageRef, PageWords, Rewritten};
use daystrand::model::telling::{Ask, Depth, OwnPronouns, Pages, Pronouns, Second};
use daystrand::story::against::{Mismatch, Shown, compare, look, of_board, of_story};
use daystrand::story::voice::Speaker;
use daystrand::story::{PageKind, Story, StoryPage, tell_for};
use daystrand::workbench::demo;

/// The demo club and a participant of its first session.
fn demo_of(mark: &str, change: impl FnOnce(&mut Participant)) -> (Club, ParticipantId) {
    let mut club = demo::club();
    let at = club
        .participants
        .iter()
        .position(|p| p.mark.as_str() == mark);
    let who = Arc::make_mut(&mut club.participants[at.unwrap()]);
    change(who);
    let id = who.id;
    for session in &mut club.sessions {
        Arc::make_mut(session).stories.clear();
    }
    (club, id)
}

fn story(club: &Club, session: usize, who: ParticipantId) -> Story {
    tell_for(
        club,
        &club.sessions[session],
        club.participant(who).unwrap(),
    )
}

fn words(page: &StoryPage) -> Vec<&str> {
    page.sentences().collect()
}

fn first_step(story: &Story) -> &StoryPage {
    story
        .pages
        .iter()
        .find(|p| p.kind == PageKind::Step)
        .unwrap()
}

#[test]
fn four_depths_come_from_the_same_content() {
    let told = |depth| {
        let (club, who) = demo_of("kite", |p| {
            p.telling.depth = depth;
            p.telling.pages = Pages::Steps;
        });
        story(&club, 0, who)
    };
    let [pictures, word, short, full] = Depth::ALL.map(told);
    for other in [&word, &short, &full] {
        let shape = |s: &Story| {
            s.pages
                .iter()
                .map(|p| (p.at, p.symbol.clone()))
                .collect::<Vec<_>>()
        };
        assert_eq!(shape(&pictures), shape(other));
    }
    for page in pictures.pages.iter().filter(|p| p.kind != PageKind::Title) {
        assert!(words(page).is_empty(), "{page:?}");
    }
    for page in word.pages.iter().filter(|p| p.kind != PageKind::Title) {
        let labels: Vec<&str> = page.with_cards().map(|(c, _)| c.label.as_str()).collect();
        assert_eq!(words(page), labels);
    }
    for page in short.pages.iter().filter(|p| p.step.is_some()) {
        assert!((1..=3).contains(&page.lines.len()), "{page:?}");
        let longer = full.page(page.at).unwrap();
        for line in &page.lines {
            assert!(longer.lines.iter().any(|l| l.text == line.text), "{line:?}");
        }
    }
    let count = |s: &Story| s.sentences().count();
    assert!(count(&full) > count(&short));
}

#[test]
fn what_the_club_says_around_an_activity_is_told_in_order() {
    let (mut club, who) = demo_of("leaf", |p| {
        p.telling.depth = Depth::Full;
        p.voice = Voice::I;
    });
    let at = club
        .activities
        .iter()
        .position(|a| a.label == "Drum")
        .unwrap();
    let drum = Arc::make_mut(&mut club.activities[at]);
    drum.sentences = vec!["{I} {tap} the drum.".into()];
    *drum.around = Around {
        who: "The trainer has the other drum.".into(),
        strong: "The drum may be loud.".into(),
        helps: "{I} {can} tap softly.".into(),
        why: "Drumming wakes the hands.".into(),
    };
    let told = story(&club, 0, who);
    let page = told.pages.iter().find(|p| p.heading == "Drum").unwrap();
    let wanted = [
        "I tap the drum.",
        "The trainer has the other drum.",
        "The drum may be loud.",
        "I can tap softly.",
        "Drumming wakes the hands.",
        "Drum is one of my favourites.",
    ];
    assert_eq!(words(page)[0], "Today Drum comes instead of Song.");
    assert_eq!(words(page)[1..], wanted);
    let (club, who) = {
        let mut club = club;
        let who_at = club.participants.iter().position(|p| p.id == who).unwrap();
        Arc::make_mut(&mut club.participants[who_at]).telling.depth = Depth::Short;
        (club, who)
    };
    let told = story(&club, 0, who);
    let page = told.pages.iter().find(|p| p.heading == "Drum").unwrap();
    assert_eq!(words(page)[1..], [wanted[0], wanted[2], wanted[3]]);
}

#[test]
fn pronouns_are_those_the_family_gave() {
    let said = |pronouns: Pronouns| {
        let speaker = Speaker::new(Voice::Name, "Noor").with_pronouns(pronouns);
        speaker.say("{I} {take} {my} hat and {I} {dry} {myself}. {My} group waits for {me}.")
    };
    let they = "Noor takes their hat and Noor dries themselves. Noor’s group waits for them.";
    assert_eq!(said(Pronouns::They), they);
    let she = "Noor takes her hat and she dries herself. Noor’s group waits for her.";
    assert_eq!(said(Pronouns::She), she);
    let he = "Noor takes his hat and he dries himself. Noor’s group waits for him.";
    assert_eq!(said(Pronouns::He), he);
    let own = Pronouns::Own(Box::new(OwnPronouns {
        subject: "xe".into(),
        object: "xem".into(),
        possessive: "xyr".into(),
        reflexive: "xemself".into(),
    }));
    let xe = "Noor takes xyr hat and xe dries xemself. Noor’s group waits for xem.";
    assert_eq!(said(own), xe);
    let half = Pronouns::Own(Box::default());
    assert_eq!(said(half), they, "what is not given is as usual");
}

#[test]
fn asking_helper_and_ending_are_in_the_familys_words() {
    let (mut club, who) = demo_of("kite", |p| {
        p.telling.pages = Pages::Steps;
        p.telling
            .asks
            .insert(Ask::Help, "press {my} red button".into());
        p.telling.collects = "Dad".into();
    });
    let ada = club.helpers[0].clone();
    let id = club.sessions[0].id;
    club = apply(&club, &Edit::Beside(id, who, Some(ada.id)))
        .unwrap()
        .0;
    let told = story(&club, 0, who);
    let ask = told.page(PageRef::Ask).unwrap();
    let asked = words(ask);
    assert!(
        asked.contains(&"I can press my red button for help."),
        "{asked:?}"
    );
    assert!(asked.contains(&"The card Stop asks to stop."), "{asked:?}");
    let ending = told.page(PageRef::Ending).unwrap();
    assert!(words(ending).contains(&"Dad plans to collect me."));
    let title = told.page(PageRef::Title).unwrap();
    let helper = format!("{} plans to be my helper.", ada.name);
    assert!(
        words(title).contains(&helper.as_str()),
        "{:?}",
        words(title)
    );
    // Who does not come is nobody's helper that day.
    let away = Edit::HelperAttends(id, ada.id, false);
    let told = story(&apply(&club, &away).unwrap().0, 0, who);
    let title = words(told.page(PageRef::Title).unwrap()).join(" ");
    assert!(!title.contains(&ada.name), "{title}");
}

#[test]
fn conditions_are_said_as_may() {
    let (mut club, who) = demo_of("kite", |_| {});
    let session = Arc::make_mut(&mut club.sessions[0]);
    session.conditions = Known::ALL.map(Condition::Known).to_vec();
    session
        .conditions
        .push(Condition::Words("the road is closed".into()));
    let told = story(&club, 0, who);
    let day = told.page(PageRef::Day).unwrap();
    assert_eq!(day.lines.len(), Known::ALL.len() + 1);
    let told = words(day);
    for sentence in &told[..Known::ALL.len()] {
        assert!(sentence.contains(" may "), "{sentence}");
        assert!(sentence.ends_with('.'));
    }
    assert_eq!(told.last(), Some(&"The road is closed."));
}

#[test]
fn someone_who_was_here_before_gets_three_or_four_pages() {
    let (mut club, _) = demo_of("kite", |_| {});
    for p in &mut club.participants {
        Arc::make_mut(p).telling.pages = Pages::News;
    }
    let session = &club.sessions[1];
    let mut returning = 0;
    for who in club.attending(session) {
        let told = tell_for(&club, session, who);
        if daystrand::plan::since::last(&club, session, who.id).is_none() {
            assert!(told.pages.len() > 4);
            continue;
        }
        returning += 1;
        let pages = told.pages.len();
        assert!((3..=4).contains(&pages), "{}: {pages}", who.name);
        let board = derive(&club, session, who.id);
        assert_eq!(compare(&of_story(&told), &of_board(&board)), []);
        // Every new step has its sentence.
        let new: Vec<_> = told
            .page(PageRef::Same)
            .unwrap()
            .small
            .iter()
            .filter(|s| s.new)
            .collect();
        let page = told.page(PageRef::New);
        for small in new {
            let page = page.expect("a page of what is new");
            assert!(
                page.lines
                    .iter()
                    .any(|l| l.card.as_ref() == Some(&small.card))
            );
        }
    }
    assert!(returning >= 6, "{returning}");
}

#[test]
fn a_story_is_short_by_itself_where_more_is_the_same() {
    let (mut club, who) = demo_of("kite", |_| {});
    // The second day is mostly another one.
    assert!(story(&club, 1, who).page(PageRef::Same).is_none());
    let first = club.sessions[0].timetable.clone();
    let second = Arc::make_mut(&mut club.sessions[1]);
    second.hand.clear();
    for (row, was) in second.timetable.iter_mut().zip(&first).skip(1) {
        row.activity = was.activity;
        row.off = None;
    }
    assert!(story(&club, 1, who).page(PageRef::Same).is_some());
}

#[test]
fn a_page_a_part_of_the_day_has_every_step_of_it() {
    let (club, who) = demo_of("kite", |p| p.telling.pages = Pages::Parts);
    let told = story(&club, 0, who);
    let board = derive(&club, &club.sessions[0], who);
    assert_eq!(compare(&of_story(&told), &of_board(&board)), []);
    let parts = told
        .pages
        .iter()
        .filter(|p| p.kind == PageKind::Part)
        .count();
    let runs = board.steps.chunk_by(|a, b| a.part == b.part).count();
    assert_eq!(parts, runs);
    assert!(parts < board.steps.len());
}

/// A page of a story with one sentence in other words, one hidden, one added at the top.
fn rewritten(page: &StoryPage) -> PageWords {
    let text = "I tell it myself.".to_owned();
    let was = page.lines[0].told.clone().unwrap();
    let added = LineRef::Added(1);
    PageWords {
        texts: [(page.lines[0].at, Rewritten { text, was })].into(),
        hidden: [page.lines[1].at].into(),
        added: [(1, "Grandpa may watch.".into())].into(),
        order: vec![added, page.lines[0].at],
    }
}

#[test]
fn what_a_person_wrote_stays_when_the_timetable_changes_and_goes_back_in_one_step() {
    let (club, who) = demo_of("kite", |p| p.telling.pages = Pages::Steps);
    let id = club.sessions[0].id;
    let before = story(&club, 0, who);
    let page = first_step(&before).clone();
    assert!(page.lines.len() >= 3);
    let words_of = rewritten(&page);
    let edit = Edit::StoryPage(id, who, page.at, words_of.clone());
    let club = apply(&club, &edit).unwrap().0;
    let check = |club: &Club| {
        let told = story(club, 0, who);
        let now = told.page(page.at).unwrap().clone();
        let mut wanted = vec!["Grandpa may watch.", "I tell it myself."];
        wanted.extend(page.lines[2..].iter().map(|l| l.text.as_str()));
        assert_eq!(words(&now), wanted);
        assert!(now.lines[0].is_rewritten() && now.lines[1].is_rewritten());
        assert!(!now.lines[2].is_rewritten() && now.is_rewritten());
        assert_eq!(now.hidden.len(), 1);
        assert!(!now.lines[1].stale);
    };
    check(&club);
    // Another row before it, and the step itself moved.
    let activity = club.activities[5].id;
    let insert = Edit::Timetable(id, TimetableEdit::Insert(activity, 0));
    let moved = apply(&club, &insert).unwrap().0;
    check(&moved);
    let PageRef::Step(StepRef::Slot(slot)) = page.at else {
        panic!("{:?}", page.at);
    };
    let end = moved.sessions[0].timetable.len() - 1;
    let moved = apply(&moved, &Edit::Timetable(id, TimetableEdit::Move(slot, end)))
        .unwrap()
        .0;
    check(&moved);
    // One step back: the page, and then the whole story.
    let back = Edit::StoryPage(id, who, page.at, PageWords::default());
    let told = story(&apply(&moved, &back).unwrap().0, 0, who);
    assert_eq!(told.page(page.at).unwrap().lines, page.lines);
    assert!(!told.is_rewritten());
    let told = apply(&club, &Edit::StoryAsTold(id, who)).unwrap().0;
    assert_eq!(story(&told, 0, who), before);
}

#[test]
fn what_no_longer_fits_the_plan_is_told() {
    let (club, who) = demo_of("kite", |p| p.telling.pages = Pages::Steps);
    let id = club.sessions[0].id;
    let told = story(&club, 0, who);
    let title = told.page(PageRef::Title).unwrap();
    let start = LineRef::Told(About::Start, 0);
    let was = title
        .lines
        .iter()
        .find(|l| l.at == start)
        .unwrap()
        .text
        .clone();
    let text = "We begin at the landing at ten, and then comes Kayak.".to_owned();
    let mut page = PageWords::default();
    page.texts.insert(start, Rewritten { text, was });
    let mut club = apply(&club, &Edit::StoryPage(id, who, PageRef::Title, page))
        .unwrap()
        .0;
    let found = |club: &Club| {
        let board = derive(club, &club.sessions[0], who);
        look(club, &story(club, 0, who), &board)
    };
    assert_eq!(found(&club), []);
    // The place changes: what was written by hand is of before.
    Arc::make_mut(&mut club.sessions[0]).place = "the hall".into();
    let since = Mismatch::ChangedSince(PageRef::Title, start);
    assert_eq!(found(&club), std::slice::from_ref(&since));
    // An activity of the club that is not on the board.
    let mut kayak = (*club.activities[0]).clone();
    kayak.id = daystrand::model::ids::ActivityId(9_999);
    kayak.label = "Kayak".into();
    club.activities.push(kayak.into());
    let not_on = Mismatch::NotOnBoard(PageRef::Title, start, "Kayak".into());
    assert_eq!(found(&club), [since, not_on]);
}

/// Common practice for a story beside a strip: the same things in the same order, words and pictures
/// ("sand, water, circle" against "circle, sand, water" is the same set in another order).
#[test]
fn a_story_is_compared_with_its_board() {
    let one = |n: u32, label: &str| Shown {
        step: StepRef::Slot(daystrand::model::ids::SlotId(n)),
        label: label.into(),
        symbol: SymbolId::new(label),
        page: None,
    };
    let (circle, sand, water) = (one(1, "circle"), one(2, "sand"), one(3, "water"));
    let board = [circle.clone(), sand.clone(), water.clone()];
    let at = |s: &Shown| s.step;
    let same = [circle.clone(), sand.clone(), water.clone()];
    assert_eq!(compare(&same, &board), []);
    let turned = [sand.clone(), water.clone(), circle.clone()];
    assert_eq!(compare(&turned, &board), [Mismatch::Order(at(&circle))]);
    let missing = [circle.clone(), water.clone()];
    assert_eq!(compare(&missing, &board), [Mismatch::Missing(at(&sand))]);
    let extra = [circle.clone(), sand.clone(), water.clone(), one(4, "boat")];
    assert_eq!(compare(&extra, &board), [Mismatch::Extra(extra[3].step)]);
    let worded = [
        Shown {
            label: "ring".into(),
            ..circle.clone()
        },
        sand.clone(),
        water.clone(),
    ];
    assert_eq!(compare(&worded, &board), [Mismatch::Words(at(&circle))]);
    let drawn = [
        circle,
        Shown {
            symbol: SymbolId::new("dig"),
            ..sand.clone()
        },
        water,
    ];
    assert_eq!(compare(&drawn, &board), [Mismatch::Picture(at(&sand))]);
}

#[test]
fn a_second_language_hangs_on_the_sentence() {
    let (mut club, who) = demo_of("kite", |p| p.telling.pages = Pages::Steps);
    let told = story(&club, 0, who);
    let line = &first_step(&told).lines[0];
    let at = club.participants.iter().position(|p| p.id == who).unwrap();
    let p = Arc::make_mut(&mut club.participants[at]);
    let mut second = Second {
        language: "ar".into(),
        ..Second::default()
    };
    second.set(&line.text, "مرحبا بالمجموعة.");
    second.checked_by = "Aunt Rana".into();
    p.telling.second = Some(second.clone());
    let now = story(&club, 0, who);
    assert_eq!(
        first_step(&now).lines[0].second.as_deref(),
        Some("مرحبا بالمجموعة.")
    );
    assert_eq!(now.second.as_ref().unwrap().checked_by, "Aunt Rana");
    let all = now.sentences().count() + now.pages.len();
    assert_eq!(now.second.unwrap().missing, all - 1);
    // Another sentence has none, and whoever read it through has not read a new one.
    second.set("Another.", "أخرى.");
    assert!(second.is_unchecked());
    second.checked_by = "Aunt Rana".into();
    second.set("Another.", " أخرى. ");
    assert!(!second.is_unchecked(), "the same words were read");
    let p = Arc::make_mut(&mut club.participants[at]);
    p.voice = Voice::Name;
    assert_eq!(first_step(&story(&club, 0, who)).lines[0].second, None);
}

#[test]
fn who_is_gone_is_beside_nobody() {
    let (club, who) = demo_of("kite", |_| {});
    let (id, helper) = (club.sessions[0].id, club.helpers[0].id);
    let beside = |c: &Club| c.sessions[0].beside.get(&who).copied();
    let club = apply(&club, &Edit::Beside(id, who, Some(helper)))
        .unwrap()
        .0;
    assert_eq!(beside(&club), Some(helper));
    assert_eq!(
        beside(&apply(&club, &Edit::RemoveHelper(helper)).unwrap().0),
        None
    );
    let gone = Edit::Beside(id, who, Some(HelperId(77_777)));
    assert!(apply(&club, &gone).is_err());
    let gone = Edit::StoryAsTold(SessionId(77_777), who);
    assert!(apply(&club, &gone).is_err());
}

#[test]
fn a_choice_and_an_adult_have_their_words() {
    let (mut club, who) = demo_of("fish", |p| {
        p.telling.pages = Pages::Steps;
        p.telling.depth = Depth::Full;
        p.figure.age = Age::Adult;
        p.voice = Voice::I;
        p.telling.collects = String::new();
    });
    let option = |symbol: &str, label: &str| Content {
        activity: None,
        symbol: SymbolId::new(symbol),
        label: label.into(),
    };
    let session = Arc::make_mut(&mut club.sessions[0]);
    session.hand.clear();
    let row = &mut session.timetable[4];
    row.options = vec![option("dig", "Dig"), option("ball", "Ball")];
    let at = PageRef::Step(StepRef::Slot(row.id));
    let told = story(&club, 0, who);
    assert_eq!(
        told.page(at).unwrap().lines[0].text,
        "I can choose Dig or Ball."
    );
    let ending = words(told.page(PageRef::Ending).unwrap()).join(" ");
    assert!(
        ending.contains("Someone I know meets me at the end."),
        "{ending}"
    );
    assert!(!told.sentences().any(|s| s.contains("grown-up")));
    assert!(
        told.sentences()
            .any(|s| s.starts_with("It usually takes about"))
    );
}
