//! A page that tests the printer: bars of 100 mm both ways, how near the edge it reaches, steps of grey,
//! thin lines, letters. What is found is written down and set in the printer's own dialog: nothing is
//! ever scaled in silence.

use crate::layout::desk::Desk;
use crate::layout::shapes::{Look, line, rounded};
use crate::layout::sizes::in_mm;
use crate::layout::words::{CLEAR, Words};
use crate::layout::writer::{Audience, Everyone, PageWriter};
use crate::layout::{Sheet, SheetKind, ink};
use crate::page::Item;
use crate::plan::seal;
use crate::text::Style;
use crate::units::colour::Rgb;
use crate::units::{Length, Point, Rect, Size};

/// The length of the bars.
const BAR: Length = Length::um(100_000);
/// Distances from the edge that are tried, in millimetres.
const REACH: std::ops::RangeInclusive<i64> = 3..=12;

/// White around what is read; the lines at the edges reach into it.
const EDGE: Length = Length::um(20_000);
/// Taken by greys, lines, letters and answers below the bars.
const BELOW_BARS: Length = Length::um(72_000);

/// The sheet: one page, or two where the paper is low.
pub(in crate::layout) fn lay_out(desk: &Desk<'_>) -> Sheet {
    // As the paper lies in the printer, whichever way the other sheets are.
    let size = desk.request.paper.size();
    let room = Rect::new(Point::default(), size).shrink(EDGE);
    let mut page = begin(size, room, 1);
    let mut y = room.y + Length::mm(11.0);
    y = paragraph(&how(desk), Rect { y, ..room }, &mut page) + Length::mm(4.0);
    y = bars(Rect { y, ..room }, &mut page) + Length::mm(6.0);
    let mut pages = Vec::new();
    if y + BELOW_BARS > room.bottom() {
        reach(size, &mut page);
        pages.push(page.finish());
        page = begin(size, room, 2);
        y = room.y + Length::mm(14.0);
    }
    y = greys(Rect { y, ..room }, &mut page) + Length::mm(5.0);
    y = lines_and_letters(Rect { y, ..room }, &mut page) + Length::mm(5.0);
    answers(Rect { y, ..room }, &mut page);
    if pages.is_empty() {
        reach(size, &mut page);
    }
    pages.push(page.finish());
    desk.common_sheet(&[], SheetKind::TestPage, pages)
}

fn begin(size: Size, room: Rect, number: usize) -> PageWriter<Everyone> {
    let title = match number {
        1 => SheetKind::TestPage.label().to_owned(),
        n => format!("{}, page {n}", SheetKind::TestPage.label()),
    };
    let mut page = PageWriter::new(size, title.clone());
    let words = Words::line(&title, &Style::bold(Length::pt(18.0)), room.w);
    page.heading(1, words.left(room.origin(), ink::INK));
    let readers = Words::line(
        Everyone::CLASS.label(),
        &Style::regular(Length::pt(8.0)),
        room.w,
    );
    let at = Point::new(room.right(), room.y + Length::mm(2.5));
    page.paragraph(None, readers.right(at, ink::SOFT));
    page
}

fn how(desk: &Desk<'_>) -> String {
    let mut words = "Print this page at 100 %, with “fit to page” off. Measure both bars with a ruler, from \
                     end to end. If they are not 100 mm, set the scale in the printer’s dialog: 100 divided \
                     by what you measured."
        .to_owned();
    if let Some(bar) = desk.club.rules.craft.bar.filter(|b| *b != BAR) {
        let scale = seal::scale_to_set(bar);
        words.push_str(&format!(
            " Your printer made {} of it: set {}.{} %.",
            in_mm(bar),
            scale / 10,
            scale % 10
        ));
    }
    words
}

/// A paragraph at the top of a place; gives where it ends.
fn paragraph(words: &str, at: Rect, page: &mut PageWriter<Everyone>) -> Length {
    let set = Words::wrapped(words, &Style::regular(Length::pt(11.0)), at.w, CLEAR, 12);
    page.paragraph(None, set.left(at.origin(), ink::INK));
    at.y + set.height()
}

fn small(words: &str) -> Words {
    Words::line(words, &Style::regular(Length::pt(9.0)), Length::mm(160.0))
}

/// A bar of 100 mm across and one down.
fn bars(at: Rect, page: &mut PageWriter<Everyone>) -> Length {
    let tick = Length::mm(2.0);
    let z = Length::ZERO;
    let width = Length::um(300);
    let mut items = Vec::new();
    let start = at.origin().moved(z, tick);
    items.push(line(start, start.moved(BAR, z), ink::INK, width));
    let down = at
        .origin()
        .moved(z, tick + Length::mm(9.0))
        .moved(Length::mm(2.0), z);
    items.push(line(down, down.moved(z, BAR), ink::INK, width));
    for mm in 0..=100_i64 {
        let long = match (mm % 50, mm % 10) {
            (0, _) => tick,
            (_, 0) => tick.scale(0.7),
            _ if mm % 5 == 0 => tick.scale(0.5),
            _ => continue,
        };
        let across = start.moved(Length::um(mm * 1_000), z);
        items.push(line(
            across.moved(z, -long),
            across.moved(z, long),
            ink::INK,
            width,
        ));
        let along = down.moved(z, Length::um(mm * 1_000));
        items.push(line(
            along.moved(-long, z),
            along.moved(long, z),
            ink::INK,
            width,
        ));
    }
    page.artifact(items);
    let words = small("100 mm across");
    page.paragraph(
        None,
        words.left(
            start.moved(Length::mm(38.0), tick + Length::mm(0.6)),
            ink::INK,
        ),
    );
    let words = small("100 mm down");
    page.paragraph(
        None,
        words.left(down.moved(Length::mm(4.0), BAR / 2), ink::INK),
    );
    square(
        Rect {
            x: down.x + Length::mm(32.0),
            y: down.y,
            ..at
        },
        page,
    );
    down.y + BAR
}

