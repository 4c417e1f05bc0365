//! What has to be brought for a session: of things that are used one after the other, the greatest
//! number at one time.

/// The list for activities that follow one another, each with its own list such as "8 paddles".
/// The same words with different numbers become one entry with the greatest number; order is that
/// of first mention.
pub(super) fn needed<'a>(lists: impl Iterator<Item = &'a [String]>) -> Vec<String> {
    let mut all: Vec<(Option<u64>, &str)> = Vec::new();
    for entry in lists.flatten() {
        let (number, thing) = counted(entry);
        if thing.is_empty() {
            continue;
        }
        let same = |t: &str| t.to_lowercase() == thing.to_lowercase();
        match all.iter_mut().find(|(_, t)| same(t)) {
            Some((most, _)) => *most = (*most).max(number),
            None => all.push((number, thing)),
        }
    }
    all.into_iter()
        .map(|(number, thing)| match number {
            Some(n) => format!("{n} {thing}"),
            None => thing.to_owned(),
        })
        .collect()
}

/// "8 paddles" as a number and a thing.
fn counted(entry: &str) -> (Option<u64>, &str) {
    let entry = entry.trim();
    let digits = entry.len() - entry.trim_start_matches(|c: char| c.is_ascii_digit()).len();
    match entry[..digits].parse() {
        Ok(n) if entry[digits..].starts_with(' ') => (Some(n), entry[digits..].trim_start()),
        _ => (None, entry),
    }
}

#[cfg(test)]
mod tests {
    use super::needed;

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
}
