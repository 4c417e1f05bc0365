//! Contact sheets: every symbol with its words, by group, in large print, to look at and choose from.

use super::fit::{Labels, fit};
use super::frame::{self, Footer, Header, picture};
use super::ink;
use super::shapes::{Look, rounded};
use super::words::TIGHT;
use super::writer::{Everyone, PageWriter};
use crate::model::club::Paper;
use crate::model::language::Language;
use crate::model::people::Figure;
use crate::page::Page;
use crate::symbols::lexicon::{Lexicon, lexicon};
use crate::symbols::library::{Symbol, library};
use crate::symbols::variant::{Ink, Variant};
use crate::text::{Direction, Room};
use crate::units::{Length, Point, Rect, Size};

/// How contact sheets are wanted.
#[derive(Clone, Debug)]
pub struct Contact {
    /// On which paper, upright.
    pub paper: Paper,
    /// With which inks.
    pub ink: Ink,
    /// How the main person is drawn.
    pub figure: Figure,
    /// Left and right exchanged, where a drawing allows it.
    pub mirrored: bool,
    /// In which language.
    pub words: Language,
}

/// The contact sheets of one group.
#[derive(Clone, Debug)]
pub struct ContactSheet {
    /// What the group is called.
    pub group: String,
    /// Part of a file name: the group in small letters with hyphens.
    pub stem: String,
    /// The pages.
    pub pages: Vec<Page>,
}

/// Side of a picture and letters below it; large print is 18 points and more.
const PICTURE: Length = Length::um(44_000);
const LABEL_PT: f64 = 18.0;
/// Height of a picture with its words.
const ROW: Length = Length::um(59_000);
const WIDTH: Length = Length::um(60_000);

/// All groups in the order of the tray.
pub fn contact_sheets(wish: &Contact) -> Vec<ContactSheet> {
    let words = lexicon(&wish.words);
    let groups = library().groups().iter();
    groups.map(|group| of_group(wish, words, group)).collect()
}

fn of_group(wish: &Contact, words: &Lexicon, group: &str) -> ContactSheet {
    let of_it = library().all().iter().filter(|s| s.group == group);
    let symbols: Vec<&Symbol> = of_it.collect();
    let name = words.group(group).to_owned();
    let size = wish.paper.size();
    let area = frame::content(size);
    let columns = (area.w.to_um() / WIDTH.to_um()).max(1) as usize;
    let rows = (area.h.to_um() / ROW.to_um()).max(1) as usize;
    let sheets: Vec<&[&Symbol]> = symbols.chunks(columns * rows).collect();
    let page = |(i, shown): (usize, &&[&Symbol])| {
        let mut page = PageWriter::new(size, format!("Symbols, {name}"));
        let place = (i + 1, sheets.len());
        surround(&mut page, size, &name, wish, place);
        for (at, cell) in shown.iter().zip(cells(area, columns, rows)) {
            draw(&mut page, wish, words, at, cell);
        }
        page.finish()
    };
    ContactSheet {
        stem: slug(group),
        pages: sheets.iter().enumerate().map(page).collect(),
        group: name,
    }
}

fn surround(
    page: &mut PageWriter<Everyone>,
    size: Size,
    group: &str,
    wish: &Contact,
    (at, all): (usize, usize),
) {
    let below = match wish.ink {
        Ink::Colour => "The symbols in colour",
        Ink::Grey => "The symbols in grey",
        Ink::Outline => "The symbols as outlines, to colour in or to photocopy",
        Ink::OnDark => "The symbols on a dark ground, with high contrast",
    };
    let header = Header {
        mark: None,
        mark_words: "",
        title: group,
        below,
    };
    let footer = Footer {
        what: format!("Symbols, {group}, {at} of {all}"),
        plan: "Drawn for Daystrand. CC0 1.0".to_owned(),
        spot: String::new(),
    };
    frame::draw(page, size, &header, &footer);
}

fn cells(area: Rect, columns: usize, rows: usize) -> impl Iterator<Item = Rect> {
    let (width, height) = (area.w / columns as i64, area.h / rows as i64);
    (0..rows * columns).map(move |i| Rect {
        x: area.x + width * (i % columns) as i64,
        y: area.y + height * (i / columns) as i64,
        w: width,
        h: height,
    })
}

fn draw(page: &mut PageWriter<Everyone>, wish: &Contact, words: &Lexicon, s: &Symbol, cell: Rect) {
    let top = Point::new(cell.center().x - PICTURE / 2, cell.y);
    let tile = Rect::new(top, Size::square(PICTURE));
    let ground = match wish.ink {
        Ink::OnDark => Look::line(wish.ink.ground(), ink::HAIRLINE).on(wish.ink.ground()),
        _ => Look::line(ink::RULE, ink::HAIRLINE).on(ink::PAPER),
    };
    page.artifact(vec![rounded(tile, PICTURE.scale(0.06), ground)]);
    let variant = Variant {
        mirrored: wish.mirrored,
        ..Variant::new(wish.figure, wish.ink)
    };
    let label = words.label(&s.id);
    let alt = format!("{label}: {}", s.shows);
    let inside = tile.shrink(PICTURE.scale(0.03));
    page.figure(None, alt, vec![picture(&s.drawn(variant), inside)]);
    let set: Labels = fit(&[label], &room(cell.w), TIGHT);
    let below = Point::new(cell.center().x, tile.bottom() + Length::mm(1.6));
    for words in &set.words {
        page.paragraph(None, words.centred(below, ink::INK));
    }
}

/// The place for the words: two lines below the picture.
fn room(width: Length) -> Room {
    Room {
        width: width - Length::mm(2.0),
        height: ROW - PICTURE - Length::mm(1.6),
        max_lines: 2,
        sizes: Length::pt(14.0)..=Length::pt(LABEL_PT),
        bold: true,
        direction: Direction::Auto,
    }
}

fn slug(group: &str) -> String {
    let sign = |c: char| {
        if c.is_ascii_alphanumeric() {
            c.to_ascii_lowercase()
        } else {
            '-'
        }
    };
    group.chars().map(sign).collect()
}
