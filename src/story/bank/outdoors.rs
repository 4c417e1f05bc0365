//! Playground, wheels and ponies.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "swing",
        label: "Swing",
        happens: &["{I} {sit} on the swing.", "It goes forward and back."],
        who: "{My} helper can push the swing.",
        strong: &["Air may blow on {my} face."],
        helps: "{I} {can} ask for small pushes or big pushes.",
        why: "Two hands on the ropes keep the body steady.",
    },
    Phrases {
        symbol: "slide",
        label: "Slide",
        happens: &[
            "{I} {sit} at the top and {slide} down.",
            "{My} feet come down first.",
        ],
        who: "{My} helper can wait at the bottom.",
        strong: &["The slide may feel hot, cold or fast."],
        helps: "{I} {can} hold the sides and go slowly.",
        why: "One person at a time keeps the way clear.",
    },
    Phrases {
        symbol: "see_saw",
        label: "See-saw",
        happens: &[
            "{I} {sit} at one end, and a partner at the other.",
            "One end goes up, and the other goes down.",
        ],
        who: "{My} helper can stand beside {me}.",
        strong: &["There may be a bump at the bottom."],
        helps: "{I} {can} hold on with both hands.",
        why: "This takes two people.",
    },
    Phrases {
        symbol: "climbing_frame",
        label: "Climbing frame",
        happens: &["{I} {climb} on the bars.", "Then {I} {climb} down again."],
        who: "{My} helper stands close to {me}.",
        strong: &["The bars may feel hot or cold."],
        helps: "{I} {can} stay on the low bars.",
        why: "Climbing is good for hands, arms and legs.",
    },
    Phrases {
        symbol: "path_walk",
        label: "Path walk",
        happens: &[
            "{I} {go} along the path with {my} helper.",
            "There may be trees and plants beside it.",
        ],
        who: "{My} group goes the same way.",
        strong: &["There may be dogs, birds or bikes."],
        helps: "{I} {can} stop and look.",
        why: "A walk warms the body.",
    },
    Phrases {
        symbol: "helmet_on",
        label: "Helmet on",
        happens: &[
            "{I} {put} on a helmet.",
            "The strap closes under {my} chin.",
        ],
        who: "{My} helper looks at the strap.",
        strong: &["A helmet may feel tight and warm."],
        helps: "{I} {can} close the strap or ask for help.",
        why: "A helmet protects the head.",
    },
    Phrases {
        symbol: "ride_trike",
        label: "Trike",
        happens: &[
            "{I} {ride} the trike.",
            "{My} feet push the pedals, and {my} hands steer.",
        ],
        who: "{My} helper goes beside {me}.",
        strong: &["Bumps may shake the trike."],
        helps: "{I} {can} go slowly or stop.",
        why: "Three wheels keep the trike steady.",
    },
    Phrases {
        symbol: "ride_pony",
        label: "Ride a pony",
        happens: &[
            "{I} {sit} on the pony, and {my} helper is beside {me}.",
            "The ride goes out and comes back.",
        ],
        who: "A helper leads the pony.",
        strong: &["The pony may smell strong and rock a little."],
        helps: "{I} {can} hold the saddle or show Stop.",
        why: "The pony’s steps move the whole body.",
    },
    Phrases {
        symbol: "brush_pony",
        label: "Brush the pony",
        happens: &[
            "{I} {brush} the pony.",
            "The brush goes the way the hair grows.",
        ],
        who: "One helper holds the pony, and {my} helper is with {me}.",
        strong: &["The pony may smell strong and feel warm."],
        helps: "{I} {can} watch first and brush later.",
        why: "Brushing keeps the hair clean.",
    },
];
