//! The library as the rest of the program uses it: by name, by word, in variants.

use std::sync::Arc;

use daystrand::model::ids::SymbolId;
use daystrand::model::people::Skin;
use daystrand::symbols::art::{Art, Node};
use daystrand::symbols::library::library;
use daystrand::symbols::palette;
use daystrand::symbols::variant::{Ink, Variant, tones, vary};
use daystrand::units::colour::Rgb;

use super::paint;

fn first_words(found: &[&daystrand::symbols::library::Symbol]) -> Vec<String> {
    found.iter().map(|s| s.label.clone()).collect()
}

#[test]
fn nothing_typed_shows_all_in_index_order() {
    let all: Vec<&SymbolId> = library().all().iter().map(|s| &s.id).collect();
    let found: Vec<&SymbolId> = library().search("  ").iter().map(|s| &s.id).collect();
    assert_eq!(found, all);
    assert!(!all.is_empty());
}

#[test]
fn every_symbol_is_found_first_by_its_own_label() {
    for s in library().all() {
        for typed in [s.label.clone(), s.label.to_uppercase()] {
            let found = library().search(&typed);
            assert_eq!(found.first().map(|f| &f.id), Some(&s.id), "{typed}");
        }
        for word in &s.words {
            let found = library().search(word);
            assert!(found.iter().any(|f| f.id == s.id), "{} by {word}", s.id);
        }
    }
}

#[test]
fn all_words_must_fit_and_accents_and_case_do_not_matter() {
    let s = library()
        .all()
        .iter()
        .find(|s| s.label.contains(' '))
        .expect("a label of two words");
    let mut words: Vec<&str> = s.label.split(' ').collect();
    words.reverse();
    let turned = words.join(" ");
    assert!(
        library().search(&turned).iter().any(|f| f.id == s.id),
        "{turned}"
    );
    assert!(library().search(&format!("{} zzqx", s.label)).is_empty());
    let accented = s.label.replace('a', "\u{e1}").replace('o', "o\u{308}");
    assert_eq!(
        first_words(&library().search(&accented)),
        first_words(&library().search(&s.label))
    );
}

#[test]
fn an_unknown_name_gives_the_empty_square() {
    let drawn = library().art(&SymbolId::new("no such thing"), Variant::default());
    assert!(!drawn.known);
    assert_eq!(drawn.id.as_str(), "no such thing");
    let ink = paint::ink_box(&paint::svg(&paint::to_svg(&drawn.art), 240)).expect("it is seen");
    assert!(
        ink[0] > 20 && ink[2] < 220 && ink[2] - ink[0] > 160,
        "{ink:?}"
    );
    assert!(!library().mark_art(&SymbolId::new("nobody")).known);
}

#[test]
fn a_variant_is_drawn_once_and_named() {
    let has_skin = |a: &Art| colours(a).contains(&palette::SKIN);
    for s in library().all() {
        let at = |skin, ink| library().art(&s.id, Variant { skin, ink });
        let (a, b) = (at(Skin::Deep, Ink::Colour), at(Skin::Deep, Ink::Colour));
        assert!(Arc::ptr_eq(&a.art, &b.art));
        let warm = at(Skin::Warm, Ink::Colour);
        if has_skin(&warm.art) {
            assert_eq!((warm.variant, a.variant), ("warm", "deep"));
            assert!(!has_skin(&a.art), "{}", s.id);
        } else {
            assert_eq!(warm.variant, "plain");
            assert!(Arc::ptr_eq(&a.art, &warm.art));
        }
    }
}

#[test]
fn grey_has_no_colour_and_the_same_luminance() {
    for s in library().all() {
        let colour = library().art(&s.id, Variant::default()).art;
        let ink = Ink::Grey;
        let grey = library()
            .art(
                &s.id,
                Variant {
                    ink,
                    skin: Skin::Warm,
                },
            )
            .art;
        for (c, g) in colours(&colour).iter().zip(colours(&grey)) {
            assert!(g.0 == g.1 && g.1 == g.2, "{}", s.id);
            assert!(
                (c.luminance() - g.luminance()).abs() < 0.006,
                "{}: {c:?} {g:?}",
                s.id
            );
        }
    }
}

