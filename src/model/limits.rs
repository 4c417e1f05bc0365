//! What values may be: one place for every bound, used when a person edits and when a file is read.
//!
//! Bounds are our own: wide enough for any real club, narrow enough that a slip of the finger or a
//! damaged file cannot ask for a tile as large as a wall.

pub mod care;
pub mod picture;
pub mod story;

use jiff::civil::{Date, Time};

use super::club::{Activity, Rules};
use super::conditions::Condition;
use super::craft::Craft;
use super::edit::{Refused, SessionDetails};
use super::hand::Content;
use super::language::Language;
use super::manner::Manner;
use super::people::{Helper, Participant};
use super::privacy::Guarded;
use super::profile::Profile;
use super::record::Record;
use super::song::Song;
use super::standing::Standing;
use super::stock::Owned;
use crate::units::Length;

/// Most characters in one text, such as a label, a sentence or a note.
pub const TEXT_CHARS: usize = 10_000;
/// Most minutes of one slot or activity: ten hours.
pub const SLOT_MINUTES: u32 = 600;
/// Most minutes between two slots.
pub const TRANSITION_MINUTES: u32 = 120;
/// Most minutes of a session: one day.
pub const SESSION_MINUTES: u32 = 1440;
/// Smallest printed side of a tile, in millimetres.
pub const TILE_MIN_MM: i64 = 10;
/// Largest printed side of a tile, in millimetres: what A2 paper could still hold.
pub const TILE_MAX_MM: i64 = 400;
/// Widest clear film edge, in millimetres.
pub const SEAL_MAX_MM: i64 = 20;
/// Smallest words on a large-print board, in points. Common practice for large print is 16 to 18.
pub const TEXT_MIN_PT: u32 = 18;
/// Largest words on a large-print board, in points.
pub const TEXT_MAX_PT: u32 = 200;
/// First and last year of a session.
pub const YEARS: std::ops::RangeInclusive<i16> = 2000..=2199;
/// Most parts of the day.
pub const PARTS: usize = 100;
/// Most pictures of its own that a club has.
pub const PICTURES: usize = 2_000;
/// Most songs of a club.
pub const SONGS: usize = 200;
/// Most activities, participants, helpers, or sessions in a club.
pub const LIST: usize = 5_000;
/// Most rows of one timetable, and most own steps of one board.
pub const SLOTS: usize = 500;
/// Most sentences or pieces of equipment of one activity.
pub const LINES: usize = 200;
/// The highest number ever given to a thing.
pub const LAST_ID: u32 = 1_000_000_000;

/// A text of one line made tidy: no blanks around it, line breaks and other control characters
/// turned into blanks.
pub fn tidy_line(text: &str) -> String {
    let plain: String = text
        .chars()
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    plain.trim().to_owned()
}

/// A text of several lines made tidy: no blanks around it, no control characters but line breaks.
pub fn tidy_text(text: &str) -> String {
    let plain: String = text
        .replace("\r\n", "\n")
        .chars()
        .map(|c| match c {
            '\n' | '\r' => '\n',
            c if c.is_control() => ' ',
            c => c,
        })
        .collect();
    plain.trim().to_owned()
}

/// A start without seconds: what is read on a clock at the place.
pub fn tidy_start(start: Time) -> Time {
    Time::constant(start.hour(), start.minute(), 0, 0)
}

/// Tidies every text of an activity; empty sentences and equipment go.
pub(crate) fn tidy_activity(a: &Activity) -> Activity {
    let lines = |l: &[String]| -> Vec<String> {
        l.iter()
            .map(|s| tidy_line(s))
            .filter(|s| !s.is_empty())
            .collect()
    };
    Activity {
        label: tidy_line(&a.label),
        sentences: lines(&a.sentences),
        around: Box::new(story::tidy_around(&a.around)),
        equipment: lines(&a.equipment),
        place: tidy_line(&a.place),
        thing: tidy_line(&a.thing),
        ..a.clone()
    }
}

/// Tidies the texts of a song.
pub(crate) fn tidy_song(s: &Song) -> Song {
    Song {
        title: tidy_line(&s.title),
        words: tidy_text(&s.words),
        ..s.clone()
    }
}

