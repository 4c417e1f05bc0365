//! Plans of rows in turns in words: what a plan loses of the wishes, and why there is none. One
//! sentence for each, from numbers that `rotation` gives.

use super::said;
use crate::model::club::Club;
use crate::model::session::Session;
use crate::plan::rotation::{Answer, Apart, Losses, Reason, Visit, Water};
use crate::plan::turns::Round;

/// What a plan loses, in sentences: nothing where nothing is lost.
pub fn losses(club: &Club, session: &Session, round: &Round, losses: &Losses) -> Vec<String> {
    Words {
        club,
        session,
        round,
    }
    .losses(losses)
}

/// Why there is no plan, in sentences; nothing for an answer that has one.
pub fn none(club: &Club, session: &Session, round: &Round, answer: &Answer) -> Vec<String> {
    let words = Words {
        club,
        session,
        round,
    };
    let each = |reasons: &[Reason]| -> Vec<String> {
        reasons.iter().flat_map(|r| words.reason(r)).collect()
    };
    match answer {
        Answer::Found(_) => Vec::new(),
        Answer::Impossible(reasons) => {
            let mut all = each(reasons);
            if reasons.contains(&Reason::AllTried) {
                all.extend(words.held());
            }
            all
        }
        Answer::NotFound(not) => {
            let how = if not.stopped {
                "It was broken off before a plan was found.".to_owned()
            } else {
                format!(
                    "No plan was found with {}. That there is none is not proved.",
                    turns(not.turns)
                )
            };
            let all = std::iter::once(how).chain(each(&not.reasons));
            all.chain(words.held()).collect()
        }
    }
}

/// "Four people are free for the water, so four at once.": for each turn where they differ.
pub fn room(club: &Club, round: &Round, count: usize) -> Vec<String> {
    let each = club.rules.care.people_each.max(1);
    let one = |turn: usize| (round.free(turn).len(), round.room(turn));
    let first = one(0);
    if (0..count.max(1)).all(|turn| one(turn) == first) {
        return vec![format!("{}.", said_room(first, each))];
    }
    (0..count)
        .map(|turn| {
            let said = said_room(one(turn), each);
            format!("Turn {}: {}.", turn + 1, uncapital(&said))
        })
        .collect()
}

fn said_room((free, room): (usize, usize), each: u32) -> String {
    let by = match each {
        1 => String::new(),
        n => format!(
            ", by the club’s rule of {} for each",
            said::number(n as usize)
        ),
    };
    match (free, room) {
        (0, _) => "Nobody is free for the water".to_owned(),
        (_, 0) => format!(
            "{} free for the water, so nobody can be in it{by}",
            are(free)
        ),
        _ => format!(
            "{} free for the water, so {} at once{by}",
            are(free),
            said::number(room)
        ),
    }
}

/// "Four people are".
fn are(people: usize) -> String {
    match people {
        1 => "One person is".to_owned(),
        n => format!("{} people are", capital(&said::number(n))),
    }
}

struct Words<'a> {
    club: &'a Club,
    session: &'a Session,
    round: &'a Round,
}

