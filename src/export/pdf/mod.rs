//! Pages to PDF 1.7: true to size, tagged for those who hear it, the same bytes each time.
//!
//! `printpdf` makes the document, its pages and their resources; `content` writes what stands on a
//! page, `symbol` with `pixels` and `font` what is shared between pages; `structure` says what everything is to a reader; `finish` settles what a
//! printer and a screen reader look for, and saves.

mod content;
mod finish;
mod font;
mod meta;
mod operators;
mod pixels;
mod structure;
mod symbol;

use std::collections::BTreeMap;

use printpdf::{Mm, PdfDocument, PdfPage, PdfSaveOptions};

pub use meta::Meta;

use crate::page::Page;
use content::Writer;
use font::Fonts;
use symbol::Symbols;

/// The pages as one PDF file.
///
/// What is on a page keeps its place to a thousandth of a point, its reading order and its roles.
/// Fonts are cut down to the glyphs used and embedded; each symbol variant is written once.
pub fn pdf(pages: &[Page], meta: &Meta) -> Vec<u8> {
    let mut fonts = Fonts::default();
    let mut symbols = Symbols::default();
    let mut doc = PdfDocument::new(&meta.title);
    let mut contents = Vec::with_capacity(pages.len());
    let mut tags = Vec::with_capacity(pages.len());
    for page in pages {
        let written = Writer::new(page, &mut fonts, &mut symbols).write();
        let (w, h) = (page.size.w.to_mm() as f32, page.size.h.to_mm() as f32);
        doc.pages.push(PdfPage::new(Mm(w), Mm(h), Vec::new()));
        contents.push(written.content);
        tags.push(written.tags);
    }
    doc.resources.xobjects.map = symbols.into_objects();
    let options = PdfSaveOptions {
        optimize: false,
        subset_fonts: false,
        secure: true,
        image_optimization: None,
    };
    let lo = doc.to_lopdf_document(&options, &mut Vec::new());
    let mut file = finish::Draft::new(lo, pages, &contents);
    let font_objects: BTreeMap<String, _> = fonts.write(&mut file.doc);
    file.set_fonts(font_objects);
    structure::write(&mut file, pages, &tags);
    file.describe(meta);
    file.save(meta)
}