/// Tidies every text of a participant.
pub(crate) fn tidy_participant(p: &Participant) -> Participant {
    let note = &p.helper_note;
    let mut tidy = Participant {
        name: tidy_line(&p.name),
        telling: Box::new(story::tidy_telling(&p.telling)),
        helper_note: Guarded::new(note.class(), tidy_text(note.for_owner())),
        ..p.clone()
    };
    for mixed in tidy.manner.mixed.values_mut() {
        mixed.thing = tidy_line(&mixed.thing);
    }
    for content in tidy.standing.contents_mut() {
        *content = tidy_content(content);
    }
    for (field, text) in p.profile.filled() {
        tidy.profile.set(field, tidy_text(text.for_owner()));
    }
    let hard = p.profile.hard().for_owner().iter();
    let hard = hard.filter_map(|(c, helps)| Some((tidy_condition(c)?, tidy_line(helps))));
    tidy.profile.set_hard(hard.collect());
    tidy
}

/// A condition made tidy; nothing when there are no words in it.
fn tidy_condition(c: &Condition) -> Option<Condition> {
    match c {
        Condition::Known(known) => Some(Condition::Known(*known)),
        Condition::Words(words) => {
            let words = tidy_line(words);
            (!words.is_empty()).then_some(Condition::Words(words))
        }
    }
}

/// Tidies a list of conditions; each stands once.
pub(crate) fn tidy_conditions(list: &[Condition]) -> Vec<Condition> {
    let mut tidy: Vec<Condition> = Vec::with_capacity(list.len());
    for condition in list.iter().filter_map(tidy_condition) {
        if !tidy.contains(&condition) {
            tidy.push(condition);
        }
    }
    tidy
}

/// Tidies the texts of a record.
pub(crate) fn tidy_record(r: &Record) -> Record {
    Record {
        chose: tidy_line(&r.chose),
        next_time: tidy_text(&r.next_time),
        picked: r
            .picked
            .iter()
            .map(|(step, words)| (*step, tidy_line(words)))
            .filter(|(_, words)| !words.is_empty())
            .collect(),
        ..r.clone()
    }
}

/// Tidies what is shown on a step.
pub(crate) fn tidy_content(c: &Content) -> Content {
    Content {
        label: tidy_line(&c.label),
        ..c.clone()
    }
}

/// Tidies what is said about a session.
pub(crate) fn tidy_details(d: &SessionDetails) -> SessionDetails {
    SessionDetails {
        title: tidy_line(&d.title),
        place: tidy_line(&d.place),
        start: tidy_start(d.start),
        date: d.date,
    }
}

/// Refuses a text that is too long. `what` is its name in a sentence, such as "The label".
pub fn text(what: &str, text: &str) -> Result<(), Refused> {
    // Bytes first: counting the characters of something huge is work for nothing.
    if text.len() > TEXT_CHARS && text.chars().count() > TEXT_CHARS {
        return Err(Refused::new(
            format!("{what} is longer than {TEXT_CHARS} characters."),
            "Make it shorter.",
        ));
    }
    Ok(())
}

/// Refuses a text that is empty or too long.
pub fn filled(what: &str, value: &str) -> Result<(), Refused> {
    if value.trim().is_empty() {
        return Err(Refused::new(
            format!("{what} is empty."),
            "Type at least one letter.",
        ));
    }
    text(what, value)
}

fn whole(what: &str, unit: &str, value: u32, from: u32, to: u32) -> Result<(), Refused> {
    if (from..=to).contains(&value) {
        return Ok(());
    }
    Err(Refused::new(
        format!("{what} cannot be {value}{unit}."),
        format!("Choose a number from {from} to {to}."),
    ))
}

fn length(what: &str, value: Length, from_mm: i64, to_mm: i64) -> Result<(), Refused> {
    let um = value.to_um();
    if (from_mm * 1000..=to_mm * 1000).contains(&um) {
        return Ok(());
    }
    Err(Refused::new(
        format!("{what} cannot be {} mm.", value.to_mm()),
        format!("Choose a size from {from_mm} to {to_mm} mm."),
    ))
}

