//! A walk through the segments of a JPEG. What makes the picture is copied, what says how to show
//! it is read, the rest is left behind.

use image::metadata::Orientation;

use super::super::png::LARGEST_PROFILE;
use super::super::refusal::Why;
use super::super::rows::{orientation, removed};
use super::super::within_bounds;
use super::not_read;

const ICC: &[u8] = b"ICC_PROFILE\0";

/// What the segments hold.
pub struct Found {
    pub width: u32,
    pub height: u32,
    /// Sampling across and down, one pair a colour.
    pub parts: Vec<(u32, u32)>,
    ids: Vec<u8>,
    pub progressive: bool,
    pub scans: usize,
    /// Bytes of packed picture in all scans.
    pub packed: u64,
    /// The picture's own segments, from `SOI` to `EOI`.
    pub clean: Vec<u8>,
    pub orientation: Orientation,
    adobe: Option<u8>,
    jfif: bool,
    profile: Vec<(u8, Vec<u8>)>,
    told: bool,
    ended: bool,
}

/// Reads all segments.
///
/// # Errors
/// If they break off, contradict each other or are of a kind that is not read.
pub fn read(bytes: &[u8]) -> Result<Found, Why> {
    let mut found = Found::new();
    let mut at = 2;
    while !found.ended {
        let marker = next_marker(bytes, &mut at).ok_or_else(Why::cut_off)?;
        match marker {
            0xD9 => {
                found.clean.extend([0xFF, 0xD9]);
                found.ended = true;
            }
            // Marks that stand alone.
            0x01 | 0xD0..=0xD8 => {}
            _ => {
                let length = bytes.get(at..at + 2).ok_or_else(Why::cut_off)?;
                let length = usize::from(u16::from_be_bytes([length[0], length[1]]));
                if length < 2 {
                    return Err(Why::damaged());
                }
                let body = bytes.get(at + 2..at + length).ok_or_else(Why::cut_off)?;
                at += length;
                found.segment(marker, body)?;
                if marker == 0xDA {
                    found.scan(body, bytes, &mut at)?;
                }
            }
        }
    }
    if found.scans == 0 {
        return Err(Why::damaged());
    }
    Ok(found)
}

/// The next mark from `at` on, which then lies behind it.
fn next_marker(bytes: &[u8], at: &mut usize) -> Option<u8> {
    loop {
        let skip = bytes.get(*at..)?.iter().position(|b| *b == 0xFF)?;
        *at += skip + 1;
        while *bytes.get(*at)? == 0xFF {
            *at += 1;
        }
        let marker = *bytes.get(*at)?;
        *at += 1;
        if marker != 0 {
            return Some(marker);
        }
    }
}

impl Found {
    fn new() -> Self {
        Self {
            width: 0,
            height: 0,
            parts: Vec::new(),
            ids: Vec::new(),
            progressive: false,
            scans: 0,
            packed: 0,
            clean: vec![0xFF, 0xD8],
            orientation: Orientation::NoTransforms,
            adobe: None,
            jfif: false,
            profile: Vec::new(),
            told: false,
            ended: false,
        }
    }

    fn segment(&mut self, marker: u8, body: &[u8]) -> Result<(), Why> {
        match marker {
            0xC0..=0xC2 => {
                self.frame(marker, body)?;
                self.keep(marker, body);
            }
            0xC4 | 0xDB | 0xDD | 0xDA => self.keep(marker, body),
            0xC3 | 0xC5..=0xC7 => return Err(not_read("of a kind made for archives")),
            0xC9..=0xCF => return Err(not_read("with arithmetic coding")),
            0xE0 if body.starts_with(b"JFIF\0") && !self.jfif => {
                self.jfif = true;
                // Version 1.02, no unit, square pixels, no small picture.
                self.keep(0xE0, b"JFIF\0\x01\x02\0\0\x01\0\x01\0\0");
            }
            0xE1 => {
                self.told = true;
                if let Some(exif) = body.strip_prefix(b"Exif\0\0") {
                    self.orientation = orientation(exif);
                }
            }
            0xE2 if body.starts_with(ICC) => {
                if let Some([number, _, part @ ..]) = body.strip_prefix(ICC) {
                    self.profile.push((*number, part.to_vec()));
                }
            }
            0xEE if body.starts_with(b"Adobe") && self.adobe.is_none() => {
                let transform = body.get(11).copied().unwrap_or(0);
                self.adobe = Some(transform);
                self.keep(
                    0xEE,
                    &[b'A', b'd', b'o', b'b', b'e', 0, 100, 0, 0, 0, 0, transform],
                );
            }
            0xE3..=0xEF | 0xFE => self.told = true,
            _ => {}
        }
        Ok(())
    }

