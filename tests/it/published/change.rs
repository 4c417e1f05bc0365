//! A day that changes: what comes off every board that holds it and what goes on, and the sheet for
//! the coordinator.
//!
//! A change tile, several copies of it, telling before: Indiana University, Change is good (priming
//! and visual strategies); the state autism body of Victoria, classroom supports; both read in part.
//! Warnings wanted, how many and how early: Indiana University, Transition time (from memory). What
//! follows for tiles, equipment and stories is common practice.

use std::sync::Arc;

use daystrand::check;
use daystrand::layout::{Sheet, SheetKind};
use daystrand::model::board::derive;
use daystrand::model::club::{Activity, Club};
use daystrand::model::conditions::{Condition, Known};
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{SlotId, StepRef};
use daystrand::model::manner::{Form, Mixed};
use daystrand::model::people::Participant;
use daystrand::model::profile::Field;
use daystrand::model::session::Off;
use daystrand::page::Page;
use daystrand::page::dump::{Read, read};
use daystrand::plan::changes::{Changes, changes};

use super::{sheets, words};
use crate::fixture;

fn activity<'a>(club: &'a mut Club, label: &str) -> &'a mut Activity {
    let mut all = club.activities.iter_mut();
    Arc::make_mut(all.find(|a| a.label == label).unwrap())
}

fn who<'a>(club: &'a mut Club, mark: &str) -> &'a mut Participant {
    let mut all = club.participants.iter_mut();
    Arc::make_mut(all.find(|p| p.mark.as_str() == mark).unwrap())
}

/// The demo's first session on a windy day: the boat is a wave to jump now, which is not done in
/// wind; a dig, which is not in the timetable, is ready instead. Two of the eight do something else
/// there anyhow: one by hand, one always.
fn windy() -> (Club, SlotId) {
    let mut club = fixture::club();
    let dig = activity(&mut club, "Dig").id;
    let song = Content::of(activity(&mut club, "Song"));
    let wave = activity(&mut club, "Boat");
    wave.label = "Jump the wave".into();
    wave.equipment = vec!["6 floats".into(), "1 whistle".into()];
    wave.dry_replacement = Some(dig);
    wave.not_when = [Known::Windy].into();
    let wave = wave.id;
    for p in &mut club.participants {
        let p = Arc::make_mut(p);
        p.manner = Default::default();
        *p.standing = Default::default();
        p.profile = Default::default();
    }
    who(&mut club, "moon").standing.left_out.insert(wave);
    let session = fixture::session_mut(&mut club);
    session.conditions = vec![Condition::Known(Known::Windy)];
    session.hand.clear();
    session.timetable.retain(|s| s.activity != dig);
    let row = session.timetable.iter().find(|s| s.activity == wave);
    let (id, row) = (session.id, row.unwrap().id);
    let leaf = who(&mut club, "leaf").id;
    let swap = BoardEdit::Replace(StepRef::Slot(row), song);
    (apply(&club, &Edit::Board(id, leaf, swap)).unwrap().0, row)
}

/// The same with the dig instead of the wave.
fn changed(change: impl Fn(&mut Club)) -> Club {
    let (mut club, row) = windy();
    change(&mut club);
    let instead = Some(activity(&mut club, "Dig").id);
    let off = TimetableEdit::Off(row, Some(Off { instead }));
    let id = club.sessions[0].id;
    apply(&club, &Edit::Timetable(id, off)).unwrap().0
}

fn found(club: &Club) -> Changes {
    let session = &club.sessions[0];
    let boards = club.attending(session);
    let boards: Vec<_> = boards
        .map(|p| Arc::new(derive(club, session, p.id)))
        .collect();
    changes(club, session, &boards)
}

/// The paragraphs of the change sheet under a heading, up to the next heading.
fn under(club: &Club, heading: &str) -> Vec<String> {
    let sheets = sheets(club, SheetKind::ChangeSheet);
    let mut all = sheets.iter().flat_map(|s| &s.pages).flat_map(read);
    let begins = |r: &Read| matches!(r, Read::Heading(2, words) if words == heading);
    assert!(all.any(|r| begins(&r)), "no heading {heading}");
    let rest = all.take_while(|r| !matches!(r, Read::Heading(..)));
    rest.filter_map(|r| match r {
        Read::Paragraph(words) => Some(words.replace('\u{a0}', " ")),
        _ => None,
    })
    .collect()
}

#[test]
fn before_the_change_the_check_names_what_is_ready() {
    let (club, _) = windy();
    let all = check::run(&club, Some(&club.sessions[0]));
    let told = all
        .iter()
        .find(|f| f.code == "conditions.not_when")
        .unwrap();
    assert!(told.sentence.contains("“Jump the wave” is planned"));
    assert!(
        told.hint.contains("“Dig” is ready instead"),
        "{}",
        told.hint
    );
    assert!(
        sheets(&club, SheetKind::ChangeSheet)[..]
            .iter()
            .all(|s| s.pages.is_empty())
    );
}

