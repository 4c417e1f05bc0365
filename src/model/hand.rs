//! What a person changed by hand on one participant's board for one session.
//!
//! Changes are kept as what was meant, not as a finished list, so that they survive every change of
//! the timetable: a placement remembers all that came before it, nearest first, and takes the
//! first of these that is still there.

use std::collections::{BTreeMap, BTreeSet};

use super::club::Activity;
use super::ids::{ActivityId, OwnId, SlotId, StepRef, SymbolId};

/// All hand changes of one board. Empty means: as in the timetable and the standing changes.
///
/// A change may be about a step that is not on the board just now, such as one that stands beside a
/// water activity while the water is called off. It waits there and is told about; it is not lost.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct HandChanges {
    /// Steps that are the participant's own for this session.
    pub own: BTreeMap<OwnId, Content>,
    /// Where own steps stand and where other steps were moved to, in the order it was done. At most
    /// one for each step.
    pub placed: Vec<Placement>,
    /// Steps that show something else.
    pub replaced: BTreeMap<StepRef, Content>,
    /// Timetable and standing steps that are not done today, with what comes instead.
    pub not_today: BTreeMap<StepRef, Option<Content>>,
    /// Other words under a step.
    pub labels: BTreeMap<StepRef, String>,
    /// What can be chosen where a step offers a choice.
    pub choices: BTreeMap<StepRef, Vec<Content>>,
    /// Rows in which this session is as the group's, whatever the standing changes say.
    pub with_group: BTreeSet<SlotId>,
    /// Changes that no longer say clearly what is meant, until someone answers.
    pub asked: Vec<Asked>,
}

/// A change by hand that lost its meaning when the timetable changed. Each has two answers: keep it,
/// or let it go.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Asked {
    /// The row is gone in which something was changed. Kept, it becomes an own step.
    RowGone {
        /// What the timetable had there.
        was: Content,
        /// What the board showed there.
        shown: Content,
        /// What could be chosen there.
        options: Vec<Content>,
        /// All that stood before it, nearest first.
        after: Vec<StepRef>,
    },
    /// The row has another activity now, and other words were set for it. Until it is answered the
    /// board shows the words of the new activity. Kept, these words go under it.
    OtherWords {
        /// The row.
        slot: SlotId,
        /// What the timetable had there.
        was: Content,
        /// The words that were set.
        words: String,
    },
    /// The row has another activity now, and it is not done today or shows something else for this
    /// participant. Until it is answered that stays. Let go, the board follows the timetable.
    OtherActivity {
        /// The row.
        slot: SlotId,
        /// What the timetable had there.
        was: Content,
    },
}

impl Asked {
    /// The row it is about, if that is still there.
    pub const fn slot(&self) -> Option<SlotId> {
        match self {
            Self::RowGone { .. } => None,
            Self::OtherWords { slot, .. } | Self::OtherActivity { slot, .. } => Some(*slot),
        }
    }

    /// What is kept if it is kept.
    pub const fn kept(&self) -> &Content {
        match self {
            Self::RowGone { shown, .. } => shown,
            _ => self.was(),
        }
    }

    /// What the timetable had there.
    pub const fn was(&self) -> &Content {
        match self {
            Self::RowGone { was, .. }
            | Self::OtherWords { was, .. }
            | Self::OtherActivity { was, .. } => was,
        }
    }
}

impl HandChanges {
    /// Whether nothing was changed.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// Whether a step has a place given by hand.
    pub fn is_placed(&self, step: StepRef) -> bool {
        self.placed.iter().any(|p| p.step == step)
    }

    /// Every step that a change is about, or that a placement remembers.
    pub fn named(&self) -> BTreeSet<StepRef> {
        let mut all = self.touched();
        all.extend(self.with_group.iter().map(|s| StepRef::Slot(*s)));
        all.extend(self.placed.iter().flat_map(|p| p.after.iter().copied()));
        all
    }

    /// Every step that a change is about; what a placement remembers does not count.
    pub fn touched(&self) -> BTreeSet<StepRef> {
        let maps = self.replaced.keys().chain(self.not_today.keys());
        maps.chain(self.labels.keys())
            .chain(self.choices.keys())
            .copied()
            .chain(self.placed.iter().map(|p| p.step))
            .collect()
    }

    /// Everything it shows.
    pub fn contents(&self) -> impl Iterator<Item = &Content> {
        let asked = self.asked.iter().flat_map(|a| {
            let (shown, options) = match a {
                Asked::RowGone { shown, options, .. } => (Some(shown), &options[..]),
                _ => (None, &[][..]),
            };
            std::iter::once(a.was()).chain(shown).chain(options)
        });
        self.own
            .values()
            .chain(self.replaced.values())
            .chain(self.not_today.values().flatten())
            .chain(self.choices.values().flatten())
            .chain(asked)
    }

    /// Takes out what was changed about what comes instead of a row.
    pub(crate) fn forget_beside(&mut self, slot: SlotId) {
        let step = StepRef::Instead(slot);
        self.replaced.remove(&step);
        self.labels.remove(&step);
        self.choices.remove(&step);
    }

    /// Takes out everything about a step, as if it had never been; what stood after it is held by
    /// the rest of its chain.
    pub(crate) fn forget(&mut self, step: StepRef) {
        if let StepRef::Own(id) = step {
            self.own.remove(&id);
        }
        if let StepRef::Slot(id) = step {
            self.with_group.remove(&id);
        }
        self.replaced.remove(&step);
        self.not_today.remove(&step);
        self.labels.remove(&step);
        self.choices.remove(&step);
        self.placed.retain(|p| p.step != step);
        for p in &mut self.placed {
            p.after.retain(|a| *a != step);
        }
    }
}

/// What a step shows when it does not come from the timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Content {
    /// The activity of the club it is, if it is one.
    pub activity: Option<ActivityId>,
    /// The picture.
    pub symbol: SymbolId,
    /// The words.
    pub label: String,
}

impl Content {
    /// An activity of the club.
    pub fn of(activity: &Activity) -> Self {
        Self {
            activity: Some(activity.id),
            symbol: activity.symbol.clone(),
            label: activity.label.clone(),
        }
    }
}

/// Where a step was put by hand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placement {
    /// The step.
    pub step: StepRef,
    /// All that stood before it then, nearest first; empty means at the very start.
    pub after: Vec<StepRef>,
}
