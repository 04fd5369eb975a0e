//! Whose turn it is to compute: two of the yard's computations at once would fill the memory of a small machine and would each
//! take twice as long.

use std::sync::Arc;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

use crate::fault::Fault;

/// One computation runs at a time. The estimate waits for the one that runs; long questions queue before that, so that however
/// many they are the estimate is the next.
pub(crate) struct Turns {
    queue: Arc<Semaphore>,
    turn: Arc<Semaphore>,
}

/// A turn; over when it is dropped.
pub(crate) struct Turn {
    // In this order: the turn is given on before the queue moves up.
    _turn: Option<OwnedSemaphorePermit>,
    _queued: Option<OwnedSemaphorePermit>,
}

impl Turns {
    pub(crate) fn new() -> Self {
        let one = || Arc::new(Semaphore::new(1));
        Self { queue: one(), turn: one() }
    }

    /// The turn of the estimate.
    pub(crate) async fn of_estimate(&self) -> Turn {
        Turn { _turn: Arc::clone(&self.turn).acquire_owned().await.ok(), _queued: None }
    }

    /// The turn of a long question.
    pub(crate) async fn of_question(&self) -> Result<Turn, Fault> {
        let queued = Arc::clone(&self.queue).acquire_owned().await.map_err(|_| Fault::Cut)?;
        let turn = Arc::clone(&self.turn).acquire_owned().await.map_err(|_| Fault::Cut)?;
        Ok(Turn { _turn: Some(turn), _queued: Some(queued) })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::sync::Mutex;

    #[test]
    fn the_estimate_goes_before_every_question_that_waits() {
        let runtime = tokio::runtime::Builder::new_current_thread().build().unwrap();
        let order = runtime.block_on(async {
            let (turns, order) = (Arc::new(Turns::new()), Arc::new(Mutex::new(Vec::new())));
            let running = turns.of_question().await.unwrap();
            let asked = |name: &'static str| {
                let (turns, order) = (Arc::clone(&turns), Arc::clone(&order));
                tokio::spawn(async move {
                    let turn = match name {
                        "estimate" => turns.of_estimate().await,
                        _ => turns.of_question().await.unwrap(),
                    };
                    order.lock().unwrap().push(name);
                    tokio::task::yield_now().await;
                    drop(turn);
                })
            };
            let mut waiting = Vec::new();
            for name in ["plan", "film", "estimate"] {
                waiting.push(asked(name));
                tokio::task::yield_now().await;
            }
            drop(running);
            for one in waiting {
                one.await.unwrap();
            }
            order.lock().unwrap().clone()
        });
        assert_eq!(order, ["estimate", "plan", "film"]);
    }
}