/// Six boards of eight hold it: one dry tile and one change tile for each.
#[test]
fn only_boards_that_hold_it_need_tiles_one_of_each() {
    let club = changed(|_| {});
    let now = found(&club);
    let marks = |id| club.participant(id).unwrap().mark.to_string();
    let affected: Vec<_> = now.boards.iter().map(|b| marks(b.participant)).collect();
    let wanted = ["kite", "boat", "fish", "shell", "star", "feather"];
    assert_eq!(affected, wanted);
    assert!(now.boards.iter().all(|b| b.changes.len() == 1));
    assert_eq!((now.dry_tiles(), now.change_tiles()), (6, 6));
    let sheet = words(&club, SheetKind::ChangeSheet);
    let header = "6 change tiles and 6 tiles of what comes instead to hand out";
    assert!(sheet.contains(header), "{sheet}");
    let not_today = under(&club, "Not today");
    assert_eq!(not_today, ["Jump the wave: Dig comes instead (6 boards)"]);
    for (mark, there) in wanted
        .iter()
        .map(|m| (*m, true))
        .chain([("moon", false), ("leaf", false)])
    {
        assert_eq!(sheet.contains(&format!("[Mark: {mark}]")), there, "{mark}");
    }
}

/// Tiles and story pages stand beside each name; pages are those of the printed story, which is
/// longer for larger letters.
#[test]
fn each_board_has_its_tiles_and_its_pages_of_the_story() {
    let club = changed(|club| {
        who(club, "shell").text_pt = 60;
        let sentence = "{I} {dig} in the sand with a spade, and the sand may feel rough.";
        activity(club, "Dig").sentences = vec![sentence.into(); 9];
    });
    let rows = under(&club, "Boards, tiles, stories");
    let stories = sheets(&club, SheetKind::Story);
    let mut further = 0;
    for told in found(&club).boards {
        let person = club.participant(told.participant).unwrap();
        let name = format!("{} ({})", person.name, person.mark);
        let row = rows.iter().position(|r| *r == name).unwrap();
        assert_eq!(rows[row + 1], "Jump the wave: Dig comes instead", "{name}");
        let story = stories.iter().find(|s| s.participant == Some(person.id));
        let pages = |heading: &str| pages_of(story.unwrap(), heading);
        let (wave, dig) = (pages("Jump the wave"), pages("Dig"));
        further += usize::from(dig.contains('–'));
        let rest =
            format!("1 change tile; 1 tile: Dig. Story pages {wave} Jump the wave, {dig} Dig.");
        assert_eq!(rows[row + 2], rest, "{name}");
    }
    assert!(further > 0, "no story has a page on two sheets of paper");
}

/// The sheets of paper with a heading, by the number at their foot.
fn pages_of(story: &Sheet, heading: &str) -> String {
    let of = |(i, page): (usize, &Page)| {
        let read = read(page);
        let has = |r: &Read| matches!(r, Read::Heading(2, words) if words.starts_with(heading));
        let foot = format!("Story, page {} of {}", i + 1, story.pages.len());
        let is_foot = |r: &Read| matches!(r, Read::Paragraph(words) if words.starts_with(&foot));
        assert!(read.iter().any(is_foot), "{read:?}");
        read.iter().any(has).then_some(i + 1)
    };
    let all: Vec<usize> = story.pages.iter().enumerate().filter_map(of).collect();
    match all[..] {
        [one] => one.to_string(),
        [first, .., last] => format!("{first}–{last}"),
        [] => panic!("no page {heading}"),
    }
}

#[test]
fn what_stays_and_what_is_brought_is_listed() {
    let club = changed(|_| {});
    assert_eq!(under(&club, "No longer needed"), ["1 whistle", "6 floats"]);
    assert_eq!(under(&club, "Needed now"), ["4 buckets", "8 spades"]);
}

/// Who wants to be told apart and earlier comes first; warnings and what helps in wind stand as they
/// were written down. Who is not affected is not told of.
#[test]
fn who_is_told_first_stands_with_the_warnings_wanted() {
    let club = changed(|club| {
        let warnings = "Two warnings, a picture each, ten minutes before";
        who(club, "kite")
            .profile
            .set(Field::Warnings, warnings.into());
        let mut decision = *who(club, "star").profile.decision().for_owner();
        decision.warn_of_changes = true;
        who(club, "star").profile.set_decision(decision);
        let hard = |helps: &str| [(Condition::Known(Known::Windy), helps.to_owned())].into();
        who(club, "shell").profile.set_hard(hard("the cap"));
        let rain = [(Condition::Known(Known::Rain), "the tent".to_owned())].into();
        who(club, "boat").profile.set_hard(rain);
        who(club, "leaf")
            .profile
            .set(Field::Warnings, "One warning".into());
        who(club, "moon").profile.set_hard(hard("the tent"));
    });
    let told = under(&club, "Tell first");
    let wanted = [
        "Mila (star): apart from the others and earlier",
        "Mila (kite): Two warnings, a picture each, ten minutes before",
        "Sami (shell): hard today: Windy; helps: the cap",
    ];
    assert_eq!(told, wanted);
}

/// Someone who understands real things gets no tile of what comes instead: the thing is brought.
/// Middletown Centre for Autism, pages on visual schedules.
#[test]
fn who_has_real_things_gets_the_thing_instead_of_a_tile() {
    let club = changed(|club| {
        let dig = activity(club, "Dig").id;
        let thing = Mixed {
            form: Form::Object,
            thing: "the blue spade".into(),
        };
        who(club, "kite").manner.mixed.insert(dig, thing);
    });
    let now = found(&club);
    assert_eq!((now.dry_tiles(), now.change_tiles()), (5, 6));
    let rows = under(&club, "Boards, tiles, stories");
    let row = rows.iter().position(|r| r == "Mila (kite)").unwrap();
    let rest = &rows[row + 2];
    assert!(
        rest.starts_with("1 change tile; object: the blue spade. Story pages"),
        "{rest}"
    );
    let session = words(&club, SheetKind::SessionSheet);
    assert!(
        session.contains("kite: the blue spade, for Dig"),
        "{session}"
    );
}
