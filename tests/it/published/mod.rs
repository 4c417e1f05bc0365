//! Values published elsewhere, one file a source.

mod contrast;
mod grid;
mod lengths;
mod small_parts;
mod uax14;
mod xheight;
