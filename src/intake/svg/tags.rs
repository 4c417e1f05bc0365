//! A first count of a drawing's text, before any reader of XML sees it: how many elements, how deep,
//! how many attributes, and no entities of its own.

use super::super::refusal::Why;
use super::{SIMPLER, not_xml};

/// The most elements.
pub const MOST_ELEMENTS: usize = 100_000;
/// The most elements within elements. Every reader goes down by calling itself.
const DEEPEST: usize = 64;
/// The most attributes of one element: readers compare each with each.
const MOST_ATTRIBUTES: usize = 200;

/// Counts.
///
/// # Errors
/// If there are too many of something, or entities.
pub fn within_bounds(text: &str) -> Result<(), Why> {
    if text.contains("<!ENTITY") {
        return Err(Why::new(
            "is a drawing with abbreviations (entities) in its text, which are not read",
            "Save it as plain SVG in the program it comes from, and bring that.",
        ));
    }
    let (mut rest, mut elements, mut depth) = (text, 0_usize, 0_usize);
    while let Some(start) = rest.find('<') {
        rest = &rest[start..];
        if let Some(end) = passed_over(rest) {
            rest = rest.get(end..).unwrap_or_default();
            continue;
        }
        let tag = tag(rest).ok_or_else(not_xml)?;
        if tag.attributes > MOST_ATTRIBUTES {
            return Err(too("many attributes on one part"));
        }
        if rest.starts_with("</") {
            depth = depth.saturating_sub(1);
        } else {
            elements += 1;
            if elements > MOST_ELEMENTS {
                return Err(too("many parts"));
            }
            if depth >= DEEPEST {
                return Err(too("many groups within groups"));
            }
            depth += usize::from(!tag.closed);
        }
        rest = &rest[tag.length..];
    }
    Ok(())
}

/// A drawing with too many of something.
pub fn too(what: &str) -> Why {
    Why::new(format!("is a drawing with too {what}"), SIMPLER)
}

/// The length of a comment, a passage of plain text, an instruction or a declaration.
fn passed_over(text: &str) -> Option<usize> {
    let pairs = [
        ("<!--", "-->"),
        ("<![CDATA[", "]]>"),
        ("<?", "?>"),
        ("<!", ">"),
    ];
    let (_, end) = pairs.iter().find(|(start, _)| text.starts_with(start))?;
    Some(text.find(end).map_or(text.len(), |at| at + end.len()))
}

struct Tag {
    length: usize,
    attributes: usize,
    closed: bool,
}

fn tag(text: &str) -> Option<Tag> {
    let (mut quote, mut attributes, mut before) = (None, 0, 0);
    for (at, byte) in text.bytes().enumerate() {
        match (quote, byte) {
            (Some(open), _) if open == byte => quote = None,
            (Some(_), _) => {}
            (None, b'"' | b'\'') => {
                quote = Some(byte);
                attributes += 1;
            }
            (None, b'>') => {
                return Some(Tag {
                    length: at + 1,
                    attributes,
                    closed: before == b'/',
                });
            }
            (None, _) => before = byte,
        }
        if quote.is_none() && byte != b'"' && byte != b'\'' {
            before = byte;
        }
    }
    None
}
