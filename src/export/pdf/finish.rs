//! The last steps: boxes, catalogue, outline, description, a fixed identity, and saving.

use std::collections::BTreeMap;

use lopdf::{Dictionary, Document, Object, ObjectId, SaveOptions, StringFormat, dictionary};

use super::meta::{Meta, pdf_date, producer, xmp};
use crate::page::{Page, Role};
use crate::units::Size;

/// Objects in one object stream, and its compression.
const OBJECTS: usize = 400;
const LEVEL: u32 = 6;

/// A document on its way to being a file.
pub(super) struct Draft {
    pub(super) doc: Document,
    pub(super) pages: Vec<ObjectId>,
    pub(super) lang: String,
    catalog: ObjectId,
    titles: Vec<String>,
    /// Titles, languages and words for pictures, for the identity.
    said: Vec<String>,
}

/// Images with the same content become one object. Twice, for two may have had masks of their own
/// until those were one.
fn share_images(doc: &mut Document) {
    for _ in 0..2 {
        let mut first: Vec<ObjectId> = Vec::new();
        let mut same: BTreeMap<ObjectId, ObjectId> = BTreeMap::new();
        for (id, object) in &doc.objects {
            let Object::Stream(stream) = object else {
                continue;
            };
            let kind = stream.dict.get(b"Subtype").and_then(Object::as_name);
            if !kind.is_ok_and(|k| k == b"Image") {
                continue;
            }
            match first.iter().find(|f| doc.objects.get(f) == Some(object)) {
                Some(earlier) => drop(same.insert(*id, *earlier)),
                None => first.push(*id),
            }
        }
        doc.objects.retain(|id, _| !same.contains_key(id));
        for object in doc.objects.values_mut() {
            point_to(object, &same);
        }
    }
}

fn point_to(object: &mut Object, same: &BTreeMap<ObjectId, ObjectId>) {
    match object {
        Object::Reference(id) => *id = *same.get(id).unwrap_or(id),
        Object::Array(all) => all.iter_mut().for_each(|o| point_to(o, same)),
        Object::Dictionary(dict) => dict.iter_mut().for_each(|(_, o)| point_to(o, same)),
        Object::Stream(stream) => stream.dict.iter_mut().for_each(|(_, o)| point_to(o, same)),
        _ => {}
    }
}

impl Draft {
    /// Takes printpdf's document; settles page sizes to the ten-thousandth of a point and puts in
    /// the page contents.
    pub(super) fn new(mut doc: Document, pages: &[Page], contents: &[Vec<u8>]) -> Self {
        doc.version = "1.7".to_owned();
        share_images(&mut doc);
        let catalog = doc
            .trailer
            .get(b"Root")
            .and_then(Object::as_reference)
            .unwrap_or((0, 0));
        let ids: Vec<ObjectId> = doc.get_pages().into_values().collect();
        for ((id, page), content) in ids.iter().zip(pages).zip(contents) {
            let stream = doc
                .get_dictionary(*id)
                .and_then(|d| d.get(b"Contents")?.as_reference());
            if let Ok(Object::Stream(s)) = stream.and_then(|c| doc.get_object_mut(c)) {
                *s = super::font::stream(Dictionary::new(), content);
            }
            if let Ok(dict) = doc.get_dictionary_mut(*id) {
                for name in ["MediaBox", "CropBox", "BleedBox", "TrimBox"] {
                    dict.set(name, page_box(page.size));
                }
                dict.remove(b"Annots");
            }
        }
        let lang = pages
            .first()
            .map(|p| p.lang.clone())
            .filter(|l| !l.is_empty());
        Self {
            doc,
            pages: ids,
            lang: lang.unwrap_or_else(|| "en".to_owned()),
            catalog,
            titles: pages.iter().map(|p| p.title.clone()).collect(),
            said: pages.iter().flat_map(said).collect(),
        }
    }

    /// Changes the catalogue.
    pub(super) fn catalog(&mut self, change: impl FnOnce(&mut Dictionary)) {
        self.page(self.catalog, change);
    }

    /// Changes a page or another dictionary.
    pub(super) fn page(&mut self, id: ObjectId, change: impl FnOnce(&mut Dictionary)) {
        if let Ok(dict) = self.doc.get_dictionary_mut(id) {
            change(dict);
        }
    }

    /// Fills the one font dictionary that all pages share.
    pub(super) fn set_fonts(&mut self, fonts: BTreeMap<String, Object>) {
        let shared = self.pages.first().and_then(|page| {
            let page = self.doc.get_dictionary(*page).ok()?;
            let resources = page.get(b"Resources").ok()?.as_reference().ok()?;
            let resources = self.doc.get_dictionary(resources).ok()?;
            resources.get(b"Font").ok()?.as_reference().ok()
        });
        if let Some(shared) = shared {
            self.doc.set_object(shared, Dictionary::from_iter(fonts));
        }
    }

