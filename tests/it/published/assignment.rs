//! Pairing against worked examples of the literature and against reference solvers: costs from
//! SciPy, sizes of matchings from NetworkX (versions in the files under `tests/cases/pairing`).

use std::fs;

use daystrand::plan::pairing::assign::cheapest;
use daystrand::plan::pairing::{Bond, Moment, Need, moment};

type Costs = Vec<Vec<Option<i64>>>;

fn lines(name: &str) -> Vec<String> {
    let path = format!("{}/tests/cases/pairing/{name}", env!("CARGO_MANIFEST_DIR"));
    let file = fs::read_to_string(path).unwrap();
    let lines = file
        .lines()
        .filter(|l| !l.starts_with('#') && !l.is_empty());
    lines.map(str::to_owned).collect()
}

/// How many rows are assigned and at which cost, after a look that no column is taken twice.
fn solved(costs: &Costs) -> (usize, i64) {
    let chosen = cheapest(costs);
    assert_eq!(chosen.len(), costs.len());
    let mut columns: Vec<usize> = chosen.iter().flatten().copied().collect();
    columns.sort_unstable();
    assert!(
        columns.windows(2).all(|w| w[0] < w[1]),
        "twice: {columns:?}"
    );
    let cost = |(row, column): (usize, Option<usize>)| {
        column.map(|c| costs[row][c].expect("only pairs that may be"))
    };
    (
        columns.len(),
        chosen.into_iter().enumerate().filter_map(cost).sum(),
    )
}

fn matrix<const N: usize>(rows: [[i64; N]; N], sign: i64) -> Costs {
    rows.map(|row| row.map(|c| Some(sign * c)).to_vec())
        .to_vec()
}

/// H. W. Kuhn, The Hungarian method for the assignment problem, Naval Research Logistics Quarterly
/// 2, 1955, 83-97, section 2: four individuals and four jobs, who qualifies for which; the largest
/// number that can be assigned is three. Matrix and number from memory.
#[test]
fn kuhns_individuals_who_qualify_for_jobs() {
    let qualifies = ["1110", "0011", "0001", "0001"];
    let bond = |c| if c == '1' { Bond::Plain } else { Bond::Never };
    let bonds: Vec<Vec<Bond>> = qualifies.map(|r| r.chars().map(bond).collect()).to_vec();
    let in_water = (0..4).map(|participant| Need {
        participant,
        people: 1,
    });
    let day = Moment {
        in_water: in_water.collect(),
        free: (0..4).collect(),
        held: vec![],
    };
    let paired = moment(&day, &bonds, &[]);
    assert_eq!((paired.pairs.len(), paired.missing), (3, 1));
    // The third and the fourth qualify for one job, the same.
    let shortage = paired.shortage.unwrap();
    assert_eq!(
        (shortage.participants, shortage.people),
        (vec![2, 3], vec![3])
    );
}

/// The same paper, section 3: ratings of four individuals in four jobs, to be as great as possible
/// together. Ratings from memory; the sum 27 follows from all 24 ways and is checked with them.
#[test]
fn kuhns_ratings() {
    let ratings = [[8, 7, 9, 9], [5, 2, 7, 8], [6, 1, 4, 9], [2, 3, 2, 6]];
    assert_eq!(best_of_all_ways(&matrix(ratings, -1)), -27);
    assert_eq!(solved(&matrix(ratings, -1)), (4, -27));
    assert_eq!(cheapest(&matrix(ratings, -1)), [0, 2, 3, 1].map(Some));
}

/// The example that runs through chapter 4 of R. Burkard, M. Dell'Amico, S. Martello, Assignment
/// Problems, SIAM, 2009. From memory; the least cost 17 follows from all 24 ways too.
#[test]
fn the_example_of_a_textbook() {
    let costs = [[7, 9, 8, 9], [2, 8, 5, 7], [1, 6, 6, 9], [3, 6, 2, 2]];
    assert_eq!(best_of_all_ways(&matrix(costs, 1)), 17);
    assert_eq!(solved(&matrix(costs, 1)), (4, 17));
}

fn best_of_all_ways(costs: &Costs) -> i64 {
    fn from(costs: &Costs, row: usize, taken: &mut Vec<usize>) -> i64 {
        if row == costs.len() {
            return 0;
        }
        let mut least = i64::MAX;
        for column in 0..costs.len() {
            if !taken.contains(&column) {
                taken.push(column);
                least = least.min(costs[row][column].unwrap() + from(costs, row + 1, taken));
                taken.pop();
            }
        }
        least
    }
    from(costs, 0, &mut Vec::new())
}

#[test]
fn costs_of_a_reference_solver() {
    let all = lines("costs.txt");
    assert_eq!(all.len(), 84);
    for line in all {
        let fields: Vec<&str> = line.split(';').collect();
        let cost = |text: &str| (text != "x").then(|| text.parse().unwrap());
        let row = |text: &str| text.trim().split(' ').map(cost).collect();
        let costs: Costs = fields[3].split('/').map(row).collect();
        let (rows, columns) = fields[0].split_once('x').unwrap();
        assert_eq!(costs.len().to_string(), rows);
        assert!(costs.iter().all(|r| r.len().to_string() == columns));
        let wanted = (fields[1].parse().unwrap(), fields[2].parse().unwrap());
        assert_eq!(solved(&costs), wanted, "{line}");
    }
}

#[test]
fn sizes_of_matchings_of_a_reference_solver() {
    let all = lines("graphs.txt");
    assert_eq!(all.len(), 120);
    let mut full = 0;
    for line in all {
        let fields: Vec<&str> = line.split(';').collect();
        let people: usize = fields[0].parse().unwrap();
        let mut day = Moment {
            free: (0..people).collect(),
            ..Moment::default()
        };
        let mut bonds = Vec::new();
        for (participant, text) in fields[2].split('/').enumerate() {
            let (need, with) = text.split_once(':').unwrap();
            day.in_water.push(Need {
                participant,
                people: need.trim().parse().unwrap(),
            });
            let mut row = vec![Bond::Never; people];
            for person in with.split_whitespace() {
                row[person.parse::<usize>().unwrap()] = Bond::Plain;
            }
            bonds.push(row);
        }
        let paired = moment(&day, &bonds, &[]);
        let needed: u32 = day.in_water.iter().map(|n| n.people).sum();
        assert_eq!(paired.pairs.len().to_string(), fields[1], "{line}");
        assert_eq!(
            paired.missing as usize,
            needed as usize - paired.pairs.len()
        );
        full += usize::from(paired.is_full());
    }
    assert_eq!(full, 17, "graphs in which everyone has all their people");
}

/// The greatest and the least numbers there are do not overflow.
#[test]
fn costs_without_measure() {
    let (most, least) = (Some(i64::MAX), Some(i64::MIN));
    let costs = vec![vec![most, least], vec![least, None], vec![most, most]];
    assert_eq!(cheapest(&costs), [Some(1), Some(0), None]);
    assert_eq!(cheapest(&[vec![], vec![most]]), [None, Some(0)]);
    assert_eq!(cheapest(&[]), []);
}
