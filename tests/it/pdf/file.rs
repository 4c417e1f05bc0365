//! What the file holds beside its pages, as the standards want it.

use std::collections::BTreeSet;

use daystrand::export::pdf::pdf;
use daystrand::page::Role;
use lopdf::{Dictionary, Document, Object};

use super::sample;
use super::words::text_string;

fn load() -> Document {
    Document::load_mem(&sample::file()).expect("a PDF")
}

fn get<'a>(doc: &'a Document, dict: &'a Dictionary, key: &str) -> &'a Object {
    let found = dict.get(key.as_bytes()).and_then(|o| doc.dereference(o));
    found.unwrap_or_else(|_| panic!("no {key}")).1
}

#[test]
fn same_pages_same_bytes() {
    assert_eq!(sample::file(), sample::file());
    let mut other = sample::pages();
    other[0].blocks.remove(0);
    let id = |bytes: &[u8]| {
        let doc = Document::load_mem(bytes).expect("a PDF");
        let ids = doc
            .trailer
            .get(b"ID")
            .and_then(Object::as_array)
            .expect("an identity")
            .clone();
        ids[0].as_str().expect("a string").to_vec()
    };
    assert_ne!(id(&sample::file()), id(&pdf(&other, &sample::meta())));
    assert_eq!(id(&sample::file()).len(), 16);
}

#[test]
fn no_pages_still_make_a_file() {
    assert!(Document::load_mem(&pdf(&[], &sample::meta())).is_ok());
}

/// ISO 32000-1: version in the header, language, title in the title bar, no scaling (table 150).
#[test]
fn the_catalogue_says_how_to_show_and_print_it() {
    let bytes = sample::file();
    assert!(bytes.starts_with(b"%PDF-1.7\n"));
    let doc = load();
    let catalog = doc.catalog().expect("a catalogue");
    assert_eq!(text_string(get(&doc, catalog, "Lang")), "en");
    let preferences = get(&doc, catalog, "ViewerPreferences")
        .as_dict()
        .expect("preferences");
    assert_eq!(
        get(&doc, preferences, "PrintScaling").as_name().ok(),
        Some(&b"None"[..])
    );
    assert_eq!(
        get(&doc, preferences, "DisplayDocTitle").as_bool().ok(),
        Some(true)
    );
    let marks = get(&doc, catalog, "MarkInfo").as_dict().expect("marks");
    assert_eq!(get(&doc, marks, "Marked").as_bool().ok(), Some(true));
    assert_eq!(
        get(&doc, catalog, "PageMode").as_name().ok(),
        Some(&b"UseOutlines"[..])
    );
}

#[test]
fn the_file_describes_itself_twice_and_the_same() {
    let doc = load();
    let info = get(&doc, &doc.trailer, "Info")
        .as_dict()
        .expect("information");
    let meta = sample::meta();
    assert_eq!(text_string(get(&doc, info, "Title")), meta.title);
    assert_eq!(text_string(get(&doc, info, "Author")), meta.author);
    assert_eq!(
        text_string(get(&doc, info, "CreationDate")),
        "D:20270612120000Z"
    );
    let catalog = doc.catalog().expect("a catalogue");
    let packet = get(&doc, catalog, "Metadata")
        .as_stream()
        .expect("a packet");
    let packet = String::from_utf8(packet.content.clone()).expect("not packed, UTF-8");
    let tree = resvg::usvg::roxmltree::Document::parse(&packet).expect("well-formed");
    let text = |name: &str| {
        let node = tree.descendants().find(|n| n.tag_name().name() == name);
        let node = node.unwrap_or_else(|| panic!("no {name}"));
        node.descendants()
            .filter(|n| n.is_text())
            .filter_map(|n| n.text())
            .collect::<String>()
            .trim()
            .to_owned()
    };
    assert_eq!(text("title"), meta.title);
    assert_eq!(text("creator"), meta.author);
    assert_eq!(text("part"), "1");
    assert_eq!(text("CreateDate"), "2027-06-12T12:00:00Z");
}

