//! What was worked out for a piece of text, kept for the next time it is asked for.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

/// Entries in one generation of one kind; a cache holds at most two generations of each kind.
const GENERATION: usize = 1024;
/// Longer texts, in bytes, are worked out anew each time.
const LONGEST: usize = 1024;
/// Kinds a cache tells apart: two weights by three directions.
const KINDS: usize = 6;

/// Results by text and kind, bounded: when a generation is full the one before it is forgotten.
/// Two threads that miss at once both work the same result out, and either is kept.
pub(super) struct Cache<V> {
    kinds: [Mutex<Generations<V>>; KINDS],
}

struct Generations<V> {
    young: BTreeMap<Box<str>, Arc<V>>,
    old: BTreeMap<Box<str>, Arc<V>>,
}

impl<V> Cache<V> {
    pub(super) fn new() -> Self {
        let empty = |_| {
            Mutex::new(Generations {
                young: BTreeMap::new(),
                old: BTreeMap::new(),
            })
        };
        Self {
            kinds: std::array::from_fn(empty),
        }
    }

    /// The result for `text` in a kind below [`KINDS`], from `make` if it is not at hand.
    pub(super) fn get(&self, text: &str, kind: usize, make: impl FnOnce() -> V) -> Arc<V> {
        if text.len() > LONGEST {
            return Arc::new(make());
        }
        let shelf = &self.kinds[kind % KINDS];
        // A panic elsewhere cannot leave a map half written, so a poisoned lock is still good.
        let open = || shelf.lock().unwrap_or_else(PoisonError::into_inner);
        let found = {
            let mut g = open();
            let young = g.young.get(text).cloned();
            young.or_else(|| {
                let v = g.old.remove(text)?;
                g.keep(text, &v);
                Some(v)
            })
        };
        found.unwrap_or_else(|| {
            let v = Arc::new(make());
            open().keep(text, &v);
            v
        })
    }
}

impl<V> Generations<V> {
    fn keep(&mut self, text: &str, v: &Arc<V>) {
        if self.young.len() >= GENERATION {
            self.old = std::mem::take(&mut self.young);
        }
        self.young.insert(text.into(), Arc::clone(v));
    }
}
