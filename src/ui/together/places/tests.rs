//! Nothing lies on anything else, in any window.

use super::*;

const SIZES: [(f32, f32); 7] = [
    (640.0, 380.0),
    (683.0, 384.0),
    (900.0, 700.0),
    (1024.0, 600.0),
    (1366.0, 768.0),
    (1920.0, 1080.0),
    (800.0, 1280.0),
];

fn every() -> Vec<(String, Places)> {
    let mut all = Vec::new();
    for (w, h) in SIZES {
        for run in Run::ALL {
            for coming in 0..16 {
                for cards in [0, 5, 7, 9, 12] {
                    let window = Rect::from_min_size(Pos2::ZERO, vec2(w, h));
                    for (row, finished) in [(false, true), (true, true), (true, false)] {
                        let wanted = Wanted {
                            coming,
                            cards,
                            run,
                            row,
                            finished,
                        };
                        let name = format!("{w}x{h} {wanted:?}");
                        all.push((name, Places::of(window, wanted)));
                    }
                }
            }
        }
    }
    all
}

fn apart(name: &str, rects: &[Rect]) {
    for (i, a) in rects.iter().enumerate() {
        assert!(a.width() > 0.0 && a.height() > 0.0, "{name}: {i} is {a:?}");
        for (j, b) in rects.iter().enumerate().skip(i + 1) {
            let common = a.intersect(*b);
            let touch = common.width() <= 0.5 || common.height() <= 0.5;
            assert!(touch, "{name}: {i} {a:?} lies on {j} {b:?}");
        }
    }
}

#[test]
fn nothing_lies_on_anything_else_in_any_window() {
    for (name, p) in every() {
        let mut rects = vec![p.now, p.bar, p.leave, p.fold];
        rects.extend(name.contains("finished: true").then_some(p.finished));
        rects.extend(p.coming.iter().map(|c| c.rect()));
        apart(&name, &rects);
        apart(&name, &[p.row, p.leave, p.fold, p.bar]);
        apart(&name, &p.cards);
        for r in rects.iter().chain(&p.cards).chain([&p.row]) {
            assert!(
                p.window.contains_rect(*r),
                "{name}: {r:?} leaves the window"
            );
        }
        for card in &p.cards {
            assert!(p.bar.contains_rect(*card), "{name}: {card:?}");
        }
    }
}

#[test]
fn what_can_be_pressed_is_large_enough_for_a_finger() {
    for (name, p) in every() {
        let mut rects = vec![p.now, p.finished, p.leave, p.fold];
        rects.extend(&p.cards);
        for r in rects {
            let least = r.width().min(r.height());
            assert!(least >= LEAST - 0.5, "{name}: {r:?}");
        }
        let least = if name.contains("row: true") {
            90.0
        } else {
            130.0
        };
        assert!(
            p.now.width() >= least,
            "{name}: now is the largest: {:?}",
            p.now
        );
        for c in &p.coming {
            assert!(c.rect().height() <= p.now.height(), "{name}");
        }
    }
}

#[test]
fn at_least_the_next_one_is_shown_and_never_more_than_come() {
    for (name, p) in every() {
        let shown = p.coming.len();
        let wanted = name.contains("coming: 0");
        assert_eq!(shown == 0, wanted, "{name}");
    }
}

#[test]
fn right_to_left_is_the_mirror_of_left_to_right() {
    let window = Rect::from_min_size(pos2(10.0, 20.0), vec2(1024.0, 600.0));
    for coming in 0..9 {
        let of = |run| {
            let (row, finished) = (false, true);
            Places::of(
                window,
                Wanted {
                    coming,
                    cards: 7,
                    run,
                    row,
                    finished,
                },
            )
        };
        let (there, back) = (of(Run::LeftToRight), of(Run::RightToLeft));
        let turned = flipped(window, back.now);
        assert!((turned.min - there.now.min).length() < 0.01);
        assert!(back.bar.left() < back.now.left() && there.now.left() < there.bar.left());
        for (a, b) in there.coming.iter().zip(&back.coming) {
            let turned = flipped(window, b.rect());
            assert!((turned.min - a.rect().min).length() < 0.01);
        }
        let stretch = there.finished.shrink(20.0);
        assert!(there.slot(stretch, 0, 5).left() < there.slot(stretch, 1, 5).left());
        assert!(back.slot(stretch, 0, 5).left() > back.slot(stretch, 1, 5).left());
    }
}

#[test]
fn finished_tiles_stay_in_their_place_and_options_on_the_stage() {
    for (name, p) in every() {
        for count in [1, 2, 7, 15, 40] {
            let stretch = p.finished.shrink(14.0);
            for i in 0..count {
                let slot = p.slot(stretch, i, count);
                assert!(
                    p.finished.contains_rect(slot),
                    "{name}: {slot:?} of {count}"
                );
            }
        }
        for (own, others) in [(1, 0), (2, 2), (3, 2), (3, 1), (3, 0)] {
            let all = p.options(own, others);
            apart(&name, &all);
            for r in all {
                assert!(p.stage.expand(0.5).contains_rect(r), "{name}: {r:?}");
                let least = r.width().min(r.height());
                assert!(least >= LEAST - 0.5, "{name}: {r:?}");
            }
        }
        let (picture, answers) = p.answers(3);
        let mut all = answers;
        all.push(picture);
        apart(&name, &all);
        assert!(
            all.iter().all(|r| p.stage.expand(0.5).contains_rect(*r)),
            "{name}"
        );
        apart(&name, &p.two());
        assert!(
            p.two()
                .iter()
                .all(|r| p.stage.expand(0.5).contains_rect(*r)),
            "{name}"
        );
        let card = p.very_large();
        apart(&name, &[card, p.bar, p.leave]);
        assert!(card.width() > 250.0, "{name}: {card:?}");
    }
}

#[test]
fn a_card_on_its_way_begins_and_ends_where_it_should() {
    let a = Rect::from_min_size(pos2(0.0, 0.0), vec2(100.0, 100.0));
    let b = Rect::from_min_size(pos2(300.0, 400.0), vec2(50.0, 50.0));
    assert_eq!(between(a, b, 0.0), a);
    assert_eq!(between(a, b, 1.0), b);
    let mut before = a.left();
    for i in 1..=20 {
        let x = between(a, b, i as f32 / 20.0).left();
        assert!(x > before, "one way, without turning back");
        before = x;
    }
}
