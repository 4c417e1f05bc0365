//! One page's content: its items as operators, each block under the mark of its role.

use std::io::Write as _;

use flate2::Compression;
use flate2::write::ZlibEncoder;
use printpdf::{
    Codepoint, Color, DictItem, FontId as PdfFontId, Op, PdfFontHandle, Pt, Rgb as PdfRgb,
    TextItem, TextMatrix, XObjectTransform,
};

use super::font::{Cid, Fonts};
use super::symbol::Symbols;
use crate::page::{Block, Item, Page, Role, Stroke};
use crate::text::run::{Line, Run};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect};

/// Compression of every stream: level 6 is within a few percent of the smallest at half the time.
const LEVEL: u32 = 6;

/// The bytes deflated, and whether they are; not when that would make them longer.
pub(super) fn deflate(bytes: &[u8]) -> (Vec<u8>, bool) {
    let mut encoder =
        ZlibEncoder::new(Vec::with_capacity(bytes.len() / 2), Compression::new(LEVEL));
    let packed = encoder.write_all(bytes).and_then(|()| encoder.finish());
    match packed {
        Ok(packed) if packed.len() + 20 < bytes.len() => (packed, true),
        _ => (bytes.to_vec(), false),
    }
}

/// A page ready for the document.
pub(super) struct Written {
    /// The operators.
    pub(super) ops: Vec<Op>,
    /// For each marked content number, which block of the page it belongs to.
    pub(super) tags: Vec<usize>,
}

/// Writes one page.
pub(super) struct Writer<'a> {
    page: &'a Page,
    fonts: &'a mut Fonts,
    symbols: &'a mut Symbols,
    ops: Vec<Op>,
    tags: Vec<usize>,
    fill: Option<Rgb>,
    line: Option<Stroke>,
}

impl<'a> Writer<'a> {
    pub(super) fn new(page: &'a Page, fonts: &'a mut Fonts, symbols: &'a mut Symbols) -> Self {
        Self {
            page,
            fonts,
            symbols,
            ops: Vec::with_capacity(256),
            tags: Vec::new(),
            fill: None,
            line: None,
        }
    }

    pub(super) fn write(mut self) -> Written {
        // Round ends and joins hold for the whole page.
        self.raw("J", &[1.0]);
        self.raw("j", &[1.0]);
        let page = self.page;
        for (i, block) in page.blocks.iter().enumerate() {
            self.block(i, block);
        }
        Written {
            ops: self.ops,
            tags: self.tags,
        }
    }

    /// A figure is one mark with all its items. Under a heading or a paragraph only words belong;
    /// shapes among them are decoration.
    fn block(&mut self, index: usize, block: &Block) {
        let tag = match &block.role {
            Role::Artifact => None,
            role => Some(super::structure::tag(role)),
        };
        let all = matches!(block.role, Role::Figure { .. });
        let belongs = |item: &Item| all || matches!(item, Item::Text { .. });
        let parts = block.items.chunk_by(|a, b| belongs(a) == belongs(b));
        for part in parts {
            match tag {
                Some(tag) if belongs(&part[0]) => {
                    let mcid = self.tags.len() as i64;
                    self.tags.push(index);
                    let map = [("MCID".to_owned(), DictItem::Int(mcid))].into();
                    self.begin(tag, DictItem::Dict { map });
                }
                _ => self.ops.push(Op::BeginMarkedContent {
                    tag: "Artifact".to_owned(),
                }),
            }
            self.items(part);
            self.ops.push(Op::EndMarkedContent);
        }
    }

    fn begin(&mut self, tag: &str, properties: DictItem) {
        let tag = tag.to_owned();
        self.ops
            .push(Op::BeginMarkedContentWithProperties { tag, properties });
    }

    fn items(&mut self, items: &[Item]) {
        for (i, item) in items.iter().enumerate() {
            match item {
                Item::Text { at, line, colour } => {
                    let more = items[i + 1..]
                        .iter()
                        .any(|n| matches!(n, Item::Text { .. }));
                    self.text(*at, line, *colour, more);
                }
                Item::Symbol { rect, key, art } => {
                    let id = self.symbols.name(key, art);
                    let transform = self.place(rect.middle_square());
                    self.ops.push(Op::UseXobject { id, transform });
                }
                Item::Shape { path, fill, stroke } => self.shape(path, *fill, stroke.as_ref()),
            }
        }
    }

    fn place(&self, square: Rect) -> XObjectTransform {
        let side = points(square.w);
        XObjectTransform {
            translate_x: Some(Pt(points(square.x))),
            translate_y: Some(Pt(self.up(square.bottom()))),
            scale_x: Some(side),
            scale_y: Some(side),
            no_auto_scale: true,
            ..XObjectTransform::default()
        }
    }

    /// Distance from the lower edge of the page, in points.
    fn up(&self, y: Length) -> f32 {
        points(self.page.size.h - y)
    }

