//! What is said about a picture of the club's own: its name, whose it is, what it stands for, and who
//! may see it. One form, for pictures that come in and for those that are there.

use egui::{Id, Ui, vec2};

use crate::model::club::Club;
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::model::picture::Picture;
use crate::model::privacy::{Class, Guarded};
use crate::model::profile::PhotoConsent;
use crate::symbols::lexicon::lexicon;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::picker::{For, Picked, Picker};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::plate;
use crate::ui::widgets::choose::{segments_here, select, tick};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;

/// What the form remembers.
#[derive(Default)]
pub struct Details {
    /// A symbol being picked that the picture stands for.
    pub picker: Option<Picker>,
    /// The name gets the keyboard in this frame.
    pub focus: bool,
    /// What was typed for the date and is none.
    no_date: Option<String>,
}

impl Details {
    /// The picture with a name, should it have lost it.
    pub fn settled(&self, mut picture: Picture) -> Picture {
        if picture.name.trim().is_empty() {
            "Picture".clone_into(&mut picture.name);
        }
        picture
    }
}

/// Shows the form; what is said goes into `next`.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, details: &mut Details, next: &mut Picture) {
    let id = next.id;
    name(ui, desk, details, next);
    whose(ui, desk.view.club, next);
    stands_for(ui, desk, details, next);
    let says = "A person can be recognised on it";
    if tick(
        ui,
        Id::unique(("picture-person", id)),
        next.person,
        says,
        "",
    )
    .clicked()
    {
        next.person = !next.person;
    }
    consent(ui, desk.view.club, next);
    said_on(ui, desk, details, next);
    wish(ui, desk, next);
    from(ui, desk, next);
}

fn name(ui: &mut Ui, desk: &mut Desk<'_>, details: &mut Details, next: &mut Picture) {
    let width = ui.available_width();
    let field_id = Id::unique(("picture-name", next.id));
    block(ui, "Name", width, theme::CONTROL, |ui| {
        let f = Field::new(field_id, "Name of the picture", &next.name);
        if let Some(typed) = f.show(ui, desk.drafts, width) {
            next.name = typed;
        }
    });
    if std::mem::take(&mut details.focus) {
        ui.memory_mut(|m| m.request_focus(field_id));
    }
    block(ui, "Other words for it", width, theme::CONTROL, |ui| {
        let shown = next.words.join(", ");
        let id = Id::unique(("picture-words", next.id));
        let f = Field::new(id, "Other words to find it by", &shown).hint("towel, bath");
        if let Some(typed) = f.show(ui, desk.drafts, width) {
            next.words = typed.split(',').map(|w| w.trim().to_owned()).collect();
            next.words.retain(|w| !w.is_empty());
        }
    });
}

fn whose(ui: &mut Ui, club: &Club, next: &mut Picture) {
    let width = ui.available_width();
    block(ui, "Whose it is", width, theme::CONTROL, |ui| {
        let id = Id::unique(("picture-whose", next.id));
        if let Some(whose) = choose_whose(ui, id, club, next.whose) {
            set_whose(next, whose);
        }
    });
}

/// A list of the club and everyone in it; what was chosen, if anything was.
pub fn choose_whose(
    ui: &mut Ui,
    id: Id,
    club: &Club,
    whose: Option<ParticipantId>,
) -> Option<Option<ParticipantId>> {
    let people = &club.participants;
    let mut options = vec!["The club’s, for everyone".to_owned()];
    options.extend(people.iter().map(|p| told_apart(club, p)));
    let at = whose.and_then(|id| people.iter().position(|p| p.id == id));
    let chosen = Some(at.map_or(0, |i| i + 1));
    let width = ui.available_width();
    let i = select(ui, id, "Whose it is", &options, chosen, width)?;
    Some(i.checked_sub(1).map(|i| people[i].id))
}

/// A name, with the mark beside it where two have the same.
fn told_apart(club: &Club, person: &Participant) -> String {
    let same = club.participants.iter().filter(|p| p.name == person.name);
    match same.count() {
        1 => person.name.clone(),
        _ => {
            let mark = lexicon(&club.rules.words).mark(&person.mark);
            format!("{} ({})", person.name, mark.to_lowercase())
        }
    }
}

/// What was for one alone is not for the group only because it changes hands, nor the other way.
fn set_whose(next: &mut Picture, whose: Option<ParticipantId>) {
    next.whose = whose;
    next.consent = match (whose, next.consent) {
        (None, PhotoConsent::OwnTiles) => PhotoConsent::Group,
        (Some(_), PhotoConsent::Group) => PhotoConsent::OwnTiles,
        (_, consent) => consent,
    };
}

fn stands_for(ui: &mut Ui, desk: &mut Desk<'_>, details: &mut Details, next: &mut Picture) {
    let t = theme::of(ui.ctx());
    let names = lexicon(&desk.view.club.rules.words);
    let width = ui.available_width();
    block(ui, "Seen in place of", width, 56.0, |ui| {
        ui.horizontal(|ui| {
            let label = match &next.stands_for {
                Some(symbol) => {
                    let (_, rect) = ui.allocate_space(vec2(52.0, 52.0));
                    plate(ui.painter(), &t, rect);
                    let p = ui.painter();
                    desk.pictures
                        .symbol(p, rect.shrink(4.0), symbol, Eyes::default());
                    names.label(symbol).to_owned()
                }
                None => "Choose a symbol…".to_owned(),
            };
            let b = Button::new(("picture-stands-for", next.id), &label)
                .tip("Its owner sees the picture wherever this symbol is");
            if b.show(ui).clicked() {
                details.picker = Some(Picker::new(For::OwnPicture(next.id)));
            }
            if next.stands_for.is_some() {
                let b = Button::new(("picture-stands-alone", next.id), "In place of nothing");
                let b = b.icon_only(Icon::Cross).weight(Weight::Quiet);
                if b.show(ui).clicked() {
                    next.stands_for = None;
                }
            }
        });
    });
}

