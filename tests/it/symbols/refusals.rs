//! Every reason for which the reader of drawings refuses one, and numbers beyond all bounds.

use std::fs;
use std::path::Path;

use daystrand::symbols::art::Art;
use daystrand::symbols::parse::{Refusal, parse};

const SVG: &str = "xmlns=\"http://www.w3.org/2000/svg\"";

/// A drawing and the whole sentence of its refusal. Drawings without a root of their own stand in
/// one of 240 by 240.
const CASES: &[(&str, &str)] = &[
    // The drawing as a whole.
    (
        "<path></g>",
        "The drawing is not well-formed XML: expected 'path' tag, not 'g' at *.",
    ),
    ("<g SVG/>", "The drawing does not begin with <svg>."),
    (
        "<svg SVG/>",
        "The drawing has no viewBox that says how large it is.",
    ),
    (
        "<svg SVG width=\"240\"/>",
        "The drawing has no viewBox that says how large it is.",
    ),
    (
        "<svg SVG viewBox=\"0 0 240\"/>",
        "The viewBox is not understood: *.",
    ),
    (
        "<svg SVG viewBox=\"0 0 0 0\"/>",
        "The viewBox is not understood: *.",
    ),
    (
        "<svg SVG viewBox=\"0 0 240 120\"/>",
        "The drawing is not square.",
    ),
    (
        "<svg SVG viewBox=\"0 0 240 240\" width=\"9\"/>",
        "The drawing is not square.",
    ),
    (
        "<svg SVG width=\"0\" height=\"0\"/>",
        "The drawing has no size.",
    ),
    (
        "<svg SVG viewBox=\"0 0 9 9\" width=\"-9\" height=\"-9\"/>",
        "The drawing has no size.",
    ),
    (
        "<svg SVG width=\"9mm\" height=\"9mm\"/>",
        "The value \"9mm\" of width is not a plain number.",
    ),
    ("<svg/>", "The drawing holds another <svg>."),
    ("DEEP", "The drawing has too many groups within groups."),
    // Elements and attributes.
    (
        "<text>Hi</text>",
        "The element <text> is not one of those allowed.",
    ),
    (
        "<path xmlns=\"urn:reeds\" d=\"M0 0H9\"/>",
        "The element <path> does not belong to SVG.",
    ),
    (
        "<path d=\"M0 0H9\" opacity=\"0.5\"/>",
        "The attribute opacity of <path> is not allowed.",
    ),
    // Lines and shapes.
    (
        "<path d=\"M0 0H\"/>",
        "The line of a path breaks off: unexpected end of stream.",
    ),
    ("<path d=\"0 0H9\"/>", "The line of a path breaks off: *."),
    (
        "<rect width=\"50%\" height=\"9\"/>",
        "The value \"50%\" of width is not a plain number.",
    ),
    (
        "<circle r=\"9\" cx=\"reed\"/>",
        "The value \"reed\" of cx is not a plain number.",
    ),
    (
        "<path d=\"M0 0H9\" transform=\"turn(9)\"/>",
        "The transform \"turn(9)\" is not understood.",
    ),
    // How they are painted.
    (
        "<path d=\"M0 0H9V9Z\" fill=\"#11223344\"/>",
        "A colour is see-through.",
    ),
    (
        "<path d=\"M0 0H9V9Z\" stroke=\"rgba(0,0,0,0.5)\"/>",
        "A colour is see-through.",
    ),
    (
        "<path d=\"M0 0H9V9Z\" fill=\"url(#a)\"/>",
        "A shape is painted with a gradient or a pattern.",
    ),
    (
        "<path d=\"M0 0H9V9Z\" fill=\"reed\"/>",
        "The colour \"reed\" is not understood.",
    ),
    (
        "<path d=\"M0 0H9V9Z\" fill=\"context-fill\"/>",
        "The colour \"context-fill\" is not understood.",
    ),
    (
        "<path d=\"M0 0H9\" stroke-width=\"1em\"/>",
        "The value \"1em\" of stroke-width is not a plain number.",
    ),
    (
        "<path d=\"M0 0H9\" stroke-linecap=\"sharp\"/>",
        "The value \"sharp\" of stroke-linecap is not understood.",
    ),
    (
        "<path d=\"M0 0H9\" stroke-linejoin=\"arcs\"/>",
        "The value \"arcs\" of stroke-linejoin is not understood.",
    ),
    (
        "<path d=\"M0 0H9\" fill-rule=\"odd\"/>",
        "The value \"odd\" of fill-rule is not understood.",
    ),
    (
        "<path d=\"M0 0H9\" clip-rule=\"odd\"/>",
        "The value \"odd\" of clip-rule is not understood.",
    ),
    (
        "<path d=\"M0 0H9\" stroke=\"red\" stroke-linecap=\"square\"/>",
        "A line has square ends.",
    ),
    (
        "<path d=\"M0 0H9\" stroke=\"red\" stroke-linejoin=\"bevel\"/>",
        "A line has bevelled joins.",
    ),
    (
        "<path d=\"M0 0H9\" stroke=\"red\" transform=\"scale(1 1.05)\"/>",
        "A line is stretched in one direction, so its width would not be even.",
    ),
    // Windows.
    (
        "<g clip-path=\"url(#w)\"/>",
        "The window \"url(#w)\" is not in the drawing.",
    ),
    (
        "<g clip-path=\"w\"/>",
        "The window \"w\" is not in the drawing.",
    ),
    (
        "<clipPath id=\"w\" clip-path=\"url(#w)\"/><g clip-path=\"url(#w)\"/>",
        "A window is itself seen through a window.",
    ),
    (
        "<clipPath id=\"w\" clipPathUnits=\"objectBoundingBox\"/><g clip-path=\"url(#w)\"/>",
        "A window is measured by what is seen through it.",
    ),
    (
        "<clipPath id=\"w\"><rect clip-path=\"url(#w)\"/></clipPath><g clip-path=\"url(#w)\"/>",
        "A part of a window is itself seen through a window.",
    ),
    (
        "<clipPath id=\"w\"><g/></clipPath><g clip-path=\"url(#w)\"/>",
        "A window holds <g> instead of plain shapes.",
    ),
    (
        "<clipPath id=\"w\" clip-rule=\"evenodd\"><rect/></clipPath><g clip-path=\"url(#w)\"/>",
        "A window has the even-odd rule.",
    ),
];

