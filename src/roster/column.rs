//! The columns of the table: heading, the text of a participant's cell, and what a cell sets.

use crate::model::club::Club;
use crate::model::ids::SymbolId;
use crate::model::manner::{Finishing, Form, Reach, Run};
use crate::model::people::{Age, Participant, Skin, Voice};
use crate::model::privacy::{Class, Guarded};
use crate::model::profile::Field;
use crate::symbols::lexicon::lexicon;
use crate::symbols::library::library;
use crate::units::Length;

/// One column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// The name; a row without one is nobody.
    Name,
    /// The mark by its word.
    Mark,
    /// Printed side of a tile in millimetres.
    Tile,
    /// Letters of the large-print board in points.
    Letters,
    /// In whose voice the story speaks.
    Voice,
    /// Skin in the symbols.
    Skin,
    /// Age in the symbols.
    Age,
    /// Form of a step.
    Form,
    /// How much is shown at once.
    Length,
    /// Which way the steps run.
    Direction,
    /// Where a finished step goes.
    Finishing,
    /// The note for the helper.
    Note,
    /// How deep in the water, as agreed.
    Depth,
    /// Whether they hear in the water.
    Hearing,
    /// What helpers know.
    Fact(Field),
}

impl Column {
    /// What every table has.
    pub const SETTINGS: [Self; 11] = [
        Self::Name,
        Self::Mark,
        Self::Tile,
        Self::Letters,
        Self::Voice,
        Self::Skin,
        Self::Age,
        Self::Form,
        Self::Length,
        Self::Direction,
        Self::Finishing,
    ];

    /// What is added when asked for: everything that helpers may see, nothing that is sealed.
    pub fn for_helpers() -> impl Iterator<Item = Self> {
        let open = Field::ALL
            .into_iter()
            .filter(|f| f.class() <= Class::Helper);
        let ours = [Self::Note, Self::Depth, Self::Hearing];
        ours.into_iter().chain(open.map(Self::Fact))
    }

    /// What stands above it.
    pub fn heading(self) -> String {
        let word = match self {
            Self::Name => "Name",
            Self::Mark => "Mark",
            Self::Tile => "Tile side in mm",
            Self::Letters => "Letters in points",
            Self::Voice => "Story speaks as",
            Self::Skin => "Skin",
            Self::Age => "Age",
            Self::Form => "Form",
            Self::Length => "Length",
            Self::Direction => "Direction",
            Self::Finishing => "Finished steps",
            Self::Note => "Note for the helper",
            Self::Depth => "Depth agreed in cm",
            Self::Hearing => "Hears in the water",
            Self::Fact(field) => {
                return format!("{}: {}", field.section().label(), field.label());
            }
        };
        word.to_owned()
    }

    /// The column of this heading, however its letters are written.
    pub fn of(heading: &str) -> Option<Self> {
        let wanted = heading.trim().to_lowercase();
        let mut all = Self::SETTINGS.into_iter().chain(Self::for_helpers());
        all.find(|c| c.heading().to_lowercase() == wanted)
    }

    /// The text of a participant's cell.
    pub fn text(self, club: &Club, p: &Participant) -> String {
        match self {
            Self::Name => p.name.clone(),
            Self::Mark => lexicon(&club.rules.words).mark(&p.mark).to_owned(),
            Self::Tile => p.tile.to_mm().to_string(),
            Self::Letters => p.text_pt.to_string(),
            Self::Voice => p.voice.label().to_owned(),
            Self::Skin => p.figure.skin.label().to_owned(),
            Self::Age => p.figure.age.label().to_owned(),
            Self::Form => p.manner.form.label().to_owned(),
            Self::Length => p.manner.reach.label().to_owned(),
            Self::Direction => p.manner.run.label().to_owned(),
            Self::Finishing => p.manner.finishing.label().to_owned(),
            Self::Note => {
                let note = p.helper_note.for_page(Class::Helper);
                note.cloned().unwrap_or_default()
            }
            Self::Depth => {
                let agreed = p.profile.in_water().for_page(Class::Helper);
                let depth = agreed.and_then(|a| a.depth_cm);
                depth.map_or_else(String::new, |cm| cm.to_string())
            }
            Self::Hearing => {
                let agreed = p.profile.in_water().for_page(Class::Helper);
                agreed.map_or("", |a| yes(!a.without_hearing)).to_owned()
            }
            Self::Fact(field) => {
                let text = p.profile.for_page(field, Class::Helper);
                text.unwrap_or_default().to_owned()
            }
        }
    }

