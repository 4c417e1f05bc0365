//! From the words of version 1 to a club: what is wrong is said with its place; what can be mended
//! without guessing what a person meant is mended and told.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::mend::{mend_next_id, mend_order, mend_session, mend_stock, mend_words};
use super::story;
use super::{
    Activity, Age, Asked, File, Hand, Helper, Note, Part, Participant, Readers, Record, Role,
    Rules, Session, Shown, Skin, Slot, Song, Step, Voice, care, craft, picture, settings,
};
use crate::model::conditions::Known;
use crate::model::hand::{self, Content, HandChanges, Placement};
use crate::model::ids::{
    ActivityId, HelperId, OwnId, PartId, ParticipantId, SessionId, SlotId, SongId, StepRef,
    SymbolId,
};
use crate::model::language::Language;
use crate::model::privacy::{Class, Guarded};
use crate::model::{club, invariants, limits, people, record, session, song};

/// A club that was read, and what was mended.
pub(in crate::storage) struct Read {
    pub(in crate::storage) club: club::Club,
    pub(in crate::storage) notes: Vec<String>,
}

/// The club in a file.
///
/// # Errors
/// One sentence part with the place, such as "participants, number 3 (Noor): ...".
pub(in crate::storage) fn read(file: File) -> Result<Read, String> {
    let mut notes = Vec::new();
    let mut sessions = Vec::with_capacity(file.sessions.len());
    for (i, s) in file.sessions.into_iter().enumerate() {
        let place = format!("sessions, number {} ({})", i + 1, s.title);
        sessions.push(session(s).map_err(|e| format!("{place}: {e}"))?);
    }
    let mut activities = Vec::with_capacity(file.activities.len());
    for (i, a) in file.activities.into_iter().enumerate() {
        let place = format!("activities, number {} ({})", i + 1, a.label);
        activities.push(activity(a).map_err(|e| format!("{place}: {e}."))?);
    }
    let mut participants = Vec::with_capacity(file.participants.len());
    for (i, p) in file.participants.into_iter().enumerate() {
        let place = format!("participants, number {} ({})", i + 1, p.name);
        participants.push(participant(p).map_err(|e| format!("{place}: {e}."))?);
    }
    let photos = picture::read_photos(file.photographs)?;
    let mut pictures = Vec::with_capacity(file.pictures.len());
    for (i, p) in file.pictures.into_iter().enumerate() {
        let place = format!("pictures, number {} ({})", i + 1, p.name);
        pictures.push(picture::read(p, &photos).map_err(|e| format!("{place}: {e}."))?);
    }
    let mut club = club::Club {
        name: limits::tidy_line(&file.name),
        rules: rules(file.rules).map_err(|e| format!("rules: {e}."))?,
        parts: file.parts.into_iter().map(part).collect(),
        activities,
        pictures,
        songs: file.songs.iter().map(song).collect(),
        participants,
        helpers: file.helpers.into_iter().map(helper).collect(),
        sessions: Vec::new(),
        stock: file.stock.into_iter().map(craft::read_owned).collect(),
        next_id: file.next_id,
    };
    for session in &mut sessions {
        notes.extend(mend_session(&club, session));
    }
    club.sessions = sessions.into_iter().map(Arc::new).collect();
    notes.extend(mend_words(&mut club));
    notes.extend(mend_stock(&mut club));
    notes.extend(mend_order(&mut club));
    notes.extend(mend_next_id(&mut club));
    let broken = invariants::check(&club);
    match broken.split_first() {
        None => Ok(Read { club, notes }),
        Some((first, [])) => Err(first.clone()),
        Some((first, [_])) => Err(format!("{first} One more place is wrong.")),
        Some((first, more)) => Err(format!("{first} {} more places are wrong.", more.len())),
    }
}

fn rules(r: Rules) -> Result<club::Rules, String> {
    let care = r.care.map(care::read_care).transpose()?;
    Ok(club::Rules {
        transition_minutes: r.transition_minutes,
        session_minutes: r.session_minutes,
        paper: r.paper.into(),
        seal: r.seal_mm.0,
        tile: r.tile_mm.0,
        words: Language::new(&r.words),
        craft: r
            .tiles
            .as_ref()
            .map_or_else(Default::default, craft::read_craft),
        care: Box::new(care.unwrap_or_default()),
    })
}

fn part(p: Part) -> club::Part {
    club::Part {
        id: PartId(p.id),
        name: limits::tidy_line(&p.name),
    }
}

fn activity(a: Activity) -> Result<Arc<club::Activity>, String> {
    let known = |word: &String| {
        Known::from_word(word).ok_or_else(|| format!("“{word}” is no known condition"))
    };
    let not_when = a.not_when.iter().map(known).collect::<Result<_, _>>()?;
    Ok(Arc::new(limits::tidy_activity(&club::Activity {
        id: ActivityId(a.id),
        label: a.label,
        symbol: SymbolId::new(&a.symbol),
        part: PartId(a.part),
        minutes: a.minutes,
        in_water: a.in_water,
        depth_cm: a.depth_cm,
        dry_replacement: a.dry_replacement.map(ActivityId),
        sentences: a.sentences,
        around: Box::new(a.story.map_or_else(Default::default, Into::into)),
        equipment: a.equipment,
        place: a.place,
        thing: a.thing,
        not_when,
    })))
}