fn read(drawing: &str) -> Result<Art, Refusal> {
    let deep = || format!("{}{}", "<g>".repeat(202), "</g>".repeat(202));
    let own = drawing.contains("SVG");
    let inside = match drawing {
        "DEEP" => deep(),
        other => other.replace("SVG", SVG),
    };
    if own {
        return parse(&inside);
    }
    parse(&format!(
        "<svg {SVG} viewBox=\"0 0 240 240\">{inside}</svg>"
    ))
}

/// Whether a sentence is like another in which stars stand for any words.
fn like(pattern: &str, sentence: &str) -> bool {
    let parts: Vec<&str> = pattern.split('*').collect();
    let (Some(first), Some(last)) = (parts.first(), parts.last()) else {
        return false;
    };
    let mut rest = match sentence.strip_prefix(first) {
        Some(rest) if parts.len() == 1 => return rest.is_empty(),
        Some(rest) => rest,
        None => return false,
    };
    for middle in &parts[1..parts.len() - 1] {
        let Some(at) = rest.find(middle) else {
            return false;
        };
        rest = &rest[at + middle.len()..];
    }
    rest.ends_with(last)
}

#[test]
fn every_refusal_says_what_is_wrong() {
    for (drawing, sentence) in CASES {
        let refusal = read(drawing).expect_err(drawing);
        assert!(like(sentence, &refusal.0), "{drawing}: {refusal}");
    }
}

/// Just inside each bound nothing is refused.
#[test]
fn what_is_just_allowed_is_read() {
    for drawing in [
        "<svg SVG width=\"9\" height=\"9px\"/>",
        "<svg SVG viewBox=\"0 0 9 9\" width=\"100%\" height=\"100%\"/>",
        "<path d=\"M0 0H9\" stroke=\"red\" transform=\"scale(1 1.03)\"/>",
        "<path d=\"M0 0H9\" stroke-linecap=\"square\" stroke-linejoin=\"bevel\"/>",
        "<path d=\"M0 0H9\" fill=\"none\" transform=\"scale(1 2)\"/>",
        "<g clip-path=\"none\"/>",
        "<clipPath id=\"w\"><title>Reeds</title><rect/></clipPath><g clip-path=\"url(#w)\"/>",
    ] {
        assert!(read(drawing).is_ok(), "{drawing}: {:?}", read(drawing));
    }
    let nested = |n: usize| format!("{}{}", "<g>".repeat(n), "</g>".repeat(n));
    assert!(read(&nested(200)).is_ok());
    assert!(read(&nested(201)).is_err());
}

