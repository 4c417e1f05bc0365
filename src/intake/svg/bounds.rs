//! What the attributes of a drawing may hold before usvg sees it: segments, numbers, dashes, packed
//! pictures, style rules.

use resvg::usvg::roxmltree::{Document, Node};
use svgtypes::PathParser;

use super::super::refusal::Why;
use super::tags::too;

/// The most segments of all lines together.
const MOST_SEGMENTS: usize = 500_000;
/// The most letters of all packed pictures together; they are left out, but read.
const MOST_PACKED: usize = 4 << 20;
/// The most style rules times elements: each rule is tried on each.
const MOST_STYLING: usize = 2_000_000;
/// Digits before the point, and powers of ten, beyond which a number is no place in any drawing and
/// an arc there is taken apart into curves without end.
const MOST_DIGITS: usize = 7;

/// Checks all attributes.
///
/// # Errors
/// If something is beyond the bounds.
pub fn check(document: &Document) -> Result<(), Why> {
    let (mut segments, mut packed, mut elements, mut rules) = (0_usize, 0_usize, 0_usize, 0_usize);
    for node in document.descendants().filter(Node::is_element) {
        elements += 1;
        if node.tag_name().name() == "style" {
            let css: String = node.descendants().filter_map(|n| n.text()).collect();
            rules += css.matches('{').count() * (1 + css.matches([',', ' ', '>']).count() / 64);
            far_numbers(&css)?;
        }
        for attribute in node.attributes() {
            let value = attribute.value();
            if value
                .trim_start()
                .get(..5)
                .is_some_and(|v| v.eq_ignore_ascii_case("data:"))
            {
                packed += value.len();
                continue;
            }
            match attribute.name() {
                "d" => segments += PathParser::from(value).count(),
                "points" => segments += value.len() / 2,
                "id" | "class" | "href" | "unicode" => continue,
                _ => {}
            }
            far_numbers(value)?;
            if segments > MOST_SEGMENTS {
                return Err(too("many segments in its lines"));
            }
        }
    }
    if packed > MOST_PACKED {
        return Err(too("large a picture inside it"));
    }
    if rules.saturating_mul(elements) > MOST_STYLING {
        return Err(too("many style rules"));
    }
    Ok(())
}

/// Whether a text has a number far beyond any drawing. Colours after `#` are none.
fn far_numbers(text: &str) -> Result<(), Why> {
    let bytes = text.as_bytes();
    let mut at = 0;
    while at < bytes.len() {
        match bytes[at] {
            b'#' => {
                at += 1;
                while bytes.get(at).is_some_and(u8::is_ascii_alphanumeric) {
                    at += 1;
                }
            }
            b'0'..=b'9' | b'.' => {
                let number = number_at(&bytes[at..]);
                if number.far {
                    return Err(too("large numbers in it"));
                }
                at += number.length;
            }
            _ => at += 1,
        }
    }
    Ok(())
}

struct Number {
    length: usize,
    far: bool,
}

fn number_at(bytes: &[u8]) -> Number {
    let digits = |from: usize| {
        let rest = bytes.get(from..).unwrap_or_default();
        rest.iter().take_while(|b| b.is_ascii_digit()).count()
    };
    let zeros = bytes.iter().take_while(|b| **b == b'0').count();
    let whole = digits(0);
    let mut at = whole;
    if bytes.get(at) == Some(&b'.') {
        at += 1 + digits(at + 1);
    }
    let mut far = whole - zeros > MOST_DIGITS;
    if matches!(bytes.get(at), Some(b'e' | b'E')) {
        let sign = usize::from(matches!(bytes.get(at + 1), Some(b'+' | b'-')));
        let power = digits(at + 1 + sign);
        if power > 0 {
            let raised = bytes[at + 1 + sign..at + 1 + sign + power]
                .iter()
                .fold(0_usize, |p, d| {
                    p.saturating_mul(10).saturating_add(usize::from(d - b'0'))
                });
            let up = bytes.get(at + 1) != Some(&b'-');
            far |= up && whole.saturating_add(raised) > MOST_DIGITS || raised > 30;
            at += 1 + sign + power;
        }
    }
    Number {
        length: at.max(1),
        far,
    }
}
