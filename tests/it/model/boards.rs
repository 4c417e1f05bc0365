//! Random afternoons: whatever is done, boards stay true to the timetable and to every hand.

use std::collections::BTreeMap;

use daystrand::model::board::{Board, By, Step, StepState, derive};
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, GiveAt, Made, TimetableEdit, apply};
use daystrand::model::hand::{Asked, Content, HandChanges};
use daystrand::model::ids::{ActivityId, ParticipantId, SessionId, StepRef, SymbolId};
use daystrand::model::invariants;
use daystrand::model::session::{Off, Session, Slot};
use proptest::prelude::*;

use super::random::{self, seeds};

fn all_boards(club: &Club) -> BTreeMap<(SessionId, ParticipantId), Board> {
    let mut boards = BTreeMap::new();
    for s in &club.sessions {
        for p in &club.participants {
            boards.insert((s.id, p.id), derive(club, s, p.id));
        }
    }
    boards
}

fn order(board: &Board) -> Vec<StepRef> {
    board.steps.iter().map(|s| s.at).collect()
}

fn without(mut list: Vec<StepRef>, step: StepRef) -> Vec<StepRef> {
    list.retain(|s| *s != step);
    list
}

/// The steps that neither come nor go with what stands on the board beside them.
fn firm(order: &[StepRef]) -> Vec<StepRef> {
    let firm = |s: &&StepRef| matches!(s, StepRef::Slot(_) | StepRef::Own(_));
    order.iter().filter(firm).copied().collect()
}

/// Every row (or it is named as left out) and every own step exactly once, no step without origin,
/// and each says truly how it differs.
fn check_board(club: &Club, session: &Session, board: &Board) {
    let mut shown = order(board);
    shown.sort_unstable();
    let mut once = shown.clone();
    once.dedup();
    assert_eq!(shown, once, "a step stands twice");
    let rows = session.timetable.iter().map(|r| r.id);
    // Whoever does not wait has no part in a row of waiting.
    let (_, spare) = session.rows_of(board.participant);
    let rows = rows
        .filter(|r| !board.left_out.contains(r) && !spare.contains(r))
        .map(StepRef::Slot);
    let own = session.hand_of(board.participant);
    let own = own
        .iter()
        .flat_map(|h| h.own.keys())
        .map(|o| StepRef::Own(*o));
    let mut all: Vec<StepRef> = rows.chain(own).collect();
    all.sort_unstable();
    assert_eq!(firm(&shown), all);
    let person = club.participant(board.participant).unwrap();
    for step in &board.steps {
        assert!(!step.label.is_empty());
        assert_eq!(step.minutes.is_some(), matches!(step.at, StepRef::Slot(_)));
        let off = step.state == StepState::NotToday;
        match step.at {
            StepRef::Slot(_) => assert_ne!(step.state, StepState::Own),
            StepRef::Own(_) => assert_eq!(step.state, StepState::Own),
            StepRef::Instead(slot) => {
                let row = board.position(StepRef::Slot(slot)).unwrap();
                assert_eq!(board.steps[row].state, StepState::NotToday);
            }
            StepRef::Standing(id, _) => {
                assert!(person.standing.step(id).is_some());
                assert!(off || step.state == StepState::Own);
            }
        }
        if step.by == By::Timetable {
            assert!(matches!(
                step.state,
                StepState::AsTimetable | StepState::NotToday | StepState::Instead { .. }
            ));
        }
    }
    for out in &board.left_out {
        let row = session.slot(*out).unwrap();
        assert!(person.standing.left_out.contains(&row.activity));
    }
    assert_eq!(*board, derive(club, session, board.participant));
    // Steps that were not moved stand among each other as in the timetable, or in the participant's
    // turns.
    let unmoved: Vec<StepRef> = board
        .steps
        .iter()
        .filter(|s| !s.moved)
        .map(|s| s.at)
        .collect();
    let (own, _) = session.rows_of(board.participant);
    let rows = own.iter().map(|r| StepRef::Slot(r.id));
    let as_rows: Vec<StepRef> = rows.filter(|r| unmoved.contains(r)).collect();
    let unmoved_rows: Vec<StepRef> = unmoved
        .into_iter()
        .filter(|s| matches!(s, StepRef::Slot(_)))
        .collect();
    assert_eq!(unmoved_rows, as_rows);
}

