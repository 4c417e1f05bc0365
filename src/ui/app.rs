//! The window as a whole: one frame from keys to commands, and opening it on a display.

use std::panic::{AssertUnwindSafe, catch_unwind};

use egui::{Context, Rect, Ui, ViewportCommand, vec2};

use super::actions::{self, Action};
use super::desk::Desk;
use super::dialogs::{self, Outcome, PathDialog};
use super::drawing::{DrawingState, Start, Went};
use super::files::SystemDialog;
use super::help::{self, HelpState};
use super::people::standing;
use super::picker::{For, Picked};
use super::pictures::Pictures;
use super::seek::{self, Seek};
use super::start::StartState;
use super::state::{UiState, larger, smaller};
use super::theme::{self, Scheme, Theme};
use super::together::TogetherState;
use super::topbar::{self, Bar};
use super::widgets::{self, within};
use super::{
    boards, checks, drawing, find, notice, past, people, photo, print, session, start, together,
};
use crate::model::edit::Edit;
use crate::model::finding::Spot;
use crate::model::ids::SymbolId;
use crate::symbols::lexicon;
use crate::workbench::Workbench;
use crate::workbench::command::{Command, Effect, Place};
use crate::workbench::next::{Where, next_thing};
use crate::workbench::turns::Arranging;

