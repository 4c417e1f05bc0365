//! Who is with whom in the water: small cases worked out by hand; all small cases, random ones and
//! days against brute force in files of their own.

mod brute;
mod costs;
mod days;
mod moments;
mod sound;

use daystrand::plan::pairing::{Bond, Broken, Moment, Need, Pair, Paired, Shortage, Why, moment};

/// Numbers that look random and are the same every time (a linear congruential generator with the
/// constants of Knuth's MMIX, from memory).
pub struct Numbers(pub u64);

impl Numbers {
    pub fn below(&mut self, n: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % n
    }

    /// True so many times in a hundred.
    pub fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }
}

pub fn pair(participant: usize, person: usize) -> Pair {
    Pair {
        participant,
        person,
    }
}

/// Participants 0, 1, … with their needs, people 0 to `free`, nothing held.
pub fn water(needs: &[u32], free: usize) -> Moment {
    let need = |(participant, &people)| Need {
        participant,
        people,
    };
    Moment {
        in_water: needs.iter().enumerate().map(need).collect(),
        free: (0..free).collect(),
        held: vec![],
    }
}

/// Bonds from rows of letters: `-` never, `p` plain, `t` trainer, `w` wanted.
pub fn bonds(rows: &[&str]) -> Vec<Vec<Bond>> {
    let bond = |c| match c {
        '-' => Bond::Never,
        'p' => Bond::Plain,
        't' => Bond::Trainer,
        'w' => Bond::Wanted,
        other => panic!("no bond {other}"),
    };
    rows.iter().map(|r| r.chars().map(bond).collect()).collect()
}

fn pairs(of: &Paired) -> Vec<(usize, usize)> {
    of.pairs.iter().map(|p| (p.participant, p.person)).collect()
}

#[test]
fn everyone_has_exactly_the_people_they_need() {
    let paired = moment(&water(&[1, 2], 4), &bonds(&["pppp", "pppp"]), &[]);
    assert!(paired.is_full());
    assert_eq!(pairs(&paired), [(0, 0), (1, 1), (1, 2)], "lowest numbers");
}

#[test]
fn someone_gives_way_to_whom_only_they_can_be_with() {
    // Person 0 would be first for participant 0, but is the only one for participant 1.
    let paired = moment(&water(&[1, 1], 2), &bonds(&["pp", "p-"]), &[]);
    assert_eq!(pairs(&paired), [(0, 1), (1, 0)]);
}

#[test]
fn wanted_pairs_come_before_trainers_and_these_before_the_same_people() {
    let before = [pair(0, 0), pair(1, 1)];
    let wanted = moment(&water(&[1, 1], 2), &bonds(&["pw", "pt"]), &before);
    assert_eq!(pairs(&wanted), [(0, 1), (1, 0)]);
    let trainer = moment(&water(&[1, 1], 2), &bonds(&["pp", "tp"]), &before);
    assert_eq!(pairs(&trainer), [(0, 1), (1, 0)]);
    let same = moment(&water(&[1, 1], 2), &bonds(&["pp", "pp"]), &[pair(0, 1)]);
    assert_eq!(pairs(&same), [(0, 1), (1, 0)]);
}

#[test]
fn one_wanted_pair_weighs_more_than_all_trainers() {
    // Wanted 0-0 leaves the two others without their trainers.
    let kinship = bonds(&["wt-", "t-p", "-pt"]);
    let paired = moment(&water(&[1, 1, 1], 3), &kinship, &[]);
    assert_eq!(pairs(&paired), [(0, 0), (1, 2), (2, 1)]);
}

#[test]
fn a_place_more_weighs_more_than_a_wanted_pair() {
    let paired = moment(&water(&[1, 1], 2), &bonds(&["wp", "p-"]), &[]);
    assert_eq!(pairs(&paired), [(0, 1), (1, 0)]);
}

#[test]
fn what_is_held_by_hand_comes_before_what_is_wanted() {
    let mut water = water(&[1, 1], 3);
    water.held = vec![pair(0, 2)];
    let paired = moment(&water, &bonds(&["wpp", "ppw"]), &[pair(0, 1)]);
    assert_eq!(pairs(&paired), [(0, 2), (1, 0)]);
    assert_eq!((paired.broken, paired.missing), (vec![], 0));
}

