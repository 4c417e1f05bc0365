//! Places at least cost, every small matrix against every choice.

use daystrand::plan::pairing::assign::cheapest;

/// All matrices of three places and three people with costs of zero, one, or a pair that may not
/// be: most places first, then the least cost, then the lowest numbers.
#[test]
fn every_matrix_of_three_by_three() {
    for number in 0..3_usize.pow(9) {
        let digit = |i: u32| number / 3_usize.pow(i) % 3;
        let cost = |i: u32| [Some(0), Some(1), None][digit(i)];
        let row = |r: u32| (0..3).map(|c| cost(3 * r + c)).collect();
        let costs: Vec<Vec<Option<i64>>> = (0..3).map(row).collect();
        let ours = cheapest(&costs);
        assert_eq!(key(&costs, &ours), best(&costs), "{costs:?}");
    }
}

/// Empty places, cost, and the numbers with an empty place as the highest.
type Key = (usize, i64, Vec<usize>);

fn key(costs: &[Vec<Option<i64>>], chosen: &[Option<usize>]) -> Option<Key> {
    let mut sum = 0;
    for (row, column) in chosen.iter().enumerate() {
        if let Some(column) = column {
            sum += costs[row][*column]?;
        }
    }
    let empty = chosen.iter().filter(|c| c.is_none()).count();
    let numbers = chosen.iter().map(|c| c.unwrap_or(usize::MAX));
    Some((empty, sum, numbers.collect()))
}

fn best(costs: &[Vec<Option<i64>>]) -> Option<Key> {
    let choice = |n: usize| Some(n).filter(|&n| n < 3);
    let all = (0..64).map(|n| [n % 4, n / 4 % 4, n / 16].map(choice));
    let apart = |c: &[Option<usize>; 3]| {
        let twice = |a: usize, b: usize| c[a].is_some() && c[a] == c[b];
        !twice(0, 1) && !twice(0, 2) && !twice(1, 2)
    };
    all.filter(apart).filter_map(|c| key(costs, &c)).min()
}
