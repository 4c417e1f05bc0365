//! The window: panels look at the workbench's view and queue commands, which are carried out after
//! the frame. The only place that knows the toolkit.

pub mod actions;
pub mod app;
pub mod boards;
pub mod checks;
pub mod dates;
pub mod desk;
pub mod dialogs;
pub mod drawing;
pub mod files;
pub mod find;
pub mod help;
pub mod icons;
pub mod notice;
pub mod past;
pub mod people;
pub mod photo;
pub mod picker;
pub mod pictures;
pub mod print;
pub mod program_icon;
pub mod regions;
pub mod seek;
pub mod session;
pub mod start;
pub mod state;
pub mod strand;
pub mod theme;
pub mod together;
pub mod topbar;
pub mod tray;
pub mod widgets;

pub use app::run;
