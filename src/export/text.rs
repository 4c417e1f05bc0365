//! A story as plain text, for a message or a screen reader: each page's heading, then a sentence a
//! line, in the order of the pages.

use crate::story::{PageKind, Small, Story, StoryPage};

/// The text; `foot` is said last.
pub fn text(story: &Story, foot: &str) -> String {
    let mut out = String::new();
    line(&mut out, &story.title);
    for second in story.title_second.iter().filter(|s| **s != story.title) {
        line(&mut out, second);
    }
    for page in &story.pages {
        out.push('\n');
        write_page(&mut out, page);
    }
    out.push('\n');
    if story.is_unread() {
        line(&mut out, "Second language: not yet checked by a reader.");
    }
    line(&mut out, foot);
    out
}

fn write_page(out: &mut String, page: &StoryPage) {
    match page.kind {
        PageKind::NotToday => line(out, &format!("{} (not today)", page.heading)),
        _ => line(out, &page.heading),
    }
    for second in &page.heading_second {
        line(out, second);
    }
    // As on paper: what stands without a card first, then the day in small, then the cards.
    let (plain, beside): (Vec<_>, Vec<_>) = page.lines.iter().partition(|l| l.card.is_none());
    for told in plain {
        line(out, &told.text);
        for second in &told.second {
            line(out, second);
        }
    }
    for small in &page.small {
        line(out, &format!("- {}", small_words(small)));
    }
    for told in beside {
        // Where no sentence is wanted the card speaks for itself.
        let label = told.card.as_ref().map_or("", |c| c.label.as_str());
        line(
            out,
            if told.text.is_empty() {
                label
            } else {
                &told.text
            },
        );
        for second in &told.second {
            line(out, second);
        }
    }
}

fn small_words(small: &Small) -> String {
    let label = small.card.label.trim();
    match (small.off, small.new) {
        (true, _) => format!("{label} (not today)"),
        (false, true) => format!("{label} (new)"),
        (false, false) => label.to_owned(),
    }
}

fn line(out: &mut String, words: &str) {
    out.push_str(words);
    out.push('\n');
}
