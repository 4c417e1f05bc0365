//! Random clubs: a starting club, and edits picked from what is in the club at that moment.

use std::collections::{BTreeMap, BTreeSet};

use daystrand::model::board::derive;
use daystrand::model::club::{Activity, Around, Club, Paper, Rules};
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::craft::{Craft, Cutting, Flip, Half, Sorting, TileShape, Work};
use daystrand::model::edit::{BoardEdit, Edit, Give, GiveAt, SessionDetails, TimetableEdit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{
    ActivityId, HelperId, OwnId, PartId, ParticipantId, SessionId, SlotId, SongId, StandingId,
    StepRef, SymbolId,
};
use daystrand::model::language::Language;
use daystrand::model::manner::{Finishing, Form, Manner, Mixed, Reach, Run};
use daystrand::model::people::{Age, Figure, Helper, Participant, Role, Skin, Voice};
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::profile::{Decision, Field, InWater, Papers, PhotoConsent, Profile};
use daystrand::model::record::{Answered, Record, Used};
use daystrand::model::rewriting::{About, LineRef, PageRef, PageWords, Rewritten};
use daystrand::model::session::{Off, Session};
use daystrand::model::song::Song;
use daystrand::model::standing::{Beside, Side, Standing, StandingStep};
use daystrand::model::stock::{Loss, StockEdit, TileFace, TileKey};
use daystrand::model::telling::{Ask, Depth, OwnPronouns, Pages, Pronouns, Second, Telling};
use daystrand::units::Length;
use jiff::civil::{Date, Time, date, time};
use proptest::prelude::*;

/// Numbers and words that become an edit once it is known what the club holds.
#[derive(Clone, Debug)]
pub struct Seed {
    pub kind: u8,
    pub a: usize,
    pub b: usize,
    pub at: usize,
    pub words: String,
    pub flag: bool,
}

/// A seed without its words: kind, a, b, at, flag.
pub type Plain = (u8, usize, usize, usize, bool);

impl Seed {
    /// A seed that was found before, with plain words.
    pub fn of((kind, a, b, at, flag): Plain) -> Self {
        Self {
            kind,
            a,
            b,
            at,
            words: "Aa".into(),
            flag,
        }
    }
}

/// One seed of any edit.
pub fn seed() -> impl Strategy<Value = Seed> {
    let words = prop_oneof![
        4 => "[A-Z][a-z]{1,8}( [a-z]{1,6})?",
        1 => "[ \\t\\n]{0,3}\\PC{0,12}[ \\t]{0,2}",
        1 => Just("سباحة 🏊‍♀️ e\u{301}".to_owned()),
        1 => Just("   ".to_owned()),
    ];
    (
        any::<u8>(),
        0..64_usize,
        0..64_usize,
        0..14_usize,
        words,
        any::<bool>(),
    )
        .prop_map(|(kind, a, b, at, words, flag)| Seed {
            kind,
            a,
            b,
            at,
            words,
            flag,
        })
}

/// Seeds of a whole afternoon of edits.
pub fn seeds(most: usize) -> impl Strategy<Value = Vec<Seed>> {
    prop::collection::vec(seed(), 0..most)
}

/// A club with something of everything: five activities, three people, a timetable of six rows.
pub fn start() -> Club {
    let mut club = Club::default();
    let mut edits = vec![
        Edit::ClubName("Reed Bay".into()),
        Edit::AddPart("Shore".into()),
        Edit::AddPart("Water".into()),
    ];
    for (i, label) in ["Circle", "Song", "Boat", "Swim", "Snack"]
        .iter()
        .enumerate()
    {
        edits.push(Edit::AddActivity(Activity {
            id: ActivityId(0),
            label: (*label).into(),
            symbol: SymbolId::new(&label.to_lowercase()),
            part: PartId(u32::from(i == 2 || i == 3)),
            minutes: 10,
            in_water: i == 3,
            depth_cm: None,
            dry_replacement: None,
            sentences: vec!["{I} join in.".into()],
            around: Default::default(),
            equipment: vec![],
            place: String::new(),
            thing: String::new(),
            not_when: BTreeSet::new(),
        }));
    }
    for name in ["Noor", "Tam", "Ilse"] {
        edits.push(Edit::AddParticipant(participant(name)));
    }
    edits.push(Edit::AddHelper(helper("Bo")));
    edits.push(Edit::AddSession(details(
        "Morning",
        date(2026, 5, 2),
        time(9, 30, 0, 0),
    )));
    for edit in &edits {
        club = apply(&club, edit).unwrap().0;
    }
    let session = club.sessions[0].id;
    for i in [0, 1, 2, 3, 1, 4] {
        let insert = TimetableEdit::Insert(club.activities[i].id, 99);
        club = apply(&club, &Edit::Timetable(session, insert)).unwrap().0;
    }
    club
}

/// A participant with nothing special.
pub fn participant(name: &str) -> Participant {
    Participant {
        helper_note: Guarded::new(Class::Helper, "Likes the drum.".into()),
        ..Participant::new(name, SymbolId::new("mark-star"), Length::mm(60.0))
    }
}

fn helper(name: &str) -> Helper {
    Helper {
        roles: BTreeSet::from([Role::Lead]),
        ..Helper::new(name)
    }
}

/// What is said about a session.
pub fn details(title: &str, date: Date, start: Time) -> SessionDetails {
    SessionDetails {
        title: title.into(),
        date,
        start,
        place: "North shore".into(),
    }
}

/// A club after a random afternoon; edits that are refused are passed over.
pub fn club(seeds: &[Seed]) -> Club {
    seeds.iter().fold(start(), |club, seed| {
        apply(&club, &edit(&club, seed)).map_or(club, |(next, _)| next)
    })
}

pub fn pick<T: Clone>(list: &[T], n: usize) -> Option<T> {
    // Now and then nothing of the list, so that edits of what is gone occur too.
    list.get(n % (list.len() + 1)).cloned()
}

pub fn pick_session(club: &Club, n: usize) -> Option<Session> {
    (!club.sessions.is_empty()).then(|| Session::clone(&club.sessions[n % club.sessions.len()]))
}

/// The edit a seed means for this club; not always one that can be made.
pub fn edit(club: &Club, seed: &Seed) -> Edit {
    if seed.kind >= 225 {
        return super::random_care::edit(club, seed);
    }
    if (200..225).contains(&seed.kind) {
        return super::random_pictures::edit(club, seed);
    }
    match seed.kind % 100 {
        52 | 54 => several_edit(club, seed),
        0..55 => board_edit(club, seed),
        55..78 => timetable_edit(club, seed),
        78..86 => session_edit(club, seed),
        86..93 => people_edit(club, seed),
        _ => club_edit(club, seed),
    }
}

/// A board edit, whatever the seed's kind.
pub fn board_edit(club: &Club, seed: &Seed) -> Edit {
    let session = pick_session(club, seed.b % 5);
    let who = club
        .participants
        .get(seed.b / 5 % 3)
        .map_or(ParticipantId(77), |p| p.id);
    let id = session.as_ref().map_or(SessionId(77), |s| s.id);
    let mut steps: Vec<StepRef> = vec![];
    if let Some(s) = &session {
        steps.extend(s.timetable.iter().map(|r| StepRef::Slot(r.id)));
        let own = s.hand_of(who).into_iter().flat_map(|h| h.own.keys());
        steps.extend(own.map(|o| StepRef::Own(*o)));
        // Steps that stand beside a row, half of the time.
        if seed.flag {
            steps = derive(club, s, who).steps.iter().map(|s| s.at).collect();
        }
    }
    let slot = session.as_ref().and_then(|s| pick(&s.timetable, seed.a));
    let slot = slot.map_or(SlotId(u32::MAX), |s| s.id);
    let hand = session.as_ref().and_then(|s| s.hand_of(who));
    let asked = hand.and_then(|h| h.asked.first());
    if let (Some(asked), 0) = (asked, seed.a % 3) {
        return Edit::Board(id, who, BoardEdit::Settle(asked.clone(), seed.flag));
    }
    let part = pick(&club.parts, seed.a).map(|p| p.id);
    let instead = seed.at.is_multiple_of(2).then(|| content(club, seed));
    let step = pick(&steps, seed.a).unwrap_or(StepRef::Own(OwnId(u32::MAX)));
    Edit::Board(
        id,
        who,
        match seed.kind % 17 {
            11 => BoardEdit::NotToday(step, instead),
            12 => BoardEdit::DoToday(step),
            13 => BoardEdit::Dry(part),
            14 => BoardEdit::Offer(step, vec![content(club, seed); seed.at % 5]),
            15 => BoardEdit::WithGroup(slot, seed.flag),
            16 => BoardEdit::LetGo(step),
            0 | 1 => BoardEdit::Insert(content(club, seed), seed.at),
            2..=5 => BoardEdit::Move(vec![step], seed.at),
            6 => BoardEdit::Replace(step, content(club, seed)),
            7 => BoardEdit::Relabel(step, seed.words.clone()),
            8 => BoardEdit::TakeOff(step),
            9 => BoardEdit::Restore(step),
            _ if seed.flag => BoardEdit::RestoreAll,
            _ => BoardEdit::TakeOff(step),
        },
    )
}

/// Several steps of a board at once: moved, changed one after the other, or given to someone else.
pub fn several_edit(club: &Club, seed: &Seed) -> Edit {
    let session = pick_session(club, seed.b % 5);
    let id = session.as_ref().map_or(SessionId(77), |s| s.id);
    let one = |n: usize| {
        club.participants
            .get(n % 3)
            .map_or(ParticipantId(77), |p| p.id)
    };
    let (who, other) = (one(seed.b / 5), one(seed.a));
    let board = |who| -> Vec<StepRef> {
        let board = session.as_ref().map(|s| derive(club, s, who));
        board.map_or(vec![], |b| b.steps.iter().map(|s| s.at).collect())
    };
    let (own, others) = (board(who), board(other));
    let steps = [seed.a, seed.b + 1, seed.at + 2];
    let mut steps: Vec<StepRef> = steps.iter().filter_map(|n| pick(&own, *n)).collect();
    let there = pick(&others, seed.b).filter(|_| seed.a.is_multiple_of(2));
    if there.is_some() && !seed.b.is_multiple_of(4) {
        steps.truncate(1);
    }
    match seed.at % 3 {
        0 => Edit::Board(id, who, BoardEdit::Move(steps, seed.at)),
        1 => {
            let each = steps.into_iter().map(BoardEdit::TakeOff);
            Edit::Board(id, who, BoardEdit::All(each.collect()))
        }
        _ => Edit::Give(
            id,
            Give {
                from: who,
                steps,
                to: other,
                at: there.map_or(GiveAt::Position(seed.at), GiveAt::Step),
                stays: seed.flag,
            },
        ),
    }
}

fn content(club: &Club, seed: &Seed) -> Content {
    let activity = pick(&club.activities, seed.a).filter(|_| seed.flag);
    Content {
        activity: activity.map(|a| a.id),
        symbol: SymbolId::new("quiet"),
        label: seed.words.clone(),
    }
}

/// A timetable edit, whatever the seed's kind.
pub fn timetable_edit(club: &Club, seed: &Seed) -> Edit {
    let session = pick_session(club, seed.b % 5);
    let id = session.as_ref().map_or(SessionId(77), |s| s.id);
    let rows: Vec<SlotId> = session.map_or(vec![], |s| s.timetable.iter().map(|r| r.id).collect());
    let slot = pick(&rows, seed.a).unwrap_or(SlotId(u32::MAX));
    let activity = pick(&club.activities, seed.b).map_or(ActivityId(u32::MAX), |a| a.id);
    Edit::Timetable(
        id,
        match seed.kind % 10 {
            7 => TimetableEdit::Off(
                slot,
                seed.flag.then(|| Off {
                    instead: seed.at.is_multiple_of(2).then_some(activity),
                }),
            ),
            8 => TimetableEdit::Dry(pick(&club.parts, seed.a).map(|p| p.id), seed.flag),
            9 => TimetableEdit::Options(slot, vec![content(club, seed); seed.at % 5]),
            0 | 1 => TimetableEdit::Insert(activity, seed.at),
            2 | 3 => TimetableEdit::Move(slot, seed.at),
            4 => TimetableEdit::Replace(slot, activity),
            5 if seed.flag => TimetableEdit::Remove(slot),
            5 => TimetableEdit::Minutes(slot, seed.at as u32 * 60),
            _ => TimetableEdit::Part(slot, PartId(seed.a as u32 % 4)),
        },
    )
}

fn session_edit(club: &Club, seed: &Seed) -> Edit {
    let id = pick_session(club, seed.b % 5).map_or(SessionId(77), |s| s.id);
    let day = date(2026, 1 + (seed.a % 12) as i8, 1 + (seed.b % 28) as i8);
    let details = details(&seed.words, day, time((seed.at % 24) as i8, 15, 20, 7));
    let who = pick(&club.participants, seed.a).map_or(ParticipantId(77), |p| p.id);
    let helper = pick(&club.helpers, seed.a).map_or(HelperId(77), |h| h.id);
    match seed.kind % 10 {
        0 => Edit::AddSession(details),
        1 | 2 => Edit::CopySession(id, details),
        3 => Edit::ChangeSession(id, details),
        4 if seed.flag => Edit::RemoveSession(id),
        4 | 5 => Edit::Attend(id, who, seed.flag),
        6 => Edit::Conditions(id, vec![condition(seed), Condition::Known(Known::Windy)]),
        7 if seed.at == 0 => Edit::StoryAsTold(id, who),
        7 if seed.at % 3 == 1 => Edit::Beside(id, who, seed.flag.then_some(helper)),
        7 if seed.at % 3 == 2 => story_edit(club, seed, (id, who)),
        7 => Edit::Record(id, who, record(club, seed)),
        _ => Edit::HelperAttends(id, helper, seed.flag),
    }
}

/// A sentence in other words, one hidden and one added on some page.
fn story_edit(club: &Club, seed: &Seed, (id, who): (SessionId, ParticipantId)) -> Edit {
    let rows = club.session(id).map_or(&[][..], |s| &s.timetable);
    let step = StepRef::Slot(pick(rows, seed.a).map_or(SlotId(77), |r| r.id));
    let pages = [
        PageRef::Title,
        PageRef::Step(step),
        PageRef::Part(PartId(seed.a as u32), seed.b as u32 % 2),
        PageRef::Dry(seed.b as u32),
        PageRef::Ending,
    ];
    let about = About::ALL[seed.a % About::ALL.len()];
    let lines = [
        LineRef::Told(about, seed.b as u32),
        LineRef::Step(step),
        LineRef::Added(seed.b as u32),
    ];
    let line = lines[seed.at % 3];
    let rewritten = Rewritten {
        text: seed.words.clone(),
        was: format!(" {} ", seed.words),
    };
    let words = PageWords {
        texts: [(line, rewritten)].into(),
        hidden: seed.flag.then_some(line).into_iter().collect(),
        added: [(seed.b as u32, seed.words.clone())].into(),
        order: vec![line, LineRef::Added(seed.b as u32)],
    };
    Edit::StoryPage(id, who, pages[seed.b % pages.len()], words)
}

fn telling(seed: &Seed) -> Telling {
    let own = OwnPronouns {
        subject: seed.words.clone(),
        ..OwnPronouns::default()
    };
    let second = Second {
        language: " ar".into(),
        first: seed.flag,
        checked_by: seed.words.clone(),
        texts: [(seed.words.clone(), format!(" {}\n", seed.words))].into(),
    };
    Telling {
        depth: Depth::ALL[seed.at % 4],
        pages: Pages::ALL[seed.a % 4],
        letters: (seed.b != 0).then_some(seed.b as u32 * 5),
        pronouns: [
            Pronouns::They,
            Pronouns::She,
            Pronouns::He,
            Pronouns::Own(Box::new(own)),
        ][seed.b % 4]
            .clone(),
        asks: [(Ask::ALL[seed.at % 4], seed.words.clone())].into(),
        collects: seed.words.clone(),
        second: seed.flag.then_some(second),
    }
}

fn condition(seed: &Seed) -> Condition {
    match Known::ALL.get(seed.at) {
        Some(known) => Condition::Known(*known),
        None => Condition::Words(seed.words.clone()),
    }
}

fn record(club: &Club, seed: &Seed) -> Record {
    Record {
        used: Used::ALL.get(seed.at).copied(),
        done: BTreeSet::from([StepRef::Own(OwnId(seed.a as u32))]),
        chose: seed.words.clone(),
        favourite: pick(&club.activities, seed.a).map(|a| a.id),
        picked: BTreeMap::from([(StepRef::Own(OwnId(seed.b as u32)), seed.words.clone())]),
        answered: Answered::ALL
            .get(seed.at)
            .map(|how| (StepRef::Own(OwnId(seed.a as u32)), *how))
            .into_iter()
            .collect(),
        ..Record::default()
    }
}

fn manner(club: &Club, seed: &Seed) -> Manner {
    let mixed = pick(&club.activities, seed.b).map(|a| {
        let thing = format!("{} ", seed.words);
        let form = Form::ALL[seed.a % 5];
        (a.id, Mixed { form, thing })
    });
    Manner {
        form: Form::ALL[seed.b % 5],
        mixed: mixed.into_iter().collect(),
        reach: Reach::ALL[seed.at % 5],
        run: Run::ALL[seed.a % 3],
        finishing: Finishing::ALL[seed.b % 4],
    }
}

/// Swaps, rows left out and own steps in all kinds of places; some name what is not in the club.
fn standing(club: &Club, seed: &Seed) -> Standing {
    let activity = |n: usize| pick(&club.activities, n).map_or(ActivityId(77), |a| a.id);
    let own = |n: usize| StandingStep {
        id: StandingId::NEW,
        content: content(club, seed),
        side: Side::ALL[(seed.at + n) % 2],
        beside: match (seed.a + n) % 4 {
            0 => Beside::Water,
            1 => pick(&club.parts, seed.b).map_or(Beside::Water, |p| Beside::Part(p.id)),
            _ => Beside::Activity(activity(seed.b + n)),
        },
        support: seed.flag,
    };
    let mut standing = Standing::default();
    if seed.at.is_multiple_of(3) {
        standing.swaps.insert(activity(seed.a), content(club, seed));
    }
    if seed.at.is_multiple_of(5) {
        standing.left_out.insert(activity(seed.b));
    }
    standing.own = (0..seed.at % 3).map(own).collect();
    if seed.flag {
        standing.cards.push(content(club, seed));
        standing.waiting = Some(content(club, seed));
        standing.countdown = seed.flag;
    }
    standing
}

fn profile(club: &Club, seed: &Seed) -> Profile {
    let mut profile = Profile::default();
    profile.set(Field::ALL[seed.a % Field::ALL.len()], seed.words.clone());
    profile.set(
        Field::ALL[seed.b % Field::ALL.len()],
        format!(" {}\r\n", seed.words),
    );
    profile
        .favourites
        .extend(pick(&club.activities, seed.b).map(|a| a.id));
    profile.set_hard([(condition(seed), seed.words.clone())].into());
    profile.set_decision(Decision {
        review: Some(date(2026, 1 + (seed.a % 12) as i8, 1)),
        surprises: seed.flag,
        small_parts: seed.flag,
        ..Decision::default()
    });
    profile.set_in_water(InWater {
        depth_cm: seed.flag.then_some(seed.b as u32 * 60),
        without_hearing: seed.flag,
    });
    profile.set_papers(Papers {
        photos: PhotoConsent::ALL[seed.at % 4],
        delete_by: Some(date(2027, 1, 1)),
        ..Papers::default()
    });
    profile
}

fn craft(seed: &Seed) -> Craft {
    Craft {
        work: [Work::CutLaminateCut, Work::OneSheet][seed.at % 2],
        cutting: [Cutting::Trimmer, Cutting::Scissors][seed.a % 2],
        pouch: Paper::ALL[seed.b % 4],
        sizes_apart: seed.flag,
        ring: [None, Some(Length::mm(seed.b as f64))][seed.at % 2],
        sorting: [Sorting::ByParticipant, Sorting::ThroughTheStack][seed.b % 2],
        backs: [None, Some(Flip::Long), Some(Flip::Short)][seed.a % 3],
        half: [Half::SoftOnTile, Half::RoughOnTile][seed.at % 2],
        dot: Length::mm(seed.b as f64 * 3.0),
        corner: Length::mm(seed.a as f64),
        sea_water: seed.flag,
        cut_seconds: seed.b as u32 * 5,
        spares: seed.flag,
        blanks: seed.a as u32,
        bar: seed.flag.then(|| Length::mm(90.0 + seed.b as f64)),
    }
}

fn stock_edit(club: &Club, seed: &Seed) -> Edit {
    let whose = pick(&club.participants, seed.a).map(|p| p.id);
    let side = Length::mm(40.0 + (seed.a % 3) as f64);
    let fresh = TileKey {
        whose: whose.filter(|_| seed.flag),
        face: TileFace {
            symbol: SymbolId::new("dig"),
            label: seed.words.clone(),
            form: Form::Drawing,
            size: (side, side),
            language: Language::default(),
            film: Length::mm(4.0),
            half: Half::SoftOnTile,
            dot: Length::mm(15.0),
            version: "CDFG".into(),
        },
    };
    let known = pick(&club.stock, seed.b).map_or_else(|| fresh.clone(), |o| o.key);
    Edit::Stock(match seed.at % 4 {
        0 | 1 => StockEdit::Made(vec![(fresh, seed.b as u32), (known, 1)]),
        2 => StockEdit::Gone(known, [Loss::Lost, Loss::Worn][seed.a % 2]),
        _ => StockEdit::Counted(known, seed.b as u32),
    })
}

fn people_edit(club: &Club, seed: &Seed) -> Edit {
    let someone = pick(&club.participants, seed.a);
    let id = someone.as_ref().map_or(ParticipantId(77), |p| p.id);
    let helper_id = pick(&club.helpers, seed.a).map_or(HelperId(77), |h| h.id);
    let changed = Participant {
        id,
        tile: Length::um(seed.b as i64 * 7_001),
        shape: TileShape::ALL[seed.at % 6],
        shared_tiles: seed.flag,
        text_pt: seed.a as u32 * 3,
        voice: Voice::ALL[seed.at % 3],
        figure: Figure {
            skin: Skin::ALL[seed.at % 4],
            age: Age::ALL[seed.a % 3],
        },
        telling: Box::new(telling(seed)),
        helper_note: Guarded::new(
            [Class::Public, Class::Helper, Class::Coordinator][seed.at % 3],
            format!(" {}\r\nand a line ", seed.words),
        ),
        manner: manner(club, seed),
        standing: Box::new(standing(club, seed)),
        profile: profile(club, seed),
        ..participant(&seed.words)
    };
    match seed.kind % 10 {
        8 => stock_edit(club, seed),
        9 => Edit::TileSizes(
            vec![id],
            TileShape::ALL[seed.at % 6],
            Length::mm(seed.b as f64 * 7.0),
        ),
        0 => Edit::AddParticipant(participant(&seed.words)),
        1 | 2 => Edit::ChangeParticipant(changed),
        3 => Edit::MoveParticipant(id, seed.at),
        4 if seed.flag => Edit::RemoveParticipant(id),
        4 | 5 => Edit::AddHelper(helper(&seed.words)),
        6 => Edit::ChangeHelper(Helper {
            id: helper_id,
            roles: Role::ALL.iter().copied().skip(seed.at % 5).collect(),
            trains: pick(&club.participants, seed.b)
                .map(|p| p.id)
                .into_iter()
                .collect(),
            certificates: super::random_care::certificates(club, seed),
            ..helper(&seed.words)
        }),
        _ => Edit::RemoveHelper(helper_id),
    }
}

fn club_edit(club: &Club, seed: &Seed) -> Edit {
    let part = pick(&club.parts, seed.a).map_or(PartId(77), |p| p.id);
    let id = pick(&club.activities, seed.a).map_or(ActivityId(77), |a| a.id);
    let activity = Activity {
        id,
        label: seed.words.clone(),
        symbol: SymbolId::new(&seed.words),
        part,
        minutes: seed.b as u32 * 11,
        in_water: seed.flag,
        depth_cm: seed.flag.then_some(seed.b as u32 * 60),
        dry_replacement: pick(&club.activities, seed.b).map(|a| a.id),
        sentences: vec![seed.words.clone(), String::new()],
        around: Box::new(Around {
            who: seed.words.clone(),
            strong: format!(" {} ", seed.words),
            ..Around::default()
        }),
        equipment: vec![format!("{} paddles ", seed.a)],
        place: seed.words.clone(),
        thing: format!(" {}", seed.words),
        not_when: Known::ALL.into_iter().skip(seed.at).take(2).collect(),
    };
    if seed.b.is_multiple_of(3) {
        return song_edit(club, seed);
    }
    match seed.kind % 9 {
        0 => Edit::ClubName(seed.words.clone()),
        1 => Edit::Rules(Rules {
            transition_minutes: seed.a as u32 * 3,
            session_minutes: seed.b as u32 * 30,
            paper: Paper::ALL[seed.at % 4],
            seal: Length::um(seed.a as i64 * 333),
            tile: Length::mm(seed.b as f64 * 8.0),
            words: Language::new(["en-GB", "en-AU", "no tag", ""][seed.at % 4]),
            craft: craft(seed),
            care: Box::new(super::random_care::care(club, seed)),
        }),
        2 => Edit::AddPart(seed.words.clone()),
        3 => Edit::RenamePart(part, seed.words.clone()),
        4 => Edit::MovePart(part, seed.at),
        5 => Edit::RemovePart(part),
        6 => Edit::AddActivity(activity),
        7 => Edit::ChangeActivity(activity),
        _ => Edit::RemoveActivity(id),
    }
}

fn song_edit(club: &Club, seed: &Seed) -> Edit {
    let id = pick(&club.songs, seed.a).map_or(SongId(77), |s| s.id);
    let song = Song {
        id,
        title: seed.words.clone(),
        words: format!(" {}\r\n\n{}\t ", seed.words, seed.words),
        activity: pick(&club.activities, seed.at).map(|a| a.id),
    };
    match seed.kind % 5 {
        0 | 1 => Edit::AddSong(song),
        2 => Edit::ChangeSong(song),
        3 => Edit::MoveSong(id, seed.at),
        _ => Edit::RemoveSong(id),
    }
}
