//! The kinds of sheets, what they are called, and for whom they are.

/// A kind of sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SheetKind {
    /// One participant's whole board in large print.
    LargePrint,
    /// Removable tiles, true to size.
    Tiles,
    /// Where the tiles are laid, with a finished place.
    BaseBoard,
    /// Help, stop, break, toilet, quiet place, finished.
    Cards,
    /// The story to go through before the day.
    Story,
    /// The story as a booklet of half the paper, to fold.
    Booklet,
    /// The story on one page, for a door or a wall.
    StoryPage,
    /// The group's timetable as large cards for the circle.
    GroupWall,
    /// What one participant's helper needs to know.
    HelperCard,
    /// The club's songs and chants in large print, for families.
    Words,
    /// Timetable with times, for the coordinator.
    SessionSheet,
    /// What is called off and all that follows, for the coordinator; only when something is.
    ChangeSheet,
    /// Who is here, and how many, for the coordinator.
    Roll,
    /// What to look at in the place, for the coordinator.
    LookList,
    /// A slip for each participant to describe them on at arrival, folded and sealed.
    TodaySlip,
    /// How much there is to print and to make, and what to do step by step.
    PrintRun,
    /// Every sheet of tiles and every pouch with its cuts numbered.
    CutList,
    /// What lies under an open pouch while it is filled, true to size.
    PouchGuide,
    /// Which tiles and things go into whose pouch.
    PackList,
    /// Labels for the pouches and the shared box.
    Labels,
    /// The club's own pictures and what is said about them, for the coordinator.
    PictureList,
    /// A page that tests the printer.
    TestPage,
}

impl SheetKind {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 22] = [
        Self::LargePrint,
        Self::Tiles,
        Self::BaseBoard,
        Self::Cards,
        Self::Story,
        Self::Booklet,
        Self::StoryPage,
        Self::GroupWall,
        Self::HelperCard,
        Self::Words,
        Self::SessionSheet,
        Self::ChangeSheet,
        Self::Roll,
        Self::LookList,
        Self::TodaySlip,
        Self::PrintRun,
        Self::CutList,
        Self::PouchGuide,
        Self::PackList,
        Self::Labels,
        Self::PictureList,
        Self::TestPage,
    ];

    /// Those that an evening usually takes: all but the page that tests the printer, the further
    /// forms of the story, and the list of own pictures.
    pub fn usual() -> Vec<Self> {
        let further = [
            Self::TestPage,
            Self::Booklet,
            Self::StoryPage,
            Self::PictureList,
        ];
        let usual = Self::ALL.into_iter().filter(|k| !further.contains(k));
        usual.collect()
    }

    /// As shown to people.
    pub const fn label(self) -> &'static str {
        match self {
            Self::LargePrint => "Large-print board",
            Self::Tiles => "Tiles",
            Self::BaseBoard => "Base board",
            Self::Cards => "Always-there cards",
            Self::Story => "Story",
            Self::Booklet => "Story booklet",
            Self::StoryPage => "Story on one page",
            Self::GroupWall => "Group wall",
            Self::HelperCard => "Helper card",
            Self::Words => "Words sheet",
            Self::SessionSheet => "Session sheet",
            Self::ChangeSheet => "Change sheet",
            Self::Roll => "Roll sheet",
            Self::LookList => "What to look at",
            Self::TodaySlip => "Description of today",
            Self::PrintRun => "Print run",
            Self::CutList => "Cut list",
            Self::PouchGuide => "Pouch guide",
            Self::PackList => "Pack list",
            Self::Labels => "Storage labels",
            Self::PictureList => "Own pictures",
            Self::TestPage => "Printer test page",
        }
    }

    /// As typed on a command line and used in file names.
    pub const fn word(self) -> &'static str {
        match self {
            Self::LargePrint => "large-print",
            Self::Tiles => "tiles",
            Self::BaseBoard => "base-board",
            Self::Cards => "cards",
            Self::Story => "story",
            Self::Booklet => "booklet",
            Self::StoryPage => "story-page",
            Self::GroupWall => "group-wall",
            Self::HelperCard => "helper-card",
            Self::Words => "words",
            Self::SessionSheet => "session",
            Self::ChangeSheet => "changes",
            Self::Roll => "roll",
            Self::LookList => "look-list",
            Self::TodaySlip => "today-slip",
            Self::PrintRun => "print-run",
            Self::CutList => "cut-list",
            Self::PouchGuide => "pouch-guide",
            Self::PackList => "pack-list",
            Self::Labels => "labels",
            Self::PictureList => "own-pictures",
            Self::TestPage => "test-page",
        }
    }

    /// Whether it is for participants who are chosen, each or together; the others are for the whole
    /// session or the club.
    pub const fn is_personal(self) -> bool {
        !matches!(
            self,
            Self::GroupWall
                | Self::Words
                | Self::SessionSheet
                | Self::ChangeSheet
                | Self::Roll
                | Self::LookList
                | Self::PictureList
                | Self::TestPage
        )
    }

    /// Whether it shows tiles, or how they are made.
    pub(super) const fn is_of_making(self) -> bool {
        matches!(
            self,
            Self::Tiles
                | Self::Cards
                | Self::PrintRun
                | Self::CutList
                | Self::PouchGuide
                | Self::PackList
                | Self::Labels
        )
    }
}
