//! What the program must never say, as patterns of words.
//!
//! A pattern is a row of words; `a|b` is either, `a?` may be missing. Case, hyphens and marks
//! between words do not matter.

/// A claim that is not the program's to make, and what it would sound like.
pub struct Claim {
    pub what: &'static str,
    pub patterns: &'static [&'static str],
}

pub const CLAIMS: &[Claim] = &[
    Claim {
        what: "that something is safe",
        patterns: &[
            "safe|safely|safer|safest|unsafe|harmless",
            "no|without|zero danger|risk|hazard|hazards",
            "danger|risk|hazard free",
            "nothing can|could|will happen|go",
            "out of danger",
        ],
    },
    Claim {
        what: "a go or no-go, or a score of risk",
        patterns: &[
            "good|fine|ok|okay|clear|cleared|right to go|swim|start|enter|proceed|return",
            "go no go",
            "all clear",
            "green light",
            "conditions are|is|look? ok|okay|good|fine|perfect|ideal|suitable|favourable",
            "conditions permit|allow",
            "suitable for swimming|bathing|water|today",
            "do not go|swim today",
            "risk score|level|rating|index",
            "low|medium|high|acceptable risk",
        ],
    },
    Claim {
        what: "that supervision or the number of helpers is sufficient, or that a ratio applies",
        patterns: &[
            "enough supervision|supervisors|watchers|helpers|adults|lifeguards|staff|eyes",
            "sufficient|adequate supervision|supervisors|watchers|helpers|adults|lifeguards|staff",
            "supervision|watchers|helpers|adults|staff is|are? enough|sufficient|adequate|ok|okay",
            "well|fully|properly|adequately|sufficiently supervised|watched|staffed",
            "ratio applies|met|ok|okay|fulfilled|kept",
            "ratio is met|ok|okay|fulfilled|kept|right|legal|sufficient",
        ],
    },
    Claim {
        what: "that something follows a law or a standard",
        patterns: &[
            "complies|comply|complying|compliant|compliance",
            "conforms|conform|conformant|conformity",
            "legal|lawful|statutory|required ratio|limit|minimum|number|requirement",
            "legally|lawfully",
            "meet|meets|met|fulfils|satisfies all|the|every|any? \
             law|laws|regulation|regulations|standard|standards|requirement|requirements|code",
            "approved|endorsed|accredited|certified by|for|to",
            "according to the|all? law|laws|regulations",
        ],
    },
    Claim {
        what: "that data about weather or sea are current",
        patterns: &[
            "current|live|latest conditions|weather|forecast|tide|tides|wind|uv",
            "weather|forecast|tide|tides|sea|conditions|data is|are current|live|accurate|up-to-date",
            "weather|forecast|tide|tides|sea|conditions|data is|are up to date",
            "real time",
            "as of right? now",
        ],
    },
    Claim {
        what: "that a person is qualified",
        patterns: &[
            "qualified|qualifies",
            "competent|proficient",
            "fully|properly|well trained|certified|licensed",
            "certificate|certificates|award|awards is|are valid|current|genuine|good|in-order|ok",
            "may|can supervise|rescue|guard",
        ],
    },
    Claim {
        what: "that it prevents, improves, treats or diagnoses",
        patterns: &[
            "prevent|prevents|prevented|preventing|prevention",
            "stops|avoids|ends|reduces|lowers|less|fewer|no-more \
             drowning|running|bolting|wandering|distress|anxiety|meltdown|meltdowns|accidents",
            "improve|improves|improved|improving|better|good behaviour|behavior",
            "drown|drowning proof",
            "therapy|therapies|therapeutic|therapist|cure|cures|treatment",
            "diagnose|diagnoses|diagnosed|diagnosis",
            "clinically|scientifically|evidence proven|based|tested",
        ],
    },
    Claim {
        what: "a medical or first-aid instruction",
        patterns: &[
            "recovery position",
            "chest compressions",
            "rescue breath|breaths|breathing",
            "start|begin|give|do|perform cpr|resuscitation|compressions",
            "give|take|administer|inject a|the|one|two? \
             dose|medicine|medication|tablet|tablets|insulin|adrenaline",
            "turn|roll|lay|put them|him|her|the-child on|onto their|his|her|the side|back",
            "tilt the|their head",
            "hold|pin them|him|her down",
        ],
    },
    Claim {
        what: "that a tile or a piece meets a toy standard, harms nobody or lasts for ever",
        patterns: &[
            "toy standard|standards|directive",
            "non toxic",
            "nontoxic",
            "waterproof|watertight|sealed|lasts|last|holds for ever",
            "waterproof|watertight|sealed|lasts|last|holds forever",
            "permanently|fully|completely|totally|always|100 waterproof|watertight|sealed",
            "unbreakable|indestructible",
            "child|swallow|choke proof",
            "childproof",
            "cannot|can't|never be? swallowed|tear|peel|come-off|break",
            "too large|big to swallow|choke",
        ],
    },
    Claim {
        what: "that a consent covers more than was ticked",
        patterns: &[
            "consent|consents|agreed|agrees covers|to|includes all|everything|any|anything",
            "full|blanket|general consent",
        ],
    },
    Claim {
        what: "that a translation is correct",
        patterns: &[
            "translation|translations|wording is|are correct|right|accurate|perfect|checked",
            "correct|accurate|perfect|faithful|exact translation|translations",
            "correctly|accurately|perfectly|faithfully translated",
            "translated correctly|accurately|perfectly|faithfully",
        ],
    },
    Claim {
        what: "that someone understands",
        patterns: &[
            "child|children|they|he|she|participant|participants|everyone|everybody|anyone|name|reader \
             can|will|now|fully|has|have? understand|understands|understood",
            "will|can|must understand",
            "easily|fully understood",
            "sure|certain they understand",
        ],
    },
];
