//! What all sheets of one request share: the club, the session, whose sheets they are, drawings in
//! the wanted ink, and the findings on the way.

use std::cell::OnceCell;
use std::sync::Arc;

use super::frame::Footer;
use super::{InkChoice, Request, Sheet, SheetKind, Turn, plan_code};
use crate::model::board::{self, Board, Step};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{StepRef, SymbolId};
use crate::model::manner::{Form, Run};
use crate::model::people::{Figure, Participant};
use crate::model::picture::Place;
use crate::model::session::Session;
use crate::page::Page;
use crate::plan::water::{self, WaterDay};
use crate::story::voice::Speaker;
use crate::story::when;
use crate::symbols::lexicon::lexicon;
use crate::symbols::library::{Drawn, library};
use crate::symbols::own;
use crate::symbols::variant::{Ink, Variant};
use crate::units::Size;

/// One who gets sheets.
#[derive(Debug)]
pub(super) struct Person<'a> {
    pub who: &'a Participant,
    pub board: Board,
    pub mark: Drawn,
    /// What the mark is called, such as "kite".
    pub mark_words: String,
    /// The mark in a file name; numbered where two share a mark.
    slug: String,
    /// Code of the board.
    pub code: String,
}

impl Person<'_> {
    /// "My plan", "Your plan", "Noor’s plan".
    pub fn plan_title(&self) -> String {
        Speaker::of(self.who).say("{My} plan")
    }
}

/// What all sheets of one request share.
#[derive(Debug)]
pub(super) struct Desk<'a> {
    pub club: &'a Club,
    pub session: &'a Session,
    pub request: &'a Request,
    findings: Vec<Finding>,
    /// Who is with whom in the water, worked out when first asked for.
    water: OnceCell<WaterDay>,
}

impl<'a> Desk<'a> {
    pub fn new(club: &'a Club, session: &'a Session, request: &'a Request) -> Self {
        Self {
            club,
            session,
            request,
            findings: Vec::new(),
            water: OnceCell::new(),
        }
    }

    /// Who is with whom in the water, of all who come.
    pub fn water(&self) -> &WaterDay {
        self.water.get_or_init(|| {
            let all = self.club.attending(self.session);
            let boards: Vec<Arc<Board>> = all
                .map(|p| Arc::new(board::derive(self.club, self.session, p.id)))
                .collect();
            water::day(self.club, self.session, &boards)
        })
    }