    /// Language, title, outline, metadata, and that it is to be printed at its own size.
    pub(super) fn describe(&mut self, meta: &Meta) {
        let packet = xmp(meta, &self.lang);
        // Not packed, so that programs which know no PDF can find it (ISO 16684-1, 7.3).
        let packet = lopdf::Stream::new(
            dictionary! { "Type" => "Metadata", "Subtype" => "XML" },
            packet.into_bytes(),
        );
        let packet = self.doc.add_object(packet.with_compression(false));
        let outline = self.outline();
        let lang = text_string(&self.lang);
        self.catalog(|c| {
            c.set("Metadata", packet);
            c.set("Lang", lang);
            c.set("PageLayout", "SinglePage");
            c.set(
                "PageMode",
                if outline.is_some() {
                    "UseOutlines"
                } else {
                    "UseNone"
                },
            );
            c.set(
                "ViewerPreferences",
                dictionary! { "DisplayDocTitle" => true, "PrintScaling" => "None" },
            );
            if let Some(outline) = outline {
                c.set("Outlines", outline);
            }
        });
        let date = Object::String(pdf_date(meta.date).into_bytes(), StringFormat::Literal);
        let mut info = dictionary! {
            "Title" => text_string(&meta.title),
            "Author" => text_string(&meta.author),
            "Producer" => text_string(&producer()),
            "Creator" => text_string(&producer()),
            "CreationDate" => date.clone(),
            "ModDate" => date,
        };
        if let Some(subject) = &meta.subject {
            info.set("Subject", text_string(subject));
        }
        match self.doc.trailer.get(b"Info").and_then(Object::as_reference) {
            Ok(id) => self.doc.set_object(id, info),
            Err(_) => {
                let id = self.doc.add_object(info);
                self.doc.trailer.set("Info", id);
            }
        }
    }

    /// One entry a page, by its title.
    fn outline(&mut self) -> Option<ObjectId> {
        let root = self.doc.new_object_id();
        let entries: Vec<ObjectId> = self
            .pages
            .iter()
            .map(|_| self.doc.new_object_id())
            .collect();
        let (first, last) = (*entries.first()?, *entries.last()?);
        for (i, (&entry, &page)) in entries.iter().zip(&self.pages).enumerate() {
            let mut dict = dictionary! {
                "Title" => text_string(self.titles.get(i).map_or("", String::as_str)),
                "Parent" => root,
                "Dest" => vec![page.into(), "Fit".into()],
            };
            if i > 0 {
                dict.set("Prev", entries[i - 1]);
            }
            if let Some(next) = entries.get(i + 1) {
                dict.set("Next", *next);
            }
            self.doc.objects.insert(entry, Object::Dictionary(dict));
        }
        let count = entries.len() as i64;
        self.doc.set_object(
            root,
            dictionary! { "Type" => "Outlines", "First" => first, "Last" => last, "Count" => count },
        );
        Some(root)
    }

    /// The file. Its identity is a hash of all it holds, so that the same pages give the same bytes.
    pub(super) fn save(mut self, meta: &Meta) -> Vec<u8> {
        let mut hash = Hash::default();
        hash.add(pdf_date(meta.date).as_bytes());
        for stream in self.doc.objects.values().filter_map(|o| o.as_stream().ok()) {
            hash.add(&stream.content);
        }
        // What is said beside the pages and in no stream.
        for said in &self.said {
            hash.add(said.as_bytes());
            hash.add(b"\n");
        }
        let id: Vec<u8> = hash.sum().iter().flat_map(|h| h.to_be_bytes()).collect();
        let id = Object::String(id, StringFormat::Hexadecimal);
        self.doc.trailer.set("ID", vec![id.clone(), id]);
        let options = SaveOptions::builder()
            .use_object_streams(true)
            .use_xref_streams(true)
            .max_objects_per_stream(OBJECTS)
            .compression_level(LEVEL)
            .build();
        let mut bytes = Vec::with_capacity(64 * 1024 + 8 * 1024 * self.pages.len());
        // Writing to memory does not fail.
        let _ = self.doc.save_with_options(&mut bytes, options);
        bytes
    }
}

/// What a page says that stands in no content: title, language, size, words for pictures.
fn said(page: &Page) -> Vec<String> {
    let alts = page.blocks.iter().filter_map(|b| match &b.role {
        Role::Figure { alt } => Some(alt.clone()),
        _ => None,
    });
    let size = format!("{:?}", page.size);
    [page.title.clone(), page.lang.clone(), size]
        .into_iter()
        .chain(alts)
        .collect()
}

fn page_box(size: Size) -> Object {
    let pt = |v: f64| Object::Real(((v * 10_000.0).round() / 10_000.0) as f32);
    Object::Array(vec![
        0.into(),
        0.into(),
        pt(size.w.to_pt()),
        pt(size.h.to_pt()),
    ])
}

/// A text string (ISO 32000-1, 7.9.2.2): plain letters as they are, else UTF-16 with its mark.
pub(super) fn text_string(text: &str) -> Object {
    if text.bytes().all(|b| (0x20..0x7F).contains(&b)) {
        return Object::String(text.as_bytes().to_vec(), StringFormat::Literal);
    }
    let mut bytes = vec![0xFE, 0xFF];
    bytes.extend(text.encode_utf16().flat_map(u16::to_be_bytes));
    Object::String(bytes, StringFormat::Hexadecimal)
}

/// Two 64-bit FNV-1a sums from different starts. Offset and prime as published by Fowler, Noll and
/// Vo (RFC 9923).
pub(super) struct Hash([u64; 2]);

impl Default for Hash {
    fn default() -> Self {
        Self([0xCBF2_9CE4_8422_2325, 0x8422_2325_CBF2_9CE4])
    }
}

impl Hash {
    pub(super) fn add(&mut self, bytes: &[u8]) {
        let [a, b] = &mut self.0;
        for byte in bytes {
            *a = (*a ^ u64::from(*byte)).wrapping_mul(0x100_0000_01B3);
            *b = (*b ^ u64::from(*byte))
                .wrapping_mul(0x100_0000_01B3)
                .rotate_left(29);
        }
    }

    pub(super) fn sum(&self) -> [u64; 2] {
        self.0
    }
}
