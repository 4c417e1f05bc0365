//! The club's own pictures on paper: where their consent reaches, and nowhere else.

use std::collections::BTreeSet;
use std::sync::Arc;

use daystrand::layout::told::told;
use daystrand::layout::{Request, SheetKind, lay_out};
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, apply};
use daystrand::model::ids::{ParticipantId, SymbolId};
use daystrand::model::people::Voice;
use daystrand::model::picture::{Made, PhotoKind, Picture};
use daystrand::model::privacy::Class;
use daystrand::model::profile::PhotoConsent;
use daystrand::page::{Item, Page, Role};

use super::all;
use crate::fixture;
use crate::model::random_pictures::{drawing, photo};

/// The club with a picture in the place of what the first row shows.
fn with(club: &Club, whose: Option<usize>, consent: PhotoConsent, person: bool) -> Club {
    let first = club.sessions[0].timetable[0].activity;
    let picture = Picture {
        whose: whose.map(|i| club.participants[i].id),
        stands_for: Some(club.activity(first).unwrap().symbol.clone()),
        consent,
        person,
        ..Picture::new(
            "Blue towel on a rail",
            Made::Photo(photo(PhotoKind::Jpeg, [60, 45], 30)),
        )
    };
    apply(club, &Edit::AddPicture(picture)).unwrap().0
}

fn shows_own(page: &Page) -> bool {
    let mut items = page.blocks.iter().flat_map(|b| &b.items);
    let drawn = items.any(|i| matches!(i, Item::Symbol { key, .. } if key.id.own().is_some()));
    let mut blocks = page.blocks.iter();
    let said =
        blocks.any(|b| matches!(&b.role, Role::Figure { alt } if alt.contains("Blue towel")));
    assert_eq!(drawn, said, "{}: what is seen is what is said", page.title);
    drawn
}

/// On which sheets it is, and whose they are.
fn where_seen(club: &Club, request: &Request) -> BTreeSet<(SheetKind, Option<ParticipantId>)> {
    let mut sheets = lay_out(club, request).sheets;
    // The coordinator's list of all of them is no page that others can see.
    sheets.retain(|s| s.kind != SheetKind::PictureList);
    let seen = sheets.iter().filter(|s| s.pages.iter().any(shows_own));
    seen.map(|s| (s.kind, s.participant)).collect()
}

#[test]
fn a_picture_of_someones_own_is_on_all_that_is_theirs_and_nowhere_else() {
    let club = fixture::without_pictures();
    let me = club.participants[0].id;
    let club = with(&club, Some(0), PhotoConsent::OwnTiles, false);
    let seen = where_seen(&club, &all(&club));
    for kind in [
        SheetKind::LargePrint,
        SheetKind::Story,
        SheetKind::HelperCard,
    ] {
        assert!(seen.contains(&(kind, Some(me))), "{kind:?} in {seen:?}");
    }
    assert!(seen.iter().all(|(_, who)| who.is_none_or(|w| w == me)));
    // Tiles of all lie together; those of the others have no such picture among them.
    assert!(seen.contains(&(SheetKind::Tiles, None)));
    let others = Request {
        participants: club.participants[1..].iter().map(|p| p.id).collect(),
        ..all(&club)
    };
    assert_eq!(where_seen(&club, &others), BTreeSet::new());
    let common = Request {
        kinds: vec![SheetKind::GroupWall, SheetKind::SessionSheet],
        ..all(&club)
    };
    assert_eq!(where_seen(&club, &common), BTreeSet::new());
}

#[test]
fn without_consent_it_is_nowhere() {
    let club = with(
        &fixture::without_pictures(),
        Some(0),
        PhotoConsent::None,
        false,
    );
    assert_eq!(where_seen(&club, &all(&club)), BTreeSet::new());
}

#[test]
fn an_activity_keeps_what_the_group_may_see() {
    // Chosen by hand as the picture of an activity, although only its owner may see it.
    let club = with(
        &fixture::without_pictures(),
        Some(0),
        PhotoConsent::OwnTiles,
        false,
    );
    let mut first = (*club.activities[0]).clone();
    first.symbol = club.pictures[0].symbol();
    let club = apply(&club, &Edit::ChangeActivity(first)).unwrap().0;
    let me = club.participants[0].id;
    for (kind, who) in where_seen(&club, &all(&club)) {
        assert!(who.is_none_or(|w| w == me), "{kind:?}");
        assert_ne!(kind, SheetKind::GroupWall);
        assert_ne!(kind, SheetKind::SessionSheet);
    }
}

#[test]
fn a_picture_of_the_club_is_seen_by_everyone() {
    let club = with(
        &fixture::without_pictures(),
        None,
        PhotoConsent::Group,
        false,
    );
    let seen = where_seen(&club, &all(&club));
    let boards = seen.iter().filter(|(k, _)| *k == SheetKind::LargePrint);
    assert!(boards.count() > 4);
}

