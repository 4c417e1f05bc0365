//! What a person wrote, moved or hid in one participant's story of one session. Kept beside what the
//! program tells, by page and by sentence, so that it survives telling anew and every change of the
//! timetable; what the program says now is always one click away.

use std::collections::{BTreeMap, BTreeSet};

use super::ids::{PartId, StepRef};

/// All changes by hand to one story. Empty means: as told.
///
/// A change may be about a page or a sentence that is not told just now. It waits there.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rewriting {
    /// By page; none that is empty.
    pub pages: BTreeMap<PageRef, PageWords>,
}

impl Rewriting {
    /// The changes of a page, if there are any.
    pub fn page(&self, at: PageRef) -> Option<&PageWords> {
        self.pages.get(&at)
    }
}

/// A page of a story.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PageRef {
    /// Who, where and when.
    Title,
    /// What the day may bring.
    Day,
    /// All steps of the day in small, and what is the same.
    Same,
    /// What is new.
    New,
    /// A step.
    Step(StepRef),
    /// A part of the day, and which of its turns where it comes again.
    Part(PartId, u32),
    /// What the change tile looks like.
    Change,
    /// What may come instead of what is in the water.
    Dry(u32),
    /// How to ask.
    Ask,
    /// How it ends.
    Ending,
}

/// Changes by hand to one page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PageWords {
    /// Sentences in other words.
    pub texts: BTreeMap<LineRef, Rewritten>,
    /// Sentences that are not shown.
    pub hidden: BTreeSet<LineRef>,
    /// Sentences that were added, by number.
    pub added: BTreeMap<u32, String>,
    /// The order of the sentences as it was left; those not named stand where they are told.
    pub order: Vec<LineRef>,
}

impl PageWords {
    /// Whether nothing differs from what is told.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// Takes back all changes about one sentence but its place.
    pub fn take_back(&mut self, line: LineRef) {
        self.texts.remove(&line);
        self.hidden.remove(&line);
        if let LineRef::Added(n) = line {
            self.added.remove(&n);
            self.order.retain(|l| *l != line);
        }
    }

    /// The number of the next added sentence.
    pub fn next_number(&self) -> u32 {
        self.added.keys().next_back().map_or(1, |n| n + 1)
    }
}

/// A sentence in other words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rewritten {
    /// What it says.
    pub text: String,
    /// What the program said when it was written. Where it says something else now, the plan has
    /// changed since.
    pub was: String,
}

/// A sentence on a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LineRef {
    /// One that the program tells: what it is about, and which of several.
    Told(About, u32),
    /// One that stands beside a step's picture.
    Step(StepRef),
    /// One that a person added.
    Added(u32),
}

macro_rules! about {
    ($($(#[$doc:meta])* $name:ident $word:literal;)*) => {
        /// What a sentence of the program is about.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum About {
            $($(#[$doc])* $name,)*
        }

        impl About {
            /// All of them.
            pub const ALL: [Self; [$(Self::$name),*].len()] = [$(Self::$name),*];

            /// As written in files.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$name => $word,)* }
            }
        }
    };
}

about! {
    /// Who the story is for.
    Name "name";
    /// What it is, and on which day.
    Event "event";
    /// When and where it begins.
    Start "start";
    /// Who is beside them.
    Helper "helper";
    /// What the day may bring.
    Weather "weather";
    /// What it comes instead of.
    Instead "instead";
    /// That it is not today.
    NotToday "not-today";
    /// What happens.
    Happens "happens";
    /// Who is there.
    Who "who";
    /// What may feel, sound or smell strong.
    Strong "strong";
    /// What helps.
    Helps "helps";
    /// Why.
    Why "why";
    /// How long.
    Long "long";
    /// That they showed it as a favourite.
    Favourite "favourite";
    /// What can be chosen.
    Choice "choice";
    /// That the plan may change.
    Plan "plan";
    /// What the change tile is.
    Tile "tile";
    /// How tiles are changed.
    Swap "swap";
    /// What may come instead.
    Dry "dry";
    /// That it can be asked at any time.
    AnyTime "any-time";
    /// How to ask.
    Ask "ask";
    /// When it ends.
    Ends "ends";
    /// Who collects.
    Collects "collects";
    /// Who waits.
    Wait "wait";
    /// What is the same.
    Same "same";
    /// What is new.
    New "new";
    /// What was there last time and is not now.
    Gone "gone";
}
