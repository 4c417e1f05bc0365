//! The tiles that are in stock: by owner, then the shared box.

use egui::{Align2, Id, Rect, Ui, Vec2, pos2, vec2};

use super::stock_row::{self, Row};
use crate::model::club::Club;
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::model::stock::Owned;
use crate::ui::desk::Desk;
use crate::ui::find::Find;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::form::scroll;
use crate::ui::widgets::words;

/// Height of an owner's line and of a kind of tile.
const OWNER: f32 = 56.0;
const KIND: f32 = 64.0;

/// What a line of the list shows.
enum Line<'a> {
    /// Whose tiles follow, how many kinds and how many tiles.
    Owner(Option<&'a Participant>, usize, u32),
    /// A kind, with its place among all that are shown.
    Kind(&'a Owned, Option<&'a Participant>, usize),
}

/// Shows the pane in a place, beside and below the tabs.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, find: &mut Find, (rect, tabs): (Rect, Rect)) {
    let stock = &desk.view.club.stock;
    let below = rect.with_min_y(tabs.bottom() + 10.0);
    if stock.is_empty() {
        return nothing(ui, below);
    }
    let beside = Rect::from_min_max(pos2(tabs.right() + 16.0, tabs.top()), tabs.max)
        .with_max_x(rect.right().min(tabs.right() + 376.0));
    let field = (Id::unique("find-stock"), "Find words or a name");
    find.above_for(ui, field, beside, stock.len());
    let lines = lines(desk.view.club, &find.typed);
    let first = lines.iter().find_map(|(_, line)| match line {
        Line::Kind(owned, ..) => Some(stock_row::first(&owned.key)),
        Line::Owner(..) => None,
    });
    let totals = below.with_max_y(below.top() + 24.0);
    let says = match first {
        None => "No tile in stock has these words.".to_owned(),
        Some(_) => in_all(stock),
    };
    let (soft, font) = (theme::of(ui.ctx()).col.soft, theme::regular(15.0));
    words::line(ui.painter(), totals, Align2::LEFT_CENTER, &says, font, soft);
    let place = below.with_min_y(totals.bottom() + 6.0);
    if let Some(first) = first {
        desk.regions.add(place, first);
        if std::mem::take(&mut find.go_on) {
            ui.memory_mut(|m| m.request_focus(first));
        }
    }
    list(ui, desk, place, &lines);
}

/// The lines in sight, with a row more on either side for the Tab key.
fn list(ui: &mut Ui, desk: &mut Desk<'_>, place: Rect, lines: &[(f32, Line<'_>)]) {
    let kinds = lines.iter().filter(|(_, l)| matches!(l, Line::Kind(..)));
    let shown = kinds.count();
    scroll(ui, "stock", place, |ui| {
        let height = lines.last().map_or(0.0, |(top, l)| top + l.height());
        let (_, all) = ui.allocate_space(vec2(ui.available_width(), height + 8.0));
        let sight = ui.clip_rect().expand2(vec2(0.0, KIND));
        for (top, line) in lines {
            let at = pos2(all.left(), all.top() + top);
            let place = Rect::from_min_size(at, vec2(all.width(), line.height()));
            if !sight.intersects(place) {
                continue;
            }
            match line {
                Line::Owner(who, kinds, tiles) => owner(ui, desk, place, *who, (*kinds, *tiles)),
                Line::Kind(owned, who, n) => {
                    let row = Row {
                        owned,
                        owner: *who,
                        place: (*n, shown),
                    };
                    row.show(ui, desk, place.shrink2(vec2(4.0, 3.0)));
                }
            }
        }
    });
}

impl Line<'_> {
    const fn height(&self) -> f32 {
        match self {
            Self::Owner(..) => OWNER,
            Self::Kind(..) => KIND,
        }
    }
}

