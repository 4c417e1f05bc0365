//! The pack list: which tiles and things go into whose pouch, with a box to tick for each and totals
//! that agree with what is printed and what is in stock.

use super::{capital, counted, flowing, heading, table_row, tick_box};
use crate::layout::desk::{Desk, Person, quoted};
use crate::layout::flow::{Flow, Piece};
use crate::layout::forms::object_words;
use crate::layout::frame::picture;
use crate::layout::making::{Making, Wanted, What};
use crate::layout::words::Words;
use crate::layout::writer::Everyone;
use crate::layout::{Sheet, SheetKind, Turn, frame, ink, ready};
use crate::model::manner::Form;
use crate::page::Role;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Height of a line with a box.
const LINE: Length = Length::um(6_000);
/// Letters of a line.
const LINE_PT: f64 = 10.5;

/// Something to tick: number, words, and whether it is in stock.
struct Line {
    number: String,
    words: String,
    in_stock: bool,
}

/// The sheet.
pub(in crate::layout) fn lay_out(desk: &Desk<'_>, people: &[Person<'_>], making: &Making) -> Sheet {
    let room = frame::content(desk.page_size(Turn::Portrait));
    let mut flow: Flow<Everyone> = Flow::new();
    let mut totals = Vec::new();
    for (i, person) in people.iter().enumerate() {
        let lines = lines(making, |w| w.person == i && !w.is_spare);
        let things = things(desk, person);
        totals.push((
            person.mark_words.clone(),
            lines.len(),
            in_stock(&lines),
            things.len(),
        ));
        let words = total_words(&lines, things.len());
        let block = (person.mark_words.as_str(), words.as_str());
        push_block(Some(person), block, (&lines, &things), room, &mut flow);
    }
    let spares = lines(making, |w| w.is_spare);
    if !spares.is_empty() {
        let words = total_words(&spares, 0);
        let block = ("Shared box: spares", words.as_str());
        push_block(None, block, (&spares, &[]), room, &mut flow);
        totals.push(("Shared box".to_owned(), spares.len(), in_stock(&spares), 0));
    }
    push_totals(desk, making, &totals, room, &mut flow);
    let below =
        "Tick each one as it goes into the pouch. Count once more on the day, and after it.";
    flowing(desk, people, (SheetKind::PackList, below), flow)
}

fn in_stock(lines: &[Line]) -> usize {
    lines.iter().filter(|l| l.in_stock).count()
}

fn lines(making: &Making, mine: impl Fn(&Wanted) -> bool) -> Vec<Line> {
    let all = making.all.iter().zip(&making.is_in_stock);
    let mine = all.filter(|(w, _)| mine(w));
    mine.map(|(w, in_stock)| line(w, *in_stock)).collect()
}

fn line(wanted: &Wanted, in_stock: bool) -> Line {
    let label = wanted.key.face.label.trim();
    let words = match wanted.what {
        What::Blank => "blank, for a pen".to_owned(),
        What::Several(..) if wanted.is_card => label.to_owned(),
        What::Several(..) => "choice card".to_owned(),
        What::Face(_) if label.is_empty() => "no words".to_owned(),
        What::Face(_) => label.to_owned(),
    };
    Line {
        number: wanted.number.to_string(),
        words,
        in_stock,
    }
}

/// The real things that stand for steps or for what is ready.
fn things(desk: &Desk<'_>, person: &Person<'_>) -> Vec<String> {
    let steps = person.board.steps.iter().filter(|s| s.form == Form::Object);
    let steps = steps.map(|s| (s.thing.clone(), s.label.clone()));
    let all = steps.chain(ready::things(desk, person));
    let mut things: Vec<String> = Vec::new();
    for (thing, label) in all {
        let words = match thing.trim() {
            "" => format!("object for {}", quoted(&label)),
            thing => format!("{} for {}", object_words(thing), quoted(&label)),
        };
        if !things.contains(&words) {
            things.push(words);
        }
    }
    things
}

fn total_words(lines: &[Line], things: usize) -> String {
    let mut words = counted(lines.len(), "tile or card", "tiles and cards");
    if in_stock(lines) > 0 {
        words = format!("{words}, {} of them in stock (s)", in_stock(lines));
    }
    if things > 0 {
        words = format!("{words}; {}", counted(things, "object", "objects"));
    }
    words
}

