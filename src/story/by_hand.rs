//! What a person changed in a story, put upon what is told: other words, hidden and added sentences,
//! another order. What is about a sentence that is not told now waits and is not lost.

use super::page::{Line, StoryPage};
use crate::model::rewriting::{LineRef, PageWords};

/// The page as it is shown.
pub(super) fn apply(mut page: StoryPage, words: &PageWords) -> StoryPage {
    for line in &mut page.lines {
        if let Some(rewritten) = words.texts.get(&line.at) {
            line.stale = line.told.as_deref() != Some(rewritten.was.as_str());
            line.text.clone_from(&rewritten.text);
        }
    }
    page.lines.extend(words.added.iter().map(|(n, text)| Line {
        told: None,
        ..Line::told(LineRef::Added(*n), text.clone())
    }));
    let told: Vec<LineRef> = page.lines.iter().map(|l| l.at).collect();
    let order = order(&told, &words.order);
    page.reordered = order != told;
    page.lines
        .sort_by_key(|l| order.iter().position(|at| *at == l.at));
    let hidden = |l: &Line| words.hidden.contains(&l.at);
    (page.hidden, page.lines) = page.lines.into_iter().partition(hidden);
    page
}

/// Sentences as a person left them; those they did not place stand behind what is told before them.
fn order(told: &[LineRef], left: &[LineRef]) -> Vec<LineRef> {
    let mut all: Vec<LineRef> = Vec::with_capacity(told.len());
    for line in left.iter().filter(|l| told.contains(l)) {
        if !all.contains(line) {
            all.push(*line);
        }
    }
    for (i, line) in told.iter().enumerate() {
        if all.contains(line) {
            continue;
        }
        let before = told[..i].last();
        let after = before.and_then(|b| all.iter().position(|l| l == b));
        all.insert(after.map_or(0, |i| i + 1), *line);
    }
    all
}
