//! WebP (RFC 9649): the chunks of the first picture, put together anew as a file of its own.

use std::io::Cursor;

use image::metadata::Orientation;
use image_webp::WebPDecoder;

use super::png::LARGEST_PROFILE;
use super::refusal::Why;
use super::rows::{Header, Meaning, Opened, Samples, Sink, first_only, orientation, removed};
use super::{fits_in_memory, within_bounds};

/// Whether some bytes begin as a WebP file does.
pub fn is_webp(bytes: &[u8]) -> bool {
    bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP")
}

/// One picture: its place on the canvas and the chunks it is made of.
struct Still<'a> {
    at: [usize; 2],
    size: [u32; 2],
    alpha: Option<&'a [u8]>,
    lossless: bool,
    has_alpha: bool,
    body: &'a [u8],
}

#[derive(Default)]
struct Found<'a> {
    canvas: Option<[u32; 2]>,
    still: Option<Still<'a>>,
    profile: Option<Vec<u8>>,
    exif: Option<&'a [u8]>,
    told: bool,
    moving: bool,
}

/// Looks at a WebP file.
///
/// # Errors
/// If it is damaged, cut off or beyond the bounds.
pub fn open(bytes: &[u8]) -> Result<Opened<'static>, Why> {
    let found = chunks(&bytes[12..])?;
    let still = found.still.ok_or_else(Why::damaged)?;
    let [width, height] = found.canvas.unwrap_or(still.size);
    if !found.moving && [width, height] != still.size {
        return Err(Why::damaged());
    }
    let inside =
        |k: usize, side: u32| still.at[k] as u64 + u64::from(still.size[k]) <= u64::from(side);
    if !inside(0, width) || !inside(1, height) {
        return Err(Why::damaged());
    }
    fits_in_memory(memory(&still))?;
    let placed = [width, height] != still.size;
    let transparent = still.has_alpha || placed;
    let mut notes = Vec::new();
    if found.moving {
        notes.push(first_only());
    }
    if found.told {
        notes.push(removed());
    }
    let header = Header {
        width,
        height,
        samples: if transparent {
            Samples::Rgba
        } else {
            Samples::Rgb
        },
        meaning: found.profile.map_or(Meaning::Srgb, Meaning::Profile),
        orientation: found.exif.map_or(Orientation::NoTransforms, orientation),
        notes,
    };
    let (at, file) = (still.at, alone(&still));
    let size = [width as usize, height as usize];
    let decode = move |sink: &mut Sink| decode(file, at, size, transparent, sink);
    Ok(Opened {
        header,
        decode: Box::new(decode),
    })
}

/// What decoding takes: the picture, its planes, and for transparency the packed plane beside it.
fn memory(still: &Still) -> u64 {
    let half_bytes = match (still.lossless, still.has_alpha) {
        (true, true) => 10,
        (true, false) => 16,
        (false, true) => 22,
        (false, false) => 10,
    };
    let pixels = u64::from(still.size[0]) * u64::from(still.size[1]);
    still.body.len() as u64 + pixels * half_bytes / 2
}

fn decode(
    file: Vec<u8>,
    at: [usize; 2],
    canvas: [usize; 2],
    transparent: bool,
    sink: &mut Sink,
) -> Result<(), Why> {
    let mut decoder = WebPDecoder::new(Cursor::new(file)).map_err(|e| why(&e))?;
    decoder.set_memory_limit(LARGEST_PROFILE);
    let channels = if decoder.has_alpha() { 4 } else { 3 };
    let (width, height) = decoder.dimensions();
    let (width, height) = (width as usize, height as usize);
    let mut pixels = vec![0; width * height * channels];
    decoder.read_image(&mut pixels).map_err(|e| why(&e))?;
    let out = if transparent { 4 } else { 3 };
    if channels == out && [width, height] == canvas {
        pixels.chunks_exact(width * out).for_each(sink);
        return Ok(());
    }
    let mut row = vec![0; canvas[0] * out];
    for y in 0..canvas[1] {
        row.fill(0);
        if let Some(inside) = y.checked_sub(at[1]).filter(|y| *y < height) {
            let from = pixels[inside * width * channels..]
                .chunks_exact(channels)
                .take(width);
            for (to, from) in row[at[0] * out..].chunks_exact_mut(out).zip(from) {
                to.fill(255);
                let both = out.min(channels);
                to[..both].copy_from_slice(&from[..both]);
            }
        }
        sink(&row);
    }
    Ok(())
}

fn why(error: &image_webp::DecodingError) -> Why {
    match error {
        image_webp::DecodingError::IoError(e) if e.kind() == std::io::ErrorKind::UnexpectedEof => {
            Why::cut_off()
        }
        _ => Why::damaged(),
    }
}

/// Name and body of a chunk.
type Chunk<'a> = ([u8; 4], &'a [u8]);

