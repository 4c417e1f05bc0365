//! Writing sheets into a folder: what is wanted, one file after the other, and what came of it.
//! Runs on any thread; asks after every file whether to go on.

use std::collections::BTreeSet;
use std::path::PathBuf;
use std::sync::Arc;

use super::command::Format;
use super::telephone;
use crate::check::privacy::{self, Facts};
use crate::export::{pdf, png};
use crate::layout::{self, Request, Sheet, SheetKind};
use crate::model::club::Club;
use crate::model::ids::ParticipantId;
use crate::model::privacy::Class;
use crate::storage::FileError;
use crate::storage::output::OutputFolder;

/// Resolution of pictures, in dots per inch; common practice for print.
const PICTURE_DPI: f64 = 300.0;

/// What is to be written.
#[derive(Clone, Debug)]
pub struct Order {
    /// The club as it is printed.
    pub club: Arc<Club>,
    /// Which sheets.
    pub request: Request,
    /// Which files for each sheet.
    pub formats: Vec<Format>,
    /// Whether all PDF sheets for the same readers go into one file.
    pub one_file: bool,
    /// Into which folder; it is made if it is not there.
    pub folder: PathBuf,
}

/// What is being done now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// The file.
    pub doing: String,
    /// Files done.
    pub done: usize,
    /// Files in all.
    pub total: usize,
}

/// Whether to go on after a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Go {
    /// Write the next one.
    On,
    /// Stop here.
    Stop,
}

/// A file that was written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// Of which kind of sheet.
    pub kind: SheetKind,
    /// Whose.
    pub participant: Option<ParticipantId>,
    /// Which kind of file.
    pub format: Format,
    /// Where.
    pub path: PathBuf,
    /// Pages in it.
    pub pages: usize,
}

/// What came of it. Files written stay, however it ended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Outcome {
    /// The folder.
    pub folder: PathBuf,
    /// What was written, in order.
    pub written: Vec<Written>,
    /// Files that were wanted.
    pub wanted: usize,
    /// How it ended.
    pub end: End,
}

/// How writing ended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum End {
    /// Everything is written.
    Done,
    /// Someone stopped it.
    Stopped,
    /// A file could not be written.
    Failed {
        /// What happened.
        sentence: String,
        /// What to do.
        hint: String,
    },
}

/// Writes what is wanted and reports before each file.
pub fn write(order: &Order, report: &mut dyn FnMut(Step) -> Go) -> Outcome {
    let sheets = layout::lay_out(&order.club, &order.request).sheets;
    let together = if order.one_file {
        together(order, &sheets)
    } else {
        Vec::new()
    };
    let files = files(&sheets, &together, &order.formats);
    let mut outcome = Outcome {
        folder: order.folder.clone(),
        written: Vec::with_capacity(files.len()),
        wanted: files.len(),
        end: End::Done,
    };
    if files.is_empty() {
        return outcome;
    }
    if let Some(end) = refused(&order.club, &sheets) {
        outcome.end = end;
        return outcome;
    }
    if let Err(end) = write_all(order, &files, &mut outcome.written, report) {
        outcome.end = end;
    }
    outcome
}

/// The one thing that is refused: private facts on a page that others can see. Nothing is written
/// then, so that no half of a set is taken for the whole.
fn refused(club: &Club, sheets: &[Sheet]) -> Option<End> {
    let facts = Facts::of(club);
    if facts.is_empty() {
        return None;
    }
    let refusal = sheets
        .iter()
        .find_map(|s| privacy::refusal(club, &facts, s));
    refusal.map(|(sentence, hint)| End::Failed { sentence, hint })
}

fn write_all(
    order: &Order,
    files: &[File<'_>],
    written: &mut Vec<Written>,
    report: &mut dyn FnMut(Step) -> Go,
) -> Result<(), End> {
    let mut folder = OutputFolder::open(&order.folder)?;
    let about = about(order);
    for (done, file) in files.iter().enumerate() {
        let step = Step {
            doing: file.name(),
            done,
            total: files.len(),
        };
        if report(step) == Go::Stop {
            return Err(End::Stopped);
        }
        written.push(file.write(&mut folder, (order, &about))?);
    }
    Ok(())
}

/// What every file says about itself besides its title.
struct About {
    club: String,
    date: (i16, i8, i8),
}

fn about(order: &Order) -> About {
    let session = order.club.session(order.request.session);
    let date = session.map(|s| (s.date.year(), s.date.month(), s.date.day()));
    About {
        club: order.club.name.clone(),
        date: date.unwrap_or_default(),
    }
}

/// A file to write.
struct File<'a> {
    stem: String,
    format: Format,
    sheet: &'a Sheet,
    /// Which of its pages, for pictures.
    page: Option<usize>,
}

