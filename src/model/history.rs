//! Undo and redo: a list of cheap snapshots of the club.
//!
//! Every state has a revision, a number given once: the same revision is always the same club, so
//! what was worked out for it can be kept, and "modified" compares the revision with the saved one.

use std::collections::VecDeque;
use std::sync::Arc;

use super::club::Club;
use super::edit::{self, Edit, Made, MergeKey, Refused};

/// How many steps can be undone.
pub const UNDO_STEPS: usize = 200;

/// The club now, with what came before and what was undone.
#[derive(Clone, Debug)]
pub struct History {
    now: State,
    past: VecDeque<Change>,
    /// Undone changes, the next to redo last.
    undone: Vec<Change>,
    last_revision: u64,
    saved: Option<u64>,
    /// What the last change typed in, while it may still merge.
    typing: Option<MergeKey>,
}

#[derive(Clone, Debug)]
struct State {
    club: Arc<Club>,
    revision: u64,
}

/// A step that can be undone or redone: what it is called, and the state on its other side.
#[derive(Clone, Debug)]
struct Change {
    label: String,
    state: State,
}

impl History {
    /// A club as it was read from its file: nothing to undo, nothing to save.
    pub fn new(club: Club) -> Self {
        let mut history = Self::unsaved(club);
        history.saved = Some(history.now.revision);
        history
    }

    /// A club that is in no file yet, or was repaired while reading.
    pub fn unsaved(club: Club) -> Self {
        Self {
            now: State {
                club: Arc::new(club),
                revision: 1,
            },
            past: VecDeque::new(),
            undone: Vec::new(),
            last_revision: 1,
            saved: None,
            typing: None,
        }
    }

    /// The club now.
    pub const fn club(&self) -> &Arc<Club> {
        &self.now.club
    }

    /// The number of the club as it is now. Two equal numbers of one history mean one club.
    pub const fn revision(&self) -> u64 {
        self.now.revision
    }

    /// Applies an edit as a step that can be undone. Typing on in one field stays one step; an edit
    /// that changes nothing leaves no step.
    ///
    /// # Errors
    /// When the edit is refused; nothing has changed then.
    pub fn apply(&mut self, edit: &Edit) -> Result<Made, Refused> {
        let (club, made) = edit::apply(&self.now.club, edit)?;
        if club != *self.now.club {
            let label = edit.label(&self.now.club);
            let key = edit.merge_key(&self.now.club);
            self.record(club, label, key);
        }
        Ok(made)
    }

    fn record(&mut self, club: Club, label: String, key: Option<MergeKey>) {
        self.last_revision += 1;
        let state = State {
            club: Arc::new(club),
            revision: self.last_revision,
        };
        let before = std::mem::replace(&mut self.now, state);
        let goes_on = key.is_some() && key == self.typing && self.undone.is_empty();
        self.typing = key;
        if goes_on {
            self.forget_typing_in_circles();
        } else {
            self.past.push_back(Change {
                label,
                state: before,
            });
            if self.past.len() > UNDO_STEPS {
                self.past.pop_front();
            }
        }
        self.undone.clear();
    }

    /// Who typed themselves back to where they began has changed nothing.
    fn forget_typing_in_circles(&mut self) {
        if self
            .past
            .back()
            .is_some_and(|c| c.state.club == self.now.club)
            && let Some(change) = self.past.pop_back()
        {
            self.now = change.state;
            self.typing = None;
        }
    }

    /// Ends typing: what is typed next is a step of its own. For when a field is left.
    pub const fn end_typing(&mut self) {
        self.typing = None;
    }

    /// Goes back one step and says which, if there is one.
    pub fn undo(&mut self) -> Option<String> {
        self.typing = None;
        let change = self.past.pop_back()?;
        let after = std::mem::replace(&mut self.now, change.state);
        self.undone.push(Change {
            label: change.label.clone(),
            state: after,
        });
        Some(change.label)
    }

    /// Does an undone step again and says which, if there is one.
    pub fn redo(&mut self) -> Option<String> {
        self.typing = None;
        let change = self.undone.pop()?;
        let before = std::mem::replace(&mut self.now, change.state);
        self.past.push_back(Change {
            label: change.label.clone(),
            state: before,
        });
        Some(change.label)
    }

    /// What undo would take back.
    pub fn undo_label(&self) -> Option<&str> {
        self.past.back().map(|c| c.label.as_str())
    }

    /// What redo would do again.
    pub fn redo_label(&self) -> Option<&str> {
        self.undone.last().map(|c| c.label.as_str())
    }

    /// What was done, the last thing first: as many as can be taken back.
    pub fn done(&self) -> impl ExactSizeIterator<Item = &str> {
        self.past.iter().rev().map(|c| c.label.as_str())
    }

    /// What was taken back, what redo would do again first.
    pub fn undone(&self) -> impl ExactSizeIterator<Item = &str> {
        self.undone.iter().rev().map(|c| c.label.as_str())
    }

    /// Whether the club differs from what is in the file.
    pub fn is_modified(&self) -> bool {
        self.saved != Some(self.now.revision)
    }

    /// Notes that the club with this revision is in the file now. Writing takes a moment; the club
    /// may have changed meanwhile.
    pub const fn mark_saved(&mut self, revision: u64) {
        self.saved = Some(revision);
        // Typing on must not change a state that was saved without leaving a step back to it.
        self.typing = None;
    }
}
