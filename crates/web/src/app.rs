//! The yard as the pages see it: the store, the last estimate, and the worker that computes the next.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use jiff::{Timestamp, ZonedDateTime};
use snowhum_advice::film::FilmAnswer;
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::setup::{SetupAnswer, Try};
use snowhum_advice::spring::Springtime;
use snowhum_apiary::{AnotherHive, Apiary, ApiaryId};
use snowhum_say::{Language, Message, Tongue, begin_page, fault_page};
use snowhum_store::{Fault as StoreFault, Mark, Store};
use snowhum_units::{Kelvin, System};
use snowhum_watch::Watching;
use std::path::PathBuf;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError, RwLock};
use std::time::Duration;
use tokio::sync::Notify;

use crate::aside::aside;
use crate::fault::Fault;
use crate::gate::{Gate, Reach};
use crate::lasting::{Last, Lasting};
use crate::reader;
use crate::reckon::{Ask, Reckon, Standing};
use crate::settings::{Chosen, Settings};
use crate::told;
use crate::turns::Turns;
use crate::yard_file;

/// How often it is looked whether another program has written: one short question to the file.
const LOOK: Duration = Duration::from_secs(3);

/// What a server is opened with.
pub struct Opened {
    /// The keeper's records; the yard is in them.
    pub store: Store,
    /// The yard.
    pub yard: ApiaryId,
    /// The model.
    pub reckon: Box<dyn Reckon>,
    /// A day asked about in place of today.
    pub day: Option<Date>,
    /// Where a yard begun in the browser is kept; in `store` where none is named or the store is a file already.
    pub home: Option<PathBuf>,
    /// The yard file that the yard came from; a hive added in the browser is written at its end.
    pub file: Option<PathBuf>,
    /// Units of the pages until the keeper sets others.
    pub system: System,
    /// Their language until the keeper sets another; none is that of the browser.
    pub language: Option<Language>,
    /// Who can reach the pages.
    pub reach: Reach,
}

/// One yard being served. Cheap to clone.
#[derive(Clone)]
pub struct App(Arc<Inner>);

struct Inner {
    records: RwLock<Records>,
    home: Option<PathBuf>,
    file: Option<PathBuf>,
    reckon: Box<dyn Reckon>,
    day: Mutex<Option<Date>>,
    system: System,
    language: Option<Language>,
    /// As last read in the records, so that no request waits for them to know its language.
    chosen: Mutex<Chosen>,
    gate: Gate,
    standing: RwLock<Option<Arc<Standing>>>,
    trouble: Mutex<Option<Message>>,
    /// The day that was asked about last.
    tried: Mutex<Option<Date>>,
    /// The winter ahead.
    plan: Lasting<(), PlanAnswer>,
    /// The windows of the year.
    windows: Lasting<(), JobsAnswer>,
    spring: Lasting<(), Springtime>,
    film: Lasting<(), FilmAnswer>,
    setups: Lasting<Setting, SetupAnswer>,
    /// Computations run one after another, so that many askers cannot stop the machine or fill it.
    turns: Turns,
    /// Rises with everything that changes an estimate.
    revision: AtomicU64,
    changed: Notify,
    /// Rises when another yard is served: what was asked of the one before is not kept.
    yards: AtomicU64,
}

/// A hive by its place, and what is tried on it.
#[derive(Clone, PartialEq)]
pub(crate) struct Setting {
    pub(crate) at: usize,
    pub(crate) tries: Vec<Try>,
}

/// How long a page waits for an answer of which there is none yet: most are there by then.
const GRACE: Duration = Duration::from_millis(200);

/// The yard being served and the records it is in. A keeper may begin a yard of their own in place of an invented one.
struct Records {
    store: Store,
    yard: ApiaryId,
}

impl App {
    /// A yard to serve. [`Self::work`] must run beside it.
    #[must_use]
    pub fn new(opened: Opened) -> Self {
        Self(Arc::new(Inner {
            records: RwLock::new(Records { store: opened.store, yard: opened.yard }),
            home: opened.home,
            file: opened.file,
            reckon: opened.reckon,
            day: Mutex::new(opened.day),
            system: opened.system,
            language: opened.language,
            chosen: Mutex::new(Chosen::default()),
            gate: Gate::new(opened.reach),
            standing: RwLock::new(None),
            trouble: Mutex::new(None),
            tried: Mutex::new(None),
            plan: Lasting::new(),
            windows: Lasting::new(),
            spring: Lasting::new(),
            film: Lasting::new(),
            setups: Lasting::new(),
            turns: Turns::new(),
            revision: AtomicU64::new(1),
            changed: Notify::new(),
            yards: AtomicU64::new(0),
        }))
    }

