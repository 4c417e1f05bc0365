//! The other side of a sheet of tiles: on the back of each its mark, its number and the code of its
//! plan, so that a tile that lies face down is not lost. Never a name.

use super::around::{Around, footer};
use super::arrange::Laying;
use super::{Making, Wanted};
use crate::layout::desk::{Desk, Person};
use crate::layout::frame::{picture, tight_footer_room};
use crate::layout::ink;
use crate::layout::shapes::{Look, circle};
use crate::layout::words::Words;
use crate::layout::writer::{Everyone, PageWriter};
use crate::model::craft::Flip;
use crate::page::Page;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Where a place of the front lies on the back, for a printer that turns the sheet over an edge.
pub(in crate::layout) fn behind(page: Size, at: Rect, flip: Flip) -> Rect {
    let over_upright_edge = (page.h >= page.w) == (flip == Flip::Long);
    match over_upright_edge {
        true => Rect {
            x: page.w - at.right(),
            ..at
        },
        false => Rect {
            y: page.h - at.bottom(),
            ..at
        },
    }
}

/// The back of a sheet.
pub(super) fn back(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    making: &Making,
    sheet: &Laying,
    around: &Around,
    flip: Flip,
) -> Page {
    let what = format!("Back of {}", lower(&around.title()));
    let mut page = PageWriter::new(around.size, what.clone());
    let edge = match flip {
        Flip::Long => "long edge",
        Flip::Short => "short edge",
    };
    let block = behind(around.size, sheet.block, flip);
    let words = format!("{what}: turn over the {edge}");
    let title = Words::line(&words, &Style::bold(Length::pt(6.5)), around.size.w);
    let top = crate::layout::frame::PRINTER_EDGE;
    page.heading(
        1,
        title.left(Point::new(crate::layout::grid::MARGIN, top), ink::SOFT),
    );
    for &(piece, at) in &sheet.places {
        let wanted = making.piece(piece);
        let dot = desk.club.rules.craft.dot;
        draw(
            (&people[wanted.person], dot),
            wanted,
            behind(around.size, at, flip),
            &mut page,
        );
    }
    let footer = footer(desk, people, what);
    if around.size.h - block.bottom() >= tight_footer_room() {
        crate::layout::frame::draw_tight_footer(&mut page, around.size, &footer);
    }
    page.finish()
}

fn lower(title: &str) -> String {
    let mut chars = title.chars();
    let first = chars.next().map(|c| c.to_lowercase().to_string());
    first.unwrap_or_default() + chars.as_str()
}

/// The back of one tile: its mark above, number and plan below; in between, on what is fastened to a
/// board, a ring where the fastener goes.
fn draw(
    (person, dot): (&Person<'_>, Length),
    wanted: &Wanted,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let least = at.w.min(at.h);
    let code = match (wanted.is_spare, wanted.key.whose) {
        (true, _) => format!("spare {}", wanted.number),
        (_, None) => "shared".to_owned(),
        _ => format!("{} · {}", wanted.number, person.code),
    };
    let style = Style::bold(Length::pt(if least < Length::mm(45.0) {
        9.0
    } else {
        12.0
    }));
    let words = Words::line(&code, &style, at.w - Length::mm(4.0));
    let gap = Length::mm(1.6);
    let dot = if wanted.is_card { Length::ZERO } else { dot };
    let room = (at.h - dot) / 2 - gap * 2;
    let side = least.scale(0.36).min(room);
    let middle = at.center();
    if dot > Length::ZERO {
        let ring = Look::line(ink::RULE, ink::HAIRLINE);
        page.artifact(vec![circle(middle, dot / 2, ring)]);
    }
    let below = Point::new(middle.x, middle.y + dot / 2 + gap);
    page.paragraph(None, words.centred(below, ink::SOFT));
    if wanted.key.whose.is_some() && side >= Length::mm(4.0) {
        let corner = Point::new(middle.x - side / 2, middle.y - dot / 2 - gap - side);
        let mark = Rect::new(corner, Size::square(side));
        let alt = format!("Mark: {}", person.mark_words);
        page.figure(None, alt, vec![picture(&person.mark, mark)]);
    }
}
