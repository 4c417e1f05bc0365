//! Builds a page for readers of one class, which is part of its type. A writer reads nothing that
//! is guarded; only a flow does (see `flow`), and only what readers of its own class may see.

use std::marker::PhantomData;

use super::flow::Share;
use crate::model::privacy::Class;
use crate::page::{Block, Item, Page, Role, Source};
use crate::units::Size;

/// Readers that a page is built for.
pub trait Audience {
    /// Their class.
    const CLASS: Class;
}

/// Everyone: boards, tiles, stories.
#[derive(Clone, Copy, Debug)]
pub struct Everyone;

/// One helper, beside one participant.
#[derive(Clone, Copy, Debug)]
pub struct Helper;

/// The coordinator alone.
#[derive(Clone, Copy, Debug)]
pub struct Coordinator;

impl Audience for Everyone {
    const CLASS: Class = Class::Public;
}

impl Audience for Helper {
    const CLASS: Class = Class::Helper;
}

impl Audience for Coordinator {
    const CLASS: Class = Class::Coordinator;
}

/// A page while it is built, in reading order.
#[derive(Debug)]
pub struct PageWriter<A> {
    page: Page,
    readers: PhantomData<A>,
}

impl<A: Audience> PageWriter<A> {
    /// An empty page.
    pub fn new(size: Size, title: String) -> Self {
        Self {
            page: Page {
                size,
                title,
                lang: "en".to_owned(),
                class: A::CLASS,
                blocks: Vec::new(),
            },
            readers: PhantomData,
        }
    }

    /// A heading of level 1 to 3.
    pub fn heading(&mut self, level: u8, items: Vec<Item>) {
        self.block(Role::Heading(level), None, items);
    }

    /// Words that are read.
    pub fn paragraph(&mut self, source: Option<Source>, items: Vec<Item>) {
        self.block(Role::Paragraph, source, items);
    }

    /// Words that are read, in another language than the page's.
    pub fn paragraph_in(&mut self, lang: &str, source: Option<Source>, items: Vec<Item>) {
        let before = self.page.blocks.len();
        self.block(Role::Paragraph, source, items);
        for block in &mut self.page.blocks[before..] {
            block.lang = Some(lang.to_owned());
        }
    }

    /// A picture and the words that stand for it.
    pub fn figure(&mut self, source: Option<Source>, alt: String, items: Vec<Item>) {
        self.block(Role::Figure { alt }, source, items);
    }

    /// What is not read aloud.
    pub fn artifact(&mut self, items: Vec<Item>) {
        self.block(Role::Artifact, None, items);
    }

    /// What was put together elsewhere for the same readers.
    pub fn put_all(&mut self, share: Share<A>) {
        self.page.blocks.extend(share.blocks);
    }

    fn block(&mut self, role: Role, source: Option<Source>, items: Vec<Item>) {
        let words = items.iter().any(|i| matches!(i, Item::Text { .. }));
        let reads_words = matches!(role, Role::Heading(_) | Role::Paragraph);
        if !items.is_empty() && (words || !reads_words) {
            self.page.blocks.push(Block {
                role,
                source,
                lang: None,
                items,
            });
        }
    }

    /// The finished page.
    pub fn finish(self) -> Page {
        self.page
    }
}
