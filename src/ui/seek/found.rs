//! What fits the words someone typed, over everything there is: commands, places, people, sessions,
//! activities, pictures, symbols. Pure: a view and words in, a list out.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use crate::model::finding::Spot;
use crate::model::ids::SymbolId;
use crate::symbols::lexicon::lexicon;
use crate::ui::actions::{self, Action};
use crate::ui::theme;
use crate::workbench::command::Theme;
use crate::workbench::view::View;

/// How many of one kind are shown.
const OF_A_KIND: usize = 6;

/// Where something that was found leads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Goes {
    /// It is done.
    Do(Action),
    /// To where it is.
    To(Spot),
    /// To the symbols, with these words looked for.
    Symbol(String),
}

/// Something that was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// What it is called.
    pub label: String,
    /// What it is, such as "Participant", or the key that does it.
    pub kind: String,
    /// Its picture.
    pub symbol: Option<SymbolId>,
    /// Where it leads.
    pub goes: Goes,
    rank: u32,
}

/// Everything that fits, best first; before anything is typed, what can be done.
pub fn all(view: &View<'_>, typed: &str) -> Vec<Found> {
    let wanted = words(typed);
    let mut found = commands(view, &wanted);
    if !wanted.is_empty() {
        found.extend(people(view, &wanted));
        found.extend(days(view, &wanted));
        found.extend(activities(view, &wanted));
        found.extend(pictures(view, &wanted));
        found.extend(symbols(view, typed));
    }
    found.sort_by_key(|f| f.rank);
    found
}

fn words(text: &str) -> Vec<String> {
    let plain: String = text.nfd().filter(|c| !is_combining_mark(*c)).collect();
    let plain = plain.to_lowercase();
    let words = plain.split(|c: char| !c.is_alphanumeric());
    words.filter(|w| !w.is_empty()).map(str::to_owned).collect()
}

/// How well something fits, 0 best: it begins with what was typed, each word begins one of its
/// words, each is somewhere in it. None if one of them is not.
fn rank(label: &str, also: &str, wanted: &[String]) -> Option<u32> {
    let (label, also) = (words(label), words(also));
    let begins = |all: &[String], w: &str| all.iter().any(|l| l.starts_with(w));
    if label
        .iter()
        .zip(wanted)
        .all(|(l, w)| l.starts_with(w.as_str()))
        && label.len() >= wanted.len()
    {
        return Some(0);
    }
    if wanted.iter().all(|w| begins(&label, w)) {
        return Some(1);
    }
    if wanted.iter().all(|w| begins(&label, w) || begins(&also, w)) {
        return Some(2);
    }
    let within = |w: &String| label.iter().any(|l| l.contains(w.as_str()));
    (wanted.iter().all(within) && wanted.iter().any(|w| w.len() > 2)).then_some(3)
}

/// The best of one kind.
fn best(mut all: Vec<Found>) -> Vec<Found> {
    all.sort_by_key(|f| f.rank);
    all.truncate(OF_A_KIND);
    all
}

fn one(
    (label, also): (&str, &str),
    kind: &str,
    symbol: Option<&SymbolId>,
    goes: Goes,
    wanted: &[String],
) -> Option<Found> {
    let label = label.trim();
    Some(Found {
        rank: rank(label, also, wanted)?,
        label: label.to_owned(),
        kind: kind.to_owned(),
        symbol: symbol.cloned(),
        goes,
    })
}

fn commands(view: &View<'_>, wanted: &[String]) -> Vec<Found> {
    let mut seen = Vec::new();
    let mut found = Vec::new();
    for row in actions::TABLE {
        if seen.contains(&row.action) || !actions::possible(row.action, view) {
            continue;
        }
        seen.push(row.action);
        let keys = row.keys();
        let goes = Goes::Do(row.action);
        found.extend(one((row.label, row.tip), &keys, None, goes, wanted));
    }
    if !wanted.is_empty() {
        found.extend(sights(view, wanted));
        found = best(found);
    }
    found
}

