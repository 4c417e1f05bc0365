//! Whether a page keeps what painters and readers rely on. Layout never breaks these; its tests ask.

use super::hit::item_box;
use super::{Item, Page, Role};
use crate::units::{Point, Rect};

/// What is wrong with a page, one sentence each; empty for a sound one.
pub fn faults(page: &Page) -> Vec<String> {
    let mut faults = Vec::new();
    let mut say = |what: String| faults.push(format!("{}: {what}", page.title));
    if page.title.trim().is_empty() {
        say("the page has no title.".to_owned());
    }
    if page.lang.trim().is_empty() {
        say("the language of the page is not given.".to_owned());
    }
    let mut level = 0;
    for (i, block) in page.blocks.iter().enumerate() {
        let has_words = block.items.iter().any(|i| matches!(i, Item::Text { .. }));
        match &block.role {
            Role::Heading(l) => {
                if !(1..=3).contains(l) || *l > level + 1 {
                    say(format!(
                        "block {i} is a heading of level {l} after level {level}."
                    ));
                }
                level = *l;
                if !has_words {
                    say(format!("block {i} is a heading without words."));
                }
            }
            Role::Paragraph if !has_words => {
                say(format!("block {i} is a paragraph without words."))
            }
            Role::Figure { alt } if alt.trim().is_empty() => {
                say(format!("block {i} is a picture without words for it."));
            }
            Role::Figure { .. } if block.items.is_empty() => {
                say(format!("block {i} is an empty picture."));
            }
            _ => {}
        }
        for item in &block.items {
            faults_of_item(page, i, item, &mut say);
        }
    }
    faults
}

fn faults_of_item(page: &Page, block: usize, item: &Item, say: &mut impl FnMut(String)) {
    let paper = Rect::new(Point::default(), page.size);
    let Some(area) = item_box(item) else {
        if matches!(item, Item::Text { .. }) {
            say(format!("block {block} has a line without glyphs."));
        }
        return;
    };
    match item {
        // The box of a line is generous above and below; its ends are exact.
        Item::Text { at, line, .. }
            if (area.x < paper.x || area.right() > paper.right() || !paper.contains(*at)) =>
        {
            say(format!(
                "block {block}: the words {:?} leave the paper.",
                line.text
            ));
        }
        Item::Symbol { key, .. } if !paper.encloses(area) => {
            say(format!(
                "block {block}: the symbol {} leaves the paper.",
                key.id
            ));
        }
        Item::Shape { .. } if !paper.encloses(area) => {
            say(format!("block {block}: a shape leaves the paper."));
        }
        _ => {}
    }
}
