//! Whether participants can be told apart on boards, tiles and file names.

use std::collections::BTreeMap;

use super::{called, finding};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::SymbolId;
use crate::model::people::Participant;
use crate::symbols::library::library;

/// Checks names and marks of all participants of the club.
pub fn check(club: &Club, findings: &mut Vec<Finding>) {
    let mut by_mark: BTreeMap<&SymbolId, Vec<&Participant>> = BTreeMap::new();
    for p in &club.participants {
        by_mark.entry(&p.mark).or_default().push(p);
        if p.name.trim().is_empty() {
            findings.push(no_name(p));
        }
        if library().mark(&p.mark).is_none() {
            findings.push(unknown_mark(p));
        }
    }
    for sharing in by_mark.values() {
        for (i, p) in sharing.iter().enumerate().skip(1) {
            let twin = sharing[..i].iter().find(|o| same_name(o, p));
            findings.push(match twin {
                Some(_) => alike(p),
                None => same_mark(sharing[0], p),
            });
        }
    }
}

/// Whether two names look the same to a reader: capital letters and spaces around do not count.
fn same_name(a: &Participant, b: &Participant) -> bool {
    a.name.trim().to_lowercase() == b.name.trim().to_lowercase()
}

fn no_name(p: &Participant) -> Finding {
    finding(
        Severity::Look,
        "people.no_name",
        Spot::Participant(p.id),
        format!("No name is entered for {}.", called(p)),
        "Enter the name that the family wants on the board.",
    )
}

fn unknown_mark(p: &Participant) -> Finding {
    finding(
        Severity::Look,
        "people.unknown_mark",
        Spot::Participant(p.id),
        format!("The mark of {} is not one of the marks.", called(p)),
        "Choose another mark.",
    )
}

fn alike(p: &Participant) -> Finding {
    finding(
        Severity::StopAndLook,
        "people.same_name",
        Spot::Participant(p.id),
        format!(
            "Two participants are called {} and have no different marks.",
            called(p)
        ),
        "Give each a mark of their own, so that tiles and files are not mixed up.",
    )
}

fn same_mark(first: &Participant, p: &Participant) -> Finding {
    finding(
        Severity::Look,
        "people.same_mark",
        Spot::Participant(p.id),
        format!("{} and {} have the same mark.", called(first), called(p)),
        "Give each a mark of their own: it stands for them where a name should not.",
    )
}
