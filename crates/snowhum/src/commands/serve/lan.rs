//! `serve --lan`: the pages in the keeper's own network, encrypted and behind a pass phrase.

use clap::Args;
use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_say::{Message, serve_terminal as say};
use snowhum_store::Store;
use snowhum_web::{App, Certificate, Reach, certificate_router};
use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use super::addresses::Own;
use super::authority::Authority;
use super::{phrase, ports, qr};
use crate::text::voice::in_words;
use crate::{exit, progress};

/// Whether others in the network are served, and how they are let in.
#[derive(Debug, Clone, Default, Args)]
pub(crate) struct LanArguments {
    #[arg(long)]
    pub(crate) lan: bool,
    #[arg(long, value_name = "FILE", requires = "lan")]
    pub(crate) pass_phrase_file: Option<PathBuf>,
    #[arg(long, requires = "lan")]
    pub(crate) new_pass_phrase: bool,
    #[arg(long, requires = "lan")]
    pub(crate) no_qr: bool,
}

/// What is needed beside the yard to serve the network.
pub(super) struct Lan {
    own: Own,
    authority: Authority,
    today: Date,
}

impl Lan {
    /// Asks for what is missing: a pass phrase, an authority.
    pub(super) async fn prepare(arguments: &LanArguments, store: &Store) -> anyhow::Result<Self> {
        let file = store.path().ok_or_else(|| exit::refused(say::records_wanted()))?;
        phrase::settle(arguments, store).await?;
        let own = Own::look()?;
        let today = Timestamp::now().to_zoned_datetime(TimeZone::UTC).date();
        let authority = Authority::open(&folder(file), own.host.as_deref(), today)?;
        Ok(Self { own, authority, today })
    }

    pub(super) fn reach(&self) -> Reach {
        Reach::network(self.own.names())
    }

    /// Listens on every address of a network of one's own and answers until the system takes that away.
    pub(super) async fn serve(self, app: App, port: Option<u16>, arguments: &LanArguments) -> anyhow::Result<()> {
        let here = self.own.listened_on();
        let (pages, port) = ports::on(&here, port).await?;
        let (plain, plain_port) = ports::on_after(&here, port).await?;
        let tls = self.authority.server(&self.own, self.today)?;
        let addresses: Vec<String> = self.own.names().iter().map(|name| format!("https://{name}:{port}/")).collect();
        let hand_out: Vec<String> =
            self.own.names().iter().map(|name| format!("http://{name}:{plain_port}/")).collect();
        self.tell(&addresses, &hand_out, arguments);
        let certificate = Certificate {
            pem: self.authority.pem().to_owned(),
            fingerprint: self.authority.fingerprint().to_vec(),
            name: self.authority.name().to_owned(),
            addresses,
        };
        tokio::spawn(app.clone().work());
        tokio::spawn(snowhum_web::serve(plain, None, certificate_router(certificate)));
        let served = snowhum_web::serve(pages, Some(tls), snowhum_web::router(app)).await;
        served.map_err(exit::environment)
    }

    fn tell(&self, pages: &[String], hand_out: &[String], arguments: &LanArguments) {
        let list = |says: Message, of: &[String]| progress::note(format!("{}\n  {}", in_words(&says), of.join("\n  ")));
        list(say::lan(), pages);
        list(say::trust(), hand_out);
        list(say::compare(self.authority.name()), self.authority.fingerprint());
        for name in &self.own.left_out {
            progress::note(say::left_out(name.to_string()));
        }
        let is_shown = !arguments.no_qr && std::io::stdout().is_terminal();
        if let Some(code) = hand_out.first().filter(|_| is_shown).and_then(|address| qr::drawn(address)) {
            progress::note(say::camera());
            progress::show(&code);
        }
    }
}

/// Where the authority lies: beside the records, under their name.
fn folder(store: &Path) -> PathBuf {
    let mut name = store.as_os_str().to_owned();
    name.push(".tls");
    PathBuf::from(name)
}
