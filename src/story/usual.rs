//! Sentences of our own for well-known pictures, for clubs that wrote none. They are used only
//! where the words under the picture are the usual ones, so that they never tell of something
//! else. What may feel or sound strong is said where it is so; nothing is promised.

use crate::model::ids::SymbolId;

/// The sentences for a picture with its usual label, as templates.
pub(super) fn sentences(symbol: &SymbolId, label: &str) -> Option<&'static [&'static str]> {
    let label = label.trim().to_lowercase();
    USUAL
        .iter()
        .find(|(id, usual, _)| *id == symbol.as_str() && usual.to_lowercase() == label)
        .map(|(_, _, sentences)| *sentences)
}

/// Picture, usual label, sentences.
type Usual = (&'static str, &'static str, &'static [&'static str]);

#[rustfmt::skip]
const USUAL: &[Usual] = &[
    ("arrive", "Arrive", &["{I} {come} with {my} grown-up.", "Many people may be there.", "{My} helper says hello."]),
    ("say_hello", "Hello", &["{I} {meet} {my} group.", "{I} {can} wave, smile or look to say hello."]),
    ("welcome_circle", "Circle", &["We sit in a circle.", "{I} {can} sit beside {my} helper."]),
    ("roll_call", "Who is here", &["The leader asks who is here.", "{I} {can} answer in {my} own way."]),
    ("bags_here", "Bags here", &["{I} {put} {my} bag in its place.", "It stays there until {I} {go} home."]),
    ("shoes_off", "Shoes off", &["{I} {take} off {my} shoes.", "The ground may feel warm, cool or rough."]),
    ("swim_top_on", "Swim top on", &["{I} {put} on {my} swim top.", "It may feel tight or stretchy.", "{My} helper can help {me}."]),
    ("sunscreen", "Sunscreen", &["Sunscreen goes on {my} skin.", "It may feel cold or sticky.", "{I} {can} rub it in by {myself} or ask for help."]),
    ("hat_on", "Hat on", &["{I} {put} on {my} hat.", "It keeps the sun off {my} face."]),
    ("look_at_plan", "Look at my plan", &["{I} {look} at {my} plan with {my} helper.", "{I} {can} point to what comes first."]),
    ("warm_up", "Warm up", &["{I} {move} {my} arms and legs.", "{I} {can} copy the trainer."]),
    ("stretch_up", "Stretch", &["{I} {can} stretch up high.", "Then {I} {can} let {my} arms come down."]),
    ("jump", "Jump", &["{I} {can} try to jump.", "{I} {can} jump small or big."]),
    ("run", "Run", &["{I} {run} from one cone to the other.", "{I} {can} run or walk."]),
    ("copy_me", "Copy me", &["The trainer shows a move.", "{I} {can} try the same move."]),
    ("sand_time", "Sand time", &["{I} {can} play in the sand.", "Sand may feel rough, wet or warm.", "{I} {can} brush it off {my} hands."]),
    ("dig", "Dig", &["{I} {can} dig in the sand with a spade.", "Our holes are small.", "We fill them in at the end."]),
    ("build", "Build", &["{I} {can} build with sand.", "It may stand or fall down."]),
    ("fill_bucket", "Fill", &["{I} {can} fill the bucket.", "A full bucket may be heavy."]),
    ("pour", "Pour", &["{I} {can} pour sand or water.", "{I} {can} watch it run."]),
    ("draw_in_sand", "Draw", &["{I} {can} draw in the sand with a finger."]),
    ("find_shells", "Find shells", &["{I} {look} for shells.", "{I} {can} show one to {my} helper."]),
    ("carry_water", "Carry water", &["{I} {carry} water in a bucket.", "Some water may spill."]),
    ("get_the_flag", "Get the flag", &["A stick stands in the sand.", "{I} {can} run or walk to it and pick it up."]),
    ("fill_it_in", "Fill it in", &["We push the sand back into the holes.", "Then the sand is flat again."]),
    ("water_time", "Water time", &["{I} {go} into the water with {my} helper.", "The water may feel cold at first.", "{I} {can} show Stop at any time."]),
    ("walk_to_water", "Walk to the water", &["{I} {walk} to the water with {my} helper.", "We wait at the edge until the trainer says go."]),
    ("feet_in", "Feet in", &["{My} feet go into the water.", "The water may feel cold.", "{I} {can} go in slowly."]),
    ("sit_at_edge", "Sit at the edge", &["{I} {can} sit at the edge of the water with {my} helper.", "The water may touch {my} feet."]),
    ("splash", "Splash", &["{I} {can} splash with {my} hands.", "Drops may land on {my} face."]),
    ("jump_wave", "Jump the wave", &["{I} {stand} in the water with {my} helper.", "The waves may be small or big.", "{I} {can} try to jump."]),
    ("hold_hands", "Hold hands", &["{I} {can} hold {my} helper’s hand.", "{I} {can} let go on dry ground."]),
    ("float", "Float", &["{I} {can} lie on the water.", "{My} helper’s hands are under {me}.", "It may sound quiet with {my} ears in the water."]),
    ("bubbles", "Bubbles", &["{I} {can} blow bubbles in the water.", "It may tickle."]),
    ("ride_board", "Ride the board", &["{I} {can} lie on the board.", "{My} helper holds the board.", "The board may move up and down."]),
    ("watch_waves", "Watch the waves", &["{I} {sit} on the shore and {look} at the waves.", "The waves may sound loud."]),
    ("out_of_water", "Out of the water", &["{I} {walk} out of the water with {my} helper.", "The air may feel cold.", "{I} {can} use {my} towel."]),
    ("favourite", "My best bit", &["{I} {can} show the tile {I} {like} best.", "{I} {can} also pass."]),
    ("rinse", "Rinse", &["Water from the tap takes the sand off.", "It may feel cold."]),
    ("dry", "Dry", &["{I} {dry} {my} skin with {my} towel.", "{My} helper can help {me}."]),
    ("pack_up", "Pack up", &["We put the things away.", "{I} {can} carry one thing."]),
    ("bye", "Bye", &["{I} {can} wave or look to say bye to {my} group."]),
    ("go_home", "Home", &["{I} {go} home with {my} grown-up."]),
    ("toilet", "Toilet", &["{I} {can} go to the toilet now.", "{I} {can} also ask at any other time."]),
    ("wash_hands", "Wash hands", &["{I} {wash} {my} hands with water and soap."]),
    ("drink", "Drink", &["{I} {can} drink some water.", "{My} bottle is with {my} bag."]),
    ("snack", "Snack", &["{I} {can} eat {my} snack.", "{I} {can} sit beside {my} group or {my} helper."]),
    ("get_changed", "Get changed", &["{I} {put} on dry clothes.", "There is a place behind a curtain or a door."]),
    ("shade", "Shade", &["{I} {can} sit in the shade.", "It is usually cooler there."]),
    ("shoes_on", "Shoes on", &["{I} {put} on {my} shoes."]),
    ("quiet_place", "Quiet place", &["{I} {can} go to the quiet place.", "It is usually calm there.", "{I} {can} come back when {I} {am} ready."]),
    ("ear_defenders", "Ear muffs", &["{I} {can} wear {my} ear muffs.", "Sounds may be softer then."]),
    ("sunglasses", "Sunglasses", &["{I} {can} wear {my} sunglasses.", "The light may be softer then."]),
    ("squeeze", "Squeeze", &["{I} {can} squeeze a cushion.", "{I} {can} squeeze soft or strong."]),
    ("break", "Break", &["{I} {can} have a break.", "Then {I} {can} look at {my} plan again."]),
    ("breathe", "Breathe", &["{I} {can} breathe in slowly.", "Then {I} {can} breathe out slowly."]),
    ("water_shoes", "Water shoes", &["{I} {put} on {my} water shoes.", "They can be wet inside."]),
    ("wait", "Wait", &["{I} {can} sit or stand while {I} {wait}.", "{My} helper can show {me} when it is {my} turn."]),
    ("choose", "Choose", &["There are two or three tiles.", "{I} {can} point to the one {I} {choose}."]),
    ("stay_together", "Stay together", &["{My} group stays together.", "{I} {can} walk beside {my} helper."]),
    ("stop_at_line", "Stop at the line", &["There is a line on the ground.", "{I} {stop} at the line and {wait} for {my} helper."]),
    ("life_jacket", "Life jacket", &["{I} {put} on a life jacket.", "It may feel thick and tight.", "{My} helper closes the buckles with {me}."]),
    ("canoe", "Boat", &["{I} {sit} in the boat with a grown-up.", "The boat may rock.", "{I} {can} hold on to the side."]),
    ("paddle", "Paddle", &["{I} {hold} the paddle with two hands.", "{I} {can} push the water back."]),
    ("sail_boat", "Sail boat", &["{I} {sit} in the sail boat with a grown-up.", "The wind may be loud.", "The boat may lean."]),
    ("pool", "Pool", &["{I} {go} to the pool with {my} helper.", "It may be loud and warm inside."]),
    ("pool_steps", "Steps in", &["{I} {go} down the steps into the water.", "{I} {can} hold the rail."]),
    ("gym_mat", "Mat", &["{I} {can} lie or sit on the mat.", "It is usually soft."]),
    ("bounce", "Bounce", &["{I} {can} bounce.", "{I} {can} bounce small or big."]),
];
