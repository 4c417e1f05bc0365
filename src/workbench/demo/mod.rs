//! The demo club: an invented paddle and play club at a lagoon, with three sessions, eight
//! participants and the hand changes of one evening. Nobody in it exists. Here: the club and its
//! sessions; `activities` says what is done there, `people` what is known about each participant,
//! `water` who goes into the water with whom.

mod activities;
mod hands;
mod people;
mod pictures;
mod second;
mod tables;
mod water;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use crate::model::club::{Activity, Club, Paper, Part, Rules};
use crate::model::conditions::{Condition, Known};
use crate::model::craft::{Craft, TileShape};
use crate::model::hand::Content;
use crate::model::ids::{
    ActivityId, HelperId, PartId, ParticipantId, SessionId, SlotId, SongId, StepRef, SymbolId,
};
use crate::model::language::Language;
use crate::model::manner::Manner;
use crate::model::people::{Helper, Participant, Role};
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
use hands::{boat_morning, shore_morning};
use tables::{
    HELPERS, NOT_WHEN, PARTICIPANTS, PARTS, PLACE, PLACES, ParticipantRow, SESSIONS, SessionRow,
};

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
    pictures::add(&mut next, &mut club);
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
        pictures: Vec::new(),
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
