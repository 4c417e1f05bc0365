//! Fonts cut down to what a document uses.
//!
//! A code of our own stands for each glyph *with the characters it stands for*, so that a glyph
//! used for different characters still copies and reads right; printpdf's own font objects know
//! one text a glyph and cut widths down to whole thousandths.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use lopdf::{Dictionary, Document, Object, Stream, StringFormat, dictionary};
use rustybuzz::ttf_parser::{Face, GlyphId};
use subsetter::GlyphRemapper;
use unicode_normalization::UnicodeNormalization;

use super::operators::deflate;
use crate::text;
use crate::text::run::FontId;

/// What to map a glyph to that adds nothing of its own to the text: the zero width space. Every
/// glyph needs a mapping (ISO 14289-1, 7.21.7).
const NOTHING: &str = "\u{200B}";

/// A code for a glyph and its width as the file gives it, in thousandths of an em.
#[derive(Clone, Copy)]
pub(super) struct Cid {
    pub(super) code: u16,
    pub(super) width: f32,
}

/// The fonts of one document.
#[derive(Default)]
pub(super) struct Fonts {
    used: BTreeMap<FontId, Used>,
}

/// What is used of one font.
struct Used {
    face: Option<Face<'static>>,
    glyphs: GlyphRemapper,
    /// By glyph of the whole font: the texts it stands for, each with its code.
    codes: BTreeMap<u16, Vec<(Box<str>, Cid)>>,
    /// By code from 1: glyph of the cut-down font, width, text.
    table: Vec<(u16, f32, Box<str>)>,
}

impl Fonts {
    /// Name of a font in page contents.
    pub(super) fn name(font: FontId) -> &'static str {
        match font {
            FontId::Regular => "TextR",
            FontId::Bold => "TextB",
            FontId::Arabic => "ArabicR",
            FontId::ArabicBold => "ArabicB",
        }
    }

    fn used(&mut self, font: FontId) -> &mut Used {
        self.used.entry(font).or_insert_with(|| Used {
            face: Face::parse(text::bytes(font), 0).ok(),
            glyphs: GlyphRemapper::new(),
            codes: BTreeMap::new(),
            table: Vec::new(),
        })
    }

    /// The code of a glyph that stands for these characters.
    pub(super) fn cid(&mut self, font: FontId, glyph: u16, text: &str) -> Cid {
        self.used(font).cid(glyph, text)
    }

    /// The code of a blank.
    pub(super) fn blank(&mut self, font: FontId) -> Option<Cid> {
        let used = self.used(font);
        let glyph = used.face.as_ref()?.glyph_index(' ')?;
        Some(used.cid(glyph.0, " "))
    }

    /// Writes all fonts used; by name, where each is.
    pub(super) fn write(self, doc: &mut Document) -> BTreeMap<String, Object> {
        let mut out = BTreeMap::new();
        for (font, used) in self.used {
            if let Some(object) = used.write(font, doc) {
                out.insert(Self::name(font).to_owned(), object);
            }
        }
        out
    }
}

impl Used {
    fn cid(&mut self, glyph: u16, text: &str) -> Cid {
        let known = self.codes.entry(glyph).or_default();
        if let Some((_, cid)) = known.iter().find(|(t, _)| **t == *text) {
            return *cid;
        }
        let face = self.face.as_ref();
        let width = face.map_or(0.0, |f| {
            let advance = f.glyph_hor_advance(GlyphId(glyph)).unwrap_or(0);
            let exact = f64::from(advance) * 1000.0 / f64::from(f.units_per_em());
            ((exact * 1000.0).round() / 1000.0) as f32
        });
        let text: Box<str> = text.into();
        // Far more codes than any document uses; beyond them the last one repeats.
        let code = u16::try_from(self.table.len() + 1).unwrap_or(u16::MAX);
        let cid = Cid { code, width };
        self.table
            .push((self.glyphs.remap(glyph), width, text.clone()));
        known.push((text, cid));
        cid
    }

