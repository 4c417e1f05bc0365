//! The story on paper: one page a step or a part of the day, the picture always at the same place on
//! the left, the sentences large beside it or below, each on a line of its own, and the day as a rope
//! above.

mod draw;
mod leaves;
mod measures;

use super::Turn;
use super::desk::{Desk, Person};
use super::fit::report;
use crate::page::Page;
use crate::story::{Story, StoryPage, tell};
use crate::text::missing;
use crate::units::Size;
pub(super) use draw::draw_card;
use leaves::{Leaf, flow, heading_of};
use measures::Measures;

/// The pages of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let size = desk.page_size(Turn::Portrait);
    on_paper(desk, person, size)
}

/// The same on pages of a size.
pub(super) fn on_paper(desk: &mut Desk<'_>, person: &Person<'_>, size: Size) -> Vec<Page> {
    let story = tell(desk.club, desk.session, &person.board, person.who);
    let m = Measures::of(person, size);
    let mut leaves: Vec<Leaf<'_>> = Vec::new();
    for page in &story.pages {
        note_page(desk, person, page, &m);
        leaves.extend(flow(&story, page, &m));
    }
    let count = leaves.len();
    leaves
        .iter()
        .enumerate()
        .map(|(i, leaf)| draw::draw(desk, person, (&story, &m), leaf, (i, count)))
        .collect()
}

/// On which sheet of paper each page of the story begins, and on which it ends; counted from one, as
/// at the foot of each.
pub(super) fn numbers(desk: &Desk<'_>, person: &Person<'_>, story: &Story) -> Vec<(usize, usize)> {
    let m = Measures::of(person, desk.page_size(Turn::Portrait));
    let mut last = 0;
    let leaves = story.pages.iter().map(|page| flow(story, page, &m).len());
    leaves
        .map(|leaves| {
            let first = last + 1;
            last += leaves;
            (first, last)
        })
        .collect()
}

/// What cannot be printed as it is: a heading that is too long, letters that no font has.
fn note_page(desk: &mut Desk<'_>, person: &Person<'_>, page: &StoryPage, m: &Measures) {
    let board = desk.board_spot(person);
    let spot = page.step.map_or(board, |s| desk.step_spot(person, s));
    let over: &[usize] = if heading_of(page, m).cut { &[0] } else { &[] };
    let hint = "Use fewer or shorter words.";
    let labels = [(page.heading.as_str(), spot)];
    report(desk, person, &labels, over, "story", hint);
    let second = page.lines.iter().filter_map(|l| l.second.as_deref());
    let second = second.chain(page.heading_second.as_deref());
    for sentence in page.sentences().chain(second) {
        desk.note_missing(spot, &missing(sentence));
    }
}
