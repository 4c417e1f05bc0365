//! Digging, building and games in the sand.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "sand_time",
        label: "Sand time",
        happens: &[
            "{I} {play|spend time} in the sand.",
            "There are buckets and spades.",
        ],
        who: "Other people dig and build close by.",
        strong: &["Sand may feel rough, wet or warm."],
        helps: "{I} {can} wipe {my} hands with a towel.",
        why: "People can make many things with sand.",
    },
    Phrases {
        symbol: "dig",
        label: "Dig",
        happens: &[
            "{I} {dig} in the sand with a spade.",
            "The hole stays small, below the knee.",
            "At the end the sand goes back in.",
        ],
        who: "{My} helper usually digs with {me}.",
        strong: &["Sand may feel rough, wet or cold."],
        helps: "{I} {can} wipe {my} hands at any time.",
        why: "Filled holes leave the sand flat for everyone.",
    },
    Phrases {
        symbol: "build",
        label: "Build",
        happens: &[
            "{I} {build} with wet sand.",
            "A bucket of sand can become a tower.",
            "The tower may stand or fall down.",
        ],
        who: "Other people may build beside {me}.",
        strong: &["Wet sand may feel cold and heavy."],
        helps: "{I} {can} build with a spade or {my} hands.",
        why: "Wet sand keeps its shape.",
    },
    Phrases {
        symbol: "fill_bucket",
        label: "Fill",
        happens: &[
            "{I} {put} sand into a bucket with a spade.",
            "The sand goes up to the top, bit by bit.",
        ],
        who: "{My} helper can hold the bucket.",
        strong: &["A full bucket may be heavy."],
        helps: "{I} {can} stop when it is half full.",
        why: "A full bucket can become a tower.",
    },
    Phrases {
        symbol: "pour",
        label: "Pour",
        happens: &[
            "{I} {pour} water or sand from a cup.",
            "It falls down in a stream.",
        ],
        who: "{My} helper can hold a bucket under it.",
        strong: &["Some drops may land on {my} feet."],
        helps: "{I} {can} pour fast or slowly.",
        why: "Pouring shows how water and sand move.",
    },
    Phrases {
        symbol: "draw_in_sand",
        label: "Draw",
        happens: &[
            "{I} {draw} in the sand with a finger.",
            "Wind or water may smooth the picture away later.",
        ],
        who: "{My} helper can draw too.",
        strong: &["Sand may stick to {my} finger."],
        helps: "{I} {can} draw with a stick or a spade.",
        why: "Smooth sand is ready for a new picture.",
    },
    Phrases {
        symbol: "find_shells",
        label: "Find shells",
        happens: &[
            "{I} {look} for shells on the sand.",
            "The shells go into a bucket.",
        ],
        who: "{My} helper looks for shells too.",
        strong: &["Some shells may be rough or broken."],
        helps: "{I} {can} show a shell to {my} helper first.",
        why: "Shells come from small animals in the water.",
    },
    Phrases {
        symbol: "carry_water",
        label: "Carry water",
        happens: &[
            "{I} {carry} water in a bucket, with {my} helper.",
            "Some water may splash out on the way.",
        ],
        who: "{My} helper fills the bucket with {me}.",
        strong: &["A full bucket is heavy, and drops may feel cold."],
        helps: "{I} {can} carry a little or show Stop.",
        why: "Wet sand is good for building.",
    },
    Phrases {
        symbol: "feet_in_sand",
        label: "Feet in sand",
        happens: &[
            "{I} {put} {my} feet under the sand.",
            "Then {I} {pull} {my} feet out again.",
        ],
        who: "{My} helper can pour sand over {my} feet.",
        strong: &["Sand may feel heavy, warm or cool."],
        helps: "{I} {can} pull {my} feet out at any time.",
        why: "Deeper sand is usually cooler.",
    },
    Phrases {
        symbol: "step_over",
        label: "Step over",
        happens: &[
            "{I} {step} over a low bar.",
            "There may be more bars, one after the other.",
        ],
        who: "People go over the bars one by one.",
        strong: &["The bar may fall when a foot touches it."],
        helps: "{I} {can} hold {my} helper’s hand or go round.",
        why: "Stepping over is good for legs and balance.",
    },
    Phrases {
        symbol: "get_the_flag",
        label: "Get the flag",
        happens: &[
            "{I} {go} to the flag and {pick} it up.",
            "The flag is on a short stick in the sand.",
        ],
        who: "Other people may go at the same time.",
        strong: &["Some sand may fly up from the feet."],
        helps: "{I} {can} run, walk or roll to it.",
        why: "This game is about a quick start.",
    },
    Phrases {
        symbol: "throw_catch",
        label: "Throw and catch",
        happens: &[
            "{I} {throw} a ball to another person.",
            "Usually the other person throws it back.",
        ],
        who: "Two people face each other with one ball.",
        strong: &["The ball may come fast."],
        helps: "{I} {can} come closer or roll the ball.",
        why: "Throwing and catching takes two people.",
    },
    Phrases {
        symbol: "fill_it_in",
        label: "Fill it in",
        happens: &[
            "{I} {push} the sand back into the hole.",
            "Then the sand is flat again.",
        ],
        who: "The group fills the holes together.",
        strong: &["The sand may feel wet and heavy."],
        helps: "{I} {can} use {my} hands, {my} feet or a spade.",
        why: "On flat sand, feet and wheels move more easily.",
    },
    Phrases {
        symbol: "small_holes",
        label: "Small holes only",
        happens: &[
            "The holes in the sand stay small.",
            "Each hole ends below the knee.",
        ],
        who: "{My} helper looks at the hole with {me}.",
        strong: &[],
        helps: "{I} {can} measure the hole with a spade.",
        why: "The sides of a deep hole can fall in.",
    },
];
