//! The menu at the left of the bar: everything that can be done, with its keys.

use egui::{Popup, Rect, Role, Ui};

use super::Bar;
use crate::ui::actions;
use crate::ui::actions::Action;
use crate::ui::actions::Group;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::button::Weight;
use crate::ui::widgets::words;
use crate::workbench::command::Command;
use crate::workbench::command::Theme;

pub(super) fn show_menu(ui: &mut Ui, desk: &mut Desk<'_>, bar: &Bar<'_>, rect: Rect) {
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
