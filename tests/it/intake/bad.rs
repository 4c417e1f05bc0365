//! Files that are not what they should be: each is refused in a sentence, none takes long.

use super::making::{chunk, ihdr, packed, png, segment, with_segments};
use super::{photo, picture, refused};

const AGAIN: &str = "Copy or download it once more.";

#[test]
fn a_small_png_that_claims_to_be_huge_is_refused_at_its_head() {
    let mut file = b"\x89PNG\r\n\x1a\n".to_vec();
    file.extend(ihdr(60_000, 60_000, 8, 6, 0));
    file.extend(chunk(b"IDAT", &packed(&[0; 100])));
    file.extend(chunk(b"IEND", b""));
    assert_eq!(
        refused("beach.png", &file),
        "“beach.png” says that it is 60,000 by 60,000 pixels, more than are taken. \
         Save it smaller, 4,000 pixels across or less, and bring that."
    );
}

#[test]
fn bounds_are_bounds_of_each_kind() {
    let size = |w: u32, h: u32| {
        let mut file = b"\x89PNG\r\n\x1a\n".to_vec();
        file.extend(ihdr(w, h, 1, 0, 0));
        file
    };
    assert!(refused("a.png", &size(20_001, 1)).contains("20,001 by 1 pixels"));
    assert!(refused("a.png", &size(10_000, 5_001)).contains("10,000 by 5,001 pixels"));
    assert!(refused("a.png", &size(0, 5)).contains("a width or height of zero"));
    let mut jpeg = picture("grey.jpg");
    let frame = jpeg.windows(2).position(|w| w == b"\xFF\xC0").unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0xFF, 0xFF, 0xFF, 0xFF]);
    assert!(refused("a.jpg", &jpeg).contains("65,535 by 65,535 pixels"));
    let mut webp = picture("lossless.webp");
    webp[21..25].copy_from_slice(&[0xFF, 0xFF, 0xFF, 0x0F]);
    assert!(refused("a.webp", &webp).contains("16,384 by 16,384 pixels"));
}

/// Within the bounds of size, but there cannot be so much picture in so few bytes.
#[test]
fn few_bytes_that_claim_many_pixels_are_cut_off() {
    let mut file = b"\x89PNG\r\n\x1a\n".to_vec();
    file.extend(ihdr(7_000, 7_000, 8, 6, 0));
    file.extend(chunk(b"IDAT", &packed(&[0; 100_000])));
    file.extend(chunk(b"IEND", b""));
    let cut = format!("“a.png” breaks off before the picture ends. {AGAIN}");
    assert_eq!(refused("a.png", &file), cut);
    let mut jpeg = picture("baseline-420.jpg");
    let frame = jpeg.windows(2).position(|w| w == b"\xFF\xC0").unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x1B, 0x58, 0x1B, 0x58]);
    let cut = format!("“a.jpg” breaks off before the picture ends. {AGAIN}");
    assert_eq!(refused("a.jpg", &jpeg), cut);
}

#[test]
fn memory_is_bounded_before_it_is_used() {
    // 50 megapixels in four inks and in passes would need more than a gigabyte.
    let mut jpeg = picture("progressive.jpg");
    let frame = jpeg.windows(2).position(|w| w == b"\xFF\xC2").unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x1B, 0x58, 0x1B, 0x58]);
    let end = jpeg.len() - 2;
    jpeg.splice(end..end, vec![0; 400_000]);
    assert_eq!(
        refused("a.jpg", &jpeg),
        "“a.jpg” is a large picture stored in a way that takes too much memory to read. \
         Save it smaller, or as an ordinary JPEG, and bring that."
    );
}

#[test]
fn cut_off_files_are_refused_wherever_they_end() {
    for name in [
        "baseline-420.jpg",
        "progressive.jpg",
        "rgb8.png",
        "interlaced.png",
        "lossy.webp",
        "lossless.webp",
        "moving.webp",
    ] {
        let whole = picture(name);
        for length in 13..whole.len() - 1 {
            // What breaks off behind the first of several pictures takes nothing from it.
            if name == "moving.webp" && length > 200 {
                break;
            }
            let said = refused(name, &whole[..length]);
            let known = [
                format!("“{name}” breaks off before the picture ends. {AGAIN}"),
                format!(
                    "“{name}” is damaged and cannot be read. \
                     Copy it once more, or open it in another program and save it again."
                ),
            ];
            assert!(known.contains(&said), "{name} at {length}: {said}");
        }
    }
}

