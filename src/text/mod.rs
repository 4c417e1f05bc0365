//! Words made ready to paint: shaped, broken into lines, fitted to a width. Bundled fonts only.

pub mod run;
