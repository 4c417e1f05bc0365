//! What was picked and answered when a participant went through the day beforehand.

use egui::Ui;

use crate::model::board::Board;
use crate::model::ids::StepRef;
use crate::model::record::Record;
use crate::ui::widgets::words;

/// Says it in a line each; nothing where the day was not gone through, or nothing was kept.
pub fn show(ui: &mut Ui, board: Option<&Board>, record: &Record) {
    for line in lines(board, record) {
        words::soft(ui, &line);
    }
}

/// The lines, in the order of the board; what is no longer on it comes last.
pub fn lines(board: Option<&Board>, record: &Record) -> Vec<String> {
    let place = |at: &StepRef| board.and_then(|b| b.position(*at)).unwrap_or(usize::MAX);
    let label = |at: &StepRef| {
        let step = board.and_then(|b| b.steps.get(b.position(*at)?));
        step.map_or("a step that is gone", |s| s.label.as_str())
    };
    let mut picked: Vec<_> = record.picked.iter().collect();
    picked.sort_by_key(|(at, _)| place(at));
    let mut answered: Vec<_> = record.answered.iter().collect();
    answered.sort_by_key(|(at, _)| place(at));
    let picked = picked.into_iter().map(|(at, words)| match label(at) {
        label if label == words => words.clone(),
        label => format!("{words} (at {label})"),
    });
    let answered = answered
        .into_iter()
        .map(|(at, how)| format!("{}: {}", label(at), how.label()));
    let line = |head: &str, all: Vec<String>| {
        (!all.is_empty()).then(|| format!("{head}: {}", all.join("; ")))
    };
    let chosen = line("Chosen beforehand", picked.collect());
    let asked = line("Asked about beforehand", answered.collect());
    chosen.into_iter().chain(asked).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::board::Step;
    use crate::model::ids::{PartId, ParticipantId, SlotId, SymbolId};
    use crate::model::record::Answered;

    #[test]
    fn it_is_told_in_the_order_of_the_board() {
        let at = |n| StepRef::Slot(SlotId(n));
        let step =
            |n, label: &str| Step::plain(at(n), SymbolId::new("dig"), label.into(), PartId(1));
        let board = Board {
            participant: ParticipantId(1),
            steps: vec![step(9, "Canoe"), step(2, "Dig")],
            left_out: Vec::new(),
            waiting: Vec::new(),
        };
        let mut record = Record::default();
        assert_eq!(lines(Some(&board), &record), [] as [String; 0]);
        record.picked.insert(at(2), "Kite".into());
        record.answered.insert(at(2), Answered::NotSure);
        record.answered.insert(at(9), Answered::ThumbUp);
        record.answered.insert(at(1), Answered::Showed);
        assert_eq!(
            lines(Some(&board), &record),
            [
                "Chosen beforehand: Kite (at Dig)",
                "Asked about beforehand: Canoe: thumb up; Dig: not sure; a step that is gone: showed it",
            ]
        );
    }
}
