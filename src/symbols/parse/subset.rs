//! Which elements and attributes a drawing may hold.

use resvg::usvg::roxmltree::Node;

use super::{Refusal, refuse};

const SVG: &str = "http://www.w3.org/2000/svg";

fn element_known(name: &str) -> bool {
    matches!(
        name,
        "path"
            | "g"
            | "clipPath"
            | "defs"
            | "circle"
            | "ellipse"
            | "rect"
            | "line"
            | "polyline"
            | "polygon"
            | "title"
            | "svg"
    )
}

fn attribute_known(name: &str) -> bool {
    matches!(
        name,
        "d" | "fill"
            | "stroke"
            | "stroke-width"
            | "stroke-linecap"
            | "stroke-linejoin"
            | "clip-path"
            | "id"
            | "transform"
            | "fill-rule"
            | "clip-rule"
            | "clipPathUnits"
            | "stroke-miterlimit"
            | "cx"
            | "cy"
            | "r"
            | "rx"
            | "ry"
            | "x"
            | "y"
            | "width"
            | "height"
            | "x1"
            | "x2"
            | "y1"
            | "y2"
            | "points"
            | "viewBox"
            | "xmlns"
            | "version"
            | "lang"
    )
}

/// Whether an element and its attributes are within the subset.
///
/// # Errors
/// Names the element or attribute that is not.
pub fn check(node: Node) -> Result<(), Refusal> {
    let tag = node.tag_name();
    let name = tag.name();
    if !element_known(name) {
        return refuse(format!("The element <{name}> is not one of those allowed."));
    }
    if tag.namespace() != Some(SVG) {
        return refuse(format!("The element <{name}> does not belong to SVG."));
    }
    for attribute in node.attributes() {
        let what = attribute.name();
        if !attribute_known(what) {
            return refuse(format!("The attribute {what} of <{name}> is not allowed."));
        }
    }
    Ok(())
}