    /// Computes an estimate now and after every change, for ever.
    pub async fn work(self) {
        let mut before: Option<Before> = None;
        loop {
            let revision = self.revision();
            let mark = self.store().mark().await.ok();
            before = self.compute(revision, before).await;
            while self.revision() == revision {
                self.wait(mark).await;
            }
        }
    }

    /// Waits a little for a change of ours, and looks whether another program has written.
    async fn wait(&self, mark: Option<Mark>) {
        if tokio::time::timeout(LOOK, self.0.changed.notified()).await.is_err()
            && let Ok(now) = self.store().mark().await
            && mark != Some(now)
        {
            self.touch();
        }
    }

    async fn compute(&self, revision: u64, before: Option<Before>) -> Option<Before> {
        let ask = match self.ask().await {
            Ok(ask) => ask,
            Err(fault) => {
                self.say_trouble(Some(fault.message()));
                return before;
            }
        };
        *lock(&self.0.tried) = Some(ask.day);
        let key = Key::of(&ask);
        let watched = before.filter(|before| before.key == key).map(|before| before.watchings);
        let (app, last) = (self.clone(), ask.last.clone());
        let turn = self.0.turns.of_estimate().await;
        let computed = aside(move || app.0.reckon.present(&ask, watched)).await;
        drop(turn);
        match computed {
            // A yard begun meanwhile is asked about next.
            Ok(_) if self.records().1 != key.facts.id => None,
            Ok(Ok((present, watchings))) => {
                let kept = told::keep(&self.store(), &key.facts, &last, &present.now).await;
                let standing = Arc::new(Standing { present, at: Timestamp::now(), revision });
                *self.0.standing.write().unwrap_or_else(PoisonError::into_inner) = Some(standing);
                self.say_trouble(kept.err().map(|fault| fault.message()));
                Some(Before { key, watchings })
            }
            Ok(Err(words)) => {
                self.say_trouble(Some(words));
                None
            }
            Err(_) => {
                self.say_trouble(Some(fault_page::ended_early()));
                None
            }
        }
    }

    /// The yard as asked about now.
    pub(crate) async fn ask(&self) -> Result<Ask, StoreFault> {
        let settings = self.settings().await?;
        let apiary = settings.priced(self.apiary().await?);
        let last = told::last(&self.store(), apiary.id).await?;
        Ok(Ask { day: self.day(&apiary), apiary, last })
    }

    /// The yard with its notes as they stand.
    pub(crate) async fn apiary(&self) -> Result<Apiary, StoreFault> {
        let (store, yard) = self.records();
        store.yard(yard).await?.ok_or_else(gone)
    }

    /// The yard with every colony that ever stood in it: for the record of treatments.
    pub(crate) async fn apiary_ever(&self) -> Result<Apiary, StoreFault> {
        let (store, yard) = self.records();
        store.yard_ever(yard).await?.ok_or_else(gone)
    }

    pub(crate) async fn settings(&self) -> Result<Settings, StoreFault> {
        let kept = self.store().settings().await?;
        *lock(&self.0.chosen) = Chosen::among(&kept);
        Ok(Settings::of(&kept, self.usual(reader::reads().map(Tongue::language))))
    }

    /// What was last chosen to be read, with this language where nobody chose one.
    pub(crate) fn tongue(&self, wanted: Option<Language>) -> Tongue {
        let (chosen, usual) = (*lock(&self.0.chosen), self.usual(wanted));
        let language = chosen.language.unwrap_or(usual.language());
        Tongue::new(chosen.system.unwrap_or(usual.system())).in_language(language)
    }

    fn usual(&self, wanted: Option<Language>) -> Tongue {
        Tongue::new(self.0.system).in_language(self.0.language.or(wanted).unwrap_or_default())
    }

    pub(crate) fn gate(&self) -> &Gate {
        &self.0.gate
    }

    pub(crate) fn store(&self) -> Store {
        self.records().0
    }

    fn records(&self) -> (Store, ApiaryId) {
        let records = self.0.records.read().unwrap_or_else(PoisonError::into_inner);
        (records.store.clone(), records.yard)
    }

    /// Keeps a yard begun here and serves it from now on, under today's date.
    pub(crate) async fn begin(&self, yard: &Apiary) -> Result<(), Fault> {
        let store = match (self.store(), &self.0.home) {
            (here, Some(home)) if here.path().is_none() => Store::open(home).await?,
            (here, _) => here,
        };
        if store.yards().await?.iter().any(|kept| kept.id == yard.id || !kept.invented) {
            return Err(Fault::Wrong(begin_page::kept_one()));
        }
        store.import_yard(yard, Timestamp::now()).await?;
        *self.0.records.write().unwrap_or_else(PoisonError::into_inner) = Records { store, yard: yard.id };
        self.forget();
        self.show_day(None);
        Ok(())
    }

