//! A short code for what is on a board, so that old and new tiles are not mixed. It changes when a
//! tile, the order, a word or a size changes, and only then: not with the date, a time or a helper.

use crate::model::board::{Board, StepState, shown};
use crate::model::club::Club;
use crate::model::manner::{Finishing, Form, Reach, Run};
use crate::model::people::{Age, Participant, Skin};
use crate::model::session::Session;
use crate::story::{self, cards};

/// Letters and digits that cannot be taken for one another, and no vowels, so that no words come
/// about.
const SIGNS: &[u8; 21] = b"CDFGHJKMNPQRTWXY34679";
/// Signs in a code: 21 to the power of 4 are 194 481 codes.
const LENGTH: usize = 4;

/// The code of one participant's board.
pub fn of_board(club: &Club, board: &Board, who: &Participant) -> String {
    let mut hash = Fnv::new();
    add_board(&mut hash, club, board, who);
    hash.code()
}

/// The code of several boards together, for sheets of the whole session.
pub fn of_boards<'a>(
    club: &Club,
    boards: impl Iterator<Item = (&'a Board, &'a Participant)>,
) -> String {
    let mut hash = Fnv::new();
    for (board, who) in boards {
        add_board(&mut hash, club, board, who);
    }
    hash.code()
}

/// The code of the group's timetable, for what hangs in the circle.
pub fn of_timetable(club: &Club, session: &Session) -> String {
    let mut hash = Fnv::new();
    for slot in &session.timetable {
        let instead = slot.off.and_then(|o| o.instead);
        for id in [Some(slot.activity), instead] {
            let activity = id.and_then(|id| club.activity(id));
            hash.words(activity.map_or("", |a| a.symbol.as_str()));
            hash.words(activity.map_or("", |a| a.label.as_str()));
        }
        hash.words(club.part(slot.part).map_or("", |p| &p.name));
        hash.number(i64::from(slot.off.is_some()));
        if session.turns.as_ref().is_some_and(|t| t.has(slot.id)) {
            hash.words("in turns");
        }
        hash.number(slot.options.len() as i64);
        for option in &slot.options {
            let option = shown(club, option);
            hash.words(option.symbol.as_str());
            hash.words(&option.label);
        }
    }
    hash.code()
}

/// The code of the club's songs.
pub fn of_songs(club: &Club) -> String {
    let mut hash = Fnv::new();
    for song in &club.songs {
        let activity = song.activity.and_then(|id| club.activity(id));
        hash.words(activity.map_or("", |a| a.symbol.as_str()));
        hash.words(&song.title);
        hash.words(&song.words);
    }
    hash.code()
}

fn add_board(hash: &mut Fnv, club: &Club, board: &Board, who: &Participant) {
    let tile = who.tile_size();
    hash.number(tile.w.to_um());
    if tile.h != tile.w {
        hash.number(tile.h.to_um());
    }
    hash.number(club.rules.film().to_um());
    hash.number(i64::from(who.text_pt));
    let skin = match who.figure.skin {
        Skin::Light => 0,
        Skin::Warm => 1,
        Skin::Tan => 2,
        Skin::Deep => 3,
    };
    let age = match who.figure.age {
        Age::Child => 0,
        Age::Teen => 4,
        Age::Adult => 8,
    };
    hash.number(skin + age);
    hash.number(place(&Reach::ALL, who.manner.reach));
    hash.number(place(&Run::ALL, who.manner.run));
    hash.number(place(&Finishing::ALL, who.manner.finishing));
    hash.words(who.mark.as_str());
    hash.number(board.steps.len() as i64);
    for step in &board.steps {
        hash.words(step.symbol.as_str());
        hash.words(&step.label);
        hash.words(club.part(step.part).map_or("", |p| &p.name));
        hash.number(i64::from(step.state == StepState::NotToday));
        hash.number(place(&Form::ALL, step.form));
        hash.words(&step.thing);
        if step.form == Form::Sentence {
            hash.words(&story::sentence(club, step, who).unwrap_or_default());
        }
        hash.number(step.options.len() as i64);
        for option in &step.options {
            hash.words(option.symbol.as_str());
            hash.words(&option.label);
        }
    }
    for ready in cards::dry_replacements(club, board) {
        hash.words(ready.dry.symbol.as_str());
        hash.words(&ready.dry.label);
        let form = who.manner.form_of(Some(ready.activity));
        if form != who.manner.form {
            hash.number(place(&Form::ALL, form));
        }
    }
    if let Some(what) = &who.standing.waiting {
        let shown = shown(club, what);
        hash.words(shown.symbol.as_str());
        hash.words(&shown.label);
    }
    if who.standing.countdown {
        hash.words(&cards::countdown(club, 5).label);
    }
    let further = cards::always_there_for(club, who).into_iter();
    for card in further.chain([cards::change(club), cards::choose(club)]) {
        hash.words(card.symbol.as_str());
        hash.words(&card.label);
    }
}

/// Which of a list it is.
fn place<T: PartialEq>(all: &[T], one: T) -> i64 {
    all.iter().position(|a| *a == one).unwrap_or(all.len()) as i64
}

/// FNV-1a with 64 bits, by the constants of the FNV specification: the same on every
/// computer and in every version.
pub(super) struct Fnv(u64);

impl Fnv {
    pub(super) const fn new() -> Self {
        Self(0xcbf2_9ce4_8422_2325)
    }

    fn bytes(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }

    /// Words with their length, so that "ab" and "c" differ from "a" and "bc".
    pub(super) fn words(&mut self, words: &str) {
        self.number(words.len() as i64);
        self.bytes(words.as_bytes());
    }

    fn number(&mut self, n: i64) {
        self.bytes(&n.to_le_bytes());
    }

    pub(super) fn code(&self) -> String {
        let base = SIGNS.len() as u64;
        // The high bits of FNV are mixed best.
        let mut rest = self.0 >> 20 ^ self.0;
        let mut code = String::with_capacity(LENGTH);
        for _ in 0..LENGTH {
            code.push(char::from(SIGNS[(rest % base) as usize]));
            rest /= base;
        }
        code
    }
}
