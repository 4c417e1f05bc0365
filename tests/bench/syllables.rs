//! How many words the rules for syllables get right, on the 5,000 commonest and on 5,000 further
//! ones. `cargo bench --bench syllables` prints shares and, of the commonest only, the commonest
//! misses: the others stay unseen, so that they keep judging the rules.

use daystrand::story::measure::syllables;

const COMMON: &str = include_str!("../cases/published/syllables/common.txt");
const HELD_OUT: &str = include_str!("../cases/published/syllables/held-out.txt");

/// How many misses are printed.
const SHOWN: usize = 60;

fn main() {
    let misses = share("5,000 commonest words", COMMON);
    share("words 5,001 to 10,000", HELD_OUT);
    println!("\nthe commonest misses (word, dictionary, rules):");
    for (word, wanted, found) in misses.iter().take(SHOWN) {
        println!("{word:>16} {wanted} {found}");
    }
}

/// Prints the share of a list; gives the misses, commonest first.
fn share(name: &str, list: &'static str) -> Vec<(&'static str, usize, usize)> {
    let words: Vec<_> = list
        .lines()
        .filter(|l| !l.starts_with('#'))
        .filter_map(|l| l.split_once(' '))
        .filter_map(|(word, count)| Some((word, count.parse().ok()?, syllables(word))))
        .collect();
    let misses: Vec<_> = words.iter().copied().filter(|(_, w, f)| w != f).collect();
    let right = words.len() - misses.len();
    let percent = 100.0 * right as f64 / words.len() as f64;
    println!(
        "{name:<24} {right:>5} of {:>5} right, {percent:.2} %",
        words.len()
    );
    misses
}
