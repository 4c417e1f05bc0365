//! The demo club: an invented paddle and play club at a lagoon, with three sessions, eight
//! participants and the hand changes of one evening. Nobody in it exists. Here: the club and its
//! sessions; `activities` says what is done there, `people` what is known about each participant,
//! `water` who goes into the water with whom.

mod activities;
mod people;
mod second;
mod water;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use jiff::civil::{Date, Time};

use crate::model::club::{Activity, Club, Paper, Part, Rules};
use crate::model::conditions::{Condition, Known};
use crate::model::craft::{Craft, TileShape};
use crate::model::hand::{Content, HandChanges, Placement};
use crate::model::ids::{
    ActivityId, HelperId, OwnId, PartId, ParticipantId, SessionId, SlotId, SongId, StepRef,
    SymbolId,
};
use crate::model::language::Language;
use crate::model::manner::Manner;
use crate::model::people::{Age, Figure, Helper, Participant, Role, Skin, Voice};
use crate::model::privacy::{Class, Guarded};
use crate::model::profile::Profile;
use crate::model::record::{Record, Used};
use crate::model::rewriting::{About, LineRef, PageRef, PageWords, Rewriting, Rewritten};
use crate::model::session::{Off, Session, Slot};
use crate::model::song::Song;
use crate::story::bank;
use crate::symbols::lexicon;
use crate::units::Length;
use activities::{ACTIVITIES, ActivityRow};

/// The parts of the day.
const PARTS: [&str; 5] = [
    "Arriving",
    "Warming up",
    "On land",
    "In the water",
    "Finishing",
];

/// A participant: name, mark, tile in mm, text in points, voice, how they are drawn, what a helper needs to know.
type ParticipantRow = (
    &'static str,
    &'static str,
    f64,
    u32,
    Voice,
    Figure,
    &'static str,
);

const fn child(skin: Skin) -> Figure {
    let age = Age::Child;
    Figure { skin, age }
}

const fn teen(skin: Skin) -> Figure {
    let age = Age::Teen;
    Figure { skin, age }
}

const PARTICIPANTS: [ParticipantRow; 8] = [
    (
        "Mila",
        "kite",
        60.0,
        36,
        Voice::I,
        child(Skin::Warm),
        "Speak in few words and wait. An answer may take ten seconds. Show the next tile before walking.",
    ),
    (
        "Tavi",
        "boat",
        75.0,
        48,
        Voice::I,
        child(Skin::Deep),
        "Takes a tile in the hand to ask for something. A flat hand means stop. Keep the change tile in reach.",
    ),
    (
        "Noor",
        "leaf",
        50.0,
        36,
        Voice::Name,
        child(Skin::Tan),
        "Drum instead of song: singing in a group is too loud. Ear muffs hang on the bag. Both hands turned over means finished.",
    ),
    (
        "Jonas",
        "fish",
        40.0,
        36,
        Voice::You,
        teen(Skin::Light),
        "Reads words and likes to turn the tiles over alone. Say how many steps are left, not how many minutes.",
    ),
    (
        "Ilka",
        "moon",
        65.0,
        60,
        Voice::I,
        child(Skin::Light),
        "Sees best close up and in the shade. Hold the board still and name the picture. Stays on land this time; shells are a favourite.",
    ),
    (
        "Sami",
        "shell",
        55.0,
        40,
        Voice::I,
        child(Skin::Deep),
        "Walks with a frame on the mat path. Ask before touching the frame. Begin each walk two minutes early.",
    ),
    (
        "Mila",
        "star",
        60.0,
        44,
        Voice::Name,
        child(Skin::Tan),
        "Sunscreen first, before anything wet or sandy; puts it on alone with the mirror. Shakes the head for no.",
    ),
    (
        "Wren",
        "feather",
        45.0,
        36,
        Voice::You,
        teen(Skin::Warm),
        "Quiet place after everything in the water. Going quiet means a break is needed. Sit beside, not opposite.",
    ),
];

const HELPERS: [(&str, &[Role]); 6] = [
    ("Asta", &[Role::Lead]),
    ("Benno", &[Role::Trainer, Role::WaterSafety]),
    ("Carmen", &[Role::WaterSafety]),
    ("Dario", &[Role::Watcher]),
    ("Edda", &[Role::FirstAid]),
    ("Farid", &[Role::Trainer, Role::WaterSafety]),
];

