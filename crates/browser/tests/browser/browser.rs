//! A browser of one's own, with what the tests do in it.

use anyhow::{Context, Result, bail, ensure};
use serde_json::{Value, json};
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};
use thirtyfour::prelude::*;

use crate::server::{Server, own_folder};
use crate::trace;

const PATIENCE: Duration = Duration::from_secs(60);

/// Size and scheme under which a page is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Form {
    PhoneLight,
    PhoneDark,
    /// The narrowest phone that is still common.
    NarrowPhone,
    DeskLight,
    DeskDark,
}

impl Form {
    pub(crate) const ALL: [Self; 5] =
        [Self::PhoneLight, Self::PhoneDark, Self::NarrowPhone, Self::DeskLight, Self::DeskDark];

    pub(crate) const fn is_phone(self) -> bool {
        matches!(self, Self::PhoneLight | Self::PhoneDark | Self::NarrowPhone)
    }

    const fn is_dark(self) -> bool {
        matches!(self, Self::PhoneDark | Self::DeskDark)
    }
}

/// A browser on the pages of a server.
pub(crate) struct Browser<'a> {
    pub(crate) driver: WebDriver,
    pub(crate) server: &'a Server,
    _process: Driver,
}

/// Walks through the pages; what a failure looked like is kept and named.
pub(crate) fn walk(
    name: &str,
    server: &Server,
    form: Form,
    steps: impl AsyncFnOnce(&Browser<'_>) -> Result<()>,
) -> Result<()> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    runtime.block_on(async {
        let browser = Browser::open(server, form).await?;
        let outcome = match steps(&browser).await {
            Ok(()) => Ok(()),
            Err(error) => Err(error.context(trace::keep(name, &browser).await)),
        };
        browser.driver.quit().await?;
        outcome
    })
}

impl<'a> Browser<'a> {
    async fn open(server: &'a Server, form: Form) -> Result<Self> {
        let process = Driver::start()?;
        let mut wanted = DesiredCapabilities::chrome();
        let profile = format!("--user-data-dir={}", process.profile.display());
        for word in FLAGS.iter().chain([&profile.as_str()]) {
            wanted.add_arg(word)?;
        }
        let driver = WebDriver::new(format!("http://127.0.0.1:{}", process.port), wanted).await?;
        driver.set_script_timeout(PATIENCE).await?;
        let browser = Self { driver, server, _process: process };
        browser.look_as(form).await?;
        Ok(browser)
    }

    /// Sends a command of the browser's own protocol.
    pub(crate) async fn command(&self, method: &str, parameters: Value) -> Result<Value> {
        self.driver.cdp().send_raw(method, parameters).await.with_context(|| method.to_owned())
    }

    /// Takes on a size and a scheme.
    pub(crate) async fn look_as(&self, form: Form) -> Result<()> {
        let (width, height, scale) = match form {
            Form::NarrowPhone => (360, 740, 2),
            _ if form.is_phone() => (390, 844, 2),
            _ => (1280, 900, 1),
        };
        let metrics =
            json!({ "width": width, "height": height, "deviceScaleFactor": scale, "mobile": form.is_phone() });
        self.command("Emulation.setDeviceMetricsOverride", metrics).await?;
        self.command("Emulation.setTouchEmulationEnabled", json!({ "enabled": form.is_phone() })).await?;
        let scheme = if form.is_dark() { "dark" } else { "light" };
        let features = json!({ "features": [{ "name": "prefers-color-scheme", "value": scheme }] });
        self.command("Emulation.setEmulatedMedia", features).await?;
        Ok(())
    }

    /// Opens a page and waits until its style sheets are in force: on a busy machine the browser now and then says that
    /// a page is loaded before they are, and its colours and sheets of paper are then those of a bare page.
    pub(crate) async fn go(&self, path: &str) -> Result<()> {
        self.driver.goto(self.server.address(path)).await?;
        let dressed = "return [...document.querySelectorAll('link[rel=stylesheet]')].every((one) => one.sheet) \
                       && getComputedStyle(document.documentElement).getPropertyValue('--paper') !== ''";
        self.becomes(dressed).await.with_context(|| format!("{path} has no style"))
    }

    /// Waits for the estimate, then opens a page.
    pub(crate) async fn go_settled(&self, path: &str) -> Result<()> {
        self.server.settle()?;
        self.server.ready(path)?;
        self.go(path).await
    }

