//! A file that never comes to an end would leave nothing behind: a second thread looks at the clock.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

/// So long nothing takes, however busy the machine is.
const NEVER: Duration = Duration::from_secs(120);

type Busy = Arc<Mutex<Option<(Instant, Vec<u8>)>>>;

/// What is being tried now.
pub struct Watch(Busy);

impl Watch {
    /// Watches over the files of a target; one that hangs is written to `path`, and the run ends.
    pub fn over(target: &'static str, path: PathBuf) -> Self {
        let busy = Busy::default();
        let seen = Arc::clone(&busy);
        std::thread::spawn(move || {
            loop {
                std::thread::sleep(Duration::from_secs(1));
                let now = seen.lock().unwrap_or_else(PoisonError::into_inner);
                if let Some((since, file)) = now.as_ref()
                    && since.elapsed() > NEVER
                {
                    let fault = format!("no end after {} s", NEVER.as_secs());
                    keep(target, &fault, &path, file);
                    std::process::exit(1);
                }
            }
        });
        Self(busy)
    }

    /// This file is tried from now on.
    pub fn begins(&self, file: &[u8]) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) =
            Some((Instant::now(), file.to_vec()));
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = None;
    }
}

/// Writes a file that failed and says so.
pub fn keep(target: &str, fault: &str, path: &Path, file: &[u8]) {
    let folder = path.parent().map(std::fs::create_dir_all);
    let kept = folder.is_some() && std::fs::write(path, file).is_ok();
    println!(
        "{target}: {fault} ({} bytes, {}, kept {kept})",
        file.len(),
        path.display()
    );
}
