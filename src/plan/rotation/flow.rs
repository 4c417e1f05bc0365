//! Whole flows through a net whose arcs have a least and a greatest flow.

/// An arc from node to node with the least and the greatest flow through it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Arc {
    pub from: usize,
    pub to: usize,
    pub least: usize,
    pub most: usize,
}

/// A net with what each arc can still take; arc `i ^ 1` is the way back of arc `i`.
struct Net {
    leaving: Vec<Vec<usize>>,
    to: Vec<usize>,
    left: Vec<usize>,
}

impl Net {
    fn arc(&mut self, from: usize, to: usize, most: usize) {
        for (a, b, left) in [(from, to, most), (to, from, 0)] {
            self.leaving[a].push(self.to.len());
            self.to.push(b);
            self.left.push(left);
        }
    }

    /// Sends one unit from node to node by a shortest way, if there is one.
    fn send_one(&mut self, from: usize, to: usize) -> bool {
        let mut by = vec![usize::MAX; self.leaving.len()];
        let mut queue = vec![from];
        let mut next = 0;
        while next < queue.len() && by[to] == usize::MAX {
            for &arc in &self.leaving[queue[next]] {
                let node = self.to[arc];
                if self.left[arc] > 0 && node != from && by[node] == usize::MAX {
                    by[node] = arc;
                    queue.push(node);
                }
            }
            next += 1;
        }
        if by[to] == usize::MAX {
            return false;
        }
        let mut node = to;
        while node != from {
            self.left[by[node]] -= 1;
            self.left[by[node] ^ 1] += 1;
            node = self.to[by[node] ^ 1];
        }
        true
    }
}

/// The flow through each arc, keeping least and greatest, from node 0 to node 1; `None` if there is
/// none. (A flow in a circle through a node that owes and a node that is owed what arcs need at
/// least.)
pub(super) fn flow(nodes: usize, arcs: &[Arc]) -> Option<Vec<usize>> {
    let (owing, owed) = (nodes, nodes + 1);
    let mut net = Net {
        leaving: vec![Vec::new(); nodes + 2],
        to: Vec::new(),
        left: Vec::new(),
    };
    for arc in arcs {
        net.arc(arc.from, arc.to, arc.most - arc.least);
    }
    net.arc(1, 0, usize::MAX / 2);
    let mut need = 0;
    for arc in arcs.iter().filter(|a| a.least > 0) {
        net.arc(owing, arc.to, arc.least);
        net.arc(arc.from, owed, arc.least);
        need += arc.least;
    }
    for _ in 0..need {
        if !net.send_one(owing, owed) {
            return None;
        }
    }
    let through = |(i, arc): (usize, &Arc)| arc.least + net.left[2 * i + 1];
    Some(arcs.iter().enumerate().map(through).collect())
}
