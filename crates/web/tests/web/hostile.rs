//! Hostile input is refused or shown as text; never a fault of the server.

use axum::body::Body;
use axum::http::{Method, Request, StatusCode};
use serde_json::json;

use crate::support::{Served, demo, run, run_bare, well_formed};

const SCRIPT: &str = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>";

#[test]
fn a_script_in_any_field_is_refused_or_shown_as_text() {
    run(|served| async move {
        let alder = served.colony("Alder");
        let note = format!("/hive/{alder}/note");
        let dead = format!("/dead/{alder}");
        let forms: [(&str, Vec<(&str, &str)>); 10] = [
            (&dead, vec![("visit", SCRIPT), ("on", SCRIPT), ("small-cluster", "yes")]),
            (&dead, vec![("visit", SCRIPT), ("small-cluster", SCRIPT)]),
            ("/losses", vec![("visit", SCRIPT), ("on", SCRIPT), (SCRIPT, SCRIPT)]),
            ("/round", vec![("visit", SCRIPT), ("air", SCRIPT), ("snow", SCRIPT), ("0.dead", SCRIPT)]),
            ("/round", vec![("0.words", SCRIPT)]),
            ("/round", vec![("0.scale", SCRIPT)]),
            (&note, vec![("line", SCRIPT), ("words", SCRIPT)]),
            (&note, vec![("words", SCRIPT), ("on", SCRIPT)]),
            ("/settings", vec![("units", SCRIPT), ("language", SCRIPT), ("currency", SCRIPT), ("colony", SCRIPT)]),
            ("/day", vec![("day", SCRIPT)]),
        ];
        for (path, pairs) in forms {
            let answer = served.post(path, &pairs).await;
            assert!(
                answer.status == StatusCode::SEE_OTHER || answer.status.is_client_error(),
                "{path}: {}",
                answer.status
            );
            harmless(path, &answer.body);
        }
        for path in [
            "/normal?found=",
            "/setup?try=",
            "/source?find=",
            "/setup?hive=",
            "/inside?hive=",
            "/round?kept=",
            "/losses?season=",
            "/losses?club=",
            "/losses?added=",
            "/losses?kept=",
            "/dead/",
            "/feed?feeder=",
            "/fit?guess=1&g0=",
        ] {
            let path = format!("{path}%3Cscript%3Ealert(1)%3C%2Fscript%3E%22%27");
            let answer = served.get(&path).await;
            assert!(!answer.status.is_server_error(), "{path}");
            harmless(&path, &answer.body);
        }
        served.settled().await;
        harmless("the hive", &served.get(&format!("/hive/{alder}")).await.body);
        assert!(
            served.get(&format!("/hive/{alder}")).await.body.contains("&lt;script&gt;"),
            "free words are shown as text"
        );
    });
}

fn harmless(path: &str, page: &str) {
    assert!(!page.contains("<script>alert") && !page.contains("<img src=x"), "{path} lets a script through");
    if page.starts_with("<!DOCTYPE") {
        assert_eq!(well_formed(page), Ok(()), "{path}");
    }
}

#[test]
fn hostile_names_of_yard_hive_and_colony_are_text_on_every_page() {
    let mut yard = demo();
    yard.name = SCRIPT.to_owned();
    yard.colonies[0].name = SCRIPT.to_owned();
    yard.hives[0].name = SCRIPT.to_owned();
    yard.money.currency = SCRIPT.to_owned();
    run_bare(async {
        let served = Served::open_yard(None, yard).await;
        served.settled().await;
        let hive = format!("/hive/{}", served.yard.colonies[0].id.0);
        let dead = format!("/dead/{}?step=2&small-cluster=yes", served.yard.colonies[0].id.0);
        for page in [
            "/",
            "/round",
            "/round/sheet",
            "/flight",
            "/setup",
            "/normal",
            "/inside",
            "/settings",
            "/dead",
            "/losses",
            &hive,
            &dead,
        ] {
            let answer = served.get(page).await;
            assert_eq!(answer.status, StatusCode::OK, "{page}");
            harmless(page, &answer.body);
        }
    });
}