fn song(s: &Song) -> Arc<song::Song> {
    Arc::new(limits::tidy_song(&song::Song {
        id: SongId(s.id),
        title: s.title.clone(),
        words: s.words.join("\n"),
        activity: s.activity.map(ActivityId),
    }))
}

fn participant(p: Participant) -> Result<Arc<people::Participant>, String> {
    let profile = p.profile.map(settings::read_profile).transpose()?;
    Ok(Arc::new(limits::tidy_participant(&people::Participant {
        id: ParticipantId(p.id),
        name: p.name,
        mark: SymbolId::new(&p.mark),
        tile: p.tile_mm.0,
        shape: p.tile_shape.into(),
        shared_tiles: p.shared_tiles,
        text_pt: p.text_pt,
        voice: match p.voice {
            Voice::I => people::Voice::I,
            Voice::You => people::Voice::You,
            Voice::Name => people::Voice::Name,
        },
        telling: Box::new(p.story.map_or_else(Default::default, Into::into)),
        figure: people::Figure {
            skin: match p.skin {
                Skin::Light => people::Skin::Light,
                Skin::Warm => people::Skin::Warm,
                Skin::Tan => people::Skin::Tan,
                Skin::Deep => people::Skin::Deep,
            },
            age: match p.figures {
                Age::Child => people::Age::Child,
                Age::Teen => people::Age::Teen,
                Age::Adult => people::Age::Adult,
            },
        },
        manner: p.board.map_or_else(Default::default, Into::into),
        standing: Box::new(p.always.map_or_else(Default::default, Into::into)),
        profile: profile.unwrap_or_default(),
        helper_note: p.helper_note.map_or_else(Guarded::default, note),
    })))
}

fn note(note: Note) -> Guarded<String> {
    let class = match note.readers {
        Readers::Public => Class::Public,
        Readers::Helper => Class::Helper,
        Readers::Coordinator => Class::Coordinator,
    };
    Guarded::new(class, note.text)
}

fn helper(h: Helper) -> Arc<people::Helper> {
    let role = |r: &Role| match r {
        Role::Lead => people::Role::Lead,
        Role::Trainer => people::Role::Trainer,
        Role::WaterSafety => people::Role::WaterSafety,
        Role::Watcher => people::Role::Watcher,
        Role::FirstAid => people::Role::FirstAid,
    };
    Arc::new(limits::care::tidy_helper(&people::Helper {
        id: HelperId(h.id),
        name: limits::tidy_line(&h.name),
        roles: h.roles.iter().map(role).collect(),
        trains: h.trains.into_iter().map(ParticipantId).collect(),
        certificates: h
            .certificates
            .into_iter()
            .map(care::read_certificate)
            .collect(),
    }))
}

fn session(s: Session) -> Result<session::Session, String> {
    let mut hand = BTreeMap::new();
    for changes in s.boards {
        let who = ParticipantId(changes.participant);
        let changes = by_hand(changes).map_err(|e| format!("board of participant {who}: {e}"))?;
        once(&mut hand, who, changes)
            .map_err(|()| format!("the board of participant {who} is there twice."))?;
    }
    let slot = |r: Slot| session::Slot {
        id: SlotId(r.id),
        activity: ActivityId(r.activity),
        part: PartId(r.part),
        minutes: r.minutes,
        leads: r.leads.into_iter().map(HelperId).collect(),
        options: r.options.into_iter().map(Into::into).collect(),
        off: r.off.map(|o| session::Off {
            instead: o.instead.map(ActivityId),
        }),
    };
    let mut records = BTreeMap::new();
    for r in s.records {
        let who = ParticipantId(r.participant);
        let seen = Guarded::new(Class::Coordinator, record(r)?);
        once(&mut records, who, seen)
            .map_err(|()| format!("the record of participant {who} is there twice."))?;
    }
    let mut stories = BTreeMap::new();
    for changes in s.stories {
        let who = ParticipantId(changes.participant);
        let place = format!("the story of participant {who}");
        let changes = story::read_story(changes).map_err(|e| format!("{place}: {e}"))?;
        if !changes.pages.is_empty() {
            once(&mut stories, who, changes).map_err(|()| format!("{place} is there twice."))?;
        }
    }
    let mut beside = BTreeMap::new();
    for b in s.beside {
        let who = ParticipantId(b.participant);
        once(&mut beside, who, HelperId(b.helper))
            .map_err(|()| format!("two helpers are beside participant {who}."))?;
    }
    let conditions = s.conditions.into_iter().map(settings::read_condition);
    let conditions: Vec<_> = conditions
        .collect::<Result<_, _>>()
        .map_err(|e| format!("{e}."))?;
    let today = s.people.map(care::read_today).transpose();
    let today = today.map_err(|e| format!("{e}."))?.unwrap_or_default();
    Ok(session::Session {
        id: SessionId(s.id),
        title: limits::tidy_line(&s.title),
        date: s.date.0,
        start: limits::tidy_start(s.start.0),
        place: limits::tidy_line(&s.place),
        timetable: s.timetable.into_iter().map(slot).collect(),
        turns: s.turns.map(|t| Box::new(care::read_turns(t))),
        today: Box::new(today),
        away: s.away.into_iter().map(ParticipantId).collect(),
        helpers_away: s.helpers_away.into_iter().map(HelperId).collect(),
        hand,
        stories,
        beside,
        conditions: limits::tidy_conditions(&conditions),
        records,
        from: s.from.map(SessionId),
    })
}

