//! What a step shows: something else, other words, a choice; and whether it is done today.

use super::Desk;
use crate::model::board;
use crate::model::edit::Refused;
use crate::model::hand::Content;
use crate::model::ids::{PartId, StepRef};
use crate::model::limits;

impl Desk<'_> {
    /// New content comes with its own words, and is there to be done.
    pub(super) fn replace(&mut self, step: StepRef, content: &Content) -> Result<(), Refused> {
        self.position(step)?;
        let content = self.checked(content)?;
        match step {
            StepRef::Own(id) => {
                self.hand.own.insert(id, content);
            }
            StepRef::Slot(id) => {
                let own = self.session.slot(id).map(|s| s.activity);
                self.hand.replaced.remove(&step);
                if content.activity.is_none() || content.activity != own {
                    self.hand.replaced.insert(step, content);
                } else if self.row_differs_from(step, &content) {
                    self.hand.with_group.insert(id);
                }
                self.hand.not_today.remove(&step);
                self.asked_about(id, false);
            }
            StepRef::Instead(_) | StepRef::Standing(..) => {
                self.hand.replaced.remove(&step);
                if self.row_differs_from(step, &content) {
                    self.hand.replaced.insert(step, content);
                }
                self.hand.not_today.remove(&step);
            }
        }
        self.hand.labels.remove(&step);
        self.hand.choices.remove(&step);
        Ok(())
    }

    /// Whether a row, with the changes as they are now, shows something else.
    fn row_differs_from(&self, step: StepRef, content: &Content) -> bool {
        let rows = board::rows(self.club, self.session, self.who, &self.hand);
        let row = rows.rows.iter().find(|r| r.step.at == step);
        row.is_none_or(|r| {
            r.step.activity != content.activity
                || content.activity.is_none()
                    && (r.step.label != content.label || r.step.symbol != content.symbol)
        })
    }

    /// The step's own words, or none at all, take the change back.
    pub(super) fn relabel(&mut self, step: StepRef, words: &str) -> Result<(), Refused> {
        self.position(step)?;
        let words = limits::tidy_line(words);
        limits::text("The label", &words)?;
        if let StepRef::Own(id) = step
            && let Some(content) = self.hand.own.get_mut(&id)
            && content.activity.is_none()
        {
            // Nothing but these words says what the step is.
            limits::filled("The label", &words)?;
            content.label = words;
            self.hand.labels.remove(&step);
            return Ok(());
        }
        let own = board::own_words(self.club, self.session, self.who, &self.hand, step);
        if words.is_empty() || own.as_deref() == Some(&*words) {
            self.hand.labels.remove(&step);
        } else {
            self.hand.labels.insert(step, words);
        }
        Ok(())
    }

    pub(super) fn take_off(&mut self, step: StepRef) -> Result<(), Refused> {
        self.position(step)?;
        match step {
            StepRef::Slot(_) | StepRef::Standing(..) => self.not_today(step, None),
            StepRef::Instead(id) => {
                self.hand.forget(step);
                self.hand.not_today.insert(StepRef::Slot(id), None);
                Ok(())
            }
            StepRef::Own(_) => {
                let mut wanted = self.order.clone();
                wanted.retain(|s| *s != step);
                self.hand.forget(step);
                self.arrange(&wanted, &[]);
                Ok(())
            }
        }
    }

    pub(super) fn not_today(
        &mut self,
        step: StepRef,
        instead: Option<&Content>,
    ) -> Result<(), Refused> {
        self.position(step)?;
        let instead = instead.map(|c| self.checked(c)).transpose()?;
        match step {
            StepRef::Slot(id) => {
                self.hand.replaced.remove(&StepRef::Instead(id));
                self.hand.not_today.insert(step, instead);
                Ok(())
            }
            StepRef::Standing(..) if instead.is_none() => {
                self.hand.not_today.insert(step, None);
                Ok(())
            }
            _ => Err(Refused::new(
                "Only a step of the timetable has something that comes instead.",
                "Put something else in its place.",
            )),
        }
    }

    pub(super) fn do_today(&mut self, step: StepRef) -> Result<(), Refused> {
        self.position(step)?;
        self.hand.not_today.remove(&step);
        Ok(())
    }

    /// Steps that have no dry replacement are not today all the same; the checks tell of them.
    pub(super) fn dry(&mut self, part: Option<PartId>) {
        let club = &*self.club;
        let wet = self.rows.rows.iter().filter_map(|row| {
            let activity = club.activity(row.step.activity?)?;
            let slot = matches!(row.step.at, StepRef::Slot(_));
            let here = part.is_none_or(|p| p == row.step.part);
            let off = matches!(row.step.state, board::StepState::NotToday);
            (slot && here && activity.in_water && !off).then_some((row.step.at, activity))
        });
        let changes: Vec<(StepRef, Option<Content>)> = wet
            .map(|(at, activity)| {
                let dry = activity.dry_replacement.and_then(|id| club.activity(id));
                (at, dry.map(|a| Content::of(a)))
            })
            .collect();
        self.hand.not_today.extend(changes);
    }

    pub(super) fn offer(&mut self, step: StepRef, options: &[Content]) -> Result<(), Refused> {
        self.position(step)?;
        limits::options(options)?;
        let options: Vec<Content> = options
            .iter()
            .map(|o| self.checked(o))
            .collect::<Result<_, _>>()?;
        if options.is_empty() {
            self.hand.choices.remove(&step);
        } else {
            self.hand.choices.insert(step, options);
        }
        Ok(())
    }
}
