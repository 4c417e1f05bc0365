//! How the file is set out: JSON that a person can read, small lists and small things on one line.

use serde::Serialize;

/// Longest line that several short ones are joined to.
const LINE: usize = 100;

/// A value as JSON text, in the order of its fields, ending in a line break.
pub(super) fn text<T: Serialize>(value: &T) -> Result<String, serde_json::Error> {
    let lists = fold(&serde_json::to_string_pretty(value)?, &['[', '{']);
    // Once more, for things that hold a list which is on one line now.
    let mut text = fold(&lists, &['{']);
    text.push('\n');
    Ok(text)
}

/// Joins every innermost list or object, of those that begin so, that fits on a line. Text never holds a raw line break, so
/// lines are all there is to look at.
fn fold(pretty: &str, begins: &[char]) -> String {
    let lines: Vec<&str> = pretty.lines().collect();
    let mut out: Vec<String> = Vec::with_capacity(lines.len());
    let mut i = 0;
    while i < lines.len() {
        match joined(&lines[i..], begins) {
            Some((line, taken)) => {
                out.push(line);
                i += taken;
            }
            None => {
                out.push(lines[i].to_owned());
                i += 1;
            }
        }
    }
    out.join("\n")
}

/// The line that a list or object beginning here makes, and how many lines that takes.
fn joined(lines: &[&str], begins: &[char]) -> Option<(String, usize)> {
    let open = lines[0];
    if !open.ends_with(begins) {
        return None;
    }
    let gap = match open.as_bytes().last()? {
        b'[' => "",
        b'{' => " ",
        _ => return None,
    };
    let mut line = open.to_owned();
    line += gap;
    for (n, next) in lines.iter().enumerate().skip(1) {
        let inner = next.trim_start();
        if inner.starts_with(['}', ']']) {
            line += gap;
            line += inner;
            return (line.chars().count() <= LINE).then_some((line, n + 1));
        }
        if inner.ends_with(['{', '[']) || line.len() > 8 * LINE {
            return None;
        }
        if n > 1 {
            line.push(' ');
        }
        line += inner;
    }
    None
}
