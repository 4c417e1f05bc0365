//! The words sheet: large print, generous lines, flush left, whole words, whole verses.

use daystrand::layout::{Request, Sheet, SheetKind};
use daystrand::model::club::{Club, Paper};
use daystrand::model::ids::SongId;
use daystrand::model::song::Song;
use daystrand::page::dump::dump;
use daystrand::page::{Item, Role};

use super::{all, blocks, check, lay_out, texts, words_on};
use crate::fixture;

fn sheets(club: &Club, paper: Paper) -> Vec<Sheet> {
    let request = Request {
        kinds: vec![SheetKind::Words],
        paper,
        ..all(club)
    };
    let laid = lay_out(club, &request);
    check(club, &request, &laid, "words sheet");
    laid.sheets
}

fn with_songs(songs: &[(&str, String)]) -> Club {
    let mut club = fixture::club();
    let song = |(i, (title, words)): (usize, &(&str, String))| Song {
        id: SongId(90_000 + i as u32),
        words: words.clone(),
        ..Song::new(title)
    };
    club.songs = songs.iter().enumerate().map(|s| song(s).into()).collect();
    club
}

#[test]
fn a_club_without_songs_has_no_words_sheet() {
    assert!(sheets(&with_songs(&[]), Paper::A4).is_empty());
}

/// The UK Association for Accessible Formats: large print of 16 points, ideally 18, flush left,
/// words not split. The American Council of the Blind: lines one and a half apart.
#[test]
fn words_are_large_open_and_flush_left() {
    let club = fixture::club();
    for paper in Paper::ALL {
        let sheet = sheets(&club, paper).remove(0);
        let song = &club.songs[0];
        let said = words_on(&sheet);
        let flat = |t: &str| t.split_whitespace().collect::<Vec<_>>().join(" ");
        for line in song.verses().concat() {
            assert!(flat(&said).contains(&flat(line)), "{line} on {paper:?}");
        }
        for (page, block) in blocks(&sheet).filter(|(_, b)| b.role == Role::Paragraph) {
            let lines: Vec<_> = texts(block).filter(|(_, pt, _)| *pt > 14.0).collect();
            let baselines = block.items.iter().filter_map(|i| match i {
                Item::Text { at, line, .. } if line.runs[0].1.size.to_pt() > 14.0 => Some(*at),
                _ => None,
            });
            let baselines: Vec<_> = baselines.collect();
            for (at, pt, words) in &lines {
                assert!(*pt >= 18.0, "{words} at {pt} on {paper:?}");
                assert_eq!(at.x, lines[0].0.x, "{words}");
                assert!(!words.trim_end().ends_with('-'), "{words}");
            }
            for two in baselines.windows(2) {
                let apart = (two[1].y - two[0].y).to_pt();
                assert!(
                    apart >= lines[0].1 * 1.5 - 0.01,
                    "{apart} on {}",
                    page.title
                );
            }
        }
    }
}

#[test]
fn a_verse_and_a_whole_song_stay_on_a_page_where_they_fit() {
    let verse = |n: usize, lines: usize| -> String {
        (0..lines).map(|l| format!("verse{n} line{l}\n")).collect()
    };
    let long: Vec<String> = (0..9).map(|n| verse(n, 5)).collect();
    let short: Vec<String> = (20..22).map(|n| verse(n, 6)).collect();
    let club = with_songs(&[
        ("Long", long.join("\n")),
        ("Short", short.join("\n")),
        ("Other", short.join("\n").replace("verse2", "verse3")),
    ]);
    let sheet = sheets(&club, Paper::A4).remove(0);
    let pages: Vec<String> = sheet.pages.iter().map(dump).collect();
    assert!(pages.len() > 2);
    for n in (0..9).chain([20, 21, 30, 31]) {
        let first = pages
            .iter()
            .position(|p| p.contains(&format!("verse{n} line0")));
        let last = pages
            .iter()
            .position(|p| p.contains(&format!("verse{n} line4")));
        assert_eq!(first, last, "verse {n}");
        assert!(first.is_some());
    }
    let page_of = |words: &str| pages.iter().position(|p| p.contains(words));
    assert_eq!(
        page_of("Short"),
        page_of("verse21 line5"),
        "a song stays whole"
    );
    assert_eq!(
        page_of("Other"),
        page_of("verse31 line5"),
        "a song stays whole"
    );
}

#[test]
fn a_verse_longer_than_a_page_goes_on_and_a_song_without_words_is_reported() {
    let endless: String = (0..90).map(|l| format!("line{l} of it\n")).collect();
    let club = with_songs(&[("Endless", endless), ("Empty", String::new())]);
    let request = Request {
        kinds: vec![SheetKind::Words],
        ..all(&club)
    };
    let laid = lay_out(&club, &request);
    check(&club, &request, &laid, "words sheet");
    let text = words_on(&laid.sheets[0]);
    for l in 0..90 {
        assert_eq!(
            text.matches(&format!("line{l} of it")).count(),
            1,
            "line {l}"
        );
    }
    let empty = laid
        .findings
        .iter()
        .filter(|f| f.sentence.contains("“Empty”"));
    assert_eq!(empty.count(), 1);
}

#[test]
fn the_picture_of_the_activity_stands_beside_the_title() {
    let club = fixture::club();
    let sheet = sheets(&club, Paper::A4).remove(0);
    let figures = blocks(&sheet).filter(|(_, b)| matches!(b.role, Role::Figure { .. }));
    assert_eq!(figures.count(), 1);
    let mut plain = club.clone();
    std::sync::Arc::make_mut(&mut plain.songs[0]).activity = None;
    let sheet = sheets(&plain, Paper::A4).remove(0);
    let figures = blocks(&sheet).filter(|(_, b)| matches!(b.role, Role::Figure { .. }));
    assert_eq!(figures.count(), 0);
}
