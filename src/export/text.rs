//! A story as plain text, for a message or a screen reader: each page's heading, then a sentence a
//! line, in the order of the pages.

use crate::story::{PageKind, Small, Story, StoryPage};

/// The text; `foot` is said last.
pub fn text(story: &Story, foot: &str) -> String {
    let mut out = String::new();
    line(&mut out, &story.title);
    second(&mut out, story.title_second.as_deref());
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
    second(out, page.heading_second.as_deref());
    // As on paper: what stands without a card first, then the day in small, then the cards.
    let (plain, beside): (Vec<_>, Vec<_>) = page.lines.iter().partition(|l| l.card.is_none());
    for told in plain {
        line(out, &told.text);
        second(out, told.second.as_deref());
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
        second(out, told.second.as_deref());
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

/// The same in the second language, where someone wrote it.
fn second(out: &mut String, words: Option<&str>) {
    if let Some(words) = words {
        line(out, words);
    }
}

fn line(out: &mut String, words: &str) {
    out.push_str(words);
    out.push('\n');
}
