//! From characters to glyphs in font units: the font for each character, kerning, ligatures,
//! joining letters, marks in their place.

use std::ops::Range;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use rustybuzz::{BufferFlags, GlyphBuffer, Script, ShapePlan, UnicodeBuffer, script};
use unicode_segmentation::UnicodeSegmentation;

use super::bidi::{Direction, Levels};
use super::cache::Cache;
use super::fonts;
use super::run::{FontId, Glyph, Line, Run};
use crate::units::Length;

/// Text of one line as glyphs, good for every size.
#[derive(Debug, Default)]
pub(super) struct Shaped {
    /// Runs in the order they are painted.
    pub(super) pieces: Vec<Piece>,
    /// The characters in reading order.
    pub(super) text: String,
    /// Characters that no bundled font has, each once, in order of appearance.
    pub(super) missing: Vec<char>,
}

/// Glyphs of one font.
#[derive(Debug)]
pub(super) struct Piece {
    font: FontId,
    /// Where its characters begin in the text that was shaped.
    start: usize,
    text: Arc<str>,
    glyphs: Vec<Glyph>,
    /// Sum of the advances, in font units.
    advance: i64,
}

impl Shaped {
    /// The glyphs at a letter size.
    pub(super) fn line(&self, size: Length) -> Line {
        let mut line = Line {
            text: self.text.clone(),
            ..Line::default()
        };
        for piece in &self.pieces {
            let run = piece.run(size);
            let x = line.width;
            line.width += run.width;
            line.runs.push((x, run));
        }
        line
    }

    /// Width at a letter size, the same as that of [`Self::line`].
    pub(super) fn width(&self, size: Length) -> Length {
        self.pieces.iter().map(|p| p.width(size)).sum()
    }

    /// Advance of each cluster with the place of its first character, in reading order, in ems.
    pub(super) fn advances(&self) -> Vec<(usize, f64)> {
        let mut all = Vec::new();
        for p in &self.pieces {
            let em = fonts::optical_factor(p.font) / f64::from(fonts::units_per_em(p.font));
            let glyphs = p.glyphs.iter();
            all.extend(glyphs.map(|g| (p.start + g.from as usize, f64::from(g.advance) * em)));
        }
        all.sort_by_key(|a| a.0);
        all
    }

    /// Highest and lowest ink against the baseline, in ems, upwards positive.
    pub(super) fn ink(&self) -> Option<(f64, f64)> {
        let mut ink: Option<(f64, f64)> = None;
        for p in &self.pieces {
            let em = fonts::optical_factor(p.font) / f64::from(fonts::units_per_em(p.font));
            for g in &p.glyphs {
                let Some((top, bottom)) = fonts::glyph_ink(p.font, g.id) else {
                    continue;
                };
                let (top, bottom) = (f64::from(top + g.dy) * em, f64::from(bottom + g.dy) * em);
                let (t, b) = ink.unwrap_or((top, bottom));
                ink = Some((t.max(top), b.min(bottom)));
            }
        }
        ink
    }
}

impl Piece {
    fn size(&self, asked: Length) -> Length {
        asked.scale(fonts::optical_factor(self.font))
    }

    fn width(&self, asked: Length) -> Length {
        let em = f64::from(fonts::units_per_em(self.font));
        self.size(asked).scale(self.advance as f64 / em)
    }

    fn run(&self, asked: Length) -> Run {
        Run {
            font: self.font,
            size: self.size(asked),
            text: Arc::clone(&self.text),
            glyphs: self.glyphs.clone(),
            width: self.width(asked),
        }
    }
}

/// Clean text of one line, shaped; kept for the next time.
pub(super) fn shaped(text: &str, bold: bool, direction: Direction) -> Arc<Shaped> {
    static CACHE: OnceLock<Cache<Shaped>> = OnceLock::new();
    let kind = kind(bold, direction);
    CACHE.get_or_init(Cache::new).get(text, kind, || {
        let levels = Levels::of(text, direction);
        shape(text, 0..text.len(), &levels, bold)
    })
}

/// Number of a weight and direction, for the caches.
pub(super) fn kind(bold: bool, direction: Direction) -> usize {
    usize::from(bold) * 3
        + match direction {
            Direction::Auto => 0,
            Direction::LeftToRight => 1,
            Direction::RightToLeft => 2,
        }
}

/// One line of a clean paragraph, shaped; `line` lies on character boundaries of `text`.
pub(super) fn shape(text: &str, line: Range<usize>, levels: &Levels, bold: bool) -> Shaped {
    let mut out = Shaped {
        text: text[line.clone()].to_owned(),
        ..Shaped::default()
    };
    let start = line.start;
    for (part, rtl) in levels.visual(text, line) {
        let mut stretches = stretches(text, part, bold, &mut out.missing);
        if rtl {
            stretches.reverse();
        }
        for (range, font) in stretches {
            let mut piece = match font {
                Some(font) => shape_stretch(text, range, font, rtl),
                None => substitutes(text, range, bold, rtl),
            };
            piece.start -= start;
            if !piece.glyphs.is_empty() {
                out.pieces.push(piece);
            }
        }
    }
    out
}

