//! How much making the tiles is: sheets, pouches, cuts, minutes, fasteners.

use super::Making;
use super::gather::What;
use crate::model::club::Rules;
use crate::model::stock::TileKey;
use crate::plan::stock;

/// What making the tiles of a request takes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Tiles and cards that are needed.
    pub needed: usize,
    /// Of these in stock.
    pub in_stock: usize,
    /// Tiles and cards that are printed, spares among them.
    pub printed: usize,
    /// Of these spares.
    pub spares: usize,
    /// Sheets of paper.
    pub sheets: usize,
    /// Laminating pouches.
    pub pouches: usize,
    /// Cuts of paper, sheet by sheet.
    pub first_cuts: usize,
    /// Cuts of film.
    pub second_cuts: usize,
    /// Seconds that all cuts take, at the club's own rate.
    pub cut_seconds: u64,
    /// Fastener dots on tiles; a board has as many of the other half.
    pub dots: usize,
    /// What is printed, by kind, to be put into stock when it is made.
    pub made: Vec<(TileKey, u32)>,
}

impl Counts {
    /// Counts what was laid out.
    pub(in crate::layout) fn of(making: &Making, rules: &Rules) -> Self {
        let printed: Vec<_> = making.printed.iter().map(|&i| &making.all[i]).collect();
        let (first_cuts, second_cuts) = (making.sheets.cuts(), making.pouches.cuts());
        // Cards hang on a ring or lie at hand: only tiles of a board are fastened.
        let fastened =
            |w: &&&super::Wanted| !w.is_card && matches!(w.what, What::Face(_) | What::Blank);
        Self {
            needed: making.all.len(),
            in_stock: making.all.len() - printed.len() - making.too_large,
            printed: printed.len(),
            spares: printed.iter().filter(|w| w.is_spare).count(),
            sheets: making.sheets.sheets.len(),
            pouches: making.pouches.sheets.len(),
            first_cuts,
            second_cuts,
            cut_seconds: (first_cuts + second_cuts) as u64 * u64::from(rules.craft.cut_seconds),
            dots: printed.iter().filter(fastened).count(),
            made: stock::count(printed.iter().map(|w| &w.key)),
        }
    }

    /// Minutes of cutting, rounded up.
    pub const fn cut_minutes(&self) -> u64 {
        self.cut_seconds.div_ceil(60)
    }
}
