//! Asking a service, and falling back to what is kept.

use crate::body::Body;
use crate::cache::{Cache, Entry, Kept};
use crate::fault::CacheFault;
use crate::transport::{Answer, Question, Transport};
use crate::{Endpoints, Fault, Forecast, Request, Service, Standing, Why, freshness, met_norway, nws, open_meteo};
use jiff::{SignedDuration, Timestamp};
use snowhum_say::{Message, forecast as say};
use std::path::PathBuf;
use std::time::Duration;

/// How long an answer is waited for, in all.
const PATIENCE: Duration = Duration::from_secs(10);

/// Asks services of weather and keeps their answers in one folder.
#[derive(Debug, Clone)]
pub struct Client {
    cache: Cache,
    endpoints: Endpoints,
    transport: Transport,
}

/// A page of a service, and the name it is kept under.
#[derive(Debug, Clone)]
pub(crate) struct Page {
    pub(crate) name: String,
    pub(crate) url: String,
}

/// A page read, and how it was come by.
struct Had<T> {
    value: T,
    fetched: Timestamp,
    standing: Standing,
}

/// What a service tells when it answers well.
enum Told<T> {
    New(T),
    NothingNewer,
}

/// One errand: who asks, when, and what was noticed on the way.
struct Errand<'a> {
    client: &'a Client,
    user_agent: String,
    now: Timestamp,
    notes: Vec<Message>,
}

impl Client {
    /// Keeps answers in `cache_dir`, which is made when first needed, and asks the services at `endpoints`.
    #[must_use]
    pub fn new(cache_dir: impl Into<PathBuf>, endpoints: Endpoints) -> Self {
        Self { cache: Cache::new(cache_dir.into()), endpoints, transport: Transport::new(PATIENCE) }
    }

    /// The same, waiting for an answer no longer than `patience` instead of ten seconds.
    #[must_use]
    pub fn with_patience(self, patience: Duration) -> Self {
        Self { transport: Transport::new(patience), ..self }
    }

    /// The forecast for a place.
    ///
    /// Nothing is sent while the kept answer holds by the service's own term, or while the service wants to be left
    /// alone. Otherwise it is asked for what is newer than the kept answer. If it gives nothing, the kept forecast is
    /// taken as long as it reaches beyond `now`.
    ///
    /// # Errors
    /// [`Fault::NoForecast`] when there is none; the other faults when the request itself must be put right, in which
    /// case nothing was sent.
    pub fn fetch(&self, request: &Request, now: Timestamp) -> Result<Forecast, Fault> {
        let user_agent = request.checked()?;
        let service = request.service;
        let address = self.endpoints.of(service)?;
        let mut errand = Errand { client: self, user_agent, now, notes: Vec::new() };
        let had = match service {
            Service::MetNorway => errand.forecast(&met_norway::page(address, &request.position), met_norway::read),
            Service::OpenMeteo => errand.forecast(&open_meteo::page(address, &request.position), open_meteo::read),
            Service::Nws => errand.by_square(address, request),
        };
        let mut notes = errand.notes;
        match had {
            Ok(Had { value: Body { issued, hours, notes: more }, fetched, standing }) => {
                notes.extend(more);
                let attribution = service.attribution();
                Ok(Forecast { hours, service, attribution, issued, fetched, standing, notes })
            }
            Err(why) => Err(Fault::NoForecast { service, why, notes }),
        }
    }
}

