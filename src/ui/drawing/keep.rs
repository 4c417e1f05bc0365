//! Keeping the drawing: one edit, looked at before the place is left, so that nothing is lost.

use super::{DrawingState, Facts, fields};
use crate::model::edit::{Edit, Refused};
use crate::model::limits;
use crate::model::picture::{Drawing, Made, Picture};
use crate::ui::desk::Desk;

/// What is still missing, in words.
pub fn missing(desk: &Desk<'_>, state: &DrawingState) -> Option<&'static str> {
    if state.sketch.is_empty() && state.hand.gesture().is_none() {
        return Some("Nothing is drawn yet.");
    }
    let name = desk.drafts.typed(fields::first());
    let name = name.unwrap_or(&state.facts.name);
    name.trim()
        .is_empty()
        .then_some("Give it a name, then it can be kept.")
}

/// Asks for the picture to be put among the club's; says whether the place can be left. Where it is
/// refused the place stays, with the reason.
pub fn keep(desk: &mut Desk<'_>, state: &mut DrawingState) -> bool {
    let done = state.hand.finish();
    state.draw(done);
    // What is still being typed counts.
    for (id, text) in [
        (fields::first(), &mut state.facts.name),
        (fields::words_id(), &mut state.facts.words),
    ] {
        if let Some(typed) = desk.drafts.typed(id) {
            typed.clone_into(text);
        }
    }
    let picture = picture(state);
    if let Err(e) = allowed(desk, &picture) {
        state.trouble = Some(format!("{} {}", e.sentence, e.hint));
        return false;
    }
    desk.drafts.clear();
    desk.edit(if state.of.is_some() {
        Edit::ChangePicture(picture)
    } else {
        Edit::AddPicture(picture)
    });
    true
}

/// Whether the edit will be taken.
fn allowed(desk: &Desk<'_>, picture: &Picture) -> Result<(), Refused> {
    limits::picture::check(picture)?;
    let club = desk.view.club;
    let there = club.picture(picture.id).is_some();
    limits::count(
        "pictures",
        club.pictures.len() + usize::from(!there),
        limits::PICTURES,
    )
}

fn picture(state: &DrawingState) -> Picture {
    let made = Made::Drawing(Drawing::new(&state.sketch.svg()).into());
    let Facts {
        name,
        words,
        whose,
        stands_for,
    } = state.facts.clone();
    let of = state.of.clone();
    let words = words.split(',').map(str::trim).filter(|w| !w.is_empty());
    Picture {
        words: words.map(str::to_owned).collect(),
        whose,
        stands_for,
        name: name.clone(),
        made: made.clone(),
        ..of.unwrap_or_else(|| Picture::new(&name, made))
    }
}
