//! Pages to plain text, in reading order.

use crate::page::Page;
use crate::page::dump::{Read, read};

/// The words of the pages: headings and paragraphs a line each, an empty line between pages and
/// before a heading. Pictures are left out, since the words beside them say the same; `pictures`
/// puts the words that stand for them in brackets.
pub fn text(pages: &[Page], pictures: bool) -> String {
    let mut out = String::new();
    for page in pages {
        let mut gap = !out.is_empty();
        for piece in read(page) {
            let line = match &piece {
                Read::Heading(_, text) => {
                    gap |= !out.is_empty();
                    text.clone()
                }
                Read::Paragraph(text) => text.clone(),
                Read::Figure(alt) if pictures => format!("[{alt}]"),
                Read::Figure(_) => continue,
            };
            if std::mem::take(&mut gap) {
                out.push('\n');
            }
            out.push_str(&line);
            out.push('\n');
        }
    }
    out
}