    /// Where all meet when someone is missing: the day's spot, or the club's usual one.
    pub fn meeting_spot(&self) -> Option<&'a str> {
        let spots = [
            &self.session.today.meeting_spot,
            &self.club.rules.care.meeting_spot,
        ];
        spots.into_iter().map(|s| s.trim()).find(|s| !s.is_empty())
    }

    /// What stands at the foot of a sheet for the day: what it is, the plan, and the meeting spot
    /// where there is one.
    pub fn foot(&self, what: String, plan: String) -> Footer {
        const MOST: usize = 44;
        let spot = self.meeting_spot().map_or_else(String::new, |spot| {
            let mut short: String = spot.chars().take(MOST).collect();
            if short.len() < spot.len() {
                short.push('…');
            }
            format!("Meeting spot: {short}")
        });
        Footer { what, plan, spot }
    }

    /// Whom the request names, each once, without those who are away or unknown.
    pub fn people(&self) -> Vec<Person<'a>> {
        let mut people: Vec<Person<'a>> = Vec::new();
        for id in &self.request.participants {
            let away = self.session.away.contains(id);
            let again = people.iter().any(|p| p.who.id == *id);
            if let Some(who) = self.club.participant(*id).filter(|_| !away && !again) {
                people.push(self.person(who));
            }
        }
        people
    }

    /// One participant with board, mark and code.
    pub fn person(&self, who: &'a Participant) -> Person<'a> {
        let board = board::derive(self.club, self.session, who.id);
        let same_mark = |other: &&Arc<Participant>| slug(&other.mark) == slug(&who.mark);
        let before = self
            .club
            .participants
            .iter()
            .filter(same_mark)
            .take_while(|p| p.id != who.id)
            .count();
        let mut slug = slug(&who.mark);
        if before > 0 {
            slug = format!("{slug}-{}", before + 1);
        }
        let mark = library().mark(&who.mark);
        let words = lexicon(&self.club.rules.words);
        Person {
            who,
            code: plan_code::of_board(self.club, &board, who),
            board,
            mark: library().mark_art(&who.mark),
            mark_words: mark.map_or_else(
                || who.mark.as_str().replace(['_', '-'], " "),
                |m| words.mark(&m.id).to_lowercase(),
            ),
            slug,
        }
    }

    /// Name of a file without ending: date, mark and kind, never a name.
    pub fn file_stem(&self, kind: SheetKind, person: Option<&Person<'_>>) -> String {
        let date = self.session.date;
        match person {
            Some(p) => format!("{date}-{}-{}", p.slug, kind.word()),
            None => format!("{date}-{}", kind.word()),
        }
    }

    /// A sheet that some have in common; one alone has it under their mark.
    pub fn common_sheet(&self, people: &[Person<'_>], kind: SheetKind, pages: Vec<Page>) -> Sheet {
        let one = match people {
            [one] => Some(one),
            _ => None,
        };
        Sheet {
            kind,
            participant: one.map(|p| p.who.id),
            file_stem: self.file_stem(kind, one),
            title: one.map_or_else(
                || kind.label().to_owned(),
                |p| format!("{}, {}", kind.label(), p.mark_words),
            ),
            pages,
        }
    }

    /// "Arriving and Sand": the parts of the day of some steps.
    pub fn part_names(&self, steps: &[Step]) -> String {
        let mut names: Vec<&str> = Vec::new();
        for step in steps {
            let name = self.club.part(step.part).map_or("", |p| p.name.trim());
            if !name.is_empty() && names.last() != Some(&name) {
                names.push(name);
            }
        }
        match names.split_last() {
            None => String::new(),
            Some((last, [])) => (*last).to_owned(),
            Some((last, before)) => format!("{} and {last}", before.join(", ")),
        }
    }

    /// The paper, upright or turned.
    pub fn page_size(&self, suits: Turn) -> Size {
        let upright = self.request.paper.size();
        let turn = match self.request.turn {
            Turn::AsSuits => suits,
            turn => turn,
        };
        match turn {
            Turn::Landscape => upright.turned(),
            Turn::AsSuits | Turn::Portrait => upright,
        }
    }

    /// The same on a personal sheet.
    pub fn footer(&self, person: &Person<'_>, what: String) -> Footer {
        let date = when::full_date(self.session.date);
        let plan = format!("Plan {} · {date} · {}", person.code, person.mark_words);
        self.foot(what, plan)
    }

    /// A drawing in the wanted ink and the participant's skin; a missing one is reported.
    pub fn art(
        &mut self,
        symbol: &SymbolId,
        label: &str,
        person: &Person<'_>,
        spot: Spot,
    ) -> Drawn {
        let drawn = self.drawn(symbol, person);
        if !drawn.known {
            let label = quoted(label);
            self.note(
                Severity::Look,
                "print.symbol",
                spot,
                format!("{label} has no picture; an empty square is printed."),
                "Choose a picture for it.",
            );
        }
        drawn
    }

    /// The drawing of a step; a missing one is reported where a drawing is what is seen.
    pub fn step_art(&mut self, step: &Step, person: &Person<'_>) -> Drawn {
        if step.form == Form::Drawing {
            let spot = self.step_spot(person, step.at);
            return self.art(&step.symbol, &step.label, person, spot);
        }
        self.drawn(&step.symbol, person)
    }

    /// The same without a report. On a board that runs from right to left a drawing faces that way,
    /// where it may be mirrored.
    pub fn drawn(&self, symbol: &SymbolId, person: &Person<'_>) -> Drawn {
        self.drawn_as(&self.club.seen_by(person.who, symbol), person)
    }

    /// The same of what is seen in its place.
    pub fn drawn_as(&self, seen: &SymbolId, person: &Person<'_>) -> Drawn {
        let variant = Variant {
            mirrored: person.who.manner.run == Run::RightToLeft,
            ..Variant::new(person.who.figure, self.ink())
        };
        self.drawn_at(seen, Place::Own(person.who.id), variant)
    }

    /// A drawing in the wanted ink with a figure, for what the group has in common.
    pub fn art_on(&self, symbol: &SymbolId, figure: Figure) -> Drawn {
        self.drawn_at(symbol, Place::Group, Variant::new(figure, self.ink()))
    }

    /// The only way to the club's own pictures: one that may not be seen in a place is never drawn
    /// there, but what it stands for.
    fn drawn_at(&self, symbol: &SymbolId, place: Place, variant: Variant) -> Drawn {
        match self.club.own_picture(symbol) {
            Some(p) if p.may_be_seen(self.club, place) => own::of_picture(p, variant),
            Some(p) => library().art(&self.club.meant_by(&p.symbol()), variant),
            None => library().art(symbol, variant),
        }
    }

    /// The wanted ink.
    pub const fn ink(&self) -> Ink {
        match self.request.ink {
            InkChoice::Colour => Ink::Colour,
            InkChoice::Grey => Ink::Grey,
            InkChoice::Outline => Ink::Outline,
        }
    }

    /// What can be seen on a picture in a place; of an own one its name says so.
    pub fn shows(&self, symbol: &SymbolId, place: Place) -> &'a str {
        match self.club.own_picture(symbol) {
            Some(own) if own.may_be_seen(self.club, place) => own.name.as_str(),
            _ => {
                let meant = self.club.meant_by(symbol);
                library().get(&meant).map_or("", |s| s.shows.as_str())
            }
        }
    }

    /// The same of what someone sees in its place.
    pub fn shows_to(&self, person: &Person<'_>, symbol: &SymbolId) -> &'a str {
        let seen = self.club.seen_by(person.who, symbol);
        self.shows(&seen, Place::Own(person.who.id))
    }

    /// The words that stand for a picture of someone's: its label and what they see on it.
    pub fn alt_for(&self, person: &Person<'_>, symbol: &SymbolId, label: &str) -> String {
        alt(label, self.shows_to(person, symbol))
    }

    /// The words that stand for a picture that the group has in common.
    pub fn alt(&self, symbol: &SymbolId, label: &str) -> String {
        alt(label, self.shows(symbol, Place::Group))
    }

    /// Where a step of a person's board is.
    pub fn step_spot(&self, person: &Person<'_>, step: StepRef) -> Spot {
        Spot::Step(self.session.id, person.who.id, step)
    }

    /// Where a person's board is.
    pub fn board_spot(&self, person: &Person<'_>) -> Spot {
        Spot::Board(self.session.id, person.who.id)
    }

    /// Reports something.
    pub fn note(
        &mut self,
        severity: Severity,
        code: &'static str,
        spot: Spot,
        sentence: String,
        hint: &str,
    ) {
        self.add(Finding {
            severity,
            code,
            spot,
            sentence,
            hint: hint.to_owned(),
        });
    }

    /// Reports what was found elsewhere.
    pub fn add(&mut self, finding: Finding) {
        self.findings.push(finding);
    }

    /// Characters that no bundled font has.
    pub fn note_missing(&mut self, spot: Spot, missing: &[char]) {
        if missing.is_empty() {
            return;
        }
        let list: Vec<String> = missing.iter().take(8).map(|c| format!("“{c}”")).collect();
        let sentence = format!("These signs cannot be printed: {}.", list.join(" "));
        let hint = "Write them in another way; a box with a question mark stands in their place.";
        self.note(Severity::Look, "print.letters", spot, sentence, hint);
    }

    /// All that was reported, each once, the most serious first.
    pub fn into_findings(mut self) -> Vec<Finding> {
        self.findings.sort();
        self.findings.dedup();
        self.findings
    }
}

/// Words for a picture: its label and what can be seen on it.
fn alt(label: &str, shows: &str) -> String {
    match (label.trim(), shows) {
        ("", "") => "Picture".to_owned(),
        (label, "") => label.to_owned(),
        ("", shows) => shows.to_owned(),
        (label, shows) => format!("{label}: {shows}"),
    }
}

/// A mark as it stands in a file name: small letters, digits and hyphens.
fn slug(mark: &SymbolId) -> String {
    let sign = |c: char| {
        if c.is_ascii_alphanumeric() {
            c.to_ascii_lowercase()
        } else {
            '-'
        }
    };
    let all: String = mark.as_str().chars().take(40).map(sign).collect();
    match all.trim_matches('-') {
        "" => "mark".to_owned(),
        slug => slug.to_owned(),
    }
}

/// A label short enough to be named in a message.
pub(super) fn quoted(label: &str) -> String {
    const MOST: usize = 40;
    let label = label.trim();
    if label.chars().count() <= MOST {
        format!("“{label}”")
    } else {
        let start: String = label.chars().take(MOST).collect();
        format!("“{}…”", start.trim_end())
    }
}
