//! `print`: sheets into a folder.

use std::io::Write;

use super::args::PrintWish;
use super::{DONE, Outcome, Surroundings, Trouble, pick, say};
use crate::layout::{Request, SheetKind};
use crate::workbench::printing::{self, End, Go, Order, Written};

/// Writes what is wanted and says what was written.
pub fn run(
    wish: &PrintWish,
    around: &Surroundings,
    out: &mut dyn Write,
) -> Result<Outcome, Trouble> {
    let (club, mended) = pick::club(wish.file.clone(), around)?;
    if let Some(mended) = mended {
        say(out, &mended.sentence);
    }
    let session = pick::session(&club, wish.session)?;
    let order = Order {
        request: Request {
            session: session.id,
            participants: pick::people(&club, session, &wish.people)?,
            kinds: wish.kinds.clone(),
            paper: wish.paper.unwrap_or(club.rules.paper),
            turn: wish.turn,
            ink: wish.ink,
            only_missing: wish.only_missing,
        },
        club: club.clone(),
        formats: wish.formats.clone(),
        one_file: wish.one_file,
        folder: wish.to.clone(),
    };
    let written = carry_out(&order)?;
    for file in &written {
        say(out, &file.path.display().to_string());
    }
    Ok(Outcome::code(DONE))
}

/// Writes an order to its end.
pub fn carry_out(order: &Order) -> Result<Vec<Written>, Trouble> {
    let outcome = printing::write(order, &mut |_| Go::On);
    match outcome.end {
        End::Done if !outcome.written.is_empty() => Ok(outcome.written),
        _ => {
            let (sentence, hint) = outcome.words();
            Err(Trouble::new(sentence, hint))
        }
    }
}

/// How many sheets and pages there are of a kind.
pub fn count(written: &[Written], kind: SheetKind) -> (usize, usize) {
    let of_kind = || written.iter().filter(|w| w.kind == kind);
    (of_kind().count(), of_kind().map(|w| w.pages).sum())
}
