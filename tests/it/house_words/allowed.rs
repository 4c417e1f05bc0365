//! What may be said although it holds words of a claim.

/// Sentences that hold such words and claim nothing: file, the whole sentence, why.
pub const ALLOWED: &[(&str, &str, &str)] = &[
    (
        "README.md",
        "It never says that anything is safe: not the sea, the weather, the number of helpers, nor a tile.",
        "says what the program never says",
    ),
    (
        "README.md",
        "No toy standard is claimed.",
        "says what the program never says",
    ),
    (
        "README.md",
        "The program claims no conformity with any named scheme of stories; the numbers beside a \
         story count words and kinds of sentence, and say nothing about whether it is good.",
        "says what the program never says",
    ),
    (
        "assets/help/mind.txt",
        "It never says that anything is safe.",
        "says what the program never says",
    ),
    (
        "src/cli/table.rs",
        "Nothing found does not mean that anything is safe.",
        "says what a check does not mean",
    ),
    (
        "src/ui/people/helper_form.rs",
        "Daystrand does not know who is qualified.",
        "says what the program does not know",
    ),
    (
        "src/story/measure/wording/promise.rs",
        "Nobody can promise that something is safe.",
        "tells a writer why the word is pointed out",
    ),
    (
        "src/story/measure/wording/promise.rs",
        "safe",
        "a word that is looked for in stories and pointed out",
    ),
    (
        "src/story/measure/wording/promise.rs",
        "safest",
        "a word that is looked for in stories and pointed out",
    ),
    (
        "src/story/measure/wording/promise.rs",
        "harmless",
        "a word that is looked for in stories and pointed out",
    ),
    (
        "src/story/measure/syllables/lists.rs",
        "safe",
        "the word as one whose syllables are counted",
    ),
    (
        "icons-src/labels/en-GB.json",
        "unsafe water",
        "typed by whoever looks for the picture that there is no water today",
    ),
    (
        "icons-src/labels/en-US.json",
        "red light green light",
        "the name of a children's game, to find its picture",
    ),
    (
        "icons-src/labels/en-US.json",
        "therapeutic riding",
        "typed by whoever looks for the picture of a pony",
    ),
];
