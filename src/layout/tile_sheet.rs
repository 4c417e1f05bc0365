//! Sheets full of tiles, true to size: the tiles touch, so that each cut serves two of them; cut
//! marks with numbers stand outside. What else is on the sheet finds room in the margins.

use std::ops::Range;

use super::desk::{Desk, Person};
use super::fit::report;
use super::frame;
use super::grid::Grid;
use super::ink;
use super::shapes::{Look, circle, line};
use super::tile_face::TileSet;
use super::words::{CLEAR, Words};
use super::writer::{Everyone, PageWriter};
use super::{SheetKind, Turn};
use crate::model::finding::{Severity, Spot};
use crate::page::{Item, Page};
use crate::story::when::NO_BREAK;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Smallest tile that is laid out at all: below, not even a short word fits at 14 points.
pub(super) const SMALLEST: Length = Length::um(20_000);
/// Length of a cut mark and its distance from the tiles.
const TICK: Length = Length::um(2_000);
const TICK_GAP: Length = Length::um(500);
/// Radius of the plate of a cut's number.
const NUMBER: Length = Length::um(1_800);

/// A length in words: "60 mm", "37.5 mm".
pub(super) fn in_mm(length: Length) -> String {
    let tenths = (length.to_um() + 50) / 100;
    match tenths % 10 {
        0 => format!("{}{NO_BREAK}mm", tenths / 10),
        rest => format!("{}.{rest}{NO_BREAK}mm", tenths / 10),
    }
}

/// Some faces of a set on as many sheets as they take.
pub(super) fn lay_out(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    set: &TileSet,
    which: Range<usize>,
    kind: SheetKind,
) -> Vec<Page> {
    let size = desk.page_size(Turn::Portrait);
    let grid = Grid::on(size, set.side, which.len()).filter(|_| set.side >= SMALLEST);
    let Some(grid) = grid else {
        left_out(desk, person, set.side);
        return Vec::new();
    };
    report_labels(desk, person, set, which.clone(), kind);
    let all: Vec<usize> = which.collect();
    let sheets: Vec<&[usize]> = all.chunks(grid.len()).collect();
    let count = sheets.len();
    sheets
        .into_iter()
        .enumerate()
        .map(|(i, faces)| {
            let title = title(kind, set.side, i + 1, count);
            let mut page = PageWriter::new(size, title.clone());
            let sheet = SheetOfTiles {
                size,
                grid,
                rows: (faces.len() as i64 + grid.columns - 1) / grid.columns,
            };
            sheet.header(desk, person, set.side, &title, &mut page);
            sheet.cut_lines(&mut page);
            for (place, &face) in faces.iter().enumerate() {
                set.draw(desk, person, face, grid.cell(place), &mut page);
            }
            let what = format!("{}, sheet {} of {count}", kind.label(), i + 1);
            sheet.footer(desk, person, what, &mut page);
            page.finish()
        })
        .collect()
}

fn title(kind: SheetKind, side: Length, sheet: usize, of: usize) -> String {
    let side = in_mm(side);
    format!("{} {side}, sheet {sheet} of {of}", kind.label())
}

fn left_out(desk: &mut Desk<'_>, person: &Person<'_>, side: Length) {
    let paper = desk.request.paper.label();
    let (side_words, mark) = (in_mm(side), &person.mark_words);
    let sentence = if side < SMALLEST {
        format!(
            "A tile of {side_words} for {mark} is too small for picture and words; it is left out."
        )
    } else {
        format!(
            "A tile of {side_words} for {mark} is larger than {paper} paper can hold; it is left out."
        )
    };
    let spot = Spot::Participant(person.who.id);
    let hint = "Choose another tile size or larger paper. Tiles are always printed true to size.";
    desk.note(Severity::StopAndLook, "print.tile", spot, sentence, hint);
}

fn report_labels(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    set: &TileSet,
    which: Range<usize>,
    kind: SheetKind,
) {
    let faces = &set.faces[which.clone()];
    let labels: Vec<_> = faces
        .iter()
        .map(|f| (f.card.label.as_str(), f.spot))
        .collect();
    let over: Vec<usize> = set
        .overfull
        .iter()
        .filter(|i| which.contains(i))
        .map(|i| i - which.start)
        .collect();
    let sheet = match kind {
        SheetKind::Cards => "cards",
        _ => "tiles",
    };
    let hint = "Use fewer or shorter words, or larger tiles.";
    report(desk, person, &labels, &over, sheet, hint);
    for (i, face) in faces.iter().enumerate() {
        if face.card.label.trim().is_empty() {
            let sentence = format!("Tile {} of {} has no words.", i + 1, person.mark_words);
            let hint = "Write the words that will be said.";
            desk.note(Severity::Look, "print.no-words", face.spot, sentence, hint);
        }
    }
}

/// One sheet: the paper and the block of tiles on it.
struct SheetOfTiles {
    size: Size,
    grid: Grid,
    /// Rows that hold tiles.
    rows: i64,
}

impl SheetOfTiles {
    /// White above the tiles that the header may take.
    fn header_room(&self) -> Length {
        self.grid.at.y - TICK_GAP - TICK - NUMBER * 2 - Length::mm(0.8)
    }

