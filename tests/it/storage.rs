//! The disk: what is saved can be opened, what cannot be is said, and nothing is ever lost.

mod bad_files;
mod failing_disk;
mod output;
mod pictures;
mod round_trip;
mod saving;
mod unsaved;