#[test]
fn what_is_no_picture_is_named_if_it_is_known() {
    let cases: [(&[u8], &str); 10] = [
        (b"", "“a.jpg” is empty. "),
        (
            b"Dear all, see you on Saturday.",
            "“a.jpg” is not a picture in JPEG, PNG, WebP or SVG. ",
        ),
        (
            b"GIF89a......",
            "“a.jpg” is a GIF picture, which is not read. ",
        ),
        (b"BM..........", "“a.jpg” is a BMP picture, "),
        (
            b"II*\0........",
            "“a.jpg” is a TIFF or camera raw picture, ",
        ),
        (b"\x1F\x8B\x08", "“a.jpg” is a packed file, "),
        (b"%PDF-1.7", "“a.jpg” is a PDF document, "),
        (b"\0\0\0\x18ftypheic", "“a.jpg” is a HEIC picture, "),
        (b"\0\0\0\x18ftypavif", "“a.jpg” is an AVIF picture, "),
        (b"\0\0\0\x18ftypisom", "“a.jpg” is a film, "),
    ];
    for (bytes, sentence) in cases {
        let said = refused("a.jpg", bytes);
        assert!(said.starts_with(sentence), "{said}");
    }
    let shown = refused("C:\\photos/of the day\nHERE.jpg", b"");
    assert!(
        shown.starts_with("“of the dayHERE.jpg” is empty."),
        "{shown}"
    );
    let long = refused(&format!("{}.jpg", "a".repeat(300)), b"");
    assert!(
        long.chars().count() < 120 && long.contains("….") | long.contains("…"),
        "{long}"
    );
}

#[test]
fn a_file_beyond_the_largest_is_refused_unread() {
    let file = vec![0xFF; (64 << 20) + 1];
    assert!(refused("a.jpg", &file).starts_with("“a.jpg” is larger than 64 megabytes."));
}

#[test]
fn packed_words_and_profiles_of_a_png_stay_packed() {
    let bomb = packed(&vec![0; 100 << 20]);
    let with = |head: &[u8]| [head, &bomb[..]].concat();
    let between = [
        chunk(b"zTXt", &with(b"a\0\0")),
        chunk(b"iTXt", &with(b"a\0\x01\0\0\0")),
        chunk(b"iCCP", &with(b"a\0\0")),
    ];
    let photo = photo("a.png", &png(2, &[[1, 2, 3]; 4], &between));
    assert_eq!(photo.pixels().get_pixel(1, 1).0, [1, 2, 3, 255]);
    assert!(
        photo
            .notes
            .iter()
            .any(|n| n.starts_with("Its colour profile could not be read"))
    );
}

#[test]
fn unusual_kinds_of_jpeg_are_named() {
    let plain = picture("grey.jpg");
    let frame = plain.windows(2).position(|w| w == b"\xFF\xC0").unwrap();
    let with = |marker: u8, bits: u8| {
        let mut file = plain.clone();
        file[frame + 1] = marker;
        file[frame + 4] = bits;
        refused("a.jpg", &file)
    };
    assert!(
        with(0xC9, 8).starts_with("“a.jpg” is a JPEG with arithmetic coding, which is not read.")
    );
    assert!(with(0xC3, 8).contains("of a kind made for archives"));
    assert!(with(0xC1, 12).contains("with more than eight bits a colour"));
    let many = vec![segment(0xC0, &[8, 0, 8, 0, 8, 1, 1, 0x11, 0])];
    assert!(refused("a.jpg", &with_segments(&plain, &many)).contains("is damaged"));
}

/// Found by changed files: the decoders lost their place, or panicked, on each of these.
#[test]
fn what_decoders_do_not_bear_is_refused_before_they_see_it() {
    for length in [0, 1, 8, 20, 46, 103, 771] {
        let mut file = b"\x89PNG\r\n\x1a\n".to_vec();
        file.extend(ihdr(2, 1, 4, 3, 0));
        file.extend(chunk(b"PLTE", &vec![7; length]));
        file.extend(chunk(b"IDAT", &packed(&[0, 0])));
        file.extend(chunk(b"IEND", b""));
        assert!(refused("a.png", &file).contains("is damaged"), "{length}");
    }
    // Colours one after the other, brightness alone first.
    let mut file = picture("baseline-420.jpg");
    let scan = file.windows(2).position(|w| w == b"\xFF\xDA").unwrap();
    let packed = file[scan + 14..].to_vec();
    file.truncate(scan);
    file.extend(segment(0xDA, &[1, 1, 0, 0, 63, 0]));
    file.extend(&packed[..packed.len() - 2]);
    file.extend(segment(0xDA, &[2, 2, 0x11, 3, 0x11, 0, 63, 0]));
    file.extend(&packed);
    assert_eq!(
        refused("a.jpg", &file),
        "“a.jpg” is a JPEG that holds one colour after the other, which is not read. \
         Open it in another program, save it as an ordinary JPEG, and bring that."
    );
}
