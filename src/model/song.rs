//! The club's own songs and chants: their words, printed large for families.

use super::ids::{ActivityId, SongId};

/// A song or a chant of the club.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Song {
    /// Its id.
    pub id: SongId,
    /// What it is called.
    pub title: String,
    /// Its words, line by line; an empty line ends a verse.
    pub words: String,
    /// The activity in which it is sung, whose picture stands beside the title.
    pub activity: Option<ActivityId>,
}

impl Song {
    /// A song without words; the id is given when it is added.
    pub fn new(title: &str) -> Self {
        Self {
            id: SongId(0),
            title: title.to_owned(),
            words: String::new(),
            activity: None,
        }
    }

    /// The lines of each verse, without empty ones.
    pub fn verses(&self) -> Vec<Vec<&str>> {
        let mut verses = vec![Vec::new()];
        for line in self.words.lines().map(str::trim) {
            match verses.last_mut() {
                Some(verse) if !line.is_empty() => verse.push(line),
                _ => verses.push(Vec::new()),
            }
        }
        verses.retain(|v| !v.is_empty());
        verses
    }
}
