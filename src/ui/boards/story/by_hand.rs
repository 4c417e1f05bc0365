//! What a person does to the sentences of a page, as changes of its words.

use crate::model::edit::Edit;
use crate::model::rewriting::{LineRef, PageRef, PageWords, Rewritten};
use crate::story::{Line, StoryPage};
use crate::ui::desk::Desk;

/// What was changed by hand on a page of the chosen participant's story.
pub fn words(desk: &Desk<'_>, at: PageRef) -> PageWords {
    let story = desk
        .view
        .session
        .zip(desk.view.participant)
        .and_then(|(s, p)| s.stories.get(&p.id));
    story.and_then(|s| s.page(at)).cloned().unwrap_or_default()
}

/// Asks for a page with these changes.
pub fn put(desk: &mut Desk<'_>, at: PageRef, words: PageWords) {
    if let (Some(session), Some(person)) = (desk.view.session, desk.view.participant) {
        desk.edit(Edit::StoryPage(session.id, person.id, at, words));
    }
}

/// The whole story as the program tells it.
pub fn all_as_told(desk: &mut Desk<'_>) {
    if let (Some(session), Some(person)) = (desk.view.session, desk.view.participant) {
        desk.edit(Edit::StoryAsTold(session.id, person.id));
    }
}

/// A sentence in other words. The program's own words take the change back; an emptied sentence is
/// hidden, or gone if a person had added it.
pub fn reword(words: &mut PageWords, line: &Line, text: &str) {
    let text = text.trim().to_owned();
    match (line.at, &line.told) {
        (LineRef::Added(n), _) if !text.is_empty() => drop(words.added.insert(n, text)),
        (LineRef::Added(_), _) => words.take_back(line.at),
        (at, _) if text.is_empty() => drop(words.hidden.insert(at)),
        (at, Some(told)) if same(told, &text) => drop(words.texts.remove(&at)),
        (at, told) => {
            let was = told.clone().unwrap_or_default();
            words.texts.insert(at, Rewritten { text, was });
        }
    }
}

/// Whether two texts are the same words: a blank that holds words together is like any other.
fn same(a: &str, b: &str) -> bool {
    a.split_whitespace().eq(b.split_whitespace())
}

/// What a person wrote stays, and fits the plan as it is now.
pub fn keep(words: &mut PageWords, line: &Line) {
    if let (Some(mine), Some(told)) = (words.texts.get_mut(&line.at), &line.told) {
        mine.was.clone_from(told);
    }
}

/// A sentence at another place on its page.
pub fn shift(words: &mut PageWords, page: &StoryPage, from: usize, to: usize) {
    let mut order: Vec<LineRef> = page.lines.iter().map(|l| l.at).collect();
    let line = order.remove(from);
    order.insert(to.min(order.len()), line);
    words.order = order;
}

/// A sentence of one's own at the end; gives its name.
pub fn add(words: &mut PageWords, page: &StoryPage, text: &str) -> LineRef {
    let n = words.next_number();
    words.added.insert(n, text.trim().to_owned());
    let mut order: Vec<LineRef> = page.lines.iter().map(|l| l.at).collect();
    order.push(LineRef::Added(n));
    words.order = order;
    LineRef::Added(n)
}
