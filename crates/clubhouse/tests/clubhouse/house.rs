//! A made-up club, its nights answered by hand, and its pages.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::{Request, StatusCode, header};
use jiff::civil::{Date, date};
use snowhum_advice::verdict::{ColonyFirst, ColonyVerdict, FirstAnswer, Step, Task, Unsure, Urgency};
use snowhum_club::{Asked, Cell, Club, Handed, Night, Pace, Role, Winter, Worker, Yard};
use snowhum_clubhouse::{Clubhouse, router};
use snowhum_testkit::postgres::Database;
use snowhum_web::Reach;
use std::future::Future;
use std::sync::Arc;
use tower::ServiceExt;
use uuid::Uuid;

pub(crate) const DAY: Date = date(2026, 1, 10);
const BUILD: &str = "this build";

pub(crate) fn run<T>(work: impl Future<Output = T>) -> T {
    tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap().block_on(work)
}

/// A club with its pages.
pub(crate) struct House {
    pub(crate) club: Club,
    pages: Router,
    _database: Database,
}

/// What a page answered.
pub(crate) struct Answered {
    pub(crate) status: StatusCode,
    pub(crate) to: String,
    pub(crate) cookie: String,
    pub(crate) body: String,
}

impl House {
    pub(crate) async fn open(reach: Reach) -> Self {
        let database = Database::shared();
        let club = Club::open(&database.address).await.unwrap();
        let pages =
            router(Clubhouse { club: club.clone(), reach, read: Arc::new(|export| Box::pin(async { read(export) })) });
        Self { club, pages, _database: database }
    }

    /// A member with yards, each written as its answer, signed in; gives who they are and their cookie.
    pub(crate) async fn member(&self, name: &str, role: Role, yards: Vec<Yard>) -> (Uuid, String) {
        let member = self.club.member("Heath", name, Some(role)).await.unwrap();
        self.club.take_in(member, &Handed { export: name.to_owned(), yards }).await.unwrap();
        let key = self.club.give_key(member).await.unwrap();
        let answered = self.post("/sign-in", "", &format!("key={key}")).await;
        assert_eq!((answered.status, answered.to.as_str()), (StatusCode::SEE_OTHER, "/"));
        (member, answered.cookie.split(';').next().unwrap().to_owned())
    }

    /// Plans a night and answers it: a yard's text is its answer, but for one that fails.
    pub(crate) async fn night(&self, day: Date) {
        self.plan(day).await;
        let reckon = |asked: &Asked<'_>| match asked.yard.strip_prefix("fails: ") {
            Some(why) => Err(why.to_owned()),
            None => Ok(asked.yard.to_owned()),
        };
        let worker =
            Worker { build: BUILD.to_owned(), at_once: 2, pace: Pace::USUAL, reckon: Arc::new(reckon), told: |_| () };
        let club = self.club.clone();
        self.club.work(&worker, async move { club.all_done(BUILD.to_owned()).await }).await.unwrap();
    }

    pub(crate) async fn plan(&self, day: Date) {
        let night = Night { day, build: BUILD.to_owned(), question: day.to_string() };
        self.club.plan_night(&night).await.unwrap();
    }

    pub(crate) async fn get(&self, path: &str, cookie: &str) -> Answered {
        self.ask(Request::get(path).header(header::COOKIE, cookie).body(Body::empty()).unwrap()).await
    }

    pub(crate) async fn post(&self, path: &str, cookie: &str, form: &str) -> Answered {
        let request = Request::post(path).header(header::COOKIE, cookie);
        let request = request.header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
        self.ask(request.body(Body::from(form.to_owned())).unwrap()).await
    }

    pub(crate) async fn ask(&self, mut request: Request<Body>) -> Answered {
        request.headers_mut().entry(header::HOST).or_insert(header::HeaderValue::from_static("127.0.0.1"));
        let response = self.pages.clone().oneshot(request).await.unwrap();
        let text = |name| response.headers().get(name).map_or("", |value| value.to_str().unwrap()).to_owned();
        let (status, to, cookie) = (response.status(), text(header::LOCATION), text(header::SET_COOKIE));
        let body = to_bytes(response.into_body(), 1 << 20).await.unwrap();
        Answered { status, to, cookie, body: String::from_utf8(body.to_vec()).unwrap() }
    }
}

/// An export of these tests: a line for each yard, its number and its name.
fn read(export: String) -> Result<Handed, String> {
    let yard = |line: &str| {
        let (number, name) = line.split_once(' ').ok_or_else(|| format!("{line}: no number and name"))?;
        Ok(failing(number.parse().map_err(|_| format!("{number}: no number"))?, name, ""))
    };
    Ok(Handed { yards: export.lines().map(yard).collect::<Result<_, String>>()?, export })
}

/// A yard whose answer says of each colony how soon it needs its keeper.
pub(crate) fn yard(number: u128, name: &str, of: Date, colonies: &[(&str, Urgency)]) -> Yard {
    let first = FirstAnswer {
        as_of: of,
        spring: date(2026, 5, 9),
        looks_to: snowhum_advice::LooksTo::Spring,
        seed: 1,
        colonies: colonies.iter().map(|(name, word)| colony(name, *word)).collect(),
        later: Vec::new(),
        unsure: Unsure::default(),
    };
    let body = serde_json::json!({ "schema": "snowhum.plan/1", "invented": false, "first": first }).to_string();
    Yard { body, ..failing(number, name, "") }
}

fn colony(name: &str, word: Urgency) -> ColonyFirst {
    let first = match word {
        Urgency::LeaveAlone => None,
        Urgency::LookInside => Some(Task::LookIn),
        _ => Some(Task::ClearOpenings),
    };
    let by = matches!(word, Urgency::Today | Urgency::ThisWeek).then_some(DAY);
    let steps = first.iter().map(|task| Step { task: task.clone(), word, from: DAY, by }).collect();
    ColonyFirst {
        name: name.to_owned(),
        verdict: ColonyVerdict { word, by, first },
        steps,
        if_done: Some(0.9),
        if_not: Some(0.4),
        short_kg: 0.0,
        why: Vec::new(),
        near: Vec::new(),
        indoors: None,
    }
}

/// A yard that cannot be answered.
pub(crate) fn failing(number: u128, name: &str, why: &str) -> Yard {
    Yard {
        id: Uuid::from_u128(number),
        name: name.to_owned(),
        body: format!("fails: {why}"),
        cell: Some(Cell { north: 60, east: 12 }),
        winters: vec![Winter { year: 2024, colonies: 5, lost: 1 }],
    }
}
