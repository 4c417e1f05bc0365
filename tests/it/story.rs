//! Stories: voices in data cases, and what every story says.

mod bank;
mod spoken;

use std::sync::Arc;

use daystrand::model::club::{Activity, Club, Part, Rules};
use daystrand::model::hand::{Content, HandChanges};
use daystrand::model::ids::{ActivityId, OwnId, PartId, SlotId, StepRef, SymbolId};
use daystrand::model::people::{Age, Participant, Voice};
use daystrand::model::telling::{Pages, Telling};
use daystrand::story::voice::Speaker;
use daystrand::story::{PageKind, Story, tell_for, when};

use crate::fixture;

/// The demo club, each story told as usual: a page a step, in short sentences, nothing by hand.
fn plain() -> Club {
    let mut club = fixture::club();
    for p in &mut club.participants {
        *Arc::make_mut(p).telling = Telling {
            pages: Pages::Steps,
            ..Telling::default()
        };
    }
    fixture::session_mut(&mut club).stories.clear();
    club
}

/// Template, with I, with you, with the name Noor.
const VOICES: [[&str; 4]; 31] = [
    [
        "{I} {walk} to the water with {my} helper.",
        "I walk to the water with my helper.",
        "You walk to the water with your helper.",
        "Noor walks to the water with their helper.",
    ],
    [
        "{My} helper is there.",
        "My helper is there.",
        "Your helper is there.",
        "Noor’s helper is there.",
    ],
    [
        "{my} group waits for {me}.",
        "My group waits for me.",
        "Your group waits for you.",
        "Noor’s group waits for them.",
    ],
    [
        "The trainer waits for {me}.",
        "The trainer waits for me.",
        "The trainer waits for you.",
        "The trainer waits for Noor.",
    ],
    [
        "{I} {can} try to jump.",
        "I can try to jump.",
        "You can try to jump.",
        "Noor can try to jump.",
    ],
    [
        "{I} {can try} to jump.",
        "I can try to jump.",
        "You can try to jump.",
        "Noor can try to jump.",
    ],
    [
        "{I walk} and {I} {may} stop.",
        "I walk and I may stop.",
        "You walk and you may stop.",
        "Noor walks and Noor may stop.",
    ],
    [
        "{I} {be} in the boat.",
        "I am in the boat.",
        "You are in the boat.",
        "Noor is in the boat.",
    ],
    [
        "{I} {am} in the boat.",
        "I am in the boat.",
        "You are in the boat.",
        "Noor is in the boat.",
    ],
    [
        "{I} {was} there.",
        "I was there.",
        "You were there.",
        "Noor was there.",
    ],
    [
        "{I} {have} a mat.",
        "I have a mat.",
        "You have a mat.",
        "Noor has a mat.",
    ],
    ["{I} {do} it.", "I do it.", "You do it.", "Noor does it."],
    ["{I} {go} in.", "I go in.", "You go in.", "Noor goes in."],
    [
        "{I} {carry} it.",
        "I carry it.",
        "You carry it.",
        "Noor carries it.",
    ],
    ["{I} {play}.", "I play.", "You play.", "Noor plays."],
    ["{I} {watch}.", "I watch.", "You watch.", "Noor watches."],
    [
        "{I} {splash}.",
        "I splash.",
        "You splash.",
        "Noor splashes.",
    ],
    [
        "{I} {pass} it.",
        "I pass it.",
        "You pass it.",
        "Noor passes it.",
    ],
    [
        "{I} {mix} it.",
        "I mix it.",
        "You mix it.",
        "Noor mixes it.",
    ],
    [
        "{I} {put on} a hat.",
        "I put on a hat.",
        "You put on a hat.",
        "Noor puts on a hat.",
    ],
    [
        "{I} {need} it.",
        "I need it.",
        "You need it.",
        "Noor needs it.",
    ],
    ["{I} {sing}.", "I sing.", "You sing.", "Noor sings."],
    ["{I} {jumped}.", "I jumped.", "You jumped.", "Noor jumped."],
    [
        "{I} {dry} {myself}.",
        "I dry myself.",
        "You dry yourself.",
        "Noor dries themselves.",
    ],
    [
        "It is {mine}.",
        "It is mine.",
        "It is yours.",
        "It is Noor’s.",
    ],
    ["{I'm} here.", "I’m here.", "You’re here.", "Noor is here."],
    [
        "It stops. {my} turn.",
        "It stops. My turn.",
        "It stops. Your turn.",
        "It stops. Noor’s turn.",
    ],
    [
        "{I} {wait}. Then {my} helper waves to {me}.",
        "I wait. Then my helper waves to me.",
        "You wait. Then your helper waves to you.",
        "Noor waits. Then Noor’s helper waves to them.",
    ],
    [
        "sand is here",
        "sand is here",
        "sand is here",
        "sand is here",
    ],
    [
        "an open { brace",
        "an open { brace",
        "an open { brace",
        "an open { brace",
    ],
    [
        "empty {} braces",
        "empty {} braces",
        "empty {} braces",
        "empty {} braces",
    ],
];

