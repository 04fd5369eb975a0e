//! Reached from other machines: nothing is read or written without signing in, and a link only shows.

use axum::body::Body;
use axum::http::{HeaderMap, Method, Request, StatusCode};
use jiff::{Timestamp, ToSpan};
use serde_json::json;
use snowhum_web::{PassPhrase, Reach, paths, sign_in_code};

use crate::support::{Answer, Served, demo, escaped, run, run_bare, well_formed};

const HOST: &str = "192.168.1.5:8462";
const ORIGIN: &str = "https://192.168.1.5:8462";
const PHRASE: &str = "four frosty winter hives";
/// What opens without signing in: said here anew, so that nothing is opened by the by.
const OPEN: [&str; 5] = ["/sign-in", "/shared/{token}", "/snowhum.css", "/icon.svg", "/manifest.webmanifest"];

/// A yard served to the network, and one who asks.
struct Locked {
    served: Served,
}

impl Locked {
    async fn open() -> Self {
        let reach = Reach::network(["192.168.1.5".to_owned(), "shed.local".to_owned()]);
        let served = Served::reached(None, demo(), reach).await;
        PassPhrase::new(PHRASE).unwrap().keep(&served.store).await.unwrap();
        Self { served }
    }

    /// Asks as a browser does that has these cookies.
    async fn ask(&self, method: Method, path: &str, cookie: &str, body: &str) -> Answer {
        let request = Request::builder().method(method).uri(path).header("host", HOST).header("origin", ORIGIN);
        let request = request.header("accept", "text/html").header("cookie", cookie);
        let request = request.header("content-type", "application/x-www-form-urlencoded");
        self.served.ask(request.body(Body::from(body.to_owned())).unwrap()).await
    }

    async fn get(&self, path: &str, cookie: &str) -> Answer {
        self.ask(Method::GET, path, cookie, "").await
    }

    async fn post(&self, path: &str, cookie: &str, body: &str) -> Answer {
        self.ask(Method::POST, path, cookie, body).await
    }

    async fn try_phrase(&self, phrase: &str) -> Answer {
        self.post("/sign-in", "", &format!("phrase={}", escaped(phrase))).await
    }

    /// Signs in and gives the cookie.
    async fn signed_in(&self) -> String {
        let answer = self.try_phrase(PHRASE).await;
        assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.body);
        cookie(&answer.headers)
    }

    async fn make_link(&self, keeper: &str) -> String {
        let made = self.post("/settings/links", keeper, "name=Aino&days=30").await;
        assert_eq!(made.status, StatusCode::SEE_OTHER, "{}", made.body);
        let page = self.get("/settings", keeper).await.body;
        let start = page.find(&format!("{ORIGIN}/shared/")).unwrap() + ORIGIN.len();
        page[start..].split('"').next().unwrap().to_owned()
    }

    async fn notes(&self) -> usize {
        self.served.store.yard(self.served.yard.id).await.unwrap().unwrap().notes.len()
    }
}

fn cookie(headers: &HeaderMap) -> String {
    headers["set-cookie"].to_str().unwrap().split(';').next().unwrap().to_owned()
}

fn filled(path: &str, served: &Served) -> String {
    let note = served.yard.notes[0].id.0.to_string();
    let known = [("{colony}", served.colony("Alder")), ("{note}", note.clone()), ("{id}", note)];
    let path = known.into_iter().fold(path.to_owned(), |path, (name, value)| path.replace(name, &value));
    path.replace("{file}", "watch_parameters")
        .replace("{name}", "hum_ear")
        .replace("{link}", &uuid::Uuid::nil().to_string())
}

