//! Lengths in words, as they stand on paper.

use crate::story::when::NO_BREAK;
use crate::units::Length;

/// A length in words: "60 mm", "37.5 mm".
pub(super) fn in_mm(length: Length) -> String {
    format!("{}{NO_BREAK}mm", number_of_mm(length))
}

/// Its number alone, to a tenth of a millimetre.
pub(super) fn number_of_mm(length: Length) -> String {
    let tenths = (length.to_um() + 50) / 100;
    match tenths % 10 {
        0 => (tenths / 10).to_string(),
        rest => format!("{}.{rest}", tenths / 10),
    }
}