/// Refuses more of something than a club can hold.
pub fn count(what: &str, now: usize, most: usize) -> Result<(), Refused> {
    if now <= most {
        return Ok(());
    }
    Err(Refused::new(
        format!("There are more than {most} {what}."),
        "Remove some that are no longer needed.",
    ))
}

/// Refuses minutes of a slot that no session has.
pub fn slot_minutes(minutes: u32) -> Result<(), Refused> {
    whole("The time", " minutes", minutes, 0, SLOT_MINUTES)
}

/// Refuses rules outside the bounds.
pub fn rules(r: &Rules) -> Result<(), Refused> {
    whole(
        "The time between two activities",
        " minutes",
        r.transition_minutes,
        0,
        TRANSITION_MINUTES,
    )?;
    let session = "The time of a session";
    whole(session, " minutes", r.session_minutes, 1, SESSION_MINUTES)?;
    length("The clear film edge", r.seal, 0, SEAL_MAX_MM)?;
    language(&r.words)?;
    craft(&r.craft)?;
    care::care(&r.care)?;
    tile(r.tile)
}

/// Smallest and largest fastener dot, rounding of a corner, and reading of the bar of 100 mm.
const DOT_MM: (i64, i64) = (5, 30);
const CORNER_MAX_MM: i64 = 20;
const HOLE_MM: (i64, i64) = (3, 12);
const BAR_MM: (i64, i64) = (50, 150);
/// Longest time for one cut, and most blank tiles for a board.
const CUT_SECONDS: u32 = 600;
const BLANKS: u32 = 20;

fn craft(c: &Craft) -> Result<(), Refused> {
    length("A fastener dot", c.dot, DOT_MM.0, DOT_MM.1)?;
    length("The radius of a corner", c.corner, 0, CORNER_MAX_MM)?;
    if let Some(hole) = c.ring {
        length("A hole for a ring", hole, HOLE_MM.0, HOLE_MM.1)?;
    }
    if let Some(bar) = c.bar {
        length("The bar of 100 mm", bar, BAR_MM.0, BAR_MM.1)?;
    }
    whole(
        "The time for a cut",
        " seconds",
        c.cut_seconds,
        1,
        CUT_SECONDS,
    )?;
    whole("The number of blank tiles", "", c.blanks, 0, BLANKS)
}

/// Most kinds of tiles in stock, and most of one kind.
pub const STOCK: usize = 100_000;
const OF_A_KIND: u32 = 10_000;

/// Refuses tiles in stock outside the bounds.
pub fn owned(o: &Owned) -> Result<(), Refused> {
    let face = &o.key.face;
    text("The words on a tile", &face.label)?;
    text("The name of the picture", face.symbol.as_str())?;
    text("The code of the drawing", &face.version)?;
    language(&face.language)?;
    for side in [face.printed().w, face.printed().h] {
        length("The side of a tile in stock", side, 1, 2 * TILE_MAX_MM)?;
    }
    length("The clear film edge", face.film, 0, SEAL_MAX_MM)?;
    length("A fastener dot", face.dot, DOT_MM.0, DOT_MM.1)?;
    for (what, n) in [
        ("tiles", o.count),
        ("lost tiles", o.lost),
        ("worn tiles", o.worn),
    ] {
        whole(&format!("The number of {what}"), "", n, 0, OF_A_KIND)?;
    }
    Ok(())
}

fn language(l: &Language) -> Result<(), Refused> {
    if l.is_tag() {
        return Ok(());
    }
    Err(Refused::new(
        format!("“{l}” is no language tag."),
        "Write it like en-AU: letters and digits with hyphens between.",
    ))
}

fn tile(side: Length) -> Result<(), Refused> {
    length("The side of a tile", side, TILE_MIN_MM, TILE_MAX_MM)
}

/// Refuses an activity outside the bounds.
pub fn activity(a: &Activity) -> Result<(), Refused> {
    filled("The label", &a.label)?;
    text("The name of the picture", a.symbol.as_str())?;
    slot_minutes(a.minutes)?;
    count("sentences", a.sentences.len(), LINES)?;
    count("pieces of equipment", a.equipment.len(), LINES)?;
    for s in &a.sentences {
        text("A sentence", s)?;
    }
    story::around(&a.around)?;
    for e in &a.equipment {
        text("A piece of equipment", e)?;
    }
    text("The place", &a.place)?;
    care::depth(a.depth_cm)?;
    text("The thing that stands for it", &a.thing)
}

