//! Pictures of the club's own beside the built-in symbols: photographs, drawings made here, drawings
//! brought from elsewhere; whose they are, and who may see them.

use std::collections::BTreeMap;
use std::fmt;
use std::sync::Arc;

use jiff::civil::Date;
use sha2::{Digest, Sha256};

use super::club::Club;
use super::ids::{ParticipantId, PictureId, SymbolId};
use super::people::Participant;
use super::privacy::{Class, Guarded};
use super::profile::PhotoConsent;

/// What the symbol of an own picture begins with; no built-in one does.
const OWN: &str = "own-";

/// A picture of the club's own. It is named and used like any symbol.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// Its id.
    pub id: PictureId,
    /// What it is called.
    pub name: String,
    /// Further words to find it by.
    pub words: Vec<String>,
    /// What is seen.
    pub made: Made,
    /// Whose it is; nobody's is the club's.
    pub whose: Option<ParticipantId>,
    /// The symbol in whose place its owner sees it, on everything that is theirs; the club's own is
    /// seen by everyone in that place.
    pub stands_for: Option<SymbolId>,
    /// Whether a person can be recognised on it.
    pub person: bool,
    /// Where it may be seen.
    pub consent: PhotoConsent,
    /// The day that was said.
    pub said_on: Option<Date>,
    /// What the person on it says about it. For the coordinator.
    pub wish: Guarded<String>,
    /// Who made it, or where it is from.
    pub source: String,
    /// Under what licence it may be used.
    pub licence: String,
}

/// What is seen on a picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Made {
    /// Pixels.
    Photo(Arc<Photo>),
    /// Flat shapes.
    Drawing(Arc<Drawing>),
}

/// Flat shapes: an SVG in the words of the built-in symbols.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drawing {
    svg: String,
    hash: String,
}

impl Drawing {
    /// From an SVG. What ends its lines does not count.
    pub fn new(svg: &str) -> Self {
        let svg = svg.lines().collect::<Vec<_>>().join("\n");
        let hash = sha256(svg.as_bytes());
        Self { svg, hash }
    }

    /// The SVG.
    pub fn svg(&self) -> &str {
        &self.svg
    }

    /// SHA-256 of the SVG, in small hexadecimal letters.
    pub fn hash(&self) -> &str {
        &self.hash
    }
}

fn sha256(bytes: &[u8]) -> String {
    let sum = Sha256::digest(bytes);
    sum.iter().map(|b| format!("{b:02x}")).collect()
}

/// Pixels as a file without anything beside them: no place, no time, no camera.
#[derive(Clone, PartialEq, Eq)]
pub struct Photo {
    kind: PhotoKind,
    size: [u32; 2],
    bytes: Vec<u8>,
    hash: String,
}

/// How the pixels of a photograph are kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PhotoKind {
    /// JPEG (ITU-T T.81).
    Jpeg,
    /// PNG (ISO/IEC 15948), for what has no ground.
    Png,
}

impl Photo {
    /// From a whole file of a kind, `size` pixels wide and high.
    pub fn new(kind: PhotoKind, size: [u32; 2], bytes: Vec<u8>) -> Self {
        let hash = sha256(&bytes);
        Self {
            kind,
            size,
            bytes,
            hash,
        }
    }

    /// How it is kept.
    pub const fn kind(&self) -> PhotoKind {
        self.kind
    }

    /// Pixels across and down.
    pub const fn size(&self) -> [u32; 2] {
        self.size
    }

    /// The file.
    pub fn bytes(&self) -> &[u8] {
        &self.bytes
    }

    /// SHA-256 of the file (FIPS 180-4), in small hexadecimal letters: the same file is kept once.
    pub fn hash(&self) -> &str {
        &self.hash
    }
}

impl fmt::Debug for Photo {
    /// Never the pixels.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [w, h] = self.size;
        write!(f, "Photo({:?}, {w} x {h}, {})", self.kind, self.hash)
    }
}

/// Where a picture is about to be seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// On what belongs to one participant: board, tiles, story, cards, the card of their helper.
    Own(ParticipantId),
    /// On what the group has in common.
    Group,
    /// On what leaves the club.
    Outside,
}

