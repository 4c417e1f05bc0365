//! How long packing takes. `cargo bench --bench packing` prints a table; nothing here is a test.

use std::hint::black_box;
use std::time::{Duration, Instant};

use daystrand::layout::packing::{Piece, Room, bound, cuts, pack};
use daystrand::units::{Length, Size};

fn main() {
    println!("A4 with margins of 10 mm, best of five each:");
    println!("pieces  gap  sizes                      sheets  bound   cuts        time");
    for n in [12, 100, 1000] {
        for gap in [0.0, 6.0] {
            let room = Room {
                size: Size::mm(190.0, 277.0),
                gap: Length::mm(gap),
            };
            for (name, sizes) in sets() {
                let all = sizes.iter().cycle().take(n);
                let piece = |&size| Piece {
                    size,
                    may_turn: true,
                };
                let pieces: Vec<Piece> = all.map(piece).collect();
                let time = best(|| drop(black_box(pack(&pieces, &room))));
                let packing = pack(&pieces, &room);
                let all: usize = packing.sheets.iter().map(|s| cuts(s).len()).sum();
                println!(
                    "{n:>6} {gap:>4}  {name:<26} {:>6} {:>6} {all:>6} {:>8.2} ms",
                    packing.sheets.len(),
                    bound(&pieces, &room),
                    time.as_secs_f64() * 1e3,
                );
            }
        }
    }
}

/// Kinds of tiles in turn, the last set all different.
fn sets() -> [(&'static str, Vec<Size>); 5] {
    let mm = Size::mm;
    let (square, small, card) = (mm(60.0, 60.0), mm(45.0, 45.0), mm(85.6, 53.98));
    let different = (0..1000_i64).map(|i| {
        let side = |factor: i64| Length::um(30_000 + i * factor % 80_000);
        Size::new(side(7_919), side(15_013))
    });
    [
        ("60", vec![square]),
        ("60 and 45", vec![square, small]),
        ("ID-1 cards", vec![card]),
        (
            "60, 45, 80x60, ID-1, A7",
            vec![square, small, mm(80.0, 60.0), card, mm(74.0, 105.0)],
        ),
        ("all different", different.collect()),
    ]
}

fn best(run: impl Fn()) -> Duration {
    let once = |_| {
        let start = Instant::now();
        run();
        start.elapsed()
    };
    (0..5).map(once).min().unwrap_or_default()
}
