//! Which edits are one step for undo: typing in one field, turning one number up and down.

use super::{BoardEdit, Edit, SessionDetails, TimetableEdit, TodayEdit};
use crate::model::care::Care;
use crate::model::club::{Activity, Around, Club, Rules};
use crate::model::craft::Craft;
use crate::model::ids::{
    ActivityId, HelperId, PartId, ParticipantId, PictureId, SessionId, SlotId, SongId, StepRef,
};
use crate::model::people::{Helper, Participant};
use crate::model::picture::Picture;
use crate::model::profile::{Field, Profile};
use crate::model::record::Record;
use crate::model::rewriting::{LineRef, PageRef, PageWords};
use crate::model::session::Session;
use crate::model::song::Song;
use crate::model::telling::{Ask, Telling};

/// The one field an edit types in. Edits with the same key, one right after the other, are one
/// step for undo.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MergeKey {
    what: What,
    field: &'static str,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Club,
    Part(PartId),
    Activity(ActivityId),
    Picture(PictureId),
    Song(SongId),
    Participant(ParticipantId),
    Helper(HelperId),
    Session(SessionId),
    Slot(SessionId, SlotId),
    Step(SessionId, ParticipantId, StepRef),
    Record(SessionId, ParticipantId),
    Tiles(ParticipantId),
    Sentence(SessionId, ParticipantId, PageRef, LineRef),
}

impl Edit {
    /// The one text or number this edit changes, if that is all it does. `club` is the club before
    /// the edit: an edit that sets all of a thing is compared with it.
    pub fn merge_key(&self, club: &Club) -> Option<MergeKey> {
        let key = |what, field| Some(MergeKey { what, field });
        match self {
            Self::ClubName(_) => key(What::Club, "name"),
            Self::Rules(r) => key(What::Club, rules(&club.rules, r)?),
            Self::RenamePart(id, _) => key(What::Part(*id), "name"),
            Self::ChangeActivity(a) => {
                let field = activity(club.activity(a.id)?, a)?;
                key(What::Activity(a.id), field)
            }
            Self::ChangePicture(p) => key(What::Picture(p.id), picture(club.picture(p.id)?, p)?),
            Self::ChangeSong(s) => key(What::Song(s.id), song(club.song(s.id)?, s)?),
            Self::ChangeParticipant(p) => {
                let field = participant(club.participant(p.id)?, p)?;
                key(What::Participant(p.id), field)
            }
            Self::ChangeHelper(h) => {
                let old = club.helper(h.id)?;
                let renamed = Helper {
                    name: h.name.clone(),
                    ..Helper::clone(old)
                };
                (renamed == *h).then_some(MergeKey {
                    what: What::Helper(h.id),
                    field: "name",
                })
            }
            Self::ChangeSession(id, d) => {
                let field = details(club.session(*id)?, d)?;
                key(What::Session(*id), field)
            }
            Self::Record(id, who, new) => {
                let old = club.session(*id)?.records.get(who)?.for_owner();
                key(What::Record(*id, *who), record(old, new)?)
            }
            Self::TileSizes(who, ..) => key(What::Tiles(*who.first()?), "tiles"),
            Self::Timetable(id, TimetableEdit::Minutes(slot, _)) => {
                key(What::Slot(*id, *slot), "minutes")
            }
            Self::Today(id, TodayEdit::MeetingSpot(_)) => key(What::Session(*id), "meeting spot"),
            Self::Board(id, who, BoardEdit::Relabel(step, _)) => {
                key(What::Step(*id, *who, *step), "words")
            }
            Self::StoryPage(id, who, at, new) => {
                let story = club.session(*id)?.stories.get(who)?;
                let line = typed_line(story.page(*at)?, new)?;
                key(What::Sentence(*id, *who, *at, line), "words")
            }
            _ => None,
        }
    }
}