#[test]
fn an_outline_is_mostly_white_and_keeps_its_lines() {
    for s in library().all() {
        let ink = Ink::Outline;
        let outline = library()
            .art(
                &s.id,
                Variant {
                    ink,
                    skin: Skin::Warm,
                },
            )
            .art;
        let allowed = |c: &Rgb| c.to_grey().lightness() > 84.0 || *c == palette::INK;
        assert!(colours(&outline).iter().all(allowed), "{}", s.id);
        let dark = |art: &Art| {
            let map = paint::svg(&paint::to_svg(art), 240);
            let dark = map.pixels().iter().filter(|p| p.green() < 96).count();
            dark as f64 / map.pixels().len() as f64
        };
        let share = dark(&outline);
        assert!(
            (0.02..0.40).contains(&share),
            "{}: {share:.3} of it is dark",
            s.id
        );
    }
}

/// WCAG 2.2 SC 1.4.11 asks 3:1 of graphics needed to understand the content. Eyes and mouth are
/// ink; the deepest skin is held to 2.5:1 so that it stays a deep skin (our own decision), and nose
/// lines, which nobody needs, to 2:1 everywhere.
#[test]
fn faces_can_be_read_on_every_skin() {
    for skin in Skin::ALL {
        let (face, marks) = tones(skin);
        let least = if skin == Skin::Deep { 2.5 } else { 3.0 };
        assert!(
            palette::INK.contrast(face) >= least,
            "{skin:?} {}",
            palette::INK.contrast(face)
        );
        assert!(
            marks.contrast(face) >= 2.0,
            "{skin:?} {}",
            marks.contrast(face)
        );
    }
    let light: Vec<f64> = Skin::ALL.iter().map(|s| tones(*s).0.lightness()).collect();
    assert!(light.windows(2).all(|w| w[0] - w[1] >= 8.0), "{light:?}");
}

#[test]
fn varying_keeps_every_shape_in_place() {
    for s in library().all() {
        let warm = library().art(&s.id, Variant::default()).art;
        for ink in [Ink::Colour, Ink::Grey] {
            let other = vary(
                &warm,
                Variant {
                    skin: Skin::Light,
                    ink,
                },
            );
            assert_eq!(warm.nodes.len(), other.nodes.len());
        }
    }
}

fn colours(art: &Art) -> Vec<Rgb> {
    fn walk(nodes: &[Node], out: &mut Vec<Rgb>) {
        for node in nodes {
            match node {
                Node::Shape(s) => {
                    out.extend(s.fill);
                    out.extend(s.stroke.map(|s| s.colour));
                }
                Node::Clipped { nodes, .. } => walk(nodes, out),
            }
        }
    }
    let mut out = Vec::new();
    walk(&art.nodes, &mut out);
    out
}

/// Writes `target/symbols-<ink>.png`: every symbol in every skin, to look at.
#[test]
#[ignore = "makes pictures to look at; checks nothing"]
fn sheets() {
    let side = 160;
    for ink in Ink::ALL {
        let rows = library().all().len() as u32;
        let mut sheet = image::RgbaImage::new(side * 4, side * rows.max(1));
        for (row, s) in library().all().iter().enumerate() {
            for (column, skin) in Skin::ALL.into_iter().enumerate() {
                let art = library().art(&s.id, Variant { skin, ink }).art;
                let map = paint::svg(&paint::to_svg(&art), side);
                let cell = image::RgbaImage::from_raw(side, side, map.take()).expect("a square");
                let at = (
                    i64::from(side) * column as i64,
                    i64::from(side) * row as i64,
                );
                image::imageops::replace(&mut sheet, &cell, at.0, at.1);
            }
        }
        let path = format!("{}/target/symbols-{ink:?}.png", env!("CARGO_MANIFEST_DIR"));
        sheet.save(path).expect("target can be written");
    }
}