impl Words<'_> {
    fn name(&self, participant: usize) -> String {
        said::participant(self.club, self.round.who(participant))
    }

    /// All of them, each once and in the order of the list.
    fn names(&self, all: impl Iterator<Item = usize>) -> Vec<String> {
        let mut all: Vec<usize> = all.collect();
        all.sort_unstable();
        all.dedup();
        all.into_iter().map(|p| self.name(p)).collect()
    }

    fn station(&self, number: usize) -> String {
        let row = self.session.slot(self.round.slot(number));
        let activity = row.and_then(|s| self.club.activity(s.activity));
        activity.map_or_else(|| "a row".to_owned(), |a| format!("“{}”", a.label.trim()))
    }

    fn losses(&self, losses: &Losses) -> Vec<String> {
        let mut all = Vec::new();
        let quiet = self.names(losses.quiet.iter().map(|l| l.participant));
        if !quiet.is_empty() {
            let who = said::list(&quiet);
            all.push(format!(
                "For {who} the quiet place does not follow the water."
            ));
        }
        let last = self.names(losses.last.iter().map(|l| l.participant));
        if !last.is_empty() {
            let have = has(last.len());
            all.push(format!("{} {have} the water last.", said::list(&last)));
        }
        all.extend(losses.apart.iter().filter_map(|a| self.apart(a)));
        for wait in &losses.waits {
            let which = numbers(&wait.turns);
            all.push(format!("{} waits in {which}.", self.name(wait.participant)));
        }
        let order = self.names(losses.order.iter().map(|l| l.participant));
        if !order.is_empty() {
            let have = has(order.len());
            let who = said::list(&order);
            all.push(format!("{who} {have} another order than the timetable."));
        }
        let changes: usize = losses.places.iter().map(|l| l.times).sum();
        if changes > 0 && self.shares_places() {
            let times = if changes == 1 { "change" } else { "changes" };
            let n = said::number(changes);
            all.push(format!(
                "Together there {} {n} {times} of place between two rows.",
                if changes == 1 { "is" } else { "are" }
            ));
        }
        all
    }

    /// Where every row has its own place, everyone changes places whatever the plan.
    fn shares_places(&self) -> bool {
        let stations = self.round.rotation.stations.iter().enumerate();
        stations.into_iter().any(|(i, s)| s.place != i)
    }

    fn apart(&self, apart: &Apart) -> Option<String> {
        let (a, b) = *self.round.rotation.friends.get(apart.pair)?;
        let where_: Vec<String> = apart.stations.iter().map(|s| self.station(*s)).collect();
        Some(format!(
            "{} and {} are apart at {}.",
            self.name(a),
            self.name(b),
            said::list(&where_)
        ))
    }

    fn reason(&self, reason: &Reason) -> Vec<String> {
        let one = |s: String| vec![s];
        match reason {
            Reason::BadWish {
                participant,
                station,
            } => one(format!(
                "{} has {} more than once, or it is not there.",
                self.name(*participant),
                self.station(*station)
            )),
            Reason::TooManyStations {
                participant,
                stations,
                turns: given,
            } => one(format!(
                "{} has {} rows to go to in {}: {} are needed.",
                self.name(*participant),
                said::number(*stations),
                turns(*given),
                turns(*stations)
            )),
            Reason::StationFull {
                station, visits, ..
            } => {
                let most = self.round.rotation.stations[*station].capacity;
                one(wanted(&self.station(*station), *visits, most))
            }
            Reason::WaterFull { visits, most } => self.water(*visits, *most),
            Reason::NeverPaired { participant } => one(format!(
                "Nobody who is free can be with {} in the water.",
                self.name(*participant)
            )),
            Reason::AllTried => {
                one("Every way to arrange these turns was tried, and none keeps all limits.".into())
            }
            fixed => one(self.fixed(fixed)),
        }
    }

    /// Too many want the water: how many turns that takes, and who is not free for it.
    fn water(&self, visits: usize, most: usize) -> Vec<String> {
        let mut all = vec![match &self.round.rotation.water {
            Water::Every(0) => format!(
                "{} want the water, and nobody is free to be with them.",
                capital(&said::number(visits))
            ),
            Water::Every(limit) => wanted("the water", visits, *limit),
            _ => format!(
                "{} want the water, and in all turns together there is room for {}.",
                capital(&said::number(visits)),
                said::number(most)
            ),
        }];
        let not = self.round.not_free(0).into_iter();
        let not = not.map(|(who, why)| said::why_not(self.club, self.session, who, why));
        all.extend(not.map(|words| said::sentence(&words)));
        all
    }

    /// What is held keeps its turn, and that is what cannot be.
    fn fixed(&self, reason: &Reason) -> String {
        let at = |participant: usize, visit: &Visit| {
            let who = self.name(participant);
            let station = self.station(visit.station);
            format!("{who} is held at {station} in turn {}", visit.turn + 1)
        };
        match reason {
            Reason::FixedNotWished { participant, visit } => {
                format!("{}, which is not on their board.", at(*participant, visit))
            }
            Reason::FixedTooLate { participant, visit } => {
                format!("{}, and there are fewer turns.", at(*participant, visit))
            }
            Reason::FixedTwice {
                participant, visit, ..
            } => format!(
                "{}, and in another turn or at another row as well.",
                at(*participant, visit)
            ),
            Reason::FixedStationFull {
                visit,
                visits,
                most,
            } => format!(
                "{} are held at {} in turn {}, which holds {}.",
                capital(&said::number(*visits)),
                self.station(visit.station),
                visit.turn + 1,
                said::number(*most)
            ),
            Reason::FixedWaterFull { turn, visits, most } => format!(
                "{} {} held in the water in turn {}, and {}.",
                capital(&said::number(*visits)),
                if *visits == 1 { "is" } else { "are" },
                turn + 1,
                match most {
                    0 => "nobody can be in it then".to_owned(),
                    n => format!("{} can be in it", said::number(*n)),
                }
            ),
            Reason::FixedNotPaired { turn, participants } => {
                let who = self.names(participants.iter().copied());
                let held = if who.len() == 1 { "is" } else { "are" };
                format!(
                    "{} {held} held in the water in turn {}, and not all can have someone with them \
                     then.",
                    said::list(&who),
                    turn + 1
                )
            }
            _ => String::new(),
        }
    }

    /// Everything that is held, in one sentence: where no single cause is known, it may be this.
    fn held(&self) -> Option<String> {
        let participants = self.round.rotation.participants.iter().enumerate();
        let each: Vec<String> = participants
            .flat_map(|(who, p)| p.fixed.iter().map(move |visit| (who, visit)))
            .map(|(who, visit)| {
                let station = self.station(visit.station);
                let turn = visit.turn + 1;
                format!("{} at {station} in turn {turn}", self.name(who))
            })
            .collect();
        (!each.is_empty()).then(|| format!("Held is {}.", said::list(&each)))
    }
}

/// "Eight want the water and four at once in one turn: two turns are needed."
fn wanted(what: &str, visits: usize, most: usize) -> String {
    let n = visits.div_ceil(most.max(1));
    let are = if n == 1 { "is" } else { "are" };
    format!(
        "{} want {what}, and {} can be there at once: {} {are} needed.",
        capital(&said::number(visits)),
        said::number(most),
        turns(n)
    )
}

/// "three turns".
fn turns(n: usize) -> String {
    format!("{} turn{}", said::number(n), if n == 1 { "" } else { "s" })
}

/// "turn 2", "turns 2 and 3", counted from one.
fn numbers(turns: &[usize]) -> String {
    let each: Vec<String> = turns.iter().map(|t| (t + 1).to_string()).collect();
    let s = if each.len() == 1 { "" } else { "s" };
    format!("turn{s} {}", said::list(&each))
}

const fn has(n: usize) -> &'static str {
    if n == 1 { "has" } else { "have" }
}

fn capital(word: &str) -> String {
    let sentence = said::sentence(word);
    sentence.trim_end_matches('.').to_owned()
}

fn uncapital(words: &str) -> String {
    let mut letters = words.chars();
    let first = letters.next().map(|c| c.to_lowercase().to_string());
    format!("{}{}", first.unwrap_or_default(), letters.as_str())
}
