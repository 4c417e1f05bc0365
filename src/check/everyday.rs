//! Words that tell nothing about anyone: those everyone reads on every board, and the small words of
//! the language. A private text that is made of these alone cannot be told from any other text.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use crate::model::club::Club;
use crate::story::when;
use crate::symbols::lexicon::lexicons;
use crate::symbols::library::library;

/// Small words of English, of four letters and more. Ours, from memory.
const SMALL: &str = "about above after again alone along already also always another anything around \
    asks away back because been before behind being below beside best better between both bring \
    call called calls calm carry cannot change child come comes could does doing done down during \
    each early either else enough even ever every everyone everything family father find first from \
    full further gets give given gives goes going gone good great hand hands hard have having head \
    hear help helper helpers helps here hold holds home hour hours into just keep keeps kind know \
    known knows last late later least leave left less lets like likes little live lives long look \
    looks made make makes many mark maybe mean minute minutes more morning most mother move much \
    must name near need needed needs never next nobody none nothing only open other others over \
    own parent part people person phone picture pictures place plan play please point quiet quite \
    rather ready really right room said same says seat seen sees session shade shall show shown \
    shows side sign signs since sister small some someone something sometimes soon speak staff stand \
    start stay stays step still stop such sure take taken takes talk tell tells than that their \
    them then there these they thing things think this those three through time times today \
    together told took touch toward towards turn turns twice under until upon used useful uses \
    usual usually very wait walk want wanted wants warm watch water week well went were what when \
    where whether which while whole whom whose will wish with within without word words work would \
    write year years your yours brother grandmother grandfather grandma grandpa aunt uncle neighbour \
    collects collect collected contact emergency doctor nurse medicine medicines held holder holds";

/// Words in small letters, without what stands around them.
pub(super) fn words(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|w| !w.is_empty())
        .map(str::to_lowercase)
}

/// Words that are on every board of every club: of the symbols, and the small ones.
fn of_all() -> &'static BTreeSet<String> {
    static ALL: OnceLock<BTreeSet<String>> = OnceLock::new();
    ALL.get_or_init(|| {
        let mut all: BTreeSet<String> = words(SMALL).collect();
        for lexicon in lexicons() {
            for symbol in library().all() {
                all.extend(words(lexicon.label(&symbol.id)));
                all.extend(lexicon.words(&symbol.id).iter().flat_map(|w| words(w)));
            }
        }
        all
    })
}

/// Everyday words of one club: what is said to everyone, whoever they are.
pub(super) struct Everyday {
    club: BTreeSet<String>,
    /// The digits of the days of its sessions, which stand on every sheet.
    days: BTreeSet<String>,
}

impl Everyday {
    pub fn of(club: &Club) -> Self {
        let mut all: BTreeSet<String> = words(&club.name).collect();
        for a in &club.activities {
            let lines = a.sentences.iter().chain(&a.equipment);
            for text in [&a.label, &a.place, &a.thing].into_iter().chain(lines) {
                all.extend(words(text));
            }
        }
        all.extend(club.parts.iter().flat_map(|p| words(&p.name)));
        all.extend(club.participants.iter().flat_map(|p| words(&p.name)));
        all.extend(club.helpers.iter().flat_map(|h| words(&h.name)));
        for s in &club.sessions {
            all.extend(words(&s.title).chain(words(&s.place)));
            all.extend(words(&when::full_date(s.date)).chain(words(&s.date.to_string())));
        }
        let days = club.sessions.iter().flat_map(|s| {
            let (y, m, d) = (s.date.year(), s.date.month(), s.date.day());
            [
                format!("{y}{m:02}{d:02}"),
                format!("{d:02}{m:02}{y}"),
                format!("{d}{m}{y}"),
            ]
        });
        Self {
            days: days.collect(),
            club: all,
        }
    }

    /// Whether these digits are the day of a session.
    pub fn is_day(&self, digits: &str) -> bool {
        self.days.contains(digits)
    }

    pub fn has(&self, word: &str) -> bool {
        self.club.contains(word) || of_all().contains(word)
    }
}
