//! Along the top: the menu, which session, the five places on the strand with what is open in
//! words, whether all is saved, and the way into the full-screen view.

use egui::{
    Align2, CursorIcon, Id, Popup, Rect, Response, Role, Sense, Ui, WidgetInfo, pos2, vec2,
};

use super::actions::{self, Action, Group};
use super::desk::Desk;
use super::icons::{self, Icon};
use super::strand::{Rope, paint};
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::card::{Lie, tile};
use super::widgets::{focus_ring, words};
use crate::model::finding::{Severity, Spot};
use crate::plan::clock;
use crate::workbench::command::{Command, Place, Theme};
use crate::workbench::next::{Where, next_thing};
use crate::workbench::view::View;

/// What the bar shows of the window's own state.
pub struct Bar<'a> {
    /// No movement.
    pub still: bool,
    /// Things the next-thing key has led to.
    pub led_to: &'a [Where],
}

/// Height of the bar for a window of a size.
pub fn height(window: egui::Vec2) -> f32 {
    if window.y < 560.0 { 60.0 } else { 78.0 }
}

/// Shows the bar.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, bar: &Bar<'_>, rect: Rect) {
    let small = rect.width() < 1120.0;
    let menu = Rect::from_min_size(
        pos2(rect.left() + theme::MARGIN, rect.top() + 12.0),
        vec2(44.0, 44.0),
    );
    show_menu(ui, desk, bar, menu);
    let title_width = if small { 0.0 } else { 196.0 };
    let title = Rect::from_min_size(menu.right_top() + vec2(8.0, -4.0), vec2(title_width, 52.0));
    if small {
        desk.regions.add(rect, place_id(desk.view.place));
    } else {
        session_chooser(ui, desk, title);
        desk.regions.add(rect, place_id(desk.view.place));
    }
    let main = Button::new("together", "Go through together")
        .weight(Weight::Main)
        .enabled(actions::possible(Action::Together, desk.view))
        .tip("The day, one step at a time, in full view (F5)");
    let main = if small {
        main.icon_only(Icon::Right)
    } else {
        main
    };
    let width = if small { 48.0 } else { 200.0 };
    let right = Rect::from_min_size(
        pos2(rect.right() - theme::MARGIN - width, rect.top() + 12.0),
        vec2(width, if small { 44.0 } else { 48.0 }),
    );
    let next_width = if small { 48.0 } else { 172.0 };
    let saved_width = if small { 56.0 } else { 106.0 };
    let saved = Rect::from_min_max(
        pos2(right.left() - saved_width - 12.0, rect.top() + 10.0),
        pos2(right.left() - 12.0, rect.top() + 58.0),
    );
    let next = Rect::from_min_max(
        pos2(saved.left() - next_width - 10.0, right.top()),
        pos2(saved.left() - 10.0, right.bottom()),
    );
    // Where there is hardly any room the names of the places have it; F4 and the menu lead on too.
    let tiny = rect.width() < 860.0;
    let end = if tiny {
        saved.left() - 10.0
    } else {
        next.left() - 6.0
    };
    let strand = Rect::from_min_max(
        pos2(title.right() + 10.0, rect.top()),
        pos2(end, rect.bottom()),
    );
    places(ui, desk, strand);
    if !tiny {
        show_next(ui, desk, bar, next, small);
    }
    show_saved(ui, desk, saved, small);
    if main.show_at(ui, right).clicked() {
        desk.actions.push(Action::Together);
    }
}

fn show_menu(ui: &mut Ui, desk: &mut Desk<'_>, bar: &Bar<'_>, rect: Rect) {
    let r = Button::new("menu", "Menu")
        .icon_only(Icon::Lines)
        .show_at(ui, rect);
    Popup::menu(&r)
        .width(320.0)
        .accessible_name("Menu")
        .show(|ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            let room = (ui.ctx().content_rect().height() - 90.0).max(160.0);
            ui.set_max_height(room);
            egui::ScrollArea::vertical()
                .max_height(room)
                .show(ui, |ui| {
                    menu_rows(ui, desk, Group::File);
                    recent(ui, desk);
                    menu_rows(ui, desk, Group::Make);
                    words::soft(ui, &format!("How it looks: {} %", desk.view.zoom_percent));
                    menu_rows(ui, desk, Group::Look);
                    for scheme in Theme::ALL {
                        let b =
                            Button::new(("scheme", format!("{scheme:?}")), theme::label(scheme))
                                .role(Role::MenuItemRadio);
                        let b = if scheme == desk.view.theme {
                            b.weight(Weight::Chosen(true))
                        } else {
                            b.weight(Weight::Quiet)
                        };
                        if b.left().width(ui.available_width()).show(ui).clicked() {
                            desk.actions.push(Action::Colours(scheme));
                        }
                    }
                    let b = Button::new("still", "No movement")
                        .role(Role::MenuItemCheckBox)
                        .left();
                    let b = if bar.still {
                        b.weight(Weight::Chosen(true))
                    } else {
                        b.weight(Weight::Quiet)
                    };
                    if b.width(ui.available_width()).show(ui).clicked() {
                        desk.actions.push(Action::Still);
                    }
                    menu_rows(ui, desk, Group::End);
                });
        });
}

