//! Where a helper is through the day: with someone in the water, leading, watching, or not there.

use egui::{CornerRadius, Painter, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use super::Line;
use super::columns::Column;
use super::people::all_day;
use super::rows::activity;
use crate::model::people::Helper;
use crate::plan::clock::Moment;
use crate::plan::water::{InWater, Stretch, Together};
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::words;

/// Where someone is through the day.
pub fn show(ui: &Ui, desk: &mut Desk<'_>, line: &Line<'_>, row: Rect, helper: &Helper) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let y = row.center().y;
    let x = line.left() - 2.0..=line.left() + line.wide();
    p.hline(x, y, Stroke::new(1.5, t.col.rule));
    let jobs: Vec<Job<'_>> = line.columns.iter().map(|c| job(line, c, helper)).collect();
    if says(line, helper) {
        in_lane(p, line, row, &all_day(line, helper).unwrap_or_default());
    }
    for (i, (c, job)) in line.columns.iter().zip(&jobs).enumerate() {
        let rect = line.cell(c, row);
        match job {
            Job::Free => {}
            Job::With(own) => with(p, desk, line, rect, own),
            Job::Says(says) => plain(p, rect, says),
            // One band for as long as they are not there.
            Job::Absent if i > 0 && matches!(jobs[i - 1], Job::Absent) => {}
            Job::Absent => {
                let run = jobs[i..].iter().take_while(|j| matches!(j, Job::Absent));
                let last = &line.columns[i + run.count() - 1];
                absent(p, rect.union(line.cell(last, row)));
            }
        }
    }
}

/// What someone does in a stretch of time.
enum Job<'a> {
    /// Nothing that is entered.
    Free,
    /// With someone in the water.
    With(&'a Together),
    /// Something else, in words.
    Says(String),
    /// Not there.
    Absent,
}

fn job<'a>(line: &Line<'a>, c: &Column, helper: &Helper) -> Job<'a> {
    let moment = line.water.moments.iter().find(|m| m.stretch == c.stretch);
    let own = moment.and_then(|m| m.visits.iter().find(|v| v.people.contains(&helper.id)));
    if let Some(own) = own {
        return Job::With(own);
    }
    if !is_there(line, helper, &c.stretch) {
        return Job::Absent;
    }
    let rows = line.session.timetable.iter();
    let mut led = rows.filter(|s| c.stretch.rows.contains(&s.id) && s.leads.contains(&helper.id));
    if led.next().is_some() {
        return Job::Says("leads".to_owned());
    }
    let watching = moment.and_then(|m| watching(line, m, helper));
    watching.map_or(Job::Free, Job::Says)
}

/// Whether what keeps someone out of the water is said along their row: where it is free.
pub fn says(line: &Line<'_>, helper: &Helper) -> bool {
    let free = |c: &Column| matches!(job(line, c, helper), Job::Free);
    let run = line.columns.iter().take_while(|c| free(c));
    let room: f32 = run.map(|c| c.width).sum();
    room > 330.0 && all_day(line, helper).is_some()
}

/// Words on the row itself.
fn in_lane(p: &Painter, line: &Line<'_>, row: Rect, says: &str) {
    let t = theme::of(p.ctx());
    let g = words::lay(p, says, theme::regular(15.0), t.col.ink, 320.0, 2);
    let at = pos2(line.left() + 6.0, row.center().y - g.size().y / 2.0);
    let under = Rect::from_min_size(at, g.size()).expand2(vec2(6.0, 2.0));
    let under = under.with_min_x(line.left() - 4.0);
    p.rect_filled(under, 0, t.col.ground);
    p.galley(at, g, t.col.ink);
}

/// Whether someone is there all through a stretch of time.
fn is_there(line: &Line<'_>, helper: &Helper, stretch: &Stretch) -> bool {
    let session = line.session;
    if session.helpers_away.contains(&helper.id) {
        return false;
    }
    let hours = session
        .today
        .here
        .get(&helper.id)
        .copied()
        .unwrap_or_default();
    let late = hours.from.is_some_and(|f| Moment::at(f) > stretch.from);
    let early = hours.to.is_some_and(|t| Moment::at(t) < stretch.to);
    !(late || early)
}

/// Whom someone watches at a moment, in words.
fn watching(line: &Line<'_>, moment: &InWater, helper: &Helper) -> Option<String> {
    let named = line.session.today.watched_by.iter();
    let in_water = |who| moment.visits.iter().any(|v| v.who == who);
    let mut named = named.filter(|(who, by)| **by == helper.id && in_water(**who));
    if let Some((who, _)) = named.next() {
        let name = line.club.participant(*who).map_or("", |p| p.name.as_str());
        return Some(format!("watches {name}"));
    }
    moment
        .watchers
        .contains(&helper.id)
        .then(|| "watches".to_owned())
}

/// With someone in the water: their mark and name on a card.
fn with(p: &Painter, desk: &mut Desk<'_>, line: &Line<'_>, rect: Rect, own: &Together) {
    let t = theme::of(p.ctx());
    let paper = tile(p, &t, rect, Lie::Flat).shrink2(vec2(3.0, 1.0));
    let Some(person) = line.club.participant(own.who) else {
        return;
    };
    let mark = Rect::from_min_size(
        pos2(paper.left(), paper.center().y - 13.0),
        vec2(26.0, 26.0),
    );
    desk.pictures.mark(p, mark.shrink(2.0), &person.mark);
    let text = paper.with_min_x(mark.right() + 4.0);
    let wide = p.layout_no_wrap(person.name.clone(), theme::bold(15.0), t.col.card_ink);
    let name = &person.name;
    let rows = if activity(line, own).is_empty() || wide.size().x > text.width() {
        2
    } else {
        1
    };
    words::label(p, text, name, &[15.0, 14.0, 13.0], rows, t.col.card_ink);
}

/// Something else to do: words in a frame.
fn plain(p: &Painter, rect: Rect, says: &str) {
    let t = theme::of(p.ctx());
    let rect = rect.shrink2(vec2(0.0, 5.0));
    let corner = CornerRadius::same(theme::R_CONTROL);
    p.rect(rect, corner, t.col.panel, t.edge(), StrokeKind::Inside);
    let text = rect.shrink2(vec2(3.0, 1.0));
    words::label(p, text, says, &[14.0, 13.0], 2, t.col.ink);
}

/// Not there: a dashed hollow, hatched, with words where there is room.
fn absent(p: &Painter, rect: Rect) {
    let t = theme::of(p.ctx());
    let rect = rect.shrink2(vec2(0.0, 9.0));
    p.rect_filled(rect, CornerRadius::same(theme::R_PEG), t.col.down);
    let dash = Stroke::new(t.line(), t.col.down_line);
    icons::dashed_rect(p, rect.shrink(1.0), 8.0, dash, 4.0, 4.0);
    words::label(p, rect, "not there", &[13.5, 12.5], 2, t.col.soft);
}
