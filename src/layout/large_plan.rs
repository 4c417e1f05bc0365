//! How a large-print board is shared out over pages: each strip or share of the board on a page of
//! its own, or several short strips on one page, in frames, where they stand as large there.

use std::ops::Range;

use super::Turn;
use super::desk::{Desk, Person};
use super::frame;
use super::large_across::Across;
use super::large_down::Down;
use super::large_frames::{self, Frames, Sizes};
use super::large_words::Said;
use super::strips::{self, Part};
use crate::model::manner::{Reach, Run};
use crate::units::{Length, Rect, Size};

/// Below the head of a strip.
const HEAD_GAP: Length = Length::um(5_000);
/// Least width beside a picture, with the rope, in a frame.
const LEAST_WORDS: Length = Length::um(65_000);

/// Which way the steps are set.
pub(super) enum Way {
    Down(Down),
    Across(Across),
}

impl Way {
    pub const fn said(&self) -> &Said {
        match self {
            Self::Down(down) => &down.said,
            Self::Across(across) => &across.said,
        }
    }

    const fn side(&self) -> Length {
        match self {
            Self::Down(down) => down.side,
            Self::Across(across) => across.side,
        }
    }

    fn holds(&self, person: &Person<'_>, steps: &Range<usize>) -> bool {
        match self {
            Self::Down(down) => down.holds(steps),
            Self::Across(across) => across.holds(person, steps),
        }
    }

    fn pages(&self, steps: &Range<usize>) -> Vec<Vec<Range<usize>>> {
        match self {
            Self::Down(down) => down.pages(steps),
            Self::Across(across) => across.pages(steps),
        }
    }
}

/// A kind of page: how it stands and how steps are set on it.
pub(super) struct Kind {
    pub size: Size,
    pub way: Way,
    /// Several strips on a page.
    pub frames: Option<Frames>,
    /// White to add to each row or line, the same on all pages, so that the fullest is filled.
    pub extra: Length,
}

impl Kind {
    /// Where the steps stand on a page or in a frame of it.
    pub fn room(&self, desk: &Desk<'_>, person: &Person<'_>, part: &Part, at: usize) -> Rect {
        let content = frame::content(self.size);
        let framed = self.frames.and_then(|frames| {
            let seal = desk.club.rules.film();
            large_frames::inside(frames.frame(content, at), person, seal)
        });
        framed.map_or_else(|| alone_room(desk, person, part, self.size), |f| f.room)
    }
}

/// What stands on one page, or in one frame of it.
pub(super) struct Filled<'a> {
    pub part: &'a Part,
    /// Columns or lines.
    pub shares: Vec<Range<usize>>,
    /// Which page of the part, from zero, and of how many.
    pub page: (usize, usize),
}

/// One page: whether it has frames, and what stands on it.
pub(super) struct Leaf<'a> {
    pub framed: bool,
    pub filled: Vec<Filled<'a>>,
}

/// The board as it will be placed.
pub(super) struct Plan<'a> {
    pub alone: Kind,
    pub framed: Option<Kind>,
    pub leaves: Vec<Leaf<'a>>,
}

impl<'a> Plan<'a> {
    /// The plan with the fewest pages; of those with as many, the one with the largest pictures.
    pub fn of(desk: &Desk<'_>, person: &Person<'_>, parts: &'a [Part]) -> Self {
        let alone = alone(desk, person, parts, None);
        let plain = leaves(person, &alone, None, parts);
        let mut best: Option<(Vec<Leaf<'a>>, Kind)> = None;
        let strips = parts.iter().any(|p| p.strip.is_some());
        for frames in Frames::several().into_iter().filter(|_| strips) {
            for kind in framed(desk, person, parts, &alone, frames) {
                let leaves = leaves(person, &alone, Some(&kind), parts);
                let rank = |n: usize, k: &Kind| (n, std::cmp::Reverse(k.way.side()));
                let better = best
                    .as_ref()
                    .is_none_or(|(l, k)| rank(leaves.len(), &kind) < rank(l.len(), k));
                if better && leaves.len() < plain.len() {
                    best = Some((leaves, kind));
                }
            }
        }
        let mut plan = match best {
            None => Self {
                alone,
                framed: None,
                leaves: plain,
            },
            // All pages have the same letters.
            Some((_, kind)) => {
                let letters = Some(kind.way.said().labels.size);
                let alone = self::alone(desk, person, parts, letters);
                Self {
                    leaves: self::leaves(person, &alone, Some(&kind), parts),
                    framed: Some(kind),
                    alone,
                }
            }
        };
        plan.alone.extra = plan.extra(desk, person, &plan.alone, false);
        if let Some(kind) = plan.framed.take() {
            let extra = plan.extra(desk, person, &kind, true);
            plan.framed = Some(Kind { extra, ..kind });
        }
        plan
    }

    /// The kind of a page.
    pub fn kind(&self, leaf: &Leaf<'_>) -> &Kind {
        match &self.framed {
            Some(framed) if leaf.framed => framed,
            _ => &self.alone,
        }
    }

    fn extra(&self, desk: &Desk<'_>, person: &Person<'_>, kind: &Kind, framed: bool) -> Length {
        let of_kind = self.leaves.iter().filter(|l| l.framed == framed);
        let spare = |filled: &Filled<'_>| match &kind.way {
            Way::Down(down) => filled.shares.iter().map(|s| down.spare(s)).min(),
            Way::Across(across) => {
                let room = kind.room(desk, person, filled.part, 0);
                Some(across.spare(room, filled.shares.len()))
            }
        };
        let all = of_kind.flat_map(|l| &l.filled).filter_map(spare);
        all.min().unwrap_or(Length::ZERO)
    }
}

