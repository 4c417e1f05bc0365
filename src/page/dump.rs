//! A page as words, in reading order.

use std::fmt::Write as _;

use super::{Block, Item, Page, Role};

/// One piece read from a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Read {
    /// A heading of level 1 to 3.
    Heading(u8, String),
    /// A paragraph, its lines joined.
    Paragraph(String),
    /// The words that stand for a picture.
    Figure(String),
}

/// What a page says, in reading order. What is not read aloud is left out.
pub fn read(page: &Page) -> Vec<Read> {
    let read = page.blocks.iter().filter_map(|block| match &block.role {
        Role::Heading(level) => Some(Read::Heading(*level, words(block)?)),
        Role::Paragraph => Some(Read::Paragraph(words(block)?)),
        Role::Figure { alt } => Some(Read::Figure(alt.clone())),
        Role::Artifact => None,
    });
    read.collect()
}

/// The lines of a block joined with blanks; none when it has no words.
fn words(block: &Block) -> Option<String> {
    let mut out = String::new();
    for item in &block.items {
        if let Item::Text { line, .. } = item {
            if !out.is_empty() && !out.ends_with(' ') {
                out.push(' ');
            }
            out.push_str(line.text.trim_end());
        }
    }
    (!out.trim().is_empty()).then_some(out)
}

/// The page as text to compare and to look at: a line for each piece, `#` before headings, the
/// words for pictures in brackets.
pub fn dump(page: &Page) -> String {
    let (w, h) = (page.size.w.to_mm(), page.size.h.to_mm());
    let mut out = format!("{} ({w} x {h} mm, {})\n", page.title, page.class.label());
    for read in read(page) {
        let _ = match read {
            Read::Heading(level, text) => {
                writeln!(out, "{} {text}", "#".repeat(usize::from(level)))
            }
            Read::Paragraph(text) => writeln!(out, "{text}"),
            Read::Figure(alt) => writeln!(out, "[{alt}]"),
        };
    }
    out
}
