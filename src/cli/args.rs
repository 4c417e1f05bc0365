//! From the words of a command line to a checked request.

use std::ffi::OsString;
use std::path::PathBuf;

use jiff::civil::{Date, Time};
use lexopt::prelude::{Long, Short, Value};
use lexopt::{Parser, ValueExt as _};

use super::Trouble;
use super::completion::{SHELLS, Shell};
use super::symbols::{self, SymbolsWish};
use super::table::{Topic, VERBS};
use super::words::{FORMATS, INKS, PAPERS, TURNS, or, sheets};
use crate::layout::{InkChoice, SheetKind, Turn};
use crate::model::club::Paper;
use crate::workbench::command::Format;

/// What is asked for.
#[derive(Debug)]
pub enum Request {
    /// How something is used.
    Help(Topic),
    /// Which version this is.
    Version,
    /// The window, on a file or on a new club.
    Open(Option<PathBuf>),
    /// The demo club with all its sheets.
    Demo(DemoWish),
    /// Sheets into a folder.
    Print(PrintWish),
    /// What should be looked at.
    Check(CheckWish),
    /// The symbols that fit some words, all, or contact sheets of them.
    Symbols(SymbolsWish),
    /// The manual page.
    Manual,
    /// What a shell needs to complete a command line.
    Completion(Shell),
}

/// How the demo is wanted.
#[derive(Debug)]
pub struct DemoWish {
    pub to: PathBuf,
    pub window: bool,
}

/// Which session is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct When {
    pub date: Date,
    pub start: Option<Time>,
}

/// What is to be printed.
#[derive(Debug)]
pub struct PrintWish {
    pub file: PathBuf,
    pub session: Option<When>,
    /// Names or marks; empty means everyone who comes.
    pub people: Vec<String>,
    pub kinds: Vec<SheetKind>,
    pub to: PathBuf,
    pub paper: Option<Paper>,
    pub turn: Turn,
    pub ink: InkChoice,
    pub formats: Vec<Format>,
    /// Whether tiles in stock are left out.
    pub only_missing: bool,
    /// Whether all sheets for the same readers go into one PDF.
    pub one_file: bool,
}

/// What is to be checked.
#[derive(Debug)]
pub struct CheckWish {
    pub file: PathBuf,
    pub session: Option<When>,
}

/// The request in the words after the program's name.
pub fn parse(words: impl IntoIterator<Item = OsString>) -> Result<Request, Trouble> {
    let mut parser = Parser::from_args(words);
    let Some(first) = parser.next().map_err(|e| unreadable(&e, Topic::Program))? else {
        return Ok(Request::Open(None));
    };
    match first {
        Short('h') | Long("help") => Ok(Request::Help(Topic::Program)),
        Short('V') | Long("version") => Ok(Request::Version),
        Value(word) => match word.to_str() {
            Some("open") => open(&mut parser),
            Some("demo") => demo(&mut parser),
            Some("print") => print(&mut parser),
            Some("check") => check(&mut parser),
            Some("symbols") => symbols::parse(&mut parser),
            Some("manual") => manual(&mut parser),
            Some("completion") => completion(&mut parser),
            Some("help") => help(&mut parser),
            _ => bare_file(word, &mut parser),
        },
        other => Err(unreadable(&other.unexpected(), Topic::Program)),
    }
}

/// A file named without a verb is opened; a single word that is no file name was meant as a verb.
fn bare_file(word: OsString, parser: &mut Parser) -> Result<Request, Trouble> {
    let text = word.to_string_lossy();
    if !text.contains(['.', '/', '\\']) {
        return Err(Trouble::new(
            format!("There is no verb “{text}”."),
            format!("Verbs are {}; see daystrand --help.", or(&verbs())),
        ));
    }
    let file = PathBuf::from(word);
    let rest = options(parser, Topic::Open, |_, _| Ok(false))?;
    match rest {
        Rest::Help => Ok(Request::Help(Topic::Open)),
        Rest::Files(files) if files.is_empty() => Ok(Request::Open(Some(file))),
        Rest::Files(_) => Err(too_many(Topic::Open)),
    }
}

/// What is left when all options are taken.
pub(super) enum Rest {
    Help,
    Files(Vec<OsString>),
}

/// The verbs by their words.
fn verbs() -> Vec<&'static str> {
    VERBS.iter().map(|v| v.word).collect()
}

