//! The club's own pictures, one below the other: what each is called, whose it is, who may see it, who
//! made it and under what licence. For the coordinator; a picture that may be seen nowhere is not here
//! either, only what is said about it.

use super::desk::Desk;
use super::flow::{Flow, Piece};
use super::forms;
use super::frame::{self, picture};
use super::ink;
use super::words::{TIGHT, Words};
use super::writer::{Coordinator, PageWriter};
use super::{Sheet, SheetKind, Turn};
use crate::model::people::Figure;
use crate::model::picture::Picture;
use crate::model::profile::PhotoConsent;
use crate::page::{Page, Role};
use crate::story::when;
use crate::symbols::lexicon::lexicon;
use crate::symbols::own;
use crate::symbols::variant::Variant;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

const SIDE: Length = Length::um(26_000);
const ROW: Length = Length::um(31_000);
const NAME_PT: f64 = 14.0;
const PT: f64 = 11.0;

/// The sheet of the club.
pub(super) fn lay_out(desk: &mut Desk<'_>) -> Sheet {
    Sheet {
        kind: SheetKind::PictureList,
        participant: None,
        file_stem: desk.file_stem(SheetKind::PictureList, None),
        title: "Own pictures".to_owned(),
        pages: pages(desk),
    }
}

fn pages(desk: &Desk<'_>) -> Vec<Page> {
    if desk.club.pictures.is_empty() {
        return Vec::new();
    }
    let size = desk.page_size(Turn::Portrait);
    let room = frame::content(size);
    let mut flow: Flow<Coordinator> = Flow::new();
    for p in &desk.club.pictures {
        let row = row(desk, &flow, p, room);
        flow.push(row);
    }
    let date = when::full_date(desk.session.date);
    let begin = |page: usize, pages: usize| {
        let what = format!("Own pictures, page {page} of {pages}");
        let below = "Whose they are, who may see them, who made them";
        frame::begin_session(
            size,
            ("Own pictures", below),
            &desk.foot(what, date.clone()),
        )
    };
    let pages = flow.into_pages(room, begin).into_iter();
    pages.map(PageWriter::finish).collect()
}

fn row(desk: &Desk<'_>, flow: &Flow<Coordinator>, p: &Picture, room: Rect) -> Piece {
    let at = Rect::new(Point::new(room.x, Length::ZERO), Size::square(SIDE));
    let x = at.right() + Length::mm(6.0);
    let wide = room.right() - x;
    let bold = Style::bold(Length::pt(NAME_PT));
    let name = Words::line(&p.name, &bold, wide);
    let plain = Style::regular(Length::pt(PT));
    let wish = flow.may_show(&p.wish).map_or("", |w| w.trim());
    let lines = [whose(desk, p), seen(p), from(p), wish.to_owned()];
    let said = lines.iter().filter(|l| !l.is_empty());
    let mut items = name.left(Point::new(x, Length::ZERO), ink::INK);
    let mut y = name.height() + Length::mm(0.8);
    for line in said {
        let words = Words::wrapped(line, &plain, wide, TIGHT, 2);
        items.extend(words.left(Point::new(x, y), ink::SOFT));
        y += words.height();
    }
    let piece = Piece::new(ROW.max(y + Length::mm(3.0)));
    let piece = match p.consent {
        PhotoConsent::None => piece.drawn(forms::photo_frame(at, false)),
        _ => {
            let variant = Variant::new(Figure::default(), desk.ink());
            let drawn = own::of_picture(p, variant);
            let alt = p.name.clone();
            piece.with(Role::Figure { alt }, None, vec![picture(&drawn, at)])
        }
    };
    piece.words(items)
}

/// "Of Noor, in place of Dry".
fn whose(desk: &Desk<'_>, p: &Picture) -> String {
    let names = lexicon(&desk.club.rules.words);
    let owner = p.whose.and_then(|id| desk.club.participant(id));
    let whose = owner.map_or_else(|| "The club’s".to_owned(), |o| format!("Of {}", o.name));
    let place = p.stands_for.as_ref();
    let place = place.map_or_else(String::new, |s| format!(", in place of {}", names.label(s)));
    let person = if p.person { "; a person is on it" } else { "" };
    format!("{whose}{place}{person}")
}

fn seen(p: &Picture) -> String {
    let seen = match p.consent {
        PhotoConsent::None => "May be seen nowhere",
        PhotoConsent::OwnTiles => "May be seen on own tiles only",
        PhotoConsent::Group => "May be seen within the group",
        PhotoConsent::ClubMedia => "May be seen outside the club too",
    };
    match p.said_on {
        Some(day) => format!("{seen}, said on {}", when::full_date(day)),
        None => seen.to_owned(),
    }
}

fn from(p: &Picture) -> String {
    let parts = [p.source.trim(), p.licence.trim()];
    let parts: Vec<&str> = parts.into_iter().filter(|t| !t.is_empty()).collect();
    parts.join(" · ")
}
