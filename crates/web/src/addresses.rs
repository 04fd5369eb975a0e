//! The router while it is built, with a list of every address in it.

use axum::Router;
use axum::routing::MethodRouter;

use crate::app::App;

/// Addresses with their handlers.
pub(crate) struct Addresses {
    router: Router<App>,
    paths: Vec<&'static str>,
}

impl Addresses {
    pub(crate) fn new() -> Self {
        Self { router: Router::new(), paths: Vec::new() }
    }

    pub(crate) fn route(mut self, path: &'static str, answers: MethodRouter<App>) -> Self {
        self.paths.push(path);
        Self { router: self.router.route(path, answers), paths: self.paths }
    }

    pub(crate) fn merge(mut self, other: Self) -> Self {
        self.paths.extend(other.paths);
        Self { router: self.router.merge(other.router), paths: self.paths }
    }

    /// The router, and the addresses as it writes them.
    pub(crate) fn into_parts(self) -> (Router<App>, Vec<&'static str>) {
        (self.router, self.paths)
    }
}
