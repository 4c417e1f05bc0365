//! Reading SVG: what is taken, and the reason given for what is not.

use daystrand::symbols::art::{CANVAS, Node};
use daystrand::symbols::parse::parse;
use daystrand::units::colour::Rgb;
use daystrand::units::path::Seg;

use super::paint;

fn drawing(inside: &str) -> String {
    format!("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 240\">{inside}</svg>")
}

#[test]
fn what_is_outside_the_subset_is_refused_with_a_reason() {
    let cases = [
        ("<text x=\"9\" y=\"9\">Hi</text>", "<text>"),
        ("<image href=\"a.png\"/>", "<image>"),
        ("<use href=\"#a\"/>", "<use>"),
        ("<style>path{}</style>", "<style>"),
        ("<path d=\"M0 0H9\" style=\"fill:red\"/>", "style"),
        ("<path d=\"M0 0H9V9Z\" opacity=\"0.5\"/>", "opacity"),
        (
            "<path d=\"M0 0H9V9Z\" fill=\"rgba(0,0,0,0.5)\"/>",
            "see-through",
        ),
        (
            "<path d=\"M0 0H9\" stroke=\"#000000\" stroke-dasharray=\"2\"/>",
            "stroke-dasharray",
        ),
        (
            "<path d=\"M0 0H9\" stroke=\"#000000\" stroke-linejoin=\"bevel\"/>",
            "bevelled",
        ),
        (
            "<path d=\"M0 0H9\" stroke=\"#000000\" stroke-linecap=\"square\"/>",
            "square",
        ),
        (
            "<path d=\"M0 0H9\" stroke=\"#000000\" transform=\"scale(1 2)\"/>",
            "stretched",
        ),
        ("<linearGradient id=\"a\"/>", "<linearGradient>"),
    ];
    for (inside, reason) in cases {
        let refusal = parse(&drawing(inside)).expect_err(inside);
        assert!(refusal.0.contains(reason), "{inside}: {refusal}");
    }
    assert!(parse("<svg").is_err());
    let wide = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 120\"/>";
    assert!(parse(wide).is_err_and(|r| r.0.contains("square")));
}

#[test]
fn transforms_reach_points_and_line_widths() {
    let art = parse(&drawing(
        "<g transform=\"translate(10 20) scale(2)\">\
         <path d=\"M1 2L3 4\" stroke=\"#112233\" stroke-width=\"3\" stroke-linecap=\"round\"/></g>",
    ))
    .expect("within the subset");
    let [Node::Shape(shape)] = art.nodes.as_slice() else {
        panic!("one shape, not {:?}", art.nodes);
    };
    assert_eq!(
        shape.path.segs,
        [Seg::Move([12.0, 24.0]), Seg::Line([16.0, 28.0])]
    );
    let stroke = shape.stroke.expect("a line");
    assert_eq!((stroke.colour, stroke.width), (Rgb(0x11, 0x22, 0x33), 6.0));
    assert!(!stroke.butt && stroke.mitre);
}

#[test]
fn another_canvas_is_fitted() {
    let art = parse(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 24 24\"><path d=\"M0 0L24 24\" \
         stroke=\"#000000\" stroke-width=\"1\"/></svg>",
    )
    .expect("within the subset");
    let Node::Shape(shape) = &art.nodes[0] else {
        panic!("a shape")
    };
    assert_eq!(shape.path.segs[1], Seg::Line([CANVAS, CANVAS]));
    assert_eq!(shape.stroke.map(|s| s.width), Some(10.0));
}

/// Overlapping shapes of a window that are drawn opposite ways round still add up.
#[test]
fn windows_of_several_shapes_add_up() {
    let text = drawing(
        "<defs><clipPath id=\"w\"><path d=\"M40 40H140V140H40Z\"/>\
         <path d=\"M80 80V200C120 220 160 220 200 200V80Z\"/></clipPath></defs>\
         <g clip-path=\"url(#w)\" transform=\"rotate(10 120 120)\">\
         <rect x=\"0\" y=\"0\" width=\"240\" height=\"240\" fill=\"#E8582F\"/></g>",
    );
    let art = parse(&text).expect("within the subset");
    let differ = paint::difference(
        &paint::svg(&text, 240),
        &paint::svg(&paint::to_svg(&art), 240),
    );
    assert!(differ < 0.002, "{differ}");
}