/// Takes the options of a verb: `take` knows those with a value or without, by name. What is not in
/// the table of verbs is not even asked for.
pub(super) fn options(
    parser: &mut Parser,
    topic: Topic,
    mut take: impl FnMut(&str, &mut Parser) -> Result<bool, Trouble>,
) -> Result<Rest, Trouble> {
    let mut files = Vec::new();
    while let Some(arg) = parser.next().map_err(|e| unreadable(&e, topic))? {
        match arg {
            Short('h') | Long("help") => return Ok(Rest::Help),
            Value(value) => files.push(value),
            Long(name) => {
                let name = name.to_owned();
                if !topic.has(&name) || !take(&name, parser)? {
                    return Err(unknown(&format!("--{name}"), topic));
                }
            }
            Short(letter) => return Err(unknown(&format!("-{letter}"), topic)),
        }
    }
    Ok(Rest::Files(files))
}

fn open(parser: &mut Parser) -> Result<Request, Trouble> {
    match options(parser, Topic::Open, |_, _| Ok(false))? {
        Rest::Help => Ok(Request::Help(Topic::Open)),
        Rest::Files(files) if files.len() > 1 => Err(too_many(Topic::Open)),
        Rest::Files(files) => Ok(Request::Open(files.into_iter().next().map(PathBuf::from))),
    }
}

fn demo(parser: &mut Parser) -> Result<Request, Trouble> {
    let mut wish = DemoWish {
        to: PathBuf::from("daystrand-demo"),
        window: true,
    };
    let rest = options(parser, Topic::Demo, |name, parser| {
        match name {
            "to" => wish.to = path(parser, name)?,
            "no-window" => wish.window = false,
            _ => return Ok(false),
        }
        Ok(true)
    })?;
    match rest {
        Rest::Help => Ok(Request::Help(Topic::Demo)),
        Rest::Files(files) if files.is_empty() => Ok(Request::Demo(wish)),
        Rest::Files(_) => Err(Trouble::new(
            "The demo takes no file.",
            "Say where it is written with --to DIR.",
        )),
    }
}

fn print(parser: &mut Parser) -> Result<Request, Trouble> {
    let mut to = None;
    let mut wish = PrintWish {
        file: PathBuf::new(),
        session: None,
        people: Vec::new(),
        kinds: Vec::new(),
        to: PathBuf::new(),
        paper: None,
        turn: Turn::default(),
        ink: InkChoice::default(),
        formats: Vec::new(),
        only_missing: false,
        one_file: false,
    };
    let rest = options(parser, Topic::Print, |name, parser| {
        match name {
            "session" => wish.session = Some(when(&text(parser, name)?)?),
            "for" => wish.people.extend(list(&text(parser, name)?)),
            "sheet" => wish.kinds.extend(kinds(&text(parser, name)?)?),
            "to" => to = Some(path(parser, name)?),
            "paper" => wish.paper = Some(one_of(&text(parser, name)?, "paper", &PAPERS)?),
            "turn" => wish.turn = one_of(&text(parser, name)?, "way up", &TURNS)?,
            "missing" => wish.only_missing = true,
            "one-file" => wish.one_file = true,
            "ink" => wish.ink = one_of(&text(parser, name)?, "ink", &INKS)?,
            "format" => {
                for word in list(&text(parser, name)?) {
                    wish.formats.push(one_of(&word, "format", &FORMATS)?);
                }
            }
            _ => return Ok(false),
        }
        Ok(true)
    })?;
    let Rest::Files(files) = rest else {
        return Ok(Request::Help(Topic::Print));
    };
    wish.file = the_file(files, Topic::Print)?;
    wish.to = to.ok_or_else(|| {
        Trouble::new(
            "It is not said where the sheets go.",
            "Name a folder with --to DIR; it is made if it is not there.",
        )
    })?;
    wish.people.retain(|p| p != "all");
    if wish.kinds.is_empty() {
        wish.kinds = SheetKind::usual();
    }
    if wish.formats.is_empty() {
        wish.formats.push(Format::Pdf);
    }
    Ok(Request::Print(wish))
}

fn check(parser: &mut Parser) -> Result<Request, Trouble> {
    let mut session = None;
    let rest = options(parser, Topic::Check, |name, parser| {
        if name == "session" {
            session = Some(when(&text(parser, name)?)?);
        }
        Ok(name == "session")
    })?;
    let Rest::Files(files) = rest else {
        return Ok(Request::Help(Topic::Check));
    };
    let file = the_file(files, Topic::Check)?;
    Ok(Request::Check(CheckWish { file, session }))
}

fn manual(parser: &mut Parser) -> Result<Request, Trouble> {
    match options(parser, Topic::Manual, |_, _| Ok(false))? {
        Rest::Help => Ok(Request::Help(Topic::Manual)),
        Rest::Files(files) if files.is_empty() => Ok(Request::Manual),
        Rest::Files(_) => Err(Trouble::new(
            "Nothing belongs after “manual”.",
            format!("See {}.", Topic::Manual.help()),
        )),
    }
}