/// The only sentence of a page whose words differ, where it was changed or added before.
fn typed_line(old: &PageWords, new: &PageWords) -> Option<LineRef> {
    let texts = new.texts.iter().filter(|(line, r)| {
        let before = old.texts.get(line);
        before.is_some_and(|b| b.text != r.text)
    });
    let added = new.added.iter().filter(|(n, text)| {
        let before = old.added.get(n);
        before.is_some_and(|b| b != *text)
    });
    let mut lines = texts.map(|(line, _)| *line);
    let line = lines
        .next()
        .or_else(|| added.map(|(n, _)| LineRef::Added(*n)).next())?;
    // Nothing else differs: the earlier words put back give the earlier page.
    let mut back = new.clone();
    match line {
        LineRef::Added(n) => back.added.insert(n, old.added.get(&n)?.clone()).map(|_| ()),
        line => back
            .texts
            .insert(line, old.texts.get(&line)?.clone())
            .map(|_| ()),
    };
    (back == *old).then_some(line)
}

/// The name of the only field that differs, if it is one that is typed or turned.
fn only(differs: &[(bool, Option<&'static str>)]) -> Option<&'static str> {
    let mut changed = differs.iter().filter(|(d, _)| *d);
    let (_, first) = changed.next()?;
    if changed.next().is_some() {
        None
    } else {
        *first
    }
}

fn rules(old: &Rules, new: &Rules) -> Option<&'static str> {
    only(&[
        (
            old.transition_minutes != new.transition_minutes,
            Some("transition"),
        ),
        (old.session_minutes != new.session_minutes, Some("minutes")),
        (old.seal != new.seal, Some("seal")),
        (old.tile != new.tile, Some("tile")),
        (old.craft != new.craft, craft(&old.craft, &new.craft)),
        (old.care != new.care, care(&old.care, &new.care)),
        (old.paper != new.paper || old.words != new.words, None),
    ])
}

/// The only text or number of the club's care that differs.
fn care(old: &Care, new: &Care) -> Option<&'static str> {
    let rest = Care {
        fewest_adults: old.fewest_adults,
        look_again_minutes: old.look_again_minutes,
        thunder_minutes: old.thunder_minutes,
        rule: old.rule.clone(),
        emergency: old.emergency.clone(),
        meeting_spot: old.meeting_spot.clone(),
        recall: old.recall.clone(),
        ..new.clone()
    };
    only(&[
        (old.fewest_adults != new.fewest_adults, Some("adults")),
        (
            old.look_again_minutes != new.look_again_minutes,
            Some("look again"),
        ),
        (old.thunder_minutes != new.thunder_minutes, Some("thunder")),
        (old.rule != new.rule, Some("rule")),
        (old.emergency != new.emergency, Some("emergency")),
        (old.meeting_spot != new.meeting_spot, Some("meeting spot")),
        (old.recall != new.recall, Some("recall")),
        (rest != *old, None),
    ])
}

/// The only number of the craft that differs.
fn craft(old: &Craft, new: &Craft) -> Option<&'static str> {
    let rest = Craft {
        dot: old.dot,
        corner: old.corner,
        cut_seconds: old.cut_seconds,
        blanks: old.blanks,
        bar: old.bar,
        ..*new
    };
    only(&[
        (old.dot != new.dot, Some("dot")),
        (old.corner != new.corner, Some("corner")),
        (old.cut_seconds != new.cut_seconds, Some("cut seconds")),
        (old.blanks != new.blanks, Some("blanks")),
        (old.bar != new.bar, Some("bar")),
        (rest != *old, None),
    ])
}

fn activity(old: &Activity, new: &Activity) -> Option<&'static str> {
    let choices = old.symbol != new.symbol
        || old.part != new.part
        || old.in_water != new.in_water
        || old.dry_replacement != new.dry_replacement
        || old.not_when != new.not_when
        || old.depth_cm != new.depth_cm;
    only(&[
        (old.label != new.label, Some("label")),
        (old.minutes != new.minutes, Some("minutes")),
        (old.sentences != new.sentences, Some("sentences")),
        (old.around != new.around, around(&old.around, &new.around)),
        (old.equipment != new.equipment, Some("equipment")),
        (old.place != new.place, Some("place")),
        (old.thing != new.thing, Some("thing")),
        (choices, None),
    ])
}

