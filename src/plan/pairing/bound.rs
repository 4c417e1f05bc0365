//! How few handovers there must be: each participant alone, as if nobody else needed anyone.

use super::whole::{Visit, Whole};

/// A number of handovers below which no pairs of the day can be.
pub(super) fn handovers(whole: &Whole) -> usize {
    whole
        .visits
        .iter()
        .map(|(_, visits)| alone(whole, visits))
        .sum()
}

/// The same people as long as enough of them are left, then new ones: no other way changes less
/// often. A moment in which people are short may leave any number of them, so it is passed over:
/// who has other people after it than before has a handover on one of its sides at least.
fn alone(whole: &Whole, visits: &[Visit]) -> usize {
    let mut count = 0;
    let mut left: Option<(u32, Vec<usize>)> = None;
    for &visit in visits {
        let (at, slot) = visit;
        if !whole.full[at] {
            continue;
        }
        let scene = &whole.scenes[at];
        let needed = scene.needs[slot].people;
        let goes_on = left.take().map(|(before, people)| {
            let stay = people.into_iter().filter(|&p| whole.may_be(visit, p));
            (before, stay.collect::<Vec<_>>())
        });
        left = match goes_on {
            Some((before, stay)) if before == needed && stay.len() >= needed as usize => {
                Some((needed, stay))
            }
            other => {
                count += usize::from(other.is_some());
                let may = |p: &&usize| whole.may_be(visit, **p);
                Some((needed, scene.people.iter().filter(may).copied().collect()))
            }
        };
    }
    count
}
