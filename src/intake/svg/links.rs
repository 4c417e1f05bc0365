//! What a drawing refers to inside itself: how often each part is drawn in the end and how deep that
//! goes, worked out before usvg follows the references.

use std::collections::BTreeMap;

use resvg::usvg::roxmltree::{Document, Node};

use super::super::refusal::Why;
use super::tags::{MOST_ELEMENTS, too};

/// The most elements within elements when every reference is followed.
const DEEPEST: u32 = 96;
/// The most elements that clips, patterns, markers and the like may bring to all that use them.
const MOST_WORK: u64 = 1_000_000;
/// The most parts that are only there to be referred to.
const MOST_HELPERS: usize = 2_000;
/// The most references in style rules times elements.
const MOST_BY_RULE: usize = 1_000_000;

/// What comes of one element with all it holds and refers to.
#[derive(Clone, Copy, Default)]
struct Sum {
    drawn: u64,
    work: u64,
    depth: u32,
}

struct Links<'a, 'i> {
    named: BTreeMap<&'a str, Vec<Node<'a, 'i>>>,
    /// None while an element is being worked out.
    known: BTreeMap<usize, Option<Sum>>,
    /// What style rules refer to, from any element with a class.
    by_rule: Vec<Node<'a, 'i>>,
}

/// Follows every reference.
///
/// # Errors
/// If a part refers to itself, or there would be too much of anything.
pub fn check(document: &Document) -> Result<(), Why> {
    let mut named: BTreeMap<&str, Vec<Node>> = BTreeMap::new();
    let (mut helpers, mut elements) = (0, 0);
    let mut rules = String::new();
    for node in document.descendants().filter(Node::is_element) {
        elements += 1;
        if let Some(id) = node.attribute("id") {
            // Of several with one name readers take the first or the last.
            let same = named.entry(id).or_default();
            same.truncate(1);
            same.push(node);
        }
        match node.tag_name().name() {
            "clipPath" | "mask" | "pattern" | "marker" | "filter" | "linearGradient"
            | "radialGradient" => helpers += 1,
            "style" => rules.extend(node.descendants().filter_map(|n| n.text())),
            _ => {}
        }
    }
    if helpers > MOST_HELPERS {
        return Err(too("many gradients, clips and the like"));
    }
    let by_rule: Vec<Node> = referred(&rules)
        .filter_map(|id| named.get(id))
        .flatten()
        .copied()
        .collect();
    if by_rule.len() * elements > MOST_BY_RULE {
        return Err(too("many style rules"));
    }
    let mut links = Links {
        by_rule,
        named,
        known: BTreeMap::new(),
    };
    let sum = links.sum(document.root_element(), 0)?;
    if sum.drawn > MOST_ELEMENTS as u64 || sum.work > MOST_WORK {
        return Err(too("many parts, counting each as often as it is used"));
    }
    Ok(())
}

/// The names in `url(#name)`.
fn referred(text: &str) -> impl Iterator<Item = &str> {
    text.match_indices("url(").filter_map(|(at, word)| {
        let rest = text[at + word.len()..].trim_start_matches(['"', '\'', ' ']);
        let name = rest.strip_prefix('#')?;
        let end = name.find([')', '"', '\'']).unwrap_or(name.len());
        Some(name[..end].trim())
    })
}

impl<'a, 'i> Links<'a, 'i> {
    fn sum(&mut self, node: Node<'a, 'i>, depth: u32) -> Result<Sum, Why> {
        match self.known.get(&node.id().get_usize()) {
            Some(Some(sum)) => return Ok(*sum),
            Some(None) => return Err(tangled()),
            None => {}
        }
        if depth > DEEPEST {
            return Err(too("many references within references"));
        }
        self.known.insert(node.id().get_usize(), None);
        let mut sum = Sum {
            drawn: 1,
            work: 1,
            depth: 0,
        };
        for child in node.children().filter(Node::is_element) {
            sum.add(self.sum(child, depth + 1)?, true);
        }
        self.references(node, depth, &mut sum)?;
        if sum.depth > DEEPEST {
            return Err(too("many references within references"));
        }
        self.known.insert(node.id().get_usize(), Some(sum));
        Ok(sum)
    }

    /// Adds what an element refers to, by itself or by a style rule.
    fn references(&mut self, node: Node<'a, 'i>, depth: u32, sum: &mut Sum) -> Result<(), Why> {
        let is_use = matches!(node.tag_name().name(), "use" | "feImage");
        let mut vertices = 1;
        for (name, value) in node.attributes().map(|a| (a.name(), a.value())) {
            if name == "d" || name == "points" {
                vertices = value.len() as u64 / 2 + 1;
            }
            if name == "href"
                && let Some(id) = value.trim().strip_prefix('#')
            {
                self.follow(id, is_use, 1, depth, sum)?;
            }
        }
        for (name, value) in node.attributes().map(|a| (a.name(), a.value())) {
            // A marker stands at every corner.
            let often = if value.contains("marker") || name.starts_with("marker") {
                vertices
            } else {
                1
            };
            for id in referred(value) {
                self.follow(id, false, often, depth, sum)?;
            }
        }
        if node.has_attribute("class") || node.has_attribute("id") {
            for target in self.by_rule.clone() {
                if !target.ancestors().any(|a| a == node) && !node.ancestors().any(|a| a == target)
                {
                    sum.add(self.sum(target, depth + 1)?, false);
                }
            }
        }
        Ok(())
    }

    fn follow(
        &mut self,
        id: &str,
        drawn: bool,
        often: u64,
        depth: u32,
        sum: &mut Sum,
    ) -> Result<(), Why> {
        for target in self.named.get(id).cloned().unwrap_or_default() {
            let mut there = self.sum(target, depth + 1)?;
            there.work = there.work.saturating_mul(often);
            sum.add(there, drawn);
        }
        Ok(())
    }
}

impl Sum {
    fn add(&mut self, other: Self, drawn: bool) {
        if drawn {
            self.drawn = self.drawn.saturating_add(other.drawn);
        }
        self.work = self.work.saturating_add(other.work);
        self.depth = self.depth.max(other.depth + 1);
    }
}

fn tangled() -> Why {
    Why::new(
        "is a drawing in which a part is made of itself",
        super::SIMPLER,
    )
}