    /// Keeps the yard of a new autumn in the place of last year's, and serves it under today's date.
    pub(crate) async fn renew(&self, yard: &Apiary) -> Result<(), Fault> {
        self.store().import_yard(yard, Timestamp::now()).await?;
        self.forget();
        self.show_day(None);
        self.touch();
        Ok(())
    }

    /// Takes another hive into the yard: at the end of its file, where it came from one, and into the records.
    pub(crate) async fn add(&self, another: &AnotherHive, yard: &Apiary) -> Result<(), Fault> {
        if let Some(file) = &self.0.file {
            yard_file::written(file, another, yard).map_err(Fault::Wrong)?;
        }
        self.store().import_yard(yard, Timestamp::now()).await?;
        self.forget();
        self.touch();
        Ok(())
    }

    /// Asks the model something long, when it is this asker's turn.
    async fn ask_long<T: Send + 'static>(&self, question: impl Question<T>) -> Result<Result<T, Message>, Fault> {
        let turn = self.0.turns.of_question().await?;
        let ask = self.ask().await?;
        let app = self.clone();
        aside(move || {
            // Held until the work is done, though the asker may have left.
            let _turn = turn;
            question(&*app.0.reckon, ask)
        })
        .await
    }

    /// The last answer to a long question at once; where it is behind, a newer one is computed behind the page.
    fn lasting<K, T>(&self, of: fn(&Inner) -> &Lasting<K, T>, key: &K, question: impl Question<T>) -> Last<T>
    where
        K: Clone + PartialEq + Send + Sync + 'static,
        T: Send + Sync + 'static,
    {
        let revision = self.revision();
        let asked = of(&self.0).ask(key, revision);
        if asked.starts {
            let (app, key, yards) = (self.clone(), key.clone(), self.0.yards.load(Ordering::Acquire));
            tokio::spawn(async move {
                let answer = app.ask_long(question).await.unwrap_or_else(|fault| Err(fault.says()));
                let is_of_this_yard = app.0.yards.load(Ordering::Acquire) == yards;
                of(&app.0).put(&key, revision, is_of_this_yard.then_some(answer));
            });
        }
        asked.last
    }

    /// The same; where there is none yet, a moment is given it.
    async fn soon<K, T>(&self, of: fn(&Inner) -> &Lasting<K, T>, key: &K, question: impl Question<T> + Clone) -> Last<T>
    where
        K: Clone + PartialEq + Send + Sync + 'static,
        T: Send + Sync + 'static,
    {
        let last = self.lasting(of, key, question.clone());
        if last.answer.is_some() {
            return last;
        }
        match tokio::time::timeout(GRACE, self.whole(of, key, question)).await {
            Ok(answer) => Last { answer: Some(answer), ..of(&self.0).last(key, self.revision()) },
            Err(_) => last,
        }
    }

    /// The answer as the yard stands now, waited for.
    async fn whole<K, T>(
        &self,
        of: fn(&Inner) -> &Lasting<K, T>,
        key: &K,
        question: impl Question<T> + Clone,
    ) -> Result<Arc<T>, Message>
    where
        K: Clone + PartialEq + Send + Sync + 'static,
        T: Send + Sync + 'static,
    {
        let revision = self.revision();
        loop {
            let mut done = std::pin::pin!(of(&self.0).done());
            done.as_mut().enable();
            self.lasting(of, key, question.clone());
            let last = of(&self.0).last(key, revision);
            match last.answer {
                Some(answer) if !last.is_behind => return answer,
                _ => done.await,
            }
        }
    }

    /// The winter ahead, as it was last computed.
    pub(crate) async fn plan(&self) -> Last<PlanAnswer> {
        self.soon(|inner| &inner.plan, &(), ahead).await
    }

    /// The winter ahead, waited for.
    pub(crate) async fn whole_plan(&self) -> Result<Arc<PlanAnswer>, Fault> {
        self.whole(|inner| &inner.plan, &(), ahead).await.map_err(Fault::Wrong)
    }

    /// The windows of the year, as they were last computed.
    pub(crate) async fn windows(&self) -> Last<JobsAnswer> {
        self.soon(|inner| &inner.windows, &(), windows).await
    }

    /// The windows of the year, waited for.
    pub(crate) async fn whole_windows(&self) -> Result<Arc<JobsAnswer>, Fault> {
        self.whole(|inner| &inner.windows, &(), windows).await.map_err(Fault::Wrong)
    }

    /// The spring from an estimate and the year's windows; where these are behind themselves, the last one stands.
    pub(crate) async fn spring(&self, from: Option<(Arc<Standing>, JobsAnswer)>) -> Last<Springtime> {
        let Some((standing, jobs)) = from else { return self.0.spring.last(&(), self.revision()) };
        let question = move |reckon: &dyn Reckon, ask: Ask| reckon.spring(&ask, &standing.present.now, &jobs);
        self.soon(|inner| &inner.spring, &(), question).await
    }

    /// The winter told from a plan and an estimate; where these are behind themselves, the last one stands.
    pub(crate) async fn film(&self, from: Option<(Arc<PlanAnswer>, Arc<Standing>)>) -> Last<FilmAnswer> {
        let Some((plan, standing)) = from else { return self.0.film.last(&(), self.revision()) };
        let question = move |reckon: &dyn Reckon, ask: Ask| reckon.film(&ask, &plan, &standing.present.now);
        self.soon(|inner| &inner.film, &(), question).await
    }

    /// Set-ups of a hive side by side.
    pub(crate) async fn setups(&self, setting: &Setting) -> Last<SetupAnswer> {
        let Setting { at, tries } = setting.clone();
        let question = move |reckon: &dyn Reckon, ask: Ask| reckon.setups(&ask, at, &tries);
        self.soon(|inner| &inner.setups, setting, question).await
    }

    /// Forgets what was answered of the yard before.
    fn forget(&self) {
        self.0.yards.fetch_add(1, Ordering::AcqRel);
        *self.0.standing.write().unwrap_or_else(PoisonError::into_inner) = None;
        self.0.plan.forget();
        self.0.windows.forget();
        self.0.spring.forget();
        self.0.film.forget();
        self.0.setups.forget();
    }

    pub(crate) fn standing(&self) -> Option<Arc<Standing>> {
        self.0.standing.read().unwrap_or_else(PoisonError::into_inner).clone()
    }

    pub(crate) fn trouble(&self) -> Option<Message> {
        lock(&self.0.trouble).clone()
    }

    pub(crate) fn revision(&self) -> u64 {
        self.0.revision.load(Ordering::Acquire)
    }

    /// Something an estimate stands on has changed.
    pub(crate) fn touch(&self) {
        self.0.revision.fetch_add(1, Ordering::AcqRel);
        self.0.changed.notify_one();
    }

    /// A new day asks for a new estimate.
    pub(crate) fn turn_to(&self, day: Date) {
        let tried = *lock(&self.0.tried);
        if tried.is_some_and(|tried| tried != day) {
            *lock(&self.0.tried) = None;
            self.touch();
        }
    }

    /// Asks about another day.
    pub(crate) fn show_day(&self, day: Option<Date>) {
        *lock(&self.0.day) = day;
        self.touch();
    }

    /// The day asked about: the one set, else today.
    pub(crate) fn day(&self, apiary: &Apiary) -> Date {
        self.now(apiary).date()
    }

    /// The time that a note made now bears: of the day asked about, at this hour.
    pub(crate) fn now(&self, apiary: &Apiary) -> ZonedDateTime {
        let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
        let now = Timestamp::now().to_zoned_datetime(zone);
        let day = *lock(&self.0.day);
        day.and_then(|day| now.with().date(day).build().ok()).unwrap_or(now)
    }

    fn say_trouble(&self, words: Option<Message>) {
        *lock(&self.0.trouble) = words;
    }
}

