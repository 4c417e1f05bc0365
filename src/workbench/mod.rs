//! The running program without a window: commands come in, the club changes, boards, findings and
//! sheets follow, a view goes out. The window, the command line and the tests are its drivers.

pub mod command;
pub mod demo;
pub mod view;
