//! JPEG (ITU-T T.81, JFIF 1.02): which segments make the picture, and its rows.

mod segments;

use zune_core::bytestream::ZCursor;
use zune_core::colorspace::ColorSpace;
use zune_core::options::DecoderOptions;
use zune_jpeg::JpegDecoder;

use self::segments::Found;
use super::refusal::Why;
use super::rows::{Header, Meaning, Opened, Samples, Sink};
use super::{LONGEST_SIDE, fits_in_memory};

/// The most scans of one picture, and the most coefficients in all of them together. Usual are ten
/// scans; a picture of 24 megapixels has 36 million coefficients.
const MOST_SCANS: usize = 64;
const MOST_WORK: u64 = 1_000_000_000;

/// A JPEG that was looked at.
pub struct Jpeg {
    /// The same picture and nothing else.
    pub clean: Vec<u8>,
    /// What is known of it.
    pub header: Header,
    found: Found,
}

/// Looks at a JPEG.
///
/// # Errors
/// If it is damaged, cut off, of a kind that is not read or beyond the bounds.
pub fn look(bytes: &[u8]) -> Result<Jpeg, Why> {
    let mut found = segments::read(bytes)?;
    let samples = match found.parts.len() {
        1 => Samples::Grey,
        3 => Samples::Rgb,
        4 => Samples::Cmyk,
        _ => return Err(not_read("with an unusual number of colours")),
    };
    bounded(&found, samples)?;
    let header = Header {
        width: found.width,
        height: found.height,
        samples,
        meaning: found.profile().map_or(Meaning::Srgb, Meaning::Profile),
        orientation: found.orientation,
        notes: found.notes(),
    };
    Ok(Jpeg {
        clean: std::mem::take(&mut found.clean),
        header,
        found,
    })
}

fn not_read(kind: &str) -> Why {
    Why::new(
        format!("is a JPEG {kind}, which is not read"),
        "Open it in another program, save it as an ordinary JPEG, and bring that.",
    )
}

/// Whether the picture can be there at all in so few bytes, and can be read in the memory and the
/// time there are.
fn bounded(found: &Found, samples: Samples) -> Result<(), Why> {
    let blocks = found.blocks();
    // A block takes a code for its mean and one for the rest, of at least one bit each; where they
    // come in scans of their own, at least the former.
    let bits = if found.progressive {
        blocks
    } else {
        2 * blocks
    };
    if bits / 8 > found.packed {
        return Err(Why::cut_off());
    }
    if found.scans > MOST_SCANS || blocks * 64 * found.scans as u64 > MOST_WORK {
        return Err(Why::new(
            "is stored in more passes than is usual, which takes too long to read",
            "Save it as an ordinary JPEG and bring that.",
        ));
    }
    let pixels = u64::from(found.width) * u64::from(found.height);
    let coefficients = if found.progressive { blocks * 128 } else { 0 };
    let clean = found.clean.len() as u64;
    fits_in_memory(clean + pixels * samples.count() as u64 + coefficients)
}

impl Jpeg {
    /// Whether the bytes may stay as they are: upright, its colours in the usual form.
    pub fn is_plain(&self) -> bool {
        let turned = self.header.orientation != image::metadata::Orientation::NoTransforms;
        !turned && (self.header.samples == Samples::Grey || self.found.is_ycbcr())
    }

    /// For decoding.
    pub fn opened(&self) -> Opened<'_> {
        Opened {
            header: self.header.clone(),
            decode: Box::new(move |sink| decode(&self.clean, self.found.inverted(), sink)),
        }
    }
}

/// Every sample of a clean JPEG, row by row; inks with 255 for all of the ink.
fn decode(clean: &[u8], inverted: bool, sink: &mut Sink) -> Result<(), Why> {
    let side = LONGEST_SIDE as usize;
    let options = DecoderOptions::default()
        .set_strict_mode(true)
        .set_max_width(side)
        .set_max_height(side)
        .jpeg_set_max_scans(MOST_SCANS);
    let mut decoder = JpegDecoder::new_with_options(ZCursor::new(clean), options);
    decoder.decode_headers().map_err(|_| Why::damaged())?;
    let inside = decoder.input_colorspace().ok_or_else(Why::damaged)?;
    let outside = match inside {
        ColorSpace::Luma | ColorSpace::CMYK | ColorSpace::YCCK => inside,
        _ => ColorSpace::RGB,
    };
    decoder.set_options(options.jpeg_set_out_colorspace(outside));
    let (width, _) = decoder.dimensions().ok_or_else(Why::damaged)?;
    let size = decoder.output_buffer_size().ok_or_else(Why::damaged)?;
    let mut all = vec![0; size];
    decoder.decode_into(&mut all).map_err(|_| Why::damaged())?;
    for row in all.chunks_exact_mut(width * outside.num_components()) {
        if outside.num_components() == 4 {
            for pixel in row.chunks_exact_mut(4) {
                to_inks(pixel, outside == ColorSpace::YCCK, inverted);
            }
        }
        sink(row);
    }
    Ok(())
}

/// Four numbers as inks. YCCK holds `255 - ink` as a colour (Adobe Technical Note 5116), and files
/// with Adobe's mark hold every ink the other way round (common practice among readers of JPEG).
fn to_inks(pixel: &mut [u8], ycck: bool, inverted: bool) {
    if ycck {
        let [y, cb, cr] = [pixel[0], pixel[1], pixel[2]].map(f32::from);
        let (cb, cr) = (cb - 128.0, cr - 128.0);
        // ITU-T T.871 (JFIF), section 7.
        let rgb = [
            y + 1.402 * cr,
            y - 0.344_136 * cb - 0.714_136 * cr,
            y + 1.772 * cb,
        ];
        for (to, colour) in pixel.iter_mut().zip(rgb) {
            *to = 255 - colour.round().clamp(0.0, 255.0) as u8;
        }
    }
    if inverted {
        for ink in pixel {
            *ink = 255 - *ink;
        }
    }
}
