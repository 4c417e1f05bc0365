//! Files written for printing: one folder, safe names, each file whole or not at all.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use super::disk::{Disk, Kind, Real, replace};
use super::error::{FileError, name};

/// Longest name of a written file in bytes, its ending not counted. Common file systems take 255.
const NAME_BYTES: usize = 150;

/// A folder that files are written into, one after another; each name is used once.
#[derive(Debug)]
pub struct OutputFolder {
    path: PathBuf,
    used: BTreeSet<String>,
}

impl OutputFolder {
    /// Opens a folder, and makes it when it is not there.
    ///
    /// # Errors
    /// When it cannot be made, or a file of that name is in the way.
    pub fn open(path: &Path) -> Result<Self, FileError> {
        let found = Real.kind(path);
        match found {
            Ok(Kind::Folder) => {}
            Ok(_) => {
                return Err(FileError::new(
                    path,
                    format!("“{}” is a file, not a folder.", name(path)),
                    "Choose another folder for the sheets.",
                ));
            }
            Err(_) => Real
                .create_folder(path)
                .map_err(|e| FileError::writing(path, &e))?,
        }
        Ok(Self {
            path: path.to_path_buf(),
            used: BTreeSet::new(),
        })
    }

    /// Writes a file under a safe form of `stem` with an ending such as `pdf`, and says where. A file
    /// from an earlier print is replaced; one written through this folder before never is: the next
    /// of the same name gets a number.
    ///
    /// # Errors
    /// When it cannot be written. A file that was there is as it was.
    pub fn write(&mut self, stem: &str, ending: &str, bytes: &[u8]) -> Result<PathBuf, FileError> {
        let name_here = self.free_name(&safe_name(stem), ending);
        let path = self.path.join(name_here);
        if Real.kind(&path).is_ok_and(|k| k == Kind::Folder) {
            return Err(FileError::new(
                &path,
                format!("“{}” was not written: a folder has that name.", name(&path)),
                "Choose another folder for the sheets.",
            ));
        }
        replace(&Real, &path, bytes, None, || ()).map_err(|e| FileError::writing(&path, &e))?;
        Ok(path)
    }

    fn free_name(&mut self, stem: &str, ending: &str) -> String {
        let mut name = format!("{stem}.{ending}");
        let mut number = 2;
        // Some disks do not tell large from small letters.
        while !self.used.insert(name.to_lowercase()) {
            name = format!("{stem} {number}.{ending}");
            number += 1;
        }
        name
    }
}

/// A name that every common file system takes: no separators or wildcards, no dot or blank at the
/// ends, none of the names Windows keeps for devices ("Naming Files, Paths, and Namespaces"), not
/// too long, never empty.
pub fn safe_name(wish: &str) -> String {
    let plain: String = wish
        .chars()
        .map(|c| match c {
            '/' | '\\' | ':' | '*' | '?' | '"' | '<' | '>' | '|' => '-',
            c if c.is_control() => ' ',
            c => c,
        })
        .collect();
    let mut short = String::new();
    for c in plain.trim_matches([' ', '.']).chars() {
        if short.len() + c.len_utf8() > NAME_BYTES {
            break;
        }
        short.push(c);
    }
    let short = short.trim_matches([' ', '.']);
    if short.is_empty() {
        return "sheet".to_owned();
    }
    let device = short
        .split('.')
        .next()
        .unwrap_or_default()
        .trim()
        .to_uppercase();
    if is_device(&device) {
        format!("_{short}")
    } else {
        short.to_owned()
    }
}

fn is_device(upper: &str) -> bool {
    if matches!(upper, "CON" | "PRN" | "AUX" | "NUL") {
        return true;
    }
    let number = upper
        .strip_prefix("COM")
        .or_else(|| upper.strip_prefix("LPT"));
    number.is_some_and(|n| {
        matches!(
            n,
            "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "¹" | "²" | "³"
        )
    })
}
