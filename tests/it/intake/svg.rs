//! Drawings: what stays a drawing, what becomes pixels, what is left out and refused.

use daystrand::intake::{Drawing, Photo, Taken, take};
use daystrand::symbols::parse::parse;

use super::refused;

const HEAD: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" \
                    xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 100 100\">";

pub fn of(inside: &str) -> String {
    format!("{HEAD}{inside}</svg>")
}

fn drawing(inside: &str) -> Drawing {
    match take("a.svg", of(inside).as_bytes()) {
        Ok(Taken::Drawing(drawing)) => drawing,
        other => panic!("{inside}: {other:?}"),
    }
}

fn pixels(inside: &str) -> Photo {
    match take("a.svg", of(inside).as_bytes()) {
        Ok(Taken::Photo(photo)) => photo,
        other => panic!("{inside}: {other:?}"),
    }
}

pub const SQUARE: &str = "<rect x='20' y='20' width='60' height='60' fill='#c33'/>";

#[test]
fn flat_shapes_stay_a_drawing_in_the_middle_of_the_square() {
    let drawing = drawing(SQUARE);
    assert!(drawing.notes.is_empty());
    assert_eq!(
        drawing.svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 240\">\
         <path d=\"M48 48L192 48L192 192L48 192Z\" fill=\"#cc3333\"/></svg>\n"
    );
    assert!(parse(&drawing.svg).is_ok());
    // One that reaches its edges gets a margin.
    let full = self::drawing("<rect width='100' height='100'/>");
    assert!(
        full.svg.contains("M6 6L234 6L234 234L6 234Z"),
        "{}",
        full.svg
    );
}

#[test]
fn what_flat_shapes_cannot_say_becomes_pixels_and_is_named() {
    let gradient =
        "<linearGradient id='g'><stop stop-color='red'/><stop offset='1'/></linearGradient>";
    let cases = [
        (format!("{gradient}<rect width='50' height='50' fill='url(#g)'/>"), "colours that run into each other"),
        ("<rect width='50' height='50' opacity='.5'/>".into(), "see-through parts"),
        ("<rect width='50' height='50' fill='rgba(0,0,0,.5)'/>".into(), "see-through parts"),
        (
            "<filter id='f'><feGaussianBlur stdDeviation='3'/></filter>\
             <rect width='50' height='50' filter='url(#f)'/>".into(),
            "effects like shadows",
        ),
        (
            "<mask id='m'><circle r='30' fill='white'/></mask>\
             <rect width='50' height='50' mask='url(#m)'/>".into(),
            "masks",
        ),
        (
            "<pattern id='p' width='9' height='9' patternUnits='userSpaceOnUse'><circle r='4'/></pattern>\
             <rect width='50' height='50' fill='url(#p)'/>".into(),
            "patterns",
        ),
        ("<rect width='50' height='50' style='mix-blend-mode:multiply'/>".into(), "blended colours"),
        (
            "<clipPath id='c'><path clip-rule='evenodd' d='M0 0h40v40h-40zM9 9h20v20h-20z'/></clipPath>\
             <rect width='50' height='50' clip-path='url(#c)'/>".into(),
            "windows of an unusual kind",
        ),
    ];
    for (inside, kind) in cases {
        let photo = pixels(&inside);
        assert_eq!(
            photo.notes,
            [format!(
                "It has {kind} that flat shapes cannot show, so it was taken as a picture of pixels."
            )]
        );
        let corner = photo
            .pixels()
            .get_pixel(photo.size()[0] - 1, photo.size()[1] - 1);
        assert_eq!(corner.0, [0; 4], "transparent ground");
        assert!(!photo.is_opaque());
    }
}

