//! Files that someone brings, photographs and drawings, made clean, bounded and ours.
//!
//! Bytes come in and values go out: no disk, no threads, no clock. What a file is, its content says
//! and never its name. A decoder sees only what makes the picture; everything else a file carries
//! (place, time, camera, words, small copies) is left behind before it is read.

pub mod mask;
pub mod photo;
pub mod recipe;

mod area;
mod colour;
mod finish;
mod flood;
mod jpeg;
mod light;
mod place;
mod png;
mod refusal;
mod rows;
mod svg;
mod webp;

pub use mask::Mask;
pub use photo::{Finished, Kind, Photo};
pub use recipe::{Frame, Ground, Recipe, Shape};
pub use refusal::Refusal;
pub use svg::Drawing;

use refusal::Why;

/// Longest side of the pixels that are kept: 200 mm, about the largest picture on an A4 sheet, at
/// 300 dots per inch (200 / 25.4 * 300 = 2362).
pub const WORKING_PX: u32 = 2362;
/// The largest file that is looked at, in bytes.
pub const MOST_BYTES: usize = 64 << 20;
/// The most pixels a photograph may have.
pub const MOST_PIXELS: u64 = 50_000_000;
/// The longest side a photograph may have, in pixels.
pub const LONGEST_SIDE: u32 = 20_000;
/// What decoding one picture may take, in bytes: 256 MB less what shrinking and keeping take.
const MOST_MEMORY: u64 = 190 << 20;

/// A file that was taken.
#[derive(Clone, Debug)]
pub enum Taken {
    /// Pixels.
    Photo(Photo),
    /// Flat shapes.
    Drawing(Drawing),
}

impl Taken {
    /// What was changed or left out, a sentence each.
    pub fn notes(&self) -> &[String] {
        match self {
            Self::Photo(photo) => &photo.notes,
            Self::Drawing(drawing) => &drawing.notes,
        }
    }
}

/// Takes a file by its content. `name` is only what messages call it; an ending that says something
/// else than the content is noted.
///
/// # Errors
/// If it is none of the kinds that are read, larger than the bounds, cut off or damaged: what is
/// wrong and what to do about it.
pub fn take(name: &str, bytes: &[u8]) -> Result<Taken, Refusal> {
    // Decoders are made by others and meet whatever the world brings; should one of them give up
    // half-way, one file is refused and the rest of the work goes on.
    let taken = std::panic::catch_unwind(|| take_by_content(bytes));
    let mut taken = taken
        .unwrap_or_else(|_| Err(Why::damaged()))
        .map_err(|why| Refusal::new(name, why))?;
    let (kind, endings) = kind_of(bytes);
    if let Some(ending) = ending(name).filter(|e| !endings.contains(&e.as_str())) {
        let note = format!("The name ends with “.{ending}”, but it is {kind} and was read as one.");
        match &mut taken {
            Taken::Photo(photo) => photo.notes.insert(0, note),
            Taken::Drawing(drawing) => drawing.notes.insert(0, note),
        }
    }
    Ok(taken)
}

fn take_by_content(bytes: &[u8]) -> Result<Taken, Why> {
    if bytes.is_empty() {
        return Err(Why::new("is empty", "Copy or download it once more."));
    }
    if bytes.len() > MOST_BYTES {
        return Err(Why::new(
            format!("is larger than {} megabytes", MOST_BYTES >> 20),
            "Save it smaller, or as JPEG, and bring that.",
        ));
    }
    if bytes.starts_with(png::SIGNATURE) {
        return photo::taken(png::open(bytes)?).map(Taken::Photo);
    }
    if bytes.starts_with(&[0xFF, 0xD8, 0xFF]) {
        return photo::taken_jpeg(bytes).map(Taken::Photo);
    }
    if webp::is_webp(bytes) {
        return photo::taken(webp::open(bytes)?).map(Taken::Photo);
    }
    if svg::is_svg(bytes) {
        return Ok(match svg::read(bytes)? {
            svg::Read::Drawing(drawing) => Taken::Drawing(drawing),
            svg::Read::Photo(photo) => Taken::Photo(photo),
        });
    }
    Err(refusal::unknown(bytes))
}

/// What a file is and the endings its name may have.
fn kind_of(bytes: &[u8]) -> (&'static str, &'static [&'static str]) {
    match bytes.first() {
        Some(0x89) => ("a PNG picture", &["png", "apng"]),
        Some(0xFF) => (
            "a JPEG picture",
            &["jpg", "jpeg", "jpe", "jfif", "jif", "mpo"],
        ),
        Some(b'R') => ("a WebP picture", &["webp"]),
        _ => ("an SVG drawing", &["svg"]),
    }
}

/// The ending of a name in small letters, if it looks like one.
fn ending(name: &str) -> Option<String> {
    let (_, ending) = name.rsplit_once('.')?;
    let plain =
        (1..=5).contains(&ending.len()) && ending.bytes().all(|b| b.is_ascii_alphanumeric());
    plain.then(|| ending.to_ascii_lowercase())
}

/// Whether a picture may be decoded at all, asked before anything large is made.
///
/// # Errors
/// If it has no pixels or too many.
fn within_bounds(width: u32, height: u32) -> Result<(), Why> {
    if width == 0 || height == 0 {
        return Err(Why::new(
            "has a width or height of zero",
            "Save it again in the program it comes from.",
        ));
    }
    let pixels = u64::from(width) * u64::from(height);
    if width.max(height) > LONGEST_SIDE || pixels > MOST_PIXELS {
        return Err(Why::new(
            format!(
                "says that it is {} by {} pixels, more than are taken",
                grouped(width),
                grouped(height)
            ),
            "Save it smaller, 4,000 pixels across or less, and bring that.",
        ));
    }
    Ok(())
}

/// A number with commas between thousands.
fn grouped(number: u32) -> String {
    let digits = number.to_string();
    let mut out = String::new();
    for (i, digit) in digits.chars().enumerate() {
        if i > 0 && (digits.len() - i).is_multiple_of(3) {
            out.push(',');
        }
        out.push(digit);
    }
    out
}

/// Whether decoding takes no more memory than there is for it.
///
/// # Errors
/// If it takes more.
fn fits_in_memory(bytes: u64) -> Result<(), Why> {
    if bytes <= MOST_MEMORY {
        return Ok(());
    }
    Err(Why::new(
        "is a large picture stored in a way that takes too much memory to read",
        "Save it smaller, or as an ordinary JPEG, and bring that.",
    ))
}
