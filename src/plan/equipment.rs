//! What has to be brought for a session: of things that are used one after the other, the greatest
//! number at one time.

/// A thing and how many of it, if a number was given.
type Counted<'a> = (Option<u64>, &'a str);

/// The list for activities that follow one another, each with its own list such as "8 paddles".
/// The same words with different numbers become one entry with the greatest number; order is that
/// of first mention.
pub fn needed<'a>(lists: impl Iterator<Item = &'a [String]>) -> Vec<String> {
    peak(lists).into_iter().map(in_words).collect()
}

/// What the first lists need and the others have nothing of.
pub fn only_in<'a>(
    lists: impl Iterator<Item = &'a [String]>,
    others: impl Iterator<Item = &'a [String]>,
) -> Vec<String> {
    let others = peak(others);
    let there = |thing: &str| others.iter().any(|(_, o)| same(o, thing));
    let all = peak(lists).into_iter();
    all.filter(|(_, t)| !there(t)).map(in_words).collect()
}

/// What the first lists need and the others have nothing of, or fewer.
pub fn beyond<'a>(
    lists: impl Iterator<Item = &'a [String]>,
    others: impl Iterator<Item = &'a [String]>,
) -> Vec<String> {
    let others = peak(others);
    let enough = |(n, thing): &Counted<'_>| others.iter().any(|(o, t)| same(t, thing) && o >= n);
    let all = peak(lists).into_iter();
    all.filter(|c| !enough(c)).map(in_words).collect()
}

fn peak<'a>(lists: impl Iterator<Item = &'a [String]>) -> Vec<Counted<'a>> {
    let mut all: Vec<Counted<'a>> = Vec::new();
    for entry in lists.flatten() {
        let (number, thing) = counted(entry);
        if thing.is_empty() {
            continue;
        }
        match all.iter_mut().find(|(_, t)| same(t, thing)) {
            Some((most, _)) => *most = (*most).max(number),
            None => all.push((number, thing)),
        }
    }
    all
}

fn same(a: &str, b: &str) -> bool {
    a.to_lowercase() == b.to_lowercase()
}

fn in_words((number, thing): Counted<'_>) -> String {
    match number {
        Some(n) => format!("{n} {thing}"),
        None => thing.to_owned(),
    }
}

/// "8 paddles" as a number and a thing.
fn counted(entry: &str) -> Counted<'_> {
    let entry = entry.trim();
    let digits = entry.len() - entry.trim_start_matches(|c: char| c.is_ascii_digit()).len();
    match entry[..digits].parse() {
        Ok(n) if entry[digits..].starts_with(' ') => (Some(n), entry[digits..].trim_start()),
        _ => (None, entry),
    }
}

#[cfg(test)]
mod tests {
    use super::{beyond, needed, only_in};

    #[test]
    fn the_greatest_number_at_one_time_is_brought() {
        let lists: [Vec<String>; 3] = [
            vec!["8 paddles".into(), "mat path".into()],
            vec!["4 boats".into(), "10 paddles".into(), " ".into()],
            vec!["Mat path".into(), "3m rope".into(), "2 Paddles".into()],
        ];
        let all = needed(lists.iter().map(Vec::as_slice));
        assert_eq!(all, ["10 paddles", "mat path", "4 boats", "3m rope"]);
    }

    #[test]
    fn what_is_there_already_is_not_brought_again() {
        let list = |things: &[&str]| -> Vec<Vec<String>> {
            vec![things.iter().map(|t| (*t).to_owned()).collect()]
        };
        let boat = list(&["10 paddles", "4 boats", "a rope"]);
        let game = list(&["8 Paddles", "2 balls", "6 boats", "A rope"]);
        fn slices(lists: &[Vec<String>]) -> impl Iterator<Item = &[String]> {
            lists.iter().map(Vec::as_slice)
        }
        assert_eq!(only_in(slices(&boat), slices(&game)), Vec::<String>::new());
        assert_eq!(only_in(slices(&game), slices(&boat)), ["2 balls"]);
        assert_eq!(beyond(slices(&game), slices(&boat)), ["2 balls", "6 boats"]);
    }
}
