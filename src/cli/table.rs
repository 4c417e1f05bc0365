//! The one table of verbs and options. Help, the manual page and what a shell completes are made from
//! it, and the reader of command lines takes no option that is not in it.

use super::words::{
    AGES, INKS, PAPERS, SKINS, SYMBOL_INKS, TURNS, Word, formats_said, languages, plain,
    sheets_said,
};

/// What help is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Topic {
    /// The program.
    Program,
    /// A window.
    Open,
    /// The demo club.
    Demo,
    /// Sheets.
    Print,
    /// Findings.
    Check,
    /// Pictures.
    Symbols,
    /// The manual page.
    Manual,
    /// What a shell completes.
    Completion,
    /// Help itself.
    Help,
}

/// What stands in the place of an operand or after an option.
#[derive(Clone, Copy, Debug)]
pub enum Takes {
    /// A folder.
    Folder,
    /// A club file.
    Club,
    /// Anything.
    Text,
    /// One of some words.
    One(fn() -> Vec<Word>),
    /// One or more of some words, with commas between.
    Several(fn() -> Vec<Word>),
}

/// A place on the command line that a person fills in.
#[derive(Clone, Copy, Debug)]
pub struct Blank {
    /// As help shows it, such as `DIR`.
    pub shown: &'static str,
    /// What belongs there.
    pub takes: Takes,
}

/// An option.
#[derive(Clone, Copy, Debug)]
pub struct Flag {
    /// As typed, without its hyphens.
    pub name: &'static str,
    /// The single letter for the same, if there is one.
    pub letter: Option<char>,
    /// What stands after it.
    pub value: Option<Blank>,
    /// What it is for, in a few words without a stop.
    pub what: &'static str,
    /// The rest that help says about it, with the sign that it begins with.
    pub more: &'static str,
}

/// A verb with all that is said about it.
#[derive(Debug)]
pub struct Verb {
    /// The same for help.
    pub topic: Topic,
    /// As typed.
    pub word: &'static str,
    /// What stands after it.
    pub operand: Option<Blank>,
    /// What it does, in a few words without a stop.
    pub brief: &'static str,
    /// What it does, in sentences.
    pub about: &'static str,
    /// How it is written after the program's name.
    pub usage: &'static [&'static str],
    /// Its options, but for that of help.
    pub flags: &'static [Flag],
    /// What should be known besides, a paragraph each.
    pub further: &'static [&'static str],
    /// Command lines that can be copied.
    pub examples: &'static [&'static str],
}

impl Topic {
    /// Its row, unless it is the program.
    pub fn verb(self) -> Option<&'static Verb> {
        VERBS.iter().find(|v| v.topic == self)
    }

    /// As typed.
    pub fn word(self) -> &'static str {
        self.verb().map_or("daystrand", |v| v.word)
    }

    /// How its help is asked for.
    pub fn help(self) -> String {
        match self {
            Self::Program => "daystrand --help".to_owned(),
            verb => format!("daystrand {} --help", verb.word()),
        }
    }

    /// Whether it has an option of that name.
    pub fn has(self, name: &str) -> bool {
        self.verb()
            .is_some_and(|v| v.flags.iter().any(|f| f.name == name))
    }
}

impl Flag {
    const fn new(name: &'static str, what: &'static str, more: &'static str) -> Self {
        Self {
            name,
            letter: None,
            value: None,
            what,
            more,
        }
    }

    const fn letter(self, letter: char) -> Self {
        Self {
            letter: Some(letter),
            ..self
        }
    }

    const fn value(self, shown: &'static str, takes: Takes) -> Self {
        Self {
            value: Some(Blank { shown, takes }),
            ..self
        }
    }
}

impl Takes {
    /// The words to choose from; none where anything may stand.
    pub fn words(self) -> Vec<Word> {
        match self {
            Self::One(words) | Self::Several(words) => words(),
            Self::Folder | Self::Club | Self::Text => Vec::new(),
        }
    }
}

/// In a sentence: what the program is for.
pub const PURPOSE: &str = "From one group timetable to a picture schedule for each participant.";

