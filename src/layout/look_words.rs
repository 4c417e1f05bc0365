//! Points of the check list in a word or two, for sheets where they are only ticked.

use crate::model::looks::Look;

/// A point in short.
pub(super) const fn short(look: Look) -> &'static str {
    match look {
        Look::Patrol => "patrol spoken to",
        Look::Flags => "flags, area",
        Look::Notices => "notices",
        Look::Wind => "wind",
        Look::Uv => "UV Index",
        Look::Heat => "heat, cold",
        Look::Storm => "storm, thunder",
        Look::Waves => "waves",
        Look::Currents => "currents, drift",
        Look::Tide => "tide",
        Look::Depth => "depth, drop-offs",
        Look::Clarity => "clear water",
        Look::WaterWarmth => "water warmth",
        Look::Animals => "stingers, animals",
        Look::Weed => "weed",
        Look::Litter => "glass, hooks",
        Look::Holes => "holes",
        Look::HotGround => "hot ground",
        Look::Others => "dogs, craft, noise",
        Look::Access => "way in, parking",
        Look::Toilets => "toilets open",
        Look::Shade => "shade",
        Look::Quiet => "quiet place",
        Look::Emergency => "name of the place",
        Look::Boundary => "stop line",
        Look::Recall => "signals tried",
        Look::Rescue => "rescue aids",
        Look::Phone => "telephone",
        Look::FirstAid => "first-aid kit",
        Look::Adults => "adults",
        Look::Participants => "participants",
    }
}
