//! A story as one HTML file: all that is read is in it, nothing goes out of it, nothing private is
//! on it.

use std::collections::BTreeSet;
use std::sync::Arc;

use base64::Engine as _;
use daystrand::check::privacy::Facts;
use daystrand::export::html::policy::source;
use daystrand::layout::{InkChoice, Request, SheetKind, Turn, lay_out};
use daystrand::model::board;
use daystrand::model::club::{Club, Paper};
use daystrand::model::people::Participant;
use daystrand::model::privacy::Class;
use daystrand::model::telling::{Pages, Second};
use daystrand::story::{PageKind, tell_for};
use daystrand::text::run::FontId;
use daystrand::workbench::telephone;
use rustybuzz::ttf_parser::Face;

use crate::fixture;

/// The file of a participant of a session.
fn file(club: &Club, session: usize, who: usize) -> String {
    let request = Request {
        session: club.sessions[session].id,
        participants: vec![club.participants[who].id],
        kinds: vec![SheetKind::Story],
        paper: Paper::A4,
        turn: Turn::AsSuits,
        ink: InkChoice::Colour,
        only_missing: false,
    };
    let sheets = lay_out(club, &request).sheets;
    telephone::file(club, &request, &sheets[0]).unwrap()
}

fn first(club: &mut Club) -> &mut Participant {
    Arc::make_mut(&mut club.participants[0])
}

/// A page a step, whoever was here before.
fn by_steps() -> Club {
    let mut club = fixture::club();
    first(&mut club).telling.pages = Pages::Steps;
    club
}

/// What stands between two marks, at every place.
fn between<'a>(text: &'a str, open: &str, close: &str) -> Vec<&'a str> {
    let pieces = text.split(open).skip(1);
    pieces
        .filter_map(|p| Some(p.split_once(close)?.0))
        .collect()
}

/// Every tag, without what stands in the style and the script.
fn tags(html: &str) -> Vec<&str> {
    let body = html.split("</script>").last().unwrap();
    between(body, "<", ">")
}

/// The words that are seen.
fn words(html: &str) -> String {
    let body = html.split("</script>").last().unwrap();
    let pieces = body.split('<').filter_map(|p| Some(p.split_once('>')?.1));
    let all: Vec<&str> = pieces.filter(|p| !p.trim().is_empty()).collect();
    unescaped(&all.join("\n"))
}

fn unescaped(text: &str) -> String {
    let all = [
        ("&lt;", "<"),
        ("&gt;", ">"),
        ("&quot;", "\""),
        ("&#39;", "'"),
        ("&amp;", "&"),
    ];
    all.iter()
        .fold(text.to_owned(), |t, (from, to)| t.replace(from, to))
}

/// The file without the letters inside it, whose code may hold any four letters by chance.
fn without_data(html: &str) -> String {
    let mut pieces = html.split("url(data:");
    let mut out = pieces.next().unwrap().to_owned();
    for piece in pieces {
        out += piece.split_once(')').unwrap().1;
    }
    out
}

#[test]
fn nothing_a_person_typed_is_taken_for_markup() {
    let odd = "</title></script><b onclick=\"x\">\"Tom\" & 'Jo'</b>";
    let mut club = by_steps();
    first(&mut club).name = odd.into();
    fixture::session_mut(&mut club).title = odd.into();
    fixture::session_mut(&mut club).place = odd.into();
    for activity in &mut club.activities {
        let activity = Arc::make_mut(activity);
        activity.label = format!("{odd}\u{7}{}", activity.label);
        activity.sentences = vec![odd.into()];
    }
    let html = file(&club, 0, 0);
    assert!(!html.contains("<b onclick") && !html.contains('\u{7}'));
    for once in ["<script>", "</script>", "<style>", "<title>", "</title>"] {
        assert_eq!(html.matches(once).count(), 1, "{once}");
    }
    assert!(words(&html).contains(odd));
    let odd_tag = |t: &&str| t.contains("=\"\"Tom") || t.starts_with("b onclick");
    assert_eq!(tags(&html).into_iter().find(odd_tag), None);
}

#[test]
fn nothing_is_fetched_and_no_attribute_runs() {
    for (session, who) in [(0, 0), (1, 1)] {
        let html = without_data(&file(&fixture::club(), session, who));
        assert!(
            !html
                .replace("http-equiv", "")
                .to_lowercase()
                .contains("http")
        );
        for word in [
            "@import", "src=", "import(", "fetch(", "XMLHttp", "storage", "cookie", "//www",
        ] {
            assert!(!html.contains(word), "{word}");
        }
        for target in between(&html, "url(", ")") {
            assert!(target.starts_with('#'), "{target}");
        }
        for target in between(&html, "href=\"", "\"") {
            assert!(target.starts_with('#'), "{target}");
        }
        for tag in tags(&html) {
            let on = tag
                .split_whitespace()
                .find(|a| a.starts_with("on") && a.contains('='));
            assert_eq!(on, None, "{tag}");
            assert!(!tag.contains("style="), "not allowed by the policy: {tag}");
        }
    }
}

