//! Toilet, food, clothes and keeping warm.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "toilet",
        label: "Toilet",
        happens: &["{I} {go} to the toilet.", "Then {I} {wash} {my} hands."],
        who: "{My} helper can come along to the door.",
        strong: &["The flush or a hand dryer may be loud."],
        helps: "{I} {can} ask for the toilet at any time.",
        why: "There is time for the toilet in the session.",
    },
    Phrases {
        symbol: "wash_hands",
        label: "Wash hands",
        happens: &[
            "{I} {wash} {my} hands with water and soap.",
            "Then {I} {dry} them.",
        ],
        who: "{My} helper can help with the tap.",
        strong: &["The water may feel cold.", "Soap may smell strong."],
        helps: "{I} {can} use a little water or a lot.",
        why: "Clean hands are good for eating.",
    },
    Phrases {
        symbol: "drink",
        label: "Drink",
        happens: &["{I} {have} a drink.", "{My} bottle is with {my} bag."],
        who: "Other people have a drink at the same time.",
        strong: &["The drink may be cold or warm."],
        helps: "{I} {can} take small sips.",
        why: "Bodies need a drink when they move.",
    },
    Phrases {
        symbol: "snack",
        label: "Snack",
        happens: &["{I} {eat} {my} snack.", "It comes from a box or a bag."],
        who: "The group sits together to eat.",
        strong: &["There may be many smells."],
        helps: "{I} {can} sit with the group or a little away.",
        why: "A snack helps the body keep moving.",
    },
    Phrases {
        symbol: "eat_together",
        label: "Eat together",
        happens: &[
            "The group sits down to eat.",
            "Each person has something to eat.",
        ],
        who: "{My} helper usually sits near {me}.",
        strong: &["There may be many smells and voices."],
        helps: "{I} {can} choose what {I} {eat} first.",
        why: "Eating is also a time to sit and rest.",
    },
    Phrases {
        symbol: "get_changed",
        label: "Get changed",
        happens: &[
            "{I} {put} on the clothes for the next part.",
            "There is a curtain or a door.",
        ],
        who: "{My} helper can wait outside.",
        strong: &["Wet clothes may stick to the skin."],
        helps: "{I} {can} ask for help or for more time.",
        why: "Behind a curtain or a door it is private.",
    },
    Phrases {
        symbol: "tissue",
        label: "Tissue",
        happens: &[
            "{I} {wipe} {my} nose with a tissue.",
            "Then the tissue goes into the bin.",
        ],
        who: "{My} helper can bring a tissue.",
        strong: &["A tissue may feel dry."],
        helps: "{I} {can} wipe softly.",
        why: "A clean nose makes breathing easier.",
    },
    Phrases {
        symbol: "shower",
        label: "Shower",
        happens: &[
            "{I} {have} a shower.",
            "The water washes off sand and salt.",
        ],
        who: "{My} helper can stay close by.",
        strong: &[
            "The water may be cold and loud.",
            "Water may run over {my} face.",
        ],
        helps: "{I} {can} start with {my} feet.",
        why: "A shower makes skin clean.",
    },
    Phrases {
        symbol: "get_warm",
        label: "Get warm",
        happens: &["{I} {put} on something warm.", "There may be a warm drink."],
        who: "{My} helper can bring a towel.",
        strong: &["Thick clothes may feel heavy."],
        helps: "{I} {can} sit out of the wind.",
        why: "Warm clothes help after the water.",
    },
    Phrases {
        symbol: "shoes_on",
        label: "Shoes on",
        happens: &[
            "{I} {put} on {my} shoes.",
            "Then the strap or the laces hold them on.",
        ],
        who: "{My} helper can help with straps and laces.",
        strong: &["Sand in a shoe may feel rough."],
        helps: "{I} {can} brush the sand off first.",
        why: "Shoes protect feet on hard ground.",
    },
    Phrases {
        symbol: "plaster",
        label: "Plaster",
        happens: &[
            "A plaster goes on the sore place.",
            "It sticks to clean, dry skin.",
        ],
        who: "A helper usually puts it on.",
        strong: &["It may pull a little when it comes off."],
        helps: "{I} {can} press it on with a finger.",
        why: "A plaster keeps dirt out.",
    },
];
