//! Drawings made here: what the hand did with mouse, pen or finger becomes flat shapes, written as
//! an SVG that is read and printed like any symbol.
//!
//! Reading order: `colours` (what there is to draw with), `gesture` (what a hand did), `trail` with
//! `smooth` and `fit` (a line without its trembling, as few curves), `area` with `polygon` (what a
//! shape covers: union and difference), `wide` (a line by pressure), `fill` with `grid` and `trace`
//! (a place that is tapped), `erase` with `way`, `tidy`, `svg` (out and in again), `sketch` (the
//! drawing being made, with undo).

pub mod area;
pub mod colours;
mod curves;
pub mod erase;
pub mod fill;
pub mod fit;
pub mod gesture;
mod grid;
mod polygon;
pub mod sketch;
mod smooth;
pub mod svg;
pub mod tidy;
mod trace;
pub mod trail;
mod way;
pub mod wide;