/// A session: title, date, start, timetable (activity by symbol, minutes).
type SessionRow = (&'static str, Date, Time, &'static [(&'static str, u32)]);

/// Under which condition an activity is not done.
const NOT_WHEN: [(&str, Known); 3] = [
    ("canoe", Known::Windy),
    ("canoe", Known::Thunder),
    ("splash", Known::Stingers),
];

/// Where activities are done.
const PLACES: [(&str, &str); 6] = [
    ("say_hello", "landing"),
    ("welcome_circle", "landing"),
    ("dig", "sand bank"),
    ("canoe", "jetty"),
    ("splash", "water's edge"),
    ("bye", "landing"),
];

const PLACE: &str = "Heron Landing, Reedwater Lagoon";

const SESSIONS: [SessionRow; 2] = [
    (
        "Boat morning",
        Date::constant(2027, 6, 12),
        Time::constant(9, 30, 0, 0),
        &[
            ("say_hello", 5),
            ("welcome_circle", 7),
            ("sunscreen", 5),
            ("song", 5),
            ("warm_up", 6),
            ("dig", 10),
            ("life_jacket", 4),
            ("walk_to_water", 3),
            ("canoe", 15),
            ("dry", 5),
            ("bye", 3),
        ],
    ),
    (
        "Shore morning",
        Date::constant(2027, 6, 19),
        Time::constant(10, 0, 0, 0),
        &[
            ("say_hello", 5),
            ("welcome_circle", 7),
            ("sunscreen", 5),
            ("copy_me", 6),
            ("find_shells", 12),
            ("feet_in", 10),
            ("splash", 8),
            ("rinse", 4),
            ("pack_up", 5),
            ("bye", 3),
        ],
    ),
];

/// The demo club, the same every time.
pub fn club() -> Club {
    let mut next = Numbers(0);
    let parts: Vec<Part> = PARTS.iter().map(|name| part(&mut next, name)).collect();
    let mut activities: Vec<Activity> = ACTIVITIES
        .iter()
        .map(|row| activity(&mut next, &parts, row))
        .collect();
    let known = by_symbol(&activities);
    for (activity, row) in activities.iter_mut().zip(&ACTIVITIES) {
        activity.dry_replacement = row.4.and_then(|symbol| known.get(symbol).copied());
    }
    let mut club = Club {
        pictures: Vec::new(),
        name: "Reedwater Paddle and Play".into(),
        rules: Rules {
            transition_minutes: 2,
            session_minutes: 90,
            paper: Paper::A4,
            seal: Length::mm(4.0),
            tile: Length::mm(60.0),
            words: Language::default(),
            craft: Craft::default(),
            care: Box::default(),
        },
        parts,
        activities: activities.into_iter().map(Arc::new).collect(),
        songs: Vec::new(),
        participants: PARTICIPANTS
            .iter()
            .map(|row| participant(&mut next, row))
            .collect(),
        helpers: HELPERS.iter().map(|row| helper(&mut next, row)).collect(),
        sessions: Vec::new(),
        stock: Vec::new(),
        next_id: 0,
    };
    people::settle(&mut next, &mut club);
    for a in club.activities.iter_mut().map(Arc::make_mut) {
        let of = |symbol: &str| a.symbol.as_str() == symbol;
        let not_when = NOT_WHEN.iter().filter(|(symbol, _)| of(symbol));
        a.not_when = not_when.map(|(_, known)| *known).collect();
        if let Some((_, place)) = PLACES.iter().find(|(symbol, _)| of(symbol)) {
            a.place = (*place).into();
        }
    }
    let mut boats = session(&mut next, &club, &SESSIONS[0]);
    let mut shore = session(&mut next, &club, &SESSIONS[1]);
    boats.hand = boat_morning(&mut next, &club, &boats);
    shore.hand = shore_morning(&mut next, &club, &shore);
    boats.records = seen(&club);
    boats.beside = beside(&club);
    boats.stories = rewritten(&club, &boats);
    shore.from = Some(boats.id);
    shore.conditions = vec![
        Condition::Known(Known::Windy),
        Condition::Words("The path by the reeds is closed".into()),
    ];
    call_off(&club, &mut shore, "splash");
    shore.away = marked(&club, "fish").into_iter().collect();
    shore.helpers_away = club.helpers.last().map(|h| h.id).into_iter().collect();
    club.sessions = vec![Arc::new(boats), Arc::new(shore)];
    let chant = chant(&mut next, &club);
    club.songs.push(Arc::new(chant));
    water::add(&mut next, &mut club);
    club.next_id = next.0 + 1;
    club
}

/// Who is beside whom on the boat morning, by mark and name.
fn beside(club: &Club) -> BTreeMap<ParticipantId, HelperId> {
    const BESIDE: [(&str, &str); 4] = [
        ("kite", "Benno"),
        ("boat", "Edda"),
        ("shell", "Farid"),
        ("star", "Carmen"),
    ];
    let one = |(mark, name): &(&str, &str)| {
        let helper = club.helpers.iter().find(|h| h.name == *name)?;
        Some((marked(club, mark)?, helper.id))
    };
    BESIDE.iter().filter_map(one).collect()
}

/// What a mother wrote in one story.
fn rewritten(club: &Club, boats: &Session) -> BTreeMap<ParticipantId, Rewriting> {
    let boat = with_symbol(club, "canoe").map(|a| a.id);
    let slot = boats.timetable.iter().find(|s| Some(s.activity) == boat);
    let (Some(slot), Some(who)) = (slot, marked(club, "kite")) else {
        return BTreeMap::new();
    };
    let first = LineRef::Told(About::Happens, 0);
    let words = Rewritten {
        text: "I sit in the red boat with Benno.".into(),
        was: "I sit in the boat with my helper.".into(),
    };
    let page = PageWords {
        texts: [(first, words)].into(),
        added: [(1, "Mum can wave from the landing.".into())].into(),
        ..PageWords::default()
    };
    let pages = [(PageRef::Step(StepRef::Slot(slot.id)), page)].into();
    [(who, Rewriting { pages })].into()
}

/// What a new club begins with: the demo's parts of the day and activities, without what is said
/// about its lagoon, and nobody.
pub fn starter() -> Club {
    let demo = club();
    let plain = |a: &Arc<Activity>| {
        let known = bank::phrases(&a.symbol, &a.label).is_some();
        let mut a = Activity::clone(a);
        if known {
            a.sentences.clear();
        }
        a.place.clear();
        Arc::new(a)
    };
    Club {
        activities: demo.activities.iter().map(plain).collect(),
        name: String::new(),
        rules: Rules::default(),
        songs: Vec::new(),
        participants: Vec::new(),
        helpers: Vec::new(),
        sessions: Vec::new(),
        ..demo
    }
}

/// Gives each number once.
struct Numbers(u32);

impl Numbers {
    fn next(&mut self) -> u32 {
        self.0 += 1;
        self.0
    }
}

fn part(next: &mut Numbers, name: &str) -> Part {
    Part {
        id: PartId(next.next()),
        name: name.into(),
    }
}

fn activity(next: &mut Numbers, parts: &[Part], row: &ActivityRow) -> Activity {
    let &(symbol, label, part, minutes, dry, sentences, equipment) = row;
    Activity {
        id: ActivityId(next.next()),
        label: label.into(),
        symbol: SymbolId::new(symbol),
        part: parts[part].id,
        minutes,
        in_water: dry.is_some(),
        depth_cm: None,
        dry_replacement: None,
        sentences: sentences.iter().map(|s| (*s).into()).collect(),
        around: Box::default(),
        equipment: equipment.iter().map(|s| (*s).into()).collect(),
        place: String::new(),
        thing: String::new(),
        not_when: BTreeSet::new(),
    }
}

fn by_symbol(activities: &[Activity]) -> BTreeMap<String, ActivityId> {
    let named = |a: &Activity| (a.symbol.as_str().to_owned(), a.id);
    activities.iter().map(named).collect()
}

fn participant(next: &mut Numbers, row: &ParticipantRow) -> Arc<Participant> {
    let &(name, mark, tile, text_pt, voice, figure, note) = row;
    Arc::new(Participant {
        id: ParticipantId(next.next()),
        name: name.into(),
        mark: SymbolId::new(mark),
        tile: Length::mm(tile),
        shape: TileShape::default(),
        shared_tiles: false,
        text_pt,
        telling: Box::default(),
        voice,
        figure,
        manner: Manner::default(),
        standing: Box::default(),
        profile: Profile::default(),
        helper_note: Guarded::new(Class::Helper, note.into()),
    })
}

fn helper(next: &mut Numbers, (name, roles): &(&str, &[Role])) -> Arc<Helper> {
    Arc::new(Helper {
        id: HelperId(next.next()),
        roles: roles.iter().copied().collect(),
        ..Helper::new(name)
    })
}

fn session(next: &mut Numbers, club: &Club, row: &SessionRow) -> Session {
    let &(title, date, start, timetable) = row;
    let id = SessionId(next.next());
    let slots = timetable.iter().filter_map(|&(symbol, minutes)| {
        let activity = with_symbol(club, symbol)?;
        Some(Slot {
            id: SlotId(next.next()),
            activity: activity.id,
            part: activity.part,
            minutes,
            leads: BTreeSet::new(),
            options: Vec::new(),
            off: None,
        })
    });
    Session {
        id,
        title: title.into(),
        date,
        start,
        place: PLACE.into(),
        timetable: slots.collect(),
        turns: None,
        today: Box::default(),
        away: BTreeSet::new(),
        helpers_away: BTreeSet::new(),
        stories: BTreeMap::new(),
        beside: BTreeMap::new(),
        hand: BTreeMap::new(),
        conditions: Vec::new(),
        records: BTreeMap::new(),
        from: None,
    }
}

/// The evening before the boats: a swap, an own step after the water, not today with something
/// on land, other words, a step moved.
fn boat_morning(
    next: &mut Numbers,
    club: &Club,
    session: &Session,
) -> BTreeMap<ParticipantId, HandChanges> {
    let mut hands = Hands::new(club, session);
    hands.choose("kite", "dig", &["dig", "find_shells", "something_else"]);
    hands.not_today("moon", "canoe", "find_shells");
    hands.own_after(next, "star", "dig", "drink");
    hands.relabel("boat", "canoe", "Red boat");
    hands.move_after("star", "sunscreen", "say_hello");
    hands.all
}

/// The evening before the shore: wind is expected, some stay dry.
fn shore_morning(
    next: &mut Numbers,
    club: &Club,
    session: &Session,
) -> BTreeMap<ParticipantId, HandChanges> {
    let mut hands = Hands::new(club, session);
    hands.own_after(next, "feather", "rinse", "fidget");
    hands.swap("moon", "splash", "ball");
    hands.move_after("star", "sunscreen", "say_hello");
    hands.all
}

/// Hand changes in the making, said with marks and symbols.
struct Hands<'a> {
    club: &'a Club,
    session: &'a Session,
    all: BTreeMap<ParticipantId, HandChanges>,
}

impl<'a> Hands<'a> {
    fn new(club: &'a Club, session: &'a Session) -> Self {
        Self {
            club,
            session,
            all: BTreeMap::new(),
        }
    }

    /// Changes one board at the slot that shows a symbol.
    fn at(&mut self, mark: &str, symbol: &str, change: impl FnOnce(&mut HandChanges, SlotId)) {
        let slot = self.slot(symbol);
        let who = marked(self.club, mark);
        if let (Some(slot), Some(who)) = (slot, who) {
            change(self.all.entry(who).or_default(), slot);
        }
    }

    fn slot(&self, symbol: &str) -> Option<SlotId> {
        let activity = with_symbol(self.club, symbol)?.id;
        let mut slots = self.session.timetable.iter();
        slots.find(|s| s.activity == activity).map(|s| s.id)
    }

    fn swap(&mut self, mark: &str, from: &str, to: &str) {
        let content = content(self.club, to);
        self.at(mark, from, |hand, slot| {
            hand.replaced.insert(StepRef::Slot(slot), content);
        });
    }

    fn not_today(&mut self, mark: &str, symbol: &str, instead: &str) {
        let instead = content(self.club, instead);
        self.at(mark, symbol, |hand, slot| {
            hand.not_today.insert(StepRef::Slot(slot), Some(instead));
        });
    }

    fn choose(&mut self, mark: &str, symbol: &str, options: &[&str]) {
        let options = options.iter().map(|s| content(self.club, s)).collect();
        self.at(mark, symbol, |hand, slot| {
            hand.choices.insert(StepRef::Slot(slot), options);
        });
    }

    fn relabel(&mut self, mark: &str, symbol: &str, words: &str) {
        self.at(mark, symbol, |hand, slot| {
            hand.labels.insert(StepRef::Slot(slot), words.into());
        });
    }

    fn own_after(&mut self, next: &mut Numbers, mark: &str, after: &str, symbol: &str) {
        let content = content(self.club, symbol);
        let own = OwnId(next.next());
        let before = self.up_to(after);
        self.at(mark, after, |hand, _| {
            hand.own.insert(own, content);
            hand.placed.push(Placement {
                step: StepRef::Own(own),
                after: before,
            });
        });
    }

    fn move_after(&mut self, mark: &str, symbol: &str, after: &str) {
        let before = self.up_to(after);
        self.at(mark, symbol, |hand, slot| {
            hand.placed.push(Placement {
                step: StepRef::Slot(slot),
                after: before,
            });
        });
    }

    /// The timetable's steps from the one that shows a symbol back to the first.
    fn up_to(&self, symbol: &str) -> Vec<StepRef> {
        let last = self.slot(symbol);
        let all = self.session.timetable.iter().map(|s| s.id);
        all.rev()
            .skip_while(|id| Some(*id) != last)
            .map(StepRef::Slot)
            .collect()
    }
}

/// An activity by its symbol, or else the symbol under its usual words.
fn content(club: &Club, symbol: &str) -> Content {
    lexicon::content(club, &SymbolId::new(symbol))
}

/// What the group says together, in words that can be done while they are said.
const CHANT: &str = "\
Hello, hello, we are here.
Hello, hello, the reeds are near.
Clap or tap and take it slow.
One, two, three, and now we go.

Paddle left and paddle right.
Hold the paddle, hold it tight.
Up it comes and down it goes.
Drops of water on my toes.

Hello, hello, now it is done.
Towels and shoes for everyone.
Wave a hand or show a card.
Goodbye, goodbye.";

fn chant(next: &mut Numbers, club: &Club) -> Song {
    Song {
        id: SongId(next.next()),
        title: "Hello at the reeds".into(),
        words: CHANT.into(),
        activity: with_symbol(club, "song").map(|a| a.id),
    }
}

/// What was seen on the boat morning.
fn seen(club: &Club) -> BTreeMap<ParticipantId, Guarded<Record>> {
    let record = |mark: &str, used, favourite: &str, next_time: &str| {
        let record = Record {
            used: Some(used),
            favourite: with_symbol(club, favourite).map(|a| a.id),
            next_time: next_time.into(),
            ..Record::default()
        };
        Some((
            marked(club, mark)?,
            Guarded::new(Class::Coordinator, record),
        ))
    };
    let kite = record(
        "kite",
        Used::Pointing,
        "canoe",
        "Hold the next tile closer.",
    );
    let feather = record(
        "feather",
        Used::Alone,
        "canoe",
        "The tent first, then the towel.",
    );
    [kite, feather].into_iter().flatten().collect()
}

/// The row with this symbol is called off for everyone, its dry replacement comes instead.
fn call_off(club: &Club, session: &mut Session, symbol: &str) {
    let Some(activity) = with_symbol(club, symbol) else {
        return;
    };
    for slot in session
        .timetable
        .iter_mut()
        .filter(|s| s.activity == activity.id)
    {
        slot.off = Some(Off {
            instead: activity.dry_replacement,
        });
    }
}

fn with_symbol<'a>(club: &'a Club, symbol: &str) -> Option<&'a Arc<Activity>> {
    club.activities.iter().find(|a| a.symbol.as_str() == symbol)
}

fn marked(club: &Club, mark: &str) -> Option<ParticipantId> {
    let mut all = club.participants.iter();
    all.find(|p| p.mark.as_str() == mark).map(|p| p.id)
}
