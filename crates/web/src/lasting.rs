//! Long answers, computed behind the pages: a page is given the last one with its age at once, and waits for none.

use jiff::Timestamp;
use snowhum_say::Message;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::sync::Notify;

/// Questions of a kind that are kept, or computed, at once.
const MOST: usize = 24;

/// An answer as it was last computed; none where none has been yet.
pub(crate) struct Last<T> {
    pub(crate) answer: Option<Result<Arc<T>, Message>>,
    /// When it was computed.
    pub(crate) at: Option<Timestamp>,
    /// Whether something has changed since, so that a newer one is on its way.
    pub(crate) is_behind: bool,
}

impl<T> Last<T> {
    /// One that has not been computed yet.
    pub(crate) const fn awaited() -> Self {
        Self { answer: None, at: None, is_behind: true }
    }

    /// The answer, where it could be given.
    pub(crate) fn told(&self) -> Option<&Arc<T>> {
        self.answer.as_ref()?.as_ref().ok()
    }
}

/// The answers to one kind of question.
pub(crate) struct Lasting<K, T> {
    slots: Mutex<Vec<Slot<K, T>>>,
    done: Notify,
}

struct Slot<K, T> {
    key: K,
    is_running: bool,
    kept: Option<Kept<T>>,
}

struct Kept<T> {
    revision: u64,
    at: Timestamp,
    answer: Result<Arc<T>, Message>,
}

/// What a page is given, and whether the asker must set the computation going.
pub(crate) struct Asked<T> {
    pub(crate) last: Last<T>,
    pub(crate) starts: bool,
}

impl<K: PartialEq + Clone, T> Lasting<K, T> {
    pub(crate) const fn new() -> Self {
        Self { slots: Mutex::new(Vec::new()), done: Notify::const_new() }
    }

    /// The last answer to a question. Where it is of an earlier revision and nobody computes it yet, the asker must, and
    /// must give what comes of it to [`Self::put`].
    pub(crate) fn ask(&self, key: &K, revision: u64) -> Asked<T> {
        let mut slots = self.slots();
        let found = slots.iter().position(|slot| slot.key == *key);
        let Some(at) = found.or_else(|| room(&mut slots, key)) else {
            return Asked { last: Last::awaited(), starts: false };
        };
        let Some(slot) = slots.get_mut(at) else { return Asked { last: Last::awaited(), starts: false } };
        let is_behind = slot.kept.as_ref().is_none_or(|kept| kept.revision < revision);
        let starts = is_behind && !slot.is_running;
        slot.is_running |= starts;
        let kept = slot.kept.as_ref();
        let last = Last { answer: kept.map(|kept| kept.answer.clone()), at: kept.map(|kept| kept.at), is_behind };
        Asked { last, starts }
    }

    /// The last answer, with nothing set going.
    pub(crate) fn last(&self, key: &K, revision: u64) -> Last<T> {
        let slots = self.slots();
        let Some(kept) = slots.iter().find(|slot| slot.key == *key).and_then(|slot| slot.kept.as_ref()) else {
            return Last::awaited();
        };
        Last { answer: Some(kept.answer.clone()), at: Some(kept.at), is_behind: kept.revision < revision }
    }

    /// Keeps what was computed of a revision; of none, that nothing came of it.
    pub(crate) fn put(&self, key: &K, revision: u64, answer: Option<Result<T, Message>>) {
        if let Some(slot) = self.slots().iter_mut().find(|slot| slot.key == *key) {
            slot.is_running = false;
            if let Some(answer) = answer {
                slot.kept = Some(Kept { revision, at: Timestamp::now(), answer: answer.map(Arc::new) });
            }
        }
        self.done.notify_waiters();
    }

    /// Forgets every answer: they are of another yard.
    pub(crate) fn forget(&self) {
        self.slots().retain_mut(|slot| {
            slot.kept = None;
            slot.is_running
        });
    }

    /// Resolves when something was computed after it was made.
    pub(crate) fn done(&self) -> tokio::sync::futures::Notified<'_> {
        self.done.notified()
    }

    fn slots(&self) -> MutexGuard<'_, Vec<Slot<K, T>>> {
        self.slots.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// A place for a new question, the oldest that nobody computes making room; none while all are computed.
fn room<K: Clone, T>(slots: &mut Vec<Slot<K, T>>, key: &K) -> Option<usize> {
    if slots.len() >= MOST {
        let oldest = slots.iter().position(|slot| !slot.is_running)?;
        slots.remove(oldest);
    }
    slots.push(Slot { key: key.clone(), is_running: false, kept: None });
    Some(slots.len() - 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_is_computed_by_one_asker_and_given_to_all_with_its_age() {
        let lasting: Lasting<u8, u8> = Lasting::new();
        assert!(lasting.ask(&0, 1).starts);
        let second = lasting.ask(&0, 1);
        assert!(!second.starts && second.last.is_behind && second.last.answer.is_none());
        lasting.put(&0, 1, Some(Ok(7)));
        let third = lasting.ask(&0, 1);
        assert!(!third.starts && !third.last.is_behind);
        assert_eq!(third.last.told().map(|answer| **answer), Some(7));
        let after = lasting.ask(&0, 2);
        assert!(after.starts && after.last.is_behind && after.last.at.is_some());
        assert_eq!(after.last.told().map(|answer| **answer), Some(7));
    }

    #[test]
    fn questions_beyond_what_is_kept_wait_their_turn() {
        let lasting: Lasting<usize, u8> = Lasting::new();
        assert!((0..MOST).all(|key| lasting.ask(&key, 1).starts));
        assert!(!lasting.ask(&MOST, 1).starts);
        lasting.put(&3, 1, Some(Ok(1)));
        assert!(lasting.ask(&MOST, 1).starts);
        assert!(lasting.ask(&3, 1).last.answer.is_none(), "the oldest made room");
    }

    #[test]
    fn a_computation_that_failed_is_begun_again_and_another_yard_knows_nothing() {
        let lasting: Lasting<u8, u8> = Lasting::new();
        assert!(lasting.ask(&0, 1).starts);
        lasting.put(&0, 1, None);
        assert!(lasting.ask(&0, 1).starts);
        lasting.put(&0, 1, Some(Ok(7)));
        lasting.forget();
        assert!(lasting.last(&0, 1).answer.is_none());
    }
}
