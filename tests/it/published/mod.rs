//! Values published elsewhere, one file a source.

mod contrast;
mod lengths;
