//! Words become glyphs, lines and sizes that fit.

use std::sync::Arc;

use daystrand::text::run::{FontId, Line};
use daystrand::text::{self, Direction, Fit, Room, Style};
use daystrand::units::Length;
use proptest::prelude::*;
use unicode_segmentation::UnicodeSegmentation;

fn pt(pt: f64) -> Length {
    Length::pt(pt)
}

fn mm(mm: f64) -> Length {
    Length::mm(mm)
}

fn texts(lines: &[Line]) -> Vec<&str> {
    lines.iter().map(|l| l.text.as_str()).collect()
}

fn room(width: f64, height: f64) -> Room {
    Room {
        width: mm(width),
        height: mm(height),
        max_lines: 2,
        sizes: pt(18.0)..=pt(48.0),
        bold: true,
        direction: Direction::Auto,
    }
}

/// What every line must hold: runs side by side, widths that add up, glyphs that stand for all
/// characters of their run exactly once.
fn assert_sound(line: &Line) {
    let mut x = Length::ZERO;
    for (at, run) in &line.runs {
        assert_eq!(*at, x, "runs lie side by side in {:?}", line.text);
        x += run.width;
        let em = f64::from(text::units_per_em(run.font));
        let advance: i32 = run.glyphs.iter().map(|g| g.advance).sum();
        assert_eq!(run.width, run.size.scale(f64::from(advance) / em));
        let mut spans: Vec<_> = run.glyphs.iter().map(|g| (g.from, g.to)).collect();
        spans.retain(|s| s.0 < s.1);
        spans.sort_unstable();
        let mut end = 0;
        for (from, to) in spans {
            assert_eq!(from, end, "characters of {:?} are left out", run.text);
            assert!(run.text.is_char_boundary(from as usize));
            end = to;
        }
        assert_eq!(end as usize, run.text.len());
    }
    assert_eq!(line.width, x);
}

#[test]
fn kerning_draws_letters_together() {
    let together = text::line("AV", &Style::regular(pt(36.0))).width;
    let a = text::line("A", &Style::regular(pt(36.0))).width;
    let v = text::line("V", &Style::regular(pt(36.0))).width;
    assert!(together < a + v, "{together:?} {a:?} {v:?}");
}

#[test]
fn composed_and_decomposed_letters_are_the_same() {
    let style = Style::regular(pt(20.0));
    assert_eq!(
        text::line("été", &style),
        text::line("e\u{301}te\u{301}", &style)
    );
    assert_eq!(
        text::line("Ắ", &style),
        text::line("A\u{306}\u{301}", &style)
    );
}

#[test]
fn languages_of_the_area_are_all_in_the_bundled_fonts() {
    for words in [
        "Quiet place, then drum – “ready?” 10 % off…",
        "Zażółć gęślą jaźń, ĄĆĘŁŃÓŚŹŻ",
        "Đặt áo phao vào giỏ, nghỉ ở chỗ yên tĩnh",
        "Ko te wai tēnā, āe; Pōwhiri",
        "Čeština, Русский, Українська, Türkçe ığİş",
        "اِلبَس سُترة النجاة ثم اجلس في المكان الهادئ، ١٢٣",
        "گربه، پسر، چتر، ژاله؛ ٹوپی ڈول",
    ] {
        assert_eq!(text::missing(words), [' '; 0], "{words}");
        let line = text::line(words, &Style::bold(pt(18.0)));
        assert_sound(&line);
        assert_eq!(line.text, words);
    }
}

#[test]
fn what_no_font_has_is_seen_and_named() {
    let style = Style::regular(pt(30.0));
    let wrapped = text::wrap("Swim 🏊 now 海🏊", &style, mm(200.0));
    assert_eq!(wrapped.missing, ['🏊', '海']);
    let line = &wrapped.lines[0];
    assert_sound(line);
    assert_eq!(line.text, "Swim 🏊 now 海🏊");
    let substitute = text::line("\u{FFFD}", &style).runs[0].1.glyphs[0].id;
    let glyphs = line.runs.iter().flat_map(|r| &r.1.glyphs);
    assert_eq!(glyphs.filter(|g| g.id == substitute).count(), 3);
    assert!(text::glyph_outline(FontId::Regular, substitute).is_some());
    // A family joined from three people is one thing to a reader, and all three are named.
    let family = text::wrap("👨\u{200D}👩\u{200D}👧", &style, mm(200.0));
    assert_eq!(family.missing, ['👨', '👩', '👧']);
    assert_eq!(family.lines[0].runs[0].1.glyphs.len(), 1);
}

#[test]
fn control_characters_and_line_ends() {
    let style = Style::regular(pt(18.0));
    let wrapped = text::wrap("a\u{7}b\tc\r\nd\u{2028}e\n\nf\r", &style, mm(100.0));
    assert_eq!(texts(&wrapped.lines), ["ab c", "d", "e", "", "f"]);
    assert!(wrapped.missing.is_empty());
    assert_eq!(text::line("one\ntwo", &style).text, "one two");
    assert!(text::wrap("", &style, mm(100.0)).lines.is_empty());
    assert!(
        text::wrap(" \u{200B}\n ", &style, mm(100.0))
            .lines
            .is_empty()
    );
    assert_eq!(text::line("", &style), Line::default());
}

