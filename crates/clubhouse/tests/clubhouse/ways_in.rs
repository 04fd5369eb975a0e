//! Who comes in, and what a page of another site can do: nothing.

use crate::house::{DAY, House, run, yard};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use snowhum_advice::verdict::Urgency;
use snowhum_club::Role;
use snowhum_clubhouse::paths;
use snowhum_web::Reach;

/// What is open to everybody who reaches the server.
const OPEN: [&str; 5] = ["/metrics", "/sign-in", "/sign-out", "/language", "/{asset}"];

#[test]
fn every_page_but_the_way_in_is_shut_to_who_has_no_session() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (_, anna) =
            house.member("Anna", Role::Keeper, vec![yard(1, "Bank", DAY, &[("Alder", Urgency::Today)])]).await;
        house.night(DAY).await;
        for path in paths().into_iter().filter(|path| !OPEN.contains(path)) {
            let path = path.replace("{yard}", "00000000-0000-0000-0000-000000000001");
            for cookie in ["", "snowhum-club=", "snowhum-club=0123456789abcdef0123456789abcdef"] {
                let (read, sent) = (house.get(&path, cookie).await, house.post(&path, cookie, "counted=yes").await);
                for answered in [read, sent] {
                    let is_shut = answered.to == "/sign-in"
                        || [StatusCode::UNAUTHORIZED, StatusCode::METHOD_NOT_ALLOWED].contains(&answered.status);
                    assert!(is_shut && !answered.body.contains("Bank"), "{path}: {}", answered.status);
                }
            }
        }
        assert!(house.get("/", &anna).await.body.contains("Bank"));
        assert!(house.get("/snowhum.css", "").await.body.contains("--paper"));
        assert_eq!(house.get("/secrets", &anna).await.status, StatusCode::NOT_FOUND);
    });
}

#[test]
fn a_key_that_is_none_opens_nothing_and_who_leaves_is_out() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (_, anna) = house.member("Anna", Role::Keeper, vec![]).await;
        let refused = house.post("/sign-in", "", "key=1234").await;
        assert!(refused.status == StatusCode::UNAUTHORIZED && refused.cookie.is_empty(), "{}", refused.body);
        assert!(refused.body.contains("no key of this club"));
        let left = house.post("/sign-out", &anna, "").await;
        assert!(left.cookie.contains("Max-Age=0") && left.cookie.contains("HttpOnly"));
        assert_eq!(house.get("/", &anna).await.to, "/sign-in", "a cookie sent again opens nothing");
    });
}

#[test]
fn what_another_site_sends_or_another_name_asks_is_refused() {
    run(async {
        let house = House::open(Reach::network(["bees.example.org".to_owned()])).await;
        let (anna, cookie) = house.member("Anna", Role::Keeper, vec![yard(1, "Bank", DAY, &[])]).await;
        assert!(cookie.starts_with("__Host-snowhum-club="), "{cookie}");
        let sent = |origin: &'static str, host: &'static str| {
            Request::post("/sharing/00000000-0000-0000-0000-000000000001")
                .header(header::COOKIE, &cookie)
                .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
                .header(header::ORIGIN, origin)
                .header(header::HOST, host)
                .body(Body::from("counted=yes"))
                .unwrap()
        };
        for (origin, host) in [
            ("https://elsewhere.example", "bees.example.org"),
            ("http://bees.example.org", "bees.example.org"),
            ("https://elsewhere.example", "elsewhere.example"),
        ] {
            assert_eq!(house.ask(sent(origin, host)).await.status, StatusCode::FORBIDDEN, "{origin} {host}");
        }
        assert!(!house.club.sharing(anna).await.unwrap().yards[0].is_counted);
        let own = house.ask(sent("https://bees.example.org", "bees.example.org")).await;
        assert_eq!(own.status, StatusCode::SEE_OTHER);
        assert!(house.club.sharing(anna).await.unwrap().yards[0].is_counted);
    });
}

#[test]
fn a_page_is_in_the_browsers_language_and_in_the_one_chosen() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let asked = |cookie: &str| {
            let request = Request::get("/sign-in").header(header::ACCEPT_LANGUAGE, "xx, de-AT;q=0.9, en;q=0.5");
            request.header(header::COOKIE, cookie).body(Body::empty()).unwrap()
        };
        let german = house.ask(asked("")).await.body;
        assert!(german.contains("lang=\"de\"") && german.contains("Schlüssel"), "{german}");
        let chosen = house.post("/language", "", "language=fr").await.cookie;
        let french = house.ask(asked(chosen.split(';').next().unwrap())).await.body;
        assert!(french.contains("lang=\"fr\"") && french.contains("Clé"), "{french}");
    });
}
