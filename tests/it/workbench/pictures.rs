//! Pictures brought in by file and by clipboard, and sets given from club to club.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use daystrand::intake::{Frame, Recipe, Shape, Taken};
use daystrand::model::edit::{Edit, apply};
use daystrand::model::picture::{Made, PhotoKind, Picture};
use daystrand::model::profile::PhotoConsent;
use daystrand::model::set::Holds;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Answer, Command};
use daystrand::workbench::incoming::{Keep, Purpose, begun, needed_px};
use image::RgbaImage;

use crate::model::random_pictures::{drawing, photo};

fn bench() -> Workbench {
    let mut bench = Workbench::new(jiff::civil::date(2027, 6, 11));
    do_(&mut bench, Command::Demo);
    crate::ui::no_pictures(&mut bench);
    bench
}

fn do_(bench: &mut Workbench, command: Command) {
    let _ = bench.handle(command);
}

/// Waits until everything is read.
fn read(bench: &mut Workbench) {
    for _ in 0..3_000 {
        bench.poll();
        if bench.view().incoming.is_none_or(|i| !i.reading) {
            return;
        }
        std::thread::sleep(Duration::from_millis(10));
    }
    panic!("reading does not end");
}

fn file(dir: &Path, name: &str, tone: u8) -> PathBuf {
    let path = dir.join(name);
    fs::write(&path, photo(PhotoKind::Jpeg, [320, 240], tone).bytes()).unwrap();
    path
}

#[test]
fn a_photograph_becomes_someones_own_picture() {
    let dir = tempfile::tempdir().unwrap();
    let path = file(dir.path(), "my_red-towel.jpg", 5);
    let mut bench = bench();
    let me = bench.club().participants[0].id;
    let purpose = Purpose {
        whose: Some(me),
        stands_for: Some(daystrand::model::ids::SymbolId::new("dig")),
        label: String::new(),
    };
    do_(
        &mut bench,
        Command::TakePictures(vec![path.clone()], purpose),
    );
    read(&mut bench);
    let view = bench.view();
    let arrived = view.incoming.unwrap().first.unwrap();
    assert_eq!(arrived.name, "My red towel");
    let picture = begun(arrived);
    assert_eq!(picture.consent, PhotoConsent::OwnTiles);
    let square = Recipe {
        frame: Some(Frame {
            centre: [0.5, 0.5],
            width: 0.5,
            shape: Shape::Square,
        }),
        ..Recipe::default()
    };
    let keep = Keep {
        recipe: square,
        picture,
    };
    do_(&mut bench, Command::KeepArrived(Box::new(keep)));
    assert!(bench.view().incoming.is_none());
    let club = bench.club();
    let kept = club.pictures.last().unwrap();
    assert_eq!((kept.name.as_str(), kept.whose), ("My red towel", Some(me)));
    assert_eq!(kept.photo().unwrap().size(), [160, 160]);
    // The file is as it was, and one undo takes the picture back.
    assert_eq!(
        fs::read(&path).unwrap(),
        photo(PhotoKind::Jpeg, [320, 240], 5).bytes()
    );
    do_(&mut bench, Command::Undo);
    assert!(bench.club().pictures.is_empty());
}

#[test]
fn an_untouched_photograph_keeps_its_bytes() {
    let dir = tempfile::tempdir().unwrap();
    let path = file(dir.path(), "IMG_20270611.jpg", 9);
    let mut bench = bench();
    do_(
        &mut bench,
        Command::TakePictures(vec![path], Purpose::default()),
    );
    read(&mut bench);
    do_(&mut bench, Command::KeepAllArrived);
    let kept = bench.club().pictures.last().unwrap().clone();
    // What a camera calls a file is no name.
    assert_eq!(kept.name, "Picture");
    let made = photo(PhotoKind::Jpeg, [320, 240], 9);
    assert_eq!(kept.photo().unwrap().bytes(), made.bytes());
}