impl Errand<'_> {
    fn forecast(&mut self, page: &Page, read: fn(&str) -> Result<Body, Why>) -> Result<Had<Body>, Why> {
        let now = self.now;
        self.page(page, |text| {
            let body = read(text)?;
            body.reaches(now)?;
            Ok(body)
        })
    }

    /// The National Weather Service's two pages: the point's, then the square's.
    fn by_square(&mut self, address: &str, request: &Request) -> Result<Had<Body>, Why> {
        let point = nws::point(address, &request.position);
        let square = self.page(&point, nws::read_point)?;
        if let Standing::Cache { why, .. } = &square.standing {
            self.notes.push(say::square(why.message()));
        }
        let grid = nws::grid(&point, &request.position, &square.value)?;
        self.forecast(&grid, nws::read_grid)
    }

    /// A page from the service or the cache.
    fn page<T>(&mut self, page: &Page, read: impl Fn(&str) -> Result<T, Why>) -> Result<Had<T>, Why> {
        let (not_before, kept) = self.kept(page, &read);
        let kept = match kept {
            Some((kept, value)) if kept.fetched <= self.now && freshness::runs(kept.fresh_until, self.now) => {
                let age = self.now.duration_since(kept.fetched);
                return Ok(Had { value, fetched: kept.fetched, standing: Standing::StillCurrent { age } });
            }
            other => other,
        };
        let told = self.told(page, not_before, kept.as_ref().map(|(kept, _)| kept), &read);
        match (told, kept) {
            (Ok(Told::New(value)), _) => Ok(Had { value, fetched: self.now, standing: Standing::Fresh }),
            (Ok(Told::NothingNewer), Some((_, value))) => {
                Ok(Had { value, fetched: self.now, standing: Standing::NotModified })
            }
            (Ok(Told::NothingNewer), None) => Err(Why::Status { status: 304 }),
            (Err(why), Some((kept, value))) => {
                let age = self.now.duration_since(kept.fetched).max(SignedDuration::ZERO);
                Ok(Had { value, fetched: kept.fetched, standing: Standing::Cache { age, why } })
            }
            (Err(why), None) => Err(why),
        }
    }

    /// When the service may be asked again, and what is kept of a page, if it can still be read and used.
    fn kept<T>(
        &mut self,
        page: &Page,
        read: impl Fn(&str) -> Result<T, Why>,
    ) -> (Option<Timestamp>, Option<(Kept, T)>) {
        let entry = self.client.cache.load(&page.name, &page.url);
        let entry = entry.unwrap_or_else(|fault| {
            self.notes.push(fault.message());
            None
        });
        let Entry { not_before, answer } = entry.unwrap_or_default();
        let Some(kept) = answer else { return (not_before, None) };
        match read(&kept.body) {
            Ok(value) => (not_before, Some((kept, value))),
            Err(Why::Over { .. }) => (not_before, None),
            Err(why) => {
                let file = self.client.cache.file(&page.name);
                self.notes.push(CacheFault::Damaged { file, wrong: why.to_string() }.message());
                (not_before, None)
            }
        }
    }

    /// What the service tells now; a good answer is kept, and so is a wish to be left alone.
    fn told<T>(
        &mut self,
        page: &Page,
        not_before: Option<Timestamp>,
        kept: Option<&Kept>,
        read: impl Fn(&str) -> Result<T, Why>,
    ) -> Result<Told<T>, Why> {
        if let Some(until) = not_before.filter(|until| freshness::runs(*until, self.now)) {
            return Err(Why::LeftAlone { until });
        }
        let since = kept.and_then(|kept| kept.last_modified.as_deref());
        let question = Question { url: &page.url, user_agent: &self.user_agent, since };
        let Answer { status, headers, body } = self.client.transport.ask(&question)?;
        let fresh_until = freshness::fresh_until(&headers, self.now);
        let fetched = self.now;
        match (status, kept) {
            (200 | 203, _) => {
                let value = read(&body)?;
                let answer = Kept { fetched, fresh_until, last_modified: headers.last_modified, body };
                self.keep(page, Entry { not_before: None, answer: Some(answer) });
                if status == 203 {
                    self.notes.push(say::ending());
                }
                Ok(Told::New(value))
            }
            (304, Some(kept)) if since.is_some() => {
                let last_modified = headers.last_modified.or_else(|| kept.last_modified.clone());
                let answer = Kept { fetched, fresh_until, last_modified, body: kept.body.clone() };
                self.keep(page, Entry { not_before: None, answer: Some(answer) });
                Ok(Told::NothingNewer)
            }
            (status, kept) => {
                if matches!(status, 403 | 429) || headers.retry_after.is_some() {
                    let not_before = Some(freshness::retry_at(&headers, self.now));
                    self.keep(page, Entry { not_before, answer: kept.cloned() });
                }
                Err(Why::of_status(status))
            }
        }
    }

    fn keep(&mut self, page: &Page, entry: Entry) {
        if let Err(fault) = self.client.cache.save(&page.name, &page.url, &entry) {
            self.notes.push(fault.message());
        }
    }
}
