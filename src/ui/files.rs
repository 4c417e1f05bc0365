//! The system's own file dialogs, asked in a thread of their own so that the window goes on; one
//! at a time.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use egui::Context;

use super::dialogs::Begins;

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// A file to open.
    Open,
    /// A file to save to.
    Save,
    /// A folder.
    Folder,
    /// Pictures to take in.
    Pictures,
    /// A set of pictures and activities to take in.
    Set,
    /// A file to write a set to.
    WriteSet,
    /// A table to take in.
    Table,
    /// A file to write a table to.
    WriteTable,
}

/// What came of asking.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Came {
    /// These were chosen; more than one only where more are wanted.
    Paths(Vec<PathBuf>),
    /// Nothing: cancelled, or the system has no such dialog.
    Nothing,
}

/// The dialog that is open, if one is.
#[derive(Default)]
pub struct SystemDialog {
    waiting: Option<Receiver<Option<Vec<PathBuf>>>>,
}

impl SystemDialog {
    /// Whether one is open.
    pub const fn is_open(&self) -> bool {
        self.waiting.is_some()
    }

    /// Opens one; nothing happens while one is open.
    pub fn ask(&mut self, ctx: &Context, wanted: Wanted, begins: Begins) {
        if self.is_open() {
            return;
        }
        let (send, receive) = channel();
        let ctx = ctx.clone();
        let work = move || {
            let path = dialog(wanted, &begins);
            // The window may be gone by now; then nobody waits.
            let _ = send.send(path);
            ctx.request_repaint();
        };
        if std::thread::Builder::new()
            .name("file dialog".into())
            .spawn(work)
            .is_ok()
        {
            self.waiting = Some(receive);
        }
    }

    /// What came, once.
    pub fn poll(&mut self) -> Option<Came> {
        let came = match self.waiting.as_ref()?.try_recv() {
            Ok(Some(paths)) => Came::Paths(paths),
            Ok(None) | Err(TryRecvError::Disconnected) => Came::Nothing,
            Err(TryRecvError::Empty) => return None,
        };
        self.waiting = None;
        Some(came)
    }
}

fn dialog(wanted: Wanted, begins: &Begins) -> Option<Vec<PathBuf>> {
    let d = rfd::FileDialog::new().set_directory(&begins.folder);
    let club = |d: rfd::FileDialog| d.add_filter("Daystrand club", &["daystrand"]);
    let one = match wanted {
        Wanted::Pictures => {
            let endings = ["jpg", "jpeg", "png", "webp", "svg"];
            let d = d.add_filter("Pictures", &endings);
            return d.set_title("Take in pictures").pick_files();
        }
        Wanted::Open => club(d).set_title("Open a club").pick_file(),
        Wanted::Save => club(d)
            .set_title("Save the club")
            .set_file_name(&begins.name)
            .save_file(),
        Wanted::Set => d
            .add_filter("Set of pictures and activities", &["daystrand-set"])
            .set_title("Take in a set")
            .pick_file(),
        Wanted::WriteSet => d
            .add_filter("Set of pictures and activities", &["daystrand-set"])
            .set_title("Give out a set")
            .set_file_name(&begins.name)
            .save_file(),
        Wanted::Table => d
            .add_filter("Table (CSV)", &["csv", "tsv", "txt"])
            .set_title("Take in a table")
            .pick_file(),
        Wanted::WriteTable => d
            .add_filter("Table (CSV)", &["csv"])
            .set_title("Write a table")
            .set_file_name(&begins.name)
            .save_file(),
        Wanted::Folder => d.set_title("Folder for the sheets").pick_folder(),
    };
    one.map(|path| vec![path])
}
