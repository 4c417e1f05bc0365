//! Who may read what: the three classes of visibility, and a wrapper that cannot be read without
//! saying for whom.

/// Who can see a page, from the most open to the most closed.
///
/// Common practice in the trade: what hangs on a board is seen by everyone, a helper's card by one
/// adult, the coordinator's sheet stays sealed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Class {
    /// Others can see it: boards, tiles, stories, the group wall.
    Public,
    /// Held by one helper, private side folded in.
    Helper,
    /// Kept by the coordinator.
    Coordinator,
}

impl Class {
    /// In words, for a page's corner and for messages.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Public => "may be seen by others",
            Self::Helper => "for one helper only",
            Self::Coordinator => "for the coordinator only",
        }
    }
}

/// Something that only pages of a class at least as closed may show. There is no way to read it
/// but [`Guarded::for_page`].
#[derive(Clone, PartialEq, Eq)]
pub struct Guarded<T> {
    class: Class,
    value: T,
}

impl<T: Default> Default for Guarded<T> {
    /// Nothing, and for the most closed class: what was not decided stays closed.
    fn default() -> Self {
        Self::new(Class::Coordinator, T::default())
    }
}

impl<T> Guarded<T> {
    /// Keeps `value` for pages of `class` and above.
    pub const fn new(class: Class, value: T) -> Self {
        Self { class, value }
    }

    /// The value, if a page of this class may show it.
    pub fn for_page(&self, page: Class) -> Option<&T> {
        (page >= self.class).then_some(&self.value)
    }

    /// For the window and the file, where the person who entered it works on it.
    pub const fn for_owner(&self) -> &T {
        &self.value
    }

    /// The most open class that may show it.
    pub const fn class(&self) -> Class {
        self.class
    }
}

impl<T> std::fmt::Debug for Guarded<T> {
    /// Never the value: what is written to a log is seen by others.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Guarded({})", self.class.label())
    }
}