#[test]
fn every_address_but_the_listed_ones_asks_to_sign_in() {
    run_bare(async {
        let locked = Locked::open().await;
        assert!(paths().len() > 30);
        for path in paths().into_iter().filter(|path| !OPEN.contains(path)).chain(["/nothing", "/hive/..%2F", "//evil"])
        {
            let path = filled(path, &locked.served);
            for method in [Method::GET, Method::HEAD, Method::POST, Method::PUT, Method::DELETE] {
                for cookie in ["", "__Host-snowhum=", "__Host-snowhum=0000", "__Host-snowhum-reader=%01"] {
                    let answer = locked.ask(method.clone(), &path, cookie, "0.hum=hum%3Dheard+by+ear").await;
                    let to = answer.headers.get("location").map(|to| to.to_str().unwrap());
                    let is_sent = answer.status == StatusCode::SEE_OTHER && to.unwrap().starts_with("/sign-in");
                    assert!(
                        is_sent || answer.status == StatusCode::UNAUTHORIZED,
                        "{method} {path} {cookie}: {}",
                        answer.status
                    );
                    for colony in &locked.served.yard.colonies {
                        assert!(!answer.body.contains(&colony.name), "{method} {path} names {}", colony.name);
                    }
                }
            }
        }
        for path in ["/sign-in", "/snowhum.css", "/icon.svg", "/manifest.webmanifest"] {
            assert_eq!(locked.get(path, "").await.status, StatusCode::OK, "{path}");
        }
        assert_eq!(locked.notes().await, demo().notes.len());
    });
}

#[test]
fn programs_and_the_round_are_told_in_json_to_sign_in() {
    run_bare(async {
        let locked = Locked::open().await;
        let note = json!({
            "visit": locked.served.colony("Alder"), "colony": locked.served.colony("Alder"),
            "at": "2026-02-07T10:00:00Z", "seen": ["hum=heard by ear"],
        });
        let path = format!("/api/notes/{}", uuid::Uuid::from_u128(7));
        let put = |cookie: &str| {
            let request = Request::put(&path).header("host", HOST).header("origin", ORIGIN).header("cookie", cookie);
            request.header("content-type", "application/json").body(Body::from(note.to_string())).unwrap()
        };
        let refused = locked.served.ask(put("")).await;
        assert_eq!(refused.status, StatusCode::UNAUTHORIZED);
        assert!(serde_json::from_str::<serde_json::Value>(&refused.body).unwrap()["wrong"].is_string());
        let keeper = locked.signed_in().await;
        assert_eq!(locked.served.ask(put(&keeper)).await.status, StatusCode::CREATED, "what waited is sent then");
    });
}

#[test]
fn the_pass_phrase_opens_and_the_cookie_is_bound_to_this_server() {
    run_bare(async {
        let locked = Locked::open().await;
        let answer = locked.post("/sign-in", "", &format!("to=%2Fround&phrase={}", escaped(PHRASE))).await;
        assert_eq!((answer.status, answer.headers["location"].to_str().unwrap()), (StatusCode::SEE_OTHER, "/round"));
        let given = answer.headers["set-cookie"].to_str().unwrap();
        for part in ["__Host-snowhum=", "; Secure", "; HttpOnly", "; SameSite=Strict", "; Path=/;"] {
            assert!(given.contains(part), "{given}");
        }
        let keeper = cookie(&answer.headers);
        for page in ["/", "/round", "/settings", "/api/notes"] {
            assert_eq!(locked.get(page, &keeper).await.status, StatusCode::OK, "{page}");
        }
        let token = keeper.split('=').nth(1).unwrap();
        for (name, value) in locked.served.store.settings().await.unwrap() {
            assert!(!name.contains(token) && !value.contains(token), "{name} holds the token");
            assert!(!value.contains(PHRASE), "{name} holds the pass phrase");
        }
        let away = locked.post("/sign-in", "", &format!("to=%2F%2Fevil.example&phrase={}", escaped(PHRASE))).await;
        assert_eq!(away.headers["location"], "/");
    });
}

