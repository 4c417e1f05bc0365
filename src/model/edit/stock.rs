//! Edits of the stock: tiles that were made, counted, lost or worn out.

use super::{Made, Refused};
use crate::model::club::Club;
use crate::model::ids::ParticipantId;
use crate::model::limits;
use crate::model::stock::{Loss, Owned, StockEdit, TileKey};

pub(super) fn apply(club: &mut Club, edit: &StockEdit) -> Result<Made, Refused> {
    match edit {
        StockEdit::Made(tiles) => {
            for (key, n) in tiles {
                let owned = entry(club, key)?;
                owned.count = owned.count.saturating_add(*n);
                limits::owned(owned)?;
            }
            limits::count("kinds of tiles", club.stock.len(), limits::STOCK)?;
        }
        StockEdit::Gone(key, loss) => {
            let owned = entry(club, key)?;
            owned.count = owned.count.checked_sub(1).ok_or_else(|| {
                Refused::new(
                    "There is no such tile in stock.",
                    "Count the tiles, or mark a print as made first.",
                )
            })?;
            match loss {
                Loss::Lost => owned.lost += 1,
                Loss::Worn => owned.worn += 1,
            }
            limits::owned(owned)?;
        }
        StockEdit::Counted(key, n) => {
            let owned = entry(club, key)?;
            owned.count = *n;
            limits::owned(owned)?;
        }
    }
    club.stock
        .retain(|o| o.count > 0 || o.lost > 0 || o.worn > 0);
    Ok(Made::Nothing)
}

/// The entry of a kind of tile, made where there is none.
fn entry<'a>(club: &'a mut Club, key: &TileKey) -> Result<&'a mut Owned, Refused> {
    if let Some(who) = key.whose
        && club.participant(who).is_none()
    {
        return Err(Refused::gone("participant"));
    }
    let at = match club.stock.binary_search_by(|o| o.key.cmp(key)) {
        Ok(at) => at,
        Err(at) => {
            let owned = Owned {
                key: key.clone(),
                count: 0,
                lost: 0,
                worn: 0,
            };
            club.stock.insert(at, owned);
            at
        }
    };
    Ok(&mut club.stock[at])
}

/// Lets go of the tiles of someone who leaves the club.
pub(super) fn forget(club: &mut Club, who: ParticipantId) {
    club.stock.retain(|o| o.key.whose != Some(who));
}