    fn header(
        &self,
        desk: &Desk<'_>,
        person: &Person<'_>,
        side: Length,
        title: &str,
        page: &mut PageWriter<Everyone>,
    ) {
        let seal = desk.club.rules.seal;
        let text = format!(
            "Printed {}, finished {}. Cut on the lines. Laminate with {} between tiles. \
             Cut again, leaving {} of film.",
            in_mm(side),
            in_mm(side + seal * 2),
            in_mm(seal * 2),
            in_mm(seal)
        );
        let m = super::grid::MARGIN;
        let room = self.header_room();
        if room < Length::mm(13.5) {
            return self.tight_header(&format!("{title}. "), &text, page);
        }
        let plate = Rect::new(
            Point::new(m, room - Length::mm(12.0)),
            Size::square(Length::mm(11.0)),
        );
        frame::draw_mark(page, plate, &person.mark, &person.mark_words);
        let x = plate.right() + Length::mm(4.0);
        let width = self.size.w - m - x;
        let words = Words::line(title, &Style::bold(Length::pt(15.0)), width);
        let how = how_to(&text, width, room - Length::mm(5.3) - words.height());
        let height = words.height() + Length::mm(0.8) + how.height();
        let top = (plate.center().y - height / 2).max(Length::mm(4.5));
        page.heading(1, words.left(Point::new(x, top), ink::INK));
        let y = top + words.height() + Length::mm(0.8);
        page.paragraph(None, how.left(Point::new(x, y), ink::SOFT));
    }

    /// Title and what to do on one line at the very top.
    fn tight_header(&self, title: &str, text: &str, page: &mut PageWriter<Everyone>) {
        let (m, letters) = (super::grid::MARGIN, Length::pt(7.0));
        let width = self.size.w - m * 2;
        let top = Length::mm(4.4);
        let words = Words::line(title, &Style::bold(letters), width);
        let x = m + words.width();
        page.heading(1, words.left(Point::new(m, top), ink::INK));
        let gap = Length::mm(1.0);
        let rest = Words::line(text, &Style::regular(letters), width - words.width() - gap);
        page.paragraph(None, rest.left(Point::new(x + gap, top), ink::SOFT));
    }

    /// Whether the numbers of the cuts have their plates above the tiles.
    fn has_room_for_plates(&self) -> bool {
        self.header_room() > Length::mm(7.0)
    }

    fn has_room_for_footer(&self) -> bool {
        let below = self.size.h - self.grid.block(self.grid.rows).bottom();
        below >= frame::footer_room(self.size) + TICK_GAP + TICK + Length::mm(1.0)
    }

    fn footer(
        &self,
        desk: &Desk<'_>,
        person: &Person<'_>,
        what: String,
        page: &mut PageWriter<Everyone>,
    ) {
        let footer = desk.footer(person, what);
        if self.has_room_for_footer() {
            frame::draw_footer(page, self.size, &footer);
        } else {
            let below = self.grid.block(self.grid.rows).bottom();
            frame::draw_tight_footer(page, self.size, below, &footer);
        }
    }

    /// Hairlines between the tiles; marks and numbers outside.
    fn cut_lines(&self, page: &mut PageWriter<Everyone>) {
        let block = self.grid.block(self.rows);
        let mut items = Vec::new();
        let hair = |a, b| line(a, b, ink::RULE, ink::HAIRLINE);
        let tick = |a, b| line(a, b, ink::INK, Length::um(200));
        let p = Point::new;
        let (gap, end) = (TICK_GAP, TICK_GAP + TICK);
        let mut number = 0;
        for column in 0..=self.grid.columns {
            number += 1;
            let x = block.x + self.grid.tile * column;
            items.push(hair(p(x, block.y), p(x, block.bottom())));
            items.push(tick(p(x, block.y - gap), p(x, block.y - end)));
            if self.has_room_for_plates() {
                items.extend(cut_number(p(x, block.y - end - NUMBER), number));
            } else {
                let at = p(x + Length::mm(0.7), block.y - end - Length::mm(0.2));
                items.extend(small_number(number).left(at, ink::SOFT));
            }
            if self.has_room_for_footer() || self.rows < self.grid.rows {
                let y = block.bottom();
                items.push(tick(p(x, y + gap), p(x, y + end)));
            }
        }
        for row in 0..=self.rows {
            number += 1;
            let y = block.y + self.grid.tile * row;
            items.push(hair(p(block.x, y), p(block.right(), y)));
            items.push(tick(p(block.x - gap, y), p(block.x - end, y)));
            items.push(tick(p(block.right() + gap, y), p(block.right() + end, y)));
            items.extend(cut_number(p(block.x - end - NUMBER, y), number));
        }
        page.artifact(items);
    }
}

/// What to do, in letters that leave it within a height.
fn how_to(text: &str, width: Length, room: Length) -> Words {
    let at = |pt: f64| {
        let style = Style::regular(Length::pt(pt));
        let lines = usize::try_from(room.times(style.size.scale(CLEAR))).unwrap_or(1);
        Words::wrapped(text, &style, width, CLEAR, lines.max(1))
    };
    let fitting = [8.5, 7.5, 6.5].into_iter().map(at).find(|w| !w.cut);
    fitting.unwrap_or_else(|| at(6.5))
}

fn small_number(number: usize) -> Words {
    let style = Style::bold(Length::pt(6.0));
    Words::line(&number.to_string(), &style, Length::mm(8.0))
}

fn cut_number(center: Point, number: usize) -> Vec<Item> {
    let look = Look::line(ink::SOFT, Length::um(200)).on(ink::PAPER);
    let mut items = vec![circle(center, NUMBER, look)];
    items.extend(small_number(number).amid(center, ink::SOFT));
    items
}
