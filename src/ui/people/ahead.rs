//! Certificates against the sessions ahead: what ends when, and how many people for the water have
//! entered dates that cover each session.

use jiff::civil::Date;

use crate::model::award::Award;
use crate::model::club::Club;
use crate::model::people::{Helper, Role};
use crate::model::session::Session;
use crate::plan::certificates::{Standing, season};
use crate::plan::water::certificates_on;

/// A certificate whose entered dates do not cover a session ahead.
#[derive(Clone, Copy, Debug)]
pub struct Gap<'a> {
    /// The first session that is not covered.
    pub first: &'a Session,
    /// How many sessions are not covered.
    pub sessions: usize,
    /// Whose it is.
    pub helper: &'a Helper,
    /// Which kind.
    pub award: &'a Award,
    /// What the dates say of that session.
    pub standing: Standing,
}

/// The sessions from a day on, in order of date; of one date in the order of the list.
pub fn sessions(club: &Club, today: Date) -> Vec<&Session> {
    let ahead = club.sessions.iter().map(AsRef::as_ref);
    let mut ahead: Vec<&Session> = ahead.filter(|s: &&Session| s.date >= today).collect();
    ahead.sort_by_key(|s| s.date);
    ahead
}

/// What of a helper does not cover the sessions ahead, the earliest first. A kind that is not
/// entered counts only for people who go into the water, and only where the club asks for it there.
pub fn gaps_of<'a>(club: &'a Club, helper: &'a Helper, ahead: &[&'a Session]) -> Vec<Gap<'a>> {
    let dates: Vec<Date> = ahead.iter().map(|s| s.date).collect();
    let wet = helper.roles.contains(&Role::WaterSafety);
    let mut gaps: Vec<Gap<'_>> = Vec::new();
    for award in &club.rules.care.awards {
        let entered = helper.certificates.iter().any(|c| c.award == award.id);
        if !(entered || wet && award.for_water) {
            continue;
        }
        let season = season(award, &helper.certificates, &dates);
        let affected = |date: Date| season.affected.iter().find(|(d, _)| *d == date);
        let hit: Vec<&&Session> = ahead
            .iter()
            .filter(|s| affected(s.date).is_some())
            .collect();
        let (Some(first), Some((_, standing))) = (hit.first(), season.affected.first()) else {
            continue;
        };
        gaps.push(Gap {
            first,
            sessions: hit.len(),
            helper,
            award,
            standing: *standing,
        });
    }
    gaps.sort_by_key(|g| g.first.date);
    gaps
}

/// The same of everyone.
pub fn gaps<'a>(club: &'a Club, ahead: &[&'a Session]) -> Vec<Gap<'a>> {
    let all = club.helpers.iter();
    let mut gaps: Vec<Gap<'_>> = all.flat_map(|h| gaps_of(club, h, ahead)).collect();
    gaps.sort_by_key(|g| g.first.date);
    gaps
}

/// People who go into the water: whose dates cover a day, of how many.
pub fn covered(club: &Club, date: Date) -> (usize, usize) {
    let wet = club
        .helpers
        .iter()
        .filter(|h| h.roles.contains(&Role::WaterSafety));
    let covers = |h: &&std::sync::Arc<Helper>| {
        let mut all = certificates_on(club, h, date).into_iter();
        all.all(|(_, standing)| standing.is_covered())
    };
    (wet.clone().filter(covers).count(), wet.count())
}
