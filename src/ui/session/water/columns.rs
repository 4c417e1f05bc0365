//! The columns of the time line: one for every row of the timetable, or for every turn where rows
//! are done in turns; wide where someone is in the water, for names stand there.

use crate::model::session::Session;
use crate::plan::clock::Clock;
use crate::plan::water::{Stretch, WaterDay, visits};

/// Least width of a column with someone in the water: for one name, and for each further one that
/// the club's rule asks for.
const WET: f32 = 112.0;
const MORE: f32 = 44.0;
/// However many the rule asks for, it gets no wider than this by itself.
const WIDEST: f32 = 244.0;
/// Least width of another.
const DRY: f32 = 54.0;

/// One stretch of time.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// When, and in which rows.
    pub stretch: Stretch,
    /// Whether someone is in the water then.
    pub wet: bool,
    /// From the left end of the line.
    pub left: f32,
    /// How wide it is.
    pub width: f32,
}

impl Column {
    /// Its middle, from the left end of the line.
    pub fn middle(&self) -> f32 {
        self.left + self.width / 2.0
    }
}

/// The columns of a session in a room: none narrower than its words need, what is left over shared
/// out by minutes.
pub fn columns(
    club: &crate::model::club::Club,
    session: &Session,
    clock: &Clock,
    water: &WaterDay,
    room: f32,
) -> Vec<Column> {
    let all = visits(club, session, &[], clock);
    let wet = |s: &Stretch| water.moments.iter().any(|m| m.stretch == *s);
    let each = all.into_iter().map(|(s, _)| {
        let wet = wet(&s);
        (s, wet)
    });
    spread(each.collect(), wet_least(club.rules.care.people_each), room)
}

/// How wide a column needs to be for the names of so many people beside each.
fn wet_least(people_each: u32) -> f32 {
    let more = people_each.saturating_sub(1) as f32;
    (WET + more * MORE).min(WIDEST)
}

fn spread(all: Vec<(Stretch, bool)>, wet_least: f32, room: f32) -> Vec<Column> {
    let least = |wet: bool| if wet { wet_least } else { DRY };
    let minutes = |s: &Stretch| s.to.since(s.from) as f32;
    let total: f32 = all.iter().map(|(s, _)| minutes(s)).sum();
    let taken: f32 = all.iter().map(|(_, wet)| least(*wet)).sum();
    let spare = (room - taken).max(0.0);
    let mut left = 0.0;
    let column = |(stretch, wet): (Stretch, bool)| {
        let share = minutes(&stretch) / total.max(1.0);
        let width = (least(wet) + spare * share).floor();
        let at = left;
        left += width;
        Column {
            stretch,
            wet,
            left: at,
            width,
        }
    };
    all.into_iter().map(column).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::clock::Moment;
    use jiff::civil::time;

    fn stretch(from: i8, to: i8) -> Stretch {
        let at = |m| Moment::at(time(10, m, 0, 0));
        Stretch {
            from: at(from),
            to: at(to),
            rows: Vec::new(),
            turn: None,
        }
    }

    #[test]
    fn columns_follow_one_another_and_longer_ones_get_more_of_the_room() {
        let all = vec![
            (stretch(0, 5), false),
            (stretch(5, 20), false),
            (stretch(20, 30), true),
        ];
        let made = spread(all.clone(), wet_least(1), 600.0);
        assert!(made[1].width > made[0].width);
        assert!(made.windows(2).all(|w| w[1].left == w[0].left + w[0].width));
        let end = made[2].left + made[2].width;
        assert!((597.0..=600.0).contains(&end), "{end}");
        let tight = spread(all.clone(), wet_least(1), 10.0);
        let widths: Vec<f32> = tight.iter().map(|c| c.width).collect();
        assert_eq!(widths, [DRY, DRY, WET]);
        let for_two = spread(all, wet_least(2), 10.0);
        assert_eq!(for_two[2].width, WET + MORE);
        assert_eq!(wet_least(10), WIDEST);
    }
}