fn menu_rows(ui: &mut Ui, desk: &mut Desk<'_>, group: Group) {
    for row in actions::TABLE.iter().filter(|r| r.group == group) {
        let keys = row.keys();
        let b = Button::new(("menu", row.label), row.label)
            .weight(Weight::Quiet)
            .role(Role::MenuItem)
            .enabled(actions::possible(row.action, desk.view))
            .left()
            .trailing(&keys)
            .width(ui.available_width());
        if b.show(ui).clicked() {
            desk.actions.push(row.action);
        }
    }
}

fn recent(ui: &mut Ui, desk: &mut Desk<'_>) {
    for path in desk.view.recent.iter().take(4) {
        let name = path
            .file_stem()
            .map_or_else(String::new, |s| s.to_string_lossy().into_owned());
        let full = path.display().to_string();
        let b = Button::new(("recent", path), &name)
            .weight(Weight::Quiet)
            .role(Role::MenuItem)
            .icon(Icon::Folder)
            .tip(&full)
            .left()
            .width(ui.available_width());
        if b.show(ui).clicked() {
            desk.ask(Command::Open(path.clone()));
        }
    }
}

/// Which session: title and date, and all others in a list.
fn session_chooser(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let (title, when) = match desk.view.session {
        Some(s) => {
            let minutes = clock::clock(s, &desk.view.club.rules).minutes();
            (
                s.title.clone(),
                format!("{}, {minutes} min", super::dates::shortest(s.date)),
            )
        }
        None => (desk.view.club.name.clone(), "no session yet".to_owned()),
    };
    let r = ui.interact(rect, Id::unique("session-chooser"), Sense::click());
    r.widget_info(|| {
        WidgetInfo::labeled(Role::ComboBox, true, format!("Session: {title}, {when}"))
    });
    let p = ui.painter();
    if r.hovered() || Popup::is_id_open(ui.ctx(), Popup::default_response_id(&r)) {
        let corner = egui::CornerRadius::same(theme::R_CONTROL);
        p.rect(
            rect,
            corner,
            t.col.panel,
            t.edge(),
            egui::StrokeKind::Inside,
        );
    }
    let text = Rect::from_min_max(rect.min + vec2(8.0, 2.0), rect.max - vec2(26.0, 2.0));
    let (upper, lower) = text.split_top_bottom_at_fraction(0.54);
    words::line(
        p,
        upper,
        Align2::LEFT_BOTTOM,
        &title,
        theme::bold(18.0),
        t.col.ink,
    );
    words::line(
        p,
        lower,
        Align2::LEFT_TOP,
        &when,
        theme::regular(14.0),
        t.col.soft,
    );
    icons::paint(
        p,
        Icon::Down,
        icons::square(rect.right_center() - vec2(14.0, 0.0), 15.0),
        t.col.soft,
    );
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    Popup::menu(&r)
        .width(300.0)
        .accessible_name("Sessions")
        .show(|ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            words::soft(ui, &desk.view.club.name);
            let chosen = desk.view.session.map(|s| s.id);
            for s in &desk.view.club.sessions {
                let when = super::dates::short(s.date);
                let on = Some(s.id) == chosen;
                let b = Button::new(("session", s.id), &s.title)
                    .weight(if on {
                        Weight::Chosen(true)
                    } else {
                        Weight::Quiet
                    })
                    .role(Role::MenuItemRadio)
                    .left()
                    .width(ui.available_width());
                let b = if on { b } else { b.trailing(&when) };
                if b.show(ui).clicked() {
                    desk.ask(Command::ChooseSession(s.id));
                }
            }
            let b = Button::new("to-sessions", "Add or copy a session")
                .icon(Icon::Plus)
                .weight(Weight::Quiet)
                .left();
            if b.width(ui.available_width()).show(ui).clicked() {
                desk.actions.push(Action::Go(Place::Session));
            }
        });
}

