//! A club: its rules, the parts of its day, and the activities it offers.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::care::Care;
use super::conditions::Known;
use super::craft::{Craft, Work};
use super::ids::{ActivityId, HelperId, PartId, ParticipantId, SessionId, SongId, SymbolId};
use super::language::Language;
use super::people::{Helper, Participant};
use super::picture::Picture;
use super::session::Session;
use super::song::Song;
use super::stock::Owned;
use crate::units::{Length, Size};

/// Everything in one club file. Lists hold `Arc`s so that a copy for undo is cheap and what was
/// derived from an unchanged part can be kept.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Club {
    /// The club's name as shown.
    pub name: String,
    /// What the club decided once for all sessions.
    pub rules: Rules,
    /// The parts of the day, in the order of a day.
    pub parts: Vec<Part>,
    /// What can be done, in the order of the list.
    pub activities: Vec<Arc<Activity>>,
    /// Pictures of its own, in the order of the list.
    pub pictures: Vec<Arc<Picture>>,
    /// Its songs and chants, in the order of the list.
    pub songs: Vec<Arc<Song>>,
    /// Who takes part, in the order of the list.
    pub participants: Vec<Arc<Participant>>,
    /// Who helps, in the order of the list.
    pub helpers: Vec<Arc<Helper>>,
    /// Sessions by date, then by start.
    pub sessions: Vec<Arc<Session>>,
    /// Tiles already made, in the order of their kinds; none twice.
    pub stock: Vec<Owned>,
    /// The next number to give; only ever grows.
    pub next_id: u32,
}

impl Club {
    /// The part of the day with this id.
    pub fn part(&self, id: PartId) -> Option<&Part> {
        self.parts.iter().find(|p| p.id == id)
    }

    /// The activity with this id.
    pub fn activity(&self, id: ActivityId) -> Option<&Arc<Activity>> {
        self.activities.iter().find(|a| a.id == id)
    }

    /// Whether this is an activity in the water.
    pub fn in_water(&self, id: ActivityId) -> bool {
        self.activity(id).is_some_and(|a| a.in_water)
    }

    /// The song with this id.
    pub fn song(&self, id: SongId) -> Option<&Arc<Song>> {
        self.songs.iter().find(|s| s.id == id)
    }

    /// The participant with this id.
    pub fn participant(&self, id: ParticipantId) -> Option<&Arc<Participant>> {
        self.participants.iter().find(|p| p.id == id)
    }

    /// The helper with this id.
    pub fn helper(&self, id: HelperId) -> Option<&Arc<Helper>> {
        self.helpers.iter().find(|h| h.id == id)
    }

    /// The session with this id.
    pub fn session(&self, id: SessionId) -> Option<&Arc<Session>> {
        self.sessions.iter().find(|s| s.id == id)
    }

    /// The participants who come to a session, in the order of the list.
    pub fn attending<'a>(
        &'a self,
        session: &'a Session,
    ) -> impl Iterator<Item = &'a Arc<Participant>> {
        self.participants
            .iter()
            .filter(|p| !session.away.contains(&p.id))
    }
}

/// What the club decided once: its own entered rules, never the program's advice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rules {
    /// Minutes between two slots for moving, toilets, putting things away.
    pub transition_minutes: u32,
    /// Minutes the session may last from its start, transitions included.
    pub session_minutes: u32,
    /// Paper in the club's printer.
    pub paper: Paper,
    /// Clear film edge around a laminated tile. Common practice: 4 mm, at least 3.2, 5 for sea water.
    pub seal: Length,
    /// Printed side of a new participant's tiles.
    pub tile: Length,
    /// Language of the words that come with the pictures.
    pub words: Language,
    /// How tiles are made.
    pub craft: Craft,
    /// People, water and the place.
    pub care: Box<Care>,
}

impl Rules {
    /// Clear film that ends up around a tile: the seal, or nothing where there is no film.
    pub fn film(&self) -> Length {
        match self.craft.work {
            Work::CutLaminateCut => self.seal,
            Work::OneSheet => Length::ZERO,
        }
    }
}

impl Default for Rules {
    fn default() -> Self {
        Self {
            transition_minutes: 3,
            session_minutes: 90,
            paper: Paper::A4,
            seal: Length::mm(4.0),
            tile: Length::mm(60.0),
            words: Language::default(),
            craft: Craft::default(),
            care: Box::default(),
        }
    }
}

/// Paper sizes offered. A series by ISO 216:2007; Letter is 8.5 by 11 inches (ANSI/ASME Y14.1).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Paper {
    /// 210 x 297 mm.
    A4,
    /// 297 x 420 mm.
    A3,
    /// 148 x 210 mm.
    A5,
    /// 215.9 x 279.4 mm.
    Letter,
}

impl Paper {
    /// All of them, for lists.
    pub const ALL: [Self; 4] = [Self::A4, Self::A3, Self::A5, Self::Letter];

    /// Upright size.
    pub fn size(self) -> Size {
        match self {
            Self::A4 => Size::mm(210.0, 297.0),
            Self::A3 => Size::mm(297.0, 420.0),
            Self::A5 => Size::mm(148.0, 210.0),
            Self::Letter => Size::mm(215.9, 279.4),
        }
    }

    /// Its name.
    pub const fn label(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::A3 => "A3",
            Self::A5 => "A5",
            Self::Letter => "Letter",
        }
    }
}

/// A part of the day, such as "In the water". Names are the club's own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part {
    /// Its id.
    pub id: PartId,
    /// Its name as shown.
    pub name: String,
}

/// Something the group does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Activity {
    /// Its id.
    pub id: ActivityId,
    /// The words under the picture, the same everywhere.
    pub label: String,
    /// The picture.
    pub symbol: SymbolId,
    /// The part of the day it usually belongs to.
    pub part: PartId,
    /// How long it usually lasts.
    pub minutes: u32,
    /// Whether participants are in the water.
    pub in_water: bool,
    /// How deep the water is there, in centimetres, where the club entered it.
    pub depth_cm: Option<u32>,
    /// What is done instead when the water is not possible.
    pub dry_replacement: Option<ActivityId>,
    /// Sentences for the story, in the voice of the participant: `{I} {walk} to the water with {my}
    /// helper.` Words in braces follow the participant's voice.
    pub sentences: Vec<String>,
    /// What else the story says about it.
    pub around: Box<Around>,
    /// What has to be brought, such as "8 paddles".
    pub equipment: Vec<String>,
    /// Where it is done, such as "at the jetty"; empty where the club does not say.
    pub place: String,
    /// The real thing that stands for it where no picture is understood, such as "a paddle".
    pub thing: String,
    /// Conditions under which it is not done.
    pub not_when: BTreeSet<Known>,
}

/// What a story says about an activity besides what happens: templates like its sentences, each
/// empty where nothing is said.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Around {
    /// Who is there and what they do.
    pub who: String,
    /// What may feel, sound or smell strong; a sentence or two.
    pub strong: String,
    /// What helps with that.
    pub helps: String,
    /// Why it is done.
    pub why: String,
}
