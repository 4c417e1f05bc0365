//! Moving before the day's activities.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "warm_up",
        label: "Warm up",
        happens: &[
            "The group moves arms, legs and shoulders.",
            "The movements start small and get bigger.",
        ],
        who: "The trainer shows each movement first.",
        strong: &["{My} heart may beat faster."],
        helps: "{I} {can} move in {my} own way.",
        why: "Warm muscles move more easily.",
    },
    Phrases {
        symbol: "stretch_up",
        label: "Stretch",
        happens: &[
            "{I} {stretch} {my} arms up high.",
            "Then {my} arms come down again.",
        ],
        who: "The trainer and the group stretch too.",
        strong: &["A stretch may pull a little in the arms."],
        helps: "{I} {can} stretch a little or a lot.",
        why: "Stretching gets the arms ready to move.",
    },
    Phrases {
        symbol: "march",
        label: "March",
        happens: &[
            "{I} {march} with {my} group.",
            "One knee goes up, then the other.",
        ],
        who: "The group marches in a line or on the spot.",
        strong: &["Many feet may be loud."],
        helps: "{I} {can} march with feet, hands or wheels.",
        why: "Marching warms the legs.",
    },
    Phrases {
        symbol: "jump",
        label: "Jump",
        happens: &[
            "{I} {bend} {my} knees and {jump}.",
            "Then {my} feet come down again.",
        ],
        who: "The trainer shows where to jump.",
        strong: &["The landing may feel hard."],
        helps: "{I} {can} jump small or just bend {my} knees.",
        why: "Jumping is good for the legs.",
    },
    Phrases {
        symbol: "run",
        label: "Run",
        happens: &[
            "{I} {run} from one cone to another.",
            "At the last cone {I} {slow} down and {stop}.",
        ],
        who: "Other people may run at the same time.",
        strong: &["Running may make {my} breath fast."],
        helps: "{I} {can} run, walk or roll.",
        why: "Running warms the whole body.",
    },
    Phrases {
        symbol: "copy_me",
        label: "Copy me",
        happens: &[
            "The trainer shows a movement.",
            "{I} {try} the same movement.",
        ],
        who: "The group tries it too.",
        strong: &[],
        helps: "{I} {can} copy it in {my} own way.",
        why: "Bodies move in different ways.",
    },
    Phrases {
        symbol: "crab_walk",
        label: "Crab walk",
        happens: &[
            "{I} {go} on hands and feet, with {my} belly up.",
            "{My} hands are behind {me}.",
        ],
        who: "The trainer shows it first.",
        strong: &["The ground may feel rough, and arms may get tired."],
        helps: "{I} {can} sit down and rest.",
        why: "This is good for arms and legs.",
    },
    Phrases {
        symbol: "follow_rope",
        label: "Follow the rope",
        happens: &[
            "{I} {follow} a rope that lies on the ground.",
            "The rope goes in a curve, from start to end.",
        ],
        who: "People go along it one by one.",
        strong: &["The rope may feel rough under bare feet."],
        helps: "{I} {can} go on the rope or beside it.",
        why: "The rope shows the way.",
    },
    Phrases {
        symbol: "shake",
        label: "Shake",
        happens: &[
            "{I} {shake} {my} hands and arms.",
            "Then {my} arms hang loose.",
        ],
        who: "The group shakes hands and arms too.",
        strong: &["{My} hands may tingle a little."],
        helps: "{I} {can} shake fast, slowly or just a little.",
        why: "Shaking makes muscles loose.",
    },
    Phrases {
        symbol: "freeze",
        label: "Freeze",
        happens: &[
            "{I} {move}, and at the signal {I} {keep} still.",
            "Then the moving starts again.",
        ],
        who: "The trainer lifts a hand as the signal.",
        strong: &["The music may stop all at once."],
        helps: "{I} {can} watch a few times first.",
        why: "Stopping at a signal is useful near water.",
    },
    Phrases {
        symbol: "partner",
        label: "Find a partner",
        happens: &[
            "{I} {find} one other person.",
            "Partners do the next thing together.",
        ],
        who: "{My} partner can be {my} helper.",
        strong: &["A partner may come close."],
        helps: "{I} {can} point to a partner or ask for space.",
        why: "Two people can help each other.",
    },
];
