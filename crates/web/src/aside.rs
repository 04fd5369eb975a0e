//! Long work, done beside the pages by the threads that compute.
//!
//! Each thread that asks for memory keeps a stock of its own; work on the few threads of the pool needs few stocks.

use std::panic::{AssertUnwindSafe, catch_unwind};
use tokio::sync::oneshot;

use crate::fault::Fault;

/// Does the work and gives what came of it. It is done to the end, though the asker may have left.
pub(crate) async fn aside<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> Result<T, Fault> {
    let (give, take) = oneshot::channel();
    rayon::spawn(move || {
        // A panic here would end the server; it ends this work alone, and the asker is told.
        if let Ok(done) = catch_unwind(AssertUnwindSafe(work)) {
            let _ = give.send(done);
        }
    });
    take.await.map_err(|_| Fault::Cut)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn work_that_fails_ends_alone_and_the_next_is_done() {
        let runtime = tokio::runtime::Builder::new_current_thread().build().unwrap();
        let failed = runtime.block_on(aside(|| -> u8 { panic!("a fault of the program") }));
        assert!(matches!(failed, Err(Fault::Cut)));
        assert_eq!(runtime.block_on(aside(|| 7)).ok(), Some(7));
    }
}
