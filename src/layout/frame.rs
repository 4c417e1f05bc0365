//! What stands around the content of every sheet: whose it is, what it is and who may see it, which
//! plan it came from, and a bar to measure whether the printer kept the size.

use super::ink;
use super::shapes::{Look, circle, line, rounded};
use super::words::{TIGHT, Words};
use super::writer::{Audience, PageWriter};
use crate::model::privacy::Class;
use crate::page::{Item, SymbolKey};
use crate::symbols::library::Drawn;
use crate::text::Style;
use crate::units::{Insets, Length, Point, Rect, Size};

/// White edge around a sheet's content; clear-print practice asks for 12 mm at least.
pub const EDGE: Length = Length::um(12_000);

/// White edge that nothing goes over: printers reach to within 4 to 5 mm of the edge of the paper,
/// some only to 6.7 mm at the foot (makers' manuals).
pub const PRINTER_EDGE: Length = Length::um(5_000);
/// Height of a full header with white below, above low blocks of tiles.
pub const FULL_HEADER: Length = Length::um(34_000);

/// Length of the bar that is measured after printing.
const BAR: Length = Length::um(100_000);
const BAR_WORDS: &str = "100 mm: measure after printing";
/// Height of a header with plate, title and one line below.
pub const HEADER: Length = Length::um(16_000);
/// Height of a footer on a page as wide as A4.
const FOOTER: Length = Length::um(9_500);
/// The same on a narrow page, where all stands below the bar.
const NARROW_FOOTER: Length = Length::um(13_500);

/// Side of the sign of who may see a page.
const SIGN: Length = Length::um(2_000);

/// What stands above.
#[derive(Clone, Debug)]
pub struct Header<'a> {
    /// The mark of the participant.
    pub mark: Option<&'a Drawn>,
    /// What the mark is called.
    pub mark_words: &'a str,
    /// The title.
    pub title: &'a str,
    /// One line below.
    pub below: &'a str,
}

/// What stands below.
#[derive(Clone, Debug)]
pub struct Footer {
    /// What the sheet is, with its page.
    pub what: String,
    /// Code, date and mark.
    pub plan: String,
    /// Where all meet when someone is missing; empty where the sheet is cut up or none is known.
    pub spot: String,
}

impl Footer {
    /// Meeting spot and plan in one line.
    fn plan_and_spot(&self) -> String {
        match self.spot.as_str() {
            "" => self.plan.clone(),
            spot => format!("{spot} · {}", self.plan),
        }
    }
}

/// The room between header and footer.
pub fn content(page: Size) -> Rect {
    let m = EDGE;
    Rect::new(Point::default(), page).inset(Insets {
        left: m,
        top: m + HEADER + Length::mm(4.0),
        right: m,
        bottom: footer_room(page) + Length::mm(4.0),
    })
}

fn is_narrow(page: Size) -> bool {
    page.w < Length::mm(190.0)
}

/// White that the footer takes at the foot of a page, edge included.
pub fn footer_room(page: Size) -> Length {
    Length::mm(10.0) + footer_height(page)
}

fn footer_height(page: Size) -> Length {
    if is_narrow(page) {
        NARROW_FOOTER
    } else {
        FOOTER
    }
}

/// Puts header and footer on a page; the header is its first heading.
pub fn draw<A: Audience>(
    page: &mut PageWriter<A>,
    size: Size,
    header: &Header<'_>,
    footer: &Footer,
) {
    draw_header(page, size.w, header);
    draw_footer(page, size, footer);
}

/// Puts a header at the top of a page, as wide as this part of the page.
pub fn draw_header<A: Audience>(page: &mut PageWriter<A>, width: Length, header: &Header<'_>) {
    let m = EDGE;
    let mut x = m;
    if let Some(mark) = header.mark {
        let plate = Rect::new(Point::new(m, m), Size::square(Length::mm(13.0)));
        draw_mark(page, plate, mark, header.mark_words);
        x = plate.right() + Length::mm(4.5);
    }
    let room = width - m - x;
    let title = Words::line(header.title, &Style::bold(Length::pt(21.0)), room);
    let below = below(header.below, room);
    let top = m - Length::mm(0.4);
    page.heading(1, title.left(Point::new(x, top), ink::INK));
    let y = top + title.height().max(Length::mm(7.5)) + Length::mm(0.4);
    page.paragraph(None, below.left(Point::new(x, y), ink::SOFT));
}

/// The line below the title, in smaller letters if it is long.
fn below(words: &str, room: Length) -> Words {
    let at = |pt: f64| Words::line(words, &Style::regular(Length::pt(pt)), room);
    let sizes = [12.0, 11.0, 10.0, 9.0, 8.0];
    let fitting = sizes.into_iter().map(at).find(|w| !w.cut);
    fitting.unwrap_or_else(|| at(8.0))
}

/// The mark on its plate.
pub fn draw_mark<A: Audience>(page: &mut PageWriter<A>, plate: Rect, mark: &Drawn, words: &str) {
    let look = Look::line(ink::SEAL_EDGE, ink::THIN).on(ink::PAPER);
    let mut items = vec![rounded(plate, plate.w.scale(0.24), look)];
    items.push(picture(mark, plate.shrink(plate.w.scale(0.16))));
    page.figure(None, format!("Mark: {words}"), items);
}

/// A drawing in a square.
pub fn picture(drawn: &Drawn, rect: Rect) -> Item {
    Item::Symbol {
        rect: rect.middle_square(),
        key: SymbolKey {
            id: drawn.id.clone(),
            variant: drawn.variant,
        },
        art: std::sync::Arc::clone(&drawn.art),
    }
}

