//! Changes inside the segments of a JPEG, with lengths that fit again.

use super::dice::Dice;
use super::mutate::bytes;

/// A segment: its mark, its body, and what follows it up to the next.
type Segment = (u8, Vec<u8>, Vec<u8>);

fn apart(file: &[u8]) -> Vec<Segment> {
    let (mut at, mut segments) = (2, Vec::new());
    while let Some(head) = file.get(at..at + 4) {
        let length = usize::from(u16::from_be_bytes([head[2], head[3]])).max(2);
        let Some(body) = file.get(at + 4..at + 2 + length) else {
            break;
        };
        let mut end = at + 2 + length;
        while let Some(next) = file.get(end..end + 2) {
            if next[0] == 0xFF && next[1] != 0 && !(0xD0..=0xD7).contains(&next[1]) {
                break;
            }
            end += 1;
        }
        segments.push((head[1], body.to_vec(), file[at + 2 + length..end].to_vec()));
        at = end;
    }
    segments
}

fn together(segments: &[Segment]) -> Vec<u8> {
    let mut file = vec![0xFF, 0xD8];
    for (mark, body, after) in segments {
        file.extend([0xFF, *mark]);
        file.extend((body.len() as u16 + 2).to_be_bytes());
        file.extend(body);
        file.extend(after);
    }
    file.extend([0xFF, 0xD9]);
    file
}

const MARKS: [u8; 10] = [0xC0, 0xC1, 0xC2, 0xC4, 0xDA, 0xDB, 0xDD, 0xE0, 0xE2, 0xEE];

/// A JPEG of some originals, changed.
pub fn change(originals: &[Vec<u8>], dice: &mut Dice) -> Vec<u8> {
    let mut file = dice.one(originals).clone();
    if dice.below(5) == 0 {
        bytes(&mut file, originals, dice);
        return file;
    }
    let mut segments = apart(&file);
    for _ in 0..=dice.below(3) {
        if segments.is_empty() {
            break;
        }
        let at = dice.below(segments.len());
        match dice.below(9) {
            0 => {
                segments.remove(at);
            }
            1 => {
                let to = dice.below(segments.len());
                segments.swap(at, to);
            }
            2 => {
                let copy = segments[at].clone();
                segments.insert(at, copy);
            }
            3 => {
                let other: &Vec<u8> = dice.one(originals);
                let other = apart(other);
                if !other.is_empty() {
                    segments.insert(at, dice.one(&other).clone());
                }
            }
            4 => segments[at].0 = *dice.one(&MARKS),
            5 => frame(&mut segments, dice),
            6 => bytes(&mut segments[at].2, originals, dice),
            _ => bytes(&mut segments[at].1, originals, dice),
        }
    }
    together(&segments)
}

/// Another size or sampling.
fn frame(segments: &mut [Segment], dice: &mut Dice) {
    let frame = segments.iter_mut().find(|s| (0xC0..=0xC2).contains(&s.0));
    let Some((_, body, _)) = frame else { return };
    if body.len() < 9 {
        return;
    }
    if dice.below(2) == 0 {
        let side = 1 + dice.below(600) as u16;
        let at = 1 + 2 * dice.below(2);
        body[at..at + 2].copy_from_slice(&side.to_be_bytes());
    } else {
        let part = 6 + 3 * dice.below((body.len() - 6) / 3);
        body[part + 1] = (1 + dice.below(4) as u8) << 4 | (1 + dice.below(4) as u8);
    }
}
