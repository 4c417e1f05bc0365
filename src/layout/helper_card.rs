//! The helper's card: one side of paper, folded so that the private half is inside. The half that
//! stays outside says whose board it is, what is said and what comes; the private half says what the
//! helper needs to know, and how the board is used.
//!
//! Paper printed on one side hides a half only when that half is folded on itself, print to print,
//! and then back behind the other: two folds, marked at both edges. What does not fit goes on on a
//! further card; letters are never made smaller.

use super::desk::{Desk, Person};
use super::flow::Flow;
use super::frame::{self, Header};
use super::shapes::{Look, shape};
use super::words::Words;
use super::writer::{Helper, PageWriter};
use super::{helper_in, helper_out, ink};
use crate::page::Page;
use crate::story::when;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// White beside a fold.
const BESIDE_FOLD: Length = Length::um(7_000);
/// Top of the private half, which has no header.
const TOP: Length = Length::um(15_000);
/// Middle of the words that say how to fold, from the edge of the paper, and their letters.
const FOLD_WORDS: Length = Length::um(6_300);
const FOLD_PT: f64 = 9.0;
/// Where a fold's dashes begin.
const FOLD_TOP: Length = Length::um(10_000);

/// The pages of a participant's helper.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    // Which way up is no choice here: a card is folded across its longer side.
    let size = desk.request.paper.size().turned();
    let places = Places::of(size);
    let mut outside: Flow<Helper> = Flow::new();
    helper_out::add(desk, person, places.outside, &mut outside);
    let mut inside: Flow<Helper> = Flow::new();
    helper_in::add(desk, person, places.inside[0], &mut inside);
    let mut outside = outside.into_shares(&[places.outside]).into_iter();
    let mut inside = inside.into_shares(&places.inside).into_iter();
    let count = outside.len().max(inside.len());
    (1..=count)
        .map(|number| {
            let mut page = begin(desk, person, &places, (number, count));
            for share in [outside.next(), inside.next()].into_iter().flatten() {
                page.put_all(share);
            }
            page.finish()
        })
        .collect()
}

/// Where the halves lie.
struct Places {
    size: Size,
    outside: Rect,
    /// Two columns with a fold between them.
    inside: [Rect; 2],
}

impl Places {
    fn of(size: Size) -> Self {
        let content = frame::content(size);
        let (half, quarter) = (size.w / 2, size.w / 4);
        let outside = Rect {
            w: half - frame::EDGE - BESIDE_FOLD,
            ..content
        };
        let column = Rect {
            x: half + BESIDE_FOLD,
            y: TOP,
            w: quarter - frame::EDGE - BESIDE_FOLD,
            h: content.bottom() - TOP,
        };
        let second = Rect {
            x: half + quarter + BESIDE_FOLD,
            ..column
        };
        Self {
            size,
            outside,
            inside: [column, second],
        }
    }
}

fn begin(
    desk: &Desk<'_>,
    person: &Person<'_>,
    places: &Places,
    (number, count): (usize, usize),
) -> PageWriter<Helper> {
    let size = places.size;
    let what = format!("Helper card, page {number} of {count}");
    let mut page = PageWriter::new(size, what.clone());
    let date = desk.session.date;
    let below = format!(
        "{} {} · Plan {}",
        when::weekday(date),
        when::full_date(date),
        person.code
    );
    let header = Header {
        mark: Some(&person.mark),
        mark_words: &person.mark_words,
        title: match number {
            1 => "Helper card",
            _ => "Card goes on",
        },
        below: &below,
    };
    frame::draw_header(&mut page, size.w / 2, &header);
    draw_folds(size, &mut page);
    let footer = desk.footer(person, what);
    frame::draw_footer(&mut page, size, &footer);
    page
}

/// Both folds, and at both edges of the paper what is folded which way.
fn draw_folds(size: Size, page: &mut PageWriter<Helper>) {
    let (first, second) = (size.w / 4 * 3, size.w / 2);
    let foot = size.h - frame::footer_room(size) - Length::mm(1.0);
    let look = Look::line(ink::HATCH, ink::THIN).dashed(Length::mm(2.4), Length::mm(2.0));
    let dashes = [first, second].map(|x| {
        let ends = [Point::new(x, FOLD_TOP), Point::new(x, foot)];
        let segs = vec![Seg::Move(ends[0]), Seg::Line(ends[1])];
        shape(Path { segs }, look)
    });
    page.artifact(dashes.into());
    let style = Style::regular(Length::pt(FOLD_PT));
    let room = size.w / 4 - Length::mm(2.0);
    for y in [FOLD_WORDS, size.h - FOLD_WORDS] {
        for (x, words) in [
            (second, "2. Fold it back here"),
            (first, "1. Fold this half in"),
        ] {
            let words = Words::line(words, &style, room);
            page.paragraph(None, words.amid(Point::new(x, y), ink::SOFT));
        }
    }
}