fn completion(parser: &mut Parser) -> Result<Request, Trouble> {
    let Rest::Files(shells) = options(parser, Topic::Completion, |_, _| Ok(false))? else {
        return Ok(Request::Help(Topic::Completion));
    };
    match shells.as_slice() {
        [shell] => one_of(&shell.to_string_lossy(), "shell", &SHELLS).map(Request::Completion),
        _ => Err(Trouble::new(
            "It is not said for which shell.",
            format!("Name one; see {}.", Topic::Completion.help()),
        )),
    }
}

fn help(parser: &mut Parser) -> Result<Request, Trouble> {
    let Rest::Files(words) = options(parser, Topic::Help, |_, _| Ok(false))? else {
        return Ok(Request::Help(Topic::Help));
    };
    let topics: Vec<_> = VERBS.iter().map(|v| (v.word, v.topic)).collect();
    match words.as_slice() {
        [] => Ok(Request::Help(Topic::Program)),
        [verb] => one_of(&verb.to_string_lossy(), "verb", &topics).map(Request::Help),
        _ => Err(Trouble::new(
            "There is more than one verb to say something about.",
            format!("Name one; see {}.", Topic::Help.help()),
        )),
    }
}

/// The choice with this word, whatever its capitals.
pub(super) fn one_of<T: Copy>(word: &str, what: &str, choices: &[(&str, T)]) -> Result<T, Trouble> {
    let found = choices.iter().find(|(w, _)| w.eq_ignore_ascii_case(word));
    found.map(|(_, choice)| *choice).ok_or_else(|| {
        let words: Vec<_> = choices.iter().map(|(w, _)| *w).collect();
        Trouble::new(
            format!("There is no {what} “{word}”."),
            format!("Choose {}.", or(&words)),
        )
    })
}

fn kinds(text: &str) -> Result<Vec<SheetKind>, Trouble> {
    let choices = sheets();
    let mut kinds = Vec::new();
    for word in list(text) {
        match one_of(&word, "sheet", &choices)? {
            Some(kind) => kinds.push(kind),
            None => kinds.extend(SheetKind::usual()),
        }
    }
    Ok(kinds)
}

/// Words parted by commas.
pub(super) fn list(text: &str) -> Vec<String> {
    let words = text.split(',').map(str::trim).filter(|w| !w.is_empty());
    words.map(str::to_owned).collect()
}

/// A date, or a date and a start: `2027-06-12` or `2027-06-12T09:30`.
fn when(text: &str) -> Result<When, Trouble> {
    let (date, start) = match text.split_once(['T', ' ']) {
        Some((date, start)) => (date, Some(start)),
        None => (text, None),
    };
    let wrong = || {
        Trouble::new(
            format!("“{text}” is no date."),
            "Write it as year-month-day, such as 2027-06-12.",
        )
    };
    Ok(When {
        date: date.parse().map_err(|_| wrong())?,
        start: start.map(str::parse).transpose().map_err(|_| wrong())?,
    })
}

pub(super) fn text(parser: &mut Parser, option: &str) -> Result<String, Trouble> {
    let value = parser.value().map_err(|_| no_value(option))?;
    value.string().map_err(|_| {
        Trouble::new(
            format!("What stands after --{option} is not text."),
            "Write it in plain letters.",
        )
    })
}

pub(super) fn path(parser: &mut Parser, option: &str) -> Result<PathBuf, Trouble> {
    parser
        .value()
        .map(PathBuf::from)
        .map_err(|_| no_value(option))
}

fn no_value(option: &str) -> Trouble {
    Trouble::new(
        format!("Something is missing after --{option}."),
        "See daystrand --help.",
    )
}

fn the_file(files: Vec<OsString>, topic: Topic) -> Result<PathBuf, Trouble> {
    let mut files = files.into_iter();
    match (files.next(), files.next()) {
        (Some(file), None) => Ok(PathBuf::from(file)),
        (None, _) => Err(Trouble::new(
            "No club file is named.",
            format!("Put it after “{}”; see {}.", topic.word(), topic.help()),
        )),
        (Some(_), Some(_)) => Err(too_many(topic)),
    }
}

fn too_many(topic: Topic) -> Trouble {
    Trouble::new(
        "There is more than one file.",
        format!(
            "Name one; put a name with blanks in quotation marks. See {}.",
            topic.help()
        ),
    )
}

fn unknown(option: &str, topic: Topic) -> Trouble {
    Trouble::new(
        format!("There is no option {option} here."),
        format!("See {}.", topic.help()),
    )
}

fn unreadable(error: &lexopt::Error, topic: Topic) -> Trouble {
    let what = match error {
        lexopt::Error::UnexpectedOption(option) => format!("There is no option {option} here."),
        lexopt::Error::UnexpectedValue { option, .. } => {
            format!("Nothing belongs after the = of {option}.")
        }
        other => format!("The command line cannot be read: {other}."),
    };
    Trouble::new(what, format!("See {}.", topic.help()))
}
