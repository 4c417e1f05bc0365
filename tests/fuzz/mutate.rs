//! Changes that know nothing of formats.

use super::dice::Dice;

/// Numbers at which readers stumble.
const EDGES: [u8; 8] = [0, 1, 0x7F, 0x80, 0xFE, 0xFF, 0xD8, 0x20];

/// One to four changes of bytes anywhere.
pub fn bytes(file: &mut Vec<u8>, others: &[Vec<u8>], dice: &mut Dice) {
    for _ in 0..=dice.below(4) {
        if file.is_empty() {
            return;
        }
        let at = dice.below(file.len());
        match dice.below(8) {
            0 | 1 => file[at] ^= 1 << dice.below(8),
            2 => file[at] = dice.next() as u8,
            3 => file[at] = *dice.one(&EDGES),
            4 => {
                let end = (at + 1 + dice.below(16)).min(file.len());
                file.drain(at..end);
            }
            5 => {
                let end = (at + 1 + dice.below(64)).min(file.len());
                let piece = file[at..end].to_vec();
                let to = dice.below(file.len());
                file.splice(to..to, piece);
            }
            6 => {
                let other = dice.one(others);
                let from = dice.below(other.len());
                let end = (from + 1 + dice.below(64)).min(other.len());
                file.splice(at..at, other[from..end].iter().copied());
            }
            _ if dice.below(4) == 0 => file.truncate(at),
            _ => {
                let end = (at + 4).min(file.len());
                let fill = *dice.one(&EDGES);
                file[at..end].fill(fill);
            }
        }
    }
}
