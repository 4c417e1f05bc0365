//! How much chance there is in the tests of properties: the same numbers on every machine, so that
//! a change is blamed for what it broke and for nothing else; and as many new ones as wanted when
//! someone goes looking.

use proptest::test_runner::{Config, RngSeed};

/// Nothing but a number that stays.
const ALWAYS: u64 = 1_103_515_245;

/// So many cases, the same each time. With `DAYSTRAND_CHANCE=50` there are fifty times as many, and
/// others each time; proptest's own `PROPTEST_RNG_SEED` chooses them.
pub fn cases(many: u32) -> Config {
    let given = Config::default();
    let wider = std::env::var("DAYSTRAND_CHANCE").ok();
    let times = wider.as_deref().map(|n| n.parse::<u32>().unwrap());
    let rng_seed = match (given.rng_seed, times) {
        (RngSeed::Random, None) => RngSeed::Fixed(ALWAYS),
        (seed, _) => seed,
    };
    Config {
        cases: many * times.unwrap_or(1),
        rng_seed,
        ..given
    }
}
