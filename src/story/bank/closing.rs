//! Looking back, tidying up and going home.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "favourite",
        label: "My best bit",
        happens: &[
            "{I} {choose} one tile from today.",
            "Then {I} {show} it to {my} group.",
        ],
        who: "Other people show their tiles too.",
        strong: &["There may be clapping."],
        helps: "{I} {can} show it, say it or pass.",
        why: "Different people choose different tiles.",
    },
    Phrases {
        symbol: "rinse",
        label: "Rinse",
        happens: &["Water runs over {my} feet.", "It washes the sand off."],
        who: "{My} helper can hold the hose.",
        strong: &["The water may feel cold."],
        helps: "{I} {can} rinse one foot at a time.",
        why: "Clean feet go into shoes more easily.",
    },
    Phrases {
        symbol: "dry",
        label: "Dry",
        happens: &[
            "{I} {dry} {my} skin with {my} towel.",
            "Arms, legs and back get dry.",
        ],
        who: "{My} helper can help with {my} back.",
        strong: &["The towel may feel rough."],
        helps: "{I} {can} rub hard or pat softly.",
        why: "Dry skin gets warm sooner.",
    },
    Phrases {
        symbol: "pack_up",
        label: "Pack up",
        happens: &[
            "The group puts the things away.",
            "Spades, balls and buckets go into the crate.",
        ],
        who: "Other people carry things to the crate too.",
        strong: &["The things may be loud in the crate."],
        helps: "{I} {can} carry something small.",
        why: "Packed things are ready for next time.",
    },
    Phrases {
        symbol: "carry_gear",
        label: "Carry together",
        happens: &[
            "{I} {carry} something with another person.",
            "One person holds one end, and one the other.",
        ],
        who: "The other person goes at the same speed.",
        strong: &["The thing may be heavy."],
        helps: "{I} {can} put it down and rest.",
        why: "Two people can carry more than one.",
    },
    Phrases {
        symbol: "well_done",
        label: "Well done",
        happens: &[
            "People say something kind to each other.",
            "Some people touch hands, and some wave.",
        ],
        who: "{My} helper and {my} group say it too.",
        strong: &["Clapping may be loud."],
        helps: "{I} {can} touch hands, wave or look.",
        why: "Trying something counts too.",
    },
    Phrases {
        symbol: "photo",
        label: "Photo",
        happens: &[
            "Someone takes a photo.",
            "The camera clicks, and the photo is taken.",
        ],
        who: "Other people may be in the photo too.",
        strong: &["The camera may flash."],
        helps: "{I} {can} stay out of the photo.",
        why: "A photo shows what people did today.",
    },
    Phrases {
        symbol: "bye",
        label: "Bye",
        happens: &["{My} group says bye.", "Then the session is finished."],
        who: "The trainer and the helpers say bye too.",
        strong: &["It may be loud when people leave."],
        helps: "{I} {can} wave, look, sign or show a card.",
        why: "Bye tells people that {I} {go} home now.",
    },
    Phrases {
        symbol: "go_home",
        label: "Home",
        happens: &[
            "{I} {go} home with {my} {grown-up|family}.",
            "{My} bag comes home too.",
        ],
        who: "{My} {grown-up|family} usually collects {me}.",
        strong: &[],
        helps: "{I} {can} show {my} plan at home.",
        why: "Home comes at the end of the plan.",
    },
    Phrases {
        symbol: "time_to_go",
        label: "Time to go",
        happens: &[
            "It is time to go.",
            "{I} {take} {my} bag and {go} with {my} {grown-up|family}.",
        ],
        who: "{My} group leaves too.",
        strong: &["Many people may leave at the same time."],
        helps: "{I} {can} wait until there is more space.",
        why: "The plan shows that this is the end.",
    },
];