fn place_id(place: Place) -> Id {
    Id::unique(("place", place))
}

/// The five places on their strand.
fn places(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let y = rect.top() + 21.0;
    let step = rect.width() / 5.0;
    let middle = |i: usize| rect.left() + (i as f32 + 0.5) * step;
    let mut rope = Rope {
        points: vec![pos2(rect.left(), y - 4.0)],
        arrows: Vec::new(),
    };
    for i in 0..5 {
        rope.sag_to(pos2(middle(i), y));
    }
    rope.sag_to(pos2(rect.right(), y - 4.0));
    paint::line(ui.painter(), &t, &rope.points, 4.0);
    for (i, place) in Place::ALL.into_iter().enumerate() {
        let cell = Rect::from_min_max(
            pos2(middle(i) - step / 2.0 + 3.0, rect.top()),
            pos2(middle(i) + step / 2.0 - 3.0, rect.bottom()),
        );
        let r = one_place(ui, desk, place, cell, y);
        if r.clicked() {
            desk.actions.push(Action::Go(place));
        }
    }
}

fn one_place(ui: &Ui, desk: &Desk<'_>, place: Place, cell: Rect, y: f32) -> Response {
    let t = theme::of(ui.ctx());
    let current = desk.view.place == place;
    let (says, open) = open_in(desk.view, place);
    let low = cell.height() < 70.0;
    let width = (cell.width() - 4.0).min(144.0);
    let top = y + if low { 2.0 } else { 4.0 };
    let card = Rect::from_min_size(
        pos2(cell.center().x - width / 2.0, top),
        vec2(width, if low { 36.0 } else { 53.0 }),
    );
    let hit = card.with_min_y(cell.top() + 6.0);
    let r = ui.interact(hit, place_id(place), Sense::click());
    r.widget_info(|| {
        WidgetInfo::selected(
            Role::Tab,
            true,
            current,
            format!("{}: {says}", place.label()),
        )
    });
    ui.ctx()
        .accesskit_node_builder(r.id, |node| node.set_selected(current));
    let p = ui.painter();
    let at = pos2(cell.center().x, y);
    let (ink, soft) = if current {
        (t.col.card_ink, t.col.card_soft)
    } else {
        (t.col.ink, t.col.soft)
    };
    if current {
        tile(p, &t, card, Lie::Ground);
        let peg = Rect::from_center_size(at, vec2(18.0, 20.0));
        p.rect_filled(peg, egui::CornerRadius::same(5), t.col.accent);
    } else {
        if r.hovered() {
            let corner = egui::CornerRadius::same(theme::R_CONTROL);
            p.rect_filled(
                card.shrink2(vec2(2.0, 0.0)).with_min_y(card.top() + 7.0),
                corner,
                t.col.panel,
            );
        }
        if open {
            paint::ring(p, &t.col, at, 7.0, t.col.ground);
        } else {
            paint::knot(p, &t, at, 8.0);
        }
    }
    let text = card.shrink2(vec2(6.0, 0.0));
    let name_top = card.top() + if low { 9.0 } else { 8.0 };
    let font = if current {
        theme::bold(18.0)
    } else {
        theme::regular(18.0)
    };
    let name = Rect::from_min_size(pos2(text.left(), name_top), vec2(text.width(), 24.0));
    words::line(p, name, Align2::CENTER_CENTER, place.label(), font, ink);
    if !low {
        let below =
            Rect::from_min_size(pos2(text.left(), name_top + 21.0), vec2(text.width(), 18.0));
        words::line(
            p,
            below,
            Align2::CENTER_CENTER,
            &says,
            theme::regular(14.0),
            soft,
        );
    }
    focus_ring(ui, &r, card, theme::R_CARD);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    if low { r.on_hover_text(says) } else { r }
}