    fn raw(&mut self, key: &str, numbers: &[f32]) {
        let value = numbers.iter().map(|n| DictItem::Real(*n)).collect();
        self.ops.push(Op::Unknown {
            key: key.to_owned(),
            value,
        });
    }

    fn set_fill(&mut self, colour: Rgb) {
        if self.fill != Some(colour) {
            self.fill = Some(colour);
            self.ops.push(Op::SetFillColor {
                col: pdf_colour(colour),
            });
        }
    }

    fn shape(&mut self, path: &Path<Point>, fill: Option<Rgb>, stroke: Option<&Stroke>) {
        let paint = match (fill, stroke) {
            (Some(_), Some(_)) => "B",
            (Some(_), None) => "f",
            (None, Some(_)) => "S",
            (None, None) => return,
        };
        if let Some(fill) = fill {
            self.set_fill(fill);
        }
        if let Some(stroke) = stroke {
            self.set_line(stroke);
        }
        for seg in &path.segs {
            let p = |p: &Point| [points(p.x), self.up(p.y)];
            match seg {
                Seg::Move(a) => self.raw("m", &p(a)),
                Seg::Line(a) => self.raw("l", &p(a)),
                Seg::Cubic(a, b, c) => {
                    let ([x1, y1], [x2, y2], [x3, y3]) = (p(a), p(b), p(c));
                    self.raw("c", &[x1, y1, x2, y2, x3, y3]);
                }
                Seg::Close => self.raw("h", &[]),
            }
        }
        self.raw(paint, &[]);
    }

    fn set_line(&mut self, stroke: &Stroke) {
        let was = self.line.replace(*stroke);
        if was.map(|w| w.colour) != Some(stroke.colour) {
            self.ops.push(Op::SetOutlineColor {
                col: pdf_colour(stroke.colour),
            });
        }
        if was.map(|w| w.width) != Some(stroke.width) {
            self.raw("w", &[points(stroke.width)]);
        }
        if was.and_then(|w| w.dash) != stroke.dash {
            let pattern = stroke.dash.map_or_else(Vec::new, |(on, off)| {
                vec![DictItem::Real(points(on)), DictItem::Real(points(off))]
            });
            let value = vec![DictItem::Array(pattern), DictItem::Int(0)];
            self.ops.push(Op::Unknown {
                key: "d".to_owned(),
                value,
            });
        }
    }

    /// A line of words. `more` says that another line of the same block follows: then a blank
    /// parts the words for those who copy or hear them.
    fn text(&mut self, at: Point, line: &Line, colour: Rgb, more: bool) {
        self.set_fill(colour);
        let order = reading_order(line);
        for (i, &run) in order.iter().enumerate() {
            let (x, run) = &line.runs[run];
            let blank = more && i + 1 == order.len();
            self.run(at.moved(*x, Length::ZERO), run, blank);
        }
    }

    fn run(&mut self, at: Point, run: &Run, blank: bool) {
        let spelt = spell(run);
        let spoken = !spelt.backwards && spelt.glyphs.iter().any(|(_, text)| text.is_empty());
        if spoken {
            self.begin("Span", actual_text(&run.text, blank));
        }
        let font = PdfFontHandle::External(PdfFontId(Fonts::name(run.font).to_owned()));
        let matrix = TextMatrix::Raw([1.0, 0.0, 0.0, 1.0, points(at.x), self.up(at.y)]);
        self.ops.push(Op::StartTextSection);
        self.ops.push(Op::SetFont {
            font,
            size: Pt(points(run.size)),
        });
        self.ops.push(Op::SetTextMatrix { matrix });
        self.glyphs(run, &spelt, blank);
        self.ops.push(Op::EndTextSection);
        if spoken {
            self.ops.push(Op::EndMarkedContent);
        }
    }

    /// Glyphs in the order they are read, at their exact places: the pen is followed with the
    /// widths as written in the file, and moved wherever the next glyph wants it elsewhere.
    fn glyphs(&mut self, run: &Run, spelt: &Spelt<'_>, blank: bool) {
        let per_em = 1000.0 / f64::from(crate::text::units_per_em(run.font));
        let (mut pen, mut rise) = (0.0_f64, 0);
        let mut items: Vec<TextItem> = Vec::new();
        for &(i, text) in &spelt.glyphs {
            let glyph = &run.glyphs[i];
            if glyph.dy != rise {
                self.show(&mut items);
                rise = glyph.dy;
                let em = run.size.to_pt() * per_em / 1000.0;
                self.raw("Ts", &[rounded(f64::from(rise) * em)]);
            }
            let cid = self.fonts.cid(run.font, glyph.id, text);
            let x = f64::from(spelt.pens[i] + glyph.dx) * per_em;
            pen = move_pen(&mut items, pen, x);
            push_glyph(&mut items, cid);
            pen += f64::from(cid.width);
        }
        if let Some(cid) = self.fonts.blank(run.font).filter(|_| blank) {
            if spelt.backwards {
                // Read last, so it lies left of everything.
                move_pen(&mut items, pen, -f64::from(cid.width));
            }
            push_glyph(&mut items, cid);
        }
        self.show(&mut items);
        if rise != 0 {
            self.raw("Ts", &[0.0]);
        }
    }