/// The pages of all parts in order: those that fit a frame together, the others alone.
fn leaves<'a>(
    person: &Person<'_>,
    alone: &Kind,
    framed: Option<&Kind>,
    parts: &'a [Part],
) -> Vec<Leaf<'a>> {
    let mut all: Vec<Leaf<'a>> = Vec::new();
    for part in parts {
        let in_frame = framed.filter(|kind| kind.way.holds(person, &part.steps));
        let pages = in_frame.unwrap_or(alone).way.pages(&part.steps);
        let count = pages.len();
        let most = in_frame.and_then(|k| k.frames).map_or(1, Frames::len);
        for (i, shares) in pages.into_iter().enumerate() {
            let filled = Filled {
                part,
                shares,
                page: (i, count),
            };
            match all.last_mut() {
                Some(leaf) if in_frame.is_some() && leaf.framed && leaf.filled.len() < most => {
                    leaf.filled.push(filled);
                }
                _ => all.push(Leaf {
                    framed: in_frame.is_some(),
                    filled: vec![filled],
                }),
            }
        }
    }
    all
}

/// One strip or share of the board to a page. A board that runs across lies on its long side.
/// Letters are no larger than `most`.
fn alone(desk: &Desk<'_>, person: &Person<'_>, parts: &[Part], most: Option<Length>) -> Kind {
    let sizes = Sizes {
        picture: None,
        letters: most,
    };
    let kind = |size, way| Kind {
        size,
        way,
        frames: None,
        extra: Length::ZERO,
    };
    if person.who.manner.run != Run::Down {
        let size = desk.page_size(Turn::Landscape);
        let room = alone_room(desk, person, &parts[0], size);
        if let Some(way) = Across::best(desk, person, parts, room, sizes) {
            return kind(size, Way::Across(way));
        }
    }
    let size = desk.page_size(Turn::Portrait);
    let room = alone_room(desk, person, &parts[0], size);
    let columns = if size.w <= size.h { 1 } else { 2 };
    let way = Down::best(desk, person, parts, (room, columns), sizes);
    kind(size, Way::Down(way))
}

/// The ways to set each strip in a frame of its own, in letters as large as on a page of its own. A
/// single step has no direction: it stands as fits.
fn framed(
    desk: &Desk<'_>,
    person: &Person<'_>,
    parts: &[Part],
    alone: &Kind,
    frames: Frames,
) -> Vec<Kind> {
    let manner = &person.who.manner;
    let single = manner.reach == Reach::One;
    let least = large_frames::least_picture(desk, person).min(alone.way.side());
    let sizes = Sizes {
        picture: Some(least),
        letters: Some(alone.way.said().labels.size),
    };
    let mut kinds = Vec::new();
    for turn in [Turn::Portrait, Turn::Landscape] {
        let size = desk.page_size(turn);
        let frame = frames.frame(frame::content(size), 0);
        let inside = large_frames::inside(frame, person, desk.club.rules.film());
        let Some(room) = inside.map(|i| i.room) else {
            continue;
        };
        let mut ways = Vec::new();
        let wide = room.w - least >= LEAST_WORDS;
        if wide && (single || manner.run == Run::Down) {
            let way = Down::best(desk, person, parts, (room, 1), sizes);
            ways.push(Way::Down(way));
        }
        if single || manner.run != Run::Down {
            let way = Across::best(desk, person, parts, room, sizes);
            ways.extend(way.map(Way::Across));
        }
        ways.retain(|way| way.said().as_large_as(alone.way.said()));
        kinds.extend(ways.into_iter().map(|way| Kind {
            size,
            way,
            frames: Some(frames),
            extra: Length::ZERO,
        }));
    }
    kinds
}

/// Where the steps stand on a page of their own.
fn alone_room(desk: &Desk<'_>, person: &Person<'_>, part: &Part, size: Size) -> Rect {
    let content = frame::content(size);
    if part.strip.is_none() {
        return content;
    }
    let head = strips::head_height(person, desk.club.rules.film(), content.h) + HEAD_GAP;
    Rect {
        y: content.y + head,
        h: content.h - head,
        ..content
    }
}
