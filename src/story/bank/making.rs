//! Music, dance and making things.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "drum",
        label: "Drum",
        happens: &["{I} {play} the drum.", "Hands or sticks make the sound."],
        who: "The trainer usually starts the beat.",
        strong: &["Drums may be loud."],
        helps: "{I} {can} tap softly or wear ear muffs.",
        why: "A drum can be heard and felt.",
    },
    Phrases {
        symbol: "dance",
        label: "Dance",
        happens: &[
            "{I} {move} to the music.",
            "People dance with arms, legs or wheels.",
        ],
        who: "The group dances too.",
        strong: &["The music may be loud."],
        helps: "{I} {can} dance at the side or watch.",
        why: "There are many ways to dance.",
    },
    Phrases {
        symbol: "ribbon",
        label: "Ribbon",
        happens: &[
            "{I} {wave} the ribbon.",
            "It makes circles and curves in the air.",
        ],
        who: "Each person has space round them.",
        strong: &["The ribbon may touch the skin."],
        helps: "{I} {can} make it go fast or slowly.",
        why: "The ribbon goes where the hand goes.",
    },
    Phrases {
        symbol: "listen_music",
        label: "Music",
        happens: &["{I} {listen} to music.", "It comes from a speaker."],
        who: "The group listens too.",
        strong: &["The music may be loud."],
        helps: "{I} {can} move away from the speaker.",
        why: "Music can be heard and felt.",
    },
    Phrases {
        symbol: "shake_maraca",
        label: "Shakers",
        happens: &[
            "{I} {shake} the shakers.",
            "Small pieces inside make the sound.",
        ],
        who: "The group shakes to the song.",
        strong: &["Many shakers may be loud."],
        helps: "{I} {can} shake softly or wear ear muffs.",
        why: "Big and small shakes sound different.",
    },
    Phrases {
        symbol: "clap",
        label: "Clap",
        happens: &["{I} {clap} {my} hands.", "Claps can be slow or fast."],
        who: "The group claps together.",
        strong: &["Clapping may be loud."],
        helps: "{I} {can} clap softly, tap or wave.",
        why: "Clapping makes a beat.",
    },
    Phrases {
        symbol: "paint",
        label: "Paint",
        happens: &[
            "{I} {paint} on paper with a brush.",
            "Then the paint dries.",
        ],
        who: "{My} helper can hold the paper.",
        strong: &["Paint may feel wet and cold."],
        helps: "{I} {can} wipe {my} hands at any time.",
        why: "Different people paint different pictures.",
    },
    Phrases {
        symbol: "cut_and_stick",
        label: "Cut and stick",
        happens: &["{I} {cut} paper and {glue} it on.", "Then the glue dries."],
        who: "{My} helper can hold the paper.",
        strong: &["Glue may feel sticky."],
        helps: "{I} {can} wipe {my} fingers or ask for help.",
        why: "Small pieces can make a new picture.",
    },
    Phrases {
        symbol: "thread_beads",
        label: "Beads",
        happens: &[
            "{I} {put} beads on a lace.",
            "The lace goes through the hole in each bead.",
        ],
        who: "{My} helper can hold the lace.",
        strong: &["Beads may feel small and smooth."],
        helps: "{I} {can} choose the big beads.",
        why: "Threading is good for the fingers.",
    },
    Phrases {
        symbol: "puzzle",
        label: "Puzzle",
        happens: &[
            "{I} {put} puzzle pieces together.",
            "Each piece has one place.",
        ],
        who: "{My} helper can look for pieces too.",
        strong: &[],
        helps: "{I} {can} start with the pieces at the edge.",
        why: "The pieces make a picture.",
    },
    Phrases {
        symbol: "cook",
        label: "Cook",
        happens: &[
            "{I} {help} to make food.",
            "A spoon goes round in the bowl.",
        ],
        who: "{My} helper can hold the bowl.",
        strong: &["Food may smell strong."],
        helps: "{I} {can} smell it first or just stir.",
        why: "Clean hands come first.",
    },
];
