//! One page's content: its items as operators, each block under the mark of its role.

use super::font::Fonts;
use super::operators::{Operators, Shown};
use super::symbol::Symbols;
use crate::page::{Block, Item, Page, Role, Stroke};
use crate::text::run::{Line, Run};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect};

/// A page ready for the document.
pub(super) struct Written {
    /// The content stream.
    pub(super) content: Vec<u8>,
    /// For each marked content number, which block of the page it belongs to.
    pub(super) tags: Vec<usize>,
}

/// Writes one page.
pub(super) struct Writer<'a> {
    page: &'a Page,
    fonts: &'a mut Fonts,
    symbols: &'a mut Symbols,
    out: Operators,
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
            // Thousandths of a point: 0.35 µm.
            out: Operators::new(3),
            tags: Vec::new(),
            fill: None,
            line: None,
        }
    }

    pub(super) fn write(mut self) -> Written {
        // Round ends and joins hold for the whole page.
        self.out.raw("1 J 1 j\n");
        let page = self.page;
        for (i, block) in page.blocks.iter().enumerate() {
            self.block(i, block);
        }
        Written {
            content: self.out.into_bytes(),
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
                    let mark = self.tags.len();
                    self.tags.push(index);
                    self.out.raw(&format!("/{tag}<</MCID {mark}>>BDC\n"));
                }
                _ => self.out.raw("/Artifact BMC\n"),
            }
            self.items(part);
            self.out.raw("EMC\n");
        }
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
                    let name = self.symbols.name(key, art);
                    self.symbol(&name, rect.middle_square());
                }
                Item::Shape { path, fill, stroke } => self.shape(path, *fill, stroke.as_ref()),
            }
        }
    }

    fn symbol(&mut self, name: &str, square: Rect) {
        let (side, x, y) = (square.w.to_pt(), square.x.to_pt(), self.up(square.bottom()));
        self.out.raw("q ");
        self.out.op(&[side, 0.0, 0.0, side, x, y], "cm");
        self.out.raw(&format!("/{name} Do Q\n"));
    }

    /// Distance from the lower edge of the page, in points.
    fn up(&self, y: Length) -> f64 {
        (self.page.size.h - y).to_pt()
    }

    fn set_fill(&mut self, colour: Rgb) {
        if self.fill != Some(colour) {
            self.fill = Some(colour);
            self.out.colour(colour, "rg");
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
        let height = self.page.size.h;
        let p = |p: &Point| [p.x.to_pt(), (height - p.y).to_pt()];
        for seg in &path.segs {
            match seg {
                Seg::Move(a) => self.out.op(&p(a), "m"),
                Seg::Line(a) => self.out.op(&p(a), "l"),
                Seg::Cubic(a, b, c) => {
                    let ([x1, y1], [x2, y2], [x3, y3]) = (p(a), p(b), p(c));
                    self.out.op(&[x1, y1, x2, y2, x3, y3], "c");
                }
                Seg::Close => self.out.raw("h\n"),
            }
        }
        self.out.op(&[], paint);
    }

    fn set_line(&mut self, stroke: &Stroke) {
        let was = self.line.replace(*stroke);
        if was.map(|w| w.colour) != Some(stroke.colour) {
            self.out.colour(stroke.colour, "RG");
        }
        if was.map(|w| w.width) != Some(stroke.width) {
            self.out.op(&[stroke.width.to_pt()], "w");
        }
        if was.and_then(|w| w.dash) != stroke.dash {
            match stroke.dash {
                None => self.out.raw("[] 0 d\n"),
                Some((on, off)) => {
                    self.out.raw("[");
                    self.out.number(on.to_pt());
                    self.out.raw(" ");
                    self.out.number(off.to_pt());
                    self.out.raw("] 0 d\n");
                }
            }
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
            let text = run.text.encode_utf16().chain(blank.then_some(0x20));
            self.out.raw("/Span<</ActualText");
            self.out.utf16(text);
            self.out.raw(">>BDC\n");
        }
        self.out.raw("BT /");
        self.out.raw(Fonts::name(run.font));
        self.out.raw(" ");
        self.out.op(&[run.size.to_pt()], "Tf");
        let (x, y) = (at.x.to_pt(), self.up(at.y));
        self.out.op(&[x, y], "Td");
        self.glyphs(run, &spelt, blank);
        self.out.raw(if spoken { "ET EMC\n" } else { "ET\n" });
    }

    /// Glyphs in the order they are read, at their exact places: the pen is followed with the
    /// widths as written in the file, and moved wherever the next glyph wants it elsewhere.
    fn glyphs(&mut self, run: &Run, spelt: &Spelt<'_>, blank: bool) {
        let per_em = 1000.0 / f64::from(crate::text::units_per_em(run.font));
        let (mut pen, mut rise) = (0.0_f64, 0);
        let mut shown = Shown::default();
        for &(i, text) in &spelt.glyphs {
            let glyph = &run.glyphs[i];
            if glyph.dy != rise {
                shown.flush(&mut self.out);
                rise = glyph.dy;
                let em = run.size.to_pt() * per_em / 1000.0;
                self.out.op(&[f64::from(rise) * em], "Ts");
            }
            let cid = self.fonts.cid(run.font, glyph.id, text);
            pen = shown.move_pen(pen, f64::from(spelt.pens[i] + glyph.dx) * per_em);
            shown.code(cid.code);
            pen += f64::from(cid.width);
        }
        if let Some(cid) = self.fonts.blank(run.font).filter(|_| blank) {
            if spelt.backwards {
                // Read last, so it lies left of everything.
                shown.move_pen(pen, -f64::from(cid.width));
            }
            shown.code(cid.code);
        }
        shown.flush(&mut self.out);
        if rise != 0 {
            self.out.raw("0 Ts\n");
        }
    }
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