#[test]
fn lines_are_full_and_no_word_is_split() {
    let words = "Put the life jacket on, then wait by the blue flag until the drum stops.";
    let wrapped = text::wrap(words, &Style::regular(pt(18.0)), mm(60.0));
    assert!(!wrapped.split_word);
    assert_eq!(texts(&wrapped.lines).join(" "), words);
    for pair in wrapped.lines.windows(2) {
        assert!(pair[0].width <= mm(60.0));
        let next = pair[1].text.split(' ').next().unwrap();
        let fuller = format!("{} {next}", pair[0].text);
        let fuller = text::line(&fuller, &Style::regular(pt(18.0)));
        assert!(fuller.width > mm(60.0), "{:?} had room", fuller.text);
    }
}

#[test]
fn even_lines_take_no_more_lines_and_are_narrower() {
    let style = Style::bold(pt(24.0));
    let words = "Walk down to the water edge";
    let full = text::wrap(words, &style, mm(85.0));
    let even = text::wrap_evenly(words, &style, mm(85.0));
    assert_eq!(full.lines.len(), even.lines.len());
    let widest = |w: &text::Wrapped| w.lines.iter().map(|l| l.width).max().unwrap();
    assert!(widest(&even) < widest(&full));
    assert_eq!(texts(&even.lines), ["Walk down to", "the water edge"]);
}

#[test]
fn a_word_wider_than_a_line_is_split_between_characters_and_said_so() {
    let style = Style::regular(pt(36.0));
    let wrapped = text::wrap(
        "a Rettungsschwimmerweste e\u{301}e\u{301}",
        &style,
        mm(40.0),
    );
    assert!(wrapped.split_word);
    let all = texts(&wrapped.lines).concat().replace(' ', "");
    assert_eq!(all, "aRettungsschwimmerwesteéé");
    assert!(wrapped.lines.iter().all(|l| l.width <= mm(40.0)));
    // Narrower than one character: one character a line, never an endless loop.
    let thin = text::wrap("abc", &style, Length::ZERO);
    assert_eq!(texts(&thin.lines), ["a", "b", "c"]);
}

#[test]
fn a_soft_hyphen_is_used_only_when_a_word_must_be_split() {
    let style = Style::regular(pt(30.0));
    let word = "Schwimm\u{AD}weste";
    let width = text::line(word, &style).width;
    let whole = text::wrap(&format!("die {word}"), &style, width);
    assert!(!whole.split_word);
    assert_eq!(texts(&whole.lines), ["die", word]);
    let narrower = width - mm(1.0);
    let split = text::wrap(word, &style, narrower);
    assert!(split.split_word);
    assert_eq!(texts(&split.lines), ["Schwimm\u{2010}", "weste"]);
    assert!(split.lines.iter().all(|l| l.width <= narrower));
}

#[test]
fn arabic_joins_runs_right_to_left_and_looks_as_large() {
    let style = Style::regular(pt(30.0));
    let line = text::line("بحر", &style);
    assert_sound(&line);
    let (_, run) = &line.runs[0];
    assert_eq!(run.font, FontId::Arabic);
    assert_eq!(run.size, pt(40.0));
    let from: Vec<_> = run.glyphs.iter().map(|g| g.from).collect();
    assert!(
        from.is_sorted_by(|a, b| a >= b),
        "painted last letter first: {from:?}"
    );
    // Joined letters are other glyphs than letters alone.
    let alone: Vec<_> = ["ب", "ح", "ر"]
        .map(|l| text::line(l, &style).runs[0].1.glyphs[0].id)
        .into();
    assert!(
        run.glyphs
            .iter()
            .all(|g| g.id != alone[0] && g.id != alone[1])
    );
}

#[test]
fn mixed_directions_are_painted_in_visual_order() {
    // UAX #9: in a right-to-left paragraph the number stays left to right, the words after it
    // stand further left.
    let line = text::line("بحر 7:30 ab", &Style::regular(pt(20.0)));
    let order: Vec<_> = line.runs.iter().map(|(_, r)| r.text.trim()).collect();
    assert_eq!(order, ["ab", "", "7:30", "بحر"]);
    let ltr = Style {
        direction: Direction::LeftToRight,
        ..Style::regular(pt(20.0))
    };
    let line = text::line("بحر 7:30 ab", &ltr);
    let order: Vec<_> = line.runs.iter().map(|(_, r)| r.text.trim()).collect();
    assert_eq!(order.last(), Some(&"ab"), "{order:?}");
    // A full stop at the end of a right-to-left paragraph stands at the left.
    let rtl = Style {
        direction: Direction::RightToLeft,
        ..Style::regular(pt(20.0))
    };
    let line = text::line("Stop.", &rtl);
    assert_eq!(&*line.runs[0].1.text, ".");
}