#[test]
fn a_cookie_sent_again_after_signing_out_opens_nothing() {
    run_bare(async {
        let locked = Locked::open().await;
        let (phone, laptop) = (locked.signed_in().await, locked.signed_in().await);
        assert_ne!(phone, laptop);
        assert_eq!(locked.post("/sign-out", &phone, "").await.status, StatusCode::SEE_OTHER);
        assert_eq!(locked.get("/", &phone).await.status, StatusCode::SEE_OTHER, "replayed");
        assert_eq!(locked.get("/", &laptop).await.status, StatusCode::OK, "another's stays");
        let again = locked.post("/sign-in", &laptop, &format!("phrase={}", escaped(PHRASE))).await;
        assert_eq!(locked.get("/", &laptop).await.status, StatusCode::SEE_OTHER, "signing in begins a new session");
        let newer = cookie(&again.headers);
        assert_eq!(locked.post("/settings/sign-out-everywhere", &newer, "").await.status, StatusCode::SEE_OTHER);
        assert_eq!(locked.get("/", &newer).await.status, StatusCode::SEE_OTHER);
    });
}

#[test]
fn a_session_ends_by_itself_and_with_a_new_pass_phrase() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        let store = &locked.served.store;
        let all = store.settings().await.unwrap();
        let name = all.keys().find(|name| name.starts_with("gate.session.")).unwrap();
        let now = jiff::Timestamp::now().as_second();
        for (begun, used, is_open) in [(0, 29, true), (0, 31, false), (179, 1, true), (181, 1, false)] {
            store.set(name, &format!("{} {}", now - begun * 86_400, now - used * 86_400)).await.unwrap();
            let status = locked.get("/", &keeper).await.status;
            assert_eq!(status == StatusCode::OK, is_open, "begun {begun} and used {used} days ago: {status}");
        }
        let keeper = locked.signed_in().await;
        PassPhrase::new("another winter, another word").unwrap().keep(store).await.unwrap();
        assert_eq!(locked.get("/", &keeper).await.status, StatusCode::SEE_OTHER);
        assert_eq!(locked.try_phrase(PHRASE).await.status, StatusCode::UNAUTHORIZED);
    });
}

#[test]
fn a_wrong_pass_phrase_opens_nothing_and_many_make_the_right_one_wait() {
    run_bare(async {
        let locked = Locked::open().await;
        for wrong in ["", "wrong", &PHRASE[1..], &format!("{PHRASE} "), &"x".repeat(2_000), "\u{0}"] {
            let answer = locked.try_phrase(wrong).await;
            let is_refused = matches!(answer.status, StatusCode::UNAUTHORIZED | StatusCode::TOO_MANY_REQUESTS);
            assert!(is_refused && !answer.headers.contains_key("set-cookie"), "{wrong}: {}", answer.status);
            well_formed(&answer.body).unwrap();
        }
        let answer = locked.try_phrase(PHRASE).await;
        assert_eq!(answer.status, StatusCode::TOO_MANY_REQUESTS, "the right one waits too");
        assert!(answer.headers["retry-after"].to_str().unwrap().parse::<u64>().unwrap() >= 1);
        tokio::time::sleep(std::time::Duration::from_millis(2_100)).await;
        locked.signed_in().await;
    });
}

#[test]
fn a_hundred_tries_at_once_are_not_all_tried() {
    run_bare(async {
        let locked = std::sync::Arc::new(Locked::open().await);
        let all: Vec<_> = (0..100)
            .map(|at| {
                let locked = std::sync::Arc::clone(&locked);
                tokio::spawn(async move { locked.try_phrase(&format!("wrong {at}")).await.status })
            })
            .collect();
        let mut tried = 0;
        for one in all {
            let status = one.await.unwrap();
            assert!(status.is_client_error(), "{status}");
            tried += usize::from(status == StatusCode::UNAUTHORIZED);
        }
        assert!((1..=5).contains(&tried), "{tried} were tried");
    });
}

#[test]
fn a_try_counts_though_its_asker_hangs_up() {
    run_bare(async {
        let locked = Locked::open().await;
        for _ in 0..6 {
            let asked = locked.try_phrase("wrong and gone");
            let _ = tokio::time::timeout(std::time::Duration::from_millis(1), asked).await;
        }
        assert_eq!(locked.try_phrase(PHRASE).await.status, StatusCode::TOO_MANY_REQUESTS);
    });
}