/// Cuts text that runs one way into stretches of one font, in reading order; `None` stands for
/// characters without a font. Blanks and punctuation stay with the letters before them, or at
/// the beginning with those after, as far as that font has them.
fn stretches(
    text: &str,
    part: Range<usize>,
    bold: bool,
    missing: &mut Vec<char>,
) -> Vec<(Range<usize>, Option<FontId>)> {
    let fonts = [fonts::main(bold), fonts::arabic(bold)];
    if text[part.clone()].is_ascii() {
        return vec![(part, Some(fonts[0]))];
    }
    let first = text[part.clone()].chars().find(|c| c.is_alphabetic());
    let mut last = if first.is_some_and(is_arabic) {
        fonts[1]
    } else {
        fonts[0]
    };
    let mut out: Vec<(Range<usize>, Option<FontId>)> = Vec::new();
    for (i, cluster) in text[part.clone()].grapheme_indices(true) {
        let wanted = match cluster.chars().next() {
            Some(c) if is_arabic(c) => [fonts[1], fonts[0]],
            Some(c) if c.is_alphabetic() => fonts,
            _ if last == fonts[1] => [fonts[1], fonts[0]],
            _ => fonts,
        };
        let whole = |f: &FontId| cluster.chars().all(|c| fonts::covers(*f, c));
        let font = wanted.into_iter().find(whole);
        match font {
            Some(f) => last = f,
            None => note_missing(cluster, fonts, missing),
        }
        let here = part.start + i;
        let end = here + cluster.len();
        match out.last_mut() {
            Some((range, f)) if *f == font => range.end = end,
            _ => out.push((here..end, font)),
        }
    }
    out
}

fn note_missing(cluster: &str, fonts: [FontId; 2], missing: &mut Vec<char>) {
    for c in cluster.chars() {
        if !fonts.iter().any(|f| fonts::covers(*f, c)) && !missing.contains(&c) {
            missing.push(c);
        }
    }
}

/// Letters, marks and digits of Arabic script, by block.
fn is_arabic(c: char) -> bool {
    matches!(u32::from(c),
        0x600..=0x6FF | 0x750..=0x77F | 0x870..=0x8FF | 0xFB50..=0xFDFF | 0xFE70..=0xFEFC
        | 0x10EC0..=0x10EFF | 0x1EE00..=0x1EEFF)
}

/// One visible glyph for each character a reader would see.
fn substitutes(text: &str, range: Range<usize>, bold: bool, rtl: bool) -> Piece {
    let (id, advance) = fonts::substitute(bold);
    let words = &text[range.clone()];
    let mut glyphs: Vec<Glyph> = words
        .grapheme_indices(true)
        .map(|(i, cluster)| Glyph {
            id,
            advance,
            dx: 0,
            dy: 0,
            from: i as u32,
            to: (i + cluster.len()) as u32,
        })
        .collect();
    if rtl {
        glyphs.reverse();
    }
    Piece {
        font: fonts::main(bold),
        start: range.start,
        text: words.into(),
        advance: i64::from(advance) * glyphs.len() as i64,
        glyphs,
    }
}

fn shape_stretch(text: &str, range: Range<usize>, font: FontId, rtl: bool) -> Piece {
    let words = &text[range.clone()];
    let mut buffer = UnicodeBuffer::new();
    buffer.push_str(words);
    // Letters join across the ends of a stretch.
    buffer.set_pre_context(&text[..range.start]);
    buffer.set_post_context(&text[range.end..]);
    buffer.set_flags(BufferFlags::REMOVE_DEFAULT_IGNORABLES);
    buffer.guess_segment_properties();
    buffer.set_direction(if rtl {
        rustybuzz::Direction::RightToLeft
    } else {
        rustybuzz::Direction::LeftToRight
    });
    let plan = plan(font, rtl, buffer.script());
    let shaped = rustybuzz::shape_with_plan(fonts::face(font), &plan, buffer);
    let glyphs = take_down(&shaped, words.len());
    Piece {
        font,
        start: range.start,
        text: words.into(),
        advance: glyphs.iter().map(|g| i64::from(g.advance)).sum(),
        glyphs,
    }
}

/// How a script is shaped in a font and direction; slow to make, so each is made once.
fn plan(font: FontId, rtl: bool, script: Script) -> Arc<ShapePlan> {
    type Plans = Mutex<Vec<((FontId, bool, Script), Arc<ShapePlan>)>>;
    static PLANS: OnceLock<Plans> = OnceLock::new();
    let mut plans = PLANS
        .get_or_init(Plans::default)
        .lock()
        .unwrap_or_else(PoisonError::into_inner);
    let key = (font, rtl, script);
    if let Some((_, plan)) = plans.iter().find(|(k, _)| *k == key) {
        return Arc::clone(plan);
    }
    let direction = if rtl {
        rustybuzz::Direction::RightToLeft
    } else {
        rustybuzz::Direction::LeftToRight
    };
    let known = Some(script).filter(|s| *s != script::UNKNOWN);
    let plan = Arc::new(ShapePlan::new(
        fonts::face(font),
        direction,
        known,
        None,
        &[],
    ));
    plans.push((key, Arc::clone(&plan)));
    plan
}

/// Glyphs with the characters each stands for; of several glyphs for the same characters the
/// first painted stands for them.
fn take_down(shaped: &GlyphBuffer, len: usize) -> Vec<Glyph> {
    let infos = shaped.glyph_infos();
    let mut starts: Vec<u32> = infos.iter().map(|i| i.cluster).collect();
    starts.sort_unstable();
    starts.dedup();
    // Characters taken out as never seen belong to what follows them at the beginning, and to
    // what is before them elsewhere.
    let from_to = |cluster: u32| {
        let i = starts.partition_point(|s| *s < cluster);
        let from = if i == 0 { 0 } else { cluster };
        (from, starts.get(i + 1).copied().unwrap_or(len as u32))
    };
    let mut before = None;
    infos
        .iter()
        .zip(shaped.glyph_positions())
        .map(|(info, at)| {
            let (from, to) = from_to(info.cluster);
            let again = before == Some(info.cluster);
            before = Some(info.cluster);
            Glyph {
                id: info.glyph_id as u16,
                advance: at.x_advance,
                dx: at.x_offset,
                dy: at.y_offset,
                from,
                to: if again { from } else { to },
            }
        })
        .collect()
}