#[test]
fn what_is_held_and_cannot_be_is_told_with_the_reason() {
    let mut water = water(&[1, 1], 4);
    water.held = [(1, 1), (7, 0), (0, 9), (0, 3), (0, 1), (1, 2), (1, 1)]
        .map(|(participant, person)| pair(participant, person))
        .to_vec();
    let paired = moment(&water, &bonds(&["ppp-", "pppp"]), &[]);
    let broken = |participant, person, why| Broken {
        pair: pair(participant, person),
        why,
    };
    assert_eq!(
        paired.broken,
        [
            broken(7, 0, Why::NotInWater),
            broken(0, 9, Why::NotFree),
            broken(0, 3, Why::Never),
            broken(0, 1, Why::Elsewhere),
            broken(1, 2, Why::Enough),
        ]
    );
    assert_eq!(pairs(&paired), [(0, 0), (1, 1)]);
}

#[test]
fn a_shortage_names_the_fewest_it_concerns() {
    // Participants 1 and 3 have person 2 only; the others have enough.
    let kinship = bonds(&["pppp", "--p-", "pp-p", "--p-"]);
    let paired = moment(&water(&[1; 4], 4), &kinship, &[]);
    assert_eq!(paired.missing, 1);
    assert_eq!(paired.pairs.len(), 3);
    let shortage = Shortage {
        participants: vec![1, 3],
        people: vec![2],
        missing: 1,
        by_hand: false,
    };
    assert_eq!(paired.shortage, Some(shortage));
}

#[test]
fn a_shortage_made_by_hand_is_told_as_such() {
    let mut water = water(&[1, 1], 2);
    water.held = vec![pair(0, 0)];
    let kinship = bonds(&["pp", "p-"]);
    let paired = moment(&water, &kinship, &[]);
    let shortage = paired.shortage.unwrap();
    assert!(shortage.by_hand);
    assert_eq!(shortage.participants, [1]);
    assert_eq!((shortage.people, shortage.missing), (vec![], 1));
    assert_eq!(paired.pairs, [pair(0, 0)]);
    // Held or not, participant 1 of the next has nobody.
    let alone = moment(&water, &bonds(&["pp", "--"]), &[]);
    assert!(!alone.shortage.unwrap().by_hand);
}

#[test]
fn people_missing_are_counted_in_places() {
    let paired = moment(&water(&[3, 1], 2), &bonds(&["pp", "pp"]), &[]);
    assert_eq!((paired.pairs.len(), paired.missing), (2, 2));
    let shortage = paired.shortage.unwrap();
    assert_eq!((shortage.participants, shortage.missing), (vec![0], 1));
    let huge = moment(&water(&[u32::MAX, u32::MAX], 2), &bonds(&["pp", "pp"]), &[]);
    assert_eq!((huge.pairs.len(), huge.missing), (2, u32::MAX));
}

#[test]
fn nobody_in_the_water_and_nobody_free() {
    let nobody = moment(&Moment::default(), &[], &[]);
    assert_eq!(nobody, Paired::default());
    assert!(nobody.is_full());
    let alone = moment(&water(&[1], 0), &[], &[]);
    assert_eq!((alone.pairs.len(), alone.missing), (0, 1));
    let needs_none = moment(&water(&[0], 1), &bonds(&["p"]), &[]);
    assert!(needs_none.is_full() && needs_none.pairs.is_empty());
}

#[test]
fn lists_out_of_order_or_with_doubles_give_the_same() {
    let mut water = water(&[2, 1], 3);
    let kinship = bonds(&["ppp", "pp-"]);
    let orderly = moment(&water, &kinship, &[]);
    water.in_water.reverse();
    water.in_water.push(Need {
        participant: 0,
        people: 1,
    });
    water.free = vec![2, 0, 1, 0, 2];
    assert_eq!(moment(&water, &kinship, &[]), orderly);
}
