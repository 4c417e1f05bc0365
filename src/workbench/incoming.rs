//! Pictures on their way in: read and made clean in the background, one after the other, then looked
//! at by a person and kept, or not.

use std::collections::VecDeque;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, TryRecvError};

use image::RgbaImage;

use super::Workbench;
use super::command::{Effect, Notice};
use super::files::file_name;
use super::jobs;
use crate::intake::{self, Finished, Kind, Recipe, Taken, WORKING_PX};
use crate::model::club::Club;
use crate::model::edit::Edit;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::picture::{Drawing, Made, Photo, PhotoKind, Picture};
use crate::storage::pictures;

/// For what a picture is brought.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Purpose {
    /// Whose it will be; nobody's is the club's.
    pub whose: Option<ParticipantId>,
    /// In the place of which symbol it will be seen.
    pub stands_for: Option<SymbolId>,
    /// What that symbol is called there, to begin with as a name.
    pub label: String,
}

/// A picture that came in and waits to be looked at.
#[derive(Debug)]
pub struct Arrived {
    /// Tells it from all others.
    pub number: u64,
    /// A name to begin with.
    pub name: String,
    /// What it is.
    pub what: Taken,
    /// For what it was brought.
    pub purpose: Purpose,
}

/// What is shown of pictures on their way in.
#[derive(Clone, Copy, Debug)]
pub struct Arriving<'a> {
    /// The one to look at.
    pub first: Option<&'a Arrived>,
    /// How many wait behind it.
    pub behind: usize,
    /// Whether more are being read.
    pub reading: bool,
}

/// One that is kept.
#[derive(Clone, Debug, PartialEq)]
pub struct Keep {
    /// What to make of a photograph.
    pub recipe: Recipe,
    /// All that is said about it; what is seen comes from what arrived.
    pub picture: Picture,
}

/// What the thread that reads sends.
pub(super) type Read = Result<(String, Taken), (String, String)>;

/// Pictures on their way in.
#[derive(Debug, Default)]
pub(super) struct Incoming {
    waiting: VecDeque<Arrived>,
    reading: Option<(Purpose, Receiver<Read>)>,
    refused: Vec<(String, String)>,
    came: usize,
    given: u64,
}

impl Incoming {
    pub(super) fn view(&self) -> Option<Arriving<'_>> {
        let reading = self.reading.is_some();
        let any = reading || !self.waiting.is_empty();
        any.then(|| Arriving {
            first: self.waiting.front(),
            behind: self.waiting.len().saturating_sub(1),
            reading,
        })
    }

    fn arrive(&mut self, name: String, what: Taken, purpose: Purpose) {
        self.given += 1;
        self.came += 1;
        self.waiting.push_back(Arrived {
            number: self.given,
            name,
            what,
            purpose,
        });
    }

    /// Takes in what was read; whether anything was, and what to tell when all was.
    fn poll(&mut self) -> (bool, Option<Notice>) {
        let mut changed = false;
        while let Some((purpose, receiver)) = &self.reading {
            match receiver.try_recv() {
                Ok(Ok((name, what))) => {
                    let purpose = purpose.clone();
                    self.arrive(name, what, purpose);
                }
                Ok(Err(refused)) => self.refused.push(refused),
                Err(TryRecvError::Empty) => break,
                Err(TryRecvError::Disconnected) => {
                    self.reading = None;
                    let refused = std::mem::take(&mut self.refused);
                    let told = told(std::mem::take(&mut self.came), refused);
                    return (true, told);
                }
            }
            changed = true;
        }
        (changed, None)
    }
}

/// What could not be taken, in one notice.
fn told(came: usize, mut refused: Vec<(String, String)>) -> Option<Notice> {
    let (sentence, hint) = match refused.len() {
        0 => return None,
        1 => refused.remove(0),
        _ => {
            let all: Vec<String> = refused.into_iter().map(|(what, _)| what).collect();
            (all.join(" "), "The others came in.".to_owned())
        }
    };
    let hint = if came == 0 && hint.starts_with("The others") {
        "Choose photographs in JPEG, PNG or WebP, or drawings in SVG.".to_owned()
    } else {
        hint
    };
    Some(Notice::trouble(sentence, hint))
}

/// Reads files one after the other and makes them clean.
pub(super) fn read_all(files: &[PathBuf], mut tell: impl FnMut(Read) -> bool) {
    for path in files {
        if !tell(read_one(path)) {
            return;
        }
    }
}

fn read_one(path: &Path) -> Read {
    let bytes = pictures::read(path).map_err(|e| (e.sentence, e.hint))?;
    let name = file_name(path);
    let taken = intake::take(&name, &bytes).map_err(|r| (r.what, r.hint))?;
    let stem = path.file_stem().unwrap_or_default().to_string_lossy();
    Ok((spoken(&stem), taken))
}

/// A name to begin with: a file's name as words. One that a camera gave is no name.
fn spoken(stem: &str) -> String {
    let digits = stem.chars().filter(char::is_ascii_digit).count();
    if digits * 2 >= stem.chars().count() {
        return String::new();
    }
    let words = stem.replace(['_', '-'], " ");
    let mut signs = words.trim().chars();
    let first = signs.next().map(|c| c.to_uppercase().to_string());
    first.unwrap_or_default() + signs.as_str()
}