    fn keep(&mut self, marker: u8, body: &[u8]) {
        self.clean.extend([0xFF, marker]);
        self.clean.extend(((body.len() + 2) as u16).to_be_bytes());
        self.clean.extend_from_slice(body);
    }

    fn frame(&mut self, marker: u8, body: &[u8]) -> Result<(), Why> {
        let [bits, h0, h1, w0, w1, count, parts @ ..] = body else {
            return Err(Why::damaged());
        };
        if !self.parts.is_empty() || parts.len() != usize::from(*count) * 3 || *count == 0 {
            return Err(Why::damaged());
        }
        if *bits != 8 {
            return Err(not_read("with more than eight bits a colour"));
        }
        self.width = u32::from(u16::from_be_bytes([*w0, *w1]));
        self.height = u32::from(u16::from_be_bytes([*h0, *h1]));
        within_bounds(self.width, self.height)?;
        self.progressive = marker == 0xC2;
        for part in parts.chunks_exact(3) {
            let (across, down) = (u32::from(part[1] >> 4), u32::from(part[1] & 15));
            if !(1..=4).contains(&across) || !(1..=4).contains(&down) {
                return Err(Why::damaged());
            }
            self.parts.push((across, down));
            self.ids.push(part[0]);
        }
        Ok(())
    }

    /// Copies packed picture up to the next mark that ends it.
    fn scan(&mut self, head: &[u8], bytes: &[u8], at: &mut usize) -> Result<(), Why> {
        let count = head.first().map_or(0, |n| usize::from(*n));
        if self.parts.is_empty() || count == 0 || count > self.parts.len() {
            return Err(Why::damaged());
        }
        // The decoder loses its place where only some of the colours come together.
        if !self.progressive && (count < self.parts.len() || self.scans > 0) {
            return Err(not_read("that holds one colour after the other"));
        }
        let from = *at;
        let mut to = from;
        loop {
            let rest = bytes.get(to..).ok_or_else(Why::cut_off)?;
            let skip = rest.iter().position(|b| *b == 0xFF);
            to += skip.ok_or_else(Why::cut_off)?;
            match bytes.get(to + 1) {
                None => return Err(Why::cut_off()),
                Some(0 | 0xD0..=0xD7) => to += 2,
                Some(0xFF) => to += 1,
                Some(_) => break,
            }
        }
        self.scans += 1;
        self.packed += (to - from) as u64;
        self.clean.extend_from_slice(&bytes[from..to]);
        *at = to;
        Ok(())
    }

    /// Blocks of eight by eight samples of all colours together.
    pub fn blocks(&self) -> u64 {
        let most = |side: fn(&(u32, u32)) -> u32| self.parts.iter().map(side).max().unwrap_or(1);
        let (across, down) = (most(|p| p.0), most(|p| p.1));
        let count = |length: u32, share: u32, most: u32| {
            (u64::from(length) * u64::from(share)).div_ceil(u64::from(most) * 8)
        };
        let blocks =
            |p: &(u32, u32)| count(self.width, p.0, across) * count(self.height, p.1, down);
        self.parts.iter().map(blocks).sum()
    }

    /// The colour profile, put together from its parts. One beyond the bound comes out empty, which
    /// is no profile anybody can read.
    pub fn profile(&mut self) -> Option<Vec<u8>> {
        if self.profile.is_empty() {
            return None;
        }
        self.profile.sort_by_key(|(number, _)| *number);
        let whole: usize = self.profile.iter().map(|(_, part)| part.len()).sum();
        if whole > LARGEST_PROFILE {
            self.profile.clear();
        }
        let parts = std::mem::take(&mut self.profile);
        Some(parts.into_iter().flat_map(|(_, part)| part).collect())
    }

    /// What there is to say of what was left behind.
    pub fn notes(&self) -> Vec<String> {
        self.told.then(removed).into_iter().collect()
    }

    /// Whether colours are held as brightness and two differences, the usual form.
    pub fn is_ycbcr(&self) -> bool {
        self.parts.len() == 3 && self.adobe != Some(0) && self.ids != *b"RGB"
    }

    /// Whether inks are held the other way round.
    pub fn inverted(&self) -> bool {
        self.adobe.is_some()
    }
}
