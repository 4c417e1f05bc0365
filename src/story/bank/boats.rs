//! Boats, boards and sails.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "life_jacket",
        label: "Life jacket",
        happens: &[
            "{I} {wear} a life jacket for the water.",
            "It closes with buckles at the front.",
        ],
        who: "{My} helper looks at each buckle.",
        strong: &["A life jacket may feel thick and tight."],
        helps: "{I} {can} take it off when {I} {am} back on land.",
        why: "A life jacket helps a body float.",
    },
    Phrases {
        symbol: "life_jacket_on",
        label: "Life jacket on",
        happens: &[
            "{I} {put} on a life jacket.",
            "The buckles close with a click.",
        ],
        who: "{My} helper looks at each buckle.",
        strong: &["A life jacket may feel thick and tight."],
        helps: "{I} {can} close a buckle or ask for help.",
        why: "A life jacket helps a body float.",
    },
    Phrases {
        symbol: "get_in_boat",
        label: "Get in the boat",
        happens: &[
            "{I} {get} into the boat with {my} helper.",
            "Then {I} {sit} down in the boat.",
        ],
        who: "A helper holds the boat.",
        strong: &["The boat may rock as people get in."],
        helps: "{I} {can} hold {my} helper’s hand or show Stop.",
        why: "One person at a time keeps the boat steady.",
    },
    Phrases {
        symbol: "canoe",
        label: "Boat",
        happens: &[
            "{I} {sit} in the boat with {my} helper.",
            "The boat goes out on the water and comes back.",
        ],
        who: "{My} helper usually has a paddle too.",
        strong: &["The boat may rock.", "Some water may splash in."],
        helps: "{I} {can} hold the side or show Stop.",
        why: "Sitting low keeps the boat steady.",
    },
    Phrases {
        symbol: "paddle",
        label: "Paddle",
        happens: &[
            "{I} {hold} the paddle with two hands, beside {my} helper.",
            "The flat end pushes the water back.",
        ],
        who: "{My} helper can hold it with {me}.",
        strong: &["The paddle may feel long and wet."],
        helps: "{I} {can} rest the paddle on {my} knees or show Stop.",
        why: "When the water goes back, the boat goes forward.",
    },
    Phrases {
        symbol: "kayak",
        label: "Kayak",
        happens: &[
            "{I} {sit} in the kayak, and {my} helper is beside it.",
            "The paddle goes in on one side, then the other.",
        ],
        who: "{My} helper has a hand on the kayak.",
        strong: &["The kayak may rock.", "Drops may run down the paddle."],
        helps: "{I} {can} hold the sides or show Stop.",
        why: "Slow paddling keeps the kayak steady.",
    },
    Phrases {
        symbol: "stand_up_board",
        label: "Stand up and paddle",
        happens: &[
            "{I} {go} on the wide board, and {my} helper holds it.",
            "On the board people sit, kneel or stand.",
        ],
        who: "{My} helper stands in the water beside the board.",
        strong: &["The board may rock."],
        helps: "{I} {can} stay sitting or show Stop.",
        why: "A long paddle moves the board.",
    },
    Phrases {
        symbol: "sail_boat",
        label: "Sail boat",
        happens: &[
            "{I} {sit} in the sail boat with {my} helper.",
            "The wind pushes the sail, and the boat moves.",
        ],
        who: "A helper steers the boat.",
        strong: &[
            "The sail may flap and be loud.",
            "The boat may lean to one side.",
        ],
        helps: "{I} {can} hold the side or show Stop.",
        why: "A sail boat uses the wind to move.",
    },
    Phrases {
        symbol: "pull_rope",
        label: "Pull",
        happens: &[
            "{I} {pull} the rope with {my} helper.",
            "When the rope moves, the sail moves.",
        ],
        who: "{My} helper holds the end of the rope.",
        strong: &["The rope may feel rough or wet."],
        helps: "{I} {can} pull a little or show Stop.",
        why: "Two people can pull more than one.",
    },
    Phrases {
        symbol: "heads_down",
        label: "Heads down",
        happens: &[
            "{I} {put} {my} head down, beside {my} helper.",
            "The pole of the sail goes across the boat.",
        ],
        who: "Everyone in the boat does the same.",
        strong: &["The call may be loud, and the sail may flap."],
        helps: "{I} {can} put a hand on {my} head or show Stop.",
        why: "Low heads leave room for the pole.",
    },
    Phrases {
        symbol: "steer",
        label: "Steer",
        happens: &[
            "{I} {hold} the tiller beside {my} helper.",
            "The tiller is the stick that turns the boat.",
        ],
        who: "{My} helper sits close to {me} in the boat.",
        strong: &["The tiller may shake or push."],
        helps: "{I} {can} let {my} helper steer, or show Stop.",
        why: "When the tiller goes left, the boat goes right.",
    },
];