/// Reads chunks one after another.
fn next<'a>(rest: &mut &'a [u8]) -> Option<Result<Chunk<'a>, Why>> {
    let (name, after) = rest.split_first_chunk::<4>()?;
    let Some((length, after)) = after.split_first_chunk::<4>() else {
        return Some(Err(Why::cut_off()));
    };
    let length = u32::from_le_bytes(*length) as usize;
    let Some(body) = after.get(..length) else {
        return Some(Err(Why::cut_off()));
    };
    *rest = after.get(length + (length & 1)..).unwrap_or_default();
    Some(Ok((*name, body)))
}

fn chunks(mut rest: &[u8]) -> Result<Found<'_>, Why> {
    let mut found = Found::default();
    let mut alpha = None;
    if rest.is_empty() {
        return Err(Why::cut_off());
    }
    while let Some(chunk) = next(&mut rest) {
        let (name, body) = match chunk {
            Ok(chunk) => chunk,
            // Something behind the picture that breaks off takes nothing from it.
            Err(_) if found.still.is_some() && !found.moving => break,
            Err(why) => return Err(why),
        };
        match &name {
            b"VP8X" => {
                let sides: &[u8; 10] = body.first_chunk().ok_or_else(Why::damaged)?;
                let canvas = [three(&sides[4..]) + 1, three(&sides[7..]) + 1];
                within_bounds(canvas[0], canvas[1])?;
                found.canvas = Some(canvas);
            }
            b"ALPH" => alpha = Some(body),
            b"VP8 " | b"VP8L" if found.still.is_none() => {
                found.still = Some(still(name, body, alpha.take())?);
            }
            b"ANMF" => {
                found.moving = true;
                if found.still.is_none() {
                    found.still = Some(frame(body)?);
                }
            }
            b"ICCP" => found.profile = Some(body[..LARGEST_PROFILE.min(body.len())].to_vec()),
            b"EXIF" => found.exif = Some(body),
            _ => {}
        }
        found.told |= matches!(&name, b"EXIF" | b"XMP ");
    }
    Ok(found)
}

fn three(bytes: &[u8]) -> u32 {
    u32::from(bytes[0]) | u32::from(bytes[1]) << 8 | u32::from(bytes[2]) << 16
}

/// The first picture of an animation.
fn frame(body: &[u8]) -> Result<Still<'_>, Why> {
    let head: &[u8; 16] = body.first_chunk().ok_or_else(Why::damaged)?;
    let (mut alpha, mut rest) = (None, &body[16..]);
    while let Some(chunk) = next(&mut rest) {
        match chunk? {
            ([b'A', b'L', b'P', b'H'], body) => alpha = Some(body),
            (name @ ([b'V', b'P', b'8', b' '] | [b'V', b'P', b'8', b'L']), body) => {
                let mut still = still(name, body, alpha)?;
                still.at = [three(head) as usize * 2, three(&head[3..]) as usize * 2];
                return Ok(still);
            }
            _ => {}
        }
    }
    Err(Why::damaged())
}

/// One picture by the size its own data gives, which is what the decoder makes room for.
fn still<'a>(name: [u8; 4], body: &'a [u8], alpha: Option<&'a [u8]>) -> Result<Still<'a>, Why> {
    let lossless = &name == b"VP8L";
    let (size, has_alpha) = if lossless {
        let head: &[u8; 5] = body.first_chunk().ok_or_else(Why::cut_off)?;
        let bits = u32::from_le_bytes([head[1], head[2], head[3], head[4]]);
        let sides = [(bits & 0x3FFF) + 1, (bits >> 14 & 0x3FFF) + 1];
        (sides, bits >> 28 & 1 == 1)
    } else {
        let head: &[u8; 10] = body.first_chunk().ok_or_else(Why::cut_off)?;
        let side = |at: usize| u32::from(u16::from_le_bytes([head[at], head[at + 1]]) & 0x3FFF);
        ([side(6), side(8)], alpha.is_some())
    };
    within_bounds(size[0], size[1])?;
    Ok(Still {
        at: [0, 0],
        size,
        alpha: alpha.filter(|_| !lossless),
        lossless,
        has_alpha,
        body,
    })
}

/// A file with nothing but one picture.
fn alone(still: &Still) -> Vec<u8> {
    let mut file = b"RIFF\0\0\0\0WEBP".to_vec();
    let mut chunk = |name: &[u8; 4], body: &[u8]| {
        file.extend_from_slice(name);
        file.extend_from_slice(&(body.len() as u32).to_le_bytes());
        file.extend_from_slice(body);
        file.resize(file.len().next_multiple_of(2), 0);
    };
    if let Some(alpha) = still.alpha {
        let [w, h] = still.size.map(|v| (v - 1).to_le_bytes());
        chunk(
            b"VP8X",
            &[0x10, 0, 0, 0, w[0], w[1], w[2], h[0], h[1], h[2]],
        );
        chunk(b"ALPH", alpha);
    }
    chunk(if still.lossless { b"VP8L" } else { b"VP8 " }, still.body);
    let length = (file.len() - 8) as u32;
    file[4..8].copy_from_slice(&length.to_le_bytes());
    file
}
