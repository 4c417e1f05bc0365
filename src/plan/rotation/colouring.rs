//! A plan made by a theorem, where nothing but numbers limits it.
//!
//! Visits are edges between participants and stations, turns are colours. D. König, "Über Graphen
//! und ihre Anwendung auf Determinantentheorie und Mengenlehre", Mathematische Annalen 77 (1916):
//! as many colours are enough as the greatest number of edges at a node. D. de Werra, "Balanced
//! schedules", INFOR 9 (1971): they can be spread evenly over every node. (Both from memory.)
//! The same holds for the water as a whole, because water stations nest in it: with `k` turns left,
//! a `k`-th part of every visit is a flow that keeps all limits, so there is a whole flow in which
//! participants, stations and the water get a `k`-th part of what is left, rounded down or up.
//! That is one turn; what is left fits into `k - 1` turns again.

use super::Rotation;
use super::flow::{Arc, flow};

/// Rows of a plan with so many turns. There is one if nobody has more stations than there are turns
/// and no station, nor the water, more visits than fit into the turns; whoever calls has checked it.
pub(super) fn balanced(rotation: &Rotation, turns: usize) -> Option<Vec<Vec<Option<usize>>>> {
    let wishes = |p: &super::Participant| p.wishes.clone();
    let mut left: Vec<Vec<usize>> = rotation.participants.iter().map(wishes).collect();
    let mut rows = vec![vec![None; turns]; left.len()];
    for still in (1..=turns).rev() {
        for (participant, station) in one_turn(rotation, &left, still)? {
            rows[participant][turns - still] = Some(station);
            left[participant].retain(|s| *s != station);
        }
    }
    left.iter().all(Vec::is_empty).then_some(rows)
}

/// The visits of one turn when so many turns are left.
fn one_turn(rotation: &Rotation, left: &[Vec<usize>], k: usize) -> Option<Vec<(usize, usize)>> {
    // Nodes: 0 the source, 1 the sink, 2 the water, then participants, then stations.
    let (participants, stations) = (left.len(), rotation.stations.len());
    let share = |from, to, n: usize| Arc {
        from,
        to,
        least: n / k,
        most: n.div_ceil(k),
    };
    let mut visits = vec![0; stations];
    let mut arcs = Vec::new();
    let mut edges = Vec::new();
    for (p, wishes) in left.iter().enumerate() {
        for &s in wishes {
            visits[s] += 1;
            edges.push((p, s));
            arcs.push(Arc {
                from: 3 + p,
                to: 3 + participants + s,
                least: 0,
                most: 1,
            });
        }
    }
    arcs.extend((0..participants).map(|p| share(0, 3 + p, left[p].len())));
    let mut in_water = 0;
    for (s, station) in rotation.stations.iter().enumerate() {
        in_water += if station.water { visits[s] } else { 0 };
        let to = if station.water { 2 } else { 1 };
        arcs.push(share(3 + participants + s, to, visits[s]));
    }
    arcs.push(share(2, 1, in_water));
    let through = flow(3 + participants + stations, &arcs)?;
    let taken = edges.into_iter().zip(through).filter(|(_, n)| *n == 1);
    Some(taken.map(|(edge, _)| edge).collect())
}