/// What must be true after a board edit, by what it meant.
fn check_board_edit(before: &Club, after: &Club, edit: &Edit, made: Made) {
    let Edit::Board(id, who, what) = edit else {
        return;
    };
    let old = derive(before, before.session(*id).unwrap(), *who);
    let new = derive(after, after.session(*id).unwrap(), *who);
    let (old_order, new_order) = (order(&old), order(&new));
    match what {
        BoardEdit::Insert(_, at) => {
            let Made::Own(own) = made else {
                panic!("made {made:?}")
            };
            let mut wanted = old_order;
            wanted.insert((*at).min(wanted.len()), StepRef::Own(own));
            assert_eq!(new_order, wanted);
        }
        BoardEdit::Move(steps, to) if steps.len() != 1 => {
            check_moved_together(&old, &new, steps, *to);
        }
        BoardEdit::Move(steps, to) => {
            let step = steps[0];
            let group = group(&old, step);
            if group.len() == 1 {
                let mut wanted = without(old_order.clone(), step);
                wanted.insert((*to).min(wanted.len()), step);
                assert_eq!(firm(&new_order), firm(&wanted));
            }
            let rest = |o: &[StepRef]| -> Vec<StepRef> {
                let kept = o.iter().filter(|s| !group.contains(s));
                firm(&kept.copied().collect::<Vec<_>>())
            };
            assert_eq!(rest(&new_order), rest(&old_order));
            let along = new_order.windows(group.len()).any(|w| w == group);
            assert!(along, "they go along");
        }
        BoardEdit::All(all) => {
            for edit in all {
                let BoardEdit::TakeOff(step) = edit else {
                    unreachable!("only these are made")
                };
                let off = |s: &Step| s.state == StepState::NotToday;
                assert!(new.steps.iter().filter(|s| s.at == *step).all(off));
            }
        }
        BoardEdit::TakeOff(step @ StepRef::Own(_)) => {
            assert_eq!(firm(&new_order), without(firm(&old_order), *step));
        }
        BoardEdit::TakeOff(StepRef::Instead(slot)) => {
            assert_eq!(firm(&new_order), firm(&old_order));
            assert_eq!(new.position(StepRef::Instead(*slot)), None);
        }
        BoardEdit::TakeOff(step) | BoardEdit::NotToday(step, _) => {
            assert_eq!(firm(&new_order), firm(&old_order));
            let at = new.position(*step).unwrap();
            assert_eq!(new.steps[at].state, StepState::NotToday);
        }
        BoardEdit::Replace(..)
        | BoardEdit::Relabel(..)
        | BoardEdit::DoToday(_)
        | BoardEdit::Offer(..)
        | BoardEdit::Dry(_)
        | BoardEdit::LetGo(_) => assert_eq!(firm(&new_order), firm(&old_order)),
        BoardEdit::WithGroup(slot, with) => {
            let step = StepRef::Slot(*slot);
            let rest = |o: &[StepRef]| without(firm(o), step);
            assert_eq!(rest(&new_order), rest(&old_order));
            assert!(!with || new.position(step).is_some());
        }
        BoardEdit::Settle(asked, _) => {
            let asked_still = |b: &Club| {
                let hand = b.session(*id).unwrap().hand_of(*who).cloned();
                hand.unwrap_or_default().asked.contains(asked)
            };
            assert!(asked_still(before) && !asked_still(after));
        }
        BoardEdit::Restore(step) => {
            assert_eq!(
                without(firm(&new_order), *step),
                without(firm(&old_order), *step)
            );
            let Some(at) = new.position(*step) else {
                assert!(old.left_out.len() < new.left_out.len() || firm(&[*step]).is_empty());
                return;
            };
            let step = &new.steps[at];
            assert!(!step.moved && !step.relabelled, "{step:?}");
            if let StepRef::Slot(_) = step.at {
                assert_ne!(step.by, By::Hand);
            }
        }
        BoardEdit::RestoreAll => {
            assert!(after.session(*id).unwrap().hand_of(*who).is_none());
            assert!(new.steps.iter().all(|s| s.by != By::Hand && !s.moved));
        }
    }
}

