//! What everything on the pages is to someone who hears it: the tag tree, and the way back into it
//! from each piece of content.

use lopdf::{Dictionary, Object, ObjectId, dictionary};

use super::finish::{Draft, text_string};
use crate::page::{Block, Item, Page, Role};
use crate::units::{Length, Rect};

/// Standard structure type of a role (ISO 32000-1, 14.8.4).
pub(super) fn tag(role: &Role) -> &'static str {
    match role {
        Role::Heading(1) => "H1",
        Role::Heading(2) => "H2",
        Role::Heading(_) => "H3",
        Role::Paragraph => "P",
        Role::Figure { .. } => "Figure",
        Role::Artifact => "Artifact",
    }
}

/// Writes the tree: the document, a section a page, an element a block.
pub(super) fn write(file: &mut Draft, pages: &[Page], tags: &[Vec<usize>]) {
    let root = file.doc.new_object_id();
    let document = file.doc.new_object_id();
    let lang = file.lang.clone();
    let mut sections = Vec::with_capacity(pages.len());
    let mut parents = Vec::with_capacity(pages.len() * 2);
    for (i, (page, tags)) in pages.iter().zip(tags).enumerate() {
        let Some(&page_id) = file.pages.get(i) else {
            break;
        };
        let section = file.doc.new_object_id();
        let (kids, by_mark) = elements(file, page, page_id, section, tags);
        let mut dict = dictionary! {
            "Type" => "StructElem",
            "S" => "Sect",
            "P" => document,
            "T" => text_string(&page.title),
            "K" => kids,
        };
        if page.lang != lang {
            dict.set("Lang", text_string(&page.lang));
        }
        file.doc.set_object(section, dict);
        sections.push(Object::from(section));
        parents.push(Object::from(i as i64));
        parents.push(Object::from(file.doc.add_object(by_mark)));
        file.page(page_id, |p| {
            p.set("StructParents", i as i64);
            p.set("Tabs", "S");
        });
    }
    file.doc.set_object(
        document,
        dictionary! { "Type" => "StructElem", "S" => "Document", "P" => root, "K" => sections },
    );
    let parents = file.doc.add_object(dictionary! { "Nums" => parents });
    file.doc.set_object(
        root,
        dictionary! {
            "Type" => "StructTreeRoot",
            "K" => document,
            "ParentTree" => parents,
            "ParentTreeNextKey" => pages.len() as i64,
        },
    );
    file.catalog(|c| {
        c.set("StructTreeRoot", root);
        c.set("MarkInfo", dictionary! { "Marked" => true });
    });
}

/// The elements of a page in reading order, and for each mark the element it belongs to.
fn elements(
    file: &mut Draft,
    page: &Page,
    page_id: ObjectId,
    section: ObjectId,
    tags: &[usize],
) -> (Vec<Object>, Vec<Object>) {
    let mut kids = Vec::new();
    let mut by_mark = Vec::with_capacity(tags.len());
    let mut mark = 0_i64;
    for marks in tags.chunk_by(|a, b| a == b) {
        let numbers: Vec<Object> = (mark..).take(marks.len()).map(Object::from).collect();
        mark += marks.len() as i64;
        let element = element(page, &page.blocks[marks[0]], page_id, section, numbers);
        let id = file.doc.add_object(element);
        kids.push(Object::from(id));
        by_mark.extend(marks.iter().map(|_| Object::from(id)));
    }
    (kids, by_mark)
}

fn element(
    page: &Page,
    block: &Block,
    page_id: ObjectId,
    section: ObjectId,
    mut numbers: Vec<Object>,
) -> Dictionary {
    let kids = if numbers.len() == 1 {
        numbers.remove(0)
    } else {
        Object::Array(numbers)
    };
    let mut dict = dictionary! {
        "Type" => "StructElem",
        "S" => tag(&block.role),
        "P" => section,
        "Pg" => page_id,
        "K" => kids,
    };
    if let Some(lang) = &block.lang {
        dict.set("Lang", text_string(lang));
    }
    if let Role::Figure { alt } = &block.role {
        dict.set("Alt", text_string(alt));
        if let Some(r) = block.items.iter().filter_map(item_box).reduce(union) {
            let pt = |l: Length| Object::Real(((l.to_pt() * 100.0).round() / 100.0) as f32);
            let up = |y: Length| pt(page.size.h - y);
            let area = vec![pt(r.x), up(r.bottom()), pt(r.right()), up(r.y)];
            dict.set("A", dictionary! { "O" => "Layout", "BBox" => area });
        }
    }
    dict
}

fn item_box(item: &Item) -> Option<Rect> {
    crate::page::hit::item_box(item)
}

fn union(a: Rect, b: Rect) -> Rect {
    crate::page::hit::union(a, b)
}