#[test]
fn another_host_name_or_origin_is_refused_even_when_signed_in() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        let ask = |host: Option<&str>, origin: Option<&str>, site: Option<&str>| {
            let parts = [("host", host), ("origin", origin), ("sec-fetch-site", site)];
            let request = Request::post("/settings/links").header("cookie", &keeper).header("accept", "text/html");
            let request = request.header("content-type", "application/x-www-form-urlencoded");
            let given = parts.into_iter().filter_map(|(name, value)| Some((name, value?)));
            let request = given.fold(request, |request, (name, value)| request.header(name, value));
            request.body(Body::from("name=Eve&days=7")).unwrap()
        };
        for (host, origin, site) in [
            (Some(HOST), Some("https://evil.example"), None),
            (Some(HOST), Some("http://192.168.1.5:8462"), None),
            (Some(HOST), Some("null"), None),
            (Some(HOST), Some("https://shed.local:8462"), None),
            (Some(HOST), None, Some("cross-site")),
            (Some("evil.example:8462"), Some("https://evil.example:8462"), None),
            (Some("192.168.1.6:8462"), None, None),
            (Some("shed.local.evil.example"), None, None),
            (Some("[::1"), None, None),
            (None, None, None),
        ] {
            let answer = locked.served.ask(ask(host, origin, site)).await;
            assert_eq!(answer.status, StatusCode::FORBIDDEN, "{host:?} {origin:?} {site:?}");
        }
        let name = locked.served.ask(ask(Some("SHED.local:8462"), Some("https://SHED.local:8462"), None)).await;
        assert_eq!(name.status, StatusCode::SEE_OTHER, "its own name in capitals");
    });
}

#[test]
fn a_link_shows_the_yard_and_writes_nothing() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        while locked.get("/api/now", &keeper).await.status != StatusCode::OK {
            tokio::time::sleep(std::time::Duration::from_millis(20)).await;
        }
        let link = locked.make_link(&keeper).await;
        let opened = locked.get(&link, "").await;
        assert_eq!(opened.status, StatusCode::OK);
        assert_eq!(opened.headers["referrer-policy"], "no-referrer");
        assert_eq!(opened.headers["cache-control"], "no-store");
        let reader = cookie(&opened.headers);
        let alder = locked.served.colony("Alder");
        for page in ["/", &format!("/hive/{alder}"), "/inside", "/source", "/pictures.css"] {
            let answer = locked.get(page, &reader).await;
            assert_eq!(answer.status, StatusCode::OK, "{page}");
            let forms = answer.body.matches("<form").count();
            let leaving = answer.body.matches("action=\"/sign-out\"").count();
            let asking = answer.body.matches("method=\"get\"").count();
            assert_eq!(forms, leaving + asking, "{page} has a form to write with");
            assert!(!answer.body.contains("/settings") && !answer.body.contains("/note"), "{page}");
        }
        for path in paths() {
            let path = filled(path, &locked.served);
            let answer = locked.post(&path, &reader, "0.hum=hum%3Dheard+by+ear&name=Eve&days=7").await;
            let may = ["/sign-in", "/sign-out"].contains(&path.as_str());
            let is_refused = matches!(answer.status, StatusCode::FORBIDDEN | StatusCode::METHOD_NOT_ALLOWED);
            assert!(may || is_refused, "{path}: {}", answer.status);
        }
        for page in ["/settings", "/round", "/api/notes", "/api/now", "/round.js", "/setup"] {
            assert_eq!(locked.get(page, &reader).await.status, StatusCode::FORBIDDEN, "{page}");
        }
        assert_eq!(locked.notes().await, demo().notes.len());
    });
}

