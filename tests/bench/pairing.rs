//! A million random moments paired: how many break a rule (none may) and how many a second; then
//! whole days. `cargo bench --bench pairing` prints it; nothing here is a test.

use std::time::{Duration, Instant};

use daystrand::plan::pairing::{Bond, Day, Moment, Need, Pair, Paired, day, moment};

/// A linear congruential generator with the constants of Knuth's MMIX, from memory.
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, n: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % n
    }
}

const MOMENTS: usize = 1_000_000;

fn main() {
    let mut numbers = Numbers(1);
    let (mut violations, mut full, mut took) = (0, 0, Duration::ZERO);
    for _ in 0..MOMENTS {
        let (bonds, water) = random(&mut numbers, 8, 12);
        let start = Instant::now();
        let paired = moment(&water, &bonds, &[]);
        took += start.elapsed();
        violations += violated(&water, &bonds, &paired);
        full += usize::from(paired.is_full());
    }
    println!(
        "{MOMENTS} moments, up to 8 in the water and 12 people: {violations} violations, everyone \
         has their people in {full}, {:.0} moments a second",
        MOMENTS as f64 / took.as_secs_f64()
    );
    println!("days: moments  participants  people    in time  certain  handovers");
    for (moments, participants, people) in [(4, 6, 8), (8, 8, 12), (12, 12, 18), (16, 20, 30)] {
        days(&mut numbers, moments, participants, people);
    }
}

/// Twenty random days; the time is of one.
fn days(numbers: &mut Numbers, moments: usize, participants: usize, people: usize) {
    let (mut took, mut most, mut certain, mut handovers) = (Duration::ZERO, Duration::ZERO, 0, 0);
    for _ in 0..20 {
        let bonds = bonds(numbers, participants, people);
        let moments = (0..moments).map(|_| water(numbers, participants, people));
        let random = Day {
            moments: moments.collect(),
            bonds,
        };
        let start = Instant::now();
        let paired = day(&random);
        most = most.max(start.elapsed());
        took += start.elapsed();
        certain += usize::from(paired.fewest);
        handovers += paired.handovers.len();
        for (moment, paired) in random.moments.iter().zip(&paired.moments) {
            assert_eq!(violated(moment, &random.bonds, paired), 0);
        }
    }
    println!(
        "{moments:>13} {participants:>13} {people:>7} {:>7.1} ms {certain:>4}/20 {handovers:>10}   \
         longest {:.1} ms",
        took.as_secs_f64() * 50.0,
        most.as_secs_f64() * 1e3
    );
}

fn random(numbers: &mut Numbers, participants: usize, people: usize) -> (Vec<Vec<Bond>>, Moment) {
    let (participants, people) = (1 + numbers.below(participants), 1 + numbers.below(people));
    let bonds = bonds(numbers, participants, people);
    let mut water = water(numbers, participants, people);
    let held = |numbers: &mut Numbers| Pair {
        participant: numbers.below(participants),
        person: numbers.below(people),
    };
    water.held = (0..numbers.below(3)).map(|_| held(numbers)).collect();
    (bonds, water)
}

fn bonds(numbers: &mut Numbers, participants: usize, people: usize) -> Vec<Vec<Bond>> {
    let bond = |numbers: &mut Numbers| match numbers.below(20) {
        0..3 => Bond::Never,
        3..17 => Bond::Plain,
        17..19 => Bond::Trainer,
        _ => Bond::Wanted,
    };
    let row = |numbers: &mut Numbers| (0..people).map(|_| bond(numbers)).collect();
    (0..participants).map(|_| row(numbers)).collect()
}

fn water(numbers: &mut Numbers, participants: usize, people: usize) -> Moment {
    let who: Vec<usize> = (0..participants)
        .filter(|_| numbers.below(10) < 8)
        .collect();
    let need = |participant| Need {
        participant,
        people: 1 + numbers.below(8) as u32 / 7,
    };
    Moment {
        in_water: who.into_iter().map(need).collect(),
        free: (0..people).filter(|_| numbers.below(10) < 9).collect(),
        held: vec![],
    }
}

/// How often a rule is broken: someone not free or never to be paired, with two at once, with
/// someone who is not in the water, more people than needed, or fewer without being told.
fn violated(water: &Moment, bonds: &[Vec<Bond>], paired: &Paired) -> usize {
    let mut count = 0;
    for (i, pair) in paired.pairs.iter().enumerate() {
        let never = bonds[pair.participant][pair.person] == Bond::Never;
        let twice = paired.pairs[..i].iter().any(|p| p.person == pair.person);
        let in_water = water
            .in_water
            .iter()
            .any(|n| n.participant == pair.participant);
        let free = water.free.contains(&pair.person);
        count += usize::from(never || twice || !in_water || !free);
    }
    let mut missing = 0;
    for need in &water.in_water {
        let has = paired.people_of(need.participant).count();
        count += usize::from(has > need.people as usize);
        missing += (need.people as usize).saturating_sub(has);
    }
    count += usize::from(missing != paired.missing as usize);
    count + usize::from(paired.shortage.is_some() == paired.is_full())
}
