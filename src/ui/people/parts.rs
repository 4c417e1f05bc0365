//! What the pages of a participant are made of: rows that fold open, fields that grow with their
//! words, chips that can be taken away, dates that may be left empty.

use egui::{Align2, CornerRadius, CursorIcon, Id, Rect, Role, Sense, Stroke, StrokeKind, Ui};
use egui::{Vec2, WidgetInfo, pos2, vec2};
use jiff::civil::Date;

use super::{PeopleState, readers};
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::ActivityId;
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::plate;
use crate::ui::widgets::choose::select_at;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::{focus_ring, words};

/// Most lines a field shows before it scrolls.
const MOST_LINES: usize = 10;

/// A row that folds open.
pub struct Fold<'a> {
    /// Its id.
    pub id: Id,
    /// What is in it.
    pub title: &'a str,
    /// How many are filled, of how many.
    pub filled: (usize, usize),
    /// What is in it, in one line, while it is closed.
    pub gist: &'a str,
    /// Whether it is open.
    pub open: bool,
}

impl Fold<'_> {
    /// Shows the row; says whether it was pressed.
    pub fn show(&self, ui: &mut Ui) -> bool {
        let t = theme::of(ui.ctx());
        let told = !self.gist.is_empty() && !self.open;
        let height = if told { 60.0 } else { theme::CONTROL };
        let (_, rect) = ui.allocate_space(vec2(ui.available_width(), height));
        let r = ui.interact(rect, self.id, Sense::click());
        let (n, all) = self.filled;
        let state = if self.open { "open" } else { "closed" };
        let name = format!("{}, {n} of {all} filled, {state}", self.title);
        r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
        let p = ui.painter();
        if r.hovered() {
            let corner = CornerRadius::same(theme::R_CONTROL);
            p.rect(rect, corner, t.col.panel, t.edge(), StrokeKind::Inside);
        }
        let line = Stroke::new(t.line() * 0.7, t.col.rule);
        p.hline(rect.x_range(), rect.top() - 2.0, line);
        let icon = if self.open { Icon::Down } else { Icon::Right };
        let first = rect.with_max_y(rect.top() + if told { 36.0 } else { height });
        let sign = icons::square(pos2(rect.left() + 18.0, first.center().y), 18.0);
        icons::paint(p, icon, sign, t.col.ink);
        let many = if n == 0 {
            "nothing yet".to_owned()
        } else {
            format!("{n} of {all}")
        };
        let font = if n == 0 {
            theme::regular(14.5)
        } else {
            theme::bold(15.0)
        };
        let right = rect.right() - 12.0;
        let ink = if n == 0 { t.col.soft } else { t.col.ink };
        let count = first.with_max_x(right);
        let took = words::line(p, count, Align2::RIGHT_CENTER, &many, font, ink);
        let room = Rect::from_min_max(
            pos2(rect.left() + 40.0, first.top()),
            pos2(took.left() - 12.0, first.bottom()),
        );
        let title = theme::bold(17.0);
        words::line(p, room, Align2::LEFT_CENTER, self.title, title, t.col.ink);
        if told {
            let below = Rect::from_min_max(
                pos2(room.left(), first.bottom() - 4.0),
                pos2(right, rect.bottom() - 4.0),
            );
            let font = theme::regular(15.0);
            words::line(p, below, Align2::LEFT_CENTER, self.gist, font, t.col.soft);
        }
        focus_ring(ui, &r, rect, theme::R_CONTROL);
        r.on_hover_cursor(CursorIcon::PointingHand).clicked()
    }
}

/// A field of several lines that is as high as its words, and grows while they are typed.
pub fn long_field(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    (id, label): (Id, &str),
    now: &str,
    (least, width): (usize, f32),
) -> Option<String> {
    let shown = desk.drafts.typed(id).unwrap_or(now);
    let p = ui.painter();
    let soft = theme::of(ui.ctx()).col.soft;
    let laid = words::lay(p, shown, theme::regular(16.0), soft, width - 28.0, 400);
    // The last line of what is typed may be an empty one.
    let lines = laid.rows.len() + usize::from(shown.ends_with('\n'));
    let rows = lines.clamp(least.max(2), MOST_LINES);
    Field::new(id, label, now)
        .rows(rows)
        .show(ui, desk.drafts, width)
}