#[test]
fn a_set_gets_the_one_largest_size_at_which_all_fit() {
    let labels = [
        "Arrive",
        "Life jacket on",
        "Paddle",
        "Quiet place",
        "Finished",
    ];
    let room = room(50.0, 22.0);
    let fit = text::fit_set(&labels, &room);
    assert_eq!(fit.overfull, [0usize; 0]);
    assert_eq!(fit.labels.len(), labels.len());
    for (lines, label) in fit.labels.iter().zip(labels) {
        assert_eq!(texts(lines).join(" "), label);
        assert!(lines.iter().all(|l| l.width <= room.width));
        assert!(fit.height(lines.len()) <= room.height);
    }
    // Half a point more, and some label no longer fits.
    let larger = Length::pt((fit.size.to_pt() * 2.0).round() / 2.0 + 0.5);
    assert!(larger <= *room.sizes.end());
    let more = Room {
        sizes: larger..=larger,
        ..room
    };
    assert!(!text::fit_set(&labels, &more).overfull.is_empty());
}

#[test]
fn a_set_never_shrinks_below_the_smallest_size() {
    let labels = ["Sing", "Rettungsschwimmerwestenausgabe", "Swim"];
    let fit = text::fit_set(&labels, &room(40.0, 30.0));
    assert_eq!((fit.size, fit.overfull), (pt(18.0), vec![1]));
    assert_eq!(texts(&fit.labels[1]).concat(), labels[1]);
    // Too little height and too many lines are the same.
    assert_eq!(text::fit_set(&["Sing"], &room(40.0, 3.0)).overfull, [0]);
    let three = text::fit_set(&["one\ntwo\nthree"], &room(40.0, 90.0));
    assert_eq!(three.overfull, [0]);
}

#[test]
fn a_set_stops_at_the_largest_size() {
    let fit = text::fit_set(&["Go", ""], &room(200.0, 100.0));
    assert_eq!((fit.size, fit.labels[1].len()), (pt(48.0), 0));
    let none = text::fit_set(&[], &room(1.0, 1.0));
    assert_eq!((none.size, none.overfull.len()), (pt(48.0), 0));
}

#[test]
fn stacked_marks_of_neighbouring_lines_do_not_touch() {
    let fit = text::fit_set(&["ẮNG Ặ ẤP"], &room(28.0, 60.0));
    assert!(fit.labels[0].len() > 1);
    assert!(fit.leading >= fit.above + fit.below - Length::um(1));
    for line in &fit.labels[0] {
        let ink = text::ink(line);
        assert!(ink.above <= fit.above && ink.below <= fit.below);
    }
}

#[test]
fn equal_words_give_equal_lines_from_any_thread() {
    let words = Arc::new("Wait by the rail · بحر 🏊".to_owned());
    let make = |words: &str| text::wrap(words, &Style::bold(pt(22.0)), mm(50.0));
    let here = make(&words);
    let threads: Vec<_> = (0..4)
        .map(|_| {
            let words = Arc::clone(&words);
            std::thread::spawn(move || make(&words))
        })
        .collect();
    for t in threads {
        assert_eq!(t.join().unwrap(), here);
    }
}

fn any_words() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[a-zA-Zéß \u{AD}\u{A0}-]{0,60}",
        "[ابحرسى 0-9a-z().،\u{200F}\u{202E}\u{202C}\u{2067}\u{2069}]{0,40}",
    ]
}

proptest! {
    #![proptest_config(crate::chance::cases(256))]

    #[test]
    fn nothing_is_lost_and_nothing_panics(words in any_words(), width in 0.0..120.0f64) {
        let style = Style::regular(pt(18.0));
        assert_sound(&text::line(&words, &style));
        let wrapped = text::wrap(&words, &style, mm(width));
        for line in &wrapped.lines {
            assert_sound(line);
            let one = line.text.graphemes(true).count() <= 1;
            prop_assert!(line.width <= mm(width) || one, "{:?} is too wide", line.text);
        }
        let ink = |s: &str| {
            let kept = |c: &char| !c.is_whitespace() && !matches!(c, '\u{AD}' | '\u{2010}' | '\u{200B}');
            s.chars().filter(kept).collect::<String>()
        };
        let clean = text::clean(&words);
        prop_assert_eq!(ink(&texts(&wrapped.lines).concat()), ink(&clean));
        let even = text::wrap_evenly(&words, &style, mm(width));
        prop_assert!(even.lines.len() <= wrapped.lines.len() || wrapped.split_word);
    }

    #[test]
    fn a_fit_keeps_its_promises(
        labels in prop::collection::vec("[A-Za-z ]{0,24}", 0..6),
        width in 5.0..80.0f64,
        height in 4.0..40.0f64,
    ) {
        let labels: Vec<&str> = labels.iter().map(String::as_str).collect();
        let room = room(width, height);
        let fit: Fit = text::fit_set(&labels, &room);
        prop_assert!(room.sizes.contains(&fit.size));
        prop_assert!(fit.overfull.is_empty() || fit.size == *room.sizes.start());
        for (i, lines) in fit.labels.iter().enumerate() {
            let fits = lines.iter().all(|l| l.width <= room.width)
                && lines.len() <= room.max_lines
                && fit.height(lines.len()) <= room.height;
            prop_assert!(fits || fit.overfull.contains(&i));
        }
    }
}