    fn show(&mut self, items: &mut Vec<TextItem>) {
        if !items.is_empty() {
            let items = std::mem::take(items);
            self.ops.push(Op::ShowText { items });
        }
    }
}

fn push_glyph(items: &mut Vec<TextItem>, cid: Cid) {
    let code = Codepoint::new(cid.code, 0.0);
    match items.last_mut() {
        Some(TextItem::GlyphIds(codes)) => codes.push(code),
        _ => items.push(TextItem::GlyphIds(vec![code])),
    }
}

/// Moves the pen, both places in thousandths of an em; gives where it is then. Less than a
/// twentieth of a thousandth is left as it is.
fn move_pen(items: &mut Vec<TextItem>, from: f64, to: f64) -> f64 {
    let back = from - to;
    if back.abs() <= 0.05 {
        return from;
    }
    let back = (back * 100.0).round() / 100.0;
    items.push(TextItem::Offset(back as f32));
    from - back
}

/// A run's glyphs in the order they are read.
struct Spelt<'a> {
    /// Each glyph's number in painting order, and the characters it stands for; none when other
    /// glyphs stand for them.
    glyphs: Vec<(usize, &'a str)>,
    /// By number in painting order: where its pen stands, in font units.
    pens: Vec<i32>,
    /// Whether the run is read from right to left.
    backwards: bool,
}

fn spell(run: &Run) -> Spelt<'_> {
    let glyphs = &run.glyphs;
    let mut pens = Vec::with_capacity(glyphs.len());
    let mut pen = 0;
    for glyph in glyphs {
        pens.push(pen);
        pen += glyph.advance;
    }
    let backwards =
        matches!((glyphs.first(), glyphs.last()), (Some(a), Some(b)) if a.from > b.from);
    let mut order: Vec<usize> = (0..glyphs.len()).collect();
    if backwards {
        order.reverse();
    }
    let mut spelt = Vec::with_capacity(order.len());
    for group in order.chunk_by(|a, b| glyphs[*a].from == glyphs[*b].from) {
        spell_group(run, group, &mut spelt);
    }
    Spelt {
        glyphs: spelt,
        pens,
        backwards,
    }
}

/// Glyphs that share characters get one each where the numbers agree, as a letter and its marks
/// do; else the first stands for all.
fn spell_group<'a>(run: &'a Run, group: &[usize], out: &mut Vec<(usize, &'a str)>) {
    let from = group.iter().map(|i| run.glyphs[*i].from).min().unwrap_or(0) as usize;
    let to = group.iter().map(|i| run.glyphs[*i].to).max().unwrap_or(0) as usize;
    let text = run.text.get(from..to).unwrap_or("");
    if group.len() > 1 && text.chars().count() == group.len() {
        let chars = text
            .char_indices()
            .map(|(at, c)| &text[at..at + c.len_utf8()]);
        out.extend(group.iter().copied().zip(chars));
    } else {
        let texts = std::iter::once(text).chain(std::iter::repeat(""));
        out.extend(group.iter().copied().zip(texts));
    }
}

/// The text of a run as a property of its content, in UTF-16.
fn actual_text(text: &str, blank: bool) -> DictItem {
    let units = text.encode_utf16().chain(blank.then_some(0x20));
    let data = [0xFE, 0xFF]
        .into_iter()
        .chain(units.flat_map(u16::to_be_bytes))
        .collect();
    let text = DictItem::String {
        data,
        literal: false,
    };
    DictItem::Dict {
        map: [("ActualText".to_owned(), text)].into(),
    }
}

/// The runs of a line, which lie from left to right, in the order they are read.
fn reading_order(line: &Line) -> Vec<usize> {
    let mut order = Vec::with_capacity(line.runs.len());
    let mut rest = line.text.as_str();
    while order.len() < line.runs.len() {
        let next = (0..line.runs.len())
            .filter(|i| !order.contains(i))
            .filter_map(|i| Some((i, rest.strip_prefix(&*line.runs[i].1.text)?)))
            .min_by_key(|(_, after)| after.len());
        let Some((i, after)) = next else {
            // Not the same characters: as they lie.
            return (0..line.runs.len()).collect();
        };
        order.push(i);
        rest = after;
    }
    order
}

fn pdf_colour(c: Rgb) -> Color {
    let part = |c: u8| ((f64::from(c) / 255.0 * 1000.0).round() / 1000.0) as f32;
    Color::Rgb(PdfRgb {
        r: part(c.0),
        g: part(c.1),
        b: part(c.2),
        icc_profile: None,
    })
}

/// Points to a thousandth (0.35 µm).
fn points(l: Length) -> f32 {
    rounded(l.to_pt())
}

fn rounded(value: f64) -> f32 {
    ((value * 1000.0).round() / 1000.0) as f32
}
