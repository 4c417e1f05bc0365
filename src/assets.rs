//! Every byte built into the program. Knows nothing of what the bytes mean.

use include_dir::{Dir, include_dir};

/// Andika, regular weight: the main face. SIL Open Font License 1.1.
pub const ANDIKA_REGULAR: &[u8] = include_bytes!("../assets/fonts/Andika-Regular.ttf");
/// Andika, bold weight. SIL Open Font License 1.1.
pub const ANDIKA_BOLD: &[u8] = include_bytes!("../assets/fonts/Andika-Bold.ttf");
/// Harmattan, regular weight, for Arabic script. SIL Open Font License 1.1.
pub const HARMATTAN_REGULAR: &[u8] = include_bytes!("../assets/fonts/Harmattan-Regular.ttf");
/// Harmattan, bold weight. SIL Open Font License 1.1.
pub const HARMATTAN_BOLD: &[u8] = include_bytes!("../assets/fonts/Harmattan-Bold.ttf");

/// The symbol sources. A drawing or index entry added there needs no change of code.
static ICONS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/icons-src");

/// The drawing `<folder>/<id>.svg` of the symbol sources.
pub fn drawing(folder: &str, id: &str) -> Option<&'static str> {
    ICONS
        .get_file(format!("{folder}/{id}.svg"))
        .and_then(|f| f.contents_utf8())
}

/// Names without `.svg` of all drawings in a folder of the symbol sources, sorted.
pub fn drawings(folder: &str) -> Vec<&'static str> {
    let files = ICONS.get_dir(folder).into_iter().flat_map(Dir::files);
    let mut names: Vec<&str> = files
        .filter(|f| f.path().extension().is_some_and(|e| e == "svg"))
        .filter_map(|f| f.path().file_stem()?.to_str())
        .collect();
    names.sort_unstable();
    names
}

/// The index files of the symbol sources as (name without `.json`, content), sorted by name.
pub fn indexes() -> Vec<(&'static str, &'static str)> {
    texts("index")
}

/// What the symbols are called, a file a language, in the same way.
pub fn labels() -> Vec<(&'static str, &'static str)> {
    texts("labels")
}

fn texts(folder: &str) -> Vec<(&'static str, &'static str)> {
    let files = ICONS.get_dir(folder).into_iter().flat_map(Dir::files);
    let mut all: Vec<(&str, &str)> = files
        .filter(|f| f.path().extension().is_some_and(|e| e == "json"))
        .filter_map(|f| Some((f.path().file_stem()?.to_str()?, f.contents_utf8()?)))
        .collect();
    all.sort_unstable();
    all
}

/// What a child of the demo club drew, as the drawing place keeps it.
pub const DEMO_BOAT: &str = include_str!("../assets/demo/boat.svg");

/// How a story on a telephone looks.
pub const PHONE_STYLE: &str = include_str!("../assets/phone/story.css");
/// How it is gone through.
pub const PHONE_SCRIPT: &str = include_str!("../assets/phone/story.js");

/// The program's icon, as SVG.
pub const PROGRAM_ICON: &str = include_str!("../assets/desktop/icons/daystrand.svg");

/// Texts and pictures of the help.
static HELP: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/assets/help");

/// The text of a page of the help, by its name.
pub fn help_text(name: &str) -> Option<&'static str> {
    HELP.get_file(format!("{name}.txt"))
        .and_then(|f| f.contents_utf8())
}

/// A picture of the help as a PNG file, by its name.
pub fn help_picture(name: &str) -> Option<&'static [u8]> {
    HELP.get_file(format!("{name}.png")).map(|f| f.contents())
}

/// Names of all files of the help, sorted.
pub fn help_files() -> Vec<&'static str> {
    let names = HELP.files().filter_map(|f| f.path().to_str());
    let mut names: Vec<&str> = names.collect();
    names.sort_unstable();
    names
}
