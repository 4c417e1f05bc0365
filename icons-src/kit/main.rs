//! Draws the picture symbols that show people: `kit OUTDIR` writes one SVG
//! file per symbol into that folder (`icons-src/svg` when none is named).

#[path = "mod.rs"]
mod kit;

fn main() -> std::process::ExitCode {
    let dir = std::env::args()
        .nth(1)
        .unwrap_or_else(|| "icons-src/svg".to_owned());
    for (id, svg) in kit::symbols() {
        let file = format!("{dir}/{id}.svg");
        if let Some(folder) = std::path::Path::new(&file).parent() {
            let _ = std::fs::create_dir_all(folder);
        }
        if let Err(e) = std::fs::write(&file, svg) {
            eprintln!("cannot write {file}: {e}; name a folder that exists");
            return std::process::ExitCode::FAILURE;
        }
    }
    std::process::ExitCode::SUCCESS
}
