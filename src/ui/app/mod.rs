//! The window as a whole, from keys to commands. What an action does stands in `acts`, what lies in
//! the window in `frame`, what a command asks of the window in `carry`, and how it opens in `open`.

mod acts;
mod carry;
mod frame;
mod open;

use egui::{Context, Ui, ViewportCommand};

use super::actions::{self, Action};
use super::drawing::DrawingState;
use super::files::SystemDialog;
use super::pictures::Pictures;
use super::state::UiState;
use super::theme::{self, Scheme, Theme};
use super::{photo, widgets};
use crate::workbench::Workbench;
use crate::workbench::command::Command;
use crate::workbench::turns::Arranging;

pub use open::run;

/// Seconds without a change after which changes are kept aside, and the longest they wait.
const KEPT_AFTER: f64 = 3.0;
const KEPT_AT_LATEST: f64 = 20.0;
/// Seconds until a message about something that went well goes by itself.
const NOTICE_SECONDS: f64 = 6.0;

/// The window: the workbench, what the window itself remembers, and what it made to show it.
pub struct App {
    bench: Workbench,
    state: UiState,
    pictures: Pictures,
    system: SystemDialog,
    theme: Option<(Theme, u32)>,
    title: String,
    notice: Option<(String, f64)>,
    /// The changes that are not kept yet: their revision, since when, and when the last one came.
    unkept: Option<(u64, f64, f64)>,
    /// Commands from keys, carried out after those of the panels.
    late: Vec<Command>,
    closing: bool,
}

impl App {
    /// A window on a workbench.
    pub fn new(bench: Workbench) -> Self {
        Self {
            bench,
            state: UiState::default(),
            pictures: Pictures::default(),
            system: SystemDialog::default(),
            theme: None,
            title: String::new(),
            notice: None,
            unkept: None,
            late: Vec::new(),
            closing: false,
        }
    }

    /// Makes a toolkit context ready: fonts, and keys that the window handles itself. Before the
    /// first frame.
    pub fn prepare(ctx: &Context) {
        theme::load_fonts(ctx);
        ctx.options_mut(|o| {
            o.zoom_with_keyboard = false;
            o.quit_shortcuts.clear();
        });
    }

    /// The workbench, to look at.
    pub const fn bench(&self) -> &Workbench {
        &self.bench
    }

    /// What the window remembers, to look at or to begin with.
    pub const fn state_mut(&mut self) -> &mut UiState {
        &mut self.state
    }

    /// Before a frame: theme, zoom, title, jobs, file dialogs, keys.
    pub fn logic(&mut self, ctx: &Context) {
        self.dress(ctx);
        widgets::note_input(ctx);
        if self.bench.poll() {
            ctx.request_repaint();
        }
        let view = self.bench.view();
        let turning = matches!(view.turns, Some(Arranging::Working(_)));
        let reading = view.incoming.is_some_and(|i| i.reading);
        if view.job.is_some() || view.laying || turning || reading {
            ctx.request_repaint_after_secs(0.1);
        }
        if let Some(came) = self.system.poll()
            && let Some(dialog) = &mut self.state.dialog
            && let Some(command) = dialog.came(came)
        {
            self.state.dialog = None;
            self.late.push(command);
        }
        self.keep_unsaved(ctx);
        self.close_request(ctx);
        self.brought(ctx);
        self.keys(ctx);
        self.name_window(ctx);
    }

    /// Puts theme and zoom in use when they changed.
    fn dress(&mut self, ctx: &Context) {
        let view = self.bench.view();
        let scheme = match self.state.together {
            Some(_) if view.together.night => Scheme::Night,
            _ => Scheme::of(view.theme, ctx.system_theme()),
        };
        let wanted = (Theme::new(scheme, self.state.still), view.zoom_percent);
        if self.theme == Some(wanted) {
            return;
        }
        theme::install(ctx, wanted.0);
        ctx.set_zoom_factor(wanted.1 as f32 / 100.0);
        self.theme = Some(wanted);
        ctx.request_repaint();
    }

    /// Keeps changes for the case of a crash: when nothing was changed for a while, and at the latest
    /// some time after the first.
    fn keep_unsaved(&mut self, ctx: &Context) {
        let (unkept, revision) = (self.bench.view().unkept, self.bench.view().revision);
        if !unkept {
            self.unkept = None;
            return;
        }
        let now = ctx.input(|i| i.time);
        let (of, first, last) = self.unkept.get_or_insert((revision, now, now));
        if *of != revision {
            (*of, *last) = (revision, now);
        }
        let due = (*last + KEPT_AFTER).min(*first + KEPT_AT_LATEST);
        if now >= due {
            self.unkept = None;
            self.late.push(Command::KeepUnsaved);
            ctx.request_repaint();
        } else {
            ctx.request_repaint_after_secs((due - now) as f32);
        }
    }

