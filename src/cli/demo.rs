//! `demo`: the demo club with every sheet of both its sessions, and the window on it.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::args::DemoWish;
use super::{DONE, Outcome, Surroundings, Trouble, Window, open, print, say};
use crate::layout::{InkChoice, Request, SheetKind, Turn};
use crate::model::club::Club;
use crate::model::session::Session;
use crate::workbench::Workbench;
use crate::workbench::command::{Command, Format};
use crate::workbench::printing::{Order, Written};

/// Name of the club file in the demo's folder.
const FILE: &str = "reedwater.daystrand";

/// Writes the demo, says what was written, and prepares the window where there is a display.
pub fn run(
    wish: &DemoWish,
    around: &Surroundings,
    out: &mut dyn Write,
) -> Result<Outcome, Trouble> {
    let mut bench = Workbench::new(around.today);
    drop(bench.handle(Command::Demo));
    let club = bench.club().clone();
    say(out, &format!("{}, an invented club.", club.name));
    for session in &club.sessions {
        let folder = wish.to.join(session.date.to_string());
        let written = write_sheets(&club, session, &folder)?;
        say(out, "");
        say(
            out,
            &format!(
                "{}, {}, in {}:",
                session.title,
                session.date,
                folder.display()
            ),
        );
        table(out, &written);
    }
    say(out, "");
    let file = save(&mut bench, wish.to.join(FILE))?;
    say(out, &format!("The club file is {}.", file.display()));
    Ok(window(wish, around, file, out))
}

fn save(bench: &mut Workbench, file: PathBuf) -> Result<PathBuf, Trouble> {
    drop(bench.handle(Command::SaveAs(file.clone())));
    let trouble = bench.view().notice.filter(|n| n.trouble).map(Trouble::from);
    trouble.map_or(Ok(file), Err)
}

fn write_sheets(
    club: &Arc<Club>,
    session: &Session,
    folder: &Path,
) -> Result<Vec<Written>, Trouble> {
    print::carry_out(&Order {
        club: club.clone(),
        request: Request {
            session: session.id,
            participants: club.attending(session).map(|p| p.id).collect(),
            kinds: SheetKind::ALL
                .into_iter()
                .filter(|k| *k != SheetKind::TestPage)
                .collect(),
            paper: club.rules.paper,
            turn: Turn::AsSuits,
            ink: InkChoice::Colour,
            only_missing: false,
        },
        formats: vec![Format::Pdf, Format::Text, Format::Html],
        one_file: false,
        folder: folder.to_path_buf(),
    })
}

/// Kinds of sheets with how many files and pages there are of each.
fn table(out: &mut dyn Write, written: &[Written]) {
    let of = |format: Format| {
        let of_format = written.iter().filter(move |w| w.format == format);
        of_format.cloned().collect::<Vec<Written>>()
    };
    let pdfs = of(Format::Pdf);
    let mut rows: Vec<(&str, usize, String)> = Vec::new();
    for kind in SheetKind::ALL {
        let (files, pages) = print::count(&pdfs, kind);
        if files > 0 {
            rows.push((kind.label(), files, pages.to_string()));
        }
    }
    for (format, label) in [
        (Format::Text, "Story as plain text"),
        (Format::Html, "Story for a telephone"),
    ] {
        let files = of(format).len();
        if files > 0 {
            rows.push((label, files, "-".to_owned()));
        }
    }
    say(
        out,
        &format!("  {:<22}{:>6}{:>7}", "sheet", "files", "pages"),
    );
    for (label, files, pages) in rows {
        say(out, &format!("  {label:<22}{files:>6}{pages:>7}"));
    }
}

fn window(wish: &DemoWish, around: &Surroundings, file: PathBuf, out: &mut dyn Write) -> Outcome {
    if !wish.window {
        return Outcome::code(DONE);
    }
    if !around.display {
        say(
            out,
            &format!(
                "There is no display here, so no window was opened. Elsewhere: daystrand {}",
                file.display()
            ),
        );
        return Outcome::code(DONE);
    }
    say(out, "The window opens now.");
    let (workbench, _) = open::opened(Some(file), around);
    Outcome {
        code: DONE,
        window: Some(Window {
            workbench: Box::new(workbench),
            needed: false,
        }),
    }
}