#[test]
fn a_name_and_the_photograph_of_a_person_are_never_on_one_open_page() {
    let mut club = fixture::without_pictures();
    for p in club.participants.iter_mut().map(Arc::make_mut) {
        let mut papers = *p.profile.papers().for_owner();
        papers.photos = PhotoConsent::ClubMedia;
        p.profile.set_papers(papers);
    }
    Arc::make_mut(&mut club.participants[0]).voice = Voice::Name;
    Arc::make_mut(&mut club.participants[1]).voice = Voice::I;
    let named = club.participants[0].id;
    let club = with(&club, Some(0), PhotoConsent::ClubMedia, true);
    let club = with(&club, Some(1), PhotoConsent::ClubMedia, true);
    let laid = lay_out(&club, &all(&club));
    let names: Vec<&str> = club.participants.iter().map(|p| p.name.as_str()).collect();
    let mut shown = 0;
    for sheet in &laid.sheets {
        for page in sheet.pages.iter().filter(|p| p.class == Class::Public) {
            if !shows_own(page) {
                continue;
            }
            shown += 1;
            let items = page.blocks.iter().flat_map(|b| &b.items);
            let words: Vec<&str> = items
                .filter_map(|i| match i {
                    Item::Text { line, .. } => Some(line.text.as_str()),
                    _ => None,
                })
                .collect();
            let words = words.join(" ");
            let together = names.iter().find(|n| words.contains(**n));
            assert_eq!(together, None, "{}: {words}", page.title);
        }
    }
    assert!(shown > 0, "the photograph of one who is not named stays");
    let code = "privacy.photo-and-name";
    assert!(laid.findings.iter().any(|f| f.code == code));
    // A story for a telephone is no page; the same holds for it.
    let story = told(&club, &all(&club), named).unwrap();
    assert!(
        story
            .pictures
            .iter()
            .all(|(_, shows)| !shows.contains("Blue towel"))
    );
}

#[test]
fn the_same_tile_with_another_picture_is_another_tile() {
    let club = fixture::without_pictures();
    let me = club.participants[0].id;
    let faces = |club: &Club| {
        let request = Request {
            participants: vec![me],
            kinds: vec![SheetKind::Tiles],
            ..all(club)
        };
        let counts = lay_out(club, &request).counts.unwrap();
        let keys = counts.made.iter().map(|(key, _)| format!("{key:?}"));
        keys.collect::<BTreeSet<_>>()
    };
    let before = faces(&club);
    let club = with(&club, Some(0), PhotoConsent::OwnTiles, false);
    let after = faces(&club);
    assert_eq!(before.len(), after.len());
    assert_eq!(after.difference(&before).count(), 1);
    let mut again = (*club.pictures[0]).clone();
    again.made = Made::Drawing(drawing(90));
    let changed = apply(&club, &Edit::ChangePicture(again)).unwrap().0;
    assert_eq!(faces(&changed).difference(&after).count(), 1);
}

#[test]
fn a_drawing_of_the_clubs_own_has_the_inks_of_any_symbol() {
    let club = fixture::without_pictures();
    let (session, me) = (club.sessions[0].id, club.participants[0].id);
    let sign = Picture::new("Our sign", Made::Drawing(drawing(120)));
    let club = apply(&club, &Edit::AddPicture(sign)).unwrap().0;
    let own = daystrand::model::hand::Content {
        activity: None,
        symbol: club.pictures[0].symbol(),
        label: "Our sign".into(),
    };
    let club = apply(&club, &Edit::Board(session, me, BoardEdit::Insert(own, 0)))
        .unwrap()
        .0;
    let mut variants = BTreeSet::new();
    for ink in [
        daystrand::layout::InkChoice::Colour,
        daystrand::layout::InkChoice::Grey,
        daystrand::layout::InkChoice::Outline,
    ] {
        let request = Request {
            participants: vec![me],
            kinds: vec![SheetKind::LargePrint],
            ink,
            ..all(&club)
        };
        let laid = lay_out(&club, &request);
        assert!(!laid.findings.iter().any(|f| f.code == "print.symbol"));
        for page in laid.sheets.iter().flat_map(|s| &s.pages) {
            let items = page.blocks.iter().flat_map(|b| &b.items);
            variants.extend(items.filter_map(|i| match i {
                Item::Symbol { key, .. } if key.id.own().is_some() => Some(key.variant),
                _ => None,
            }));
        }
    }
    assert_eq!(variants, ["grey", "outline", "plain"].into());
    assert_eq!(SymbolId::new("own-").own(), None);
}
