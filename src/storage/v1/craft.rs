//! The words of version 1 for how tiles are made and which are in stock.

use serde::{Deserialize, Serialize};

use super::{Mm, Paper, is_false, settings};
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::language::Language;
use crate::model::{craft, stock};
use crate::units::Length;

/// How tiles are made; left out of the file where all is as usual.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Craft {
    work: Work,
    cutting: Cutting,
    pouch: Paper,
    sorting: Sorting,
    #[serde(default, skip_serializing_if = "is_false")]
    sizes_apart: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    ring_mm: Option<Mm>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    backs: Option<Flip>,
    on_tile: OnTile,
    dot_mm: Mm,
    corner_mm: Mm,
    #[serde(default, skip_serializing_if = "is_false")]
    sea_water: bool,
    cut_seconds: u32,
    #[serde(default, skip_serializing_if = "is_false")]
    spares: bool,
    #[serde(default)]
    blanks: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    bar_mm: Option<Mm>,
}

settings::words!(
    Work = craft::Work {
        CutLaminateCut,
        OneSheet
    }
);
settings::words!(Cutting = craft::Cutting { Trimmer, Scissors });
settings::words!(
    Sorting = craft::Sorting {
        ByParticipant,
        ThroughTheStack
    }
);
settings::words!(Flip = craft::Flip { Long, Short });
settings::words!(
    OnTile = craft::Half {
        SoftOnTile,
        RoughOnTile
    }
);
settings::words!(
    Shape = craft::TileShape {
        Square,
        Upright,
        Across,
        Card,
        A7,
        A6
    }
);

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the shape serde asks for"
)]
pub(super) const fn is_square(shape: &Shape) -> bool {
    matches!(shape, Shape::Square)
}

pub(super) const fn square() -> Shape {
    Shape::Square
}

pub(super) fn write_craft(c: &craft::Craft) -> Option<Craft> {
    (*c != craft::Craft::default()).then(|| Craft {
        work: c.work.into(),
        cutting: c.cutting.into(),
        pouch: c.pouch.into(),
        sorting: c.sorting.into(),
        sizes_apart: c.sizes_apart,
        ring_mm: c.ring.map(Mm),
        backs: c.backs.map(Into::into),
        on_tile: c.half.into(),
        dot_mm: Mm(c.dot),
        corner_mm: Mm(c.corner),
        sea_water: c.sea_water,
        cut_seconds: c.cut_seconds,
        spares: c.spares,
        blanks: c.blanks,
        bar_mm: c.bar.map(Mm),
    })
}

pub(super) fn read_craft(c: &Craft) -> craft::Craft {
    craft::Craft {
        work: c.work.into(),
        cutting: c.cutting.into(),
        pouch: c.pouch.into(),
        sorting: c.sorting.into(),
        sizes_apart: c.sizes_apart,
        ring: c.ring_mm.map(|r| r.0),
        backs: c.backs.map(Into::into),
        half: c.on_tile.into(),
        dot: c.dot_mm.0,
        corner: c.corner_mm.0,
        sea_water: c.sea_water,
        cut_seconds: c.cut_seconds,
        spares: c.spares,
        blanks: c.blanks,
        bar: c.bar_mm.map(|b| b.0),
    }
}

/// Tiles of one kind that the club has.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Owned {
    /// Nobody's are in the shared box.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    participant: Option<u32>,
    symbol: String,
    label: String,
    form: settings::Form,
    wide_mm: Mm,
    high_mm: Mm,
    words: String,
    film_mm: Mm,
    on_tile: OnTile,
    dot_mm: Mm,
    version: String,
    count: u32,
    #[serde(default, skip_serializing_if = "is_zero")]
    lost: u32,
    #[serde(default, skip_serializing_if = "is_zero")]
    worn: u32,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the shape serde asks for"
)]
const fn is_zero(n: &u32) -> bool {
    *n == 0
}

pub(super) fn write_owned(o: &stock::Owned) -> Owned {
    let face = &o.key.face;
    Owned {
        participant: o.key.whose.map(|p| p.0),
        symbol: face.symbol.to_string(),
        label: face.label.clone(),
        form: face.form.into(),
        wide_mm: Mm(face.size.0),
        high_mm: Mm(face.size.1),
        words: face.language.to_string(),
        film_mm: Mm(face.film),
        on_tile: face.half.into(),
        dot_mm: Mm(face.dot),
        version: face.version.clone(),
        count: o.count,
        lost: o.lost,
        worn: o.worn,
    }
}

pub(super) fn read_owned(o: Owned) -> stock::Owned {
    let size: (Length, Length) = (o.wide_mm.0, o.high_mm.0);
    stock::Owned {
        key: stock::TileKey {
            whose: o.participant.map(ParticipantId),
            face: stock::TileFace {
                symbol: SymbolId::new(&o.symbol),
                label: o.label,
                form: o.form.into(),
                size,
                language: Language::new(&o.words),
                film: o.film_mm.0,
                half: o.on_tile.into(),
                dot: o.dot_mm.0,
                version: o.version,
            },
        },
        count: o.count,
        lost: o.lost,
        worn: o.worn,
    }
}
