//! What stands around the tiles of a sheet: title, what to do, whose tiles they are, and the footer;
//! where the tiles leave little room all of it keeps to the margins.

use super::gather;
use super::sheet::{self, NUMBER, TICK, TICK_GAP};
use crate::layout::desk::{Desk, Person};
use crate::layout::frame::{self, Footer, PRINTER_EDGE};
use crate::layout::grid::MARGIN;
use crate::layout::words::{CLEAR, Words};
use crate::layout::writer::{Everyone, PageWriter};
use crate::layout::{SheetKind, ink, plan_code};
use crate::story::when;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Most marks in the header of a sheet.
const MOST_MARKS: usize = 12;

/// A sheet of tiles without its tiles.
pub(super) struct Around {
    pub size: Size,
    pub block: Rect,
    pub kind: SheetKind,
    pub number: usize,
    pub count: usize,
    /// Whose tiles lie on it.
    pub people: Vec<usize>,
    /// Their printed sizes.
    pub sizes: Vec<Size>,
}

impl Around {
    /// "Tiles 60 mm, sheet 1 of 3"; without a size where there are several.
    pub fn title(&self) -> String {
        let what = match self.sizes.as_slice() {
            [one] => format!("{} {}", self.kind.label(), gather::in_words(*one)),
            _ => self.kind.label().to_owned(),
        };
        format!("{what}, sheet {} of {}", self.number, self.count)
    }

    /// White above the tiles that the header may take.
    fn header_room(&self) -> Length {
        self.block.y - TICK_GAP - TICK - NUMBER * 2 - Length::mm(0.3)
    }

    /// Whether the numbers of the cuts have their plates above the tiles.
    pub fn has_room_for_plates(&self) -> bool {
        self.header_room() >= PRINTER_EDGE + TIGHT_PT.scale(CLEAR)
    }

    pub fn header(&self, desk: &Desk<'_>, people: &[Person<'_>], page: &mut PageWriter<Everyone>) {
        let text = sheet::how_to(desk, &self.sizes);
        let room = self.header_room();
        let title = self.title();
        if room < Length::mm(15.5) {
            return self.tight_header(&format!("{title}. "), &text, page);
        }
        let plate = Rect::new(
            Point::new(MARGIN, (room - Length::mm(12.0)).max(PRINTER_EDGE)),
            Size::square(Length::mm(11.0)),
        );
        let (mut x, mut right) = (MARGIN, self.size.w - MARGIN);
        if let [one] = people {
            frame::draw_mark(page, plate, &one.mark, &one.mark_words);
            x = plate.right() + Length::mm(4.0);
        } else {
            right -= self.marks(people, Point::new(right, plate.y), page);
        }
        let width = right - x;
        let words = Words::line(&title, &Style::bold(Length::pt(15.0)), width);
        let how = how_to(
            &text,
            width,
            room - PRINTER_EDGE - words.height() - Length::mm(0.8),
        );
        let height = words.height() + Length::mm(0.8) + how.height();
        let top = (plate.center().y - height / 2).max(PRINTER_EDGE);
        page.heading(1, words.left(Point::new(x, top), ink::INK));
        let y = top + words.height() + Length::mm(0.8);
        page.paragraph(None, how.left(Point::new(x, y), ink::SOFT));
    }

    /// Small marks of those whose tiles lie here, in two rows up to the right edge; gives the width.
    fn marks(
        &self,
        people: &[Person<'_>],
        corner: Point,
        page: &mut PageWriter<Everyone>,
    ) -> Length {
        let (side, pitch) = (Length::mm(5.2), Length::mm(5.8));
        let shown = &self.people[..self.people.len().min(MOST_MARKS)];
        let columns = shown.len().div_ceil(2) as i64;
        let left = corner.x - pitch * columns;
        for (k, &who) in shown.iter().enumerate() {
            let k = k as i64;
            let at = Point::new(
                left + pitch * (k % columns),
                corner.y + pitch * (k / columns),
            );
            let person = &people[who];
            let drawn = frame::picture(&person.mark, Rect::new(at, Size::square(side)));
            page.figure(None, format!("Mark: {}", person.mark_words), vec![drawn]);
        }
        pitch * columns + Length::mm(3.0)
    }

    /// Title and what to do on one line at the very top.
    fn tight_header(&self, title: &str, text: &str, page: &mut PageWriter<Everyone>) {
        let width = self.size.w - MARGIN * 2;
        let words = Words::line(title, &Style::bold(TIGHT_PT), width);
        let x = MARGIN + words.width();
        page.heading(1, words.left(Point::new(MARGIN, PRINTER_EDGE), ink::INK));
        let gap = Length::mm(1.0);
        let rest = Words::line(text, &Style::regular(TIGHT_PT), width - words.width() - gap);
        page.paragraph(
            None,
            rest.left(Point::new(x + gap, PRINTER_EDGE), ink::SOFT),
        );
    }

    pub fn footer(&self, desk: &Desk<'_>, people: &[Person<'_>], page: &mut PageWriter<Everyone>) {
        let what = format!(
            "{}, sheet {} of {}",
            self.kind.label(),
            self.number,
            self.count
        );
        self.footer_of(footer(desk, people, what), page);
    }

    /// A footer where there is room for it.
    pub fn footer_of(&self, footer: Footer, page: &mut PageWriter<Everyone>) {
        let below = self.size.h - self.block.bottom();
        if below >= frame::footer_room(self.size) + TICK_GAP + TICK + Length::mm(1.0) {
            frame::draw_footer(page, self.size, &footer);
        } else {
            frame::draw_tight_footer(page, self.size, &footer);
        }
    }
}

/// Letters where there is little room.
const TIGHT_PT: Length = Length::um(2_293);

/// What stands at the foot of a sheet for one or for several. Such sheets are cut up, so the meeting
/// spot would not stay with anyone.
pub(in crate::layout) fn footer(desk: &Desk<'_>, people: &[Person<'_>], what: String) -> Footer {
    if let [one] = people {
        return Footer {
            spot: String::new(),
            ..desk.footer(one, what)
        };
    }
    let code = plan_code::of_boards(desk.club, people.iter().map(|p| (&p.board, p.who)));
    let date = when::full_date(desk.session.date);
    Footer {
        what,
        plan: format!("Plan {code} · {date} · {} participants", people.len()),
        spot: String::new(),
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
