//! What of a drawing is left out whatever becomes of it, and what flat shapes cannot say.

use std::collections::BTreeSet;

use resvg::usvg::roxmltree::{Document, Node};
use resvg::usvg::{BlendMode, FillRule, Group, Node as Part, Paint, Tree};

use super::super::refusal::Why;
use super::SIMPLER;

/// What may be left out without changing what is seen, a sentence each.
pub fn left_out(document: &Document) -> Vec<String> {
    let mut notes = BTreeSet::new();
    for node in document.descendants().filter(Node::is_element) {
        let name = node.tag_name().name();
        match name {
            "script" | "a" => notes.insert("Scripts and links in it were left out."),
            "foreignObject" => notes.insert("Parts in it that are no drawing were left out."),
            "set" => notes.insert("It moves no more; what it shows at first was taken."),
            _ if name.starts_with("animate") => {
                notes.insert("It moves no more; what it shows at first was taken.")
            }
            _ => false,
        };
        if node.attributes().any(|a| a.name().starts_with("on")) {
            notes.insert("Scripts and links in it were left out.");
        }
    }
    notes.into_iter().map(str::to_owned).collect()
}

/// Whether all that is seen of a drawing is in its shapes.
///
/// # Errors
/// If a part of it is letters, a picture or something from another file: without it the drawing
/// would say something else.
pub fn all_in_shapes(document: &Document) -> Result<(), Why> {
    for node in document.descendants().filter(Node::is_element) {
        let name = node.tag_name().name();
        let mut hrefs = node.attributes().filter(|a| a.name() == "href");
        let outside = name != "a" && hrefs.any(|a| refers_outside(a.value()));
        let letters = || node.descendants().filter_map(|n| n.text());
        let why = match name {
            "image" => Why::new(
                "is a drawing with a picture of pixels inside it, which is not taken out of drawings",
                "Save it as PNG, and bring that.",
            ),
            "text" if letters().any(|t| !t.trim().is_empty()) => Why::new(
                "is a drawing with words in it, whose letters it does not bring along",
                "Turn the words into outlines in the program it comes from, or save it as PNG, and \
                 bring that.",
            ),
            _ if outside => Why::new(
                "is a drawing that takes a part of itself from another file",
                SIMPLER,
            ),
            _ => continue,
        };
        if !is_hidden(node) {
            return Err(why);
        }
    }
    Ok(())
}

fn refers_outside(href: &str) -> bool {
    !matches!(href.trim_start().chars().next(), None | Some('#'))
}

/// Whether a part is switched off, itself or by what it lies in.
fn is_hidden(node: Node) -> bool {
    node.ancestors().any(|n| {
        let style = n.attribute("style").unwrap_or_default();
        let style: String = style.chars().filter(|c| !c.is_whitespace()).collect();
        n.attribute("display") == Some("none")
            || style.contains("display:none")
            || matches!(n.tag_name().name(), "metadata" | "foreignObject")
    })
}

/// What a drawing has that flat shapes cannot say, in words for a sentence; none if they can say
/// all of it.
pub fn beyond_flat(tree: &Tree) -> Option<String> {
    let mut found = BTreeSet::new();
    group(tree.root(), &mut found);
    let words: Vec<&str> = found.into_iter().collect();
    let (last, before) = words.split_last()?;
    if before.is_empty() {
        return Some((*last).to_owned());
    }
    Some(format!("{} and {last}", before.join(", ")))
}

fn group(parent: &Group, found: &mut BTreeSet<&'static str>) {
    for part in parent.children() {
        match part {
            Part::Group(inside) => {
                of_group(inside, found);
                group(inside, found);
            }
            Part::Path(path) if path.is_visible() => {
                let fill = path.fill().map(|f| (f.paint(), f.opacity().get()));
                let stroke = path.stroke().map(|s| (s.paint(), s.opacity().get()));
                for (paint, opacity) in fill.into_iter().chain(stroke) {
                    of_paint(paint, opacity, found);
                }
            }
            _ => {}
        }
    }
}

fn of_group(group: &Group, found: &mut BTreeSet<&'static str>) {
    if group.opacity().get() < 1.0 {
        found.insert("see-through parts");
    }
    if group.blend_mode() != BlendMode::Normal {
        found.insert("blended colours");
    }
    if group.mask().is_some() {
        found.insert("masks");
    }
    if !group.filters().is_empty() {
        found.insert("effects like shadows");
    }
    if group
        .clip_path()
        .is_some_and(|clip| !plain_window(clip.root()))
    {
        found.insert("windows of an unusual kind");
    }
}

/// Whether a window is nothing but shapes, each filled by the nonzero rule.
fn plain_window(root: &Group) -> bool {
    root.children().iter().all(|part| match part {
        Part::Group(inside) => !inside.should_isolate() && plain_window(inside),
        Part::Path(path) => path.fill().is_none_or(|f| f.rule() == FillRule::NonZero),
        _ => true,
    })
}

fn of_paint(paint: &Paint, opacity: f32, found: &mut BTreeSet<&'static str>) {
    match paint {
        Paint::Color(_) => {}
        Paint::LinearGradient(_) | Paint::RadialGradient(_) => {
            found.insert("colours that run into each other");
        }
        Paint::Pattern(_) => {
            found.insert("patterns");
        }
    }
    if opacity > 0.0 && opacity < 1.0 {
        found.insert("see-through parts");
    }
}
