//! In the pool.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "pool",
        label: "Pool",
        happens: &[
            "{I} {go} to the pool with {my} helper.",
            "Steps, a ladder or a ramp go into the water.",
        ],
        who: "{My} helper is with {me} in the water.",
        strong: &[
            "The pool may be loud and warm.",
            "The water may smell strong.",
        ],
        helps: "{I} {can} sit at the side first or show Stop.",
        why: "Many pools have a part with shallow water.",
    },
    Phrases {
        symbol: "pool_steps",
        label: "Steps in",
        happens: &[
            "{I} {go} down the steps with {my} helper.",
            "Each step is a little deeper.",
        ],
        who: "{My} helper is with {me} on each step.",
        strong: &["The water may feel cold at first."],
        helps: "{I} {can} hold the rail or show Stop.",
        why: "The rail helps with balance.",
    },
    Phrases {
        symbol: "kickboard",
        label: "Kickboard",
        happens: &[
            "{I} {hold} the kickboard in the water, beside {my} helper.",
            "{My} legs kick, and the board goes forward.",
        ],
        who: "{My} helper moves along beside {me}.",
        strong: &["Drops may land on {my} face."],
        helps: "{I} {can} hold it close or show Stop.",
        why: "The kickboard floats and holds the arms up.",
    },
    Phrases {
        symbol: "pool_hoist",
        label: "Pool chair",
        happens: &[
            "{I} {sit} in the pool chair, and {my} helper is there.",
            "The chair goes down into the water slowly.",
        ],
        who: "One helper is in the water, and one moves the chair.",
        strong: &["The chair may hum.", "It may shake a little when it stops."],
        helps: "{I} {can} hold the chair or show Stop.",
        why: "The pool chair is a way into the water.",
    },
    Phrases {
        symbol: "goggles",
        label: "Goggles",
        happens: &[
            "{I} {put} on {my} goggles.",
            "The strap goes round {my} head.",
        ],
        who: "{My} helper can move the strap.",
        strong: &["Goggles may press round {my} eyes."],
        helps: "{I} {can} ask for a looser strap.",
        why: "Goggles keep water out of the eyes.",
    },
    Phrases {
        symbol: "noodle",
        label: "Noodle",
        happens: &[
            "{I} {hold} the noodle in the water, beside {my} helper.",
            "The noodle is soft, and it floats.",
        ],
        who: "{My} helper can hold the other end.",
        strong: &["The noodle may squeak."],
        helps: "{I} {can} hold it under {my} arms or show Stop.",
        why: "A noodle helps the arms stay up in the water.",
    },
];
