//! Computations about the day and its pieces, from published numbers and the club's own rules:
//! `clock` (when each slot begins and ends), `chunks` (boards in strips), `since` (what is new since
//! last time), `changes` (what follows when something is called off), `equipment` (what to bring),
//! `small_parts` (which pieces fit the gauge for small parts), `seal` (film around a tile), `stock`
//! (tiles needed against tiles there), `roll` (how many should be here), `certificates` (whether
//! entered dates cover a session), `water` (who is with whom in the water, by the exact pairing of
//! `pairing`), `turns` (rows in turns, by the exact rotation of `rotation`), `weather` (what numbers
//! about sun and wind are called), `reminders` (what is due when), `chance` (numbers that look like
//! chance for searches). Knows nothing of paper or screens.

pub mod certificates;
pub mod chance;
pub mod changes;
pub mod chunks;
pub mod clock;
pub mod equipment;
pub mod pairing;
pub mod reminders;
pub mod roll;
pub mod rotation;
pub mod seal;
pub mod since;
pub mod small_parts;
pub mod stock;
pub mod turns;
pub mod water;
pub mod weather;