    /// The element a selector names, as soon as it is there.
    pub(crate) async fn find(&self, selector: &str) -> Result<WebElement> {
        let begun = Instant::now();
        loop {
            match self.driver.find(By::Css(selector)).await {
                Ok(found) => return Ok(found),
                Err(error) if begun.elapsed() > PATIENCE => return Err(error).with_context(|| selector.to_owned()),
                Err(_) => tokio::time::sleep(Duration::from_millis(50)).await,
            }
        }
    }

    /// Taps what a selector names.
    pub(crate) async fn tap(&self, selector: &str) -> Result<()> {
        let found = self.find(selector).await?;
        found.scroll_into_view().await?;
        found.click().await.with_context(|| format!("tapping {selector}"))
    }

    /// Taps what a selector names and waits for the page that it leads to.
    pub(crate) async fn follow(&self, selector: &str) -> Result<()> {
        self.arrives(async || self.tap(selector).await).await.with_context(|| format!("following {selector}"))
    }

    /// Does something that leads to another page, and waits until that page stands: words of the page that is being
    /// left are then not taken for words of the next.
    pub(crate) async fn arrives(&self, step: impl AsyncFnOnce() -> Result<()>) -> Result<()> {
        self.run("window.isBeingLeft = true", Vec::new()).await?;
        step().await?;
        let stands = "return window.isBeingLeft !== true && document.readyState === 'complete'";
        self.becomes(stands).await.context("no other page came")
    }

    /// Waits until a script says yes; while a page is being left it says nothing.
    pub(crate) async fn becomes(&self, script: &str) -> Result<()> {
        let begun = Instant::now();
        while begun.elapsed() < PATIENCE {
            if self.run(script, Vec::new()).await.is_ok_and(|said| said == true) {
                return Ok(());
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
        bail!("not after {PATIENCE:?}")
    }

    /// Writes into a field, in place of what it holds.
    pub(crate) async fn fill(&self, selector: &str, text: &str) -> Result<()> {
        let field = self.find(selector).await?;
        field.clear().await?;
        Ok(field.send_keys(text).await?)
    }

    /// Chooses a line of a list by what it shows.
    pub(crate) async fn choose(&self, selector: &str, shown: &str) -> Result<()> {
        let chosen = self
            .run(
                "const list = document.querySelector(arguments[0]); \
                 const at = [...list.options].findIndex((one) => one.text === arguments[1]); \
                 if (at >= 0) list.selectedIndex = at; return at;",
                vec![json!(selector), json!(shown)],
            )
            .await?;
        ensure!(chosen.as_i64().is_some_and(|at| at >= 0), "{selector} offers no {shown}");
        Ok(())
    }

    /// Runs a script and gives what it returns.
    pub(crate) async fn run(&self, script: &str, arguments: Vec<Value>) -> Result<Value> {
        Ok(self.driver.execute(script, arguments).await?.json().clone())
    }

    /// What the page says.
    pub(crate) async fn text(&self) -> Result<String> {
        let text = self.run("return document.body.innerText", Vec::new()).await?;
        Ok(text.as_str().unwrap_or_default().to_owned())
    }

    /// Waits until the page says something.
    pub(crate) async fn reads(&self, words: &str) -> Result<()> {
        let begun = Instant::now();
        while begun.elapsed() < PATIENCE {
            // A page that is just being left has no text.
            if self.text().await.is_ok_and(|text| text.contains(words)) {
                return Ok(());
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
        bail!("the page does not say \"{words}\": {}", self.text().await?)
    }
}

/// Flags of a browser that tests alone look at.
const FLAGS: [&str; 11] = [
    "--headless=new",
    "--accept-lang=en-GB",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--hide-scrollbars",
];

/// The program that drives a browser, on a free port.
struct Driver {
    child: Child,
    port: u16,
    profile: PathBuf,
}

impl Driver {
    fn start() -> Result<Self> {
        let mut child = Command::new("chromedriver")
            .arg("--port=0")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .context("could not start chromedriver")?;
        let told = child.stdout.take().context("no stdout")?;
        let mut lines = BufReader::new(told).lines();
        for line in lines.by_ref() {
            let line = line?;
            let port = line.rsplit_once("successfully on port ").map(|(_, port)| port.trim_end_matches('.').parse());
            if let Some(Ok(port)) = port {
                std::thread::spawn(move || lines.for_each(drop));
                return Ok(Self { child, port, profile: own_folder()? });
            }
        }
        bail!("chromedriver ended early")
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
        let _ = std::fs::remove_dir_all(&self.profile);
    }
}