/// All sheets for the same readers as one: what everyone may see never lies in one file with what only
/// a helper or the coordinator may.
fn together(order: &Order, sheets: &[Sheet]) -> Vec<Sheet> {
    let date = order.club.session(order.request.session).map(|s| s.date);
    let date = date.map_or_else(String::new, |d| format!("{d}-"));
    let all = [
        (Class::Public, "all-sheets", "All sheets"),
        (Class::Helper, "for-helpers", "Sheets for helpers"),
        (
            Class::Coordinator,
            "for-the-coordinator",
            "Sheets for the coordinator",
        ),
    ];
    let of = |(class, stem, title): (Class, &str, &str)| {
        let is = |s: &&Sheet| s.pages.iter().all(|p| p.class == class);
        let mine = sheets.iter().filter(is);
        Some(Sheet {
            kind: mine.clone().next()?.kind,
            participant: None,
            file_stem: format!("{date}{stem}"),
            title: title.to_owned(),
            pages: mine.flat_map(|s| s.pages.iter().cloned()).collect(),
        })
    };
    all.into_iter().filter_map(of).collect()
}

/// All files of some sheets: one PDF a sheet or for all together, one picture a page, the words of a
/// story, or a story for a telephone.
fn files<'a>(sheets: &'a [Sheet], together: &'a [Sheet], formats: &[Format]) -> Vec<File<'a>> {
    let formats: BTreeSet<Format> = formats.iter().copied().collect();
    let mut files = Vec::new();
    if formats.contains(&Format::Pdf) {
        files.extend(together.iter().map(|sheet| File {
            stem: sheet.file_stem.clone(),
            format: Format::Pdf,
            sheet,
            page: None,
        }));
    }
    for sheet in sheets {
        for &format in &formats {
            let file = |stem: String, page| File {
                stem,
                format,
                sheet,
                page,
            };
            match format {
                Format::Pdf if together.is_empty() => {
                    files.push(file(sheet.file_stem.clone(), None));
                }
                Format::Pdf => {}
                Format::Text | Format::Html if sheet.kind == SheetKind::Story => {
                    files.push(file(sheet.file_stem.clone(), None));
                }
                Format::Text | Format::Html => {}
                Format::Png => files.extend((0..sheet.pages.len()).map(|page| {
                    let stem = format!("{}-{}", sheet.file_stem, page + 1);
                    file(stem, Some(page))
                })),
            }
        }
    }
    files
}

/// What the name of a file ends in.
const fn ending(format: Format) -> &'static str {
    match format {
        Format::Pdf => "pdf",
        Format::Png => "png",
        Format::Text => "txt",
        Format::Html => "html",
    }
}

impl File<'_> {
    fn name(&self) -> String {
        format!("{}.{}", self.stem, ending(self.format))
    }

    fn write(&self, folder: &mut OutputFolder, of: (&Order, &About)) -> Result<Written, End> {
        let bytes = self.bytes(of)?;
        let path = folder.write(&self.stem, ending(self.format), &bytes)?;
        Ok(Written {
            kind: self.sheet.kind,
            participant: self.sheet.participant,
            format: self.format,
            path,
            pages: match (self.page, self.format) {
                (Some(_), _) | (None, Format::Html) => 1,
                (None, _) => self.sheet.pages.len(),
            },
        })
    }

    fn bytes(&self, (order, about): (&Order, &About)) -> Result<Vec<u8>, End> {
        let pages = &self.sheet.pages;
        match (self.format, self.page.and_then(|i| pages.get(i))) {
            (Format::Png, Some(page)) => {
                png::png(page, PICTURE_DPI).map_err(|e| self.failed(&e.to_string()))
            }
            (Format::Text, _) => telephone::words(&order.club, &order.request, self.sheet)
                .map(String::into_bytes)
                .ok_or_else(|| self.failed("the story is not there any more")),
            (Format::Html, _) => telephone::file(&order.club, &order.request, self.sheet)
                .map(String::into_bytes)
                .ok_or_else(|| self.failed("the story is not there any more")),
            (Format::Pdf | Format::Png, _) => Ok(pdf::pdf(
                pages,
                &pdf::Meta {
                    title: self.sheet.title.clone(),
                    subject: None,
                    author: about.club.clone(),
                    date: about.date,
                },
            )),
        }
    }

    fn failed(&self, why: &str) -> End {
        End::Failed {
            sentence: format!("“{}” was not written: {why}.", self.name()),
            hint: "Choose PDF for this sheet instead.".to_owned(),
        }
    }
}

impl From<FileError> for End {
    fn from(error: FileError) -> Self {
        Self::Failed {
            sentence: error.sentence,
            hint: error.hint,
        }
    }
}

impl Outcome {
    /// What happened and what to do, for people.
    pub fn words(&self) -> (String, String) {
        let place = self.folder.display();
        let count = self.written.len();
        let written = match count {
            1 => "1 file is".to_owned(),
            n => format!("{n} files are"),
        };
        match &self.end {
            End::Done if count == 0 => (
                "There was nothing to write.".to_owned(),
                "Choose sheets and people who come.".to_owned(),
            ),
            End::Done => (
                format!("{written} in {place}."),
                "At the printer: 100 %, not “fit to page”; then measure the bar.".to_owned(),
            ),
            End::Stopped => (
                format!(
                    "Writing was stopped. {written} in {place}, of {} wanted.",
                    self.wanted
                ),
                "Write again to get the rest.".to_owned(),
            ),
            End::Failed { sentence, hint } if count == 0 => (sentence.clone(), hint.clone()),
            End::Failed { sentence, hint } => (
                format!(
                    "{sentence} {written} in {place}, of {} wanted.",
                    self.wanted
                ),
                hint.clone(),
            ),
        }
    }
}
