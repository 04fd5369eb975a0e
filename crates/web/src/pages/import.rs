//! Notes out of a spreadsheet: sent or pasted, shown with what is asked about them, and kept by one tap.

use axum::extract::{Multipart, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::{AskedRows, Incoming, IncomingRow};
use snowhum_say::{Message, Tongue, fault, import_page as text};

use crate::app::App;
use crate::aside::aside;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::sent::latest;
use crate::sheet_file::{SheetFile, SheetRefused, bring_in, last_columns};
use crate::view::{Asked, View};
use crate::words::marked;

/// Rows that are shown of those about which nothing is asked.
const SHOWN: usize = 200;

/// What the form sends, and what a program does.
#[derive(Debug, Clone, Default)]
pub(crate) struct Upload {
    pub(crate) bytes: Vec<u8>,
    pub(crate) file: String,
    pub(crate) columns: Option<String>,
    pub(crate) sheet: Option<String>,
    /// None where it is looked at first.
    pub(crate) keep: Option<AskedRows>,
}

impl Upload {
    async fn of(mut form: Multipart) -> Result<Self, Fault> {
        let broken = |error: &dyn std::fmt::Display| Fault::Wrong(text::broken(error.to_string()));
        let mut upload = Self::default();
        while let Some(field) = form.next_field().await.map_err(|error| broken(&error))? {
            let (name, file) = (field.name().unwrap_or_default().to_owned(), field.file_name().map(str::to_owned));
            let bytes = field.bytes().await.map_err(|error| broken(&error))?;
            let text = || Some(String::from_utf8_lossy(&bytes).trim().to_owned()).filter(|text| !text.is_empty());
            match name.as_str() {
                "file" if !bytes.is_empty() => {
                    (upload.bytes, upload.file) = (bytes.to_vec(), file.unwrap_or_else(|| "the sheet".to_owned()));
                }
                "text" if upload.bytes.is_empty() => {
                    (upload.bytes, upload.file) = (bytes.to_vec(), "the sheet".to_owned())
                }
                "columns" => upload.columns = text(),
                "sheet" => upload.sheet = text(),
                "keep" => upload.keep = text().as_deref().and_then(answer),
                _ => {}
            }
        }
        Ok(upload)
    }

    /// Reads it beside the pages.
    pub(crate) async fn read(&self, app: &App, view: &View) -> Result<Result<Incoming, SheetRefused>, Fault> {
        let (upload, yard, units, now) = (self.clone(), view.apiary.clone(), view.settings.system, latest(view));
        let last = last_columns(&app.store()).await?;
        aside(move || upload.given(last.as_deref()).read(&yard, units, now)).await
    }

    /// Keeps what was read.
    pub(crate) async fn kept(&self, app: &App, incoming: &Incoming, asked: AskedRows) -> Result<usize, Fault> {
        let notes = incoming.kept(asked).map_err(|rows| Fault::Asked {
            says: Message::sentences(rows.into_iter().map(fault::ended)),
            again: None,
        })?;
        let taken = bring_in(&app.store(), &notes, self.columns.as_deref(), Timestamp::now()).await?;
        app.touch();
        Ok(taken.stored)
    }

    fn given<'a>(&'a self, last_columns: Option<&'a str>) -> SheetFile<'a> {
        let (sheet, columns) = (self.sheet.as_deref(), self.columns.as_deref());
        SheetFile { bytes: &self.bytes, file: &self.file, sheet, columns, last_columns }
    }
}

/// Which rows are kept, as it is said on every way in.
pub(crate) fn answer(said: &str) -> Option<AskedRows> {
    match said {
        "yes" => Some(AskedRows::Open),
        "all" => Some(AskedRows::Kept),
        "unasked" => Some(AskedRows::LeftOut),
        _ => None,
    }
}

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let number = |name: &str| asked.get(name).and_then(|text| text.parse::<u32>().ok());
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        @if let Some(kept) = number("kept") {
            p class="kept" role="status" { (say(text::kept(kept))) }
            form method="post" action="/import/undo" { button { (say(text::undo())) } }
        }
        @if let Some(back) = number("back") { p class="kept" role="status" { (say(text::back(back))) } }
        p class="lede" { (say(text::lede())) }
        (form("", "", tongue))
    };
    Ok(page(&view, Place::Elsewhere, &heading, &body))
}

/// Reads what was sent, and shows it; or keeps it.
pub(crate) async fn bring(State(app): State<App>, sent: Multipart) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let upload = Upload::of(sent).await?;
    let cells = upload.given(None).as_text().unwrap_or_default();
    let incoming = match upload.read(&app, &view).await? {
        Ok(incoming) => incoming,
        Err(refused) => return Ok((StatusCode::UNPROCESSABLE_ENTITY, faulty(&view, &refused, &cells)).into_response()),
    };
    let open = upload.keep.filter(|asked| incoming.kept(*asked).is_ok());
    if let Some(asked) = open {
        let kept = upload.kept(&app, &incoming, asked).await?;
        return Ok(Redirect::to(&format!("/import?kept={kept}")).into_response());
    }
    Ok(preview(&view, &incoming, &upload, &cells).into_response())
}

