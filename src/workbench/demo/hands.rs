//! What was changed by hand on the demo club's evenings.

use std::collections::BTreeMap;

use super::{Numbers, content, marked, with_symbol};
use crate::model::club::Club;
use crate::model::hand::{HandChanges, Placement};
use crate::model::ids::{OwnId, ParticipantId, SlotId, StepRef};
use crate::model::session::Session;

/// The evening before the boats: a swap, an own step after the water, not today with something
/// on land, other words, a step moved.
pub(super) fn boat_morning(
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
pub(super) fn shore_morning(
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
