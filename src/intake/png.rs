//! PNG (W3C Portable Network Graphics, third edition): the chunks that make the picture, row by row.

mod colours;

use std::io::Cursor;

use image::metadata::Orientation;
use png::{BitDepth, ColorType, Decoder, Reader, Transformations};

use self::colours::Colours;
use super::refusal::Why;
use super::rows::{Header, Opened, Samples, Sink, first_only, orientation, removed};
use super::{fits_in_memory, within_bounds};

/// How every PNG begins.
pub const SIGNATURE: &[u8] = b"\x89PNG\r\n\x1a\n";
/// The largest colour profile that is unpacked, in bytes; real ones for screens have a few thousand.
pub const LARGEST_PROFILE: usize = 2 << 20;
/// Deflate packs at most 1032 bytes into one (RFC 1951: 258 bytes in two bits).
const TIGHTEST: u64 = 1032;

/// What is found in the chunks.
#[derive(Default)]
struct Found<'a> {
    kept: Vec<u8>,
    packed: u64,
    colours: Colours,
    exif: Option<&'a [u8]>,
    told: bool,
    moving: bool,
}

impl Found<'_> {
    fn notes(&self) -> Vec<String> {
        let notes = [self.moving.then(first_only), self.told.then(removed)];
        notes.into_iter().flatten().collect()
    }
}

/// Looks at a PNG.
///
/// # Errors
/// If it is damaged, cut off or beyond the bounds.
pub fn open(bytes: &[u8]) -> Result<Opened<'static>, Why> {
    let head: &[u8; 25] = bytes.first_chunk().ok_or_else(Why::cut_off)?;
    let [.., w0, w1, w2, w3, h0, h1, h2, h3, _] = *head;
    let (width, height) = (
        u32::from_be_bytes([w0, w1, w2, w3]),
        u32::from_be_bytes([h0, h1, h2, h3]),
    );
    if head[8..16] != *b"\0\0\0\x0dIHDR" {
        return Err(Why::damaged());
    }
    within_bounds(width, height)?;
    let mut found = chunks(bytes)?;
    let header = Header {
        width,
        height,
        samples: Samples::Rgba,
        notes: found.notes(),
        meaning: found.colours.meaning(),
        orientation: found.exif.map_or(Orientation::NoTransforms, orientation),
    };
    opened(header, found.kept, found.packed)
}

/// The picture's own chunks, of which so many bytes are packed pixels, ready to decode.
fn opened(mut header: Header, kept: Vec<u8>, packed: u64) -> Result<Opened<'static>, Why> {
    let (size, height) = (kept.len() as u64, header.height);
    let reader = reader(kept)?;
    let (colour, depth) = reader.output_color_type();
    header.samples = match colour {
        ColorType::Grayscale => Samples::Grey,
        ColorType::GrayscaleAlpha => Samples::GreyAlpha,
        ColorType::Rgb => Samples::Rgb,
        ColorType::Rgba => Samples::Rgba,
        ColorType::Indexed => return Err(Why::damaged()),
    };
    let line = reader.output_line_size(header.width);
    let line = line.ok_or_else(Why::damaged)?;
    let raw = (reader.info().raw_row_length() as u64) * u64::from(height);
    if raw / TIGHTEST > packed {
        return Err(Why::cut_off());
    }
    let (interlaced, wide) = (reader.info().interlaced, depth == BitDepth::Sixteen);
    if interlaced {
        fits_in_memory(size + line as u64 * u64::from(height))?;
    }
    let decode = move |sink: &mut Sink| {
        if interlaced {
            whole(reader, line, wide, sink)
        } else {
            by_rows(reader, line, height, wide, sink)
        }
    };
    Ok(Opened {
        header,
        decode: Box::new(decode),
    })
}

type Chunks = Reader<Cursor<Vec<u8>>>;

fn reader(kept: Vec<u8>) -> Result<Chunks, Why> {
    let limits = png::Limits { bytes: 32 << 20 };
    let mut decoder = Decoder::new_with_limits(Cursor::new(kept), limits);
    decoder.set_transformations(Transformations::EXPAND);
    decoder.read_info().map_err(|e| why(&e))
}

fn why(error: &png::DecodingError) -> Why {
    match error {
        png::DecodingError::IoError(e) if e.kind() == std::io::ErrorKind::UnexpectedEof => {
            Why::cut_off()
        }
        _ => Why::damaged(),
    }
}

/// Copies the chunks that make the picture and reads what says how to show it.
fn chunks(bytes: &[u8]) -> Result<Found<'_>, Why> {
    let mut found = Found {
        kept: SIGNATURE.to_vec(),
        ..Found::default()
    };
    let mut rest = &bytes[SIGNATURE.len()..];
    // A palette of parts of colours is more than the decoder bears.
    let whole_colours = |length: usize| length.is_multiple_of(3) && (3..=768).contains(&length);
    while let Some((length, after)) = rest.split_first_chunk::<4>() {
        let length = u32::from_be_bytes(*length) as usize;
        let Some(chunk) = after.get(..length.saturating_add(8)) else {
            break;
        };
        let (name, body) = (&chunk[..4], &chunk[4..4 + length]);
        match name {
            b"PLTE" if !whole_colours(length) => return Err(Why::damaged()),
            b"IHDR" | b"PLTE" | b"tRNS" | b"IDAT" | b"IEND" => {
                found.kept.extend_from_slice(&rest[..length + 12]);
                found.packed += if name == b"IDAT" { length as u64 } else { 0 };
            }
            b"eXIf" => found.exif = Some(body),
            b"acTL" => found.moving = true,
            _ => found.colours.see(name, body),
        }
        found.told |= matches!(name, b"tEXt" | b"zTXt" | b"iTXt" | b"eXIf" | b"tIME");
        if name == b"IEND" {
            return Ok(found);
        }
        rest = &after[length + 8..];
    }
    Err(Why::cut_off())
}

fn by_rows(
    mut reader: Chunks,
    line: usize,
    height: u32,
    wide: bool,
    sink: &mut Sink,
) -> Result<(), Why> {
    let mut row = vec![0; line];
    for _ in 0..height {
        if reader.read_row(&mut row).map_err(|e| why(&e))?.is_none() {
            return Err(Why::cut_off());
        }
        hand_on(&mut row, wide, sink);
    }
    Ok(())
}

fn whole(mut reader: Chunks, line: usize, wide: bool, sink: &mut Sink) -> Result<(), Why> {
    let size = reader.output_buffer_size().ok_or_else(Why::damaged)?;
    let mut all = vec![0; size];
    reader.next_frame(&mut all).map_err(|e| why(&e))?;
    for row in all.chunks_exact_mut(line) {
        hand_on(row, wide, sink);
    }
    Ok(())
}

/// Sixteen bits become eight by the nearest value.
fn hand_on(row: &mut [u8], wide: bool, sink: &mut Sink) {
    if !wide {
        return sink(row);
    }
    for i in 0..row.len() / 2 {
        let value = u32::from(row[2 * i]) << 8 | u32::from(row[2 * i + 1]);
        row[i] = ((value * 255 + 32_767) / 65_535) as u8;
    }
    sink(&row[..row.len() / 2]);
}