/// Pixels on the longest side that this club's paper needs: 300 dots an inch across its largest
/// tile, and across 110 mm, the largest picture on a board or in a story in large print on A4.
pub fn needed_px(club: &Club) -> u32 {
    const LARGE_PRINT_MM: f64 = 110.0;
    let sizes = club.participants.iter().map(|p| p.tile_size());
    let sides = sizes.map(|s| s.w.max(s.h).to_mm());
    let largest = sides.fold(LARGE_PRINT_MM, f64::max);
    ((largest / 25.4 * 300.0).ceil() as u32).min(WORKING_PX)
}

fn photo(finished: Finished) -> Photo {
    let kind = match finished.kind {
        Kind::Jpeg => PhotoKind::Jpeg,
        Kind::Png => PhotoKind::Png,
    };
    Photo::new(kind, [finished.width, finished.height], finished.bytes)
}

impl Workbench {
    pub(super) fn ask_pictures(&mut self, purpose: Purpose, effects: &mut Vec<Effect>) {
        effects.push(Effect::AskPictures { purpose });
    }

    pub(super) fn take_pictures(&mut self, paths: &[PathBuf], purpose: Purpose) {
        let files = match pictures::files(paths) {
            Ok(files) => files,
            Err(e) => return self.tell(Notice::trouble(e.sentence, e.hint)),
        };
        if files.is_empty() {
            return self.tell(Notice::trouble(
                "There are no pictures in it.",
                "Choose photographs in JPEG, PNG or WebP, or drawings in SVG.",
            ));
        }
        if self.incoming.reading.is_some() {
            return self.tell(Notice::trouble(
                "Pictures are still being read.",
                "Wait until they are here, then bring the next ones.",
            ));
        }
        match jobs::reading(files) {
            Some(receiver) => self.incoming.reading = Some((purpose, receiver)),
            None => self.tell(Notice::trouble(
                "The system gives no room to read pictures just now.",
                "Close other programs and try again.",
            )),
        }
    }

    /// Pixels from the clipboard.
    pub(super) fn take_pixels(&mut self, pixels: &RgbaImage, purpose: Purpose) {
        let many = u64::from(pixels.width()) * u64::from(pixels.height());
        if many == 0 || many > intake::MOST_PIXELS {
            return self.tell(Notice::trouble(
                "The picture on the clipboard is larger than pictures are taken.",
                "Copy a part of it, or save it smaller and bring the file.",
            ));
        }
        let photo = intake::Photo::from_pixels(pixels.clone(), Vec::new());
        self.incoming
            .arrive(String::new(), Taken::Photo(photo), purpose);
    }

    /// Takes in what was read in the background; whether anything changed.
    pub(super) fn poll_incoming(&mut self) -> bool {
        let (changed, told) = self.incoming.poll();
        if let Some(notice) = told {
            self.tell(notice);
        }
        changed
    }

    pub(super) fn keep_arrived(&mut self, keep: &Keep) {
        let Some(arrived) = self.incoming.waiting.front() else {
            return;
        };
        let made = match &arrived.what {
            Taken::Photo(taken) => {
                let finished = taken.develop(&keep.recipe, needed_px(self.history.club()));
                Made::Photo(Arc::new(photo(finished)))
            }
            Taken::Drawing(drawing) => Made::Drawing(Arc::new(Drawing::new(&drawing.svg))),
        };
        let picture = Picture {
            made,
            ..keep.picture.clone()
        };
        let before = self.history.revision();
        self.edit(&Edit::AddPicture(picture));
        // One that is refused stays, so that what is in the way can be put right.
        if self.history.revision() != before {
            self.incoming.waiting.pop_front();
        }
    }

    /// Keeps all that wait, as they are, for what they were brought.
    pub(super) fn keep_all_arrived(&mut self) {
        while let Some(arrived) = self.incoming.waiting.front() {
            let picture = begun(arrived);
            let left = self.incoming.waiting.len();
            self.keep_arrived(&Keep {
                recipe: Recipe::default(),
                picture,
            });
            if self.incoming.waiting.len() == left {
                return;
            }
        }
    }

    pub(super) fn pass_arrived(&mut self) {
        self.incoming.waiting.pop_front();
    }

    pub(super) fn pass_all_arrived(&mut self) {
        self.incoming = Incoming {
            given: self.incoming.given,
            ..Incoming::default()
        };
    }
}

/// What is said of a picture before a person says more: named as what it stands for, else as its
/// file; someone's own for their own tiles, the club's for the group.
pub fn begun(arrived: &Arrived) -> Picture {
    let purpose = &arrived.purpose;
    let named = [&purpose.label, &arrived.name];
    let name = named.into_iter().map(|n| n.trim()).find(|n| !n.is_empty());
    let usual = Picture::new(name.unwrap_or("Picture"), Made::Drawing(Arc::default()));
    Picture {
        whose: purpose.whose,
        stands_for: purpose.stands_for.clone(),
        consent: match purpose.whose {
            Some(_) => crate::model::profile::PhotoConsent::OwnTiles,
            None => usual.consent,
        },
        ..usual
    }
}
