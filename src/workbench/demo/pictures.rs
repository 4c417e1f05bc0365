//! The demo club's own picture: a boat that one of the children drew, seen in the place of the
//! built-in one on all that is theirs.

use std::sync::Arc;

use jiff::civil::date;

use super::{Numbers, marked};
use crate::assets;
use crate::model::club::Club;
use crate::model::ids::{PictureId, SymbolId};
use crate::model::picture::{Drawing, Made, Picture};
use crate::model::privacy::{Class, Guarded};
use crate::model::profile::PhotoConsent;

pub(super) fn add(next: &mut Numbers, club: &mut Club) {
    let Some(who) = marked(club, "leaf") else {
        return;
    };
    let made = Made::Drawing(Arc::new(Drawing::new(assets::DEMO_BOAT)));
    let boat = Picture {
        id: PictureId(next.next()),
        words: vec!["paddle".into(), "my boat".into()],
        whose: Some(who),
        stands_for: Some(SymbolId::new("canoe")),
        consent: PhotoConsent::OwnTiles,
        said_on: Some(date(2027, 5, 29)),
        wish: Guarded::new(
            Class::Coordinator,
            "Likes to point to the sun in it before getting in.".into(),
        ),
        source: "Noor, in the drawing place".into(),
        ..Picture::new("Noor’s boat", made)
    };
    club.pictures.push(Arc::new(boat));
}
