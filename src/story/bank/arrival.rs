//! Coming, meeting and getting ready.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "arrive",
        label: "Arrive",
        happens: &[
            "{I} {come} with {my} {grown-up|family}.",
            "{My} helper usually meets {me} there.",
        ],
        who: "Other people come at the same time.",
        strong: &["There may be many people and many voices."],
        helps: "{I} {can} look around first.",
        why: "Looking around is a good way to start.",
    },
    Phrases {
        symbol: "say_hello",
        label: "Hello",
        happens: &[
            "{I} {meet} {my} group.",
            "People say hello in different ways.",
        ],
        who: "The trainer and the helpers say hello too.",
        strong: &["Many people may talk at the same time."],
        helps: "{I} {can} wave, look, sign or show a card.",
        why: "Hello tells people that {I} {am} here.",
    },
    Phrases {
        symbol: "welcome_circle",
        label: "Circle",
        happens: &[
            "The group sits together in a circle.",
            "The trainer shows the tiles for today.",
        ],
        who: "{My} helper usually sits beside {me}.",
        strong: &["People may sit close to {me}."],
        helps: "{I} {can} choose a place with more space.",
        why: "In a circle, people can see each other.",
    },
    Phrases {
        symbol: "roll_call",
        label: "Who is here",
        happens: &[
            "The trainer says the names, one by one.",
            "Each person answers in their own way.",
        ],
        who: "The group listens to the names.",
        strong: &["Some answers may be loud."],
        helps: "{I} {can} lift a hand, speak or show a card.",
        why: "This way the trainer knows who is here.",
    },
    Phrases {
        symbol: "name_mark",
        label: "My name",
        happens: &["A tag with {my} name goes on {my} shirt."],
        who: "The helpers may wear tags too.",
        strong: &["The tag may feel stiff."],
        helps: "{I} {can} put the tag on {my} bag.",
        why: "A tag helps people say {my} name.",
    },
    Phrases {
        symbol: "bags_here",
        label: "Bags here",
        happens: &[
            "{I} {put} {my} bag in its place.",
            "The bag stays there until {I} {go} home.",
        ],
        who: "Other people put their bags there too.",
        strong: &[],
        helps: "{I} {can} keep one thing from the bag with {me}.",
        why: "In one place, bags are easy to find.",
    },
    Phrases {
        symbol: "shoes_off",
        label: "Shoes off",
        happens: &[
            "{I} {take} off {my} shoes and socks.",
            "The shoes stay together in one place.",
        ],
        who: "{My} helper can open a strap or a knot.",
        strong: &["The ground may feel warm, cool or rough."],
        helps: "{I} {can} use a mat or water shoes.",
        why: "Sand and water stay out of the shoes.",
    },
    Phrases {
        symbol: "swim_top_on",
        label: "Swim top on",
        happens: &[
            "{I} {put} on {my} swim top.",
            "{My} head goes in first, then {my} arms.",
        ],
        who: "{My} helper can hold the sleeves.",
        strong: &["The top may feel tight.", "It may be dark for a moment."],
        helps: "{I} {can} ask {my} helper to pull slowly.",
        why: "A swim top looks after skin in the sun.",
    },
    Phrases {
        symbol: "sunscreen",
        label: "Sunscreen",
        happens: &[
            "Sunscreen goes on {my} skin.",
            "It goes on face, ears, neck, arms and legs.",
        ],
        who: "{My} helper can hold the bottle.",
        strong: &["Sunscreen may feel cold or sticky.", "It may smell strong."],
        helps: "{I} {can} rub it in or ask for help.",
        why: "Sunscreen looks after skin.",
    },
    Phrases {
        symbol: "hat_on",
        label: "Hat on",
        happens: &[
            "{I} {put} on {my} hat.",
            "The hat makes shade for {my} face.",
        ],
        who: "The helpers usually wear hats too.",
        strong: &["A hat may press a little or feel warm."],
        helps: "{I} {can} move it until it sits well.",
        why: "Shade looks after skin and eyes.",
    },
    Phrases {
        symbol: "bright_vest",
        label: "Bright vest",
        happens: &["{I} {put} on a bright vest.", "It closes at the front."],
        who: "{My} group may wear the same vest.",
        strong: &["The vest may rustle."],
        helps: "{I} {can} wear it open or closed.",
        why: "A bright vest is easy to see from far away.",
    },
    Phrases {
        symbol: "look_at_plan",
        label: "Look at my plan",
        happens: &[
            "{I} {look} at {my} plan with {my} helper.",
            "The tiles show what comes first and what comes next.",
        ],
        who: "{My} helper points to the first tile.",
        strong: &[],
        helps: "{I} {can} touch the tiles and ask about them.",
        why: "A plan shows what is coming.",
    },
    Phrases {
        symbol: "song",
        label: "Song",
        happens: &[
            "The group sings a song.",
            "Some people sing, and some listen.",
        ],
        who: "The trainer starts the song.",
        strong: &["The singing may be loud."],
        helps: "{I} {can} sing, listen or wear ear muffs.",
        why: "A song is something a group can do together.",
    },
];