impl Picture {
    /// A picture of the club's own, for the group; the id is given when it is added.
    pub fn new(name: &str, made: Made) -> Self {
        Self {
            id: PictureId(0),
            name: name.to_owned(),
            words: Vec::new(),
            made,
            whose: None,
            stands_for: None,
            person: false,
            consent: PhotoConsent::Group,
            said_on: None,
            wish: Guarded::new(Class::Coordinator, String::new()),
            source: String::new(),
            licence: String::new(),
        }
    }

    /// Its name as a symbol.
    pub fn symbol(&self) -> SymbolId {
        SymbolId::new(&format!("{OWN}{}", self.id))
    }

    /// What tells its looks from all others.
    pub fn hash(&self) -> &str {
        match &self.made {
            Made::Photo(photo) => photo.hash(),
            Made::Drawing(drawing) => drawing.hash(),
        }
    }

    /// The photograph, if it is one.
    pub const fn photo(&self) -> Option<&Arc<Photo>> {
        match &self.made {
            Made::Photo(photo) => Some(photo),
            Made::Drawing(_) => None,
        }
    }

    /// Whether it may be seen there. Of someone's own picture on which a person is seen, what the
    /// family said about photographs holds as well.
    pub fn may_be_seen(&self, club: &Club, place: Place) -> bool {
        let needed = match place {
            Place::Own(who) if self.whose == Some(who) => PhotoConsent::OwnTiles,
            Place::Own(_) | Place::Group => PhotoConsent::Group,
            Place::Outside => PhotoConsent::ClubMedia,
        };
        let owner = self.whose.and_then(|id| club.participant(id));
        let said = match owner {
            Some(p) if self.person => p.profile.papers().for_owner().photos,
            _ => PhotoConsent::ClubMedia,
        };
        self.consent.min(said) >= needed
    }
}

impl SymbolId {
    /// The own picture it names, if it names one; what follows the number names one of its looks.
    pub fn own(&self) -> Option<PictureId> {
        let name = self.as_str().strip_prefix(OWN)?;
        let (number, _) = name.split_once('-').unwrap_or((name, ""));
        number.parse().ok().map(PictureId)
    }
}

impl Club {
    /// The own picture with this id.
    pub fn picture(&self, id: PictureId) -> Option<&Arc<Picture>> {
        self.pictures.iter().find(|p| p.id == id)
    }

    /// The own picture that a symbol names.
    pub fn own_picture(&self, symbol: &SymbolId) -> Option<&Arc<Picture>> {
        self.picture(symbol.own()?)
    }

    /// What a participant sees in the place of a symbol: their own picture of it, then the club's,
    /// each where it may be seen by them; else the symbol itself.
    pub fn seen_by(&self, who: &Participant, symbol: &SymbolId) -> SymbolId {
        if self.pictures.is_empty() || symbol.own().is_some() {
            return symbol.clone();
        }
        let place = Place::Own(who.id);
        let fits = |whose: Option<ParticipantId>| {
            self.pictures.iter().rev().find(|p| {
                p.whose == whose
                    && p.stands_for.as_ref() == Some(symbol)
                    && p.may_be_seen(self, place)
            })
        };
        let own = fits(Some(who.id)).or_else(|| fits(None));
        own.map_or_else(|| symbol.clone(), |p| p.symbol())
    }

    /// What an own picture stands for, for those who may not see it and for what is said of it; any
    /// other symbol is what it is.
    pub fn meant_by(&self, symbol: &SymbolId) -> SymbolId {
        let stands_for = self.own_picture(symbol).and_then(|p| p.stands_for.clone());
        stands_for.unwrap_or_else(|| symbol.clone())
    }

    /// Bytes of all photographs, each counted once.
    pub fn photo_bytes(&self) -> usize {
        let photos = self.pictures.iter().filter_map(|p| p.photo());
        let once: BTreeMap<&str, usize> = photos.map(|p| (p.hash(), p.bytes().len())).collect();
        once.values().sum()
    }
}
