//! From a club to the words of version 1.

use super::story;
use super::{
    Activity, Age, Answer, Asked, Choice, Clock, Day, FORMAT, File, Hand, Helper, Label, Mm, Note,
    Off, OffStep, Own, Part, Participant, Picked, Placed, Readers, Record, Replaced, Role, Rules,
    SET_FORMAT, Session, Shown, Skin, Slot, Song, Step, VERSION, Voice, care, craft, picture,
    settings,
};
use crate::model::ids::{ParticipantId, StepRef};
use crate::model::privacy::{Class, Guarded};
use crate::model::{club, hand, people, record, session, song};

/// The file that holds a club.
pub(in crate::storage) fn write(club: &club::Club) -> File {
    File {
        format: FORMAT.to_owned(),
        version: VERSION,
        name: club.name.clone(),
        next_id: club.next_id,
        rules: rules(&club.rules),
        parts: club
            .parts
            .iter()
            .map(|p| Part {
                id: p.id.0,
                name: p.name.clone(),
            })
            .collect(),
        activities: club.activities.iter().map(|a| activity(a)).collect(),
        pictures: club.pictures.iter().map(|p| picture::write(p)).collect(),
        songs: club.songs.iter().map(|s| song(s)).collect(),
        participants: club.participants.iter().map(|p| participant(p)).collect(),
        helpers: club.helpers.iter().map(|h| helper(h)).collect(),
        sessions: club.sessions.iter().map(|s| session(s)).collect(),
        stock: club.stock.iter().map(craft::write_owned).collect(),
        photographs: picture::write_photos(club),
    }
}

/// The file that holds what one club gives to another.
pub(in crate::storage) fn write_set(set: &club::Club) -> File {
    File {
        format: SET_FORMAT.to_owned(),
        ..write(set)
    }
}

fn rules(r: &club::Rules) -> Rules {
    Rules {
        transition_minutes: r.transition_minutes,
        session_minutes: r.session_minutes,
        paper: r.paper.into(),
        words: r.words.to_string(),
        seal_mm: Mm(r.seal),
        tile_mm: Mm(r.tile),
        tiles: craft::write_craft(&r.craft),
        care: care::write_care(&r.care),
    }
}

fn song(s: &song::Song) -> Song {
    Song {
        id: s.id.0,
        title: s.title.clone(),
        words: s.words.lines().map(str::to_owned).collect(),
        activity: s.activity.map(|a| a.0),
    }
}

fn activity(a: &club::Activity) -> Activity {
    Activity {
        id: a.id.0,
        label: a.label.clone(),
        symbol: a.symbol.to_string(),
        part: a.part.0,
        minutes: a.minutes,
        in_water: a.in_water,
        depth_cm: a.depth_cm,
        dry_replacement: a.dry_replacement.map(|d| d.0),
        sentences: a.sentences.clone(),
        story: story::write_around(&a.around),
        equipment: a.equipment.clone(),
        place: a.place.clone(),
        thing: a.thing.clone(),
        not_when: a.not_when.iter().map(|k| k.word().to_owned()).collect(),
    }
}

fn participant(p: &people::Participant) -> Participant {
    Participant {
        id: p.id.0,
        name: p.name.clone(),
        mark: p.mark.to_string(),
        tile_mm: Mm(p.tile),
        tile_shape: p.shape.into(),
        shared_tiles: p.shared_tiles,
        text_pt: p.text_pt,
        voice: match p.voice {
            people::Voice::I => Voice::I,
            people::Voice::You => Voice::You,
            people::Voice::Name => Voice::Name,
        },
        skin: match p.figure.skin {
            people::Skin::Light => Skin::Light,
            people::Skin::Warm => Skin::Warm,
            people::Skin::Tan => Skin::Tan,
            people::Skin::Deep => Skin::Deep,
        },
        figures: match p.figure.age {
            people::Age::Child => Age::Child,
            people::Age::Teen => Age::Teen,
            people::Age::Adult => Age::Adult,
        },
        board: settings::write_manner(&p.manner),
        always: settings::write_standing(&p.standing),
        story: story::write_telling(&p.telling),
        profile: settings::write_profile(&p.profile),
        helper_note: note(&p.helper_note),
    }
}

fn note(note: &Guarded<String>) -> Option<Note> {
    (*note != Guarded::default()).then(|| Note {
        readers: match note.class() {
            Class::Public => Readers::Public,
            Class::Helper => Readers::Helper,
            Class::Coordinator => Readers::Coordinator,
        },
        text: note.for_owner().clone(),
    })
}

fn helper(h: &people::Helper) -> Helper {
    let role = |r: &people::Role| match r {
        people::Role::Lead => Role::Lead,
        people::Role::Trainer => Role::Trainer,
        people::Role::WaterSafety => Role::WaterSafety,
        people::Role::Watcher => Role::Watcher,
        people::Role::FirstAid => Role::FirstAid,
    };
    Helper {
        id: h.id.0,
        name: h.name.clone(),
        roles: h.roles.iter().map(role).collect(),
        trains: h.trains.iter().map(|p| p.0).collect(),
        certificates: h.certificates.iter().map(care::write_certificate).collect(),
    }
}

