//! A yard's winter under a little weather, asked as the terminal asks and served as the pages are.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::Request;
use jiff::ToSpan;
use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use serde_json::Value;
use snowhum_advice::film::FilmAnswer;
use snowhum_advice::jobs::{JobsAnswer, JobsQuestion, SiteYear, Triggers, jobs, season_start};
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::setup::{SetupAnswer, Try};
use snowhum_advice::spring::Springtime;
use snowhum_advice::{PlanQuestion, plan, yard};
use snowhum_apiary::Apiary;
use snowhum_say::Message;
use snowhum_store::Store;
use snowhum_units::System;
use snowhum_watch::{Sizes, Watching};
use snowhum_weather::{AirPaths, Climate, Ensemble, generate};
use snowhum_web::{App, Ask, Opened, Present, Reach, Reckon, router};
use std::sync::{Arc, OnceLock};
use tower::ServiceExt;

/// Few of each: what is asked is whether all say the same, not what is said.
const PATHS: usize = 4;
const MEMBERS: usize = 32;
const SIZES: Sizes = Sizes { alive: 64, dead: 32 };
/// The last day of the weather: every day asked about has some ahead.
const LAST: Date = date(2026, 6, 20);
/// Flowers come a day later by so many degrees further north, from this day at 44 degrees on.
const FIRST_SPRING: Date = date(2026, 4, 22);
const DAYS_A_DEGREE: f64 = 2.0;

/// Cheap to clone.
#[derive(Clone)]
pub(super) struct Winter {
    pub(super) yard: Arc<Apiary>,
    weather: Arc<[Ensemble; 3]>,
    spring: Date,
    seed: u64,
    ahead: Arc<OnceLock<PlanAnswer>>,
}

/// What a browser and a calendar get.
pub(super) struct Pages {
    pub(super) yard: String,
    pub(super) hives: Vec<String>,
    pub(super) fit: String,
    pub(super) jobs: String,
    pub(super) paper: String,
    pub(super) calendar: String,
    pub(super) api_now: Value,
    pub(super) api_plan: Value,
}

impl Winter {
    pub(super) fn of(yard: Apiary, seed: u64) -> Self {
        let (place, zone) = (yard::place(&yard.site), TimeZone::get(&yard.site.zone).unwrap());
        let climate = Climate::at(place).unwrap();
        let draw =
            |from: Date, days: i64| generate(place, &climate, &zone, from, 24 * days as usize, PATHS, seed).unwrap();
        let days = |from: Date| LAST.duration_since(from).as_hours() / 24;
        let year = season_start(yard.as_of, yard.site.latitude);
        let weather = [draw(yard.as_of, days(yard.as_of)), draw(date(2025, 7, 1), 153), draw(year, 366)];
        let later = DAYS_A_DEGREE * (yard.site.latitude.get() - 44.0);
        Self {
            yard: Arc::new(yard),
            weather: Arc::new(weather),
            spring: FIRST_SPRING.saturating_add((later as i64).days()),
            seed,
            ahead: Arc::default(),
        }
    }

