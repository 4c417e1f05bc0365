//! The pages of the help as they are written in `assets/help/`: the first line is the title, then
//! one thought a line. A line beginning `- ` is a point, `[picture NAME] WORDS` a picture with what
//! is said to whoever cannot see it, `[keys]` the tables of keys. Within a line a key stands in
//! `[ ]`, and a name that the window shows in `* *`. An empty line leaves room.

use std::sync::LazyLock;

use super::keys;
use crate::assets;

/// The pages in the order of an evening, by the names of their files.
pub const ORDER: [&str; 12] = [
    "evening", "session", "people", "boards", "story", "checks", "print", "together", "pictures",
    "keys", "mind", "limits",
];

/// A page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Page {
    /// The name of its file.
    pub name: &'static str,
    /// Its title.
    pub title: &'static str,
    /// What is on it.
    pub lines: Vec<Line>,
}

/// A line of a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// What it is.
    pub what: What,
    /// Whether there is room above it.
    pub room: bool,
}

/// What a line is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// Sentences.
    Text(Vec<Run>),
    /// One of several points.
    Point(Vec<Run>),
    /// A picture.
    Picture {
        /// The name of its file.
        name: &'static str,
        /// What is to be seen on it.
        says: &'static str,
    },
    /// A heading within the page.
    Heading(&'static str),
    /// A key, or what the mouse does, and what comes of it.
    Key(String, &'static str),
}

/// How words are meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Means {
    /// Words.
    Words,
    /// A name that the window shows.
    Name,
    /// A key.
    Key,
}

/// Words that are meant in one way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Run {
    /// The words.
    pub words: &'static str,
    /// How they are meant.
    pub means: Means,
}

impl What {
    /// Its words, as a screen reader says them and as they are looked through.
    pub fn words(&self) -> String {
        match self {
            Self::Text(runs) | Self::Point(runs) => runs.iter().map(|r| r.words).collect(),
            Self::Picture { says, .. } => (*says).to_owned(),
            Self::Heading(words) => (*words).to_owned(),
            Self::Key(key, what) => format!("{key}: {what}"),
        }
    }

    /// Its runs, if it has any.
    pub fn runs(&self) -> &[Run] {
        match self {
            Self::Text(runs) | Self::Point(runs) => runs,
            _ => &[],
        }
    }
}

/// All pages, in their order.
pub fn pages() -> &'static [Page] {
    static PAGES: LazyLock<Vec<Page>> = LazyLock::new(|| {
        let text = |name| assets::help_text(name).unwrap_or_default();
        ORDER.iter().map(|name| read(name, text(name))).collect()
    });
    &PAGES
}

/// The place of a page among all, the first if there is none of that name.
pub fn at(name: &str) -> usize {
    ORDER.iter().position(|n| *n == name).unwrap_or(0)
}

fn read(name: &'static str, text: &'static str) -> Page {
    let (title, rest) = text.split_once('\n').unwrap_or((text, ""));
    let (mut lines, mut room) = (Vec::new(), false);
    for line in rest.lines().map(str::trim) {
        if line.is_empty() {
            room = true;
        } else if line == "[keys]" {
            lines.extend(keys::lines());
        } else {
            lines.push(Line {
                what: read_line(line),
                room: std::mem::take(&mut room),
            });
        }
    }
    Page { name, title, lines }
}

fn read_line(line: &'static str) -> What {
    let picture = line.strip_prefix("[picture ");
    if let Some((name, says)) = picture.and_then(|rest| rest.split_once(']')) {
        let says = says.trim();
        return What::Picture { name, says };
    }
    match line.strip_prefix("- ") {
        Some(rest) => What::Point(read_runs(rest)),
        None => What::Text(read_runs(line)),
    }
}

fn read_runs(line: &'static str) -> Vec<Run> {
    let (mut runs, mut rest) = (Vec::new(), line);
    let mut push = |words: &'static str, means| {
        if !words.is_empty() {
            runs.push(Run { words, means });
        }
    };
    while let Some(i) = rest.find(['[', '*']) {
        let (close, means) = if rest[i..].starts_with('[') {
            (']', Means::Key)
        } else {
            ('*', Means::Name)
        };
        let Some(n) = rest[i + 1..].find(close) else {
            break;
        };
        push(&rest[..i], Means::Words);
        push(&rest[i + 1..i + 1 + n], means);
        rest = &rest[i + 2 + n..];
    }
    push(rest, Means::Words);
    runs
}

#[cfg(test)]
mod tests {
    use super::*;

    fn run(words: &'static str, means: Means) -> Run {
        Run { words, means }
    }

    #[test]
    fn a_page_is_read_as_it_is_written() {
        let page = read(
            "x",
            "Title\n\nOne [Ctrl+S].\n- *Two*: a\n\n[picture p] A board.\nOdd * here\n",
        );
        assert_eq!(page.title, "Title");
        let room: Vec<bool> = page.lines.iter().map(|l| l.room).collect();
        assert_eq!(room, [true, false, true, false]);
        let what: Vec<What> = page.lines.into_iter().map(|l| l.what).collect();
        let one = [
            run("One ", Means::Words),
            run("Ctrl+S", Means::Key),
            run(".", Means::Words),
        ];
        assert_eq!(what[0], What::Text(one.to_vec()));
        let two = [run("Two", Means::Name), run(": a", Means::Words)];
        assert_eq!(what[1], What::Point(two.to_vec()));
        let picture = What::Picture {
            name: "p",
            says: "A board.",
        };
        assert_eq!(what[2], picture);
        assert_eq!(what[3].words(), "Odd * here");
    }
}