/// ISO 32000-1, 9.6.4 and 9.9: a tag of six capitals, the program inside, and small.
#[test]
fn every_font_is_inside_and_cut_down() {
    let doc = load();
    let mut names = BTreeSet::new();
    for object in doc.objects.values() {
        let Ok(dict) = object.as_dict() else { continue };
        if dict.get(b"Type").and_then(Object::as_name).ok() != Some(&b"FontDescriptor"[..]) {
            continue;
        }
        let name = get(&doc, dict, "FontName").as_name().expect("a name");
        let name = String::from_utf8_lossy(name).into_owned();
        let (tag, _) = name.split_once('+').expect("a tag");
        assert!(
            tag.len() == 6 && tag.bytes().all(|b| b.is_ascii_uppercase()),
            "{name}"
        );
        let program = get(&doc, dict, "FontFile2").as_stream().expect("a program");
        assert!(
            program.content.len() < 60_000,
            "{name}: {} bytes",
            program.content.len()
        );
        let program = program.get_plain_content().expect("readable");
        rustybuzz::ttf_parser::Face::parse(&program, 0).expect("a font");
        names.insert(name);
    }
    assert_eq!(names.len(), 3, "regular, bold and Arabic: {names:?}");
    let fonts = doc
        .objects
        .values()
        .filter_map(|o| o.as_dict().ok())
        .filter(|d| d.get(b"Subtype").and_then(Object::as_name).ok() == Some(&b"Type0"[..]));
    assert_eq!(fonts.filter(|f| f.has(b"ToUnicode")).count(), 3);
}

#[test]
fn each_symbol_is_written_once() {
    let doc = load();
    let forms = doc
        .objects
        .values()
        .filter_map(|o| o.as_stream().ok())
        .filter(|s| s.dict.get(b"Subtype").and_then(Object::as_name).ok() == Some(&b"Form"[..]));
    let mut keys = BTreeSet::new();
    for page in sample::pages() {
        for item in page.blocks.iter().flat_map(|b| &b.items) {
            if let daystrand::page::Item::Symbol { key, .. } = item {
                keys.insert(key.clone());
            }
        }
    }
    assert_eq!(forms.count(), keys.len());
    assert!(!keys.is_empty());
}

#[test]
fn the_outline_has_an_entry_a_page() {
    let doc = load();
    let pages: Vec<_> = doc.get_pages().into_values().collect();
    let outline = get(&doc, doc.catalog().expect("a catalogue"), "Outlines");
    let outline = outline.as_dict().expect("an outline");
    let mut at = outline.get(b"First").cloned().ok();
    let mut entries = Vec::new();
    while let Some(next) = at {
        let entry = doc
            .dereference(&next)
            .and_then(|(_, o)| o.as_dict())
            .expect("an entry");
        let to = get(&doc, entry, "Dest").as_array().expect("a place")[0].as_reference();
        entries.push((text_string(get(&doc, entry, "Title")), to.expect("a page")));
        at = entry.get(b"Next").cloned().ok();
    }
    let wanted: Vec<_> = sample::pages()
        .into_iter()
        .map(|p| p.title)
        .zip(pages)
        .collect();
    assert_eq!(entries, wanted);
}

/// ISO 14289-1, 7.1 and 7.3: figures have words for them; from each mark a way back to its element.
#[test]
fn figures_have_words_and_marks_know_their_elements() {
    let doc = load();
    let root = get(&doc, doc.catalog().expect("a catalogue"), "StructTreeRoot");
    let root = root.as_dict().expect("a tree");
    let parents = get(&doc, root, "ParentTree").as_dict().expect("a tree");
    let numbers = get(&doc, parents, "Nums").as_array().expect("numbers");
    let pages = sample::pages();
    assert_eq!(numbers.len(), pages.len() * 2);
    let mut figures = 0;
    for (pair, page) in numbers.chunks(2).zip(&pages) {
        let marks = doc
            .dereference(&pair[1])
            .and_then(|(_, o)| o.as_array())
            .expect("marks");
        let read = page
            .blocks
            .iter()
            .filter(|b| b.role != Role::Artifact)
            .count();
        assert_eq!(marks.len(), read);
        for (i, mark) in marks.iter().enumerate() {
            let element = doc
                .dereference(mark)
                .and_then(|(_, o)| o.as_dict())
                .expect("an element");
            assert_eq!(get(&doc, element, "K").as_i64().ok(), Some(i as i64));
            if get(&doc, element, "S").as_name().ok() == Some(&b"Figure"[..]) {
                figures += 1;
                assert!(!text_string(get(&doc, element, "Alt")).is_empty());
                let layout = get(&doc, element, "A").as_dict().expect("attributes");
                assert_eq!(
                    get(&doc, layout, "BBox").as_array().map(Vec::len).ok(),
                    Some(4)
                );
            }
        }
    }
    assert_eq!(figures, 24);
}
