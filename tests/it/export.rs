//! Pages as PNG and as plain text; stories as HTML.

mod html;

use daystrand::export::png::png;
use daystrand::export::text::text;
use daystrand::page::Role;
use daystrand::raster::paint;
use daystrand::text::Style;
use daystrand::units::{Length, Point, Size};
use image::{DynamicImage, ImageReader};

use crate::pdf::sample;

fn decoded(bytes: &[u8]) -> DynamicImage {
    let reader = ImageReader::new(std::io::Cursor::new(bytes)).with_guessed_format();
    reader
        .expect("a known format")
        .decode()
        .expect("a picture with right checksums")
}

#[test]
fn a_png_holds_the_pixels_of_the_page() {
    let page = sample::words();
    let bytes = png(&page, 50.0).expect("a picture");
    let wanted = DynamicImage::ImageRgba8(paint(&page, 50.0).expect("a picture")).to_rgb8();
    assert_eq!(decoded(&bytes).to_rgb8(), wanted);
    assert_eq!(
        bytes,
        png(&page, 50.0).expect("a picture"),
        "same page, same bytes"
    );
}

/// PNG (third edition) 11.3.4.3: 300 dpi are 11811 pixels a metre, as image programs write it.
#[test]
fn a_png_knows_its_size_on_paper() {
    let mut page = sample::words();
    page.size = Size::mm(50.8, 25.4);
    page.blocks.clear();
    let bytes = png(&page, 300.0).expect("a picture");
    let at = bytes
        .windows(4)
        .position(|w| w == b"pHYs")
        .expect("the chunk");
    let data = &bytes[at + 4..at + 13];
    assert_eq!(data, [0, 0, 0x2E, 0x23, 0, 0, 0x2E, 0x23, 1]);
    let picture = decoded(&bytes);
    assert_eq!((picture.width(), picture.height()), (600, 300));
}

#[test]
fn a_picture_of_nothing_is_an_error_in_words() {
    let error = png(&sample::words(), 0.0).expect_err("no pixels");
    assert!(error.to_string().contains("resolution"));
}

#[test]
fn text_follows_the_reading_order_with_a_line_a_paragraph() {
    let style = Style::regular(Length::pt(18.0));
    let line = |words: &str| vec![sample::text(Point::mm(20.0, 40.0), words, &style)];
    let page = |heading: &str, words: &str| {
        sample::page(
            heading,
            vec![
                sample::block(Role::Heading(1), line(heading)),
                sample::block(
                    Role::Figure {
                        alt: format!("{heading} picture"),
                    },
                    line("x"),
                ),
                sample::block(Role::Artifact, line("100 mm")),
                sample::block(Role::Paragraph, [line(words), line("I can wait.")].concat()),
            ],
        )
    };
    let pages = [page("Arrive", "We arrive."), page("Go home", "We go home.")];
    assert_eq!(
        text(&pages, false),
        "Arrive\nWe arrive. I can wait.\n\nGo home\nWe go home. I can wait.\n"
    );
    assert_eq!(
        text(&pages[..1], true),
        "Arrive\n[Arrive picture]\nWe arrive. I can wait.\n"
    );
    assert_eq!(text(&[], true), "");
}

#[test]
fn what_runs_through_all_pages_is_said_once_and_pages_are_not_counted() {
    let style = Style::regular(Length::pt(18.0));
    let line = |words: &str| vec![sample::text(Point::mm(20.0, 40.0), words, &style)];
    let page = |i: usize, heading: &str, words: &str| {
        let block = |role, words: &str| sample::block(role, line(words));
        let blocks = vec![
            block(Role::Paragraph, "My Saturday"),
            block(Role::Heading(1), heading),
            block(Role::Paragraph, words),
            block(Role::Heading(2), "I can ask"),
            block(Role::Paragraph, "Help"),
            block(Role::Paragraph, &format!("page {i} of 11")),
        ];
        sample::page(heading, blocks)
    };
    let pages = [
        page(9, "Sand", "We dig."),
        page(10, "Boat", "We sit."),
        page(11, "Bye", "We go."),
    ];
    assert_eq!(
        text(&pages, false),
        "My Saturday\n\nSand\nWe dig.\n\nI can ask\nHelp\n\nBoat\nWe sit.\n\nBye\nWe go.\n"
    );
}
