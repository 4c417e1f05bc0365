//! Pages that hold one of everything.

use std::sync::Arc;

use daystrand::export::pdf::{Meta, pdf};
use daystrand::model::privacy::Class;
use daystrand::page::{Block, Item, Page, Role, Stroke, SymbolKey};
use daystrand::symbols::library::library;
use daystrand::symbols::variant::Variant;
use daystrand::text::{Style, line, wrap};
use daystrand::units::colour::Rgb;
use daystrand::units::path::{Path, Seg};
use daystrand::units::{Length, Point, Rect, Size};

/// A red found nowhere else on the pages, for things to be measured.
pub const RED: Rgb = Rgb(220, 0, 0);
/// Line width of measured things.
pub const LINE_MM: f64 = 0.4;

pub fn meta() -> Meta {
    Meta {
        title: "Tiles & words <for> \u{141}agoon \u{201C}Noor\u{201D}".into(),
        subject: Some("One of everything".into()),
        author: "Stoneflat Shore Club".into(),
        date: (2027, 6, 12),
    }
}

pub fn pages() -> Vec<Page> {
    vec![tiles(), words(), tiles()]
}

pub fn file() -> Vec<u8> {
    pdf(&pages(), &meta())
}

pub fn rectangle(r: Rect) -> Path<Point> {
    let (right, bottom) = (r.right(), r.bottom());
    Path {
        segs: vec![
            Seg::Move(r.origin()),
            Seg::Line(Point::new(right, r.y)),
            Seg::Line(Point::new(right, bottom)),
            Seg::Line(Point::new(r.x, bottom)),
            Seg::Close,
        ],
    }
}

fn stroked(path: Path<Point>, colour: Rgb, dash: Option<(Length, Length)>) -> Item {
    let width = Length::mm(LINE_MM);
    Item::Shape {
        path,
        fill: None,
        stroke: Some(Stroke {
            colour,
            width,
            dash,
        }),
    }
}

pub fn block(role: Role, items: Vec<Item>) -> Block {
    Block {
        lang: None,
        role,
        source: None,
        items,
    }
}

pub fn text(at: Point, words: &str, style: &Style) -> Item {
    Item::Text {
        at,
        line: Arc::new(line(words, style)),
        colour: Rgb::BLACK,
    }
}

/// A4 with a measured square of 60 mm at (20, 20) mm, a measured bar of 100 mm, and twelve tiles
/// of 40 mm, each a symbol and its words.
pub fn tiles() -> Page {
    let label = Style::bold(Length::pt(14.0));
    let mut blocks = vec![block(
        Role::Heading(1),
        vec![text(
            Point::mm(95.0, 24.0),
            "Tiles 40 mm",
            &Style::bold(Length::pt(24.0)),
        )],
    )];
    let bar = Path {
        segs: vec![
            Seg::Move(Point::mm(95.0, 60.0)),
            Seg::Line(Point::mm(195.0, 60.0)),
        ],
    };
    blocks.push(block(
        Role::Artifact,
        vec![
            stroked(rectangle(Rect::mm(20.0, 20.0, 60.0, 60.0)), RED, None),
            stroked(bar, RED, None),
        ],
    ));
    let symbols = library().all().iter().cycle().take(12);
    for (i, symbol) in symbols.enumerate() {
        let (x, y) = (15.0 + 46.0 * (i % 4) as f64, 90.0 + 60.0 * (i / 4) as f64);
        let drawn = library().art(&symbol.id, Variant::default());
        let rect = Rect::mm(x, y, 40.0, 40.0);
        let key = SymbolKey {
            id: drawn.id,
            variant: drawn.variant,
        };
        let dash = Some((Length::mm(2.0), Length::mm(2.0)));
        let edge = stroked(
            rectangle(Rect::mm(x, y, 40.0, 50.0)),
            Rgb::hex(0x9D_B3_AC),
            dash,
        );
        let figure = Item::Symbol {
            rect,
            key,
            art: drawn.art,
        };
        let alt = symbol.id.to_string();
        blocks.push(block(Role::Artifact, vec![edge]));
        blocks.push(block(Role::Figure { alt }, vec![figure]));
        let words = text(Point::mm(x + 2.0, y + 46.0), symbol.id.as_str(), &label);
        blocks.push(block(Role::Paragraph, vec![words]));
    }
    page("Tiles 40 mm", blocks)
}

/// What a page of words may hold: broken lines, kerning, other letters, Arabic, what no font has.
pub const PARAGRAPHS: [&str; 8] = [
    "AVAST! To the Water: I walk to the lagoon with my helper. Waves may feel cold, and I can wait, \
     or ask for a break with my card, as often as I want.",
    "Zażółć gęślą jaźń. Đặng Thị Hường đi bơi. Fjällräven, naïve, coöperate, 25 °C – “ready?”",
    "مرحبا بكم في البحيرة",
    "Noor says مرحبا to Łucja (two words).",
    "أهلاً وسهلاً بكم في بحيرتنا الجميلة. اليوم نسبح معاً، ثم نلعب في الرمل، ثم نرتاح في الظل ونشرب \
     الماء.",
    "مرحبا Noor Ali في 12 June",
    "fi ffi fl office — café",
    "No font has this: \u{1F3C4}, nor this: \u{4E2D}.",
];

pub fn words() -> Page {
    let mut blocks = vec![block(
        Role::Heading(1),
        vec![text(
            Point::mm(20.0, 30.0),
            "Wörter & words",
            &Style::bold(Length::pt(24.0)),
        )],
    )];
    let style = Style::regular(Length::pt(18.0));
    let mut y = 45.0;
    for paragraph in PARAGRAPHS {
        let wrapped = wrap(paragraph, &style, Length::mm(165.0));
        let mut items = Vec::new();
        for line in wrapped.lines {
            let at = Point::mm(20.0, y);
            items.push(Item::Text {
                at,
                line: Arc::new(line),
                colour: Rgb::hex(0x10_38_3B),
            });
            y += 9.0;
        }
        blocks.push(block(Role::Paragraph, items));
        y += 5.0;
    }
    page("Words", blocks)
}

pub fn page(title: &str, blocks: Vec<Block>) -> Page {
    Page {
        size: Size::mm(210.0, 297.0),
        title: title.into(),
        lang: "en".into(),
        class: Class::Public,
        blocks,
    }
}