/// All lines that fit what was typed, each with its distance from the top.
fn lines<'a>(club: &'a Club, typed: &str) -> Vec<(f32, Line<'a>)> {
    let mut all = Vec::new();
    let (mut top, mut n) = (0.0, 0);
    let people = club.participants.iter().map(|p| Some(p.as_ref()));
    for who in people.chain([None]) {
        let kinds: Vec<&Owned> = of(club, who.map(|p: &Participant| p.id))
            .iter()
            .filter(|o| fits(o, who, typed))
            .collect();
        if kinds.is_empty() {
            continue;
        }
        let tiles = kinds.iter().map(|o| o.count).sum();
        all.push((top, Line::Owner(who, kinds.len(), tiles)));
        top += OWNER;
        for owned in kinds {
            n += 1;
            all.push((top, Line::Kind(owned, who, n)));
            top += KIND;
        }
    }
    all
}

/// What someone owns: the stock is in the order of its owners.
fn of(club: &Club, who: Option<ParticipantId>) -> &[Owned] {
    let from = club.stock.partition_point(|o| o.key.whose < who);
    let to = club.stock.partition_point(|o| o.key.whose <= who);
    &club.stock[from..to]
}

/// Whether every word that was typed is on the tile or in the owner's name.
fn fits(owned: &Owned, who: Option<&Participant>, typed: &str) -> bool {
    let on = owned.key.face.label.to_lowercase();
    let name = who.map_or_else(|| SHARED.to_lowercase(), |p| p.name.to_lowercase());
    let typed = typed.to_lowercase();
    let mut words = typed.split_whitespace();
    words.all(|w| on.contains(w) || name.contains(w))
}

/// The owner of what is nobody's.
pub const SHARED: &str = "Shared box";

/// How much there is in all.
fn in_all(stock: &[Owned]) -> String {
    let sum = |f: fn(&Owned) -> u32| stock.iter().map(|o| u64::from(f(o))).sum::<u64>();
    let (tiles, lost, worn) = (sum(|o| o.count), sum(|o| o.lost), sum(|o| o.worn));
    format!(
        "{} of {}; so far {lost} lost, {worn} worn out",
        many(tiles, "tile", "tiles"),
        many(stock.len() as u64, "kind", "kinds"),
    )
}

/// A number with the word for one or for more.
fn many(n: u64, one: &str, more: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { more })
}

fn nothing(ui: &mut Ui, rect: Rect) {
    let mut child = ui.new_child(egui::UiBuilder::new().max_rect(rect));
    child.set_max_width(rect.width().min(620.0));
    child.add_space(12.0);
    words::heading(&mut child, "No tiles are in stock yet", 20.0);
    words::body(
        &mut child,
        "Print tiles at Sheets. When they are cut and laminated, press “These are made” there: then \
         they stand here, and with “Only what is missing” they are not printed again.",
    );
}

/// Mark and name, and how much is theirs.
fn owner(
    ui: &Ui,
    desk: &mut Desk<'_>,
    place: Rect,
    who: Option<&Participant>,
    (kinds, tiles): (usize, u32),
) {
    let (t, p) = (theme::of(ui.ctx()), ui.painter());
    let rect = place.with_min_y(place.top() + 8.0);
    let mut left = rect.left() + 4.0;
    if let Some(person) = who {
        let mid = pos2(rect.left() + 26.0, rect.center().y);
        let mark = Rect::from_center_size(mid, Vec2::splat(40.0));
        plate(p, &t, mark);
        desk.pictures.mark(p, mark.shrink(7.0), &person.mark);
        left = mark.right() + 10.0;
    }
    let name = who.map_or(SHARED, |p| p.name.as_str());
    let room = Rect::from_min_max(pos2(left, rect.top()), rect.max - vec2(8.0, 0.0));
    let took = words::line(
        p,
        room,
        Align2::LEFT_CENTER,
        name,
        theme::bold(18.0),
        t.col.ink,
    );
    let says = format!(
        "{} of {}",
        many(u64::from(tiles), "tile", "tiles"),
        many(kinds as u64, "kind", "kinds")
    );
    let r = ui.interact(
        rect,
        Id::unique(("stock-owner", who.map(|p| p.id))),
        egui::Sense::hover(),
    );
    let all = format!("{name}: {says}");
    r.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Label, true, &all));
    let rest = room.with_min_x(took.right() + 14.0);
    words::line(
        p,
        rest,
        Align2::LEFT_CENTER,
        &says,
        theme::regular(15.0),
        t.col.soft,
    );
}
