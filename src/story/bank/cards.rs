//! Cards to ask and answer with: each says what the card is for and what the helper does.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "yes",
        label: "Yes",
        happens: &["This card says Yes.", "It answers a question."],
        who: "{My} helper looks at the card.",
        strong: &[],
        helps: "{I} {can} show it, nod or say it.",
        why: "Cards, signs and words are all good answers.",
    },
    Phrases {
        symbol: "no",
        label: "No",
        happens: &["This card says No.", "It answers a question."],
        who: "{My} helper looks at the card.",
        strong: &[],
        helps: "{I} {can} show it, shake {my} head or say it.",
        why: "No is a good answer too.",
    },
    Phrases {
        symbol: "help",
        label: "Help",
        happens: &[
            "This card asks for help.",
            "{My} helper sees the card and comes.",
        ],
        who: "All the helpers know this card.",
        strong: &[],
        helps: "{I} {can} show it at any time.",
        why: "Asking for help is a good thing to do.",
    },
    Phrases {
        symbol: "stop",
        label: "Stop",
        happens: &[
            "This card says Stop.",
            "{My} helper sees the card and stops.",
        ],
        who: "All the helpers know this card.",
        strong: &[],
        helps: "{I} {can} show it or hold up a flat hand.",
        why: "Stop counts at any time.",
    },
    Phrases {
        symbol: "more",
        label: "More",
        happens: &[
            "This card asks for more.",
            "It may be one more turn, or more of something.",
        ],
        who: "{My} helper shows {me} how much there is.",
        strong: &[],
        helps: "{I} {can} show it after a turn.",
        why: "A card makes clear what a person wants.",
    },
    Phrases {
        symbol: "finished",
        label: "Finished",
        happens: &[
            "This card says Finished.",
            "The tile of a finished activity goes into the pouch.",
        ],
        who: "{My} helper looks at the plan with {me}.",
        strong: &[],
        helps: "{I} {can} show it when {I} {am} finished.",
        why: "The tiles in the pouch show what is done.",
    },
    Phrases {
        symbol: "my_turn",
        label: "My turn",
        happens: &[
            "Now it is {my} turn.",
            "One person starts, and the others wait.",
        ],
        who: "{My} helper shows {me} when it starts.",
        strong: &[],
        helps: "{I} {can} show this card to ask for a turn.",
        why: "Taking turns gives each person time.",
    },
    Phrases {
        symbol: "your_turn",
        label: "Your turn",
        happens: &[
            "Now it is another person’s turn.",
            "{I} {pass} the ball or the thing on.",
        ],
        who: "{My} helper waits with {me}.",
        strong: &[],
        helps: "{I} {can} watch the other person.",
        why: "Taking turns gives each person time.",
    },
];