/// Size of the window at first.
const SIZE: [f32; 2] = [1366.0, 768.0];
/// Least size; at 200 % the places still work in it.
const LEAST: [f32; 2] = [640.0, 380.0];
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
        let busy = self.state.dialog.is_some()
            || self.state.together.is_some()
            || self.state.session.picker.is_some()
            || self.state.people.picker.is_some()
            || self.bench.view().incoming.is_some()
            || self.bench.view().question.is_some()
            || self.state.seek.is_some()
            || self.state.past
            || self.state.draw.is_some();
        if busy {
            return;
        }
        let mut pressed = actions::pressed(ctx);
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

    fn all(&mut self, ctx: &Context, actions: Vec<Action>) {
        for action in actions {
            self.act(ctx, action);
        }
    }

    /// Carries out an action of the window, or queues what it asks of the workbench.
    pub fn act(&mut self, ctx: &Context, action: Action) {
        if !actions::possible(action, &self.bench.view()) {
            return;
        }
        let s = &mut self.state;
        match action {
            Action::New => self.late.push(Command::New),
            Action::Open => self.late.push(Command::AskOpen),
            Action::Demo => self.late.push(Command::Demo),
            Action::Save => self.late.push(Command::Save),
            Action::SaveAs => self.late.push(Command::AskSaveAs),
            Action::Quit => self.late.push(Command::Quit),
            Action::Undo => self.late.push(Command::Undo),
            Action::Redo => self.late.push(Command::Redo),
            Action::Go(place) => self.late.push(Command::Show(place)),
            Action::Search => self.search(),
            Action::Group => {
                s.boards.group = !s.boards.group || self.bench.view().place != Place::Boards;
                self.late.push(Command::Show(Place::Boards));
            }
            Action::PersonAfter => self.another_person(1),
            Action::PersonBefore => self.another_person(-1),
            Action::Write => {
                self.late.push(Command::Show(Place::Print));
                self.late.push(Command::AskPrintFolder);
            }
            Action::Seek => s.seek = Some(Seek::default()),
            Action::Past => s.past = true,
            Action::Next => self.next_thing(ctx),
            Action::Together => {
                s.together = Some(TogetherState::default());
                ctx.send_viewport_cmd(ViewportCommand::Fullscreen(true));
            }
            Action::Draw => {
                s.draw = Some(Start::Blank {
                    whose: None,
                    stands_for: None,
                });
            }
            Action::ZoomIn => self
                .late
                .push(Command::SetZoom(larger(self.bench.view().zoom_percent))),
            Action::ZoomOut => self
                .late
                .push(Command::SetZoom(smaller(self.bench.view().zoom_percent))),
            Action::ZoomReset => self.late.push(Command::SetZoom(100)),
            Action::Colours(theme) => self.late.push(Command::SetTheme(theme)),
            Action::Still => s.still = !s.still,
            Action::NextArea => s.regions.step(ctx, false),
            Action::AreaBefore => s.regions.step(ctx, true),
            Action::Help => self.turn_help(ctx),
        }
        ctx.request_repaint();
    }

    /// Goes on to another participant: of those who come at Boards, else of all. After the last comes
    /// the first.
    fn another_person(&mut self, by: isize) {
        let view = self.bench.view();
        let all: Vec<_> = match view.place {
            Place::Boards => view.boards.iter().map(|(id, _)| *id).collect(),
            _ => view.club.participants.iter().map(|p| p.id).collect(),
        };
        let now = view.participant.map(|p| p.id);
        let at = all.iter().position(|id| Some(*id) == now).unwrap_or(0);
        let count = all.len() as isize;
        if count > 0 {
            let next = (at as isize + by).rem_euclid(count) as usize;
            self.state.boards.keep_step = self.bench.view().place == Place::Boards;
            self.late.push(Command::ChooseParticipant(all[next]));
        }
    }

    /// Leads to what is to be done next.
    fn next_thing(&mut self, ctx: &Context) {
        let next = next_thing(&self.bench.view(), &self.state.led_to);
        match &next.at {
            Where::Place(place) => self.late.push(Command::Show(*place)),
            Where::Spot(spot) => self.late.push(Command::GoTo(*spot)),
            Where::Save => self.late.push(Command::Save),
            Where::Write => self.late.push(Command::AskPrintFolder),
            Where::Together => self.act(ctx, Action::Together),
        }
        if matches!(next.at, Where::Spot(_)) {
            self.state.led_to.push(next.at);
        }
    }

    /// Opens the help at the page of where one is, or puts it away.
    fn turn_help(&mut self, ctx: &Context) {
        if let Some(help) = self.state.help.take() {
            return help.leave(ctx);
        }
        let (pane, drawing) = (self.state.people.pane, self.state.drawing.is_some());
        let page = match self.state.start {
            Some(_) => "evening",
            None => help::page_of(&self.bench.view(), pane, drawing),
        };
        self.state.help = Some(HelpState::at(ctx, page));
    }

    /// The search field of the place, or that of the symbols.
    fn search(&mut self) {
        match self.bench.view().place {
            Place::People if self.bench.view().club.participants.len() > find::FEW => {
                self.state.people.pane = people::Pane::Participants;
                self.state.people.find.focus = true;
            }
            Place::Print => match self.state.print.pane {
                print::Pane::Sheets => self.state.print.find.focus = true,
                print::Pane::Stock => self.state.print.find_stock.focus = true,
            },
            Place::Session => {
                self.state.session.pane = session::Pane::Timetable;
                self.state.session.tray.focus_search = true;
            }
            _ => {
                self.state.boards.group = false;
                self.state.boards.tray.focus_search = true;
                self.late.push(Command::ShowStory(false));
                self.late.push(Command::Show(Place::Boards));
            }
        }
    }

    /// The club's name, with a dot while something is not saved.
    fn name_window(&mut self, ctx: &Context) {
        let view = self.bench.view();
        let dot = if view.modified { "• " } else { "" };
        let title = format!("{dot}{} – Daystrand", view.club.name);
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

    fn frame(&mut self, ui: &mut Ui, out: &mut Vec<Command>, wanted: &mut Vec<Action>) {
        let window = ui.max_rect();
        let t = theme::of(ui.ctx());
        ui.painter().rect_filled(window, 0, t.col.ground);
        let view = self.bench.view();
        let s = &mut self.state;
        s.regions.clear();
        self.pictures.look_at(view.club, view.revision);
        let mut desk = Desk {
            view: &view,
            pictures: &mut self.pictures,
            drafts: &mut s.drafts,
            regions: &mut s.regions,
            out,
            actions: wanted,
            draw: &mut s.draw,
        };
        if let Some(together) = &mut s.together {
            let covered = view.question.is_some();
            if together::show(ui, &mut desk, together, (window, covered)) {
                s.together = None;
                ui.ctx()
                    .send_viewport_cmd(ViewportCommand::Fullscreen(false));
            }
            // The cross of the window asks here too.
            if let Some(answer) = view.question.and_then(|q| dialogs::question(ui, q)) {
                desk.ask(Command::Answer(answer));
            }
            return;
        }
        let begun = view.path.is_some() || view.modified || !view.club.name.is_empty();
        if begun {
            s.start = None;
        }
        if let Some(state) = &mut s.start {
            if start::show(ui, &mut desk, state, window) {
                s.start = None;
            }
        } else if let Some(drawing) = &mut s.drawing {
            let covered = s.help.is_some() || s.dialog.is_some() || view.question.is_some();
            if drawing::show(ui, &mut desk, drawing, (window, covered)) == Went::Away {
                s.drawing = None;
            }
        } else {
            let bar = Bar {
                still: s.still,
                led_to: &s.led_to,
            };
            let top = window.with_max_y(window.top() + topbar::height(window.size()));
            topbar::show(ui, &mut desk, &bar, top);
            let place = Rect::from_min_max(
                egui::pos2(window.left() + theme::MARGIN, top.bottom() + 4.0),
                window.max - vec2(theme::MARGIN, 12.0),
            );
            within(ui, "place", place, |ui| match view.place {
                Place::Session => session::show(ui, &mut desk, &mut s.session, place),
                Place::People => people::show(ui, &mut desk, &mut s.people, place),
                Place::Boards => boards::show(ui, &mut desk, &mut s.boards, place),
                Place::Checks => checks::show(ui, &mut desk, place),
                Place::Print => print::show(ui, &mut desk, &mut s.print, place),
            });
        }
        notice::show(ui, &mut desk, window);
        photo::show(ui, &mut desk, &mut s.photo);
        if view.question.is_none() && s.drawing.is_none() {
            photo::held_over(ui, &view, window);
        }
        pickers(ui, &mut desk, (&mut s.session.picker, &mut s.people.picker));
        if let Some(dialog) = &mut s.dialog {
            match dialogs::path(ui, dialog, &mut self.system, view.recent) {
                Outcome::Stays => {}
                Outcome::Away => s.dialog = None,
                Outcome::Go(command) => {
                    s.dialog = None;
                    desk.ask(*command);
                }
            }
        }
        if let Some(answer) = view.question.and_then(|q| dialogs::question(ui, q)) {
            desk.ask(Command::Answer(answer));
        }
        if s.past && past::show(ui, &mut desk) {
            s.past = false;
        }
        if let Some(looking) = &mut s.seek {
            match seek::show(ui, &mut desk, looking) {
                seek::Went::Stays => {}
                seek::Went::Away => s.seek = None,
                seek::Went::To(goes) => {
                    s.seek = None;
                    desk.out.extend(seek::commands(&goes));
                    match goes {
                        seek::Goes::Do(action) => desk.actions.push(action),
                        seek::Goes::Symbol(words) => {
                            s.boards.group = false;
                            s.boards.tray.group = None;
                            s.boards.tray.search = words;
                        }
                        seek::Goes::To(_) => {}
                    }
                }
            }
        }
        if let Some(help) = s.help.take_if(|help| help::show(ui, help)) {
            help.leave(ui.ctx());
        }
    }

    /// Carries a command out and does what the workbench asks for in turn.
    fn carry_out(&mut self, ctx: &Context, command: Command) {
        self.before(&command);
        for effect in self.bench.handle(command) {
            let path = self.bench.view().path.map(std::path::Path::to_path_buf);
            let beside = path.as_deref();
            match effect {
                Effect::AskOpenPath => self.state.dialog = Some(PathDialog::open(beside)),
                Effect::AskSavePath { suggested } => {
                    self.state.dialog = Some(PathDialog::save(beside, &suggested));
                }
                Effect::AskFolder => {
                    let last = self.bench.view().last_folder;
                    self.state.dialog = Some(PathDialog::folder(last, beside));
                }
                Effect::AskPictures { purpose } => {
                    self.state.dialog = Some(PathDialog::pictures(beside, purpose));
                }
                Effect::AskSet => self.state.dialog = Some(PathDialog::set(beside)),
                Effect::AskSetPath { suggested, holds } => {
                    let dialog = PathDialog::write_set(beside, &suggested, holds);
                    self.state.dialog = Some(dialog);
                }
                Effect::AskTable => self.state.dialog = Some(PathDialog::table(beside)),
                Effect::AskTablePath {
                    suggested,
                    for_helpers,
                } => {
                    let dialog = PathDialog::write_table(beside, &suggested, for_helpers);
                    self.state.dialog = Some(dialog);
                }
                Effect::OpenFolder(folder) => self.look_into(folder),
                Effect::Quit => {
                    self.closing = true;
                    ctx.send_viewport_cmd(ViewportCommand::Close);
                }
            }
        }
    }

    /// Opens a folder with the system; where there is nothing to open it with, says where it is.
    fn look_into(&mut self, folder: std::path::PathBuf) {
        if open::that_detached(&folder).is_err() {
            self.late.push(Command::CannotOpen(folder));
        }
    }

    /// What the window itself does beside a command.
    fn before(&mut self, command: &Command) {
        match command {
            Command::Undo | Command::Redo => self.state.drafts.clear(),
            Command::SetPrint(_) | Command::ChooseSession(_) => self.state.print.pages.clear(),
            Command::New | Command::Demo | Command::Open(_) => {
                self.state.print.pages.clear();
                self.state.led_to.clear();
            }
            Command::Show(_) => self.state.start = None,
            Command::GoTo(spot) => {
                self.state.start = None;
                self.open_pane(*spot);
            }
            _ => {}
        }
    }

    /// Opens the side of a place where a finding points to.
    fn open_pane(&mut self, spot: Spot) {
        let s = &mut self.state;
        match spot {
            Spot::Club => s.people.pane = people::Pane::Club,
            Spot::Participant(_) => s.people.pane = people::Pane::Participants,
            Spot::Picture(id) => {
                s.people.pane = people::Pane::Pictures;
                s.people.pictures.chosen = Some(id);
            }
            Spot::Helper(id) => {
                s.people.pane = people::Pane::Helpers;
                s.people.helper = Some(id);
                s.people.ahead = false;
            }
            Spot::Activity(id) => {
                s.session.pane = session::Pane::Activities;
                s.session.activity = Some(id);
            }
            Spot::Session(_) => s.session.pane = session::Pane::Timetable,
            Spot::Water(..) => s.session.pane = session::Pane::Water,
            Spot::Slot(_, slot) => {
                s.session.pane = session::Pane::Timetable;
                s.session.slot = Some(slot);
            }
            Spot::Board(..) | Spot::Step(..) => s.boards.group = false,
            Spot::Story(_, _, page) => {
                s.boards.group = false;
                s.boards.select_page(page);
            }
        }
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
    !matches!(
        action,
        Action::ZoomIn | Action::ZoomOut | Action::ZoomReset | Action::Colours(_) | Action::Still
    )
}

/// Pictures and marks being picked.
fn pickers(
    ui: &Ui,
    desk: &mut Desk<'_>,
    (activity, mark): (
        &mut Option<super::picker::Picker>,
        &mut Option<super::picker::Picker>,
    ),
) {
    for slot in [activity, mark] {
        let Some(picker) = slot else { continue };
        match picker.show(ui, desk.pictures, desk.view.club) {
            Picked::Not => {}
            Picked::Away => *slot = None,
            Picked::This(id) => {
                picked(desk, picker.target, id);
                *slot = None;
            }
        }
    }
}

fn picked(desk: &mut Desk<'_>, target: For, symbol: SymbolId) {
    match target {
        For::Activity(id) => {
            if let Some(a) = desk.view.club.activity(id) {
                let mut next = a.as_ref().clone();
                next.symbol = symbol;
                desk.edit(Edit::ChangeActivity(next));
            }
        }
        // The form of the picture, or the drawing, takes it itself.
        For::OwnPicture(_) | For::Drawing(_) => {}
        For::Standing(id, which) => {
            let club = desk.view.club;
            if let Some(p) = club.participant(id) {
                let mut next = p.as_ref().clone();
                standing::put(&mut next, which, lexicon::content(club, &symbol));
                desk.edit(Edit::ChangeParticipant(next));
            }
        }
        For::Mark(id) => {
            if let Some(p) = desk.view.club.participant(id) {
                let mut next = p.as_ref().clone();
                next.mark = symbol;
                desk.edit(Edit::ChangeParticipant(next));
            }
        }
    }
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

/// Opens the window and stays until it is closed.
///
/// # Errors
/// If there is no display, or a library that the window needs is not installed: one sentence that
/// says which packages to install.
pub fn run(bench: Workbench) -> Result<(), String> {
    let options = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_title("Daystrand")
            .with_app_id("daystrand")
            .with_icon(super::program_icon::program_icon())
            .with_inner_size(SIZE)
            .with_min_inner_size(LEAST),
        ..Default::default()
    };
    let quiet = std::panic::take_hook();
    std::panic::set_hook(Box::new(|_| {}));
    let opened = std::sync::Arc::new(std::sync::atomic::AtomicBool::new(false));
    let started = std::sync::Arc::clone(&opened);
    let begin = move |cc: &eframe::CreationContext<'_>| {
        App::prepare(&cc.egui_ctx);
        let mut app = App::new(bench);
        app.state.start = Some(StartState::default());
        app.dress(&cc.egui_ctx);
        // From here on a panic is a fault of ours and is shown as one.
        started.store(true, std::sync::atomic::Ordering::Relaxed);
        std::panic::set_hook(quiet);
        Ok(Box::new(app) as Box<dyn eframe::App>)
    };
    let ran = catch_unwind(AssertUnwindSafe(|| {
        eframe::run_native("Daystrand", options, Box::new(begin))
    }));
    match ran {
        Ok(Ok(())) => Ok(()),
        Ok(Err(e)) => Err(missing(&e.to_string())),
        Err(panic) if opened.load(std::sync::atomic::Ordering::Relaxed) => {
            std::panic::resume_unwind(panic)
        }
        Err(panic) => Err(missing(&panic_words(panic.as_ref()))),
    }
}

fn panic_words(panic: &(dyn std::any::Any + Send)) -> String {
    let text = panic.downcast_ref::<String>().map(String::as_str);
    text.or_else(|| panic.downcast_ref::<&str>().copied())
        .unwrap_or("it stopped at once")
        .to_owned()
}

/// Why no window opened, and which Debian packages it needs (found by trial on Debian 12: these are
/// loaded when the window opens).
fn missing(why: &str) -> String {
    let why = why.lines().next().unwrap_or("").trim_end_matches('.');
    format!(
        "{why}. The window needs a display and, on Debian: sudo apt install libx11-6 libx11-xcb1 \
         libxcursor1 libxi6 libxkbcommon-x11-0 libgl1."
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_window_that_cannot_open_says_what_to_install() {
        let words = missing("Library libxkbcommon-x11.so could not be loaded.\nmore");
        assert!(words.contains("libxkbcommon-x11.so could not be loaded. The window"));
        assert!(words.contains("libxkbcommon-x11-0") && !words.contains("more"));
    }
}
