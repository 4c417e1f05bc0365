//! The pages of a story, each a section to read: heading, picture, sentences, cards, the day in small.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use super::drawing::shown;
use super::frame::{in_order, rope};
use super::markup::{attribute, direction, text, tongue};
use super::{Book, Picture};
use crate::story::cards::Card;
use crate::story::{Line, PageKind, Small, StepRef, Story, StoryPage};

/// The pages with what they need.
pub(super) struct Pages<'a> {
    story: &'a Story,
    finished: &'a str,
    pictures: &'a BTreeMap<&'a str, &'a Picture>,
    /// The steps that can be finished, in order.
    steps: Vec<StepRef>,
}

impl<'a> Pages<'a> {
    pub fn new(book: &'a Book, pictures: &'a BTreeMap<&'a str, &'a Picture>) -> Self {
        let mut pages = Self {
            story: &book.story,
            finished: &book.finished,
            pictures,
            steps: Vec::new(),
        };
        for page in &book.story.pages {
            for step in page.steps().filter(|s| !is_off(page, *s)) {
                if !pages.steps.contains(&step) {
                    pages.steps.push(step);
                }
            }
        }
        pages
    }

    /// Whether there is anything to finish.
    pub fn has_steps(&self) -> bool {
        !self.steps.is_empty()
    }

    /// All pages in order.
    pub fn write(&self, out: &mut String) {
        out.push_str("<main>\n");
        let count = self.story.pages.len();
        for (i, page) in self.story.pages.iter().enumerate() {
            self.page(out, page, (i + 1, count));
        }
        out.push_str("</main>\n");
    }

    fn page(&self, out: &mut String, page: &StoryPage, (number, count): (usize, usize)) {
        let _ = writeln!(
            out,
            "<section class=\"page\" aria-labelledby=\"h{number}\" data-page=\"Page {number} of \
             {count}\" data-count=\"{number} of {count}\">\n<div class=\"own line\" \
             aria-hidden=\"true\">{}<span class=\"peg\">{number}</span></div>",
            rope()
        );
        self.heading(out, page, number);
        let kind = if page.has_cards() { "cards" } else { "beside" };
        let alone = page.plain().all(|l| l.text.is_empty());
        let alone = if alone { " alone" } else { "" };
        let step = page.step.map(|s| self.step(s, &page.heading));
        let _ = writeln!(
            out,
            "<div class=\"{kind}{alone}\"{}>",
            step.as_ref().map_or("", |s| s.holder.as_str())
        );
        if !page.has_cards() {
            self.picture(out, page);
        }
        self.sentences(out, page.plain());
        self.day(out, &page.small);
        self.cards(out, page);
        out.push_str(step.as_ref().map_or("", |s| s.button.as_str()));
        out.push_str("</div>\n");
        if self.story.is_unread() && page.is_in_second() {
            out.push_str("<p class=\"unread\">Second language: not yet checked by a reader</p>\n");
        }
        out.push_str("</section>\n");
    }

    /// Where pictures stand alone, the words above them are only heard.
    fn heading(&self, out: &mut String, page: &StoryPage, number: usize) {
        let bare = self.story.is_bare();
        let heard = bare && (page.has_cards() || page.lines.is_empty());
        let class = if heard { " class=\"heard\"" } else { "" };
        let words = format!(
            "<h2 id=\"h{number}\" tabindex=\"-1\"{class}{}>{}</h2>",
            direction(&page.heading),
            text(&page.heading)
        );
        let second = page.heading_second.as_ref().filter(|_| !bare);
        match (second, &self.story.second) {
            (Some(words_second), Some(second)) => {
                let lang = tongue(&second.language, words_second);
                let other = format!("<p class=\"heading\"{lang}>{}</p>", text(words_second));
                out.push_str(&in_order(words, other, second.first));
            }
            _ => out.push_str(&words),
        }
        out.push('\n');
    }

    fn picture(&self, out: &mut String, page: &StoryPage) {
        let off = page.kind == PageKind::NotToday;
        let _ = writeln!(
            out,
            "<div class=\"tile{}\">{}{}</div>",
            if off { " off" } else { "" },
            self.drawing(page.symbol.as_str(), &page.heading),
            if off { NOT_TODAY } else { "" }
        );
    }

