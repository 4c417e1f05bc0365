//! Nothing that a file tells beside its picture is in what is kept.

use daystrand::intake::{Kind, Recipe, take};

use super::making::{chunk, exif, packed, segment, webp, with_segments};
use super::{photo, picture};

const TOLD: &[u8] = b"54.321N-KEPT-SECRET-98.765W";
const NOTE: &str = "What the file says of where, when and with what it was taken was removed.";

fn holds(bytes: &[u8], words: &[u8]) -> bool {
    bytes.windows(words.len()).any(|w| w == words)
}

/// A JPEG that tells in every way there is.
fn telling_jpeg(orientation: u16) -> Vec<u8> {
    let small = picture("grey.jpg");
    let mut exif_and_thumbnail = exif(orientation, TOLD);
    exif_and_thumbnail.extend(&small);
    exif_and_thumbnail.extend(TOLD);
    let with = |head: &[u8]| [head, TOLD].concat();
    let jfxx = [b"JFXX\0\x10", &small[..], TOLD].concat();
    let mut file = with_segments(
        &picture("baseline-420.jpg"),
        &[
            segment(
                0xE0,
                &[b"JFIF\0\x01\x02\0\0\x01\0\x01\x03\x03", &TOLD[..27]].concat(),
            ),
            segment(0xE0, &jfxx),
            segment(
                0xE1,
                &with(b"Exif\0\0")
                    .into_iter()
                    .take(6)
                    .chain(exif_and_thumbnail)
                    .collect::<Vec<_>>(),
            ),
            segment(0xE1, &with(b"http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>")),
            segment(0xE2, &with(b"MPF\0")),
            segment(0xED, &with(b"Photoshop 3.0\08BIM\x04\x04")),
            segment(0xEA, &with(b"maker")),
            segment(0xFE, TOLD),
        ],
    );
    file.extend(TOLD);
    file.extend(&small);
    file
}

#[test]
fn a_jpeg_keeps_its_picture_and_nothing_else() {
    let file = telling_jpeg(1);
    assert!(holds(&file, TOLD));
    let photo = photo("told.jpg", &file);
    assert_eq!(photo.notes, [NOTE]);
    let kept = photo.kept();
    assert!(!holds(&kept.bytes, TOLD));
    assert_eq!(
        kept.bytes.windows(2).filter(|w| w == b"\xFF\xD8").count(),
        1
    );
    assert!(kept.bytes.ends_with(b"\xFF\xD9"));
    // Untouched: its packed picture is there byte for byte.
    let plain = picture("baseline-420.jpg");
    let scan = plain.windows(2).position(|w| w == b"\xFF\xDA").unwrap();
    assert!(kept.bytes.ends_with(&plain[scan..]));
    let again = super::photo("kept.jpg", &kept.bytes);
    assert_eq!(again.pixels(), photo.pixels());
    assert!(again.notes.is_empty());
    assert_eq!(again.kept(), kept);
}

#[test]
fn a_turned_jpeg_is_made_anew_without_what_it_told() {
    let photo = photo("told.jpg", &telling_jpeg(6));
    assert_eq!(photo.size(), [32, 48]);
    assert!(!holds(&photo.kept().bytes, TOLD));
}

#[test]
fn a_png_is_made_anew_without_what_it_told() {
    let plain = picture("rgba8.png");
    let with = |head: &[u8]| [head, TOLD].concat();
    let told = [
        chunk(b"tEXt", &with(b"Comment\0")),
        chunk(b"zTXt", &[b"Comment\0\0", &packed(TOLD)[..]].concat()),
        chunk(b"iTXt", &with(b"XML:com.adobe.xmp\0\0\0\0\0")),
        chunk(b"eXIf", &exif(1, TOLD)),
        chunk(b"tIME", &[7, 234, 1, 2, 3, 4, 5]),
        chunk(b"prVt", TOLD),
    ];
    let mut file = [&plain[..33], &told.concat(), &plain[33..]].concat();
    file.extend(TOLD);
    let photo = photo("told.png", &file);
    assert_eq!(photo.notes, [NOTE]);
    let kept = photo.kept();
    assert_eq!(kept.kind, Kind::Png);
    assert!(!holds(&kept.bytes, TOLD));
    assert_eq!(chunk_names(&kept.bytes), ["IHDR", "IDAT", "IEND"]);
}

fn chunk_names(png: &[u8]) -> Vec<String> {
    let (mut at, mut names) = (8, Vec::new());
    while let Some(head) = png.get(at..at + 8) {
        let length = u32::from_be_bytes(head[..4].try_into().unwrap()) as usize;
        names.push(String::from_utf8_lossy(&head[4..]).into_owned());
        at += length + 12;
    }
    names.dedup();
    names
}

#[test]
fn a_webp_is_made_anew_without_what_it_told() {
    let plain = picture("lossless.webp");
    let body = plain[20..].to_vec();
    let file = webp(&[
        (b"VP8X", [12, 0, 0, 0, 47, 0, 0, 31, 0, 0].to_vec()),
        (b"VP8L", body),
        (b"EXIF", exif(1, TOLD)),
        (b"XMP ", TOLD.to_vec()),
    ]);
    let photo = photo("told.webp", &file);
    assert_eq!(photo.notes, [NOTE]);
    assert!(!holds(&photo.kept().bytes, TOLD));
}

#[test]
fn what_a_mask_leaves_out_has_no_colour_left_in_the_file() {
    let photo = photo("a.png", &picture("rgb8.png"));
    let mut mask = daystrand::intake::Mask::new(&photo);
    mask.brush([10.0, 10.0], [30.0, 10.0], 6.0, false);
    let recipe = Recipe {
        mask: Some(std::sync::Arc::new(mask)),
        ..Recipe::default()
    };
    let made = photo.develop(&recipe, 48);
    assert_eq!(made.kind, Kind::Png);
    let Ok(daystrand::intake::Taken::Photo(again)) = take("again.png", &made.bytes) else {
        panic!("not taken again");
    };
    assert_eq!(again.pixels().get_pixel(20, 10).0, [0; 4]);
    assert_eq!(
        again.pixels().get_pixel(40, 10).0,
        photo.pixels().get_pixel(40, 10).0
    );
}