/// FIPS 180-4, the example "abc" of the Secure Hash Standard; as base64 by hand. Content Security
/// Policy Level 3, 2.3.1: a source is the name of the hash, a hyphen and the base64.
#[test]
fn the_policy_names_just_what_is_in_the_file() {
    assert_eq!(
        source("abc"),
        "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="
    );
    let html = file(&fixture::club(), 0, 0);
    let policy = unescaped(between(&html, "Content-Security-Policy\" content=\"", "\"")[0]);
    let style = between(&html, "<style>", "</style>");
    let script = between(&html, "<script>", "</script>");
    assert_eq!((style.len(), script.len()), (1, 1));
    let wanted = [
        "default-src 'none'".to_owned(),
        format!("style-src '{}'", source(style[0])),
        format!("script-src '{}'", source(script[0])),
        "font-src data:".to_owned(),
        "base-uri 'none'".to_owned(),
        "form-action 'none'".to_owned(),
    ];
    assert_eq!(policy.split("; ").collect::<Vec<_>>(), wanted);
    assert!(html.find("Content-Security-Policy") < html.find("<style>"));
}

#[test]
fn every_step_of_the_board_is_there_in_order_with_its_words() {
    let club = by_steps();
    let (session, who) = (&club.sessions[0], &club.participants[0]);
    let html = file(&club, 0, 0);
    let headings: Vec<String> = between(&html, "<h2 id=\"h", "</h2>")
        .iter()
        .map(|h| unescaped(h.split_once('>').unwrap().1))
        .collect();
    let board = board::derive(&club, session, who.id);
    assert!(board.steps.len() > 5);
    let mut rest = headings.iter();
    for step in &board.steps {
        assert!(
            rest.any(|h| *h == step.label),
            "{} in {headings:?}",
            step.label
        );
    }
    let words = words(&html);
    let mut rest = words.as_str();
    let story = tell_for(&club, session, who);
    for sentence in story.sentences() {
        let (_, after) = rest
            .split_once(sentence)
            .unwrap_or_else(|| panic!("{sentence}"));
        rest = after;
    }
    let done = html.matches("class=\"done\"").count();
    let today = story
        .pages
        .iter()
        .filter(|p| p.kind == PageKind::Step)
        .count();
    assert_eq!(done, today, "a button for each step that is today");
}

#[test]
fn what_is_not_today_is_said_and_has_no_button() {
    let mut club = by_steps();
    let session = fixture::session_mut(&mut club);
    session.timetable[2].off = Some(Default::default());
    let html = file(&club, 0, 0);
    let page = html
        .split("<section")
        .find(|s| s.contains("class=\"tile off\""))
        .unwrap();
    assert!(
        page.contains("Not today</span>") && page.contains("is not today.</p>"),
        "{page}"
    );
    assert!(!page.contains("<button"));
}

#[test]
fn the_day_in_small_is_there_for_someone_who_was_here_before() {
    let club = fixture::club();
    let who = (0..club.participants.len()).find(|i| {
        let who = &club.participants[*i];
        let story = tell_for(&club, &club.sessions[1], who);
        story.pages.iter().any(|p| !p.small.is_empty())
    });
    let who = who.expect("someone in the demo comes again");
    let html = file(&club, 1, who);
    let board = board::derive(&club, &club.sessions[1], club.participants[who].id);
    let day = between(&html, "<ol class=\"day\">", "</ol>")[0];
    let labels: Vec<String> = between(day, "<p class=\"label\"", "</p>")
        .iter()
        .map(|l| unescaped(l.split_once('>').unwrap().1))
        .collect();
    let wanted: Vec<&String> = board.steps.iter().map(|s| &s.label).collect();
    assert_eq!(labels.iter().collect::<Vec<_>>(), wanted);
}

/// A club where the first participant's story is in Arabic too, as far as the title and two
/// sentences.
fn in_two_languages(first_in_order: bool, checked_by: &str) -> (Club, String, String) {
    let mut club = by_steps();
    let story = tell_for(&club, &club.sessions[0], &club.participants[0]);
    let page = story
        .pages
        .iter()
        .find(|p| p.kind == PageKind::Step)
        .unwrap();
    let (heading, sentence) = (page.heading.clone(), page.lines[0].text.clone());
    let texts = [
        (heading, "اليوم".to_owned()),
        (sentence.clone(), "أضع حقيبتي هنا.".to_owned()),
    ];
    first(&mut club).telling.second = Some(Second {
        language: "ar".into(),
        first: first_in_order,
        checked_by: checked_by.into(),
        texts: texts.into_iter().collect(),
    });
    let html = file(&club, 0, 0);
    (club, html, sentence)
}