/// The reasons stand in the code as words with braces for what differs; each has a case above.
#[test]
fn no_reason_is_without_a_case() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/symbols/parse");
    let mut reasons = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let code = fs::read_to_string(entry.unwrap().path()).unwrap();
        for start in ["refuse(", "Refusal("] {
            reasons.extend(code.split(start).skip(1).filter_map(literal));
        }
    }
    assert!(reasons.len() > 25, "{reasons:#?}");
    for reason in reasons {
        let mut cases = CASES.iter().map(|c| read(c.0).unwrap_err().0);
        assert!(cases.any(|said| like(&reason, &said)), "no case: {reason}");
    }
}

/// The words that code begins with, stars for what is in braces.
fn literal(code: &str) -> Option<String> {
    let code = code.trim_start();
    let code = code.strip_prefix("format!(").unwrap_or(code).trim_start();
    let words = code.strip_prefix('"')?.split('"').next()?;
    let mut pattern = String::new();
    for (i, part) in words.split('{').enumerate() {
        let part = if i == 0 {
            part
        } else {
            part.split_once('}')?.1
        };
        if i > 0 {
            pattern.push('*');
        }
        pattern.push_str(part);
    }
    Some(pattern)
}

/// Numbers that no drawing holds: nothing is drawn, and nothing breaks.
#[test]
fn numbers_beyond_all_bounds_draw_nothing() {
    for inside in [
        "<path d=\"M0 0L1e39 9L9 9Z\"/>",
        "<path d=\"M0 0L-1e39 1e39Z\" stroke=\"red\"/>",
        "<path d=\"M0 0L1e308 1e308l1e308 1e308\"/>",
        "<path d=\"M1e39 1e39h1v1z\"/>",
        "<path d=\"M0 0C1e39 0 0 1e39 9 9Z\"/>",
        "<path d=\"M0 0Q1e39 0 9 9T9 0Z\"/>",
        "<polygon points=\"0,0 1e39,0 9,9\"/>",
        "<polyline points=\"0,0 1e39,0 9,9\"/>",
        "<line x2=\"1e39\" y2=\"9\" stroke=\"red\"/>",
        "<rect width=\"1e39\" height=\"9\"/>",
        "<rect x=\"3e38\" width=\"3e38\" height=\"9\"/>",
        "<path d=\"M0 0H3e38V9Z\" transform=\"scale(9)\"/>",
        "<path d=\"M0 0H9V9Z\" transform=\"translate(1e39 0)\"/>",
        "<path d=\"M0 0H9V9Z\" transform=\"scale(1e39)\"/>",
        "<g transform=\"scale(1e20)\"><path d=\"M0 0H9V9Z\" transform=\"scale(1e20)\"/></g>",
    ] {
        let art = read(inside).unwrap_or_else(|e| panic!("{inside}: {e}"));
        let drawn = art.nodes.iter().any(|n| !is_empty(n));
        assert!(!drawn, "{inside}: {:?}", art.nodes);
    }
}

fn is_empty(node: &daystrand::symbols::art::Node) -> bool {
    use daystrand::symbols::art::Node;
    match node {
        Node::Shape(shape) => shape.path.segs.is_empty(),
        Node::Clipped { clip, nodes } => clip.segs.is_empty() || nodes.iter().all(is_empty),
        Node::Pixels { .. } => false,
    }
}

/// The same where the way round is worked out.
#[test]
fn arcs_beyond_all_bounds_draw_nothing_and_come_to_an_end() {
    for inside in [
        "<circle r=\"1e39\"/>",
        "<circle r=\"9\" cx=\"1e39\"/>",
        "<ellipse rx=\"1e39\" ry=\"9\"/>",
        "<circle r=\"3e38\" cx=\"3e38\"/>",
        "<rect width=\"1e39\" height=\"9\" rx=\"1e39\" ry=\"1\"/>",
        "<rect x=\"1e39\" width=\"9\" height=\"9\" rx=\"1\"/>",
        "<path d=\"M0 0A1e39 1e39 0 0 1 1e39 9Z\"/>",
        "<path d=\"M0 0A1e308 1e308 0 0 1 1e308 1e308Z\"/>",
        "<path d=\"M0 0a9 9 0 0 1 1e308 0 9 9 0 0 1 1e308 0Z\"/>",
        "<path d=\"M0 0A9 9 0 0 1 1e200 0Z\"/>",
    ] {
        println!("{inside}");
        let art = read(inside).unwrap_or_else(|e| panic!("{inside}: {e}"));
        let drawn = art.nodes.iter().any(|n| !is_empty(n));
        assert!(!drawn, "{inside}: {:?}", art.nodes);
    }
}
