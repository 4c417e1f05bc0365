//! What the rules for syllables lean on: patterns of letters, and the words that keep no rule.

/// Words of one, two, three and four syllables that the rules get wrong: everyday ones only.
pub(super) const EXCEPTIONS: [&str; 4] = [
    "bye aged",
    "every our ours hour hours flour sour several business maybe ok mrs evening chocolate \
     wednesday safety ninety hundred naked sacred wicked rugged crooked kindred hatred interest \
     opera catholic desperate soldier premier argue colonel being jewel iron quiet giant diamond \
     rescue comfy goodbye breathing lawyer",
    "area idea recipe element interesting interested temperature theatre nuclear karate safari \
     hyena",
    "nevertheless elementary catastrophe cafeteria",
];

/// First parts of compounds, with an e that is silent there.
pub(super) const FRONTS: [&str; 30] = [
    "every", "some", "there", "where", "here", "life", "home", "fore", "wave", "time", "white",
    "fire", "horse", "house", "base", "game", "note", "snake", "lake", "side", "line", "face",
    "space", "stone", "shore", "name", "place", "wide", "guide", "safe",
];

/// Endings before which an e is silent, with their syllables.
pub(super) const TAILS: [(&str, usize); 24] = [
    ("ically", 2),
    ("ever", 2),
    ("ful", 1),
    ("fully", 2),
    ("less", 1),
    ("ness", 1),
    ("ment", 1),
    ("ments", 1),
    ("ly", 1),
    ("some", 1),
    ("self", 1),
    ("selves", 1),
    ("thing", 1),
    ("things", 1),
    ("where", 1),
    ("body", 2),
    ("time", 1),
    ("work", 1),
    ("man", 1),
    ("men", 1),
    ("land", 1),
    ("side", 1),
    ("ship", 1),
    ("board", 1),
];

/// Vowels side by side that are said apart, and consonants that are a syllable.
pub(super) const APART: [&str; 62] = [
    "ia", "ciat", "tiat", "io", "tio$", "iu", "eo$", "eos$", "^geo", "theo", "opean", "orean",
    "aneous", "ua", "uo", "uing", "enuin", "ruin", "luid", "ruid", "uen", "uel", "^suici", "eing",
    "oing", "iing", "eum", "iet", "ier$", "iest$", "ien", "scien", "ism$", "isms$", "thm", "thms",
    "oer", "oem", "oet", "aos$", "rael", "coali", "cooperat", "ea$", "eas$", "^creat", "react",
    "^reali", "recreat", "ire$", "ires$", "ired$", "iego", "naive", "eated$", "ddling", "ggling",
    "bbling", "lyon", "aic$", "aid$", "oic$",
];

/// Where one of those is not said apart after all.
pub(super) const TOGETHER: [&str; 51] = [
    "cia", "tia", "gia$", "gian$", "sia", "lia$", "lian", "liar", "liam", "nia$", "iage", "tio",
    "sio", "cio", "gio", "xio", "shio", "llion", "nion", "nior", "vior", "viour", "qua", "quo",
    "gua", "suade", "tien", "cien", "frien", "fien", "conscien", "guen", "quen", "creatu",
    "^george", "^pier", "frontier", "^priest", "^sea$", "seas$", "^tea$", "^teas$", "^pea$",
    "^peas$", "^yea$", "^plea$", "^pleas$", "^flea$", "^fleas$", "eated$", "aid$",
];
