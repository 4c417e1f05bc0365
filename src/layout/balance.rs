//! Shares rows out over columns and pages so that each is about as full as the others, and a part
//! of the day is not torn apart if that can be had.

use std::ops::Range;

use crate::units::Length;

/// A row to be placed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// Its height.
    pub height: Length,
    /// Whether a part of the day begins with it.
    pub begins_part: bool,
}

/// The rows for each column, in order, in as few columns as can be. Each column begins with a
/// heading, as does each part in it. A row alone in a column may be higher than the column.
pub fn share_out(rows: &[Row], room: Length, heading: Length) -> Vec<Range<usize>> {
    let fewest = fill(rows, room, heading).len();
    best(rows, room, heading, fewest).unwrap_or_else(|| fill(rows, room, heading))
}

/// The fewest columns that the rows take.
pub fn columns_needed(rows: &[Row], room: Length, heading: Length) -> usize {
    fill(rows, room, heading).len()
}

/// How high rows are together in one column.
pub fn height(rows: &[Row], heading: Length) -> Length {
    let parts = rows.iter().skip(1).filter(|r| r.begins_part).count() as i64;
    rows.iter().map(|r| r.height).sum::<Length>() + heading * (parts + 1)
}

/// Each column as full as it gets.
fn fill(rows: &[Row], room: Length, heading: Length) -> Vec<Range<usize>> {
    let mut columns = Vec::new();
    let mut from = 0;
    while from < rows.len() {
        let mut to = from + 1;
        while to < rows.len() && height(&rows[from..=to], heading) <= room {
            to += 1;
        }
        columns.push(from..to);
        from = to;
    }
    columns
}

/// The sharing over exactly `columns` with the least unevenness.
fn best(rows: &[Row], room: Length, heading: Length, columns: usize) -> Option<Vec<Range<usize>>> {
    let n = rows.len();
    // cost[i]: the least for the rows before i in the columns so far; from[k][i]: where the last
    // of k + 1 columns begins.
    let mut cost: Vec<Option<f64>> = vec![None; n + 1];
    cost[0] = Some(0.0);
    let mut from = Vec::with_capacity(columns);
    for _ in 0..columns {
        let mut next = vec![None; n + 1];
        let mut begin = vec![0; n + 1];
        for end in 1..=n {
            for start in (0..end).rev() {
                let high = height(&rows[start..end], heading);
                if high > room && end - start > 1 {
                    break;
                }
                let Some(before) = cost[start] else { continue };
                let all = before + unevenness(rows, start, high, room);
                if next[end].is_none_or(|least| all < least) {
                    next[end] = Some(all);
                    begin[end] = start;
                }
            }
        }
        cost = next;
        from.push(begin);
    }
    cost[n]?;
    let mut shared = Vec::with_capacity(columns);
    let mut end = n;
    for begin in from.iter().rev() {
        shared.push(begin[end]..end);
        end = begin[end];
    }
    shared.reverse();
    Some(shared)
}

fn unevenness(rows: &[Row], start: usize, high: Length, room: Length) -> f64 {
    /// Tearing a part costs as much as a column filled to a third instead of none.
    const TORN: f64 = 0.1;
    let full = high.to_mm() / room.to_mm().max(1.0);
    let torn = start > 0 && !rows[start].begins_part;
    full * full + if torn { TORN } else { 0.0 }
}