    /// The cross of the window asks like Quit does.
    fn close_request(&mut self, ctx: &Context) {
        if ctx.input(|i| i.viewport().close_requested()) && !self.closing {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.late.push(Command::Quit);
        }
    }

    /// What was dropped on the window, or pasted as a picture.
    fn brought(&mut self, ctx: &Context) {
        let covered = self.state.together.is_some() || self.state.drawing.is_some();
        if self.bench.view().question.is_some() || covered {
            return;
        }
        self.late.extend(photo::commands(ctx, &self.bench.view()));
    }

    fn keys(&mut self, ctx: &Context) {
        if self.state.together.is_some() {
            return;
        }
        let covered = self.state.dialog.is_some()
            || self.state.session.picker.is_some()
            || self.state.people.picker.is_some()
            || self.bench.view().incoming.is_some()
            || self.bench.view().question.is_some()
            || self.state.seek.is_some()
            || self.state.past
            || self.state.draw.is_some();
        let mut pressed = actions::pressed(ctx, |a| !covered || a.zooms());
        if let Some(help) = &mut self.state.help {
            pressed.retain(|a| help.passes(ctx, *a));
        }
        if pressed.is_empty() {
            return;
        }
        if let Some(drawing) = &mut self.state.drawing {
            let pressed = pressed.into_iter().filter(|a| drawing.passes(*a)).collect();
            return self.all(ctx, pressed);
        }
        if self.state.drafts.is_open() && pressed.iter().any(|a| leaves_field(*a)) {
            // What is being typed counts first: the field sees that it was left and enters it.
            if let Some(id) = ctx.memory(egui::Memory::focused) {
                ctx.memory_mut(|m| m.surrender_focus(id));
            }
        }
        self.all(ctx, pressed);
    }

    /// The club's name, with a dot while something is not saved.
    fn name_window(&mut self, ctx: &Context) {
        let view = self.bench.view();
        let dot = if view.modified { "• " } else { "" };
        let title = match view.club.name.as_str() {
            "" => format!("{dot}Daystrand"),
            name => format!("{dot}{name} – Daystrand"),
        };
        if title != self.title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.title = title;
        }
    }

    /// One frame.
    pub fn show(&mut self, ui: &mut Ui) {
        let (mut out, mut wanted) = (Vec::new(), Vec::new());
        self.frame(ui, &mut out, &mut wanted);
        let ctx = ui.ctx().clone();
        for action in wanted {
            self.act(&ctx, action);
        }
        if let Some(start) = self.state.draw.take() {
            self.state.drafts.clear();
            self.state.start = None;
            self.state.drawing = Some(DrawingState::new(start));
            ctx.request_repaint();
        }
        out.append(&mut self.late);
        if !out.is_empty() {
            for command in out {
                self.carry_out(&ctx, command);
            }
            ctx.request_repaint();
        }
        self.age_notice(&ctx);
    }

    /// Messages about what went well go by themselves.
    fn age_notice(&mut self, ctx: &Context) {
        let now = ctx.input(|i| i.time);
        let view = self.bench.view();
        let fresh = view
            .notice
            .filter(|n| !n.trouble && n.folder.is_none())
            .map(|n| n.sentence.clone());
        let Some(sentence) = fresh else {
            self.notice = None;
            return;
        };
        match &self.notice {
            Some((told, since)) if *told == sentence => {
                let left = NOTICE_SECONDS - (now - since);
                if left <= 0.0 {
                    self.late.push(Command::DismissNotice);
                    ctx.request_repaint();
                } else {
                    ctx.request_repaint_after_secs(left as f32);
                }
            }
            _ => {
                self.notice = Some((sentence, now));
                ctx.request_repaint_after_secs(NOTICE_SECONDS as f32);
            }
        }
    }
}

/// Actions that leave the field something is typed in.
const fn leaves_field(action: Action) -> bool {
    !action.zooms() && !matches!(action, Action::Colours(_) | Action::Still)
}

impl eframe::App for App {
    fn logic(&mut self, ctx: &Context, _frame: &mut eframe::Frame) {
        self.logic(ctx);
    }

    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        self.show(ui);
    }

    fn clear_color(&self, _visuals: &egui::Visuals) -> [f32; 4] {
        self.theme
            .map_or(Theme::new(Scheme::Light, false), |(t, _)| t)
            .col
            .ground
            .to_normalized_gamma_f32()
    }
}
