//! Places and the way to them.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "beach",
        label: "Beach",
        happens: &[
            "{I} {go} to the beach with {my} group.",
            "There is sand, and there is water.",
        ],
        who: "{My} helper is with {me} near the water.",
        strong: &["Wind and waves may be loud.", "The light may be bright."],
        helps: "{I} {can} wear ear muffs, sunglasses or a hat.",
        why: "A beach has room to move.",
    },
    Phrases {
        symbol: "clubhouse",
        label: "Club house",
        happens: &[
            "{I} {go} into the club house.",
            "The things for the session may be kept there.",
        ],
        who: "Other people may be inside.",
        strong: &["Voices may sound loud inside."],
        helps: "{I} {can} stay near the door.",
        why: "Inside there is a roof and shade.",
    },
    Phrases {
        symbol: "toilets_building",
        label: "Toilet block",
        happens: &[
            "The toilets are in this building.",
            "{My} helper can show {me} the way.",
        ],
        who: "Other people use the toilets too.",
        strong: &["It may smell strong inside."],
        helps: "{I} {can} look at the building first.",
        why: "It helps to know where the toilets are.",
    },
    Phrases {
        symbol: "first_aid_tent",
        label: "First aid",
        happens: &[
            "First aid is for when something hurts.",
            "There are plasters and cold packs.",
        ],
        who: "A helper there looks at the sore place.",
        strong: &["It may smell strong there."],
        helps: "{I} {can} go there with {my} helper.",
        why: "First aid takes care of a sore place.",
    },
    Phrases {
        symbol: "ramp_mat",
        label: "Ramp",
        happens: &[
            "{I} {go} down the ramp to the sand.",
            "The way is a long mat.",
        ],
        who: "{My} helper goes beside {me}.",
        strong: &["The mat may feel bumpy."],
        helps: "{I} {can} go slowly or ask for help.",
        why: "On a mat, wheels roll more easily.",
    },
    Phrases {
        symbol: "changing_room",
        label: "Changing room",
        happens: &[
            "This room is for putting on other clothes.",
            "It has a curtain or a door.",
        ],
        who: "{My} helper can wait outside.",
        strong: &["The floor may be wet."],
        helps: "{I} {can} close the curtain or ask for help.",
        why: "Behind a curtain or a door it is private.",
    },
    Phrases {
        symbol: "bus",
        label: "Bus",
        happens: &["{I} {ride} in the bus.", "The bus has a ramp or steps."],
        who: "{My} helper or {my} {grown-up|family} is with {me}.",
        strong: &["The bus may hum and shake."],
        helps: "{I} {can} wear ear muffs or look outside.",
        why: "The bus takes many people together.",
    },
    Phrases {
        symbol: "car",
        label: "Car",
        happens: &["{I} {ride} in the car.", "The belt goes across {my} chest."],
        who: "Someone {I} {know} drives.",
        strong: &["The car may be warm or smell strong."],
        helps: "{I} {can} look outside or listen to music.",
        why: "The car is a way to get there.",
    },
    Phrases {
        symbol: "bench",
        label: "Bench",
        happens: &["{I} {sit} on the bench.", "{My} bag can stand beside {me}."],
        who: "{My} helper can sit there too.",
        strong: &["The bench may feel hard or cold."],
        helps: "{I} {can} sit on {my} towel.",
        why: "A bench is a place to rest.",
    },
];