/// The footer at the foot of a page.
pub fn draw_footer<A: Audience>(page: &mut PageWriter<A>, size: Size, footer: &Footer) {
    let m = EDGE;
    let top = size.h - footer_room(size);
    let at = Point::new(m, top + Length::mm(1.8));
    let small = Style::regular(Length::pt(8.0));
    let bold = Style::bold(Length::pt(8.0));
    let width = size.w - m * 2;
    let below = at.y + Length::mm(2.2);
    let (mut marks, mut bar_words) = (Vec::new(), Words::default());
    // Half of A5, in a booklet, is narrower than the bar.
    if width >= BAR {
        marks = check_bar(at, 1.0);
        bar_words = Words::line(BAR_WORDS, &small, width);
        page.artifact(bar_words.left(Point::new(m, below), ink::SOFT));
    }
    let beside = if is_narrow(size) {
        width - bar_words.width() - Length::mm(4.0)
    } else {
        width - BAR - Length::mm(6.0)
    };
    let what_top = if is_narrow(size) { below } else { top };
    let right = size.w - m;
    let what = with_readers::<A>(&footer.what);
    let what = Words::line(&what, &small, beside - SIGN * 2);
    page.paragraph(None, what.right(Point::new(right, what_top), ink::SOFT));
    let sign_x = right - what.width() - SIGN;
    let sign_y = what_top + what.height() / 2;
    marks.extend(sign(A::CLASS, Point::new(sign_x, sign_y)));
    page.artifact(marks);
    let mut y = what_top + Length::pt(8.0).scale(TIGHT) + Length::mm(0.6);
    let beside_bar = width - bar_words.width() - Length::mm(4.0);
    let together = Words::line(&footer.plan_and_spot(), &bold, beside_bar);
    if !together.cut {
        return page.paragraph(None, together.right(Point::new(right, y), ink::INK));
    }
    for words in [&footer.plan, &footer.spot] {
        let line = Words::line(words, &bold, width);
        page.paragraph(None, line.right(Point::new(right, y), ink::INK));
        y += line.height();
    }
}

/// White that the tight footer takes at the foot of a page.
pub const fn tight_footer_room() -> Length {
    super::grid::MARGIN
}

/// The footer in a margin of 10 mm, for sheets full of tiles: bar above, words in one line below.
pub fn draw_tight_footer<A: Audience>(page: &mut PageWriter<A>, size: Size, footer: &Footer) {
    let m = super::grid::MARGIN;
    let letters = Length::pt(6.0);
    let words = Words::line(BAR_WORDS, &Style::regular(letters), size.w);
    let top = size.h - PRINTER_EDGE - words.height();
    let at = Point::new(m, top - Length::mm(0.9));
    let mut marks = check_bar(at, 0.6);
    page.artifact(words.left(Point::new(m, top), ink::SOFT));
    let room = size.w - m * 2 - words.width() - Length::mm(4.0) - SIGN * 2;
    let all = format!(
        "{} · {}",
        with_readers::<A>(&footer.what),
        footer.plan_and_spot()
    );
    let at = |pt: f64| Words::line(&all, &Style::bold(Length::pt(pt)), room);
    let fitting = [6.0, 5.5].into_iter().map(at).find(|w| !w.cut);
    let all = fitting.unwrap_or_else(|| at(5.0));
    page.paragraph(None, all.right(Point::new(size.w - m, top), ink::INK));
    let sign_x = size.w - m - all.width() - SIGN;
    let sign_y = top + all.height() / 2;
    marks.extend(sign(A::CLASS, Point::new(sign_x, sign_y)));
    page.artifact(marks);
}

/// What a sheet is, with who may see it.
fn with_readers<A: Audience>(what: &str) -> String {
    format!("{what}, {}", A::CLASS.label())
}

/// The sign of a class of readers, as the window has it: an open ring, a sheet folded in, a closed
/// square. Its words stand beside it.
fn sign(class: Class, center: Point) -> Vec<Item> {
    let r = Rect::new(center.moved(-SIGN / 2, -SIGN / 2), Size::square(SIGN));
    let edge = Look::line(ink::SOFT, ink::THIN);
    let half = Rect { w: r.w / 2, ..r };
    match class {
        Class::Public => vec![circle(center, SIGN / 2, edge)],
        Class::Helper => vec![
            rounded(r, Length::ZERO, edge),
            rounded(half, Length::ZERO, Look::filled(ink::SOFT)),
        ],
        Class::Coordinator => vec![rounded(r, Length::um(300), Look::filled(ink::SOFT))],
    }
}

/// A bar of 100 mm with ticks at its ends and its middle, of so much of their usual height.
fn check_bar(at: Point, height: f64) -> Vec<Item> {
    let end = at.moved(BAR, Length::ZERO);
    let mut items = vec![line(at, end, ink::INK, Length::mm(0.3))];
    for (part, tick) in [(0.0, 1.3), (0.5, 0.9), (1.0, 1.3)] {
        let x = at.moved(BAR.scale(part), Length::ZERO);
        let tick = Length::mm(tick * height);
        let (up, down) = (x.moved(Length::ZERO, -tick), x.moved(Length::ZERO, tick));
        items.push(line(up, down, ink::INK, Length::mm(0.3)));
    }
    items
}

/// A page of a sheet about the session: no mark; a title, what stands below it, and the foot, which
/// says which sheet and page it is.
pub(super) fn begin_session<P: Audience>(
    size: Size,
    (title, below): (&str, &str),
    footer: &Footer,
) -> PageWriter<P> {
    let mut writer = PageWriter::new(size, footer.what.clone());
    let header = Header {
        mark: None,
        mark_words: "",
        title,
        below,
    };
    draw(&mut writer, size, &header, footer);
    writer
}
