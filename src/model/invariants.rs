//! What holds of every club after every edit, and of every file that was read.

use std::collections::{BTreeMap, BTreeSet};

use super::board;
use super::club::{Activity, Club};
use super::edit::{Refused, SessionDetails};
use super::hand::{Asked, Content, HandChanges};
use super::ids::{ActivityId, HelperId, ParticipantId, StepRef};
use super::limits;
use super::people::{Helper, Participant};
use super::picture::Picture;
use super::rewriting::PageWords;
use super::session::Session;
use super::song::Song;
use super::standing::Beside;

/// Every broken invariant as a sentence that begins with the place. Empty when all hold: ids are
/// unique and below the next one to give, everything named exists, values are within [`limits`],
/// texts are tidy, sessions are in order, and each board holds every row and every own step once.
pub fn check(club: &Club) -> Vec<String> {
    let mut sweep = Sweep {
        club,
        found: Vec::new(),
    };
    sweep.club();
    sweep.activities();
    sweep.pictures();
    sweep.songs();
    sweep.people();
    sweep.sessions();
    sweep.found
}

struct Sweep<'a> {
    club: &'a Club,
    found: Vec<String>,
}

impl Sweep<'_> {
    fn say(&mut self, place: &str, what: impl AsRef<str>) {
        self.found.push(format!("{place}: {}", what.as_ref()));
    }

    fn within(&mut self, place: &str, result: Result<(), Refused>) {
        if let Err(refused) = result {
            self.say(place, refused.sentence);
        }
    }

    fn tidy(&mut self, place: &str, what: &str, text: &str) {
        if limits::tidy_line(text) != text {
            self.say(
                place,
                format!("{what} has blanks around it or control characters in it."),
            );
        }
    }

    fn ids(&mut self, list: &str, ids: impl Iterator<Item = u32>) {
        let mut seen = BTreeSet::new();
        for (i, id) in ids.enumerate() {
            if !seen.insert(id) {
                self.say(&place(list, i, ""), format!("the id {id} is used twice."));
            }
            if id >= self.club.next_id {
                let next = self.club.next_id;
                self.say(
                    &place(list, i, ""),
                    format!("the id {id} is not below next_id, which is {next}."),
                );
            }
        }
    }

    fn club(&mut self) {
        let club = self.club;
        self.within("name", limits::text("The name", &club.name));
        self.tidy("name", "The name", &club.name);
        self.within("rules", limits::rules(&club.rules));
        if club.next_id > limits::LAST_ID {
            self.say("next_id", format!("{} is too large.", club.next_id));
        }
        self.ids("parts", club.parts.iter().map(|p| p.id.0));
        self.ids("activities", club.activities.iter().map(|a| a.id.0));
        self.ids("pictures", club.pictures.iter().map(|p| p.id.0));
        self.ids("songs", club.songs.iter().map(|s| s.id.0));
        self.ids("participants", club.participants.iter().map(|p| p.id.0));
        let awards = &club.rules.care.awards;
        self.ids("kinds of certificates", awards.iter().map(|a| a.id.0));
        if limits::care::tidy(&club.rules.care) != *club.rules.care {
            self.say("rules", "a text has blanks around it.");
        }
        self.ids("helpers", club.helpers.iter().map(|h| h.id.0));
        self.ids("sessions", club.sessions.iter().map(|s| s.id.0));
        let rows = |s: &std::sync::Arc<Session>| {
            let ids: Vec<u32> = s.timetable.iter().map(|r| r.id.0).collect();
            ids
        };
        self.ids("timetable rows", club.sessions.iter().flat_map(rows));
        for (what, now, most) in [
            ("parts of the day", club.parts.len(), limits::PARTS),
            ("activities", club.activities.len(), limits::LIST),
            ("pictures", club.pictures.len(), limits::PICTURES),
            ("songs", club.songs.len(), limits::SONGS),
            ("participants", club.participants.len(), limits::LIST),
            ("helpers", club.helpers.len(), limits::LIST),
            ("sessions", club.sessions.len(), limits::LIST),
        ] {
            self.within("club", limits::count(what, now, most));
        }
        for (i, part) in club.parts.iter().enumerate() {
            let place = place("parts", i, &part.name);
            self.within(&place, limits::filled("The name", &part.name));
            self.tidy(&place, "The name", &part.name);
        }
    }

    fn activities(&mut self) {
        for (i, a) in self.club.activities.iter().enumerate() {
            let place = place("activities", i, &a.label);
            self.within(&place, limits::activity(a));
            if limits::tidy_activity(a) != Activity::clone(a) {
                self.say(&place, "a text has blanks around it or is empty.");
            }
            if self.club.part(a.part).is_none() {
                self.say(&place, format!("there is no part with the id {}.", a.part));
            }
            if let Some(dry) = a.dry_replacement {
                self.activity_exists(&place, dry);
                if dry == a.id {
                    self.say(&place, "it is its own dry replacement.");
                }
            }
        }
    }

    fn pictures(&mut self) {
        for (i, p) in self.club.pictures.iter().enumerate() {
            let place = place("pictures", i, &p.name);
            self.within(&place, limits::picture::check(p));
            if limits::picture::tidy(p) != Picture::clone(p) {
                self.say(&place, "a text has blanks around it or is empty.");
            }
            if let Some(who) = p.whose {
                self.participant_exists(&place, who);
            }
        }
        self.within("pictures", limits::picture::together(self.club));
    }

    fn songs(&mut self) {
        for (i, s) in self.club.songs.iter().enumerate() {
            let place = place("songs", i, &s.title);
            self.within(&place, limits::song(s));
            if limits::tidy_song(s) != Song::clone(s) {
                self.say(&place, "a text has blanks around it.");
            }
            if let Some(id) = s.activity {
                self.activity_exists(&place, id);
            }
        }
    }

    fn people(&mut self) {
        for (i, p) in self.club.participants.iter().enumerate() {
            let place = place("participants", i, &p.name);
            self.within(&place, limits::participant(p));
            self.tidy(&place, "The name", &p.name);
            let note = p.helper_note.for_owner();
            if limits::tidy_text(note) != *note {
                self.say(&place, "the note for the helper has blanks around it.");
            }
            if limits::tidy_participant(p) != Participant::clone(p) {
                self.say(&place, "a text has blanks around it.");
            }
            self.settings(&place, p);
        }
        let ids = self.club.participants.iter();
        let ids = ids.flat_map(|p| p.standing.own.iter().map(|s| s.id.0));
        self.ids("own steps of participants", ids);
        for (i, h) in self.club.helpers.iter().enumerate() {
            let place = place("helpers", i, &h.name);
            self.within(&place, limits::helper(h));
            if limits::care::tidy_helper(h) != Helper::clone(h) {
                self.say(&place, "a text has blanks around it.");
            }
            for id in &h.trains {
                self.participant_exists(&place, *id);
            }
            for id in h.certificates.iter().map(|c| c.award) {
                if self.club.rules.care.award(id).is_none() {
                    self.say(&place, format!("there is no kind of certificate {id}."));
                }
            }
        }
        self.stock();
    }

    /// Tiles in stock are those of people in the club, each kind once and in order.
    fn stock(&mut self) {
        let stock = &self.club.stock;
        self.within(
            "stock",
            limits::count("kinds of tiles", stock.len(), limits::STOCK),
        );
        if !stock.is_sorted_by(|a, b| a.key < b.key) {
            self.say(
                "stock",
                "the kinds of tiles are not in order, or one is there twice.",
            );
        }
        for (i, owned) in stock.iter().enumerate() {
            let place = place("stock", i, &owned.key.face.label);
            self.within(&place, limits::owned(owned));
            if let Some(who) = owned.key.whose
                && self.club.participant(who).is_none()
            {
                self.say(
                    &place,
                    format!("there is no participant with the id {who}."),
                );
            }
        }
    }

    /// What is said about a participant names only what the club has.
    fn settings(&mut self, place: &str, p: &Participant) {
        for content in p.standing.contents() {
            self.content(place, content);
        }
        let beside = p.standing.own.iter().map(|s| s.beside);
        for beside in beside {
            match beside {
                Beside::Activity(id) => self.activity_exists(place, id),
                Beside::Part(id) if self.club.part(id).is_none() => {
                    self.say(place, format!("there is no part with the id {id}."));
                }
                Beside::Part(_) | Beside::Water => {}
            }
        }
        let named = p.standing.swaps.keys().chain(&p.standing.left_out);
        for id in named
            .chain(&p.profile.favourites)
            .chain(p.manner.mixed.keys())
        {
            self.activity_exists(place, *id);
        }
        for (field, text) in p.profile.filled() {
            if text.class() != field.class() {
                self.say(place, format!("“{}” is for other readers.", field.label()));
            }
        }
    }

    fn sessions(&mut self) {
        let order = |s: &Session| (s.date, s.start, s.id);
        let club = self.club;
        if !club.sessions.is_sorted_by_key(|s| order(s)) {
            self.say("sessions", "they are not in the order of their dates.");
        }
        for (i, s) in club.sessions.iter().enumerate() {
            self.session(&place("sessions", i, &s.title), s);
        }
    }

    fn session(&mut self, place: &str, s: &Session) {
        let details = SessionDetails {
            title: s.title.clone(),
            date: s.date,
            start: s.start,
            place: s.place.clone(),
        };
        self.within(place, limits::details(&details));
        if limits::tidy_details(&details) != details {
            self.say(
                place,
                "a text has blanks around it, or the start has seconds.",
            );
        }
        let rows = s.timetable.len();
        self.within(place, limits::count("rows", rows, limits::SLOTS));
        for (i, row) in s.timetable.iter().enumerate() {
            let place = format!("{place}, timetable, number {}", i + 1);
            self.within(&place, limits::slot_minutes(row.minutes));
            self.activity_exists(&place, row.activity);
            self.within(&place, limits::options(&row.options));
            for option in &row.options {
                self.content(&place, option);
            }
            for id in &row.leads {
                self.helper_exists(&place, *id);
            }
            if let Some(instead) = row.off.and_then(|o| o.instead) {
                self.activity_exists(&place, instead);
            }
            if self.club.part(row.part).is_none() {
                self.say(
                    &place,
                    format!("there is no part with the id {}.", row.part),
                );
            }
        }
        for id in &s.away {
            self.participant_exists(&format!("{place}, away"), *id);
        }
        for id in &s.helpers_away {
            self.helper_exists(&format!("{place}, helpers_away"), *id);
        }
        for (who, record) in &s.records {
            let place = format!("{place}, record of participant {who}");
            self.participant_exists(&place, *who);
            let record = record.for_owner();
            self.within(&place, limits::record(record));
            if limits::tidy_record(record) != *record || record.is_empty() {
                self.say(&place, "it is empty or has blanks around a text.");
            }
            if let Some(id) = record.favourite {
                self.activity_exists(&place, id);
            }
        }
        for (who, story) in &s.stories {
            let place = format!("{place}, story of participant {who}");
            self.participant_exists(&place, *who);
            self.within(&place, limits::story::rewriting(story));
            let tidy = |w: &PageWords| limits::story::tidy_page(w) == *w && !w.is_empty();
            if story.pages.is_empty() || !story.pages.values().all(tidy) {
                self.say(&place, "a page is empty or has blanks around a text.");
            }
        }
        for (who, helper) in &s.beside {
            let place = format!("{place}, beside participant {who}");
            self.participant_exists(&place, *who);
            self.helper_exists(&place, *helper);
        }
        self.today(place, s);
        self.turns(place, s);
        self.within(place, limits::conditions(&s.conditions));
        if limits::tidy_conditions(&s.conditions) != s.conditions {
            self.say(place, "a condition is there twice or has blanks around it.");
        }
        if s.from.is_some_and(|id| self.club.session(id).is_none()) {
            self.say(place, "the session it started from is not there.");
        }
        for (who, hand) in &s.hand {
            let place = format!("{place}, hand changes of participant {who}");
            self.participant_exists(&place, *who);
            self.hand(&place, s, *who, hand);
        }
    }

    fn today(&mut self, place: &str, s: &Session) {
        let place = format!("{place}, people of the day");
        let today = &s.today;
        self.within(&place, limits::care::today(today));
        let helpers = today.water_lead.iter().chain(today.here.keys());
        let helpers = helpers.chain(today.watching.keys());
        let helpers = helpers.chain(today.watched_by.values());
        let helpers = helpers.chain(today.pairs.keys().map(|(_, h)| h));
        for id in helpers.chain(today.held.values().flatten()) {
            self.helper_exists(&place, *id);
        }
        let people = today.watched_by.keys();
        let people = people.chain(today.pairs.keys().map(|(p, _)| p));
        for id in people.chain(today.held.keys().map(|(_, p)| p)) {
            self.participant_exists(&place, *id);
        }
        if today.held.keys().any(|(slot, _)| s.slot(*slot).is_none()) {
            self.say(&place, "someone is held at a row that is not there.");
        }
    }

    fn turns(&mut self, place: &str, s: &Session) {
        let Some(turns) = &s.turns else {
            return;
        };
        let place = format!("{place}, turns");
        self.within(&place, limits::care::turns_in(turns));
        let rows: Vec<_> = turns.slots().collect();
        let own: Vec<_> = s.timetable.iter().map(|r| r.id).collect();
        let first = own.iter().position(|r| rows.contains(r)).unwrap_or(0);
        let end = own.len().min(first + rows.len());
        if rows.is_empty() || turns.stations.is_empty() || own[first..end] != rows[..] {
            self.say(&place, "its rows do not stand together in the timetable.");
        }
        for (who, places) in &turns.places {
            self.participant_exists(&place, *who);
            let named: Vec<_> = places.iter().flatten().collect();
            let once: BTreeSet<_> = named.iter().collect();
            if once.len() != named.len() || !named.iter().all(|r| rows.contains(r)) {
                self.say(&place, "a row is named twice, or is not one of the turns.");
            }
            if places.len() != turns.count as usize {
                self.say(&place, "someone has more or fewer turns than there are.");
            }
        }
        for (who, slot) in &turns.held {
            self.participant_exists(&place, *who);
            let station = turns.stations.iter().any(|s| s.slot == *slot);
            let own = turns.places.get(who);
            if !station || !own.is_some_and(|own| own.contains(&Some(*slot))) {
                self.say(&place, "someone is held at a row where they have no turn.");
            }
        }
        for (a, b) in &turns.friends {
            self.participant_exists(&place, *a);
            self.participant_exists(&place, *b);
        }
    }

    fn hand(&mut self, place: &str, s: &Session, who: ParticipantId, hand: &HandChanges) {
        if hand.is_empty() {
            self.say(place, "there are none.");
        }
        self.within(
            place,
            limits::count("own steps", hand.own.len(), limits::SLOTS),
        );
        for id in hand.own.keys().filter(|id| id.0 >= self.club.next_id) {
            self.say(place, format!("the own step {id} is not below next_id."));
        }
        for content in hand.contents() {
            self.content(place, content);
        }
        for options in hand.choices.values() {
            self.within(place, limits::options(options));
            if options.is_empty() {
                self.say(place, "a choice has no options.");
            }
        }
        // A step that stands beside a row may come and go; rows and own steps do not.
        let exists = |step: &StepRef| match step {
            StepRef::Own(id) => hand.own.contains_key(id),
            _ => step.slot().is_none_or(|id| s.slot(id).is_some()),
        };
        let gone: BTreeSet<StepRef> = hand.named().into_iter().filter(|s| !exists(s)).collect();
        for step in gone {
            self.say(place, format!("there is no {}.", step_words(step)));
        }
        for slot in hand.asked.iter().filter_map(Asked::slot) {
            if s.slot(slot).is_none() {
                self.say(
                    place,
                    format!("it asks about row {slot}, which is not there."),
                );
            }
        }
        for label in hand.labels.values() {
            self.within(place, limits::filled("A label", label));
            self.tidy(place, "A label", label);
        }
        self.board(place, s, who, hand);
    }

    fn board(&mut self, place: &str, s: &Session, who: ParticipantId, hand: &HandChanges) {
        let mut times: BTreeMap<StepRef, usize> = BTreeMap::new();
        for p in &hand.placed {
            *times.entry(p.step).or_default() += 1;
        }
        for (step, n) in &times {
            if *n > 1 {
                self.say(place, format!("{} is placed twice.", step_words(*step)));
            }
        }
        for id in hand.own.keys() {
            if !times.contains_key(&StepRef::Own(*id)) {
                self.say(place, format!("the own step {id} is placed nowhere."));
            }
        }
        let rows = board::rows(self.club, s, who, hand);
        let mut shown = board::order(&rows, hand);
        shown.sort_unstable();
        let left_out = rows.left_out.iter().chain(&rows.spare);
        let left_out = left_out.map(|id| StepRef::Slot(*id));
        let mut slots: Vec<StepRef> = rows
            .rows
            .iter()
            .map(|r| r.step.at)
            .chain(left_out)
            .collect();
        slots.retain(|s| matches!(s, StepRef::Slot(_)));
        slots.sort_unstable();
        let mut timetable: Vec<StepRef> = s.timetable.iter().map(|r| StepRef::Slot(r.id)).collect();
        timetable.sort_unstable();
        let own = hand.own.keys().map(|id| StepRef::Own(*id));
        let mut all: Vec<StepRef> = rows.rows.iter().map(|r| r.step.at).chain(own).collect();
        all.sort_unstable();
        if shown != all || slots != timetable {
            self.say(place, "the board does not show every step exactly once.");
        }
    }

    fn content(&mut self, place: &str, content: &Content) {
        self.within(place, limits::content(content));
        self.tidy(place, "A label", &content.label);
        if let Some(id) = content.activity {
            self.activity_exists(place, id);
        }
    }

    fn activity_exists(&mut self, place: &str, id: ActivityId) {
        if self.club.activity(id).is_none() {
            self.say(place, format!("there is no activity with the id {id}."));
        }
    }

    fn helper_exists(&mut self, place: &str, id: HelperId) {
        if self.club.helper(id).is_none() {
            self.say(place, format!("there is no helper with the id {id}."));
        }
    }

    fn participant_exists(&mut self, place: &str, id: ParticipantId) {
        if self.club.participant(id).is_none() {
            self.say(place, format!("there is no participant with the id {id}."));
        }
    }
}

fn step_words(step: StepRef) -> String {
    match step {
        StepRef::Slot(id) => format!("timetable row with the id {id}"),
        StepRef::Own(id) => format!("own step with the id {id}"),
        StepRef::Instead(id) => format!("step instead of the row with the id {id}"),
        StepRef::Standing(id, _) => format!("standing step with the id {id}"),
    }
}

fn place(list: &str, index: usize, name: &str) -> String {
    let number = index + 1;
    if name.trim().is_empty() {
        return format!("{list}, number {number}");
    }
    let short: String = name.chars().take(40).collect();
    format!("{list}, number {number} ({})", short.trim())
}