    fn write(self, font: FontId, doc: &mut Document) -> Option<Object> {
        let face = self.face.as_ref()?;
        let program = subsetter::subset(text::bytes(font), 0, &self.glyphs).ok()?;
        let name = format!("{}+{}", tag(&program), text::postscript_name(font));
        let length = program.len() as i64;
        let program = doc.add_object(stream(dictionary! { "Length1" => length }, &program));
        let descriptor = doc.add_object(descriptor(face, font, &name, program.into()));
        let to_unicode = doc.add_object(stream(Dictionary::new(), self.to_unicode().as_bytes()));
        let glyphs = self.glyph_map(doc);
        let descendant = doc.add_object(dictionary! {
            "Type" => "Font",
            "Subtype" => "CIDFontType2",
            "BaseFont" => name.as_str(),
            "CIDSystemInfo" => dictionary! {
                "Registry" => literal("Adobe"),
                "Ordering" => literal("Identity"),
                "Supplement" => 0,
            },
            "FontDescriptor" => descriptor,
            "DW" => 0,
            "W" => self.widths(),
            "CIDToGIDMap" => glyphs,
        });
        let object = doc.add_object(dictionary! {
            "Type" => "Font",
            "Subtype" => "Type0",
            "BaseFont" => name.as_str(),
            "Encoding" => "Identity-H",
            "DescendantFonts" => vec![Object::from(descendant)],
            "ToUnicode" => to_unicode,
        });
        Some(object.into())
    }

    fn widths(&self) -> Object {
        let widths = self
            .table
            .iter()
            .map(|(_, w, _)| Object::Real(*w))
            .collect();
        Object::Array(vec![1.into(), Object::Array(widths)])
    }

    /// From code to glyph: `Identity` when they are the same, else two bytes a code.
    fn glyph_map(&self, doc: &mut Document) -> Object {
        let same = |(i, (glyph, _, _)): (usize, &(u16, f32, Box<str>))| i + 1 == *glyph as usize;
        if self.table.iter().enumerate().all(same) {
            return "Identity".into();
        }
        let mut map = vec![0, 0];
        map.extend(
            self.table
                .iter()
                .flat_map(|(glyph, _, _)| glyph.to_be_bytes()),
        );
        doc.add_object(stream(Dictionary::new(), &map)).into()
    }

    /// From code to characters, composed (NFC) so that what is copied can be searched.
    fn to_unicode(&self) -> String {
        let mut out = String::from(
            "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n\
             /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n\
             /CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n\
             1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n",
        );
        // At most 100 entries a section (Adobe technical note 5411).
        for (section, entries) in self.table.chunks(100).enumerate() {
            let _ = writeln!(out, "{} beginbfchar", entries.len());
            for (i, (_, _, text)) in entries.iter().enumerate() {
                let _ = write!(out, "<{:04X}> <", section * 100 + i + 1);
                let text = if text.is_empty() { NOTHING } else { text };
                for unit in text.nfc().collect::<String>().encode_utf16() {
                    let _ = write!(out, "{unit:04X}");
                }
                out.push_str(">\n");
            }
            out.push_str("endbfchar\n");
        }
        out.push_str("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
        out
    }
}

fn descriptor(face: &Face<'_>, font: FontId, name: &str, program: Object) -> Dictionary {
    let em = |v: i16| (i64::from(v) * 1000) / i64::from(face.units_per_em());
    let b = face.global_bounding_box();
    let cap = face.capital_height().unwrap_or_else(|| face.ascender());
    let bold = matches!(font, FontId::Bold | FontId::ArabicBold);
    dictionary! {
        "Type" => "FontDescriptor",
        "FontName" => name,
        // Symbolic: codes are our own, not a standard set (ISO 32000-1, table 123, bit 3).
        "Flags" => 4,
        "FontBBox" => vec![em(b.x_min).into(), em(b.y_min).into(), em(b.x_max).into(), em(b.y_max).into()],
        "ItalicAngle" => 0,
        "Ascent" => em(face.ascender()),
        "Descent" => em(face.descender()),
        "CapHeight" => em(cap),
        // No table of the font holds it; customary estimates.
        "StemV" => if bold { 166 } else { 88 },
        "FontWeight" => if bold { 700 } else { 400 },
        "FontFile2" => program,
    }
}

fn literal(text: &str) -> Object {
    Object::String(text.as_bytes().to_vec(), StringFormat::Literal)
}

/// A stream, deflated where that makes it shorter.
pub(super) fn stream(mut dict: Dictionary, bytes: &[u8]) -> Stream {
    let (content, packed) = deflate(bytes);
    if packed {
        dict.set("Filter", "FlateDecode");
    }
    Stream::new(dict, content).with_compression(false)
}

/// Six capitals that tell this choice of glyphs from another (ISO 32000-1, 9.6.4).
fn tag(program: &[u8]) -> String {
    let mut hash = super::finish::Hash::default();
    hash.add(program);
    let [mut n, _] = hash.sum();
    let mut tag = String::with_capacity(6);
    for _ in 0..6 {
        tag.push(char::from(b'A' + (n % 26) as u8));
        n /= 26;
    }
    tag
}