/// Who may see it, and what follows from that in a line.
fn consent(ui: &mut Ui, club: &Club, next: &mut Picture) {
    let names = ["Nowhere", "Own tiles", "The group", "Outside too"];
    words::soft(ui, "Where it may be seen");
    let at = PhotoConsent::ALL.iter().position(|c| *c == next.consent);
    let id = format!("picture-consent-{}", next.id);
    if let Some(i) = segments_here(ui, &id, &names, at.unwrap_or(0)) {
        next.consent = PhotoConsent::ALL[i];
    }
    words::soft(ui, &reaches(club, next));
}

/// Whose it is and where it is seen, in a line: "Of Noor, on own tiles, in place of Dry".
pub fn in_short(club: &Club, picture: &Picture) -> String {
    let owner = picture.whose.and_then(|id| club.participant(id));
    let whose = owner.map_or_else(|| "The club’s".to_owned(), |p| format!("Of {}", p.name));
    let seen = match picture.consent {
        PhotoConsent::None => "shown nowhere",
        PhotoConsent::OwnTiles => "on own tiles",
        PhotoConsent::Group => "in the group",
        PhotoConsent::ClubMedia => "outside too",
    };
    let names = lexicon(&club.rules.words);
    let place = picture.stands_for.as_ref();
    let place = place.map_or_else(String::new, |s| format!(", in place of {}", names.label(s)));
    format!("{whose}, {seen}{place}")
}

/// In words what the consent means for this picture.
fn reaches(club: &Club, picture: &Picture) -> String {
    let owner = picture.whose.and_then(|id| club.participant(id));
    let family = owner.filter(|_| picture.person);
    let said = family.map(|p| (p, p.profile.papers().for_owner().photos));
    if let Some((p, said)) = said.filter(|(_, s)| *s < picture.consent) {
        return format!(
            "The family of {} said: {}. That counts.",
            p.name,
            said.label().to_lowercase()
        );
    }
    match (picture.consent, owner) {
        (PhotoConsent::None, _) => "It is kept and shown nowhere.".into(),
        (PhotoConsent::OwnTiles, Some(p)) => format!(
            "On the board, tiles, story and cards of {}, nowhere else.",
            p.name
        ),
        (PhotoConsent::OwnTiles, None) => {
            "It is nobody’s own, so it is shown nowhere. Say whose it is, or choose the group."
                .into()
        }
        (PhotoConsent::Group, _) => "On everything that stays in the club.".into(),
        (PhotoConsent::ClubMedia, _) => "Also in what is given to others.".into(),
    }
}

fn said_on(ui: &mut Ui, desk: &mut Desk<'_>, details: &mut Details, next: &mut Picture) {
    let today = desk.view.today;
    row(ui, |ui| {
        block(ui, "Said on", 190.0, theme::CONTROL, |ui| {
            let shown = next.said_on.map_or_else(String::new, dates::typed);
            let hint = dates::typed(today);
            let id = Id::unique(("picture-said-on", next.id));
            let f = Field::new(id, "Day on which that was said", &shown).hint(&hint);
            if let Some(typed) = f.show(ui, desk.drafts, 190.0) {
                let read = dates::read_date(&typed);
                let empty = typed.trim().is_empty();
                details.no_date = (read.is_none() && !empty).then_some(typed);
                if read.is_some() || empty {
                    next.said_on = read;
                }
            }
        });
        if next.said_on != Some(today) {
            block(ui, "", 90.0, theme::CONTROL, |ui| {
                let b = Button::new(("picture-said-today", next.id), "Today");
                if b.show(ui).clicked() {
                    next.said_on = Some(today);
                    details.no_date = None;
                }
            });
        }
    });
    if let Some(typed) = &details.no_date {
        words::soft(ui, &format!("“{typed}” is no date; it was left out."));
    }
}

fn wish(ui: &mut Ui, desk: &mut Desk<'_>, next: &mut Picture) {
    let width = ui.available_width();
    block(
        ui,
        "What they say about it themselves",
        width,
        theme::CONTROL,
        |ui| {
            let id = Id::unique(("picture-wish", next.id));
            let shown = next.wish.for_owner().clone();
            let f = Field::new(id, "What they say about it themselves", &shown);
            if let Some(typed) = f.show(ui, desk.drafts, width) {
                next.wish = Guarded::new(Class::Coordinator, typed);
            }
        },
    );
}

fn from(ui: &mut Ui, desk: &mut Desk<'_>, next: &mut Picture) {
    let width = ui.available_width();
    let half = ((width - 16.0) / 2.0).max(180.0).min(width);
    row(ui, |ui| {
        for (key, name, value) in [
            ("source", "Who made it", &mut next.source),
            ("licence", "May be used under", &mut next.licence),
        ] {
            block(ui, name, half, theme::CONTROL, |ui| {
                let id = Id::unique(("picture", key, next.id));
                if let Some(typed) = Field::new(id, name, value).show(ui, desk.drafts, half) {
                    *value = typed;
                }
            });
        }
    });
}

/// Takes over what was picked for a picture that is being looked at.
pub fn picked(ui: &Ui, desk: &mut Desk<'_>, details: &mut Details, next: &mut Picture) {
    let Some(picker) = &mut details.picker else {
        return;
    };
    match picker.show(ui, desk.pictures, desk.view.club) {
        Picked::Not => {}
        Picked::Away => details.picker = None,
        Picked::This(symbol) => {
            next.stands_for = Some(symbol);
            details.picker = None;
        }
    }
}
