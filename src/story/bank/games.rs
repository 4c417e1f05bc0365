//! Ball games and athletics.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "roll_ball",
        label: "Roll the ball",
        happens: &[
            "{I} {roll} the ball along the ground.",
            "It may stop close to the target or further away.",
        ],
        who: "People roll one after the other.",
        strong: &["The balls may knock together."],
        helps: "{I} {can} roll with a hand, a foot or a ramp.",
        why: "Rolling slowly helps with the aim.",
    },
    Phrases {
        symbol: "kick_ball",
        label: "Kick the ball",
        happens: &[
            "{I} {kick} the ball.",
            "It rolls to another person or to the goal.",
        ],
        who: "Other people kick it too.",
        strong: &["The ball may come fast, and people may shout."],
        helps: "{I} {can} kick softly or use {my} hands.",
        why: "Kicking is good for legs and balance.",
    },
    Phrases {
        symbol: "catch_ball",
        label: "Catch",
        happens: &[
            "{I} {hold} out {my} hands for the ball.",
            "It may land in {my} hands or on the ground.",
        ],
        who: "Another person throws it.",
        strong: &["The ball may come fast."],
        helps: "{I} {can} ask for a big, soft ball.",
        why: "Eyes and hands work together.",
    },
    Phrases {
        symbol: "hit_ball",
        label: "Hit",
        happens: &["{I} {hit} the ball.", "Then it flies or rolls away."],
        who: "One person hits, and the others stand back.",
        strong: &["The hit may be loud."],
        helps: "{I} {can} hit a ball that lies still.",
        why: "Eyes and hands work together.",
    },
    Phrases {
        symbol: "basket",
        label: "Shoot",
        happens: &[
            "{I} {throw} the ball at the basket.",
            "It may go in or bounce off.",
        ],
        who: "People throw one after the other.",
        strong: &["The ball may be loud on the floor."],
        helps: "{I} {can} come closer or use a low basket.",
        why: "Throwing is good for arms and eyes.",
    },
    Phrases {
        symbol: "start_line",
        label: "Start line",
        happens: &["{I} {wait} at the start line.", "At the signal {I} {go}."],
        who: "Other people may start at the same time.",
        strong: &["The signal may be loud."],
        helps: "{I} {can} ask for a flag as the signal.",
        why: "The line shows where the start is.",
    },
    Phrases {
        symbol: "long_jump",
        label: "Long jump",
        happens: &[
            "{I} {run} and {jump} into the sand.",
            "Then {I} {step} out of the sand.",
        ],
        who: "People jump one after the other.",
        strong: &["Sand may get into the shoes."],
        helps: "{I} {can} step in, and shake the sand out later.",
        why: "Sand makes the landing soft.",
    },
    Phrases {
        symbol: "throw_far",
        label: "Throw far",
        happens: &[
            "{I} {throw} the ball far.",
            "Then the ball comes back to the line.",
        ],
        who: "The others stand behind the line.",
        strong: &[],
        helps: "{I} {can} throw with one hand or two.",
        why: "Throwing is good for the arms and the back.",
    },
];
