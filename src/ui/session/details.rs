//! What is said about a session besides its timetable: title, date, start, place; new and copied
//! sessions.

use egui::{Id, Rect, Ui, pos2, vec2};
use jiff::civil::{Date, time};

use crate::model::edit::{Edit, SessionDetails};
use crate::model::session::Session;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::block;

fn of(s: &Session) -> SessionDetails {
    SessionDetails {
        title: s.title.clone(),
        date: s.date,
        start: s.start,
        place: s.place.clone(),
    }
}

/// Width of all that stands in a row with the place.
const BESIDE_PLACE: f32 = 976.0;

/// What a new session begins with.
fn fresh(today: Date) -> SessionDetails {
    SessionDetails {
        title: "New session".into(),
        date: today,
        start: time(10, 0, 0, 0),
        place: String::new(),
    }
}

/// Shows title, date, start and place side by side.
pub fn fields(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let now = of(session);
    let mut next = None;
    let id = |what: &str| Id::unique(("session-field", session.id, what));
    block(ui, "Title", 230.0, theme::CONTROL, |ui| {
        let width = ui.available_width();
        if let Some(title) =
            Field::new(id("title"), "Title", &now.title).show(ui, desk.drafts, width)
        {
            next = Some(SessionDetails {
                title,
                ..now.clone()
            });
        }
    });
    if let Some(date) = block(ui, &dates::long(now.date), 372.0, theme::CONTROL, |ui| {
        date_field(ui, desk, id("date"), now.date)
    }) {
        next = Some(SessionDetails {
            date,
            ..now.clone()
        });
    }
    block(ui, "Starts at", 92.0, theme::CONTROL, |ui| {
        let shown = dates::clock(now.start);
        let typed = Field::new(id("start"), "Starts at", &shown).show(ui, desk.drafts, 92.0);
        if let Some(start) = typed.and_then(|w| dates::read_time(&w)) {
            next = Some(SessionDetails {
                start,
                ..now.clone()
            });
        }
    });
    // So that what stands beside it has room in the same row.
    let place = (ui.max_rect().width() - BESIDE_PLACE).clamp(220.0, 400.0);
    block(ui, "Place", place, theme::CONTROL, |ui| {
        let width = ui.available_width();
        let field = Field::new(id("place"), "Place", &now.place).hint("Where it is");
        if let Some(place) = field.show(ui, desk.drafts, width) {
            next = Some(SessionDetails {
                place,
                ..now.clone()
            });
        }
    });
    if let Some(details) = next.filter(|n| *n != now) {
        desk.edit(Edit::ChangeSession(session.id, details));
    }
}

/// A date to type, with steps of a day and a week on both sides.
fn date_field(ui: &mut Ui, desk: &mut Desk<'_>, id: Id, date: Date) -> Option<Date> {
    let (_, rect) = ui.allocate_space(vec2(372.0_f32.min(ui.available_width()), theme::CONTROL));
    let side = theme::CONTROL + 8.0;
    let cell = |i: f32| {
        Rect::from_min_size(
            pos2(rect.left() + i * (side + 4.0), rect.top()),
            vec2(side, theme::CONTROL),
        )
    };
    let field = Rect::from_min_max(
        pos2(cell(1.0).right() + 4.0, rect.top()),
        pos2(rect.right() - 2.0 * (side + 4.0), rect.bottom()),
    );
    let mut next = None;
    let steps = [
        (cell(0.0), -7, "A week earlier", "−7"),
        (cell(1.0), -1, "A day earlier", "−1"),
        (
            cell(0.0).translate(vec2(field.right() + 4.0 - rect.left(), 0.0)),
            1,
            "A day later",
            "+1",
        ),
        (
            cell(1.0).translate(vec2(field.right() + 4.0 - rect.left(), 0.0)),
            7,
            "A week later",
            "+7",
        ),
    ];
    for (place, days, name, short) in steps {
        let b = Button::new((id, days), short).tip(name);
        let r = b.show_at(ui, place);
        let r = r.accessible_name(name);
        if r.clicked() {
            next = Some(dates::days_on(date, days));
        }
    }
    let shown = dates::typed(date);
    let typed = Field::new(id, "Date", &shown)
        .centred()
        .show_at(ui, desk.drafts, field);
    typed.and_then(|w| dates::read_date(&w)).or(next)
}

/// Buttons for a new session, a copy a week on, and taking one away.
pub fn buttons(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let signs = rect.width() < 520.0;
    let mut right = rect.right();
    let mut button = |ui: &mut Ui, label: &str, tip: &str, icon: Icon, enabled: bool| {
        let b = Button::new(("session-do", label), label)
            .tip(tip)
            .enabled(enabled);
        let b = if signs {
            b.icon_only(icon)
        } else {
            b.icon(icon)
        };
        let b = if icon == Icon::Bin {
            b.weight(Weight::Quiet)
        } else {
            b
        };
        let width = b.needs(ui);
        let place =
            Rect::from_min_size(pos2(right - width, rect.top()), vec2(width, theme::CONTROL));
        right = place.left() - 8.0;
        b.show_at(ui, place).clicked()
    };
    let session = desk.view.session;
    let there = session.is_some();
    let bin = button(
        ui,
        "Remove",
        "This session goes; Undo brings it back",
        Icon::Bin,
        there,
    );
    let new = button(ui, "New session", "An empty timetable", Icon::Plus, true);
    let copy = button(
        ui,
        "Copy for next week",
        "The same timetable a week later, without hand changes",
        Icon::Sheet,
        there,
    );
    match session {
        Some(s) if bin => desk.edit(Edit::RemoveSession(s.id)),
        Some(s) if copy => {
            let details = SessionDetails {
                date: dates::days_on(s.date, 7),
                ..of(s)
            };
            desk.edit(Edit::CopySession(s.id, details));
        }
        _ if new => desk.edit(Edit::AddSession(fresh(desk.view.today))),
        _ => {}
    }
}