fn session(s: &session::Session) -> Session {
    let slot = |r: &session::Slot| Slot {
        id: r.id.0,
        activity: r.activity.0,
        part: r.part.0,
        minutes: r.minutes,
        leads: r.leads.iter().map(|h| h.0).collect(),
        options: r.options.iter().map(Shown::from).collect(),
        off: r.off.map(|o| Off {
            instead: o.instead.map(|a| a.0),
        }),
    };
    Session {
        id: s.id.0,
        title: s.title.clone(),
        date: Day(s.date),
        start: Clock(s.start),
        place: s.place.clone(),
        timetable: s.timetable.iter().map(slot).collect(),
        turns: s.turns.as_deref().map(care::write_turns),
        people: care::write_today(&s.today),
        away: s.away.iter().map(|p| p.0).collect(),
        helpers_away: s.helpers_away.iter().map(|h| h.0).collect(),
        boards: s.hand.iter().map(|(who, h)| by_hand(*who, h)).collect(),
        stories: s
            .stories
            .iter()
            .map(|(who, words)| story::write_story(*who, words))
            .collect(),
        beside: s
            .beside
            .iter()
            .map(|(who, helper)| story::Beside {
                participant: who.0,
                helper: helper.0,
            })
            .collect(),
        conditions: s.conditions.iter().map(settings::write_condition).collect(),
        records: s
            .records
            .iter()
            .map(|(who, r)| record(*who, r.for_owner()))
            .collect(),
        from: s.from.map(|id| id.0),
    }
}

fn record(who: ParticipantId, r: &record::Record) -> Record {
    Record {
        participant: who.0,
        used: r.used.map(Into::into),
        done: r.done.iter().map(|s| Step(*s)).collect(),
        changed: r.changed.iter().map(|s| Step(*s)).collect(),
        chose: r.chose.clone(),
        favourite: r.favourite.map(|a| a.0),
        next_time: r.next_time.clone(),
        picked: r
            .picked
            .iter()
            .map(|(step, words)| Picked {
                step: Step(*step),
                words: words.clone(),
            })
            .collect(),
        answered: r
            .answered
            .iter()
            .map(|(step, how)| Answer {
                step: Step(*step),
                how: (*how).into(),
            })
            .collect(),
    }
}

impl From<&hand::Content> for Shown {
    fn from(c: &hand::Content) -> Self {
        Self {
            activity: c.activity.map(|a| a.0),
            symbol: c.symbol.to_string(),
            label: c.label.clone(),
        }
    }
}

fn asked(a: &hand::Asked) -> Asked {
    match a {
        hand::Asked::RowGone {
            was,
            shown,
            options,
            after,
        } => Asked::RowGone {
            was: was.into(),
            shown: shown.into(),
            options: options.iter().map(Shown::from).collect(),
            after: after.iter().map(|s| Step(*s)).collect(),
        },
        hand::Asked::OtherWords { slot, was, words } => Asked::OtherWords {
            slot: slot.0,
            was: was.into(),
            words: words.clone(),
        },
        hand::Asked::OtherActivity { slot, was } => Asked::OtherActivity {
            slot: slot.0,
            was: was.into(),
        },
    }
}

fn by_hand(who: ParticipantId, h: &hand::HandChanges) -> Hand {
    let own = h.own.iter().map(|(id, c)| Own {
        id: id.0,
        activity: c.activity.map(|a| a.0),
        symbol: c.symbol.to_string(),
        label: c.label.clone(),
    });
    let row = |step: StepRef| match step {
        StepRef::Slot(id) => Some(id.0),
        _ => None,
    };
    let replaced = h.replaced.iter().map(|(step, c)| Replaced {
        slot: row(*step),
        step: row(*step).is_none().then_some(Step(*step)),
        activity: c.activity.map(|a| a.0),
        symbol: c.symbol.to_string(),
        label: c.label.clone(),
    });
    let placed = h.placed.iter().map(|p| Placed {
        step: Step(p.step),
        after: p.after.iter().map(|a| Step(*a)).collect(),
    });
    let labels = h.labels.iter().map(|(step, label)| Label {
        step: Step(*step),
        label: label.clone(),
    });
    let plain =
        |step: StepRef, instead: &Option<hand::Content>| row(step).filter(|_| instead.is_none());
    let plain_off = h.not_today.iter().filter_map(|(s, c)| plain(*s, c));
    let off = h.not_today.iter().filter(|(s, c)| plain(**s, c).is_none());
    let off = off.map(|(step, c)| OffStep {
        step: Step(*step),
        instead: c.as_ref().map(Shown::from),
    });
    let choices = h.choices.iter().map(|(step, options)| Choice {
        step: Step(*step),
        options: options.iter().map(Shown::from).collect(),
    });
    Hand {
        participant: who.0,
        own: own.collect(),
        placed: placed.collect(),
        replaced: replaced.collect(),
        not_today: plain_off.collect(),
        off: off.collect(),
        labels: labels.collect(),
        choices: choices.collect(),
        with_group: h.with_group.iter().map(|s| s.0).collect(),
        asked: h.asked.iter().map(asked).collect(),
    }
}
