//! The pose kit: people for the picture symbols, built from poses. Same
//! program, same bytes. `main.rs` writes the files; a test may take this module
//! in by its path and compare.

pub mod afloat;
pub mod age;
pub mod arrival;
pub mod ball_play;
pub mod big_hands;
pub mod boats;
pub mod body;
pub mod cast;
pub mod caution;
pub mod close_ups;
pub mod clubs;
pub mod comfort;
pub mod dress;
pub mod faces;
pub mod feelings;
pub mod garden;
pub mod geom;
pub mod hair;
pub mod hall;
pub mod hands;
pub mod head;
pub mod in_water;
pub mod limb;
pub mod making;
pub mod moving;
pub mod music;
pub mod order;
pub mod outing;
pub mod paint;
pub mod park;
pub mod people_a;
pub mod people_b;
pub mod people_c;
pub mod places;
pub mod pool;
pub mod props;
pub mod riding;
pub mod sand_games;
pub mod shore;
pub mod signals;
pub mod telling;
pub mod together;
pub mod track;

/// Every symbol that the kit draws as its path below the folder of drawings, and
/// its SVG text: `<id>` for children, `teen/<id>` and `adult/<id>` where the age
/// of those who take part changes the drawing.
pub fn symbols() -> Vec<(String, String)> {
    let young = age::at(age::Age::Child, drawn);
    let mut all: Vec<(String, String)> = Vec::new();
    for (folder, age) in [("teen", age::Age::Teen), ("adult", age::Age::Adult)] {
        let older = age::at(age, drawn);
        let differ = young.iter().zip(older).filter(|(y, o)| y.1 != o.1);
        all.extend(differ.map(|(_, (id, svg))| (format!("{folder}/{id}"), svg)));
    }
    all.extend(young.into_iter().map(|(id, svg)| (id.to_owned(), svg)));
    all
}

/// Every drawing at the age in force.
fn drawn() -> Vec<(&'static str, String)> {
    [
        people_a::symbols(),
        people_b::symbols(),
        people_c::symbols(),
        afloat::symbols(),
        arrival::symbols(),
        ball_play::symbols(),
        boats::symbols(),
        caution::symbols(),
        close_ups::symbols(),
        clubs::symbols(),
        comfort::symbols(),
        feelings::symbols(),
        garden::symbols(),
        hall::symbols(),
        in_water::symbols(),
        making::symbols(),
        moving::symbols(),
        music::symbols(),
        order::symbols(),
        outing::symbols(),
        park::symbols(),
        places::symbols(),
        pool::symbols(),
        riding::symbols(),
        sand_games::symbols(),
        shore::symbols(),
        signals::symbols(),
        telling::symbols(),
        together::symbols(),
        track::symbols(),
    ]
    .concat()
}
