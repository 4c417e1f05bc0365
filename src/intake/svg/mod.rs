//! SVG drawings, from anywhere: counted before they are read, read by usvg, and said anew in the flat
//! subset that symbols are drawn in; what that cannot say is painted as pixels.

mod bounds;
mod cost;
mod flat;
mod kinds;
mod lines;
mod links;
mod pixels;
mod tags;

use resvg::usvg::roxmltree::{Document, ParsingOptions};
use resvg::usvg::{ImageHrefResolver, Options, Tree};

use super::photo::Photo;
use super::refusal::Why;

/// The largest drawing that is read, in bytes.
pub const MOST_BYTES: usize = 5 << 20;

/// A drawing that was taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawing {
    /// An SVG of the flat subset that `symbols::parse` reads, on a square of 240.
    pub svg: String,
    /// What was changed or left out, a sentence each.
    pub notes: Vec<String>,
}

/// What an SVG became.
pub enum Read {
    /// Flat shapes.
    Drawing(Drawing),
    /// Pixels, where shapes cannot say it.
    Photo(Photo),
}

const SIMPLER: &str = "Simplify it in the program it comes from, or save it as PNG and bring that.";

/// Whether a file looks like XML text that is to be an SVG.
pub fn is_svg(bytes: &[u8]) -> bool {
    let start = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
    let start = start.trim_ascii_start();
    start.starts_with(b"<") && (holds(start, b"<svg") || holds(start, b":svg"))
}

fn holds(bytes: &[u8], word: &[u8]) -> bool {
    bytes.windows(word.len()).any(|w| w == word)
}

/// Reads a drawing.
///
/// # Errors
/// If it is no SVG, has nothing to see, or is beyond the bounds.
pub fn read(bytes: &[u8]) -> Result<Read, Why> {
    if bytes.len() > MOST_BYTES {
        return Err(Why::new(
            format!("is a drawing of more than {} megabytes", MOST_BYTES >> 20),
            SIMPLER,
        ));
    }
    let text = std::str::from_utf8(bytes).map_err(|_| not_xml())?;
    let text = text.trim_start_matches('\u{FEFF}');
    tags::within_bounds(text)?;
    let options = ParsingOptions {
        allow_dtd: true,
        nodes_limit: 2 * tags::MOST_ELEMENTS as u32,
        ..ParsingOptions::default()
    };
    let document = Document::parse_with_options(text, options).map_err(|_| not_xml())?;
    let root = document.root_element();
    if root.tag_name().name() != "svg" {
        return Err(Why::new(
            "is not an SVG drawing",
            "Choose a photograph or a drawing in JPEG, PNG, WebP or SVG.",
        ));
    }
    bounds::check(&document)?;
    links::check(&document)?;
    kinds::all_in_shapes(&document)?;
    let mut notes = kinds::left_out(&document);
    let tree = Tree::from_xmltree(&document, &options_of_reader()).map_err(|e| why(&e))?;
    if !cost::sees_anything(&tree) {
        return Err(Why::new(
            "is a drawing in which nothing is to be seen",
            "Look at it in the program it comes from and save it again.",
        ));
    }
    let beyond = match kinds::beyond_flat(&tree) {
        None => match flat::write(&tree)? {
            Some(svg) => return Ok(Read::Drawing(Drawing { svg, notes })),
            None => "fine detail".to_owned(),
        },
        Some(beyond) => beyond,
    };
    notes.push(format!(
        "It has {beyond} that flat shapes cannot show, so it was taken as a picture of pixels."
    ));
    pixels::paint(&tree).map(|picture| Read::Photo(Photo::from_pixels(picture, notes)))
}

/// No fonts, no files, no pictures from anywhere.
fn options_of_reader() -> Options<'static> {
    Options {
        image_href_resolver: ImageHrefResolver {
            resolve_data: Box::new(|_, _, _| None),
            resolve_string: Box::new(|_, _| None),
        },
        ..Options::default()
    }
}

fn not_xml() -> Why {
    Why::new(
        "is not a whole SVG drawing",
        "Copy or download it once more, or save it again as plain SVG.",
    )
}

fn why(error: &resvg::usvg::Error) -> Why {
    match error {
        resvg::usvg::Error::InvalidSize => Why::new(
            "is a drawing without a size",
            "Save it with a width and a height, or with a viewBox.",
        ),
        _ => not_xml(),
    }
}
