//! The club and everything in it, and the only ways it changes.
//!
//! Reading order: `ids`, `language`, `privacy` (who may read what), `conditions` (what a day may
//! bring), `club` (what is known for a season) with `craft` (how tiles are made), `stock` (tiles
//! that are made) and `song`, `people` with `award` (what helpers' certificates say) and `manner` (how a board is given),
//! `picture` (pictures of the club's own) with `set` (what is given to another club), `standing` (what differs on every board), `telling` (how a story is told) and `profile` (what is
//! known about someone), `session` (one date and its timetable) with `record` (what was seen),
//! `hand` (one evening's changes to one board) and `rewriting` (to one story), `turns` (rows done in
//! turns), `care` (the club's rules for people and water) with `award` (certificates) and `looks`
//! (what is looked at), `today` (who is with whom on one date), `board` (what follows from all of
//! that), `finding` (what a check says), `limits` (what values may be), `edit` (the only way a club changes), `history` (undo), `invariants` (what
//! always holds).
//! Knows nothing of paper, pictures, files or windows.

pub mod award;
pub mod board;
pub mod care;
pub mod club;
pub mod conditions;
pub mod craft;
pub mod edit;
pub mod finding;
pub mod hand;
pub mod history;
pub mod ids;
pub mod invariants;
pub mod language;
pub mod limits;
pub mod looks;
pub mod manner;
pub mod people;
pub mod picture;
pub mod privacy;
pub mod profile;
pub mod record;
pub mod rewriting;
pub mod session;
pub mod set;
pub mod song;
pub mod standing;
pub mod stock;
pub mod telling;
pub mod today;
pub mod turns;
