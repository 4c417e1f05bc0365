//! A finished page: what lies under a place, what it says, whether it is sound.

use daystrand::model::ids::{OwnId, SlotId, StepRef};
use daystrand::page::dump::dump;
use daystrand::page::hit::{hit, item_box, places};
use daystrand::page::valid::faults;
use daystrand::page::{Block, Item, Page, Role, Source};
use daystrand::text::Style;
use daystrand::units::colour::Rgb;
use daystrand::units::path::{Path, Seg};
use daystrand::units::{Length, Point, Rect};

use crate::pdf::sample::{self, block, page, rectangle, text};

fn card(r: Rect, source: Option<Source>) -> Block {
    let shape = Item::Shape {
        path: rectangle(r),
        fill: Some(Rgb::WHITE),
        stroke: None,
    };
    Block {
        lang: None,
        role: Role::Artifact,
        source,
        items: vec![shape],
    }
}

fn step(n: u32) -> Source {
    Source::Step(StepRef::Slot(SlotId(n)))
}

#[test]
fn the_uppermost_block_with_a_source_is_hit() {
    let own = Source::Step(StepRef::Own(OwnId(7)));
    let page = page(
        "Board",
        vec![
            card(Rect::mm(10.0, 10.0, 60.0, 60.0), Some(step(1))),
            card(Rect::mm(60.0, 10.0, 60.0, 60.0), Some(own)),
            card(Rect::mm(0.0, 0.0, 210.0, 297.0), None),
        ],
    );
    assert_eq!(hit(&page, Point::mm(20.0, 20.0)), Some(step(1)));
    assert_eq!(hit(&page, Point::mm(65.0, 20.0)), Some(own));
    assert_eq!(hit(&page, Point::mm(20.0, 80.0)), None);
    assert_eq!(
        hit(&page, Point::mm(70.0, 70.0)),
        None,
        "right and lower edges are outside"
    );
    assert_eq!(places(&page, own), [Rect::mm(60.0, 10.0, 60.0, 60.0)]);
    assert!(places(&page, step(2)).is_empty());
}

#[test]
fn words_are_hit_around_their_letters() {
    let line = text(
        Point::mm(20.0, 50.0),
        "Go home",
        &Style::regular(Length::mm(10.0)),
    );
    let area = item_box(&line).expect("a box");
    assert_eq!(
        (area.x, area.y, area.bottom()),
        (Length::mm(20.0), Length::mm(40.0), Length::mm(54.0))
    );
    let mut words = block(Role::Paragraph, vec![line]);
    words.source = Some(step(3));
    let page = page("Board", vec![words]);
    assert_eq!(hit(&page, Point::mm(22.0, 47.0)), Some(step(3)));
    assert_eq!(hit(&page, Point::mm(22.0, 56.0)), None);
}

#[test]
fn a_page_reads_in_order() {
    let text = dump(&sample::tiles());
    assert!(
        text.starts_with("Tiles 40 mm (210 x 297 mm, may be seen by others)\n# Tiles 40 mm\n[")
    );
    assert_eq!(text.lines().count(), 2 + 24);
}

#[test]
fn sound_pages_have_no_faults() {
    for page in sample::pages() {
        assert_eq!(faults(&page), Vec::<String>::new());
    }
}

#[test]
fn each_fault_is_found_and_named() {
    let style = Style::regular(Length::pt(18.0));
    let at = Point::mm(20.0, 40.0);
    let words = || vec![text(at, "Words", &style)];
    let heading = |level| block(Role::Heading(level), words());
    let figure = |alt: &str, items| block(Role::Figure { alt: alt.into() }, items);
    let shape = |r| card(r, None);
    let cases: Vec<(Vec<Block>, &str)> = vec![
        (vec![heading(2)], "level 2 after level 0"),
        (vec![heading(1), heading(3)], "level 3 after level 1"),
        (vec![heading(4)], "level 4"),
        (
            vec![block(Role::Heading(1), vec![])],
            "heading without words",
        ),
        (
            vec![block(Role::Paragraph, vec![])],
            "paragraph without words",
        ),
        (vec![figure(" ", words())], "without words for it"),
        (vec![figure("Arrive", vec![])], "empty picture"),
        (
            vec![shape(Rect::mm(200.0, 10.0, 20.0, 20.0))],
            "shape leaves the paper",
        ),
        (
            vec![block(
                Role::Paragraph,
                vec![text(Point::mm(200.0, 40.0), "Words", &style)],
            )],
            "leave the paper",
        ),
        (
            vec![block(Role::Paragraph, vec![text(at, "", &style)])],
            "without glyphs",
        ),
    ];
    for (blocks, wanted) in cases {
        let found = faults(&page("Page", blocks));
        assert!(
            found.len() == 1 && found[0].contains(wanted),
            "{wanted}: {found:?}"
        );
    }
    let nameless = Page {
        title: " ".into(),
        lang: String::new(),
        ..page("", vec![])
    };
    assert_eq!(faults(&nameless).len(), 2);
}

#[test]
fn the_box_of_a_curve_holds_its_control_points() {
    let p = Point::mm;
    let path = Path {
        segs: vec![
            Seg::Move(p(10.0, 10.0)),
            Seg::Cubic(p(5.0, 20.0), p(30.0, 0.0), p(20.0, 10.0)),
            Seg::Close,
        ],
    };
    let item = Item::Shape {
        path,
        fill: None,
        stroke: None,
    };
    assert_eq!(item_box(&item), Some(Rect::mm(5.0, 0.0, 25.0, 20.0)));
}
