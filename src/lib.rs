//! Daystrand: from one group timetable to a picture schedule for each participant.

pub mod units;