/// A square to compare with a ruler and to see whether it is one.
fn square(at: Rect, page: &mut PageWriter<Everyone>) {
    let side = Length::mm(60.0);
    let square = Rect::new(at.origin(), Size::square(side));
    let mut items = vec![rounded(
        square,
        Length::ZERO,
        Look::line(ink::INK, Length::um(200)),
    )];
    items.push(line(
        square.origin(),
        Point::new(square.right(), square.bottom()),
        ink::RULE,
        ink::HAIRLINE,
    ));
    page.artifact(items);
    let words = small("a tile of 60 mm");
    let below = Point::new(square.center().x, square.bottom() + Length::mm(2.0));
    page.paragraph(None, words.centred(below, ink::INK));
}

/// Eleven steps from white to black.
fn greys(at: Rect, page: &mut PageWriter<Everyone>) -> Length {
    let (w, h) = (at.w / 11, Length::mm(12.0));
    let mut items = Vec::new();
    let mut words = Vec::new();
    for step in 0..=10_u32 {
        let level = u8::try_from(255 - step * 255 / 10).unwrap_or(0);
        let cell = Rect::new(
            Point::new(at.x + w * i64::from(step), at.y),
            Size::new(w, h),
        );
        let grey = Rgb(level, level, level);
        items.push(rounded(
            cell,
            Length::ZERO,
            Look::line(ink::RULE, ink::HAIRLINE).on(grey),
        ));
        let percent = small(&format!("{} %", step * 10));
        let below = Point::new(cell.center().x, cell.bottom() + Length::mm(1.0));
        words.extend(percent.centred(below, ink::INK));
    }
    page.artifact(items);
    page.paragraph(None, words);
    let end = at.y + h + Length::mm(5.5);
    let ask = "Each step should differ from the next. If two look alike, choose better quality.";
    paragraph(ask, Rect { y: end, ..at }, page)
}

/// Lines from thin to thick, and the smallest letters that are used.
fn lines_and_letters(at: Rect, page: &mut PageWriter<Everyone>) -> Length {
    let mut items: Vec<Item> = Vec::new();
    for (k, um) in [90, 200, 300, 450].into_iter().enumerate() {
        let y = at.y + Length::mm(2.0) + Length::mm(3.5) * k as i64;
        let from = Point::new(at.x, y);
        items.push(line(
            from,
            from.moved(Length::mm(38.0), Length::ZERO),
            ink::INK,
            Length::um(um),
        ));
    }
    page.artifact(items);
    let mut y = at.y;
    let x = at.x + Length::mm(45.0);
    for pt in [6.0, 8.0, 14.0] {
        let style = Style::regular(Length::pt(pt));
        let words = Words::line(
            &format!("{pt} points: can you read this?"),
            &style,
            at.right() - x,
        );
        page.paragraph(None, words.left(Point::new(x, y), ink::INK));
        y += words.height() + Length::mm(0.8);
    }
    y.max(at.y + Length::mm(14.0))
}

/// Places to write down what was found.
fn answers(at: Rect, page: &mut PageWriter<Everyone>) {
    let asked = [
        "The bar across measures",
        "The bar down measures",
        "Nearest lines that show",
    ];
    let mut y = at.y;
    for words in asked {
        let set = Words::line(words, &Style::regular(Length::pt(11.0)), at.w);
        page.paragraph(None, set.left(Point::new(at.x, y), ink::INK));
        let from = Point::new(at.x + set.width() + Length::mm(3.0), y + set.height());
        let to = Point::new(at.right(), from.y);
        page.artifact(vec![line(from, to, ink::SOFT, ink::THIN)]);
        y += set.height() + Length::mm(3.6);
    }
}

/// Short lines at each edge, one for each millimetre from it; numbers beside them.
fn reach(size: Size, page: &mut PageWriter<Everyone>) {
    let half = Length::mm(4.0);
    let (mx, my) = (size.w / 2, size.h / 2);
    let width = Length::um(150);
    let z = Length::ZERO;
    let mut items = Vec::new();
    let mut words = Vec::new();
    for mm in REACH {
        let d = Length::um(mm * 1_000);
        // Each a little further along, so that the numbers do not touch.
        let along = Length::mm(9.0) * (mm - 7);
        let tag = Words::line(
            &mm.to_string(),
            &Style::regular(Length::pt(7.0)),
            Length::mm(8.0),
        );
        let across = |y: Length| Point::new(mx + along, y);
        let down = |x: Length| Point::new(x, my + along);
        for y in [d, size.h - d] {
            let p = across(y);
            items.push(line(p.moved(-half, z), p.moved(half, z), ink::INK, width));
        }
        for x in [d, size.w - d] {
            let p = down(x);
            items.push(line(p.moved(z, -half), p.moved(z, half), ink::INK, width));
        }
        words.extend(tag.amid(across(Length::mm(16.0)), ink::SOFT));
        words.extend(tag.amid(across(size.h - Length::mm(16.0)), ink::SOFT));
        words.extend(tag.amid(down(Length::mm(16.0)), ink::SOFT));
        words.extend(tag.amid(down(size.w - Length::mm(16.0)), ink::SOFT));
    }
    page.artifact(items);
    page.paragraph(None, words);
}
