//! Tiles and cards: what everyone needs, what of it is to be printed, on which sheets it lies, and
//! how it is cut and laminated. Whatever a participant's own tiles are, all lie on common sheets, so
//! that as few as possible are printed.

mod around;
mod arrange;
mod backs;
pub(super) mod counts;
mod face_key;
pub(super) mod gather;
pub(super) mod sheet;

use super::desk::{Desk, Person};
use super::tile_face::TileSet;
use super::{Sheet, SheetKind};
use crate::model::club::Rules;
use crate::model::craft::Sorting;
use crate::plan::seal;
use crate::units::{Length, Point, Rect, Size};
pub(super) use around::footer;
pub(super) use arrange::{Arranged, Laying};
pub(super) use counts::Counts;
pub(super) use gather::{Wanted, What};

/// All that is known about the tiles of a request.
#[derive(Debug)]
pub(super) struct Making {
    /// The faces of each person, in the order of the people.
    pub sets: Vec<TileSet>,
    /// Everything that is needed, person by person.
    pub all: Vec<Wanted>,
    /// What of it is printed, by its place in `all`, in the order in which it lies on the sheets.
    pub printed: Vec<usize>,
    /// Whether each of `all` is in stock and so not printed.
    pub is_in_stock: Vec<bool>,
    /// Printed pieces on sheets of paper.
    pub sheets: Arranged,
    /// How many pieces no sheet can hold.
    pub too_large: usize,
    /// Finished pieces in laminating pouches; none where there is no film.
    pub pouches: Arranged,
}

impl Making {
    /// What the people need of tiles, of cards, or of both, laid on sheets.
    pub fn of(desk: &mut Desk<'_>, people: &[Person<'_>], (tiles, cards): (bool, bool)) -> Self {
        let sets: Vec<TileSet> = people.iter().map(|p| TileSet::of(desk, p)).collect();
        let mut all = gather::gather(desk, people, &sets);
        all.retain(|w| if w.is_card { cards } else { tiles });
        gather::report(desk, people, &sets, &all);
        let mut printed = gather::to_print(desk, &all);
        let mut is_in_stock = vec![true; all.len()];
        for &i in &printed {
            is_in_stock[i] = false;
        }
        if desk.club.rules.craft.sorting == Sorting::ThroughTheStack {
            let order = |&i: &usize| {
                let key = &all[i].key;
                (&key.face.symbol, &key.face.label, key.face.size, i)
            };
            printed.sort_by(|a, b| order(a).cmp(&order(b)));
        }
        let sizes: Vec<Size> = printed.iter().map(|&i| all[i].size).collect();
        let sheets = arrange::on_paper(desk, &sizes);
        arrange::report_too_large(desk, people, &all, &printed, &sheets);
        // What fits no sheet is not laminated either.
        let missing = sheets.too_large.clone();
        let printed: Vec<usize> = without(&printed, &missing);
        let sheets = match missing.is_empty() {
            true => sheets,
            false => arrange::on_paper(desk, &without(&sizes, &missing)),
        };
        let rules = &desk.club.rules;
        let pouches = match rules.film() > Length::ZERO {
            true => {
                let sizes = printed.iter().map(|&i| finished_of(&all[i], rules));
                arrange::in_pouches(&sizes.collect::<Vec<_>>(), &rules.craft)
            }
            false => Arranged::default(),
        };
        arrange::report_pouches(desk, people, &all, &printed, &pouches);
        Self {
            sets,
            is_in_stock,
            all,
            printed,
            sheets,
            too_large: missing.len(),
            pouches,
        }
    }

    /// Reports what should be looked at on the tiles of the people, without laying them on sheets.
    pub fn look(desk: &mut Desk<'_>, people: &[Person<'_>]) {
        let sets: Vec<TileSet> = people.iter().map(|p| TileSet::of(desk, p)).collect();
        let mut all = gather::gather(desk, people, &sets);
        gather::report_stock(desk, &all);
        all.retain(|w| !w.is_card);
        gather::report(desk, people, &sets, &all);
        arrange::report_larger_than_paper(desk, people, &all);
    }

    /// The sheets of tiles, fronts and where wanted backs.
    pub fn tile_sheet(&self, desk: &mut Desk<'_>, people: &[Person<'_>], kind: SheetKind) -> Sheet {
        let pages = sheet::pages(desk, people, self, kind);
        desk.common_sheet(people, kind, pages)
    }

    /// Where the paper lies in a finished place.
    pub fn paper_in(&self, placed: usize, at: Rect, rules: &Rules) -> Rect {
        let film = rules.film();
        let paper = at.shrink(film);
        let tab = tab(self.piece(placed), rules);
        Rect {
            y: paper.y + tab,
            h: paper.h - tab,
            ..paper
        }
    }

    /// The hole of a card that hangs on a ring, in the middle of its tab.
    pub fn hole_in(&self, placed: usize, at: Rect, rules: &Rules) -> Option<(Point, Length)> {
        let film = rules.film();
        let tab = tab(self.piece(placed), rules);
        let hole = rules.craft.ring.filter(|_| tab > Length::ZERO)?;
        Some((Point::new(at.center().x, at.y + film + hole / 2), hole))
    }

    /// What lies at a place of a sheet or a pouch.
    pub fn piece(&self, placed: usize) -> &Wanted {
        &self.all[self.printed[placed]]
    }
}

/// What a card that hangs on a ring has above its paper besides the seal: hole and seal.
fn tab(wanted: &Wanted, rules: &Rules) -> Length {
    let hole = rules
        .craft
        .ring
        .filter(|_| wanted.is_card && !wanted.is_spare);
    let film = rules.film();
    hole.map_or(Length::ZERO, |hole| seal::tab_depth(hole, film) - film)
}

/// The size of a tile or card with its film, and with a tab where it hangs on a ring.
fn finished_of(wanted: &Wanted, rules: &Rules) -> Size {
    let plain = seal::finished(wanted.size, rules.film());
    Size::new(plain.w, plain.h + tab(wanted, rules))
}

/// A list without the entries at some places.
fn without<T: Clone>(list: &[T], places: &[usize]) -> Vec<T> {
    let kept = list.iter().enumerate().filter(|(i, _)| !places.contains(i));
    kept.map(|(_, x)| x.clone()).collect()
}