/// Refuses a song outside the bounds.
pub fn song(s: &Song) -> Result<(), Refused> {
    filled("The title", &s.title)?;
    text("The words of a song", &s.words)
}

/// Refuses a participant outside the bounds.
pub fn participant(p: &Participant) -> Result<(), Refused> {
    filled("The name", &p.name)?;
    text("The name of the mark", p.mark.as_str())?;
    text("The note for the helper", p.helper_note.for_owner())?;
    tile(p.tile)?;
    manner(&p.manner)?;
    standing(&p.standing)?;
    story::telling(&p.telling)?;
    profile(&p.profile)?;
    let letters = "The size of the letters";
    whole(letters, " points", p.text_pt, TEXT_MIN_PT, TEXT_MAX_PT)
}

fn manner(m: &Manner) -> Result<(), Refused> {
    for mixed in m.mixed.values() {
        text("The thing that stands for an activity", &mixed.thing)?;
    }
    Ok(())
}

fn standing(s: &Standing) -> Result<(), Refused> {
    count("own steps", s.own.len(), SLOTS)?;
    count("always-there cards", s.cards.len(), SLOTS)?;
    s.contents().try_for_each(content)
}

fn profile(p: &Profile) -> Result<(), Refused> {
    for (field, value) in p.filled() {
        text(&format!("“{}”", field.label()), value.for_owner())?;
    }
    for (condition, helps) in p.hard().for_owner() {
        text("A condition", condition.label())?;
        text("What helps", helps)?;
    }
    care::depth(p.in_water().for_owner().depth_cm)?;
    let (decision, papers) = (p.decision().for_owner(), p.papers().for_owner());
    let dates = [
        decision.on,
        decision.review,
        papers.agreed,
        papers.delete_by,
        papers.photos_on,
    ];
    dates.into_iter().flatten().try_for_each(date)
}

/// Most things to choose from at one step. Common practice: two or three; more is not a choice but
/// a search.
pub const OPTIONS: usize = 3;

/// Refuses more options than a choice can have.
pub fn options(options: &[Content]) -> Result<(), Refused> {
    if options.len() > OPTIONS {
        return Err(Refused::new(
            format!("A choice has at most {OPTIONS} options."),
            "Take one out first.",
        ));
    }
    options.iter().try_for_each(content)
}

/// Refuses conditions outside the bounds.
pub fn conditions(list: &[Condition]) -> Result<(), Refused> {
    count("conditions", list.len(), LINES)?;
    let mut labels = list.iter().map(Condition::label);
    labels.try_for_each(|l| filled("A condition", l))
}

/// Refuses a record outside the bounds.
pub fn record(r: &Record) -> Result<(), Refused> {
    text("What was chosen", &r.chose)?;
    text("What to change", &r.next_time)?;
    count("choices", r.picked.len(), LIST)?;
    count("answers", r.answered.len(), LIST)?;
    let mut picked = r.picked.values();
    picked.try_for_each(|words| filled("What was picked", words))
}

/// Refuses a helper outside the bounds.
pub fn helper(h: &Helper) -> Result<(), Refused> {
    filled("The name", &h.name)?;
    care::certificates(&h.certificates)
}

/// Refuses session details outside the bounds.
pub fn details(d: &SessionDetails) -> Result<(), Refused> {
    text("The title", &d.title)?;
    text("The place", &d.place)?;
    date(d.date)
}

fn date(date: Date) -> Result<(), Refused> {
    if YEARS.contains(&date.year()) {
        return Ok(());
    }
    Err(Refused::new(
        format!("The year {} cannot be right.", date.year()),
        format!("Choose a date from {} to {}.", YEARS.start(), YEARS.end()),
    ))
}

/// Refuses content that would show nothing readable, or too much.
pub fn content(c: &Content) -> Result<(), Refused> {
    text("The name of the picture", c.symbol.as_str())?;
    if c.activity.is_none() {
        return filled("The label", &c.label);
    }
    text("The label", &c.label)
}
