//! What the club decided about people, water and the place: its own entered rules. Published ratios
//! differ from body to body and place to place, so none is built in and none is advice.

use std::collections::BTreeSet;

use super::award::Award;
use super::looks::Look;

/// The club's rules for people, water and the place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Care {
    /// Water-safety people beside each participant in the water; never fewer than one.
    pub people_each: u32,
    /// How many in the water there are to one watcher; nothing where the club asks for none.
    pub watcher_for: Option<u32>,
    /// Fewest adults at a session; zero where the club entered none.
    pub fewest_adults: u32,
    /// Minutes after which the place is looked at again.
    pub look_again_minutes: u32,
    /// Minutes out of the water after the last thunder. Common practice: 30.
    pub thunder_minutes: u32,
    /// When sunscreen is put on; nothing where the club has no reminder.
    pub sunscreen: Option<Sunscreen>,
    /// Minutes between drinks; nothing where the club has no reminder.
    pub drink_minutes: Option<u32>,
    /// The club's rule for the water in its own words.
    pub rule: String,
    /// The emergency number, as the club typed it.
    pub emergency: String,
    /// Where all meet when someone is missing.
    pub meeting_spot: String,
    /// The signal to come out that can be seen, for whoever does not hear it.
    pub recall: String,
    /// Flags at the place and what they mean there.
    pub flags: Vec<Flag>,
    /// Points of the check list that this club does not look at.
    pub not_looked_at: BTreeSet<Look>,
    /// Kinds of certificates.
    pub awards: Vec<Award>,
}

impl Default for Care {
    fn default() -> Self {
        Self {
            people_each: 1,
            watcher_for: None,
            fewest_adults: 0,
            look_again_minutes: 30,
            thunder_minutes: 30,
            sunscreen: Some(Sunscreen::default()),
            drink_minutes: None,
            rule: String::new(),
            emergency: String::new(),
            meeting_spot: String::new(),
            recall: String::new(),
            flags: Vec::new(),
            not_looked_at: BTreeSet::new(),
            awards: Vec::new(),
        }
    }
}

impl Care {
    /// The kind of certificate with this id.
    pub fn award(&self, id: super::ids::AwardId) -> Option<&Award> {
        self.awards.iter().find(|a| a.id == id)
    }

    /// The points of the check list that this club looks at.
    pub fn looks(&self) -> impl Iterator<Item = Look> {
        Look::ALL
            .into_iter()
            .filter(|l| !self.not_looked_at.contains(l))
    }
}

/// When sunscreen is put on, as the club entered it. The usual minutes are those of the World Health
/// Organization's advice: 20 before, again every two hours, and after water.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sunscreen {
    /// Minutes before the start.
    pub before_minutes: u32,
    /// Minutes until it is put on again, or on leaving the water if that is earlier.
    pub every_minutes: u32,
}

impl Default for Sunscreen {
    fn default() -> Self {
        Self {
            before_minutes: 20,
            every_minutes: 120,
        }
    }
}

/// A flag and what it means at this place.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Flag {
    /// What it looks like, such as "red over yellow".
    pub looks: String,
    /// What it means here.
    pub means: String,
}
