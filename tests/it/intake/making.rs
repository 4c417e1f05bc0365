//! Files put together by hand, as the formats' standards say.

use std::io::Write;

use flate2::Compression;
use flate2::write::ZlibEncoder;

/// A chunk of a PNG with its check sum.
pub fn chunk(name: &[u8; 4], body: &[u8]) -> Vec<u8> {
    let mut sum = flate2::Crc::new();
    sum.update(name);
    sum.update(body);
    let length = (body.len() as u32).to_be_bytes();
    [&length, &name[..], body, &sum.sum().to_be_bytes()].concat()
}

/// Packed by zlib.
pub fn packed(bytes: &[u8]) -> Vec<u8> {
    let mut out = ZlibEncoder::new(Vec::new(), Compression::best());
    out.write_all(bytes).unwrap();
    out.finish().unwrap()
}

/// The head of a PNG: width, height, bits, colour type, interlace.
pub fn ihdr(width: u32, height: u32, bits: u8, colour: u8, interlace: u8) -> Vec<u8> {
    let [w, h] = [width.to_be_bytes(), height.to_be_bytes()];
    chunk(
        b"IHDR",
        &[&w[..], &h, &[bits, colour, 0, 0, interlace]].concat(),
    )
}

/// A PNG of eight-bit RGB with chunks between head and pixels.
pub fn png(width: u32, pixels: &[[u8; 3]], between: &[Vec<u8>]) -> Vec<u8> {
    let rows = pixels.chunks(width as usize);
    let height = rows.len() as u32;
    let raw: Vec<u8> = rows
        .flat_map(|row| std::iter::once(0).chain(row.iter().flatten().copied()))
        .collect();
    let mut file = b"\x89PNG\r\n\x1a\n".to_vec();
    file.extend(ihdr(width, height, 8, 2, 0));
    file.extend(between.concat());
    file.extend(chunk(b"IDAT", &packed(&raw)));
    file.extend(chunk(b"IEND", b""));
    file
}

/// A segment of a JPEG.
pub fn segment(marker: u8, body: &[u8]) -> Vec<u8> {
    let length = (body.len() as u16 + 2).to_be_bytes();
    [&[0xFF, marker], &length[..], body].concat()
}

/// A JPEG with segments put in behind its first mark.
pub fn with_segments(jpeg: &[u8], segments: &[Vec<u8>]) -> Vec<u8> {
    [&jpeg[..2], &segments.concat(), &jpeg[2..]].concat()
}

/// An Exif block (TIFF 6.0, big-endian) with an orientation and words as what it shows.
pub fn exif(orientation: u16, words: &[u8]) -> Vec<u8> {
    let mut block = b"MM\0\x2a\0\0\0\x08\0\x02".to_vec();
    // ImageDescription, ASCII, at offset 38.
    block.extend(b"\x01\x0e\0\x02");
    block.extend((words.len() as u32).to_be_bytes());
    block.extend(38_u32.to_be_bytes());
    // Orientation, SHORT, one value.
    block.extend(b"\x01\x12\0\x03\0\0\0\x01");
    block.extend(orientation.to_be_bytes());
    block.extend(b"\0\0\0\0\0\0");
    block.extend(words);
    block
}

/// A WebP file of these chunks.
pub fn webp(chunks: &[(&[u8; 4], Vec<u8>)]) -> Vec<u8> {
    let mut file = b"RIFF\0\0\0\0WEBP".to_vec();
    for (name, body) in chunks {
        file.extend(*name);
        file.extend((body.len() as u32).to_le_bytes());
        file.extend(body);
        file.resize(file.len().next_multiple_of(2), 0);
    }
    let length = (file.len() as u32 - 8).to_le_bytes();
    file[4..8].copy_from_slice(&length);
    file
}