#[test]
fn of_a_hundred_the_good_ones_come_and_the_others_are_named() {
    let dir = tempfile::tempdir().unwrap();
    for i in 0..97_u8 {
        file(dir.path(), &format!("towel {i:02}a.jpg"), i);
    }
    fs::write(dir.path().join("notes.txt"), "nothing to see").unwrap();
    fs::write(dir.path().join("empty.png"), []).unwrap();
    let whole = photo(PhotoKind::Jpeg, [320, 240], 1);
    let half = &whole.bytes()[..whole.bytes().len() / 2];
    fs::write(dir.path().join("torn.jpg"), half).unwrap();
    let mut bench = bench();
    let all = vec![dir.path().to_path_buf()];
    do_(&mut bench, Command::TakePictures(all, Purpose::default()));
    read(&mut bench);
    assert_eq!(bench.view().incoming.unwrap().behind, 96);
    let notice = bench.view().notice.unwrap().clone();
    for name in ["notes.txt", "empty.png", "torn.jpg"] {
        assert!(notice.sentence.contains(name), "{}", notice.sentence);
    }
    do_(&mut bench, Command::KeepAllArrived);
    assert_eq!(bench.club().pictures.len(), 97);
    assert!(bench.view().incoming.is_none());
}

#[test]
fn nothing_that_is_there_is_said() {
    let mut bench = bench();
    let gone = vec![PathBuf::from("/nowhere/towel.jpg")];
    do_(&mut bench, Command::TakePictures(gone, Purpose::default()));
    read(&mut bench);
    let notice = bench.view().notice.unwrap();
    assert!(notice.trouble && notice.sentence.contains("towel.jpg"));
    assert!(bench.view().incoming.is_none());
}

#[test]
fn what_is_pasted_is_a_photograph_and_may_be_passed() {
    let mut bench = bench();
    let pasted = Arc::new(RgbaImage::from_pixel(
        30,
        20,
        image::Rgba([9, 90, 200, 255]),
    ));
    do_(&mut bench, Command::TakePasted(pasted, Purpose::default()));
    let view = bench.view();
    let arrived = view.incoming.unwrap().first.unwrap();
    let Taken::Photo(taken) = &arrived.what else {
        panic!("a photograph");
    };
    assert_eq!(taken.size(), [30, 20]);
    do_(&mut bench, Command::PassArrived);
    assert!(bench.view().incoming.is_none());
    assert!(bench.club().pictures.is_empty());
    let nothing = Arc::new(RgbaImage::new(0, 0));
    do_(&mut bench, Command::TakePasted(nothing, Purpose::default()));
    assert!(bench.view().notice.unwrap().trouble);
}

/// 300 dots an inch across the largest tile in use, and across 110 mm at least:
/// 110 / 25.4 x 300 = 1299.2, 150 / 25.4 x 300 = 1771.7.
#[test]
fn no_more_pixels_are_kept_than_paper_needs() {
    let mut club = crate::fixture::without_pictures();
    assert_eq!(needed_px(&club), 1300);
    Arc::make_mut(&mut club.participants[0]).tile = daystrand::units::Length::mm(150.0);
    assert_eq!(needed_px(&club), 1772);
    Arc::make_mut(&mut club.participants[0]).tile = daystrand::units::Length::mm(400.0);
    assert_eq!(needed_px(&club), daystrand::intake::WORKING_PX);
}

fn ours(name: &str, made: Made) -> Picture {
    Picture {
        consent: PhotoConsent::ClubMedia,
        ..Picture::new(name, made)
    }
}

fn with_pictures(bench: &mut Workbench, tone: u8) {
    let ramp = photo(PhotoKind::Png, [20, 20], tone);
    do_(
        bench,
        Command::Edit(Edit::AddPicture(ours("Ramp", Made::Photo(ramp)))),
    );
    let sign = Made::Drawing(drawing(usize::from(tone)));
    do_(bench, Command::Edit(Edit::AddPicture(ours("Sign", sign))));
    let mine = Picture {
        whose: Some(bench.club().participants[0].id),
        ..ours("Mine", Made::Drawing(drawing(7)))
    };
    do_(bench, Command::Edit(Edit::AddPicture(mine)));
}

