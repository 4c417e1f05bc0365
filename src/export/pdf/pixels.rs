//! Photographs as image objects: a JPEG as it is, anything else packed without loss; each once in a
//! document.

use std::collections::BTreeMap;

use image::RgbaImage;
use printpdf::{DictItem, ExternalStream};

use super::operators::deflate;
use crate::symbols::pixels::{AsKept, Pixels};

/// The image object of some pixels (ISO 32000-1, 8.9.5).
pub(super) fn image(pixels: &Pixels) -> ExternalStream {
    if let Some(AsKept::Jpeg(bytes)) = pixels.file()
        && let Some((size, space)) = jpeg(bytes)
    {
        let mut dict = head(size, space);
        dict.insert("Filter".to_owned(), name("DCTDecode"));
        return ExternalStream {
            dict,
            content: bytes.to_vec(),
            compress: false,
        };
    }
    plain(pixels.image())
}

/// Pixels row by row, in one channel where all of them are grey; what is clear is a mask beside.
fn plain(image: &RgbaImage) -> ExternalStream {
    let size = [image.width(), image.height()];
    let grey = image.pixels().all(|p| p.0[0] == p.0[1] && p.0[1] == p.0[2]);
    let channels = if grey { 1 } else { 3 };
    let colours: Vec<u8> = image
        .pixels()
        .flat_map(|p| p.0.into_iter().take(channels))
        .collect();
    let mut stream = packed(size, if grey { GREY } else { COLOUR }, &colours);
    if image.pixels().any(|p| p.0[3] < 255) {
        let clear: Vec<u8> = image.pixels().map(|p| p.0[3]).collect();
        let mask = packed(size, GREY, &clear);
        stream
            .dict
            .insert("SMask".to_owned(), DictItem::Stream { stream: mask });
    }
    stream
}

const GREY: &str = "DeviceGray";
const COLOUR: &str = "DeviceRGB";

fn packed(size: [u32; 2], space: &'static str, bytes: &[u8]) -> ExternalStream {
    let mut dict = head(size, space);
    let (content, packed) = deflate(bytes);
    if packed {
        dict.insert("Filter".to_owned(), name("FlateDecode"));
    }
    ExternalStream {
        dict,
        content,
        compress: false,
    }
}

fn head([w, h]: [u32; 2], space: &str) -> BTreeMap<String, DictItem> {
    BTreeMap::from([
        ("Type".to_owned(), name("XObject")),
        ("Subtype".to_owned(), name("Image")),
        ("Width".to_owned(), DictItem::Int(w.into())),
        ("Height".to_owned(), DictItem::Int(h.into())),
        ("ColorSpace".to_owned(), name(space)),
        ("BitsPerComponent".to_owned(), DictItem::Int(8)),
        ("Interpolate".to_owned(), DictItem::Bool(true)),
    ])
}

fn name(word: &str) -> DictItem {
    DictItem::Name(word.as_bytes().to_vec())
}

/// Size and colours of a JPEG from its frame header (ITU-T T.81, B.2.2); nothing where it has four
/// colours or other than eight bits, or no such header.
fn jpeg(bytes: &[u8]) -> Option<([u32; 2], &'static str)> {
    let mut at = 2;
    loop {
        let [0xFF, marker, high, low, ..] = *bytes.get(at..)? else {
            return None;
        };
        let frame = matches!(marker, 0xC0..=0xCF) && !matches!(marker, 0xC4 | 0xC8 | 0xCC);
        if !frame {
            at += 2 + usize::from(u16::from_be_bytes([high, low]));
            continue;
        }
        let &[8, h1, h0, w1, w0, colours, ..] = bytes.get(at + 4..)? else {
            return None;
        };
        let side = |high, low| u32::from(u16::from_be_bytes([high, low]));
        let space = match colours {
            1 => GREY,
            3 => COLOUR,
            _ => return None,
        };
        return Some(([side(w1, w0), side(h1, h0)], space));
    }
}
