//! What the program remembers for the person at this computer, not for the club: files opened last,
//! colours, zoom. Losing it is never a reason to stop.

use std::io;
use std::path::{Path, PathBuf};

use etcetera::BaseStrategy as _;
use serde_json::{Map, Value, json};

use super::disk::{Disk, Real, replace};
use super::error::FileError;

/// How many files are remembered.
pub const RECENT: usize = 10;
/// Smallest and largest zoom, in per cent.
pub const ZOOM: std::ops::RangeInclusive<u32> = 50..=300;
/// More is not read: a few paths are a few kilobytes.
const MAX_BYTES: u64 = 256 * 1024;

/// What is remembered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Preferences {
    /// Club files, the one opened last first.
    pub recent: Vec<PathBuf>,
    /// The folder sheets were written to last.
    pub last_folder: Option<PathBuf>,
    /// Colours of the window.
    pub theme: Theme,
    /// Size of everything in the window, in per cent, within [`ZOOM`].
    pub zoom_percent: u32,
    /// How a day is gone through together.
    pub together: GoingThrough,
}

/// How a day is gone through together on this computer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GoingThrough {
    /// Whether what can be pressed is offered one after the other, for switches.
    pub scanning: Scanning,
    /// How long each is offered, in milliseconds, within [`PACE`].
    pub pace_ms: u32,
    /// Whether words are said aloud, where the system has a voice.
    pub voice: bool,
    /// Whether colours are dim and warm, for the evening.
    pub night: bool,
}

impl Default for GoingThrough {
    fn default() -> Self {
        Self {
            scanning: Scanning::Off,
            pace_ms: 2000,
            voice: false,
            night: false,
        }
    }
}

/// Shortest and longest time one thing is offered, in milliseconds. From common practice with
/// switches: half a second is the quickest that is used, ten seconds the slowest.
pub const PACE: std::ops::RangeInclusive<u32> = 500..=10_000;

/// For how many switches things are offered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Scanning {
    /// None.
    #[default]
    Off,
    /// One: it goes on by itself, the switch takes what is offered.
    OneSwitch,
    /// Two: one goes on, the other takes.
    TwoSwitches,
}

impl Scanning {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::Off, Self::OneSwitch, Self::TwoSwitches];

    const fn word(self) -> &'static str {
        match self {
            Self::Off => "off",
            Self::OneSwitch => "one-switch",
            Self::TwoSwitches => "two-switches",
        }
    }
}

impl GoingThrough {
    fn from_fields(fields: &Map<String, Value>) -> Self {
        let first = Self::default();
        let on = |name: &str| fields.get(name).and_then(Value::as_bool).unwrap_or(false);
        let word = fields.get("scanning").and_then(Value::as_str);
        let pace = fields.get("pace_ms").and_then(Value::as_u64);
        Self {
            scanning: Scanning::ALL
                .into_iter()
                .find(|s| Some(s.word()) == word)
                .unwrap_or(first.scanning),
            pace_ms: pace
                .and_then(|p| u32::try_from(p).ok())
                .filter(|p| PACE.contains(p))
                .unwrap_or(first.pace_ms),
            voice: on("voice"),
            night: on("night"),
        }
    }
}

impl Default for Preferences {
    fn default() -> Self {
        Self {
            recent: Vec::new(),
            last_folder: None,
            theme: Theme::System,
            zoom_percent: 100,
            together: GoingThrough::default(),
        }
    }
}

/// Colours of the window.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Theme {
    /// As the system is set.
    #[default]
    System,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
    /// As far apart as can be.
    HighContrast,
}

impl Theme {
    /// All of them, for lists.
    pub const ALL: [Self; 4] = [Self::System, Self::Light, Self::Dark, Self::HighContrast];

    const fn word(self) -> &'static str {
        match self {
            Self::System => "system",
            Self::Light => "light",
            Self::Dark => "dark",
            Self::HighContrast => "high-contrast",
        }
    }
}

impl Preferences {
    /// Puts a file first among those opened last, by its whole path: the next start may be elsewhere.
    pub fn opened(&mut self, path: &Path) {
        let whole = std::path::absolute(path);
        let path = whole.unwrap_or_else(|_| path.to_path_buf());
        self.recent.retain(|p| *p != path);
        self.recent.insert(0, path);
        self.recent.truncate(RECENT);
    }

    /// Forgets a file that is no longer there.
    pub fn gone(&mut self, path: &Path) {
        self.recent.retain(|p| p != path);
    }

    /// Reads them from the file; what is missing or cannot be read is as on the first day.
    pub fn load(path: &Path) -> Self {
        let content = Real.read(path, MAX_BYTES).unwrap_or_default();
        match serde_json::from_slice(&content) {
            Ok(Value::Object(fields)) => Self::from_fields(&fields),
            _ => Self::default(),
        }
    }

    fn from_fields(fields: &Map<String, Value>) -> Self {
        let first = Self::default();
        let text = |name: &str| fields.get(name).and_then(Value::as_str);
        let recent = fields.get("recent").and_then(Value::as_array);
        let zoom = fields.get("zoom_percent").and_then(Value::as_u64);
        let together = fields.get("together").and_then(Value::as_object);
        Self {
            recent: recent
                .into_iter()
                .flatten()
                .filter_map(|p| p.as_str().map(PathBuf::from))
                .take(RECENT)
                .collect(),
            last_folder: text("last_folder").map(PathBuf::from),
            theme: Theme::ALL
                .into_iter()
                .find(|t| Some(t.word()) == text("theme"))
                .unwrap_or(first.theme),
            zoom_percent: zoom
                .and_then(|z| u32::try_from(z).ok())
                .filter(|z| ZOOM.contains(z))
                .unwrap_or(first.zoom_percent),
            together: together.map_or(first.together, GoingThrough::from_fields),
        }
    }

    /// Writes them to the file.
    ///
    /// # Errors
    /// When that fails: worth a word at most, for nothing of a club depends on it.
    pub fn save(&self, path: &Path) -> Result<(), FileError> {
        // A path that is not text cannot be written down; it is left out.
        let recent: Vec<&str> = self.recent.iter().filter_map(|p| p.to_str()).collect();
        let value = json!({
            "recent": recent,
            "last_folder": self.last_folder.as_ref().and_then(|p| p.to_str()),
            "theme": self.theme.word(),
            "zoom_percent": self.zoom_percent,
            "together": {
                "scanning": self.together.scanning.word(),
                "pace_ms": self.together.pace_ms,
                "voice": self.together.voice,
                "night": self.together.night,
            },
        });
        let write = || -> io::Result<()> {
            let text = serde_json::to_string_pretty(&value)?;
            if let Some(folder) = path.parent() {
                Real.create_folder(folder)?;
            }
            replace(&Real, path, text.as_bytes(), None, || ())
        };
        write().map_err(|e| FileError::writing(path, &e))
    }
}

/// Where this computer keeps such things for this person: `~/.config/daystrand` on Linux, and what is
/// usual elsewhere. `None` when the system does not say.
pub fn usual_path() -> Option<PathBuf> {
    let strategy = etcetera::base_strategy::choose_native_strategy().ok()?;
    let folder = strategy.config_dir().join("daystrand");
    Some(folder.join("preferences.json"))
}
