//! What stands around the pages: mark and title above, the rope, the buttons and the finished place
//! below.

use std::fmt::Write as _;

use super::Book;
use super::drawing::{MARK, used};
use super::markup::{attribute, direction, text, tongue};

/// The rope as it hangs, drawn once for a width and a height of a hundred; it is stretched to any
/// width, its thickness is not.
const ROPE: &str = "M-2 50C14 42 22 60 38 52S66 42 78 51 94 54 102 48";
/// The edge of the finished place, in the same way.
const BOWL: &str = "M0 0Q50 150 100 0";

/// Mark, title and rope.
pub(super) fn header(out: &mut String, book: &Book) {
    let story = &book.story;
    let mark = used(MARK, &book.mark_words);
    let _ = write!(
        out,
        "<header>\n<div class=\"name\"><span class=\"mark\">{mark}</span><div>"
    );
    let title = format!("<h1{}>{}</h1>", direction(&story.title), text(&story.title));
    match (&story.title_second, &story.second) {
        (Some(words), Some(second)) => {
            let lang = tongue(&second.language, words);
            let words = format!("<p class=\"title\"{lang}>{}</p>", text(words));
            out.push_str(&in_order(title, words, second.first));
        }
        _ => out.push_str(&title),
    }
    out.push_str("</div></div>\n");
    let _ = writeln!(
        out,
        "<div class=\"line\" aria-hidden=\"true\" hidden>{}<div class=\"beads\"></div></div>\n</header>",
        rope()
    );
}

/// Two pieces in the family's order.
pub(super) fn in_order(first: String, second: String, second_goes_first: bool) -> String {
    match second_goes_first {
        true => second + &first,
        false => first + &second,
    }
}

/// The rope, straight across.
pub(super) fn rope() -> String {
    format!(
        "<svg class=\"rope\" viewBox=\"0 0 100 100\" preserveAspectRatio=\"none\" \
         aria-hidden=\"true\"><path d=\"{ROPE}\"/><path d=\"{ROPE}\"/></svg>"
    )
}

/// What stands at the foot of every printed page.
pub(super) fn footer(out: &mut String, book: &Book) {
    let foot = text(&book.foot);
    let _ = writeln!(out, "<footer><p class=\"plan\">{foot}</p></footer>");
}

/// What is only there with the script: the finished place and the buttons.
pub(super) fn hold(out: &mut String, book: &Book, has_steps: bool) {
    out.push_str("<div class=\"hold\" hidden>\n");
    if has_steps {
        let _ = writeln!(
            out,
            "<section class=\"finished\" aria-labelledby=\"finished\"><svg class=\"bowl\" \
             viewBox=\"0 0 100 100\" preserveAspectRatio=\"none\" aria-hidden=\"true\">\
             <path d=\"{BOWL}\"/></svg><h2 id=\"finished\">{}</h2><ul></ul></section>",
            text(&book.finished)
        );
    }
    let _ = writeln!(
        out,
        "<nav aria-label=\"Pages\"><button type=\"button\" class=\"go back\">{}Back\
         </button><span class=\"count\"></span><button type=\"button\" class=\"go next\">Next{}\
         </button><p class=\"live\" aria-live=\"polite\" data-finished=\"{}\" \
         data-back=\"Taken back\"></p></nav>\n</div>",
        arrow("M14 5 7 12l7 7"),
        arrow("M10 5l7 7-7 7"),
        attribute(&book.finished)
    );
}

fn arrow(path: &str) -> String {
    format!("<svg viewBox=\"0 0 24 24\" aria-hidden=\"true\"><path d=\"{path}\"/></svg>")
}