/// They stand side by side in the order they had, and all else is as it was.
fn check_moved_together(old: &Board, new: &Board, steps: &[StepRef], to: usize) {
    let (before, after) = (order(old), order(new));
    let groups = before.iter().filter(|s| steps.contains(s));
    let mut all: Vec<StepRef> = Vec::new();
    for s in groups.flat_map(|s| group(old, *s)) {
        if !all.contains(&s) {
            all.push(s);
        }
    }
    let rest = |o: &[StepRef]| -> Vec<StepRef> {
        let kept = o.iter().filter(|s| !all.contains(s));
        firm(&kept.copied().collect::<Vec<_>>())
    };
    assert_eq!(rest(&before), rest(&after), "nothing else moves");
    let moved = after.iter().filter(|s| all.contains(s)).copied();
    assert_eq!(
        firm(&moved.collect::<Vec<_>>()),
        firm(&all),
        "as they stood"
    );
    if all.iter().all(|s| steps.contains(s)) {
        let mut wanted: Vec<StepRef> = before.clone();
        wanted.retain(|s| !steps.contains(s));
        let at = to.min(wanted.len());
        wanted.splice(at..at, all);
        assert_eq!(firm(&after), firm(&wanted));
    }
}

/// What a board has gained and the other one lost when steps were given.
fn check_given(before: &Club, after: &Club, edit: &Edit, made: Made) {
    let Edit::Give(id, give) = edit else { return };
    let board = |club: &Club, who| derive(club, club.session(*id).unwrap(), who);
    let old = board(before, give.from);
    let had = board(before, give.to);
    let has = board(after, give.to);
    let given: Vec<&Step> = old
        .steps
        .iter()
        .filter(|s| give.steps.contains(&s.at))
        .collect();
    let look = |s: &&Step| (s.activity, s.label.clone(), s.options.clone());
    let given_look = given.iter().map(look).collect::<Vec<_>>();
    match give.at {
        GiveAt::Position(_) => {
            let fresh = has.steps.iter().filter(|s| had.position(s.at).is_none());
            let fresh: Vec<&Step> = fresh.collect();
            assert_eq!(fresh.iter().map(look).collect::<Vec<_>>(), given_look);
            let Made::Own(own) = made else {
                panic!("made {made:?}")
            };
            assert_eq!(fresh.last().map(|s| s.at), Some(StepRef::Own(own)));
        }
        GiveAt::Step(there) => {
            let now = has.steps.iter().filter(|s| s.at == there);
            let gone = give.from == give.to && give.steps == [there] && !give.stays;
            match there {
                StepRef::Own(_) if gone => assert_eq!(now.count(), 0),
                _ => {
                    let now: Vec<&Step> = now.collect();
                    let mut looks = given_look;
                    let options = &mut looks[0].2;
                    if now[0].state == StepState::NotToday {
                        options.clear(); // The group does not do it, so there is nothing to choose.
                    } else if options.is_empty() {
                        let given = given[0].activity;
                        *options = groups_choice(after, (*id, give.to), there, given);
                    }
                    assert_eq!(now.iter().map(look).collect::<Vec<_>>(), looks);
                }
            }
            let leaves = |s: &StepRef| {
                let own = matches!(s, StepRef::Own(_)) && give.steps.contains(s);
                own && !give.stays && give.from == give.to
            };
            let mut wanted = firm(&order(&had));
            wanted.retain(|s| !leaves(s));
            assert_eq!(firm(&order(&has)), wanted);
        }
    }
    let now = board(after, give.from);
    for step in given {
        let own = matches!(step.at, StepRef::Own(_));
        if !own && give.from == give.to && matches!(give.at, GiveAt::Step(_)) {
            // In the place of the row that it came instead of it is done with.
            continue;
        }
        assert_eq!(now.position(step.at).is_none(), own && !give.stays);
    }
}

/// What the group chooses at a row, if this is the row's own activity: put there it is what the
/// timetable has, and with that goes the timetable's choice.
fn groups_choice(
    club: &Club,
    (id, who): (SessionId, ParticipantId),
    there: StepRef,
    given: Option<ActivityId>,
) -> Vec<Content> {
    let StepRef::Slot(slot) = there else {
        return Vec::new();
    };
    let row = club.session(id).unwrap().slot(slot).unwrap();
    if given != Some(row.activity) || row.options.is_empty() {
        return Vec::new();
    }
    let edits = [BoardEdit::RestoreAll, BoardEdit::WithGroup(slot, true)];
    let edits = edits.map(|edit| Edit::Board(id, who, edit));
    let as_group = edits
        .iter()
        .fold(club.clone(), |club, edit| apply(&club, edit).unwrap().0);
    let board = derive(&as_group, as_group.session(id).unwrap(), who);
    board.steps[board.position(there).unwrap()].options.clone()
}