/// What the manual page says about it.
pub const DESCRIPTION: &[&str] = &[
    "Daystrand takes the one timetable of a group's session and makes a picture schedule for each \
     participant from it. It checks the plan and says what to look at; it prints each board in large \
     print, as removable tiles with a base to lay them on, and as a plain-language story that a \
     parent goes through with the child before the day.",
    "Without a verb, or with a file alone, it opens the window. The other verbs do the same work \
     without one, for printing in bulk and for scripts. No network is used.",
    "The program lays out, counts, compares and reminds. People who know the participants decide, \
     and a person in charge of the water decides about the water. Follow local codes, lifeguards and \
     licensed practice.",
];

/// Options that every verb takes.
pub const HELP: Flag = Flag::new("help", "say how it is used", "").letter('h');

/// Options without a verb.
pub const PROGRAM_FLAGS: [Flag; 2] = [
    HELP,
    Flag::new("version", "say which version this is", "").letter('V'),
];

/// Exit codes and what each means.
pub const CODES: [(u8, &str); 3] = [
    (super::DONE, "done"),
    (super::LOOK, "something needs a look (check)"),
    (super::WRONG, "wrong use or a file that cannot be read"),
];

/// Files, and what is in them.
pub const FILES: [(&str, &str); 4] = [
    (
        "*.daystrand",
        "A club: its people, activities and sessions. It holds personal data; keep it where only \
         those who need it can read it.",
    ),
    (
        "NAME (earlier copies)/",
        "Beside NAME.daystrand: the club as it was before each of the last five savings.",
    ),
    (
        "*.daystrand-set",
        "Pictures and activities that one club gives to another, without any person. It is brought in \
         at People, Pictures.",
    ),
    (
        "$XDG_CONFIG_HOME/daystrand/preferences.json",
        "Colours, zoom and the files opened last; in ~/.config if the variable is not set.",
    ),
];

const CLUB: Option<Blank> = Some(Blank {
    shown: "FILE",
    takes: Takes::Club,
});

/// All verbs, in the order in which help lists them.
pub const VERBS: [Verb; 8] = [
    Verb {
        topic: Topic::Open,
        word: "open",
        operand: Some(Blank {
            shown: "[FILE]",
            takes: Takes::Club,
        }),
        brief: "open the window, on a club file if one is named; the usual verb",
        about: "Opens the window, on a club file if one is named. This is what happens without a verb \
                too.",
        usage: &["[open] [FILE]"],
        flags: &[],
        further: &[],
        examples: &[],
    },
    Verb {
        topic: Topic::Demo,
        word: "demo",
        operand: None,
        brief: "write a demo club with all its sheets, then open it",
        about: "Writes an invented club with two sessions and every sheet of both, and opens it in the \
                window where there is a display.",
        usage: &["demo [--to DIR] [--no-window]"],
        flags: &[
            Flag::new(
                "to",
                "the folder to write into",
                "; daystrand-demo if not said",
            )
            .value("DIR", Takes::Folder),
            Flag::new("no-window", "write only", ""),
        ],
        further: &[],
        examples: &["daystrand demo --to demo --no-window"],
    },
    Verb {
        topic: Topic::Print,
        word: "print",
        operand: CLUB,
        brief: "write sheets into a folder, without a window",
        about: "Writes the sheets of a session into a folder. File names hold marks and dates, never \
                names.",
        usage: &["print FILE --to DIR [OPTIONS]"],
        flags: PRINT,
        further: &[
            "A story may help a child know what to expect, and promises nothing more: a large published \
             trial found no clear effect on its main measure. The README says what research found.",
        ],
        examples: &["daystrand print club.daystrand --for leaf --sheet tiles,story --to out"],
    },
    Verb {
        topic: Topic::Check,
        word: "check",
        operand: CLUB,
        brief: "say what should be looked at before printing",
        about: "Says what should be looked at before anything is printed, the most serious first. Ends \
                with code 1 if something needs a look. Nothing found does not mean that anything is \
                safe.",
        usage: &["check FILE [--session DATE]"],
        flags: &[Flag::new(
            "session",
            "one session",
            ", such as 2027-06-12, or 2027-06-12T09:30; all if not said",
        )
        .value("DATE", Takes::Text)],
        further: &[],
        examples: &["daystrand check club.daystrand"],
    },
    Verb {
        topic: Topic::Symbols,
        word: "symbols",
        operand: Some(Blank {
            shown: "[WORD...]",
            takes: Takes::Text,
        }),
        brief: "list the pictures that fit some words",
        about: "Lists the pictures that fit all of the words, best first, or all pictures and marks; a \
                letter or two may be wrong. With --to, writes contact sheets of all pictures by group: \
                a PDF for each ink and a PNG picture for each page.",
        usage: &[
            "symbols [WORD...] [--words TAG]",
            "symbols --to DIR [OPTIONS]",
        ],
        flags: SYMBOLS,
        further: &[],
        examples: &["daystrand symbols water"],
    },
    Verb {
        topic: Topic::Manual,
        word: "manual",
        operand: None,
        brief: "write the manual page, as a page for man",
        about: "Writes the manual page of the program, in the form that man reads.",
        usage: &["manual"],
        flags: &[],
        further: &[],
        examples: &["daystrand manual > daystrand.1"],
    },
    Verb {
        topic: Topic::Completion,
        word: "completion",
        operand: Some(Blank {
            shown: "SHELL",
            takes: Takes::One(shells_said),
        }),
        brief: "write what a shell needs to complete a command line",
        about: "Writes what a shell needs to complete verbs, options and their words when Tab is \
                pressed. An installed package has it already.",
        usage: &["completion SHELL"],
        flags: &[],
        further: &["SHELL is bash, zsh or fish."],
        examples: &["source <(daystrand completion bash)"],
    },
    Verb {
        topic: Topic::Help,
        word: "help",
        operand: Some(Blank {
            shown: "[VERB]",
            takes: Takes::One(verbs_said),
        }),
        brief: "say more about a verb",
        about: "Says how the program or one of its verbs is used.",
        usage: &["help [VERB]"],
        flags: &[],
        further: &[],
        examples: &["daystrand help print"],
    },
];

