//! What a person changed by hand on one participant's board for one session.
//!
//! Changes are kept as what was meant, not as a finished list, so that they survive every change of
//! the timetable: a placement remembers all that came before it, nearest first, and takes the
//! first of these that is still there.

use std::collections::{BTreeMap, BTreeSet};

use super::ids::{ActivityId, OwnId, SlotId, StepRef, SymbolId};

/// All hand changes of one board. Empty means: as in the timetable.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct HandChanges {
    /// Steps that are the participant's own.
    pub own: BTreeMap<OwnId, Content>,
    /// Where own steps stand and where timetable steps were moved to, in the order it was done. At
    /// most one for each step.
    pub placed: Vec<Placement>,
    /// Timetable steps replaced by something else.
    pub replaced: BTreeMap<SlotId, Content>,
    /// Timetable steps that are not done today.
    pub not_today: BTreeSet<SlotId>,
    /// Other words under a step.
    pub labels: BTreeMap<StepRef, String>,
}

impl HandChanges {
    /// Whether nothing was changed.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// Takes out everything about a step, as if it had never been; what stood after it is held by
    /// the rest of its chain.
    pub(crate) fn forget(&mut self, step: StepRef) {
        match step {
            StepRef::Slot(id) => {
                self.replaced.remove(&id);
                self.not_today.remove(&id);
            }
            StepRef::Own(id) => {
                self.own.remove(&id);
            }
        }
        self.labels.remove(&step);
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

/// Where a step was put by hand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placement {
    /// The step.
    pub step: StepRef,
    /// All that stood before it then, nearest first; empty means at the very start.
    pub after: Vec<StepRef>,
}