/// A row with what stands beside it in one piece; anything else alone.
fn group(board: &Board, step: StepRef) -> Vec<StepRef> {
    let at = board.position(step).unwrap();
    let StepRef::Slot(slot) = step else {
        return vec![step];
    };
    // What stands beside a whole part of the day goes along with its first or last row.
    let along = |s: &&StepRef| match s {
        StepRef::Instead(id) | StepRef::Standing(_, Some(id)) => *id == slot,
        _ => false,
    };
    let order = order(board);
    let before = order[..at].iter().rev().take_while(along).count();
    let after = order[at + 1..].iter().take_while(along).count();
    order[at - before..=at + after].to_vec()
}

/// What a timetable edit may do to the hand changes of a board: nothing, but what is about a row that
/// is gone or shows another activity; and that is asked about where a person's words, picture or
/// place would be lost.
fn check_hands_survive(before: &Club, after: &Club, edit: &Edit) {
    let Edit::Timetable(id, what) = edit else {
        return;
    };
    let (old, new) = (before.session(*id).unwrap(), after.session(*id).unwrap());
    // With the last station its rows of waiting go too, each as if it were removed by itself.
    let lost = |r: &&Slot| new.slot(r.id).is_none();
    let by_itself = usize::from(matches!(what, TimetableEdit::Remove(_)));
    if old.timetable.iter().filter(lost).count() > by_itself {
        assert!(old.turns.is_some() && new.turns.is_none());
        for (who, hand) in &old.hand {
            let now = new.hand_of(*who).cloned().unwrap_or_default();
            assert_eq!(now.own, hand.own);
        }
        return;
    }
    let (TimetableEdit::Remove(slot) | TimetableEdit::Replace(slot, _)) = what else {
        assert_eq!(old.hand, new.hand);
        return;
    };
    let row = StepRef::Slot(*slot);
    let instead = StepRef::Instead(*slot);
    let gone = matches!(what, TimetableEdit::Remove(_));
    let beside = |s: &StepRef| *s == row || *s == instead || gone && s.slot() == Some(*slot);
    for (who, hand) in &old.hand {
        let now = new.hand_of(*who).cloned().unwrap_or_default();
        assert_eq!(now.own, hand.own);
        let rest = |h: &HandChanges| {
            let mut h = h.clone();
            h.asked.clear();
            h.replaced.retain(|s, _| !beside(s));
            h.not_today.retain(|s, _| !beside(s));
            h.labels.retain(|s, _| !beside(s));
            h.choices.retain(|s, _| !beside(s));
            h.with_group.remove(slot);
            h.placed.retain(|p| !beside(&p.step));
            h.placed
                .iter_mut()
                .for_each(|p| p.after.retain(|s| !beside(s)));
            h
        };
        assert_eq!(rest(&now), rest(hand));
        let asked = |was: fn(&Asked) -> bool| now.asked.iter().any(was);
        let off = hand.not_today.contains_key(&row);
        if let TimetableEdit::Remove(_) = what {
            let lost = hand.replaced.contains_key(&row) || hand.labels.contains_key(&row);
            let on_board = derive(before, old, *who).position(row).is_some();
            if on_board && lost && !off {
                assert!(asked(|a| matches!(a, Asked::RowGone { .. })), "{hand:?}");
            }
        } else if old.slot(*slot) != new.slot(*slot) && hand.labels.contains_key(&row) {
            let kept = now.labels.get(&row) == hand.labels.get(&row);
            let open = asked(|a| matches!(a, Asked::OtherWords { .. }));
            assert!(kept || open, "{now:?}");
        }
    }
}

/// Makes the edits of some seeds one after the other; after each holds what always holds.
fn afternoon(seeds: &[random::Seed]) {
    let mut club = random::start();
    assert_eq!(invariants::check(&club), Vec::<String>::new());
    for seed in seeds {
        let edit = random::edit(&club, seed);
        let before = club.clone();
        let label = edit.label(&club);
        let fits = !label.trim().is_empty() && label.chars().count() < 140;
        assert!(fits, "{label}");
        let Ok((next, made)) = apply(&club, &edit) else {
            continue;
        };
        assert_eq!(club, before, "the club given was changed");
        let broken = invariants::check(&next);
        assert!(broken.is_empty(), "{broken:?} after {edit:?}");
        assert!(next.next_id >= club.next_id);
        for s in &next.sessions {
            for p in &next.participants {
                check_board(&next, s, &derive(&next, s, p.id));
            }
        }
        check_board_edit(&club, &next, &edit, made);
        check_given(&club, &next, &edit, made);
        check_hands_survive(&club, &next, &edit);
        club = next;
    }
}

