//! Changes inside the chunks of a PNG, with check sums that fit again.

use super::dice::Dice;
use super::mutate::bytes;

/// A chunk: name and body.
type Chunk = ([u8; 4], Vec<u8>);

/// Takes a PNG apart as far as it goes.
fn apart(file: &[u8]) -> Vec<Chunk> {
    let (mut at, mut chunks) = (8, Vec::new());
    while let Some(head) = file.get(at..at + 8) {
        let length = u32::from_be_bytes([head[0], head[1], head[2], head[3]]) as usize;
        let Some(body) = file.get(at + 8..at + 8 + length) else {
            break;
        };
        chunks.push(([head[4], head[5], head[6], head[7]], body.to_vec()));
        at += length + 12;
    }
    chunks
}

fn together(chunks: &[Chunk]) -> Vec<u8> {
    let mut file = b"\x89PNG\r\n\x1a\n".to_vec();
    for (name, body) in chunks {
        let mut sum = flate2::Crc::new();
        sum.update(name);
        sum.update(body);
        file.extend((body.len() as u32).to_be_bytes());
        file.extend(name);
        file.extend(body);
        file.extend(sum.sum().to_be_bytes());
    }
    file
}

const NAMES: [&[u8; 4]; 15] = [
    b"IHDR", b"PLTE", b"tRNS", b"IDAT", b"IEND", b"iCCP", b"gAMA", b"sRGB", b"eXIf", b"acTL",
    b"fcTL", b"fdAT", b"tEXt", b"cHRM", b"cICP",
];

/// A word about colours: primaries near those of a screen or anywhere, a gamma, any codes.
fn colours(dice: &mut Dice) -> Chunk {
    const SCREEN: [usize; 8] = [
        31_270, 32_900, 64_000, 33_000, 30_000, 60_000, 15_000, 6_000,
    ];
    match dice.below(3) {
        0 => {
            let mut number = |n: usize| match dice.below(4) {
                0 => dice.below(120_000) as u32,
                _ => (n + dice.below(9_000)) as u32,
            };
            let body = SCREEN.iter().flat_map(|n| number(*n).to_be_bytes());
            (*b"cHRM", body.collect())
        }
        1 => {
            let gamma = dice.below(120_000) as u32;
            (*b"gAMA", gamma.to_be_bytes().to_vec())
        }
        _ => {
            let code = |dice: &mut Dice, most| dice.below(most) as u8;
            let (primaries, curve) = (code(dice, 24), code(dice, 20));
            let rest = [code(dice, 12) / 10, 1 - code(dice, 12) / 11];
            (*b"cICP", vec![primaries, curve, rest[0], rest[1]])
        }
    }
}

/// A PNG of some originals, changed.
pub fn change(originals: &[Vec<u8>], dice: &mut Dice) -> Vec<u8> {
    let mut file = dice.one(originals).clone();
    if dice.below(5) == 0 {
        bytes(&mut file, originals, dice);
        return file;
    }
    let mut chunks = apart(&file);
    for _ in 0..=dice.below(3) {
        if chunks.is_empty() {
            break;
        }
        let at = dice.below(chunks.len());
        match dice.below(9) {
            0 => {
                chunks.remove(at);
            }
            1 => {
                let to = dice.below(chunks.len());
                chunks.swap(at, to);
            }
            2 => {
                let copy = chunks[at].clone();
                chunks.insert(at, copy);
            }
            3 => {
                let other: &Vec<u8> = dice.one(originals);
                let other = apart(other);
                if !other.is_empty() {
                    chunks.insert(at, dice.one(&other).clone());
                }
            }
            4 => chunks[at].0 = **dice.one(&NAMES),
            5 => header(&mut chunks[0].1, dice),
            6 => chunks.insert(at, colours(dice)),
            _ => bytes(&mut chunks[at].1, originals, dice),
        }
    }
    together(&chunks)
}

/// Another size, depth, colour or interlacing.
fn header(body: &mut [u8], dice: &mut Dice) {
    let Some(body) = body.get_mut(..13) else {
        return;
    };
    match dice.below(4) {
        0 => {
            let side = 1 + dice.below(300) as u32;
            let at = 4 * dice.below(2);
            body[at..at + 4].copy_from_slice(&side.to_be_bytes());
        }
        1 => body[8] = *dice.one(&[1, 2, 4, 8, 16]),
        2 => body[9] = *dice.one(&[0, 2, 3, 4, 6]),
        _ => body[12] = dice.below(2) as u8,
    }
}