fn record(r: Record) -> Result<record::Record, String> {
    let mut picked = BTreeMap::new();
    for p in r.picked {
        once(&mut picked, p.step.0, p.words)
            .map_err(|()| "two things are picked at one choice.".to_owned())?;
    }
    let mut answered = BTreeMap::new();
    for a in r.answered {
        once(&mut answered, a.step.0, a.how.into())
            .map_err(|()| "two answers are about one step.".to_owned())?;
    }
    Ok(limits::tidy_record(&record::Record {
        used: r.used.map(Into::into),
        done: r.done.into_iter().map(|s| s.0).collect(),
        changed: r.changed.into_iter().map(|s| s.0).collect(),
        chose: r.chose,
        favourite: r.favourite.map(ActivityId),
        next_time: r.next_time,
        picked,
        answered,
    }))
}

impl From<Shown> for Content {
    fn from(s: Shown) -> Self {
        Self {
            activity: s.activity.map(ActivityId),
            symbol: SymbolId::new(&s.symbol),
            label: limits::tidy_line(&s.label),
        }
    }
}

fn asked(a: Asked) -> hand::Asked {
    match a {
        Asked::RowGone {
            was,
            shown,
            options,
            after,
        } => hand::Asked::RowGone {
            was: was.into(),
            shown: shown.into(),
            options: options.into_iter().map(Into::into).collect(),
            after: after.into_iter().map(|s| s.0).collect(),
        },
        Asked::OtherWords { slot, was, words } => hand::Asked::OtherWords {
            slot: SlotId(slot),
            was: was.into(),
            words: limits::tidy_line(&words),
        },
        Asked::OtherActivity { slot, was } => hand::Asked::OtherActivity {
            slot: SlotId(slot),
            was: was.into(),
        },
    }
}

fn by_hand(h: Hand) -> Result<HandChanges, String> {
    let content = |activity: Option<u32>, symbol: &str, label: &str| Content {
        activity: activity.map(ActivityId),
        symbol: SymbolId::new(symbol),
        label: limits::tidy_line(label),
    };
    let row = |id: u32| StepRef::Slot(SlotId(id));
    let mut changes = HandChanges {
        not_today: h.not_today.into_iter().map(|id| (row(id), None)).collect(),
        with_group: h.with_group.into_iter().map(SlotId).collect(),
        asked: h.asked.into_iter().map(asked).collect(),
        ..HandChanges::default()
    };
    for off in h.off {
        changes
            .not_today
            .insert(off.step.0, off.instead.map(Into::into));
    }
    for choice in h.choices {
        let options = choice.options.into_iter().map(Into::into).collect();
        once(&mut changes.choices, choice.step.0, options)
            .map_err(|()| format!("“{}” has two choices.", String::from(choice.step)))?;
    }
    for own in h.own {
        let shown = content(own.activity, &own.symbol, &own.label);
        once(&mut changes.own, OwnId(own.id), shown)
            .map_err(|()| format!("the own step {} is there twice.", own.id))?;
    }
    for r in h.replaced {
        let shown = content(r.activity, &r.symbol, &r.label);
        let step = match (r.slot, r.step) {
            (Some(id), None) => row(id),
            (None, Some(step)) => step.0,
            _ => return Err("something is replaced that is not one row or one step.".to_owned()),
        };
        once(&mut changes.replaced, step, shown)
            .map_err(|()| format!("{} is replaced twice.", String::from(Step(step))))?;
    }
    for l in h.labels {
        let words = limits::tidy_line(&l.label);
        once(&mut changes.labels, l.step.0, words)
            .map_err(|()| format!("“{}” has two labels.", String::from(l.step)))?;
    }
    let placement = |p: super::Placed| Placement {
        step: p.step.0,
        after: p.after.into_iter().map(|a| a.0).collect(),
    };
    changes.placed = h.placed.into_iter().map(placement).collect();
    Ok(changes)
}

fn once<K: Ord, V>(map: &mut BTreeMap<K, V>, key: K, value: V) -> Result<(), ()> {
    match map.insert(key, value) {
        None => Ok(()),
        Some(_) => Err(()),
    }
}