    /// What can be seen, for those who hear it; the words beside it are said anyway.
    fn drawing(&self, symbol: &str, label: &str) -> String {
        let shows = self.pictures.get(symbol).map_or("", |p| p.shows.as_str());
        let words = if shows.is_empty() { label } else { shows };
        shown(symbol, words)
    }

    fn sentences<'l>(&self, out: &mut String, lines: impl Iterator<Item = &'l Line>) {
        let mut lines = lines.filter(|l| !l.text.is_empty()).peekable();
        if lines.peek().is_none() {
            return;
        }
        out.push_str("<div class=\"said\">\n");
        for line in lines {
            out.push_str(&self.sentence(line));
            out.push('\n');
        }
        out.push_str("</div>\n");
    }

    /// A sentence, and the same in the second language, in the family's order.
    fn sentence(&self, line: &Line) -> String {
        let first = format!("<p{}>{}</p>", direction(&line.text), text(&line.text));
        let (Some(words), Some(second)) = (&line.second, &self.story.second) else {
            return first;
        };
        let lang = tongue(&second.language, words);
        let other = format!("<p{lang}>{}</p>", text(words));
        let both = in_order(first, other, second.first);
        format!("<div class=\"both\">{both}</div>")
    }

    fn day(&self, out: &mut String, small: &[Small]) {
        if small.is_empty() {
            return;
        }
        out.push_str("<ol class=\"day\">\n");
        for s in small {
            let class = if s.off { " class=\"off\"" } else { "" };
            let step = self.step(s.step, &s.card.label);
            let new = if s.new {
                "<b class=\"new\">New</b>"
            } else {
                ""
            };
            let off = if s.off { NOT_TODAY } else { "" };
            let _ = writeln!(
                out,
                "<li{class}{}><div class=\"tile\">{}{off}</div>{new}<p class=\"label\"{}>{}</p>{}</li>",
                step.holder,
                self.drawing(s.card.symbol.as_str(), &s.card.label),
                direction(&s.card.label),
                text(&s.card.label),
                step.button
            );
        }
        out.push_str("</ol>\n");
    }

    fn cards(&self, out: &mut String, page: &StoryPage) {
        let mut cards = page.with_cards().peekable();
        if cards.peek().is_none() {
            return;
        }
        out.push_str("<ul class=\"told\">\n");
        for (card, line) in cards {
            let step = line.step.map(|s| self.step(s, &card.label));
            let step = step.unwrap_or_default();
            let class = if line.off { " class=\"off\"" } else { "" };
            let words = match line.text.is_empty() {
                true => String::new(),
                false => format!("<div class=\"said\">{}</div>", self.sentence(line)),
            };
            let _ = writeln!(
                out,
                "<li{class}{}>{}{words}{}</li>",
                step.holder,
                self.card(card, line.off),
                step.button
            );
        }
        out.push_str("</ul>\n");
    }

    /// A card as the printed one looks, its words below the picture.
    fn card(&self, card: &Card, off: bool) -> String {
        format!(
            "<div class=\"tile\">{}{}<p class=\"label\"{}>{}</p></div>",
            self.drawing(card.symbol.as_str(), &card.label),
            if off { NOT_TODAY } else { "" },
            direction(&card.label),
            text(&card.label)
        )
    }

    /// How a step is found by the script, and its button; nothing for one that is not done today.
    fn step(&self, step: StepRef, label: &str) -> Step {
        let Some(i) = self.steps.iter().position(|s| *s == step) else {
            return Step::default();
        };
        let said = attribute(label);
        Step {
            holder: format!(
                " data-step=\"{i}\" data-name=\"{said}\" data-gone=\"{}\"",
                attribute(self.finished)
            ),
            button: format!(
                "<button type=\"button\" class=\"done\" hidden><span class=\"do\">Done</span>\
                 <span class=\"undo\">Take back</span><span class=\"heard\">: {}</span></button>\n",
                text(label)
            ),
        }
    }
}

/// Whether a page tells of a step as one that is not done today.
fn is_off(page: &StoryPage, step: StepRef) -> bool {
    let small = page.small.iter().any(|s| s.off && s.step == step);
    let line = |l: &Line| l.off && l.step == Some(step);
    small || page.kind == PageKind::NotToday || page.lines.iter().any(line)
}

/// Said on what lies face down.
const NOT_TODAY: &str = "<span class=\"not\">Not today</span>";

/// The pieces of a step that can be finished.
#[derive(Default)]
struct Step {
    /// Attributes of what holds its picture and button.
    holder: String,
    button: String,
}