#[test]
fn scripts_links_and_what_moves_are_left_out_and_said() {
    let cases = [
        (
            "<script>alert(1)</script>",
            "Scripts and links in it were left out.",
        ),
        (
            "<rect onclick='x()'/>",
            "Scripts and links in it were left out.",
        ),
        (
            "<a href='https://example.org'><circle r='9'/></a>",
            "Scripts and links in it were left out.",
        ),
        (
            "<foreignObject><p>x</p></foreignObject>",
            "Parts in it that are no drawing were left out.",
        ),
        (
            "<animate attributeName='x'/>",
            "It moves no more; what it shows at first was taken.",
        ),
    ];
    for (inside, note) in cases {
        let drawing = drawing(&format!("{SQUARE}{inside}"));
        assert_eq!(drawing.notes, [note], "{inside}");
        for word in ["script", "href", "http", "onclick", "image", "text"] {
            let svg = drawing.svg.replace("http://www.w3.org/2000/svg", "");
            assert!(!svg.contains(word), "{svg}");
        }
    }
    let told = format!(
        "<!-- KEPT-SECRET --><title>KEPT-SECRET</title><desc>KEPT-SECRET</desc>\
         <metadata>KEPT-SECRET</metadata><g id='KEPT-SECRET' class='KEPT-SECRET'>{SQUARE}</g>"
    );
    assert!(!drawing(&told).svg.contains("KEPT-SECRET"));
}

#[test]
fn what_is_no_drawing_to_see_is_refused_in_a_sentence() {
    let cases: [(String, &str); 9] = [
        (
            "<html><body>not <svg></body></html>".into(),
            "is not a whole SVG drawing",
        ),
        ("<p>how to write <svg/></p>".into(), "is not an SVG drawing"),
        (
            of(SQUARE).replace("</svg>", ""),
            "is not a whole SVG drawing",
        ),
        (of(SQUARE)[..80].into(), "is not a whole SVG drawing"),
        (of(""), "is a drawing in which nothing is to be seen"),
        (
            of("<rect x='200' y='200' width='9' height='9'/>"),
            "nothing is to be seen",
        ),
        (
            of("<rect width='9' height='9' fill='none'/>"),
            "nothing is to be seen",
        ),
        (
            of(&format!("{SQUARE}<text y='20'>Sea</text>")),
            "is a drawing with words in it",
        ),
        (
            of(SQUARE).replace("viewBox=\"0 0 100 100\"", "width=\"-5\" height=\"9\""),
            "is a drawing without a size",
        ),
    ];
    for (svg, what) in cases {
        let said = refused("a.svg", svg.as_bytes());
        assert!(
            said.starts_with("“a.svg” ") && said.contains(what),
            "{said}"
        );
    }
}

/// Without that part the drawing would say something else, so nothing is taken half.
#[test]
fn a_drawing_with_letters_pictures_or_parts_elsewhere_is_refused_with_the_reason() {
    let cases = [
        ("<text x='5' y='9'>Sea</text>", "words in it"),
        ("<g><text><tspan>Sea</tspan></text></g>", "words in it"),
        (
            "<image href='a.png' width='9' height='9'/>",
            "a picture of pixels inside it",
        ),
        (
            "<image xlink:href='data:image/png;base64,AAAA' width='9' height='9'/>",
            "a picture of pixels inside it",
        ),
        ("<use href='other.svg#part'/>", "from another file"),
        ("<use href='drawing.svg#part'/>", "from another file"),
        (
            "<use xlink:href='file:///etc/passwd#a'/>",
            "from another file",
        ),
        (
            "<linearGradient id='g' href='https://example.org/a.svg#g'/>",
            "from another file",
        ),
        (
            "<filter id='f'><feImage href='a.png'/></filter>",
            "from another file",
        ),
    ];
    for (inside, what) in cases {
        let said = refused("a.svg", of(&format!("{SQUARE}{inside}")).as_bytes());
        assert!(
            said.contains(what) && said.ends_with('.'),
            "{inside}: {said}"
        );
    }
    // Empty words and what is switched off change nothing that is seen.
    for inside in [
        "<text x='5' y='9'> </text>",
        "<g display='none'><text>Sea</text></g>",
        "<g style='fill:red; display : none'><image href='a.png'/></g>",
        "<metadata><text>Sea</text></metadata>",
    ] {
        assert_eq!(
            drawing(&format!("{SQUARE}{inside}")).notes,
            Vec::<String>::new()
        );
    }
}
