//! At the edge and in the water; each says that the helper is there and how to ask for a stop.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "water_time",
        label: "Water time",
        happens: &[
            "{I} {go} into the water with {my} helper.",
            "First the feet get wet, then the legs.",
        ],
        who: "{My} helper stays beside {me}, close enough to touch.",
        strong: &[
            "The water may feel cold at first.",
            "Waves and voices may be loud.",
        ],
        helps: "{I} {can} go slowly or show Stop.",
        why: "In water, a body feels lighter.",
    },
    Phrases {
        symbol: "walk_to_water",
        label: "Walk to the water",
        happens: &[
            "{I} {go} to the water with {my} helper.",
            "At the edge the group waits for the trainer.",
        ],
        who: "{My} group goes there together.",
        strong: &["The sand may feel soft, hot or wet."],
        helps: "{I} {can} hold hands or show Stop.",
        why: "The trainer looks at the water first.",
    },
    Phrases {
        symbol: "feet_in",
        label: "Feet in",
        happens: &[
            "{I} {put} {my} feet in the water, beside {my} helper.",
            "Small waves may run over {my} toes.",
        ],
        who: "{My} helper’s feet are in the water too.",
        strong: &["The water may feel cold."],
        helps: "{I} {can} start with one foot or show Stop.",
        why: "Feet can feel how cold the water is.",
    },
    Phrases {
        symbol: "to_knees",
        label: "Up to knees",
        happens: &[
            "{I} {go} in up to {my} knees, with {my} helper.",
            "{I} {stop} where the water touches {my} knees.",
        ],
        who: "{My} helper can hold {my} hand.",
        strong: &["The water may feel cold and push a little."],
        helps: "{I} {can} go back a step or show Stop.",
        why: "In shallow water, feet stay on the ground.",
    },
    Phrases {
        symbol: "sit_at_edge",
        label: "Sit at the edge",
        happens: &[
            "{I} {sit} at the edge of the water with {my} helper.",
            "The water may come up to {my} toes and go back.",
        ],
        who: "{My} helper sits on the wet sand too.",
        strong: &["Wet sand may feel cold.", "Waves may be loud."],
        helps: "{I} {can} move back to dry sand or show Stop.",
        why: "The edge is a good place to feel the water.",
    },
    Phrases {
        symbol: "wet_arms",
        label: "Wet my arms",
        happens: &[
            "{I} {put} water on {my} arms, beside {my} helper.",
            "One hand takes water and pours it on the arm.",
        ],
        who: "{My} helper can do it first.",
        strong: &["The water may feel cold."],
        helps: "{I} {can} use a few drops or show Stop.",
        why: "A little water first helps skin get used to it.",
    },
    Phrases {
        symbol: "splash",
        label: "Splash",
        happens: &[
            "{I} {splash} with {my} hands, beside {my} helper.",
            "The drops fly up and fall down.",
        ],
        who: "{My} helper gets wet too.",
        strong: &["Drops may land on {my} face.", "Splashing may be loud."],
        helps: "{I} {can} splash small, turn away or show Stop.",
        why: "Hands can make big and small splashes.",
    },
    Phrases {
        symbol: "jump_wave",
        label: "Jump the wave",
        happens: &[
            "{I} {jump} over a small wave with {my} helper.",
            "{My} helper holds {my} hand.",
        ],
        who: "{My} helper watches for the next wave.",
        strong: &["Waves may push, and water may splash up."],
        helps: "{I} {can} step over the wave or show Stop.",
        why: "A small jump lifts the feet over the wave.",
    },
    Phrases {
        symbol: "hold_hands",
        label: "Hold hands",
        happens: &[
            "{I} {hold} {my} helper’s hand.",
            "Hand in hand, two people go at the same speed.",
        ],
        who: "{My} helper is beside {me}.",
        strong: &["A hand may feel warm, cold or wet."],
        helps: "{I} {can} hold a finger, a sleeve or a rope.",
        why: "Holding hands helps with balance.",
    },
    Phrases {
        symbol: "float",
        label: "Float",
        happens: &[
            "{I} {lie} on the water, and {my} helper holds {me}.",
            "{My} helper’s hands are under {my} back and head.",
        ],
        who: "{My} helper stands in the water beside {me}.",
        strong: &[
            "With {my} ears in the water, sounds are softer.",
            "The water may feel cold on {my} back.",
        ],
        helps: "{I} {can} come up or show Stop.",
        why: "Air inside the body helps it float.",
    },
    Phrases {
        symbol: "bubbles",
        label: "Bubbles",
        happens: &[
            "{I} {blow} bubbles in the water, beside {my} helper.",
            "{My} mouth touches the water, and air comes out.",
        ],
        who: "{My} helper can blow bubbles too.",
        strong: &["The bubbles may tickle.", "Water may get on {my} nose."],
        helps: "{I} {can} blow on top of the water or show Stop.",
        why: "Blowing out keeps water out of the mouth.",
    },
    Phrases {
        symbol: "kick",
        label: "Kick",
        happens: &[
            "{I} {kick} in the water, and {my} helper holds {me}.",
            "{My} legs go up and down.",
        ],
        who: "{My} helper moves along with {me}.",
        strong: &["Kicking may be loud, and drops may fly."],
        helps: "{I} {can} kick slowly or show Stop.",
        why: "Kicking pushes the body through the water.",
    },
    Phrases {
        symbol: "ride_board",
        label: "Ride the board",
        happens: &[
            "{I} {lie} on the board, and {my} helper holds it.",
            "A push or a small wave moves the board.",
        ],
        who: "{My} helper stands in the water behind the board.",
        strong: &["The board may rock.", "Water may splash on {my} face."],
        helps: "{I} {can} hold both edges or show Stop.",
        why: "A board carries a body on top of the water.",
    },
    Phrases {
        symbol: "watch_waves",
        label: "Watch the waves",
        happens: &[
            "{I} {sit} on the sand and {look} at the waves.",
            "Waves come in, one after the other.",
        ],
        who: "{My} helper usually sits beside {me}.",
        strong: &["Waves may be loud.", "Sun on the water may be bright."],
        helps: "{I} {can} wear ear muffs or sunglasses.",
        why: "Watching is a way to join in.",
    },
    Phrases {
        symbol: "out_of_water",
        label: "Out of the water",
        happens: &[
            "{I} {come} out of the water with {my} helper.",
            "Then {I} {go} to {my} towel.",
        ],
        who: "{My} group comes out of the water too.",
        strong: &["Air may feel cold on wet skin."],
        helps: "{I} {can} put the towel round {me}.",
        why: "A towel warms wet skin.",
    },
    Phrases {
        symbol: "between_flags",
        label: "In the flags",
        happens: &[
            "{I} {go} in the water between the flags, with {my} helper.",
            "The flags are red and yellow.",
        ],
        who: "Lifesavers usually watch the water between the flags.",
        strong: &["Many people may be in the water there."],
        helps: "{I} {can} look for the two flags or show Stop.",
        why: "The flags show where lifesavers watch.",
    },
    Phrases {
        symbol: "helper_in_water",
        label: "Someone with me",
        happens: &[
            "{My} helper is with {me} in the water.",
            "{My} helper is close enough to touch.",
        ],
        who: "Other people have a helper there too.",
        strong: &["A helper’s hand may feel cold and wet."],
        helps: "{I} {can} show where to hold, or show Stop.",
        why: "A helper’s arm gives balance in moving water.",
    },
];