#[test]
fn a_link_tampered_with_or_taken_back_opens_nothing() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        let link = locked.make_link(&keeper).await;
        let reader = cookie(&locked.get(&link, "").await.headers);
        let (front, last) = link.split_at(link.len() - 1);
        let other = if last == "0" { "1" } else { "0" };
        let swapped = link.replacen(&link[8..10], if &link[8..10] == "00" { "01" } else { "00" }, 1);
        for forged in [format!("{front}{other}"), front.to_owned(), format!("{link}0"), swapped, "/shared/x".to_owned()]
        {
            let answer = locked.get(&forged, "").await;
            assert_eq!(answer.status, StatusCode::NOT_FOUND, "{forged}");
            assert!(!answer.headers.contains_key("set-cookie"));
            let cookie = format!("__Host-snowhum-reader={}", forged.trim_start_matches("/shared/"));
            assert_eq!(locked.get("/", &cookie).await.status, StatusCode::SEE_OTHER, "{forged}");
        }
        assert_eq!(locked.get("/", &reader).await.status, StatusCode::OK);
        let id: uuid::Uuid = link["/shared/".len()..][..32].parse().unwrap();
        locked.post(&format!("/settings/links/{id}/take-back"), &keeper, "").await;
        assert_eq!(locked.get("/", &reader).await.status, StatusCode::SEE_OTHER, "taken back");
        assert_eq!(locked.get(&link, "").await.status, StatusCode::NOT_FOUND);
    });
}

#[test]
fn a_link_ends_on_its_day_and_is_made_of_sound_words_alone() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        for wrong in
            ["", "name=&days=7", "name=Aino&days=8", "name=Aino&days=x", &format!("name={}&days=7", "x".repeat(61))]
        {
            assert_eq!(locked.post("/settings/links", &keeper, wrong).await.status, StatusCode::UNPROCESSABLE_ENTITY);
        }
        let link = locked.make_link(&keeper).await;
        let store = &locked.served.store;
        let all = store.settings().await.unwrap();
        let (name, value) = all.iter().find(|(name, _)| name.starts_with("gate.link.")).unwrap();
        let until: serde_json::Value = serde_json::from_str(value).unwrap();
        let ended = value.replace(until["until"].as_str().unwrap(), "2020-01-01T00:00:00Z");
        store.set(name, &ended).await.unwrap();
        assert_eq!(locked.get(&link, "").await.status, StatusCode::NOT_FOUND);
        assert!(!locked.get("/settings", &keeper).await.body.contains("Aino"));
    });
}

#[test]
fn on_the_machine_itself_nobody_signs_in_and_a_link_can_be_tried() {
    run(|served| async move {
        assert_eq!(served.get("/sign-in").await.headers["location"], "/");
        served.post("/settings/links", &[("name", "Aino <b>"), ("days", "7")]).await;
        let page = served.get("/settings").await.body;
        assert!(page.contains("Aino &lt;b&gt;") && page.contains("http://localhost/shared/"));
        let start = page.find("/shared/").unwrap();
        let link = page[start..].split('"').next().unwrap();
        let reader = cookie(&served.get(link).await.headers);
        let ask = |method: Method, path: &str| {
            let request = Request::builder().method(method).uri(path).header("cookie", &reader);
            request.header("accept", "text/html").body(Body::empty()).unwrap()
        };
        assert_eq!(served.ask(ask(Method::GET, "/")).await.status, StatusCode::OK);
        assert_eq!(served.ask(ask(Method::GET, "/settings")).await.status, StatusCode::FORBIDDEN);
        assert_eq!(served.ask(ask(Method::POST, "/round")).await.status, StatusCode::FORBIDDEN);
        assert_eq!(served.get("/settings").await.status, StatusCode::OK, "without the cookie all is as before");
    });
}

#[test]
fn large_bodies_and_path_tricks_are_refused_before_and_after_signing_in() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        let large = "x".repeat(10 << 20);
        for (path, cookie) in
            [("/sign-in", ""), ("/round", ""), ("/round", keeper.as_str()), ("/settings/links", &keeper)]
        {
            let status = locked.post(path, cookie, &large).await.status;
            assert!(matches!(status, StatusCode::PAYLOAD_TOO_LARGE | StatusCode::UNAUTHORIZED), "{path}: {status}");
        }
        for path in
            ["/shared/..%2F..%2Fetc", "/shared/%00", "/shared/%FF%FE", "/shared/", "/sign-in?to=%00", "/sign-in?to=//x"]
        {
            let answer = locked.get(path, "").await;
            assert!(!answer.status.is_server_error() && !answer.body.contains("//x"), "{path}: {}", answer.status);
        }
        assert_eq!(locked.ask(Method::DELETE, "/sign-in", "", "").await.status, StatusCode::METHOD_NOT_ALLOWED);
    });
}