    fn with_plan<T>(&self, as_of: Date, answer: impl FnOnce(PlanQuestion<'_>) -> T) -> T {
        let parameters = snowhum_winter::Parameters::shipped().unwrap();
        let [winter, autumn, _] = &*self.weather;
        answer(PlanQuestion {
            apiary: &self.yard,
            winter,
            autumn: &AirPaths::from(autumn),
            autumn_from: date(2025, 7, 1),
            as_of,
            spring: self.spring,
            parameters: &parameters,
            members: MEMBERS,
            seed: self.seed,
        })
    }

    fn with_question<T>(&self, as_of: Date, answer: impl FnOnce(NowQuestion<'_>) -> T) -> T {
        let signs = snowhum_watch::Parameters::shipped().unwrap();
        let thresholds = Thresholds::shipped().unwrap();
        let (signs, thresholds) = (&signs, &thresholds);
        let tomorrow = as_of.saturating_add(1.days());
        self.with_plan(tomorrow, |plan| {
            answer(NowQuestion { plan, as_of, known_hours: 0, signs, thresholds, sizes: SIZES, last: &[] })
        })
    }

    /// As the terminal has it.
    pub(super) fn now(&self, day: Date) -> NowAnswer {
        self.with_question(day, |question| {
            let ground = Ground::of(question);
            ground.now(&ground.watch())
        })
    }

    pub(super) fn jobs(&self, as_of: Date) -> JobsAnswer {
        let triggers = Triggers::shipped().unwrap();
        let from = season_start(self.yard.as_of, self.yard.site.latitude);
        let apiary = &*self.yard;
        let year = &SiteYear::of(&apiary.site, &self.weather[2], from, &triggers);
        jobs(&JobsQuestion { apiary, year, as_of, colonies: None, triggers: &triggers })
    }

    /// As they are served on a day.
    pub(super) fn pages(&self, day: Date) -> Pages {
        let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(1).enable_all().build().unwrap();
        runtime.block_on(self.served(day))
    }

    async fn served(&self, day: Date) -> Pages {
        let store = Store::in_memory().await.unwrap();
        store.import_yard(&self.yard, jiff::Timestamp::now()).await.unwrap();
        let (reckon, system) = (Box::new(self.clone()), System::Metric);
        let (yard, reach) = (self.yard.id, Reach::this_machine());
        let app = App::new(Opened {
            store,
            yard,
            reckon,
            day: Some(day),
            home: None,
            file: None,
            system,
            language: None,
            reach,
        });
        let work = tokio::spawn(app.clone().work());
        let router = router(app);
        let api_now = settled(&router).await;
        let mut hives = Vec::new();
        for colony in &self.yard.colonies {
            hives.push(get(&router, &format!("/hive/{}", colony.id.0)).await);
        }
        let pages = Pages {
            yard: get(&router, "/").await,
            hives,
            fit: whole(&router, "/fit").await,
            jobs: whole(&router, "/jobs").await,
            paper: get(&router, "/paper/yard").await,
            calendar: get(&router, "/jobs.ics").await,
            api_now,
            api_plan: serde_json::from_str(&get(&router, "/api/plan").await).unwrap(),
        };
        work.abort();
        pages
    }
}

async fn get(router: &Router, path: &str) -> String {
    let request = Request::get(path).body(Body::empty()).unwrap();
    let response = router.clone().oneshot(request).await.unwrap();
    assert!(response.status().is_success() || path == "/api/now", "{path}: {}", response.status());
    String::from_utf8(to_bytes(response.into_body(), 10 << 20).await.unwrap().to_vec()).unwrap()
}

/// A page once nothing that it shows is on its way any more.
async fn whole(router: &Router, path: &str) -> String {
    loop {
        let page = get(router, path).await;
        if !page.contains(" data-waits") {
            return page;
        }
        tokio::time::sleep(std::time::Duration::from_millis(5)).await;
    }
}

/// Waits until the estimate is there.
async fn settled(router: &Router) -> Value {
    loop {
        let now: Value = serde_json::from_str(&get(router, "/api/now").await).unwrap();
        if now["now"].is_object() {
            return now;
        }
        tokio::time::sleep(std::time::Duration::from_millis(5)).await;
    }
}

impl Reckon for Winter {
    fn present(&self, ask: &Ask, before: Option<Vec<Watching>>) -> Result<(Present, Vec<Watching>), Message> {
        Ok(self.with_question(ask.day, |question| Present::of(question, before)))
    }

    fn ahead(&self, _: &Ask) -> Result<PlanAnswer, Message> {
        Ok(self.ahead.get_or_init(|| self.with_plan(self.yard.as_of, |question| plan(&question))).clone())
    }

    fn windows(&self, ask: &Ask) -> Result<JobsAnswer, Message> {
        Ok(self.jobs(ask.day))
    }

    fn spring(&self, _: &Ask, _: &NowAnswer, _: &JobsAnswer) -> Result<Springtime, Message> {
        Err("not asked here".into())
    }

    fn film(&self, _: &Ask, _: &PlanAnswer, _: &NowAnswer) -> Result<FilmAnswer, Message> {
        Err("not asked here".into())
    }

    fn setups(&self, _: &Ask, _: usize, _: &[Try]) -> Result<SetupAnswer, Message> {
        Err("not asked here".into())
    }
}
