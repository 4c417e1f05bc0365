//! What a desktop is told: that the entry, the file types and the icons say the same as the program,
//! and that the small pictures are the drawings. `UPDATE_GOLDEN=1` paints them anew.

use std::fs;
use std::path::{Path, PathBuf};

use daystrand::cli::table::VERBS;
use daystrand::storage::{self, set};
use daystrand::ui::program_icon::{painted, program_icon};
use image::RgbaImage;

use crate::fixture::calm;

/// Sides in pixels that Debian's desktops ask for; up to the first number the simpler drawing is used.
const SMALL: u32 = 24;
const SIDES: [u32; 8] = [16, 22, 24, 32, 48, 64, 128, 256];
const ICONS: [(&str, &str); 3] = [
    ("daystrand", "apps"),
    ("application-x-daystrand-club", "mimetypes"),
    ("application-x-daystrand-set", "mimetypes"),
];

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/desktop")
}

fn text(name: &str) -> String {
    fs::read_to_string(folder().join(name)).unwrap()
}

/// The value of a key of the desktop entry.
fn entry(key: &str) -> String {
    let text = text("daystrand.desktop");
    let found = text
        .lines()
        .find_map(|l| l.strip_prefix(&format!("{key}=")));
    found.unwrap_or_else(|| panic!("no {key}")).to_owned()
}

/// The type of file for names that end so, from what the MIME database is told.
fn mime_type(ending: &str) -> String {
    let xml = text("daystrand.xml");
    let types = xml.split("<mime-type type=\"").skip(1);
    let mut fitting = types.filter(|t| t.contains(&format!("<glob pattern=\"*.{ending}\"/>")));
    let found = fitting.next().unwrap().split('"').next().unwrap();
    assert!(fitting.next().is_none());
    found.to_owned()
}

#[test]
fn the_entry_opens_our_files_with_the_program() {
    assert_eq!(entry("Exec"), "daystrand open %f");
    assert!(VERBS.iter().any(|v| v.word == "open"));
    // Opened by itself, a set is not taken in: the window says where that is done.
    let types = [storage::EXTENSION, set::SET_EXTENSION].map(|e| mime_type(e) + ";");
    assert_eq!(entry("MimeType"), types.concat());
    assert_eq!(entry("Icon"), ICONS[0].0);
    assert!(text("daystrand.metainfo.xml").contains("<id>daystrand</id>"));
}

#[test]
fn types_of_files_have_an_icon_of_their_name() {
    let types = [mime_type(storage::EXTENSION), mime_type(set::SET_EXTENSION)];
    assert_eq!(types.map(|t| t.replace('/', "-")), [ICONS[1].0, ICONS[2].0]);
}

/// A file whose name was changed is known by how it begins: within the first bytes that are looked at.
#[test]
fn files_are_known_by_how_they_begin() {
    let dir = tempfile::tempdir().unwrap();
    let club = dir.path().join("a.daystrand");
    storage::save(&club, &calm()).unwrap();
    let given = dir.path().join("a.daystrand-set");
    set::write(&given, &calm()).unwrap();
    let xml = text("daystrand.xml");
    for path in [club, given] {
        let content = fs::read_to_string(&path).unwrap();
        let ending = path.extension().unwrap().to_str().unwrap();
        let after = xml.split(&format!("*.{ending}\"")).nth(1).unwrap();
        let value = after
            .split("value=\"")
            .nth(1)
            .unwrap()
            .split("\"/>")
            .next()
            .unwrap();
        let value = value.replace("&quot;", "\"");
        let at = content
            .find(&value)
            .unwrap_or_else(|| panic!("{value} in {ending}"));
        assert!(at <= 32 && after.contains("offset=\"0:32\""), "{at}");
    }
}

#[test]
fn small_pictures_are_the_drawings() {
    for (name, kind) in ICONS {
        for side in SIDES {
            let drawing = if side <= SMALL {
                format!("{name}-small")
            } else {
                name.to_owned()
            };
            let svg = text(&format!("icons/{drawing}.svg"));
            let icon = painted(&svg, side).unwrap();
            let picture = RgbaImage::from_raw(side, side, icon.rgba).unwrap();
            let path = folder().join(format!("hicolor/{side}x{side}/{kind}/{name}.png"));
            if std::env::var_os("UPDATE_GOLDEN").is_some() {
                fs::create_dir_all(path.parent().unwrap()).unwrap();
                picture.save(&path).unwrap();
                continue;
            }
            let kept = image::open(&path)
                .unwrap_or_else(|e| panic!("{}: {e}; UPDATE_GOLDEN=1 paints it", path.display()));
            let kept = kept.to_rgba8();
            assert_eq!(kept.dimensions(), (side, side));
            let apart = |(a, b): (&u8, &u8)| a.abs_diff(*b);
            let most = kept.as_raw().iter().zip(picture.as_raw()).map(apart).max();
            assert!(most.unwrap() <= 2, "{} is not as drawn", path.display());
        }
    }
}

#[test]
fn the_window_has_the_icon_of_the_program() {
    let icon = program_icon();
    assert_eq!(icon.rgba.len(), (icon.width * icon.height * 4) as usize);
    let kept = image::open(folder().join("hicolor/128x128/apps/daystrand.png")).unwrap();
    let kept = kept.to_rgba8();
    let differs = kept
        .as_raw()
        .iter()
        .zip(&icon.rgba)
        .filter(|(a, b)| a.abs_diff(**b) > 2);
    assert_eq!((kept.width(), differs.count()), (icon.width, 0));
}
