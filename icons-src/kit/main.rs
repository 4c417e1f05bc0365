//! Draws the picture symbols that show people: `kit OUTDIR` writes one SVG
//! file per symbol. Same program, same bytes.

pub mod body;
pub mod geom;
pub mod hair;
pub mod hands;
pub mod head;
pub mod paint;
pub mod people_a;
pub mod people_b;
pub mod people_c;
pub mod props;

/// Every symbol as its id and its SVG text.
pub fn symbols() -> Vec<(&'static str, String)> {
    let mut all = people_a::symbols();
    all.extend(people_b::symbols());
    all.extend(people_c::symbols());
    all
}

fn main() {
    let dir = std::env::args()
        .nth(1)
        .unwrap_or_else(|| "icons-src/svg".to_owned());
    for (id, svg) in symbols() {
        let file = format!("{dir}/{id}.svg");
        if let Err(e) = std::fs::write(&file, svg) {
            eprintln!("cannot write {file}: {e}");
            std::process::exit(1);
        }
    }
}