/// What comes instead of a row, moved by hand and brought back, stands beside the row again, which
/// may have been moved too.
#[test]
fn what_comes_instead_comes_back_beside_its_row() {
    let told: [&[random::Plain]; 2] = [
        &[
            (57, 23, 0, 6, true),
            (153, 0, 45, 0, false),
            (53, 42, 45, 7, false),
            (127, 22, 15, 0, false),
            (111, 14, 45, 0, true),
        ],
        &[
            (147, 43, 0, 0, false),
            (2, 11, 0, 3, false),
            (0, 0, 5, 0, false),
            (51, 0, 15, 3, false),
            (160, 0, 0, 2, false),
            (223, 21, 15, 8, true),
            (213, 18, 15, 0, true),
        ],
    ];
    for edits in told {
        let seeds = edits.iter().copied().map(random::Seed::of);
        afternoon(&seeds.collect::<Vec<_>>());
    }
}

proptest! {
    #![proptest_config(crate::chance::cases(400))]

    #[test]
    fn every_afternoon_keeps_what_always_holds(seeds in seeds(60)) {
        afternoon(&seeds);
    }

    /// Board edits on one board never show on another, timetable edits never on another session.
    #[test]
    fn one_board_at_a_time(seeds in seeds(40)) {
        let mut club = random::start();
        for seed in &seeds {
            let edit = random::edit(&club, seed);
            let Ok((next, _)) = apply(&club, &edit) else { continue };
            let (old, new) = (all_boards(&club), all_boards(&next));
            for (key, board) in &old {
                let touched = match &edit {
                    Edit::Board(s, p, _) => *key == (*s, *p),
                    Edit::Give(s, g) => key.0 == *s && (key.1 == g.from || key.1 == g.to),
                    Edit::Timetable(s, _) => key.0 == *s,
                    _ => true,
                };
                if !touched {
                    prop_assert_eq!(Some(board), new.get(key));
                }
            }
            club = next;
        }
    }

    /// A new row comes where the timetable has it, among the rows no one moved; all others keep
    /// their order on every board.
    #[test]
    fn a_new_row_reaches_every_board(seeds in seeds(40), at in 0..8_usize) {
        let club = random::club(&seeds);
        let Some(session) = club.sessions.first() else { return Ok(()) };
        let Some(activity) = club.activities.first() else { return Ok(()) };
        let edit = Edit::Timetable(session.id, TimetableEdit::Insert(activity.id, at));
        let (next, made) = apply(&club, &edit).unwrap();
        let Made::Slot(slot) = made else { panic!("made {made:?}") };
        for p in &club.participants {
            let old = order(&derive(&club, session, p.id));
            let after = next.session(session.id).unwrap();
            let new = derive(&next, after, p.id);
            if let Some(at) = new.position(StepRef::Slot(slot)) {
                prop_assert!(new.steps[at].by != By::Hand && !new.steps[at].moved);
            } else {
                prop_assert!(new.left_out.contains(&slot));
            }
            prop_assert_eq!(without(firm(&order(&new)), StepRef::Slot(slot)), firm(&old));
        }
    }

    /// A change by hand and a change of another row of the timetable come to the same in either
    /// order.
    #[test]
    fn changes_of_different_rows_commute(
        seeds in seeds(40),
        (by_hand, of_rows) in (0..4_u8, 0..6_u8),
        (one, other) in (0..9_usize, 0..9_usize),
        words in "[A-Z][a-z]{2,9}",
    ) {
        let club = random::club(&seeds);
        let Some(session) = club.sessions.first() else { return Ok(()) };
        let Some(who) = club.participants.first().map(|p| p.id) else { return Ok(()) };
        let rows = &session.timetable;
        if rows.len() < 2 || club.activities.is_empty() { return Ok(()) }
        let mine = rows[one % rows.len()].id;
        let theirs = rows[other % rows.len()].id;
        if mine == theirs { return Ok(()) }
        let content = Content { activity: None, symbol: SymbolId::new("drum"), label: words.clone() };
        let step = StepRef::Slot(mine);
        let activity = club.activities[other % club.activities.len()].id;
        let hand = Edit::Board(session.id, who, match by_hand {
            0 => BoardEdit::Relabel(step, words),
            1 => BoardEdit::Replace(step, content),
            2 => BoardEdit::NotToday(step, Some(content)),
            _ => BoardEdit::Offer(step, vec![content.clone(), content]),
        });
        let row = Edit::Timetable(session.id, match of_rows {
            0 => TimetableEdit::Minutes(theirs, 17),
            1 => TimetableEdit::Part(theirs, club.parts[0].id),
            2 => TimetableEdit::Off(theirs, Some(Off { instead: Some(activity) })),
            3 => TimetableEdit::Replace(theirs, activity),
            4 => TimetableEdit::Remove(theirs),
            _ => TimetableEdit::Move(theirs, one),
        });
        let both = |first: &Edit, then: &Edit| -> Option<Club> {
            let (next, _) = apply(&club, first).ok()?;
            Some(apply(&next, then).ok()?.0)
        };
        let (a, b) = (both(&hand, &row), both(&row, &hand));
        if let (Some(a), Some(b)) = (a, b) {
            prop_assert_eq!(all_boards(&a), all_boards(&b));
        }
    }
}

