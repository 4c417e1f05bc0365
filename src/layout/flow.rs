//! Pieces one below the other, over as many columns and pages as they take, for readers of one
//! class.

use std::marker::PhantomData;

use super::writer::{Audience, PageWriter};
use crate::model::privacy::Guarded;
use crate::page::{Block, Item, Role, Source};
use crate::units::{Length, Point, Rect};

/// Something that is not torn apart: blocks whose top is at zero.
#[derive(Debug, Default)]
pub struct Piece {
    /// Its height.
    pub height: Length,
    /// Whether it must not be the last on a page.
    pub keep_with_next: bool,
    blocks: Vec<Block>,
}

impl Piece {
    /// An empty piece of a height.
    pub fn new(height: Length) -> Self {
        Self {
            height,
            ..Self::default()
        }
    }

    /// The same, kept with what follows.
    pub fn kept(mut self) -> Self {
        self.keep_with_next = true;
        self
    }

    /// With further items, read as a role.
    pub fn with(mut self, role: Role, source: Option<Source>, items: Vec<Item>) -> Self {
        let words = items.iter().any(|i| matches!(i, Item::Text { .. }));
        let reads_words = matches!(role, Role::Heading(_) | Role::Paragraph);
        if !items.is_empty() && (words || !reads_words) {
            self.blocks.push(Block {
                role,
                source,
                lang: None,
                items,
            });
        }
        self
    }

    /// With the blocks of another piece that stands beside it.
    pub fn beside(mut self, other: Option<Self>) -> Self {
        if let Some(other) = other {
            self.height = self.height.max(other.height);
            self.blocks.extend(other.blocks);
        }
        self
    }

    /// Pieces one below the other as one that is not torn apart.
    pub fn stacked(pieces: impl IntoIterator<Item = Self>) -> Self {
        let mut all = Self::default();
        for piece in pieces {
            let down = all.height;
            let blocks = piece.blocks.into_iter();
            all.blocks
                .extend(blocks.map(|b| moved(b, Length::ZERO, down)));
            all.height += piece.height;
        }
        all
    }

    /// Columns of pieces side by side, torn only where one of them is higher than `most`.
    pub fn side_by_side(columns: Vec<Vec<Self>>, most: Length) -> Vec<Self> {
        let mut columns: Vec<_> = columns
            .into_iter()
            .map(|c| c.into_iter().peekable())
            .collect();
        let mut all = Vec::new();
        while columns.iter_mut().any(|c| c.peek().is_some()) {
            let mut row = Self::default();
            for column in &mut columns {
                let mut used = Length::ZERO;
                let mut here = Vec::new();
                while let Some(p) = column.next_if(|p| here_fits(used, p.height, most)) {
                    used += p.height;
                    here.push(p);
                }
                row = row.beside(Some(Self::stacked(here)));
            }
            all.push(row);
        }
        all
    }

    /// With words that are read.
    pub fn words(self, items: Vec<Item>) -> Self {
        self.with(Role::Paragraph, None, items)
    }

    /// With what is not read.
    pub fn drawn(self, items: Vec<Item>) -> Self {
        self.with(Role::Artifact, None, items)
    }
}

/// Whether a piece goes below what is there already; the first always does.
fn here_fits(used: Length, height: Length, most: Length) -> bool {
    used == Length::ZERO || used + height <= most
}

/// What stands in some columns of one page, for readers of one class.
#[derive(Debug)]
pub struct Share<A> {
    pub(super) blocks: Vec<Block>,
    readers: PhantomData<A>,
}

/// Pieces in order, for readers of one class: what is kept for a more closed class cannot be read
/// while they are put together.
#[derive(Debug)]
pub struct Flow<A> {
    pieces: Vec<Piece>,
    readers: PhantomData<A>,
}

impl<A: Audience> Flow<A> {
    /// No pieces yet.
    pub const fn new() -> Self {
        Self {
            pieces: Vec::new(),
            readers: PhantomData,
        }
    }

    /// Something guarded, if these readers may see it.
    pub fn may_show<'a, T>(&self, guarded: &'a Guarded<T>) -> Option<&'a T> {
        guarded.for_page(A::CLASS)
    }

    /// Adds a piece at the end.
    pub fn push(&mut self, piece: Piece) {
        self.pieces.push(piece);
    }

    /// How many pages the pieces take in columns of a height.
    pub fn pages_needed(&self, height: Length, columns: usize) -> usize {
        self.breaks(height).len().div_ceil(columns.max(1))
    }

    /// The pieces page by page. Each page goes through `begin`, which is told its number and how
    /// many there are.
    pub fn into_pages(
        self,
        room: Rect,
        begin: impl Fn(usize, usize) -> PageWriter<A>,
    ) -> Vec<PageWriter<A>> {
        self.into_columns(&[room], begin)
    }

    /// The same in columns side by side, all as high as the first, for which the pieces were made.
    pub fn into_columns(
        self,
        columns: &[Rect],
        begin: impl Fn(usize, usize) -> PageWriter<A>,
    ) -> Vec<PageWriter<A>> {
        let shares = self.into_shares(columns);
        let count = shares.len();
        let pages = shares.into_iter().enumerate().map(|(i, share)| {
            let mut page = begin(i + 1, count);
            page.put_all(share);
            page
        });
        pages.collect()
    }

    /// What stands in the columns of each page, for pages that hold more than these columns.
    pub fn into_shares(self, columns: &[Rect]) -> Vec<Share<A>> {
        let Some(first) = columns.first() else {
            return Vec::new();
        };
        let breaks = self.breaks(first.h);
        let mut pieces = self.pieces.into_iter();
        let mut shares = Vec::new();
        for breaks_here in breaks.chunks(columns.len()) {
            let mut share = Share {
                blocks: Vec::new(),
                readers: PhantomData,
            };
            for (column, pieces_here) in columns.iter().zip(breaks_here) {
                let mut y = column.y;
                for piece in pieces.by_ref().take(*pieces_here) {
                    for block in piece.blocks {
                        share.blocks.push(moved(block, column.x - first.x, y));
                    }
                    y += piece.height;
                }
            }
            shares.push(share);
        }
        shares
    }

    /// How many pieces stand on each page.
    fn breaks(&self, room: Length) -> Vec<usize> {
        let mut pages = Vec::new();
        let mut from = 0;
        while from < self.pieces.len() {
            let mut used = Length::ZERO;
            let mut to = from;
            while to < self.pieces.len() && (to == from || used + self.pieces[to].height <= room) {
                used += self.pieces[to].height;
                to += 1;
            }
            let full = to;
            while to < self.pieces.len() && to > from + 1 && self.pieces[to - 1].keep_with_next {
                to -= 1;
            }
            let alone = to == from + 1 && self.pieces[from].keep_with_next;
            let to = if alone { full } else { to };
            pages.push(to - from);
            from = to;
        }
        pages
    }
}

/// A block at another place of the page.
pub(super) fn moved(block: Block, right: Length, down: Length) -> Block {
    let at = |p: Point| p.moved(right, down);
    let items = block
        .items
        .into_iter()
        .map(|item| match item {
            Item::Text {
                at: place,
                line,
                colour,
            } => Item::Text {
                at: at(place),
                line,
                colour,
            },
            Item::Symbol { rect, key, art } => Item::Symbol {
                rect: Rect {
                    x: rect.x + right,
                    y: rect.y + down,
                    ..rect
                },
                key,
                art,
            },
            Item::Shape { path, fill, stroke } => Item::Shape {
                path: path.map(|p| at(*p)),
                fill,
                stroke,
            },
        })
        .collect();
    Block { items, ..block }
}
