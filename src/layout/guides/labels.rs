//! Storage labels: one for the outside of each pouch, with the mark, the numbers of its tiles and the code
//! of the plan; never a name. One for the shared box where there is one.

use super::{begin, capital, counted};
use crate::layout::desk::{Desk, Person};
use crate::layout::frame::{self, draw_mark};
use crate::layout::grid::capacity;
use crate::layout::making::{Making, Wanted};
use crate::layout::shapes::{Look, rounded};
use crate::layout::words::Words;
use crate::layout::writer::{Everyone, PageWriter};
use crate::layout::{Sheet, SheetKind, Turn, ink};
use crate::model::craft::{TileShape, Work};
use crate::plan::seal;
use crate::story::when;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Size of a label: a bank card, which fits the small pouches that are sold for them.
fn label_size() -> Size {
    TileShape::Card.size(Length::ZERO)
}

/// What stands on a label.
struct Label<'a, 'b> {
    person: Option<&'a Person<'b>>,
    title: String,
    lines: Vec<String>,
}

/// The sheet.
pub(in crate::layout) fn lay_out(desk: &Desk<'_>, people: &[Person<'_>], making: &Making) -> Sheet {
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let one = label_size();
    let columns = capacity(Size::new(room.w, one.h), Length::ZERO, one.w, Length::ZERO)
        .0
        .max(1);
    let rows = room.h.times(one.h).max(1);
    let labels = labels(desk, people, making);
    let each = usize::try_from(columns * rows).unwrap_or(1);
    let count = labels.len().div_ceil(each.max(1));
    let below = "Cut on the lines, and stick one on the outside of each pouch.";
    let pages = labels.chunks(each.max(1)).enumerate().map(|(i, here)| {
        let kind = SheetKind::Labels;
        let mut page = begin(desk, people, kind, below, (size, i + 1, count));
        for (k, label) in here.iter().enumerate() {
            let k = k as i64;
            let left = room.x + (room.w - one.w * columns) / 2;
            let at = Point::new(left + one.w * (k % columns), room.y + one.h * (k / columns));
            draw(label, Rect::new(at, one), &mut page);
        }
        page.finish()
    });
    let pages = pages.collect();
    desk.common_sheet(people, SheetKind::Labels, pages)
}

fn labels<'a, 'b>(
    desk: &Desk<'_>,
    people: &'a [Person<'b>],
    making: &Making,
) -> Vec<Label<'a, 'b>> {
    let date = when::full_date(desk.session.date);
    let mut all: Vec<Label<'a, 'b>> = Vec::new();
    for (i, person) in people.iter().enumerate() {
        let mine = |card: bool| {
            let of = making
                .all
                .iter()
                .filter(move |w| w.person == i && !w.is_spare);
            of.filter(move |w| w.is_card == card)
        };
        let mut lines = Vec::new();
        lines.extend(numbers("Tiles", mine(false)));
        lines.extend(numbers("Cards", mine(true)));
        lines.extend(pouch_words(desk, mine(false)));
        lines.push(format!("Plan {} · {date}", person.code));
        all.push(Label {
            person: Some(person),
            title: capital(&person.mark_words),
            lines,
        });
    }
    let spares = making.all.iter().filter(|w| w.is_spare).count();
    if spares > 0 {
        all.push(Label {
            person: None,
            title: "Shared box".to_owned(),
            lines: vec![counted(spares, "spare", "spares"), date],
        });
    }
    all
}

/// "Tiles 1 to 18, 18 in all".
fn numbers<'a>(what: &str, of: impl Iterator<Item = &'a Wanted>) -> Option<String> {
    let numbers: Vec<usize> = of.map(|w| w.number).collect();
    let (first, last) = (numbers.first()?, numbers.last()?);
    Some(match numbers.len() {
        1 => format!("{what}: {first}"),
        n => format!("{what} {first} to {last}, {n} in all"),
    })
}

/// How wide the opening of the pouch must be for the largest finished tile.
fn pouch_words<'a>(desk: &Desk<'_>, of: impl Iterator<Item = &'a Wanted>) -> Option<String> {
    let rules = &desk.club.rules;
    let film = rules.film();
    let sizes = of.filter(|w| !matches!(w.what, super::super::making::What::Several(..)));
    let largest = sizes.map(|w| seal::finished(w.size, film));
    let largest = largest.max_by_key(|s| (s.w, s.h))?;
    let pouch = seal::pouch(largest);
    let film = match rules.craft.work {
        Work::CutLaminateCut => "finished tiles",
        Work::OneSheet => "tiles",
    };
    Some(format!(
        "For {film}: opening {:.0} mm, depth {:.0} mm or more",
        pouch.w.to_mm().ceil(),
        pouch.h.to_mm().ceil()
    ))
}

fn draw(label: &Label<'_, '_>, at: Rect, page: &mut PageWriter<Everyone>) {
    page.artifact(vec![rounded(
        at,
        Length::mm(3.0),
        Look::line(ink::RULE, ink::HAIRLINE),
    )]);
    let inside = at.shrink(Length::mm(4.0));
    let side = Length::mm(22.0);
    let mut x = inside.x;
    if let Some(person) = label.person {
        let plate = Rect::new(
            Point::new(x, inside.center().y - side / 2),
            Size::square(side),
        );
        draw_mark(page, plate, &person.mark, &person.mark_words);
        x = plate.right() + Length::mm(4.0);
    }
    let room = inside.right() - x;
    let title = Words::line(&label.title, &Style::bold(Length::pt(16.0)), room);
    let lines: Vec<Words> = label
        .lines
        .iter()
        .map(|l| Words::wrapped(l, &Style::regular(Length::pt(9.0)), room, 1.2, 2))
        .collect();
    let gap = Length::mm(1.0);
    let all = lines.iter().map(|l| l.height() + gap).sum::<Length>() + title.height() + gap;
    let mut y = inside.center().y - all / 2;
    page.heading(2, title.left(Point::new(x, y), ink::INK));
    y += title.height() + gap * 2;
    for words in lines {
        page.paragraph(None, words.left(Point::new(x, y), ink::SOFT));
        y += words.height() + gap;
    }
}
