//! The club's songs and chants in large print, for families: a title with the picture of the
//! activity in which it is sung, then verse after verse, flush left, no word ever split at a line's
//! end. A verse stays on one page, and so does a whole song, where a page can hold it.

use super::desk::{Desk, quoted};
use super::flow::{Flow, Piece};
use super::frame::{self, Header, picture};
use super::words::{OPEN, TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{Sheet, SheetKind, Turn, ink, plan_code};
use crate::model::finding::{Severity, Spot};
use crate::model::people::Figure;
use crate::model::song::Song;
use crate::page::{Page, Role};
use crate::story::when;
use crate::text::{Style, missing};
use crate::units::{Length, Point, Rect, Size};

/// Smallest letters: large print by the American Printing House for the Blind. Larger on larger
/// paper, in points for each millimetre of the width.
const SMALLEST_PT: f64 = 18.0;
const LARGEST_PT: f64 = 30.0;
const PT_PER_MM: f64 = 0.125;
/// A title, in letters of the words.
const TITLE: f64 = 1.35;
/// White below a title and a verse, in letters of the words.
const BELOW: f64 = 1.1;
/// Side of the picture beside a title.
const PICTURE: Length = Length::um(24_000);
/// White between two songs.
const BETWEEN: Length = Length::um(12_000);

/// The sheet of the club; without pages when it has no songs.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    let pages = if desk.club.songs.is_empty() {
        Vec::new()
    } else {
        pages(desk)
    };
    Sheet {
        kind: SheetKind::Words,
        participant: None,
        file_stem: desk.file_stem(SheetKind::Words, None),
        title: format!("Words sheet, {}", when::full_date(desk.session.date)),
        pages,
    }
}

fn pages(desk: &mut Desk<'_>) -> Vec<Page> {
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let pt = (room.w.to_mm() * PT_PER_MM).clamp(SMALLEST_PT, LARGEST_PT);
    let letters = Length::pt(pt.round());
    let mut flow = Flow::new();
    for (i, song) in desk.club.songs.iter().enumerate() {
        report(desk, song);
        for piece in pieces(desk, song, letters, room, i > 0) {
            flow.push(piece);
        }
    }
    let date = when::full_date(desk.session.date);
    let code = plan_code::of_songs(desk.club);
    let title = match desk.club.songs.len() {
        1 => "The words we say together",
        _ => "The words we sing and say together",
    };
    let begin = |page: usize, pages: usize| {
        let what = format!("Words sheet, page {page} of {pages}");
        let mut writer: PageWriter<Everyone> = PageWriter::new(size, what.clone());
        let header = Header {
            mark: None,
            mark_words: "",
            title,
            below: desk.club.name.trim(),
        };
        let footer = desk.foot(what, format!("Plan {code} · {date}"));
        frame::draw(&mut writer, size, &header, &footer);
        writer
    };
    let pages = flow.into_pages(room, begin);
    pages.into_iter().map(PageWriter::finish).collect()
}

/// Title and verses of a song, kept together if a page can hold them.
fn pieces(desk: &Desk<'_>, song: &Song, letters: Length, room: Rect, space: bool) -> Vec<Piece> {
    let mut all = vec![title(desk, song, letters, room, space)];
    for verse in song.verses() {
        all.extend(verse_pieces(&verse, letters, room));
    }
    let height: Length = all.iter().map(|p| p.height).sum();
    if height <= room.h {
        let last = all.len() - 1;
        for piece in &mut all[..last] {
            piece.keep_with_next = true;
        }
    }
    all
}

fn title(desk: &Desk<'_>, song: &Song, letters: Length, room: Rect, space: bool) -> Piece {
    let top = if space { BETWEEN } else { Length::ZERO };
    let activity = song.activity.and_then(|id| desk.club.activity(id));
    let x = match activity {
        Some(_) => room.x + PICTURE + Length::mm(6.0),
        None => room.x,
    };
    let style = Style::bold(letters.scale(TITLE));
    let words = Words::wrapped(&song.title, &style, room.right() - x, TIGHT, 3);
    let h = match activity {
        Some(_) => words.height().max(PICTURE),
        None => words.height(),
    };
    let middle = top + h / 2;
    let mut piece = Piece::new(top + h + letters.scale(BELOW)).kept();
    if let Some(a) = activity {
        let corner = Point::new(room.x, middle - PICTURE / 2);
        let at = Rect::new(corner, Size::square(PICTURE));
        let drawn = desk.art_on(&a.symbol, Figure::default());
        let alt = desk.alt(&a.symbol, &a.label);
        piece = piece.with(Role::Figure { alt }, None, vec![picture(&drawn, at)]);
    }
    let items = words.left_of_middle(Point::new(x, middle), ink::INK);
    piece.with(Role::Heading(2), None, items)
}

/// A verse as one piece with white below if a page can hold it; else as much as a page holds.
fn verse_pieces(verse: &[&str], letters: Length, room: Rect) -> Vec<Piece> {
    let style = Style::regular(letters);
    let mut words = Words::wrapped(&verse.join("\n"), &style, room.w, OPEN, usize::MAX);
    let below = letters.scale(BELOW);
    let mut pieces = Vec::new();
    while !words.is_empty() {
        let (now, later) = words.split_at_height(room.h);
        let height = (now.height() + below).min(room.h);
        let items = now.left(Point::new(room.x, Length::ZERO), ink::INK);
        pieces.push(Piece::new(height).words(items));
        words = later;
    }
    pieces
}

fn report(desk: &mut Desk<'_>, song: &Song) {
    let sentence = format!("The song {} has no words yet.", quoted(&song.title));
    if song.verses().is_empty() {
        let hint = "Type them at People, The club, or remove the song.";
        desk.note(Severity::Look, "print.no-words", Spot::Club, sentence, hint);
    }
    let both = format!("{}{}", song.title, song.words);
    desk.note_missing(Spot::Club, &missing(&both));
}