/// What the menu changes about how all is seen.
fn sights(view: &View<'_>, wanted: &[String]) -> Vec<Found> {
    let also = "Colours theme";
    let other = Theme::ALL.into_iter().filter(|c| *c != view.theme);
    let colours = other.filter_map(|c| {
        let goes = Goes::Do(Action::Colours(c));
        one((theme::label(c), also), "Colours", None, goes, wanted)
    });
    let still = ("No movement, or movement again", "Motion animation still");
    let still = one(still, "Movement", None, Goes::Do(Action::Still), wanted);
    colours.chain(still).collect()
}

fn people(view: &View<'_>, wanted: &[String]) -> Vec<Found> {
    let marks = lexicon(&view.club.rules.words);
    let comes = |who| view.boards.iter().any(|(id, _)| *id == who);
    let participants = view.club.participants.iter().filter_map(|p| {
        let to = match view.session {
            Some(s) if comes(p.id) => Spot::Board(s.id, p.id),
            _ => Spot::Participant(p.id),
        };
        let names = (p.name.as_str(), marks.mark(&p.mark));
        one(names, "Participant", None, Goes::To(to), wanted)
    });
    let helpers = view.club.helpers.iter().filter_map(|h| {
        let to = Goes::To(Spot::Helper(h.id));
        one((&h.name, ""), "Helper", None, to, wanted)
    });
    best(participants.chain(helpers).collect())
}

fn days(view: &View<'_>, wanted: &[String]) -> Vec<Found> {
    let all = view.club.sessions.iter().filter_map(|s| {
        let when = crate::ui::dates::short(s.date);
        let to = Goes::To(Spot::Session(s.id));
        let kind = format!("Session, {when}");
        one((&s.title, &when), &kind, None, to, wanted)
    });
    best(all.collect())
}

fn activities(view: &View<'_>, wanted: &[String]) -> Vec<Found> {
    let all = view.club.activities.iter().filter_map(|a| {
        let part = view.club.part(a.part).map_or("", |p| p.name.as_str());
        let to = Goes::To(Spot::Activity(a.id));
        one((&a.label, part), "Activity", Some(&a.symbol), to, wanted)
    });
    best(all.collect())
}

fn pictures(view: &View<'_>, wanted: &[String]) -> Vec<Found> {
    let all = view.club.pictures.iter().filter_map(|p| {
        let to = Goes::To(Spot::Picture(p.id));
        let names = (p.name.as_str(), p.words.join(" "));
        let symbol = p.symbol();
        one(
            (names.0, &names.1),
            "Own picture",
            Some(&symbol),
            to,
            wanted,
        )
    });
    best(all.collect())
}

/// Symbols are found as in the tray, letters wrong too; they come last.
fn symbols(view: &View<'_>, typed: &str) -> Vec<Found> {
    let names = lexicon(&view.club.rules.words);
    let fit = names.search(typed).into_iter().take(OF_A_KIND);
    let found = fit.map(|s| Found {
        label: names.label(&s.id).to_owned(),
        kind: "Symbol".to_owned(),
        symbol: Some(s.id.clone()),
        goes: Goes::Symbol(names.label(&s.id).to_owned()),
        rank: 4,
    });
    found.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fits(label: &str, also: &str, typed: &str) -> Option<u32> {
        rank(label, also, &words(typed))
    }

    #[test]
    fn what_begins_so_comes_before_what_holds_it() {
        assert_eq!(fits("Whole group", "All boards", "who"), Some(0));
        assert_eq!(fits("Whole group", "All boards", "group"), Some(1));
        assert_eq!(fits("Whole group", "All boards", "gro boa"), Some(2));
        assert_eq!(fits("Sunscreen", "", "screen"), Some(3));
        assert_eq!(
            fits("Sunscreen", "", "en"),
            None,
            "two letters are anywhere"
        );
        assert_eq!(fits("Zoë", "", "zoe"), Some(0));
        assert_eq!(fits("Zoe", "", "zoë"), Some(0));
        assert_eq!(fits("Mila", "kite", "milo"), None);
    }
}
