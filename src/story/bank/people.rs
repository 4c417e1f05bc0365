//! Who is there, and staying together.

use super::Phrases;

/// What is said about them.
pub(super) const ROWS: &[Phrases] = &[
    Phrases {
        symbol: "my_helper",
        label: "My helper",
        happens: &[
            "{My} helper is with {me} in the session.",
            "{My} helper knows {my} plan.",
        ],
        who: "A helper shows tiles, waits and helps.",
        strong: &["A helper may come close."],
        helps: "{I} {can} ask for help or for more space.",
        why: "A helper makes it easier to join in.",
    },
    Phrases {
        symbol: "trainer",
        label: "Trainer",
        happens: &[
            "The trainer shows the group what to do.",
            "The trainer knows the plan for the day.",
        ],
        who: "The trainer and the helpers work together.",
        strong: &["The trainer may call loudly or use a whistle."],
        helps: "{I} {can} wear ear muffs or watch first.",
        why: "A trainer helps people learn.",
    },
    Phrases {
        symbol: "lifesaver",
        label: "Lifesaver",
        happens: &[
            "The lifesaver watches the people in the water.",
            "The lifesaver usually wears bright clothes.",
        ],
        who: "The lifesaver helps people in the water.",
        strong: &["The lifesaver may blow a whistle."],
        helps: "{I} {can} wear {my} ear muffs.",
        why: "Bright clothes are easy to see from far away.",
    },
    Phrases {
        symbol: "grown_up",
        label: "My grown-up",
        happens: &[
            "{My} {grown-up|family} knows {me} well.",
            "At the end {I} {go} home with {my} {grown-up|family}.",
        ],
        who: "{My} {grown-up|family} may stay or come back later.",
        strong: &[],
        helps: "{I} {can} ask where {my} {grown-up|family} is.",
        why: "People at home know what helps.",
    },
    Phrases {
        symbol: "friend",
        label: "Friend",
        happens: &[
            "{I} {spend} time with a friend.",
            "Friends can talk, move or sit together.",
        ],
        who: "{My} friend may choose something else.",
        strong: &[],
        helps: "{I} {can} ask a friend to join in.",
        why: "Friends can like different things.",
    },
    Phrases {
        symbol: "group",
        label: "My group",
        happens: &[
            "{My} group does things together.",
            "Each person in the group is different.",
        ],
        who: "A trainer and helpers are with the group.",
        strong: &["A group may be loud."],
        helps: "{I} {can} stay at the side of the group.",
        why: "A group has a place for each person.",
    },
    Phrases {
        symbol: "meeting_spot",
        label: "Meeting spot",
        happens: &[
            "The group meets at the meeting spot.",
            "A tall pole with a round sign may stand there.",
        ],
        who: "{My} helper goes there with {me}.",
        strong: &["Many people may be there."],
        helps: "{I} {can} stay at the side with {my} helper.",
        why: "A tall sign is easy to find from far away.",
    },
    Phrases {
        symbol: "stay_together",
        label: "Stay together",
        happens: &[
            "{My} group stays together.",
            "The people may hold one rope.",
        ],
        who: "The trainer usually goes in front.",
        strong: &["People may come close."],
        helps: "{I} {can} hold the rope or {my} helper’s hand.",
        why: "Together, people are easy to see.",
    },
    Phrases {
        symbol: "walking_frame",
        label: "Walking frame",
        happens: &[
            "{I} {walk} with {my} frame.",
            "The frame goes first, then the feet.",
        ],
        who: "{My} helper goes beside {me}.",
        strong: &["The frame may shake on bumpy ground."],
        helps: "{I} {can} stop and rest.",
        why: "A frame helps with balance.",
    },
    Phrases {
        symbol: "wheelchair",
        label: "Wheelchair",
        happens: &[
            "{I} {go} in {my} wheelchair.",
            "Wheels roll best on hard ground and mats.",
        ],
        who: "{My} helper asks before pushing.",
        strong: &["The wheels may shake on bumpy ground."],
        helps: "{I} {can} show when to go and when to stop.",
        why: "A wheelchair is a way to move.",
    },
    Phrases {
        symbol: "beach_wheelchair",
        label: "Beach wheels",
        happens: &[
            "{I} {ride} over the sand in the beach wheels.",
            "The big, soft wheels roll on the sand.",
        ],
        who: "{My} helper pushes the chair.",
        strong: &["The chair may bump and lean a little."],
        helps: "{I} {can} show when to go and when to stop.",
        why: "Wide wheels stay on top of the sand.",
    },
];
