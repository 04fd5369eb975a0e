//! Notes out of a spreadsheet: sent or pasted, shown with what is asked about them, and kept by one tap.

use axum::extract::{Multipart, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::{AskedRows, Incoming, IncomingRow};

use crate::app::App;
use crate::aside::aside;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::sent::latest;
use crate::sheet_file::{SheetFile, SheetRefused, bring_in, last_columns};
use crate::view::{Asked, View};

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
        let broken =
            |error: &dyn std::fmt::Display| Fault::Wrong(format!("The form broke off ({error}); send it again."));
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
        let notes = incoming.kept(asked).map_err(|rows| Fault::Asked { says: rows, again: None })?;
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
    let body = html! {
        h1 { "Notes from a spreadsheet" }
        @if let Some(kept) = number("kept") {
            p class="kept" role="status" { "Kept: " (kept) (if kept == 1 { " note." } else { " notes." }) }
            form method="post" action="/import/undo" { button { "Take them back" } }
        }
        @if let Some(back) = number("back") { p class="kept" role="status" { "Taken back: " (back) (if back == 1 { " note." } else { " notes." }) } }
        p class="lede" { "A row for each look at a hive: its day, its hive, and what was seen. Nothing is kept before you have seen how it is read." }
        (form("", ""))
    };
    Ok(page(&view, Place::Elsewhere, "Notes from a spreadsheet", &body))
}

/// Reads what was sent, and shows it; or keeps it.
pub(crate) async fn bring(State(app): State<App>, sent: Multipart) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let upload = Upload::of(sent).await?;
    let text = upload.given(None).as_text().unwrap_or_default();
    let incoming = match upload.read(&app, &view).await? {
        Ok(incoming) => incoming,
        Err(refused) => return Ok((StatusCode::UNPROCESSABLE_ENTITY, faulty(&view, &refused, &text)).into_response()),
    };
    let open = upload.keep.filter(|asked| incoming.kept(*asked).is_ok());
    if let Some(asked) = open {
        let kept = upload.kept(&app, &incoming, asked).await?;
        return Ok(Redirect::to(&format!("/import?kept={kept}")).into_response());
    }
    Ok(preview(&view, &incoming, &upload, &text).into_response())
}

/// Takes back what came in last.
pub(crate) async fn undo(State(app): State<App>) -> Result<Redirect, Fault> {
    let back = app.store().undo_import(Timestamp::now()).await?;
    app.touch();
    Ok(Redirect::to(&format!("/import?back={}", back.map_or(0, |back| back.withdrawn))))
}

fn form(text: &str, columns: &str) -> Markup {
    html! {
        form method="post" action="/import" enctype="multipart/form-data" {
            @if text.is_empty() {
                label for="file" { "The file: a workbook (.xlsx) or a table as text (.csv)" }
                input id="file" name="file" type="file" accept=".xlsx,.xlsm,.csv,.tsv,.txt";
                label for="sheet" { "Which sheet of it; the first if you write none" }
                input id="sheet" name="sheet" maxlength="100" autocomplete="off";
                label for="text" { "Or paste its cells here, headings and all" }
            } @else {
                label for="text" { "Its cells; mend them here, or in the sheet" }
            }
            textarea id="text" name="text" rows="8" spellcheck="false" translate="no" { "\n" (text) }
            label for="columns" { "What the columns are, where their headings do not tell" }
            input id="columns" name="columns" maxlength="2000" autocomplete="off" placeholder="date=Datum, hive=Volk, scale=Gewicht:kg" value=(columns);
            button class="main" { "See how it is read" }
        }
    }
}

/// Every fault, and the form again with the columns as they would be said.
fn faulty(view: &View, refused: &SheetRefused, text: &str) -> Markup {
    let columns = match refused {
        SheetRefused::Rows(faults) => faults.columns.as_deref().unwrap_or_default(),
        _ => "",
    };
    let body = html! {
        h1 { "Not read yet" }
        p class="lede" { "Nothing was kept." }
        @match refused {
            SheetRefused::Rows(faults) => {
                ul translate="no" { @for fault in &faults.faults { li { strong { (fault) } " — " (fault.remedy) } } }
                @if faults.more > 0 { p { "And " (faults.more) " more of other kinds." } }
            }
            other => p class="caution" translate="no" { (other) },
        }
        (form(text, columns))
    };
    page(view, Place::Elsewhere, "Not read yet", &body)
}

fn preview(view: &View, incoming: &Incoming, upload: &Upload, text: &str) -> Markup {
    let (asked, plain): (Vec<&IncomingRow>, Vec<&IncomingRow>) =
        incoming.rows.iter().partition(|row| row.asks.is_some());
    let may_be_kept = incoming.kept(AskedRows::Kept).is_ok();
    let body = html! {
        h1 { "How it is read" }
        p class="lede" { (incoming.rows.len()) (if incoming.rows.len() == 1 { " note." } else { " notes." }) " Nothing is kept yet." }
        @if !incoming.said.is_empty() { ul { @for said in &incoming.said { li translate="no" { (said) } } } }
        @if !asked.is_empty() {
            h2 { "Is that right?" }
            (rows("Rows that are asked about", &asked, SHOWN))
        }
        form method="post" action="/import" enctype="multipart/form-data" {
            input type="hidden" name="columns" value=(upload.columns.as_deref().unwrap_or_default());
            textarea hidden name="text" aria-label="Its cells" { "\n" (text) }
            @if asked.is_empty() {
                button class="main" name="keep" value="yes" { "Keep them" }
            } @else {
                button class="main" name="keep" value="unasked" { "Keep those that nothing is asked about: " (plain.len()) }
                @if may_be_kept { button name="keep" value="all" { "They are right: keep all " (incoming.rows.len()) } }
            }
        }
        h2 { "As they would be kept" }
        (rows("Rows", &plain, SHOWN))
        @if !incoming.columns.is_empty() {
            p { "The columns were read so: " code { (incoming.columns) } ". If that is wrong, say it otherwise:" }
            (form(text, &incoming.columns))
        }
    };
    page(view, Place::Elsewhere, "How it is read", &body)
}

fn rows(label: &str, rows: &[&IncomingRow], most: usize) -> Markup {
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(label) {
            table {
                thead { tr { th scope="col" { "Row" } th scope="col" { "Hive" } th scope="col" { "When" } th scope="col" { "Note" } } }
                tbody translate="no" {
                    @for row in rows.iter().take(most) {
                        tr {
                            td { (row.row) }
                            td { (row.colony) }
                            td { (row.at.strftime("%-d %B %Y, %H:%M").to_string()) }
                            td {
                                (row.says)
                                @if let Some(asks) = &row.asks { " — " strong { (asks) } }
                                @if row.known { " — kept already" }
                            }
                        }
                    }
                }
            }
        }
        @if rows.len() > most { p { "And " (rows.len() - most) " more." } }
    }
}