#[test]
fn an_export_holds_no_key_of_the_gate() {
    run_bare(async {
        let locked = Locked::open().await;
        let keeper = locked.signed_in().await;
        locked.make_link(&keeper).await;
        let mut out = Vec::new();
        locked.served.store.export_json(&mut out).await.unwrap();
        assert!(!String::from_utf8(out).unwrap().contains("gate."));
    });
}

#[test]
fn what_another_program_writes_is_seen_and_reckoned() {
    let folder = std::env::temp_dir().join(format!("snowhum-web-outside-{}", std::process::id()));
    let file = folder.join("records.db");
    run_bare(async {
        let served = Served::open(Some(file.clone())).await;
        let before = served.settled().await["now"]["colonies"].clone();
        let other = snowhum_store::Store::open(&file).await.unwrap();
        let mut note = served.yard.notes[0].clone();
        note.id = snowhum_apiary::NoteId(uuid::Uuid::from_u128(77));
        note.at = "2026-02-06T10:00:00Z".parse().unwrap();
        note.entries = vec![snowhum_apiary::Entry::read("hum=silent by ear", &|_| None).unwrap()];
        other.put_note(&note, jiff::Timestamp::now()).await.unwrap();
        let end = std::time::Instant::now() + std::time::Duration::from_secs(30);
        while served.settled().await["now"]["colonies"] == before {
            assert!(std::time::Instant::now() < end, "the note was not seen");
            tokio::time::sleep(std::time::Duration::from_millis(100)).await;
        }
    });
    std::fs::remove_dir_all(folder).unwrap();
}

#[test]
fn a_code_of_the_machine_signs_in_once_however_many_tries_were_wrong() {
    run_bare(async {
        let locked = Locked::open().await;
        let store = &locked.served.store;
        for _ in 0..40 {
            locked.try_phrase("wrong wrong wrong").await;
        }
        assert_eq!(locked.try_phrase(PHRASE).await.status, StatusCode::TOO_MANY_REQUESTS, "the phrase waits");
        let code = sign_in_code(store, Timestamp::now()).await.unwrap();
        let entered = locked.try_phrase(&format!(" {} ", code.to_lowercase())).await;
        assert_eq!(entered.status, StatusCode::SEE_OTHER, "{}", entered.body);
        assert_eq!(locked.get("/round", &cookie(&entered.headers)).await.status, StatusCode::OK);
        assert_eq!(locked.try_phrase(&code).await.status, StatusCode::TOO_MANY_REQUESTS, "once");
        for minutes in [-11, 11] {
            let other = sign_in_code(store, Timestamp::now() + minutes.minutes()).await.unwrap();
            assert_eq!(locked.try_phrase(&other).await.status, StatusCode::TOO_MANY_REQUESTS, "{minutes} minutes");
        }
    });
}

#[test]
fn two_host_names_or_a_whole_address_of_another_are_refused() {
    run_bare(async {
        let locked = Locked::open().await;
        let ask = async |uri: &str, hosts: &[&str]| {
            let request = hosts.iter().fold(Request::get(uri), |request, host| request.header("host", *host));
            locked.served.ask(request.body(Body::empty()).unwrap()).await.status
        };
        assert_eq!(ask("/sign-in", &[HOST]).await, StatusCode::OK);
        assert_eq!(ask(&format!("{ORIGIN}/sign-in"), &[HOST]).await, StatusCode::OK, "one's own whole address");
        for hosts in [&[HOST, "evil.example"][..], &["evil.example", HOST], &[HOST, HOST], &[]] {
            assert_eq!(ask("/sign-in", hosts).await, StatusCode::FORBIDDEN, "{hosts:?}");
        }
        assert_eq!(ask("https://evil.example/sign-in", &[HOST]).await, StatusCode::FORBIDDEN);
    });
}
