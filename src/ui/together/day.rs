//! The day that is gone through, as it is in one frame.

use super::walk::{Path, Sight, Walk};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::story::cards::{Card, always_there_for};
use crate::ui::desk::Desk;
use crate::ui::pictures::Eyes;

/// The board of a frame, and how far they are on it.
pub(super) struct Day<'a> {
    pub(super) club: &'a Club,
    pub(super) session: &'a Session,
    pub(super) who: &'a Participant,
    pub(super) board: &'a Board,
    pub(super) path: Path,
    pub(super) walk: Walk,
    pub(super) sight: Sight,
    pub(super) done: usize,
    pub(super) cards: Vec<Card>,
    pub(super) eyes: Eyes,
}

impl<'a> Day<'a> {
    pub(super) fn of(desk: &Desk<'a>, walk: &mut Walk) -> Option<Self> {
        let view = desk.view;
        let (club, session, who) = (view.club, view.session?, view.participant?);
        let board = view.board()?;
        let path = Path::of(club, board, who.manner.reach);
        walk.settle(&path);
        Some(Self {
            club,
            session,
            who,
            board,
            sight: walk.sight(&path),
            walk: walk.clone(),
            done: walk.done(),
            cards: always_there_for(club, who),
            eyes: Eyes::of(who),
            path,
        })
    }
}
