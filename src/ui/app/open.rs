//! Opening the window on a display.

use std::panic::{AssertUnwindSafe, catch_unwind};

use super::App;
use crate::ui::program_icon::program_icon;
use crate::ui::start::StartState;
use crate::workbench::Workbench;

/// Size of the window at first.
const SIZE: [f32; 2] = [1366.0, 768.0];
/// Least size; at 200 % the places still work in it.
const LEAST: [f32; 2] = [640.0, 380.0];
/// Opens the window and stays until it is closed.
///
/// # Errors
/// If there is no display, or a library that the window needs is not installed: one sentence that
/// says which packages to install.
pub fn run(bench: Workbench) -> Result<(), String> {
    let options = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_title("Daystrand")
            .with_app_id("daystrand")
            .with_icon(program_icon())
            .with_inner_size(SIZE)
            .with_min_inner_size(LEAST),
        ..Default::default()
    };
    let quiet = std::panic::take_hook();
    std::panic::set_hook(Box::new(|_| {}));
    let opened = std::sync::Arc::new(std::sync::atomic::AtomicBool::new(false));
    let started = std::sync::Arc::clone(&opened);
    let begin = move |cc: &eframe::CreationContext<'_>| {
        App::prepare(&cc.egui_ctx);
        let mut app = App::new(bench);
        app.state.start = Some(StartState::default());
        app.dress(&cc.egui_ctx);
        // From here on a panic is a fault of ours and is shown as one.
        started.store(true, std::sync::atomic::Ordering::Relaxed);
        std::panic::set_hook(quiet);
        Ok(Box::new(app) as Box<dyn eframe::App>)
    };
    let ran = catch_unwind(AssertUnwindSafe(|| {
        eframe::run_native("Daystrand", options, Box::new(begin))
    }));
    match ran {
        Ok(Ok(())) => Ok(()),
        Ok(Err(e)) => Err(missing(&e.to_string())),
        Err(panic) if opened.load(std::sync::atomic::Ordering::Relaxed) => {
            std::panic::resume_unwind(panic)
        }
        Err(panic) => Err(missing(&panic_words(panic.as_ref()))),
    }
}

fn panic_words(panic: &(dyn std::any::Any + Send)) -> String {
    let text = panic.downcast_ref::<String>().map(String::as_str);
    text.or_else(|| panic.downcast_ref::<&str>().copied())
        .unwrap_or("it stopped at once")
        .to_owned()
}

/// Why no window opened, and which Debian packages it needs (found by trial on Debian 12: these are
/// loaded when the window opens).
fn missing(why: &str) -> String {
    let why = why.lines().next().unwrap_or("").trim_end_matches('.');
    format!(
        "{why}. The window needs a display and, on Debian: sudo apt install libx11-6 libx11-xcb1 \
         libxcursor1 libxi6 libxkbcommon-x11-0 libgl1."
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_window_that_cannot_open_says_what_to_install() {
        let words = missing("Library libxkbcommon-x11.so could not be loaded.\nmore");
        assert!(words.contains("libxkbcommon-x11.so could not be loaded. The window"));
        assert!(words.contains("libxkbcommon-x11-0") && !words.contains("more"));
    }
}
