//! `open`: the window, on a club file or on a new club.

use std::io::Write;
use std::path::PathBuf;

use super::{DONE, Outcome, Surroundings, Trouble, WRONG, Window, pick, tell};
use crate::workbench::Workbench;

/// Prepares the window. A file that cannot be read is told here, and in the window too, for those
/// who clicked on it and see no command line.
pub fn run(
    file: Option<PathBuf>,
    around: &Surroundings,
    err: &mut dyn Write,
) -> Result<Outcome, Trouble> {
    let (workbench, trouble) = opened(file, around);
    if let Some(trouble) = &trouble {
        if !around.display {
            return Err(trouble.clone());
        }
        tell(err, trouble);
    }
    if !around.display {
        return Err(Trouble::new(
            "There is no display to open a window on.",
            "The other verbs work without a window; see daystrand --help.",
        ));
    }
    Ok(Outcome {
        code: if trouble.is_some() { WRONG } else { DONE },
        window: Some(Window {
            workbench: Box::new(workbench),
            needed: true,
        }),
    })
}

/// A workbench with the file open, or with what was wrong with it.
pub fn opened(file: Option<PathBuf>, around: &Surroundings) -> (Workbench, Option<Trouble>) {
    let bench = Workbench::new(around.today)
        .with_clock()
        .with_preferences(around.preferences.clone());
    let Some(file) = file else {
        return (bench, None);
    };
    let opened = pick::open(bench, file);
    let trouble = opened.trouble.filter(|_| !opened.is_open);
    (opened.bench, trouble)
}
