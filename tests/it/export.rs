//! Pages as PNG; stories as plain text and as HTML.

mod html;

use std::sync::Arc;

use daystrand::export::png::png;
use daystrand::export::text::text;
use daystrand::model::ids::{SlotId, StepRef, SymbolId};
use daystrand::model::people::Participant;
use daystrand::model::telling::{Depth, Pages};
use daystrand::raster::paint;
use daystrand::story::cards::Card;
use daystrand::story::{Small, Story, tell_for};
use daystrand::units::Size;
use image::{DynamicImage, ImageReader};

use crate::fixture;
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

/// The story of the participant with the kite on the first day, told as wanted.
fn story(change: impl FnOnce(&mut Participant)) -> Story {
    let mut club = fixture::club();
    change(Arc::make_mut(&mut club.participants[0]));
    tell_for(&club, &club.sessions[0], &club.participants[0])
}

#[test]
fn a_story_in_words_has_every_page_in_order_with_a_line_a_sentence() {
    let told = story(|p| p.telling.pages = Pages::Steps);
    let words = text(&told, "Plan RPH9");
    let mut rest = words.as_str();
    let mut next = |line: &str| {
        let line = format!("{line}\n");
        let at = rest
            .find(&line)
            .unwrap_or_else(|| panic!("{line} in {rest}"));
        rest = &rest[at + line.len()..];
    };
    next(&told.title);
    for page in &told.pages {
        next(&page.heading);
        for sentence in page.sentences() {
            next(sentence);
        }
    }
    next("Plan RPH9");
    assert_eq!(rest, "");
}

#[test]
fn where_no_sentence_is_told_the_cards_say_their_words() {
    let words = text(&story(|p| p.telling.depth = Depth::Pictures), "");
    for card in ["Help", "Stop", "Break", "Toilet"] {
        assert!(words.lines().any(|l| l == card), "{card}");
    }
    assert!(!words.contains("asks"));
    let mut news = story(|p| p.telling.pages = Pages::Steps);
    let small = |label: &str, off, new| Small {
        step: StepRef::Slot(SlotId(1)),
        card: Card {
            symbol: SymbolId::new("dig"),
            label: label.into(),
        },
        new,
        off,
    };
    news.pages[0].small = vec![
        small("Dig", false, true),
        small("Boat", true, false),
        small("Bye", false, false),
    ];
    let words = text(&news, "");
    assert!(
        words.contains("- Dig (new)\n- Boat (not today)\n- Bye\n"),
        "{words}"
    );
}
