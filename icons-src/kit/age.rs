//! How old the people who take part are drawn. The same drawing functions
//! build them as children, teens or adults: the bones keep their lengths, so
//! every pose still reaches what it holds, and head, neck, shoulders and limbs
//! change. Helpers and parents stay as they are.

use std::cell::Cell;

use super::body::{Build, CHILD};

/// How old those who take part are drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Age {
    /// Primary school.
    Child,
    /// Secondary school.
    Teen,
    /// Grown up.
    Adult,
}

/// The bones of a child with the head and shoulders of a teen, about 4.5 heads tall.
const TEEN: Build = Build {
    head: 42.0,
    neck: 6.0,
    wide: [25.0, 19.0, 19.5, 16.0],
    arm_w: [8.4, 7.0, 5.8],
    leg_w: [10.8, 8.8, 6.8],
    ends: [23.0, 18.5],
    ..CHILD
};

/// The same with the head and shoulders of an adult, about 4.9 heads tall.
const GROWN: Build = Build {
    head: 38.5,
    neck: 7.0,
    wide: [28.5, 22.0, 22.0, 18.0],
    arm_w: [9.4, 7.8, 6.4],
    leg_w: [12.2, 9.8, 7.4],
    ends: [25.0, 19.5],
    ..CHILD
};

thread_local! {
    static AGE: Cell<Age> = const { Cell::new(Age::Child) };
}

/// Runs `draw` with everyone who takes part drawn at this age.
pub fn at<T>(age: Age, draw: impl FnOnce() -> T) -> T {
    let before = AGE.replace(age);
    let out = draw();
    AGE.set(before);
    out
}

/// The age in force.
pub fn now() -> Age {
    AGE.get()
}

/// The build of someone who takes part, at the age in force.
pub fn build() -> Build {
    match now() {
        Age::Child => CHILD,
        Age::Teen => TEEN,
        Age::Adult => GROWN,
    }
}