/// A picture with its words and a cross that takes it away; says whether that was pressed.
pub fn chip(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    id: Id,
    (content, figure): (&Content, Eyes),
    away: &str,
) -> bool {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let font = theme::bold(16.0);
    let words = words::lay(p, &content.label, font, t.col.ink, 220.0, 1);
    let wide = 60.0 + words.size().x + 10.0 + theme::CONTROL;
    let (_, rect) = ui.allocate_space(vec2(wide, 56.0));
    let p = ui.painter();
    let corner = CornerRadius::same(theme::R_CARD);
    p.rect(rect, corner, t.col.panel, t.edge(), StrokeKind::Inside);
    let mid = pos2(rect.left() + 30.0, rect.center().y);
    let picture = Rect::from_center_size(mid, Vec2::splat(44.0));
    plate(p, &t, picture);
    desk.pictures
        .symbol(p, picture.shrink(3.0), &content.symbol, figure);
    let at = pos2(
        picture.right() + 10.0,
        rect.center().y - words.size().y / 2.0,
    );
    p.galley(at, words, t.col.ink);
    let cross = Rect::from_center_size(
        pos2(rect.right() - theme::CONTROL / 2.0 - 2.0, rect.center().y),
        Vec2::splat(theme::CONTROL),
    );
    let b = Button::new((id, "away"), away).icon_only(Icon::Cross);
    b.weight(Weight::Quiet).show_at(ui, cross).clicked()
}

/// A list to add one from; gives which.
pub fn add_one(ui: &mut Ui, id: Id, name: &str, options: &[String], width: f32) -> Option<usize> {
    let (_, rect) = ui.allocate_space(vec2(width.min(ui.max_rect().width()), theme::CONTROL));
    select_at(ui, id, rect, name, options, None)
}

/// A list of the club's activities to add one from, without those that are `taken`.
pub fn add_activity(
    ui: &mut Ui,
    id: Id,
    name: &str,
    (club, width): (&Club, f32),
    taken: impl Fn(ActivityId) -> bool,
) -> Option<ActivityId> {
    let free: Vec<_> = club.activities.iter().filter(|a| !taken(a.id)).collect();
    let names: Vec<String> = free.iter().map(|a| a.label.clone()).collect();
    add_one(ui, id, name, &names, width).map(|i| free[i].id)
}

/// A chip for each of some activities; gives the one that is taken away. `what` makes their ids,
/// `away` is said of the cross before the activity's words.
pub fn activity_chips<'a>(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    ids: impl IntoIterator<Item = &'a ActivityId>,
    (what, away): (&str, &str),
) -> Option<ActivityId> {
    let mut gone = None;
    for id in ids {
        let Some(activity) = desk.view.club.activity(*id) else {
            continue;
        };
        let name = format!("{away}: {}", activity.label);
        let at = Id::unique((what, person.id, *id));
        let shows = Content::of(activity);
        if chip(ui, desk, at, (&shows, Eyes::of(person)), &name) {
            gone = Some(*id);
        }
    }
    gone
}

/// A day that can be typed or left empty. Under it stands the day in words, or that what was typed
/// is none. `due` says that it is a day something has to be done by.
pub fn day(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    (id, name, class): (Id, &str, Class),
    due: bool,
    now: &mut Option<Date>,
) {
    let width = 308.0_f32.min(ui.max_rect().width());
    ui.vertical(|ui| {
        ui.set_width(width);
        ui.spacing_mut().item_spacing.y = 2.0;
        readers::name(ui, name, class, width);
        day_field(ui, desk, state, (id, name, width), now);
        let below = match *now {
            _ if no_date(state, id).is_some() => return,
            Some(date) if due && date < desk.view.today => {
                format!("{}: that day has passed", dates::long(date))
            }
            Some(date) => dates::long(date),
            None => String::new(),
        };
        words::soft(ui, &below);
    });
}

/// The field of a day alone, and under it that what was typed is none, while it is none.
pub fn day_field(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    (id, name, width): (Id, &str, f32),
    now: &mut Option<Date>,
) {
    let shown = now.map_or_else(String::new, dates::typed);
    let f = Field::new(id, name, &shown).hint("day, month, year");
    if let Some(typed) = f.show(ui, desk.drafts, width) {
        let read = dates::read_date(&typed);
        let empty = typed.trim().is_empty();
        state.no_date = (read.is_none() && !empty).then_some((id, typed));
        if read.is_some() || empty {
            *now = read;
        }
    }
    if let Some(typed) = no_date(state, id) {
        let says = format!("“{typed}” is no date. Type it like 12.6.2027.");
        words::soft(ui, &says);
    }
}

/// What was typed here and is no date.
pub fn no_date(state: &PeopleState, id: Id) -> Option<&str> {
    let typed = state.no_date.as_ref().filter(|(at, _)| *at == id);
    typed.map(|(_, typed)| typed.as_str())
}
