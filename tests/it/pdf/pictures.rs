//! Photographs in a PDF: a JPEG as it is, once; everything else without loss.

use daystrand::export::pdf::pdf;
use daystrand::model::ids::PictureId;
use daystrand::model::people::Figure;
use daystrand::model::picture::{Made, Photo, PhotoKind, Picture};
use daystrand::model::privacy::Class;
use daystrand::page::{Block, Item, Page, Role, SymbolKey};
use daystrand::raster;
use daystrand::symbols::own;
use daystrand::symbols::variant::{Ink, Variant};
use daystrand::units::{Length, Point, Rect, Size};
use image::{ImageFormat, Rgba, RgbaImage};
use std::io::Cursor;
use std::sync::Arc;

use super::sample;
use super::size::painted;
use crate::model::random_pictures::photo;

fn item(picture: &Picture, ink: Ink, x: f64) -> Item {
    let drawn = own::of_picture(picture, Variant::new(Figure::default(), ink));
    Item::Symbol {
        rect: Rect::new(
            Point::new(Length::mm(x), Length::mm(20.0)),
            Size::square(Length::mm(50.0)),
        ),
        key: SymbolKey {
            id: drawn.id,
            variant: drawn.variant,
        },
        art: drawn.art,
    }
}

fn page(items: Vec<Item>) -> Page {
    Page {
        size: Size::mm(210.0, 297.0),
        title: "Pictures".into(),
        lang: "en".into(),
        class: Class::Public,
        blocks: vec![Block {
            role: Role::Figure {
                alt: "Towel".into(),
            },
            source: None,
            lang: None,
            items,
        }],
    }
}

fn picture(id: u32, photo: Arc<Photo>) -> Picture {
    Picture {
        id: PictureId(id),
        ..Picture::new("Towel", Made::Photo(photo))
    }
}

fn count(file: &[u8], needle: &[u8]) -> usize {
    file.windows(needle.len()).filter(|w| w == &needle).count()
}

/// The objects of a file that are images.
fn images(file: &[u8]) -> Vec<lopdf::Stream> {
    let doc = lopdf::Document::load_mem(file).unwrap();
    let streams = doc.objects.into_values().filter_map(|o| match o {
        lopdf::Object::Stream(s) => Some(s),
        _ => None,
    });
    let is_image = |s: &lopdf::Stream| {
        let kind = s.dict.get(b"Subtype").and_then(lopdf::Object::as_name);
        kind.is_ok_and(|k| k == b"Image")
    };
    streams.filter(is_image).collect()
}

#[test]
fn a_jpeg_goes_in_as_it_is_and_once() {
    let jpeg = photo(PhotoKind::Jpeg, [200, 150], 40);
    // Two pictures of one photograph, one of them twice.
    let (a, b) = (picture(1, Arc::clone(&jpeg)), picture(2, Arc::clone(&jpeg)));
    let colour = page(vec![
        item(&a, Ink::Colour, 20.0),
        item(&a, Ink::Colour, 80.0),
        item(&b, Ink::Colour, 140.0),
    ]);
    let file = pdf(&[colour], &sample::meta());
    assert_eq!(count(&file, jpeg.bytes()), 1);
    let [image] = images(&file).try_into().unwrap();
    assert_eq!(image.content, jpeg.bytes());
    assert_eq!(
        image.dict.get(b"Filter").unwrap().as_name().unwrap(),
        b"DCTDecode"
    );
    let grey = page(vec![item(&a, Ink::Grey, 20.0)]);
    let file = pdf(&[grey], &sample::meta());
    assert_eq!(count(&file, jpeg.bytes()), 0);
    let [image] = images(&file).try_into().unwrap();
    assert_eq!(
        image.dict.get(b"ColorSpace").unwrap().as_name().unwrap(),
        b"DeviceGray"
    );
}

#[test]
fn what_is_clear_stays_clear_and_pixels_keep_their_values() {
    let source = RgbaImage::from_fn(64, 64, |x, y| match (x < 32, y < 32) {
        (true, true) => Rgba([210, 40, 30, 255]),
        (false, true) => Rgba([20, 120, 200, 255]),
        (true, false) => Rgba([10, 10, 10, 0]),
        (false, false) => Rgba([240, 220, 90, 255]),
    });
    let mut bytes = Vec::new();
    source
        .write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png)
        .unwrap();
    let png = Arc::new(Photo::new(PhotoKind::Png, [64, 64], bytes));
    let page = page(vec![item(&picture(1, png), Ink::Colour, 20.0)]);
    let file = pdf(std::slice::from_ref(&page), &sample::meta());
    assert_eq!(images(&file).len(), 2, "colours and their mask");
    let seen = painted(&file, 0, 100.0);
    let ours = raster::paint(&page, 100.0).unwrap();
    let px = |mm: f64| (mm / 25.4 * 100.0) as u32;
    for (dx, dy, wanted) in [
        (12.0, 12.0, [210, 40, 30]),
        (37.0, 12.0, [20, 120, 200]),
        (12.0, 37.0, [255, 255, 255]),
        (37.0, 37.0, [240, 220, 90]),
    ] {
        let (x, y) = (px(20.0 + dx), px(20.0 + dy));
        let p = seen.data()[(y * u32::from(seen.width()) + x) as usize];
        assert_eq!([p.r, p.g, p.b], wanted, "an independent reader");
        let Rgba([r, g, b, _]) = *ours.get_pixel(x, y);
        assert_eq!([r, g, b], wanted, "our painter");
    }
}

#[test]
fn a_wide_photograph_keeps_its_shape() {
    let wide = picture(1, photo(PhotoKind::Png, [80, 40], 0));
    let file = pdf(
        &[page(vec![item(&wide, Ink::Colour, 20.0)])],
        &sample::meta(),
    );
    let seen = painted(&file, 0, 100.0);
    let px = |mm: f64| (mm / 25.4 * 100.0) as usize;
    let inked = |x: f64, y: f64| {
        let p = seen.data()[px(y) * usize::from(seen.width()) + px(x)];
        u32::from(p.r) + u32::from(p.g) + u32::from(p.b) < 740
    };
    // 50 mm wide, 25 mm high, in the middle of the square from 20 mm to 70 mm.
    assert!(inked(22.0, 45.0) && inked(68.0, 45.0));
    assert!(inked(60.0, 34.5) && inked(30.0, 55.5));
    assert!(!inked(45.0, 30.0) && !inked(45.0, 60.0));
}

#[test]
fn a_pale_photograph_is_drawn_apart_in_grey() {
    let pale = RgbaImage::from_fn(60, 60, |x, _| {
        let tone = if x < 30 { 190 } else { 220 };
        Rgba([tone, tone, tone, 255])
    });
    let mut bytes = Vec::new();
    pale.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png)
        .unwrap();
    let photo = Arc::new(Photo::new(PhotoKind::Png, [60, 60], bytes));
    let drawn = own::of_picture(
        &picture(1, photo),
        Variant::new(Figure::default(), Ink::Grey),
    );
    let seen = raster::paint_art(&drawn.art, 60);
    let (dark, light) = (seen.get_pixel(10, 30).0[0], seen.get_pixel(50, 30).0[0]);
    // 30 steps apart before; two and a half times as much at most.
    assert_eq!(light - dark, 75);
    assert!(light < 255, "nothing is lost to white");
}
