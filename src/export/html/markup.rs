//! Words as markup: nothing that a person typed is taken for a tag, and each bears its language and
//! direction.

use crate::text::runs_left;

/// Words between tags.
pub(super) fn text(words: &str) -> String {
    let mut out = String::with_capacity(words.len());
    for c in words.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            // What no HTML file may hold, such as a bell or a zero.
            c if c.is_control() && !c.is_whitespace() => {}
            c => out.push(c),
        }
    }
    out
}

/// Words between quotation marks inside a tag.
pub(super) fn attribute(words: &str) -> String {
    text(words).replace(['\n', '\r', '\t'], " ")
}

/// The attribute for words that run from right to left; nothing for others.
pub(super) fn direction(words: &str) -> &'static str {
    if runs_left(words) { " dir=\"rtl\"" } else { "" }
}

/// The attributes of words in a second language; always with a direction.
pub(super) fn tongue(language: &str, words: &str) -> String {
    let dir = if runs_left(words) { "rtl" } else { "ltr" };
    match language.trim() {
        "" => format!(" dir=\"{dir}\""),
        tag => format!(" lang=\"{}\" dir=\"{dir}\"", attribute(tag)),
    }
}