const PRINT: &[Flag] = &[
    Flag::new(
        "to",
        "the folder to write into",
        "; it is made if it is not there",
    )
    .value("DIR", Takes::Folder),
    Flag::new(
        "session",
        "which session",
        ", such as 2027-06-12, or 2027-06-12T09:30 if there are two that day; may be left out if \
         the club has one session only",
    )
    .value("DATE", Takes::Text),
    Flag::new(
        "for",
        "whose sheets",
        ": a name, a mark, several with commas between, or all; all if not said",
    )
    .value("WHO", Takes::Text),
    Flag::new(
        "sheet",
        "which sheets",
        "; if not said, all, which leaves out booklet, story-page, own-pictures and test-page",
    )
    .value("KIND", Takes::Several(sheets_said)),
    Flag::new("paper", "the paper", "; the club's if not said")
        .value("PAPER", Takes::One(|| plain(&PAPERS))),
    Flag::new("turn", "which way up", "; as-suits if not said")
        .value("WAY", Takes::One(|| plain(&TURNS))),
    Flag::new("ink", "the ink", "; colour if not said").value("INK", Takes::One(|| plain(&INKS))),
    Flag::new("format", "the form of the files", "; pdf if not said")
        .value("FORMAT", Takes::Several(formats_said)),
    Flag::new("missing", "leave out tiles and cards that are in stock", ""),
    Flag::new(
        "one-file",
        "one PDF for all sheets that the same people may see",
        "",
    ),
];

const SYMBOLS: &[Flag] = &[
    Flag::new("words", "the language of the words", "; en-GB if not said")
        .value("TAG", Takes::One(languages_said)),
    Flag::new(
        "to",
        "the folder for contact sheets",
        "; it is made if it is not there",
    )
    .value("DIR", Takes::Folder),
    Flag::new("ink", "the inks", "; the first three if not said")
        .value("INK", Takes::Several(|| plain(&SYMBOL_INKS))),
    Flag::new("people", "the age of people", "; child if not said")
        .value("AGE", Takes::One(|| plain(&AGES))),
    Flag::new("skin", "the skin of the main person", "; warm if not said")
        .value("SKIN", Takes::One(|| plain(&SKINS))),
    Flag::new(
        "mirrored",
        "left and right exchanged, where a drawing allows it",
        "",
    ),
    Flag::new("paper", "the paper", "; A4 if not said")
        .value("PAPER", Takes::One(|| plain(&PAPERS))),
];

fn languages_said() -> Vec<Word> {
    let word = |word| Word { word, said: "" };
    languages().into_iter().map(word).collect()
}

fn shells_said() -> Vec<Word> {
    plain(&super::completion::SHELLS)
}

fn verbs_said() -> Vec<Word> {
    let said = |v: &Verb| Word {
        word: v.word,
        said: v.brief,
    };
    VERBS.iter().map(said).collect()
}
