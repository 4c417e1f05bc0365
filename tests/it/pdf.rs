//! The PDF: true to size, tagged, embedded, the same bytes each time; read back by others.

mod file;
mod looks;
mod making;
mod pictures;
pub mod sample;
pub mod size;
mod words;

/// Writes `target/sample.pdf`, to look at and to give to other programs.
#[test]
#[ignore = "makes a file to look at; checks nothing"]
fn write_sample() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/target/sample.pdf");
    std::fs::write(path, sample::file()).expect("target can be written");
}

/// Prints how long a page takes in a document of a hundred, and how large it is.
#[test]
#[ignore = "measures; checks nothing"]
fn measure() {
    use daystrand::export::pdf::pdf;
    for (what, page) in [("tiles", sample::tiles()), ("words", sample::words())] {
        for count in [1, 100] {
            let pages: Vec<_> = std::iter::repeat_n(page.clone(), count).collect();
            let _ = pdf(&pages, &sample::meta());
            let start = std::time::Instant::now();
            let rounds = 10;
            let mut bytes = 0;
            for _ in 0..rounds {
                bytes = pdf(&pages, &sample::meta()).len();
            }
            let ms = start.elapsed().as_secs_f64() * 1000.0 / f64::from(rounds);
            println!(
                "{what} x {count}: {:.3} ms a page, {bytes} bytes",
                ms / count as f64
            );
        }
    }
}