fn song(old: &Song, new: &Song) -> Option<&'static str> {
    only(&[
        (old.title != new.title, Some("title")),
        (old.words != new.words, Some("words")),
        (old.activity != new.activity, None),
    ])
}

fn participant(old: &Participant, new: &Participant) -> Option<&'static str> {
    let choices = old.mark != new.mark || old.voice != new.voice || old.figure != new.figure;
    let choices = choices || old.manner != new.manner || old.standing != new.standing;
    let choices = choices || old.shape != new.shape || old.shared_tiles != new.shared_tiles;
    only(&[
        (
            old.profile != new.profile,
            profile(&old.profile, &new.profile),
        ),
        (
            old.telling != new.telling,
            telling(&old.telling, &new.telling),
        ),
        (old.name != new.name, Some("name")),
        (old.tile != new.tile, Some("tile")),
        (old.text_pt != new.text_pt, Some("letters")),
        (old.helper_note != new.helper_note, Some("note")),
        (choices, None),
    ])
}

/// The only sentence around an activity that differs.
fn around(old: &Around, new: &Around) -> Option<&'static str> {
    only(&[
        (old.who != new.who, Some("who is there")),
        (old.strong != new.strong, Some("strong")),
        (old.helps != new.helps, Some("helps")),
        (old.why != new.why, Some("why")),
    ])
}

/// The only text of a picture that differs.
fn picture(old: &Picture, new: &Picture) -> Option<&'static str> {
    let rest = Picture {
        name: old.name.clone(),
        words: old.words.clone(),
        wish: old.wish.clone(),
        source: old.source.clone(),
        licence: old.licence.clone(),
        ..new.clone()
    };
    only(&[
        (old.name != new.name, Some("name")),
        (old.words != new.words, Some("find by")),
        (old.wish != new.wish, Some("wish")),
        (old.source != new.source, Some("source")),
        (old.licence != new.licence, Some("licence")),
        (rest != *old, None),
    ])
}

/// The only text of a telling that differs.
fn telling(old: &Telling, new: &Telling) -> Option<&'static str> {
    let rest = Telling {
        letters: old.letters,
        collects: old.collects.clone(),
        asks: old.asks.clone(),
        ..new.clone()
    };
    let ask = Ask::ALL
        .into_iter()
        .filter(|a| old.asks.get(a) != new.asks.get(a));
    let asks: Vec<Ask> = ask.collect();
    let one = match asks.as_slice() {
        [one] => Some(one.label()),
        _ => None,
    };
    only(&[
        (old.letters != new.letters, Some("story letters")),
        (old.collects != new.collects, Some("collects")),
        (!asks.is_empty(), one),
        (rest != *old, None),
    ])
}

/// The only text of a profile that differs.
fn profile(old: &Profile, new: &Profile) -> Option<&'static str> {
    let mut texts = Field::ALL
        .into_iter()
        .filter(|f| old.for_owner(*f) != new.for_owner(*f));
    let field = texts.next()?;
    let mut rest = old.clone();
    rest.set(field, new.for_owner(field).to_owned());
    (rest == *new).then_some(field.word())
}

fn details(old: &Session, new: &SessionDetails) -> Option<&'static str> {
    only(&[
        (old.title != new.title, Some("title")),
        (old.place != new.place, Some("place")),
        (old.start != new.start, Some("start")),
        (old.date != new.date, Some("date")),
    ])
}

fn record(old: &Record, new: &Record) -> Option<&'static str> {
    let choices = old.used != new.used
        || old.done != new.done
        || old.changed != new.changed
        || old.picked != new.picked
        || old.answered != new.answered
        || old.favourite != new.favourite;
    only(&[
        (old.chose != new.chose, Some("chose")),
        (old.next_time != new.next_time, Some("next time")),
        (choices, None),
    ])
}
