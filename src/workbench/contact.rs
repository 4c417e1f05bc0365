//! Writes the contact sheets of the symbols: one PDF for each ink, one picture for each page.

use std::path::{Path, PathBuf};

use super::command::Notice;
use crate::export::{pdf, png};
use crate::layout::contact::{Contact, ContactSheet, contact_sheets};
use crate::model::people::Age;
use crate::storage::FileError;
use crate::storage::output::OutputFolder;

/// Pixels an inch of the pictures: enough to see a 44 mm symbol well, small enough to send.
const DPI: f64 = 110.0;
/// The day in the files is that of the symbols' first release, so that the same set gives the same bytes.
const DAY: (i16, i8, i8) = (2026, 11, 25);

/// Writes into a folder, one ink after the other; gives the files in order.
///
/// # Errors
/// Says which file could not be written and why. What was written before stays.
pub fn write(wishes: &[Contact], folder: &Path) -> Result<Vec<PathBuf>, Notice> {
    let mut out = OutputFolder::open(folder)?;
    let mut written = Vec::new();
    for wish in wishes {
        let sheets = contact_sheets(wish);
        let stem = stem(wish);
        let pages: Vec<_> = sheets
            .iter()
            .flat_map(|s| s.pages.iter().cloned())
            .collect();
        let meta = pdf::Meta {
            title: format!("Symbols, {}", wish.ink.name()),
            subject: None,
            author: "Daystrand".to_owned(),
            date: DAY,
        };
        written.push(out.write(&stem, "pdf", &pdf::pdf(&pages, &meta))?);
        for sheet in &sheets {
            pictures(&mut out, &stem, sheet, &mut written)?;
        }
    }
    Ok(written)
}

fn pictures(
    out: &mut OutputFolder,
    stem: &str,
    sheet: &ContactSheet,
    written: &mut Vec<PathBuf>,
) -> Result<(), Notice> {
    for (i, page) in sheet.pages.iter().enumerate() {
        let name = match sheet.pages.len() {
            1 => format!("{stem}-{}", sheet.stem),
            _ => format!("{stem}-{}-{}", sheet.stem, i + 1),
        };
        let bytes = png::png(page, DPI).map_err(|e| {
            Notice::trouble(
                format!("“{name}.png” was not written: {e}."),
                "Look at the PDF instead.",
            )
        })?;
        written.push(out.write(&name, "png", &bytes)?);
    }
    Ok(())
}

fn stem(wish: &Contact) -> String {
    let age = match wish.figure.age {
        Age::Child => "",
        Age::Teen => "-teen",
        Age::Adult => "-adult",
    };
    let mirrored = if wish.mirrored { "-mirrored" } else { "" };
    format!("symbols-{}{age}{mirrored}", wish.ink.name())
}

impl From<FileError> for Notice {
    fn from(error: FileError) -> Self {
        Self::trouble(error.sentence, error.hint)
    }
}
