//! The club's own pictures: who may see them, what stands for what, and how they go.

use std::sync::Arc;

use daystrand::model::board::derive;
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, Made as Came, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{ParticipantId, PictureId, SymbolId};
use daystrand::model::invariants;
use daystrand::model::manner::Form;
use daystrand::model::picture::{Made, PhotoKind, Picture, Place};
use daystrand::model::profile::PhotoConsent;

use super::random_pictures::{drawing, photo};
use crate::fixture;

fn after(club: &Club, edit: &Edit) -> Club {
    let (next, _) = apply(club, edit).unwrap();
    assert_eq!(invariants::check(&next), Vec::<String>::new());
    next
}

fn add(club: &Club, picture: Picture) -> (Club, PictureId) {
    let (next, made) = apply(club, &Edit::AddPicture(picture)).unwrap();
    assert_eq!(invariants::check(&next), Vec::<String>::new());
    match made {
        Came::Picture(id) => (next, id),
        other => panic!("{other:?}"),
    }
}

fn towel(whose: Option<ParticipantId>, consent: PhotoConsent) -> Picture {
    Picture {
        whose,
        consent,
        stands_for: Some(SymbolId::new("dig")),
        ..Picture::new(
            "My towel",
            Made::Photo(photo(PhotoKind::Jpeg, [40, 30], 200)),
        )
    }
}

#[test]
fn consent_reaches_as_far_as_it_was_given() {
    let club = fixture::without_pictures();
    let (me, other) = (club.participants[0].id, club.participants[1].id);
    let places = [
        Place::Own(me),
        Place::Own(other),
        Place::Group,
        Place::Outside,
    ];
    let may = |whose, consent| {
        let (club, id) = add(&club, towel(whose, consent));
        places.map(|place| club.picture(id).unwrap().may_be_seen(&club, place))
    };
    use PhotoConsent as C;
    assert_eq!(may(Some(me), C::None), [false; 4]);
    assert_eq!(may(Some(me), C::OwnTiles), [true, false, false, false]);
    assert_eq!(may(Some(me), C::Group), [true, true, true, false]);
    assert_eq!(may(Some(me), C::ClubMedia), [true; 4]);
    // What is nobody's belongs to no one's own things: it needs the group's consent everywhere.
    assert_eq!(may(None, C::OwnTiles), [false; 4]);
    assert_eq!(may(None, C::Group), [true, true, true, false]);
}

#[test]
fn a_person_on_a_photograph_is_also_bound_by_what_the_family_said() {
    let mut club = fixture::without_pictures();
    let me = club.participants[0].id;
    let said = |club: &mut Club, photos| {
        let p = Arc::make_mut(&mut club.participants[0]);
        let mut papers = *p.profile.papers().for_owner();
        papers.photos = photos;
        p.profile.set_papers(papers);
    };
    let picture = Picture {
        person: true,
        ..towel(Some(me), PhotoConsent::ClubMedia)
    };
    for (photos, places) in [
        (PhotoConsent::None, [false, false]),
        (PhotoConsent::OwnTiles, [true, false]),
        (PhotoConsent::Group, [true, true]),
    ] {
        said(&mut club, photos);
        let (club, id) = add(&club, picture.clone());
        let p = club.picture(id).unwrap();
        let may = [Place::Own(me), Place::Group].map(|place| p.may_be_seen(&club, place));
        assert_eq!(may, places, "{photos:?}");
    }
}

#[test]
fn someone_sees_their_own_in_place_of_a_symbol_then_the_clubs() {
    let club = fixture::without_pictures();
    let dig = SymbolId::new("dig");
    let (me, other) = (&club.participants[0], &club.participants[1]);
    let (club, ours) = add(&club, towel(None, PhotoConsent::Group));
    let (club, mine) = add(&club, towel(Some(me.id), PhotoConsent::OwnTiles));
    let (club, _) = add(&club, towel(Some(me.id), PhotoConsent::None));
    let seen = |who| club.seen_by(who, &dig).own();
    assert_eq!(seen(me), Some(mine));
    assert_eq!(seen(other), Some(ours));
    assert_eq!(club.seen_by(me, &SymbolId::new("circle")).own(), None);
}