#[test]
fn words_in_braces_follow_the_voice() {
    for [template, i, you, name] in VOICES {
        let said = |v| Speaker::new(v, "Noor").say(template);
        assert_eq!(said(Voice::I), i, "{template}");
        assert_eq!(said(Voice::You), you, "{template}");
        assert_eq!(said(Voice::Name), name, "{template}");
    }
}

#[test]
fn names_are_never_changed() {
    let said = |name| Speaker::new(Voice::Name, name).say("{my} hat. {I} {like} {my} hat.");
    assert_eq!(said("Ines"), "Ines’s hat. Ines likes their hat.");
    assert_eq!(said("de Wit"), "de Wit’s hat. de Wit likes their hat.");
    assert_eq!(said("{I}"), "{I}’s hat. {I} likes their hat.");
    assert_eq!(
        said("  "),
        "My hat. I like my hat.",
        "no name: the voice is I"
    );
}

#[test]
fn words_between_bars_are_for_a_child_a_teenager_and_an_adult() {
    let said = |voice, age, t| Speaker::new(voice, "Noor").with_style(age).say(t);
    let two = "{I} {play|spend time} with {my} {grown-up|family}.";
    let name = [
        "Noor plays with their grown-up.",
        "Noor spends time with their family.",
        "Noor spends time with their family.",
    ];
    for (age, expected) in Age::ALL.into_iter().zip(name) {
        assert_eq!(said(Voice::Name, age, two), expected);
    }
    assert_eq!(said(Voice::I, Age::Child, two), "I play with my grown-up.");
    let three = "{I} {can} {run|jog|walk}. {toys | things | gear} are there.";
    let you = [
        "You can run. Toys are there.",
        "You can jog. Things are there.",
        "You can walk. Gear are there.",
    ];
    for (age, expected) in Age::ALL.into_iter().zip(you) {
        assert_eq!(said(Voice::You, age, three), expected);
    }
    let plain = Speaker::new(Voice::I, "").say("{I} {sit} with {my} {grown-up|family}.");
    assert_eq!(
        plain, "I sit with my grown-up.",
        "a child's words come first"
    );
}

#[test]
fn a_number_stays_with_what_it_counts() {
    // A line may break before "am" or "%" by UAX #14; a no-break space keeps them together.
    let say = |t| Speaker::new(Voice::I, "").say(t);
    assert_eq!(say("At 7:30 am."), "At 7:30\u{a0}am.");
    assert_eq!(say("For 5 minutes."), "For 5\u{a0}minutes.");
    assert_eq!(say("10 % of it"), "10\u{a0}% of it");
    assert_eq!(say("5 spades"), "5 spades");
    assert_eq!(say("I am here"), "I am here");
}

#[test]
fn times_and_dates_are_plain() {
    let mut s = fixture::session_of(&[]);
    assert_eq!(when::day(s.date), "Saturday 12\u{a0}June");
    assert_eq!(when::full_date(s.date), "12\u{a0}June\u{a0}2027");
    assert_eq!(when::about_end(&s, &rules()), None);
    // Eight slots of 90 minutes in all and seven moves of 3 end at 11:21 when they begin at 9:30.
    s = fixture::session_of(&[10, 10, 20, 10, 25, 5, 5, 5]);
    s.start = jiff::civil::time(9, 30, 0, 0);
    let end = when::about_end(&s, &rules()).map(|m| m.to_string());
    assert_eq!(end.as_deref(), Some("11:25"), "to the next five minutes");
    s.start = jiff::civil::time(23, 0, 0, 0);
    assert_eq!(when::about_end(&s, &rules()), None, "past midnight");
}

fn rules() -> Rules {
    Rules {
        transition_minutes: 3,
        ..Rules::default()
    }
}

fn story_of(club: &Club, who: usize) -> Story {
    tell_for(club, &club.sessions[0], &club.participants[who])
}