/// What is open in a place, in words, and whether anything is.
pub fn open_in(view: &View<'_>, place: Place) -> (String, bool) {
    let count = |f: fn(&Spot) -> bool| {
        view.findings
            .iter()
            .filter(|x| x.severity <= Severity::Look && f(&x.spot))
            .count()
    };
    let open = |n: usize, words: &str, closed: String| {
        if n == 0 {
            (closed, false)
        } else {
            (format!("{n} to {words}"), true)
        }
    };
    match place {
        Place::Session if view.session.is_none() => ("none yet".into(), true),
        Place::Session => {
            let n = count(|s| {
                let of_rows = matches!(s, Spot::Slot(..) | Spot::Activity(_));
                of_rows || matches!(s, Spot::Session(_) | Spot::Water(..))
            });
            open(n, "look at", "ready".into())
        }
        Place::People => {
            let n = count(|s| {
                let of_people = matches!(s, Spot::Participant(_) | Spot::Helper(_));
                of_people || matches!(s, Spot::Club | Spot::Picture(_))
            });
            open(n, "look at", format!("{} come", view.boards.len()))
        }
        Place::Boards => {
            let n = count(|s| matches!(s, Spot::Board(..) | Spot::Step(..)));
            open(n, "look over", format!("{} boards", view.boards.len()))
        }
        Place::Checks => open(count(|_| true), "look at", "nothing open".into()),
        Place::Print => match (
            view.print.kinds.len(),
            view.sheets.iter().map(|s| s.pages.len()).sum(),
        ) {
            (0, _) => ("nothing chosen".into(), true),
            (_, 1) => ("1 page".into(), true),
            (1, 0) => ("1 kind".into(), true),
            (n, 0) => (format!("{n} kinds"), true),
            (_, n) => (format!("{n} pages"), true),
        },
    }
}

/// The next thing of the evening, as the end of the strand: a press leads there.
fn show_next(ui: &mut Ui, desk: &mut Desk<'_>, bar: &Bar<'_>, rect: Rect, small: bool) {
    let t = theme::of(ui.ctx());
    let next = next_thing(desk.view, bar.led_to);
    let r = ui.interact(rect, Id::unique("next-thing"), Sense::click());
    let name = format!("Next: {}", next.says);
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
    let p = ui.painter();
    let corner = egui::CornerRadius::same(theme::R_CONTROL);
    let fill = if r.hovered() { t.col.tint } else { t.col.panel };
    p.rect(rect, corner, fill, t.edge(), egui::StrokeKind::Inside);
    if small {
        icons::paint(
            p,
            Icon::Right,
            icons::square(rect.center(), 20.0),
            t.col.accent,
        );
    } else {
        let text = rect.shrink2(vec2(11.0, 3.0));
        let (upper, lower) = text.split_top_bottom_at_fraction(0.46);
        let soft = theme::regular(14.0);
        words::line(p, upper, Align2::LEFT_CENTER, "Next (F4)", soft, t.col.soft);
        let fits = |s: &f32| words::rows_needed(p, &next.says, theme::bold(*s), lower.width()) < 2;
        let size = [16.0, 15.0].into_iter().find(fits).unwrap_or(14.0);
        let sign = icons::square(upper.right_center() - vec2(7.0, 0.0), 14.0);
        icons::paint(p, Icon::Right, sign, t.col.accent);
        words::line(
            p,
            lower,
            Align2::LEFT_CENTER,
            &next.says,
            theme::bold(size),
            t.col.ink,
        );
    }
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    if r.on_hover_text(format!("{name} (F4)")).clicked() {
        desk.actions.push(Action::Next);
    }
}

/// Whether everything is saved, as a knot or an open ring with words.
fn show_saved(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, small: bool) {
    let t = theme::of(ui.ctx());
    let modified = desk.view.modified;
    let (first, second) = match (modified, desk.view.path) {
        (true, Some(_)) => ("Not saved", "Ctrl+S"),
        (true, None) => ("Not saved", "no file yet"),
        (false, Some(_)) => ("Saved", "all of it"),
        (false, None) => ("No file", "yet"),
    };
    let r = ui.interact(rect, Id::unique("saved"), Sense::click());
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{first}: {second}. Save")));
    let p = ui.painter();
    if r.hovered() {
        p.rect(
            rect,
            egui::CornerRadius::same(theme::R_CONTROL),
            t.col.panel,
            t.edge(),
            egui::StrokeKind::Inside,
        );
    }
    let at = if small {
        rect.center()
    } else {
        rect.left_center() + vec2(14.0, 0.0)
    };
    if modified {
        paint::ring(p, &t.col, at, 7.0, t.col.ground);
    } else {
        paint::knot(p, &t, at, 8.0);
    }
    if !small {
        let text = rect.with_min_x(rect.left() + 30.0);
        let (upper, lower) = text.split_top_bottom_at_fraction(0.5);
        words::line(
            p,
            upper,
            Align2::LEFT_BOTTOM,
            first,
            theme::bold(15.0),
            t.col.ink,
        );
        words::line(
            p,
            lower,
            Align2::LEFT_TOP,
            second,
            theme::regular(14.0),
            t.col.soft,
        );
    }
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_text(format!("{first}. Save the club (Ctrl+S)"));
    if r.clicked() {
        desk.actions.push(Action::Save);
    }
}