#[test]
fn a_second_language_bears_its_name_and_direction_in_the_familys_order() {
    let (_, html, sentence) = in_two_languages(false, "");
    let arabic = "<p lang=\"ar\" dir=\"rtl\">أضع حقيبتي هنا.</p>";
    assert!(html.contains("<p class=\"heading\" lang=\"ar\" dir=\"rtl\">اليوم</p>"));
    assert!(html.find(&sentence) < html.find(arabic));
    assert!(words(&html).contains("not yet checked by a reader"));
    let (_, html, sentence) = in_two_languages(true, "R.");
    assert!(html.find(&sentence) > html.find(arabic) && html.contains(arabic));
    assert!(!words(&html).contains("not yet checked"));
    assert!(
        !words(&html).contains("R.\n"),
        "who read it through is not named"
    );
}

#[test]
fn the_same_story_gives_the_same_bytes() {
    let made: BTreeSet<String> = (0..3).map(|_| in_two_languages(false, "").1).collect();
    assert_eq!(made.len(), 1);
}

#[test]
fn nothing_that_others_may_not_see_is_in_it() {
    let mut club = fixture::club();
    let facts = Facts::of(&club);
    assert!(!facts.is_empty());
    for who in 0..club.participants.len() {
        let person = Arc::make_mut(&mut club.participants[who]);
        person.telling.pages = Pages::Steps;
        let private: Vec<String> = person
            .profile
            .filled()
            .filter(|(field, _)| field.class() > Class::Public)
            .map(|(_, text)| text.for_owner().to_owned())
            .collect();
        let html = unescaped(&without_data(&file(&club, 0, who)));
        assert!(facts.in_text(&html, Class::Public).is_empty());
        for text in private.iter().filter(|t| t.len() > 12) {
            assert!(!html.contains(text), "{text}");
        }
    }
    let html = file(&club, 0, 0);
    let title = between(&html, "<title>", "</title>")[0];
    let story = tell_for(&club, &club.sessions[0], &club.participants[0]);
    assert_eq!(unescaped(title), story.title);
    let metas: Vec<&str> = between(&html, "<meta ", "=").into_iter().collect();
    assert_eq!(
        metas,
        ["charset", "http-equiv", "name", "name", "name"],
        "no author, no date"
    );
}

/// The fonts in a file, with their families and weights.
fn fonts(html: &str) -> Vec<(String, Vec<u8>)> {
    let faces = between(html, "@font-face{", "format(");
    let decode = |face: &&str| {
        let name = face.split(";").take(2).collect::<Vec<_>>().join(";");
        let data = face
            .split_once("base64,")
            .unwrap()
            .1
            .trim_end_matches([' ', ')']);
        let bytes = base64::engine::general_purpose::STANDARD
            .decode(data)
            .unwrap();
        (name, bytes)
    };
    faces.iter().map(decode).collect()
}

/// Advances of a line set in a font, as HarfBuzz shapes it, which is what browsers use.
fn set(font: &[u8], line: &str) -> Vec<i32> {
    let face = rustybuzz::Face::from_slice(font, 0).unwrap();
    let mut buffer = rustybuzz::UnicodeBuffer::new();
    buffer.push_str(line);
    let set = rustybuzz::shape(&face, &[], buffer);
    set.glyph_positions()
        .iter()
        .flat_map(|p| [p.x_advance, p.x_offset, p.y_offset])
        .collect()
}

#[test]
fn its_letters_are_those_of_the_story_and_set_as_by_the_whole_font() {
    let (_, html, sentence) = in_two_languages(false, "");
    let fonts = fonts(&html);
    let names: Vec<&str> = fonts.iter().map(|(n, _)| n.as_str()).collect();
    let wanted = [
        ("Story", 400),
        ("Story", 700),
        ("Story Arabic", 400),
        ("Story Arabic", 700),
    ]
    .map(|(family, weight)| format!("font-family:\"{family}\";font-weight:{weight}"));
    assert_eq!(names, wanted);
    let whole = [
        FontId::Regular,
        FontId::Bold,
        FontId::Arabic,
        FontId::ArabicBold,
    ];
    for ((name, bytes), id) in fonts.iter().zip(whole) {
        let whole = Face::parse(daystrand::text::bytes(id), 0).unwrap();
        let cut = Face::parse(bytes, 0).unwrap();
        for c in words(&html)
            .chars()
            .filter(|c| whole.glyph_index(*c).is_some())
        {
            assert!(cut.glyph_index(c).is_some(), "{name} lost {c:?}");
        }
        assert!(
            cut.number_of_glyphs() < whole.number_of_glyphs() / 4,
            "{name}"
        );
        let line = if name.contains("Arabic") {
            "أضع حقيبتي هنا."
        } else {
            &sentence
        };
        assert_eq!(
            set(bytes, line),
            set(daystrand::text::bytes(id), line),
            "{name}"
        );
    }
    let english = file(&fixture::club(), 0, 0);
    assert_eq!(
        self::fonts(&english).len(),
        2,
        "no Arabic letters where there are none"
    );
    // Nearly all of it drawings.
    assert!(english.len() < 600_000, "{} bytes", english.len());
}