#[test]
fn a_story_has_the_steps_of_the_board_in_order_and_all_its_parts() {
    let club = plain();
    for (i, who) in club.participants.iter().enumerate() {
        let board = daystrand::model::board::derive(&club, &club.sessions[0], who.id);
        let story = story_of(&club, i);
        let told: Vec<_> = story.pages.iter().filter_map(|p| p.step).collect();
        let steps: Vec<_> = board.steps.iter().map(|s| s.at).collect();
        assert_eq!(told, steps);
        for step in &board.steps {
            let page = story
                .pages
                .iter()
                .find(|p| p.step == Some(step.at))
                .unwrap();
            assert_eq!((&page.heading, &page.symbol), (&step.label, &step.symbol));
        }
        let kinds: Vec<_> = story.pages.iter().map(|p| p.kind).collect();
        assert_eq!(kinds[0], PageKind::Title);
        let after: Vec<_> = kinds.iter().rev().take_while(|k| !is_step(**k)).collect();
        assert_eq!(*after[0], PageKind::Ending);
        assert_eq!(*after[1], PageKind::Ask);
        assert!(after.contains(&&PageKind::Change));
        for page in &story.pages {
            assert!(page.sentences().next().is_some());
            for s in page.sentences() {
                assert!(s.ends_with(['.', '!', '?']), "{s}");
                assert!(!s.contains(['{', '}']), "{s}");
            }
        }
    }
}

fn is_step(kind: PageKind) -> bool {
    matches!(kind, PageKind::Step | PageKind::NotToday)
}

#[test]
fn what_is_not_today_is_said_with_what_can_be_done_instead() {
    let mut club = plain();
    let swim = fixture::activity_with_dry(&club);
    let slot = club.sessions[0]
        .timetable
        .iter()
        .find(|s| s.activity == swim)
        .unwrap()
        .id;
    let who = club.participants[0].id;
    let hand = HandChanges {
        not_today: [(StepRef::Slot(slot), None)].into(),
        ..HandChanges::default()
    };
    fixture::session_mut(&mut club).hand.insert(who, hand);
    let story = story_of(&club, 0);
    let page = story
        .pages
        .iter()
        .find(|p| p.step == Some(StepRef::Slot(slot)))
        .unwrap();
    let a = club.activity(swim).unwrap();
    let dry = club.activity(a.dry_replacement.unwrap()).unwrap();
    assert_eq!(page.kind, PageKind::NotToday);
    assert_eq!(page.lines[0].text, format!("{} is not today.", a.label));
    assert_eq!(
        page.lines[1].text,
        format!("The tile {} may come instead.", dry.label)
    );
}

#[test]
fn a_swap_is_named() {
    let mut club = plain();
    let who = club.participants[0].id;
    let slot = club.sessions[0].timetable[1].id;
    let label = club
        .activity(club.sessions[0].timetable[1].activity)
        .unwrap()
        .label
        .clone();
    let hand = HandChanges {
        replaced: [(StepRef::Slot(slot), content("quiet_place", "Quiet tent"))].into(),
        ..HandChanges::default()
    };
    fixture::session_mut(&mut club).hand.insert(who, hand);
    let story = story_of(&club, 0);
    let page = story
        .pages
        .iter()
        .find(|p| p.heading == "Quiet tent")
        .unwrap();
    assert_eq!(
        page.lines[0].text,
        format!("Today Quiet tent comes instead of {label}.")
    );
    assert_eq!(page.lines[1].text, "The tile shows Quiet tent.");
}

fn content(symbol: &str, label: &str) -> Content {
    Content {
        activity: None,
        symbol: SymbolId::new(symbol),
        label: label.to_owned(),
    }
}

/// Words that a story of ours does not use: orders, absolutes, promises, refusals. Guidance on
/// social narratives asks for possible, positive, describing sentences.
const AVOIDED: [&str; 14] = [
    "must", "don’t", "don't", "do not", "never", "always", "should", "safe", "have to", "will",
    "cannot", "can’t", "good boy", "be brave",
];

