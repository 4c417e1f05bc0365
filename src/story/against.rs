//! Whether story and board agree: the same steps in the same order, with the same words and pictures;
//! and whether what a person wrote still fits the plan.

use std::collections::BTreeSet;

use super::page::{PageKind, Story, StoryPage};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::ids::{StepRef, SymbolId};
use crate::model::rewriting::{LineRef, PageRef};

/// A step as a story or a board shows it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The step.
    pub step: StepRef,
    /// Its words.
    pub label: String,
    /// Its picture.
    pub symbol: SymbolId,
    /// Where the story tells of it.
    pub page: Option<PageRef>,
}

/// Something in which story and board do not agree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Mismatch {
    /// A step of the board that the story does not tell of.
    Missing(StepRef),
    /// A step that the story tells of and the board does not have.
    Extra(StepRef),
    /// The first step that stands elsewhere in the story than on the board.
    Order(StepRef),
    /// Other words.
    Words(StepRef),
    /// Another picture.
    Picture(StepRef),
    /// A sentence that a person wrote when the program said something else there.
    ChangedSince(PageRef, LineRef),
    /// A sentence that a person wrote names an activity that is not on the board.
    NotOnBoard(PageRef, LineRef, String),
}

/// What a board shows.
pub fn of_board(board: &Board) -> Vec<Shown> {
    let shown = |s: &crate::model::board::Step| Shown {
        step: s.at,
        label: s.label.clone(),
        symbol: s.symbol.clone(),
        page: None,
    };
    board.steps.iter().map(shown).collect()
}

/// What a story shows of a board, in its order; of a page that is only about what is new, nothing.
pub fn of_story(story: &Story) -> Vec<Shown> {
    let pages = story.pages.iter().filter(|p| p.kind != PageKind::New);
    pages.flat_map(of_page).collect()
}

fn of_page(page: &StoryPage) -> Vec<Shown> {
    let shown = |step, label: &str, symbol: &SymbolId| Shown {
        step,
        label: label.to_owned(),
        symbol: symbol.clone(),
        page: Some(page.at),
    };
    let own = page.step.map(|s| shown(s, &page.heading, &page.symbol));
    let small = page
        .small
        .iter()
        .map(|s| shown(s.step, &s.card.label, &s.card.symbol));
    let lines = page.lines.iter().filter_map(|l| {
        let card = l.card.as_ref()?;
        Some(shown(l.step?, &card.label, &card.symbol))
    });
    own.into_iter().chain(small).chain(lines).collect()
}

/// In what they differ, in the order of the board; the order is looked at only where both have the
/// same steps.
pub fn compare(story: &[Shown], board: &[Shown]) -> Vec<Mismatch> {
    let mut found = Vec::new();
    let has = |all: &[Shown], step: StepRef| all.iter().any(|s| s.step == step);
    let missing = board.iter().filter(|b| !has(story, b.step));
    found.extend(missing.map(|b| Mismatch::Missing(b.step)));
    let extra = story.iter().filter(|s| !has(board, s.step));
    found.extend(extra.map(|s| Mismatch::Extra(s.step)));
    let same_set = found.is_empty();
    for b in board {
        let Some(s) = story.iter().find(|s| s.step == b.step) else {
            continue;
        };
        if s.label != b.label {
            found.push(Mismatch::Words(b.step));
        }
        if s.symbol != b.symbol {
            found.push(Mismatch::Picture(b.step));
        }
    }
    let elsewhere = board.iter().zip(story).find(|(b, s)| b.step != s.step);
    if let Some((b, _)) = elsewhere.filter(|_| same_set) {
        found.push(Mismatch::Order(b.step));
    }
    found
}

/// Everything in which a story does not agree with its board.
pub fn look(club: &Club, story: &Story, board: &Board) -> Vec<Mismatch> {
    let mut found = compare(&of_story(story), &of_board(board));
    for page in &story.pages {
        for line in page.lines.iter().filter(|l| l.is_rewritten()) {
            if line.stale {
                found.push(Mismatch::ChangedSince(page.at, line.at));
            }
            let named = not_on_board(club, board, &line.text);
            found.extend(named.map(|label| Mismatch::NotOnBoard(page.at, line.at, label)));
        }
    }
    found
}

/// An activity of the club that a sentence names and the board does not show: its label of two
/// words or more, or of one with a capital within the sentence.
fn not_on_board(club: &Club, board: &Board, sentence: &str) -> Option<String> {
    let on_board: BTreeSet<String> = board
        .steps
        .iter()
        .flat_map(|s| std::iter::once(&s.label).chain(s.options.iter().map(|o| &o.label)))
        .map(|l| l.trim().to_lowercase())
        .collect();
    let labels = club.activities.iter().map(|a| a.label.trim());
    let mut absent = labels.filter(|l| !l.is_empty() && !on_board.contains(&l.to_lowercase()));
    absent
        .find(|label| names(sentence, label))
        .map(str::to_owned)
}

/// Whether a sentence names a label, as words of their own.
fn names(sentence: &str, label: &str) -> bool {
    let several = label.contains(' ');
    let (text, wanted) = match several {
        true => (sentence.to_lowercase(), label.to_lowercase()),
        false => (sentence.to_owned(), super::voice::capitalised(label)),
    };
    let letter = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
    let whole = |(at, found): (usize, &str)| {
        let (before, after) = (&text[..at], &text[at + found.len()..]);
        let starts = before.trim().is_empty() || before.trim_end().ends_with(['.', '!', '?']);
        !letter(before.chars().next_back())
            && !letter(after.chars().next())
            // The first word of a sentence has a capital anyway.
            && (several || !starts)
    };
    text.match_indices(wanted.as_str()).any(whole)
}