#[test]
fn a_photograph_that_is_there_needs_no_frame() {
    let mut club = fixture::without_pictures();
    let p = Arc::make_mut(&mut club.participants[0]);
    p.manner.form = Form::Photograph;
    p.manner.mixed.clear();
    let me = p.id;
    let session = Arc::clone(&club.sessions[0]);
    let forms = |club: &Club| {
        let board = derive(club, &session, me);
        let all = board.steps.into_iter();
        all.map(|s| (s.symbol, s.form)).collect::<Vec<_>>()
    };
    let (symbol, before) = forms(&club)[0].clone();
    assert_eq!(before, Form::Photograph);
    let picture = Picture {
        stands_for: Some(symbol.clone()),
        ..towel(Some(me), PhotoConsent::OwnTiles)
    };
    let (club, _) = add(&club, picture);
    for (shown, form) in forms(&club) {
        let there = shown == symbol;
        assert_eq!(form == Form::Drawing, there, "{shown}");
    }
}

#[test]
fn the_same_photograph_is_held_once() {
    let club = fixture::without_pictures();
    let mut all = club;
    for _ in 0..10 {
        all = add(&all, towel(None, PhotoConsent::Group)).0;
    }
    let first = all.pictures[0].photo().unwrap();
    assert!(
        all.pictures
            .iter()
            .all(|p| Arc::ptr_eq(p.photo().unwrap(), first))
    );
    assert_eq!(all.photo_bytes(), first.bytes().len());
}

#[test]
fn what_is_removed_is_named_nowhere() {
    let club = fixture::without_pictures();
    let (club, id) = add(&club, towel(None, PhotoConsent::Group));
    let symbol = club.picture(id).unwrap().symbol();
    let mut activity = (*club.activities[0]).clone();
    activity.symbol = symbol.clone();
    let club = after(&club, &Edit::ChangeActivity(activity));
    let (session, me) = (club.sessions[0].id, club.participants[0].id);
    let own = Content {
        activity: None,
        symbol: symbol.clone(),
        label: "Towel".into(),
    };
    let club = after(&club, &Edit::Board(session, me, BoardEdit::Insert(own, 1)));
    let names = |club: &Club| format!("{club:?}").matches(&format!("{symbol:?}")).count();
    assert!(names(&club) > 1);
    let club = after(&club, &Edit::RemovePicture(id));
    assert_eq!(names(&club), 0);
    assert_eq!(club.activities[0].symbol, SymbolId::new("dig"));
    assert!(club.pictures.is_empty());
}

#[test]
fn someones_pictures_go_with_them() {
    let club = fixture::without_pictures();
    let (me, other) = (club.participants[0].id, club.participants[1].id);
    let (club, _) = add(&club, towel(Some(me), PhotoConsent::OwnTiles));
    let (club, stays) = add(&club, towel(Some(other), PhotoConsent::OwnTiles));
    let club = after(&club, &Edit::RemoveParticipant(me));
    let left: Vec<PictureId> = club.pictures.iter().map(|p| p.id).collect();
    assert_eq!(left, [stays]);
}

#[test]
fn what_cannot_be_kept_is_refused_with_a_reason() {
    let club = fixture::without_pictures();
    let refused = |picture: Picture| {
        let said = apply(&club, &Edit::AddPicture(picture)).unwrap_err();
        said.to_string()
    };
    assert!(refused(Picture::new("  ", Made::Drawing(drawing(9)))).contains("name"));
    let lost = Picture {
        whose: Some(ParticipantId(9_999)),
        ..towel(None, PhotoConsent::Group)
    };
    assert!(refused(lost).contains("no longer there"));
    let chain = Picture {
        stands_for: Some(SymbolId::new("own-3")),
        ..towel(None, PhotoConsent::Group)
    };
    assert!(refused(chain).contains("symbol"));
    let huge = daystrand::model::picture::Photo::new(PhotoKind::Png, [9_000, 10], vec![0; 9]);
    let huge = Picture::new("Sea", Made::Photo(Arc::new(huge)));
    assert!(refused(huge).contains("larger"));
}

#[test]
fn photographs_that_no_file_could_hold_are_refused() {
    let mut club = fixture::without_pictures();
    let photo = |tone: u8| {
        let bytes = vec![tone; 11 * 1024 * 1024];
        let photo = daystrand::model::picture::Photo::new(PhotoKind::Jpeg, [10, 10], bytes);
        Picture::new("Sea", Made::Photo(Arc::new(photo)))
    };
    for tone in 0..3 {
        club = add(&club, photo(tone)).0;
    }
    let said = apply(&club, &Edit::AddPicture(photo(3))).unwrap_err();
    assert!(
        said.sentence.contains("more room than its file has"),
        "{said}"
    );
}

/// FIPS 180-4: the hash of "abc", from the standard's examples.
#[test]
fn content_is_known_by_sha_256() {
    let photo = daystrand::model::picture::Photo::new(PhotoKind::Png, [1, 1], b"abc".to_vec());
    assert_eq!(
        photo.hash(),
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    );
}