    /// Sets what a cell says.
    ///
    /// # Errors
    /// A sentence when the cell holds nothing that can stand there.
    pub fn set(self, club: &Club, p: &mut Participant, cell: &str) -> Result<(), String> {
        let name = self.heading();
        match self {
            Self::Name => p.name = cell.to_owned(),
            Self::Mark => p.mark = mark(club, cell)?,
            Self::Tile => p.tile = millimetres(cell)?,
            Self::Letters => p.text_pt = points(cell)?,
            Self::Voice => p.voice = one(&name, cell, Voice::ALL, Voice::label)?,
            Self::Skin => p.figure.skin = one(&name, cell, Skin::ALL, Skin::label)?,
            Self::Age => p.figure.age = one(&name, cell, Age::ALL, Age::label)?,
            Self::Form => p.manner.form = one(&name, cell, Form::ALL, Form::label)?,
            Self::Length => p.manner.reach = one(&name, cell, Reach::ALL, Reach::label)?,
            Self::Direction => p.manner.run = one(&name, cell, Run::ALL, Run::label)?,
            Self::Finishing => {
                p.manner.finishing = one(&name, cell, Finishing::ALL, Finishing::label)?;
            }
            Self::Note => p.helper_note = Guarded::new(Class::Helper, cell.to_owned()),
            Self::Depth => {
                let mut agreed = *p.profile.in_water().for_owner();
                agreed.depth_cm = Some(centimetres(cell)?);
                p.profile.set_in_water(agreed);
            }
            Self::Hearing => {
                let mut agreed = *p.profile.in_water().for_owner();
                agreed.without_hearing = !one(&name, cell, [true, false], yes)?;
                p.profile.set_in_water(agreed);
            }
            Self::Fact(field) => p.profile.set(field, cell.to_owned()),
        }
        Ok(())
    }
}

const fn yes(yes: bool) -> &'static str {
    if yes { "Yes" } else { "No" }
}

fn same(a: &str, b: &str) -> bool {
    a.to_lowercase() == b.to_lowercase()
}

/// The one of these that the cell names.
fn one<T: Copy, const N: usize>(
    name: &str,
    cell: &str,
    all: [T; N],
    label: impl Fn(T) -> &'static str,
) -> Result<T, String> {
    let found = all.into_iter().find(|t| same(label(*t), cell));
    found.ok_or_else(|| {
        let words: Vec<&str> = all.into_iter().map(label).collect();
        format!(
            "{name} is “{}”; it can be: {}.",
            short(cell),
            words.join("; ")
        )
    })
}

fn mark(club: &Club, cell: &str) -> Result<SymbolId, String> {
    let words = lexicon(&club.rules.words);
    let mut marks = library().marks().iter();
    let found = marks.find(|m| same(words.mark(&m.id), cell) || same(m.id.as_str(), cell));
    found.map(|m| m.id.clone()).ok_or_else(|| {
        let all = library().marks().iter().map(|m| words.mark(&m.id));
        let all: Vec<&str> = all.collect();
        format!("Mark is “{}”; it can be: {}.", short(cell), all.join("; "))
    })
}

/// A length as people and spreadsheets write it: with a point or a comma, with or without "mm".
fn millimetres(cell: &str) -> Result<Length, String> {
    let plain = cell.trim_end_matches("mm").trim().replace(',', ".");
    match plain.parse::<f64>() {
        Ok(mm) if mm.is_finite() && mm.abs() < 100_000.0 => Ok(Length::mm(mm)),
        _ => Err(format!(
            "Tile side in mm is “{}”; write a number such as 60.",
            short(cell)
        )),
    }
}

fn points(cell: &str) -> Result<u32, String> {
    let plain = cell.trim_end_matches("pt").trim();
    let whole = plain.strip_suffix(".0").unwrap_or(plain);
    whole.parse().map_err(|_| {
        format!(
            "Letters in points is “{}”; write a whole number such as 36.",
            short(cell)
        )
    })
}

fn centimetres(cell: &str) -> Result<u32, String> {
    let plain = cell.trim_end_matches("cm").trim();
    let whole = plain.strip_suffix(".0").unwrap_or(plain);
    whole.parse().map_err(|_| {
        format!(
            "Depth agreed in cm is “{}”; write a whole number such as 60.",
            short(cell)
        )
    })
}

/// The beginning of a long text, for a sentence.
pub(super) fn short(text: &str) -> String {
    const MOST: usize = 40;
    let text: String = text
        .chars()
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    if text.chars().count() <= MOST {
        return text;
    }
    let start: String = text.chars().take(MOST).collect();
    format!("{start}…")
}
