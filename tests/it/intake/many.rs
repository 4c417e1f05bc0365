//! A hundred files at once: the good ones come through.

use daystrand::intake::{Taken, take};

use super::picture;

#[test]
fn of_a_hundred_mixed_files_the_good_ones_come_through() {
    let good = [
        "rgb8.png",
        "baseline-420.jpg",
        "lossy.webp",
        "grey.jpg",
        "palette4.png",
    ];
    let mut taken = 0;
    for i in 0..100 {
        let name = good[i % good.len()];
        let mut bytes = picture(name);
        let broken = i % 4 == 3;
        match i % 12 {
            3 => bytes.truncate(bytes.len() / 2),
            7 => bytes.clear(),
            11 => bytes = b"not a picture".to_vec(),
            _ => {}
        }
        match take(name, &bytes) {
            Ok(Taken::Photo(photo)) => {
                assert!(!broken, "{i}");
                assert_eq!(photo.size(), [48, 32]);
                taken += 1;
            }
            Ok(Taken::Drawing(_)) => panic!("a drawing"),
            Err(refusal) => {
                assert!(broken, "{i}: {refusal}");
                assert!(refusal.what.contains(name));
            }
        }
    }
    assert_eq!(taken, 75);
}