/// Mark and total of one pouch, then its lines in three columns.
fn push_block(
    person: Option<&Person<'_>>,
    (name, total): (&str, &str),
    (lines, things): (&[Line], &[String]),
    room: Rect,
    flow: &mut Flow<Everyone>,
) {
    flow.push(block_head(person, name, total, room));
    let columns = if room.w > Length::mm(150.0) { 3 } else { 2 };
    let width = room.w / columns as i64;
    let rows = lines.len().div_ceil(columns);
    for row in 0..rows {
        let mut piece = Piece::new(LINE);
        // Down one column, then the next.
        for column in 0..columns {
            if let Some(line) = lines.get(column * rows + row) {
                let x = room.x + width * column as i64;
                piece = with_line(piece, line, x, width);
            }
        }
        if row + 1 < rows.min(2) {
            piece = piece.kept();
        }
        flow.push(piece);
    }
    for thing in things {
        let line = Line {
            number: "–".to_owned(),
            words: thing.clone(),
            in_stock: false,
        };
        flow.push(with_line(Piece::new(LINE), &line, room.x, room.w));
    }
    flow.push(Piece::new(Length::mm(2.0)));
}

fn with_line(piece: Piece, line: &Line, x: Length, width: Length) -> Piece {
    let top = Length::mm(0.4);
    let stock = if line.in_stock { " (s)" } else { "" };
    let number = Words::line(
        &line.number,
        &Style::bold(Length::pt(LINE_PT)),
        Length::mm(7.0),
    );
    let words = format!("{}{stock}", line.words);
    let style = Style::regular(Length::pt(LINE_PT));
    let words = Words::line(&words, &style, width - Length::mm(14.5));
    let items = number.right(Point::new(x + Length::mm(10.6), top), ink::SOFT);
    piece
        .drawn(vec![tick_box(Point::new(x, top))])
        .words(items)
        .words(words.left(Point::new(x + Length::mm(12.4), top), ink::INK))
}

fn block_head(person: Option<&Person<'_>>, name: &str, total: &str, room: Rect) -> Piece {
    let side = Length::mm(9.0);
    let mut x = room.x;
    let mut piece = Piece::new(side + Length::mm(2.0)).kept();
    if let Some(person) = person {
        let at = Rect::new(Point::new(x, Length::ZERO), Size::square(side));
        let alt = format!("Mark: {}", person.mark_words);
        piece = piece.with(Role::Figure { alt }, None, vec![picture(&person.mark, at)]);
        x += side + Length::mm(3.0);
    }
    let title = capital(name);
    let title = Words::line(&title, &Style::bold(Length::pt(13.0)), room.w.scale(0.4));
    let middle = Point::new(x, side / 2);
    let items = title.left_of_middle(middle, ink::INK);
    let x = x + title.width() + Length::mm(4.0);
    let total = Words::line(total, &Style::regular(Length::pt(10.5)), room.right() - x);
    let beside = Point::new(x, side / 2);
    piece
        .with(Role::Heading(2), None, items)
        .words(total.left_of_middle(beside, ink::SOFT))
}

/// All pouches, and that their sum is what is printed and what is in stock.
fn push_totals(
    desk: &Desk<'_>,
    making: &Making,
    totals: &[(String, usize, usize, usize)],
    room: Rect,
    flow: &mut Flow<Everyone>,
) {
    flow.push(heading("All pouches", room));
    let shares = [0.4, 0.2, 0.2, 0.2];
    flow.push(table_row(
        &["Pouch", "Tiles and cards", "In stock", "Objects"],
        &shares,
        room,
        true,
    ));
    let mut sum = (0, 0, 0);
    for (name, tiles, stock, things) in totals {
        sum = (sum.0 + tiles, sum.1 + stock, sum.2 + things);
        let cells = [tiles.to_string(), stock.to_string(), things.to_string()];
        let row = [name.as_str(), &cells[0], &cells[1], &cells[2]];
        flow.push(table_row(&row, &shares, room, false));
    }
    let cells = [sum.0.to_string(), sum.1.to_string(), sum.2.to_string()];
    let row = ["Together", &cells[0], &cells[1], &cells[2]];
    flow.push(table_row(&row, &shares, room, true));
    let printed = making.printed.len();
    let left_out = match making.too_large {
        0 => String::new(),
        n => format!(" {n} too large for {} paper.", desk.request.paper.label()),
    };
    let words = format!(
        "{} in all pouches: {printed} printed now, {} in stock.{left_out}",
        sum.0,
        sum.0 - printed - making.too_large
    );
    flow.push(super::paragraph(&words, room));
}
