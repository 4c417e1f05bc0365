//! Drawings that would take memory or time without end.

use super::refused;
use super::svg::{SQUARE, of};

#[test]
fn drawings_that_grow_without_end_are_refused_at_once() {
    let mut uses = String::from("<g id='a0'><rect width='9' height='9'/></g>");
    for i in 1..10 {
        let ten = format!("<use xlink:href='#a{}'/>", i - 1).repeat(10);
        uses += &format!("<g id='a{i}'>{ten}</g>");
    }
    let entities = "<!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;'>]>";
    let mut nested = of(SQUARE);
    for _ in 0..6 {
        use base64::Engine;
        let inner = base64::engine::general_purpose::STANDARD.encode(&nested);
        nested = of(&format!(
            "<image width='9' height='9' href='data:image/svg+xml;base64,{inner}'/>"
        ));
    }
    let mut clips = String::from("<clipPath id='c0'><rect width='9' height='9'/></clipPath>");
    for i in 1..1000 {
        clips += &format!(
            "<clipPath id='c{i}' clip-path='url(#c{})'><rect width='9' height='9'/></clipPath>",
            i - 1
        );
    }
    let path = format!("<path d='M0 0{}'/>", "h1v1".repeat(400_000));
    let dots = format!(
        "<path d='M0 0{}' marker-mid='url(#m)'/>",
        "h1v1".repeat(50_000)
    );
    let rules = format!("<style>{}</style>", "a b c{fill:red}".repeat(50_000));
    let attributes: String = (0..5_000).map(|i| format!(" a{i}='1'")).collect();
    let cases = [
        (
            "uses",
            of(&uses),
            "too many parts, counting each as often as it is used",
        ),
        (
            "itself",
            of("<g id='a'><use href='#a'/></g>"),
            "a part is made of itself",
        ),
        (
            "pattern of itself",
            of("<pattern id='p'><rect fill='url(#p)' width='9' height='9'/></pattern>"),
            "a part is made of itself",
        ),
        (
            "entities",
            format!("{entities}{}", of("&b;")),
            "abbreviations (entities)",
        ),
        (
            "pictures in pictures",
            nested,
            "a picture of pixels inside it",
        ),
        (
            "clips of clips",
            of(&clips),
            "too many references within references",
        ),
        (
            "depth",
            of(&"<g>".repeat(100_000)),
            "too many groups within groups",
        ),
        ("elements", of(&"<g/>".repeat(100_001)), "too many parts"),
        ("segments", of(&path), "too many segments in its lines"),
        (
            "markers",
            of(&format!(
                "<marker id='m'>{}</marker>{dots}",
                SQUARE.repeat(30)
            )),
            "too many parts, counting",
        ),
        (
            "rules",
            of(&format!("{rules}{}", SQUARE.repeat(1_000))),
            "too many style rules",
        ),
        (
            "attributes",
            of(&format!("<g{attributes}/>")),
            "too many attributes",
        ),
        (
            "dashes",
            of("<path d='M0 0h99' stroke='red' stroke-dasharray='.0001'/>"),
            "too many dashes",
        ),
        (
            "far",
            of("<path d='M0 0a1e30 1e30 0 1 1 9 9'/>"),
            "too large numbers",
        ),
        (
            "far away",
            of("<rect width='99999999999' height='9'/>"),
            "too large numbers",
        ),
        (
            "noise",
            of(
                "<filter id='f'><feTurbulence numOctaves='900000' baseFrequency='1'/></filter><rect width='9' height='9' filter='url(#f)'/>",
            ),
            "effects (light, noise or the like)",
        ),
        (
            "large pattern",
            of(
                "<pattern id='p' width='9999' height='9999' patternUnits='userSpaceOnUse'><rect width='9' height='9'/></pattern><rect width='99' height='99' fill='url(#p)'/>",
            ),
            "a pattern far larger than itself",
        ),
        (
            "layers",
            of(&format!(
                "<rect width='90' height='90' opacity='.5'/>{}",
                "<g opacity='.5'><rect width='99' height='99'/><rect width='99' height='99'/></g>"
                    .repeat(2_000)
            )),
            "takes too long to paint",
        ),
    ];
    for (name, svg, what) in cases {
        // How long it takes is measured by the fuzz bench, which fails above a second.
        let said = refused("a.svg", svg.as_bytes());
        assert!(said.contains(what), "{name}: {said}");
    }
    let large = of(&" ".repeat(6 << 20));
    assert!(refused("a.svg", large.as_bytes()).contains("is a drawing of more than 5 megabytes"));
}
