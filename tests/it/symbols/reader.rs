//! Our reader of drawings beside usvg 0.49 (the SVG reader of the resvg project): every drawing
//! built in, and examples from the SVG specification (section numbers and texts from memory).

use daystrand::model::people::Age;
use daystrand::symbols::art::{Art, Node, Shape};
use daystrand::symbols::library::library;
use daystrand::symbols::parse::parse;
use daystrand::units::path::{Path, Seg};

use super::reference;

/// Points may differ by this much on the canvas of 240.
const POINT: f32 = 0.02;
const WIDTH: f32 = 0.001;

fn same_path(a: &Path<[f32; 2]>, b: &Path<[f32; 2]>) -> Result<(), String> {
    let near =
        |p: &[f32; 2], q: &[f32; 2]| (p[0] - q[0]).abs() <= POINT && (p[1] - q[1]).abs() <= POINT;
    if a.segs.len() != b.segs.len() {
        return Err(format!("{} stretches, not {}", a.segs.len(), b.segs.len()));
    }
    for (s, t) in a.segs.iter().zip(&b.segs) {
        let same = match (s, t) {
            (Seg::Move(p), Seg::Move(q)) | (Seg::Line(p), Seg::Line(q)) => near(p, q),
            (Seg::Cubic(a, b, c), Seg::Cubic(d, e, f)) => near(a, d) && near(b, e) && near(c, f),
            (Seg::Close, Seg::Close) => true,
            _ => false,
        };
        if !same {
            return Err(format!("{s:?}, not {t:?}"));
        }
    }
    Ok(())
}

fn same_shape(a: &Shape, b: &Shape) -> Result<(), String> {
    if (a.fill, a.even_odd) != (b.fill, b.even_odd) {
        return Err(format!("fill {:?}, not {:?}", a.fill, b.fill));
    }
    match (a.stroke, b.stroke) {
        (None, None) => {}
        (Some(s), Some(t))
            if (s.colour, s.butt, s.mitre) == (t.colour, t.butt, t.mitre)
                && (s.width - t.width).abs() <= WIDTH => {}
        (s, t) => return Err(format!("line {s:?}, not {t:?}")),
    }
    same_path(&a.path, &b.path)
}

fn same(a: &[Node], b: &[Node]) -> Result<(), String> {
    if a.len() != b.len() {
        return Err(format!("{} things, not {}", a.len(), b.len()));
    }
    for (i, pair) in a.iter().zip(b).enumerate() {
        let answer = match pair {
            (Node::Shape(s), Node::Shape(t)) => same_shape(s, t),
            (Node::Clipped { clip, nodes }, Node::Clipped { clip: c, nodes: n }) => {
                same_path(clip, c).and_then(|()| same(nodes, n))
            }
            _ => Err("a window where there is none, or none where there is one".to_owned()),
        };
        answer.map_err(|e| format!("{i}: {e}"))?;
    }
    Ok(())
}

fn judged(svg: &str, name: &str) -> Art {
    let art = parse(svg).unwrap_or_else(|e| panic!("{name}: {e}"));
    let judge = reference::parse(svg).unwrap_or_else(|e| panic!("{name}: {e}"));
    if let Err(e) = same(&art.nodes, &judge.nodes) {
        panic!("{name}: {e}");
    }
    art
}

#[test]
fn every_built_in_drawing_is_read_as_usvg_reads_it() {
    let mut seen = 0;
    for symbol in library().all().iter().chain(library().marks()) {
        for age in Age::ALL {
            if let Some(svg) = symbol.svg_at(age) {
                let art = judged(svg, &format!("{} {}", symbol.id, age.label()));
                assert!(!art.nodes.is_empty(), "{}", symbol.id);
                seen += 1;
            }
        }
    }
    assert!(seen > 500, "{seen}");
}

/// SVG 1.1 (Second Edition) and SVG 2; the number of the section stands beside each.
#[test]
fn examples_of_the_specification_are_read_as_usvg_reads_them() {
    let cases = [
        // SVG 2, 9.3.1, example triangle01.
        "<path d=\"M 100 100 L 300 100 L 200 300 z\" fill=\"red\" stroke=\"blue\" stroke-width=\"3\"/>",
        // SVG 2, 9.3.6, example cubic01.
        "<path d=\"M100,200 C100,100 250,100 250,200 S400,300 400,200\" fill=\"none\" stroke=\"#f00\"/>",
        // SVG 2, 9.3.7, example quad01.
        "<path d=\"M200,300 Q400,50 600,300 T1000,300\" fill=\"none\" stroke=\"red\" stroke-width=\"5\"/>",
        // SVG 2, 9.3.8, example arcs01.
        "<path d=\"M300,200 h-150 a150,150 0 1,0 150,-150 z\" fill=\"red\" stroke=\"blue\"/>",
        "<path d=\"M600,350 l 50,-25 a25,25 -30 0,1 50,-25 l 50,-25 a25,50 -30 0,1 50,-25\"/>",
        // SVG 1.1, 8.3.9, the grammar: numbers without spaces between them.
        "<path d=\"M.5.5 10-20M 0.6.5-9e1+4\"/>",
        // The same: the flags of an arc need nothing after them.
        "<path d=\"M10 80a45 45 0 01125 125A30 50-30 1160 40z\"/>",
        // SVG 2, 9.3.3: a move with more pairs goes on with lines, relative ones too.
        "<path d=\"m 10 10 20 0 0 20zm5 5 4 0 0 4z\" fill-rule=\"evenodd\"/>",
        // SVG 2, 10.2, examples rect01 and rect02.
        "<rect x=\"400\" y=\"100\" width=\"400\" height=\"200\" fill=\"yellow\" stroke=\"navy\"/>",
        "<g transform=\"translate(700 210) rotate(-30)\"><rect x=\"0\" y=\"0\" width=\"400\" \
         height=\"200\" rx=\"50\" fill=\"none\" stroke=\"purple\" stroke-width=\"30\"/></g>",
        // SVG 2, 10.4, example ellipse01.
        "<g transform=\"translate(300 200)\"><ellipse rx=\"250\" ry=\"100\" fill=\"red\"/></g>",
        // SVG 2, 10.5, 10.6, 10.7.
        "<g stroke=\"green\"><line x1=\"100\" y1=\"300\" x2=\"300\" y2=\"100\" stroke-width=\"5\"/></g>",
        "<polyline fill=\"none\" stroke=\"blue\" stroke-width=\"10\" points=\"50,375 150,375 150,325\"/>",
        "<polygon fill=\"lime\" stroke=\"blue\" points=\"850,75 958,137.5 958,262.5 850,325\"/>",
        // SVG 1.1, 7.4, nested transforms; SVG 2, 13.1, what groups hand down.
        "<g transform=\"translate(50,90)\" fill=\"none\" stroke=\"#abc\"><g transform=\"rotate(-45)\" \
         stroke-linecap=\"round\"><path d=\"M0 0H50\" transform=\"matrix(2 0 0 2 1 1)\"/></g></g>",
    ];
    for inside in cases {
        let svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-10 -20 1200 1200\">{inside}</svg>"
        );
        let art = judged(&svg, inside);
        assert_eq!(art.nodes.len(), 1, "{inside}");
    }
}
