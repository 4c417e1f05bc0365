//! The words of a PDF as a reader gets them: down the tag tree, through each font's own map from
//! code to characters. Nothing of the program is used for reading.

use std::collections::BTreeMap;

use daystrand::page::dump::{Read, read};
use lopdf::content::Content;
use lopdf::{Dictionary, Document, Object, ObjectId};

use super::sample;

/// What a PDF says, piece by piece as (tag, words or replacement words).
pub fn spoken(doc: &Document) -> Vec<(String, String)> {
    let pages: Vec<ObjectId> = doc.get_pages().into_values().collect();
    let texts: BTreeMap<ObjectId, BTreeMap<i64, String>> =
        pages.iter().map(|p| (*p, marked_texts(doc, *p))).collect();
    let root = dict(
        doc,
        doc.catalog()
            .expect("a catalogue")
            .get(b"StructTreeRoot")
            .expect("tags"),
    );
    let mut out = Vec::new();
    walk(
        doc,
        root.get(b"K").expect("a document element"),
        &texts,
        &mut out,
    );
    out
}

fn dict<'a>(doc: &'a Document, object: &'a Object) -> &'a Dictionary {
    doc.dereference(object)
        .and_then(|(_, o)| o.as_dict())
        .expect("a dictionary")
}

fn walk(
    doc: &Document,
    element: &Object,
    texts: &BTreeMap<ObjectId, BTreeMap<i64, String>>,
    out: &mut Vec<(String, String)>,
) {
    let element = dict(doc, element);
    let tag = name(element, b"S");
    let kids = match element.get(b"K") {
        Ok(Object::Array(kids)) => kids.clone(),
        Ok(kid) => vec![kid.clone()],
        Err(_) => Vec::new(),
    };
    if matches!(tag.as_str(), "Document" | "Sect") {
        for kid in &kids {
            walk(doc, kid, texts, out);
        }
        return;
    }
    let page = element
        .get(b"Pg")
        .and_then(Object::as_reference)
        .expect("a page");
    let words = match element.get(b"Alt") {
        Ok(alt) => text_string(alt),
        Err(_) => kids
            .iter()
            .map(|k| {
                texts[&page]
                    .get(&k.as_i64().expect("a mark"))
                    .expect("its content")
                    .as_str()
            })
            .collect(),
    };
    out.push((tag, words));
}

fn name(dict: &Dictionary, key: &[u8]) -> String {
    let name = dict.get(key).and_then(Object::as_name).expect("a name");
    String::from_utf8_lossy(name).into_owned()
}

pub fn text_string(object: &Object) -> String {
    let bytes = object.as_str().expect("a string");
    match bytes.strip_prefix(&[0xFE, 0xFF]) {
        Some(units) => {
            let units: Vec<u16> = units
                .chunks_exact(2)
                .map(|u| u16::from_be_bytes([u[0], u[1]]))
                .collect();
            String::from_utf16(&units).expect("UTF-16")
        }
        None => String::from_utf8(bytes.to_vec()).expect("ASCII"),
    }
}