#[test]
fn large_bodies_bad_ids_path_tricks_and_wrong_methods_are_refused() {
    run(|served| async move {
        let large = "x".repeat(10 << 20);
        for (method, path, kind) in [
            (Method::POST, "/round".to_owned(), "application/x-www-form-urlencoded"),
            (Method::PUT, format!("/api/notes/{}", served.colony("Alder")), "application/json"),
        ] {
            let request = Request::builder().method(method).uri(&path).header("content-type", kind);
            let answer = served.ask(request.body(Body::from(large.clone())).unwrap()).await;
            assert_eq!(answer.status, StatusCode::PAYLOAD_TOO_LARGE, "{path}");
        }
        for path in [
            "/hive/1",
            "/hive/..%2F..%2Fetc%2Fpasswd",
            "/hive/%00",
            "/note/00000000-0000-0000-0000-000000000000",
            "/note/%FF%FE",
            "/api/notes/x",
            "/source/..%2F..%2FCargo.toml/x",
            "/../../etc/passwd",
            "/nothing",
            "/source/winter_parameters/",
        ] {
            let answer = served.get(path).await;
            assert!(answer.status.is_client_error(), "{path}: {}", answer.status);
            assert!(!answer.body.contains("root:"), "{path}");
        }
        for (method, path) in
            [(Method::DELETE, "/"), (Method::PUT, "/round"), (Method::POST, "/api/now"), (Method::TRACE, "/settings")]
        {
            let answer = served.ask(Request::builder().method(&method).uri(path).body(Body::empty()).unwrap()).await;
            assert_eq!(answer.status, StatusCode::METHOD_NOT_ALLOWED, "{method} {path}");
        }
        for body in ["", "{", "[]", "null", "{\"visit\":1}", "{\"unknown\":true}"] {
            let path = format!("/api/notes/{}", served.colony("Alder"));
            let request = Request::put(path).header("content-type", "application/json").body(Body::from(body));
            let answer = served.ask(request.unwrap()).await;
            assert!(answer.status.is_client_error(), "{body}: {}", answer.status);
        }
    });
}

#[test]
fn another_sites_page_and_a_foreign_host_name_are_refused() {
    run(|served| async move {
        let before = served.store.yard(served.yard.id).await.unwrap().unwrap().notes.len();
        let own = "127.0.0.1:8462";
        for (host, origin, site) in [
            (own, Some("http://evil.example"), None),
            (own, Some("null"), None),
            (own, Some("https://127.0.0.1:8462"), None),
            (own, Some("http://127.0.0.1:9999"), None),
            (own, None, Some("cross-site")),
            (own, None, Some("same-site")),
            ("evil.example", Some("http://evil.example"), None),
            ("127.0.0.1.evil.example:8462", None, None),
        ] {
            let mut request = Request::post("/round")
                .header("host", host)
                .header("content-type", "application/x-www-form-urlencoded");
            if let Some(origin) = origin {
                request = request.header("origin", origin);
            }
            if let Some(site) = site {
                request = request.header("sec-fetch-site", site);
            }
            let answer = served.ask(request.body(Body::from("0.hum=hum%3Dheard+by+ear")).unwrap()).await;
            assert_eq!(answer.status, StatusCode::FORBIDDEN, "{host} {origin:?} {site:?}");
        }
        let read = Request::get("/").header("host", "evil.example").body(Body::empty()).unwrap();
        assert_eq!(served.ask(read).await.status, StatusCode::FORBIDDEN, "a name that was made to point here");
        assert_eq!(served.store.yard(served.yard.id).await.unwrap().unwrap().notes.len(), before);
    });
}

#[test]
fn every_answer_carries_the_policy() {
    run(|served| async move {
        for path in ["/", "/nothing", "/api/now", "/snowhum.css", "/hive/1"] {
            let headers = served.get(path).await.headers;
            let policy = headers["content-security-policy"].to_str().unwrap();
            assert!(policy.starts_with("default-src 'none'") && !policy.contains("unsafe"), "{path}");
            assert_eq!(headers["x-content-type-options"], "nosniff", "{path}");
            assert_eq!(headers["x-frame-options"], "DENY", "{path}");
        }
    });
}

#[test]
fn too_much_in_one_note_is_refused() {
    run(|served| async move {
        let mut note = json!({
            "visit": served.colony("Birch"), "colony": served.colony("Alder"), "at": "2026-02-07T10:00:00Z",
            "seen": vec!["hum=heard by ear"; 41],
        });
        let path = format!("/api/notes/{}", served.colony("Aspen"));
        assert_eq!(served.put(&path, &note).await.status, StatusCode::UNPROCESSABLE_ENTITY);
        note["seen"] = json!([]);
        note["words"] = json!("w".repeat(501));
        assert_eq!(served.put(&path, &note).await.status, StatusCode::UNPROCESSABLE_ENTITY);
        note["words"] = json!("a bright day\u{0}");
        note["air"] = json!("900 C");
        assert_eq!(served.put(&path, &note).await.status, StatusCode::UNPROCESSABLE_ENTITY);
    });
}