#[test]
fn a_set_holds_pictures_and_activities_and_nobody() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Ours.daystrand-set");
    let mut giver = bench();
    with_pictures(&mut giver, 40);
    let mut first = (*giver.club().activities[0]).clone();
    first.symbol = giver.club().pictures[0].symbol();
    do_(
        &mut giver,
        Command::Edit(Edit::ChangeActivity(first.clone())),
    );
    do_(&mut giver, Command::WriteSet(path.clone(), Holds::Both));
    let notice = giver.view().notice.unwrap().clone();
    assert!(!notice.trouble, "{notice:?}");
    assert!(notice.sentence.contains("Mine"), "{notice:?}");
    let text = fs::read_to_string(&path).unwrap();
    for person in &giver.club().participants {
        let said = text
            .split(|c: char| !c.is_alphanumeric())
            .any(|w| w == person.name);
        assert!(!said, "{}", person.name);
    }
    assert!(text.contains("\"format\": \"daystrand-set\""));

    let mut taker = Workbench::new(jiff::civil::date(2027, 6, 11));
    do_(&mut taker, Command::TakeSet(path.clone()));
    // A new club begins with activities of its own; some have the same names.
    if taker.view().question.is_some() {
        do_(&mut taker, Command::Answer(Answer::TakeTheirs));
    }
    let club = taker.club();
    let names: Vec<&str> = club.pictures.iter().map(|p| p.name.as_str()).collect();
    assert_eq!(names, ["Ramp", "Sign"]);
    let came = club
        .activities
        .iter()
        .find(|a| a.label == first.label)
        .unwrap();
    assert_eq!(came.symbol, club.pictures[0].symbol());
    assert_eq!(came.sentences, first.sentences);
    // Taken in once more it changes nothing and asks nothing.
    let before = Arc::clone(taker.club());
    do_(&mut taker, Command::TakeSet(path.clone()));
    assert!(taker.view().question.is_none());
    assert_eq!(*taker.club(), before);
    // A set is no club, and says so.
    do_(&mut taker, Command::Open(path));
    assert!(
        taker
            .view()
            .notice
            .unwrap()
            .sentence
            .contains("a set of pictures")
    );
}

#[test]
fn what_has_the_same_name_is_asked_about_once() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Ours.daystrand-set");
    let mut giver = bench();
    with_pictures(&mut giver, 40);
    do_(&mut giver, Command::WriteSet(path.clone(), Holds::Pictures));
    for (answer, names, theirs) in [
        (
            Answer::KeepOurs,
            vec!["Ramp", "Sign", "Mine"],
            [false, false],
        ),
        (
            Answer::TakeTheirs,
            vec!["Ramp", "Sign", "Mine"],
            [true, true],
        ),
        (
            Answer::KeepBoth,
            vec!["Ramp", "Sign", "Mine", "Ramp 2", "Sign 2"],
            [false, false],
        ),
        (Answer::Stay, vec!["Ramp", "Sign", "Mine"], [false, false]),
    ] {
        let mut taker = bench();
        with_pictures(&mut taker, 90);
        do_(&mut taker, Command::TakeSet(path.clone()));
        let question = taker.view().question.unwrap();
        assert!(
            question.sentence.contains("Ramp, Sign"),
            "{}",
            question.sentence
        );
        do_(&mut taker, Command::Answer(answer));
        let club = taker.club();
        let now: Vec<&str> = club.pictures.iter().map(|p| p.name.as_str()).collect();
        assert_eq!(now, names, "{answer:?}");
        let given = giver.club();
        let is_theirs = [0, 1].map(|i| club.pictures[i].hash() == given.pictures[i].hash());
        assert_eq!(is_theirs, theirs, "{answer:?}");
        assert_eq!(
            daystrand::model::invariants::check(club),
            Vec::<String>::new()
        );
    }
}

#[test]
fn an_activity_that_names_someone_stays_at_home() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Ours.daystrand-set");
    let mut giver = bench();
    let name = giver.club().helpers[0].name.clone();
    let mut first = (*giver.club().activities[0]).clone();
    first.sentences.push(format!("{name} says hello."));
    do_(
        &mut giver,
        Command::Edit(Edit::ChangeActivity(first.clone())),
    );
    do_(
        &mut giver,
        Command::WriteSet(path.clone(), Holds::Activities),
    );
    let set = daystrand::storage::set::read(&path).unwrap();
    assert!(!set.activities.iter().any(|a| a.label == first.label));
    assert!(giver.view().notice.unwrap().sentence.contains(&first.label));
}

#[test]
fn a_set_with_people_in_it_is_not_taken() {
    let club = crate::fixture::without_pictures();
    let path = Path::new("x.daystrand-set");
    let text = String::from_utf8(daystrand::storage::to_bytes(path, &club).unwrap()).unwrap();
    let forged = text.replacen("daystrand-club", "daystrand-set", 1);
    let said = daystrand::storage::set::from_bytes(path, forged.as_bytes()).unwrap_err();
    assert!(said.sentence.contains("people in it"), "{said}");
    let (next, _) = apply(
        &club,
        &Edit::AddPicture(ours("Ramp", Made::Drawing(drawing(9)))),
    )
    .unwrap();
    let plain = daystrand::storage::to_bytes(path, &next).unwrap();
    let said = daystrand::storage::set::from_bytes(path, &plain).unwrap_err();
    assert!(said.sentence.contains("is a club"), "{said}");
}