/// Takes back what came in last.
pub(crate) async fn undo(State(app): State<App>) -> Result<Redirect, Fault> {
    let back = app.store().undo_import(Timestamp::now()).await?;
    app.touch();
    Ok(Redirect::to(&format!("/import?back={}", back.map_or(0, |back| back.withdrawn))))
}

fn form(cells: &str, columns: &str, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        form method="post" action="/import" enctype="multipart/form-data" {
            @if cells.is_empty() {
                label for="file" { (say(text::file())) }
                input id="file" name="file" type="file" accept=".xlsx,.xlsm,.csv,.tsv,.txt";
                label for="sheet" { (say(text::sheet())) }
                input id="sheet" name="sheet" maxlength="100" autocomplete="off";
                label for="text" { (say(text::paste())) }
            } @else {
                label for="text" { (say(text::mend())) }
            }
            textarea id="text" name="text" rows="8" spellcheck="false" translate="no" { "\n" (cells) }
            label for="columns" { (say(text::columns())) }
            input id="columns" name="columns" maxlength="2000" autocomplete="off" placeholder="date=Datum, hive=Volk, scale=Gewicht:kg" value=(columns);
            button class="main" { (say(text::see())) }
        }
    }
}

/// Every fault, and the form again with the columns as they would be said.
fn faulty(view: &View, refused: &SheetRefused, cells: &str) -> Markup {
    let tongue = view.tongue();
    let heading = tongue.say(&text::not_read());
    let columns = match refused {
        SheetRefused::Rows(faults) => faults.columns.as_deref().unwrap_or_default(),
        _ => "",
    };
    let body = html! {
        h1 { (heading) }
        p class="lede" { (tongue.say(&text::nothing_kept())) }
        @match refused {
            SheetRefused::Rows(faults) => {
                ul { @for one in &faults.faults { li { strong { (tongue.say(&one.message())) } " — " (tongue.say(&one.remedy)) } } }
                @if faults.more > 0 { p { (tongue.say(&text::more_faults(faults.more))) } }
            }
            other => p class="caution" { (other.said(tongue)) },
        }
        (form(cells, columns, tongue))
    };
    page(view, Place::Elsewhere, &heading, &body)
}

fn preview(view: &View, incoming: &Incoming, upload: &Upload, cells: &str) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::preview());
    let (asked, plain): (Vec<&IncomingRow>, Vec<&IncomingRow>) =
        incoming.rows.iter().partition(|row| row.asks.is_some());
    let may_be_kept = incoming.kept(AskedRows::Kept).is_ok();
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::notes(incoming.rows.len()))) }
        @if !incoming.said.is_empty() { ul { @for said in &incoming.said { li { (tongue.say(said)) } } } }
        @if !asked.is_empty() {
            h2 { (say(text::right())) }
            (rows(text::asked_rows(), &asked, SHOWN, tongue))
        }
        form method="post" action="/import" enctype="multipart/form-data" {
            input type="hidden" name="columns" value=(upload.columns.as_deref().unwrap_or_default());
            textarea hidden name="text" aria-label=(say(text::cells())) { "\n" (cells) }
            @if asked.is_empty() {
                button class="main" name="keep" value="yes" { (say(text::keep())) }
            } @else {
                button class="main" name="keep" value="unasked" { (say(text::keep_plain(plain.len()))) }
                @if may_be_kept { button name="keep" value="all" { (say(text::keep_all(incoming.rows.len()))) } }
            }
        }
        h2 { (say(text::plain())) }
        (rows(text::rows(), &plain, SHOWN, tongue))
        @if !incoming.columns.is_empty() {
            p { (marked(tongue, &text::read_so(&incoming.columns))) }
            (form(cells, &incoming.columns, tongue))
        }
    };
    page(view, Place::Elsewhere, &heading, &body)
}

fn rows(label: Message, rows: &[&IncomingRow], most: usize, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(label)) {
            table {
                thead { tr { @for head in [text::row(), text::hive(), text::when(), text::note()] { th scope="col" { (say(head)) } } } }
                tbody translate="no" {
                    @for row in rows.iter().take(most) {
                        tr {
                            td { (row.row) }
                            td { (row.colony) }
                            td { (say(text::at(row.at.date(), row.at.strftime("%H:%M").to_string()))) }
                            td {
                                (row.says)
                                @if let Some(asks) = &row.asks { " — " strong { (tongue.say(asks)) } }
                                @if row.known { " — " (say(text::known())) }
                            }
                        }
                    }
                }
            }
        }
        @if rows.len() > most { p { (say(text::more_rows(rows.len() - most))) } }
    }
}
