//! Pages to plain text, in reading order.

use std::collections::{BTreeMap, BTreeSet};

use crate::page::Page;
use crate::page::dump::{Read, read};

/// From how many pages on a line that stands on most of them is a running line.
const RUNNING_FROM: usize = 3;

/// The words of the pages: headings and paragraphs a line each, an empty line between pages and
/// before a heading. Pictures are left out, since the words beside them say the same; `pictures`
/// puts the words that stand for them in brackets.
///
/// What stands on most pages (a running title, the plan code, cards at the foot) is said once, and
/// page counts not at all: a text has no pages.
pub fn text(pages: &[Page], pictures: bool) -> String {
    let pages: Vec<Vec<Read>> = pages.iter().map(read).collect();
    let mut running = Running::of(&pages);
    let mut out = String::new();
    for page in &pages {
        let mut gap = !out.is_empty();
        for section in page.chunk_by(|_, next| !matches!(next, Read::Heading(..))) {
            for piece in running.fresh(section) {
                let line = match piece {
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
    }
    out
}

/// Which lines stand on most pages, and which of them were said.
struct Running {
    /// With digits blotted out: a line that differs in numbers only counts pages.
    shapes: BTreeMap<String, BTreeSet<String>>,
    said: BTreeSet<String>,
}

impl Running {
    fn of(pages: &[Vec<Read>]) -> Self {
        let mut on: BTreeMap<String, (usize, BTreeSet<String>)> = BTreeMap::new();
        for page in pages {
            let lines: BTreeSet<&str> = page.iter().map(words).collect();
            for line in lines {
                let (count, forms) = on.entry(shape(line)).or_default();
                *count += 1;
                forms.insert(line.to_owned());
            }
        }
        let most = RUNNING_FROM.max(pages.len() / 2 + 1);
        let shapes = on
            .into_iter()
            .filter(|(_, (count, _))| *count >= most)
            .map(|(shape, (_, forms))| (shape, forms))
            .collect();
        Self {
            shapes,
            said: BTreeSet::new(),
        }
    }

    /// The pieces of a section that are to be said: all that do not run, and running ones the first
    /// time. A heading stays with what follows it, and goes when nothing does.
    fn fresh<'a>(&mut self, section: &'a [Read]) -> Vec<&'a Read> {
        let mut heading = None;
        let mut fresh = Vec::new();
        for piece in section {
            if !self.repeats(words(piece)) {
                fresh.push(piece);
            } else if matches!(piece, Read::Heading(..)) {
                heading = Some(piece);
            }
        }
        if !fresh.is_empty()
            && let Some(heading) = heading
        {
            fresh.insert(0, heading);
        }
        fresh
    }

    /// Whether a line is a running one that was said before, or counts pages.
    fn repeats(&mut self, line: &str) -> bool {
        match self.shapes.get(&shape(line)) {
            None => false,
            Some(forms) if forms.len() > 1 => true,
            Some(_) => !self.said.insert(line.to_owned()),
        }
    }
}

fn words(piece: &Read) -> &str {
    match piece {
        Read::Heading(_, text) | Read::Paragraph(text) | Read::Figure(text) => text,
    }
}

/// A line with each number blotted out, however long the number is.
fn shape(line: &str) -> String {
    let mut shape = String::new();
    for c in line.chars() {
        let c = if c.is_ascii_digit() { '#' } else { c };
        if c != '#' || !shape.ends_with('#') {
            shape.push(c);
        }
    }
    shape
}
