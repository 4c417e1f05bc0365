//! How the program and each verb are used.

/// What help is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Topic {
    /// The program.
    Program,
    /// `open`.
    Open,
    /// `demo`.
    Demo,
    /// `print`.
    Print,
    /// `check`.
    Check,
    /// `symbols`.
    Symbols,
}

impl Topic {
    /// The verbs by their words.
    pub const VERBS: [(&str, Self); 5] = [
        ("open", Self::Open),
        ("demo", Self::Demo),
        ("print", Self::Print),
        ("check", Self::Check),
        ("symbols", Self::Symbols),
    ];

    /// As typed.
    pub fn word(self) -> &'static str {
        let found = Self::VERBS.iter().find(|(_, topic)| *topic == self);
        found.map_or("daystrand", |(word, _)| word)
    }

    /// How its help is asked for.
    pub fn help(self) -> String {
        match self {
            Self::Program => "daystrand --help".to_owned(),
            verb => format!("daystrand {} --help", verb.word()),
        }
    }
}

/// The text.
pub const fn text(topic: Topic) -> &'static str {
    match topic {
        Topic::Program => PROGRAM,
        Topic::Open => OPEN,
        Topic::Demo => DEMO,
        Topic::Print => PRINT,
        Topic::Check => CHECK,
        Topic::Symbols => SYMBOLS,
    }
}

const PROGRAM: &str = "\
From one group timetable to a picture schedule for each participant.

Usage: daystrand [VERB] [OPTIONS]

Verbs:
  open [FILE]        open the window, on a club file if one is named; the usual verb
  demo               write a demo club with all its sheets, then open it
  print FILE         write sheets into a folder, without a window
  check FILE         say what should be looked at before printing
  symbols [WORD...]  list the pictures that fit some words
  help VERB          more about a verb

Options:
  -h, --help         this text
  -V, --version      the version

Exit codes: 0 done, 1 something needs a look (check), 2 wrong use or a file that cannot be read.
";

const OPEN: &str = "\
Opens the window, on a club file if one is named. This is what happens without a verb too.

Usage: daystrand [open] [FILE]
";

const DEMO: &str = "\
Writes an invented club with two sessions and every sheet of both, and opens it in the window
where there is a display.

Usage: daystrand demo [--to DIR] [--no-window]

Options:
  --to DIR      the folder to write into; daystrand-demo if not said
  --no-window   write only
";

const PRINT: &str = "\
Writes the sheets of a session into a folder. File names hold marks and dates, never names.

Usage: daystrand print FILE --to DIR [OPTIONS]

Options:
  --to DIR          the folder to write into; it is made if it is not there
  --session DATE    which session, such as 2027-06-12, or 2027-06-12T09:30 if there are two that
                    day; may be left out if the club has one session only
  --for WHO         a name, a mark, several with commas between, or all; all if not said
  --sheet KIND      large-print, tiles, base-board, cards, story, booklet, story-page, group-wall,
                    helper-card, words, session, changes, roll, look-list, today-slip,
                    print-run, cut-list, pouch-guide, pack-list, labels, test-page, several with
                    commas between, or all (all but booklet, story-page and test-page, which is
                    also so if not said)
  --paper PAPER     A4, A3, A5 or Letter; the club's paper if not said
  --turn WAY        as-suits, portrait or landscape; as-suits if not said
  --ink INK         colour, grey or outline; colour if not said
  --format FORMAT   pdf, png, text (the words of a story), html (a story as one page for a
                    telephone), several with commas between; pdf if not said
  --missing         leave out tiles and cards that are in stock
  --one-file        one PDF for all sheets that the same people may see

A story may help a child know what to expect, and promises nothing more: a large published trial
found no clear effect on its main measure. The README says what research found.

Example:
  daystrand print club.daystrand --session 2027-06-12 --for leaf --sheet tiles,story --to out
";

const CHECK: &str = "\
Says what should be looked at before anything is printed, the most serious first. Ends with code 1
if something needs a look. Nothing found does not mean that anything is safe.

Usage: daystrand check FILE [--session DATE]

Options:
  --session DATE    one session, such as 2027-06-12, or 2027-06-12T09:30; all if not said
";

const SYMBOLS: &str = "\
Lists the pictures that fit all of the words, best first, or all pictures and marks; a letter or
two may be wrong. With --to, writes contact sheets of all pictures by group: a PDF for each ink and
a PNG picture for each page.

Usage: daystrand symbols [WORD...] [--words TAG]
       daystrand symbols --to DIR [OPTIONS]

Options:
  --words TAG     the language of the words: en-GB, en-AU or en-US; en-GB if not said
  --to DIR        the folder for contact sheets; it is made if it is not there
  --ink INK       colour, grey, outline, on-dark, several with commas between; the first three if
                  not said
  --people AGE    child, teen or adult; child if not said
  --skin SKIN     light, warm, tan or deep, of the main person; warm if not said
  --mirrored      left and right exchanged, where a drawing allows it
  --paper PAPER   A4, A3, A5 or Letter; A4 if not said
";
