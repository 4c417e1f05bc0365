//! Computations about the day and its pieces, from published numbers and the club's own rules:
//! `clock` (when each slot begins and ends), `chunks` (boards in strips), `since` (what is new since
//! last time), `changes` (what follows when something is called off), `equipment` (what to bring),
//! `small_parts` (which pieces fit the gauge for small parts), `seal` (film around a tile), `stock`
//! (tiles needed against tiles there), `roll` (how many should be here), `certificates` (whether
//! entered dates cover a session), `weather` (what numbers about sun and wind are called),
//! `reminders` (what is due when). Knows nothing of paper or screens.
//! `small_parts` (which pieces fit the gauge for small parts), `roll` (how many should be here),
//! `pairing` (who is with whom in the water). Knows nothing of paper or screens.
//! `small_parts` (which pieces fit the gauge for small parts), `roll` (how many should be here),
//! `rotation` (stations in turns). Knows nothing of paper or screens.

pub mod certificates;
pub mod changes;
pub mod chunks;
pub mod clock;
pub mod equipment;
pub mod reminders;
pub mod pairing;
pub mod roll;
pub mod rotation;
pub mod seal;
pub mod since;
pub mod small_parts;
pub mod stock;
pub mod weather;