/// Pictures under their usual words, which have sentences of ours, and one that has none.
pub const PICTURES: [(&str, &str); 70] = [
    ("arrive", "Arrive"),
    ("say_hello", "Hello"),
    ("welcome_circle", "Circle"),
    ("roll_call", "Who is here"),
    ("bags_here", "Bags here"),
    ("shoes_off", "Shoes off"),
    ("swim_top_on", "Swim top on"),
    ("sunscreen", "Sunscreen"),
    ("hat_on", "Hat on"),
    ("look_at_plan", "Look at my plan"),
    ("warm_up", "Warm up"),
    ("stretch_up", "Stretch"),
    ("jump", "Jump"),
    ("run", "Run"),
    ("copy_me", "Copy me"),
    ("sand_time", "Sand time"),
    ("dig", "Dig"),
    ("build", "Build"),
    ("fill_bucket", "Fill"),
    ("pour", "Pour"),
    ("draw_in_sand", "Draw"),
    ("find_shells", "Find shells"),
    ("carry_water", "Carry water"),
    ("get_the_flag", "Get the flag"),
    ("fill_it_in", "Fill it in"),
    ("water_time", "Water time"),
    ("walk_to_water", "Walk to the water"),
    ("feet_in", "Feet in"),
    ("sit_at_edge", "Sit at the edge"),
    ("splash", "Splash"),
    ("jump_wave", "Jump the wave"),
    ("hold_hands", "Hold hands"),
    ("float", "Float"),
    ("bubbles", "Bubbles"),
    ("ride_board", "Ride the board"),
    ("watch_waves", "Watch the waves"),
    ("out_of_water", "Out of the water"),
    ("favourite", "My best bit"),
    ("rinse", "Rinse"),
    ("dry", "Dry"),
    ("pack_up", "Pack up"),
    ("bye", "Bye"),
    ("go_home", "Home"),
    ("toilet", "Toilet"),
    ("wash_hands", "Wash hands"),
    ("drink", "Drink"),
    ("snack", "Snack"),
    ("get_changed", "Get changed"),
    ("shade", "Shade"),
    ("shoes_on", "Shoes on"),
    ("quiet_place", "Quiet place"),
    ("ear_defenders", "Ear muffs"),
    ("sunglasses", "Sunglasses"),
    ("squeeze", "Squeeze"),
    ("break", "Break"),
    ("breathe", "Breathe"),
    ("water_shoes", "Water shoes"),
    ("wait", "Wait"),
    ("choose", "Choose"),
    ("stay_together", "Stay together"),
    ("stop_at_line", "Stop at the line"),
    ("life_jacket", "Life jacket"),
    ("canoe", "Boat"),
    ("paddle", "Paddle"),
    ("sail_boat", "Sail boat"),
    ("pool", "Pool"),
    ("pool_steps", "Steps in"),
    ("gym_mat", "Mat"),
    ("bounce", "Bounce"),
    ("no_such_picture", "Something new"),
];

#[test]
fn sentences_of_our_own_never_order_or_promise() {
    for label in PICTURES {
        let club = one_activity(label.0, label.1);
        for voice in Voice::ALL {
            let mut who: Participant = (*club.participants[0]).clone();
            who.voice = voice;
            let story = tell_for(&club, &club.sessions[0], &who);
            for sentence in story.sentences() {
                let lower = format!(" {} ", sentence.to_lowercase());
                let words = lower.replace(['.', ',', '!', '?'], " ");
                for avoided in AVOIDED {
                    assert!(!words.contains(&format!(" {avoided} ")), "{sentence}");
                }
                // Easy-read guidance of the UK government: no more than ten to fifteen words.
                assert!(sentence.split_whitespace().count() <= 15, "{sentence}");
            }
        }
    }
}

pub fn one_activity(symbol: &str, label: &str) -> Club {
    let mut club = plain();
    club.parts = vec![Part {
        id: PartId(1),
        name: "Morning".into(),
    }];
    club.activities = vec![
        Activity {
            id: ActivityId(1),
            label: label.to_owned(),
            symbol: SymbolId::new(symbol),
            part: PartId(1),
            minutes: 10,
            in_water: false,
            depth_cm: None,
            dry_replacement: None,
            sentences: Vec::new(),
            around: Default::default(),
            equipment: Vec::new(),
            place: String::new(),
            thing: String::new(),
            not_when: Default::default(),
        }
        .into(),
    ];
    let session = fixture::session_mut(&mut club);
    session.hand.clear();
    session.timetable = vec![daystrand::model::session::Slot {
        id: SlotId(1),
        activity: ActivityId(1),
        part: PartId(1),
        minutes: 10,
        leads: Default::default(),
        options: vec![],
        off: None,
    }];
    club
}

#[test]
fn an_activity_without_sentences_gets_ours_only_under_its_usual_words() {
    let story = |label| {
        let club = one_activity("sunscreen", label);
        story_of(&club, 0).pages[1]
            .sentences()
            .map(str::to_owned)
            .collect::<Vec<_>>()
    };
    assert_eq!(story("Sunscreen")[0], "Sunscreen goes on my skin.");
    assert_eq!(story("sunscreen").len(), 3);
    assert_eq!(
        story("Face paint"),
        ["The tile shows Face paint.", "I can try it with my helper."]
    );
    assert_eq!(story("")[0], "The tile shows This.");
}

#[test]
fn odd_clubs_still_have_a_story() {
    let mut club = plain();
    let who = club.participants[0].id;
    {
        let s = fixture::session_mut(&mut club);
        s.title = String::new();
        s.place = "  ".into();
        s.timetable.clear();
        let own = (OwnId(7), content("", &"long ".repeat(400)));
        s.hand.insert(
            who,
            HandChanges {
                own: [own].into(),
                ..HandChanges::default()
            },
        );
    }
    let story = story_of(&club, 0);
    assert_eq!(story.title, "My Saturday");
    assert_eq!(story.pages[0].kind, PageKind::Title);
}
