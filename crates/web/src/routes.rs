//! Every address.

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::middleware;
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use tower_http::compression::CompressionLayer;

use crate::app::App;
use crate::fault::Fault;
use crate::pages;
use crate::{api, assets, guard};

/// Largest body that is read.
const LARGEST_BODY: usize = 128 * 1024;

/// The server's answers to every address.
pub fn router(app: App) -> Router {
    Router::new()
        .route("/", get(pages::apiary::show))
        .route("/hive/{colony}", get(pages::hive::show))
        .route("/hive/{colony}/note", post(pages::notes::add))
        .route("/hive/{colony}/undo", post(pages::notes::undo))
        .route("/note/{note}", get(pages::notes::show).post(pages::notes::edit))
        .route("/note/{note}/withdraw", post(pages::notes::withdraw))
        .route("/round", get(pages::round::show).post(pages::round::keep))
        .route("/round/sheet", get(pages::sheet::show))
        .route("/flight", get(pages::flight::show).post(pages::flight::tap))
        .route("/setup", get(pages::setup::show))
        .route("/normal", get(pages::normal::show))
        .route("/inside", get(pages::inside::show))
        .route("/source", get(pages::source::list))
        .route("/source/{file}/{name}", get(pages::source::show))
        .route("/settings", get(pages::settings::show).post(pages::settings::keep))
        .route("/day", post(pages::settings::day))
        .merge(api::routes())
        .merge(assets::routes())
        .fallback(missing)
        .layer(DefaultBodyLimit::max(LARGEST_BODY))
        .layer(middleware::from_fn(guard::guard))
        .layer(CompressionLayer::new())
        .with_state(app)
}

/// Answers on a listener until it fails.
///
/// # Errors
/// When the system takes the listener away.
pub async fn serve(listener: tokio::net::TcpListener, app: App) -> std::io::Result<()> {
    axum::serve(listener, router(app)).await
}

async fn missing() -> Response {
    Fault::Missing("such page").into_response()
}
