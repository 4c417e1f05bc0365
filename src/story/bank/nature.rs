//! Plants, animals and the fire circle.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "plant",
        label: "Plant",
        happens: &[
            "{I} {put} a young plant into the earth.",
            "{My} hands press the earth round it.",
        ],
        who: "{My} helper can hold the plant.",
        strong: &["Earth may feel wet and cold."],
        helps: "{I} {can} wear gloves or use a spade.",
        why: "A plant takes water from the earth.",
    },
    Phrases {
        symbol: "water_plants",
        label: "Water the plants",
        happens: &["{I} {water} the plants.", "The water goes into the earth."],
        who: "{My} helper can fill the can.",
        strong: &["A full can may be heavy."],
        helps: "{I} {can} pour a little at a time.",
        why: "Plants need water.",
    },
    Phrases {
        symbol: "look_closely",
        label: "Look closely",
        happens: &[
            "{I} {look} at something small through a glass.",
            "The glass makes it look bigger.",
        ],
        who: "{My} helper can hold the glass.",
        strong: &["A small animal may move suddenly."],
        helps: "{I} {can} look from further away.",
        why: "Close up, there is more to see.",
    },
    Phrases {
        symbol: "rock_pool",
        label: "Rock pool",
        happens: &[
            "{I} {look} into the pool in the rocks with {my} helper.",
            "There may be small animals in the water.",
        ],
        who: "{My} helper looks for animals too.",
        strong: &["The rocks may feel wet and rough."],
        helps: "{I} {can} sit down to look or show Stop.",
        why: "Looking leaves the animals in their home.",
    },
    Phrases {
        symbol: "feed_animals",
        label: "Feed the animals",
        happens: &[
            "{I} {hold} out food on a flat hand.",
            "The animal may come and eat.",
            "After that {I} {wash} {my} hands.",
        ],
        who: "{My} helper stands beside {me}.",
        strong: &["The animal’s mouth may feel wet and warm."],
        helps: "{I} {can} put the food on the ground.",
        why: "A flat hand is easy to eat from.",
    },
    Phrases {
        symbol: "build_den",
        label: "Den",
        happens: &[
            "{I} {build} with branches and cloth.",
            "There is room inside to sit.",
        ],
        who: "The group builds together.",
        strong: &["The branches may feel rough."],
        helps: "{I} {can} carry, hold or sit inside.",
        why: "Branches that lean together hold each other up.",
    },
    Phrases {
        symbol: "camp_fire_circle",
        label: "Fire circle",
        happens: &[
            "The group sits in a circle round a small fire.",
            "The mats lie well back from the fire.",
        ],
        who: "The trainer looks after the fire.",
        strong: &["Smoke may smell strong.", "The fire may crack loudly."],
        helps: "{I} {can} move further back.",
        why: "A fire gives light and warmth.",
    },
];