/// By mark: the words of a page. Checks on the way that marks are balanced and each used once.
fn marked_texts(doc: &Document, page: ObjectId) -> BTreeMap<i64, String> {
    let fonts: BTreeMap<Vec<u8>, BTreeMap<u16, String>> = doc
        .get_page_fonts(page)
        .expect("fonts")
        .into_iter()
        .map(|(name, font)| (name, to_unicode(doc, font)))
        .collect();
    let content = doc.get_page_content(page);
    let content = Content::decode(&content).expect("operators");
    let mut out = BTreeMap::new();
    // Open marks: its number if it has one; whether it replaces what is inside.
    let mut open: Vec<(Option<i64>, bool)> = Vec::new();
    let mut font = None;
    for op in &content.operations {
        let mark = open.iter().rev().find_map(|(m, _)| *m);
        match op.operator.as_str() {
            "BMC" => open.push((None, false)),
            "BDC" => {
                let properties = op.operands[1].as_dict().expect("properties");
                let number = properties.get(b"MCID").and_then(Object::as_i64).ok();
                if let Some(number) = number {
                    assert!(
                        out.insert(number, String::new()).is_none(),
                        "mark {number} twice"
                    );
                }
                let actual = properties.get(b"ActualText").ok();
                if let (Some(actual), Some(mark)) = (actual, mark) {
                    let text: &mut String = out.get_mut(&mark).expect("opened");
                    text.push_str(&text_string(actual));
                }
                open.push((number, actual.is_some()));
            }
            "EMC" => {
                open.pop().expect("a mark to close");
            }
            "Tf" => font = op.operands[0].as_name().ok().map(<[u8]>::to_vec),
            "TJ" | "Tj" if !open.iter().any(|(_, replaced)| *replaced) => {
                let map = &fonts[font.as_ref().expect("a font")];
                let shown = codes(&op.operands[0]);
                let shown: String = shown.iter().map(|c| map[c].as_str()).collect();
                if let Some(text) = mark.and_then(|m| out.get_mut(&m)) {
                    text.push_str(&shown);
                }
            }
            _ => {}
        }
        let painted = ["TJ", "Tj", "f", "S", "B", "Do"].contains(&op.operator.as_str());
        assert!(
            !painted || !open.is_empty(),
            "{} outside every mark",
            op.operator
        );
    }
    assert!(open.is_empty(), "marks left open");
    out
}

fn codes(operand: &Object) -> Vec<u16> {
    let strings: Vec<&Object> = match operand {
        Object::Array(all) => all.iter().filter(|o| o.as_str().is_ok()).collect(),
        one => vec![one],
    };
    let bytes: Vec<u8> = strings
        .iter()
        .flat_map(|s| s.as_str().expect("codes").to_vec())
        .collect();
    bytes
        .chunks_exact(2)
        .map(|c| u16::from_be_bytes([c[0], c[1]]))
        .collect()
}

fn to_unicode(doc: &Document, font: &Dictionary) -> BTreeMap<u16, String> {
    let stream = font
        .get(b"ToUnicode")
        .and_then(|o| doc.dereference(o))
        .expect("a map")
        .1;
    let text = stream
        .as_stream()
        .and_then(|s| s.get_plain_content())
        .expect("readable");
    let text = String::from_utf8(text).expect("ASCII");
    let mut map = BTreeMap::new();
    for line in text
        .lines()
        .filter(|l| l.starts_with('<') && l.matches('<').count() == 2)
    {
        let parts: Vec<&str> = line
            .split(['<', '>', ' '])
            .filter(|p| !p.is_empty())
            .collect();
        if parts.len() != 2 || line == "<0000> <FFFF>" {
            continue;
        }
        let units: Vec<u16> = (0..parts[1].len() / 4)
            .map(|i| u16::from_str_radix(&parts[1][i * 4..i * 4 + 4], 16).expect("hex"))
            .collect();
        let code = u16::from_str_radix(parts[0], 16).expect("hex");
        map.insert(code, String::from_utf16(&units).expect("UTF-16"));
    }
    map
}

#[test]
fn a_reader_gets_what_the_pages_say_in_their_order() {
    let doc = Document::load_mem(&sample::file()).expect("a PDF");
    let wanted: Vec<(String, String)> = sample::pages()
        .iter()
        .flat_map(read)
        .map(|r| match r {
            Read::Heading(level, text) => (format!("H{level}"), text),
            Read::Paragraph(text) => ("P".to_owned(), text),
            Read::Figure(alt) => ("Figure".to_owned(), alt),
        })
        .collect();
    let got = spoken(&doc);
    assert!(wanted.len() > 50);
    for (g, w) in got.iter().zip(&wanted) {
        assert_eq!(g, w);
    }
    assert_eq!(got.len(), wanted.len());
    // And what stands on the page is what was written on it.
    for paragraph in sample::PARAGRAPHS {
        assert!(
            got.iter().any(|(_, words)| words == paragraph),
            "{paragraph}"
        );
    }
}
