//! What the window itself remembers: nothing of the club, only how it is being looked at.

use super::boards::BoardsState;
use super::dialogs::PathDialog;
use super::drawing::{DrawingState, Start};
use super::help::HelpState;
use super::people::PeopleState;
use super::photo::PhotoState;
use super::print::PrintState;
use super::regions::Regions;
use super::seek::Seek;
use super::session::SessionState;
use super::start::StartState;
use super::together::TogetherState;
use super::widgets::field::Drafts;
use crate::workbench::next::Where;

/// Sizes offered, in percent.
const ZOOMS: [u32; 7] = [80, 90, 100, 125, 150, 175, 200];

/// What the window remembers.
#[derive(Default)]
pub struct UiState {
    /// No movement.
    pub still: bool,
    /// The page that one meets first, until a club is there.
    pub start: Option<StartState>,
    /// What is being typed.
    pub drafts: Drafts,
    /// Areas for F6.
    pub regions: Regions,
    /// The help, while it is open.
    pub help: Option<HelpState>,
    /// The list of what was done lies open.
    pub past: bool,
    /// Anything is being looked for.
    pub seek: Option<Seek>,
    /// Things the next-thing key has led to, so that it leads on.
    pub led_to: Vec<Where>,
    /// A file or folder is being asked for.
    pub dialog: Option<PathDialog>,
    /// The place Session.
    pub session: SessionState,
    /// The place People.
    pub people: PeopleState,
    /// The place Boards.
    pub boards: BoardsState,
    /// The place Print.
    pub print: PrintState,
    /// A picture that came in, while it is looked at.
    pub photo: Option<PhotoState>,
    /// The full-screen view, while it is open.
    pub together: Option<TogetherState>,
    /// The place where a picture is drawn, while it is open.
    pub drawing: Option<DrawingState>,
    /// With what that place is to open after this frame.
    pub draw: Option<Start>,
}

/// The next larger size offered, in percent.
pub fn larger(percent: u32) -> u32 {
    ZOOMS.into_iter().find(|z| *z > percent).unwrap_or(percent)
}

/// The next smaller size offered, in percent.
pub fn smaller(percent: u32) -> u32 {
    ZOOMS
        .into_iter()
        .rev()
        .find(|z| *z < percent)
        .unwrap_or(percent)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn zoom_goes_to_200_percent_and_back() {
        let times = |f: fn(u32) -> u32, from| (0..10).fold(from, |z, _| f(z));
        assert_eq!(times(larger, 100), 200);
        assert_eq!(times(smaller, 200), 80);
        assert_eq!(larger(300), 300);
    }
}
