//! Sentences of the phrase bank as they are read aloud, written out by hand in three voices.

use daystrand::model::people::Voice;
use daystrand::story::voice::Speaker;

use super::bank::of;

/// Picture, with I, with you, with the name Noor; written by hand.
const SPOKEN: [[&str; 4]; 40] = [
    [
        "arrive",
        "I come with my grown-up.",
        "You come with your grown-up.",
        "Noor comes with their grown-up.",
    ],
    [
        "arrive",
        "My helper usually meets me there.",
        "Your helper usually meets you there.",
        "Noor’s helper usually meets them there.",
    ],
    [
        "say_hello",
        "Hello tells people that I am here.",
        "Hello tells people that you are here.",
        "Hello tells people that Noor is here.",
    ],
    [
        "bags_here",
        "The bag stays there until I go home.",
        "The bag stays there until you go home.",
        "The bag stays there until Noor goes home.",
    ],
    [
        "bags_here",
        "I can keep one thing from the bag with me.",
        "You can keep one thing from the bag with you.",
        "Noor can keep one thing from the bag with them.",
    ],
    [
        "swim_top_on",
        "My head goes in first, then my arms.",
        "Your head goes in first, then your arms.",
        "Noor’s head goes in first, then their arms.",
    ],
    [
        "sunscreen",
        "Sunscreen goes on my skin.",
        "Sunscreen goes on your skin.",
        "Sunscreen goes on Noor’s skin.",
    ],
    [
        "jump",
        "I bend my knees and jump.",
        "You bend your knees and jump.",
        "Noor bends their knees and jumps.",
    ],
    [
        "run",
        "At the last cone I slow down and stop.",
        "At the last cone you slow down and stop.",
        "At the last cone Noor slows down and stops.",
    ],
    [
        "copy_me",
        "I try the same movement.",
        "You try the same movement.",
        "Noor tries the same movement.",
    ],
    [
        "freeze",
        "I move, and at the signal I keep still.",
        "You move, and at the signal you keep still.",
        "Noor moves, and at the signal Noor keeps still.",
    ],
    [
        "sand_time",
        "I play in the sand.",
        "You play in the sand.",
        "Noor plays in the sand.",
    ],
    [
        "carry_water",
        "I carry water in a bucket, with my helper.",
        "You carry water in a bucket, with your helper.",
        "Noor carries water in a bucket, with their helper.",
    ],
    [
        "fill_it_in",
        "I push the sand back into the hole.",
        "You push the sand back into the hole.",
        "Noor pushes the sand back into the hole.",
    ],
    [
        "water_time",
        "I go into the water with my helper.",
        "You go into the water with your helper.",
        "Noor goes into the water with their helper.",
    ],
    [
        "water_time",
        "I can go slowly or show Stop.",
        "You can go slowly or show Stop.",
        "Noor can go slowly or show Stop.",
    ],
    [
        "splash",
        "I splash with my hands, beside my helper.",
        "You splash with your hands, beside your helper.",
        "Noor splashes with their hands, beside their helper.",
    ],
    [
        "float",
        "I lie on the water, and my helper holds me.",
        "You lie on the water, and your helper holds you.",
        "Noor lies on the water, and their helper holds them.",
    ],
    [
        "float",
        "With my ears in the water, sounds are softer.",
        "With your ears in the water, sounds are softer.",
        "With Noor’s ears in the water, sounds are softer.",
    ],
    [
        "life_jacket",
        "I can take it off when I am back on land.",
        "You can take it off when you are back on land.",
        "Noor can take it off when Noor is back on land.",
    ],
    [
        "rinse",
        "Water runs over my feet.",
        "Water runs over your feet.",
        "Water runs over Noor’s feet.",
    ],
    [
        "dry",
        "I dry my skin with my towel.",
        "You dry your skin with your towel.",
        "Noor dries their skin with their towel.",
    ],
    [
        "bye",
        "Bye tells people that I go home now.",
        "Bye tells people that you go home now.",
        "Bye tells people that Noor goes home now.",
    ],
    [
        "time_to_go",
        "I take my bag and go with my grown-up.",
        "You take your bag and go with your grown-up.",
        "Noor takes their bag and goes with their grown-up.",
    ],
    [
        "wash_hands",
        "I wash my hands with water and soap.",
        "You wash your hands with water and soap.",
        "Noor washes their hands with water and soap.",
    ],
    [
        "drink",
        "I have a drink.",
        "You have a drink.",
        "Noor has a drink.",
    ],
    [
        "eat_together",
        "I can choose what I eat first.",
        "You can choose what you eat first.",
        "Noor can choose what Noor eats first.",
    ],
    [
        "quiet_place",
        "I can come back when I am ready.",
        "You can come back when you are ready.",
        "Noor can come back when Noor is ready.",
    ],
    [
        "squeeze",
        "Then I let go.",
        "Then you let go.",
        "Then Noor lets go.",
    ],
    [
        "breathe",
        "I breathe in slowly, then out slowly.",
        "You breathe in slowly, then out slowly.",
        "Noor breathes in slowly, then out slowly.",
    ],
    [
        "wrap_up",
        "I wrap myself in a large towel.",
        "You wrap yourself in a large towel.",
        "Noor wraps themselves in a large towel.",
    ],
    [
        "cold",
        "This card says that I am cold.",
        "This card says that you are cold.",
        "This card says that Noor is cold.",
    ],
    [
        "your_turn",
        "I pass the ball or the thing on.",
        "You pass the ball or the thing on.",
        "Noor passes the ball or the thing on.",
    ],
    [
        "my_turn",
        "Now it is my turn.",
        "Now it is your turn.",
        "Now it is Noor’s turn.",
    ],
    [
        "change",
        "My helper shows me the new tile.",
        "Your helper shows you the new tile.",
        "Noor’s helper shows them the new tile.",
    ],
    [
        "same",
        "I can point to a tile I know.",
        "You can point to a tile you know.",
        "Noor can point to a tile Noor knows.",
    ],
    [
        "hang",
        "I hold the bar and hang by my hands.",
        "You hold the bar and hang by your hands.",
        "Noor holds the bar and hangs by their hands.",
    ],
    [
        "gym_mat",
        "I lie or sit on the mat.",
        "You lie or sit on the mat.",
        "Noor lies or sits on the mat.",
    ],
    [
        "catch_ball",
        "I hold out my hands for the ball.",
        "You hold out your hands for the ball.",
        "Noor holds out their hands for the ball.",
    ],
    [
        "brush_pony",
        "I brush the pony.",
        "You brush the pony.",
        "Noor brushes the pony.",
    ],
];

#[test]
fn verbs_and_pronouns_agree() {
    for [symbol, spoken @ ..] in SPOKEN {
        for (voice, expected) in [Voice::I, Voice::You, Voice::Name].into_iter().zip(spoken) {
            let speaker = Speaker::new(voice, "Noor");
            let said = of(symbol).sentences().map(|t| speaker.say(t));
            assert!(
                said.into_iter().any(|s| s == expected),
                "{symbol}: {expected}"
            );
        }
    }
}