/// A step that cannot be placed short (its neighbour is placed later) still lands where it was put.
#[test]
fn a_neighbour_that_moves_away_takes_no_one_along() {
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let rows: Vec<StepRef> = club.sessions[0]
        .timetable
        .iter()
        .map(|r| StepRef::Slot(r.id))
        .collect();
    let board = |club: &Club| order(&derive(club, club.session(s).unwrap(), p));
    let mut put = |step, to| {
        club = apply(&club, &Edit::Board(s, p, BoardEdit::Move(vec![step], to)))
            .unwrap()
            .0;
        board(&club)
    };
    // Row 0 stands behind row 3; then row 3 goes to the start.
    put(rows[0], 3);
    assert_eq!(
        put(rows[3], 0),
        [rows[3], rows[1], rows[2], rows[0], rows[4], rows[5]]
    );
    // Both go back: the board is the timetable again, and nothing is left of the changes.
    put(rows[3], 3);
    assert_eq!(put(rows[0], 0), rows);
    assert!(club.session(s).unwrap().hand.is_empty());
}

/// A water activity moved in the timetable takes the own step behind it along.
#[test]
fn an_own_step_follows_what_it_stands_behind() {
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let rows: Vec<StepRef> = club.sessions[0]
        .timetable
        .iter()
        .map(|r| StepRef::Slot(r.id))
        .collect();
    let quiet = daystrand::model::hand::Content {
        activity: None,
        symbol: daystrand::model::ids::SymbolId::new("quiet_place"),
        label: "Quiet place".into(),
    };
    let (next, made) = apply(&club, &Edit::Board(s, p, BoardEdit::Insert(quiet, 4))).unwrap();
    let Made::Own(own) = made else {
        panic!("made {made:?}")
    };
    club = next;
    let StepRef::Slot(swim) = rows[3] else {
        panic!()
    };
    club = apply(&club, &Edit::Timetable(s, TimetableEdit::Move(swim, 1)))
        .unwrap()
        .0;
    let board = derive(&club, club.session(s).unwrap(), p);
    let at = board.position(rows[3]).unwrap();
    assert_eq!(at, 1);
    assert_eq!(board.position(StepRef::Own(own)), Some(2));
    assert_eq!(board.steps[2].part, board.steps[1].part);
    // Without the row it stands behind what came before that.
    club = apply(&club, &Edit::Timetable(s, TimetableEdit::Remove(swim)))
        .unwrap()
        .0;
    let board = derive(&club, club.session(s).unwrap(), p);
    let at = board.position(StepRef::Own(own)).unwrap();
    assert_eq!(board.steps[at - 1].at, rows[2]);
}

/// A broken timetable (never made by an edit) still gives a board that can be shown and reported.
#[test]
fn an_unknown_activity_is_shown_as_such() {
    let mut club = random::start();
    club.activities.remove(0);
    let mut session = Session::clone(&club.sessions[0]);
    let twice = session.timetable[1].clone();
    session.timetable.push(twice);
    let board = derive(&club, &session, club.participants[0].id);
    assert_eq!(board.steps.len(), 6, "a row named twice stands once");
    assert_eq!(
        board.steps[0].label,
        daystrand::model::board::UNKNOWN_ACTIVITY
    );
    let unknown = board.steps[0].activity.unwrap();
    assert!(club.activity(unknown).is_none(), "a check finds it by this");
    assert!(!invariants::check(&club).is_empty());
}