/// Something long that is asked of the model.
trait Question<T>: FnOnce(&dyn Reckon, Ask) -> Result<T, Message> + Send + 'static {}

impl<T, Q: FnOnce(&dyn Reckon, Ask) -> Result<T, Message> + Send + 'static> Question<T> for Q {}

fn ahead(reckon: &dyn Reckon, ask: Ask) -> Result<PlanAnswer, Message> {
    reckon.ahead(&ask)
}

fn windows(reckon: &dyn Reckon, ask: Ask) -> Result<JobsAnswer, Message> {
    reckon.windows(&ask)
}

/// Watchings and what they stand on beside the notes.
struct Before {
    key: Key,
    watchings: Vec<Watching>,
}

/// Watchings of a yard with other facts, brought in anew from its file, cannot be gone on with; nor can those under other
/// readings at the hives, which bend the weather's paths.
#[derive(PartialEq)]
struct Key {
    /// The yard without its notes.
    facts: Apiary,
    day: Date,
    read: Vec<(Timestamp, Kelvin)>,
}

impl Key {
    fn of(ask: &Ask) -> Self {
        let facts = Apiary { notes: Vec::new(), ..ask.apiary.clone() };
        Self { facts, day: ask.day, read: ask.apiary.outdoor_air().collect() }
    }
}

fn gone() -> StoreFault {
    StoreFault { place: "the yard".to_owned(), wrong: snowhum_store::Wrong::Missing }
}

fn lock<T>(of: &Mutex<T>) -> MutexGuard<'_, T> {
    of.lock().unwrap_or_else(PoisonError::into_inner)
}
