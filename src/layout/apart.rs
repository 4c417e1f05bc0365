//! A name and the photograph of a person never stand together where others can see it (guidance for
//! youth sport on photographs of children): whoever is named is not shown, whoever is shown is not
//! named. The name was chosen, so the photograph gives way.

use super::{Sheet, frame};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{SessionId, SymbolId};
use crate::model::privacy::Class;
use crate::page::{Item, Page, Role};
use crate::symbols::library::library;
use crate::symbols::variant::Variant;

/// Puts what it stands for in the place of each photograph of a person on a public page that names
/// a participant, and says so.
pub(super) fn keep_apart(club: &Club, session: SessionId, sheets: &mut [Sheet]) -> Vec<Finding> {
    let mut findings = Vec::new();
    if !club
        .pictures
        .iter()
        .any(|p| p.person && p.photo().is_some())
    {
        return findings;
    }
    for sheet in sheets {
        let mut given_way = false;
        for page in &mut sheet.pages {
            given_way |= page.class == Class::Public && separate(club, page);
        }
        if given_way {
            findings.push(Finding {
                severity: Severity::Look,
                code: "privacy.photo-and-name",
                spot: match sheet.participant {
                    Some(who) => Spot::Board(session, who),
                    None => Spot::Session(session),
                },
                sentence: format!(
                    "{} names a participant, so the photograph of a person is not on it; a \
                     drawing is.",
                    sheet.title
                ),
                hint: "Leave the name off, for instance with the voice “I”, or use a picture \
                       without a person."
                    .to_owned(),
            });
        }
    }
    findings
}

/// Whether a photograph gave way on the page.
fn separate(club: &Club, page: &mut Page) -> bool {
    if !shows_person(club, page) || !names_someone(club, page) {
        return false;
    }
    for block in &mut page.blocks {
        for item in &mut block.items {
            if let Item::Symbol { rect, key, .. } = item
                && is_of_person(club, &key.id)
            {
                let meant = club.meant_by(&key.id);
                let drawn = library().art(&meant, Variant::default());
                *item = frame::picture(&drawn, *rect);
            }
        }
        if let Role::Figure { alt } = &mut block.role {
            for picture in club.pictures.iter().filter(|p| p.person) {
                *alt = alt
                    .replace(picture.name.as_str(), "")
                    .trim_end_matches(": ")
                    .to_owned();
            }
        }
    }
    true
}

fn is_of_person(club: &Club, symbol: &SymbolId) -> bool {
    let own = club.own_picture(symbol);
    own.is_some_and(|p| p.person && p.photo().is_some())
}

fn shows_person(club: &Club, page: &Page) -> bool {
    let mut items = page.blocks.iter().flat_map(|b| &b.items);
    items.any(|i| matches!(i, Item::Symbol { key, .. } if is_of_person(club, &key.id)))
}

/// Whether the words of a page name a participant.
fn names_someone(club: &Club, page: &Page) -> bool {
    let mut text = String::from(" ");
    let items = page.blocks.iter().flat_map(|b| &b.items);
    for item in items {
        if let Item::Text { line, .. } = item {
            text.push_str(&plain(&line.text));
        }
    }
    text.push_str(&plain(&page.title));
    names_in(club, &text)
}

/// Whether words, made plain, name a participant.
fn names_in(club: &Club, text: &str) -> bool {
    let names = club.participants.iter().map(|p| plain(&p.name));
    let mut names = names.filter(|n| !n.trim().is_empty());
    names.any(|name| text.contains(&format!(" {name}")))
}

/// The picture for a story that is no page: what a photograph of a person stands for, where the words
/// of the story name a participant.
pub(super) fn in_story(club: &Club, words: &str, symbol: &SymbolId) -> Option<SymbolId> {
    let named = is_of_person(club, symbol) && names_in(club, &format!(" {}", plain(words)));
    named.then(|| club.meant_by(symbol))
}

/// Small letters, words apart by one blank, a blank at the end.
fn plain(text: &str) -> String {
    let sign = |c: char| if c.is_alphanumeric() { c } else { ' ' };
    let plain: String = text.to_lowercase().chars().map(sign).collect();
    let mut out = String::new();
    for word in plain.split_whitespace() {
        out.push_str(word);
        out.push(' ');
    }
    out
}
