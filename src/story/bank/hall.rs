//! In the gym hall.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "gym_mat",
        label: "Mat",
        happens: &[
            "{I} {lie} or {sit} on the mat.",
            "The mat is thick and soft.",
        ],
        who: "The trainer can show a movement on it.",
        strong: &["The mat may feel cool or sticky."],
        helps: "{I} {can} put {my} towel on it.",
        why: "A soft mat protects knees and backs.",
    },
    Phrases {
        symbol: "balance_beam",
        label: "Balance",
        happens: &[
            "{I} {go} along the low beam.",
            "One foot goes in front of the other.",
        ],
        who: "{My} helper goes beside {me}.",
        strong: &["The beam may feel narrow."],
        helps: "{I} {can} hold a hand or step down.",
        why: "Arms out to the sides help with balance.",
    },
    Phrases {
        symbol: "bounce",
        label: "Bounce",
        happens: &[
            "{I} {bounce} on the trampoline.",
            "The cloth goes down and up again.",
        ],
        who: "One person bounces at a time.",
        strong: &["The trampoline may squeak."],
        helps: "{I} {can} bounce small, or sit.",
        why: "Bouncing is good for legs and balance.",
    },
    Phrases {
        symbol: "climb",
        label: "Climb",
        happens: &["{I} {climb} up the bars.", "Then {I} {climb} down again."],
        who: "{My} helper stands close to {me}.",
        strong: &["The bars may feel hard or cold."],
        helps: "{I} {can} stay low and come down at any time.",
        why: "Climbing is good for hands, arms and legs.",
    },
    Phrases {
        symbol: "hang",
        label: "Hang",
        happens: &[
            "{I} {hold} the bar and {hang} by {my} hands.",
            "Then {my} feet come down again.",
        ],
        who: "{My} helper stands beside {me}.",
        strong: &["{My} hands may get tired."],
        helps: "{I} {can} keep {my} feet on the ground.",
        why: "Hanging stretches the arms.",
    },
    Phrases {
        symbol: "roll_over",
        label: "Roll",
        happens: &[
            "{I} {roll} over on the mat.",
            "{My} chin goes to {my} chest, and {my} back is round.",
        ],
        who: "The trainer shows it and helps.",
        strong: &["The room may seem to turn for a moment."],
        helps: "{I} {can} lie flat and roll sideways.",
        why: "A round back rolls softly.",
    },
    Phrases {
        symbol: "scooter_board",
        label: "Roll on a board",
        happens: &[
            "{I} {lie} on the board and {push} with {my} hands.",
            "The board rolls over the floor.",
        ],
        who: "Other people may roll at the same time.",
        strong: &["The wheels may be loud."],
        helps: "{I} {can} sit on it or ask for a pull.",
        why: "Pushing is good for the arms.",
    },
    Phrases {
        symbol: "obstacle_course",
        label: "Course",
        happens: &[
            "{I} {go} over, under and through things.",
            "There may be a bench, a hoop and a tunnel.",
        ],
        who: "People go one after the other.",
        strong: &["The hall may be loud."],
        helps: "{I} {can} go round any part.",
        why: "Each part moves the body in another way.",
    },
    Phrases {
        symbol: "tunnel",
        label: "Tunnel",
        happens: &[
            "{I} {crawl} through the tunnel.",
            "At the other end {I} {come} out.",
        ],
        who: "{My} helper can wait at the other end.",
        strong: &["It may be dark and narrow inside."],
        helps: "{I} {can} look through it first.",
        why: "Crawling is good for arms and legs.",
    },
    Phrases {
        symbol: "parachute",
        label: "Parachute",
        happens: &[
            "The group lifts a large cloth.",
            "The cloth goes up and comes down.",
        ],
        who: "Each person holds the edge.",
        strong: &["The cloth may rustle and make wind."],
        helps: "{I} {can} hold the edge or watch.",
        why: "It takes many hands to lift a large cloth.",
    },
    Phrases {
        symbol: "sit_down",
        label: "Sit down",
        happens: &["{I} {sit} down.", "There is a bench, a mat or a chair."],
        who: "The group sits down too.",
        strong: &["The seat may feel hard or cold."],
        helps: "{I} {can} choose where {I} {sit}.",
        why: "Sitting rests the legs.",
    },
    Phrases {
        symbol: "stand_up",
        label: "Stand up",
        happens: &["{I} {stand} up.", "Then the next thing starts."],
        who: "The group gets up too.",
        strong: &[],
        helps: "{I} {can} hold on to something or stay seated.",
        why: "Getting up makes the body ready to move.",
    },
    Phrases {
        symbol: "skipping_rope",
        label: "Skip",
        happens: &[
            "{I} {jump} over a rope.",
            "The rope goes over {my} head and under {my} feet.",
        ],
        who: "Two helpers can turn a long rope.",
        strong: &["The rope may touch {my} legs."],
        helps: "{I} {can} step over a rope that lies still.",
        why: "Jumping is good for the legs.",
    },
];
